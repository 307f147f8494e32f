"""Español de las advertencias: del propio trabajo, y de los límites de las cifras de un estudio."""

SENTENCES: dict[str, str] = {
    "caution.local": "Las normas locales y el trabajo de profesionales autorizados tienen prioridad.",
    "caution.with_local": "{caution} Las normas locales y el trabajo de profesionales autorizados tienen prioridad.",
    "caution.where_listed": (
        "Las normas locales y el trabajo de profesionales autorizados tienen prioridad. Lea las advertencias antes de "
        "construir, abrir o beber nada: 'planner run' escribe las que valen para el lugar en la hoja «Método y "
        "advertencias»."
    ),
    # of the work itself
    "caution.source.solar": "campo fotovoltaico",
    "caution.source.grid": "red eléctrica",
    "caution.source.generator": "grupo electrógeno",
    "caution.source_any": (
        "La electricidad de esta fuente junto a un pozo perforado puede matar: {source}. La puesta a tierra, la "
        "protección, un conmutador que no pueda unirla a otra fuente y el bloqueo antes de izar la bomba son cosa de "
        "un electricista autorizado y de quien explota la fuente."
    ),
    "caution.daylight": (
        "Los módulos FV dan una tensión CC peligrosa siempre que hay luz y de día no se pueden apagar; los "
        "seccionadores, los fusibles de cadena y la polaridad son cosa de un electricista autorizado."
    ),
    "caution.dc_arc": (
        "Nunca desenchufe un conector de CC, saque un fusible de CC ni corte un cable de CC bajo carga: el arco no se "
        "apaga solo, quema y provoca incendios. Pare la bomba, abra el interruptor-seccionador de CC y mida que no "
        "pasa corriente antes de abrir un conector; un defecto a tierra puede mantener la corriente, así que trátelo "
        "como si estuviera con tensión."
    ),
    "caution.isolate": (
        "Antes de abrir una tapa o tocar un conductor, seccione todas las fuentes ({sources}), bloquee y señalice "
        "cada una, espere lo que indique el fabricante del controlador para que se descarguen sus condensadores y "
        "después verifique la ausencia de tensión, entre todos los conductores y a tierra, con un comprobador probado "
        "antes y después en una fuente conocida."
    ),
    "caution.isolate_array": (
        "Antes de abrir una tapa o tocar un conductor, seccione todas las fuentes ({sources}), bloquee y señalice "
        "cada una, espere lo que indique el fabricante del controlador para que se descarguen sus condensadores y "
        "después verifique la ausencia de tensión, entre todos los conductores y a tierra, con un comprobador probado "
        "antes y después en una fuente conocida; de día, el lado del campo fotovoltaico de su seccionador sigue con "
        "tensión."
    ),
    "caution.wet_hands": (
        "Nunca maneje interruptores, enchufes ni el controlador con las manos mojadas o de pie en el agua."
    ),
    "caution.grid": (
        "La electricidad de la red junto a un pozo perforado puede matar: la puesta a tierra, un interruptor "
        "diferencial y el bloqueo antes de izar la bomba son cosa de un electricista autorizado y de la empresa "
        "eléctrica."
    ),
    "caution.residual_current": (
        "El tipo del interruptor diferencial debe ser adecuado para un variador electrónico, cuya corriente de fuga "
        "continua ciega los tipos AC y A: tipo B (IEC 62423) donde lo pida el fabricante del variador o la norma "
        "local, sin ningún dispositivo de otro tipo aguas arriba en el mismo circuito."
    ),
    "caution.exhaust": (
        "Los gases de escape de un grupo electrógeno matan en locales cerrados y semicerrados: hágalo funcionar al "
        "aire libre, lejos de puertas, ventanas y de la boca del pozo perforado. Déjelo enfriar antes de repostar, "
        "mantenga lejos las llamas y guarde el combustible donde un derrame no pueda llegar al pozo."
    ),
    "caution.backfeed": (
        "Un grupo electrógeno nunca debe realimentar la red eléctrica ni otra fuente, lo que mata a quienes trabajan "
        "en la línea: conéctelo mediante un conmutador que no pueda unir las dos, nunca con una clavija en un enchufe."
    ),
    "caution.lightning": (
        "El rayo baja por los cables hasta el pozo perforado: conecte equipotencialmente y ponga a tierra el "
        "controlador, la tubería y el entubado, instale protección contra sobretensiones en el controlador y en la "
        "boca del pozo, según las reglas locales de instalación, y pare el trabajo cuando se oiga un trueno."
    ),
    "caution.lightning_array": (
        "El rayo baja por los cables hasta el pozo perforado: conecte equipotencialmente y ponga a tierra los marcos "
        "de los módulos, el controlador, la tubería y el entubado, instale protección contra sobretensiones en el "
        "campo fotovoltaico, en el controlador y en la boca del pozo, según las reglas locales de instalación, y pare "
        "el trabajo cuando se oiga un trueno."
    ),
    "caution.lifting": (
        "Una bomba con su tubería llena puede pesar más de lo que una cuadrilla puede sostener: ícela con trípode o "
        "grúa, mordazas y una cuerda de seguridad, todo con capacidad para la carga, y con nadie debajo."
    ),
    "caution.overhead_lines": (
        "Busque líneas aéreas antes de levantar un trípode, una grúa, un mástil o un tramo de tubería, y guarde la "
        "distancia que pide la empresa eléctrica: una línea puede matar sin que se la toque."
    ),
    "caution.confined_space": (
        "Nunca baje solo a un pozo excavado ni entre solo en una cámara de bombas o un tanque: al aire puede faltarle "
        "oxígeno o puede contener gas. Analice el aire, ventile, lleve un arnés con una cuerda hasta alguien que esté "
        "fuera, mantenga lejos los motores y nunca entre tras alguien que se haya desplomado; llame a los servicios "
        "de rescate."
    ),
    "caution.falls": (
        "La gente cae de tejados, escaleras y torres de tanque: barandillas o un arnés en un anclaje sólido, "
        "escaleras atadas, y ningún trabajo allí con viento, con lluvia o a solas. El tejado y la torre deben estar "
        "calculados para su carga; cada m3 de agua pesa una tonelada."
    ),
    "caution.children": (
        "Los niños se ahogan en tanques abiertos y caen en pozos abiertos: mantenga tapados y cerrados con llave el "
        "tanque, las cámaras y el pozo perforado, y cerque el tanque y el controlador."
    ),
    "caution.children_array": (
        "Los niños se ahogan en tanques abiertos y caen en pozos abiertos: mantenga tapados y cerrados con llave el "
        "tanque, las cámaras y el pozo perforado, y cerque el tanque, el campo fotovoltaico y el controlador."
    ),
    "caution.trench": (
        "Las paredes de las zanjas se derrumban sin aviso y sepultan a las personas: entibe o ataluce toda zanja en "
        "la que entre alguien, como pidan las normas locales, mantenga lejos del borde la tierra extraída y los "
        "vehículos, y localice los cables y tuberías enterrados antes de excavar."
    ),
    "caution.pressure_test": (
        "Pruebe la tubería con agua, nunca con aire, que almacena energía suficiente para matar cuando cede una "
        "unión: llene despacio, purgue el aire en los puntos altos, después suba la presión por escalones y mantenga "
        "lejos a la gente."
    ),
    "caution.drinking": (
        "Primero limpie, desinfecte y enjuague el pozo perforado, las tuberías y el tanque, y después tome muestras: "
        "haga analizar gérmenes, arsénico, fluoruro, nitrato y salinidad antes de que nadie beba el agua. Nada de lo "
        "calculado aquí dice que sea apta para beber."
    ),
    "caution.not_drinking": (
        "Primero limpie, desinfecte y enjuague el pozo perforado, las tuberías y el tanque, y después tome muestras: "
        "analice en el agua lo que pide su uso; nadie debe beberla sin analizar."
    ),
    "caution.chlorine": (
        "El cloro quema la piel, los ojos y los pulmones: guantes, gafas de protección y aire libre; añádalo al agua, "
        "nunca agua al cloro; nunca lo mezcle con ácido, combustible u otro limpiador; que nadie beba hasta que se "
        "haya enjuagado del todo, y entretanto conduzca el agua lejos de animales y arroyos."
    ),
    "caution.permit": "Extraer agua exige casi siempre un permiso con un volumen diario; obténgalo antes de bombear.",
    # of the limits of a study's numbers
    "caution.altitude": "No se dio la altitud; se toman {altitude} m de la malla mundial de pvlib.",
    "caution.hours_a_day": (
        "En el último año la bomba tendría que funcionar {hours} horas al día con su caudal de funcionamiento de "
        "{flow} m3/h; la demanda supera a la bomba o al pozo perforado."
    ),
    "caution.safe_yield": (
        "La bomba podría dar más que el caudal seguro del pozo perforado, de {flow} m3/h; su velocidad se limita a eso."
    ),
    "caution.dc_window": (
        "En {option}, la ventana de tensión CC del controlador mantiene el campo fuera de su mejor punto {hours} "
        "horas al año; revise el número de módulos en serie."
    ),
    "caution.source_carbon": (
        "No se dio cifra de dióxido de carbono para esta fuente, así que sus emisiones no se cuentan: {source}."
    ),
    "caution.lowest_level": (
        "En {option}, el interruptor de flotador se ajustó al nivel más bajo probado, {level} % del tanque; uno más "
        "alto guarda más reserva para una avería."
    ),
    "caution.simulated": (
        "Cada año de vida se simula hora por hora, desde lo que el año anterior deja en el tanque, con la bomba, el "
        "pozo perforado y los módulos con la edad que tienen entonces; la calidad del agua no forma parte de la "
        "simulación."
    ),
    "caution.summer_time": (
        "Las horas son de horario estándar todo el año; en verano los relojes de {zone} van una hora adelantados, así "
        "que el consumo, las franjas de la tarifa y las horas permitidas quedan entonces una hora tarde."
    ),
    "caution.unpriced": (
        "Falta el precio de lo siguiente: {names}; el costo de una opción que lo necesita está incompleto."
    ),
    "caution.free": "Contado como existente y pagado, por haberse indicado un precio de 0: {names}.",
    "caution.under_budgeted": (
        "Para {option} se presupuestan {cost} dólares de EE. UU. de 2011 por persona y año para operar, apoyar y "
        "renovar, menos que los {low} a {high} hallados en sistemas de este tipo (IRC WASHCost, cost benchmarks, "
        "2012, de segunda mano): busque lo que falta, como salarios, reparaciones, análisis del agua o apoyo, antes "
        "de prometerlo a los usuarios."
    ),
    "caution.loan": (
        "El interés del préstamo, {rate} %, es nominal, los precios son constantes y no se indicó inflación, de modo "
        "que el interés cuenta como si estuviera por encima de la inflación y el costo para el propietario resulta "
        "demasiado alto: indique la inflación (0 solo donde no se espera ninguna)."
    ),
    "caution.turned_away": (
        "Un plano del campo mira hacia el polo (acimut {azimuth} con latitud {latitude}); en este hemisferio los "
        "módulos FV miran normalmente a {usual} grados."
    ),
}
