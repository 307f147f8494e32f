"""Español de la prueba de bombeo registrada y del análisis del agua: sus comprobaciones, y su página."""

SENTENCES: dict[str, str] = {
    "page.records": "Prueba y calidad",
    "records.under": "La prueba de bombeo registrada, y el análisis del agua frente a los valores guía para beber.",
    "records.test": "Prueba de bombeo",
    "records.no_test": "No hay registro de una prueba a caudal constante (no se dio [pumping_test]).",
    "records.steps": "Prueba escalonada",
    "records.step": "Escalón",
    "records.step_flow": "Caudal (m3/h)",
    "records.step_drawdown": "Descenso (m)",
    "records.step_specific": "Caudal específico (m3/h por m)",
    "records.item": "Registro",
    "records.value": "Valor",
    "records.quality": "Calidad del agua",
    "records.no_quality": "El agua no se analizó, o no se dieron los resultados ([water_quality]).",
    "records.not_drunk": "Nadie bebe el agua, así que no se juzga como agua para beber.",
    "records.analysed": "Muestra del {date}, analizada por {laboratory}.",
    "records.parameter": "Parámetro",
    "records.result": "Resultado",
    "records.limit": "Valor guía",
    "records.kind": "Concierne a",
    "records.kind_health": "salud",
    "records.kind_acceptance": "sabor, manchas, obras",
    "records.verdict": "Veredicto",
    "records.source": "Fuente",
    "records.second_hand": "OMS 2022, de segunda mano",
    "records.from_memory": "OMS 2022, de memoria: confírmelo",
    "records.not_tested": "no analizado",
    "records.national": (
        "OMS 2022: Guías para la calidad del agua de consumo humano, 4.ª edición que incorpora las adendas primera y "
        "segunda. No son ley: la norma del propio país va primero, y un resultado vale solo para su muestra. Nada "
        "aquí dice que el agua sea segura."
    ),
    "quality.range": "{low} a {high}",
    "quality.compared": "Agua bruta frente al valor guía para agua de beber: {name}",
    "quality.compared_nitrogen": "Nitrato respecto a su valor guía y nitrito respecto al suyo, sumados",
    "quality.source": (
        "OMS, Guías para la calidad del agua de consumo humano, 4.ª edición con adendas, 2022, de segunda mano; las "
        "normas nacionales van primero"
    ),
    "quality.source_from_memory": (
        "OMS, Guías para la calidad del agua de consumo humano, 4.ª edición con adendas, 2022, de memoria: "
        "confírmelo; las normas nacionales van primero"
    ),
    "quality.why.health": "Daña la salud de quienes beben el agua, en parte sin que se note durante años.",
    "quality.why.acceptance": (
        "La gente deja el agua que sabe, huele o mancha por agua que puede ser insegura; además ensucia las "
        "instalaciones."
    ),
    "quality.remedy.health": (
        "no apta para beber ni cocinar sin un tratamiento que demuestre bajarlo del límite, porque hervir no lo "
        "elimina; tome otra muestra, pregunte a la autoridad sanitaria o busque otra fuente de agua"
    ),
    "quality.remedy.nitrate_mg_l": (
        "no apta para beber, y nunca para el biberón de un bebé, sin un tratamiento que demuestre bajarlo del límite: "
        "hervir lo empeora; mantenga lejos las letrinas y el ganado, pregunte a la autoridad sanitaria o busque otra "
        "fuente de agua"
    ),
    "quality.remedy.nitrite_mg_l": (
        "no apta para beber, y nunca para el biberón de un bebé, sin un tratamiento que demuestre bajarlo del límite: "
        "hervir lo empeora; pregunte a la autoridad sanitaria o busque otra fuente de agua"
    ),
    "quality.remedy.e_coli_per_100ml": (
        "no apta para beber antes de desinfectarla: averigüe por dónde entra (tapa, sello, letrinas, ganado), "
        "desinfecte el pozo perforado, las tuberías y el tanque, y use el agua solo cuando nuevas muestras salgan "
        "limpias; pregunte a la autoridad sanitaria"
    ),
    "quality.remedy.acceptance": (
        "tome otra muestra, y pregunte a los usuarios y a la autoridad sanitaria si necesita tratamiento"
    ),
    "check.quality_e_coli_per_100ml.what": "E. coli o coliformes termotolerantes",
    "check.quality_arsenic_mg_l.what": "arsénico",
    "check.quality_fluoride_mg_l.what": "fluoruro",
    "check.quality_nitrate_mg_l.what": "nitrato, como NO3",
    "check.quality_nitrite_mg_l.what": "nitrito, como NO2",
    "check.quality_manganese_mg_l.what": "manganeso",
    "check.quality_lead_mg_l.what": "plomo",
    "check.quality_uranium_mg_l.what": "uranio",
    "check.quality_boron_mg_l.what": "boro",
    "check.quality_chromium_mg_l.what": "cromo",
    "check.quality_cadmium_mg_l.what": "cadmio",
    "check.quality_iron_mg_l.what": "hierro",
    "check.quality_chloride_mg_l.what": "cloruro",
    "check.quality_sulfate_mg_l.what": "sulfato",
    "check.quality_sodium_mg_l.what": "sodio",
    "check.quality_hardness_mg_l.what": "dureza total, como CaCO3",
    "check.quality_dissolved_solids_mg_l.what": "sólidos disueltos totales",
    "check.quality_turbidity_ntu.what": "turbidez",
    "check.quality_ph.what": "pH",
    "check.quality_nitrate_and_nitrite.what": "nitrato y nitrito juntos",
    "check.water_analysis.what": "análisis del agua",
    "check.water_analysis.compared": "El análisis del agua",
    "check.water_analysis.compared_in_part": "El resto del análisis del agua",
    "check.water_analysis.why": (
        "Un agua clara puede contener lo que enferma a la gente; nadie nota por el sabor los gérmenes, el arsénico o "
        "el fluoruro."
    ),
    "check.water_analysis.look_for": (
        "no analizado: {names}; haga que un laboratorio tome y analice una muestra antes de que nadie beba el agua o "
        "pague las obras"
    ),
    "check.water_analysis.source": "una lista mínima propuesta aquí, no una norma; límites de la OMS, 2022",
    "check.pumping_test.what": "prueba de bombeo",
    "check.yield_of_test.what": "caudal seguro frente a la prueba",
    "check.recovery.what": "recuperación tras la prueba",
    "check.pumping_test.compared": "Duración de la prueba de bombeo a caudal constante",
    "check.pumping_test.compared_not": "El registro de una prueba de bombeo a caudal constante",
    "check.pumping_test.why": (
        "Una prueba corta muestra el agua almacenada junto al pozo, no la que le llega durante una estación seca."
    ),
    "check.pumping_test.look_for": (
        "pida al perforador o al servicio de aguas el registro de una prueba a caudal constante de {hours} horas o "
        "más, con la recuperación posterior"
    ),
    "check.pumping_test.remedy": (
        "haga una prueba a caudal constante durante {hours} horas o más, y observe la recuperación"
    ),
    "check.pumping_test.source": (
        "24 horas: manual de diseño del Ministerio de Agua de Tanzania; de 24 a 72 horas: SANS 10299-4:2003; ambos de "
        "segunda mano"
    ),
    "check.yield_of_test.compared": "Caudal seguro, como parte de los {flow} m3/h que la prueba mantuvo",
    "check.yield_of_test.why": "Lo que un pozo soporta unos días en una estación puede no soportarlo durante años.",
    "check.yield_of_test.remedy": (
        "cuente con {flow} m3/h como máximo, o haga que un hidrogeólogo deduzca el caudal de la prueba y la "
        "recuperación"
    ),
    "check.yield_of_test.source": "del 60 al 70 % es práctica habitual, de memoria, sin fuente",
    "check.recovery.compared": "Cuánto faltaba al agua para volver a su nivel de reposo al terminar la recuperación",
    "check.recovery.why": "El agua que no vuelve se tomó de lo que almacena la roca, y no durará.",
    "check.recovery.remedy": (
        "observe la recuperación durante más tiempo; si el agua sigue baja, cuente con menos y haga que un "
        "hidrogeólogo juzgue la fuente"
    ),
    "check.recovery.source": "práctica según SANS 10299-4:2003, de segunda mano",
}
