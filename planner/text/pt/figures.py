"""As grandezas do catálogo: o seu nome, e o que são."""

FIGURES: dict[str, tuple[str, str]] = {
    "tank_m3": ("Reservatório", "Volume útil do reservatório."),
    "modules": ("Módulos fotovoltaicos", "Módulos de todas as fileiras em conjunto."),
    "strings": ("Fileiras em paralelo", "Fileiras de módulos em série, lado a lado."),
    "array_kwp": (
        "Campo fotovoltaico, potência nominal",
        "Potência nominal de todos os módulos nas condições normalizadas de ensaio (IEC 60904-3).",
    ),
    "start_level_percent": (
        "Nível de arranque do reforço",
        "Nível em que o interruptor de bóia liga a rede ou o gerador.",
    ),
    "stop_level_percent": (
        "Nível de paragem do reforço",
        "Nível em que o interruptor de bóia desliga a rede ou o gerador.",
    ),
    "duty_flow_m3h": (
        "Caudal no ponto de funcionamento",
        "Caudal em que bomba e instalação se encontram ao nível médio anual da água.",
    ),
    "total_dynamic_head_m": (
        "Altura manométrica total",
        "Altura geométrica, rebaixamento, perdas de carga e pressão residual em conjunto, no ponto de funcionamento.",
    ),
    "generator_kw": ("Gerador, potência nominal", "Potência nominal do gerador nas condições de referência."),
    "meets_target": ("Cumpre o objectivo de serviço (1: sim)", "Se fornece o que o objectivo de serviço pede."),
    "short_days_per_year": (
        "Dias sem água suficiente",
        "Dias em que falta mais de um décimo das necessidades do dia, média dos anos (prática corrente, sem fonte).",
    ),
    "worst_month": (
        "Pior mês (1: janeiro)",
        "Mês do ano em que se fornece a menor parte das necessidades, todos os anos em conjunto.",
    ),
    "worst_month_short_days": (
        "Dias sem água suficiente no pior mês",
        "Dias sem água suficiente nesse mês, média dos anos.",
    ),
    "longest_short_days": (
        "Sequência mais longa de dias sem água suficiente",
        "Maior número desses dias seguidos no período de análise, também na passagem do ano.",
    ),
    "missing_l_per_short_day": (
        "Água em falta num dia médio sem água suficiente",
        "O que falta aos utilizadores em todos esses dias do período de análise, dividido pelo seu número.",
    ),
    "demand_met_percent": (
        "Necessidades cobertas",
        "Água fornecida em relação à água pedida, todos os anos em conjunto.",
    ),
    "demand_met_worst_year_percent": (
        "Necessidades cobertas no pior ano",
        "A menor parte anual das necessidades que é fornecida.",
    ),
    "demand_met_worst_month_percent": (
        "Necessidades cobertas no pior mês",
        "A menor parte das necessidades fornecida em qualquer mês do ano, todos os anos em conjunto.",
    ),
    "demand_first_year_m3": ("Necessidades no primeiro ano", "Água pedida pelos utilizadores no ano 1."),
    "delivered_first_year_m3": ("Fornecida no primeiro ano", "Água que chega aos utilizadores no ano 1."),
    "demand_last_year_m3": ("Necessidades no último ano", "Água pedida pelos utilizadores no último ano."),
    "delivered_last_year_m3": ("Fornecida no último ano", "Água que chega aos utilizadores no último ano."),
    "shortfall_m3_per_year": ("Défice, média", "Necessidades não cobertas, média dos anos."),
    "shortfall_by_daily_limit_m3_per_year": (
        "  dele causado pelo limite diário",
        "Necessidades que seriam cobertas sem o limite diário, média dos anos; encontradas por um cálculo sem ele.",
    ),
    "demand_met_worst_year_in_ten_percent": (
        "Necessidades cobertas no pior ano em dez",
        "Parte anual das necessidades fornecida que nove anos em dez atingem (percentil 10 dos anos).",
    ),
    "short_days_worst_year_in_ten": (
        "Dias sem água suficiente no pior ano em dez",
        "Dias sem água suficiente que nove anos em dez não excedem (percentil 90 dos anos).",
    ),
    "missing_l_per_day_worst_year_in_ten": (
        "Em falta no pior ano em dez",
        "Água em falta, média dos dias de um ano, que nove anos em dez não excedem (percentil 90 dos anos).",
    ),
    "pumped_by_solar_percent": ("Bombeada pelo sol", "Parte da água bombeada que a energia fotovoltaica eleva."),
    "pumped_by_grid_percent": ("Acrescentada pela rede", "Parte da água bombeada que a rede acrescenta."),
    "pumped_by_generator_percent": ("Acrescentada pelo gerador", "Parte da água bombeada que o gerador acrescenta."),
    "pv_used_kwh_per_year": ("Energia fotovoltaica usada (CC)", "Energia que o campo dá à bomba, média dos anos."),
    "pv_unused_kwh_per_year": (
        "Energia fotovoltaica não usada (CC)",
        "Energia que o campo teria podido dar, média dos anos.",
    ),
    "grid_kwh_per_year": ("Energia da rede", "Energia comprada à rede, média dos anos."),
    "grid_hours_per_year": ("Funcionamento com a rede", "Horas em que a rede acciona a bomba, média dos anos."),
    "grid_peak_kw": ("Maior potência média em meia hora na rede", "A maior meia hora de todos os meses e anos."),
    "generator_kwh_per_year": ("Energia do gerador", "Energia que o gerador dá, média dos anos."),
    "generator_hours_per_year": ("Funcionamento do gerador", "Horas em que o gerador funciona, média dos anos."),
    "fuel_l_per_year": ("Combustível", "Combustível que o gerador queima, média dos anos."),
    "capital_cost": ("Custo de investimento", "O que se constrói no ano 0, antes de subvenção e empréstimo."),
    "life_cycle_cost": (
        "Custo do ciclo de vida (valor actual)",
        "Valor actual de todos os custos do período de análise menos o valor residual (NIST Handbook 135).",
    ),
    "life_cycle_construction": ("  Custo de investimento", "A sua parte que se paga no ano 0."),
    "life_cycle_replacement": ("  Substituições", "A sua parte que substitui o que se gasta."),
    "life_cycle_upkeep": ("  Manutenção", "A sua parte que mantém as obras."),
    "life_cycle_grid": ("  Contas da rede", "A sua parte que paga a energia da rede."),
    "life_cycle_fuel": ("  Combustível", "A sua parte que paga o combustível, transporte incluído."),
    "life_cycle_generator_service": (
        "  Assistência ao gerador",
        "A sua parte que paga revisões e grandes reparações do gerador.",
    ),
    "life_cycle_yearly_costs": ("  Outros custos anuais", "A sua parte que volta todos os anos."),
    "life_cycle_direct_support": ("  Apoio directo", "A sua parte que a autoridade gasta em apoio."),
    "life_cycle_residual": ("  Valor residual", "O que as obras valem no fim, descontado."),
    "annualised_cost": (
        "Custo anualizado",
        "Custo anual constante, em dinheiro do ano 0, do mesmo valor actual (NIST Handbook 135).",
    ),
    "levelised_cost_per_m3": (
        "Custo nivelado da água",
        "Custo do ciclo de vida dividido pelo volume fornecido actualizado (custo económico incremental médio, ADB "
        "1999).",
    ),
    "annualised_cost_per_person": (
        "Custo anualizado por pessoa do primeiro ano",
        "Custo anualizado dividido pelas pessoas servidas no ano 1.",
    ),
    "revenue_present": ("Valor actual do que os utilizadores pagam", "Valor actual da água vendida ao preço da água."),
    "net_present_value": (
        "Valor actual líquido",
        "Valor actual do que os utilizadores pagam menos o custo do ciclo de vida.",
    ),
    "grant": ("Subvenção", "Soma recebida no ano 0 que não tem de ser devolvida."),
    "loan": ("Empréstimo", "Soma recebida no ano 0 que é devolvida."),
    "own_funds": (
        "Fundos próprios no ano 0 (comunidade ou dono)",
        "Custo de investimento menos subvenção e empréstimo.",
    ),
    "owner_life_cycle_cost": (
        "Custo do ciclo de vida para o dono",
        "Valor actual de todos os custos menos a subvenção e o empréstimo recebidos, mais as prestações do empréstimo.",
    ),
    "capital_expenditure": (
        "Despesa de investimento",
        "Custo de investimento (componentes do ciclo de vida, IRC 2011).",
    ),
    "operation_and_minor_maintenance": (
        "Operação e pequena manutenção",
        "Manutenção, energia, combustível, revisões e outros custos anuais (componentes do ciclo de vida, IRC 2011).",
    ),
    "capital_maintenance": (
        "Manutenção de capital (substituição)",
        "Substituições (componentes do ciclo de vida, IRC 2011).",
    ),
    "expenditure_on_direct_support": (
        "Despesa em apoio directo",
        "Apoio da autoridade local, 0 onde nenhum foi indicado (componentes do ciclo de vida, IRC 2011).",
    ),
    "residual_taken_off": ("Valor residual, descontado", "O que as obras valem no fim."),
    "cost_of_capital": (
        "Custo do capital (prestações do empréstimo menos empréstimo)",
        "Valor actual das prestações do empréstimo menos o empréstimo (componentes do ciclo de vida, IRC 2011).",
    ),
    "tariff_operation": (
        "Tarifa que cobre a operação",
        "Preço constante da água, em dinheiro do ano 0, que paga energia, revisões, manutenção e outros custos anuais.",
    ),
    "tariff_operation_and_renewals": (
        "Tarifa que cobre operação e substituições",
        "O mesmo com a poupança constante para substituições.",
    ),
    "tariff_full": (
        "Tarifa que cobre tudo (recuperação total de custos)",
        "O mesmo com o apoio directo e o custo de investimento menos subvenção e valor residual, à taxa de "
        "actualização.",
    ),
    "household_m3_per_month": (
        "Água que um agregado familiar pede",
        "Água por pessoa e por dia, como nas necessidades, vezes as pessoas de um agregado familiar; os alunos de "
        "uma escola ficam à parte.",
    ),
    "bill_operation": ("Conta com a tarifa para a operação", "Água que um agregado familiar pede a essa tarifa."),
    "bill_operation_and_renewals": (
        "Conta com a tarifa para operação e substituições",
        "Água que um agregado familiar pede a essa tarifa.",
    ),
    "bill_full": ("Conta com a tarifa para tudo", "Água que um agregado familiar pede a essa tarifa."),
    "income_share_operation": (
        "De um rendimento médio: operação",
        "Essa conta em relação ao rendimento do agregado familiar médio.",
    ),
    "income_share_operation_and_renewals": (
        "De um rendimento médio: operação e substituições",
        "Essa conta em relação ao rendimento do agregado familiar médio.",
    ),
    "income_share_full": (
        "De um rendimento médio: tudo",
        "Essa conta em relação ao rendimento do agregado familiar médio.",
    ),
    "lowest_income_share_operation": (
        "Do rendimento do quinto mais pobre: operação",
        "Essa conta em relação ao rendimento de um agregado familiar do quinto mais pobre.",
    ),
    "lowest_income_share_operation_and_renewals": (
        "Do rendimento do quinto mais pobre: operação e substituições",
        "Essa conta em relação ao rendimento de um agregado familiar do quinto mais pobre.",
    ),
    "lowest_income_share_full": (
        "Do rendimento do quinto mais pobre: tudo",
        "Essa conta em relação ao rendimento de um agregado familiar do quinto mais pobre.",
    ),
    "burden_mean": (
        "Encargo anual, médio",
        "O que se paga do ano 1 ao último, depois da subvenção: operação, apoio, substituições e prestações do "
        "empréstimo.",
    ),
    "burden_largest": ("Encargo anual, maior", "O mesmo no ano em que é maior."),
    "burden_largest_year": ("  no ano", "Primeiro ano com esse encargo."),
    "renewal_saving": (
        "Poupança anual constante para substituições",
        "Menor depósito constante, em dinheiro do ano 0, com que um só fundo para todas as substituições nunca fica "
        "a descoberto.",
    ),
    "renewal_fund_empty_year": (
        "  fundo vazio depois do ano",
        "Ano depois de cujas substituições o fundo está a zero.",
    ),
    "renewal_fund_left": (
        "  fundo que resta no fim",
        "O que o fundo contém depois do último ano, em dinheiro do ano 0: pertence às substituições seguintes.",
    ),
    "capital_cost_per_person": (
        "Custo de investimento por pessoa",
        "Custo de investimento dividido pelas pessoas servidas no ano 1.",
    ),
    "recurrent_cost_per_person": (
        "Custo recorrente por pessoa e por ano",
        "Operação, apoio directo e poupança para substituições, constante, dividido pelas pessoas servidas no ano 1.",
    ),
    "co2_kg": (
        "Dióxido de carbono no período de análise",
        "Do combustível queimado e da energia comprada; não contado onde o factor de um deles não é indicado.",
    ),
    "co2_kg_per_year": ("Dióxido de carbono, média", "O mesmo, média dos anos."),
    "co2_kg_per_m3": ("Dióxido de carbono por m3 fornecido", "O mesmo dividido pela água fornecida."),
    "saving_present": (
        "Poupança no custo do ciclo de vida (negativa: custa mais)",
        "Custo do ciclo de vida da referência menos o desta.",
    ),
    "internal_rate_of_return_percent": (
        "Taxa interna de rentabilidade",
        "Taxa a que o investimento adicional iguala as poupanças posteriores face à referência.",
    ),
    "payback_years": (
        "Período de retorno, simples",
        "Anos até o investimento adicional ser recuperado, e assim ficar.",
    ),
    "discounted_payback_years": ("Período de retorno, actualizado", "O mesmo com as poupanças actualizadas."),
}
