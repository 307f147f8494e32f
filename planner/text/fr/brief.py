"""Français de la fiche, à côté de la décision : ses titres, ses graphiques, et ceux-ci en mots."""

SENTENCES: dict[str, str] = {
    "brief.place_people": "{place}. Dessert {people} personnes la première année.",
    "brief.days": "Jours sans assez d'eau",
    "brief.pay": "Ce que doivent payer les usagers",
    "brief.turns": "Ce qui changerait la réponse",
    "brief.options": "Les options, la meilleure d'abord",
    "brief.who": "Par qui, quand, d'après quoi",
    "brief.cautions_follow": "Les mises en garde à la fin font partie de cette fiche.",
    # money
    "brief.costs": "Coût global par partie",
    "brief.costs_alt": (
        "Barres du coût global de chaque option par partie, bout à bout. La première du classement, {option}, coûte "
        "{cost} en tout sur {years} ans ; sa plus grande partie : {part}."
    ),
    # water
    "brief.water": "Eau par mois et par source : {option}",
    "brief.water_alt": (
        "Colonnes de l'eau que pompe chaque source, par mois, moyenne de {years} ans, et dessus l'eau qui manque. Elle "
        "manque le plus en {month} : {missing} m3 par jour."
    ),
    "brief.water_alt_none_missing": (
        "Colonnes de l'eau que pompe chaque source, par mois, moyenne de {years} ans. L'eau ne manque aucun mois."
    ),
    "brief.water_axis": "m3 par jour, moyenne de {years} ans",
    "brief.water_missing": "manque",
    # tank
    "brief.tank": "Réservoir, quinzaine la plus défavorable : {option}",
    "brief.tank_alt": (
        "Ligne de l'eau dans le réservoir heure par heure depuis le {day} {month} de l'année {year}, les quatorze "
        "jours où il manque le plus d'eau de toutes les années, {missing} m3 en tout. Le réservoir contient {tank} m3 "
        "; son niveau le plus bas ces jours-là : {lowest} m3."
    ),
    "brief.tank_alt_none_missing": (
        "Ligne de l'eau dans le réservoir heure par heure depuis le {day} {month} de l'année {year}, les quatorze "
        "jours où le réservoir est le plus bas de toutes les années. Il ne manque pas d'eau. Le réservoir contient "
        "{tank} m3 ; son niveau le plus bas ces jours-là : {lowest} m3."
    ),
    "brief.tank_axis": "m3",
    "brief.tank_days": "jours depuis le {day} {month} de l'année {year}",
    "brief.tank_level": "niveau",
    "brief.tank_full": "plein",
    "brief.tank_missing": "manque ce jour",
}
