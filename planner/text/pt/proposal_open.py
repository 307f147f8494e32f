"""Português das linhas da proposta que pedem um facto que o estudo não tem, com uma indicação entre parênteses."""

SENTENCES: dict[str, str] = {
    # first page and summary
    "proposal.open.applicant": "A completar: quem se candidata, e a quem [nome, morada, contacto, forma jurídica]",
    "proposal.open.prepared_by": "A completar: quem preparou o estudo [nome, profissão, organização]",
    "proposal.open.visit_date": "A completar: quando foi visitado o local [dia, por quem]",
    "proposal.open.revision": "A completar: revisão desta proposta [número ou dia]",
    "proposal.open.prices": (
        "A completar: o que custam a construção e a operação das obras [nenhum preço foi indicado, pelo que o estudo "
        "não tem custos]"
    ),
    "proposal.open.unpriced": "A completar: o orçamento está incompleto, falta o preço do seguinte: {names} [cotações]",
    "proposal.open.grant": "A completar: a soma pedida, e a quem [parte do custo de investimento, financiador]",
    "proposal.open.funder": "A completar: o financiador, e quando é precisa a soma [nome, prestações]",
    # need and people
    "proposal.open.growth": (
        "A completar: crescimento das necessidades [nenhum foi indicado, pelo que nenhum é contado; censo, "
        "matrículas, planos]"
    ),
    "proposal.open.leakage": (
        "A completar: água perdida entre reservatório e torneiras [nenhuma foi indicada, pelo que nenhuma é contada; "
        "leituras dos contadores]"
    ),
    "proposal.open.litres": (
        "A completar: água por pessoa e por dia [não indicada, pelo que se conta um valor usual; norma nacional, "
        "inquérito]"
    ),
    "proposal.open.present_sources": (
        "A completar: onde se vai hoje buscar água [fontes, distância, fila, preço, qualidade, meses secos]"
    ),
    "proposal.open.baseline": (
        "A completar: situação de partida antes das obras [inquérito: litros, minutos e dinheiro que um agregado "
        "familiar gasta em água]"
    ),
    "proposal.open.inclusion": (
        "A completar: quem poderia ficar de fora, e o que se faz quanto a isso [mulheres, mais pobres, pessoas com "
        "deficiência, pastores, arrendatários]"
    ),
    "proposal.open.consent": (
        "A completar: consentimento dos utilizadores [dia e acta da reunião, quem esteve, o que contribuem]"
    ),
    "proposal.open.coordination": (
        "A completar: acordo com a autoridade e com outros sistemas próximos [carta, plano a que pertence]"
    ),
    # source
    "proposal.open.borehole": "A completar: não indicado do furo: {names} [relatório do perfurador, ensaio, licença]",
    "proposal.open.completion_report": (
        "A completar: relatório da perfuração [perfurador e alvará, camadas, revestimento, filtros, selo, desinfecção]"
    ),
    "proposal.open.hydrogeologist": (
        "A completar: relatório do hidrogeólogo [nome, dia, caudal e horas recomendados, efeito noutros furos e poços]"
    ),
    "proposal.open.pumping_test": (
        "A completar: ensaio de bombagem a caudal constante com recuperação [dia, quem ensaiou, caudal, horas, "
        "níveis: não há nenhum registado]"
    ),
    "proposal.open.test_record": "A completar: não indicado do ensaio de bombagem: {names} [registo do ensaio]",
    "proposal.open.quality": (
        "A completar: análise da água, não há nenhuma registada [laboratório, dia, resultados de pelo menos {names}]"
    ),
    "proposal.open.quality_rest": "A completar: não analisado: {names} [laboratório, dia, resultados]",
    "proposal.open.quality_for_use": (
        "A completar: análise da água para o seu uso [laboratório, dia, salinidade, sódio, ferro, sólidos]"
    ),
    "proposal.open.laboratory": "A completar: quem analisou a água, e quando [laboratório, dia da amostra]",
    "proposal.open.treatment": (
        "A completar: como se traz a água abaixo dos valores-guia [tratamento, o seu custo, quem o explora]"
    ),
    "proposal.open.water_permit": (
        "A completar: licença de captação da água [autoridade, número, dia, volume por dia, até quando]"
    ),
    "proposal.open.land": (
        "A completar: direito ao terreno de furo, conduta, campo fotovoltaico e reservatório [dono, título ou "
        "acordo, servidão]"
    ),
    # design
    "proposal.open.pump": "A completar: marca e tipo da bomba [placa, ficha técnica com a sua curva, garantia]",
    "proposal.open.profile": (
        "A completar: perfil longitudinal da conduta [cotas ao longo do traçado; nenhumas foram indicadas, pelo que "
        "só contam os extremos]"
    ),
    "proposal.open.drawings": (
        "A completar: desenhos [mapa, implantação, cabeça do furo, esquema unifilar, reservatório e fontanários]"
    ),
    "proposal.open.array_place": (
        "A completar: lugar do campo fotovoltaico [sombra ao longo do ano, fundação, vento, vedação, quem o guarda]"
    ),
    "proposal.open.tank_structure": (
        "A completar: projecto da torre ou da base do reservatório por um engenheiro de estruturas [solo, vento, sismo]"
    ),
    # options and budget
    "proposal.open.other_ways": (
        "A completar: outras soluções examinadas, e porque não [bomba manual, nascente, chuva, extensão de uma rede]"
    ),
    "proposal.open.percentages": (
        "A completar: não indicado: {names} [nada é contado; diga-o onde os preços já os contêm]"
    ),
    "proposal.open.price_date": "A completar: quando foram pedidos os preços [dia, cotações, por quanto tempo valem]",
    "proposal.open.exchange_rate": (
        "A completar: taxa de câmbio de {currency} para a moeda do financiador [taxa, dia, quem suporta as suas "
        "variações]"
    ),
    "proposal.open.contributions": (
        "A completar: contribuições em dinheiro e em espécie [utilizadores, governo, outros; soma, trabalho, materiais]"
    ),
    "proposal.open.procurement": (
        "A completar: plano de aquisições [lotes, como se convidam propostas, quem adjudica, garantias, peças de "
        "reserva na encomenda]"
    ),
    "proposal.open.timetable": (
        "A completar: calendário [licenças, concursos, fornecimento, construção, entrega, fim da garantia]"
    ),
    # cost recovery
    "proposal.open.tariff_unpriced": (
        "A completar: o que os utilizadores têm de pagar por operação e substituições [resulta dos preços, de que "
        "nenhum foi indicado]"
    ),
    "proposal.open.tariff": "A completar: tarifa acordada com os utilizadores [por m3, balde ou mês; quem a fixa]",
    "proposal.open.willingness": (
        "A completar: o que os utilizadores podem e querem pagar [o que se paga hoje, inquérito, ajuda aos mais pobres]"
    ),
    "proposal.open.savings_account": (
        "A completar: conta de poupança para substituições [banco, quem assina, juros, quem fiscaliza]"
    ),
    "proposal.open.households": (
        "A completar: agregados familiares que pagam [pessoas por agregado, rendimento de um médio e de um pobre]"
    ),
    "proposal.open.income": (
        "A completar: rendimento dos agregados familiares [de um médio, e de um do quinto mais pobre]"
    ),
    "proposal.open.collection": (
        "A completar: parte da água que é paga [nenhuma foi indicada, pelo que toda é contada como paga]"
    ),
    # operation
    "proposal.open.stockist": (
        "A completar: quem tem peças de reserva em armazém [nome, distância, que peças, dias até ao local]"
    ),
    "proposal.open.operator": "A completar: o operador [nome, formação, horas por semana, salário, substituto]",
    "proposal.open.committee": (
        "A completar: a entidade que responde pelo abastecimento [comité ou empresa, estatutos, membros, mulheres nela]"
    ),
    "proposal.open.electrician": (
        "A completar: electricista credenciado e equipa que iça a bomba [nomes, distância, preço da deslocação]"
    ),
    "proposal.open.operation_contract": (
        "A completar: contrato de assistência e garantias [com quem, por quanto tempo, tempo de reparação]"
    ),
    "proposal.open.support": (
        "A completar: apoio da autoridade local [visitas por ano, formação, dinheiro; nenhum foi indicado]"
    ),
    "proposal.open.theft": "A completar: protecção contra roubo e danos [lugar, parafusos, guarda, seguro]",
    # environment
    "proposal.open.grid_factor": (
        "A completar: dióxido de carbono por kWh da rede [factor nacional, o seu ano e tipo; aqui não contado]"
    ),
    "proposal.open.grid_factor_source": (
        "A completar: de onde vêm os {factor} kg de dióxido de carbono por kWh da rede [fonte, ano, tipo]"
    ),
    "proposal.open.screening": "A completar: avaliação ambiental prévia [autoridade, categoria, dia, licença]",
    "proposal.open.protection": (
        "A completar: protecção da cabeça do furo [distância a latrinas, gado, combustível e sepulturas; vedação, "
        "drenagem]"
    ),
    "proposal.open.waste_water": (
        "A completar: para onde vão as águas derramadas e residuais [vala, poço absorvente, bebedouro]"
    ),
    "proposal.open.end_of_life": (
        "A completar: que destino têm módulos, bombas, baterias e óleo usados [quem os recebe de volta]"
    ),
    "proposal.open.safeguards": (
        "A completar: salvaguardas sociais [terreno ocupado, trabalho de crianças, segurança na obra, reclamações]"
    ),
    # risks and indicators
    "proposal.open.other_risks": (
        "A completar: riscos que nenhum estudo vê [conflito, roubo, política, taxa de câmbio, fornecedor; quem os "
        "suporta]"
    ),
    "proposal.open.targets": "A completar: metas dos indicadores marcados 'a acordar' [número, até quando]",
    "proposal.open.monitoring": (
        "A completar: quem mede os indicadores [situação de partida, com que frequência, quem informa quem, "
        "orçamento para isso]"
    ),
    "proposal.open.logframe": (
        "A completar: quadro lógico no modelo do financiador [objectivo geral, objectivo específico, resultados, "
        "actividades]"
    ),
    "proposal.open.exit": (
        "A completar: o que vale quando o financiamento acaba [de quem são as obras, quem paga, quem se chama]"
    ),
    # annexes
    "proposal.open.checks": (
        "A completar, {topic}: não verificado por falta de um valor: {names} [placa, ficha técnica, medição]"
    ),
    "proposal.open.papers": (
        "A completar: documentos a juntar [registo do ensaio, boletim do laboratório, cotações, licenças, mapa, acta "
        "do consentimento, desenhos]"
    ),
}
