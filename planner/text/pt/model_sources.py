"""Unidades dos modelos e do catálogo, e fontes dos valores por omissão, pelo seu texto inglês."""

UNITS: dict[str, str] = {
    "% of demand": "% das necessidades",
    "% of income": "% do rendimento",
    "% of pumped": "% da água bombeada",
    "% of tank": "% do reservatório",
    "%/day": "%/dia",
    "%/year": "%/ano",
    "L/head/day": "L/cabeça/dia",
    "L/person/day": "L/pessoa/dia",
    "month, 1 to 12": "mês, de 1 a 12",
    "L/day": "L/dia",
    "L/year": "L/ano",
    "as the key": "como a chave",
    "days": "dias",
    "days/year": "dias/ano",
    "deg": "°",
    "deg C": "°C",
    "h/day": "h/dia",
    "h/year": "h/ano",
    "head": "cabeças",
    "in": "polegadas",
    "kWh/m2/day": "kWh/m2/dia",
    "kWh/month": "kWh/mês",
    "kWh/year": "kWh/ano",
    "kg/year": "kg/ano",
    "kWp": "kWp",
    "money/kWp": "money/kWp",
    "m/year": "m/ano",
    "m3/day": "m3/dia",
    "m3/h per m": "m3/h por m",
    "m3/household/month": "m3/agregado/mês",
    "m3/year": "m3/ano",
    "mm/day": "mm/dia",
    "money/household/month": "money/agregado/mês",
    "money/kW/month": "money/kW/mês",
    "money/month": "money/mês",
    "money/person": "money/pessoa",
    "money/person/year": "money/pessoa/ano",
    "money/year": "money/ano",
    "people": "pessoas",
    "per 100 mL": "por 100 mL",
    "rpm": "rpm",
    "years": "anos",
}

SOURCES: dict[str, str] = {
    "1 % per 100 m above 305 m: MSHA rule for naturally aspirated engines": (
        "1% por 100 m acima de 305 m: regra da MSHA para motores de aspiração natural"
    ),
    "5 % at 43 deg C: Hicks, Handbook of Energy Engineering Calculations": (
        "5% a 43 °C: Hicks, Handbook of Energy Engineering Calculations"
    ),
    "Dobos 2014, NREL/TP-6A20-62641": "Dobos 2014, NREL/TP-6A20-62641",
    "Hicks, Handbook of Energy Engineering Calculations": "Hicks, Handbook of Energy Engineering Calculations",
    "Jordan and Kurtz 2013, Prog. Photovolt. 21:12-29, median": (
        "Jordan e Kurtz 2013, Prog. Photovolt. 21:12-29, mediana"
    ),
    "MSHA rule for naturally aspirated engines": "regra da MSHA para motores de aspiração natural",
    "Skarstein and Uhlen 1989, Wind Eng. 13(2), from memory": "Skarstein e Uhlen 1989, Wind Eng. 13(2), de memória",
    (
        "World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, from memory; "
        "take the funder's own"
    ): (
        "Banco Mundial, Discounting costs and benefits in economic analysis of World Bank projects, 2016, de "
        "memória; tome a do próprio financiador"
    ),
    "a bound of the search": "um limite da procura",
    "a choice left to the planner": "uma escolha deixada ao planner",
    "as the start level": "como o nível de arranque",
    "assumed": "suposto",
    "assumed for clean water, near the 0.57 % of efficiency of a Hydraulic Institute case; silt 1, sand 3": (
        "suposto para água limpa, perto dos 0,57% de rendimento de um caso do Hydraulic Institute; silte 1, areia 3"
    ),
    "assumed for hard rock and limestone; sandstone 2, iron-rich alluvium 4": (
        "suposto para rocha dura e calcário; arenito 2, aluvião rico em ferro 4"
    ),
    "assumed, common practice, no source": "suposto, prática corrente, sem fonte",
    "assumed; boreholes are held to last 20 to 50 years, from memory": (
        "suposto; considera-se que os furos duram 20 a 50 anos, de memória"
    ),
    "assumed; buried plastic pipe is made for 50 years and more, from memory": (
        "suposto; o tubo de plástico enterrado é feito para 50 anos e mais, de memória"
    ),
    "commercial sets 20 000-30 000 h": "geradores comerciais 20 000-30 000 h",
    "common practice, no source": "prática corrente, sem fonte",
    "from memory": "de memória",
    "diesel: IPCC 2006 Guidelines vol. 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L": (
        "gasóleo: Directrizes do IPCC 2006 vol. 2, 74,1 kg/GJ, 43,0 GJ/t, 0,84 kg/L"
    ),
    "every bill is paid: enter what is known of bills paid in the area": (
        "todas as contas são pagas: indique o que se sabe das contas pagas na zona"
    ),
    "free outlet": "saída livre",
    "laid by itself": "instalado sozinho",
    "no charge entered": "nenhum encargo indicado",
    "no cost entered": "nenhum custo indicado",
    "no fall; 0.3 in stressed and 1 in over-drawn aquifers: assumed from reported falls": (
        "nenhuma descida; 0,3 em aquíferos sob pressão e 1 em sobreexplorados: suposto de descidas relatadas"
    ),
    "no grant entered": "nenhuma subvenção indicada",
    "no growth assumed": "nenhum crescimento suposto",
    "no leakage assumed": "nenhuma fuga suposta",
    "no levy entered": "nenhuma taxa indicada",
    "no loan entered": "nenhum empréstimo indicado",
    "no minimum": "nenhum mínimo",
    "no new line": "nenhuma nova linha",
    "no price entered": "nenhum preço indicado",
    "no shade assumed; look at the site": "nenhuma sombra suposta; veja o local",
    "no tax entered": "nenhum imposto indicado",
    "none": "nenhum",
    "none assumed": "nenhum suposto",
    "none entered": "nenhum indicado",
    "none entered: every price holds the tax that it bears": "nenhum indicado: cada preço contém o imposto que suporta",
    "none: an account that keeps up with inflation": "nenhum: uma conta que acompanha a inflação",
    "oil and filter every 250 h: common service schedules": "óleo e filtro a cada 250 h: planos de revisão correntes",
    "one": "um",
    "one plane": "um plano",
    (
        "rural supply in the National Water Policy of Tanzania 2002, from memory; WHO (Howard and Bartram 2003) "
        "calls about 20 basic access, Sphere 2018 asks for at least 15 in an emergency"
    ): (
        "abastecimento rural na Política Nacional da Água da Tanzânia 2002, de memória; a OMS (Howard e Bartram "
        "2003) chama a cerca de 20 acesso básico, a Sphere 2018 pede pelo menos 15 numa emergência"
    ),
    "same scenario, same seed, same numbers": "mesmo cenário, mesma semente, mesmos números",
    "steel tank 20-30 years, from memory": "reservatório de aço 20-30 anos, de memória",
    "supply voltage of public networks: IEC 60038, EN 50160": "tensão das redes públicas: IEC 60038, EN 50160",
    "the highest for PVC insulation, IEC 60364-5-52": "a maior para isolamento de PVC, IEC 60364-5-52",
    "usual fixed cable, from memory": "cabo fixo usual, de memória",
    "usual value of open ground": "valor usual de solo aberto",
    "not given": "não indicado",
}
