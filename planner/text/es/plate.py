"""Español de la placa de características línea por línea, y del primer resultado: si la bomba sirve para el lugar."""

SENTENCES: dict[str, str] = {
    "plate.not_given": "no dado",
    "plate.printed.range": "{low:g} a {high:g} {unit}",
    "plate.rated_flow.symbol": "Q, Qn",
    "plate.rated_flow.meaning": "caudal a la altura nominal: el caudal con el que contar",
    "plate.rated_flow.asks": "como máximo {limit}, el caudal seguro del pozo perforado",
    "plate.rated_head.symbol": "H, Hn",
    "plate.rated_head.meaning": "altura al caudal nominal: la altura con la que contar",
    "plate.rated_head.asks": "{limit} a {flow} m3/h",
    "plate.largest_flow.symbol": "Qmax",
    "plate.largest_flow.meaning": "caudal sin altura: nunca se debe contar con él",
    "plate.largest_head.symbol": "Hmax",
    "plate.largest_head.meaning": "altura sin caudal: nunca se debe contar con ella, pero la tubería debe soportarla",
    "plate.largest_head.asks": "más de {value} antes de que fluya agua",
    "plate.rated_power.symbol": "P, P1",
    "plate.rated_power.meaning": "lo que toma el motor en el punto nominal; el {percent:.0f} % llega al agua",
    "plate.rated_power.asks": "{value} al caudal que da aquí",
    "plate.dc_supply.symbol": "U CC, PV, Voc",
    "plate.dc_supply.meaning": "la tensión del campo fotovoltaico debe quedar dentro de estos límites",
    "plate.dc_supply.asks": (
        "{hot:.0f} a {cold:.0f} V en trabajo, {open:.0f} V en vacío con frío, {count} módulos en serie"
    ),
    "plate.dc_supply.look_for": "busque «DC», «PV» o «Voc» con voltios",
    "plate.ac_supply.symbol": "U CA, ~",
    "plate.ac_supply.meaning": "la tensión de la red eléctrica o del grupo electrógeno debe quedar dentro",
    "plate.ac_supply.look_for": "busque «AC» o «~» con voltios",
    "plate.phases.symbol": "1~, 3~, ph",
    "plate.phases.meaning": "fases del suministro de CA",
    "plate.phases.look_for": "busque «1~» o «3~»",
    "plate.frequency.symbol": "f, Hz",
    "plate.frequency.meaning": (
        "un motor de CA gira al paso de ella: menos hercios, menos velocidad, mucha menos altura"
    ),
    "plate.frequency.look_for": "busque «Hz»",
    "plate.current.symbol": "I, Imax, A",
    "plate.current.meaning": "lo máximo que puede tomar",
    "plate.current.asks": "{value} a la potencia nominal",
    "plate.current.look_for": "busque «A» o «Amp»",
    "plate.speed.symbol": "n, rpm, 1/min",
    "plate.speed.meaning": "el caudal va con la velocidad, la altura con su cuadrado",
    "plate.speed.asks": "gira despacio con un sol débil",
    "plate.speed.look_for": "busque «rpm» o «1/min»",
    "plate.frame.symbol": 'pulgadas, "',
    "plate.frame.meaning": "clase de tamaño del motor; no entra en un entubado de menos de {millimetres:.0f} mm",
    "plate.frame.asks": "entra en un entubado de {value}",
    "plate.frame.asks_open": "entubado no dado",
    "plate.frame.look_for": "busque el tamaño en pulgadas",
    "plate.insulation.symbol": "Ins. Cl.",
    "plate.insulation.meaning": "el devanado resiste {limit_c} °C (IEC 60085)",
    "plate.insulation.asks": "agua a {water_c:g} °C",
    "plate.insulation.look_for": "busque «Ins. Cl.» y una letra",
    "plate.ingress.symbol": "IP",
    "plate.ingress.meaning": "{solids}; {water} (IEC 60529)",
    "plate.ingress.asks": "cuelga bajo el agua de forma permanente",
    "plate.ingress.look_for": "busque «IP» y dos cifras",
    "plate.liquid.symbol": "t max",
    "plate.liquid.meaning": "agua más caliente queda fuera de su servicio",
    "plate.liquid.asks": "agua a {water_c:g} °C",
    "plate.liquid.look_for": "busque «max. liquid temp.»",
    "plate.submergence.symbol": "min. submergence",
    "plate.submergence.meaning": "agua que debe quedar por encima de la aspiración",
    "plate.submergence.asks": "{value} quedan por encima",
    "plate.submergence.look_for": "busque «min. submergence», a menudo solo en el manual",
    "plate.asked_by": "{value} ({source})",
    "plate.holds.pass": "cumple",
    "plate.holds.caution": "advertencia",
    "plate.holds.fail": "no cumple",
    "plate.holds.not given": "no dado",
    "plate.holds.open": "-",
    "plate.heading": "La placa, línea por línea",
    "plate.column.symbol": "En la placa",
    "plate.column.printed": "Impreso",
    "plate.column.meaning": "Qué significa",
    "plate.column.asks": "Qué pide este lugar",
    "plate.column.holds": "Aquí",
    "plate.solids.0": "sin protección contra sólidos",
    "plate.solids.1": "impide el paso de cuerpos de más de 50 mm, como el dorso de una mano",
    "plate.solids.2": "impide el paso de cuerpos de 12,5 mm y más, como un dedo",
    "plate.solids.3": "impide el paso de cuerpos de 2,5 mm y más, como una herramienta",
    "plate.solids.4": "impide el paso de cuerpos de 1 mm y más, como un alambre",
    "plate.solids.5": "protegido contra el polvo",
    "plate.solids.6": "estanco al polvo",
    "plate.solids.X": "sólidos no indicados",
    "plate.water.0": "sin protección contra el agua",
    "plate.water.1": "contra gotas que caen verticalmente",
    "plate.water.2": "contra gotas, con inclinación de hasta 15 grados",
    "plate.water.3": "contra agua pulverizada hasta 60 grados de la vertical",
    "plate.water.4": "contra salpicaduras desde todos los lados",
    "plate.water.5": "contra chorros",
    "plate.water.6": "contra chorros potentes",
    "plate.water.7": "resiste la inmersión temporal",
    "plate.water.8": "resiste la inmersión continua, en las condiciones que indica el fabricante",
    "plate.water.9": "contra chorros calientes de alta presión, lo que nada dice de la inmersión",
    "plate.water.X": "agua no indicada",
    # whether the pump fits
    "finding.contradiction": "Las cifras de esta placa se contradicen entre sí: {fault}.",
    "finding.cannot_lift": (
        "Esta bomba no puede elevar el agua aquí: alcanza {most} m como máximo, sin caudal, y el lugar exige {lift} m "
        "antes de que fluya agua."
    ),
    "finding.too_weak": "Esta bomba es demasiado débil: a {flow} m3/h alcanza {given} m, el lugar exige {needed} m.",
    "finding.cannot_draw": (
        "Esta bomba no da agua aquí: el agua en reposo está a {level:.1f} m de profundidad, y no cubre la aspiración "
        "a {depth:g} m."
    ),
    "finding.cannot_start": (
        "Esta bomba no da agua aquí: los {limit:g} W que el controlador puede darle no suben el agua."
    ),
    "finding.short": (
        "Esta bomba se queda un poco corta: a {flow} m3/h alcanza {given} m, el lugar exige {needed} m; se estabiliza "
        "en {duty} m3/h."
    ),
    "finding.over_yield": (
        "Esta bomba está hecha para más de lo que puede dar el pozo perforado: {rated} m3/h nominales, {safe} m3/h de "
        "caudal seguro."
    ),
    "finding.over": (
        "Esta bomba eleva {times} lo que necesita el lugar: a {flow} m3/h podría alcanzar {given} m ({most} m sin "
        "caudal), el lugar exige {needed} m."
    ),
    "finding.times": "{times} veces",
    "finding.twice": "el doble de",
    "finding.fits": "Esta bomba sirve: a {flow} m3/h alcanza {given} m, el lugar exige {needed} m.",
    "finding.would_fit": (
        "Lo que serviría: una bomba con valores nominales de unos {head} m a {flow} m3/h, con un motor que tome unos "
        "{power} kW si el {share} % llega al agua."
    ),
}
