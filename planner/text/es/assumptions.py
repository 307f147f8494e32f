"""Español de lo que se dejó fuera de un escenario y se dedujo: de qué, y con qué regla."""

SENTENCES: dict[str, str] = {
    "assumed.place": "el nombre del proyecto",
    "assumed.time_zone": "de las coordenadas",
    "assumed.weather": (
        "no se dieron datos meteorológicos: estimados a partir de las coordenadas; mídalos o descárguelos antes de "
        "comprometer dinero"
    ),
    "assumed.user": "el tipo de usuario",
    "assumed.user.people": "Personas",
    "assumed.user.livestock": "Animales",
    "assumed.user.irrigation": "Campo regado",
    "assumed.user.volume": "Agua por volumen",
    "assumed.specific_capacity": (
        "{flow} m3/h con {drawdown} m de descenso; un solo escalón no muestra cómo crece el descenso con otros caudales"
    ),
    "assumed.safe_yield": (
        "el caudal de la prueba de bombeo, {flow} m3/h: una prueba corta dice poco de una estación seca; haga "
        "determinar el caudal seguro con una prueba de un día o más"
    ),
    "assumed.pump_name": "Bomba",
    "assumed.pump_named": "no se dio nombre",
    "assumed.pump_kind": (
        "caudal máximo {ratio} veces el nominal: práctica habitual, sin fuente; mire la bomba o su ficha técnica"
    ),
    "assumed.controller_window": "la tensión CC de la placa de la bomba",
    "assumed.riser": "Tubería de columna",
    "assumed.main": "Tubería de impulsión",
    "assumed.segments": (
        "una tubería de columna de la profundidad de la bomba y una tubería de impulsión de pipeline.length_m; sin "
        "contar accesorios"
    ),
    "assumed.pipe": (
        "{velocity} m/s a {flow} m3/h (alrededor de 1 m/s o menos: práctica habitual, sin fuente), clase de presión "
        "{bar} bar para la bomba contra válvula cerrada; tamaños de {standard}"
    ),
    "assumed.sources": "no se dio ninguna fuente: el sol solo",
    "assumed.module": (
        "un módulo genérico de cifras redondas, de la ficha técnica de nadie: práctica habitual, sin fuente"
    ),
    "assumed.series": (
        "de {fewest} a {most} caben en las tensiones del controlador, y en la corriente de la placa, en un mediodía "
        "caluroso y una mañana fría; de ellos, la cadena que más se acerca a {ratio} veces la potencia absorbida por "
        "la bomba"
    ),
    "assumed.series_by_power": (
        "lo que más se acerca a {ratio} veces la potencia absorbida por la bomba; no se conocen todas las tensiones "
        "del controlador: mire si soporta de {fewest} a {most}"
    ),
    "assumed.series_chosen": "elegido junto con el número de cadenas, entre los que pasan las comprobaciones",
    "assumed.string_fuse": (
        "el menor fusible gPV usual (IEC 60269-6) de 1,5 a 2,4 veces la corriente de cortocircuito del módulo (IEC "
        "62548, de memoria), en los dos polos de cada cadena; con menos de tres cadenas no hace falta ninguno"
    ),
    "assumed.section_chosen": (
        "la menor que pasa las comprobaciones de corriente admisible y caída de tensión para el campo elegido"
    ),
    "assumed.section": (
        "el menor tamaño de IEC 60228 que soporta la corriente (IEC 60364-5-52) y pierde como mucho el {percent:g} % "
        "de la tensión"
    ),
    "assumed.planes": (
        "hacia el ecuador, inclinado según la latitud pero al menos 10°, a partir de lo cual la lluvia lava el "
        "vidrio: práctica habitual, sin fuente"
    ),
    "assumed.tank": "no se dio ningún tanque: se elige uno",
    "assumed.rating": (
        "el menor que hace funcionar y arrancar un motor que toma {need:.1f} kW, y de cuya potencia queda el "
        "{percent:.0f} % a esta altitud y con {hottest:.0f} °C"
    ),
    "assumed.level": "una quinta parte del tanque desde el nivel que se da: práctica habitual, sin fuente",
    "assumed.tank_sizes": "tamaños usuales: práctica habitual, sin fuente",
    "assumed.price": "de {listed}",
    "assumed.stand_in_price": "la estructura está en prices.pv_per_kwp",
}
