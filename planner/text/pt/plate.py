"""Português da placa de características linha a linha, e da primeira constatação: se a bomba convém ao local."""

SENTENCES: dict[str, str] = {
    "plate.not_given": "não indicado",
    "plate.printed.range": "{low:g} a {high:g} {unit}",
    "plate.rated_flow.symbol": "Q, Qn",
    "plate.rated_flow.meaning": "caudal à altura nominal: aquele com que se deve contar",
    "plate.rated_flow.asks": "no máximo {limit}, o caudal seguro de exploração do furo",
    "plate.rated_head.symbol": "H, Hn",
    "plate.rated_head.meaning": "altura ao caudal nominal: aquela com que se deve contar",
    "plate.rated_head.asks": "{limit} a {flow} m3/h",
    "plate.largest_flow.symbol": "Qmax",
    "plate.largest_flow.meaning": "caudal sem altura: nunca contar com ele",
    "plate.largest_head.symbol": "Hmax",
    "plate.largest_head.meaning": "altura sem caudal: nunca contar com ela, mas a tubagem tem de a suportar",
    "plate.largest_head.asks": "mais de {value} antes de correr água",
    "plate.rated_power.symbol": "P, P1",
    "plate.rated_power.meaning": "o que o motor absorve no ponto nominal; {percent:.0f}% chegam à água",
    "plate.rated_power.asks": "{value} ao caudal que dá aqui",
    "plate.dc_supply.symbol": "U DC, PV, Voc",
    "plate.dc_supply.meaning": "a tensão do campo tem de ficar dentro destes limites",
    "plate.dc_supply.asks": (
        "{hot:.0f} a {cold:.0f} V em trabalho, {open:.0f} V em repouso com frio, {count} módulos em série"
    ),
    "plate.dc_supply.look_for": "procure 'DC', 'PV' ou 'Voc' com volts",
    "plate.ac_supply.symbol": "U AC, ~",
    "plate.ac_supply.meaning": "a tensão da rede ou do gerador tem de ficar dentro deles",
    "plate.ac_supply.look_for": "procure 'AC' ou '~' com volts",
    "plate.phases.symbol": "1~, 3~, ph",
    "plate.phases.meaning": "fases da alimentação CA",
    "plate.phases.look_for": "procure '1~' ou '3~'",
    "plate.frequency.symbol": "f, Hz",
    "plate.frequency.meaning": "um motor CA gira em função dela: menos hertz, menos velocidade, muito menos altura",
    "plate.frequency.look_for": "procure 'Hz'",
    "plate.current.symbol": "I, Imax, A",
    "plate.current.meaning": "o máximo que pode absorver",
    "plate.current.asks": "{value} à potência nominal",
    "plate.current.look_for": "procure 'A' ou 'Amp'",
    "plate.speed.symbol": "n, rpm, 1/min",
    "plate.speed.meaning": "o caudal acompanha a velocidade, a altura o seu quadrado",
    "plate.speed.asks": "gira devagar com sol fraco",
    "plate.speed.look_for": "procure 'rpm' ou '1/min'",
    "plate.frame.symbol": 'inch, "',
    "plate.frame.meaning": "classe de tamanho do motor; não entra num revestimento de menos de {millimetres:.0f} mm",
    "plate.frame.asks": "entra num revestimento de {value}",
    "plate.frame.asks_open": "revestimento não indicado",
    "plate.frame.look_for": "procure o tamanho em polegadas",
    "plate.insulation.symbol": "Ins. Cl.",
    "plate.insulation.meaning": "o enrolamento suporta {limit_c} °C (IEC 60085)",
    "plate.insulation.asks": "água a {water_c:g} °C",
    "plate.insulation.look_for": "procure 'Ins. Cl.' e uma letra",
    "plate.ingress.symbol": "IP",
    "plate.ingress.meaning": "{solids}; {water} (IEC 60529)",
    "plate.ingress.asks": "pendurada debaixo de água para sempre",
    "plate.ingress.look_for": "procure 'IP' e dois algarismos",
    "plate.liquid.symbol": "t max",
    "plate.liquid.meaning": "água mais quente está fora do seu serviço",
    "plate.liquid.asks": "água a {water_c:g} °C",
    "plate.liquid.look_for": "procure 'max. liquid temp.'",
    "plate.submergence.symbol": "min. submergence",
    "plate.submergence.meaning": "água que tem de estar acima da aspiração",
    "plate.submergence.asks": "{value} estão acima dela",
    "plate.submergence.look_for": "procure 'min. submergence', muitas vezes só no manual",
    "plate.asked_by": "{value} com {source}",
    "plate.holds.pass": "cumpre",
    "plate.holds.caution": "advertência",
    "plate.holds.fail": "não cumpre",
    "plate.holds.not given": "não indicado",
    "plate.holds.open": "-",
    "plate.heading": "A placa, linha a linha",
    "plate.column.symbol": "Na placa",
    "plate.column.printed": "Impresso",
    "plate.column.meaning": "O que significa",
    "plate.column.asks": "O que este local pede",
    "plate.column.holds": "Aqui",
    "plate.solids.0": "sem protecção contra sólidos",
    "plate.solids.1": "impede corpos de mais de 50 mm, como as costas de uma mão",
    "plate.solids.2": "impede corpos de 12,5 mm e mais, como um dedo",
    "plate.solids.3": "impede corpos de 2,5 mm e mais, como uma ferramenta",
    "plate.solids.4": "impede corpos de 1 mm e mais, como um arame",
    "plate.solids.5": "protegida contra poeiras",
    "plate.solids.6": "estanque a poeiras",
    "plate.solids.X": "sólidos não declarados",
    "plate.water.0": "sem protecção contra água",
    "plate.water.1": "contra gotas que caem na vertical",
    "plate.water.2": "contra gotas, inclinada até 15 graus",
    "plate.water.3": "contra chuva até 60 graus da vertical",
    "plate.water.4": "contra salpicos de todos os lados",
    "plate.water.5": "contra jactos",
    "plate.water.6": "contra jactos fortes",
    "plate.water.7": "suporta a imersão por algum tempo",
    "plate.water.8": "suporta a imersão contínua, nos termos que o fabricante declara",
    "plate.water.9": "contra jactos quentes de alta pressão, o que nada diz da imersão",
    "plate.water.X": "água não declarada",
    # whether the pump fits
    "finding.contradiction": "Os valores desta placa contradizem-se: {fault}.",
    "finding.cannot_lift": (
        "Esta bomba não pode elevar a água aqui: chega no máximo a {most} m, sem caudal, e o local precisa de {lift} "
        "m antes de correr água."
    ),
    "finding.too_weak": "Esta bomba é fraca de mais: a {flow} m3/h chega a {given} m, o local precisa de {needed} m.",
    "finding.cannot_draw": (
        "Esta bomba não dá água aqui: a água em repouso está a {level:.1f} m de profundidade, e não cobre a "
        "aspiração a {depth:g} m."
    ),
    "finding.cannot_start": (
        "Esta bomba não dá água aqui: os {limit:g} W que o controlador lhe pode dar não trazem a água para cima."
    ),
    "finding.short": (
        "Esta bomba fica um pouco aquém: a {flow} m3/h chega a {given} m, o local precisa de {needed} m; estabiliza "
        "em {duty} m3/h."
    ),
    "finding.over_yield": (
        "Esta bomba é feita para mais do que o furo pode dar: {rated} m3/h nominais, {safe} m3/h de caudal seguro de "
        "exploração."
    ),
    "finding.over": (
        "Esta bomba eleva {times} aquilo de que o local precisa: a {flow} m3/h poderia chegar a {given} m ({most} m "
        "sem caudal), o local precisa de {needed} m."
    ),
    "finding.times": "{times} vezes",
    "finding.twice": "duas vezes",
    "finding.fits": "Esta bomba convém: a {flow} m3/h chega a {given} m, o local precisa de {needed} m.",
    "finding.would_fit": (
        "O que conviria: uma bomba de cerca de {head} m a {flow} m3/h nominais, com um motor que absorva cerca de "
        "{power} kW se {share}% chegarem à água."
    ),
}
