"""Português do passo seguinte de uma opção, e do que custa a sua água além da de outra."""

SENTENCES: dict[str, str] = {
    "answer.only_option": (
        "A única opção comparada, {option}, cumpre o objectivo de {target:g}% da água: custo de investimento "
        "{capital_cost}, custo do ciclo de vida (valor actual) {life_cycle_cost} no período de análise de {years} "
        "anos, custo nivelado da água {per_m3} por m3."
    ),
    "answer.only_option_incomplete": (
        "A única opção comparada, {option}, cumpre o objectivo de {target:g}% da água. O total está incompleto, "
        "porque falta o preço do seguinte: {unpriced}; o resto dá um custo do ciclo de vida (valor actual) de "
        "{life_cycle_cost} no período de análise de {years} anos e um custo nivelado da água de {per_m3} por m3."
    ),
    "next_step.kind.string": "mais uma fileira de módulos ({strings} em vez de {strings_before})",
    "next_step.kind.tank": "o reservatório seguinte ({tank:g} m3 em vez de {tank_before:g} m3)",
    "next_step.kind.string_and_tank": (
        "mais uma fileira de módulos e o reservatório seguinte ({strings} fileiras, {tank:g} m3)"
    ),
    "next_step.kind.pump": "outra bomba ({name})",
    "next_step.kind.source": "mais uma fonte ({name})",
    "next_step.would_meet_dearer": (
        "Com {step}, a opção {option} cumpriria o objectivo: {after:.1f}% da água e {days_after:.1f dia|dias} sem "
        "água suficiente por ano, em vez de {before:.1f}% e {days_before:.1f dia|dias}. Construí-la custa então mais "
        "{capital}; o seu custo do ciclo de vida passa a {total}, mais {gap} do que o de {best}."
    ),
    "next_step.would_meet_cheaper": (
        "Com {step}, a opção {option} cumpriria o objectivo: {after:.1f}% da água e {days_after:.1f dia|dias} sem "
        "água suficiente por ano, em vez de {before:.1f}% e {days_before:.1f dia|dias}. Construí-la custa então mais "
        "{capital}; o seu custo do ciclo de vida passa a {total}, menos {gap} do que o de {best} tal como está."
    ),
    "next_step.would_meet_first": (
        "Com {step}, a opção {option} cumpriria o objectivo: {after:.1f}% da água e {days_after:.1f dia|dias} sem "
        "água suficiente por ano, em vez de {before:.1f}% e {days_before:.1f dia|dias}. Construí-la custa então mais "
        "{capital}; o seu custo do ciclo de vida passa a {total} em vez de {now}."
    ),
    "next_step.would_meet_technical": (
        "Com {step}, a opção {option} cumpriria o objectivo: {after:.1f}% da água e {days_after:.1f dia|dias} sem "
        "água suficiente por ano, em vez de {before:.1f}% e {days_before:.1f dia|dias}."
    ),
    "next_step.would_not": (
        "A opção {option} falha o objectivo com {before:.1f}% da água e {days_before:.1f dia|dias} sem água "
        "suficiente por ano, e nenhum passo seguinte sozinho o cumpre: o que mais dá é {step}, com {after:.1f}% e "
        "{days_after:.1f dia|dias} sem água suficiente por ano, por mais {capital} na construção."
    ),
    "next_step.would_not_technical": (
        "A opção {option} falha o objectivo com {before:.1f}% da água e {days_before:.1f dia|dias} sem água "
        "suficiente por ano, e nenhum passo seguinte sozinho o cumpre: o que mais dá é {step}, com {after:.1f}% e "
        "{days_after:.1f dia|dias} sem água suficiente por ano."
    ),
    "next_step.would_fail": (
        "A opção {option} não pode simplesmente receber {step}: estas verificações deixariam então de ser cumpridas: "
        "{checks}."
    ),
    "next_step.close": (
        "A opção {option} cumpre o objectivo por apenas {points:.1f} pontos percentuais. Para ter mais folga, {step} "
        "dá {after:.1f}% da água e {days_after:.1f dia|dias} sem água suficiente por ano em vez de "
        "{days_before:.1f}, por mais {capital} na construção; o seu custo do ciclo de vida passa a {total} em vez de "
        "{now}."
    ),
    "next_step.close_technical": (
        "A opção {option} cumpre o objectivo por apenas {points:.1f} pontos percentuais. Para ter mais folga, {step} "
        "dá {after:.1f}% da água e {days_after:.1f dia|dias} sem água suficiente por ano em vez de {days_before:.1f}."
    ),
    "next_step.saves": (
        "Com {step}, a opção {option} custaria menos no período de análise: {total} em vez de {now}, por mais "
        "{capital} na construção."
    ),
    "next_step.incremental": (
        "A água que a opção {option} fornece a mais do que a opção {other} custa {extra} por m3, face a {average} em "
        "média para toda ela: vale a pena tê-la onde cada m3 em falta custa mais do que isso a quem fica sem ele."
    ),
    "next_step.below": (
        "Se {percent:.1f}% da água bastassem em vez de {target:g}%, a resposta, com todos os tamanhos como aqui "
        "estão, seria {other} e custaria menos {gap} no período de análise ({share:.0f}%)."
    ),
    "next_step.above": (
        "Se fossem pedidos mais de {percent:.1f}% da água, a resposta, com todos os tamanhos como aqui estão, seria "
        "{other} e custaria mais {gap} no período de análise."
    ),
    "next_step.valued_same": (
        "Com cada m3 em falta avaliado em {value}, como indicado, a primeira continua a ser {option}: {total} "
        "incluindo a água que falta aos seus utilizadores."
    ),
    "next_step.valued_other": (
        "Com cada m3 em falta avaliado em {value}, como indicado, a primeira seria {other}, com {total} incluindo a "
        "água que falta aos seus utilizadores, face a {total_first} para {option}. Nenhum outro custo aqui contém "
        "esse valor."
    ),
    # the page
    "page.next_step": "Passo seguinte",
    "next_step.title": "O passo seguinte, e o que custa mais água",
    "next_step.title_technical": "O passo seguinte",
    "next_step.under": (
        "Obras como seriam construídas, tamanhos como escolhidos para cada opção, no cálculo: o que aqui se altera "
        "não segue. Dinheiro em {currency}."
    ),
    "next_step.under_technical": "Obras como seriam construídas: tamanhos como escolhidos para cada opção.",
    "next_step.steps": "Passos seguintes",
    "next_step.option": "Opção de alimentação",
    "next_step.step": "Passo",
    "next_step.why_not": "Não tal como está: verificações que não seriam cumpridas",
    "next_step.more_capital": "Mais na construção ({currency})",
    "next_step.more_cost": "Mais ao longo da vida ({currency})",
    "next_step.per_m3": "Por m3 a mais ({currency})",
    "next_step.no_more": "não dá mais água",
    "next_step.no_dearer": "não custa mais",
    "next_step.frontier": "O que a água de uma opção custa além da de outra",
    "next_step.water": "Água servida, valor actual (m3)",
    "next_step.average": "Em média ({currency}/m3)",
    "next_step.increment": "Além dessa opção ({currency}/m3)",
    "next_step.standing": "Comparada com",
    "next_step.unserved": "Valor da água não servida ({currency})",
    "next_step.cost_with_unserved": "Custo do ciclo de vida com ela ({currency})",
    "next_step.standing.frontier": "{against}",
    "next_step.standing.lowest": "nenhuma: serve menos do que todas",
    "next_step.standing.dominated": "{against}, que não custa mais nem serve menos",
    "next_step.standing.extended": "{against}; a seguinte dá mais por menos por m3",
    "next_step.method": (
        "Opções pela ordem da água que servem, cada uma comparada com uma que serve menos; um custo por m3 além "
        "dessa é a diferença de dois custos do ciclo de vida dividida pela da água servida, ambas actualizadas. "
        "Método: Tan-Torres Edejer et al. (eds), Making choices in health: WHO guide to cost-effectiveness analysis, "
        "World Health Organization, 2003, com a água servida em lugar da saúde. Um m3 não mostra quando falta: "
        "leia-o ao lado dos dias sem água suficiente."
    ),
    "next_step.value_method": (
        "O valor da água não servida é service.unserved_water_value_per_m3 do cenário, por cada m3 das necessidades "
        "que não é coberto, actualizado; não está em nenhum outro custo."
    ),
    # worth: works as built, and chosen anew
    "worth_answer.turns_as_built": (
        "Com as obras como seriam construídas, a resposta inverter-se-ia por qualquer um destes sozinho, a menor "
        "alteração primeiro."
    ),
    "worth_answer.nothing_turns_as_built": (
        "Com as obras como seriam construídas, nenhum dado alterado sozinho inverte esta resposta nas gamas examinadas."
    ),
    "worth_answer.turns_anew": (
        "Com fileiras e reservatório escolhidos de novo em cada valor, inverter-se-ia por qualquer um destes "
        "sozinho, a menor alteração primeiro."
    ),
    "worth_answer.nothing_turns_anew": (
        "Com fileiras e reservatório escolhidos de novo em cada valor, nenhum dado alterado sozinho a inverte nestas "
        "gamas."
    ),
    "worth_answer.anew_alike": (
        "Com fileiras e reservatório escolhidos de novo em cada valor, inverte-se nos mesmos valores."
    ),
    "worth_answer.nothing_open": (
        "O cenário não deixa em aberto nem fileiras nem reservatório, pelo que as obras escolhidas de novo seriam as "
        "mesmas."
    ),
    "worth_answer.undecided": (
        "Ainda não se pode dizer se vale a pena ter esta fonte: {source}. Falta o preço do seguinte: {unpriced}. Sem "
        "isso o custo do ciclo de vida (valor actual) no período de análise de {years} anos é {cost_with} para "
        "{option}, com a fonte, e {cost_without} para {without}, sem ela."
    ),
    "worth_answer.incomplete_alike": (
        "Falta o preço do que ambas precisam ({unpriced}): os seus custos estão incompletos, a diferença não."
    ),
    "worth.note_of_both": (
        "Cada valor é procurado duas vezes. Com as obras como construídas, cada projecto fica como foi escolhido no "
        "cenário tal como está (fileiras, reservatório, níveis do interruptor de bóia) enquanto um dado muda; com "
        "obras escolhidas de novo, cada opção toma, em cada valor, o mais barato dos seus reservatórios e fileiras "
        "em aberto que ali cumpre o objectivo, entre os que passam nas verificações com o cenário tal como está e "
        "com os níveis actuais do interruptor de bóia. Um valor de viragem é onde as duas melhores opções, uma com e "
        "outra sem a fonte, têm o mesmo custo do ciclo de vida; foi confirmado voltando a calcular o cenário nesse "
        "valor, e os dois coincidem a menos de {percent} por cento, salvo se o quadro disser outra coisa. 'A "
        "resposta inverte-se' olha para todas as opções e também para o objectivo de serviço: além desse valor a "
        "melhor de todas as opções muda de lado."
    ),
    "worth.words_as_built": "Mesmo custo do ciclo de vida em (obras como construídas)",
    "worth.turns_as_built": "A resposta inverte-se em (obras como construídas)",
    "worth.words_anew": "Mesmo custo do ciclo de vida em (obras escolhidas de novo)",
    "worth.turns_anew": "A resposta inverte-se em (obras escolhidas de novo)",
    "worth.cost_unchanged": "não muda nenhum custo",
    "worth.without_effect": "Sem efeito aqui: {inputs}.",
    "worth.with_reason": "{input} ({why})",
}
