"""Português do que um cenário deixa de fora e é calculado: a partir de quê, e por que regra."""

SENTENCES: dict[str, str] = {
    "assumed.place": "o nome do projecto",
    "assumed.time_zone": "a partir das coordenadas",
    "assumed.weather": (
        "nenhum dado meteorológico indicado: estimado a partir das coordenadas; meça ou obtenha dados antes de "
        "comprometer dinheiro"
    ),
    "assumed.user": "o tipo de utilizador",
    "assumed.user.people": "Pessoas",
    "assumed.user.livestock": "Animais",
    "assumed.user.irrigation": "Campo regado",
    "assumed.user.volume": "Água por volume",
    "assumed.specific_capacity": (
        "{flow} m3/h para {drawdown} m de rebaixamento; um só escalão não mostra como o rebaixamento cresce com "
        "outros caudais"
    ),
    "assumed.safe_yield": (
        "o caudal do ensaio de bombagem, {flow} m3/h: um ensaio curto diz pouco sobre uma estação seca; mande "
        "determinar o caudal por um ensaio de um dia ou mais"
    ),
    "assumed.pump_name": "Bomba",
    "assumed.pump_named": "nenhum nome indicado",
    "assumed.pump_kind": (
        "caudal máximo {ratio} vezes o nominal: prática corrente, sem fonte; veja a bomba ou a sua ficha técnica"
    ),
    "assumed.controller_window": "a tensão CC na placa da bomba",
    "assumed.riser": "Coluna montante",
    "assumed.main": "Conduta elevatória",
    "assumed.segments": (
        "uma coluna montante com a profundidade da bomba e uma conduta elevatória de pipeline.length_m; acessórios "
        "não contados"
    ),
    "assumed.pipe": (
        "{velocity} m/s a {flow} m3/h (cerca de 1 m/s ou menos: prática corrente, sem fonte), classe de pressão "
        "{bar} bar para a bomba contra uma válvula fechada; diâmetros da norma {standard}"
    ),
    "assumed.sources": "nenhuma fonte indicada: só o sol",
    "assumed.module": (
        "um módulo genérico de valores redondos, que não é a ficha técnica de ninguém: prática corrente, sem fonte"
    ),
    "assumed.series": (
        "de {fewest} a {most} são compatíveis com as tensões do controlador, e com a corrente da placa, num meio-dia "
        "quente e numa manhã fria; destas, a fileira que mais se aproxima de {ratio} vezes a entrada da bomba"
    ),
    "assumed.series_by_power": (
        "o que mais se aproxima de {ratio} vezes a entrada da bomba; as tensões do controlador não são todas "
        "conhecidas, por isso veja se suporta de {fewest} a {most}"
    ),
    "assumed.series_chosen": "escolhidos com o número de fileiras, entre os que passam nas verificações",
    "assumed.string_fuse": (
        "o menor fusível gPV usual (IEC 60269-6) de 1,5 a 2,4 vezes a corrente de curto-circuito do módulo (IEC "
        "62548, de memória), em ambos os pólos de cada fileira; menos de três fileiras não precisam de nenhum"
    ),
    "assumed.section_chosen": (
        "a menor que passa nas verificações de corrente admissível e de queda de tensão para o campo fotovoltaico "
        "escolhido"
    ),
    "assumed.section": (
        "a menor secção da IEC 60228 que suporta a corrente (IEC 60364-5-52) e perde no máximo {percent:g}% da tensão"
    ),
    "assumed.planes": (
        "voltados para o equador, com inclinação igual à latitude mas de pelo menos 10°, a partir da qual a chuva "
        "lava o vidro: prática corrente, sem fonte"
    ),
    "assumed.tank": "nenhum reservatório indicado: um é escolhido",
    "assumed.rating": (
        "o menor que faz funcionar e arrancar um motor que absorve {need:.1f} kW, de cuja potência nominal restam "
        "{percent:.0f}% a esta altitude e a {hottest:.0f} °C"
    ),
    "assumed.level": "a um quinto do reservatório do nível indicado: prática corrente, sem fonte",
    "assumed.tank_sizes": "tamanhos usuais: prática corrente, sem fonte",
    "assumed.price": "de {listed}",
    "assumed.stand_in_price": "a estrutura está em prices.pv_per_kwp",
}
