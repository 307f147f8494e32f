"""Español de la decisión: lo que dicen la primera página, el resumen y el extracto de la propuesta."""

SENTENCES: dict[str, str] = {
    # the verdict, one sentence
    "decision.recommended": (
        "Recomendación: {option}, que alcanza el objetivo del {target:g} % del agua al menor costo."
    ),
    "decision.on_conditions": (
        "Recomendación en las condiciones de abajo: {option}, que alcanza el objetivo del {target:g} % del agua al "
        "menor costo."
    ),
    "decision.not_yet": (
        "Aún no debe construirse: {option} alcanza el objetivo del {target:g} % del agua al menor costo, una vez "
        "corregidas las comprobaciones que no se cumplen."
    ),
    "decision.none_meets": (
        "Ninguna opción alcanza el objetivo del {target:g} % del agua; la que más se acerca es {option}, con "
        "{delivered:.1f} %."
    ),
    "decision.serves": "{option} alcanza el objetivo del {target:g} % del agua.",
    "decision.serves_on_conditions": (
        "{option} alcanza el objetivo del {target:g} % del agua, en las condiciones de abajo."
    ),
    "decision.serves_not_yet": (
        "Aún no debe construirse: {option} alcanza el objetivo del {target:g} % del agua, una vez corregidas las "
        "comprobaciones que no se cumplen."
    ),
    # conditions, one sentence each
    "decision.estimated_weather": (
        "El sol y la temperatura son una estimación para el lugar: mídalos o descárguelos antes de comprometer dinero."
    ),
    "decision.starter": (
        "{count} valores siguen siendo los inventados del escenario inicial: ponga los del lugar en su sitio antes de "
        "usar las cifras."
    ),
    "decision.unpriced": "Las sumas están incompletas, porque falta el precio de lo siguiente: {names}.",
    # the three large numbers
    "decision.to_build": "Para construirlo",
    "decision.to_build_at_least": "Para construirlo, al menos",
    "decision.to_build_note": "antes de cualquier subvención",
    "decision.to_build_note_grant": "de ello quedan por pagar {own} tras la subvención y el préstamo",
    "decision.to_build_note_people": "{per_person} por persona",
    "decision.users_pay": "Los usuarios deben pagar",
    "decision.users_pay_at_least": "Los usuarios deben pagar, al menos",
    "decision.users_pay_note": "para operación y reposiciones",
    "decision.users_pay_note_income": "para operación y reposiciones: {share:.1f} % del ingreso de un hogar medio",
    "decision.short_days": "Días sin agua suficiente",
    "decision.short_days_note": (
        "falta más de la décima parte del agua del día; sobre todo en {month}, racha más larga: {longest:.0f día|días}"
    ),
    "decision.short_days_never": "ningún día en el que falte más de la décima parte en {years} años",
    "decision.water": "Agua por día",
    "decision.water_note": "entregada, media de {years} años",
    "decision.array_and_tank": "Lo que se construye",
    "decision.array_and_tank_note": "campo fotovoltaico y tanque, opción {option}",
    "decision.tank_note": "tanque, opción {option}",
    "decision.value_money": "{currency} {value:,.0f}",
    "decision.value_money_per_m3": "{currency} {value:,.2f} por m3",
    "decision.value_days": "{value:,.1f día|días} al año",
    "decision.value_water": "{value:,.1f} m3",
    "decision.value_array_and_tank": "{kwp:,.2f} kWp + {tank:,.1f} m3",
    "decision.value_tank": "{tank:,.1f} m3",
    # what users pay
    "decision.pay_unpriced": (
        "Lo que deben pagar los usuarios es más de lo que dicen estas cifras, porque falta el precio de lo siguiente: "
        "{names}."
    ),
    "decision.pay_income": (
        "Con la tarifa de operación y reposiciones, la factura se lleva el {middle:.1f} % del ingreso de un hogar "
        "medio."
    ),
    "decision.pay_income_lowest": (
        "Con la tarifa de operación y reposiciones, la factura se lleva el {middle:.1f} % del ingreso de un hogar "
        "medio y el {lowest:.1f} % del de un hogar del quinto más pobre."
    ),
    # who, when
    "decision.record": (
        "Preparado por: {prepared_by}. Visita de campo: {visit_date}. Precios de: {price_date}. Revisión: {revision}."
    ),
    "decision.no_record": (
        "No consta: quién lo preparó, cuándo se visitó el lugar, de cuándo son los precios ni qué revisión es."
    ),
    "decision.weather_estimate": (
        "Meteorología: medias mensuales estimadas para el lugar, convertidas en años hora por hora."
    ),
    "decision.weather_monthly": "Meteorología: medias mensuales tal como se dieron, convertidas en años hora por hora.",
    "decision.weather_file": "Meteorología: registro horario «{file}».",
    "decision.version": "Calculado con planner {version}, semilla {seed}.",
    # a workbook changed since its run
    "decision.changed": (
        "! Se cambiaron precios o tasas después del cálculo: de las opciones que alcanzan el objetivo, con los "
        "tamaños del cálculo, ahora la de menor costo es {option}. Repita el estudio antes de usar esto."
    ),
    "decision.run_again": (
        "! Repita el estudio: se cambió un dato al que estas cifras no siguen (la hoja «Datos» dice cuál; las cifras "
        "son las del cálculo)."
    ),
    "decision.overpaid": (
        "! La subvención y el préstamo juntos superan el 100 por ciento del costo de inversión: corríjalos antes de "
        "usar esto."
    ),
    "decision.given_way": (
        "Las cifras de abajo siguen los precios cambiados; se ha retirado lo que el cálculo decía de las "
        "comprobaciones, las condiciones y la segunda mejor opción, porque solo un nuevo cálculo puede decirlo."
    ),
    "decision.days_heading": "Días sin agua suficiente, y lo que pagan los usuarios",
    "decision.days_heading_technical": "Días sin agua suficiente",
    "decision.turns_heading": "Qué lo cambiaría",
    "decision.who_heading": "Quién, cuándo, con qué datos",
    "decision.large_unit": "{label} ({unit})",
    "decision.cautions": (
        "Lea las advertencias de la hoja «Método y advertencias» antes de comprar, abrir o beber nada; las normas "
        "locales y el trabajo de profesionales autorizados tienen prioridad."
    ),
    "decision.printing": (
        "El juego impreso contiene lo que leen otros. Para imprimir otra hoja, o más de una, borre su área de "
        "impresión o imprima una selección."
    ),
    "checks.names_not_given": "No dado, luego no comprobado: {names}.",
    "checks.names_passed": "Cumple: {names}.",
    "page.basis": "En qué se apoya",
    "inputs.since": "Desde el cálculo",
    "inputs.since_count": "Cantidad",
    "inputs.since_form": "Cambiado en el formulario además de lo que siguen los valores de aquí",
    "inputs.since_again": "Cambiado en todo lo que las cifras no siguen",
    "inputs.since_followed": "Cambiado y seguido por todas las sumas de dinero",
    "inputs.since_state": (
        "Estado: 0 como se calculó, 1 las cifras siguen, 2 hay que repetir el cálculo, 3 subvención y préstamo por "
        "encima del 100 %"
    ),
    "inputs.since_state_technical": "Estado: 0 como se calculó, 2 hay que repetir el cálculo",
    "inputs.again": "! repetir el cálculo",
    "inputs.followed": "cambiado, seguido",
    "page.form_of_run": "Formulario del cálculo",
    # headings of the table of options beside those that other tables have
    "short.meets_target": "Alcanza el objetivo",
    "short.tariff_operation_and_renewals": "Los usuarios pagan por operación y reposiciones{incomplete} ({unit})",
}
