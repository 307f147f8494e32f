"""Vipimo vya modeli na katalogi ya takwimu, na vyanzo vya thamani-msingi, kwa maandishi yake ya Kiingereza."""

UNITS: dict[str, str] = {
    "% of demand": "% ya mahitaji",
    "% of income": "% ya kipato",
    "% of pumped": "% ya yaliyosukumwa",
    "% of tank": "% ya tanki",
    "%/day": "%/siku",
    "%/year": "%/mwaka",
    "L/head/day": "L/mnyama/siku",
    "L/person/day": "L/mtu/siku",
    "month, 1 to 12": "mwezi, 1 hadi 12",
    "L/day": "L/siku",
    "L/year": "L/mwaka",
    "as the key": "kama kitambulisho",
    "days": "siku",
    "days/year": "siku/mwaka",
    "deg": "°",
    "deg C": "°C",
    "h/day": "h/siku",
    "h/year": "h/mwaka",
    "head": "mifugo",
    "in": "inchi",
    "kWh/m2/day": "kWh/m2/siku",
    "kWh/month": "kWh/mwezi",
    "kWh/year": "kWh/mwaka",
    "kg/year": "kg/mwaka",
    "kWp": "kWp",
    "money/kWp": "money/kWp",
    "m/year": "m/mwaka",
    "m3/day": "m3/siku",
    "m3/h per m": "m3/h kwa m",
    "m3/household/month": "m3/kaya/mwezi",
    "m3/year": "m3/mwaka",
    "mm/day": "mm/siku",
    "money/household/month": "money/kaya/mwezi",
    "money/kW/month": "money/kW/mwezi",
    "money/month": "money/mwezi",
    "money/person": "money/mtu",
    "money/person/year": "money/mtu/mwaka",
    "money/year": "money/mwaka",
    "people": "watu",
    "per 100 mL": "kwa 100 mL",
    "rpm": "mizunguko/dakika",
    "years": "miaka",
}

