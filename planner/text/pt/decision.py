"""Português da decisão: o que dizem a primeira página, o resumo e a síntese da proposta."""

SENTENCES: dict[str, str] = {
    # the verdict, one sentence
    "decision.recommended": "Recomendada: {option}, que cumpre o objectivo de {target:g}% da água ao menor custo.",
    "decision.on_conditions": (
        "Recomendada com as condições abaixo: {option}, que cumpre o objectivo de {target:g}% da água ao menor custo."
    ),
    "decision.not_yet": (
        "Ainda não construir: {option} cumpre o objectivo de {target:g}% da água ao menor custo, uma vez corrigidas "
        "as verificações não cumpridas."
    ),
    "decision.none_meets": (
        "Nenhuma opção cumpre o objectivo de {target:g}% da água; a que mais se aproxima é {option}, com "
        "{delivered:.1f}%."
    ),
    "decision.serves": "A opção {option} cumpre o objectivo de {target:g}% da água.",
    "decision.serves_on_conditions": (
        "A opção {option} cumpre o objectivo de {target:g}% da água, com as condições abaixo."
    ),
    "decision.serves_not_yet": (
        "Ainda não construir: {option} cumpre o objectivo de {target:g}% da água, uma vez corrigidas as verificações "
        "não cumpridas."
    ),
    # conditions, one sentence each
    "decision.estimated_weather": (
        "Sol e temperatura são uma estimativa para o local: meça-os ou obtenha-os antes de comprometer dinheiro."
    ),
    "decision.starter": (
        "{count} valores são ainda os inventados do cenário de partida: ponha os do local em seu lugar antes de usar "
        "os números."
    ),
    "decision.unpriced": "As somas estão incompletas, porque falta o preço do seguinte: {names}.",
    # the three large numbers
    "decision.to_build": "Para construir",
    "decision.to_build_at_least": "Para construir, pelo menos",
    "decision.to_build_note": "antes de qualquer subvenção",
    "decision.to_build_note_grant": "das quais {own} a pagar depois de subvenção e empréstimo",
    "decision.to_build_note_people": "{per_person} por pessoa",
    "decision.users_pay": "Os utilizadores têm de pagar",
    "decision.users_pay_at_least": "Os utilizadores têm de pagar, pelo menos",
    "decision.users_pay_note": "para operação e substituições",
    "decision.users_pay_note_income": (
        "para operação e substituições: {share:.1f}% do rendimento de um agregado familiar médio"
    ),
    "decision.short_days": "Dias sem água suficiente",
    "decision.short_days_note": (
        "falta mais de um décimo da água do dia; a maioria em {month}, sequência máxima {longest:.0f dia|dias}"
    ),
    "decision.short_days_never": "em {years} anos, nenhum dia em que falte mais de um décimo da água",
    "decision.water": "Água por dia",
    "decision.water_note": "fornecida, média de {years} anos",
    "decision.array_and_tank": "A construir",
    "decision.array_and_tank_note": "campo fotovoltaico e reservatório de {option}",
    "decision.tank_note": "reservatório de {option}",
    "decision.value_money": "{currency} {value:,.0f}",
    "decision.value_money_per_m3": "{currency} {value:,.2f} por m3",
    "decision.value_days": "{value:,.1f dia|dias} por ano",
    "decision.value_water": "{value:,.1f} m3",
    "decision.value_array_and_tank": "{kwp:,.2f} kWp + {tank:,.1f} m3",
    "decision.value_tank": "{tank:,.1f} m3",
    # what users pay
    "decision.pay_unpriced": (
        "O que os utilizadores têm de pagar é mais do que dizem estes números, porque falta o preço do seguinte: "
        "{names}."
    ),
    "decision.pay_income": (
        "Com a tarifa para operação e substituições a conta leva {middle:.1f}% do rendimento de um agregado familiar "
        "médio."
    ),
    "decision.pay_income_lowest": (
        "Com a tarifa para operação e substituições a conta leva {middle:.1f}% do rendimento de um agregado familiar "
        "médio e {lowest:.1f}% do de um do quinto mais pobre."
    ),
    # who, when
    "decision.record": (
        "Preparado por: {prepared_by}. Visita ao local: {visit_date}. Preços de: {price_date}. Revisão: {revision!s}."
    ),
    "decision.no_record": (
        "Não está dito: quem o preparou, quando foi a visita ao local, de quando são os preços, que revisão é."
    ),
    "decision.weather_estimate": (
        "Meteorologia: médias mensais estimadas para o local, transformadas em anos hora a hora."
    ),
    "decision.weather_monthly": "Meteorologia: médias mensais como indicadas, transformadas em anos hora a hora.",
    "decision.weather_file": "Meteorologia: registo horário '{file!s}'.",
    "decision.version": "Calculado pelo planner {version!s}, semente {seed}.",
    # a workbook changed since its run
    "decision.changed": (
        "! Preços ou taxas foram alterados desde o cálculo: das opções que cumprem o objectivo, com os tamanhos do "
        "cálculo, a que custa menos agora é {option}. Refaça o estudo antes de usar isto."
    ),
    "decision.run_again": (
        "! Refaça o estudo: foi alterado um dado que estes números não seguem (a folha 'Dados' diz qual; são os do "
        "cálculo)."
    ),
    "decision.overpaid": (
        "! Subvenção e empréstimo juntos excedem 100 por cento do custo de investimento: corrija-os antes de usar isto."
    ),
    "decision.given_way": (
        "Os números abaixo seguem os preços alterados; o que o cálculo disse de verificações, condições e segunda "
        "melhor foi retirado, porque só um novo cálculo o pode dizer."
    ),
    "decision.days_heading": "Dias sem água suficiente, e o que os utilizadores pagam",
    "decision.days_heading_technical": "Dias sem água suficiente",
    "decision.turns_heading": "O que a inverteria",
    "decision.who_heading": "Quem, quando, a partir de quê",
    "decision.large_unit": "{label} ({unit})",
    "decision.cautions": (
        "Leia as advertências na folha 'Método e advertências' antes de se comprar, abrir ou beber seja o que for; "
        "as normas locais e a prática de profissionais credenciados estão em primeiro lugar."
    ),
    "decision.printing": (
        "O conjunto impresso contém o que outros lêem. Para imprimir outra folha, ou mais de uma folha, apague a sua "
        "área de impressão ou imprima uma selecção."
    ),
    "checks.names_not_given": "Não indicado, por isso não verificado: {names}.",
    "checks.names_passed": "Cumpridas: {names}.",
    "page.basis": "Em que assenta",
    "inputs.since": "Desde o cálculo",
    "inputs.since_count": "Número",
    "inputs.since_form": "Alterado no formulário além do que os valores aqui seguem",
    "inputs.since_again": "Alterado em tudo o que os números não seguem",
    "inputs.since_followed": "Alterado e seguido por todas as somas de dinheiro",
    "inputs.since_state": (
        "Estado: 0 como calculado, 1 os números seguem, 2 a recalcular, 3 subvenção e empréstimo acima de 100%"
    ),
    "inputs.since_state_technical": "Estado: 0 como calculado, 2 a recalcular",
    "inputs.again": "! recalcular",
    "inputs.followed": "alterado, seguido",
    "page.form_of_run": "Formulário do cálculo",
    # headings of the table of options beside those that other tables have
    "short.meets_target": "Cumpre objectivo",
    "short.tariff_operation_and_renewals": "Os utilizadores pagam por operação e substituições{incomplete} ({unit})",
}
