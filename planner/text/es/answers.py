"""Español de las respuestas: comparación, dimensionado, utilidad, barrido y rentabilidad."""

SENTENCES: dict[str, str] = {
    "option_source.solar": "solar",
    "option_source.grid": "red",
    "option_source.generator": "grupo electrógeno",
    "source.solar": "el sol",
    "source.grid": "la red eléctrica",
    "source.generator": "el grupo electrógeno",
    "source.list": "{others} y {last}",
    # comparison
    "answer.best": (
        "De las opciones que alcanzan el objetivo del {target:g} % del agua, la de menor costo es {option}: costo de "
        "inversión {capital_cost}, costo del ciclo de vida (valor actual) {life_cycle_cost} en el período de análisis "
        "de {years} años, costo nivelado del agua {per_m3} por m3."
    ),
    "answer.best_incomplete": (
        "De las opciones que alcanzan el objetivo del {target:g} % del agua, la de menor costo es {option}. Su total "
        "está incompleto, porque falta el precio de lo siguiente: {unpriced}; el resto suma un costo del ciclo de "
        "vida (valor actual) de {life_cycle_cost} en el período de análisis de {years} años y un costo nivelado del "
        "agua de {per_m3} por m3."
    ),
    "answer.in_money_of_year_0": "El costo nivelado está en dinero del año 0.",
    "answer.none_meets": (
        "Ninguna opción alcanza el objetivo del {target:g} % del agua; la que más se acerca es {option}, con "
        "{delivered:.1f} % y un costo del ciclo de vida (valor actual) de {life_cycle_cost} en el período de análisis "
        "de {years} años."
    ),
    "answer.none_meets_incomplete": (
        "Ninguna opción alcanza el objetivo del {target:g} % del agua; la que más se acerca es {option}, con "
        "{delivered:.1f} %. Su total está incompleto, porque falta el precio de lo siguiente: {unpriced}; el resto "
        "suma un costo del ciclo de vida (valor actual) de {life_cycle_cost} en el período de análisis de {years} "
        "años."
    ),
    "answer.why_none": (
        "En el peor mes, {month}, se piden {asked:.1f} m3 por día: {needed:.1f hora|horas} de bombeo a los {flow:.2f} "
        "m3/h que aquí dan la bomba, la tubería y el pozo perforado. {option} da lo que se bombea en {ran:.1f "
        "hora|horas} así: harían falta más horas de energía, más caudal dentro de lo que el pozo puede dar, o menos "
        "demanda."
    ),
    "answer.why_none_at_all": (
        "En el peor mes, {month}, se piden {asked:.1f} m3 por día: {needed:.0f hora|horas} de bombeo a los {flow:.2f} "
        "m3/h que aquí dan la bomba, la tubería y el pozo perforado, y un día tiene 24. {option} da lo que se bombea "
        "en {ran:.1f hora|horas} así: haría falta más caudal, dentro de lo que puede dar este pozo o de otro, o menos "
        "demanda."
    ),
    "answer.next_best": (
        "Segunda mejor opción: {option}, que cuesta {gap} más en el período de análisis ({percent:.1f} %)."
    ),
    "answer.next_best_close": (
        "Segunda mejor opción: {option}, que cuesta {gap} más en el período de análisis ({percent:.1f} %): la "
        "diferencia es demasiado pequeña para decidir solo por el costo."
    ),
    "answer.next_best_unpriced": (
        "No se cuenta lo que no tiene precio y {option} no necesita ({unpriced}): indique ese precio, porque puede "
        "cambiar el orden."
    ),
    "answer.only_one_days": (
        "Es la única opción que alcanza el objetivo; {option} se queda corta en una racha de {days:.0f día|días}, "
        "cuando se admiten {allowed}."
    ),
    "answer.only_one_worst_year": (
        "Es la única opción que alcanza el objetivo; {option} se queda corta en su peor año, con {percent:.1f} %."
    ),
    "answer.only_one_share": (
        "Es la única opción que alcanza el objetivo; a {option} le faltan {points:.1f punto porcentual|puntos "
        "porcentuales}."
    ),
    "answer.top_up_needed": (
        "El objetivo exige un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}. Sube "
        "el agua entregada de {alone:.1f} % a {topped_up:.1f} % y cuesta {gap} más en el período de análisis."
    ),
    "answer.top_up_needed_and_saves": (
        "El objetivo exige un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}. Sube "
        "el agua entregada de {alone:.1f} % a {topped_up:.1f} % e incluso ahorra {gap} en el período de análisis."
    ),
    "answer.top_up_misses": (
        "Con un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}, el agua entregada "
        "pasa de {alone:.1f} % a {topped_up:.1f} %, y sigue sin alcanzarse el objetivo."
    ),
    "answer.top_up_not_worth": (
        "Para el objetivo no vale la pena un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): "
        "{sources}. El sol solo lo alcanza, y el respaldo cuesta {gap} más en el período de análisis (agua entregada: "
        "{alone:.1f} % sin él, {topped_up:.1f} % con él)."
    ),
    "answer.top_up_worth": (
        "Vale la pena un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}. Ahorra "
        "{gap} en el período de análisis frente al sol solo, sobre todo porque el campo fotovoltaico o el tanque son "
        "menores, y el agua entregada pasa de {alone:.1f} % a {topped_up:.1f} %."
    ),
    "answer.top_up_alike_cheaper": (
        "Con un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}, el costo es casi el "
        "mismo que con el sol solo, {gap} menos en el período de análisis; el agua entregada pasa de {alone:.1f} % a "
        "{topped_up:.1f} %."
    ),
    "answer.top_up_alike_dearer": (
        "Con un respaldo (bombear con esa fuente cuando no bastan el sol y el tanque): {sources}, el costo es casi el "
        "mismo que con el sol solo, {gap} más en el período de análisis; el agua entregada pasa de {alone:.1f} % a "
        "{topped_up:.1f} %."
    ),
    "answer.sun_saves": "{option} ahorra {gap} en el período de análisis frente a {other}, la mejor opción sin el sol.",
    "answer.sun_costs": "{option} cuesta {gap} más en el período de análisis que {other}, la mejor opción sin el sol.",
    "answer.levels_good": (
        "En {option}, el interruptor de flotador arranca el respaldo al {start:g} % del tanque y lo para al {stop:g} "
        "%; ninguno de los ajustes probados ahorraría más del 0,5 % de su costo anualizado."
    ),
    "answer.levels_better": (
        "En {option}, el interruptor de flotador está ajustado al {start:g}/{stop:g} % del tanque; "
        "{better_start:g}/{better_stop:g} % alcanzaría también el objetivo y ahorraría {saving} al año."
    ),
    # sizing
    "sizing_answer.array": "{modules} módulos FV en {strings} cadenas ({kwp:.1f} kWp)",
    "sizing_answer.array_one_string": "{modules} módulos FV en 1 cadena ({kwp:.1f} kWp)",
    "sizing_answer.strings": "{strings} cadenas",
    "sizing_answer.one_string": "1 cadena",
    "sizing_answer.tank": "un tanque de {tank_m3:g} m3",
    "sizing_answer.switch": "el interruptor de flotador al {start:g}/{stop:g} %",
    "sizing_answer.hours": "bombeo con red eléctrica o grupo electrógeno: {hours}",
    "sizing_answer.best": (
        "De {tried:,} diseños candidatos, cada uno simulado en todas las horas del período de análisis de {years} "
        "años, el más barato que alcanza el objetivo del {target:g} % del agua es {option} con {design}: costo de "
        "inversión {capital_cost}, costo del ciclo de vida (valor actual) {life_cycle_cost}, {delivered:.1f} % "
        "entregado."
    ),
    "sizing_answer.best_incomplete": (
        "De {tried:,} diseños candidatos, cada uno simulado en todas las horas del período de análisis de {years} "
        "años, el más barato que alcanza el objetivo del {target:g} % del agua es {option} con {design}: "
        "{delivered:.1f} % entregado. Su total está incompleto, porque falta el precio de lo siguiente: {unpriced}; "
        "el resto suma un costo del ciclo de vida (valor actual) de {life_cycle_cost} en el período de análisis de "
        "{years} años."
    ),
    "sizing_answer.none_meets": (
        "Ninguno de los {tried:,} diseños candidatos alcanza el objetivo; el que más se acerca es {option} con "
        "{design}: {misses}. Su costo de inversión es {capital_cost} y su costo del ciclo de vida (valor actual), "
        "{life_cycle_cost} en el período de análisis de {years} años."
    ),
    "sizing_answer.none_meets_incomplete": (
        "Ninguno de los {tried:,} diseños candidatos alcanza el objetivo; el que más se acerca es {option} con "
        "{design}: {misses}. Su total está incompleto, porque falta el precio de lo siguiente: {unpriced}; el resto "
        "suma un costo del ciclo de vida (valor actual) de {life_cycle_cost} en el período de análisis de {years} "
        "años."
    ),
    "sizing_answer.misses_share": (
        "el mejor de {count:,} candidatos entrega {delivered:.1f} % y se queda a {points:.1f punto porcentual|puntos "
        "porcentuales} del objetivo del {target:g} %"
    ),
    "sizing_answer.misses_days": (
        "al mejor de {count:,} candidatos le falta agua en una racha de {days:.0f día|días}, {more:.0f} más de lo "
        "admitido"
    ),
    "sizing_answer.misses_worst_year": (
        "el mejor de {count:,} candidatos entrega {delivered:.1f} % en su peor año y se queda a {points:.1f punto "
        "porcentual|puntos porcentuales} de lo que se pide para ese año"
    ),
    "sizing_answer.float_switch": (
        "Interruptor de flotador de {option}: el bombeo con red eléctrica o grupo electrógeno arranca cuando quedan "
        "{start_m3:.3g} m3 en el tanque ({start:g} %, medido desde el fondo) y para a los {stop_m3:.3g} m3 ({stop:g} "
        "%); en un tanque de paredes verticales los mismos porcentajes valen para la altura del agua."
    ),
    "sizing_answer.float_switch_and_timer": (
        "Interruptor de flotador de {option}: el bombeo con red eléctrica o grupo electrógeno arranca cuando quedan "
        "{start_m3:.3g} m3 en el tanque ({start:g} %, medido desde el fondo) y para a los {stop_m3:.3g} m3 ({stop:g} "
        "%), con un temporizador que le permite funcionar así: {hours}; en un tanque de paredes verticales los mismos "
        "porcentajes valen para la altura del agua."
    ),
    "sizing_answer.steady_start": (
        "Los niveles de arranque del {low:g} % al {high:g} % cuestan como mucho un 2 % más o menos."
    ),
    "sizing_answer.no_rival": (
        "Ningún otro candidato de {option} que alcance el objetivo queda a menos del 2 % de su costo."
    ),
    "sizing_answer.one_rival": (
        "A menos del 2 % de su costo queda otro candidato de {option}: {design} ({percent:.2f} % más)."
    ),
    "sizing_answer.rivals": (
        "A menos del 2 % de su costo quedan otros {count:,} candidatos de {option}; el primero, {design} "
        "({percent:.2f} % más)."
    ),
    "sizing_answer.out_of_reach": (
        "Para alcanzar el objetivo, amplíe los candidatos (más cadenas, tanques mayores), añada una fuente o pida "
        "menos del {target:g} %."
    ),
    "sizing_answer.no_higher_target": "El objetivo es el {target:g} %: no se puede obtener más.",
    "sizing_answer.higher_beyond": (
        "Subir el objetivo del {target:g} % al {higher:g} % está fuera del alcance de todos los candidatos de {option}."
    ),
    "sizing_answer.higher_free": (
        "Subir el objetivo del {target:g} % al {higher:g} % no cuesta nada: este diseño ya entrega {delivered:.1f} %."
    ),
    "sizing_answer.higher_adds": (
        "Subir el objetivo del {target:g} % al {higher:g} % añade {cost} al costo del ciclo de vida ({option})."
    ),
    "sizing_answer.run_same": "'planner run' toma el mismo diseño para {option}.",
    "sizing_answer.as_given": "lo que da el escenario",
    "sizing_answer.run_dearer": (
        "Tome {change} en lugar de {instead}, que es lo que toma 'planner run' para {option}: alcanza el objetivo y "
        "cuesta {gap} menos en el período de análisis."
    ),
    "sizing_answer.run_cheaper": (
        "Tome {change} para {option}; 'planner run' toma {instead}, que cuesta {gap} menos en el período de análisis."
    ),
    "sizing_answer.run_misses": "Ese otro diseño no alcanza el objetivo.",
    # worth
    "worth_answer.incomplete": "Los costos están incompletos, porque falta el precio de lo siguiente: {unpriced}.",
    "worth_answer.needed": (
        "Sí, hace falta {source}: sin esa fuente, el mejor suministro, {without}, entrega {lacking:.1f} % del agua en "
        "lugar del objetivo del {target:g} %."
    ),
    "worth_answer.needed_in_worst_year": (
        "Sí, hace falta {source}: sin esa fuente, el mejor suministro, {without}, no alcanza el objetivo en su peor "
        "año ({lacking:.1f} %)."
    ),
    "worth_answer.needed_dearer": (
        "Con esa fuente, el mejor, {option}, entrega {delivered:.1f} % del agua y cuesta {gap} más en el período de "
        "análisis de {years} años."
    ),
    "worth_answer.needed_cheaper": (
        "Con esa fuente, el mejor, {option}, entrega {delivered:.1f} % del agua e incluso cuesta {gap} menos en el "
        "período de análisis de {years} años."
    ),
    "worth_answer.only_without": (
        "No, {source} no vale la pena: {without} alcanza el objetivo del {target:g} % sin esa fuente, con un costo "
        "del ciclo de vida (valor actual) de {life_cycle_cost} en el período de análisis de {years} años, y con ella "
        "ningún diseño lo alcanza."
    ),
    "worth_answer.neither": "Con o sin {source}, ningún diseño alcanza el objetivo del {target:g} % del agua.",
    "worth_answer.neither_more": (
        "Con esa fuente, el mejor, {option}, entrega {delivered:.1f} %, es decir {points:.1f punto porcentual|puntos "
        "porcentuales} más que {without}."
    ),
    "worth_answer.neither_less": (
        "Con esa fuente, el mejor, {option}, entrega {delivered:.1f} %, es decir {points:.1f punto porcentual|puntos "
        "porcentuales} menos que {without}."
    ),
    "worth_answer.neither_dearer": "Cuesta {gap} más en el período de análisis de {years} años.",
    "worth_answer.neither_cheaper": "Cuesta {gap} menos en el período de análisis de {years} años.",
    "worth_answer.hardly_matters": (
        "Importa poco contar o no con {source}: el costo del ciclo de vida (valor actual) en el período de análisis "
        "de {years} años es de {cost_with} para el suministro más barato con esa fuente, {option}, y de "
        "{cost_without} para el más barato sin ella, {without}: una diferencia del {percent:.1f} %."
    ),
    "worth_answer.worth_having": (
        "Sí, {source} vale la pena: el costo del ciclo de vida (valor actual) en el período de análisis de {years} "
        "años es de {cost_with} para el suministro más barato con esa fuente, {option}, y de {cost_without} para el "
        "más barato sin ella, {without}, de modo que baja el costo anualizado en {yearly}."
    ),
    "worth_answer.not_worth_having": (
        "No, {source} no vale la pena: el costo del ciclo de vida (valor actual) en el período de análisis de {years} "
        "años es de {cost_with} para el suministro más barato con esa fuente, {option}, y de {cost_without} para el "
        "más barato sin ella, {without}, de modo que subiría el costo anualizado en {yearly}."
    ),
    "worth_answer.from_now": "{value} (ahora {base})",
    "worth_answer.above_best": "Con {input} por encima de {value}, la mejor opción sería {best}.",
    "worth_answer.below_best": "Con {input} por debajo de {value}, la mejor opción sería {best}.",
    "worth_answer.above_misses": (
        "Con {input} por encima de {value}, {first} no alcanzaría el objetivo y la mejor opción sería {best}."
    ),
    "worth_answer.below_misses": (
        "Con {input} por debajo de {value}, {first} no alcanzaría el objetivo y la mejor opción sería {best}."
    ),
    "worth_answer.above_none": (
        "Con {input} por encima de {value}, ni {first} ni ninguna otra opción alcanzaría el objetivo."
    ),
    "worth_answer.below_none": (
        "Con {input} por debajo de {value}, ni {first} ni ninguna otra opción alcanzaría el objetivo."
    ),
    "worth_answer.all_turn": "Cada uno de los datos examinados podría cambiar la respuesta si variara lo bastante.",
    "worth_answer.steady": (
        "La respuesta sigue igual, con los diseños como están y todo lo demás como se ha dado, en todo el intervalo "
        "de: {ranges}."
    ),
    "worth_answer.range": "{input} (de {low} a {high})",
    # sweep
    "sweep_answer.life_cycle_cost_of": "Costo del ciclo de vida de {option}",
    "sweep_answer.levelised_cost_of": "Costo nivelado del agua de {option}",
    "sweep_answer.lead_of": "Costo del ciclo de vida de {other} menos el de {option}",
    "sweep_answer.no_value": "sin valor",
    "sweep_answer.first_misses": "{option}, no alcanza el objetivo",
    "sweep_answer.nothing_one_at_a_time": (
        "No se pudo calcular ningún dato variado por separado; el primer motivo: {reason}."
    ),
    "sweep_answer.nothing_grid": "No se pudo calcular ninguna combinación de la malla; el primer motivo: {reason}.",
    "sweep_answer.nothing_random": "No se pudo calcular ningún caso sorteado al azar; el primer motivo: {reason}.",
    "sweep_answer.failed": (
        "No se pudieron calcular {failed:,} de {count:,} variantes y quedan fuera; se listan con el motivo."
    ),
    "sweep_answer.matters_most": (
        "De los datos variados uno a uno, el que más importa es «{input}»: al pasar de {low:g} a {high:g}, el costo "
        "del ciclo de vida (valor actual) de {option} pasa de {cost_at_low} a {cost_at_high} ({cost} tal como está)."
    ),
    "sweep_answer.changes": "Variados por separado, estos datos cambian la respuesta: {changes}.",
    "sweep_answer.changes_and_more": (
        "Variados por separado, estos datos cambian la respuesta: {changes}; y {more:,} más."
    ),
    "sweep_answer.change_none_meets": "«{input}» en {value:g} (ninguna opción alcanza el objetivo)",
    "sweep_answer.change_nearest": "«{input}» en {value:g} ({option} es la que más se acerca)",
    "sweep_answer.change_meets": "«{input}» en {value:g} ({option} alcanza el objetivo)",
    "sweep_answer.change_first_misses": "«{input}» en {value:g} ({first} no alcanza el objetivo, {option} es la mejor)",
    "sweep_answer.change_best": "«{input}» en {value:g} ({option} es la mejor)",
    "sweep_answer.stays_cheapest": (
        "Ninguno de los datos, variado por separado en su intervalo, cambia la respuesta: {option} sigue siendo la "
        "opción más barata que alcanza el objetivo."
    ),
    "sweep_answer.stays_nearest": (
        "Ninguno de los datos, variado por separado en su intervalo, cambia la respuesta: ninguna opción alcanza el "
        "objetivo, y {option} sigue siendo la que más se acerca."
    ),
    "sweep_answer.grid": (
        "De las {count:,} combinaciones de la malla, la más barata que alcanza el objetivo es: {counts}."
    ),
    "sweep_answer.grid_part": "{option} en {count:,}",
    "sweep_answer.grid_none": "ninguna en {count:,}",
    "sweep_answer.random": (
        "De 100 casos sorteados al azar, la más barata que alcanza el objetivo es: {shares} ({draws:,} sorteos, luego "
        "con un margen de {error:.0f})."
    ),
    "sweep_answer.random_some_none": (
        "De 100 casos sorteados al azar, la más barata que alcanza el objetivo es: {shares}; ninguna opción lo "
        "alcanza en {none:.0f} ({draws:,} sorteos, luego con un margen de {error:.0f})."
    ),
    "sweep_answer.random_none": (
        "En ninguno de los {draws:,} casos sorteados al azar hay una opción que alcance el objetivo."
    ),
    "sweep_answer.random_share": "{option} en {cases:.0f}",
    "sweep_answer.random_cost": (
        "El costo del ciclo de vida (valor actual) de {option} supera {low} en 90 de cada 100 casos, y {high} en 10 "
        "de cada 100."
    ),
    "sweep_answer.measured_weather": (
        "Con la demanda del año {life_year} de vida, nueve de cada diez años meteorológicos medidos (se simularon "
        "{years:,}) entregan al menos esta parte del agua: {shares}."
    ),
    "sweep_answer.synthetic_weather": (
        "Con la demanda del año {life_year} de vida, nueve de cada diez años meteorológicos sintéticos (se simularon "
        "{years:,}) entregan al menos esta parte del agua: {shares}."
    ),
    "sweep_answer.weather_share": "{option} {percent:.1f} %",
    "sweep_answer.few_years": "Con solo {years} años, esto es poco más que el peor de ellos.",
    "sweep_answer.chosen_anew": (
        "Lo que el escenario deja a la herramienta (tanque, cadenas, interruptor de flotador) se eligió de nuevo en "
        "cada variante."
    ),
    "sweep_answer.built_once": (
        "El tanque, las cadenas y el interruptor de flotador quedan como se eligieron para el escenario tal como "
        "está, salvo que se varíen ellos mismos: las obras se construyen una sola vez."
    ),
    # returns
    "returns.no_outlay": (
        "su costo de inversión no supera el de la referencia, así que no hay gasto adicional que rentabilizar"
    ),
    "returns.never_saves": "sus años posteriores no ahorran nada que pueda pagar el costo de inversión adicional",
    "returns.loses_all": (
        "a ninguna tasa superior a -100 % los ahorros posteriores valen más que el costo de inversión adicional"
    ),
    "returns.several": "varias tasas equilibran gasto y ahorros, así que ninguna es la respuesta",
    "returns.at_once": "su costo de inversión no supera el de la referencia y nunca queda por detrás",
    "returns.not_recovered": (
        "el costo de inversión adicional no se recupera de forma duradera dentro del período de análisis"
    ),
}
