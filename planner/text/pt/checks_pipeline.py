"""Português das verificações da altura manométrica, da conduta e das fileiras em paralelo."""

SENTENCES: dict[str, str] = {
    # head
    "head_part.part": "{name} {head}",
    "head_part.static": "nível estático, média do ano",
    "head_part.deepest": "mais fundo no mês mais fundo",
    "head_part.drawdown": "rebaixamento",
    "head_part.rise": "subida até à entrada do reservatório",
    "head_part.friction": "perdas de carga em {segment}",
    "head_part.fittings": "acessórios",
    "head_part.residual": "pressão residual à entrada",
    "head_part.high_point": "para passar o ponto alto do traçado",
    "check.lift.compared": "Altura precisa antes de correr água em {month}, face à altura da bomba sem caudal",
    "check.lift.why": "Abaixo desta altura não chega uma gota ao reservatório.",
    "check.lift.source": "a placa de características da bomba (altura máxima)",
    "check.rated_head.compared": (
        "Altura da bomba ao caudal nominal {flow} m3/h, face à altura ali precisa em {month} [m]: {parts}"
    ),
    "check.rated_head.compared_yield": (
        "Altura da bomba a {share}% do caudal seguro de exploração do furo, porque o caudal nominal é maior, {flow} "
        "m3/h, face à altura ali precisa em {month} [m]: {parts}"
    ),
    "check.rated_head.why": (
        "Uma bomba trabalha melhor perto da sua altura nominal; aquém dela o caudal cai, muito além desperdiça-se "
        "potência."
    ),
    "check.rated_head.remedy_short": (
        "conte com o caudal menor do ponto de funcionamento, ou uma bomba de cerca de {head} m a {flow} m3/h "
        "nominais (cerca de {power} kW se {share}% chegarem à água)"
    ),
    "check.rated_head.remedy_over": (
        "uma bomba de cerca de {head} m a {flow} m3/h nominais (cerca de {power} kW se {share}% chegarem à água); "
        "esta tem de ser limitada na velocidade"
    ),
    "check.rated_head.source": (
        "calculado a partir dos dados do local; mais de um décimo a menos não cumpre, mais de um terço a mais é uma "
        "advertência: prática corrente, sem fonte"
    ),
    "check.power_limit.compared": "Maior potência de saída do controlador face ao que a bomba absorve a {flow} m3/h",
    "check.power_limit.why": (
        "Com menos potência a bomba fica abaixo do seu caudal, e com muito menos não chega água nenhuma."
    ),
    "check.power_limit.remedy": "um controlador de pelo menos {power} W que convenha ao motor",
    "check.power_limit.source": "a ficha técnica do controlador; tão pouca que não chegue água não cumpre",
    "check.duty_flow.compared": (
        "Funcionamento em {month}, {flow} m3/h a {head} m ({limited}), face a {low} a {high}% dos {rated} m3/h nominais"
    ),
    "check.duty_flow.why": (
        "Longe do seu ponto nominal uma bomba desperdiça potência e gasta-se; conte com o caudal nominal, não com o "
        "máximo."
    ),
    "check.duty_flow.source": (
        "a placa de características da bomba (caudal nominal); a gama é prática corrente, sem fonte"
    ),
    "check.speed.compared": "Velocidade precisa para {flow} m3/h, face à velocidade mais baixa da bomba",
    "check.speed.why": (
        "Abaixo da sua velocidade mais baixa a bomba não pode ser abrandada; uma válvula tem então de destruir a "
        "altura a mais."
    ),
    "check.speed.source": "a placa de características da bomba (gama de velocidades)",
    "check.wire_to_water.compared": (
        "Rendimento global no ponto de funcionamento, face a {share}% do rendimento no ponto nominal ({rated}%)"
    ),
    "check.wire_to_water.why": (
        "Cada ponto perdido aqui paga-se em módulos fotovoltaicos, energia ou combustível durante toda a vida."
    ),
    "check.wire_to_water.source": (
        "a placa de características da bomba (ponto nominal); a parte é prática corrente, sem fonte"
    ),
    "check.hours_a_day.compared": (
        "Horas por dia a {flow} no mês de maior consumo: {first} no primeiro ano, {last} no máximo"
    ),
    "check.hours_a_day.why": (
        "Uma bomba que tem de trabalhar dia e noite não tem reserva, nem o furo tempo para recuperar."
    ),
    "check.hours_a_day.remedy": "um caudal de pelo menos {flow} m3/h, ou menos necessidades nos últimos anos",
    "check.hours_a_day.remedy_less": (
        "menos necessidades, ou um segundo furo ou fonte: {flow} m3/h, que bastariam, estão acima do caudal seguro "
        "de exploração do furo, {safe} m3/h"
    ),
    "check.hours_a_day.source": "20 horas por dia é prática corrente, sem fonte; mais de 24 no primeiro ano não cumpre",
    "check.pipe_length.compared": (
        "Comprimento de toda a tubagem, face à profundidade da bomba e ao caminho até ao reservatório"
    ),
    "check.pipe_length.why": "Tubagem que não é contada são perdas de carga que não são contadas.",
    "check.pipe_length.remedy": "acrescente {length} m aos comprimentos de tubagem",
    "check.pipe_length.source": "os dados do local",
    "check.velocity.compared": "Velocidade a {flow} [m/s]: {segments}; face a {slowest} a {fastest} m/s",
    "check.velocity.segment": "{segment} {velocity}",
    "check.velocity.why": (
        "Água rápida custa altura e provoca golpes de aríete; água lenta deixa assentar areia e juntar ar."
    ),
    "check.velocity.remedy_size": "para {segment} o diâmetro de tubo seguinte, {pipe}",
    "check.velocity.remedy_diameter": "para {segment} um diâmetro interior de pelo menos {diameter} mm",
    "check.velocity.remedy_slow": (
        "nada, onde as perdas de carga têm de ser baixas; senão {segment} de no máximo {diameter} mm de diâmetro "
        "interior"
    ),
    "check.velocity.source": "EN 805:2000 anexo A, de memória; 3 m/s: Crane TP-410, serviço geral, de memória",
    # pipeline
    "check.pressure_at_duty.compared": (
        "Maior pressão a {flow}, face à pressão que a tubagem suporta a {temperature} °C; menor margem em {segment}"
    ),
    "check.pressure_at_duty.compared_open": "Maior pressão a {flow}, em {segment}",
    "check.pressure_at_duty.why": (
        "Um tubo com mais pressão do que a sua classe rebenta ou deforma-se até um fim precoce."
    ),
    "check.pressure_at_duty.remedy": "{pipes}",
    "check.pressure_at_shut_off.compared": (
        "Maior pressão se uma válvula for fechada contra a bomba a trabalhar, face à pressão que a tubagem suporta a "
        "{temperature} °C; menor margem em {segment}"
    ),
    "check.pressure_at_shut_off.compared_open": (
        "Maior pressão se uma válvula for fechada contra a bomba a trabalhar, em {segment}"
    ),
    "check.pressure_at_shut_off.why": (
        "Uma válvula fechada por engano, ou uma válvula de bóia, põe a altura máxima da bomba na tubagem."
    ),
    "check.pressure_at_shut_off.remedy": (
        "{pipes}; ou um pressóstato ou uma válvula de alívio, e nenhuma válvula que possa fechar contra a bomba a "
        "trabalhar"
    ),
    "check.pipe_class.look_for": "procure 'PN' ou bar impresso ao longo do tubo de {segments}",
    "check.pipe_class.source": "classe de pressão da tubagem, reduzida para água quente: {sources}",
    "check.pipe_class.remedy_named": "{segment}: {pipe} (PN {pressure})",
    "check.pipe_class.remedy_class": "{segment}: tubo, juntas e acessórios de pelo menos PN {pressure}",
    "check.pipe_class.remedy_material": (
        "{segment}: tubo de {material}, porque {given} não tem classe em água tão quente"
    ),
    "check.pipe_class.remedy_cooler": "{segment}: água mais fria, porque {given} não tem classe em água tão quente",
    "check.surge.compared": (
        "Maior pressão quando o caudal pára de repente, ou a válvula de um tubo bate: uma subida de {rise} m em "
        "{segment} (onda a {speed} m/s)"
    ),
    "check.surge.compared_timed": (
        "Maior pressão quando o caudal pára em {stop} s: uma subida de {rise} m em {segment} (onda a {speed} m/s)"
    ),
    "check.surge.compared_open": (
        "Maior pressão quando o caudal pára de repente, ou a válvula de um tubo bate, em {segments}"
    ),
    "check.surge.compared_open_timed": "Maior pressão quando o caudal pára em {stop} s, em {segments}",
    "check.surge.why": (
        "Um corte de energia pára a água de repente; a onda rebenta tubos e arranca juntas, e aspira com tanta força "
        "como a que empurra."
    ),
    "check.surge.look_for": "procure a espessura (ou SDR) e a classe (PN) impressas ao longo do tubo",
    "check.surge.remedy": (
        "faça o caudal parar em não menos de {seconds} s, também num corte de energia (válvula lenta, paragem suave, "
        "um reservatório de ar comprimido para os cortes de energia), ou tubo mais largo"
    ),
    "check.surge.remedy_class": "tubo de uma classe superior, ou água mais lenta num tubo mais largo",
    "check.surge.source_open": (
        "Joukowsky 1898 com a velocidade da onda na tubagem (Korteweg), sem atrito; classe de pressão da tubagem, "
        "reduzida para água quente: {sources}"
    ),
    "check.surge.source": (
        "Joukowsky 1898 com a velocidade da onda na tubagem (Korteweg), sem atrito; classe de pressão da tubagem, "
        "reduzida para água quente: {sources}; até {times} vezes a classe é uma advertência, porque a estimativa é "
        "um limite superior: prática corrente, sem fonte"
    ),
    "check.high_points.compared_open": "Pontos altos do traçado, e a pressão ali",
    "check.high_points.compared": (
        "Menor altura de pressão ao longo do traçado com a bomba parada; pontos altos entre os extremos: {count}"
    ),
    "check.high_points.why": (
        "O ar junta-se num ponto alto e estrangula o caudal; uma pressão abaixo da do ar aspira sujidade."
    ),
    "check.high_points.look_for": (
        "percorra o traçado com um nível ou um receptor de satélite, e anote distância e cota do terreno"
    ),
    "check.high_points.remedy": "uma ventosa à distância {places} m",
    "check.high_points.remedy_below": (
        "uma ventosa à distância {places} m; ou assente ali a tubagem mais baixa, ou suba o reservatório"
    ),
    "check.high_points.source": "o perfil do traçado; ventosas nos pontos altos são prática corrente, sem fonte",
    "check.profile_length.compared": "Tubagem além do furo ({laid} m) e o perfil ({chainage} m): a sua diferença",
    "check.profile_length.why": "Se os dois diferem, perdas de carga e pressões são calculadas para outro traçado.",
    "check.profile_length.remedy": "indique o perfil até ao reservatório, e troços do mesmo comprimento",
    "check.profile_length.source": "os dados do local; {share}% é prática corrente, sem fonte",
    # strings in parallel
    "check.strings.remedy": "não mais de {count} fileira(s)",
    "check.array_current.compared": (
        "Corrente de {count} fileira(s), 1,25 vezes a corrente de curto-circuito, face à maior do controlador"
    ),
    "check.array_current.compared_open": (
        "Corrente de {count} fileira(s), que conviriam (o número está em aberto), 1,25 vezes a corrente de "
        "curto-circuito, face à maior do controlador"
    ),
    "check.array_current.why": (
        "Bordos de nuvens brilhantes dão mais do que a corrente nominal; entradas e fusíveis têm de a suportar."
    ),
    "check.array_current.look_for": "procure 'max. input current' ou 'Isc max.' na placa do controlador",
    "check.array_current.remedy_controller": "outro controlador, ou um módulo de menos corrente",
    "check.array_current.source": "a ficha técnica do controlador; 1,25 vezes segundo a IEC 62548",
    "check.string_over_current.compared": (
        "Corrente que as outras de {count} fileira(s) enviam para uma com defeito, face ao fusível de série do módulo"
    ),
    "check.string_over_current.compared_open": (
        "Corrente que as outras de {count} fileira(s), que conviriam (o número está em aberto), enviam para uma com "
        "defeito, face ao fusível de série do módulo"
    ),
    "check.string_over_current.compared_few": (
        "Corrente que as outras de {count} fileira(s) enviam para uma com defeito, face ao fusível de série do "
        "módulo, que uma ou duas fileiras não atingem"
    ),
    "check.string_over_current.compared_few_open": (
        "Corrente que as outras de {count} fileira(s), que conviriam (o número está em aberto), enviam para uma com "
        "defeito, face ao fusível de série do módulo, que uma ou duas fileiras não atingem"
    ),
    "check.string_over_current.compared_fuse": (
        "Fusível em cada fileira, face a {least} A e no máximo {most} A para este módulo"
    ),
    "check.string_over_current.why": (
        "Um curto-circuito numa fileira puxa a corrente de todas as outras, que pode incendiar os seus módulos e cabos."
    ),
    "check.string_over_current.look_for": "procure 'max. series fuse' nas costas do módulo",
    "check.string_over_current.remedy": (
        "um fusível gPV (IEC 60269-6) de {rating:g} A, para pelo menos {volts} V CC, em ambos os pólos de cada "
        "fileira; não abrangido: o cabo de uma fileira, que tem de suportar a corrente nominal do fusível"
    ),
    "check.string_over_current.remedy_fewer": (
        "não mais de {count} fileira(s) e nenhum fusível: nenhum calibre usual convém"
    ),
    "check.string_over_current.source": (
        "a ficha técnica do módulo; IEC 62548 (fusível de 1,5 a 2,4 vezes a corrente de curto-circuito, de memória)"
    ),
    "check.power_ratio.compared": (
        "Potência nominal de {count} fileira(s) em relação ao que a bomba absorve, face a {low} a {high}"
    ),
    "check.power_ratio.compared_open": (
        "Potência nominal de {count} fileira(s) (o número está em aberto; podem ensaiar-se 1 a {largest}) em relação "
        "ao que a bomba absorve, face a {low} a {high}"
    ),
    "check.power_ratio.why": (
        "Um campo pequeno raramente leva a bomba à velocidade máxima; um grande dá potência que nada pode usar."
    ),
    "check.power_ratio.remedy": "{count} fileira(s)",
    "check.power_ratio.remedy_nearest": "{count} fileira(s), o mais próximo que há",
    "check.power_ratio.remedy_least": (
        "menos módulos em série onde as tensões o permitem, ou um módulo mais pequeno: uma fileira é o mínimo"
    ),
    "check.power_ratio.source": "prática corrente, sem fonte",
}
