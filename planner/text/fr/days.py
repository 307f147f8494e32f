"""Français des jours sans eau."""

SENTENCES: dict[str, str] = {
    "figure.nothing_missing": "rien ne manque",
    "figure.no_short_day": "aucun jour sans assez d'eau",
    "days.heading": "Jours où il manque plus d'un dixième de l'eau",
    "days.none": "Avec {option}, aucun jour en {years} ans ne manque de plus d'un dixième de son eau.",
    "days.short": (
        "Avec {option}, il manque plus d'un dixième de l'eau {short:.1f jour|jours} par an, au plus "
        "{longest:.0f jour|jours} de suite ; mois le plus défavorable : {month}, avec {in_month:.1f jour|jours} de ce "
        "genre ; un jour moyen sans assez d'eau, il manque aux usagers {litres:,.0f litre|litres}."
    ),
}
