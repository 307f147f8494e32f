"""Português das páginas por mês e por ano, e das grandezas sem valor."""

SENTENCES: dict[str, str] = {
    "figure.none": "nenhum",
    "figure.no_water": "nada fornecido",
    "figure.no_people": "sem pessoas",
    "figure.not_given": "não indicado",
    "figure.reference": "referência",
    "figure.not_counted": "não contado",
    "figure.further_cost": "  {category}",
    "figure.further_cost_is": "A sua parte que paga uma fonte de outro tipo.",
    "figure.never": "nunca",
    "page.water": "Água",
    "page.energy": "Energia",
    "by_time.label": "Mês ou ano de vida",
    "by_time.month_axis": "Mês do primeiro ano de vida",
    "by_time.first_year": "Primeiro ano",
    "by_time.all_years": "Todos os anos",
    "by_time.year": "Ano {year}",
    "by_time.option": "{place}. {option}",
    "by_time.recommended": "{place}. {option}, recomendada",
    "by_time.no_demand": "sem necessidades",
    "by_time.none_pumped": "nada bombeado",
    "water.under": (
        "O primeiro ano de vida por mês, depois cada ano de vida. Necessidades e água fornecida são o que os "
        "utilizadores querem e recebem; a variação do armazenamento é o que foi bombeado menos o que saiu do "
        "reservatório."
    ),
    "water.leaking": "Da água que sai do reservatório, {percent}% perde-se em fugas.",
    "water.leaking_by_the_clock": "As fugas constantes são de {m3_per_day} m3 por dia.",
    "water.chart": "Necessidades e água fornecida: {option}",
    "water.chart_alt": "Necessidades e água fornecida por mês do primeiro ano de vida, opção {option}.",
    "water.axis": "Água (m3/mês)",
    "water.demand_m3": "Necessidades (m3)",
    "water.delivered_m3": "Fornecida (m3)",
    "water.shortfall_m3": "Défice (m3)",
    "water.demand_met_percent": "Necessidades cobertas (%)",
    "water.solar_m3": "Bombeada pelo sol (m3)",
    "water.grid_m3": "Acrescentada pela rede (m3)",
    "water.generator_m3": "Acrescentada pelo gerador (m3)",
    "water.further_m3": "Acrescentada, fonte: {source} (m3)",
    "water.pumped_m3": "Bombeada ao todo (m3)",
    "water.leakage_m3": "Perdida em fugas (m3)",
    "water.storage_change_m3": "Variação do armazenamento (m3)",
    "energy.under": (
        "O primeiro ano de vida por mês, depois cada ano de vida. A energia fotovoltaica é CC do campo, a da rede e "
        "do gerador é CA no controlador; a energia fotovoltaica não usada teria podido servir, mas não foi precisa "
        "ou não era utilizável."
    ),
    "energy.under_bands": (
        "O primeiro ano de vida por mês, depois cada ano de vida. A energia fotovoltaica é CC do campo, a da rede e "
        "do gerador é CA no controlador; a energia fotovoltaica não usada teria podido servir, mas não foi precisa "
        "ou não era utilizável. A energia da rede está repartida pelos períodos da tarifa: {bands} e as horas fora "
        "deles."
    ),
    "energy.chart": "Energia por fonte: {option}",
    "energy.chart_alt": "Energia por fonte e por mês do primeiro ano de vida, opção {option}.",
    "energy.axis": "Energia (kWh/mês)",
    "energy.outside_bands": "fora dos períodos",
    "energy.pv_used_kwh": "Energia fotovoltaica usada (kWh)",
    "energy.pv_unused_kwh": "Energia fotovoltaica não usada (kWh)",
    "energy.grid_kwh": "Rede (kWh)",
    "energy.grid_band_kwh": "Rede, {band} (kWh)",
    "energy.grid_hours": "Funcionamento com a rede (h)",
    "energy.grid_peak_kw": "Maior potência média em meia hora na rede (kW)",
    "energy.generator_kwh": "Gerador (kWh)",
    "energy.generator_hours": "Funcionamento do gerador (h)",
    "energy.further_kwh": "{source} (kWh)",
    "energy.further_hours": "Funcionamento com a fonte: {source} (h)",
    "energy.fuel_l": "Combustível (L)",
    "energy.pumped_m3": "Água bombeada (m3)",
    "energy.kwh_per_m3": "Energia usada por m3 (kWh/m3)",
    "month.1": "jan.",
    "month.2": "fev.",
    "month.3": "mar.",
    "month.4": "abr.",
    "month.5": "mai.",
    "month.6": "jun.",
    "month.7": "jul.",
    "month.8": "ago.",
    "month.9": "set.",
    "month.10": "out.",
    "month.11": "nov.",
    "month.12": "dez.",
}
