"""Español de las comprobaciones de la placa de características frente al lugar."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Potencia del agua en el punto nominal ({hydraulic_kw:.2f} kW) como parte de los {rated_w:g} W de la placa, "
        "frente al intervalo de {low:g} a {high:g} %"
    ),
    "check.rated_figures.why": "Una parte fuera de lo usual hace pensar en una cifra mal leída de la placa.",
    "check.rated_figures.remedy": (
        "lea de nuevo en la placa la potencia, el caudal y la altura; los nominales, no los máximos"
    ),
    "check.rated_figures.source": (
        "la placa de características de la bomba; el intervalo es práctica habitual, sin fuente"
    ),
    "check.largest_flow.compared": (
        "Caudal máximo de la placa, frente a {times:g} veces el caudal nominal de {rated:g} m3/h"
    ),
    "check.largest_flow.why": "Un caudal máximo muy por encima del nominal hace pensar en una coma decimal mal puesta.",
    "check.largest_flow.remedy": "lea de nuevo los dos caudales en la placa",
    "check.largest_flow.source": (
        "la placa de características de la bomba; la proporción es práctica habitual, sin fuente"
    ),
    "check.motor_power.compared": (
        "Potencia que toma el motor a {flow}, frente a su potencia nominal más el {percent:.0f} %"
    ),
    "check.motor_power.compared_unlimited": (
        "Potencia que toma el motor a {flow_m3h:.2f} m3/h, si nada limita su potencia, frente a su potencia nominal "
        "más el {percent:.0f} %"
    ),
    "check.motor_power.why": "Un motor que toma más que su potencia nominal se sobrecalienta.",
    "check.motor_power.remedy_drive": (
        "un variador ajustado para dar como máximo {most_w} W, como supone la simulación horaria, o {remedy}"
    ),
    "check.motor_power.source": (
        "la placa de características de la bomba; {percent:.0f} % es práctica habitual, sin fuente; hasta "
        "{service_percent:.0f} % es una advertencia (factor de servicio, NEMA MG 1), igual que lo que un variador "
        "puede limitar"
    ),
    "check.current.compared": "Corriente a la potencia nominal ({currents}), frente a la máxima de la placa",
    "check.current.compared_unknown": (
        "Corriente a la potencia nominal (no se conoce ninguna tensión de suministro), frente a la máxima de la placa"
    ),
    "check.current.from.array": "{amperes:.1f} A del campo fotovoltaico",
    "check.current.from.grid": "{amperes:.1f} A de la red eléctrica",
    "check.current.from.generator": "{amperes:.1f} A del grupo electrógeno",
    "check.current.why": "Más corriente de la que admite la placa dispara el controlador o quema el devanado.",
    "check.current.look_for": "busque «A» o «Amp» en la placa",
    "check.current.remedy.array": (
        "lea de nuevo la corriente en la placa, o una bomba hecha para {amperes} A del campo fotovoltaico"
    ),
    "check.current.remedy.grid": (
        "lea de nuevo la corriente en la placa, o una bomba hecha para {amperes} A de la red eléctrica"
    ),
    "check.current.remedy.generator": (
        "lea de nuevo la corriente en la placa, o una bomba hecha para {amperes} A del grupo electrógeno"
    ),
    "check.current.remedy_or_series": "{series}; o {remedy}",
    "check.current.remedy_or_volts": (
        "un suministro de al menos {volts} V, dentro de los límites de la placa; o {remedy}"
    ),
    "check.speed_range.compared": (
        "Intervalo de velocidad del motor, frente a lo que pide una fuente variable: {low:g} a {high:g} r/min, la "
        "mínima como parte de la máxima"
    ),
    "check.speed_range.compared_not_given": (
        "Intervalo de velocidad del motor, frente a lo que pide una fuente variable"
    ),
    "check.speed_range.why": (
        "La potencia del sol varía; solo un motor que puede girar despacio aprovecha un sol débil."
    ),
    "check.speed_range.look_for": "busque «rpm» o «1/min» en la placa",
    "check.speed_range.remedy": "elija un motor de velocidad variable",
    "check.speed_range.source": (
        "la placa de características de la bomba; un motor de velocidad variable con una fuente variable es práctica "
        "habitual, sin fuente"
    ),
    "check.frame.compared": "Entubado, frente al diámetro del motor: {inches:g} pulgadas son {millimetres:.0f} mm",
    "check.frame.compared_not_given": "Entubado, frente al diámetro del motor",
    "check.frame.why": "Un motor no entra en un entubado más estrecho que él.",
    "check.frame.look_for_frame": "busque el diámetro del motor en pulgadas en la placa",
    "check.frame.look_for_casing": "busque el diámetro interior del entubado en el registro de perforación",
    "check.frame.remedy": "una bomba con un motor de como máximo {inches:g} pulgadas",
    "check.insulation.compared": (
        "La clase {letter} soporta {limit_c} °C: margen sobre el agua a {water_c:g} °C, frente al margen sobre "
        "{coolant_c:g} °C"
    ),
    "check.insulation.compared_not_given": "Clase de aislamiento, frente a la temperatura del agua",
    "check.insulation.why": (
        "El devanado solo puede calentarse hasta donde resiste su aislamiento; el agua caliente reduce ese margen."
    ),
    "check.insulation.look_for": "busque «Ins. Cl.» y una letra en la placa",
    "check.insulation.remedy": "un motor de una clase superior, o uno que su fabricante admita para esta agua",
    "check.insulation.source": "IEC 60085 (temperatura de la clase), IEC 60034-1 (refrigerante a {coolant_c:g} °C)",
    "check.ingress_protection.compared": "{code}: {meaning}; frente a un motor que cuelga en el agua",
    "check.ingress_protection.compared_not_given": "Grado de protección de un motor que cuelga en el agua",
    "check.ingress_protection.why": "Un motor que vive bajo el agua debe resistirla de forma permanente.",
    "check.ingress_protection.look_for": "busque «IP» y dos cifras en la placa; la segunda debería ser 8",
    "check.ingress_protection.remedy": "un motor sumergible IP68, o la confirmación del fabricante sobre la inmersión",
    "check.ingress_protection.source": "IEC 60529",
    "check.water_temperature.compared": "Temperatura del agua, frente a la que admite la placa",
    "check.water_temperature.why": (
        "Un agua más caliente de lo que admite la placa está fuera del servicio del motor: enfría demasiado poco y "
        "acorta su vida."
    ),
    "check.water_temperature.look_for": "busque «max. liquid temp.» en la placa",
    "check.water_temperature.remedy": "un motor previsto para agua de al menos {water_c:g} °C",
    "check.plate_window.why": "Fuera de sus límites de tensión se desconecta, o se destruye.",
    "check.dc_window.compared": (
        "Tensión de trabajo de una cadena, {hot:.0f} V en el mediodía más caluroso a {cold:.0f} V con frío, frente al "
        "intervalo de {low:g} a {high:g} V"
    ),
    "check.dc_window.compared_not_given": (
        "Tensión de trabajo de una cadena, {hot:.0f} V en el mediodía más caluroso a {cold:.0f} V con frío, frente a "
        "los límites de CC de la placa"
    ),
    "check.dc_window.span": "{hot:.0f} a {cold:.0f}",
    "check.dc_window.look_for": (
        "busque «DC», «PV» o «Voc» con voltios en la placa, salvo que solo el controlador reciba la tensión del campo"
    ),
    "check.ac_window.compared": (
        "Tensión nominal de los suministros ({volts}), frente al intervalo de {low:g} a {high:g} V"
    ),
    "check.ac_window.compared_not_given": (
        "Tensión nominal de los suministros ({volts}), frente a los límites de CA de la placa"
    ),
    "check.ac_window.compared_none_given": (
        "Tensión nominal de los suministros (no dada), frente a los límites de CA de la placa"
    ),
    "check.ac_window.look_for": "busque «AC» o «~» con voltios en la placa",
    "check.ac_window.remedy": (
        "un transformador, elegido y montado por un electricista autorizado, o una bomba para esta tensión"
    ),
}
