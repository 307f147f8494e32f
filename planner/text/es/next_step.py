"""Español del paso siguiente desde una opción, y de lo que cuesta su agua más allá de la de otra."""

SENTENCES: dict[str, str] = {
    "answer.only_option": (
        "{option}, la única opción comparada, alcanza el objetivo del {target:g} % del agua: costo de inversión "
        "{capital_cost}, costo del ciclo de vida (valor actual) {life_cycle_cost} en el período de análisis de "
        "{years} años, costo nivelado del agua {per_m3} por m3."
    ),
    "answer.only_option_incomplete": (
        "{option}, la única opción comparada, alcanza el objetivo del {target:g} % del agua. Su total está "
        "incompleto, porque falta el precio de lo siguiente: {unpriced}; el resto suma un costo del ciclo de vida "
        "(valor actual) de {life_cycle_cost} en el período de análisis de {years} años y un costo nivelado del agua "
        "de {per_m3} por m3."
    ),
    "next_step.kind.string": "una cadena de módulos más ({strings} en lugar de {strings_before})",
    "next_step.kind.tank": "el tanque siguiente ({tank:g} m3 en lugar de {tank_before:g} m3)",
    "next_step.kind.string_and_tank": (
        "una cadena de módulos más y el tanque siguiente ({strings} cadenas, {tank:g} m3)"
    ),
    "next_step.kind.pump": "otra bomba ({name})",
    "next_step.kind.source": "además, {name}",
    "next_step.would_meet_dearer": (
        "{option} alcanzaría el objetivo con este paso: {step}. Agua cubierta {after:.1f} % y {days_after:.1f "
        "día|días} sin agua suficiente al año, en lugar de {before:.1f} % y {days_before:.1f día|días}. Construirlo "
        "exige {capital} más; su costo del ciclo de vida es entonces {total}, {gap} más que el de {best}."
    ),
    "next_step.would_meet_cheaper": (
        "{option} alcanzaría el objetivo con este paso: {step}. Agua cubierta {after:.1f} % y {days_after:.1f "
        "día|días} sin agua suficiente al año, en lugar de {before:.1f} % y {days_before:.1f día|días}. Construirlo "
        "exige {capital} más; su costo del ciclo de vida es entonces {total}, {gap} menos que el de {best} tal como "
        "está."
    ),
    "next_step.would_meet_first": (
        "{option} alcanzaría el objetivo con este paso: {step}. Agua cubierta {after:.1f} % y {days_after:.1f "
        "día|días} sin agua suficiente al año, en lugar de {before:.1f} % y {days_before:.1f día|días}. Construirlo "
        "exige {capital} más; su costo del ciclo de vida es entonces {total} en lugar de {now}."
    ),
    "next_step.would_meet_technical": (
        "{option} alcanzaría el objetivo con este paso: {step}. Agua cubierta {after:.1f} % y {days_after:.1f "
        "día|días} sin agua suficiente al año, en lugar de {before:.1f} % y {days_before:.1f día|días}."
    ),
    "next_step.would_not": (
        "{option} no alcanza el objetivo, con {before:.1f} % del agua y {days_before:.1f día|días} sin agua "
        "suficiente al año, y ningún paso siguiente por sí solo lo alcanza; el que más da: {step}, con {after:.1f} % "
        "y {days_after:.1f día|días} sin agua suficiente al año, por {capital} más en la construcción."
    ),
    "next_step.would_not_technical": (
        "{option} no alcanza el objetivo, con {before:.1f} % del agua y {days_before:.1f día|días} sin agua "
        "suficiente al año, y ningún paso siguiente por sí solo lo alcanza; el que más da: {step}, con {after:.1f} % "
        "y {days_after:.1f día|días} sin agua suficiente al año."
    ),
    "next_step.would_fail": (
        "{option} no puede dar sin más este paso: {step}; dejarían entonces de cumplirse estas comprobaciones: "
        "{checks}."
    ),
    "next_step.close": (
        "{option} alcanza el objetivo por solo {points:.1f punto porcentual|puntos porcentuales}. Para tener más "
        "margen, este paso: {step}. Da {after:.1f} % del agua y {days_after:.1f día|días} sin agua suficiente al año "
        "en lugar de {days_before:.1f}, por {capital} más en la construcción; su costo del ciclo de vida es entonces "
        "{total} en lugar de {now}."
    ),
    "next_step.close_technical": (
        "{option} alcanza el objetivo por solo {points:.1f punto porcentual|puntos porcentuales}. Para tener más "
        "margen, este paso: {step}. Da {after:.1f} % del agua y {days_after:.1f día|días} sin agua suficiente al año "
        "en lugar de {days_before:.1f}."
    ),
    "next_step.saves": (
        "{option} costaría menos en el período de análisis con este paso: {step}; {total} en lugar de {now}, por "
        "{capital} más en la construcción."
    ),
    "next_step.incremental": (
        "El agua que {option} entrega más allá de {other} cuesta {extra} por m3, frente a {average} de media para "
        "toda ella: vale la pena donde cada m3 que falta cuesta más que eso a quienes se quedan sin él."
    ),
    "next_step.below": (
        "Si bastara el {percent:.1f} % del agua en lugar del {target:g} %, la respuesta, con todos los tamaños como "
        "están aquí, sería {other}, y costaría {gap} menos en el período de análisis ({share:.0f} %)."
    ),
    "next_step.above": (
        "Si se pidiera más del {percent:.1f} % del agua, la respuesta, con todos los tamaños como están aquí, sería "
        "{other}, y costaría {gap} más en el período de análisis."
    ),
    "next_step.valued_same": (
        "Con cada m3 que falta valorado en {value}, según lo indicado, {option} sigue siendo la primera: {total} "
        "contando el agua de la que sus usuarios se quedan sin."
    ),
    "next_step.valued_other": (
        "Con cada m3 que falta valorado en {value}, según lo indicado, la primera sería {other}, con {total} contando "
        "el agua de la que sus usuarios se quedan sin, frente a {total_first} de {option}. Ningún otro costo de aquí "
        "incluye ese valor."
    ),
    # the page
    "page.next_step": "Paso siguiente",
    "next_step.title": "El paso siguiente, y lo que cuesta más agua",
    "next_step.title_technical": "El paso siguiente",
    "next_step.under": (
        "Obras tal como se construirían, con los tamaños elegidos para cada opción en el cálculo: lo que se cambia "
        "aquí no se sigue. Dinero en {currency}."
    ),
    "next_step.under_technical": "Obras tal como se construirían: tamaños elegidos para cada opción.",
    "next_step.steps": "Pasos siguientes",
    "next_step.option": "Opción de suministro",
    "next_step.step": "Paso",
    "next_step.why_not": "No tal como está: comprobaciones que dejarían de cumplirse",
    "next_step.more_capital": "Más en la construcción ({currency})",
    "next_step.more_cost": "Más en el ciclo de vida ({currency})",
    "next_step.per_m3": "Por m3 adicional ({currency})",
    "next_step.no_more": "no más agua",
    "next_step.no_dearer": "no cuesta más",
    "next_step.frontier": "Lo que cuesta el agua de una opción más allá de la de otra",
    "next_step.water": "Agua servida, valor actual (m3)",
    "next_step.average": "De media ({currency}/m3)",
    "next_step.increment": "Más allá de esa opción ({currency}/m3)",
    "next_step.standing": "Comparada con",
    "next_step.unserved": "Valor del agua no servida ({currency})",
    "next_step.cost_with_unserved": "Costo del ciclo de vida con ese valor ({currency})",
    "next_step.standing.frontier": "{against}",
    "next_step.standing.lowest": "ninguna: es la que menos sirve",
    "next_step.standing.dominated": "{against}, que no cuesta más ni sirve menos",
    "next_step.standing.extended": "{against}; la siguiente da más por menos por m3",
    "next_step.method": (
        "Opciones en el orden del agua que sirven, cada una comparada con una que sirve menos; el costo por m3 más "
        "allá de esa es la diferencia de los dos costos del ciclo de vida dividida por la del agua servida, ambas "
        "descontadas. Método: Tan-Torres Edejer et al. (eds), Making choices in health: WHO guide to "
        "cost-effectiveness analysis, Organización Mundial de la Salud, 2003, con el agua servida en lugar de la "
        "salud. Un m3 oculta cuándo falta: léalo junto con los días sin agua suficiente."
    ),
    "next_step.value_method": (
        "El valor del agua no servida es service.unserved_water_value_per_m3 del escenario, por cada m3 de demanda no "
        "cubierta, descontado; no está en ningún otro costo."
    ),
    # worth: works as built, and chosen anew
    "worth_answer.turns_as_built": (
        "Con las obras tal como se construirían, la respuesta cambiaría con cualquiera de estos datos por sí solo, el "
        "menor cambio primero."
    ),
    "worth_answer.nothing_turns_as_built": (
        "Con las obras tal como se construirían, ningún dato variado por sí solo cambia esta respuesta dentro de los "
        "intervalos examinados."
    ),
    "worth_answer.turns_anew": (
        "Con las cadenas y el tanque elegidos de nuevo en cada valor, cambiaría con cualquiera de estos datos por sí "
        "solo, el menor cambio primero."
    ),
    "worth_answer.nothing_turns_anew": (
        "Con las cadenas y el tanque elegidos de nuevo en cada valor, ningún dato variado por sí solo la cambia "
        "dentro de estos intervalos."
    ),
    "worth_answer.anew_alike": (
        "Con las cadenas y el tanque elegidos de nuevo en cada valor, cambia en los mismos valores."
    ),
    "worth_answer.nothing_open": (
        "El escenario no deja abiertas ni las cadenas ni el tanque, de modo que, elegidas de nuevo, las obras serían "
        "las mismas."
    ),
    "worth_answer.undecided": (
        "Todavía no se puede decir si {source} vale la pena: falta el precio de lo siguiente: {unpriced}. Sin eso, el "
        "costo del ciclo de vida (valor actual) en el período de análisis de {years} años es de {cost_with} para "
        "{option}, con esa fuente, y de {cost_without} para {without}, sin ella."
    ),
    "worth_answer.incomplete_alike": (
        "Falta el precio de lo que ambos necesitan ({unpriced}): sus costos están incompletos, la diferencia no."
    ),
    "worth.note_of_both": (
        "Cada valor se busca dos veces. Con las obras tal como se construyen, cada diseño queda como se eligió en el "
        "escenario tal como está (cadenas, tanque, niveles del interruptor de flotador) mientras un dato cambia; con "
        "las obras elegidas de nuevo, cada opción toma, en cada valor, la más barata de sus cadenas y tanques "
        "abiertos que alcanza allí el objetivo, entre las que cumplen las comprobaciones con el escenario tal como "
        "está y con los niveles del interruptor de flotador de ahora. Un valor de cambio es aquel en que las dos "
        "mejores opciones, una con la fuente y otra sin ella, tienen el mismo costo del ciclo de vida; se verificó "
        "calculando allí de nuevo el escenario, y los dos coinciden con una diferencia de {percent} por ciento salvo "
        "que la tabla diga otra cosa. «La respuesta cambia» mira todas las opciones y también el objetivo de "
        "servicio: más allá de ese valor, la mejor de todas las opciones cambia de lado."
    ),
    "worth.words_as_built": "Mismo costo del ciclo de vida en (obras tal como se construyen)",
    "worth.turns_as_built": "La respuesta cambia en (obras tal como se construyen)",
    "worth.words_anew": "Mismo costo del ciclo de vida en (obras elegidas de nuevo)",
    "worth.turns_anew": "La respuesta cambia en (obras elegidas de nuevo)",
    "worth.cost_unchanged": "no cambia ningún costo",
    "worth.without_effect": "Sin efecto aquí: {inputs}.",
    "worth.with_reason": "{input} ({why})",
}
