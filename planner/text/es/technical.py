"""Español de donde no hay precios, en lugar de lo que trata de costos, y de en qué se apoya una respuesta."""

SENTENCES: dict[str, str] = {
    # ---- comparison, sizing, sweep
    "answer.levels_good_technical": (
        "En {option}, el interruptor de flotador arranca el respaldo al {start:g} % del tanque y lo para al {stop:g} "
        "%; ninguno de los ajustes probados alcanza el objetivo con bastante menos energía de fuera."
    ),
    "answer.kwh_of_grid": "{amount:,.0f} kWh de la red eléctrica",
    "answer.l_of_fuel": "{amount:,.0f} L de combustible",
    "answer.technical_meets": (
        "{option} alcanza el objetivo del {target:g} % del agua: {delivered:.1f} % en {years} años, {worst:.0f} % en "
        "el peor mes ({month}); falta más de la décima parte del agua {short:.1f día|días} al año, racha más larga: "
        "{longest:.0f día|días}."
    ),
    "answer.technical_never_short": (
        "{option} alcanza el objetivo del {target:g} % del agua: {delivered:.1f} % en {years} años, sin ningún día al "
        "que le falte más de la décima parte de su agua."
    ),
    "answer.technical_nearest": (
        "Ninguna opción alcanza el objetivo del {target:g} % del agua; la que más se acerca es {option}, con "
        "{delivered:.1f} % en {years} años, {worst:.0f} % en el peor mes ({month}); falta más de la décima parte del "
        "agua {short:.1f día|días} al año, racha más larga: {longest:.0f día|días}."
    ),
    "answer.technical_others": (
        "También lo alcanzan: {options}. Sin precios están en el orden del escenario; cuál construir deben decirlo "
        "los precios y quienes la van a operar."
    ),
    "answer.technical_sizes": (
        "Los tamaños que quedaron abiertos se eligieron sin precios, entre los que cumplen las comprobaciones con "
        "menos advertencias: un m3 de tanque cuenta como {tank:g} kWp de campo fotovoltaico (supuesto, práctica "
        "habitual, sin fuente)."
    ),
    "remedied.none_computed_technical": "Los remedios de lo que no se cumple no se pueden calcular: {checks}.",
    "sizing_answer.weight": "{kwp:.2g} kWp de campo fotovoltaico",
    "sizing_answer.best_technical": (
        "{option} alcanza el objetivo del {target:g} % del agua con {design}: {delivered:.1f} % entregado. De "
        "{tried:,} diseños candidatos, cada uno simulado en todas las horas del período de análisis de {years} años, "
        "es el de menor peso de su opción: sin precios, un m3 de tanque cuenta como {tank:g} kWp de campo "
        "fotovoltaico, un kWh al año de la red eléctrica como {grid:g} y un litro de combustible al año como {fuel:g} "
        "(supuesto, práctica habitual, sin fuente), y las opciones están en el orden del escenario."
    ),
    "sizing_answer.none_meets_technical": (
        "Ninguno de los {tried:,} diseños candidatos alcanza el objetivo; el que más se acerca es {option} con "
        "{design}: {misses}. Sin precios los diseños se pesan: un m3 de tanque cuenta como {tank:g} kWp de campo "
        "fotovoltaico, un kWh al año de la red eléctrica como {grid:g} y un litro de combustible al año como {fuel:g} "
        "(supuesto, práctica habitual, sin fuente)."
    ),
    "sizing_answer.steady_start_technical": (
        "Los niveles de arranque del {low:g} % al {high:g} % pesan como mucho un 2 % más o menos."
    ),
    "sizing_answer.no_rival_technical": (
        "Ningún otro candidato de {option} que alcance el objetivo queda a menos del 2 % de su peso."
    ),
    "sizing_answer.one_rival_technical": (
        "A menos del 2 % de su peso queda otro candidato de {option}: {design} ({percent:.2f} % más)."
    ),
    "sizing_answer.rivals_technical": (
        "A menos del 2 % de su peso quedan otros {count:,} candidatos de {option}; el primero, {design} "
        "({percent:.2f} % más)."
    ),
    "sizing_answer.higher_free_technical": (
        "Subir el objetivo del {target:g} % al {higher:g} % no exige nada más: este diseño ya entrega {delivered:.1f} "
        "%."
    ),
    "sizing_answer.higher_adds_technical": (
        "Subir el objetivo del {target:g} % al {higher:g} % exige tanto más como {cost} ({option})."
    ),
    "sizing_answer.run_dearer_technical": (
        "Tome {change} en lugar de {instead}, que es lo que toma 'planner run' para {option}: alcanza el objetivo y "
        "pesa {gap} menos."
    ),
    "sizing_answer.run_cheaper_technical": (
        "Tome {change} para {option}; 'planner run' toma {instead}, que pesa {gap} menos."
    ),
    "sweep_answer.demand_met_of": "Demanda cubierta por {option}",
    "sweep_answer.percent": "{percent:.2f} %",
    "sweep_answer.matters_most_technical": (
        "De los datos variados uno a uno, el que más importa es {input}: al pasar de {low:g} a {high:g}, lo que "
        "{option} cubre de la demanda pasa de {cost_at_low} a {cost_at_high} ({cost} tal como está)."
    ),
    "sweep_answer.stays_cheapest_technical": (
        "Ninguno de los datos, variado por separado en su intervalo, cambia la respuesta: {option} sigue siendo la "
        "primera opción que alcanza el objetivo."
    ),
    "sweep_answer.grid_technical": (
        "De las {count:,} combinaciones de la malla, la primera que alcanza el objetivo es: {counts}."
    ),
    "sweep_answer.random_technical": (
        "De 100 casos sorteados al azar, la primera opción que alcanza el objetivo es: {shares} ({draws:,} sorteos, "
        "luego con un margen de {error:.0f})."
    ),
    "sweep_answer.random_some_none_technical": (
        "De 100 casos sorteados al azar, la primera opción que alcanza el objetivo es: {shares}; ninguna opción lo "
        "alcanza en {none:.0f} ({draws:,} sorteos, luego con un margen de {error:.0f})."
    ),
    "sweep_answer.random_none_technical": (
        "En ninguno de los {draws:,} casos sorteados al azar hay una opción que alcance el objetivo."
    ),
    "sweep_answer.random_cost_technical": (
        "Lo que {option} cubre de la demanda supera {low} en 90 de cada 100 casos, y {high} en 10 de cada 100."
    ),
    # ---- pages of sizing, sweep and comparison
    "size.note_technical": (
        "Cada candidato se simuló hora por hora en todos los años de vida: nada se omitió. Como no hay precios, lo "
        "que se construye y se compra se pesa, como dice la respuesta. Compruebe cualquier elección frente al caudal "
        "seguro del pozo perforado antes de construirla."
    ),
    "size.answer_under_technical": "Dimensionado, sin precios",
    "size.weight": "Peso (kWp de campo fotovoltaico)",
    "size.best_of_technical": "{scenario}: diseño de menor peso de cada opción de suministro",
    "size.best_under_technical": (
        "El de menor peso que alcanza el objetivo; donde ninguno lo alcanza, el que se queda más cerca."
    ),
    "size.by_run_technical": "Peso del diseño de 'planner run' (kWp)",
    "size.front_under_technical": (
        "Diseños que ningún otro de la misma opción supera a la vez en peso y en demanda cubierta."
    ),
    "size.front_chart_technical": "Lo que exige más servicio",
    "size.front_alt_technical": (
        "Menor peso según la demanda cubierta en el período de análisis, una línea por opción: {options}."
    ),
    "size.service_technical": "Tamaño según el servicio",
    "size.service_under_technical": "Menor peso de un diseño que entrega al menos esa parte del agua.",
    "size.service_heading_technical": "Menor peso (kWp de campo fotovoltaico) que entrega al menos esa parte del agua",
    "size.service_chart_technical": "Menor peso según el servicio",
    "size.service_alt_technical": "Menor peso según la demanda cubierta, una columna por opción: {options}.",
    "sweep.one_at_a_time_under_technical": (
        "Cada dato va a su valor bajo y a su valor alto mientras los demás no cambian; los datos están en orden de "
        "amplitud. La mejor opción allí es la primera que alcanza el objetivo o, donde ninguna lo alcanza, la que más "
        "entrega. El indicador es el cambio porcentual del resultado por cada uno por ciento de cambio del dato, "
        "extremo mayor (ADB)."
    ),
    "sweep.cheapest_technical": "Primera que alcanza el objetivo",
    "sweep.tornado_met": "{option}: {figure}",
    "sweep.grid_under_technical": (
        "{count} combinaciones; la primera opción que alcanza el objetivo de servicio en cada una, y lo que cada "
        "opción cubre de la demanda."
    ),
    "sweep.grid_alt_technical": "Demanda cubierta según {input}, una línea por opción: {options}.",
    "sweep.map_technical": "Primera que alcanza el objetivo: {down} hacia abajo, {across} hacia la derecha",
    "sweep.chances_alt_technical": (
        "De 100 casos, en cuántos cada opción es la primera que alcanza el objetivo, y en cuántos lo alcanza: "
        "{options}."
    ),
    "sweep.exceeded_chart_technical": "Demanda cubierta y con qué frecuencia se supera",
    "sweep.exceeded_alt_technical": "De 100 casos, cuántos cubren más de la demanda, una línea por opción: {options}.",
    "sweep.correlations_technical": "Correlación de rangos de cada dato con la demanda cubierta (Spearman)",
    "sweep.correlation_note_technical": (
        "1: lo cubierto siempre sube con el dato; -1: siempre baja; cerca de 0: el dato apenas importa."
    ),
    "compare.side_under_technical": (
        "La opción que va primera en cada escenario: la primera que alcanza su objetivo o, donde ninguna lo alcanza, "
        "la que más entrega; no puede construirse como está mientras haya comprobaciones que no se cumplen. Los "
        "escenarios no dan precios."
    ),
    "compare.differ_technical": "! Los escenarios difieren en esto: {what}. Compárelos con cuidado.",
    "compare.first_technical": "Primera que alcanza el objetivo, o la más cercana",
    # ---- terminal
    "narrow.title_technical": "{name}: respuesta técnica, sin precios",
    # ---- pages of a run
    "answer.setting_technical": (
        "Una respuesta técnica, porque el escenario no nombra moneda ni da precios. Cada opción se simuló hora por "
        "hora durante {years} años."
    ),
    "answer.option_technical": "Opción de suministro",
    "options.under_technical": (
        "En el orden del cálculo, durante {years} años; energía y horas son medias de los años. Las que alcanzan el "
        "objetivo van primero, en el orden del escenario."
    ),
    # ---- method
    "method.sizes_words_technical": (
        "Donde quedan abiertos: el menor tanque que alcanza el objetivo de servicio, y el número de cadenas y los "
        "niveles del interruptor de flotador que lo alcanzan con menor peso: un kWp de campo fotovoltaico cuenta 1, "
        "un m3 de tanque {tank:g}, un kWh al año de la red eléctrica {grid:g} y un litro de combustible al año "
        "{fuel:g}, que se acerca a lo que suelen pesar unos frente a otros (supuesto, práctica habitual, sin fuente). "
        "Con precios pueden elegirse otros tamaños. Las opciones que alcanzan el objetivo están en el orden del "
        "escenario; las que no lo alcanzan van después, por lo que entregan."
    ),
    # ---- inputs
    "inputs.note_technical": (
        "Los valores de aquí siguen a la hoja «Formulario», y nada más de este libro lo hace: después de un cambio, "
        "calcúlelo de nuevo (planner run FILE). Con una moneda y precios en esa hoja, la respuesta pasa a ser en "
        "dinero."
    ),
    # ---- what an answer rests on
    "rests_on.estimate": "una estimación a partir de las coordenadas",
    "rests_on.heading": "En qué se apoya: no dado, luego probado más bajo / más alto ({option} con sus tamaños)",
    "rests_on.irradiation": "Irradiación global, media del año",
    "rests_on.key": "Clave",
    "rests_on.label": "Dato",
    "rests_on.value": "Valor",
    "rests_on.unit": "Unidad",
    "rests_on.tried": "Probado",
    "rests_on.met": "Demanda cubierta %",
    "rests_on.cost": "Costo del ciclo de vida {currency}",
    "rests_on.source": "De dónde viene",
    "rests_on.pair": "{low} / {high}",
    "rests_on.none": (
        "Lo no dado se probó más bajo y más alto ({count} números): ninguno cambia notablemente la respuesta; todos "
        "los valores no dados están en la hoja «Datos»"
    ),
    "rests_on.more": "y {count} más, que cambian menos; todos los valores no dados están en la hoja «Datos»",
}
