"""Les grandeurs du catalogue : leur nom, et ce qu'elles sont."""

FIGURES: dict[str, tuple[str, str]] = {
    "tank_m3": ("Réservoir", "Volume utile du réservoir."),
    "modules": ("Modules PV", "Modules de toutes les chaînes ensemble."),
    "strings": ("Chaînes en parallèle", "Chaînes de modules en série, côte à côte."),
    "array_kwp": (
        "Champ photovoltaïque, puissance nominale",
        "Puissance nominale de tous les modules dans les conditions d'essai normalisées (CEI 60904-3).",
    ),
    "start_level_percent": (
        "Niveau de démarrage de l'appoint",
        "Niveau auquel l'interrupteur à flotteur met en marche le réseau électrique ou le groupe électrogène.",
    ),
    "stop_level_percent": (
        "Niveau d'arrêt de l'appoint",
        "Niveau auquel l'interrupteur à flotteur arrête le réseau électrique ou le groupe électrogène.",
    ),
    "duty_flow_m3h": (
        "Débit au point de fonctionnement",
        "Débit auquel pompe et installation s'accordent au niveau d'eau moyen de l'année.",
    ),
    "total_dynamic_head_m": (
        "Hauteur manométrique totale (HMT)",
        "Hauteur géométrique, rabattement, pertes de charge et pression résiduelle ensemble, au point de "
        "fonctionnement.",
    ),
    "generator_kw": (
        "Groupe électrogène, puissance nominale",
        "Puissance nominale du groupe électrogène dans les conditions de référence.",
    ),
    "meets_target": ("Atteint l'objectif de service (1 : oui)", "S'il fournit ce que demande l'objectif de service."),
    "short_days_per_year": (
        "Jours sans assez d'eau",
        "Jours où il manque plus d'un dixième des besoins du jour, moyenne des années (pratique courante, sans "
        "source).",
    ),
    "worst_month": (
        "Mois le plus défavorable (1 : janvier)",
        "Mois de l'année où la part des besoins couverte est la plus faible, toutes années ensemble.",
    ),
    "worst_month_short_days": (
        "Jours sans assez d'eau, mois le plus défavorable",
        "Jours sans assez d'eau de ce mois, moyenne des années.",
    ),
    "longest_short_days": (
        "Plus longue suite de jours sans assez d'eau",
        "Plus grand nombre de ces jours de suite pendant la période d'analyse, d'une année à l'autre aussi.",
    ),
    "missing_l_per_short_day": (
        "Eau qui manque un jour moyen sans assez d'eau",
        "Ce qui manque aux usagers tous les jours sans assez d'eau de la période d'analyse, rapporté à leur nombre.",
    ),
    "demand_met_percent": ("Besoins couverts", "Eau fournie rapportée à l'eau demandée, toutes années ensemble."),
    "demand_met_worst_year_percent": (
        "Besoins couverts, année la plus défavorable",
        "Part annuelle la plus faible des besoins couverts.",
    ),
    "demand_met_worst_month_percent": (
        "Besoins couverts, mois le plus défavorable",
        "Part la plus faible des besoins couverts d'un mois de l'année, toutes années ensemble.",
    ),
    "demand_first_year_m3": ("Besoins de la première année", "Eau que demandent les usagers l'année 1."),
    "delivered_first_year_m3": ("Eau fournie la première année", "Eau qui parvient aux usagers l'année 1."),
    "demand_last_year_m3": ("Besoins de la dernière année", "Eau que demandent les usagers la dernière année."),
    "delivered_last_year_m3": ("Eau fournie la dernière année", "Eau qui parvient aux usagers la dernière année."),
    "shortfall_m3_per_year": ("Déficit, moyenne", "Besoins non couverts, moyenne des années."),
    "shortfall_by_daily_limit_m3_per_year": (
        "  dont dû à la limite journalière",
        "Besoins qui seraient couverts sans la limite journalière, moyenne des années ; trouvés par un calcul sans "
        "elle.",
    ),
    "demand_met_worst_year_in_ten_percent": (
        "Besoins couverts, pire année sur dix",
        "Part annuelle des besoins couverts que neuf années sur dix atteignent (10e centile des années).",
    ),
    "short_days_worst_year_in_ten": (
        "Jours sans assez d'eau, pire année sur dix",
        "Jours sans assez d'eau que neuf années sur dix ne dépassent pas (90e centile des années).",
    ),
    "missing_l_per_day_worst_year_in_ten": (
        "Eau qui manque, pire année sur dix",
        "Eau qui manque, moyenne des jours d'une année, que neuf années sur dix ne dépassent pas (90e centile des "
        "années).",
    ),
    "pumped_by_solar_percent": ("Pompé par le soleil", "Part de l'eau pompée que relève l'énergie photovoltaïque."),
    "pumped_by_grid_percent": ("Ajouté par le réseau électrique", "Part de l'eau pompée qu'ajoute le réseau."),
    "pumped_by_generator_percent": (
        "Ajouté par le groupe électrogène",
        "Part de l'eau pompée qu'ajoute le groupe électrogène.",
    ),
    "pv_used_kwh_per_year": (
        "Énergie PV utilisée (CC)",
        "Énergie que le champ donne à la pompe, moyenne des années.",
    ),
    "pv_unused_kwh_per_year": (
        "Énergie PV non utilisée (CC)",
        "Énergie que le champ aurait pu donner, moyenne des années.",
    ),
    "grid_kwh_per_year": ("Énergie du réseau électrique", "Énergie achetée au réseau, moyenne des années."),
    "grid_hours_per_year": (
        "Marche sur le réseau électrique",
        "Heures où le réseau entraîne la pompe, moyenne des années.",
    ),
    "grid_peak_kw": (
        "Plus forte puissance semi-horaire appelée au réseau",
        "La demi-heure la plus forte de tous les mois et de toutes les années.",
    ),
    "generator_kwh_per_year": (
        "Énergie du groupe électrogène",
        "Énergie que donne le groupe électrogène, moyenne des années.",
    ),
    "generator_hours_per_year": (
        "Marche du groupe électrogène",
        "Heures de marche du groupe électrogène, moyenne des années.",
    ),
    "fuel_l_per_year": ("Carburant", "Carburant que brûle le groupe électrogène, moyenne des années."),
    "capital_cost": (
        "Coût d'investissement",
        "Ce qui est construit l'année 0, avant subvention et prêt.",
    ),
    "life_cycle_cost": (
        "Coût global (valeur actualisée)",
        "Valeur actualisée de tous les coûts de la période d'analyse, moins la valeur résiduelle (NIST Handbook 135).",
    ),
    "life_cycle_construction": ("  Investissement", "Sa part payée l'année 0."),
    "life_cycle_replacement": ("  Remplacements", "Sa part qui remplace ce qui s'use."),
    "life_cycle_upkeep": ("  Entretien", "Sa part qui entretient les ouvrages."),
    "life_cycle_grid": ("  Factures d'électricité", "Sa part qui paie l'énergie du réseau."),
    "life_cycle_fuel": ("  Carburant", "Sa part qui paie le carburant, livraison comprise."),
    "life_cycle_generator_service": (
        "  Révisions du groupe électrogène",
        "Sa part pour les révisions courantes et générales du groupe électrogène.",
    ),
    "life_cycle_yearly_costs": ("  Autres coûts annuels", "Sa part qui revient chaque année."),
    "life_cycle_direct_support": ("  Appui direct", "Sa part que l'autorité consacre à l'appui."),
    "life_cycle_residual": ("  Valeur résiduelle", "Ce que valent les ouvrages à la fin, déduit."),
    "annualised_cost": (
        "Coût annualisé",
        "Coût annuel constant, en monnaie de l'année 0, de même valeur actualisée (NIST Handbook 135).",
    ),
    "levelised_cost_per_m3": (
        "Coût actualisé du m3",
        "Coût global rapporté au volume actualisé fourni (coût marginal économique moyen, BAD 1999).",
    ),
    "annualised_cost_per_person": (
        "Coût annualisé par personne de la première année",
        "Coût annualisé rapporté aux personnes desservies l'année 1.",
    ),
    "revenue_present": ("Valeur actualisée de ce que paient les usagers", "Valeur actualisée de l'eau vendue."),
    "net_present_value": (
        "Valeur actuelle nette (VAN)",
        "Valeur actualisée de ce que paient les usagers, moins le coût global.",
    ),
    "grant": ("Subvention", "Somme reçue l'année 0, à ne pas rembourser."),
    "loan": ("Prêt", "Somme reçue l'année 0, à rembourser."),
    "own_funds": (
        "Fonds propres l'année 0 (communauté ou propriétaire)",
        "Coût d'investissement moins subvention et prêt.",
    ),
    "owner_life_cycle_cost": (
        "Coût global pour le propriétaire",
        "Valeur actualisée de tous les coûts moins subvention et prêt reçus, plus remboursements du prêt.",
    ),
    "capital_expenditure": (
        "Dépenses d'investissement",
        "Coût d'investissement (composantes du coût global, IRC 2011).",
    ),
    "operation_and_minor_maintenance": (
        "Exploitation et petit entretien",
        "Entretien, énergie, carburant, services et autres coûts annuels (composantes du coût global, IRC 2011).",
    ),
    "capital_maintenance": (
        "Gros entretien (remplacements)",
        "Remplacements (composantes du coût global, IRC 2011).",
    ),
    "expenditure_on_direct_support": (
        "Dépenses d'appui direct",
        "Appui de l'autorité locale, 0 si rien n'a été indiqué (composantes du coût global, IRC 2011).",
    ),
    "residual_taken_off": ("Valeur résiduelle, déduite", "Ce que valent les ouvrages à la fin."),
    "cost_of_capital": (
        "Coût du capital (remboursements moins prêt)",
        "Valeur actualisée des remboursements moins le prêt (composantes du coût global, IRC 2011).",
    ),
    "tariff_operation": (
        "Prix de l'eau qui couvre l'exploitation",
        "Prix constant de l'eau, en monnaie de l'année 0, qui paie énergie, services, entretien et autres coûts "
        "annuels.",
    ),
    "tariff_operation_and_renewals": (
        "Prix de l'eau qui couvre exploitation et remplacements",
        "Le même avec l'épargne constante pour les remplacements.",
    ),
    "tariff_full": (
        "Prix de l'eau qui couvre tout (recouvrement complet des coûts)",
        "Le même avec l'appui direct et le coût d'investissement moins subvention et valeur résiduelle, au taux "
        "d'actualisation.",
    ),
    "household_m3_per_month": (
        "Eau que demande un ménage",
        "Eau par personne et par jour, comme dans les besoins, multipliée par les personnes d'un ménage ; sans les "
        "élèves d'une école.",
    ),
    "bill_operation": (
        "Facture au prix qui couvre l'exploitation",
        "Eau que demande un ménage, à ce prix.",
    ),
    "bill_operation_and_renewals": (
        "Facture au prix qui couvre exploitation et remplacements",
        "Eau que demande un ménage, à ce prix.",
    ),
    "bill_full": ("Facture au prix qui couvre tout", "Eau que demande un ménage, à ce prix."),
    "income_share_operation": (
        "Part d'un revenu moyen : exploitation",
        "Cette facture rapportée au revenu du ménage médian.",
    ),
    "income_share_operation_and_renewals": (
        "Part d'un revenu moyen : exploitation et remplacements",
        "Cette facture rapportée au revenu du ménage médian.",
    ),
    "income_share_full": (
        "Part d'un revenu moyen : tout",
        "Cette facture rapportée au revenu du ménage médian.",
    ),
    "lowest_income_share_operation": (
        "Part du revenu du cinquième le plus pauvre : exploitation",
        "Cette facture rapportée au revenu d'un ménage du cinquième le plus pauvre.",
    ),
    "lowest_income_share_operation_and_renewals": (
        "Part du revenu du cinquième le plus pauvre : exploitation et remplacements",
        "Cette facture rapportée au revenu d'un ménage du cinquième le plus pauvre.",
    ),
    "lowest_income_share_full": (
        "Part du revenu du cinquième le plus pauvre : tout",
        "Cette facture rapportée au revenu d'un ménage du cinquième le plus pauvre.",
    ),
    "burden_mean": (
        "Charge annuelle, moyenne",
        "Ce qui est payé de l'année 1 à la dernière, après la subvention : exploitation, appui, remplacements et "
        "remboursements du prêt.",
    ),
    "burden_largest": ("Charge annuelle, la plus forte", "La même, l'année où elle est la plus forte."),
    "burden_largest_year": ("  en l'année", "Première année qui a cette charge."),
    "renewal_saving": (
        "Épargne annuelle constante pour les remplacements",
        "Plus petit versement constant, en monnaie de l'année 0, avec lequel un fonds unique pour tous les "
        "remplacements n'est jamais à découvert.",
    ),
    "renewal_fund_empty_year": (
        "  fonds vide après l'année",
        "Année après les remplacements de laquelle il ne reste rien dans le fonds.",
    ),
    "renewal_fund_left": (
        "  reste du fonds à la fin",
        "Ce que contient le fonds après la dernière année, en monnaie de l'année 0 : il revient aux remplacements "
        "suivants.",
    ),
    "capital_cost_per_person": (
        "Coût d'investissement par personne",
        "Coût d'investissement rapporté aux personnes desservies l'année 1.",
    ),
    "recurrent_cost_per_person": (
        "Coût récurrent par personne et par an",
        "Exploitation, appui direct et épargne pour les remplacements, constants, rapportés aux personnes desservies "
        "l'année 1.",
    ),
    "co2_kg": (
        "Dioxyde de carbone sur la période d'analyse",
        "Du carburant brûlé et de l'énergie achetée ; non compté si le facteur de l'un d'eux n'est pas indiqué.",
    ),
    "co2_kg_per_year": ("Dioxyde de carbone, moyenne", "Le même, moyenne des années."),
    "co2_kg_per_m3": ("Dioxyde de carbone par m3 fourni", "Le même rapporté à l'eau fournie."),
    "saving_present": (
        "Économie sur le coût global (négative : coûte plus)",
        "Coût global de la référence moins celui-ci.",
    ),
    "internal_rate_of_return_percent": (
        "Taux de rentabilité interne",
        "Taux auquel le supplément d'investissement égale les économies ultérieures par rapport à la référence.",
    ),
    "payback_years": (
        "Délai de récupération, simple",
        "Années jusqu'à ce que le supplément d'investissement soit récupéré, et le reste.",
    ),
    "discounted_payback_years": (
        "Délai de récupération, actualisé",
        "Le même avec des économies actualisées.",
    ),
}
