"""Français de l'essai de pompage et de l'analyse de l'eau : leurs vérifications, et la page qui montre les deux."""

SENTENCES: dict[str, str] = {
    "page.records": "Essai et qualité",
    "records.under": ("L'essai de pompage connu, et l'analyse de l'eau face aux valeurs guides pour l'eau de boisson."),
    "records.test": "Essai de pompage",
    "records.no_test": "Aucun essai à débit constant n'est connu ([pumping_test] n'est pas indiqué).",
    "records.steps": "Essai par paliers",
    "records.step": "Palier",
    "records.step_flow": "Débit (m3/h)",
    "records.step_drawdown": "Rabattement (m)",
    "records.step_specific": "Débit spécifique (m3/h par m)",
    "records.item": "Relevé",
    "records.value": "Valeur",
    "records.quality": "Qualité de l'eau",
    "records.no_quality": ("L'eau n'a pas été analysée, ou les résultats n'ont pas été indiqués ([water_quality])."),
    "records.not_drunk": "Personne ne boit l'eau : elle n'est pas jugée comme eau de boisson.",
    "records.analysed": "Échantillon du {date}, analysé par {laboratory}.",
    "records.parameter": "Paramètre",
    "records.result": "Résultat",
    "records.limit": "Valeur guide",
    "records.kind": "Concerne",
    "records.kind_health": "santé",
    "records.kind_acceptance": "goût, taches, ouvrages",
    "records.verdict": "Avis",
    "records.source": "Origine",
    "records.second_hand": "OMS 2022, de seconde main",
    "records.from_memory": "OMS 2022, de mémoire : à confirmer",
    "records.not_tested": "non analysé",
    "records.national": (
        "OMS 2022 : Directives de qualité pour l'eau de boisson, 4e édition intégrant les premier et second additifs. "
        "Elles n'ont pas force de loi : la norme du pays prime, et un résultat ne vaut que pour son échantillon. Rien "
        "ici ne dit que l'eau est sûre."
    ),
    "quality.range": "{low} à {high}",
    "quality.compared": "Eau brute face à la valeur guide pour l'eau de boisson : {name}",
    "quality.compared_nitrogen": "Nitrate rapporté à sa valeur guide et nitrite à la sienne, ensemble",
    "quality.source": (
        "OMS, Directives de qualité pour l'eau de boisson, 4e édition avec additifs, 2022, de seconde main ; les "
        "normes nationales priment"
    ),
    "quality.source_from_memory": (
        "OMS, Directives de qualité pour l'eau de boisson, 4e édition avec additifs, 2022, de mémoire : à confirmer ; "
        "les normes nationales priment"
    ),
    "quality.why.health": (
        "Cela nuit à la santé de ceux qui boivent l'eau, parfois sans qu'on le remarque pendant des années."
    ),
    "quality.why.acceptance": (
        "On se détourne d'une eau qui a un goût, une odeur ou qui tache pour une eau peut-être dangereuse ; cela "
        "encrasse aussi les ouvrages."
    ),
    "quality.remedy.health": (
        "ni pour boire ni pour cuisiner sans un traitement dont il est prouvé qu'il la ramène sous la limite, car "
        "faire bouillir ne l'enlève pas ; prélever de nouveau, consulter l'autorité sanitaire ou trouver une autre "
        "source"
    ),
    "quality.remedy.nitrate_mg_l": (
        "pas pour boire, et jamais pour le biberon d'un nourrisson, sans un traitement dont il est prouvé qu'il la "
        "ramène sous la limite : faire bouillir aggrave ; éloigner latrines et bétail, consulter l'autorité sanitaire "
        "ou trouver une autre source"
    ),
    "quality.remedy.nitrite_mg_l": (
        "pas pour boire, et jamais pour le biberon d'un nourrisson, sans un traitement dont il est prouvé qu'il la "
        "ramène sous la limite : faire bouillir aggrave ; consulter l'autorité sanitaire ou trouver une autre source"
    ),
    "quality.remedy.e_coli_per_100ml": (
        "pas pour boire avant désinfection : trouver par où cela entre (tête de forage, cimentation, latrines, "
        "bétail), désinfecter forage, conduites et réservoir, et n'utiliser l'eau que lorsque de nouveaux échantillons "
        "sont exempts ; consulter l'autorité sanitaire"
    ),
    "quality.remedy.acceptance": (
        "prélever de nouveau, et demander aux usagers et à l'autorité sanitaire si un traitement est nécessaire"
    ),
    "check.quality_e_coli_per_100ml.what": "E. coli ou coliformes thermotolérants",
    "check.quality_arsenic_mg_l.what": "arsenic",
    "check.quality_fluoride_mg_l.what": "fluorure",
    "check.quality_nitrate_mg_l.what": "nitrate, en NO3",
    "check.quality_nitrite_mg_l.what": "nitrite, en NO2",
    "check.quality_manganese_mg_l.what": "manganèse",
    "check.quality_lead_mg_l.what": "plomb",
    "check.quality_uranium_mg_l.what": "uranium",
    "check.quality_boron_mg_l.what": "bore",
    "check.quality_chromium_mg_l.what": "chrome",
    "check.quality_cadmium_mg_l.what": "cadmium",
    "check.quality_iron_mg_l.what": "fer",
    "check.quality_chloride_mg_l.what": "chlorure",
    "check.quality_sulfate_mg_l.what": "sulfate",
    "check.quality_sodium_mg_l.what": "sodium",
    "check.quality_hardness_mg_l.what": "dureté totale, en CaCO3",
    "check.quality_dissolved_solids_mg_l.what": "solides dissous totaux",
    "check.quality_turbidity_ntu.what": "turbidité",
    "check.quality_ph.what": "pH",
    "check.quality_nitrate_and_nitrite.what": "nitrate et nitrite ensemble",
    "check.water_analysis.what": "analyse de l'eau",
    "check.water_analysis.compared": "L'analyse de l'eau",
    "check.water_analysis.compared_in_part": "Le reste de l'analyse de l'eau",
    "check.water_analysis.why": (
        "Une eau claire peut contenir ce qui rend malade ; personne ne sent au goût germes, arsenic ou fluorure."
    ),
    "check.water_analysis.look_for": (
        "non analysé : {names} ; faire prélever et analyser un échantillon par un laboratoire avant que quiconque "
        "boive l'eau ou paie les ouvrages"
    ),
    "check.water_analysis.source": "une liste minimale proposée ici, sans norme ; limites de l'OMS, 2022",
    "check.pumping_test.what": "essai de pompage",
    "check.yield_of_test.what": "débit d'exploitation face à l'essai",
    "check.recovery.what": "remontée après l'essai",
    "check.pumping_test.compared": "Durée de l'essai de pompage à débit constant",
    "check.pumping_test.compared_not": "Le relevé d'un essai de pompage à débit constant",
    "check.pumping_test.why": (
        "Un essai court montre l'eau stockée près du forage, non celle qui y afflue pendant une saison sèche."
    ),
    "check.pumping_test.look_for": (
        "demander au foreur ou au service de l'eau le relevé d'un essai à débit constant de {hours} heures ou plus, "
        "avec la remontée qui suit"
    ),
    "check.pumping_test.remedy": ("faire un essai à débit constant de {hours} heures ou plus, et observer la remontée"),
    "check.pumping_test.source": (
        "24 heures : manuel de conception du ministère de l'Eau de Tanzanie ; 24 à 72 heures : SANS 10299-4:2003 ; les "
        "deux de seconde main"
    ),
    "check.yield_of_test.compared": "Débit d'exploitation, en part des {flow} m3/h maintenus pendant l'essai",
    "check.yield_of_test.why": (
        "Ce qu'un forage supporte des jours en une saison, il peut ne pas le supporter des années."
    ),
    "check.yield_of_test.remedy": (
        "prévoir au plus {flow} m3/h, ou faire déduire le débit d'exploitation de l'essai et de la remontée par un "
        "hydrogéologue"
    ),
    "check.yield_of_test.source": "60 à 70 % est une pratique courante, de mémoire, sans source",
    "check.recovery.compared": (
        "De combien l'eau était encore sous son niveau de repos à la fin de l'observation de la remontée"
    ),
    "check.recovery.why": ("Une eau qui ne revient pas a été prise dans la réserve de la roche, et ne durera pas."),
    "check.recovery.remedy": (
        "observer la remontée plus longtemps ; si l'eau reste basse, prévoir moins et faire juger la ressource par un "
        "hydrogéologue"
    ),
    "check.recovery.source": "pratique d'après SANS 10299-4:2003, de seconde main",
}
