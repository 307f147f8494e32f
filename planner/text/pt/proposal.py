"""Português da proposta a um financiador: os seus capítulos, os seus quadros e o que ali se diz."""

SENTENCES: dict[str, str] = {
    "proposal.contents_heading": "Índice",
    "proposal.page": "Página {page} de {pages}",
    "proposal.wrote": "Escrito: {file}; linhas a completar: {count}.",
    # ---- first page
    "proposal.kind": "Proposta de abastecimento de água por bombagem a partir de um furo: {place}",
    "proposal.draft": (
        "Este é um rascunho feito a partir de um estudo do local. As linhas marcadas a amarelo pedem factos que o "
        "estudo não contém: substitua cada uma pelo facto, e retire a marca, antes de entregar isto. Todos os outros "
        "números são os do estudo; faça de novo a proposta quando o estudo mudar."
    ),
    "proposal.version": "planner {version!s}",
    "proposal.foot.revision": "Revisão {revision!s}",
    "proposal.foot.visit": "Visita ao local: {date}",
    "proposal.foot.between": " · ",
    "proposal.position_ne": "{latitude}° norte, {longitude}° leste",
    "proposal.position_nw": "{latitude}° norte, {longitude}° oeste",
    "proposal.position_se": "{latitude}° sul, {longitude}° leste",
    "proposal.position_sw": "{latitude}° sul, {longitude}° oeste",
    "proposal.record.place": "Lugar",
    "proposal.record.position": "Posição",
    "proposal.record.prepared_by": "Preparado por",
    "proposal.record.visit_date": "Visita ao local",
    "proposal.record.price_date": "Preços de",
    "proposal.record.revision": "Revisão",
    "proposal.record.version": "Calculado com",
    # ---- chapters
    "proposal.chapter.summary": "Síntese",
    "proposal.chapter.need": "Necessidades e população",
    "proposal.chapter.source": "Origem da água",
    "proposal.chapter.design": "Projecto técnico",
    "proposal.chapter.options": "Opções comparadas",
    "proposal.chapter.budget": "Orçamento e aquisições",
    "proposal.chapter.recovery": "Recuperação de custos e capacidade de pagar",
    "proposal.chapter.operation": "Operação, manutenção e peças de reserva",
    "proposal.chapter.environment": "Ambiente e dióxido de carbono",
    "proposal.chapter.risks": "Riscos",
    "proposal.chapter.indicators": "Indicadores",
    "proposal.chapter.annexes": "Anexos",
    "proposal.value": "Valor",
    "proposal.column.label": "O quê",
    "proposal.column.value": "Valor",
    "proposal.column.unit": "Unidade",
    "proposal.column.basis": "Base",
    "proposal.column.source": "Fonte",
    "proposal.column.what": "O quê",
    "proposal.column.test": "Ensaio",
    "proposal.column.option": "Opção de alimentação",
    # ---- summary
    "proposal.grant_asked": "Pede-se: uma subvenção de {grant}, {percent}% do custo de investimento de {capital_cost}.",
    "proposal.in_brief": (
        "Enche-se um reservatório de {tank} m3; {water} m3 de água por dia chegam aos utilizadores no primeiro ano."
    ),
    "proposal.in_brief_array": (
        "Constrói-se um campo fotovoltaico de {kwp} kWp e enche-se um reservatório de {tank} m3; {water} m3 de água "
        "por dia chegam aos utilizadores no primeiro ano."
    ),
    # ---- need and people
    "proposal.users.heading": "Quem consome água, no primeiro ano, sem perdas",
    "proposal.users.user": "Quem",
    "proposal.users.number": "Quantos",
    "proposal.users.each": "Cada um por dia (mês maior)",
    "proposal.users.mean": "Média (m3/dia)",
    "proposal.users.largest": "Mês maior (m3/dia)",
    "proposal.users.people": "{count} pessoas",
    "proposal.users.animals": "{count} cabeças",
    "proposal.demand_grows": (
        "O estudo conta com necessidades de {first} m3 por dia no primeiro ano e {last} m3 por dia no ano {years}, "
        "em média do ano."
    ),
    "proposal.demand_level": (
        "O estudo conta com necessidades de {first} m3 por dia, em média do ano, que ficam iguais durante {years} anos."
    ),
    "proposal.target": "Pede-se do abastecimento: pelo menos {percent}% dessa água, no conjunto dos {years} anos.",
    "proposal.households": "Com {size} pessoas por agregado familiar são cerca de {count} agregados familiares.",
    "proposal.service_ladder": (
        "Na escala da OMS e da UNICEF (JMP, em segunda mão) uma torneira pública pode chegar no máximo a 'básico': "
        "uma fonte melhorada, com a água trazida em 30 minutos, fila incluída. 'Gerido com segurança' pede uma "
        "torneira no terreno, água quando é precisa, e água livre de poluição fecal e de poluição química "
        "prioritária."
    ),
    # ---- source
    "proposal.borehole": "O furo",
    "proposal.basis.given": "indicado",
    "proposal.basis.worked_out": "calculado",
    "proposal.basis.assumed": "suposto",
    "proposal.permits": "Licenças e terreno",
    "proposal.daily_limit": (
        "No estudo não se captam mais de {limit} m3 por dia: conta-se isso como o que a licença ou o ensaio permitem."
    ),
    # ---- design
    "proposal.design": "Propõe-se a opção de alimentação {option} com a bomba '{pump}'.",
    "proposal.design_unnamed": "Propõe-se a opção de alimentação {option}.",
    "proposal.works": "As obras",
    "proposal.acceptance": "Ensaios na entrega, a acordar no contrato",
    "proposal.acceptance.pump.what": "Bomba",
    "proposal.acceptance.pump.test": (
        "Curva de altura, caudal e potência absorvida na bancada de ensaio do fabricante, com um grau de tolerância "
        "acordado"
    ),
    "proposal.acceptance.pump.source": (
        "ISO 9906:2012, de memória; as bombas pequenas têm tolerâncias mais largas, por isso pergunte"
    ),
    "proposal.acceptance.flow.what": "Abastecimento no seu conjunto",
    "proposal.acceptance.flow.test": (
        "Caudal de pelo menos 90% do previsto para a mesma altura e o mesmo sol ou a mesma alimentação, a três "
        "potências ou ao longo de um dia limpo; os erros dos instrumentos são indicados com ele"
    ),
    "proposal.acceptance.flow.source": "proposto aqui, sem norma",
    "proposal.acceptance.array.what": "Campo fotovoltaico",
    "proposal.acceptance.array.test": (
        "Polaridade, tensão em circuito aberto e corrente de curto-circuito de cada fileira, continuidade da ligação "
        "à terra, isolamento; documentos do sistema de bombagem: caudal por potência a altura constante"
    ),
    "proposal.acceptance.array.source": "IEC 62446-1 e IEC 62253, em segunda mão",
    "proposal.acceptance.works.what": "Conduta elevatória, reservatório e água",
    "proposal.acceptance.works.test": (
        "Conduta ensaiada com água sob pressão, reservatório cheio 24 horas sem perda, obras desinfectadas e "
        "lavadas, amostras sem E. coli; paragens por trabalho em seco e por reservatório cheio demonstradas; "
        "desenhos das obras executadas, peças de reserva e ferramentas entregues"
    ),
    "proposal.acceptance.works.source": "prática corrente, sem fonte",
    # ---- budget and cost recovery
    "proposal.who_pays": "Quem paga a construção",
    "proposal.price_date": "Os preços são os de {date}.",
    "proposal.tariffs_too_low": (
        "Alguma coisa não tem preço (ver o orçamento), pelo que todas as tarifas, contas e poupanças abaixo são "
        "baixas de mais."
    ),
    "proposal.ranges_source": (
        "Gamas: IRC WASHCost, cost benchmarks, 2012, em segunda mão, para sistemas canalizados de furos mecanizados, "
        "levadas de dólares dos EUA de 2011 aos preços deste estudo."
    ),
    "proposal.ranges_source_2011": (
        "Gamas: IRC WASHCost, cost benchmarks, 2012, em segunda mão, para sistemas canalizados de furos mecanizados, "
        "em dólares dos EUA de 2011 como publicadas: a preços de hoje seriam mais altas."
    ),
    "proposal.by_year": "O que se paga em cada ano depois da subvenção, e o que as poupanças então contêm",
    "proposal.water_price": "O estudo conta com um preço da água de {currency} {price} por m3.",
    # ---- operation
    "proposal.operation": (
        "As obras duram enquanto alguém for pago e capaz de cuidar delas. As tarefas abaixo são as das obras "
        "propostas; as instruções dos fabricantes estão em primeiro lugar. O trabalho em partes eléctricas, o "
        "içamento da bomba e a entrada num reservatório ou numa câmara são para equipas formadas, com todas as "
        "fontes de energia bloqueadas com cadeado: veja as advertências nos anexos."
    ),
    "proposal.who": "Quem faz o quê",
    "proposal.yearly_cost": "Contado nos custos de operação: {name}, {cost} por ano.",
    "proposal.generator_hours": (
        "O gerador funciona cerca de {hours} horas por ano; com revisão a cada {interval} horas de funcionamento, "
        "são {times} revisões por ano, e pelo menos uma por ano sejam quais forem as horas."
    ),
    # ---- environment
    "proposal.carbon.heading": "Dióxido de carbono do combustível queimado e da electricidade comprada",
    "proposal.carbon": "Não é contado o que custou fazer e trazer as obras.",
    "proposal.taken": (
        "No primeiro ano chegam aos utilizadores {given} m3 dos {wanted} m3 pedidos; o que se perde em fugas é "
        "bombeado a mais."
    ),
    # ---- risks
    "proposal.no_check_warns": "Nenhuma verificação do local falha ou dá advertência.",
    "proposal.risks.heading": "O que as verificações do local encontraram",
    "proposal.risks.turns": "O que inverteria a resposta",
    "proposal.risks.risk": "Risco",
    "proposal.risks.found": "Encontrado",
    "proposal.risks.why": "Porque importa",
    "proposal.risks.remedy": "O que há a fazer",
    "proposal.rests_more": (
        "Mais {count} valores foram ensaiados e mudam menos; tudo o que não foi indicado está no Anexo B."
    ),
    # ---- indicators
    "proposal.indicators.heading": "O que será medido, e o que se espera",
    "proposal.indicators.what": "Indicador",
    "proposal.indicators.expected": "Esperado",
    "proposal.indicators.unit": "Unidade",
    "proposal.indicators.measured": "Como se mede",
    "proposal.indicators.to_agree": "a acordar",
    "proposal.indicator.people": "Pessoas servidas no primeiro ano",
    "proposal.indicator.people.unit": "pessoas",
    "proposal.indicator.people.measured": "registo de utilizadores, contado de novo cada ano",
    "proposal.indicator.m3_a_day": "Água fornecida, média do primeiro ano",
    "proposal.indicator.m3_a_day.unit": "m3/dia",
    "proposal.indicator.m3_a_day.measured": "contador de água no reservatório, lido todos os dias",
    "proposal.indicator.demand_met": "Parte da água pedida que é fornecida",
    "proposal.indicator.demand_met.unit": "% das necessidades",
    "proposal.indicator.demand_met.measured": "contador face às necessidades previstas para esse ano",
    "proposal.indicator.short_days": "Dias por ano em que falta mais de um décimo da água do dia",
    "proposal.indicator.short_days.unit": "dias/ano",
    "proposal.indicator.short_days.measured": "registo do operador: reservatório vazio, horas sem água",
    "proposal.indicator.longest_short_days": "Maior número desses dias seguidos",
    "proposal.indicator.longest_short_days.unit": "dias",
    "proposal.indicator.longest_short_days.measured": "registo do operador",
    "proposal.indicator.functionality": "Funcionalidade: visitas sem aviso que encontram água em todas as torneiras",
    "proposal.indicator.functionality.unit": "% das visitas",
    "proposal.indicator.functionality.measured": "visitas sem aviso, pelo menos duas vezes por ano",
    "proposal.indicator.repair": "Tempo da avaria à reparação",
    "proposal.indicator.repair.unit": "dias",
    "proposal.indicator.repair.measured": "registo do operador: dia da comunicação, dia da reparação",
    "proposal.indicator.collected": "Tarifa cobrada em relação ao custo de operação e manutenção",
    "proposal.indicator.collected.unit": "razão",
    "proposal.indicator.collected.measured": "livro de caixa, cada ano",
    "proposal.indicator.saving": "Posto de lado para substituições",
    "proposal.indicator.saving.unit": "{currency}/ano",
    "proposal.indicator.saving.measured": "extracto da conta de poupança",
    "proposal.indicator.samples": "E. coli numa amostra de 100 mL",
    "proposal.indicator.samples.unit": "por 100 mL",
    "proposal.indicator.samples.measured": (
        "amostras do reservatório e das torneiras, pelo menos trimestrais; valor-guia da OMS: nenhuma"
    ),
    "proposal.indicator.women": "Mulheres no comité e nos seus lugares principais",
    "proposal.indicator.women.unit": "% dos membros",
    "proposal.indicator.women.measured": "acta da eleição",
    "proposal.indicator.operators": "Operadores formados e em serviço",
    "proposal.indicator.operators.unit": "pessoas",
    "proposal.indicator.operators.measured": "lista de formação, visitas",
    "proposal.indicator.fuel": "Combustível queimado",
    "proposal.indicator.fuel.unit": "L/ano",
    "proposal.indicator.fuel.measured": "facturas de combustível e contador de horas",
    "proposal.indicator.carbon": "Dióxido de carbono do combustível e da electricidade",
    "proposal.indicator.carbon.unit": "kg/ano",
    "proposal.indicator.carbon.measured": "das facturas de combustível e do contador de electricidade",
    # ---- annexes
    "proposal.annex.checks": "Anexo A: verificações do local",
    "proposal.annex.assumptions": "Anexo B: o que foi suposto, e de onde",
    "proposal.annex.cautions": "Anexo C: advertências",
    "proposal.annex.papers": "Anexo D: documentos a juntar",
    "proposal.assumptions": (
        "Todos os valores que não foram indicados no local, pela parte do sistema a que pertencem. Substitua-os pelo "
        "que for medido ou acordado sempre que se possa obter."
    ),
    "proposal.weather": "Sol e temperatura: {source}.",
}
