"""Español de la página «Lo que pagan los usuarios»."""

SENTENCES: dict[str, str] = {
    "page.users": "Lo que pagan los usuarios",
    "users.under": (
        "Tarifas, facturas y ahorros en {currency} del año 0; la carga de cada año en {currency}, {prices}. Las "
        "opciones están en el orden del cálculo."
    ),
    "users.sentence": (
        "{option}: los usuarios cubren operación y reposiciones con {renewals} por m3 (solo operación {operation}; "
        "con el apoyo y lo que la subvención deja del costo de inversión {full}). {saving} al año ahorrados pagan "
        "cada reposición cuando toca; sin ahorros, el año más caro es el año {year}, con {largest} frente a una media "
        "de {mean}."
    ),
    "users.sentence_no_lumps": (
        "{option}: los usuarios cubren la operación con {operation} por m3, y además el apoyo y lo que la subvención "
        "deja del costo de inversión con {full}; nada se repone dentro del período de análisis, así que aquí no se "
        "ahorra nada para lo que venga después."
    ),
    "users.part.tariff": "Tarifa por m3 que se paga",
    "users.part.household": "Hogar: factura, y lo que se lleva de un ingreso",
    "users.part.burden": "Carga anual después de la subvención, del año 1 al último",
    "users.part.fund": "Ahorros para reposiciones",
    "users.part.person": "Por persona",
    "users.tariffs": (
        "Una tarifa constante paga todos los años juntos: donde los costos por m3 suben, deja en los primeros años "
        "algo que los últimos necesitan. El apoyo directo está solo en la última tarifa, porque casi siempre lo asume "
        "una autoridad."
    ),
    "users.income": (
        "Límite para una factura: el 3 y el 5 % del ingreso del hogar se usan los dos como prueba (Fankhauser y Tepic "
        "2005; 3 % en el Informe sobre Desarrollo Humano 2006 del PNUD; ambos de segunda mano). No hay un umbral "
        "acordado (AQUA 72(8), 2023, una revisión de 79 estudios). Lo que se sigue gastando en otras fuentes en "
        "semanas secas se añade a ello."
    ),
    "users.no_households": (
        "Sin factura por hogar: no se dio [households] (size, income_per_month y lowest_income_per_month)."
    ),
    "users.nobody_at_home": "Sin factura por hogar: ningún usuario del agua son personas en su casa.",
    "users.fund": (
        "El ahorro es el menor depósito constante a fin de cada año con el que ninguna reposición deja el fondo en "
        "números rojos; la media de las reposiciones de los años puede ser demasiado poco. Los depósitos suben con "
        "los precios."
    ),
    "users.income_judged": "  frente a los límites usuales",
    "users.income_below": "como máximo {low} %",
    "users.income_between": "entre {low} y {high} %",
    "users.income_above": "por encima de {high} %",
    "users.ranges": "Frente a intervalos de costos publicados",
    "users.low": "Desde ({currency})",
    "users.high": "Hasta ({currency})",
    "users.range_below": "! por debajo: parece un presupuesto insuficiente",
    "users.range_above": "por encima",
    "users.range_within": "dentro",
    "users.ranges_source": (
        "Sistemas por tubería pequeños y medianos de pozos perforados mecanizados, los mayores por encima de 5000 "
        "personas: IRC WASHCost, cost benchmarks, 2012, en dólares de EE. UU. de 2011, de segunda mano, llevados a "
        "los precios que dice finance.usd_prices_since_2011. Lo que extraen animales, campos y otros está en los "
        "costos de aquí, pero en la parte de nadie."
    ),
    "users.ranges_source_2011": (
        "Sistemas por tubería pequeños y medianos de pozos perforados mecanizados, los mayores por encima de 5000 "
        "personas: IRC WASHCost, cost benchmarks, 2012, en dólares de EE. UU. de 2011 tal como se publicaron, de "
        "segunda mano: los de hoy serían más altos (indique finance.usd_prices_since_2011). Lo que extraen animales, "
        "campos y otros está en los costos de aquí, pero en la parte de nadie."
    ),
    "users.ranges_not_compared": (
        "No comparado: los intervalos publicados están en dólares de EE. UU., los precios en {currency}. Con "
        "finance.programme_currency = 'USD' y finance.exchange_rate, el costo de inversión por persona se compara con "
        "{low} a {high} y el costo recurrente por persona y año con {low_yearly} a {high_yearly} dólares de EE. UU. "
        "de 2011 (IRC WASHCost, cost benchmarks, 2012, de segunda mano)."
    ),
    "users.programme": "En {programme}, la moneda del programa",
    "users.by_year": "Por año",
    "users.operation_cost": "Operación ({currency})",
    "users.burden": "Carga anual ({currency})",
    "users.renewals": "Reposiciones, dinero del año 0 ({currency})",
    "users.renewals_present": "Valor con el interés del fondo ({currency})",
    "users.renewals_due": "Lo mismo, acumulado ({currency})",
    "users.saving_needed": "Ahorro constante necesario hasta entonces ({currency}/año)",
    "users.fund_balance": "Fondo a fin de año ({currency})",
}
