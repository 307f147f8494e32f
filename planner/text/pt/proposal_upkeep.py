"""Português das tarefas de manutenção e das peças de reserva: quem faz o quê, quando, e segundo quem."""

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
