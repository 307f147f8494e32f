"""Español del método, sus límites y sus términos."""

SENTENCES: dict[str, str] = {
    "method.under": "Calculado con planner {version}, semilla {seed}.",
    "method.cautions": "Advertencias",
    "method.caution": "! Advertencia {number}",
    "method.method": "Método",
    "method.limits": "Límites del modelo",
    "method.words": "Términos",
    "method.weather": "Meteorología",
    "method.weather_file": (
        "Archivo horario: {source}. Donde no tiene irradiancia directa y difusa propias, la global se divide según "
        "Erbs, Klein y Duffie (1982)."
    ),
    "method.weather_means": (
        "Horas obtenidas de doce medias mensuales, de nuevo para cada año: claridad diaria según {law}; horas según "
        "Graham y Hollands (1990) y Knight, Klein y Duffie (1991), directa y difusa según Erbs, Klein y Duffie "
        "(1982), temperatura según Erbs, Klein y Beckman (1983). Se conservan las sumas de los meses."
    ),
    "method.array": "Campo fotovoltaico",
    "method.array_words": (
        "Irradiancia sobre los módulos según {sky}; reflexión en la superficie ({reflection}) según De Soto, Klein y "
        "Beckman (2006) y Marion (2017); temperatura de la célula según Faiman (2008), potencia de un módulo con "
        "cualquier irradiancia y temperatura según Batzelis (2017) a partir de su ficha técnica, y la ecuación de un "
        "diodo de De Soto donde la ventana de tensión del controlador lo mantiene fuera de su mejor punto; todo como "
        "en pvlib. Las sombras, la suciedad, la dispersión, el cableado y la degradación inducida por la luz y la "
        "anual se descuentan según lo indicado."
    ),
    "sky.perez-driesse": "Perez et al. (1990) en la forma continua de Driesse, Jensen y Perez (2024)",
    "sky.haydavies": "Hay y Davies (1980)",
    "reflection.glass": "vidrio simple",
    "reflection.coated_glass": "vidrio con recubrimiento",
    "reflection.none": "sin vidrio (no se cuenta)",
    "method.borehole": "Pozo perforado y tuberías",
    "method.borehole_words": (
        "Descenso s = B Q + C Q2 (Jacob 1947), de un caudal específico o una prueba escalonada. Fricción según "
        "{friction}, pérdidas en los accesorios según sus coeficientes K. Diámetros interiores de los tubos de PE "
        "según ISO 4427-2 y de los de acero según EN 10255."
    ),
    "friction.darcy-weisbach": "Darcy-Weisbach con Colebrook-White (Colebrook 1939)",
    "friction.hazen-williams": "Hazen-Williams",
    "method.pump": "Bomba",
    "pump.centrifugal": "Leyes de afinidad en torno a la curva a velocidad nominal.",
    "pump.helical-rotor": (
        "Desplazamiento positivo: caudal proporcional a la velocidad menos el deslizamiento; el par sigue a la altura."
    ),
    "method.loop": "Simulación horaria",
    "method.loop_words": (
        "Cada hora de cada año: primero bombea el sol; la red eléctrica y el grupo electrógeno respaldan entre los "
        "niveles de arranque y parada, en sus horas y con sus cortes; los usuarios extraen del tanque. Las fuentes "
        "pueden compartir una hora donde el controlador las usa en paralelo. Nada se crea ni se pierde: lo bombeado "
        "es igual a lo entregado, lo perdido en fugas y lo almacenado."
    ),
    "method.generator": "Grupo electrógeno",
    "method.generator_words": (
        "Combustible = parte en vacío x potencia nominal x horas + parte adicional x energía (Skarstein y Uhlen 1989, "
        "de memoria); potencia nominal reducida por altitud y calor; servicios, revisiones generales y reposición por "
        "horas de funcionamiento."
    ),
    "method.sizes": "Elección de tamaños",
    "method.sizes_words": (
        "Donde quedan abiertos: el menor tanque que alcanza el objetivo de servicio, y el número de cadenas y los "
        "niveles del interruptor de flotador de menor costo del ciclo de vida que lo alcanzan. Las opciones que "
        "alcanzan el objetivo se clasifican por costo del ciclo de vida; las que no lo alcanzan van después, por lo "
        "que entregan."
    ),
    "method.money": "Dinero",
    "method.money_words": (
        "Costo del ciclo de vida como en 10 CFR 436 y NIST Handbook 135 (Fuller y Petersen 1995): costo de inversión "
        "en el año 0, todo lo demás a fin de año; reposición al final de cada vida útil; valor residual lineal. Costo "
        "nivelado del agua como costo incremental medio económico (ADB, Handbook for the Economic Analysis of Water "
        "Supply Projects, 1999). Tasas reales y nominales según Fisher."
    ),
    "limit.hours": (
        "Horas, no minutos: dentro de una hora se resuelve el balance de agua, pero no se ve una nube que pasa."
    ),
    "limit.start": (
        "Cada año empieza con lo que el año anterior deja en el tanque; el primero empieza tan lleno como termina."
    ),
    "limit.weather": "Un solo archivo meteorológico se repite cada año; solo las medias mensuales dan años distintos.",
    "limit.nameplate": (
        "Con solo una placa de características, la potencia a carga parcial es un supuesto; son mejores los puntos de "
        "la ficha técnica."
    ),
    "limit.ageing": (
        "Las obras envejecen de manera uniforme, según las bajadas anuales de los datos; un pozo perforado nunca se "
        "limpia."
    ),
    "limit.not_run": "El golpe de ariete, la calidad del agua y las roturas no forman parte de la simulación horaria.",
    "limit_of_money.flows": (
        "Los costos caen a fin de año, los pagos del préstamo son constantes, los impuestos sobre la renta no se "
        "cuentan."
    ),
    "limit.carbon": "El dióxido de carbono de fabricar y transportar los equipos no se cuenta.",
    "limit.inspection": (
        "El programa calcula, no inspecciona: primero van una prueba de bombeo, un levantamiento del trazado y "
        "cotizaciones."
    ),
    "word.source": "fuente",
    "meaning.source": "Sol, red eléctrica o grupo electrógeno.",
    "word.option": "opción de suministro",
    "meaning.option": "Una combinación de fuentes que cubre la misma demanda, como solar + red.",
    "word.top_up": "respaldo",
    "meaning.top_up": "Bombear con la red eléctrica o el grupo electrógeno porque el sol y el tanque no bastan.",
    "word.levels": "nivel de arranque, nivel de parada",
    "meaning.levels": "Niveles del tanque a los que el respaldo arranca y para: el interruptor de flotador.",
    "word.demand_met": "demanda cubierta, déficit",
    "meaning.demand_met": "Agua entregada respecto al agua demandada; el déficit es lo demandado y no entregado.",
    "word.pv_unused": "energía FV no usada",
    "meaning.pv_unused": (
        "Energía FV disponible pero no usada (recortada): tanque lleno, por debajo de la potencia de arranque o por "
        "encima de lo que toma la bomba."
    ),
    "word.static_lift": "altura geométrica",
    "meaning.static_lift": "Desde el nivel estático en el pozo perforado hasta la entrada del tanque.",
    "word.head": "altura manométrica total",
    "meaning.head": "Altura geométrica + descenso + fricción + altura residual.",
    "word.duty_point": "punto de funcionamiento",
    "meaning.duty_point": "Caudal y altura en los que coinciden la bomba y el sistema.",
    "word_of_money.life_cycle_cost": "costo del ciclo de vida",
    "meaning.life_cycle_cost": "Valor actual de todos los costos del período de análisis, menos el valor residual.",
    "word_of_money.net_present_value": "valor actual neto",
    "meaning.net_present_value": "Valor actual de lo que pagan los usuarios, menos el costo del ciclo de vida.",
    "word_of_money.annualised_cost": "costo anualizado",
    "meaning.annualised_cost": "Suma anual constante cuyo valor actual es el costo del ciclo de vida.",
    "word_of_money.levelised_cost": "costo nivelado del agua",
    "meaning.levelised_cost": "Costo del ciclo de vida / valor actual de los m3 entregados, en dinero del año 0.",
    "word_of_money.rate": "tasa interna de retorno",
    "meaning.rate": (
        "Tasa con la que el costo de inversión adicional frente a la referencia iguala los ahorros posteriores."
    ),
    "word_of_money.payback": "período de recuperación",
    "meaning.payback": (
        "Años hasta que el costo de inversión adicional se recupera y sigue recuperado; descontado o no."
    ),
    "word_of_money.residual_value": "valor residual",
    "meaning.residual_value": "Lo que valen los equipos al final: su precio por la parte de vida útil que les queda.",
}
