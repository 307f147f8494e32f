"""Ce que les modèles du scénario et le catalogue des grandeurs disent en anglais : noms, unités, sources."""

NAMES: dict[str, str] = {
    "Seed of everything drawn at random": "Graine de tout ce qui est tiré au sort",
    "Latitude": "Latitude",
    "Longitude": "Longitude",
    "Ground level above the sea": "Altitude du sol",
    "Lowest air temperature to be expected in the life of the works": (
        "Température de l'air la plus basse à prévoir pendant la vie des ouvrages"
    ),
    "Highest air temperature to be expected": "Température de l'air la plus haute à prévoir",
    "Standard deviation of the yearly irradiation about its mean": (
        "Écart type de l'irradiation annuelle autour de sa moyenne"
    ),
    "Standard deviation of a month's irradiation beside that of its year": (
        "Écart type de l'irradiation d'un mois, en plus de celui de son année"
    ),
    "Growth of demand": "Croissance des besoins",
    "Share of the water leaving the tank that is lost": "Part perdue de l'eau qui quitte le réservoir",
    "Further water lost at a steady rate day and night": "Autre eau perdue de façon constante jour et nuit",
    "Growth of this user's demand": "Croissance des besoins de cet usager",
    "Number of people in the first year": "Nombre de personnes la première année",
    "Water per person and day": "Eau par personne et par jour",
    "Number of animals in the first year": "Nombre d'animaux la première année",
    "Water per animal and day": "Eau par animal et par jour",
    "Watered area": "Surface arrosée",
    "Share of the water applied that the crop can use": "Part de l'eau apportée que la culture peut utiliser",
    "Price": "Prix",
    "Service life": "Durée de vie",
    "Yearly maintenance as a share of the price": "Entretien annuel en part du prix",
    "Static water level": "Niveau statique",
    "Depth of the pump's intake": "Profondeur de l'aspiration de la pompe",
    "Specific capacity": "Débit spécifique",
    "Flow of a pumping test of one step": "Débit d'un essai de pompage à un palier",
    "Drawdown at that flow": "Rabattement à ce débit",
    "Flow of the step": "Débit du palier",
    "Drawdown at the end of the step": "Rabattement à la fin du palier",
    "Safe yield": "Débit d'exploitation",
    "How much deeper the static water level stands each year": "Baisse annuelle du niveau statique",
    "Yearly loss of specific capacity": "Perte annuelle de débit spécifique",
    "Volume allowed per day by permit or test": "Volume journalier autorisé par le permis ou l'essai",
    "Temperature of the water": "Température de l'eau",
    "Depth of the borehole": "Profondeur du forage",
    "Inside diameter of the casing at the pump": "Diamètre intérieur du tubage à la pompe",
    "Depth of the top of the screen": "Profondeur du haut de la crépine",
    "Inside diameter of a flow sleeve over the motor": "Diamètre intérieur d'une chemise de refroidissement du moteur",
    "Height of the tank's inlet above the ground at the borehole": (
        "Hauteur de l'entrée du réservoir au-dessus du sol au forage"
    ),
    "Head to be left at the tank's inlet": "Pression résiduelle à l'entrée du réservoir",
    "Length of the main from the borehole to the tank": "Longueur de la conduite du forage au réservoir",
    "Length": "Longueur",
    "Inside diameter": "Diamètre intérieur",
    "Roughness of the wall": "Rugosité de la paroi",
    "Hazen-Williams C": "Coefficient C de Hazen-Williams",
    "Sum of the loss coefficients K of the fittings": "Somme des coefficients de perte K des raccords",
    "Pressure class of the pipe at 20 deg C": "Classe de pression du tuyau à 20 °C",
    "Speed of a pressure wave in the full pipe": "Vitesse d'une onde de pression dans la conduite pleine",
    "Distance along the pipe from the borehole": "Distance le long de la conduite depuis le forage",
    "Level of the ground above the ground at the borehole": "Niveau du sol au-dessus du sol au forage",
    "Shortest time in which the flow can stop": "Temps le plus court dans lequel le débit peut s'arrêter",
    "Rated flow": "Débit nominal",
    "Rated head": "Hauteur nominale",
    "Largest flow": "Débit maximal",
    "Largest head": "Hauteur maximale",
    "Electrical input of the motor at the rated duty": "Puissance électrique absorbée par le moteur au point nominal",
    "Lowest speed as a share of the rated speed": "Vitesse la plus basse en part de la vitesse nominale",
    "Efficiency of the motor at its rated load": "Rendement du moteur à sa charge nominale",
    "Yearly loss of flow at the rated head by wear": "Perte annuelle de débit à la hauteur nominale par usure",
    "Flow": "Débit",
    "Head": "Hauteur",
    "Electrical input of the motor": "Puissance électrique absorbée par le moteur",
    "Lowest DC supply voltage": "Tension d'alimentation CC la plus basse",
    "Highest DC supply voltage": "Tension d'alimentation CC la plus haute",
    "Lowest AC supply voltage": "Tension d'alimentation CA la plus basse",
    "Highest AC supply voltage": "Tension d'alimentation CA la plus haute",
    "Phases of the AC supply": "Phases de l'alimentation CA",
    "Highest current": "Courant maximal",
    "Lowest speed": "Vitesse la plus basse",
    "Highest speed": "Vitesse la plus haute",
    "Frame size": "Taille du corps",
    "Largest outside diameter": "Plus grand diamètre extérieur",
    "Highest temperature of the liquid": "Température maximale du liquide",
    "Water needed above the intake": "Hauteur d'eau nécessaire au-dessus de l'aspiration",
    "Length of the motor below the intake": "Longueur du moteur sous l'aspiration",
    "Largest output to the motor": "Plus grande puissance fournie au moteur",
    "Efficiency from the array to the motor": "Rendement du champ au moteur",
    "Efficiency from the AC supply to the motor": "Rendement de l'alimentation CA au moteur",
    "Lowest array voltage at which it works": "Tension du champ la plus basse à laquelle il fonctionne",
    "Highest array voltage at which it works": "Tension du champ la plus haute à laquelle il fonctionne",
    "Array voltage that would destroy it": "Tension du champ qui le détruirait",
    "Largest array current that it may be given": "Courant maximal du champ qu'il supporte",
    "Level at which top-up starts where the sun is a source": (
        "Niveau de démarrage de l'appoint quand le soleil est une source"
    ),
    "Level at which top-up stops where the sun is a source": (
        "Niveau d'arrêt de l'appoint quand le soleil est une source"
    ),
    "Level at which pumping starts where the sun is no source": (
        "Niveau de démarrage du pompage quand le soleil n'est pas une source"
    ),
    "Level at which pumping stops where the sun is no source": (
        "Niveau d'arrêt du pompage quand le soleil n'est pas une source"
    ),
    "Rated power": "Puissance nominale",
    "Voltage at the maximum power point": "Tension au point de puissance maximale",
    "Current at the maximum power point": "Courant au point de puissance maximale",
    "Open-circuit voltage": "Tension à vide",
    "Short-circuit current": "Courant de court-circuit",
    "Temperature coefficient of the short-circuit current": ("Coefficient de température du courant de court-circuit"),
    "Temperature coefficient of the open-circuit voltage": "Coefficient de température de la tension à vide",
    "Highest system voltage of the module": "Tension système maximale du module",
    "Largest series fuse of the module": "Plus gros fusible série du module",
    "Modules in one string": "Modules par chaîne",
    "Strings in parallel": "Chaînes en parallèle",
    "Largest number of strings tried when strings is 'auto'": (
        "Plus grand nombre de chaînes essayé quand il est laissé au choix"
    ),
    "Rated current of the fuses in each string": "Courant nominal des fusibles de chaque chaîne",
    "Tilt from the horizontal": "Inclinaison par rapport à l'horizontale",
    "Azimuth": "Azimut",
    "Share of the strings on this plane": "Part des chaînes sur ce plan",
    "Energy lost to the shade of trees": "Énergie perdue par l'ombrage des arbres",
    "Loss to dust and dirt": "Perte par poussière et salissure",
    "Growth of the loss to dust with each day without rain or cleaning": (
        "Croissance de la perte par poussière à chaque jour sans pluie ni nettoyage"
    ),
    "Days between cleanings": "Jours entre deux nettoyages",
    "Mismatch": "Perte par disparité des modules",
    "Loss in the DC wiring": "Perte dans le câblage CC",
    "Light-induced degradation": "Dégradation initiale due à la lumière",
    "Loss of power per year": "Perte de puissance par an",
    "Reflectance of the ground": "Réflectance du sol",
    "Price per module of mounting structure": "Prix de la structure de montage par module",
    "Service life of the mounting structure": "Durée de vie de la structure de montage",
    "Service life of the connection": "Durée de vie du raccordement",
    "Mean hours without grid per day": "Heures moyennes sans réseau électrique par jour",
    "Mean duration of one outage": "Durée moyenne d'une coupure",
    "Largest power the connection gives": "Puissance maximale du raccordement",
    "Nominal voltage at the pump's connection": "Tension nominale au raccordement de la pompe",
    "Variation of the voltage": "Variation de la tension",
    "Phases": "Phases",
    "Frequency": "Fréquence",
    "Length of new line to the pump": "Longueur de nouvelle ligne jusqu'à la pompe",
    "Price of new line": "Prix de la nouvelle ligne",
    "Energy price outside the bands": "Prix de l'énergie hors des plages horaires",
    "Energy price": "Prix de l'énergie",
    "Monthly use up to which the price holds": "Consommation mensuelle jusqu'à laquelle vaut le prix",
    "Fixed charge": "Prime fixe",
    "Charge on the highest half-hourly demand of each month": (
        "Prime sur la plus forte puissance semi-horaire de chaque mois"
    ),
    "Levies on energy": "Taxes sur l'énergie",
    "Tax on the whole bill": "Taxe sur toute la facture",
    "Growth of the tariff beyond general inflation": "Hausse du tarif au-delà de l'inflation générale",
    "Carbon dioxide per kWh": "Dioxyde de carbone par kWh",
    "Longest life whatever the hours": "Durée de vie maximale quelles que soient les heures",
    "Rated power at the reference conditions": "Puissance nominale dans les conditions de référence",
    "Fuel at no load": "Carburant à vide",
    "Further fuel per kWh": "Carburant supplémentaire par kWh",
    "Price of fuel at the filling station": "Prix du carburant à la station",
    "Cost of bringing the fuel to the site": "Coût du transport du carburant jusqu'au site",
    "Growth of the fuel price beyond general inflation": "Hausse du prix du carburant au-delà de l'inflation générale",
    "Shortest run once started": "Marche la plus courte après un démarrage",
    "Loss of rating per 100 m above the altitude from which it falls": (
        "Perte de puissance par 100 m au-dessus de l'altitude à partir de laquelle elle baisse"
    ),
    "Altitude from which the rating falls": "Altitude à partir de laquelle la puissance baisse",
    "Loss of rating per kelvin above the air temperature from which it falls": (
        "Perte de puissance par kelvin au-dessus de la température de l'air à partir de laquelle elle baisse"
    ),
    "Air temperature from which the rating falls": "Température de l'air à partir de laquelle la puissance baisse",
    "Voltage": "Tension",
    "Transient reactance of the alternator": "Réactance transitoire de l'alternateur",
    "Running hours until it is replaced": "Heures de marche jusqu'au remplacement",
    "Running hours between services": "Heures de marche entre deux révisions courantes",
    "Price of one service": "Prix d'une révision courante",
    "Running hours between overhauls": "Heures de marche entre deux révisions générales",
    "Price of one overhaul": "Prix d'une révision générale",
    "Carbon dioxide per litre of fuel": "Dioxyde de carbone par litre de carburant",
    "Volume": "Volume",
    "Price of the given volume": "Prix du volume indiqué",
    "Height of the tank's outlet above the ground at the taps": (
        "Hauteur de la sortie du réservoir au-dessus du sol aux robinets"
    ),
    "Least share of the life's demand that must be delivered": (
        "Part minimale des besoins de toute la période à fournir"
    ),
    "Least share that must be delivered in the worst year": "Part minimale à fournir l'année la plus défavorable",
    "Longest run of short days allowed in any year": (
        "Plus longue suite admise de jours sans assez d'eau dans une année"
    ),
    "How many": "Nombre",
    "Price per unit": "Prix unitaire",
    "Cost per year": "Coût par an",
    "Labour and transport of the first building": "Main-d'œuvre et transport de la première construction",
    "Contingency on the capital cost": "Imprévus sur le coût d'investissement",
    "Design and supervision": "Études et contrôle des travaux",
    "Value added tax on the capital cost with contingency and supervision": (
        "Taxe sur la valeur ajoutée sur l'investissement avec imprévus et contrôle"
    ),
    "Direct support": "Appui direct",
    "Analysis period": "Période d'analyse",
    "Discount rate": "Taux d'actualisation",
    "General inflation": "Inflation générale",
    "Share of the capital cost paid by a grant": "Part de l'investissement payée par une subvention",
    "Share of the capital cost paid by a loan": "Part de l'investissement payée par un prêt",
    "Interest on the loan": "Taux d'intérêt du prêt",
    "Years to repay the loan": "Années de remboursement du prêt",
    "What users pay for delivered water": "Prix de l'eau payé par les usagers",
    "Interest on the savings for replacements beyond inflation": (
        "Intérêt de l'épargne pour les remplacements au-delà de l'inflation"
    ),
    "Units of the scenario's currency for one unit of the programme's": (
        "Unités de la monnaie du scénario pour une unité de celle du programme"
    ),
    "Prices in US dollars at the price date": "Prix en dollars américains à la date des prix",
    "People per household": "Personnes par ménage",
    "Income of a household": "Revenu d'un ménage",
    "Income of a household of the poorest fifth": "Revenu d'un ménage du cinquième le plus pauvre",
    "Share of the water delivered that is paid for": "Part payée de l'eau fournie",
    "Flow held through the test": "Débit maintenu pendant l'essai",
    "How long it was held": "Durée de l'essai",
    "Depth of the water at rest before the test": "Profondeur de l'eau au repos avant l'essai",
    "Depth of the water at the end of the test": "Profondeur de l'eau à la fin de l'essai",
    "How long the recovery was watched": "Durée d'observation de la remontée",
    "Depth of the water at the end of the recovery": "Profondeur de l'eau à la fin de la remontée",
    "E. coli or thermotolerant coliforms": "E. coli ou coliformes thermotolérants",
    "Arsenic": "Arsenic",
    "Fluoride": "Fluorure",
    "Nitrate": "Nitrate",
    "Nitrite": "Nitrite",
    "Manganese": "Manganèse",
    "Lead": "Plomb",
    "Uranium": "Uranium",
    "Boron": "Bore",
    "Chromium": "Chrome",
    "Cadmium": "Cadmium",
    "Iron": "Fer",
    "Chloride": "Chlorure",
    "Sulfate": "Sulfate",
    "Sodium": "Sodium",
    "Total hardness": "Dureté totale",
    "Total dissolved solids": "Solides dissous totaux",
    "Electrical conductivity": "Conductivité électrique",
    "Turbidity": "Turbidité",
    "pH": "pH",
    "PV array with its stand": "Champ photovoltaïque avec sa structure",
    "Tank": "Réservoir",
    "Pipe that is not in the list of pipes": "Tuyau qui n'est pas dans la liste des tuyaux",
    "Price per metre": "Prix au mètre",
    "Pump": "Pompe",
    "Controller": "Variateur (contrôleur de pompe)",
    "Borehole": "Forage",
    "Connection to the grid": "Raccordement au réseau électrique",
    "Energy from the grid": "Énergie du réseau électrique",
    "Generator": "Groupe électrogène",
    "Fuel": "Carburant",
    "Length of the run": "Longueur du câble",
    "Cross-section of one conductor": "Section d'un conducteur",
    "Class of the conductor": "Classe du conducteur",
    "Working temperature of the conductor": "Température de service du conducteur",
    "Temperature of what surrounds it": "Température de ce qui l'entoure",
    "Loaded circuits that lie bunched together or in one conduit": ("Circuits chargés groupés ou dans un même conduit"),
    "Current-carrying capacity here": "Courant admissible ici",
    "Highest DC voltage for which the cable is made": "Tension CC maximale pour laquelle le câble est fait",
    "Power factor of what it feeds": "Facteur de puissance de ce qu'il alimente",
    "Rated current of the circuit breaker or fuse that protects it": (
        "Courant nominal du disjoncteur ou du fusible qui le protège"
    ),
    "Voltage at its upper end at rated power": "Tension à son extrémité haute à la puissance nominale",
    # ce qui limite le débit
    "rated speed": "vitesse nominale",
    "safe yield": "débit d'exploitation",
    "power limit": "limite de puissance",
    "intake level": "niveau de l'aspiration",
    # parties des ouvrages
    "Demand": "Besoins",
    "Users": "Usagers",
    "Pipeline": "Conduite",
    "Sources": "Sources",
    "Solar": "Solaire",
    "Grid": "Réseau électrique",
    "Tariff": "Tarif",
    "Weather": "Météo",
    "Service": "Service",
    "Costs": "Coûts",
    "Items": "Éléments",
    "Yearly": "Annuels",
    "Finance": "Finances",
    "Households": "Ménages",
    "Cables": "Câbles",
    "Prices": "Prix",
    "Pipes": "Tuyaux",
    "Pumping test": "Essai de pompage",
    "Water quality": "Qualité de l'eau",
    "Step test": "Essai par paliers",
    "Curve": "Courbe",
    "Outages": "Coupures de courant",
    "Module": "Module",
    "Planes": "Plans",
    "Profile": "Profil",
    "Segments": "Tronçons",
}

