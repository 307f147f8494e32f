"""Unidades de los modelos y del catálogo de cifras, y fuentes de los valores por defecto, por su texto inglés."""

UNITS: dict[str, str] = {
    "% of demand": "% de la demanda",
    "% of income": "% del ingreso",
    "% of pumped": "% de lo bombeado",
    "% of tank": "% del tanque",
    "%/day": "%/día",
    "%/year": "%/año",
    "L/head/day": "L/cabeza/día",
    "L/person/day": "L/persona/día",
    "L/year": "L/año",
    "as the key": "como la clave",
    "days": "días",
    "days/year": "días/año",
    "deg": "°",
    "deg C": "°C",
    "h/day": "h/día",
    "h/year": "h/año",
    "head": "cabezas",
    "in": "pulgadas",
    "kWh/m2/day": "kWh/m2/día",
    "kWh/month": "kWh/mes",
    "kWh/year": "kWh/año",
    "kg/year": "kg/año",
    "kWp": "kWp",
    "money/kWp": "money/kWp",
    "m/year": "m/año",
    "m3/day": "m3/día",
    "m3/h per m": "m3/h por m",
    "m3/household/month": "m3/hogar/mes",
    "m3/year": "m3/año",
    "mm/day": "mm/día",
    "money/household/month": "money/hogar/mes",
    "money/kW/month": "money/kW/mes",
    "money/month": "money/mes",
    "money/person": "money/persona",
    "money/person/year": "money/persona/año",
    "money/year": "money/año",
    "people": "personas",
    "per 100 mL": "por 100 mL",
    "rpm": "r/min",
    "years": "años",
    "month, 1 to 12": "mes, de 1 a 12",
    "L/day": "L/día",
}

SOURCES: dict[str, str] = {
    "1 % per 100 m above 305 m: MSHA rule for naturally aspirated engines": (
        "1 % por cada 100 m por encima de 305 m: regla de MSHA para motores de aspiración natural"
    ),
    "5 % at 43 deg C: Hicks, Handbook of Energy Engineering Calculations": (
        "5 % a 43 °C: Hicks, Handbook of Energy Engineering Calculations"
    ),
    "Dobos 2014, NREL/TP-6A20-62641": "Dobos 2014, NREL/TP-6A20-62641",
    "Hicks, Handbook of Energy Engineering Calculations": "Hicks, Handbook of Energy Engineering Calculations",
    "Jordan and Kurtz 2013, Prog. Photovolt. 21:12-29, median": (
        "Jordan y Kurtz 2013, Prog. Photovolt. 21:12-29, mediana"
    ),
    "MSHA rule for naturally aspirated engines": "regla de MSHA para motores de aspiración natural",
    "Skarstein and Uhlen 1989, Wind Eng. 13(2), from memory": "Skarstein y Uhlen 1989, Wind Eng. 13(2), de memoria",
    "World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, from memory; take the funder's own": (  # noqa: E501
        "Banco Mundial, Discounting costs and benefits in economic analysis of World Bank projects, 2016, de memoria; "
        "tome la del propio financiador"
    ),
    "a bound of the search": "un límite de la búsqueda",
    "a choice left to the planner": "una elección que se deja a planner",
    "as the start level": "como el nivel de arranque",
    "assumed": "supuesto",
    "assumed for clean water, near the 0.57 % of efficiency of a Hydraulic Institute case; silt 1, sand 3": (
        "supuesto para agua limpia, cerca del 0,57 % de rendimiento de un caso del Hydraulic Institute; limo 1, arena 3"
    ),
    "assumed for hard rock and limestone; sandstone 2, iron-rich alluvium 4": (
        "supuesto para roca dura y caliza; arenisca 2, aluvión rico en hierro 4"
    ),
    "assumed, common practice, no source": "supuesto, práctica habitual, sin fuente",
    "assumed; boreholes are held to last 20 to 50 years, from memory": (
        "supuesto; se considera que los pozos perforados duran de 20 a 50 años, de memoria"
    ),
    "assumed; buried plastic pipe is made for 50 years and more, from memory": (
        "supuesto; la tubería de plástico enterrada está hecha para 50 años y más, de memoria"
    ),
    "commercial sets 20 000-30 000 h": "grupos comerciales 20 000-30 000 h",
    "common practice, no source": "práctica habitual, sin fuente",
    "from memory": "de memoria",
    "diesel: IPCC 2006 Guidelines vol. 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L": (
        "diésel: Directrices del IPCC 2006 vol. 2, 74,1 kg/GJ, 43,0 GJ/t, 0,84 kg/L"
    ),
    "every bill is paid: enter what is known of bills paid in the area": (
        "se pagan todas las facturas: indique lo que se sepa de las facturas pagadas en la zona"
    ),
    "free outlet": "salida libre",
    "laid by itself": "tendido por separado",
    "no charge entered": "ningún cargo indicado",
    "no cost entered": "ningún costo indicado",
    "no fall; 0.3 in stressed and 1 in over-drawn aquifers: assumed from reported falls": (
        "sin bajada; 0,3 en acuíferos bajo presión y 1 en los sobreexplotados: supuesto a partir de bajadas publicadas"
    ),
    "no grant entered": "ninguna subvención indicada",
    "no growth assumed": "sin crecimiento supuesto",
    "no leakage assumed": "sin fugas supuestas",
    "no levy entered": "ningún recargo indicado",
    "no loan entered": "ningún préstamo indicado",
    "no minimum": "sin mínimo",
    "no new line": "sin línea nueva",
    "no price entered": "ningún precio indicado",
    "no shade assumed; look at the site": "sin sombra supuesta; mire el lugar",
    "no tax entered": "ningún impuesto indicado",
    "none": "ninguno",
    "none assumed": "ninguno supuesto",
    "none entered": "ninguno indicado",
    "none entered: every price holds the tax that it bears": (
        "ninguno indicado: cada precio incluye el impuesto que soporta"
    ),
    "none: an account that keeps up with inflation": "ninguno: una cuenta que sigue a la inflación",
    "oil and filter every 250 h: common service schedules": "aceite y filtro cada 250 h: planes de servicio usuales",
    "one": "uno",
    "one plane": "un plano",
    "rural supply in the National Water Policy of Tanzania 2002, from memory; WHO (Howard and Bartram 2003) calls about 20 basic access, Sphere 2018 asks for at least 15 in an emergency": (  # noqa: E501
        "abastecimiento rural en la Política Nacional del Agua de Tanzania 2002, de memoria; la OMS (Howard y Bartram "
        "2003) llama acceso básico a unos 20, Esfera 2018 pide al menos 15 en una emergencia"
    ),
    "same scenario, same seed, same numbers": "mismo escenario, misma semilla, mismos números",
    "steel tank 20-30 years, from memory": "tanque de acero 20-30 años, de memoria",
    "supply voltage of public networks: IEC 60038, EN 50160": (
        "tensión de suministro de las redes públicas: IEC 60038, EN 50160"
    ),
    "the highest for PVC insulation, IEC 60364-5-52": "la más alta para aislamiento de PVC, IEC 60364-5-52",
    "usual fixed cable, from memory": "cable fijo usual, de memoria",
    "usual value of open ground": "valor usual de terreno abierto",
    "not given": "no dado",
}
