"""Español de lo incierto de una respuesta: qué la cambiaría, y el peor año de cada diez."""

SENTENCES: dict[str, str] = {
    # ---- too close to call
    "uncertainty.too_close": (
        "{first} y {second} están demasiado igualadas para decidir: su orden cambia en {turned} de {changes} cambios "
        "de un dato incierto cada vez, y en {close} más queda entre ellas menos del {percent:g} % de costo."
    ),
    "uncertainty.ahead_in_most": (
        "{first} queda casi siempre por delante de {second}: su orden cambia en {turned} de {changes} cambios de un "
        "dato incierto cada vez, y en {close} más queda entre ellas menos del {percent:g} % de costo."
    ),
    "uncertainty.ahead_in_all": (
        "{first} queda por delante de {second} por un {percent:g} % de costo o más, o porque {second} no alcanza el "
        "objetivo, en los {changes} cambios de un dato incierto cada vez."
    ),
    "uncertainty.misses_in_some": (
        "{first} no alcanza el objetivo en {turned} de {changes} cambios de un dato incierto cada vez."
    ),
    "uncertainty.meets_in_all": "{first} alcanza el objetivo en los {changes} cambios de un dato incierto cada vez.",
    # ---- the worst year in ten
    "uncertainty.worst_year": (
        "Peor año de cada diez con {option}: demanda cubierta {met:.2f} %; días a los que falta más de la décima "
        "parte de su agua: {days:.0f}; agua que falta, media de todos los días: {litres:,.0f} L por día."
    ),
    "uncertainty.worst_year_full": "Peor año de cada diez con {option}: no falta agua.",
    "uncertainty.few_years": "El peor año de cada diez queda cerca del peor de los años contados ({years}).",
    # ---- what would turn the answer
    "uncertainty.percent": "{value:,.10g} %",
    "uncertainty.other_first_above": (
        "{input}: por encima de {value} (ahora {base}), la primera es {other} en lugar de {option}."
    ),
    "uncertainty.other_first_below": (
        "{input}: por debajo de {value} (ahora {base}), la primera es {other} en lugar de {option}."
    ),
    "uncertainty.misses_above": (
        "{input}: por encima de {value} (ahora {base}), {option} no alcanza el objetivo y la primera es {other}."
    ),
    "uncertainty.misses_below": (
        "{input}: por debajo de {value} (ahora {base}), {option} no alcanza el objetivo y la primera es {other}."
    ),
    "uncertainty.none_meets_above": (
        "{input}: por encima de {value} (ahora {base}), ninguna opción alcanza el objetivo."
    ),
    "uncertainty.none_meets_below": (
        "{input}: por debajo de {value} (ahora {base}), ninguna opción alcanza el objetivo."
    ),
    "uncertainty.meets_above": "{input}: por encima de {value} (ahora {base}), {other} alcanza el objetivo.",
    "uncertainty.meets_below": "{input}: por debajo de {value} (ahora {base}), {other} alcanza el objetivo.",
    "uncertainty.nearest_above": (
        "{input}: por encima de {value} (ahora {base}), {other} es la que más se acerca al objetivo."
    ),
    "uncertainty.nearest_below": (
        "{input}: por debajo de {value} (ahora {base}), {other} es la que más se acerca al objetivo."
    ),
    "uncertainty.stays_first": "{input}: entre {low} y {high} (ahora {base}), {option} sigue siendo la primera.",
    "uncertainty.stays_nearest": (
        "{input}: entre {low} y {high} (ahora {base}), ninguna opción alcanza el objetivo y {option} sigue siendo la "
        "que más se acerca."
    ),
    "uncertainty.works_held": (
        "Estos valores valen para las obras tal como se construirían, con cada tamaño elegido hoy; con tamaños "
        "elegidos de nuevo para otro valor, el cambio puede estar en otro punto."
    ),
    "uncertainty.works_held_in_years": (
        "Estos valores valen para las obras tal como se construirían, con cada tamaño elegido hoy, y provienen de "
        "{run} de los {years} años; con tamaños elegidos de nuevo para otro valor, el cambio puede estar en otro "
        "punto."
    ),
    # ---- the table
    "uncertainty.heading": "Qué cambiaría la respuesta (obras tal como se construirían)",
    "uncertainty.input": "Dato",
    "uncertainty.base": "Valor",
    "uncertainty.unit": "Unidad",
    "uncertainty.tried": "Probado",
    "uncertainty.below": "Primera por debajo",
    "uncertainty.above": "Primera por encima",
    "uncertainty.range": "{low:,.10g} a {high:,.10g}",
    "uncertainty.first_there": "{value:,.10g}: {option}",
    "uncertainty.nearest_there": "{value:,.10g}: {option} (no alcanza el objetivo)",
    "uncertainty.no_turn": "sigue igual",
}