UNITS: dict[str, str] = {
    "% of demand": "% des besoins",
    "% of income": "% du revenu",
    "% of pumped": "% de l'eau pompée",
    "% of tank": "% du réservoir",
    "%/day": "%/jour",
    "%/year": "%/an",
    "L/head/day": "L/tête/jour",
    "L/person/day": "L/personne/jour",
    "L/year": "L/an",
    "as the key": "comme la clé",
    "days": "jours",
    "days/year": "jours/an",
    "deg": "°",
    "deg C": "°C",
    "h/day": "h/jour",
    "h/year": "h/an",
    "head": "têtes",
    "in": "pouces",
    "kWh/m2/day": "kWh/m2/jour",
    "kWh/month": "kWh/mois",
    "kWh/year": "kWh/an",
    "kg/year": "kg/an",
    "kWp": "kWc",
    "money/kWp": "money/kWc",
    "m/year": "m/an",
    "m3/day": "m3/jour",
    "m3/h per m": "m3/h par m",
    "m3/household/month": "m3/ménage/mois",
    "m3/year": "m3/an",
    "mm/day": "mm/jour",
    "money/household/month": "money/ménage/mois",
    "money/kW/month": "money/kW/mois",
    "money/month": "money/mois",
    "money/person": "money/personne",
    "money/person/year": "money/personne/an",
    "money/year": "money/an",
    "people": "personnes",
    "per 100 mL": "par 100 mL",
    "rpm": "tr/min",
    "years": "ans",
}

