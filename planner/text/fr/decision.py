"""Français de la décision : ce que disent la première page, la fiche et le résumé de la proposition."""

SENTENCES: dict[str, str] = {
    # the verdict, one sentence
    "decision.recommended": (
        "Recommandation : {option}, qui atteint l'objectif de {target:g} % de l'eau au moindre coût."
    ),
    "decision.on_conditions": (
        "Recommandation aux conditions ci-dessous : {option}, qui atteint l'objectif de {target:g} % de l'eau au "
        "moindre coût."
    ),
    "decision.not_yet": (
        "À ne pas encore construire : {option} atteint l'objectif de {target:g} % de l'eau au moindre coût, une fois "
        "corrigées les vérifications non conformes."
    ),
    "decision.none_meets": (
        "Aucune option n'atteint l'objectif de {target:g} % de l'eau ; {option} s'en approche le plus, avec "
        "{delivered:.1f} %."
    ),
    "decision.serves": "{option} atteint l'objectif de {target:g} % de l'eau.",
    "decision.serves_on_conditions": (
        "{option} atteint l'objectif de {target:g} % de l'eau, aux conditions ci-dessous."
    ),
    "decision.serves_not_yet": (
        "À ne pas encore construire : {option} atteint l'objectif de {target:g} % de l'eau, une fois corrigées les "
        "vérifications non conformes."
    ),
    # conditions, one sentence each
    "decision.estimated_weather": (
        "Soleil et température sont une estimation pour ce lieu : les mesurer ou les télécharger avant d'engager de "
        "l'argent."
    ),
    "decision.unpriced": "Sommes incomplètes, aucun prix n'étant indiqué pour : {names}.",
    # the three large numbers
    "decision.to_build": "À construire",
    "decision.to_build_at_least": "À construire, au moins",
    "decision.to_build_note": "avant toute subvention",
    "decision.to_build_note_grant": "dont {own} restent à payer après subvention et prêt",
    "decision.to_build_note_people": "{per_person} par personne",
    "decision.users_pay": "À payer par les usagers",
    "decision.users_pay_at_least": "À payer par les usagers, au moins",
    "decision.users_pay_note": "pour l'exploitation et les remplacements",
    "decision.users_pay_note_income": (
        "pour l'exploitation et les remplacements : {share:.1f} % du revenu d'un ménage moyen"
    ),
    "decision.short_days": "Jours sans assez d'eau",
    "decision.short_days_note": (
        "il manque plus d'un dixième de l'eau du jour ; surtout en {month}, jusqu'à {longest:.0f} de suite"
    ),
    "decision.short_days_never": "aucun jour où il manque plus d'un dixième de l'eau en {years} ans",
    "decision.water": "Eau par jour",
    "decision.water_note": "eau fournie, moyenne de {years} ans",
    "decision.array_and_tank": "À construire, tailles",
    "decision.array_and_tank_note": "champ photovoltaïque et réservoir, option {option}",
    "decision.tank_note": "réservoir, option {option}",
    "decision.value_money": "{currency} {value:,.0f}",
    "decision.value_money_per_m3": "{currency} {value:,.2f} par m3",
    "decision.value_days": "{value:,.1f jour|jours} par an",
    "decision.value_water": "{value:,.1f} m3",
    "decision.value_array_and_tank": "{kwp:,.2f} kWc + {tank:,.1f} m3",
    "decision.value_tank": "{tank:,.1f} m3",
    # days without water
    "decision.days": (
        "Avec {option}, il manque plus d'un dixième de l'eau du jour {days:.1f jour|jours} par an, au plus "
        "{longest:.0f jour|jours} de suite ; mois le plus défavorable : {month}, où vient {percent:.1f} % de l'eau "
        "demandée."
    ),
    "decision.days_never": (
        "Avec {option}, aucun jour en {years} ans ne manque de plus d'un dixième de son eau ; mois le plus défavorable "
        ": {month}, où vient {percent:.1f} % de l'eau demandée."
    ),
    # what users pay
    "decision.pay_unpriced": (
        "Ce que doivent payer les usagers dépasse ce que disent ces chiffres, aucun prix n'étant indiqué pour : "
        "{names}."
    ),
    "decision.pay_income": (
        "Au prix de l'eau pour l'exploitation et les remplacements, la facture prend {middle:.1f} % du revenu d'un "
        "ménage moyen."
    ),
    "decision.pay_income_lowest": (
        "Au prix de l'eau pour l'exploitation et les remplacements, la facture prend {middle:.1f} % du revenu d'un "
        "ménage moyen et {lowest:.1f} % de celui d'un ménage du cinquième le plus pauvre."
    ),
    # who, when
    "decision.record": (
        "Établi par : {prepared_by}. Visite de terrain : {visit_date}. Prix de : {price_date}. Révision : {revision!s}."
    ),
    "decision.no_record": (
        "Non dit : qui l'a établi, quand le site a été visité, de quand sont les prix, quelle révision c'est."
    ),
    "decision.weather_estimate": (
        "Météo : moyennes mensuelles estimées pour ce lieu, transformées en années heure par heure."
    ),
    "decision.weather_monthly": "Météo : moyennes mensuelles indiquées, transformées en années heure par heure.",
    "decision.weather_file": "Météo : relevé horaire « {file!s} ».",
    "decision.version": "Calculé par planner {version!s}, graine {seed}.",
    # headings of the table of options beside those that other tables have
    "short.meets_target": "Atteint",
    "short.tariff_operation_and_renewals": "Prix de l'eau, hors investissement{incomplete} ({unit})",
}
