"""Português das respostas: comparação, dimensionamento, utilidade, variação de dados e rentabilidade."""

SENTENCES: dict[str, str] = {
    "option_source.solar": "solar",
    "option_source.grid": "rede",
    "option_source.generator": "gerador",
    "source.solar": "o sol",
    "source.grid": "a rede eléctrica",
    "source.generator": "o gerador",
    "source.list": "{others} e {last}",
    # comparison
    "answer.best": (
        "Das opções que cumprem o objectivo de {target:g}% da água, a que custa menos é {option}: custo de "
        "investimento {capital_cost}, custo do ciclo de vida (valor actual) {life_cycle_cost} no período de análise "
        "de {years} anos, custo nivelado da água {per_m3} por m3."
    ),
    "answer.best_incomplete": (
        "Das opções que cumprem o objectivo de {target:g}% da água, a que custa menos é {option}. O total está "
        "incompleto, porque falta o preço do seguinte: {unpriced}; o resto dá um custo do ciclo de vida (valor "
        "actual) de {life_cycle_cost} no período de análise de {years} anos e um custo nivelado da água de {per_m3} "
        "por m3."
    ),
    "answer.in_money_of_year_0": "O custo nivelado está em dinheiro do ano 0.",
    "answer.none_meets": (
        "Nenhuma opção cumpre o objectivo de {target:g}% da água; a que mais se aproxima é {option}, com "
        "{delivered:.1f}%, por um custo do ciclo de vida (valor actual) de {life_cycle_cost} no período de análise "
        "de {years} anos."
    ),
    "answer.none_meets_incomplete": (
        "Nenhuma opção cumpre o objectivo de {target:g}% da água; a que mais se aproxima é {option}, com "
        "{delivered:.1f}%. O total está incompleto, porque falta o preço do seguinte: {unpriced}; o resto dá um "
        "custo do ciclo de vida (valor actual) de {life_cycle_cost} no período de análise de {years} anos."
    ),
    "answer.why_none": (
        "No pior mês, {month}, são pedidos {asked:.1f} m3 por dia: {needed:.1f} horas de bombagem com os {flow:.2f} "
        "m3/h que bomba, conduta e furo dão aqui. A opção {option} dá tanto como {ran:.1f} dessas horas: seriam "
        "precisas mais horas de energia, mais caudal dentro do que o furo pode dar, ou menos necessidades de água."
    ),
    "answer.why_none_at_all": (
        "No pior mês, {month}, são pedidos {asked:.1f} m3 por dia: {needed:.0f} horas de bombagem com os {flow:.2f} "
        "m3/h que bomba, conduta e furo dão aqui, e um dia tem 24. A opção {option} dá tanto como {ran:.1f} dessas "
        "horas: seria preciso mais caudal, dentro do que este furo pode dar ou vindo de outro, ou menos necessidades "
        "de água."
    ),
    "answer.next_best": "Segunda melhor opção: {option}, que custa mais {gap} no período de análise ({percent:.1f}%).",
    "answer.next_best_close": (
        "Segunda melhor opção: {option}, que custa mais {gap} no período de análise ({percent:.1f}%): demasiado "
        "próxima para decidir só pelo custo."
    ),
    "answer.next_best_unpriced": (
        "Isto deixa de fora o que não tem preço e de que a opção {option} não precisa ({unpriced}): indique-o, pois "
        "pode inverter a ordem."
    ),
    "answer.only_one_days": (
        "É a única opção que cumpre o objectivo; na opção {option} a sequência mais longa de dias sem água "
        "suficiente é de {days:.0f dia|dias}, sendo {allowed} o permitido."
    ),
    "answer.only_one_worst_year": (
        "É a única opção que cumpre o objectivo; a opção {option} fica aquém no seu pior ano, com {percent:.1f}%."
    ),
    "answer.only_one_share": (
        "É a única opção que cumpre o objectivo; a opção {option} fica aquém por {points:.1f} pontos percentuais."
    ),
    "answer.top_up_needed": (
        "Para cumprir o objectivo é preciso um reforço (bombear com outra fonte quando sol e reservatório não "
        "bastam) de: {sources}. Faz subir a água fornecida de {alone:.1f}% para {topped_up:.1f}% e custa mais {gap} "
        "no período de análise."
    ),
    "answer.top_up_needed_and_saves": (
        "Para cumprir o objectivo é preciso um reforço (bombear com outra fonte quando sol e reservatório não "
        "bastam) de: {sources}. Faz subir a água fornecida de {alone:.1f}% para {topped_up:.1f}% e ainda poupa {gap} "
        "no período de análise."
    ),
    "answer.top_up_misses": (
        "Com um reforço (bombear com outra fonte quando sol e reservatório não bastam) de: {sources}, a água "
        "fornecida passa de {alone:.1f}% para {topped_up:.1f}%, o que ainda não cumpre o objectivo."
    ),
    "answer.top_up_not_worth": (
        "Para o objectivo não vale a pena um reforço (bombear com outra fonte quando sol e reservatório não bastam) "
        "de: {sources}. O sol sozinho cumpre-o, e o reforço custa mais {gap} no período de análise (água fornecida: "
        "{alone:.1f}% sem ele, {topped_up:.1f}% com ele)."
    ),
    "answer.top_up_worth": (
        "Vale a pena um reforço (bombear com outra fonte quando sol e reservatório não bastam) de: {sources}. Poupa "
        "{gap} no período de análise em relação ao sol sozinho, sobretudo por um campo fotovoltaico ou um "
        "reservatório mais pequeno, e a água fornecida passa de {alone:.1f}% para {topped_up:.1f}%."
    ),
    "answer.top_up_alike_cheaper": (
        "O custo é quase o mesmo que com o sol sozinho, menos {gap} no período de análise, com um reforço (bombear "
        "com outra fonte quando sol e reservatório não bastam) de: {sources}. A água fornecida passa de {alone:.1f}% "
        "para {topped_up:.1f}%."
    ),
    "answer.top_up_alike_dearer": (
        "O custo é quase o mesmo que com o sol sozinho, mais {gap} no período de análise, com um reforço (bombear "
        "com outra fonte quando sol e reservatório não bastam) de: {sources}. A água fornecida passa de {alone:.1f}% "
        "para {topped_up:.1f}%."
    ),
    "answer.sun_saves": "A opção {option} poupa {gap} no período de análise em relação à melhor sem o sol: {other}.",
    "answer.sun_costs": "A opção {option} custa mais {gap} no período de análise do que a melhor sem o sol: {other}.",
    "answer.levels_good": (
        "Na opção {option} o interruptor de bóia liga o reforço a {start:g}% do reservatório e desliga-o a "
        "{stop:g}%; nenhuma regulação ensaiada pouparia mais de 0,5% do custo anualizado."
    ),
    "answer.levels_better": (
        "Na opção {option} o interruptor de bóia está regulado para {start:g}/{stop:g}% do reservatório; "
        "{better_start:g}/{better_stop:g}% também cumpriria o objectivo e pouparia {saving} por ano."
    ),
    # sizing
    "sizing_answer.array": "{modules} módulos fotovoltaicos em {strings} fileiras ({kwp:.1f} kWp)",
    "sizing_answer.array_one_string": "{modules} módulos fotovoltaicos em 1 fileira ({kwp:.1f} kWp)",
    "sizing_answer.strings": "{strings} fileiras",
    "sizing_answer.one_string": "1 fileira",
    "sizing_answer.tank": "um reservatório de {tank_m3:g} m3",
    "sizing_answer.switch": "o interruptor de bóia a {start:g}/{stop:g}%",
    "sizing_answer.hours": "bombagem com a rede eléctrica ou o gerador {hours}",
    "sizing_answer.best": (
        "De {tried:,} projectos candidatos, cada um simulado em todas as horas do período de análise de {years} "
        "anos, o mais barato que cumpre o objectivo de {target:g}% da água é {option} com {design}: custo de "
        "investimento {capital_cost}, custo do ciclo de vida (valor actual) {life_cycle_cost}, {delivered:.1f}% da "
        "água fornecida."
    ),
    "sizing_answer.best_incomplete": (
        "De {tried:,} projectos candidatos, cada um simulado em todas as horas do período de análise de {years} "
        "anos, o mais barato que cumpre o objectivo de {target:g}% da água é {option} com {design}: {delivered:.1f}% "
        "da água fornecida. O total está incompleto, porque falta o preço do seguinte: {unpriced}; o resto dá um "
        "custo do ciclo de vida (valor actual) de {life_cycle_cost} no período de análise de {years} anos."
    ),
    "sizing_answer.none_meets": (
        "Nenhum dos {tried:,} projectos candidatos cumpre o objectivo; o que mais se aproxima é {option} com "
        "{design}: {misses}. O seu custo de investimento é {capital_cost}, o seu custo do ciclo de vida (valor "
        "actual) {life_cycle_cost} no período de análise de {years} anos."
    ),
    "sizing_answer.none_meets_incomplete": (
        "Nenhum dos {tried:,} projectos candidatos cumpre o objectivo; o que mais se aproxima é {option} com "
        "{design}: {misses}. O total está incompleto, porque falta o preço do seguinte: {unpriced}; o resto dá um "
        "custo do ciclo de vida (valor actual) de {life_cycle_cost} no período de análise de {years} anos."
    ),
    "sizing_answer.misses_share": (
        "o melhor de {count:,} candidatos fornece {delivered:.1f}% e falha o objectivo de {target:g}% por "
        "{points:.1f} pontos percentuais"
    ),
    "sizing_answer.misses_days": (
        "no melhor de {count:,} candidatos a sequência mais longa de dias sem água suficiente é de {days:.0f "
        "dia|dias}, mais {more:.0f} do que o permitido"
    ),
    "sizing_answer.misses_worst_year": (
        "o melhor de {count:,} candidatos fornece {delivered:.1f}% no seu pior ano e falha o que se pede desse ano "
        "por {points:.1f} pontos percentuais"
    ),
    "sizing_answer.float_switch": (
        "Interruptor de bóia para {option}: a bombagem com a rede eléctrica ou o gerador começa quando restam "
        "{start_m3:.3g} m3 no reservatório ({start:g}%, medidos a partir do fundo) e pára em {stop_m3:.3g} m3 "
        "({stop:g}%); num reservatório de paredes verticais as mesmas percentagens valem para a altura da água."
    ),
    "sizing_answer.float_switch_and_timer": (
        "Interruptor de bóia para {option}: a bombagem com a rede eléctrica ou o gerador começa quando restam "
        "{start_m3:.3g} m3 no reservatório ({start:g}%, medidos a partir do fundo) e pára em {stop_m3:.3g} m3 "
        "({stop:g}%), com um temporizador que a deixa funcionar {hours}; num reservatório de paredes verticais as "
        "mesmas percentagens valem para a altura da água."
    ),
    "sizing_answer.steady_start": "Níveis de arranque de {low:g}% a {high:g}% custam até 2% mais ou menos do que este.",
    "sizing_answer.no_rival": (
        "Nenhum outro candidato de {option} que cumpra o objectivo fica a menos de 2% do seu custo."
    ),
    "sizing_answer.one_rival": (
        "A menos de 2% do seu custo fica um outro candidato de {option}: {design} (mais {percent:.2f}%)."
    ),
    "sizing_answer.rivals": (
        "A menos de 2% do seu custo ficam {count:,} outros candidatos de {option}, o primeiro {design} (mais "
        "{percent:.2f}%)."
    ),
    "sizing_answer.out_of_reach": (
        "Para chegar ao objectivo, alargue os candidatos (mais fileiras, reservatórios maiores), acrescente uma "
        "fonte, ou peça menos de {target:g}%."
    ),
    "sizing_answer.no_higher_target": "O objectivo é {target:g}%: não há mais a obter.",
    "sizing_answer.higher_beyond": (
        "Subir o objectivo de {target:g}% para {higher:g}% está fora do alcance de todos os candidatos de {option}."
    ),
    "sizing_answer.higher_free": (
        "Subir o objectivo de {target:g}% para {higher:g}% não custa nada: este projecto já fornece {delivered:.1f}%."
    ),
    "sizing_answer.higher_adds": (
        "Subir o objectivo de {target:g}% para {higher:g}% acrescenta {cost} ao custo do ciclo de vida ({option})."
    ),
    "sizing_answer.run_same": "'planner run' toma o mesmo projecto para {option}.",
    "sizing_answer.as_given": "o que o cenário indica",
    "sizing_answer.run_dearer": (
        "Tome {change} em vez de {instead}, que 'planner run' toma para {option}: cumpre o objectivo e custa menos "
        "{gap} no período de análise."
    ),
    "sizing_answer.run_cheaper": (
        "Tome {change} para {option}; 'planner run' toma {instead}, que custa menos {gap} no período de análise."
    ),
    "sizing_answer.run_misses": "Esse outro projecto falha o objectivo.",
    # worth
    "worth_answer.incomplete": "Os custos estão incompletos, porque falta o preço do seguinte: {unpriced}.",
    "worth_answer.needed": (
        "Sim, para cumprir o objectivo faz falta {source}: sem essa fonte a melhor alimentação, {without}, fornece "
        "{lacking:.1f}% da água em vez do objectivo de {target:g}%."
    ),
    "worth_answer.needed_in_worst_year": (
        "Sim, para cumprir o objectivo faz falta {source}: sem essa fonte a melhor alimentação, {without}, falha o "
        "objectivo no seu pior ano ({lacking:.1f}%)."
    ),
    "worth_answer.needed_dearer": (
        "Com essa fonte a melhor, {option}, fornece {delivered:.1f}% da água e custa mais {gap} no período de "
        "análise de {years} anos."
    ),
    "worth_answer.needed_cheaper": (
        "Com essa fonte a melhor, {option}, fornece {delivered:.1f}% da água e até custa menos {gap} no período de "
        "análise de {years} anos."
    ),
    "worth_answer.only_without": (
        "Não, {source} não vale a pena: a opção {without} cumpre o objectivo de {target:g}% sem essa fonte, por um "
        "custo do ciclo de vida (valor actual) de {life_cycle_cost} no período de análise de {years} anos, e nenhuma "
        "com ela o cumpre."
    ),
    "worth_answer.neither": (
        "Nenhum projecto cumpre o objectivo de {target:g}% da água, nem com nem sem esta fonte: {source}."
    ),
    "worth_answer.neither_more": (
        "Com essa fonte a melhor, {option}, fornece {delivered:.1f}%, mais {points:.1f} pontos percentuais do que a "
        "opção {without}."
    ),
    "worth_answer.neither_less": (
        "Com essa fonte a melhor, {option}, fornece {delivered:.1f}%, menos {points:.1f} pontos percentuais do que a "
        "opção {without}."
    ),
    "worth_answer.neither_dearer": "Custa mais {gap} no período de análise de {years} anos.",
    "worth_answer.neither_cheaper": "Custa menos {gap} no período de análise de {years} anos.",
    "worth_answer.hardly_matters": (
        "Quase não importa se há esta fonte ou não: {source}. O custo do ciclo de vida (valor actual) no período de "
        "análise de {years} anos é {cost_with} para a alimentação mais barata com ela, {option}, e {cost_without} "
        "para a mais barata sem ela, {without}, uma diferença de {percent:.1f}%."
    ),
    "worth_answer.worth_having": (
        "Sim, {source} vale a pena: o custo do ciclo de vida (valor actual) no período de análise de {years} anos é "
        "{cost_with} para a alimentação mais barata com essa fonte, {option}, e {cost_without} para a mais barata "
        "sem ela, {without}, pelo que baixa o custo anualizado em {yearly}."
    ),
    "worth_answer.not_worth_having": (
        "Não, {source} não vale a pena: o custo do ciclo de vida (valor actual) no período de análise de {years} "
        "anos é {cost_with} para a alimentação mais barata com essa fonte, {option}, e {cost_without} para a mais "
        "barata sem ela, {without}, pelo que subiria o custo anualizado em {yearly}."
    ),
    "worth_answer.from_now": "{value} (agora {base})",
    "worth_answer.above_best": "Se {input} subisse acima de {value}, a melhor seria {best}.",
    "worth_answer.below_best": "Se {input} descesse abaixo de {value}, a melhor seria {best}.",
    "worth_answer.above_misses": (
        "Se {input} subisse acima de {value}, a opção {first} falharia o objectivo e a melhor seria {best}."
    ),
    "worth_answer.below_misses": (
        "Se {input} descesse abaixo de {value}, a opção {first} falharia o objectivo e a melhor seria {best}."
    ),
    "worth_answer.above_none": (
        "Se {input} subisse acima de {value}, a opção {first} e todas as outras falhariam o objectivo."
    ),
    "worth_answer.below_none": (
        "Se {input} descesse abaixo de {value}, a opção {first} e todas as outras falhariam o objectivo."
    ),
    "worth_answer.all_turn": "Cada um dos dados examinados poderia inverter a resposta se mudasse o bastante.",
    "worth_answer.steady": (
        "A resposta fica a mesma, com os projectos como estão e tudo o resto como indicado, em toda a gama de: "
        "{ranges}."
    ),
    "worth_answer.range": "{input} de {low} a {high}",
    # sweep
    "sweep_answer.life_cycle_cost_of": "Custo do ciclo de vida de {option}",
    "sweep_answer.levelised_cost_of": "Custo nivelado da água de {option}",
    "sweep_answer.lead_of": "Custo do ciclo de vida de {other} menos o de {option}",
    "sweep_answer.no_value": "sem valor",
    "sweep_answer.first_misses": "{option}, falha o objectivo",
    "sweep_answer.nothing_one_at_a_time": (
        "Nenhum dado variado um de cada vez pôde ser calculado; a primeira razão: {reason}."
    ),
    "sweep_answer.nothing_grid": "Nenhuma combinação da grelha pôde ser calculada; a primeira razão: {reason}.",
    "sweep_answer.nothing_random": "Nenhum caso tirado ao acaso pôde ser calculado; a primeira razão: {reason}.",
    "sweep_answer.failed": (
        "Não foi possível calcular {failed:,} de {count:,} variantes, que ficam de fora; estão listadas com a razão."
    ),
    "sweep_answer.matters_most": (
        "Variado um de cada vez, o dado que mais importa é '{input}': quando vai de {low:g} a {high:g}, o custo do "
        "ciclo de vida (valor actual) de {option} vai de {cost_at_low} a {cost_at_high} ({cost} tal como está)."
    ),
    "sweep_answer.changes": "Variados sozinhos, estes mudam a resposta: {changes}.",
    "sweep_answer.changes_and_more": "Variados sozinhos, estes mudam a resposta: {changes}; e mais {more:,}.",
    "sweep_answer.change_none_meets": "'{input}' em {value:g} (nenhuma opção cumpre o objectivo)",
    "sweep_answer.change_nearest": "'{input}' em {value:g} (a que mais se aproxima é {option})",
    "sweep_answer.change_meets": "'{input}' em {value:g} (a opção {option} cumpre o objectivo)",
    "sweep_answer.change_first_misses": (
        "'{input}' em {value:g} (a opção {first} falha o objectivo, a melhor é {option})"
    ),
    "sweep_answer.change_best": "'{input}' em {value:g} (a melhor é {option})",
    "sweep_answer.stays_cheapest": (
        "Nenhum dos dados, variado sozinho na sua gama, muda a resposta: {option} continua a ser a opção mais barata "
        "que cumpre o objectivo."
    ),
    "sweep_answer.stays_nearest": (
        "Nenhum dos dados, variado sozinho na sua gama, muda a resposta: nenhuma opção cumpre o objectivo, e a que "
        "mais se aproxima continua a ser {option}."
    ),
    "sweep_answer.grid": "Das {count:,} combinações da grelha, a mais barata que cumpre o objectivo é {counts}.",
    "sweep_answer.grid_part": "{option} em {count:,}",
    "sweep_answer.grid_none": "nenhuma em {count:,}",
    "sweep_answer.random": (
        "De 100 casos tirados ao acaso, a mais barata que cumpre o objectivo é {shares} ({draws:,} tiragens, "
        "portanto mais ou menos {error:.0f})."
    ),
    "sweep_answer.random_some_none": (
        "De 100 casos tirados ao acaso, a mais barata que cumpre o objectivo é {shares}; nenhuma opção o cumpre em "
        "{none:.0f} ({draws:,} tiragens, portanto mais ou menos {error:.0f})."
    ),
    "sweep_answer.random_none": "Em nenhum de {draws:,} casos tirados ao acaso alguma opção cumpre o objectivo.",
    "sweep_answer.random_share": "{option} em {cases:.0f}",
    "sweep_answer.random_cost": (
        "O custo do ciclo de vida (valor actual) de {option} é superior a {low} em 90 de 100 casos, e superior a "
        "{high} em 10 de 100."
    ),
    "sweep_answer.measured_weather": (
        "Com as necessidades do ano de vida {life_year}, nove em cada dez anos meteorológicos medidos ({years:,} "
        "simulados) fornecem pelo menos esta parte da água: {shares}."
    ),
    "sweep_answer.synthetic_weather": (
        "Com as necessidades do ano de vida {life_year}, nove em cada dez anos meteorológicos sintéticos ({years:,} "
        "simulados) fornecem pelo menos esta parte da água: {shares}."
    ),
    "sweep_answer.weather_share": "{option} {percent:.1f}%",
    "sweep_answer.few_years": "Com apenas {years} anos isto é pouco mais do que o pior deles.",
    "sweep_answer.chosen_anew": (
        "O que o cenário deixa à ferramenta (reservatório, fileiras, interruptor de bóia) foi escolhido de novo em "
        "cada variante."
    ),
    "sweep_answer.built_once": (
        "Reservatório, fileiras e interruptor de bóia ficam como foram escolhidos para o cenário tal como está, "
        "salvo se forem eles próprios variados: as obras constroem-se uma só vez."
    ),
    # returns
    "returns.no_outlay": (
        "o seu custo de investimento não é superior ao da referência, pelo que não há despesa adicional que possa "
        "render"
    ),
    "returns.never_saves": "os seus anos posteriores não poupam nada que pudesse pagar o investimento adicional",
    "returns.loses_all": (
        "a nenhuma taxa acima de -100% as poupanças posteriores valem mais do que o investimento adicional"
    ),
    "returns.several": "várias taxas equilibram despesa e poupanças, pelo que nenhuma é a resposta",
    "returns.at_once": "o seu custo de investimento não é superior ao da referência e nunca fica atrás",
    "returns.not_recovered": (
        "o investimento adicional não é recuperado de forma duradoura dentro do período de análise"
    ),
}
