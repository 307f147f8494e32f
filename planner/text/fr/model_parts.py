"""Tables, clés sans nombre et choix d'un scénario, et ce que veut dire leur absence, par leur texte anglais."""

PARTS: dict[str, str] = {
    # tables, par le début de ce qui est dit d'elles
    "Everything the user tells us about one site": "Tout ce que l'usager dit d'un site",
    "The place on the map": "Le lieu sur la carte",
    "Twelve monthly means": "Douze moyennes mensuelles",
    "Twelve monthly means of a coarse climatology": "Douze moyennes mensuelles d'une climatologie grossière",
    "A weather file": "Un fichier météo",
    "Everything that is drawn from the tank": "Tout ce qui est puisé dans le réservoir",
    "People": "Personnes",
    "Animals": "Animaux",
    "A watered field": "Un champ arrosé",
    "The borehole": "Le forage",
    "One step of a pumping test": "Un palier d'un essai de pompage",
    "The way from the pump to the tank": "Le chemin de la pompe au réservoir",
    "One run of pipe": "Un tronçon de conduite",
    "One point of the pipeline's route": "Un point du tracé de la conduite",
    "The pump": "La pompe",
    "One point of a pump's datasheet at rated speed": (
        "Un point de la fiche technique d'une pompe à la vitesse nominale"
    ),
    "What else the pump's nameplate says": "Ce que dit encore la plaque signalétique de la pompe",
    "The drive between the supplies and the motor": "Le variateur entre les alimentations et le moteur",
    "The float switch": "L'interrupteur à flotteur",
    "The sources at hand": "Les sources disponibles",
    "The PV array": "Le champ photovoltaïque",
    "A PV module from its datasheet at standard test conditions": (
        "Un module photovoltaïque d'après sa fiche technique dans les conditions d'essai normalisées"
    ),
    "Strings of modules that face one way": "Chaînes de modules tournées du même côté",
    "The grid": "Le réseau électrique",
    "Random failures of the grid": "Coupures aléatoires du réseau électrique",
    "What the grid's energy costs": "Ce que coûte l'énergie du réseau électrique",
    "Hours of the day with an energy price of their own": "Heures du jour avec leur propre prix de l'énergie",
    "A step of a rising-block tariff": "Une tranche d'un tarif progressif",
    "The generating set": "Le groupe électrogène",
    "The tank": "Le réservoir",
    "A size that can be built or bought": "Une taille qui peut être construite ou achetée",
    "What counts as serving the demand": "Ce qui compte comme couvrir les besoins",
    "Costs that are not the price of a thing described elsewhere": (
        "Coûts qui ne sont pas le prix d'une chose décrite ailleurs"
    ),
    "One more line of the bill of quantities": "Une ligne de plus du devis quantitatif",
    "A cost that comes back each year": "Un coût qui revient chaque année",
    "The rules of the money": "Les règles du calcul des coûts",
    "Households among the people served": "Ménages parmi les personnes desservies",
    "The constant-rate pumping test on record": "L'essai de pompage à débit constant connu",
    "Results of the analysis of the raw water": "Résultats de l'analyse de l'eau brute",
    "A few prices": "Quelques prix",
    "Price of one pipe of the tables": "Prix d'un tuyau des tables",
    "The cables": "Les câbles",
    "The run from the array to the controller": "Le câble du champ au variateur",
    "The run from grid or generator to the controller": (
        "Le câble du réseau électrique ou du groupe électrogène au variateur"
    ),
    "The run from the controller down to the motor": "Le câble du variateur jusqu'au moteur",
    # clés sans nombre
    "Name of the project": "Nom du projet",
    "The question the comparison should answer": "La question à laquelle la comparaison doit répondre",
    "Files": "Fichiers",
    "Currency of every price": "Monnaie de tous les prix",
    "Language of the answer and the reports": "Langue de la réponse et des rapports",
    "When the prices were asked": "Quand les prix ont été demandés",
    "Who prepared the study": "Qui a établi l'étude",
    "When the site was visited": "Quand le site a été visité",
    "Revision of the study": "Révision de l'étude",
    "Site": "Site du forage",
    "Name of the place": "Nom du lieu",
    "Fixed offset of local standard time such as '+05": "Décalage fixe de l'heure normale locale",
    "The weather": "La météo",
    "Kind": "Genre",
    "Monthly mean of daily irradiation on a horizontal plane": (
        "Moyenne mensuelle de l'irradiation journalière sur un plan horizontal"
    ),
    "Monthly mean air temperature": "Température moyenne mensuelle de l'air",
    "Monthly mean of the daily range": "Moyenne mensuelle de l'amplitude journalière",
    "Law of daily clearness": "Loi de clarté journalière",
    "Brightest day of a month": "Jour le plus clair d'un mois",
    "Path of the weather file": "Chemin du fichier météo",
    "Format of the file": "Format du fichier",
    "When in the day the water is drawn": "Quand l'eau est puisée dans la journée",
    "Who draws the water": "Qui puise l'eau",
    "Net irrigation requirement by month": "Besoin net d'irrigation par mois",
    "Steps of a pumping test": "Paliers d'un essai de pompage",
    "Friction formula": "Formule des pertes de charge",
    "Pipe of that main": "Tuyau de cette conduite",
    "Pipe of the riser in the borehole": "Tuyau de la colonne montante dans le forage",
    "Runs of pipe from the pump to the tank": "Tronçons de conduite de la pompe au réservoir",
    "Which run of pipe": "Quel tronçon de conduite",
    "A size from the pipe tables": "Une taille des tables de tuyaux",
    "Ground level along the route": "Niveau du sol le long du tracé",
    "Whether an air valve stands there": "S'il y a là une ventouse",
    "Which pump": "Quelle pompe",
    "Kind of pump end": "Genre de partie pompe",
    "Points of the datasheet at rated speed": "Points de la fiche technique à la vitesse nominale",
    "The rest of the nameplate": "Le reste de la plaque signalétique",
    "DC supply voltage as printed": "Tension d'alimentation CC telle qu'imprimée",
    "AC supply voltage as printed": "Tension d'alimentation CA telle qu'imprimée",
    "Frequency of the AC supply as printed": "Fréquence de l'alimentation CA telle qu'imprimée",
    "Code letter of the locked-rotor kVA": "Lettre de code des kVA rotor bloqué",
    "Speed as printed": "Vitesse telle qu'imprimée",
    "Insulation class": "Classe d'isolation",
    "Ingress protection": "Degré de protection",
    "'parallel' adds grid or generator to the sun in the same hour": (
        "Réseau électrique ou groupe électrogène ajouté au soleil dans la même heure, ou non"
    ),
    "How the motor starts on grid or generator": (
        "Comment le moteur démarre sur réseau électrique ou groupe électrogène"
    ),
    "Topup": "Appoint",
    "The sources of power": "Les sources d'énergie",
    "The sun": "Le soleil",
    "The module": "Le module",
    "Planes of the array": "Plans du champ",
    "The same by month": "Le même par mois",
    "What light that falls in aslant loses at the module's glass": (
        "Ce que perd au verre du module la lumière qui arrive de biais"
    ),
    "Model of the sky's light on a tilted plane": "Modèle de la lumière du ciel sur un plan incliné",
    "Hours of the day in which the grid is on": "Heures du jour où le réseau électrique est là",
    "Random outages within those hours": "Coupures aléatoires dans ces heures",
    "Hours without grid in each month against each other": (
        "Heures sans réseau de chaque mois, l'un par rapport à l'autre"
    ),
    "How often outages begin in each hour of the day from midnight": (
        "Combien de fois les coupures commencent à chaque heure du jour depuis minuit"
    ),
    "The tariff": "Le tarif",
    "Time bands with their own price": "Plages horaires avec leur propre prix",
    "Name of the band": "Nom de la plage",
    "Parts of the day": "Parties du jour",
    "Months in which the band holds": "Mois où vaut la plage",
    "Rising": "Tranches",
    "A generator": "Un groupe électrogène",
    "Hours of the day in which it may run": "Heures du jour où il peut marcher",
    "Sizes that can be built": "Tailles qui peuvent être construites",
    "Supply options to compare": "Options d'alimentation à comparer",
    "Supply option against which saving and payback are counted": (
        "Option d'alimentation par rapport à laquelle économie et délai de récupération sont comptés"
    ),
    "Further lines of the bill of quantities": "Autres lignes du devis quantitatif",
    "What it is": "Ce que c'est",
    "Unit of the quantity": "Unité de la quantité",
    "Sources it belongs to": "Sources auxquelles elle appartient",
    "Yearly costs": "Coûts annuels",
    "Constant prices of year 0": "Prix constants de l'année 0",
    "Currency of the programme": "Monnaie du programme",
    "The households that pay": "Les ménages qui paient",
    "Day of the test": "Jour de l'essai",
    "Who tested": "Qui a fait l'essai",
    "Results of the water's analysis": "Résultats de l'analyse de l'eau",
    "Day of the sample": "Jour de l'échantillon",
    "Who analysed it": "Qui l'a analysé",
    "A short price list": "Une courte liste de prix",
    "Pipes with a price of their own": "Tuyaux avec leur propre prix",
    "The pipe": "Le tuyau",
    "Array to controller": "Du champ au variateur",
    "Copper of the conductor": "Cuivre du conducteur",
    "How it is laid": "Comment il est posé",
    "Whether it is made for sun and weather": "S'il est fait pour le soleil et les intempéries",
    "Grid or generator to controller": "Du réseau électrique ou du groupe électrogène au variateur",
    "Its kind": "Son genre",
    "Controller to motor": "Du variateur au moteur",
    "What it carries": "Ce qu'il porte",
    # choix
    "household": "ménages",
    "school": "école",
    "livestock": "bétail",
    "morning": "matin",
    "night": "nuit",
    "even": "uniforme",
    "by latitude": "selon la latitude",
    "clear sky": "ciel clair",
    "general": "général",
    "soft": "en douceur",
    "direct": "en direct",
    "glass": "verre",
    "coated glass": "verre traité",
    "breaker": "disjoncteur",
    "gG fuse": "fusible gG",
    "plain": "nu",
    "tinned": "étamé",
    "constant": "constants",
    "nominal": "courants",
    "parallel": "parallèle",
    "changeover": "inversion de source",
    "centrifugal": "centrifuge",
    "helical-rotor": "à rotor hélicoïdal",
    "estimate": "estimation",
    "monthly": "mensuel",
    "file": "fichier",
    "auto": "au choix",
    # sources des valeurs par défaut
    "no currency in ISO 4217: no prices, and a technical answer": (
        "aucune monnaie dans l'ISO 4217 : pas de prix, et une réponse technique"
    ),
    "the language of these files": "la langue de ces fichiers",
    (
        "Saunier, Reddy and Kumar 1987, Solar Energy 38:169-177, for the tropics; Bendt, Collares-Pereira and Rabl "
        "1981, Solar Energy 27:1-5, beyond; the latitudes assumed, judged at three typical years"
    ): (
        "Saunier, Reddy et Kumar 1987, Solar Energy 38:169-177, pour les tropiques ; Bendt, Collares-Pereira et Rabl "
        "1981, Solar Energy 27:1-5, au-delà ; latitudes supposées, jugées sur trois années types"
    ),
    "Hollands and Huget 1983, Solar Energy 30:195-209; the 1.15 assumed, judged at three typical years": (
        "Hollands et Huget 1983, Solar Energy 30:195-209 ; le 1,15 supposé, jugé sur trois années types"
    ),
    "guessed from the file's name and first lines": "deviné d'après le nom du fichier et ses premières lignes",
    "Darcy-Weisbach with Colebrook-White": "Darcy-Weisbach avec Colebrook-White",
    "none mentioned": "aucune mentionnée",
    "the more common kind of hybrid drive, from memory": "le genre de variateur hybride le plus courant, de mémoire",
    "what a drive does": "ce que fait un variateur",
    "De Soto, Klein and Beckman 2006, Solar Energy 80:78-88; plain glass loses most": (
        "De Soto, Klein et Beckman 2006, Solar Energy 80:78-88 ; le verre simple perd le plus"
    ),
    (
        "Perez et al. 1990, Solar Energy 44:271-289, made continuous by Driesse, Jensen and Perez 2024, Solar Energy "
        "267:112093"
    ): (
        "Perez et al. 1990, Solar Energy 44:271-289, rendu continu par Driesse, Jensen et Perez 2024, Solar Energy "
        "267:112093"
    ),
    "item": "pièce",
    "constant prices": "prix constants",
    "the careful choice": "le choix prudent",
    # ce que veut dire l'absence
    "the name of the project": "le nom du projet",
    "from the coordinates": "d'après les coordonnées",
    "taken from pvlib's world grid": "pris de la grille mondiale de pvlib",
    "the coldest hour of the weather less 5 K": "l'heure la plus froide de la météo moins 5 K",
    "the hottest hour of the weather": "l'heure la plus chaude de la météo",
    "derived from the clearness of each month (Erbs, Klein and Beckman 1983), poor at humid places": (
        "tiré de la clarté de chaque mois (Erbs, Klein et Beckman 1983), mauvais dans les lieux humides"
    ),
    "what chance makes of the month's days by the law of daily clearness, about 2 to 14 %": (
        "ce que le hasard fait des jours du mois selon la loi de clarté journalière, environ 2 à 14 %"
    ),
    "the kind of user": "le genre d'usager",
    "the growth of the whole demand": "la croissance de tous les besoins",
    "the profile of the whole demand": "le profil de tous les besoins",
    "the largest flow of the pumping test": "le plus grand débit de l'essai de pompage",
    "no daily limit": "aucune limite journalière",
    "no sleeve": "aucune chemise",
    "chosen by velocity and pressure": "choisi selon vitesse et pression",
    "from the pipe table": "de la table des tuyaux",
    "the inside diameter is used": "le diamètre intérieur est utilisé",
    "of the pipe's material (0.007 mm plastic)": "du matériau du tuyau (0,007 mm pour le plastique)",
    "of the pipe's material (150 plastic, 120 galvanised steel)": (
        "du matériau du tuyau (150 plastique, 120 acier galvanisé)"
    ),
    "from material and wall of the pipe table": "du matériau et de la paroi de la table des tuyaux",
    "it stops at once, the worst case": "il s'arrête d'un coup, le pire cas",
    "from how far the largest flow lies above the rated one": (
        "de combien le plus grand débit dépasse le débit nominal"
    ),
    "the usual letter of motors of its size": "la lettre usuelle des moteurs de sa taille",
    "0 m in the hourly run, assumed": "0 m dans le calcul horaire, hypothèse",
    "the pump's rated power": "la puissance nominale de la pompe",
    "the plate's DC voltage, else no lower limit in the hourly run": (
        "la tension CC de la plaque, sinon pas de limite basse dans le calcul horaire"
    ),
    "the plate's DC voltage, else no upper limit in the hourly run": (
        "la tension CC de la plaque, sinon pas de limite haute dans le calcul horaire"
    ),
    "what the controller's voltages and the pump's power ask for": (
        "ce que demandent les tensions du variateur et la puissance de la pompe"
    ),
    "Static water level by month: depth of the water at rest": (
        "Niveau statique par mois : profondeur de l'eau au repos"
    ),
    "the same level all year": "le même niveau toute l'année",
    "no loss but that in the array's DC wiring": "aucune perte hors celle du câblage CC du champ",
    "ready lists of candidates": "listes de candidats toutes faites",
    "a ready list of inputs is moved down and up by a fifth": (
        "une liste toute faite de données varie d'un cinquième vers le bas et vers le haut"
    ),
    "no outages": "aucune coupure",
    "see segments": "voir segments",
    "no generator option": "aucune option avec groupe électrogène",
    "no bill per household": "aucune facture par ménage",
    "Daily volume by month": "Volume par jour, mois par mois",
    "as test_flow_m3h": "comme test_flow_m3h",
    "specific_capacity_m3h_per_m or step_test is used": "specific_capacity_m3h_per_m ou step_test est utilisé",
    "every price stands with the thing itself": "chaque prix figure avec la chose elle-même",
    "Candidates that 'planner size' tries": "Candidats qu'essaie 'planner size'",
    "What 'planner sweep' varies": "Ce que fait varier 'planner sweep'",
    "no grid option": "aucune option avec réseau",
    "no solar option": "aucune option solaire",
    "no loss counted": "aucune perte comptée",
    "the array's loss in the DC wiring": "la perte du champ dans le câblage CC",
    "the sun alone": "le soleil seul",
    "inner_diameter_mm is used": "inner_diameter_mm est utilisé",
    "the same share in every month": "la même part chaque mois",
    "the same loss in every month": "la même perte chaque mois",
    "a steady loss to dust": "une perte constante par poussière",
    "alike in every month": "pareil chaque mois",
    "alike in every hour": "pareil chaque heure",
    "no limit": "aucune limite",
    "blocks are given instead": "des tranches sont indiquées à la place",
    "no upper end": "pas de fin haute",
    "no figure: grid emissions are not counted": "pas de chiffre : les émissions du réseau ne sont pas comptées",
    "what the pump needs to start and run here": "ce qu'il faut à la pompe pour démarrer et marcher ici",
    "read off the sizes between their prices": "lu entre les tailles et leurs prix",
    "no such condition": "pas de condition de ce genre",
    "the value at which the answer would turn is worked out": "la valeur à laquelle la réponse changerait est calculée",
    "generator alone, else grid alone, else the first option": (
        "groupe électrogène seul, sinon réseau électrique seul, sinon la première option"
    ),
    "lasts the whole life": "dure toute la période",
    "published figures of 2011 are shown as they are": "les chiffres publiés de 2011 sont montrés tels quels",
    "what has no price of its own is named as unpriced": "ce qui n'a pas de prix à lui est nommé comme sans prix",
    "the smallest that bears the current and loses no more of the voltage than is allowed": (
        "la plus petite qui supporte le courant et ne perd pas plus de tension qu'il n'est permis"
    ),
    "the hottest hour of the weather; in the ground, the mean of the warmest month": (
        "l'heure la plus chaude de la météo ; dans le sol, la moyenne du mois le plus chaud"
    ),
    "IEC 60364-5-52 for PVC, with the factors for ambient temperature and grouping": (
        "CEI 60364-5-52 pour le PVC, avec les facteurs de température ambiante et de groupement"
    ),
    "no test on record": "aucun essai connu",
    "not analysed": "non analysé",
}
