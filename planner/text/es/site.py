"""Español de las páginas de altura, tanque, comprobaciones, datos y lo simulado."""

SENTENCES: dict[str, str] = {
    "simulated.title": "Cantidades simuladas",
    "simulated.under": (
        "Agua, energía, combustible y horas son valores de la simulación horaria: solo cambian con un nuevo cálculo. "
        "Lo que las horas exigen al grupo electrógeno y la factura de la red eléctrica, con los precios del primer "
        "año, son fórmulas en la hoja «Datos»."
    ),
    "simulated.years": "Período de análisis (años)",
    "simulated.people": "Personas, primer año (0: ninguna)",
    "simulated.demand_m3": "Demanda (m3)",
    "simulated.delivered_m3": "Entregada (m3)",
    "simulated.fuel_l": "Combustible (L)",
    "simulated.grid_kwh": "Red eléctrica (kWh)",
    "simulated.grid_peaks_kw": "Suma de puntas mensuales (kW)",
    "simulated.hours": "Grupo electrógeno (h)",
    "simulated.run_h": "Grupo electrógeno, funcionamiento total (h)",
    "simulated.services": "Servicios",
    "simulated.used_h": "Horas del grupo electrógeno en uso (h)",
    "simulated.age_years": "Años del grupo electrógeno en uso",
    "simulated.overhauls": "Revisiones generales",
    "simulated.worn": "Grupos electrógenos agotados por horas",
    "simulated.bought": "Grupos electrógenos repuestos",
    "simulated.kept_h": "Horas del grupo electrógeno conservado (h)",
    "simulated.kept_years": "Años del grupo electrógeno conservado",
    "simulated.block_kwh": "Red eléctrica, bloque {number} (kWh)",
    "simulated.grid_bill": "Factura de la red eléctrica ({currency})",
    "simulated.further_kwh": "{source} (kWh)",
    "simulated.further_hours": "{source} (h)",
    "simulated.further_fuel_l": "{source}, combustible (L)",
    "simulated.further_band": "{source}, franja {band} (kWh)",
    "simulated.left": "Vida útil restante del grupo electrógeno al final (parte)",
    # ---- cash flow
    "head.title": "Altura manométrica total y punto de funcionamiento",
    "head.under": (
        "Obras hidráulicas de {option}; alturas en metros de agua. El punto de funcionamiento está donde la bomba a "
        "plena velocidad coincide con el sistema, o donde la limita el caudal seguro, el límite de potencia o el "
        "nivel de la aspiración."
    ),
    "head.build_up": "Composición en el punto de funcionamiento",
    "head.part": "Parte",
    "head.head_m": "Altura (m)",
    "head.share": "Proporción (%)",
    "head.static_level": "Nivel estático, media de los meses",
    "head.rise": "Subida del terreno a la entrada del tanque",
    "head.drawdown": "Descenso",
    "head.pipe_friction": "Fricción en las tuberías",
    "head.fitting_losses": "Pérdidas en los accesorios",
    "head.residual": "Altura residual en la entrada",
    "head.other": "Punto alto del trazado, o retenido por una válvula",
    "head.total": "Altura manométrica total",
    "head.duty": "Punto de funcionamiento, nivel medio anual del agua",
    "head.figure": "Magnitud",
    "head.value": "Valor",
    "head.unit": "Unidad",
    "head.flow": "Caudal",
    "head.shut_off": "Altura sin caudal, velocidad nominal",
    "head.speed": "Velocidad",
    "head.of_rated": "% de la nominal",
    "head.hydraulic_power": "Potencia del agua elevada",
    "head.input_power": "Potencia absorbida por el motor",
    "head.efficiency": "Rendimiento, del motor al agua",
    "head.limited_by": "Limitado por",
    "head.by_run": "Fricción en el punto de funcionamiento por tramo de tubería ({method})",
    "head.run": "Tramo de tubería",
    "head.length": "Longitud (m)",
    "head.inside_diameter": "Diámetro interior (mm)",
    "head.velocity": "Velocidad (m/s)",
    "head.friction": "Fricción (m)",
    "head.fittings": "Accesorios (m)",
    "head.loss": "Pérdida (m/100 m)",
    "head.by_month": "Punto de funcionamiento por mes",
    "head.month": "Mes",
    "head.level": "Nivel estático (m)",
    "head.static_lift": "Altura geométrica (m)",
    "head.flow_m3h": "Caudal (m3/h)",
    "head.total_head": "Altura total (m)",
    "head.input_w": "Potencia del motor (W)",
    "head.differing": "Opciones con otra bomba, tubería o límite",
    "head.option": "Opción de suministro",
    "head.curves": "Puntos de las curvas",
    "head.system": "Sistema (m)",
    "head.at_speed": "A {speed} % (m)",
    "head.chart": "Bomba y sistema",
    "head.chart_alt": (
        "Altura según el caudal: el sistema, la bomba a varias velocidades y el punto de funcionamiento donde "
        "coinciden."
    ),
    "head.system_curve": "Sistema",
    "head.pump_curve": "Bomba al {speed} % de la velocidad",
    "head.duty_point": "Punto de funcionamiento",
    # ---- tank
    "tank.title": "Tanque e interruptor de flotador",
    "tank.under": (
        "Cada tamaño y cada ajuste se simuló hora por hora durante todos los años, con todo lo demás de la opción tal "
        "como se eligió."
    ),
    "tank.by_size": "Demanda cubierta según el tamaño del tanque",
    "tank.option": "Opción de suministro",
    "tank.tank_m3": "Tanque (m3)",
    "tank.met": "Demanda cubierta (%)",
    "tank.target": "Objetivo (%)",
    "tank.price": "Precio del tanque ({currency})",
    "tank.chosen": "Elegido",
    "tank.is_chosen": "✓ elegido",
    "tank.settings": "Ajustes del interruptor de flotador",
    "tank.none_tried": (
        "Ninguna opción deja que la red eléctrica o el grupo electrógeno respalden lo que bombea el sol, así que no "
        "se compararon ajustes."
    ),
    "tank.start": "Nivel de arranque (% del tanque)",
    "tank.stop": "Nivel de parada (% del tanque)",
    "tank.meets": "Alcanza el objetivo",
    "tank.grid": "Red eléctrica (kWh/año)",
    "tank.fuel": "Combustible (L/año)",
    "tank.life_cycle_cost": "Costo del ciclo de vida ({currency})",
    "tank.annualised_cost": "Costo anualizado ({currency}/año)",
    "tank.against": "Frente al ajuste usado ({currency}/año)",
    "tank.remark": "Observación",
    "tank.used": "usado",
    "tank.best": "mejor",
    "tank.none_better": (
        "{option}: arranque al {start} %, parada al {stop} % del tanque; de los ajustes probados ninguno es mejor."
    ),
    "tank.would_meet": (
        "{option}: arranque al {start} %, parada al {stop} % del tanque no alcanza el objetivo de servicio; {better} "
        "% lo alcanzaría."
    ),
    "tank.would_save": (
        "{option}: arranque al {start} %, parada al {stop} % del tanque; {better} % ahorraría {saving} al año."
    ),
    "tank.most_delivered": (
        "{option}: arranque al {start} %, parada al {stop} % del tanque; {better} % sería el que más entrega de los "
        "probados."
    ),
    "tank.chart_alt": (
        "Demanda cubierta según el tamaño del tanque, de {option} y de las opciones que difieren de ella, y el "
        "objetivo."
    ),
    "tank.target_line": "Objetivo",
    # ---- checks
    "checks.title": "Comprobaciones del lugar",
    "checks.under": "{summary}. Las normas locales y el trabajo de profesionales autorizados tienen prioridad.",
    "checks.verdict": "Veredicto",
    "checks.topic": "Tema",
    "checks.compared": "Qué se comparó",
    "checks.value": "Valor",
    "checks.limit": "Límite",
    "checks.margin": "Margen",
    "checks.why": "Por qué importa",
    "checks.remedy": "Remedio",
    "checks.source": "Origen del límite",
    "checks.pass": "cumple",
    "checks.caution": "advertencia",
    "checks.fail": "no cumple",
    "checks.not given": "no dado",
    "checks.route": "Trazado y líneas de presión",
    "checks.in_metres": "{name} (m)",
    "checks.chainage": "Distancia",
    "checks.ground": "Terreno",
    "checks.duty_line": "Línea piezométrica en funcionamiento",
    "checks.shut_off_line": "Línea piezométrica a válvula cerrada",
    "checks.allowed_line": "Límite de presión de la tubería",
    "checks.not_known": "no conocido",
    "checks.chart_alt": (
        "Terreno, líneas piezométricas y límite de la tubería a lo largo del trazado desde el pozo perforado."
    ),
    "checks.chainage_axis": "Distancia desde el pozo perforado (m)",
    "checks.level_axis": "Nivel sobre el terreno junto al pozo perforado (m)",
    # ---- inputs
    "inputs.under": (
        "Todas las claves del escenario. «dado» está en el escenario; «por defecto» se supone, con su fuente; «no "
        "dado» no tiene valor; «{starter}» se inventó para el escenario inicial y no se ha cambiado desde entonces."
    ),
    "inputs.money_is": "«money» es {currency}.",
    "inputs.status_given": "dado",
    "inputs.status_default": "por defecto",
    "inputs.status_assumed": "supuesto",
    "inputs.status_not given": "no dado",
    "inputs.status_starter": "todavía el valor inicial",
    "starter.left_over": (
        "{count} valores siguen siendo los inventados del escenario inicial («{status}» en la hoja «Datos»): ponga "
        "los del lugar en su sitio antes de usar las cifras."
    ),
    "inputs.note": (
        "Para cambiar un dato, vaya a la hoja «Formulario»: los valores de aquí la siguen, y todas las sumas de "
        "dinero siguen a estos. Así se pueden cambiar los precios, las vidas útiles y el mantenimiento de lo "
        "comprado, los porcentajes, la tasa de descuento, la inflación, el crecimiento de los precios, la subvención, "
        "el préstamo, la tarifa de agua y los precios de la tarifa eléctrica. Todo lo demás necesita un nuevo cálculo "
        "de este libro (planner run FILE): lo que cambia agua, energía, combustible u horas, el período de análisis, "
        "el tipo de precios, los límites de los bloques de la tarifa, la vida útil de la bomba, un porcentaje que era "
        "0, y lo que se eligió por costo (tanque, cadenas, niveles), que queda como se eligió. La hoja «Tanque» y las "
        "frases de la hoja «Respuesta» quedan como en el cálculo."
    ),
    "inputs.key": "Clave",
    "inputs.value": "Valor",
    "inputs.status": "Dado o por defecto",
    "inputs.meaning": "Significado",
    "inputs.source": "Fuente del valor por defecto, o qué significa la ausencia",
    "inputs.by_month": "por mes",
    "inputs.weather": "Datos meteorológicos usados",
    "inputs.weather_source": "Fuente: {source}",
    "inputs.weather_note": "Nota: {note}",
    "inputs.altitude": "Altitud del lugar",
    "inputs.altitude_given": "dada",
    "inputs.altitude_grid": "de la malla mundial de pvlib",
    "inputs.years": "Irradiación del año más bajo y del más alto",
    "inputs.from_to": "{low} a {high}",
    "inputs.of_mean": "% de la media",
    "weather.ghi_kwh_m2_day": "Irradiación horizontal, media",
    "weather.ghi_lowest_year_kwh_m2_day": "Irradiación horizontal, año más bajo",
    "weather.ghi_highest_year_kwh_m2_day": "Irradiación horizontal, año más alto",
    "weather.temperature_mean_c": "Temperatura del aire, media",
    "weather.temperature_min_c": "Temperatura del aire, hora más fría",
    "weather.temperature_max_c": "Temperatura del aire, hora más caliente",
    "weather.clearness": "Índice de claridad, media",
    "weather.clearness_spread": "Índice de claridad, dispersión de los días",
    "weather.wind_m_s": "Viento",
}
