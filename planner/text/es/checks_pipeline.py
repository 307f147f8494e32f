"""Español de las comprobaciones de altura, tuberías y cadenas en paralelo."""

SENTENCES: dict[str, str] = {
    # head
    "head_part.part": "{name} {head}",
    "head_part.static": "nivel estático, media del año",
    "head_part.deepest": "más bajo en el mes más profundo",
    "head_part.drawdown": "descenso",
    "head_part.rise": "subida hasta la entrada del tanque",
    "head_part.friction": "fricción en {segment}",
    "head_part.fittings": "accesorios",
    "head_part.residual": "altura residual en la entrada",
    "head_part.high_point": "para salvar el punto alto del trazado",
    "check.lift.compared": (
        "Altura necesaria antes de que fluya agua en {month}, frente a la altura de la bomba sin caudal"
    ),
    "check.lift.why": "Por debajo de esta altura no llega ni una gota al tanque.",
    "check.lift.source": "la placa de características de la bomba (altura máxima)",
    "check.rated_head.compared": (
        "Altura de la bomba al caudal nominal de {flow} m3/h, frente a la altura necesaria allí en {month} [m]: {parts}"
    ),
    "check.rated_head.compared_yield": (
        "Altura de la bomba al {share} % del caudal seguro del pozo perforado, porque el caudal nominal es mayor, "
        "{flow} m3/h, frente a la altura necesaria allí en {month} [m]: {parts}"
    ),
    "check.rated_head.why": (
        "Una bomba trabaja mejor cerca de su altura nominal; si le falta altura, el caudal cae; muy por encima de la "
        "necesaria, se desperdicia potencia."
    ),
    "check.rated_head.remedy_short": (
        "cuente con el caudal menor del punto de funcionamiento, o una bomba con valores nominales de unos {head} m a "
        "{flow} m3/h (unos {power} kW si el {share} % llega al agua)"
    ),
    "check.rated_head.remedy_over": (
        "una bomba con valores nominales de unos {head} m a {flow} m3/h (unos {power} kW si el {share} % llega al "
        "agua); esta debe limitarse en velocidad"
    ),
    "check.rated_head.source": (
        "calculado con los datos del lugar; si falta más de la décima parte, no cumple; si sobra más de un tercio, es "
        "una advertencia: práctica habitual, sin fuente"
    ),
    "check.power_limit.compared": (
        "Potencia máxima de salida del controlador, frente a la que toma la bomba a {flow} m3/h"
    ),
    "check.power_limit.why": (
        "Con menos potencia la bomba se queda por debajo de su caudal, y con mucha menos no llega nada de agua."
    ),
    "check.power_limit.remedy": "un controlador de al menos {power} W adecuado para el motor",
    "check.power_limit.source": "la ficha técnica del controlador; si es tan poca que no llega agua, no cumple",
    "check.duty_flow.compared": (
        "Punto de funcionamiento en {month}, {flow} m3/h a {head} m ({limited}), frente al intervalo de {low} a "
        "{high} % de los {rated} m3/h nominales"
    ),
    "check.duty_flow.why": (
        "Lejos de su punto nominal una bomba desperdicia potencia y se desgasta; cuente con el caudal nominal, no con "
        "el máximo."
    ),
    "check.duty_flow.source": (
        "la placa de características de la bomba (caudal nominal); el intervalo es práctica habitual, sin fuente"
    ),
    "check.speed.compared": "Velocidad necesaria para {flow} m3/h, frente a la velocidad mínima de la bomba",
    "check.speed.why": (
        "Por debajo de su velocidad mínima no se puede frenar más la bomba; una válvula debe entonces destruir la "
        "altura que sobra."
    ),
    "check.speed.source": "la placa de características de la bomba (intervalo de velocidad)",
    "check.wire_to_water.compared": (
        "Rendimiento de la energía eléctrica al agua en el punto de funcionamiento, frente al {share} % del que hay "
        "en el punto nominal ({rated} %)"
    ),
    "check.wire_to_water.why": (
        "Cada punto que se pierde aquí se paga en módulos FV, energía o combustible durante toda la vida."
    ),
    "check.wire_to_water.source": (
        "la placa de características de la bomba (punto nominal); la proporción es práctica habitual, sin fuente"
    ),
    "check.hours_a_day.compared": (
        "Horas por día a {flow} en el mes de mayor demanda: {first} en el primer año, {last} como máximo"
    ),
    "check.hours_a_day.why": (
        "Una bomba que debe funcionar día y noche no tiene reserva, y el pozo perforado no tiene tiempo de recuperarse."
    ),
    "check.hours_a_day.remedy": "un caudal de al menos {flow} m3/h, o menos demanda en los últimos años",
    "check.hours_a_day.remedy_less": (
        "menos demanda, o un segundo pozo perforado u otra fuente de agua: {flow} m3/h, que bastaría, supera el "
        "caudal seguro de {safe} m3/h del pozo"
    ),
    "check.hours_a_day.source": (
        "20 horas por día es práctica habitual, sin fuente; más de 24 en el primer año no cumple"
    ),
    "check.pipe_length.compared": (
        "Longitud de toda la tubería, frente a la profundidad de la bomba y el camino hasta el tanque"
    ),
    "check.pipe_length.why": "Tubería que no se cuenta es fricción que no se cuenta.",
    "check.pipe_length.remedy": "añada {length} m a las longitudes de tubería",
    "check.pipe_length.source": "los datos del lugar",
    "check.velocity.compared": "Velocidad a {flow} [m/s]: {segments}; frente al intervalo de {slowest} a {fastest} m/s",
    "check.velocity.segment": "{segment} {velocity}",
    "check.velocity.why": (
        "El agua rápida cuesta altura y provoca golpes de ariete; el agua lenta deja que se depositen arena y aire."
    ),
    "check.velocity.remedy_size": "para {segment}, el siguiente tamaño de tubería, {pipe}",
    "check.velocity.remedy_diameter": "para {segment}, un diámetro interior de al menos {diameter} mm",
    "check.velocity.remedy_slow": (
        "nada, donde la fricción deba ser baja; si no, {segment} con un diámetro interior de como máximo {diameter} mm"
    ),
    "check.velocity.source": "EN 805:2000 anexo A, de memoria; 3 m/s: Crane TP-410, servicio general, de memoria",
    # pipeline
    "check.pressure_at_duty.compared": (
        "Presión máxima a {flow}, frente a la presión que soporta la tubería a {temperature} °C; menor margen en "
        "{segment}"
    ),
    "check.pressure_at_duty.compared_open": "Presión máxima a {flow}, en {segment}",
    "check.pressure_at_duty.why": (
        "Una tubería sometida a más que su clase revienta o se deforma hasta un final prematuro."
    ),
    "check.pressure_at_duty.remedy": "{pipes}",
    "check.pressure_at_shut_off.compared": (
        "Presión máxima si se cierra una válvula con la bomba en marcha, frente a la presión que soporta la tubería a "
        "{temperature} °C; menor margen en {segment}"
    ),
    "check.pressure_at_shut_off.compared_open": (
        "Presión máxima si se cierra una válvula con la bomba en marcha, en {segment}"
    ),
    "check.pressure_at_shut_off.why": (
        "Una válvula cerrada por error, o una válvula de flotador, pone sobre la tubería la altura máxima de la bomba."
    ),
    "check.pressure_at_shut_off.remedy": (
        "{pipes}; o un presostato o una válvula de alivio, y ninguna válvula que pueda cerrarse con la bomba en marcha"
    ),
    "check.pipe_class.look_for": "busque «PN» o bar impreso a lo largo de la tubería de {segments}",
    "check.pipe_class.source": "clase de presión de la tubería, reducida para agua caliente: {sources}",
    "check.pipe_class.remedy_named": "{segment}: {pipe} (PN {pressure})",
    "check.pipe_class.remedy_class": "{segment}: tubería, uniones y accesorios de al menos PN {pressure}",
    "check.pipe_class.remedy_material": (
        "{segment}: tubería de {material}, porque {given} no tiene clase con el agua tan caliente"
    ),
    "check.pipe_class.remedy_cooler": (
        "{segment}: agua más fría, porque {given} no tiene clase con el agua tan caliente"
    ),
    "check.surge.compared": (
        "Presión máxima cuando el caudal se detiene de golpe, o la válvula de una tubería se cierra bruscamente: una "
        "subida de {rise} m en {segment} (onda de {speed} m/s)"
    ),
    "check.surge.compared_timed": (
        "Presión máxima cuando el caudal se detiene en {stop} s: una subida de {rise} m en {segment} (onda de {speed} "
        "m/s)"
    ),
    "check.surge.compared_open": (
        "Presión máxima cuando el caudal se detiene de golpe, o la válvula de una tubería se cierra bruscamente, en "
        "{segments}"
    ),
    "check.surge.compared_open_timed": "Presión máxima cuando el caudal se detiene en {stop} s, en {segments}",
    "check.surge.why": (
        "Un corte de energía detiene el agua de golpe; la onda revienta tuberías y arranca uniones, y aspira con la "
        "misma fuerza con que empuja."
    ),
    "check.surge.look_for": "busque la pared (o SDR) y la clase (PN) impresas a lo largo de la tubería",
    "check.surge.remedy": (
        "haga que el caudal se detenga en no menos de {seconds} s, también en un corte de energía (válvula lenta, "
        "parada suave, un calderín de aire para los cortes), o una tubería más ancha"
    ),
    "check.surge.remedy_class": "tubería de una clase superior, o agua más lenta en una tubería más ancha",
    "check.surge.source_open": (
        "Joukowsky 1898 con la celeridad de la onda en la tubería (Korteweg), sin fricción; clase de presión de la "
        "tubería, reducida para agua caliente: {sources}"
    ),
    "check.surge.source": (
        "Joukowsky 1898 con la celeridad de la onda en la tubería (Korteweg), sin fricción; clase de presión de la "
        "tubería, reducida para agua caliente: {sources}; hasta {times} veces la clase es una advertencia, porque la "
        "estimación es un límite superior: práctica habitual, sin fuente"
    ),
    "check.high_points.compared_open": "Puntos altos del trazado, y la presión allí",
    "check.high_points.compared": (
        "Altura de presión mínima a lo largo del trazado con la bomba parada; puntos altos entre los extremos: {count}"
    ),
    "check.high_points.why": (
        "El aire se acumula en un punto alto y estrangula el caudal; una presión inferior a la del aire aspira "
        "suciedad."
    ),
    "check.high_points.look_for": (
        "recorra el trazado con un nivel o un receptor de satélite, y anote la distancia desde el origen y la cota "
        "del terreno"
    ),
    "check.high_points.remedy": "una ventosa a la distancia {places} m",
    "check.high_points.remedy_below": (
        "una ventosa a la distancia {places} m; o tienda allí la tubería más baja, o suba el tanque"
    ),
    "check.high_points.source": (
        "el perfil del trazado; las ventosas en los puntos altos son práctica habitual, sin fuente"
    ),
    "check.profile_length.compared": (
        "Tubería más allá del pozo perforado ({laid} m) y perfil ({chainage} m): su diferencia"
    ),
    "check.profile_length.why": "Si los dos difieren, la fricción y las presiones se calculan para otro trazado.",
    "check.profile_length.remedy": "dé el perfil hasta el tanque, y tramos de la misma longitud",
    "check.profile_length.source": "los datos del lugar; {share} % es práctica habitual, sin fuente",
    # strings in parallel
    "check.strings.remedy": "número de cadenas no mayor que {count}",
    "check.array_current.compared": (
        "Corriente de las cadenas (número: {count}), 1,25 veces la corriente de cortocircuito, frente a la máxima del "
        "controlador"
    ),
    "check.array_current.compared_open": (
        "Corriente de las cadenas (número que convendría, está abierto: {count}), 1,25 veces la corriente de "
        "cortocircuito, frente a la máxima del controlador"
    ),
    "check.array_current.why": (
        "Los bordes brillantes de las nubes dan más que la corriente nominal; las entradas y los fusibles deben "
        "soportarla."
    ),
    "check.array_current.look_for": "busque «max. input current» o «Isc max.» en la placa del controlador",
    "check.array_current.remedy_controller": "otro controlador, o un módulo de menos corriente",
    "check.array_current.source": "la ficha técnica del controlador; 1,25 veces según IEC 62548",
    "check.string_over_current.compared": (
        "Corriente que las demás cadenas (número total: {count}) envían a una defectuosa, frente al fusible en serie "
        "del módulo"
    ),
    "check.string_over_current.compared_open": (
        "Corriente que las demás cadenas (número total que convendría, está abierto: {count}) envían a una "
        "defectuosa, frente al fusible en serie del módulo"
    ),
    "check.string_over_current.compared_few": (
        "Corriente que las demás cadenas (número total: {count}) envían a una defectuosa, frente al fusible en serie "
        "del módulo, que una o dos cadenas no alcanzan"
    ),
    "check.string_over_current.compared_few_open": (
        "Corriente que las demás cadenas (número total que convendría, está abierto: {count}) envían a una "
        "defectuosa, frente al fusible en serie del módulo, que una o dos cadenas no alcanzan"
    ),
    "check.string_over_current.compared_fuse": (
        "Fusible en cada cadena, frente a {least} A y como máximo {most} A para este módulo"
    ),
    "check.string_over_current.why": (
        "Un cortocircuito en una cadena atrae la corriente de todas las demás, que puede incendiar sus módulos y su "
        "cable."
    ),
    "check.string_over_current.look_for": "busque «max. series fuse» en el dorso del módulo",
    "check.string_over_current.remedy": (
        "un fusible gPV (IEC 60269-6) de {rating:g} A, para al menos {volts} V CC, en los dos polos de cada cadena; "
        "no abarca: el cable de una cadena, que debe soportar la corriente nominal del fusible"
    ),
    "check.string_over_current.remedy_fewer": (
        "número de cadenas no mayor que {count} y sin fusible: ningún valor nominal usual sirve"
    ),
    "check.string_over_current.source": (
        "la ficha técnica del módulo; IEC 62548 (fusible de 1,5 a 2,4 veces la corriente de cortocircuito, de memoria)"
    ),
    "check.power_ratio.compared": (
        "Potencia nominal de las cadenas (número: {count}) respecto a la que toma la bomba, frente al intervalo de "
        "{low} a {high}"
    ),
    "check.power_ratio.compared_open": (
        "Potencia nominal de las cadenas (número: {count}; está abierto, se pueden probar de 1 a {largest}) respecto "
        "a la que toma la bomba, frente al intervalo de {low} a {high}"
    ),
    "check.power_ratio.why": (
        "Un campo pequeño rara vez lleva la bomba a plena velocidad; uno grande da potencia que nada puede usar."
    ),
    "check.power_ratio.remedy": "número de cadenas: {count}",
    "check.power_ratio.remedy_nearest": "número de cadenas: {count}, el más próximo que hay",
    "check.power_ratio.remedy_least": (
        "menos módulos en serie donde lo permitan las tensiones, o un módulo menor: una cadena es lo mínimo"
    ),
    "check.power_ratio.source": "práctica habitual, sin fuente",
}
