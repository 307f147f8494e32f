"""Español de las comprobaciones del campo y el controlador y del lado de CA, y de lo que comparten con las demás."""

SENTENCES: dict[str, str] = {
    "unit.modules": "módulos",
    "unit.phases": "fases",
    "unit.hours_per_year": "h/año",
    "unit.speed": "r/min",
    "source.controller": "la ficha técnica del controlador",
    "source.plate": "la placa de características de la bomba",
    "source.plate_practice": "la placa de características de la bomba; práctica habitual, sin fuente",
    "source.plate_and_site": "la placa de características de la bomba; los datos del lugar",
    "source.site": "los datos del lugar",
    "source.practice": "práctica habitual, sin fuente",
    # what to look for where something was not given
    "check.look_for": "busque {things}",
    "check.asked.ac_volts": "«AC» o «~» con voltios en la placa de la bomba o del controlador",
    "check.asked.grid_volts": "la tensión de la red eléctrica",
    "check.asked.generator_volts": "la tensión del grupo electrógeno",
    "check.asked.phases": "«1~» o «3~» en la placa de la bomba o del controlador",
    "check.asked.grid_phases": "las fases de la red eléctrica",
    "check.asked.generator_phases": "las fases del grupo electrógeno",
    "check.asked.hertz": "«Hz» en la placa de la bomba o del controlador",
    "check.asked.grid_hertz": "la frecuencia de la red eléctrica",
    "check.asked.generator_hertz": "la frecuencia del grupo electrógeno",
    "check.supply.look_for_voltage": "busque la tensión de la red eléctrica y del grupo electrógeno",
    # modules in series
    "check.series.more.one": "un módulo más en serie",
    "check.series.more.two": "dos módulos más en serie",
    "check.series.more.three": "tres módulos más en serie",
    "check.series.more.many": "{count} módulos más en serie",
    "check.series.less.one": "un módulo menos en serie",
    "check.series.less.two": "dos módulos menos en serie",
    "check.series.less.three": "tres módulos menos en serie",
    "check.series.less.many": "{count} módulos menos en serie",
    "check.series.no_adding": (
        "no se puede añadir ningún módulo en serie hasta que se conozca la tensión CC máxima del controlador"
    ),
    "check.series.not_even_one": (
        "no cabe ni uno solo de estos módulos: da {one_v:.0f} V en vacío con frío, y lo máximo que se soporta son "
        "{most_v:g} V: un módulo de como máximo {rated_v} V en circuito abierto, u otro controlador"
    ),
    "check.series.window_too_narrow": (
        "ningún número de estos módulos sirve: al menos {fewest} para los {least_v:g} V necesarios en el mediodía más "
        "caluroso, como máximo {most} para los {most_v:g} V que se soportan en vacío con frío: otro controlador u "
        "otro módulo"
    ),
    "check.series.none_fits": "ningún número de módulos en serie sirve: otro controlador u otro módulo",
    "check.series.another": "otro controlador u otro módulo",
    "check.string_open_circuit_voltage.compared": (
        "Tensión de circuito abierto con {modules} módulos en serie en la mañana más fría ({coldest}), frente al "
        "límite del controlador o de la bomba"
    ),
    "check.string_open_circuit_voltage.compared_working_known": (
        "Tensión de circuito abierto con {modules} módulos en serie en la mañana más fría ({coldest}), frente al "
        "límite del controlador o de la bomba; la tensión de trabajo máxima es de {highest_v:g} V"
    ),
    "check.string_open_circuit_voltage.compared_with_working": (
        "Tensión de circuito abierto con {modules} módulos en serie en la mañana más fría ({coldest}), frente a la "
        "tensión de trabajo máxima, porque no se dio el límite del controlador"
    ),
    "check.string_open_circuit_voltage.why": (
        "Antes de que arranque el motor, la cadena fría está a esta tensión; por encima del límite destruye la "
        "electrónica."
    ),
    "check.string_open_circuit_voltage.look_for": (
        "busque «max. input voltage», «max. DC» o «Voc max.» en la placa del controlador; no se puede añadir ningún "
        "módulo en serie hasta que se conozca la tensión CC máxima del controlador"
    ),
    "check.string_open_circuit_voltage.remedy_until_known": (
        "busque «max. input voltage», «max. DC» o «Voc max.» en la placa del controlador; hasta que se conozca, "
        "{remedy}"
    ),
    "check.string_open_circuit_voltage.source": (
        "la ficha técnica del controlador o la placa; la tensión con frío según IEC 62548"
    ),
    "check.module_system_voltage.compared": (
        "Tensión de circuito abierto de una cadena con frío, frente a la tensión de sistema del módulo"
    ),
    "check.module_system_voltage.why": (
        "Por encima de ella puede fallar el propio aislamiento del módulo, y el marco quedar a la tensión del campo."
    ),
    "check.module_system_voltage.look_for": "busque «max. system voltage» en el dorso del módulo",
    "check.module_system_voltage.source": "la ficha técnica del módulo; IEC 62548",
    "check.string_voltage_hot.compared": (
        "Tensión de trabajo de una cadena en el mediodía más caluroso ({hottest_c:.1f} °C a la sombra), frente a la "
        "mínima del controlador"
    ),
    "check.string_voltage_hot.why": (
        "Por debajo de la tensión mínima del controlador, la bomba pierde potencia justo cuando el sol es mejor, o se "
        "para."
    ),
    "check.string_voltage_cold.compared": (
        "Tensión de trabajo de una cadena en la mañana más fría ({coldest_c:.1f} °C), frente a la máxima del "
        "controlador"
    ),
    "check.string_voltage_cold.why": (
        "Por encima de la tensión de trabajo máxima del controlador, el campo se mantiene fuera de su mejor punto o "
        "se desconecta."
    ),
    "check.string_voltage.look_for": "busque el intervalo de tensión CC o MPP en la ficha técnica del controlador",
    "check.modules_in_series.compared": (
        "Módulos en serie, frente a los números que caben entre la tensión mínima a mediodía y el límite con frío"
    ),
    "check.modules_in_series.why": "Solo estos números son seguros con frío y siguen funcionando con calor.",
    "check.modules_in_series.look_for": "busque la tensión CC mínima y la máxima en la placa del controlador",
    "check.modules_in_series.source": "la ficha técnica del controlador; IEC 62548",
    "check.modules_in_series.span": "{fewest} a {most}",
    "check.modules_in_series.no_span": "ninguno",
    "check.modules_in_series.too_many.one": "un módulo de más",
    "check.modules_in_series.too_many.two": "dos módulos de más",
    "check.modules_in_series.too_many.three": "tres módulos de más",
    "check.modules_in_series.too_many.many": "{count} módulos de más",
    "check.modules_in_series.too_few.one": "falta un módulo",
    "check.modules_in_series.too_few.two": "faltan dos módulos",
    "check.modules_in_series.too_few.three": "faltan tres módulos",
    "check.modules_in_series.too_few.many": "faltan {count} módulos",
    "check.window_hours.compared": (
        "Horas al año en las que la ventana de tensión del controlador mantiene el campo fuera de su mejor punto; así "
        "se pierde el {percent:.1f} % de su energía"
    ),
    "check.window_hours.why": "En esas horas se pierde potencia que se ha pagado.",
    "check.window_hours.source": (
        "simulación horaria del primer año; {hours:.0f} horas es práctica habitual, sin fuente, igual que la décima "
        "parte de la energía a partir de la cual no cumple"
    ),
    # voltage, phases and frequency of grid and generator
    "check.connection.phase_and_neutral": "una fase y neutro ({volts:.0f} V)",
    "check.connection.two_phases": "dos de las fases ({volts:.0f} V)",
    "check.supply_voltage.nominal": "{volts:.4g} V",
    "check.supply_voltage.variation": "variación {percent} %",
    "check.supply_voltage.drop": "{percent:.1f} % en el cable",
    "check.supply_voltage.drop_not_given": "caída en el cable no dada y no contada",
    "check.grid_voltage.compared": (
        "Tensión de la red eléctrica en el controlador, de {low:.0f} a {high:.0f} V ({facts}), frente al intervalo de "
        "{least:g} a {most:g} V"
    ),
    "check.generator_voltage.compared": (
        "Tensión del grupo electrógeno en el controlador, de {low:.0f} a {high:.0f} V ({facts}), frente al intervalo "
        "de {least:g} a {most:g} V"
    ),
    "check.grid_voltage.compared_not_given": (
        "Tensión de la red eléctrica en el controlador, frente a los límites de CA de la placa"
    ),
    "check.generator_voltage.compared_not_given": (
        "Tensión del grupo electrógeno en el controlador, frente a los límites de CA de la placa"
    ),
    "check.grid_voltage.source": (
        "la placa de características de la bomba; variación de {percent} %: los datos del lugar"
    ),
    "check.generator_voltage.source": (
        "la placa de características de la bomba; variación de {percent} %: ISO 8528-5, de memoria"
    ),
    "check.supply_voltage.why": (
        "Con muy poca tensión el motor toma más corriente y se para; con demasiada sufre su aislamiento."
    ),
    "check.supply_voltage.remedy_low": (
        "un estabilizador de tensión o un transformador, elegido y montado por un electricista autorizado, o una "
        "bomba para menos tensión"
    ),
    "check.supply_voltage.remedy_thicker_cable": (
        "una sección de {section_mm2:g} mm2 en el cable de CA (no abarca: bucle de defecto a tierra, cortocircuito y "
        "el dispositivo de protección); o un estabilizador de tensión o un transformador, elegido y montado por un "
        "electricista autorizado, o una bomba para menos tensión"
    ),
    "check.supply_voltage.remedy_shorter_cable": (
        "un cable de CA más corto (no abarca: bucle de defecto a tierra, cortocircuito y el dispositivo de "
        "protección); o un estabilizador de tensión o un transformador, elegido y montado por un electricista "
        "autorizado, o una bomba para menos tensión"
    ),
    "check.supply_voltage.remedy_high": (
        "un estabilizador de tensión o un transformador, elegido y montado por un electricista autorizado, o una "
        "bomba para más tensión"
    ),
    "check.grid_phases.compared": "Fases de la red eléctrica, frente a las de la placa",
    "check.generator_phases.compared": "Fases del grupo electrógeno, frente a las de la placa",
    "check.supply_phases.why": "Un motor trifásico no arranca con una sola fase, y se quema al intentarlo.",
    "check.supply_phases.why_one_of_three": (
        "Una bomba monofásica carga una sola de las tres fases, de modo que puede tomar un tercio de la potencia."
    ),
    "check.grid_phases.remedy_connect_unknown": (
        "conecte una fase y neutro, si la tensión y la empresa eléctrica lo permiten, por medio de un electricista "
        "autorizado"
    ),
    "check.grid_phases.remedy_connect.phase_and_neutral": (
        "conecte una fase y neutro ({volts:.0f} V), si la tensión y la empresa eléctrica lo permiten, por medio de un "
        "electricista autorizado"
    ),
    "check.grid_phases.remedy_connect.two_phases": (
        "conecte dos de las fases ({volts:.0f} V), si la tensión y la empresa eléctrica lo permiten, por medio de un "
        "electricista autorizado"
    ),
    "check.generator_phases.remedy_connect_unknown": (
        "conecte una fase y neutro, si la tensión y el fabricante del grupo electrógeno lo permiten, por medio de un "
        "electricista autorizado"
    ),
    "check.generator_phases.remedy_connect.phase_and_neutral": (
        "conecte una fase y neutro ({volts:.0f} V), si la tensión y el fabricante del grupo electrógeno lo permiten, "
        "por medio de un electricista autorizado"
    ),
    "check.generator_phases.remedy_connect.two_phases": (
        "conecte dos de las fases ({volts:.0f} V), si la tensión y el fabricante del grupo electrógeno lo permiten, "
        "por medio de un electricista autorizado"
    ),
    "check.grid_phases.remedy_three": (
        "una red eléctrica trifásica, o un variador que tome {given:g fase|fases} y dé tres, por medio de un "
        "electricista autorizado"
    ),
    "check.generator_phases.remedy_three": (
        "un grupo electrógeno trifásico, o un variador que tome {given:g fase|fases} y dé tres, por medio de un "
        "electricista autorizado"
    ),
    "check.grid_frequency.compared": (
        "Frecuencia de la red eléctrica, frente a los {wanted_hz:g} Hz de la placa, {percent:g} % en más o en menos"
    ),
    "check.generator_frequency.compared": (
        "Frecuencia del grupo electrógeno, frente a los {wanted_hz:g} Hz de la placa, {percent:g} % en más o en menos"
    ),
    "check.grid_frequency.compared_not_given": "Frecuencia de la red eléctrica, frente a la de la placa",
    "check.generator_frequency.compared_not_given": "Frecuencia del grupo electrógeno, frente a la de la placa",
    "check.supply_frequency.why": (
        "La velocidad va con la frecuencia: con menos, la altura baja con el cuadrado; con más, la potencia sube con "
        "el cubo."
    ),
    "check.supply_frequency.side.above": "{percent:.1f} % por encima de la placa",
    "check.supply_frequency.side.below": "{percent:.1f} % por debajo de la placa",
    "check.supply_frequency.side.equal": "igual",
    "check.grid_frequency.remedy": (
        "una red eléctrica de {wanted_hz:g} Hz, o un variador que genere su propia frecuencia"
    ),
    "check.generator_frequency.remedy": (
        "un grupo electrógeno de {wanted_hz:g} Hz, o un variador que genere su propia frecuencia"
    ),
    "check.supply_frequency.source": "IEC 60034-1, zona A; la zona B es una advertencia",
    "check.grid_power.compared": (
        "Potencia que da la conexión a la red eléctrica, frente a la que toma el controlador con el motor a potencia "
        "nominal"
    ),
    "check.grid_power.compared_one_phase": (
        "Potencia que da la conexión a la red eléctrica en una de sus fases, frente a la que toma el controlador con "
        "el motor a potencia nominal"
    ),
    "check.grid_power.why": "Una conexión demasiado pequeña dispara en cuanto la bomba gira a plena velocidad.",
    "check.grid_power.remedy": (
        "una conexión de al menos {needed_w} W, si la empresa eléctrica la concede; entonces, también su cable y su "
        "protección"
    ),
    # size of the generator
    "check.generator.remedy": (
        "un grupo electrógeno de {rating_kw:g} kW de potencia nominal o un poco más, con el cable y el dispositivo de "
        "protección correspondientes"
    ),
    "check.generator.remedy_nothing_left": (
        "ningún grupo electrógeno con esta reducción de potencia da potencia aquí: revise la altitud y la reducción"
    ),
    "check.generator_running.compared": (
        "Grupo electrógeno ({rating_kw:g} kW, de los que queda el {percent:.0f} % a {altitude_m:.0f} m y "
        "{hottest_c:.0f} °C), frente a lo que toma el controlador a la potencia nominal"
    ),
    "check.generator_running.compared_one_phase": (
        "Grupo electrógeno ({rating_kw:g} kW, de los que queda el {percent:.0f} % a {altitude_m:.0f} m y "
        "{hottest_c:.0f} °C y en una de las tres fases), frente a lo que toma el controlador a la potencia nominal"
    ),
    "check.generator_running.why": "Un grupo electrógeno sobrecargado baja de velocidad, se cala y quema su devanado.",
    "check.generator_running.source": "potencia nominal dada por el usuario, reducción según lo indicado",
    "check.generator_starting.compared_soft": (
        "Grupo electrógeno con su reducción, frente a lo que arranca el motor suavemente con un variador, {good:g} "
        "veces lo necesario en marcha ({least:g} como mínimo)"
    ),
    "check.generator_starting.compared": (
        "Grupo electrógeno con su reducción, frente a lo que arranca el motor en directo con {kva} kVA (letra de "
        "código {code}) y una caída de tensión del {good_dip:.0f} % ({least_kw} kW para el {most_dip:.0f} %)"
    ),
    "check.generator_starting.compared_assumed": (
        "Grupo electrógeno con su reducción, frente a lo que arranca el motor en directo con {kva} kVA (letra de "
        "código {code}, supuesta) y una caída de tensión del {good_dip:.0f} % ({least_kw} kW para el {most_dip:.0f} %)"
    ),
    "check.generator_starting.why": (
        "Un grupo electrógeno que no puede arrancar el motor deja caer su tensión; el motor zumba y se calienta."
    ),
    "check.generator_starting.source_direct": (
        "kVA a rotor bloqueado según letra de código, NEMA MG 1 (de memoria); caída en la reactancia transitoria del "
        "alternador; caída del {good_dip:.0f} %: ISO 8528-5, clase G1 (de memoria); {most_dip:.0f} % es práctica "
        "habitual, sin fuente"
    ),
    "check.generator_loading.compared": (
        "Carga del grupo electrógeno con el motor a potencia nominal, frente al intervalo de {low:.0f} a {high:.0f} % "
        "de su potencia reducida"
    ),
    "check.generator_loading.why": (
        "Un grupo electrógeno poco cargado acumula carbonilla; uno cargado durante horas por encima de su potencia "
        "principal se desgasta pronto."
    ),
    "check.generator_loading.remedy_light": "{remedy}, u otras cargas además de la bomba",
    "check.generator_loading.remedy_other_loads": (
        "otras cargas además de la bomba: un grupo electrógeno menor no la arrancaría"
    ),
    "check.generator_loading.source": (
        "{low:.0f} %: práctica de NFPA 110; {high:.0f} % de carga media de la potencia principal: ISO 8528-1"
    ),
}
