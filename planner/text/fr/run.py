"""Français du rapport d'un calcul : ses pages, et ce qui figure sur plusieurs d'entre elles."""

SENTENCES: dict[str, str] = {
    "list.and": "{first} et {last}",
    "list.comma": ", ",
    "language.unreviewed": "Cette traduction attend la relecture d'une personne de langue maternelle française.",
    "page.answer": "Réponse",
    "page.options": "Options",
    "page.head": "Hauteur manométrique",
    "page.checks": "Vérifications",
    "page.tank": "Réservoir",
    "page.bill": "Devis quantitatif",
    "page.cash": "Flux de trésorerie",
    "page.simulated": "Valeurs simulées",
    "page.renewals": "Remplacements",
    "page.returns": "Rentabilité",
    "page.inputs": "Données",
    "page.method": "Méthode et mises en garde",
    "page.form": "Formulaire",
    "column.year": "Année",
    "column.unit": "Unité",
    "option.meets": "✓ objectif atteint",
    "option.misses": "✗ objectif manqué",
    # ---- answer
    "answer.question": "Question posée : {question}",
    "answer.people": "Dessert {people} personnes la première année.",
    "answer.record": (
        "Établi par : {prepared_by}. Visite de terrain : {visit_date}. Prix de : {price_date}. Révision : {revision!s}."
    ),
    "answer.setting": ("Sommes en {currency}, {prices}. Chaque option a été simulée heure par heure sur {years} ans."),
    "answer.other_first": (
        "! Aux prix modifiés ici, une autre option coûte le moins ; refaire le calcul pour la vérifier : "
    ),
    "answer.unchanged": "Les phrases ci-dessus concordent avec les chiffres ci-dessous.",
    "answer.changed": (
        "! Des prix ou des taux ont été modifiés après le calcul : les chiffres ci-dessous, le classement et la "
        "recommandation les suivent, mais pas les phrases ci-dessus ni les tailles choisies. Refaire le calcul avant "
        "de s'en servir."
    ),
    "answer.overpaid": (
        "! Subvention et prêt dépassent ensemble 100 pour cent du coût d'investissement : les corriger avant de s'en "
        "servir."
    ),
    "answer.cautions": (
        "Lire les mises en garde de la feuille « Méthode et mises en garde » avant tout achat ou toute construction ; "
        "la réglementation locale et les règles de l'art priment."
    ),
    "answer.option": "Option d'alimentation, la meilleure d'abord",
    "answer.service": "Service rendu",
    "answer.incomplete": ", incomplet",
    "answer.nothing": "–",
    "answer.yes": "✓ oui",
    "answer.no": "✗ non",
    "short.demand_met_percent": "Besoins couverts (%)",
    "short.demand_met_worst_year_percent": "Pire année (%)",
    "short.demand_met_worst_month_percent": "Pire mois (%)",
    "short.short_days_per_year": "Jours sans assez d'eau par an",
    "short.longest_short_days": "Plus longue suite",
    "short.tank_m3": "Réservoir (m3)",
    "short.modules": "Modules PV",
    "short.array_kwp": "Champ PV (kWc)",
    "short.grid_kwh_per_year": "Réseau (kWh/an)",
    "short.fuel_l_per_year": "Carburant (L/an)",
    "short.capital_cost": "Investissement{incomplete} ({unit})",
    "short.life_cycle_cost": "Coût global{incomplete} ({unit})",
    "short.annualised_cost": "Coût annualisé{incomplete} ({unit})",
    "short.levelised_cost_per_m3": "Coût actualisé du m3{incomplete} ({unit})",
    "short.annualised_cost_per_person": "Par personne{incomplete} ({unit})",
    "answer.basis": "Ce dont elle dépend",
    "answer.value": "Valeur",
    "answer.status": "Origine",
    "answer.worked_out": "calculé",
    "answer.demand": "Besoins de la première année (m3/jour)",
    "answer.head": "Hauteur manométrique totale (m)",
    "answer.flow": "Débit à cette hauteur (m3/h)",
    "answer.ghi": "Irradiation globale horizontale (kWh/m2/jour)",
    "answer.demand.growth_percent_per_year": "Croissance des besoins (%/an)",
    "answer.service.demand_met_percent": "Objectif de service (% des besoins couverts)",
    "answer.finance.analysis_period_years": "Période d'analyse (ans)",
    "answer.finance.discount_rate_percent": "Taux d'actualisation (%/an)",
    "answer.sources.solar.module.price": "Prix d'un module PV ({currency})",
    "answer.sources.grid.tariff.price_per_kwh": "Énergie du réseau ({currency}/kWh)",
    "answer.sources.grid.tariff.price_growth_percent_per_year": "Hausse du tarif (%/an)",
    "answer.sources.grid.outages.hours_per_day": "Coupures de courant, moyenne (h/jour)",
    "answer.sources.generator.fuel_price_per_l": "Prix du carburant à la station ({currency}/L)",
    "answer.sources.generator.fuel_delivery_per_l": "Transport du carburant jusqu'au site ({currency}/L)",
    "answer.sources.generator.fuel_price_growth_percent_per_year": "Hausse du prix du carburant (%/an)",
    "answer.who_pays": "Qui paie la construction de la première option",
    "answer.year_0": "Année 0 ({currency})",
    "answer.share": "Part (%)",
    "answer.components": "Coût global de la première option",
    "answer.present_value": "Valeur actualisée ({currency})",
    "answer.cost_of_capital": "Coût du capital, en plus",
    "answer.loan": "prêt",
    "answer.costs": "Coût global par catégorie",
    "answer.costs_alt": (
        "Coût global de chaque option par catégorie, empilé ; en haut, la première du classement : {option}."
    ),
    "answer.costs_axis": "Coût global ({currency})",
    "answer.time": "Coût global cumulé par année",
    "answer.time_alt": (
        "Valeur actualisée des coûts cumulés par année, pour les premières options du classement ; la meilleure : "
        "{option}."
    ),
    "answer.time_axis": "Valeur actualisée cumulée ({currency})",
    "brief.failed": "Vérifications non conformes",
    "brief.none_failed": "Aucune vérification n'est non conforme.",
    "brief.cautions": "Mises en garde",
    # ---- options
    "options.title": "Options d'alimentation côte à côte",
    "options.under": (
        "Dans l'ordre du calcul. Sommes en {currency}, {prices}, sur {years} ans au taux d'actualisation de la feuille "
        "« Données » ; énergie et heures sont des moyennes des années."
    ),
    "options.figure": "Grandeur",
    "options.design": "Dimensionnement",
    "options.service": "Service rendu",
    "options.energy": "Énergie, moyenne des années",
    "options.money": "Coûts",
    "options.components": "Composantes du coût global, valeur actualisée",
    "options.carbon": "Dioxyde de carbone du carburant et du réseau (construction non comptée)",
    "options.comparison": "Par rapport à : {reference}, avant subvention et prêt",
    "options.by_year": "Besoins couverts par année",
    "options.controller": "Variateur",
    "options.pump": "Pompe",
    "options.target": "Couvre au moins {percent} % des besoins",
    "options.target_worst_year": (
        "Couvre {percent} % des besoins sur toutes les années, {worst} % l'année la plus défavorable"
    ),
    "options.rank": "Rang",
    "options.support": "Appui indirect",
    "options.not_entered": "non indiqué",
    "options.co2_covers": "Ce qu'il comprend",
    "emission.fuel": "carburant",
    "emission.grid": "réseau électrique",
    "emission.not_counted": "{what} : non compté",
    "emission.none": "rien de brûlé ni d'acheté",
    "options.irr_reason": "  pourquoi il n'y en a pas",
    "options.payback_reason": "  remarque",
    "options.discounted_payback_reason": "  remarque",
    "options.of_demand": "% des besoins",
    "controller.parallel": "parallèle (PV et CA ensemble)",
    "controller.changeover": "inversion de source",
    # ---- bill of quantities, replacements
    "bill.under": (
        "Un coût sous le nom d'une option veut dire qu'elle emploie la ligne. Une ligne remplacée selon « années ou "
        "heures de marche » l'est quand ses années ou ses heures sont épuisées, au premier des deux. L'installation "
        "est comptée sur le matériel acheté ; imprévus, études et contrôle, et taxe sur la valeur ajoutée, dans cet "
        "ordre, chacun sur toutes les lignes au-dessus. Aucun des quatre n'est ajouté aux remplacements."
    ),
    "bill.line": "Ligne",
    "bill.supply": "Source d'énergie",
    "bill.quantity": "Quantité",
    "bill.unit": "Unité",
    "bill.price": "Prix unitaire ({currency})",
    "bill.cost": "Coût ({currency})",
    "bill.life": "Durée de vie (ans)",
    "bill.replaced_by": "Remplacé selon",
    "bill.maintenance": "Entretien (%/an)",
    "bill.option": "{option} ({currency})",
    "bill.by_option": "selon l'option",
    "bill.years": "années",
    "bill.years_or_hours": "années ou heures de marche",
    "bill.subtotal": "Sous-total : {group}",
    "bill.capital_cost": "Coût d'investissement ({currency})",
    "bill.maintenance_total": "Entretien ({currency}/an, prix de l'année 0)",
    "renewals.under": (
        "1 là où une ligne est remplacée à la fin d'une année : à chaque multiple de sa durée de vie en années "
        "entières, avant la dernière année. Ce que les heures de marche usent est compté sur la feuille « Valeurs "
        "simulées »."
    ),
    "renewals.life": "Durée de vie en années entières",
    "renewals.left": "Part de vie restante",
    "renewals.by_hours": "selon les heures",
    # ---- simulated
    "cash.under": (
        "Sommes en {currency}, {prices}. L'investissement tombe l'année 0 ; tout le reste en fin d'année. Les coûts "
        "sont positifs, la valeur résiduelle négative. Ce que paient les usagers est montré mais n'est pas déduit des "
        "coûts. Les options sont dans l'ordre du calcul."
    ),
    "cash.prices_constant": "prix constants de l'année 0",
    "cash.prices_nominal": "prix courants",
    "cash.discount_rate": "Taux d'actualisation (%/an)",
    "cash.real_rate": "Sans l'inflation (%/an)",
    "cash.sum": "Somme",
    "cash.construction": "Investissement ({currency})",
    "cash.replacement": "Remplacements ({currency})",
    "cash.upkeep": "Entretien ({currency})",
    "cash.grid": "Factures d'électricité ({currency})",
    "cash.fuel": "Carburant ({currency})",
    "cash.generator_service": "Révisions du groupe électrogène ({currency})",
    "cash.yearly_costs": "Autres coûts annuels ({currency})",
    "cash.direct_support": "Appui direct ({currency})",
    "cash.further": "{category} ({currency})",
    "cash.residual": "Valeur résiduelle ({currency})",
    "cash.total_cost": "Coût total ({currency})",
    "cash.discount_factor": "Facteur d'actualisation",
    "cash.present_value": "Valeur actualisée ({currency})",
    "cash.cumulated": "Cumul ({currency})",
    "cash.revenue": "Payé par les usagers ({currency})",
    "cash.grant_received": "Subvention ({currency})",
    "cash.loan_received": "Prêt ({currency})",
    "cash.loan_payment": "Remboursement du prêt ({currency})",
    "cash.owner_cost": "Coût pour le propriétaire ({currency})",
    "cash.owner_present_value": "Valeur actualisée pour le propriétaire ({currency})",
    "cash.price_level": "Niveau des prix",
    "cash.water_present_m3": "Eau, actualisée (m3)",
    "cash.saving": "Économie par rapport à : {reference} ({currency})",
    "cash.saved": "Économie, cumulée ({currency})",
    "cash.saving_present": "Économie, actualisée ({currency})",
    "cash.saved_present": "Économie, actualisée, cumulée ({currency})",
    # ---- returns
    "returns.under": (
        "Étapes vers le taux de rentabilité interne et le délai de récupération par rapport à : {reference}. Les "
        "économies peuvent avoir plusieurs taux de valeur actualisée nulle ; un taux n'est donné que là où le tableau "
        "ci-dessous change de signe une seule fois."
    ),
    "returns.step": "Étape",
    "returns.outlay": "Économie de l'année 0",
    "returns.slack": "Arrondi, pris pour nul",
    "returns.slack_present": "Arrondi, actualisé",
    "returns.savers": "Années qui économisent",
    "returns.changes": "Taux qui équilibrent",
    "returns.rate_below": "Taux au-dessous du premier",
    "returns.rate_above": "Taux au-dessus du premier",
    "returns.ever_behind": "En retard un jour (1 : oui)",
    "returns.last_behind": "Dernière fin d'année en retard",
    "returns.ever_behind_present": "En retard un jour, actualisé",
    "returns.last_behind_present": "Dernière fin d'année en retard, actualisé",
    "returns.worth": (
        "Valeur des économies selon le taux (fraction par an) : en l'année 0, aux taux négatifs en la dernière année"
    ),
    # ---- head
}
