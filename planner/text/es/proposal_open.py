"""Español de las líneas de la propuesta que piden un dato que un estudio no contiene."""

SENTENCES: dict[str, str] = {
    # first page and summary
    "proposal.open.applicant": "Por completar: quién solicita, y a quién [nombre, dirección, contacto, forma jurídica]",
    "proposal.open.prepared_by": "Por completar: quién preparó el estudio [nombre, oficio, organización]",
    "proposal.open.visit_date": "Por completar: cuándo se visitó el lugar [día, por quién]",
    "proposal.open.revision": "Por completar: revisión de esta propuesta [número o día]",
    "proposal.open.prices": (
        "Por completar: lo que cuesta construir y operar las obras [no se indicó ningún precio, así que el estudio no "
        "tiene costos]"
    ),
    "proposal.open.unpriced": (
        "Por completar: el presupuesto está incompleto, falta el precio de {names} [cotizaciones]"
    ),
    "proposal.open.grant": (
        "Por completar: la suma que se solicita, y a quién [parte del costo de inversión, financiador]"
    ),
    "proposal.open.funder": "Por completar: el financiador, y cuándo se necesita la suma [nombre, plazos]",
    # need and people
    "proposal.open.growth": (
        "Por completar: crecimiento de la demanda [no se dio, así que no se cuenta ninguno; censo, matrícula, planes]"
    ),
    "proposal.open.leakage": (
        "Por completar: agua perdida entre el tanque y los grifos [no se dio, así que no se cuenta; lecturas de "
        "contadores]"
    ),
    "proposal.open.litres": (
        "Por completar: agua por persona y día [no se dio, así que se cuenta una cifra usual; norma nacional, encuesta]"
    ),
    "proposal.open.present_sources": (
        "Por completar: dónde busca hoy el agua la gente [fuentes, distancia, cola, precio, calidad, meses secos]"
    ),
    "proposal.open.baseline": (
        "Por completar: línea de base antes de las obras [encuesta: litros, minutos y dinero que un hogar dedica al "
        "agua]"
    ),
    "proposal.open.inclusion": (
        "Por completar: quién podría quedar fuera, y qué se hace al respecto [mujeres, los más pobres, personas con "
        "discapacidad, pastores, inquilinos]"
    ),
    "proposal.open.consent": (
        "Por completar: consentimiento de los usuarios [día y acta de la reunión, quiénes estuvieron, qué aportan]"
    ),
    "proposal.open.coordination": (
        "Por completar: acuerdo con la autoridad y con otros sistemas cercanos [carta, plan al que pertenece]"
    ),
    # source
    "proposal.open.borehole": (
        "Por completar: datos no dados del pozo perforado: {names} [informe del perforador, prueba, permiso]"
    ),
    "proposal.open.completion_report": (
        "Por completar: informe de la perforación [perforador y licencia, estratos, entubado, filtros, sello, "
        "desinfección]"
    ),
    "proposal.open.hydrogeologist": (
        "Por completar: informe del hidrogeólogo [nombre, día, caudal y horas recomendados, efecto en otros pozos]"
    ),
    "proposal.open.pumping_test": (
        "Por completar: prueba de bombeo a caudal constante con recuperación [día, quién la hizo, caudal, horas, "
        "niveles: no hay ninguna registrada]"
    ),
    "proposal.open.test_record": (
        "Por completar: datos no dados de la prueba de bombeo: {names} [registro de la prueba]"
    ),
    "proposal.open.quality": (
        "Por completar: análisis del agua, no hay ninguno registrado [laboratorio, día, resultados al menos de {names}]"
    ),
    "proposal.open.quality_rest": "Por completar: parámetros no analizados: {names} [laboratorio, día, resultados]",
    "proposal.open.quality_for_use": (
        "Por completar: análisis del agua para su uso [laboratorio, día, salinidad, sodio, hierro, sólidos]"
    ),
    "proposal.open.laboratory": "Por completar: quién analizó el agua, y cuándo [laboratorio, día de la muestra]",
    "proposal.open.treatment": (
        "Por completar: cómo se lleva el agua por debajo de los valores guía [tratamiento, su costo, quién lo opera]"
    ),
    "proposal.open.water_permit": (
        "Por completar: permiso de extracción de agua [autoridad, número, día, volumen por día, hasta cuándo]"
    ),
    "proposal.open.land": (
        "Por completar: derecho al terreno del pozo perforado, la tubería, el campo fotovoltaico y el tanque "
        "[propietario, escritura o acuerdo, servidumbre]"
    ),
    # design
    "proposal.open.pump": "Por completar: marca y tipo de la bomba [placa, ficha técnica con su curva, garantía]",
    "proposal.open.profile": (
        "Por completar: perfil longitudinal de la tubería de impulsión [cotas a lo largo del trazado; no se dieron, "
        "así que solo cuentan sus extremos]"
    ),
    "proposal.open.drawings": (
        "Por completar: planos [mapa, planta general, cabezal del pozo, esquema unifilar, tanque y grifos públicos]"
    ),
    "proposal.open.array_place": (
        "Por completar: lugar del campo fotovoltaico [sombras durante el año, cimientos, viento, cerca, quién lo "
        "vigila]"
    ),
    "proposal.open.tank_structure": (
        "Por completar: diseño de la torre o la base del tanque por un ingeniero estructural [terreno, viento, sismo]"
    ),
    # options and budget
    "proposal.open.other_ways": (
        "Por completar: otras soluciones que se examinaron, y por qué no [bomba manual, manantial, lluvia, ampliación "
        "de una red]"
    ),
    "proposal.open.percentages": (
        "Por completar: porcentajes no dados: {names} [no se cuenta ninguno; dígalo donde los precios los incluyen]"
    ),
    "proposal.open.price_date": (
        "Por completar: cuándo se pidieron los precios [día, cotizaciones, cuánto tiempo valen]"
    ),
    "proposal.open.exchange_rate": (
        "Por completar: tipo de cambio de {currency} a la moneda del financiador [tipo, día, quién asume sus cambios]"
    ),
    "proposal.open.contributions": (
        "Por completar: aportes en dinero y en especie [usuarios, gobierno, otros; suma, mano de obra, materiales]"
    ),
    "proposal.open.procurement": (
        "Por completar: plan de adquisiciones [lotes, cómo se piden ofertas, quién adjudica, garantías, repuestos en "
        "el pedido]"
    ),
    "proposal.open.timetable": (
        "Por completar: calendario [permisos, licitaciones, entrega, construcción, recepción, fin de la garantía]"
    ),
    # cost recovery
    "proposal.open.tariff_unpriced": (
        "Por completar: lo que deben pagar los usuarios por operación y reposiciones [resulta de los precios, de los "
        "que no se indicó ninguno]"
    ),
    "proposal.open.tariff": "Por completar: tarifa acordada con los usuarios [por m3, balde o mes; quién la fija]",
    "proposal.open.willingness": (
        "Por completar: lo que los usuarios pueden y quieren pagar [lo que se paga hoy, encuesta, ayuda a los más "
        "pobres]"
    ),
    "proposal.open.savings_account": (
        "Por completar: cuenta de ahorros para reposiciones [banco, quién firma, interés, quién audita]"
    ),
    "proposal.open.households": (
        "Por completar: hogares que pagan [personas por hogar, ingreso de uno medio y de uno pobre]"
    ),
    "proposal.open.income": "Por completar: ingreso de los hogares [uno medio, y uno del quinto más pobre]",
    "proposal.open.collection": (
        "Por completar: parte del agua que se paga [no se dio, así que toda se cuenta como pagada]"
    ),
    # operation
    "proposal.open.stockist": (
        "Por completar: quién tiene repuestos [nombre, distancia, qué piezas, días hasta el lugar]"
    ),
    "proposal.open.operator": "Por completar: el operador [nombre, formación, horas por semana, pago, suplente]",
    "proposal.open.committee": (
        "Por completar: el organismo que responde del suministro [comité o empresa, estatutos, miembros, mujeres en él]"
    ),
    "proposal.open.electrician": (
        "Por completar: electricista autorizado y cuadrilla que iza la bomba [nombres, distancia, precio por visita]"
    ),
    "proposal.open.operation_contract": (
        "Por completar: contrato de servicio y garantías [con quién, cuánto tiempo, plazo de reparación]"
    ),
    "proposal.open.support": (
        "Por completar: apoyo de la autoridad local [visitas por año, formación, dinero; no se indicó ninguno]"
    ),
    "proposal.open.theft": "Por completar: protección contra robos y daños [lugar, pernos, vigilante, seguro]",
    # environment
    "proposal.open.grid_factor": (
        "Por completar: dióxido de carbono por kWh de la red eléctrica [factor nacional, su año y tipo; no se cuenta "
        "aquí]"
    ),
    "proposal.open.grid_factor_source": (
        "Por completar: de dónde vienen los {factor} kg de dióxido de carbono por kWh de la red eléctrica [fuente, "
        "año, tipo]"
    ),
    "proposal.open.screening": "Por completar: evaluación ambiental previa [autoridad, categoría, día, licencia]",
    "proposal.open.protection": (
        "Por completar: protección del cabezal del pozo [distancia a letrinas, ganado, combustible y tumbas; cerca, "
        "drenaje]"
    ),
    "proposal.open.waste_water": (
        "Por completar: a dónde va el agua derramada y residual [desagüe, pozo de absorción, bebedero]"
    ),
    "proposal.open.end_of_life": (
        "Por completar: qué pasa con los módulos, bombas, baterías y aceite agotados [quién los recoge]"
    ),
    "proposal.open.safeguards": (
        "Por completar: salvaguardas sociales [terrenos tomados, trabajo infantil, seguridad en obra, quejas]"
    ),
    # risks and indicators
    "proposal.open.other_risks": (
        "Por completar: riesgos que ningún estudio ve [conflicto, robo, política, tipo de cambio, proveedor; quién "
        "los asume]"
    ),
    "proposal.open.targets": "Por completar: metas de los indicadores marcados «por acordar» [número, hasta cuándo]",
    "proposal.open.monitoring": (
        "Por completar: quién mide los indicadores [línea de base, cada cuánto, quién informa a quién, presupuesto "
        "para ello]"
    ),
    "proposal.open.logframe": (
        "Por completar: marco lógico en el formato del financiador [fin, propósito, productos, actividades]"
    ),
    "proposal.open.exit": (
        "Por completar: qué se mantiene cuando acaba la financiación [a quién pertenecen las obras, quién paga, a "
        "quién se llama]"
    ),
    # annexes
    "proposal.open.checks": (
        "Por completar, {topic}: no comprobado por falta de una cifra: {names} [placa, ficha técnica, medición]"
    ),
    "proposal.open.papers": (
        "Por completar: documentos que se deben adjuntar [registro de la prueba, hoja de laboratorio, cotizaciones, "
        "permisos, mapa, acta de consentimiento, planos]"
    ),
}
