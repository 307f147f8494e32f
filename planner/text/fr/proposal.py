"""Français de la proposition à un bailleur de fonds : ses chapitres, ses tableaux et ce qui y est dit."""

SENTENCES: dict[str, str] = {
    "proposal.contents_heading": "Table des matières",
    "proposal.page": "Page {page} sur {pages}",
    "proposal.wrote": "Écrit : {file} ; lignes à compléter : {count}.",
    # ---- first page
    "proposal.kind": "Proposition d'approvisionnement en eau par pompage depuis un forage : {place}",
    "proposal.draft": (
        "Ceci est un projet tiré d'une étude du site. Les lignes marquées en jaune demandent des faits que l'étude ne "
        "contient pas : remplacer chacune par le fait, et enlever la marque, avant de le remettre. Tous les autres "
        "chiffres sont ceux de l'étude ; refaire la proposition quand l'étude change."
    ),
    "proposal.version": "planner {version!s}",
    "proposal.foot.revision": "Révision {revision!s}",
    "proposal.foot.visit": "Visite de terrain : {date}",
    "proposal.foot.between": " · ",
    "proposal.position_ne": "{latitude}° nord, {longitude}° est",
    "proposal.position_nw": "{latitude}° nord, {longitude}° ouest",
    "proposal.position_se": "{latitude}° sud, {longitude}° est",
    "proposal.position_sw": "{latitude}° sud, {longitude}° ouest",
    "proposal.record.place": "Lieu",
    "proposal.record.position": "Coordonnées",
    "proposal.record.prepared_by": "Établi par",
    "proposal.record.visit_date": "Visite de terrain",
    "proposal.record.price_date": "Prix de",
    "proposal.record.revision": "Révision",
    "proposal.record.version": "Calculé avec",
    # ---- chapters
    "proposal.chapter.summary": "Résumé",
    "proposal.chapter.need": "Besoins et population",
    "proposal.chapter.source": "Ressource en eau",
    "proposal.chapter.design": "Conception technique",
    "proposal.chapter.options": "Options comparées",
    "proposal.chapter.budget": "Budget et passation des marchés",
    "proposal.chapter.recovery": "Recouvrement des coûts et accessibilité financière",
    "proposal.chapter.operation": "Exploitation, entretien et pièces de rechange",
    "proposal.chapter.environment": "Environnement et dioxyde de carbone",
    "proposal.chapter.risks": "Risques",
    "proposal.chapter.indicators": "Indicateurs",
    "proposal.chapter.annexes": "Annexes à la proposition",
    "proposal.value": "Valeur",
    "proposal.column.label": "Objet",
    "proposal.column.value": "Valeur",
    "proposal.column.unit": "Unité",
    "proposal.column.basis": "Origine",
    "proposal.column.source": "Référence",
    "proposal.column.what": "Objet",
    "proposal.column.test": "Essai",
    "proposal.column.option": "Option d'alimentation",
    # ---- summary
    "proposal.grant_asked": (
        "Demandé : une subvention de {grant}, soit {percent} % du coût d'investissement de {capital_cost}."
    ),
    "proposal.in_brief": (
        "Un réservoir de {tank} m3 est rempli ; {water} m3 d'eau par jour parviennent aux usagers la première année."
    ),
    "proposal.in_brief_array": (
        "Un champ photovoltaïque de {kwp} kWc est construit et un réservoir de {tank} m3 est rempli ; {water} m3 d'eau "
        "par jour parviennent aux usagers la première année."
    ),
    # ---- need and people
    "proposal.users.heading": "Qui puise de l'eau, la première année, sans les pertes",
    "proposal.users.user": "Qui",
    "proposal.users.number": "Combien",
    "proposal.users.each": "Chacun par jour (plus grand mois)",
    "proposal.users.mean": "Moyenne (m3/jour)",
    "proposal.users.largest": "Plus grand mois (m3/jour)",
    "proposal.users.people": "{count} personnes",
    "proposal.users.animals": "{count} têtes",
    "proposal.demand_grows": (
        "L'étude compte sur des besoins de {first} m3 par jour la première année et de {last} m3 par jour l'année "
        "{years}, en moyenne de l'année."
    ),
    "proposal.demand_level": (
        "L'étude compte sur des besoins de {first} m3 par jour, en moyenne de l'année, qui restent les mêmes pendant "
        "{years} ans."
    ),
    "proposal.target": (
        "Demandé à l'alimentation : au moins {percent} % de cette eau, toutes les {years} années ensemble."
    ),
    "proposal.households": "À {size} personnes par ménage, cela fait environ {count} ménages.",
    "proposal.service_ladder": (
        "Sur l'échelle de l'OMS et de l'UNICEF (JMP, de seconde main), une borne-fontaine peut au mieux atteindre « "
        "élémentaire » : une source améliorée, à moins de 30 minutes, attente comprise. « Géré en toute sécurité » "
        "demande un robinet sur la parcelle, de l'eau quand il en faut, et une eau exempte de pollution fécale et des "
        "polluants chimiques prioritaires."
    ),
    # ---- source
    "proposal.borehole": "Le forage",
    "proposal.permits": "Permis et terrains",
    "proposal.daily_limit": (
        "L'étude ne prélève pas plus de {limit} m3 par jour : elle compte cela comme ce que permis ou essai autorisent."
    ),
    # ---- design
    "proposal.design": "Est proposée l'option d'alimentation {option} avec la pompe « {pump} ».",
    "proposal.design_unnamed": "Est proposée l'option d'alimentation {option}.",
    "proposal.works": "Les ouvrages",
    "proposal.acceptance": "Essais de réception, à convenir dans le contrat",
    "proposal.acceptance.pump.what": "Pompe",
    "proposal.acceptance.pump.test": (
        "Courbe de hauteur, débit et puissance absorbée au banc d'essai du fabricant, avec une classe de tolérance "
        "convenue"
    ),
    "proposal.acceptance.pump.source": (
        "ISO 9906:2012, de mémoire ; les petites pompes ont des tolérances plus larges, donc demander"
    ),
    "proposal.acceptance.flow.what": "Alimentation dans son ensemble",
    "proposal.acceptance.flow.test": (
        "Débit d'au moins 90 % de ce qui est prévu pour la même hauteur et le même soleil ou la même alimentation, à "
        "trois puissances ou sur un jour clair ; les erreurs des instruments sont données avec"
    ),
    "proposal.acceptance.flow.source": "proposé ici, sans norme",
    "proposal.acceptance.array.what": "Champ photovoltaïque",
    "proposal.acceptance.array.test": (
        "Polarité, tension à vide et courant de court-circuit de chaque chaîne, continuité de la mise à la terre, "
        "isolement ; documents du système de pompage : débit selon la puissance à hauteur constante"
    ),
    "proposal.acceptance.array.source": "CEI 62446-1 et CEI 62253, de seconde main",
    "proposal.acceptance.works.what": "Conduite, réservoir et eau",
    "proposal.acceptance.works.test": (
        "Conduite éprouvée à l'eau sous pression, réservoir plein 24 heures sans perte, ouvrages désinfectés et "
        "rincés, échantillons sans E. coli ; arrêts par manque d'eau et réservoir plein démontrés ; plans de "
        "récolement, pièces de rechange et outils remis"
    ),
    "proposal.acceptance.works.source": "pratique courante, sans source",
    # ---- budget and cost recovery
    "proposal.who_pays": "Qui paie la construction",
    "proposal.price_date": "Les prix sont ceux de {date}.",
    "proposal.tariffs_too_low": (
        "Un élément n'a pas de prix (voir le budget) : tous les prix de l'eau, factures et épargnes ci-dessous sont "
        "trop bas."
    ),
    "proposal.by_year": "Ce qui est payé chaque année après la subvention, et ce que contient alors l'épargne",
    "proposal.water_price": "L'étude compte sur un prix de l'eau de {currency} {price} par m3.",
    # ---- operation
    "proposal.operation": (
        "Des ouvrages durent aussi longtemps que quelqu'un est payé et capable de s'en occuper. Les tâches ci-dessous "
        "sont celles des ouvrages proposés ; les instructions des fabricants priment. Le travail sur les parties "
        "électriques, le levage de la pompe et l'entrée dans un réservoir ou une chambre sont pour des équipes "
        "formées, toute source d'énergie étant consignée : voir les mises en garde dans les annexes."
    ),
    "proposal.who": "Qui fait quoi",
    "proposal.yearly_cost": "Compté dans les coûts d'exploitation : {name}, {cost} par an.",
    "proposal.generator_hours": (
        "Le groupe électrogène marche environ {hours} heures par an ; révisé toutes les {interval} heures de marche, "
        "cela fait {times} révisions par an, et au moins une par an quelles que soient ses heures."
    ),
    # ---- environment
    "proposal.carbon.heading": "Dioxyde de carbone du carburant brûlé et de l'électricité achetée",
    "proposal.carbon": "Ce qu'il a fallu pour fabriquer et apporter les ouvrages n'est pas compté.",
    "proposal.taken": (
        "La première année, {given} m3 des {wanted} m3 demandés parviennent aux usagers ; ce qui fuit est pompé en "
        "plus."
    ),
    # ---- risks
    "proposal.no_check_warns": "Aucune vérification n'est non conforme ni ne met en garde.",
    "proposal.risks.heading": "Ce que les vérifications ont trouvé",
    "proposal.risks.risk": "Risque",
    "proposal.risks.found": "Trouvé",
    "proposal.risks.why": "Pourquoi cela compte",
    "proposal.risks.remedy": "Ce qui est à faire",
    "proposal.rests_more": (
        "{count} autres valeurs ont été essayées et changent moins ; tout ce qui n'était pas indiqué figure à l'annexe "
        "B."
    ),
    # ---- indicators
    "proposal.indicators.heading": "Ce qui sera mesuré, et ce qui est attendu",
    "proposal.indicators.what": "Indicateur",
    "proposal.indicators.expected": "Attendu",
    "proposal.indicators.unit": "Unité",
    "proposal.indicators.measured": "Comment il est mesuré",
    "proposal.indicators.to_agree": "à convenir",
    "proposal.indicator.people": "Personnes desservies la première année",
    "proposal.indicator.people.unit": "personnes",
    "proposal.indicator.people.measured": "registre des usagers, recompté chaque année",
    "proposal.indicator.m3_a_day": "Eau fournie, moyenne de la première année",
    "proposal.indicator.m3_a_day.unit": "m3/jour",
    "proposal.indicator.m3_a_day.measured": "compteur d'eau au réservoir, relevé chaque jour",
    "proposal.indicator.demand_met": "Part fournie de l'eau demandée",
    "proposal.indicator.demand_met.unit": "% des besoins",
    "proposal.indicator.demand_met.measured": "compteur face aux besoins prévus pour cette année",
    "proposal.indicator.short_days": "Jours par an où il manque plus d'un dixième de l'eau du jour",
    "proposal.indicator.short_days.unit": "jours/an",
    "proposal.indicator.short_days.measured": "journal de l'exploitant : réservoir vide, heures sans eau",
    "proposal.indicator.longest_short_days": "Plus grand nombre de ces jours de suite",
    "proposal.indicator.longest_short_days.unit": "jours",
    "proposal.indicator.longest_short_days.measured": "journal de l'exploitant",
    "proposal.indicator.functionality": (
        "Fonctionnalité : visites sans préavis qui trouvent de l'eau à chaque robinet"
    ),
    "proposal.indicator.functionality.unit": "% des visites",
    "proposal.indicator.functionality.measured": "visites sans préavis, au moins deux fois par an",
    "proposal.indicator.repair": "Temps de la panne à la réparation",
    "proposal.indicator.repair.unit": "jours",
    "proposal.indicator.repair.measured": "journal de l'exploitant : jour signalé, jour réparé",
    "proposal.indicator.collected": "Recettes de l'eau rapportées au coût d'exploitation et d'entretien",
    "proposal.indicator.collected.unit": "rapport",
    "proposal.indicator.collected.measured": "livre de caisse, chaque année",
    "proposal.indicator.saving": "Mis de côté pour les remplacements",
    "proposal.indicator.saving.unit": "{currency}/an",
    "proposal.indicator.saving.measured": "relevé du compte d'épargne",
    "proposal.indicator.samples": "E. coli dans un échantillon de 100 mL",
    "proposal.indicator.samples.unit": "par 100 mL",
    "proposal.indicator.samples.measured": (
        "échantillons du réservoir et des robinets, au moins chaque trimestre ; valeur guide de l'OMS : aucun"
    ),
    "proposal.indicator.women": "Femmes dans le comité et à ses postes clés",
    "proposal.indicator.women.unit": "% des membres",
    "proposal.indicator.women.measured": "procès-verbal de l'élection",
    "proposal.indicator.operators": "Exploitants formés et en fonction",
    "proposal.indicator.operators.unit": "personnes",
    "proposal.indicator.operators.measured": "liste des formations, visites",
    "proposal.indicator.fuel": "Carburant brûlé",
    "proposal.indicator.fuel.unit": "L/an",
    "proposal.indicator.fuel.measured": "reçus de carburant et compteur d'heures",
    "proposal.indicator.carbon": "Dioxyde de carbone du carburant et de l'électricité",
    "proposal.indicator.carbon.unit": "kg/an",
    "proposal.indicator.carbon.measured": "d'après les reçus de carburant et le compteur électrique",
    # ---- annexes
    "proposal.annex.checks": "Annexe A : vérifications du site",
    "proposal.annex.assumptions": "Annexe B : ce qui a été supposé, et d'après quoi",
    "proposal.annex.cautions": "Annexe C : mises en garde",
    "proposal.annex.papers": "Annexe D : documents à joindre",
    "proposal.assumptions": (
        "Chaque valeur qui n'était pas indiquée sur place, par partie du projet. À remplacer par ce qui est mesuré ou "
        "convenu partout où c'est possible."
    ),
    "proposal.weather": "Soleil et température : {source}.",
    "proposal.basis.given": "indiqué",
    "proposal.basis.worked_out": "calculé",
    "proposal.basis.assumed": "supposé",
    "proposal.ranges_source": (
        "Fourchettes : IRC WASHCost, repères de coûts, 2012, de seconde main, pour réseaux alimentés par forage "
        "motorisé, ramenées de dollars américains de 2011 aux prix de cette étude."
    ),
    "proposal.ranges_source_2011": (
        "Fourchettes : IRC WASHCost, repères de coûts, 2012, de seconde main, pour réseaux alimentés par forage "
        "motorisé, en dollars américains de 2011 tels que publiés : aux prix d'aujourd'hui elles seraient plus élevées."
    ),
    "proposal.risks.turns": "Ce qui changerait la réponse",
}
