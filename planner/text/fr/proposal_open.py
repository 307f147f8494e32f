"""Français des lignes de la proposition qui demandent un fait que l'étude ne contient pas, un indice entre crochets."""

SENTENCES: dict[str, str] = {
    # first page and summary
    "proposal.open.applicant": "À compléter : qui demande, et à qui [nom, adresse, contact, forme juridique]",
    "proposal.open.prepared_by": "À compléter : qui a établi l'étude [nom, métier, organisation]",
    "proposal.open.visit_date": "À compléter : quand le site a été visité [jour, par qui]",
    "proposal.open.revision": "À compléter : révision de cette proposition [numéro ou jour]",
    "proposal.open.prices": (
        "À compléter : ce que coûtent construction et exploitation [aucun prix n'est indiqué, l'étude n'a donc pas de "
        "coûts]"
    ),
    "proposal.open.unpriced": "À compléter : budget incomplet, aucun prix n'est indiqué pour : {names} [devis]",
    "proposal.open.grant": (
        "À compléter : la somme demandée, et à qui [part du coût d'investissement, bailleur de fonds]"
    ),
    "proposal.open.funder": "À compléter : le bailleur de fonds, et quand la somme est souhaitée [nom, versements]",
    # need and people
    "proposal.open.growth": (
        "À compléter : croissance des besoins [non indiquée, donc non comptée ; recensement, effectifs, plans]"
    ),
    "proposal.open.leakage": (
        "À compléter : eau perdue entre réservoir et robinets [non indiquée, donc non comptée ; relevés de compteurs]"
    ),
    "proposal.open.litres": (
        "À compléter : eau par personne et par jour [non indiquée, un chiffre usuel est compté ; norme nationale, "
        "enquête]"
    ),
    "proposal.open.present_sources": (
        "À compléter : où l'on va chercher l'eau aujourd'hui [sources, distance, attente, prix, qualité, mois secs]"
    ),
    "proposal.open.baseline": (
        "À compléter : situation de départ [enquête : litres, minutes et argent qu'un ménage consacre à l'eau]"
    ),
    "proposal.open.inclusion": (
        "À compléter : qui pourrait être laissé de côté, et ce qui est fait contre cela [femmes, plus pauvres, "
        "personnes handicapées, éleveurs, locataires]"
    ),
    "proposal.open.consent": (
        "À compléter : accord des usagers [jour et procès-verbal de la réunion, présents, ce qu'ils apportent]"
    ),
    "proposal.open.coordination": (
        "À compléter : accord avec l'autorité et avec les autres projets proches [lettre, plan dont il fait partie]"
    ),
    # source
    "proposal.open.borehole": (
        "À compléter : ne sont pas indiqués pour le forage : {names} [rapport du foreur, essai, permis]"
    ),
    "proposal.open.completion_report": (
        "À compléter : rapport de forage [foreur et licence, coupe, tubage, crépines, cimentation, désinfection]"
    ),
    "proposal.open.hydrogeologist": (
        "À compléter : rapport de l'hydrogéologue [nom, jour, débit et heures conseillés, effet sur d'autres puits]"
    ),
    "proposal.open.pumping_test": (
        "À compléter : essai de pompage à débit constant avec remontée [jour, qui a fait l'essai, débit, heures, "
        "niveaux : aucun n'est connu]"
    ),
    "proposal.open.test_record": (
        "À compléter : ne sont pas indiqués pour l'essai de pompage : {names} [relevé de l'essai]"
    ),
    "proposal.open.quality": (
        "À compléter : analyse de l'eau, aucune n'est connue [laboratoire, jour, résultats pour au moins : {names}]"
    ),
    "proposal.open.quality_rest": "À compléter : ne sont pas analysés : {names} [laboratoire, jour, résultats]",
    "proposal.open.quality_for_use": (
        "À compléter : analyse de l'eau pour son usage [laboratoire, jour, salinité, sodium, fer, matières solides]"
    ),
    "proposal.open.laboratory": "À compléter : qui a analysé l'eau, et quand [laboratoire, jour de l'échantillon]",
    "proposal.open.treatment": (
        "À compléter : comment l'eau est ramenée sous les valeurs guides [traitement, son coût, qui l'exploite]"
    ),
    "proposal.open.water_permit": (
        "À compléter : permis de prélèvement [autorité, numéro, jour, volume par jour, jusqu'à quand]"
    ),
    "proposal.open.land": (
        "À compléter : droit sur les terrains du forage, de la conduite, du champ et du réservoir [propriétaire, acte "
        "ou accord, servitudes]"
    ),
    # design
    "proposal.open.pump": (
        "À compléter : marque et type de la pompe [plaque, fiche technique avec sa courbe, garantie]"
    ),
    "proposal.open.profile": (
        "À compléter : profil en long de la conduite [niveaux le long du tracé ; aucun n'est indiqué, seules ses "
        "extrémités comptent]"
    ),
    "proposal.open.drawings": (
        "À compléter : plans [carte, implantation, tête de forage, schéma unifilaire, réservoir et bornes-fontaines]"
    ),
    "proposal.open.array_place": (
        "À compléter : emplacement du champ [ombrage sur l'année, fondation, vent, clôture, qui le garde]"
    ),
    "proposal.open.tank_structure": (
        "À compléter : calcul de la tour ou du socle du réservoir par un ingénieur en structures [sol, vent, séisme]"
    ),
    # options and budget
    "proposal.open.other_ways": (
        "À compléter : autres voies examinées, et pourquoi elles sont écartées [pompe à main, source captée, pluie, "
        "extension d'un réseau]"
    ),
    "proposal.open.percentages": (
        "À compléter : ne sont pas indiqués : {names} [rien n'est compté ; le dire là où les prix les comprennent]"
    ),
    "proposal.open.price_date": ("À compléter : quand les prix ont été demandés [jour, devis, durée de validité]"),
    "proposal.open.exchange_rate": (
        "À compléter : taux de change de {currency} vers la monnaie du bailleur [taux, jour, qui supporte ses "
        "variations]"
    ),
    "proposal.open.contributions": (
        "À compléter : contributions en argent et en nature [usagers, État, autres ; somme, travail, matériaux]"
    ),
    "proposal.open.procurement": (
        "À compléter : plan de passation des marchés [lots, mode d'appel d'offres, qui attribue, garanties, pièces de "
        "rechange dans la commande]"
    ),
    "proposal.open.timetable": (
        "À compléter : calendrier [permis, appels d'offres, livraison, travaux, réception, fin de la garantie]"
    ),
    # cost recovery
    "proposal.open.tariff_unpriced": (
        "À compléter : ce que doivent payer les usagers pour l'exploitation et les remplacements [découle des prix, "
        "dont aucun n'est indiqué]"
    ),
    "proposal.open.tariff": (
        "À compléter : prix de l'eau convenu avec les usagers [par m3, seau ou mois ; qui le fixe]"
    ),
    "proposal.open.willingness": (
        "À compléter : ce que les usagers peuvent et veulent payer [ce qui est payé aujourd'hui, enquête, aide aux "
        "plus pauvres]"
    ),
    "proposal.open.savings_account": (
        "À compléter : compte d'épargne pour les remplacements [banque, qui signe, intérêt, qui contrôle]"
    ),
    "proposal.open.households": (
        "À compléter : ménages qui paient [personnes par ménage, revenu d'un ménage moyen et d'un ménage pauvre]"
    ),
    "proposal.open.income": (
        "À compléter : revenu des ménages [d'un ménage moyen, et d'un du cinquième le plus pauvre]"
    ),
    "proposal.open.collection": (
        "À compléter : part de l'eau qui est payée [non indiquée, toute l'eau est donc comptée comme payée]"
    ),
    # operation
    "proposal.open.stockist": (
        "À compléter : qui tient les pièces de rechange [nom, distance, quelles pièces, jours jusqu'au site]"
    ),
    "proposal.open.operator": ("À compléter : l'exploitant [nom, formation, heures par semaine, salaire, remplaçant]"),
    "proposal.open.committee": (
        "À compléter : l'organe qui répond de l'alimentation [comité de l'eau ou service public, statuts, membres, "
        "femmes parmi eux]"
    ),
    "proposal.open.electrician": (
        "À compléter : électricien agréé et équipe qui relève la pompe [noms, distance, prix d'un déplacement]"
    ),
    "proposal.open.operation_contract": (
        "À compléter : contrat d'entretien et garanties [avec qui, combien de temps, délai de réparation]"
    ),
    "proposal.open.support": (
        "À compléter : appui de l'autorité locale [visites par an, formation, argent ; rien n'est indiqué]"
    ),
    "proposal.open.theft": (
        "À compléter : protection contre le vol et les dégradations [emplacement, boulons, gardien, assurance]"
    ),
    # environment
    "proposal.open.grid_factor": (
        "À compléter : dioxyde de carbone par kWh du réseau électrique [facteur national, son année et son genre ; non "
        "compté ici]"
    ),
    "proposal.open.grid_factor_source": (
        "À compléter : d'où viennent les {factor} kg de dioxyde de carbone par kWh du réseau électrique [source, "
        "année, genre]"
    ),
    "proposal.open.screening": "À compléter : évaluation environnementale [autorité, catégorie, jour, autorisation]",
    "proposal.open.protection": (
        "À compléter : protection de la tête du forage [distance aux latrines, au bétail, au carburant et aux tombes ; "
        "clôture, drainage]"
    ),
    "proposal.open.waste_water": (
        "À compléter : où vont l'eau répandue et les eaux usées [drain, puits perdu, abreuvoir]"
    ),
    "proposal.open.end_of_life": (
        "À compléter : que deviennent modules, pompes, batteries et huile usés [qui les reprend]"
    ),
    "proposal.open.safeguards": (
        "À compléter : sauvegardes sociales [terrains pris, travail des enfants, sécurité du chantier, plaintes]"
    ),
    # risks and indicators
    "proposal.open.other_risks": (
        "À compléter : risques qu'aucune étude ne voit [conflit, vol, politique, taux de change, fournisseur ; qui les "
        "supporte]"
    ),
    "proposal.open.targets": ("À compléter : cibles des indicateurs marqués « à convenir » [nombre, jusqu'à quand]"),
    "proposal.open.monitoring": (
        "À compléter : qui mesure les indicateurs [situation de départ, fréquence, qui rend compte à qui, budget pour "
        "cela]"
    ),
    "proposal.open.logframe": (
        "À compléter : cadre logique dans la forme du bailleur [finalité, objectif, résultats, activités]"
    ),
    "proposal.open.exit": (
        "À compléter : ce qui vaut quand le financement prend fin [à qui sont les ouvrages, qui paie, qui est appelé]"
    ),
    # annexes
    "proposal.open.checks": (
        "À compléter, {topic} : ne sont pas vérifiés faute d'un chiffre : {names} [plaque, fiche technique, mesure]"
    ),
    "proposal.open.papers": (
        "À compléter : documents à joindre [relevé de l'essai, feuille du laboratoire, devis, permis, carte, "
        "procès-verbal d'accord, plans]"
    ),
}
