"""Português das tarefas de manutenção e das peças de reserva: quem faz o quê, quando, e segundo quem."""

_OPERATOR = "operador"
_ELECTRICIAN = "electricista credenciado"
_MECHANIC = "mecânico"
_CREW = "equipa formada"
_PRACTICE = "prática corrente, sem fonte"
_IRRIGATION_GUIDE = "GIZ e FAO, manutenção da rega solar, em segunda mão"

_TASKS = {
    "daily.works": (
        "Ler o contador e a pressão; procurar fugas, ver as torneiras", _OPERATOR, _PRACTICE,
    ),
    "daily.solar": (
        "Ver que funciona; olhar para as luzes de avaria", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "daily.grid": (
        "Ver a tensão e as lâmpadas das fases", _OPERATOR, _PRACTICE,
    ),
    "daily.generator": (
        "Óleo, líquido de arrefecimento, combustível e fugas antes do arranque; anotar horas e litros",
        _OPERATOR, _PRACTICE,
    ),
    "weekly.works": (
        "Nível no reservatório, interruptor de bóia, vedação e tampas", _OPERATOR, _PRACTICE,
    ),
    "weekly.solar": (
        "Ver a produção, a fixação e o controlador, sem o abrir", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "weekly.generator": (
        "Ver a bateria", _OPERATOR, _PRACTICE,
    ),
    "monthly.works": (
        "Anotar o nível dinâmico e os m3 por kWh; informar o comité de uma tendência", _OPERATOR, _PRACTICE,
    ),
    "monthly.solar": (
        "Lavar os módulos nas horas frescas do dia, a partir do chão, sem andar sobre eles",
        _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "monthly.generator": (
        "Se está de reserva: pô-lo a funcionar 30 minutos a um terço da sua potência nominal ou mais",
        _OPERATOR, "cada 30 dias: US Army TM 9-6115-464-12; carga: NFPA 110; ambos em segunda mão",
    ),
    "quarterly.works": (
        "Analisar cloro e E. coli; rodar todas as válvulas", "operador com os serviços de saúde", _PRACTICE,
    ),
    "quarterly.solar": (
        "Parafusos, cabos, sombra e vegetação", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "quarterly.grid": (
        "Contactos, pó no quadro", _ELECTRICIAN, _PRACTICE,
    ),
    "quarterly.generator": (
        "Filtro de ar, correias, purga do filtro de combustível", _MECHANIC, _PRACTICE,
    ),
    "yearly.works": (
        "Nível em repouso na estação seca; reservatório esvaziado, esfregado, desinfectado; contador aferido; "
        "isolamento do motor",
        _CREW, _PRACTICE,
    ),
    "yearly.solar": (
        "Tensão e corrente de cada fileira, isolamento, resistência de terra, protecção contra sobretensões",
        _ELECTRICIAN, _IRRIGATION_GUIDE,
    ),
    "yearly.grid": (
        "Resistência de terra, disjuntores e dispositivo diferencial", _ELECTRICIAN, _PRACTICE,
    ),
    "yearly.generator": (
        "Revisão completa e ensaio em carga", _MECHANIC, _PRACTICE,
    ),
    "years.works": (
        "Bomba e coluna montante içadas; furo ensaiado de novo onde o seu caudal específico desceu um quinto ou mais",
        _CREW, _PRACTICE,
    ),
    "years.solar": (
        "Ventiladores, controlador, seccionadores CC", _ELECTRICIAN, _PRACTICE,
    ),
    "years.grid": (
        "Peças do quadro", _ELECTRICIAN, _PRACTICE,
    ),
    "years.generator": (
        "Grande reparação, pelas suas horas", _MECHANIC, _PRACTICE,
    ),
}  # fmt: skip
"""O que há a fazer, quem o faz, e de onde vem, por ritmo e por obra."""

SENTENCES: dict[str, str] = {
    "proposal.upkeep.heading": "Tarefas de manutenção",
    "proposal.upkeep.column.of": "Obras",
    "proposal.upkeep.column.task": "Tarefa",
    "proposal.upkeep.column.by": "Por",
    "proposal.upkeep.column.basis": "Base",
    "proposal.upkeep.daily": "Todos os dias",
    "proposal.upkeep.weekly": "Todas as semanas",
    "proposal.upkeep.monthly": "Cada duas a quatro semanas",
    "proposal.upkeep.quarterly": "Cada trimestre",
    "proposal.upkeep.yearly": "Cada ano",
    "proposal.upkeep.years": "Cada cinco a dez anos",
    "proposal.upkeep.of.works": "furo, bomba, tubagens, reservatório",
    "proposal.upkeep.of.solar": "campo fotovoltaico",
    "proposal.upkeep.of.grid": "ligação à rede",
    "proposal.upkeep.of.generator": "gerador",
    "proposal.upkeep.sources": "Quem faz uma tarefa é prática corrente, sem fonte; adapte-o a quem há.",
    "proposal.spares.heading": "Peças de reserva (prática corrente, sem fonte)",
    "proposal.spares.kept": "Guardadas",
    "proposal.spares.parts": "Peças",
    "proposal.spares.on_site": "no local",
    "proposal.spares.in_district": "no distrito, uma para cerca de dez sistemas",
    "proposal.spares.on_site.works": (
        "interruptor de bóia e sonda de nível, válvula de retenção, válvula de corrediça, uniões de tubo, vedantes "
        "de torneira, conjunto de emenda para o cabo, relé de sobrecarga"
    ),
    "proposal.spares.on_site.solar": (
        "fusíveis, cartucho da protecção contra sobretensões, conectores e a ferramenta para os cravar, um módulo do "
        "mesmo tipo"
    ),
    "proposal.spares.on_site.grid": "contactor, fusíveis, cartucho da protecção contra sobretensões",
    "proposal.spares.on_site.generator": "óleo, filtros de óleo, combustível e ar, correia, bateria de arranque",
    "proposal.spares.in_district.works": "corpo da bomba, motor e controlador, que são os que mais demoram a chegar",
}
for _key, _parts in _TASKS.items():
    SENTENCES |= {
        f"proposal.upkeep.{_key}.{_part}": _said for _part, _said in zip(("task", "by", "basis"), _parts, strict=True)
    }
