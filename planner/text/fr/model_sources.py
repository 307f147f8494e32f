"""Unités des modèles et du catalogue des grandeurs, et sources des valeurs par défaut, par leur texte anglais."""

UNITS: dict[str, str] = {
    "% of demand": "% des besoins",
    "% of income": "% du revenu",
    "% of pumped": "% de l'eau pompée",
    "% of tank": "% du réservoir",
    "%/day": "%/jour",
    "%/year": "%/an",
    "L/head/day": "L/tête/jour",
    "L/person/day": "L/personne/jour",
    "month, 1 to 12": "mois, de 1 à 12",
    "L/day": "L/jour",
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
