"""Français des pages par mois et par année, et des grandeurs sans valeur."""

SENTENCES: dict[str, str] = {
    "figure.none": "aucun",
    "figure.no_water": "rien de fourni",
    "figure.no_people": "personne",
    "figure.not_given": "non indiqué",
    "figure.reference": "référence",
    "figure.not_counted": "non compté",
    "figure.further_cost": "  {category}",
    "figure.further_cost_is": "Sa part qui paie une source d'un genre particulier.",
    "figure.never": "jamais",
    "page.water": "Eau",
    "page.energy": "Énergie",
    "by_time.label": "Mois ou année",
    "by_time.month_axis": "Mois de la première année",
    "by_time.first_year": "Première année",
    "by_time.all_years": "Toutes les années",
    "by_time.year": "Année {year}",
    "by_time.option": "{place}. {option}",
    "by_time.recommended": "{place}. {option}, recommandation",
    "by_time.no_demand": "pas de besoins",
    "by_time.none_pumped": "rien de pompé",
    "water.under": (
        "Première année par mois, puis chaque année. Besoins et eau fournie sont ce que les usagers demandent et "
        "reçoivent ; la variation de stock est ce qui a été pompé moins ce qui a quitté le réservoir."
    ),
    "water.leaking": "De l'eau qui quitte le réservoir, {percent} % se perdent en fuites.",
    "water.leaking_by_the_clock": "Les fuites constantes sont de {m3_per_day} m3 par jour.",
    "water.chart": "Besoins et eau fournie : {option}",
    "water.chart_alt": "Besoins et eau fournie par mois de la première année, option {option}.",
    "water.axis": "Eau (m3/mois)",
    "water.demand_m3": "Besoins (m3)",
    "water.delivered_m3": "Eau fournie (m3)",
    "water.shortfall_m3": "Déficit (m3)",
    "water.demand_met_percent": "Besoins couverts (%)",
    "water.solar_m3": "Pompé par le soleil (m3)",
    "water.grid_m3": "Ajouté par le réseau électrique (m3)",
    "water.generator_m3": "Ajouté par le groupe électrogène (m3)",
    "water.further_m3": "Ajouté, source : {source} (m3)",
    "water.pumped_m3": "Pompé en tout (m3)",
    "water.leakage_m3": "Perdu en fuites (m3)",
    "water.storage_change_m3": "Variation de stock (m3)",
    "energy.under": (
        "Première année par mois, puis chaque année. L'énergie PV est en CC au champ, celle du réseau électrique et du "
        "groupe électrogène en CA au variateur ; l'énergie PV non utilisée aurait pu servir mais n'était pas "
        "nécessaire ou pas utilisable."
    ),
    "energy.under_bands": (
        "Première année par mois, puis chaque année. L'énergie PV est en CC au champ, celle du réseau électrique et du "
        "groupe électrogène en CA au variateur ; l'énergie PV non utilisée aurait pu servir mais n'était pas "
        "nécessaire ou pas utilisable. L'énergie du réseau électrique est répartie selon les plages du tarif : {bands} "
        "et les heures hors d'elles."
    ),
    "energy.chart": "Énergie par source : {option}",
    "energy.chart_alt": "Énergie par source et par mois de la première année, option {option}.",
    "energy.axis": "Énergie (kWh/mois)",
    "energy.outside_bands": "hors des plages",
    "energy.pv_used_kwh": "Énergie PV utilisée (kWh)",
    "energy.pv_unused_kwh": "Énergie PV non utilisée (kWh)",
    "energy.grid_kwh": "Réseau électrique (kWh)",
    "energy.grid_band_kwh": "Réseau électrique, {band} (kWh)",
    "energy.grid_hours": "Marche sur le réseau électrique (h)",
    "energy.grid_peak_kw": "Plus forte puissance semi-horaire appelée au réseau (kW)",
    "energy.generator_kwh": "Groupe électrogène (kWh)",
    "energy.generator_hours": "Marche du groupe électrogène (h)",
    "energy.further_kwh": "{source} (kWh)",
    "energy.further_hours": "Heures de marche, source : {source} (h)",
    "energy.fuel_l": "Carburant (L)",
    "energy.pumped_m3": "Eau pompée (m3)",
    "energy.kwh_per_m3": "Énergie utilisée par m3 (kWh/m3)",
    "month.1": "janv.",
    "month.2": "févr.",
    "month.3": "mars",
    "month.4": "avr.",
    "month.5": "mai",
    "month.6": "juin",
    "month.7": "juil.",
    "month.8": "août",
    "month.9": "sept.",
    "month.10": "oct.",
    "month.11": "nov.",
    "month.12": "déc.",
}
