"""Español del resumen además del de la decisión: títulos, gráficos y estos en palabras."""

SENTENCES: dict[str, str] = {
    "brief.place_people": "{place}. Sirve a {people} personas en el primer año.",
    "brief.days": "Días sin agua suficiente",
    "brief.pay": "Lo que deben pagar los usuarios",
    "brief.turns": "Qué cambiaría la respuesta",
    "brief.options": "Las opciones, la mejor primero",
    "brief.who": "Quién, cuándo, con qué datos",
    "brief.cautions_follow": "Las advertencias del final forman parte de este resumen.",
    # money
    "brief.costs": "Costo del ciclo de vida por partes",
    "brief.costs_alt": (
        "Barras del costo del ciclo de vida de cada opción por partes, una a continuación de otra. {option}, "
        "clasificada primera, cuesta {cost} en total en {years} años; su parte mayor es: {part}."
    ),
    # water
    "brief.water": "Agua por mes y fuente: {option}",
    "brief.water_alt": (
        "Columnas del agua que bombea cada fuente, por mes, media de {years} años, y sobre ellas el agua que falta. "
        "Donde más falta es en {month}: {missing} m3 por día."
    ),
    "brief.water_alt_none_missing": (
        "Columnas del agua que bombea cada fuente, por mes, media de {years} años. Ningún mes falta agua."
    ),
    "brief.water_axis": "m3 por día, media de {years} años",
    "brief.water_missing": "falta",
    # tank
    "brief.tank": "Tanque en su peor quincena: {option}",
    "brief.tank_alt": (
        "Línea del agua en el tanque hora por hora desde el {day} {month} del año {year}, los catorce días con más "
        "agua faltante de todos los años, en los que faltan {missing} m3. En el tanque caben {tank} m3; su nivel más "
        "bajo en estos días es de {lowest} m3."
    ),
    "brief.tank_alt_none_missing": (
        "Línea del agua en el tanque hora por hora desde el {day} {month} del año {year}, los catorce días con el "
        "tanque más bajo de todos los años. No falta agua. En el tanque caben {tank} m3; su nivel más bajo en estos "
        "días es de {lowest} m3."
    ),
    "brief.tank_axis": "m3",
    "brief.tank_days": "días desde el {day} {month} del año {year}",
    "brief.tank_level": "nivel",
    "brief.tank_full": "lleno",
    "brief.tank_missing": "falta ese día",
}
