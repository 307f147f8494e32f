"""Português do resumo, ao lado da decisão: os seus títulos, os seus gráficos, e estes em palavras."""

SENTENCES: dict[str, str] = {
    "brief.place_people": "{place}. Serve {people} pessoas no primeiro ano.",
    "brief.days": "Dias sem água suficiente",
    "brief.pay": "O que os utilizadores têm de pagar",
    "brief.turns": "O que inverteria a resposta",
    "brief.options": "As opções, a melhor primeiro",
    "brief.who": "Por quem, quando, a partir de quê",
    "brief.cautions_follow": "As advertências no fim fazem parte deste resumo.",
    # money
    "brief.costs": "Custo do ciclo de vida por parte",
    "brief.costs_alt": (
        "Barras do custo do ciclo de vida de cada opção por parte, umas a seguir às outras. A primeira, {option}, "
        "custa {cost} ao todo em {years} anos; a sua maior parte é: {part}."
    ),
    # water
    "brief.water": "Água por mês e por fonte: {option}",
    "brief.water_alt": (
        "Colunas da água bombeada por cada fonte, por mês, média de {years} anos, e por cima a água em falta. Falta "
        "mais em {month}: {missing} m3 por dia."
    ),
    "brief.water_alt_none_missing": (
        "Colunas da água bombeada por cada fonte, por mês, média de {years} anos. Não falta água em nenhum mês."
    ),
    "brief.water_axis": "m3 por dia, média de {years} anos",
    "brief.water_missing": "em falta",
    # tank
    "brief.tank": "O reservatório na sua pior quinzena: {option}",
    "brief.tank_alt": (
        "Linha da água no reservatório, hora a hora, a partir de {day} {month} do ano {year}, os catorze dias com "
        "mais água em falta de todos os anos, em que faltam {missing} m3. O reservatório leva {tank} m3; o seu nível "
        "mais baixo nestes dias é {lowest} m3."
    ),
    "brief.tank_alt_none_missing": (
        "Linha da água no reservatório, hora a hora, a partir de {day} {month} do ano {year}, os catorze dias com o "
        "reservatório mais baixo de todos os anos. Não falta água. O reservatório leva {tank} m3; o seu nível mais "
        "baixo nestes dias é {lowest} m3."
    ),
    "brief.tank_axis": "m3",
    "brief.tank_days": "dias a partir de {day} {month} do ano {year}",
    "brief.tank_level": "nível",
    "brief.tank_full": "cheio",
    "brief.tank_missing": "em falta nesse dia",
}
