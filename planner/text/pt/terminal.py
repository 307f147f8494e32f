"""Português do que um cálculo mostra no terminal."""

SENTENCES: dict[str, str] = {
    "narrow.title": "{name}: opções de alimentação durante {years} anos",
    "narrow.option": "Opção de alimentação",
    "narrow.meets_target": "Cumpre\nobject.",
    "narrow.demand_met_percent": "Neces.\ncobert.\n%",
    "narrow.tank_m3": "Reserv.\nm3",
    "narrow.array_kwp": "FV\nkWp",
    "narrow.grid_kwh_per_year": "Rede\nkWh/ano",
    "narrow.fuel_l_per_year": "Comb.\nL/ano",
    "narrow.demand_met_worst_month_percent": "Pior\nmês\n%",
    "narrow.short_days_per_year": "Dias\ncom\nfalta\n/ano",
    "narrow.worst_month": "Pior\nmês",
    "narrow.worst_month_short_days": "Nesse\nmês",
    "narrow.longest_short_days": "Máx.\nsegui-\ndos",
    "narrow.missing_l_per_short_day": "Em falta\nL/dia",
    "narrow.modules": "Série x\nfileiras",
    "narrow.series_by_strings": "{series} x {strings}",
    "narrow.capital_cost": "Custo de\ninvest.\n{currency}",
    "narrow.life_cycle_cost": "Custo\ndo ciclo\nde vida\n{currency}",
    "narrow.levelised_cost_per_m3": "Por m3\n{currency}",
    "terminal.duty": (
        "Funcionamento: {flow} m3/h a {head} m (geométrica {static}, rebaixamento {drawdown}, perdas de carga "
        "{friction}, residual {residual}), potência absorvida pelo motor {input_w} W, limitado por {limit}."
    ),
    "terminal.weather": "Meteorologia: {source}",
    "terminal.incomplete": "{mark} incompleto: falta o preço do seguinte: {names}",
    "terminal.checks": "Verificações do local: {summary}",
    "terminal.failed": "{sign} {topic}: {compared}: {value} face a {limit}. {remedy}",
    "terminal.more_faults": "e mais {count}: folha 'Verificações'",
    "rests_on.one": (
        "Em que assenta: {key} não foi indicado ({value} {unit}); ensaiado com {tried}, a opção {option} cobre "
        "{met}% das necessidades a um custo do ciclo de vida de {currency} {cost}."
    ),
    "rests_on.one_technical": (
        "Em que assenta: {key} não foi indicado ({value} {unit}); ensaiado com {tried}, a opção {option} cobre "
        "{met}% das necessidades."
    ),
    "sweep.change_less": "Dados que a mudam menos, ou nada, e nunca a melhor opção: {count}; estão no livro.",
    "size.switch": "Interruptor de bóia (% do reservatório)",
    "size.levels": "{start:g} / {stop:g}",
    "worth.map_one": (
        "Sejam quais forem os valores ensaiados de {down} e de {across}, {option} continua a ser a melhor opção."
    ),
    "worth.map_one_misses": (
        "Sejam quais forem os valores ensaiados de {down} e de {across}, a que mais se aproxima do objectivo é "
        "{option}."
    ),
    "terminal.beware": "! {caution}",
    "check.named_fail": "não cumpridas: {count} ({names})",
    "check.named_first_fail": "não cumpridas: {count} ({names}; ...)",
    "check.named_caution": "com advertência: {count} ({names})",
    "check.named_first_caution": "com advertência: {count} ({names}; ...)",
    # dangers: names of things in a list
    "terminal.dangers": (
        "! O que mata aqui: {dangers}. As normas locais e a prática de profissionais credenciados estão em primeiro "
        "lugar. Antes de se construir, abrir ou beber seja o que for, leia as advertências na folha 'Método e "
        "advertências' (--verbose mostra-as)."
    ),
    "terminal.more_dangers": "! E aqui também: {dangers}.",
    "danger.solar": "tensão CC do campo fotovoltaico (nunca desligada de dia)",
    "danger.grid": "electricidade da rede",
    "danger.exhaust": "escape do gerador",
    "danger.backfeed": "um gerador que alimenta em retorno a linha",
    "danger.any": "electricidade da fonte {source}",
    "danger.lightning": "raios",
    "danger.loads": "queda de cargas",
    "danger.falls": "quedas em altura",
    "danger.air": "ar viciado em poços e reservatórios",
    "danger.trench": "valas",
    "danger.tank": "reservatórios abertos",
    "danger.water": "água não analisada",
}
