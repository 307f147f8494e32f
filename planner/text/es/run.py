"""Español del informe de un cálculo: sus páginas, y lo que figura en varias de ellas."""

SENTENCES: dict[str, str] = {
    "list.and": "{first} y {last}",
    "list.comma": ", ",
    "language.unreviewed": "Esta traducción espera la revisión de un hablante nativo.",
    "page.answer": "Respuesta",
    "page.options": "Opciones",
    "page.head": "Altura",
    "page.checks": "Comprobaciones",
    "page.tank": "Tanque",
    "page.bill": "Mediciones y presupuesto",
    "page.cash": "Flujo de caja",
    "page.simulated": "Simulado",
    "page.renewals": "Reposiciones",
    "page.returns": "Rentabilidad",
    "page.inputs": "Datos",
    "page.method": "Método y advertencias",
    "page.form": "Formulario",
    "column.year": "Año",
    "column.unit": "Unidad",
    "option.meets": "✓ alcanza el objetivo",
    "option.misses": "✗ no alcanza el objetivo",
    # ---- answer
    "answer.question": "Pregunta: {question}",
    "answer.people": "Sirve a {people} personas en el primer año.",
    "answer.record": (
        "Preparado por: {prepared_by}. Visita de campo: {visit_date}. Precios de: {price_date}. Revisión: {revision}."
    ),
    "answer.setting": "Dinero en {currency}, {prices}. Cada opción se simuló hora por hora durante {years} años.",
    "answer.other_first": (
        "! Con los precios cambiados aquí, otra opción es la de menor costo; repita el estudio para que se compruebe: "
    ),
    "answer.unchanged": "Las frases de arriba concuerdan con las cifras de abajo.",
    "answer.changed": (
        "! Se cambiaron precios o tasas después del cálculo: las cifras de abajo, la clasificación y la recomendación "
        "los siguen; las frases de arriba y los tamaños elegidos, no. Repita el estudio antes de usarlo."
    ),
    "answer.overpaid": (
        "! La subvención y el préstamo juntos superan el 100 por ciento del costo de inversión: corríjalos antes de "
        "usar esto."
    ),
    "answer.cautions": (
        "Lea las advertencias de la hoja «Método y advertencias» antes de comprar o construir nada; las normas "
        "locales y el trabajo de profesionales autorizados tienen prioridad."
    ),
    "answer.option": "Opción de suministro, la mejor primero",
    "answer.service": "Servicio",
    "answer.incomplete": ", incompleto",
    "answer.nothing": "–",
    "answer.yes": "✓ sí",
    "answer.no": "✗ no",
    "short.demand_met_percent": "Demanda cubierta (%)",
    "short.demand_met_worst_year_percent": "Peor año (%)",
    "short.demand_met_worst_month_percent": "Peor mes (%)",
    "short.short_days_per_year": "Días sin agua suficiente al año",
    "short.longest_short_days": "Máximo de días seguidos",
    "short.tank_m3": "Tanque (m3)",
    "short.modules": "Módulos FV",
    "short.array_kwp": "Campo FV (kWp)",
    "short.grid_kwh_per_year": "Red eléctrica (kWh/año)",
    "short.fuel_l_per_year": "Combustible (L/año)",
    "short.capital_cost": "Costo de inversión{incomplete} ({unit})",
    "short.life_cycle_cost": "Costo del ciclo de vida{incomplete} ({unit})",
    "short.annualised_cost": "Costo anualizado{incomplete} ({unit})",
    "short.levelised_cost_per_m3": "Costo nivelado del agua{incomplete} ({unit})",
    "short.annualised_cost_per_person": "Por persona{incomplete} ({unit})",
    "answer.basis": "De qué depende",
    "answer.value": "Valor",
    "answer.status": "Origen",
    "answer.worked_out": "calculado",
    "answer.demand": "Demanda del primer año (m3/día)",
    "answer.head": "Altura manométrica total (m)",
    "answer.flow": "Caudal a esa altura (m3/h)",
    "answer.ghi": "Irradiación global (GHI, kWh/m2/día)",
    "answer.demand.growth_percent_per_year": "Crecimiento de la demanda (%/año)",
    "answer.service.demand_met_percent": "Objetivo de servicio (% de la demanda cubierta)",
    "answer.finance.analysis_period_years": "Período de análisis (años)",
    "answer.finance.discount_rate_percent": "Tasa de descuento (%/año)",
    "answer.sources.solar.module.price": "Precio de un módulo FV ({currency})",
    "answer.sources.grid.tariff.price_per_kwh": "Energía de la red eléctrica ({currency}/kWh)",
    "answer.sources.grid.tariff.price_growth_percent_per_year": "Crecimiento de la tarifa (%/año)",
    "answer.sources.grid.outages.hours_per_day": "Cortes de la red eléctrica, media (h/día)",
    "answer.sources.generator.fuel_price_per_l": "Precio del combustible en la gasolinera ({currency}/L)",
    "answer.sources.generator.fuel_delivery_per_l": "Transporte del combustible hasta el lugar ({currency}/L)",
    "answer.sources.generator.fuel_price_growth_percent_per_year": "Crecimiento del precio del combustible (%/año)",
    "answer.who_pays": "Quién paga la construcción de la primera",
    "answer.year_0": "Año 0 ({currency})",
    "answer.share": "Parte (%)",
    "answer.components": "Costo del ciclo de vida de la primera",
    "answer.present_value": "Valor actual ({currency})",
    "answer.cost_of_capital": "Costo del capital, aparte",
    "answer.loan": "préstamo",
    "answer.costs": "Costo del ciclo de vida por categoría",
    "answer.costs_alt": (
        "Costo del ciclo de vida de cada opción por categoría, apilado; {option}, clasificada primera, está arriba."
    ),
    "answer.costs_axis": "Costo del ciclo de vida ({currency})",
    "answer.time": "Costo del ciclo de vida acumulado por año",
    "answer.time_alt": (
        "Valor actual de los costos acumulado por año, de las opciones mejor clasificadas; la mejor es {option}."
    ),
    "answer.time_axis": "Valor actual acumulado ({currency})",
    "brief.failed": "Comprobaciones que no se cumplen",
    "brief.none_failed": "Ninguna comprobación deja de cumplirse.",
    "brief.cautions": "Advertencias",
    # ---- options
    "options.title": "Opciones de suministro una junto a otra",
    "options.under": (
        "En el orden del cálculo. Dinero en {currency}, {prices}, durante {years} años con la tasa de descuento de la "
        "hoja «Datos»; energía y horas son medias de los años."
    ),
    "options.figure": "Magnitud",
    "options.design": "Diseño",
    "options.service": "Servicio",
    "options.energy": "Energía, media de los años",
    "options.money": "Dinero",
    "options.components": "Componentes del costo del ciclo de vida, valor actual",
    "options.carbon": "Dióxido de carbono del combustible y de la red eléctrica (no se cuenta lo construido)",
    "options.comparison": "Comparado con {reference}, antes de subvención y préstamo",
    "options.by_year": "Demanda cubierta por año",
    "options.controller": "Controlador",
    "options.pump": "Bomba",
    "options.target": "Cubre al menos el {percent} % de la demanda",
    "options.target_worst_year": (
        "Cubre el {percent} % de la demanda en el conjunto de los años y el {worst} % en el peor año"
    ),
    "options.rank": "Puesto",
    "options.support": "Apoyo indirecto",
    "options.not_entered": "no indicado",
    "options.co2_covers": "Qué abarca",
    "emission.fuel": "combustible",
    "emission.grid": "red eléctrica",
    "emission.not_counted": "no contado: {what}",
    "emission.none": "nada quemado ni comprado",
    "options.irr_reason": "  por qué no hay",
    "options.payback_reason": "  observación",
    "options.discounted_payback_reason": "  observación",
    "options.of_demand": "% de la demanda",
    "controller.parallel": "en paralelo (FV y CA juntas)",
    "controller.changeover": "conmutación",
    # ---- bill of quantities, replacements
    "bill.under": (
        "Un costo bajo el nombre de una opción indica que la opción usa esa partida. Una partida que se repone por "
        "«años u horas de funcionamiento» se repone cuando se agotan sus años o sus horas de funcionamiento, lo que "
        "ocurra primero. La instalación se cuenta sobre los equipos comprados; los imprevistos, el diseño y "
        "supervisión y el impuesto al valor añadido, en este orden, cada uno sobre todas las partidas anteriores. "
        "Ninguno de los cuatro se añade a las reposiciones."
    ),
    "bill.line": "Partida",
    "bill.supply": "Fuente",
    "bill.quantity": "Cantidad",
    "bill.unit": "Unidad",
    "bill.price": "Precio unitario ({currency})",
    "bill.cost": "Costo ({currency})",
    "bill.life": "Vida útil (años)",
    "bill.replaced_by": "Se repone por",
    "bill.maintenance": "Mantenimiento (%/año)",
    "bill.option": "{option} ({currency})",
    "bill.by_option": "según la opción",
    "bill.years": "años",
    "bill.years_or_hours": "años u horas de funcionamiento",
    "bill.subtotal": "Subtotal: {group}",
    "bill.capital_cost": "Costo de inversión ({currency})",
    "bill.maintenance_total": "Mantenimiento ({currency}/año, precios del año 0)",
    "renewals.under": (
        "1 donde una partida se repone al final de un año: en cada múltiplo de su vida útil en años enteros, antes "
        "del último año. Lo que desgastan las horas de funcionamiento se cuenta en la hoja «Simulado»."
    ),
    "renewals.life": "Vida útil en años enteros",
    "renewals.left": "Parte restante de la vida útil",
    "renewals.by_hours": "por horas",
    # ---- simulated
    "cash.under": (
        "Dinero en {currency}, {prices}. El costo de inversión cae en el año 0; todo lo demás, a fin de año. Los "
        "costos son positivos, el valor residual es negativo. Lo que pagan los usuarios se muestra pero no se resta "
        "de los costos. Las opciones están en el orden del cálculo."
    ),
    "cash.prices_constant": "precios constantes del año 0",
    "cash.prices_nominal": "precios nominales",
    "cash.discount_rate": "Tasa de descuento (%/año)",
    "cash.real_rate": "Sin inflación (%/año)",
    "cash.sum": "Suma",
    "cash.construction": "Costo de inversión ({currency})",
    "cash.replacement": "Reposiciones ({currency})",
    "cash.upkeep": "Mantenimiento ({currency})",
    "cash.grid": "Facturas de la red eléctrica ({currency})",
    "cash.fuel": "Combustible ({currency})",
    "cash.generator_service": "Servicio del grupo electrógeno ({currency})",
    "cash.yearly_costs": "Otros costos anuales ({currency})",
    "cash.direct_support": "Apoyo directo ({currency})",
    "cash.further": "{category} ({currency})",
    "cash.residual": "Valor residual ({currency})",
    "cash.total_cost": "Costo total ({currency})",
    "cash.discount_factor": "Factor de descuento",
    "cash.present_value": "Valor actual ({currency})",
    "cash.cumulated": "Acumulado ({currency})",
    "cash.revenue": "Pagado por los usuarios ({currency})",
    "cash.grant_received": "Subvención ({currency})",
    "cash.loan_received": "Préstamo ({currency})",
    "cash.loan_payment": "Pago del préstamo ({currency})",
    "cash.owner_cost": "Costo para el propietario ({currency})",
    "cash.owner_present_value": "Valor actual para el propietario ({currency})",
    "cash.price_level": "Nivel de precios",
    "cash.water_present_m3": "Agua, valor actual (m3)",
    "cash.saving": "Ahorro frente a {reference} ({currency})",
    "cash.saved": "Ahorro acumulado ({currency})",
    "cash.saving_present": "Ahorro, valor actual ({currency})",
    "cash.saved_present": "Ahorro, valor actual, acumulado ({currency})",
    # ---- returns
    "returns.under": (
        "Pasos hacia la tasa interna de retorno y el período de recuperación frente a {reference}. Los ahorros pueden "
        "tener varias tasas con valor actual nulo; solo se da una tasa cuando la tabla de abajo cambia de signo una "
        "vez."
    ),
    "returns.step": "Paso",
    "returns.outlay": "Ahorro en el año 0",
    "returns.slack": "Redondeo, tomado como nada",
    "returns.slack_present": "Redondeo, descontado",
    "returns.savers": "Años que ahorran",
    "returns.changes": "Tasas que equilibran",
    "returns.rate_below": "Tasa inferior a la primera",
    "returns.rate_above": "Tasa superior a la primera",
    "returns.ever_behind": "Alguna vez por detrás (1: sí)",
    "returns.last_behind": "Último fin de año por detrás",
    "returns.ever_behind_present": "Alguna vez por detrás, descontado",
    "returns.last_behind_present": "Último fin de año por detrás, descontado",
    "returns.worth": (
        "Valor de los ahorros según la tasa (fracción por año): en el año 0; con tasas negativas, en el último año"
    ),
}
