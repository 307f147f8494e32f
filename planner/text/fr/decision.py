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
    "decision.to_build": "Pour construire",
    "decision.to_build_at_least": "Pour construire, au moins",
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
    "short.meets_target": "But atteint",
    "short.tariff_operation_and_renewals": "Prix de l'eau, hors investissement{incomplete} ({unit})",
    "decision.changed": (
        "! Des prix ou des taux ont été modifiés depuis le calcul : des options qui atteignent l'objectif, aux tailles "
        "du calcul, {option} coûte maintenant le moins. Refaire le calcul avant de s'en servir."
    ),
    "decision.run_again": (
        "! Refaire le calcul : une donnée que ces chiffres ne suivent pas a été modifiée (la feuille « Données » dit "
        "laquelle ; ce sont ceux du calcul)."
    ),
    "decision.overpaid": (
        "! Subvention et prêt dépassent ensemble 100 pour cent du coût d'investissement : les corriger avant de s'en "
        "servir."
    ),
    "decision.given_way": (
        "Les chiffres ci-dessous suivent les prix modifiés ; ce que le calcul disait des vérifications, des conditions "
        "et du deuxième choix est retiré, car seul un nouveau calcul peut le dire."
    ),
    "decision.days_heading": "Jours sans assez d'eau, et ce que paient les usagers",
    "decision.days_heading_technical": "Jours sans assez d'eau",
    "decision.turns_heading": "Ce qui la changerait",
    "decision.who_heading": "Qui, quand, d'après quoi",
    "decision.large_unit": "{label} ({unit})",
    "decision.cautions": (
        "Lire les mises en garde de la feuille « Méthode et mises en garde » avant d'acheter, d'ouvrir ou de boire "
        "quoi que ce soit ; la réglementation locale et les règles de l'art priment."
    ),
    "decision.printing": (
        "Le jeu imprimé contient ce que d'autres lisent. Pour imprimer une autre feuille, ou plus d'une feuille, "
        "effacer sa zone d'impression ou imprimer une sélection."
    ),
    "checks.names_not_given": "Non indiqué, donc non vérifié : {names}.",
    "checks.names_passed": "Conforme : {names}.",
    "page.basis": "Ce sur quoi elle repose",
    "inputs.since": "Depuis le calcul",
    "inputs.since_count": "Nombre",
    "inputs.since_form": "Modifié sur le formulaire en plus de ce que suivent les valeurs ici",
    "inputs.since_again": "Modifié en tout que les chiffres ne suivent pas",
    "inputs.since_followed": "Modifié et suivi par toutes les sommes d'argent",
    "inputs.since_state": (
        "État : 0 comme calculé, 1 les chiffres suivent, 2 à refaire, 3 subvention et prêt au-dessus de 100 %"
    ),
    "inputs.since_state_technical": "État : 0 comme calculé, 2 à refaire",
    "inputs.again": "! calcul à refaire",
    "inputs.followed": "modifié, suivi",
    "page.form_of_run": "Formulaire du calcul",
    "decision.starter": (
        "{count} valeurs sont encore celles, inventées, du scénario de départ : mettre celles du site à leur place "
        "avant de se servir des chiffres."
    ),
}
