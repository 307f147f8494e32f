"""Kiswahili cha bamba la taarifa mstari kwa mstari, na kama pampu inafaa eneo."""

SENTENCES: dict[str, str] = {
    "plate.not_given": "haikutolewa",
    "plate.printed.range": "{low:g} hadi {high:g} {unit}",
    "plate.rated_flow.symbol": "Q, Qn",
    "plate.rated_flow.meaning": "mtiririko kwa kimo cha kawaida: huu ndio wa kupangia",
    "plate.rated_flow.asks": "si zaidi ya {limit}, kiasi salama cha kusukuma cha kisima kirefu",
    "plate.rated_head.symbol": "H, Hn",
    "plate.rated_head.meaning": "kimo kwa mtiririko wa kawaida: hiki ndicho cha kupangia",
    "plate.rated_head.asks": "{limit} kwa {flow} m3/h",
    "plate.largest_flow.symbol": "Qmax",
    "plate.largest_flow.meaning": "mtiririko bila kimo: usipangie huu kamwe",
    "plate.largest_head.symbol": "Hmax",
    "plate.largest_head.meaning": "kimo bila mtiririko: usipangie hiki kamwe, lakini bomba lazima likihimili",
    "plate.largest_head.asks": "zaidi ya {value} kabla maji hayajaanza kutiririka",
    "plate.rated_power.symbol": "P, P1",
    "plate.rated_power.meaning": (
        "kinachochukuliwa na mota kwenye kazi ya kawaida; {percent:.0f} % yake hufika kwenye maji"
    ),
    "plate.rated_power.asks": "{value} kwa mtiririko inaoutoa hapa",
    "plate.dc_supply.symbol": "U DC, PV, Voc",
    "plate.dc_supply.meaning": "volti za safu ya paneli lazima zibaki ndani ya vikomo hivi",
    "plate.dc_supply.asks": (
        "{hot:.0f} hadi {cold:.0f} V kazini, {open:.0f} V bila mzigo kwenye baridi, paneli {count} katika mfululizo"
    ),
    "plate.dc_supply.look_for": "tafuta 'DC', 'PV' au 'Voc' pamoja na volti",
    "plate.ac_supply.symbol": "U AC, ~",
    "plate.ac_supply.meaning": "volti za gridi au jenereta lazima zibaki ndani yake",
    "plate.ac_supply.look_for": "tafuta 'AC' au '~' pamoja na volti",
    "plate.phases.symbol": "1~, 3~, ph",
    "plate.phases.meaning": "fezi za chanzo cha AC",
    "plate.phases.look_for": "tafuta '1~' au '3~'",
    "plate.frequency.symbol": "f, Hz",
    "plate.frequency.meaning": "mota ya AC huzunguka sambamba nayo: hertz chache, kasi ndogo, kimo kidogo sana",
    "plate.frequency.look_for": "tafuta 'Hz'",
    "plate.current.symbol": "I, Imax, A",
    "plate.current.meaning": "mkubwa zaidi inaoruhusiwa kuchukua",
    "plate.current.asks": "{value} kwa nguvu ya kawaida",
    "plate.current.look_for": "tafuta 'A' au 'Amp'",
    "plate.speed.symbol": "n, rpm, 1/min",
    "plate.speed.meaning": "mtiririko huenda na kasi, kimo na mraba wake",
    "plate.speed.asks": "huzunguka polepole chini ya jua dhaifu",
    "plate.speed.look_for": "tafuta 'rpm' au '1/min'",
    "plate.frame.symbol": 'inchi, "',
    "plate.frame.meaning": "daraja la ukubwa wa mota; haiingii kwenye kesingi iliyo chini ya {millimetres:.0f} mm",
    "plate.frame.asks": "huingia kwenye kesingi ya {value}",
    "plate.frame.asks_open": "kesingi haikutolewa",
    "plate.frame.look_for": "tafuta ukubwa kwa inchi",
    "plate.insulation.symbol": "Ins. Cl.",
    "plate.insulation.meaning": "koili huvumilia {limit_c} °C (IEC 60085)",
    "plate.insulation.asks": "maji ya {water_c:g} °C",
    "plate.insulation.look_for": "tafuta 'Ins. Cl.' na herufi",
    "plate.ingress.symbol": "IP",
    "plate.ingress.meaning": "{solids}; {water} (IEC 60529)",
    "plate.ingress.asks": "huning'inia chini ya maji daima",
    "plate.ingress.look_for": "tafuta 'IP' na tarakimu mbili",
    "plate.liquid.symbol": "t max",
    "plate.liquid.meaning": "maji ya joto zaidi yako nje ya kazi yake",
    "plate.liquid.asks": "maji ya {water_c:g} °C",
    "plate.liquid.look_for": "tafuta 'max. liquid temp.'",
    "plate.submergence.symbol": "min. submergence",
    "plate.submergence.meaning": "maji yanayopaswa kuwa juu ya mdomo wa kunyonya",
    "plate.submergence.asks": "{value} yako juu yake",
    "plate.submergence.look_for": "tafuta 'min. submergence', mara nyingi imo kwenye mwongozo tu",
    "plate.asked_by": "{value} kutoka {source}",
    "plate.holds.pass": "inafaa",
    "plate.holds.caution": "tahadhari",
    "plate.holds.fail": "haifai",
    "plate.holds.not given": "haikutolewa",
    "plate.holds.open": "-",
    "plate.heading": "Bamba, mstari kwa mstari",
    "plate.column.symbol": "Kwenye bamba",
    "plate.column.printed": "Iliyochapishwa",
    "plate.column.meaning": "Maana yake",
    "plate.column.asks": "Kinachohitajika na eneo hili",
    "plate.column.holds": "Hapa",
    "plate.solids.0": "hakuna kinga dhidi ya vitu vigumu",
    "plate.solids.1": "huzuia vitu vya zaidi ya 50 mm, kama mgongo wa mkono",
    "plate.solids.2": "huzuia vitu vya 12.5 mm na zaidi, kama kidole",
    "plate.solids.3": "huzuia vitu vya 2.5 mm na zaidi, kama zana",
    "plate.solids.4": "huzuia vitu vya 1 mm na zaidi, kama waya",
    "plate.solids.5": "imekingwa dhidi ya vumbi",
    "plate.solids.6": "haipitishi vumbi",
    "plate.solids.X": "vitu vigumu havikutajwa",
    "plate.water.0": "hakuna kinga dhidi ya maji",
    "plate.water.1": "dhidi ya matone yanayoanguka wima",
    "plate.water.2": "dhidi ya matone, ikiinama hadi digrii 15",
    "plate.water.3": "dhidi ya manyunyu hadi digrii 60 kutoka wima",
    "plate.water.4": "dhidi ya maji yanayorukia kutoka pande zote",
    "plate.water.5": "dhidi ya maji yanayopigwa kwa mpira",
    "plate.water.6": "dhidi ya maji yanayopigwa kwa nguvu",
    "plate.water.7": "huvumilia kuzama kwa muda",
    "plate.water.8": "huvumilia kuzama daima, kwa masharti yanayotajwa na mtengenezaji",
    "plate.water.9": "dhidi ya maji ya moto yanayopigwa kwa shinikizo kubwa, jambo lisilosema chochote kuhusu kuzama",
    "plate.water.X": "maji hayakutajwa",
    "finding.contradiction": "Takwimu za bamba hili zinapingana: {fault}.",
    "finding.cannot_lift": (
        "Pampu hii haiwezi kunyanyua maji hapa: hufikia {most} m tu, bila mtiririko, na eneo huhitaji {lift} m kabla "
        "maji hayajaanza kutiririka."
    ),
    "finding.too_weak": "Pampu hii ni dhaifu mno: kwa {flow} m3/h hufikia {given} m, eneo huhitaji {needed} m.",
    "finding.cannot_draw": (
        "Pampu hii haitoi maji hapa: maji yakiwa tulivu yako kina cha {level:.1f} m, na hayafuniki mdomo wa kunyonya "
        "ulio kwenye {depth:g} m."
    ),
    "finding.cannot_start": (
        "Pampu hii haitoi maji hapa: {limit:g} W ambazo kidhibiti kinaweza kuipa hazipandishi maji."
    ),
    "finding.short": (
        "Pampu hii imepungukiwa kidogo: kwa {flow} m3/h hufikia {given} m, eneo huhitaji {needed} m; hutulia kwa "
        "{duty} m3/h."
    ),
    "finding.over_yield": (
        "Pampu hii imetengenezwa kwa zaidi ya kile kisima kirefu kinachoweza kutoa: mtiririko wa kawaida {rated} "
        "m3/h, kiasi salama cha kusukuma {safe} m3/h."
    ),
    "finding.over": (
        "Pampu hii hunyanyua {times} ya kile eneo linachohitaji: kwa {flow} m3/h ingeweza kufikia {given} m ({most} "
        "m bila mtiririko), eneo huhitaji {needed} m."
    ),
    "finding.times": "mara {times}",
    "finding.twice": "mara mbili",
    "finding.fits": "Pampu hii inafaa: kwa {flow} m3/h hufikia {given} m, eneo huhitaji {needed} m.",
    "finding.would_fit": (
        "Ambayo ingefaa: pampu ya kawaida ya karibu {head} m kwa {flow} m3/h, yenye mota inayochukua karibu {power} "
        "kW ikiwa {share} % yake hufika kwenye maji."
    ),
}
