"""Español de las tareas de mantenimiento y los repuestos: quién hace qué, cada cuánto, y según quién."""

_PRACTICE = "práctica habitual, sin fuente"
_IRRIGATION_GUIDE = "GIZ y FAO, mantenimiento del riego solar, de segunda mano"
_OPERATOR, _ELECTRICIAN, _CREW, _MECHANIC = "operador", "electricista autorizado", "cuadrilla formada", "mecánico"

_TASKS: dict[str, tuple[str, str, str]] = {
    "daily.works": ("Leer el contador y la presión; buscar fugas, mirar los grifos", _OPERATOR, _PRACTICE),
    "daily.solar": ("Ver que funciona; mirar las luces de fallo", _OPERATOR, _IRRIGATION_GUIDE),
    "daily.grid": ("Mirar la tensión y las luces de las fases", _OPERATOR, _PRACTICE),
    "daily.generator": (
        "Aceite, refrigerante, combustible y fugas antes del arranque; anotar horas y litros", _OPERATOR, _PRACTICE,
    ),
    "weekly.works": ("Nivel del tanque, interruptor de flotador, cerca y tapas", _OPERATOR, _PRACTICE),
    "weekly.solar": (
        "Mirar la producción, el montaje y el controlador, sin abrirlo", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "weekly.generator": ("Mirar la batería", _OPERATOR, _PRACTICE),
    "monthly.works": (
        "Anotar el nivel dinámico y los m3 por kWh; avisar al comité de una tendencia", _OPERATOR, _PRACTICE,
    ),
    "monthly.solar": (
        "Lavar los módulos en las horas frescas del día, desde el suelo, sin pisarlos", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "monthly.generator": (
        "Si está en reserva: hacerlo funcionar 30 minutos a un tercio de su potencia nominal o más", _OPERATOR,
        "cada 30 días: US Army TM 9-6115-464-12; carga: NFPA 110; ambos de segunda mano",
    ),
    "quarterly.works": (
        "Analizar cloro y E. coli; accionar todas las válvulas", "operador con el servicio de salud", _PRACTICE,
    ),
    "quarterly.solar": ("Pernos, cables, sombras y vegetación", _OPERATOR, _IRRIGATION_GUIDE),
    "quarterly.grid": ("Contactos, polvo en el tablero", _ELECTRICIAN, _PRACTICE),
    "quarterly.generator": ("Filtro de aire, correas, purga del filtro de combustible", _MECHANIC, _PRACTICE),
    "yearly.works": (
        "Nivel en reposo en la estación seca; tanque vaciado, cepillado y desinfectado; contador comprobado; "
        "aislamiento del motor",
        _CREW, _PRACTICE,
    ),
    "yearly.solar": (
        "Tensión y corriente de cada cadena, aislamiento, resistencia de tierra, protección contra sobretensiones",
        _ELECTRICIAN, _IRRIGATION_GUIDE,
    ),
    "yearly.grid": (
        "Resistencia de tierra, interruptores automáticos e interruptor diferencial", _ELECTRICIAN, _PRACTICE,
    ),
    "yearly.generator": ("Servicio completo y prueba con carga", _MECHANIC, _PRACTICE),
    "years.works": (
        "Bomba y tubería de columna izadas; pozo perforado probado de nuevo donde su caudal específico ha bajado una "
        "quinta parte o más",
        _CREW, _PRACTICE,
    ),
    "years.solar": ("Ventiladores, controlador, seccionadores de CC", _ELECTRICIAN, _PRACTICE),
    "years.grid": ("Piezas del tablero", _ELECTRICIAN, _PRACTICE),
    "years.generator": ("Revisión general, según sus horas", _MECHANIC, _PRACTICE),
}  # fmt: skip
"""Qué hay que hacer, quién lo hace y de dónde viene, por frecuencia y por obra."""

SENTENCES: dict[str, str] = {
    "proposal.upkeep.heading": "Tareas de mantenimiento",
    "proposal.upkeep.column.of": "Obras",
    "proposal.upkeep.column.task": "Tarea",
    "proposal.upkeep.column.by": "Por",
    "proposal.upkeep.column.basis": "Origen",
    "proposal.upkeep.daily": "Cada día",
    "proposal.upkeep.weekly": "Cada semana",
    "proposal.upkeep.monthly": "Cada dos a cuatro semanas",
    "proposal.upkeep.quarterly": "Cada trimestre",
    "proposal.upkeep.yearly": "Cada año",
    "proposal.upkeep.years": "Cada cinco a diez años",
    "proposal.upkeep.of.works": "pozo perforado, bomba, tuberías, tanque",
    "proposal.upkeep.of.solar": "campo fotovoltaico",
    "proposal.upkeep.of.grid": "conexión a la red eléctrica",
    "proposal.upkeep.of.generator": "grupo electrógeno",
    "proposal.upkeep.sources": (
        "Quién hace una tarea es práctica habitual, sin fuente; adáptelo a quienes están en el lugar."
    ),
    "proposal.spares.heading": "Repuestos (práctica habitual, sin fuente)",
    "proposal.spares.kept": "Guardados",
    "proposal.spares.parts": "Piezas",
    "proposal.spares.on_site": "en el lugar",
    "proposal.spares.in_district": "en el distrito, uno para unos diez sistemas",
    "proposal.spares.on_site.works": (
        "interruptor de flotador y sensor de nivel, válvula de retención, válvula de compuerta, uniones de tubería, "
        "juntas de grifo, kit de empalme del cable, relé de sobrecarga"
    ),
    "proposal.spares.on_site.solar": (
        "fusibles, cartucho de la protección contra sobretensiones, conectores y la herramienta para engastarlos, un "
        "módulo del mismo tipo"
    ),
    "proposal.spares.on_site.grid": "contactor, fusibles, cartucho de la protección contra sobretensiones",
    "proposal.spares.on_site.generator": (
        "aceite, filtros de aceite, de combustible y de aire, correa, batería de arranque"
    ),
    "proposal.spares.in_district.works": "cuerpo de bomba, motor y controlador, que son los que más tardan en llegar",
}
for _key, _parts in _TASKS.items():
    SENTENCES |= {
        f"proposal.upkeep.{_key}.{_part}": _said for _part, _said in zip(("task", "by", "basis"), _parts, strict=True)
    }
