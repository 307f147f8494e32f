"""Kiswahili cha kile ambacho senario haisemi na kinachokokotolewa: kutokana na nini, kwa kanuni gani."""

SENTENCES: dict[str, str] = {
    "assumed.place": "jina la mradi",
    "assumed.time_zone": "kutokana na kuratibu za mahali",
    "assumed.weather": (
        "hali ya hewa haikutolewa: imekadiriwa kutokana na kuratibu za mahali; pima au pakua kabla ya kutoa fedha"
    ),
    "assumed.user": "aina ya mtumiaji",
    "assumed.user.people": "Watu",
    "assumed.user.livestock": "Mifugo",
    "assumed.user.irrigation": "Shamba linalomwagiliwa",
    "assumed.user.volume": "Maji kwa ujazo",
    "assumed.specific_capacity": (
        "{flow} m3/h kwa kushuka kwa kina cha maji kwa {drawdown} m; hatua moja haionyeshi jinsi kushuka kunavyokua "
        "kwa mitiririko mingine"
    ),
    "assumed.safe_yield": (
        "mtiririko wa jaribio la kusukuma maji, {flow} m3/h: jaribio fupi husema machache kuhusu kiangazi; kiasi "
        "salama kiwekwe kwa jaribio la siku moja au zaidi"
    ),
    "assumed.pump_name": "Pampu",
    "assumed.pump_named": "jina halikutolewa",
    "assumed.pump_kind": (
        "mtiririko mkubwa zaidi ni mara {ratio} ya ule wa kawaida: desturi ya kazi, hakuna chanzo; angalia pampu au "
        "karatasi yake ya taarifa"
    ),
    "assumed.controller_window": "volti za DC kwenye bamba la pampu",
    "assumed.riser": "Bomba la kisimani",
    "assumed.main": "Bomba kuu",
    "assumed.segments": (
        "bomba la kisimani la kina cha pampu na bomba kuu la pipeline.length_m; viungo havijahesabiwa"
    ),
    "assumed.pipe": (
        "{velocity} m/s kwa {flow} m3/h (karibu 1 m/s au chini: desturi ya kazi, hakuna chanzo), daraja la shinikizo "
        "la {bar} bar kwa pampu dhidi ya vali iliyofungwa; vipimo vya {standard}"
    ),
    "assumed.sources": "hakuna chanzo kilichotolewa: jua peke yake",
    "assumed.module": (
        "paneli ya jumla ya takwimu za mviringo, si karatasi ya taarifa ya mtu yeyote: desturi ya kazi, hakuna chanzo"
    ),
    "assumed.series": (
        "{fewest} hadi {most} hufaa volti za kidhibiti, na mkondo wa bamba, mchana wa joto na asubuhi ya baridi; "
        "kati ya hizi, mfululizo ulio karibu zaidi na mara {ratio} ya nguvu inayoingia kwenye pampu"
    ),
    "assumed.series_by_power": (
        "kilicho karibu zaidi na mara {ratio} ya nguvu inayoingia kwenye pampu; volti za kidhibiti hazijulikani "
        "zote, hivyo angalia kama {fewest} hadi {most} ndicho inachovumilia"
    ),
    "assumed.series_chosen": "imechaguliwa pamoja na idadi ya mifululizo, kati ya zinazofaulu kaguzi",
    "assumed.string_fuse": (
        "fyuzi ya kawaida ndogo zaidi ya gPV (IEC 60269-6) ya mara 1.5 hadi 2.4 ya mkondo wa mzunguko mfupi wa "
        "paneli (IEC 62548, kwa kumbukumbu), katika ncha zote mbili za kila mfululizo; mifululizo chini ya mitatu "
        "haihitaji"
    ),
    "assumed.section_chosen": (
        "ndogo zaidi inayofaulu kaguzi za uwezo wa kubeba mkondo na kushuka kwa volti kwa safu ya paneli iliyochaguliwa"
    ),
    "assumed.section": (
        "kipimo kidogo zaidi cha IEC 60228 kinachobeba mkondo (IEC 60364-5-52) na kupoteza si zaidi ya {percent:g} % "
        "ya volti"
    ),
    "assumed.planes": (
        "kuelekea ikweta, kwa mwinamo wa latitudo lakini angalau 10°, ambapo mvua huosha kioo: desturi ya kazi, "
        "hakuna chanzo"
    ),
    "assumed.tank": "tanki halikutolewa: moja limechaguliwa",
    "assumed.rating": (
        "dogo zaidi linaloendesha na kuanzisha mota inayohitaji {need:.1f} kW, ambalo {percent:.0f} % ya uwezo wake "
        "hubaki katika mwinuko huu na {hottest:.0f} °C"
    ),
    "assumed.level": "moja ya tano ya tanki kutoka kiwango kilichotolewa: desturi ya kazi, hakuna chanzo",
    "assumed.tank_sizes": "ukubwa wa kawaida: desturi ya kazi, hakuna chanzo",
    "assumed.price": "kutoka {listed}",
    "assumed.stand_in_price": "fremu ya kushikilia paneli imo kwenye prices.pv_per_kwp",
}
