"""Português das páginas sobre a altura, o reservatório, as verificações, os dados e o que foi simulado."""

SENTENCES: dict[str, str] = {
    "simulated.title": "Grandezas simuladas",
    "simulated.under": (
        "Água, energia, combustível e horas são valores da simulação horária: só mudam com um novo cálculo. O que as "
        "horas exigem do gerador e a conta da rede, aos preços do primeiro ano, são fórmulas na folha 'Dados'."
    ),
    "simulated.years": "Período de análise (anos)",
    "simulated.people": "Pessoas, primeiro ano (0: nenhuma)",
    "simulated.demand_m3": "Necessidades (m3)",
    "simulated.delivered_m3": "Fornecida (m3)",
    "simulated.fuel_l": "Combustível (L)",
    "simulated.grid_kwh": "Rede (kWh)",
    "simulated.grid_peaks_kw": "Soma das pontas mensais (kW)",
    "simulated.hours": "Gerador (h)",
    "simulated.run_h": "Gerador, funcionamento ao todo (h)",
    "simulated.services": "Revisões",
    "simulated.used_h": "Horas do gerador actual (h)",
    "simulated.age_years": "Anos do gerador actual",
    "simulated.overhauls": "Grandes reparações",
    "simulated.worn": "Geradores gastos por horas",
    "simulated.bought": "Geradores substituídos",
    "simulated.kept_h": "Horas do gerador mantido (h)",
    "simulated.kept_years": "Anos do gerador mantido",
    "simulated.block_kwh": "Rede, escalão {number} (kWh)",
    "simulated.grid_bill": "Conta da rede ({currency})",
    "simulated.further_kwh": "{source} (kWh)",
    "simulated.further_hours": "{source} (h)",
    "simulated.further_fuel_l": "{source}, combustível (L)",
    "simulated.further_band": "{source}, período {band} (kWh)",
    "simulated.left": "Vida do gerador que resta no fim (parte)",
    # ---- cash flow
    "head.title": "Altura manométrica total e ponto de funcionamento",
    "head.under": (
        "Obras hidráulicas de {option}; alturas em metros de coluna de água. O ponto de funcionamento é onde a bomba "
        "à velocidade máxima encontra a instalação, ou onde o limitam o caudal seguro de exploração, o limite de "
        "potência ou o nível da aspiração."
    ),
    "head.build_up": "Composição no ponto de funcionamento",
    "head.part": "Parte",
    "head.head_m": "Altura (m)",
    "head.share": "Parte (%)",
    "head.static_level": "Nível estático, média dos meses",
    "head.rise": "Subida do terreno à entrada do reservatório",
    "head.drawdown": "Rebaixamento",
    "head.pipe_friction": "Perdas de carga nas tubagens",
    "head.fitting_losses": "Perdas nos acessórios",
    "head.residual": "Pressão residual à entrada",
    "head.other": "Ponto alto do traçado, ou retido por uma válvula",
    "head.total": "Altura manométrica total",
    "head.duty": "Ponto de funcionamento, nível médio anual da água",
    "head.figure": "Grandeza",
    "head.value": "Valor",
    "head.unit": "Unidade",
    "head.flow": "Caudal",
    "head.shut_off": "Altura da bomba sem caudal, velocidade nominal",
    "head.speed": "Velocidade",
    "head.of_rated": "% da nominal",
    "head.hydraulic_power": "Potência da água elevada",
    "head.input_power": "Potência absorvida pelo motor",
    "head.efficiency": "Rendimento, da entrada do motor à água",
    "head.limited_by": "Limitado por",
    "head.by_run": "Perdas de carga no ponto de funcionamento por troço de tubagem ({method})",
    "head.run": "Troço de tubagem",
    "head.length": "Comprimento (m)",
    "head.inside_diameter": "Diâmetro interior (mm)",
    "head.velocity": "Velocidade (m/s)",
    "head.friction": "Perda de carga (m)",
    "head.fittings": "Acessórios (m)",
    "head.loss": "Perda (m/100 m)",
    "head.by_month": "Ponto de funcionamento por mês",
    "head.month": "Mês",
    "head.level": "Nível estático (m)",
    "head.static_lift": "Altura geométrica (m)",
    "head.flow_m3h": "Caudal (m3/h)",
    "head.total_head": "Altura total (m)",
    "head.input_w": "Potência do motor (W)",
    "head.differing": "Opções com outra bomba, conduta ou limite",
    "head.option": "Opção de alimentação",
    "head.curves": "Pontos das curvas",
    "head.system": "Instalação (m)",
    "head.at_speed": "{speed}% (m)",
    "head.chart": "Bomba e instalação",
    "head.chart_alt": (
        "Altura em função do caudal: a instalação, a bomba a várias velocidades, e o ponto de funcionamento onde se "
        "encontram."
    ),
    "head.system_curve": "Instalação",
    "head.pump_curve": "Bomba a {speed}% da velocidade",
    "head.duty_point": "Ponto de funcionamento",
    # ---- tank
    "tank.title": "Reservatório e interruptor de bóia",
    "tank.under": (
        "Cada tamanho e cada regulação foi simulado hora a hora durante todos os anos, com tudo o resto da opção "
        "como escolhido."
    ),
    "tank.by_size": "Necessidades cobertas por tamanho do reservatório",
    "tank.option": "Opção de alimentação",
    "tank.tank_m3": "Reservatório (m3)",
    "tank.met": "Necessidades cobertas (%)",
    "tank.target": "Objectivo (%)",
    "tank.price": "Preço do reservatório ({currency})",
    "tank.chosen": "Escolhido",
    "tank.is_chosen": "✓ escolhido",
    "tank.settings": "Regulações do interruptor de bóia",
    "tank.none_tried": (
        "Nenhuma opção deixa a rede ou o gerador reforçar o que o sol bombeia, pelo que não se compararam regulações."
    ),
    "tank.start": "Nível de arranque (% do reservatório)",
    "tank.stop": "Nível de paragem (% do reservatório)",
    "tank.meets": "Cumpre objectivo",
    "tank.grid": "Rede (kWh/ano)",
    "tank.fuel": "Combustível (L/ano)",
    "tank.life_cycle_cost": "Custo do ciclo de vida ({currency})",
    "tank.annualised_cost": "Custo anualizado ({currency}/ano)",
    "tank.against": "Face à regulação usada ({currency}/ano)",
    "tank.remark": "Observação",
    "tank.used": "usada",
    "tank.best": "melhor",
    "tank.none_better": (
        "Opção {option}: arranque a {start}%, paragem a {stop}% do reservatório; das regulações ensaiadas nenhuma é "
        "melhor."
    ),
    "tank.would_meet": (
        "Opção {option}: arranque a {start}%, paragem a {stop}% do reservatório falha o objectivo de serviço; "
        "{better}% cumpri-lo-ia."
    ),
    "tank.would_save": (
        "Opção {option}: arranque a {start}%, paragem a {stop}% do reservatório; {better}% pouparia {saving} por ano."
    ),
    "tank.most_delivered": (
        "Opção {option}: arranque a {start}%, paragem a {stop}% do reservatório; {better}% forneceria mais do que as "
        "outras ensaiadas."
    ),
    "tank.chart_alt": (
        "Necessidades cobertas por tamanho do reservatório, de {option} e de opções que diferem dela, e o objectivo."
    ),
    "tank.target_line": "Objectivo",
    # ---- checks
    "checks.title": "Verificações do local",
    "checks.under": "{summary}. As normas locais e a prática de profissionais credenciados estão em primeiro lugar.",
    "checks.verdict": "Resultado",
    "checks.topic": "Tema",
    "checks.compared": "O que foi comparado",
    "checks.value": "Valor",
    "checks.limit": "Limite",
    "checks.margin": "Margem",
    "checks.why": "Porque importa",
    "checks.remedy": "Remédio",
    "checks.source": "Limite de",
    "checks.pass": "cumpre",
    "checks.caution": "advertência",
    "checks.fail": "não cumpre",
    "checks.not given": "não indicado",
    "checks.route": "Traçado e linhas de pressão",
    "checks.in_metres": "{name} (m)",
    "checks.chainage": "Distância",
    "checks.ground": "Terreno",
    "checks.duty_line": "Linha piezométrica em funcionamento",
    "checks.shut_off_line": "Linha piezométrica com válvula fechada",
    "checks.allowed_line": "Limite de pressão da tubagem",
    "checks.not_known": "desconhecido",
    "checks.chart_alt": "Terreno, linhas piezométricas e o limite da tubagem ao longo do traçado a partir do furo.",
    "checks.chainage_axis": "Distância a partir do furo (m)",
    "checks.level_axis": "Cota acima do terreno no furo (m)",
    # ---- inputs
    "inputs.under": (
        "Todas as chaves do cenário. 'indicado' está no cenário; 'por omissão' é suposto, com a sua fonte; 'não "
        "indicado' não tem valor; '{starter}' foi inventado para o cenário de partida e não foi alterado desde então."
    ),
    "inputs.money_is": "'money' é {currency}.",
    "inputs.status_given": "indicado",
    "inputs.status_default": "por omissão",
    "inputs.status_assumed": "suposto",
    "inputs.status_not given": "não indicado",
    "inputs.status_starter": "ainda o valor do cenário de partida",
    "starter.left_over": (
        "{count} valores são ainda os inventados do cenário de partida ('{status}' na folha 'Dados'): ponha os do "
        "local em seu lugar antes de usar os números."
    ),
    "inputs.note": (
        "Para alterar um dado, vá à folha 'Formulário': os valores aqui seguem-na, e todas as somas de dinheiro "
        "seguem estes. Podem ser assim alterados preços, vidas e manutenção das coisas compradas, percentagens, a "
        "taxa de actualização, a inflação, o crescimento dos preços, subvenção, empréstimo, preço da água e preços "
        "da tarifa. Tudo o resto precisa de um novo cálculo deste livro (planner run FILE): o que muda água, "
        "energia, combustível ou horas, o período de análise, o tipo de preços, os limites dos escalões da tarifa, a "
        "vida da bomba, uma percentagem que era 0, e o que foi escolhido pelo custo (reservatório, fileiras, "
        "níveis), que fica como foi escolhido. A folha 'Reservatório' e as frases da folha 'Resposta' ficam como no "
        "cálculo."
    ),
    "inputs.key": "Chave",
    "inputs.value": "Valor",
    "inputs.status": "Indicado ou por omissão",
    "inputs.meaning": "Significado",
    "inputs.source": "Fonte do valor por omissão, ou o que quer dizer a sua falta",
    "inputs.by_month": "por mês",
    "inputs.weather": "Meteorologia usada",
    "inputs.weather_source": "Fonte: {source}",
    "inputs.weather_note": "Nota: {note}",
    "inputs.altitude": "Altitude do local",
    "inputs.altitude_given": "indicada",
    "inputs.altitude_grid": "da grelha mundial da pvlib",
    "inputs.years": "Irradiação do ano mais baixo e do mais alto",
    "inputs.from_to": "{low} a {high}",
    "inputs.of_mean": "% da média",
    "weather.ghi_kwh_m2_day": "Irradiação horizontal, média",
    "weather.ghi_lowest_year_kwh_m2_day": "Irradiação horizontal, ano mais baixo",
    "weather.ghi_highest_year_kwh_m2_day": "Irradiação horizontal, ano mais alto",
    "weather.temperature_mean_c": "Temperatura do ar, média",
    "weather.temperature_min_c": "Temperatura do ar, hora mais fria",
    "weather.temperature_max_c": "Temperatura do ar, hora mais quente",
    "weather.clearness": "Índice de limpidez, média",
    "weather.clearness_spread": "Índice de limpidez, dispersão dos dias",
    "weather.wind_m_s": "Vento",
}
