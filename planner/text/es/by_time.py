"""Español de las páginas por mes y año, y de las cifras sin valor."""

SENTENCES: dict[str, str] = {
    "figure.none": "ninguno",
    "figure.no_water": "nada entregado",
    "figure.no_people": "sin personas",
    "figure.not_given": "no dado",
    "figure.reference": "referencia",
    "figure.not_counted": "no contado",
    "figure.further_cost": "  {category}",
    "figure.further_cost_is": "La parte que paga una fuente de un tipo propio.",
    "figure.never": "nunca",
    "page.water": "Agua",
    "page.energy": "Energía",
    "by_time.label": "Mes o año de vida",
    "by_time.month_axis": "Mes del primer año de vida",
    "by_time.first_year": "Primer año",
    "by_time.all_years": "Todos los años",
    "by_time.year": "Año {year}",
    "by_time.option": "{place}. {option}",
    "by_time.recommended": "{place}. {option}, recomendada",
    "by_time.no_demand": "sin demanda",
    "by_time.none_pumped": "nada bombeado",
    "water.under": (
        "Primer año de vida por mes, después cada año de vida. La demanda y lo entregado son lo que los usuarios "
        "quieren y reciben; la variación del almacenamiento es lo bombeado menos lo que salió del tanque."
    ),
    "water.leaking": "Del agua que sale del tanque, el {percent} % se pierde en fugas.",
    "water.leaking_by_the_clock": "Las fugas constantes son de {m3_per_day} m3 por día.",
    "water.chart": "Demanda y agua entregada: {option}",
    "water.chart_alt": "Demanda y agua entregada por mes del primer año de vida, opción {option}.",
    "water.axis": "Agua (m3/mes)",
    "water.demand_m3": "Demanda (m3)",
    "water.delivered_m3": "Entregada (m3)",
    "water.shortfall_m3": "Déficit (m3)",
    "water.demand_met_percent": "Demanda cubierta (%)",
    "water.solar_m3": "Bombeada por el sol (m3)",
    "water.grid_m3": "Añadida por la red eléctrica (m3)",
    "water.generator_m3": "Añadida por el grupo electrógeno (m3)",
    "water.further_m3": "Añadida por otra fuente: {source} (m3)",
    "water.pumped_m3": "Bombeada en total (m3)",
    "water.leakage_m3": "Perdida en fugas (m3)",
    "water.storage_change_m3": "Variación del almacenamiento (m3)",
    "energy.under": (
        "Primer año de vida por mes, después cada año de vida. La energía FV es CC del campo; la de la red eléctrica "
        "y el grupo electrógeno, CA en el controlador; la energía FV no usada se habría podido usar, pero no hacía "
        "falta o no era aprovechable."
    ),
    "energy.under_bands": (
        "Primer año de vida por mes, después cada año de vida. La energía FV es CC del campo; la de la red eléctrica "
        "y el grupo electrógeno, CA en el controlador; la energía FV no usada se habría podido usar, pero no hacía "
        "falta o no era aprovechable. La energía de la red se reparte según las franjas horarias de la tarifa: "
        "{bands} y las horas fuera de ellas."
    ),
    "energy.chart": "Energía por fuente: {option}",
    "energy.chart_alt": "Energía por fuente y mes del primer año de vida, opción {option}.",
    "energy.axis": "Energía (kWh/mes)",
    "energy.outside_bands": "fuera de las franjas",
    "energy.pv_used_kwh": "Energía FV usada (kWh)",
    "energy.pv_unused_kwh": "Energía FV no usada (kWh)",
    "energy.grid_kwh": "Red eléctrica (kWh)",
    "energy.grid_band_kwh": "Red eléctrica, {band} (kWh)",
    "energy.grid_hours": "Funcionamiento con la red eléctrica (h)",
    "energy.grid_peak_kw": "Mayor demanda de media hora de la red eléctrica (kW)",
    "energy.generator_kwh": "Grupo electrógeno (kWh)",
    "energy.generator_hours": "Funcionamiento del grupo electrógeno (h)",
    "energy.further_kwh": "{source} (kWh)",
    "energy.further_hours": "Funcionamiento con otra fuente: {source} (h)",
    "energy.fuel_l": "Combustible (L)",
    "energy.pumped_m3": "Agua bombeada (m3)",
    "energy.kwh_per_m3": "Energía usada por m3 (kWh/m3)",
    "month.1": "ene",
    "month.2": "feb",
    "month.3": "mar",
    "month.4": "abr",
    "month.5": "may",
    "month.6": "jun",
    "month.7": "jul",
    "month.8": "ago",
    "month.9": "sept",
    "month.10": "oct",
    "month.11": "nov",
    "month.12": "dic",
}
