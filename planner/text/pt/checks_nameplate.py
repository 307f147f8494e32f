"""Português das verificações da placa de características perante o local."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Potência da água no ponto nominal ({hydraulic_kw:.2f} kW) como parte dos {rated_w:g} W da placa, face a "
        "{low:g} a {high:g}%"
    ),
    "check.rated_figures.why": "Uma parte fora do usual sugere um valor mal lido na placa.",
    "check.rated_figures.remedy": "leia de novo na placa potência, caudal e altura; os nominais, não os máximos",
    "check.rated_figures.source": "a placa de características da bomba; a gama é prática corrente, sem fonte",
    "check.largest_flow.compared": "Caudal máximo da placa, face a {times:g} vezes o caudal nominal de {rated:g} m3/h",
    "check.largest_flow.why": "Um caudal máximo muito acima do nominal sugere uma vírgula decimal fora do lugar.",
    "check.largest_flow.remedy": "leia de novo na placa os dois caudais",
    "check.largest_flow.source": "a placa de características da bomba; a parte é prática corrente, sem fonte",
    "check.motor_power.compared": (
        "Potência que o motor absorve a {flow}, face à sua potência nominal e a {percent:.0f}%"
    ),
    "check.motor_power.compared_unlimited": (
        "Potência que o motor absorve a {flow_m3h:.2f} m3/h, se nada a limitar, face à sua potência nominal e a "
        "{percent:.0f}%"
    ),
    "check.motor_power.why": "Um motor que absorve mais do que a sua potência nominal sobreaquece.",
    "check.motor_power.remedy_drive": (
        "um variador regulado para dar no máximo {most_w} W, como o cálculo horário o toma, ou {remedy}"
    ),
    "check.motor_power.source": (
        "a placa de características da bomba; {percent:.0f}% é prática corrente, sem fonte, até "
        "{service_percent:.0f}% é uma advertência (factor de serviço, NEMA MG 1), tal como o que um variador pode "
        "limitar"
    ),
    "check.current.compared": "Corrente à potência nominal ({currents}), face à maior da placa",
    "check.current.compared_unknown": (
        "Corrente à potência nominal (não se conhece nenhuma tensão de alimentação), face à maior da placa"
    ),
    "check.current.from.array": "{amperes:.1f} A do campo fotovoltaico",
    "check.current.from.grid": "{amperes:.1f} A da rede",
    "check.current.from.generator": "{amperes:.1f} A do gerador",
    "check.current.why": "Mais corrente do que a placa permite faz disparar o controlador ou queima o enrolamento.",
    "check.current.look_for": "procure 'A' ou 'Amp' na placa",
    "check.current.remedy.array": (
        "leia de novo a corrente na placa, ou uma bomba feita para {amperes} A do campo fotovoltaico"
    ),
    "check.current.remedy.grid": "leia de novo a corrente na placa, ou uma bomba feita para {amperes} A da rede",
    "check.current.remedy.generator": (
        "leia de novo a corrente na placa, ou uma bomba feita para {amperes} A do gerador"
    ),
    "check.current.remedy_or_series": "{series}; ou {remedy}",
    "check.current.remedy_or_volts": (
        "uma alimentação de pelo menos {volts} V, dentro dos limites da placa; ou {remedy}"
    ),
    "check.speed_range.compared": (
        "Gama de velocidades do motor, face ao que uma fonte variável pede: {low:g} a {high:g} rpm, a menor como "
        "parte da maior"
    ),
    "check.speed_range.compared_not_given": "Gama de velocidades do motor, face ao que uma fonte variável pede",
    "check.speed_range.why": "A potência do sol varia; só um motor que possa girar devagar aproveita um sol fraco.",
    "check.speed_range.look_for": "procure 'rpm' ou '1/min' na placa",
    "check.speed_range.remedy": "escolha um motor de velocidade variável",
    "check.speed_range.source": (
        "a placa de características da bomba; um motor de velocidade variável com uma fonte variável é prática "
        "corrente, sem fonte"
    ),
    "check.frame.compared": "Revestimento, face ao tamanho do motor: {inches:g} polegadas são {millimetres:.0f} mm",
    "check.frame.compared_not_given": "Revestimento, face ao tamanho do motor",
    "check.frame.why": "Um motor não entra num revestimento menor do que o seu tamanho.",
    "check.frame.look_for_frame": "procure na placa o tamanho em polegadas",
    "check.frame.look_for_casing": "procure o diâmetro interior do revestimento no relatório de perfuração",
    "check.frame.remedy": "uma bomba de tamanho não superior a {inches:g} polegadas",
    "check.insulation.compared": (
        "A classe {letter} suporta {limit_c} °C: margem acima de água a {water_c:g} °C, face à margem acima de "
        "{coolant_c:g} °C"
    ),
    "check.insulation.compared_not_given": "Classe de isolamento, face à temperatura da água",
    "check.insulation.why": (
        "O enrolamento só pode aquecer até onde o seu isolamento suporta; a água quente tira essa margem."
    ),
    "check.insulation.look_for": "procure 'Ins. Cl.' e uma letra na placa",
    "check.insulation.remedy": "um motor de uma classe superior, ou um que o fabricante garanta para esta água",
    "check.insulation.source": "IEC 60085 (temperatura da classe), IEC 60034-1 (refrigerante a {coolant_c:g} °C)",
    "check.ingress_protection.compared": "{code}: {meaning}; face a um motor pendurado na água",
    "check.ingress_protection.compared_not_given": "Índice de protecção de um motor pendurado na água",
    "check.ingress_protection.why": "Um motor que vive debaixo de água tem de a suportar para sempre.",
    "check.ingress_protection.look_for": "procure 'IP' e dois algarismos na placa; o segundo deve ser 8",
    "check.ingress_protection.remedy": "um motor submersível de IP68, ou a palavra do fabricante sobre a imersão",
    "check.ingress_protection.source": "IEC 60529",
    "check.water_temperature.compared": "Temperatura da água, face ao que a placa permite",
    "check.water_temperature.why": (
        "Água mais quente do que a placa permite está fora do serviço do motor: arrefece-o pouco e encurta-lhe a vida."
    ),
    "check.water_temperature.look_for": "procure 'max. liquid temp.' na placa",
    "check.water_temperature.remedy": "um motor próprio para água de pelo menos {water_c:g} °C",
    "check.plate_window.why": "Fora dos seus limites de tensão desliga-se, ou é destruída.",
    "check.dc_window.compared": (
        "Tensão de trabalho de uma fileira, {hot:.0f} V ao meio-dia mais quente a {cold:.0f} V com frio, face a "
        "{low:g} a {high:g} V"
    ),
    "check.dc_window.compared_not_given": (
        "Tensão de trabalho de uma fileira, {hot:.0f} V ao meio-dia mais quente a {cold:.0f} V com frio, face aos "
        "limites CC da placa"
    ),
    "check.dc_window.span": "{hot:.0f} a {cold:.0f}",
    "check.dc_window.look_for": (
        "procure 'DC', 'PV' ou 'Voc' com volts na placa, a menos que só o controlador esteja ligado ao campo "
        "fotovoltaico"
    ),
    "check.ac_window.compared": "Tensão nominal das alimentações ({volts}), face a {low:g} a {high:g} V",
    "check.ac_window.compared_not_given": "Tensão nominal das alimentações ({volts}), face aos limites CA da placa",
    "check.ac_window.compared_none_given": (
        "Tensão nominal das alimentações (não indicada), face aos limites CA da placa"
    ),
    "check.ac_window.look_for": "procure 'AC' ou '~' com volts na placa",
    "check.ac_window.remedy": (
        "um transformador, escolhido e instalado por um electricista credenciado, ou uma bomba para esta tensão"
    ),
}
