"""Español de las comprobaciones de pozo perforado, refrigeración, tanque y agua, y de lo que comparten."""

SENTENCES: dict[str, str] = {
    # what all checks of a site share
    "basis.duty_flow": "{flow} m3/h (el caudal de funcionamiento)",
    "basis.planned_flow": "{flow} m3/h (el caudal con el que contar con una bomba que lo eleve)",
    "basis.drawn_flow": "{flow} m3/h (el caudal que la bomba extraería)",
    "basis.coldest_given": "{temperature} °C, tal como se dio",
    "basis.coldest_of_weather": (
        "{temperature} °C, la hora más fría de los datos meteorológicos menos {allowance} K (no se dio ninguna)"
    ),
    "basis.better_pump": (
        "una bomba con valores nominales de unos {head} m a {flow} m3/h (unos {power} kW si el {share} % llega al agua)"
    ),
    # borehole
    "check.specific_capacity.compared": (
        "Descenso según un caudal específico de {given:g} m3/h por m al caudal seguro de {flow:g} m3/h, frente a los "
        "{there_m:.1f} m de agua por encima de la aspiración"
    ),
    "check.specific_capacity.why": (
        "Escrito al revés, hace parecer fuerte un pozo débil, y la bomba se cuelga donde queda en seco."
    ),
    "check.specific_capacity.remedy": (
        "lea de nuevo la prueba de bombeo: si dice {given:g} m de descenso por m3/h, el caudal específico es "
        "{inverse}, y el caudal seguro hace descender el agua {drawdown_m:.1f} m"
    ),
    "check.specific_capacity.source": (
        "los datos del lugar; la duda por debajo del {percent:.0f} % es un supuesto, práctica habitual"
    ),
    "check.safe_yield.compared": (
        "Caudal que la bomba da aquí a plena velocidad, frente al caudal seguro del pozo perforado"
    ),
    "check.safe_yield.compared_rated": "Caudal nominal de la bomba, frente al caudal seguro del pozo perforado",
    "check.safe_yield.why": (
        "Bombear en exceso arrastra arena, deja la bomba en seco y puede arruinar el pozo para siempre."
    ),
    "check.safe_yield.remedy_speed": (
        "ajuste la velocidad máxima del variador al {speed} %, o una bomba de menos caudal"
    ),
    "check.safe_yield.remedy_pump": (
        "una bomba de caudal nominal no mayor que {flow} m3/h, a unos {head} m; hasta entonces, un variador o una "
        "válvula que la mantenga en {limit} m3/h"
    ),
    "check.safe_yield.source": (
        "los datos del lugar (prueba de bombeo); una bomba con caudal nominal superior al seguro no cumple; una que "
        "se puede limitar por su velocidad, sí"
    ),
    "check.pumping_level.compared": "Profundidad del agua en {month} a {flow}, frente a la aspiración de la bomba",
    "check.pumping_level.why": "Una bomba que toma aire se desceba, funciona en seco y se quema.",
    "check.pumping_level.source": "los datos del lugar",
    "check.deeper.remedy": "coloque la bomba {by} m más abajo, con la tubería y el cable correspondientes, o {less}",
    "check.deeper.remedy_if_bottom": (
        "coloque la bomba {by} m más abajo, con la tubería y el cable correspondientes, una vez que el registro de "
        "perforación muestre que el fondo está más abajo, o {less}"
    ),
    "check.deeper.remedy_if_screen": (
        "coloque la bomba {by} m más abajo, con la tubería y el cable correspondientes, una vez que el registro de "
        "perforación muestre que el filtro está más abajo, o {less}"
    ),
    "check.deeper.remedy_if_both": (
        "coloque la bomba {by} m más abajo, con la tubería y el cable correspondientes, una vez que el registro de "
        "perforación muestre que el fondo y el filtro están más abajo, o {less}"
    ),
    "check.deeper.remedy_shallow": "{less}: el pozo perforado no tiene profundidad para colgar la bomba más abajo",
    "check.deeper.remedy_in_screen": (
        "{less}: más abajo, la bomba colgaría en el filtro, lo que arrastra arena y deja el motor caliente"
    ),
    "check.deeper.less": "bombee menos",
    "check.deeper.less_held": (
        "bombee menos (la simulación horaria la limita a {flow} m3/h: un variador ajustado a como máximo el {speed} % "
        "de la velocidad y una protección contra marcha en seco)"
    ),
    "check.submergence.compared": "Agua por encima de la aspiración en {month} a {flow}, frente a la que pide la bomba",
    "check.submergence.why": "Muy poca agua por encima de la aspiración arrastra aire y hace cavitar la bomba.",
    "check.submergence.look_for": "busque «minimum submergence» o NPSH en la ficha técnica de la bomba",
    "check.submergence.source": "la placa de características de la bomba",
    "check.level_through_life.compared": (
        "Profundidad del agua en {month} del último año a {flow}, con el nivel estático bajando {decline} m y el "
        "caudal específico {loss} % al año, frente a la aspiración menos lo que debe quedar por encima de ella"
    ),
    "check.level_through_life.compared_dry": (
        "Profundidad del agua en {month} del último año a {flow}, con el nivel estático bajando {decline} m y el "
        "caudal específico {loss} % al año, frente a la aspiración menos lo que debe quedar por encima de ella; "
        "demasiado profunda desde el año {year}"
    ),
    "check.level_through_life.why": (
        "Una bomba colgada para el agua de hoy queda en seco en años posteriores, y la simulación horaria la hace "
        "bombear cada vez menos."
    ),
    "check.level_through_life.source": (
        "bajadas tal como se indicaron o se supusieron; un pozo que se limpia a tiempo baja menos"
    ),
    "check.screen.compared": "Profundidad del agua en {month} a {flow}, frente a la parte superior del filtro",
    "check.screen.why": "Un filtro que queda en seco se obstruye y deja entrar aire en el agua.",
    "check.screen.look_for": "busque la profundidad del filtro en el registro de perforación",
    "check.screen.source_log": "el registro de perforación",
    "check.screen.remedy": "bombee menos, de modo que el agua quede por encima del filtro",
    "check.screen.source": "los datos del lugar; mantenerlo mojado es práctica habitual, sin fuente",
    "check.casing_clearance.compared_open": "Diámetro interior del entubado, frente al diámetro exterior de la bomba",
    "check.casing_clearance.compared": (
        "Diámetro interior del entubado, frente al diámetro exterior de la bomba, {outer} mm, y {room} mm de holgura"
    ),
    "check.casing_clearance.why": "Una bomba que se atasca no se puede volver a izar y puede costar el pozo.",
    "check.casing_clearance.source_open": "la placa de características de la bomba y los datos del lugar",
    "check.casing_clearance.remedy": "una bomba de como máximo {outer} mm de diámetro exterior",
    "check.casing_clearance.source": (
        "la placa de características de la bomba (diámetro: NEMA MG 1 parte 18); la holgura es práctica habitual, sin "
        "fuente"
    ),
    "check.motor_size.look_for_casing": "busque el diámetro interior del entubado en el registro de perforación",
    "check.motor_size.look_for_motor": "busque el diámetro exterior o el tamaño en pulgadas en la placa",
    "check.motor_size.look_for_both": (
        "busque el diámetro interior del entubado en el registro de perforación y el diámetro exterior o el tamaño en "
        "pulgadas en la placa"
    ),
    "check.below_motor.compared": "Pozo que queda por debajo del motor",
    "check.below_motor.compared_intake": (
        "Pozo que queda por debajo de la aspiración, de lo que hay que restar la longitud del motor"
    ),
    "check.below_motor.why": "La arena se acumula en el fondo; un motor metido en ella se sobrecalienta y se atasca.",
    "check.below_motor.look_for": "busque la profundidad del pozo en el registro de perforación, o sondéelo",
    "check.below_motor.source_log": "el registro de perforación",
    "check.below_motor.look_for_length": "busque la longitud del motor en el dibujo de la ficha técnica",
    "check.below_motor.source_plate": "la placa de características de la bomba",
    "check.below_motor.remedy": "coloque la bomba {by} m más arriba",
    "check.below_motor.source": (
        "los datos del lugar; {sump} m de cámara de decantación es práctica habitual, sin fuente"
    ),
    "check.daily_limit.compared": (
        "Agua extraída en el mes de mayor demanda, {first} m3/día en el primer año y {most} como máximo, frente al "
        "límite diario"
    ),
    "check.daily_limit.compared_over": (
        "Agua extraída en el mes de mayor demanda, {first} m3/día en el primer año y {most} como máximo, frente al "
        "límite diario; demasiada desde el año {year}"
    ),
    "check.daily_limit.compared_open": (
        "Agua extraída en el mes de mayor demanda, {first} m3/día en el primer año y {most} como máximo, frente al "
        "permiso"
    ),
    "check.daily_limit.why": "Un permiso que se sobrepasa se puede retirar, y con él se pierde el acuífero.",
    "check.daily_limit.look_for": (
        "busque el volumen diario en el permiso de extracción o en el informe de la prueba de bombeo"
    ),
    "check.daily_limit.source_permit": "el permiso de extracción",
    "check.daily_limit.remedy": "un permiso para {volume}, o menos demanda",
    "check.daily_limit.source": "los datos del lugar (permiso o prueba)",
    # cooling of the motor
    "check.motor_cooling.compared": (
        "Velocidad del agua junto al motor en el entubado a {flow}, frente a la que lo enfría"
    ),
    "check.motor_cooling.compared_small": (
        "Velocidad del agua junto al motor en el entubado a {flow}, frente a la que lo enfría; un motor de cuatro "
        "pulgadas de menos de 3 hp no pide ninguna"
    ),
    "check.motor_cooling.compared_beside": (
        "Velocidad del agua junto al motor en el entubado a {flow}, frente a la que lo enfría; la aspiración está "
        "junto al filtro o por debajo de él, de modo que el agua no pasa por el motor"
    ),
    "check.motor_cooling.compared_small_beside": (
        "Velocidad del agua junto al motor en el entubado a {flow}, frente a la que lo enfría; un motor de cuatro "
        "pulgadas de menos de 3 hp no pide ninguna; la aspiración está junto al filtro o por debajo de él, de modo "
        "que el agua no pasa por el motor"
    ),
    "check.motor_cooling.compared_sleeve": (
        "Velocidad del agua junto al motor en la camisa de refrigeración a {flow}, frente a la que lo enfría"
    ),
    "check.motor_cooling.compared_sleeve_small": (
        "Velocidad del agua junto al motor en la camisa de refrigeración a {flow}, frente a la que lo enfría; un "
        "motor de cuatro pulgadas de menos de 3 hp no pide ninguna"
    ),
    "check.motor_cooling.why": (
        "Un motor sumergible se enfría con el agua que pasa junto a él; en agua quieta se quema su devanado."
    ),
    "check.motor_cooling.remedy": (
        "una camisa de refrigeración de como máximo {width} mm de diámetro interior sobre el motor"
    ),
    "check.motor_cooling.remedy_if_room": (
        "una camisa de refrigeración de como máximo {width} mm de diámetro interior sobre el motor, si el entubado "
        "tiene espacio para ella"
    ),
    "check.motor_cooling.remedy_motor": (
        "un motor menor, o uno que su fabricante admita para este caudal y esta agua: no cabe ninguna camisa de "
        "refrigeración"
    ),
    "check.motor_cooling.source": (
        "0,25 ft/s para motores de 4 pulgadas desde 3 hp, 0,5 ft/s para los mayores: práctica habitual, sin fuente; "
        "los datos del lugar"
    ),
    # tank
    "check.irradiation.compared": (
        "Irradiación de {month}, el mes que más se aparta de la climatología de la región: {given} frente a {usual} "
        "kWh/m2/día"
    ),
    "check.irradiation.compared_not": "Irradiación, frente a la climatología de la región",
    "check.irradiation.why": (
        "El campo fotovoltaico se dimensiona con estas cifras; una unidad o un mes equivocados no se ven en ninguna "
        "otra comprobación."
    ),
    "check.irradiation.source": (
        "una climatología de 3 por 3 grados (NASA MERRA-2, 2011-2015); {limit:g} % es un supuesto, por encima del 29 "
        "% hallado en tres años típicos"
    ),
    "check.irradiation.above": (
        "su {month} está un {apart} % por encima de lo que tiene esta región: mire si las cifras son kWh/m2 por día "
        "en un plano horizontal (1 kWh = 3,6 MJ), empiezan en enero y son de este lugar, y mire los signos de su "
        "latitud y longitud"
    ),
    "check.irradiation.below": (
        "su {month} está un {apart} % por debajo de lo que tiene esta región: mire si las cifras son kWh/m2 por día "
        "en un plano horizontal (no horas de sol, ni sumas de un mes), empiezan en enero y son de este lugar"
    ),
    "check.irradiation.measure": (
        "la irradiación es una estimación a partir de esa misma climatología: mídala o descárguela antes de "
        "comprometer dinero (planner weather --fetch, o una estación cercana)"
    ),
    "check.irradiation.elsewhere": (
        "la climatología no tiene nada para este lugar: compare las cifras con una segunda fuente, como planner "
        "weather --fetch o una estación cercana"
    ),
    "check.air_temperature.compared": (
        "Aire de {month}, el mes que más se aparta de la climatología de la región: {given} frente a {usual} °C a "
        "esta altitud"
    ),
    "check.air_temperature.compared_not": "Temperatura del aire, frente a la climatología de la región",
    "check.air_temperature.why": "Los módulos y los cables se juzgan a estas temperaturas.",
    "check.air_temperature.source": (
        "una climatología de 3 por 3 grados (ERA5, 2000-2025; contiene información modificada del Copernicus Climate "
        "Change Service), 6,5 K/km de altitud; {limit:g} K es un supuesto, por encima de los 4 K hallados en tres "
        "años típicos"
    ),
    "check.air_temperature.above": (
        "su {month} es {apart} K más cálido que esta región: mire si las cifras son grados Celsius, medias de día y "
        "noche, y empiezan en enero, y mire la altitud"
    ),
    "check.air_temperature.below": (
        "su {month} es {apart} K más frío que esta región: mire si las cifras son grados Celsius, medias de día y "
        "noche, y empiezan en enero, y mire la altitud"
    ),
    "check.air_temperature.measure": (
        "la temperatura es una estimación a partir de esa misma climatología: mídala o descárguela antes de "
        "comprometer dinero"
    ),
    "check.air_temperature.elsewhere": (
        "la climatología no tiene nada para este lugar: compare las cifras con una segunda fuente"
    ),
    "check.days_held.compared": (
        "Demanda del mes de mayor demanda del primer año que guardan {volume} m3: {hours} horas"
    ),
    "check.days_held.compared_open": (
        "Demanda del mes de mayor demanda del primer año que guardan {volume} m3 (el volumen está abierto: el menor "
        "que conviene): {hours} horas"
    ),
    "check.days_held.why": "El tanque abastece a los usuarios durante días nublados, cortes y reparaciones.",
    "check.days_held.remedy": "un tanque de {volume} m3, o menos donde haya una segunda fuente disponible",
    "check.days_held.source": (
        "demanda de un día: Recommended Standards for Water Works 7.0.1, de memoria; la simulación horaria dice "
        "cuánto basta"
    ),
    "check.busiest_hour.compared": (
        "Volumen del tanque, frente al agua extraída en la hora de mayor consumo del primer año"
    ),
    "check.busiest_hour.why": "Un tanque que se vacía en una hora deja a los usuarios sin agua cada día.",
    "check.busiest_hour.remedy": "un tanque de al menos {volume} m3",
    "check.busiest_hour.source": "los datos del lugar",
    "check.refill_time.compared": "Horas de bombeo que llenan {volume} m3 a {flow}, sin que se extraiga nada",
    "check.refill_time.why": "Un tanque que tarda mucho en llenarse queda bajo después de cada corte.",
    "check.refill_time.remedy": "un caudal de al menos {flow} m3/h",
    "check.refill_time.remedy_smaller": "un tanque de como máximo {volume} m3, o un caudal de al menos {flow} m3/h",
    "check.refill_time.remedy_only_smaller": "un tanque de como máximo {volume} m3",
    "check.refill_time.remedy_second": (
        "un segundo pozo perforado u otra fuente de agua: {flow} m3/h, que lo llenaría a tiempo, supera el caudal "
        "seguro de este"
    ),
    "check.refill_time.source": "práctica habitual, sin fuente",
    "check.inlet_height.compared": "Entrada del tanque usada en la altura, frente al terreno al final del trazado",
    "check.inlet_height.why": (
        "Una entrada tomada demasiado baja en la altura deja a la bomba corta en el último metro."
    ),
    "check.inlet_height.look_for": "nivele el lugar del tanque respecto al pozo perforado, y dé el perfil del trazado",
    "check.inlet_height.remedy": (
        "nivele de nuevo: la entrada está a {ground} m o más sobre el terreno junto al pozo perforado, según la "
        "altura del propio tanque"
    ),
    "check.inlet_height.source": "los datos del lugar",
    "check.outlet_head.compared": (
        "Altura de la salida del tanque sobre los grifos, antes de cualquier pérdida en las tuberías hasta ellos"
    ),
    "check.outlet_head.why": "Los grifos sin altura dan un hilo de agua, y los lejanos nada.",
    "check.outlet_head.look_for": "nivele la salida respecto al grifo más alto",
    "check.outlet_head.remedy": "suba el tanque {by} m, que la bomba deberá entonces elevar también",
    "check.outlet_head.source": (
        "7 m para una planta: manual de abastecimiento de agua de CPHEEO; 2 m es práctica habitual, sin fuente"
    ),
    # water
    "check.per_person.compared_pupils": "Agua por persona y día de {user}, el usuario con menos para su tipo",
    "check.per_person.compared_below_basic": (
        "Agua por persona y día de {user} (menos que el servicio básico), el usuario con menos para su tipo"
    ),
    "check.per_person.compared_basic": (
        "Agua por persona y día de {user} (servicio básico), el usuario con menos para su tipo"
    ),
    "check.per_person.compared_intermediate": (
        "Agua por persona y día de {user} (servicio intermedio o superior), el usuario con menos para su tipo"
    ),
    "check.per_person.why": "Con muy poca agua, la gente busca el resto en lugares inseguros.",
    "check.per_person.remedy": "dé {volume}, o demuestre que tienen otra fuente segura",
    "check.per_person.source": (
        "Manual Esfera: 15 L, escuela 3 L por alumno (de memoria); OMS, cantidad de agua doméstica: 20 L básico, 50 L "
        "intermedio"
    ),
    "check.yield_through_life.compared": (
        "Demanda del mes de mayor demanda en su máximo, frente al caudal seguro en 20 horas: basta durante todo el "
        "período de análisis"
    ),
    "check.yield_through_life.compared_short": (
        "Demanda del mes de mayor demanda en su máximo, frente al caudal seguro en 20 horas: ya no basta desde el año "
        "{year}"
    ),
    "check.yield_through_life.compared_limit": (
        "Demanda del mes de mayor demanda en su máximo, frente al límite diario: basta durante todo el período de "
        "análisis"
    ),
    "check.yield_through_life.compared_limit_short": (
        "Demanda del mes de mayor demanda en su máximo, frente al límite diario: ya no basta desde el año {year}"
    ),
    "check.yield_through_life.why": (
        "Un pozo que no puede seguir el crecimiento deja cortos a los usuarios, o se bombea en exceso."
    ),
    "check.yield_through_life.remedy": (
        "un segundo pozo perforado u otra fuente de agua antes del año {year}, o mantenga la demanda en {volume} m3/día"
    ),
    "check.yield_through_life.source": (
        "los datos del lugar; 20 horas por día, para dejar que el nivel se recupere, es práctica habitual, sin fuente"
    ),
}
