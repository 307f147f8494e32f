"""Português da página 'O que pagam os utilizadores'."""

SENTENCES: dict[str, str] = {
    "page.users": "O que pagam os utilizadores",
    "users.under": (
        "Tarifas, contas e poupanças em {currency} do ano 0; o encargo de cada ano em {currency}, {prices}. As "
        "opções estão pela ordem do cálculo."
    ),
    "users.sentence": (
        "Opção {option}: os utilizadores cobrem operação e substituições a {renewals} por m3 (só a operação "
        "{operation}; com apoio e o que a subvenção deixa do custo de investimento {full}). Pôr de lado {saving} por "
        "ano paga cada substituição quando chega a sua altura; sem poupanças o ano mais caro é o ano {year}, com "
        "{largest} face a uma média de {mean}."
    ),
    "users.sentence_no_lumps": (
        "Opção {option}: os utilizadores cobrem a operação a {operation} por m3, e também o apoio e o que a "
        "subvenção deixa do custo de investimento a {full}; nada é substituído dentro do período de análise, pelo "
        "que aqui nada é posto de lado para o que vem depois dele."
    ),
    "users.part.tariff": "Tarifa por m3 que é pago",
    "users.part.household": "Agregado familiar: conta, e o que leva de um rendimento",
    "users.part.burden": "Encargo anual depois da subvenção, do ano 1 ao último",
    "users.part.fund": "Poupança para substituições",
    "users.part.person": "Por pessoa",
    "users.tariffs": (
        "Uma tarifa constante paga todos os anos em conjunto: onde os custos por m3 sobem, deixa nos primeiros anos "
        "alguma coisa de que os últimos precisam. O apoio directo está só na última tarifa, porque quase sempre o "
        "suporta uma autoridade."
    ),
    "users.income": (
        "Limite para uma conta: 3 e 5% do rendimento do agregado familiar são ambos usados como teste (Fankhauser e "
        "Tepic 2005; 3% no Relatório do Desenvolvimento Humano do PNUD 2006; ambos em segunda mão). Não há acordo "
        "sobre nenhum limiar (AQUA 72(8), 2023, uma revisão de 79 estudos). O que ainda se gasta noutras fontes em "
        "semanas secas acresce."
    ),
    "users.no_households": (
        "Sem conta por agregado familiar: [households] não está indicado (size, income_per_month e "
        "lowest_income_per_month)."
    ),
    "users.nobody_at_home": "Sem conta por agregado familiar: nenhum utilizador da água são pessoas em casa.",
    "users.fund": (
        "A poupança é o menor depósito constante no fim de cada ano com que o fundo nunca fica a descoberto com as "
        "substituições de nenhum ano; a média das substituições ao longo dos anos pode ser de menos. Os depósitos "
        "sobem com os preços."
    ),
    "users.income_judged": "  face aos limites usuais",
    "users.income_below": "no máximo {low}%",
    "users.income_between": "entre {low} e {high}%",
    "users.income_above": "acima de {high}%",
    "users.ranges": "Face a gamas de custo publicadas",
    "users.low": "De ({currency})",
    "users.high": "A ({currency})",
    "users.range_below": "! abaixo: parece orçado de menos",
    "users.range_above": "acima",
    "users.range_within": "dentro",
    "users.ranges_source": (
        "Sistemas canalizados pequenos e médios de furos mecanizados, maiores acima de 5000 pessoas: IRC WASHCost, "
        "cost benchmarks, 2012, em dólares dos EUA de 2011, em segunda mão, levados aos preços que "
        "finance.usd_prices_since_2011 diz. O que animais, campos e outros consomem está aqui nos custos, mas na "
        "parte de ninguém."
    ),
    "users.ranges_source_2011": (
        "Sistemas canalizados pequenos e médios de furos mecanizados, maiores acima de 5000 pessoas: IRC WASHCost, "
        "cost benchmarks, 2012, em dólares dos EUA de 2011 como publicados, em segunda mão: os de hoje seriam mais "
        "altos (indique finance.usd_prices_since_2011). O que animais, campos e outros consomem está aqui nos "
        "custos, mas na parte de ninguém."
    ),
    "users.ranges_not_compared": (
        "Não comparado: as gamas publicadas são em dólares dos EUA, os preços em {currency}. Com "
        "finance.programme_currency = 'USD' e finance.exchange_rate o custo de investimento por pessoa é confrontado "
        "com {low} a {high} e o custo recorrente por pessoa e por ano com {low_yearly} a {high_yearly} dólares dos "
        "EUA de 2011 (IRC WASHCost, cost benchmarks, 2012, em segunda mão)."
    ),
    "users.programme": "Em {programme}, a moeda do programa",
    "users.by_year": "Por ano",
    "users.operation_cost": "Operação ({currency})",
    "users.burden": "Encargo anual ({currency})",
    "users.renewals": "Substituições, dinheiro do ano 0 ({currency})",
    "users.renewals_present": "Valor ao juro do fundo ({currency})",
    "users.renewals_due": "O mesmo, acumulado ({currency})",
    "users.saving_needed": "Poupança constante precisa até então ({currency}/ano)",
    "users.fund_balance": "Fundo no fim do ano ({currency})",
}
