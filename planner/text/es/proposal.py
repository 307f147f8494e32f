"""Español de la propuesta a un financiador: sus capítulos, tablas y lo que se dice en ellos."""

SENTENCES: dict[str, str] = {
    "proposal.contents_heading": "Índice",
    "proposal.page": "Página {page} de {pages}",
    "proposal.wrote": "Se escribió {file}; líneas por completar: {count}.",
    # ---- first page
    "proposal.kind": "Propuesta de un abastecimiento de agua bombeada de un pozo perforado: {place}",
    "proposal.draft": (
        "Esto es un borrador hecho a partir de un estudio del lugar. Las líneas marcadas en amarillo piden datos que "
        "el estudio no contiene: sustituya cada una por el dato y quite la marca antes de presentarlo. Todas las "
        "demás cifras son las del estudio; haga de nuevo la propuesta cuando el estudio cambie."
    ),
    "proposal.version": "planner {version}",
    "proposal.foot.revision": "Revisión {revision}",
    "proposal.foot.visit": "Visita de campo: {date}",
    "proposal.foot.between": " · ",
    "proposal.position_ne": "{latitude}° norte, {longitude}° este",
    "proposal.position_nw": "{latitude}° norte, {longitude}° oeste",
    "proposal.position_se": "{latitude}° sur, {longitude}° este",
    "proposal.position_sw": "{latitude}° sur, {longitude}° oeste",
    "proposal.record.place": "Lugar",
    "proposal.record.position": "Posición",
    "proposal.record.prepared_by": "Preparado por",
    "proposal.record.visit_date": "Visita de campo",
    "proposal.record.price_date": "Precios de",
    "proposal.record.revision": "Revisión",
    "proposal.record.version": "Calculado con",
    # ---- chapters
    "proposal.chapter.summary": "Resumen",
    "proposal.chapter.need": "Necesidad y personas",
    "proposal.chapter.source": "Origen del agua",
    "proposal.chapter.design": "Diseño técnico",
    "proposal.chapter.options": "Opciones comparadas",
    "proposal.chapter.budget": "Presupuesto y adquisiciones",
    "proposal.chapter.recovery": "Recuperación de costos y asequibilidad",
    "proposal.chapter.operation": "Operación, mantenimiento y repuestos",
    "proposal.chapter.environment": "Medio ambiente y dióxido de carbono",
    "proposal.chapter.risks": "Riesgos",
    "proposal.chapter.indicators": "Indicadores",
    "proposal.chapter.annexes": "Anexos",
    "proposal.value": "Valor",
    "proposal.column.label": "Concepto",
    "proposal.column.value": "Valor",
    "proposal.column.unit": "Unidad",
    "proposal.column.basis": "Origen",
    "proposal.column.source": "Fuente",
    "proposal.column.what": "Concepto",
    "proposal.column.test": "Prueba",
    "proposal.column.option": "Opción de suministro",
    # ---- summary
    "proposal.grant_asked": (
        "Se solicita: una subvención de {grant}, el {percent} % del costo de inversión de {capital_cost}."
    ),
    "proposal.in_brief": (
        "Se llena un tanque de {tank} m3; a los usuarios les llegan {water} m3 de agua por día en el primer año."
    ),
    "proposal.in_brief_array": (
        "Se construye un campo fotovoltaico de {kwp} kWp y se llena un tanque de {tank} m3; a los usuarios les llegan "
        "{water} m3 de agua por día en el primer año."
    ),
    # ---- need and people
    "proposal.users.heading": "Quién extrae agua, en el primer año, sin pérdidas",
    "proposal.users.user": "Quién",
    "proposal.users.number": "Cuántos",
    "proposal.users.each": "Cada uno por día (mes mayor)",
    "proposal.users.mean": "Media (m3/día)",
    "proposal.users.largest": "Mes mayor (m3/día)",
    "proposal.users.people": "{count} personas",
    "proposal.users.animals": "{count} cabezas",
    "proposal.demand_grows": (
        "El estudio cuenta con una demanda de {first} m3 por día en el primer año y de {last} m3 por día en el año "
        "{years}, como media del año."
    ),
    "proposal.demand_level": (
        "El estudio cuenta con una demanda de {first} m3 por día, como media del año, que no cambia durante {years} "
        "años."
    ),
    "proposal.target": (
        "Se pide del suministro: al menos el {percent} % de esa agua, en el conjunto de los {years} años."
    ),
    "proposal.households": "Con {size} personas por hogar, son unos {count} hogares.",
    "proposal.service_ladder": (
        "En la escala de la OMS y UNICEF (JMP, de segunda mano), un grifo público puede llegar como mucho a «básico»: "
        "una fuente mejorada, a la que se va y se vuelve en 30 minutos, cola incluida. «Gestionado de forma segura» "
        "exige un grifo en la parcela, agua cuando se necesita, y agua libre de contaminación fecal y química "
        "prioritaria."
    ),
    # ---- source
    "proposal.borehole": "El pozo perforado",
    "proposal.basis.given": "dado",
    "proposal.basis.worked_out": "calculado",
    "proposal.basis.assumed": "supuesto",
    "proposal.permits": "Permisos y terrenos",
    "proposal.daily_limit": (
        "En el estudio no se extraen más de {limit} m3 por día: los cuenta como lo que permiten el permiso o la prueba."
    ),
    # ---- design
    "proposal.design": "Se propone la opción de suministro {option} con la bomba «{pump}».",
    "proposal.design_unnamed": "Se propone la opción de suministro {option}.",
    "proposal.works": "Las obras",
    "proposal.acceptance": "Pruebas en la entrega, por acordar en el contrato",
    "proposal.acceptance.pump.what": "Bomba",
    "proposal.acceptance.pump.test": (
        "Curva de altura, caudal y potencia absorbida en el banco de pruebas del fabricante, con un grado de "
        "tolerancia acordado"
    ),
    "proposal.acceptance.pump.source": (
        "ISO 9906:2012, de memoria; las bombas pequeñas tienen tolerancias más amplias, así que pregunte"
    ),
    "proposal.acceptance.flow.what": "Suministro en conjunto",
    "proposal.acceptance.flow.test": (
        "Caudal de al menos el 90 % de lo previsto para la misma altura y el mismo sol o suministro, a tres potencias "
        "o durante un día despejado; se indican con él los errores de los instrumentos"
    ),
    "proposal.acceptance.flow.source": "propuesto aquí, no es una norma",
    "proposal.acceptance.array.what": "Campo fotovoltaico",
    "proposal.acceptance.array.test": (
        "Polaridad, tensión de circuito abierto y corriente de cortocircuito de cada cadena, continuidad de la puesta "
        "a tierra, aislamiento; documentos del sistema de bombeo: caudal según la potencia a altura constante"
    ),
    "proposal.acceptance.array.source": "IEC 62446-1 e IEC 62253, de segunda mano",
    "proposal.acceptance.works.what": "Tubería de impulsión, tanque y agua",
    "proposal.acceptance.works.test": (
        "Tubería de impulsión probada con agua a presión, tanque lleno 24 horas sin pérdida, obras desinfectadas y "
        "enjuagadas, muestras sin E. coli; demostradas las paradas por marcha en seco y por tanque lleno; entregados "
        "los planos de lo construido, los repuestos y las herramientas"
    ),
    "proposal.acceptance.works.source": "práctica habitual, sin fuente",
    # ---- budget and cost recovery
    "proposal.who_pays": "Quién paga la construcción",
    "proposal.price_date": "Los precios son del {date}.",
    "proposal.tariffs_too_low": (
        "Algo no tiene precio (vea el presupuesto), de modo que todas las tarifas, facturas y ahorros de abajo son "
        "demasiado bajos."
    ),
    "proposal.ranges_source": (
        "Intervalos: IRC WASHCost, cost benchmarks, 2012, de segunda mano, para sistemas por tubería de pozos "
        "perforados mecanizados, llevados de dólares de EE. UU. de 2011 a los precios de este estudio."
    ),
    "proposal.ranges_source_2011": (
        "Intervalos: IRC WASHCost, cost benchmarks, 2012, de segunda mano, para sistemas por tubería de pozos "
        "perforados mecanizados, en dólares de EE. UU. de 2011 tal como se publicaron: a precios de hoy serían más "
        "altos."
    ),
    "proposal.by_year": "Lo que se paga cada año después de la subvención, y lo que tienen entonces los ahorros",
    "proposal.water_price": "El estudio cuenta con una tarifa de agua de {currency} {price} por m3.",
    # ---- operation
    "proposal.operation": (
        "Las obras duran mientras alguien reciba un pago y sea capaz de cuidarlas. Las tareas de abajo son las de las "
        "obras propuestas; las instrucciones de los fabricantes van primero. El trabajo en partes eléctricas, el "
        "izado de la bomba y la entrada en un tanque o una cámara son para cuadrillas formadas, con todas las fuentes "
        "de energía bloqueadas: vea las advertencias en los anexos."
    ),
    "proposal.who": "Quién hace qué",
    "proposal.yearly_cost": "Contado en los costos de operación: {name}, {cost} al año.",
    "proposal.generator_hours": (
        "El grupo electrógeno funciona unas {hours} horas al año; con un servicio cada {interval} horas de "
        "funcionamiento, el número de servicios al año es de {times}, y al menos uno al año sean cuales sean sus "
        "horas."
    ),
    # ---- environment
    "proposal.carbon.heading": "Dióxido de carbono del combustible quemado y de la electricidad comprada",
    "proposal.carbon": "No se cuenta lo que costó fabricar y traer las obras.",
    "proposal.taken": (
        "En el primer año llegan a los usuarios {given} m3 de los {wanted} m3 que se demandan; lo que se fuga se "
        "bombea además."
    ),
    # ---- risks
    "proposal.no_check_warns": "Ninguna comprobación deja de cumplirse ni da advertencia.",
    "proposal.risks.heading": "Lo que hallaron las comprobaciones",
    "proposal.risks.turns": "Qué cambiaría la respuesta",
    "proposal.risks.risk": "Riesgo",
    "proposal.risks.found": "Hallado",
    "proposal.risks.why": "Por qué importa",
    "proposal.risks.remedy": "Qué hay que hacer",
    "proposal.rests_more": "Se probaron {count} valores más, que cambian menos; todo lo no dado está en el anexo B.",
    # ---- indicators
    "proposal.indicators.heading": "Lo que se medirá, y lo que se espera",
    "proposal.indicators.what": "Indicador",
    "proposal.indicators.expected": "Esperado",
    "proposal.indicators.unit": "Unidad",
    "proposal.indicators.measured": "Cómo se mide",
    "proposal.indicators.to_agree": "por acordar",
    "proposal.indicator.people": "Personas servidas en el primer año",
    "proposal.indicator.people.unit": "personas",
    "proposal.indicator.people.measured": "registro de usuarios, contado de nuevo cada año",
    "proposal.indicator.m3_a_day": "Agua entregada, media del primer año",
    "proposal.indicator.m3_a_day.unit": "m3/día",
    "proposal.indicator.m3_a_day.measured": "contador de agua en el tanque, leído a diario",
    "proposal.indicator.demand_met": "Parte del agua demandada que se entrega",
    "proposal.indicator.demand_met.unit": "% de la demanda",
    "proposal.indicator.demand_met.measured": "contador frente a la demanda prevista para ese año",
    "proposal.indicator.short_days": "Días al año en los que falta más de la décima parte del agua del día",
    "proposal.indicator.short_days.unit": "días/año",
    "proposal.indicator.short_days.measured": "cuaderno del operador: tanque vacío, horas sin agua",
    "proposal.indicator.longest_short_days": "Máximo de días así seguidos",
    "proposal.indicator.longest_short_days.unit": "días",
    "proposal.indicator.longest_short_days.measured": "cuaderno del operador",
    "proposal.indicator.functionality": "Funcionamiento: visitas sin aviso que encuentran agua en todos los grifos",
    "proposal.indicator.functionality.unit": "% de las visitas",
    "proposal.indicator.functionality.measured": "visitas sin aviso, al menos dos veces al año",
    "proposal.indicator.repair": "Tiempo desde la avería hasta la reparación",
    "proposal.indicator.repair.unit": "días",
    "proposal.indicator.repair.measured": "cuaderno del operador: día del aviso, día de la reparación",
    "proposal.indicator.collected": "Tarifa recaudada respecto al costo de operación y mantenimiento",
    "proposal.indicator.collected.unit": "razón",
    "proposal.indicator.collected.measured": "libro de caja, cada año",
    "proposal.indicator.saving": "Ahorrado para reposiciones",
    "proposal.indicator.saving.unit": "{currency}/año",
    "proposal.indicator.saving.measured": "extracto de la cuenta de ahorros",
    "proposal.indicator.samples": "E. coli en una muestra de 100 mL",
    "proposal.indicator.samples.unit": "por 100 mL",
    "proposal.indicator.samples.measured": (
        "muestras del tanque y de los grifos, al menos trimestrales; valor guía de la OMS: ninguna"
    ),
    "proposal.indicator.women": "Mujeres en el comité y en sus cargos principales",
    "proposal.indicator.women.unit": "% de los miembros",
    "proposal.indicator.women.measured": "acta de la elección",
    "proposal.indicator.operators": "Operadores formados y en activo",
    "proposal.indicator.operators.unit": "personas",
    "proposal.indicator.operators.measured": "lista de formación, visitas",
    "proposal.indicator.fuel": "Combustible quemado",
    "proposal.indicator.fuel.unit": "L/año",
    "proposal.indicator.fuel.measured": "recibos de combustible y contador de horas",
    "proposal.indicator.carbon": "Dióxido de carbono del combustible y la electricidad",
    "proposal.indicator.carbon.unit": "kg/año",
    "proposal.indicator.carbon.measured": "de los recibos de combustible y del contador eléctrico",
    # ---- annexes
    "proposal.annex.checks": "Anexo A: comprobaciones del lugar",
    "proposal.annex.assumptions": "Anexo B: lo que se supuso, y de dónde",
    "proposal.annex.cautions": "Anexo C: advertencias",
    "proposal.annex.papers": "Anexo D: documentos que se deben adjuntar",
    "proposal.assumptions": (
        "Todos los valores que no se dieron en el lugar, por la parte de la obra a la que pertenecen. Sustitúyalos "
        "por lo medido o acordado siempre que se pueda obtener."
    ),
    "proposal.weather": "Sol y temperatura: {source}.",
}
