"""Español de lo que un cálculo muestra en la terminal."""

SENTENCES: dict[str, str] = {
    "narrow.title": "{name}: opciones de suministro en {years} años",
    "narrow.option": "Opción de suministro",
    "narrow.meets_target": "Alcanza\nobjetivo",
    "narrow.demand_met_percent": "Demanda\ncubierta\n%",
    "narrow.tank_m3": "Tanque\nm3",
    "narrow.array_kwp": "FV\nkWp",
    "narrow.grid_kwh_per_year": "Red\nkWh/año",
    "narrow.fuel_l_per_year": "Comb.\nL/año",
    "narrow.demand_met_worst_month_percent": "Peor\nmes\n%",
    "narrow.short_days_per_year": "Días con\nfalta\n/año",
    "narrow.worst_month": "Peor\nmes",
    "narrow.worst_month_short_days": "En ese\nmes",
    "narrow.longest_short_days": "Máx.\nsegui-\ndos",
    "narrow.missing_l_per_short_day": "Faltan\nL/día",
    "narrow.modules": "Serie x\ncadenas",
    "narrow.series_by_strings": "{series} x {strings}",
    "narrow.capital_cost": "Inver-\nsión\n{currency}",
    "narrow.life_cycle_cost": "Ciclo\nde\nvida\n{currency}",
    "narrow.levelised_cost_per_m3": "Por m3\n{currency}",
    "terminal.duty": (
        "Punto de funcionamiento: {flow} m3/h a {head} m (nivel estático {static}, descenso {drawdown}, fricción "
        "{friction}, residual {residual}), potencia absorbida por el motor {input_w} W; límite: {limit}."
    ),
    "terminal.weather": "Meteorología: {source}",
    "terminal.incomplete": "{mark} incompleto: falta el precio de {names}",
    "terminal.checks": "Comprobaciones: {summary}",
    "terminal.failed": "{sign} {topic}: {compared}: {value} frente a {limit}. {remedy}",
    "terminal.more_faults": "y {count} más: hoja «Comprobaciones»",
    "rests_on.one": (
        "En qué se apoya: no se dio {key} ({value} {unit}); probado con {tried}, {option} cubre el {met} % de la "
        "demanda con un costo del ciclo de vida de {currency} {cost}."
    ),
    "rests_on.one_technical": (
        "En qué se apoya: no se dio {key} ({value} {unit}); probado con {tried}, {option} cubre el {met} % de la "
        "demanda."
    ),
    "sweep.change_less": (
        "Datos que lo cambian menos, o nada, y nunca cambian la mejor opción: {count}; están en el libro."
    ),
    "size.switch": "Interruptor de flotador (% del tanque)",
    "size.levels": "{start:g} / {stop:g}",
    "worth.map_one": "Con todos los valores probados de {down} y de {across}, {option} sigue siendo la mejor opción.",
    "worth.map_one_misses": (
        "Con todos los valores probados de {down} y de {across}, {option} es la que más se acerca al objetivo."
    ),
    "terminal.beware": "! {caution}",
    "check.named_fail": "no se cumplen: {count} ({names})",
    "check.named_first_fail": "no se cumplen: {count} ({names}; ...)",
    "check.named_caution": "con advertencia: {count} ({names})",
    "check.named_first_caution": "con advertencia: {count} ({names}; ...)",
    # dangers: names of things in a list
    "terminal.dangers": (
        "! Lo que aquí mata: {dangers}. Las normas locales y el trabajo de profesionales autorizados tienen "
        "prioridad. Antes de construir, abrir o beber nada, lea las advertencias de la hoja «Método y advertencias» "
        "(--verbose las muestra)."
    ),
    "terminal.more_dangers": "! Y aquí además: {dangers}.",
    "danger.solar": "tensión CC del campo fotovoltaico (de día nunca se apaga)",
    "danger.grid": "electricidad de la red",
    "danger.exhaust": "gases de escape del grupo electrógeno",
    "danger.backfeed": "un grupo electrógeno que realimenta la línea",
    "danger.any": "electricidad de otra fuente: {source}",
    "danger.lightning": "rayos",
    "danger.loads": "caída de cargas",
    "danger.falls": "caídas de altura",
    "danger.air": "aire viciado en pozos y tanques",
    "danger.trench": "zanjas",
    "danger.tank": "tanques abiertos",
    "danger.water": "agua sin analizar",
}