SOURCES: dict[str, str] = {
    "1 % per 100 m above 305 m: MSHA rule for naturally aspirated engines": (
        "1 % kwa kila 100 m juu ya 305 m: kanuni ya MSHA kwa injini zinazovuta hewa kawaida"
    ),
    "5 % at 43 deg C: Hicks, Handbook of Energy Engineering Calculations": (
        "5 % kwa 43 °C: Hicks, Handbook of Energy Engineering Calculations"
    ),
    "Dobos 2014, NREL/TP-6A20-62641": "Dobos 2014, NREL/TP-6A20-62641",
    "Hicks, Handbook of Energy Engineering Calculations": "Hicks, Handbook of Energy Engineering Calculations",
    "Jordan and Kurtz 2013, Prog. Photovolt. 21:12-29, median": (
        "Jordan na Kurtz 2013, Prog. Photovolt. 21:12-29, thamani ya kati"
    ),
    "MSHA rule for naturally aspirated engines": "kanuni ya MSHA kwa injini zinazovuta hewa kawaida",
    "Skarstein and Uhlen 1989, Wind Eng. 13(2), from memory": (
        "Skarstein na Uhlen 1989, Wind Eng. 13(2), kwa kumbukumbu"
    ),
    (
        "World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, from memory; "
        "take the funder's own"
    ): (
        "World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, kwa "
        "kumbukumbu; chukua cha mfadhili mwenyewe"
    ),
    "a bound of the search": "kikomo cha utafutaji",
    "a choice left to the planner": "uteuzi ulioachiwa planner",
    "as the start level": "kama kiwango cha kuanza",
    "assumed": "imekadiriwa",
    ("assumed for clean water, near the 0.57 % of efficiency of a Hydraulic Institute case; silt 1, sand 3"): (
        "imekadiriwa kwa maji safi, karibu na 0.57 % ya ufanisi ya mfano wa Hydraulic Institute; matope 1, mchanga 3"
    ),
    "assumed for hard rock and limestone; sandstone 2, iron-rich alluvium 4": (
        "imekadiriwa kwa mwamba mgumu na mawe ya chokaa; mawe ya mchanga 2, mashapo yenye chuma kingi 4"
    ),
    "assumed, common practice, no source": "imekadiriwa, desturi ya kazi, hakuna chanzo",
    "assumed; boreholes are held to last 20 to 50 years, from memory": (
        "imekadiriwa; visima virefu huaminika kudumu miaka 20 hadi 50, kwa kumbukumbu"
    ),
    "assumed; buried plastic pipe is made for 50 years and more, from memory": (
        "imekadiriwa; bomba la plastiki lililofukiwa hutengenezwa kwa miaka 50 na zaidi, kwa kumbukumbu"
    ),
    "commercial sets 20 000-30 000 h": "majenereta ya kibiashara saa 20 000-30 000",
    "common practice, no source": "desturi ya kazi, hakuna chanzo",
    "from memory": "kwa kumbukumbu",
    "diesel: IPCC 2006 Guidelines vol. 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L": (
        "dizeli: IPCC 2006 Guidelines juzuu la 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L"
    ),
    "every bill is paid: enter what is known of bills paid in the area": (
        "kila bili hulipwa: weka kinachojulikana kuhusu bili zinazolipwa katika eneo"
    ),
    "free outlet": "mdomo wa kutolea ulio wazi",
    "laid by itself": "umelazwa peke yake",
    "no charge entered": "hakuna tozo lililowekwa",
    "no cost entered": "hakuna gharama iliyowekwa",
    "no fall; 0.3 in stressed and 1 in over-drawn aquifers: assumed from reported falls": (
        "hakuna kushuka; 0.3 katika hifadhi za maji chini ya ardhi zenye shinikizo la matumizi na 1 katika "
        "zinazochukuliwa kupita kiasi: imekadiriwa kutokana na kushuka kulikoripotiwa"
    ),
    "no grant entered": "hakuna ruzuku iliyowekwa",
    "no growth assumed": "hakuna ongezeko lililokadiriwa",
    "no leakage assumed": "hakuna uvujaji uliokadiriwa",
    "no levy entered": "hakuna tozo lililowekwa",
    "no loan entered": "hakuna mkopo uliowekwa",
    "no minimum": "hakuna kiwango cha chini",
    "no new line": "hakuna laini mpya",
    "no price entered": "hakuna bei iliyowekwa",
    "no shade assumed; look at the site": "hakuna kivuli kilichokadiriwa; angalia eneo",
    "no tax entered": "hakuna kodi iliyowekwa",
    "none": "hakuna",
    "none assumed": "hakuna iliyokadiriwa",
    "none entered": "hakuna iliyowekwa",
    "none entered: every price holds the tax that it bears": "hakuna iliyowekwa: kila bei ina kodi inayobeba",
    "none: an account that keeps up with inflation": "hakuna: akaunti inayoendana na mfumuko wa bei",
    "oil and filter every 250 h: common service schedules": (
        "oili na kichujio kila saa 250: ratiba za kawaida za huduma"
    ),
    "one": "moja",
    "one plane": "upande mmoja",
    (
        "rural supply in the National Water Policy of Tanzania 2002, from memory; WHO (Howard and Bartram 2003) "
        "calls about 20 basic access, Sphere 2018 asks for at least 15 in an emergency"
    ): (
        "usambazaji vijijini katika Sera ya Taifa ya Maji ya Tanzania 2002, kwa kumbukumbu; WHO (Howard na Bartram "
        "2003) huita karibu 20 upatikanaji wa msingi, Sphere 2018 huhitaji angalau 15 wakati wa dharura"
    ),
    "same scenario, same seed, same numbers": "senario ileile, mbegu ileile, namba zilezile",
    "steel tank 20-30 years, from memory": "tanki la chuma miaka 20-30, kwa kumbukumbu",
    "supply voltage of public networks: IEC 60038, EN 50160": "volti za mitandao ya umma: IEC 60038, EN 50160",
    "the highest for PVC insulation, IEC 60364-5-52": "ya juu zaidi kwa insulesheni ya PVC, IEC 60364-5-52",
    "usual fixed cable, from memory": "waya wa kawaida wa kudumu, kwa kumbukumbu",
    "usual value of open ground": "thamani ya kawaida ya ardhi wazi",
    "not given": "haikutolewa",
}