SOURCES: dict[str, str] = {
    "1 % per 100 m above 305 m: MSHA rule for naturally aspirated engines": (
        "1 % par 100 m au-dessus de 305 m : règle de la MSHA pour les moteurs atmosphériques"
    ),
    "5 % at 43 deg C: Hicks, Handbook of Energy Engineering Calculations": (
        "5 % à 43 °C : Hicks, Handbook of Energy Engineering Calculations"
    ),
    "Dobos 2014, NREL/TP-6A20-62641": "Dobos 2014, NREL/TP-6A20-62641",
    "Hicks, Handbook of Energy Engineering Calculations": "Hicks, Handbook of Energy Engineering Calculations",
    "Jordan and Kurtz 2013, Prog. Photovolt. 21:12-29, median": (
        "Jordan et Kurtz 2013, Prog. Photovolt. 21:12-29, médiane"
    ),
    "MSHA rule for naturally aspirated engines": "règle de la MSHA pour les moteurs atmosphériques",
    "Skarstein and Uhlen 1989, Wind Eng. 13(2), from memory": "Skarstein et Uhlen 1989, Wind Eng. 13(2), de mémoire",
    (
        "World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, from memory; "
        "take the funder's own"
    ): (
        "Banque mondiale, Discounting costs and benefits in economic analysis of World Bank projects, 2016, de "
        "mémoire ; prendre celui du bailleur de fonds"
    ),
    "a bound of the search": "une borne de la recherche",
    "a choice left to the planner": "un choix laissé au calcul",
    "as the start level": "comme le niveau de démarrage",
    "assumed": "hypothèse",
    ("assumed for clean water, near the 0.57 % of efficiency of a Hydraulic Institute case; silt 1, sand 3"): (
        "hypothèse pour une eau propre, proche des 0,57 % de rendement d'un cas du Hydraulic Institute ; limon 1, "
        "sable 3"
    ),
    "assumed for hard rock and limestone; sandstone 2, iron-rich alluvium 4": (
        "hypothèse pour roche dure et calcaire ; grès 2, alluvions ferrugineuses 4"
    ),
    "assumed, common practice, no source": "hypothèse, pratique courante, sans source",
    "assumed; boreholes are held to last 20 to 50 years, from memory": (
        "hypothèse ; on estime qu'un forage dure de 20 à 50 ans, de mémoire"
    ),
    "assumed; buried plastic pipe is made for 50 years and more, from memory": (
        "hypothèse ; une conduite en plastique enterrée est faite pour 50 ans et plus, de mémoire"
    ),
    "commercial sets 20 000-30 000 h": "groupes du commerce 20 000 à 30 000 h",
    "common practice, no source": "pratique courante, sans source",
    "from memory": "de mémoire",
    "diesel: IPCC 2006 Guidelines vol. 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L": (
        "gazole : lignes directrices du GIEC 2006 vol. 2, 74,1 kg/GJ, 43,0 GJ/t, 0,84 kg/L"
    ),
    "every bill is paid: enter what is known of bills paid in the area": (
        "toutes les factures sont payées : indiquer ce que l'on sait des factures payées dans la région"
    ),
    "free outlet": "sortie libre",
    "laid by itself": "posé seul",
    "no charge entered": "aucune prime indiquée",
    "no cost entered": "aucun coût indiqué",
    "no fall; 0.3 in stressed and 1 in over-drawn aquifers: assumed from reported falls": (
        "aucune baisse ; 0,3 dans les nappes sollicitées et 1 dans les nappes surexploitées : hypothèse d'après des "
        "baisses rapportées"
    ),
    "no grant entered": "aucune subvention indiquée",
    "no growth assumed": "hypothèse : aucune croissance",
    "no leakage assumed": "hypothèse : aucune fuite",
    "no levy entered": "aucune taxe indiquée",
    "no loan entered": "aucun prêt indiqué",
    "no minimum": "aucun minimum",
    "no new line": "aucune nouvelle ligne",
    "no price entered": "aucun prix indiqué",
    "no shade assumed; look at the site": "hypothèse : aucun ombrage ; à vérifier sur place",
    "no tax entered": "aucune taxe indiquée",
    "none": "aucun",
    "none assumed": "hypothèse : aucun",
    "none entered": "rien d'indiqué",
    "none entered: every price holds the tax that it bears": (
        "rien d'indiqué : chaque prix comprend la taxe qu'il supporte"
    ),
    "none: an account that keeps up with inflation": "aucun : un compte qui suit l'inflation",
    "oil and filter every 250 h: common service schedules": (
        "huile et filtre toutes les 250 h : plans de révision usuels"
    ),
    "one": "un",
    "one plane": "un seul plan",
    (
        "rural supply in the National Water Policy of Tanzania 2002, from memory; WHO (Howard and Bartram 2003) calls "
        "about 20 basic access, Sphere 2018 asks for at least 15 in an emergency"
    ): (
        "desserte rurale dans la politique nationale de l'eau de la Tanzanie 2002, de mémoire ; l'OMS (Howard et "
        "Bartram 2003) appelle environ 20 accès de base, Sphère 2018 demande au moins 15 en situation d'urgence"
    ),
    "same scenario, same seed, same numbers": "même scénario, même graine, mêmes nombres",
    "steel tank 20-30 years, from memory": "réservoir en acier 20 à 30 ans, de mémoire",
    "supply voltage of public networks: IEC 60038, EN 50160": (
        "tension d'alimentation des réseaux publics : CEI 60038, EN 50160"
    ),
    "the highest for PVC insulation, IEC 60364-5-52": "la plus haute pour un isolant en PVC, CEI 60364-5-52",
    "usual fixed cable, from memory": "câble fixe usuel, de mémoire",
    "usual value of open ground": "valeur usuelle d'un sol nu",
    # ce que veut dire une clé absente
    "not given": "non indiqué",
}

MODEL_WORDS: dict[str, str] = NAMES | UNITS | SOURCES
"""Chaque texte anglais, et ce qu'il est en français."""
