"""Français de ce qu'une réponse a d'incertain : ce qui la changerait, la pire année sur dix, ce qui est trop proche."""

SENTENCES: dict[str, str] = {
    # ---- too close to call
    "uncertainty.too_close": (
        "{first} et {second} sont trop proches pour trancher : leur ordre s'inverse dans {turned} des {changes} "
        "changements d'une donnée incertaine à la fois, et il reste moins de {percent:g} % de coût entre les deux "
        "dans {close} de plus."
    ),
    "uncertainty.ahead_in_most": (
        "{first} reste le plus souvent devant {second} : leur ordre s'inverse dans {turned} des {changes} "
        "changements d'une donnée incertaine à la fois, et il reste moins de {percent:g} % de coût entre les deux "
        "dans {close} de plus."
    ),
    "uncertainty.ahead_in_all": (
        "{first} reste devant {second} de {percent:g} % de coût ou plus, ou parce que {second} manque l'objectif, dans "
        "tous les {changes} changements d'une donnée incertaine à la fois."
    ),
    "uncertainty.misses_in_some": (
        "{first} manque l'objectif dans {turned} des {changes} changements d'une donnée incertaine à la fois."
    ),
    "uncertainty.meets_in_all": (
        "{first} atteint l'objectif dans tous les {changes} changements d'une donnée incertaine à la fois."
    ),
    # ---- the worst year in ten
    "uncertainty.worst_year": (
        "Pire année sur dix avec {option} : besoins couverts {met:.2f} % ; jours où il manque plus d'un dixième de "
        "l'eau : {days:.0f} ; eau qui manque, moyenne de tous les jours : {litres:,.0f} L par jour."
    ),
    "uncertainty.worst_year_full": "Pire année sur dix avec {option} : il ne manque pas d'eau.",
    "uncertainty.few_years": ("Avec {years} années comptées, la pire année sur dix est proche de la pire de toutes."),
    # ---- what would turn the answer
    "uncertainty.percent": "{value:,.10g} %",
    "uncertainty.other_first_above": (
        "{input} : au-dessus de {value} (actuellement {base}), {other} passe en tête au lieu de {option}."
    ),
    "uncertainty.other_first_below": (
        "{input} : au-dessous de {value} (actuellement {base}), {other} passe en tête au lieu de {option}."
    ),
    "uncertainty.misses_above": (
        "{input} : au-dessus de {value} (actuellement {base}), {option} manque l'objectif et {other} passe en tête."
    ),
    "uncertainty.misses_below": (
        "{input} : au-dessous de {value} (actuellement {base}), {option} manque l'objectif et {other} passe en tête."
    ),
    "uncertainty.none_meets_above": (
        "{input} : au-dessus de {value} (actuellement {base}), aucune option n'atteint l'objectif."
    ),
    "uncertainty.none_meets_below": (
        "{input} : au-dessous de {value} (actuellement {base}), aucune option n'atteint l'objectif."
    ),
    "uncertainty.meets_above": ("{input} : au-dessus de {value} (actuellement {base}), {other} atteint l'objectif."),
    "uncertainty.meets_below": ("{input} : au-dessous de {value} (actuellement {base}), {other} atteint l'objectif."),
    "uncertainty.nearest_above": (
        "{input} : au-dessus de {value} (actuellement {base}), {other} s'approche le plus de l'objectif."
    ),
    "uncertainty.nearest_below": (
        "{input} : au-dessous de {value} (actuellement {base}), {other} s'approche le plus de l'objectif."
    ),
    "uncertainty.stays_first": ("{input} : entre {low} et {high} (actuellement {base}), {option} reste en tête."),
    "uncertainty.stays_nearest": (
        "{input} : entre {low} et {high} (actuellement {base}), aucune option n'atteint l'objectif et {option} reste "
        "la plus proche."
    ),
    "uncertainty.works_held": (
        "Ces valeurs valent pour les ouvrages tels qu'ils seraient construits, chaque taille comme choisie "
        "aujourd'hui ; des tailles choisies de nouveau pour une autre valeur peuvent basculer ailleurs."
    ),
    # ---- the table
    "uncertainty.heading": "Ce qui changerait la réponse (ouvrages tels qu'ils seraient construits)",
    "uncertainty.input": "Donnée",
    "uncertainty.base": "Valeur",
    "uncertainty.unit": "Unité",
    "uncertainty.tried": "Essayé",
    "uncertainty.below": "En tête au-dessous",
    "uncertainty.above": "En tête au-dessus",
    "uncertainty.range": "{low:,.10g} à {high:,.10g}",
    "uncertainty.first_there": "{value:,.10g} : {option}",
    "uncertainty.nearest_there": "{value:,.10g} : {option} (manque l'objectif)",
    "uncertainty.no_turn": "inchangé",
    "uncertainty.works_held_in_years": (
        "Ces valeurs valent pour les ouvrages tels qu'ils seraient construits, chaque taille comme choisie "
        "aujourd'hui, et viennent de {run} des {years} années ; des tailles choisies de nouveau pour une autre valeur "
        "peuvent basculer ailleurs."
    ),
}
