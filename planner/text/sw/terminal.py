"""Kiswahili cha kinachoonyeshwa na uendeshaji kwenye terminali."""

SENTENCES: dict[str, str] = {
    "narrow.title": "{name}: machaguo ya nishati kwa miaka {years}",
    "narrow.option": "Chaguo la nishati",
    "narrow.meets_target": "Hutimiza\nlengo",
    "narrow.demand_met_percent": "Mahitaji\nyaliyokidhiwa\n%",
    "narrow.tank_m3": "Tanki\nm3",
    "narrow.array_kwp": "PV\nkWp",
    "narrow.grid_kwh_per_year": "Gridi\nkWh/mwaka",
    "narrow.fuel_l_per_year": "Mafuta\nL/mwaka",
    "narrow.demand_met_worst_month_percent": "Mwezi\nmbaya\nzaidi %",
    "narrow.short_days_per_year": "Siku za\nupungufu\n/mwaka",
    "narrow.worst_month": "Mwezi\nmbaya\nzaidi",
    "narrow.worst_month_short_days": "Mwezi\nhuo",
    "narrow.longest_short_days": "Nyingi\nmfululizo",
    "narrow.missing_l_per_short_day": "Pungufu\nL/siku",
    "narrow.modules": "Mfululizo x\nidadi",
    "narrow.series_by_strings": "{series} x {strings}",
    "narrow.capital_cost": "Gharama za\nuwekezaji\n{currency}",
    "narrow.life_cycle_cost": "Gharama\nza muda\nwote\n{currency}",
    "narrow.levelised_cost_per_m3": "Kwa m3\n{currency}",
    "terminal.duty": (
        "Kazi: {flow} m3/h kwa {head} m (kina tulivu {static}, kushuka {drawdown}, msuguano {friction}, kilichobaki "
        "{residual}), nguvu inayoingia kwenye mota {input_w} W, kikomo: {limit}."
    ),
    "terminal.weather": "Hali ya hewa: {source}",
    "terminal.incomplete": "{mark} haijakamilika: bei haijawekwa kwa {names}",
    "terminal.checks": "Kaguzi za eneo: {summary}",
    "terminal.failed": "{sign} {topic}: {compared}: {value} dhidi ya {limit}. {remedy}",
    "terminal.more_faults": "na nyingine {count}: laha 'Kaguzi'",
    "rests_on.one": (
        "Jibu linategemea nini: {key} haikutolewa ({value} {unit}); ikijaribiwa kwa {tried}, {option} hukidhi {met} "
        "% ya mahitaji kwa gharama za muda wote za {currency} {cost}."
    ),
    "rests_on.one_technical": (
        "Jibu linategemea nini: {key} haikutolewa ({value} {unit}); ikijaribiwa kwa {tried}, {option} hukidhi {met} "
        "% ya mahitaji."
    ),
    "sweep.change_less": (
        "Data zinazolibadilisha kidogo zaidi, au haziligusi, na kamwe hazibadilishi chaguo bora: {count}; zimo "
        "kwenye kitabu cha kazi."
    ),
    "size.switch": "Swichi ya boya (% ya tanki)",
    "size.levels": "{start:g} / {stop:g}",
    "worth.map_one": "Kwa thamani zozote zilizojaribiwa za {down} na za {across}, {option} hubaki chaguo bora.",
    "worth.map_one_misses": (
        "Kwa thamani zozote zilizojaribiwa za {down} na za {across}, {option} huwa karibu zaidi na lengo."
    ),
    "terminal.beware": "! {caution}",
    "check.named_fail": "zilizoshindikana: {count} ({names})",
    "check.named_first_fail": "zilizoshindikana: {count} ({names}; ...)",
    "check.named_caution": "zenye tahadhari: {count} ({names})",
    "check.named_first_caution": "zenye tahadhari: {count} ({names}; ...)",
    "terminal.dangers": (
        "! Kinachoua hapa: {dangers}. Kanuni za mahali na mafundi wenye leseni hutangulia. Kabla ya kujenga, "
        "kufungua au kunywa chochote soma tahadhari kwenye laha 'Mbinu na tahadhari' (--verbose huzichapisha)."
    ),
    "terminal.more_dangers": "! Na hapa pia: {dangers}.",
    "danger.solar": "volti za DC za safu ya paneli (hazizimiki kamwe mchana)",
    "danger.grid": "umeme wa gridi",
    "danger.exhaust": "moshi wa jenereta",
    "danger.backfeed": "jenereta linalorudisha umeme kwenye nyaya",
    "danger.any": "umeme kutoka {source}",
    "danger.lightning": "radi",
    "danger.loads": "mizigo inayoanguka",
    "danger.falls": "kuanguka kutoka juu",
    "danger.air": "hewa mbaya kwenye mashimo na matanki",
    "danger.trench": "mitaro",
    "danger.tank": "matanki yaliyo wazi",
    "danger.water": "maji yasiyopimwa",
}
