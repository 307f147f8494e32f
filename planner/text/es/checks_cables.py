"""Español de las comprobaciones de los cables."""

SENTENCES: dict[str, str] = {
    "check.dc_cable.compared": "Cable del campo fotovoltaico al controlador: caída de tensión y corriente admisible",
    "check.ac_cable.compared": (
        "Cable de la red eléctrica o del grupo electrógeno al controlador: caída de tensión y corriente admisible"
    ),
    "check.drop_cable.compared": "Cable de bajada del controlador al motor: caída de tensión y corriente admisible",
    "check.dc_cable.look_for": (
        "mida el recorrido del campo fotovoltaico al controlador y busque la sección (mm2) impresa en el cable; "
        "indique ambas para el cable del campo fotovoltaico"
    ),
    "check.ac_cable.look_for": (
        "mida el recorrido de la red eléctrica o del grupo electrógeno al controlador y busque la sección (mm2) "
        "impresa en el cable; indique ambas para el cable de CA"
    ),
    "check.drop_cable.look_for": (
        "mida el recorrido del controlador al motor y busque la sección (mm2) impresa en el cable; indique ambas para "
        "el cable de bajada"
    ),
    "check.cable.source": "IEC 60364-5-52 anexo G, usos distintos del alumbrado en red pública",
    "check.cable.array": "Cable del campo fotovoltaico, número de cadenas: {strings}",
    "check.cable.array_open": (
        "Cable del campo fotovoltaico, número de cadenas que convendría (está abierto): {strings}"
    ),
    "check.cable.grid": "Cable de CA con la red eléctrica",
    "check.cable.generator": "Cable de CA con el grupo electrógeno",
    "check.cable.drop": "Cable de bajada",
    "check.cable_drop.compared": (
        "{cable}, {length_m:g} m de {section_mm2:g} mm2 ({ohm:.3f} ohm a {conductor_c:g} °C): tensión perdida a "
        "{current_a} A y {voltage_v} V"
    ),
    "check.cable_drop.why": (
        "La tensión perdida en el cable es potencia perdida de por vida, y con demasiado poca el motor se para."
    ),
    "check.cable_drop.source": "práctica habitual, sin fuente; resistencia según IEC 60228",
    "check.ac_cable_drop.source": (
        "IEC 60364-5-52 anexo G, usos distintos del alumbrado en red pública; resistencia según IEC 60228"
    ),
    "check.cable_ampacity.compared": (
        "{cable}, {section_mm2:g} mm2, instalación {installation}, a {ambient_c:.0f} °C: corriente admisible, frente "
        "a la corriente de cálculo"
    ),
    "check.cable_ampacity.compared_grouped": (
        "{cable}, {section_mm2:g} mm2, instalación {installation}, a {ambient_c:.0f} °C, {circuits} circuitos juntos "
        "(factor {factor:g}): corriente admisible, frente a la corriente de cálculo"
    ),
    "check.cable_ampacity.why": (
        "Un cable que lleva más que su corriente admisible se sobrecalienta y puede provocar un incendio."
    ),
    "check.cable_ampacity.source": "IEC 60364-5-52, PVC, con los factores de temperatura ambiente y de agrupamiento",
    "check.cable_ampacity.source_datasheet": "la ficha técnica del cable",
    "check.cable.remedy": (
        "una sección de {section_mm2:g} mm2, la menor que cumple caída de tensión y corriente admisible con PVC, "
        "cable instalado por separado, instalación {installation}, a {ambient_c:.0f} °C; no abarca: {not_covered}"
    ),
    "check.cable.remedy_grouped": (
        "una sección de {section_mm2:g} mm2, la menor que cumple caída de tensión y corriente admisible con PVC, con "
        "{circuits} circuitos juntos, instalación {installation}, a {ambient_c:.0f} °C; no abarca: {not_covered}"
    ),
    "check.cable.remedy_none": (
        "un recorrido más corto, u otro cable calculado por un electricista autorizado: ninguna sección hasta 50 mm2 "
        "basta"
    ),
    "check.cable.not_covered.faults": "bucle de defecto a tierra y cortocircuito",
    "check.cable.not_covered.device": "el dispositivo de protección",
    "check.cable.not_covered.outdoors": "aislamiento para CC, sol e intemperie",
    "check.cable.not_covered.ground": "profundidad, conductos y sequedad del terreno",
    "check.cable.not_covered.ground_grouping": "el factor de agrupamiento propio del terreno",
    "check.ac_cable_protection.compared": (
        "Dispositivo de protección del cable de CA, {device}, frente a los {carried_a} A que debe llevar el cable y "
        "los {most_a} A que lo protegen"
    ),
    "check.drop_cable_protection.compared": (
        "Dispositivo de protección del cable de bajada, {device}, frente a los {carried_a} A que debe llevar el cable "
        "y los {most_a} A que lo protegen"
    ),
    "check.ac_cable_protection.compared_not_given": "Dispositivo de protección del cable de CA",
    "check.cable_protection.why": (
        "Un dispositivo demasiado pequeño dispara y para la bomba; uno demasiado grande deja que el cable se queme "
        "antes de disparar."
    ),
    "check.cable_protection.look_for": (
        "busque la corriente nominal en el interruptor automático o el fusible antes del cable; debe ser de al menos "
        "{carried_a} A y como máximo {most_a} A"
    ),
    "check.cable_protection.device.breaker": "un interruptor automático de {rating_a:g} A",
    "check.cable_protection.device.fuse": "un fusible gG de {rating_a:g} A",
    "check.cable_protection.remedy": (
        "{device}, además de la protección propia del motor contra sobrecarga; no abarca: bucle de defecto a tierra y "
        "cortocircuito"
    ),
    "check.cable_protection.remedy_and_cable": (
        "{device}, además de la protección propia del motor contra sobrecarga, y {remedy}"
    ),
    "check.cable_protection.remedy_none": (
        "un dispositivo para más corriente que los de tamaño usual, elegido por un electricista autorizado"
    ),
    "check.cable_protection.source": "IEC 60364-4-43:2008, 433.1: Ib <= In <= Iz e I2 <= 1,45 Iz",
    "check.dc_cable_voltage.compared": (
        "Tensión de circuito abierto de una cadena con frío, frente a la tensión CC para la que está hecho el cable "
        "del campo fotovoltaico"
    ),
    "check.dc_cable_voltage.why": (
        "Un aislamiento que no está hecho para la tensión falla, y un arco de CC no se apaga solo."
    ),
    "check.dc_cable_voltage.look_for": "busque la tensión CC impresa en el cable, como «DC 1500 V»",
    "check.dc_cable_voltage.remedy": "un cable hecho para FV (EN 50618 o IEC 62930, 1500 V CC)",
    "check.dc_cable_voltage.source": "IEC 62548; el cable para FV está hecho para 1500 V CC (EN 50618, IEC 62930)",
    "check.dc_cable_outdoor.compared": "Cable del campo fotovoltaico, frente al sol y la intemperie",
    "check.dc_cable_outdoor.made_for_it": "hecho para ello",
    "check.dc_cable_outdoor.not_made_for_it": "no hecho para ello",
    "check.dc_cable_outdoor.why": (
        "Un aislamiento que el sol y la lluvia desgastan tiene fugas a tierra en pocos años, y da descargas o se quema."
    ),
    "check.dc_cable_outdoor.look_for": "busque «EN 50618», «IEC 62930» o «H1Z2Z2-K» impreso en el cable",
    "check.dc_cable_outdoor.remedy": (
        "un cable hecho para FV (EN 50618 o IEC 62930), o un conducto que resista el sol en toda su longitud"
    ),
    "check.dc_cable_outdoor.source": "IEC 62548; EN 50618 e IEC 62930",
    "check.drop_cable_length.compared": "Longitud del cable de bajada, frente a la profundidad de la bomba",
    "check.drop_cable_length.why": "Un empalme bajo el agua es lo primero que falla.",
    "check.drop_cable_length.remedy": "un cable de bajada de al menos {length_m} m de una sola pieza",
}
