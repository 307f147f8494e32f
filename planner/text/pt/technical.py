"""Português para onde não há preços, em vez do que fala de custos, e daquilo em que assenta uma resposta."""

SENTENCES: dict[str, str] = {
    # ---- comparison, sizing, sweep
    "answer.levels_good_technical": (
        "Na opção {option} o interruptor de bóia liga o reforço a {start:g}% do reservatório e desliga-o a "
        "{stop:g}%; nenhuma regulação ensaiada cumpre o objectivo com notavelmente menos energia de fora."
    ),
    "answer.kwh_of_grid": "{amount:,.0f} kWh da rede",
    "answer.l_of_fuel": "{amount:,.0f} L de combustível",
    "answer.technical_meets": (
        "A opção {option} cumpre o objectivo de {target:g}% da água: {delivered:.1f}% em {years} anos, {worst:.0f}% "
        "no pior mês ({month}); há {short:.1f dia|dias} por ano em que falta mais de um décimo da água, com uma "
        "sequência máxima de {longest:.0f dia|dias}."
    ),
    "answer.technical_never_short": (
        "A opção {option} cumpre o objectivo de {target:g}% da água: {delivered:.1f}% em {years} anos, sem nenhum "
        "dia em que falte mais de um décimo da água."
    ),
    "answer.technical_nearest": (
        "Nenhuma opção cumpre o objectivo de {target:g}% da água; a que mais se aproxima é {option}, com "
        "{delivered:.1f}% em {years} anos, {worst:.0f}% no pior mês ({month}); há {short:.1f dia|dias} por ano em "
        "que falta mais de um décimo da água, com uma sequência máxima de {longest:.0f dia|dias}."
    ),
    "answer.technical_others": (
        "Também o cumprem: {options}. Sem preços estão pela ordem do cenário; qual delas construir, dizem-no os "
        "preços e quem as vai explorar."
    ),
    "answer.technical_sizes": (
        "Os tamanhos em aberto foram escolhidos sem preços, entre os que passam nas verificações com menos "
        "advertências: um m3 de reservatório conta como {tank:g} kWp de campo (suposto, prática corrente, sem fonte)."
    ),
    "remedied.none_computed_technical": "Os remédios do que falha não podem ser calculados: {checks}.",
    "sizing_answer.weight": "{kwp:.2g} kWp de campo",
    "sizing_answer.best_technical": (
        "A opção {option} cumpre o objectivo de {target:g}% da água com {design}: {delivered:.1f}% da água "
        "fornecida. De {tried:,} projectos candidatos, cada um simulado em todas as horas do período de análise de "
        "{years} anos, é o de menor peso da sua opção: sem preços um m3 de reservatório conta como {tank:g} kWp de "
        "campo, um kWh por ano da rede como {grid:g} e um litro de combustível por ano como {fuel:g} (suposto, "
        "prática corrente, sem fonte), e as opções estão pela ordem do cenário."
    ),
    "sizing_answer.none_meets_technical": (
        "Nenhum dos {tried:,} projectos candidatos cumpre o objectivo; o que mais se aproxima é {option} com "
        "{design}: {misses}. Sem preços os projectos são pesados: um m3 de reservatório conta como {tank:g} kWp de "
        "campo, um kWh por ano da rede como {grid:g} e um litro de combustível por ano como {fuel:g} (suposto, "
        "prática corrente, sem fonte)."
    ),
    "sizing_answer.steady_start_technical": (
        "Níveis de arranque de {low:g}% a {high:g}% pesam até 2% mais ou menos do que este."
    ),
    "sizing_answer.no_rival_technical": (
        "Nenhum outro candidato de {option} que cumpra o objectivo fica a menos de 2% do seu peso."
    ),
    "sizing_answer.one_rival_technical": (
        "A menos de 2% do seu peso fica um outro candidato de {option}: {design} (mais {percent:.2f}%)."
    ),
    "sizing_answer.rivals_technical": (
        "A menos de 2% do seu peso ficam {count:,} outros candidatos de {option}, o primeiro {design} (mais "
        "{percent:.2f}%)."
    ),
    "sizing_answer.higher_free_technical": (
        "Subir o objectivo de {target:g}% para {higher:g}% não exige mais nada: este projecto já fornece "
        "{delivered:.1f}%."
    ),
    "sizing_answer.higher_adds_technical": (
        "Subir o objectivo de {target:g}% para {higher:g}% exige tanto a mais como {cost} ({option})."
    ),
    "sizing_answer.run_dearer_technical": (
        "Tome {change} em vez de {instead}, que 'planner run' toma para {option}: cumpre o objectivo e pesa menos "
        "{gap}."
    ),
    "sizing_answer.run_cheaper_technical": (
        "Tome {change} para {option}; 'planner run' toma {instead}, que pesa menos {gap}."
    ),
    "sweep_answer.demand_met_of": "Necessidades cobertas por {option}",
    "sweep_answer.percent": "{percent:.2f}%",
    "sweep_answer.matters_most_technical": (
        "Variado um de cada vez, o dado que mais importa é {input}: quando vai de {low:g} a {high:g}, o que a opção "
        "{option} cobre das necessidades vai de {cost_at_low} a {cost_at_high} ({cost} tal como está)."
    ),
    "sweep_answer.stays_cheapest_technical": (
        "Nenhum dos dados, variado sozinho na sua gama, muda a resposta: {option} continua a ser a primeira opção "
        "que cumpre o objectivo."
    ),
    "sweep_answer.grid_technical": "Das {count:,} combinações da grelha, a primeira que cumpre o objectivo é {counts}.",
    "sweep_answer.random_technical": (
        "De 100 casos tirados ao acaso, a primeira opção que cumpre o objectivo é {shares} ({draws:,} tiragens, "
        "portanto mais ou menos {error:.0f})."
    ),
    "sweep_answer.random_some_none_technical": (
        "De 100 casos tirados ao acaso, a primeira opção que cumpre o objectivo é {shares}; nenhuma opção o cumpre "
        "em {none:.0f} ({draws:,} tiragens, portanto mais ou menos {error:.0f})."
    ),
    "sweep_answer.random_none_technical": (
        "Em nenhum de {draws:,} casos tirados ao acaso alguma opção cumpre o objectivo."
    ),
    "sweep_answer.random_cost_technical": (
        "O que a opção {option} cobre das necessidades é superior a {low} em 90 de 100 casos, e superior a {high} em "
        "10 de 100."
    ),
    # ---- pages of sizing, sweep and comparison
    "size.note_technical": (
        "Cada candidato foi simulado hora a hora em todos os anos de vida: nada foi saltado. Como não há preços, o "
        "que se constrói e se compra é pesado, como diz a resposta. Confronte qualquer escolha com o caudal que o "
        "furo pode dar antes de ser construída."
    ),
    "size.answer_under_technical": "Dimensionamento, sem preços",
    "size.weight": "Peso (kWp de campo)",
    "size.best_of_technical": "{scenario}: projecto de menor peso de cada opção de alimentação",
    "size.best_under_technical": (
        "O de menor peso que cumpre o objectivo; onde nenhum o cumpre, o que o falha por menos."
    ),
    "size.by_run_technical": "Peso do projecto de 'planner run' (kWp)",
    "size.front_under_technical": (
        "Projectos que nenhum outro da mesma opção vence ao mesmo tempo em peso e em necessidades cobertas."
    ),
    "size.front_chart_technical": "O que exige mais serviço",
    "size.front_alt_technical": (
        "Menor peso em função das necessidades cobertas no período de análise, uma linha por opção: {options}."
    ),
    "size.service_technical": "Tamanho para o serviço",
    "size.service_under_technical": "Menor peso de um projecto que fornece pelo menos essa parte da água.",
    "size.service_heading_technical": "Menor peso (kWp de campo) que fornece pelo menos essa parte da água",
    "size.service_chart_technical": "Menor peso por serviço",
    "size.service_alt_technical": "Menor peso por necessidades cobertas, uma coluna por opção: {options}.",
    "sweep.one_at_a_time_under_technical": (
        "Cada dado vai ao seu valor baixo e ao seu valor alto enquanto todos os outros ficam; os dados estão por "
        "ordem de amplitude. A melhor opção ali é a primeira que cumpre o objectivo, ou, onde nenhuma o cumpre, a "
        "que fornece mais. O indicador é a alteração percentual do resultado por cada por cento de alteração do "
        "dado, no extremo maior (ADB)."
    ),
    "sweep.cheapest_technical": "Primeira que cumpre o objectivo",
    "sweep.tornado_met": "{option}: {figure}",
    "sweep.grid_under_technical": (
        "{count} combinações; em cada uma a primeira opção que cumpre o objectivo de serviço, e o que cada opção "
        "cobre das necessidades."
    ),
    "sweep.grid_alt_technical": "Necessidades cobertas por {input}, uma linha por opção: {options}.",
    "sweep.map_technical": "Primeira que cumpre o objectivo: {down} para baixo, {across} para a direita",
    "sweep.chances_alt_technical": (
        "De 100 casos, em quantos cada opção é a primeira que cumpre o objectivo, e em quantos cumpre o objectivo: "
        "{options}."
    ),
    "sweep.exceeded_chart_technical": "Necessidades cobertas e quantas vezes são excedidas",
    "sweep.exceeded_alt_technical": (
        "De 100 casos, quantos cobrem mais das necessidades, uma linha por opção: {options}."
    ),
    "sweep.correlations_technical": "Correlação de ordem de cada dado com as necessidades cobertas (Spearman)",
    "sweep.correlation_note_technical": (
        "1: o que é coberto sobe sempre com o dado; -1: desce sempre; perto de 0: o dado quase não importa."
    ),
    "compare.side_under_technical": (
        "A opção que está em primeiro em cada cenário: a primeira que cumpre o seu objectivo, ou, onde nenhuma o "
        "cumpre, a que fornece mais; não pode ser construída tal como está enquanto verificações do local falharem. "
        "Os cenários não indicam preços."
    ),
    "compare.differ_technical": "! Os cenários não coincidem em: {what}. Compare-os com cuidado.",
    "compare.first_technical": "Primeira que cumpre o objectivo, ou a mais próxima",
    # ---- terminal
    "narrow.title_technical": "{name}: resposta técnica, sem preços",
    # ---- pages of a run
    "answer.setting_technical": (
        "Uma resposta técnica, porque o cenário não indica moeda nem preços. Cada opção foi simulada hora a hora "
        "durante {years} anos."
    ),
    "answer.option_technical": "Opção de alimentação",
    "options.under_technical": (
        "Pela ordem do cálculo, durante {years} anos; energia e horas são médias dos anos. As que cumprem o "
        "objectivo vêm primeiro, pela ordem do cenário."
    ),
    # ---- method
    "method.sizes_words_technical": (
        "Onde ficam em aberto: o menor reservatório que cumpre o objectivo de serviço, e o número de fileiras e os "
        "níveis do interruptor de bóia que o cumprem com menor peso: um kWp de campo conta 1, um m3 de reservatório "
        "{tank:g}, um kWh por ano da rede {grid:g} e um litro de combustível por ano {fuel:g}, o que é próximo do "
        "que costumam pesar uns face aos outros (suposto, prática corrente, sem fonte). Os preços podem escolher "
        "outros tamanhos. As opções que cumprem o objectivo estão pela ordem do cenário; as que o falham vêm depois, "
        "pelo que fornecem."
    ),
    # ---- inputs
    "inputs.note_technical": (
        "Os valores aqui seguem a folha 'Formulário', e nada mais neste livro o faz: depois de uma alteração, "
        "calcule-o de novo (planner run FILE). Com uma moeda e preços nessa folha a resposta passa a ser em dinheiro."
    ),
    # ---- what an answer rests on
    "rests_on.estimate": "uma estimativa a partir das coordenadas",
    "rests_on.heading": (
        "Em que assenta: não indicado, por isso ensaiado mais baixo / mais alto (opção {option}, como dimensionada)"
    ),
    "rests_on.irradiation": "Irradiação global, média do ano",
    "rests_on.key": "Chave",
    "rests_on.label": "Dado",
    "rests_on.value": "Valor",
    "rests_on.unit": "Unidade",
    "rests_on.tried": "Ensaiado",
    "rests_on.met": "Necessidades cobertas %",
    "rests_on.cost": "Custo do ciclo de vida {currency}",
    "rests_on.source": "De onde vem",
    "rests_on.pair": "{low} / {high}",
    "rests_on.none": (
        "O que não foi indicado foi ensaiado mais baixo e mais alto ({count} números): nenhum muda notavelmente a "
        "resposta; todos os valores que não foram indicados estão na folha 'Dados'"
    ),
    "rests_on.more": "e mais {count}, que mudam menos; todos os valores que não foram indicados estão na folha 'Dados'",
}
