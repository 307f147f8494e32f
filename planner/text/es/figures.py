"""Las cifras del catálogo: cómo se llaman, y qué son."""

FIGURES: dict[str, tuple[str, str]] = {
    "tank_m3": ("Tanque", "Volumen útil del tanque."),
    "modules": ("Módulos FV", "Módulos de todas las cadenas juntas."),
    "strings": ("Cadenas en paralelo", "Cadenas de módulos en serie, una al lado de otra."),
    "array_kwp": (
        "Campo fotovoltaico, potencia nominal",
        "Potencia nominal de todos los módulos en condiciones estándar de ensayo (IEC 60904-3).",
    ),
    "start_level_percent": (
        "Nivel de arranque del respaldo",
        "Nivel al que el interruptor de flotador arranca la red eléctrica o el grupo electrógeno.",
    ),
    "stop_level_percent": (
        "Nivel de parada del respaldo",
        "Nivel al que el interruptor de flotador para la red eléctrica o el grupo electrógeno.",
    ),
    "duty_flow_m3h": (
        "Caudal en el punto de funcionamiento",
        "Caudal en el que coinciden bomba y sistema con el nivel medio anual del agua.",
    ),
    "total_dynamic_head_m": (
        "Altura manométrica total",
        "Altura geométrica, descenso, fricción y altura residual juntos, en el punto de funcionamiento.",
    ),
    "generator_kw": (
        "Grupo electrógeno, potencia nominal",
        "Potencia nominal del grupo electrógeno en las condiciones de referencia.",
    ),
    "meets_target": ("Alcanza el objetivo de servicio (1: sí)", "Si entrega lo que pide el objetivo de servicio."),
    "short_days_per_year": (
        "Días sin agua suficiente",
        "Días en los que falta más de la décima parte de la demanda del día, media de los años (práctica habitual, "
        "sin fuente).",
    ),
    "worst_month": (
        "Peor mes (1: enero)",
        "Mes del año en el que se entrega la parte más baja de la demanda, todos los años juntos.",
    ),
    "worst_month_short_days": (
        "Días sin agua suficiente en el peor mes",
        "Días sin agua suficiente en ese mes, media de los años.",
    ),
    "longest_short_days": (
        "Racha más larga sin agua suficiente",
        "Máximo de días seguidos sin agua suficiente en el período de análisis, también de un año al siguiente.",
    ),
    "missing_l_per_short_day": (
        "Agua que falta por día sin agua suficiente",
        "Lo que les falta a los usuarios en todos los días sin agua suficiente del período de análisis, dividido por "
        "su número.",
    ),
    "demand_met_percent": ("Demanda cubierta", "Agua entregada respecto al agua demandada, todos los años juntos."),
    "demand_met_worst_year_percent": (
        "Demanda cubierta en el peor año",
        "La parte anual más baja de la demanda que se entrega.",
    ),
    "demand_met_worst_month_percent": (
        "Demanda cubierta en el peor mes",
        "La parte más baja de la demanda que se entrega en un mes del año, todos los años juntos.",
    ),
    "demand_first_year_m3": ("Demanda en el primer año", "Agua que los usuarios demandan en el año 1."),
    "delivered_first_year_m3": ("Entregada en el primer año", "Agua que llega a los usuarios en el año 1."),
    "demand_last_year_m3": ("Demanda en el último año", "Agua que los usuarios demandan en el último año."),
    "delivered_last_year_m3": ("Entregada en el último año", "Agua que llega a los usuarios en el último año."),
    "shortfall_m3_per_year": ("Déficit, media", "Demanda no cubierta, media de los años."),
    "shortfall_by_daily_limit_m3_per_year": (
        "  de él, causado por el límite diario",
        "Demanda que se cubriría sin el límite diario, media de los años; hallada con una simulación sin él.",
    ),
    "demand_met_worst_year_in_ten_percent": (
        "Demanda cubierta, peor año de cada diez",
        "Parte anual de la demanda entregada que alcanzan nueve de cada diez años (percentil 10 de los años).",
    ),
    "short_days_worst_year_in_ten": (
        "Días sin agua suficiente, peor año de cada diez",
        "Días sin agua suficiente que nueve de cada diez años no superan (percentil 90 de los años).",
    ),
    "missing_l_per_day_worst_year_in_ten": (
        "Falta en el peor año de cada diez",
        "Agua que falta, media de los días de un año, que nueve de cada diez años no superan (percentil 90 de los "
        "años).",
    ),
    "pumped_by_solar_percent": ("Bombeada por el sol", "Parte del agua bombeada que eleva la potencia FV."),
    "pumped_by_grid_percent": ("Añadida por la red eléctrica", "Parte del agua bombeada que añade la red eléctrica."),
    "pumped_by_generator_percent": (
        "Añadida por el grupo electrógeno",
        "Parte del agua bombeada que añade el grupo electrógeno.",
    ),
    "pv_used_kwh_per_year": ("Energía FV usada (CC)", "Energía que el campo da a la bomba, media de los años."),
    "pv_unused_kwh_per_year": (
        "Energía FV no usada (CC)",
        "Energía que el campo habría podido dar, media de los años.",
    ),
    "grid_kwh_per_year": ("Energía de la red eléctrica", "Energía comprada a la red eléctrica, media de los años."),
    "grid_hours_per_year": (
        "Funcionamiento con la red eléctrica",
        "Horas en las que la red eléctrica mueve la bomba, media de los años.",
    ),
    "grid_peak_kw": (
        "Mayor demanda (media hora) de la red",
        "La media hora más alta de todos los meses y años.",
    ),
    "generator_kwh_per_year": (
        "Energía del grupo electrógeno",
        "Energía que da el grupo electrógeno, media de los años.",
    ),
    "generator_hours_per_year": (
        "Funcionamiento del grupo electrógeno",
        "Horas que funciona el grupo electrógeno, media de los años.",
    ),
    "fuel_l_per_year": ("Combustible", "Combustible que quema el grupo electrógeno, media de los años."),
    "capital_cost": ("Costo de inversión", "Lo que se construye en el año 0, antes de subvención y préstamo."),
    "life_cycle_cost": (
        "Costo del ciclo de vida (valor actual)",
        "Valor actual de todos los costos del período de análisis menos el valor residual (NIST Handbook 135).",
    ),
    "life_cycle_construction": ("  Costo de inversión", "La parte que se paga en el año 0."),
    "life_cycle_replacement": ("  Reposiciones", "La parte que repone lo que se desgasta."),
    "life_cycle_upkeep": ("  Mantenimiento", "La parte que mantiene las obras."),
    "life_cycle_grid": ("  Facturas de la red eléctrica", "La parte que paga la energía de la red eléctrica."),
    "life_cycle_fuel": ("  Combustible", "La parte que paga el combustible, transporte incluido."),
    "life_cycle_generator_service": (
        "  Servicio del grupo electrógeno",
        "La parte de los servicios y revisiones generales del grupo electrógeno.",
    ),
    "life_cycle_yearly_costs": ("  Otros costos anuales", "La parte que vuelve cada año."),
    "life_cycle_direct_support": ("  Apoyo directo", "La parte que la autoridad gasta en apoyo."),
    "life_cycle_residual": ("  Valor residual", "Lo que valen las obras al final, restado."),
    "annualised_cost": (
        "Costo anualizado",
        "Costo anual constante, en dinero del año 0, con el mismo valor actual (NIST Handbook 135).",
    ),
    "levelised_cost_per_m3": (
        "Costo nivelado del agua",
        "Costo del ciclo de vida respecto al valor actual del volumen entregado (costo incremental medio económico, "
        "ADB 1999).",
    ),
    "annualised_cost_per_person": (
        "Costo anualizado por persona del primer año",
        "Costo anualizado dividido por las personas servidas en el año 1.",
    ),
    "revenue_present": (
        "Valor actual de lo que pagan los usuarios",
        "Valor actual del agua vendida a la tarifa de agua.",
    ),
    "net_present_value": (
        "Valor actual neto",
        "Valor actual de lo que pagan los usuarios menos el costo del ciclo de vida.",
    ),
    "grant": ("Subvención", "Suma recibida en el año 0 que no se devuelve."),
    "loan": ("Préstamo", "Suma recibida en el año 0 que se devuelve."),
    "own_funds": (
        "Fondos propios o comunitarios, año 0",
        "Costo de inversión menos subvención y préstamo.",
    ),
    "owner_life_cycle_cost": (
        "Costo del ciclo de vida para el propietario",
        "Valor actual de todos los costos menos la subvención y el préstamo recibidos, más los pagos del préstamo.",
    ),
    "capital_expenditure": ("Gasto de inversión", "Costo de inversión (componentes del ciclo de vida, IRC 2011)."),
    "operation_and_minor_maintenance": (
        "Operación y mantenimiento menor",
        "Mantenimiento, energía, combustible, servicios y otros costos anuales (componentes del ciclo de vida, IRC "
        "2011).",
    ),
    "capital_maintenance": (
        "Mantenimiento de capital (reposición)",
        "Reposiciones (componentes del ciclo de vida, IRC 2011).",
    ),
    "expenditure_on_direct_support": (
        "Gasto en apoyo directo",
        "Apoyo de la autoridad local, 0 donde no se indicó ninguno (componentes del ciclo de vida, IRC 2011).",
    ),
    "residual_taken_off": ("Valor residual, restado", "Lo que valen las obras al final."),
    "cost_of_capital": (
        "Costo del capital (pagos menos préstamo)",
        "Valor actual de los pagos del préstamo menos el préstamo (componentes del ciclo de vida, IRC 2011).",
    ),
    "tariff_operation": (
        "Tarifa que cubre la operación",
        "Precio constante del agua, en dinero del año 0, que paga energía, servicios, mantenimiento y otros costos "
        "anuales.",
    ),
    "tariff_operation_and_renewals": (
        "Tarifa que cubre operación y reposiciones",
        "Lo mismo con el ahorro constante para reposiciones.",
    ),
    "tariff_full": (
        "Tarifa que lo cubre todo (recuperación total)",
        "Lo mismo con el apoyo directo y el costo de inversión menos subvención y valor residual, a la tasa de "
        "descuento.",
    ),
    "household_m3_per_month": (
        "Agua que demanda un hogar",
        "Agua por persona y día, como en la demanda, por las personas de un hogar; sin contar los alumnos de una "
        "escuela.",
    ),
    "bill_operation": ("Factura con la tarifa de operación", "Agua que demanda un hogar, a esa tarifa."),
    "bill_operation_and_renewals": (
        "Factura con la tarifa de operación y reposiciones",
        "Agua que demanda un hogar, a esa tarifa.",
    ),
    "bill_full": ("Factura con la tarifa que lo cubre todo", "Agua que demanda un hogar, a esa tarifa."),
    "income_share_operation": ("De un ingreso medio: operación", "Esa factura respecto al ingreso del hogar medio."),
    "income_share_operation_and_renewals": (
        "De un ingreso medio: operación y reposiciones",
        "Esa factura respecto al ingreso del hogar medio.",
    ),
    "income_share_full": ("De un ingreso medio: todo", "Esa factura respecto al ingreso del hogar medio."),
    "lowest_income_share_operation": (
        "Del ingreso del quinto más pobre: operación",
        "Esa factura respecto al ingreso de un hogar del quinto más pobre.",
    ),
    "lowest_income_share_operation_and_renewals": (
        "Del ingreso del quinto más pobre: operación y reposiciones",
        "Esa factura respecto al ingreso de un hogar del quinto más pobre.",
    ),
    "lowest_income_share_full": (
        "Del ingreso del quinto más pobre: todo",
        "Esa factura respecto al ingreso de un hogar del quinto más pobre.",
    ),
    "burden_mean": (
        "Carga anual, media",
        "Lo que se paga del año 1 al último, después de la subvención: operación, apoyo, reposiciones y pagos del "
        "préstamo.",
    ),
    "burden_largest": ("Carga anual, máxima", "Lo mismo en el año en que es mayor."),
    "burden_largest_year": ("  en el año", "Primer año con esa carga."),
    "renewal_saving": (
        "Ahorro anual constante para reposiciones",
        "Menor depósito constante, en dinero del año 0, con el que un fondo para todas las reposiciones nunca queda "
        "en números rojos.",
    ),
    "renewal_fund_empty_year": ("  fondo vacío después del año", "Año tras cuyas reposiciones el fondo queda a cero."),
    "renewal_fund_left": (
        "  fondo que queda al final",
        "Lo que tiene el fondo después del último año, en dinero del año 0: pertenece a las próximas reposiciones.",
    ),
    "capital_cost_per_person": (
        "Costo de inversión por persona",
        "Costo de inversión dividido por las personas servidas en el año 1.",
    ),
    "recurrent_cost_per_person": (
        "Costo recurrente por persona y año",
        "Operación, apoyo directo y ahorro para reposiciones, constante, dividido por las personas servidas en el "
        "año 1.",
    ),
    "co2_kg": (
        "Dióxido de carbono en el período de análisis",
        "Del combustible quemado y la energía comprada; no se cuenta donde no se da el factor de uno de ellos.",
    ),
    "co2_kg_per_year": ("Dióxido de carbono, media", "Lo mismo, media de los años."),
    "co2_kg_per_m3": ("Dióxido de carbono por m3 entregado", "Lo mismo respecto al agua entregada."),
    "saving_present": (
        "Ahorro en ciclo de vida (negativo: más caro)",
        "Costo del ciclo de vida de la referencia menos el de esta.",
    ),
    "internal_rate_of_return_percent": (
        "Tasa interna de retorno",
        "Tasa con la que el costo de inversión adicional iguala los ahorros posteriores frente a la referencia.",
    ),
    "payback_years": (
        "Período de recuperación, simple",
        "Años hasta que el costo de inversión adicional se recupera de forma duradera.",
    ),
    "discounted_payback_years": ("Período de recuperación, descontado", "Lo mismo con los ahorros descontados."),
}
