"""Português do que uma resposta tem de incerto: o que a mudaria, o pior ano em dez, o que está demasiado próximo."""

SENTENCES: dict[str, str] = {
    # ---- too close to call
    "uncertainty.too_close": (
        "As opções {first} e {second} estão demasiado próximas para decidir: a sua ordem inverte-se em {turned} de "
        "{changes} alterações de um dado incerto de cada vez, e em mais {close} fica entre elas menos de "
        "{percent:g}% do custo."
    ),
    "uncertainty.ahead_in_most": (
        "A opção {first} fica quase sempre à frente da opção {second}: a sua ordem inverte-se em {turned} de "
        "{changes} alterações de um dado incerto de cada vez, e em mais {close} fica entre elas menos de "
        "{percent:g}% do custo."
    ),
    "uncertainty.ahead_in_all": (
        "A opção {first} fica à frente da opção {second} por {percent:g}% do custo ou mais, ou porque a opção "
        "{second} falha o objectivo, em todas as {changes} alterações de um dado incerto de cada vez."
    ),
    "uncertainty.misses_in_some": (
        "A opção {first} falha o objectivo em {turned} de {changes} alterações de um dado incerto de cada vez."
    ),
    "uncertainty.meets_in_all": (
        "A opção {first} cumpre o objectivo em todas as {changes} alterações de um dado incerto de cada vez."
    ),
    # ---- the worst year in ten
    "uncertainty.worst_year": (
        "Pior ano em dez com {option}: necessidades cobertas {met:.2f}%; dias em que falta mais de um décimo da "
        "água: {days:.0f}; água em falta, média de todos os dias, {litres:,.0f} L por dia."
    ),
    "uncertainty.worst_year_full": "Pior ano em dez com {option}: não falta água.",
    "uncertainty.few_years": "O pior ano em dez fica perto do pior dos anos contados ({years}).",
    # ---- what would turn the answer
    "uncertainty.percent": "{value:,.10g}%",
    "uncertainty.other_first_above": (
        "{input}: acima de {value} (agora {base}), vem primeiro {other} em vez de {option}."
    ),
    "uncertainty.other_first_below": (
        "{input}: abaixo de {value} (agora {base}), vem primeiro {other} em vez de {option}."
    ),
    "uncertainty.misses_above": (
        "{input}: acima de {value} (agora {base}), a opção {option} falha o objectivo e vem primeiro {other}."
    ),
    "uncertainty.misses_below": (
        "{input}: abaixo de {value} (agora {base}), a opção {option} falha o objectivo e vem primeiro {other}."
    ),
    "uncertainty.none_meets_above": "{input}: acima de {value} (agora {base}), nenhuma opção cumpre o objectivo.",
    "uncertainty.none_meets_below": "{input}: abaixo de {value} (agora {base}), nenhuma opção cumpre o objectivo.",
    "uncertainty.meets_above": "{input}: acima de {value} (agora {base}), a opção {other} cumpre o objectivo.",
    "uncertainty.meets_below": "{input}: abaixo de {value} (agora {base}), a opção {other} cumpre o objectivo.",
    "uncertainty.nearest_above": (
        "{input}: acima de {value} (agora {base}), a que mais se aproxima do objectivo é {other}."
    ),
    "uncertainty.nearest_below": (
        "{input}: abaixo de {value} (agora {base}), a que mais se aproxima do objectivo é {other}."
    ),
    "uncertainty.stays_first": "{input}: entre {low} e {high} (agora {base}), a opção {option} continua em primeiro.",
    "uncertainty.stays_nearest": (
        "{input}: entre {low} e {high} (agora {base}), nenhuma opção cumpre o objectivo e a que mais se aproxima "
        "continua a ser {option}."
    ),
    "uncertainty.works_held": (
        "Estes valores valem para as obras como seriam construídas, todos os tamanhos como hoje escolhidos; tamanhos "
        "escolhidos de novo para outro valor podem inverter-se noutro ponto."
    ),
    "uncertainty.works_held_in_years": (
        "Estes valores valem para as obras como seriam construídas, todos os tamanhos como hoje escolhidos, e vêm de "
        "{run} dos {years} anos; tamanhos escolhidos de novo para outro valor podem inverter-se noutro ponto."
    ),
    # ---- the table
    "uncertainty.heading": "O que inverteria a resposta (obras como seriam construídas)",
    "uncertainty.input": "Dado",
    "uncertainty.base": "Valor",
    "uncertainty.unit": "Unidade",
    "uncertainty.tried": "Ensaiado",
    "uncertainty.below": "Primeira abaixo",
    "uncertainty.above": "Primeira acima",
    "uncertainty.range": "{low:,.10g} a {high:,.10g}",
    "uncertainty.first_there": "{value:,.10g}: {option}",
    "uncertainty.nearest_there": "{value:,.10g}: {option} (falha o objectivo)",
    "uncertainty.no_turn": "não muda",
}
