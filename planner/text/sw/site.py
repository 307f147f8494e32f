"""Kiswahili cha kurasa za kimo, tanki, kaguzi, data na kilichoigizwa."""

SENTENCES: dict[str, str] = {
    "simulated.title": "Viwango vilivyoigizwa",
    "simulated.under": (
        "Maji, nishati, mafuta na saa ni thamani za uigaji wa saa kwa saa: hubadilika tu kwa uendeshaji mpya. Kile "
        "ambacho saa huhitaji kutoka jenereta na bili ya gridi, kwa bei za mwaka wa kwanza, ni fomula kwenye laha "
        "'Data'."
    ),
    "simulated.years": "Kipindi cha uchambuzi (miaka)",
    "simulated.people": "Watu, mwaka wa kwanza (0: hakuna)",
    "simulated.demand_m3": "Mahitaji (m3)",
    "simulated.delivered_m3": "Yaliyotolewa (m3)",
    "simulated.fuel_l": "Mafuta (L)",
    "simulated.grid_kwh": "Gridi (kWh)",
    "simulated.grid_peaks_kw": "Jumla ya vilele vya kila mwezi (kW)",
    "simulated.hours": "Jenereta (h)",
    "simulated.run_h": "Jenereta, saa zote za kazi (h)",
    "simulated.services": "Huduma",
    "simulated.used_h": "Saa za jenereta lililopo (h)",
    "simulated.age_years": "Miaka ya jenereta lililopo",
    "simulated.overhauls": "Ukarabati mkubwa",
    "simulated.worn": "Majenereta yaliyochakaa kwa saa",
    "simulated.bought": "Majenereta yaliyobadilishwa",
    "simulated.kept_h": "Saa za jenereta lililobaki (h)",
    "simulated.kept_years": "Miaka ya jenereta lililobaki",
    "simulated.block_kwh": "Gridi, ngazi {number} (kWh)",
    "simulated.grid_bill": "Bili ya gridi ({currency})",
    "simulated.further_kwh": "{source} (kWh)",
    "simulated.further_hours": "{source} (h)",
    "simulated.further_fuel_l": "{source}, mafuta (L)",
    "simulated.further_band": "{source}, kipindi {band} (kWh)",
    "simulated.left": "Muda wa jenereta uliobaki mwishoni (sehemu)",
    "head.title": "Jumla ya kimo cha kusukuma na nukta ya kazi",
    "head.under": (
        "Miundombinu ya maji ya {option}; kimo kwa mita za maji. Nukta ya kazi ni pale ambapo pampu kwa kasi kamili "
        "hukutana na mfumo, au ambapo kiasi salama cha kusukuma, nguvu inayoruhusiwa au kina cha mdomo wa kunyonya "
        "huiwekea kikomo."
    ),
    "head.build_up": "Mjengeko kwenye nukta ya kazi",
    "head.part": "Sehemu",
    "head.head_m": "Kimo (m)",
    "head.share": "Sehemu (%)",
    "head.static_level": "Kina cha maji yakiwa tulivu, wastani wa miezi",
    "head.rise": "Kupanda kutoka ardhini hadi mdomo wa kuingizia wa tanki",
    "head.drawdown": "Kushuka kwa kina cha maji",
    "head.pipe_friction": "Msuguano katika mabomba",
    "head.fitting_losses": "Hasara katika viungo",
    "head.residual": "Kimo kinachobaki kwenye mdomo wa kuingizia",
    "head.other": "Sehemu ya juu ya njia, au kilichozuiwa na vali",
    "head.total": "Jumla ya kimo cha kusukuma",
    "head.duty": "Nukta ya kazi, wastani wa kina cha maji wa mwaka",
    "head.figure": "Takwimu",
    "head.value": "Thamani",
    "head.unit": "Kipimo",
    "head.flow": "Mtiririko",
    "head.shut_off": "Kimo cha pampu bila mtiririko, kasi ya kawaida",
    "head.speed": "Kasi",
    "head.of_rated": "% ya kawaida",
    "head.hydraulic_power": "Nguvu ya maji yanayonyanyuliwa",
    "head.input_power": "Nguvu inayoingia kwenye mota",
    "head.efficiency": "Ufanisi, kutoka mota hadi maji",
    "head.limited_by": "Kikomo",
    "head.by_run": "Msuguano kwenye nukta ya kazi kwa kila kipande cha bomba ({method})",
    "head.run": "Kipande cha bomba",
    "head.length": "Urefu (m)",
    "head.inside_diameter": "Kipenyo cha ndani (mm)",
    "head.velocity": "Kasi ya maji (m/s)",
    "head.friction": "Msuguano (m)",
    "head.fittings": "Viungo (m)",
    "head.loss": "Hasara (m/100 m)",
    "head.by_month": "Nukta ya kazi kwa mwezi",
    "head.month": "Mwezi",
    "head.level": "Kina cha maji yakiwa tulivu (m)",
    "head.static_lift": "Kimo tulivu cha kunyanyua (m)",
    "head.flow_m3h": "Mtiririko (m3/h)",
    "head.total_head": "Jumla ya kimo (m)",
    "head.input_w": "Nguvu inayoingia kwenye mota (W)",
    "head.differing": "Machaguo yenye pampu, mabomba au kikomo tofauti",
    "head.option": "Chaguo la nishati",
    "head.curves": "Nukta za mikondo",
    "head.system": "Mfumo (m)",
    "head.at_speed": "{speed} % (m)",
    "head.chart": "Pampu na mfumo",
    "head.chart_alt": "Kimo kwa mtiririko: mfumo, pampu kwa kasi kadhaa, na nukta ya kazi ambapo hukutana.",
    "head.system_curve": "Mfumo",
    "head.pump_curve": "Pampu kwa kasi ya {speed} %",
    "head.duty_point": "Nukta ya kazi",
    "tank.title": "Tanki na swichi ya boya",
    "tank.under": (
        "Kila ukubwa na kila mpangilio uliigizwa saa kwa saa kwa miaka yote, mengine yote ya chaguo yakiwa kama "
        "yalivyochaguliwa."
    ),
    "tank.by_size": "Mahitaji yaliyokidhiwa kwa ukubwa wa tanki",
    "tank.option": "Chaguo la nishati",
    "tank.tank_m3": "Tanki (m3)",
    "tank.met": "Mahitaji yaliyokidhiwa (%)",
    "tank.target": "Lengo (%)",
    "tank.price": "Bei ya tanki ({currency})",
    "tank.chosen": "Kilichochaguliwa",
    "tank.is_chosen": "✓ kimechaguliwa",
    "tank.settings": "Mipangilio ya swichi ya boya",
    "tank.none_tried": (
        "Hakuna chaguo linaloruhusu gridi au jenereta kuongezea kile kinachosukumwa na jua, hivyo hakuna mipangilio "
        "iliyolinganishwa."
    ),
    "tank.start": "Kiwango cha kuanza (% ya tanki)",
    "tank.stop": "Kiwango cha kusimama (% ya tanki)",
    "tank.meets": "Hutimiza lengo",
    "tank.grid": "Gridi (kWh/mwaka)",
    "tank.fuel": "Mafuta (L/mwaka)",
    "tank.life_cycle_cost": "Gharama za muda wote ({currency})",
    "tank.annualised_cost": "Gharama ya wastani kwa mwaka ({currency}/mwaka)",
    "tank.against": "Dhidi ya mpangilio uliotumika ({currency}/mwaka)",
    "tank.remark": "Maelezo",
    "tank.used": "uliotumika",
    "tank.best": "bora",
    "tank.none_better": (
        "{option}: kuanza {start} %, kusimama {stop} % ya tanki; kati ya mipangilio iliyojaribiwa hakuna iliyo bora "
        "zaidi."
    ),
    "tank.would_meet": (
        "{option}: kuanza {start} %, kusimama {stop} % ya tanki hukosa lengo la huduma; {better} % ingelitimiza."
    ),
    "tank.would_save": (
        "{option}: kuanza {start} %, kusimama {stop} % ya tanki; {better} % ingeokoa {saving} kwa mwaka."
    ),
    "tank.most_delivered": (
        "{option}: kuanza {start} %, kusimama {stop} % ya tanki; {better} % ingetoa maji mengi zaidi kati ya "
        "zilizojaribiwa."
    ),
    "tank.chart_alt": (
        "Mahitaji yaliyokidhiwa kwa ukubwa wa tanki, ya {option} na ya machaguo yanayotofautiana nalo, na lengo."
    ),
    "tank.target_line": "Lengo",
    "checks.title": "Kaguzi za eneo",
    "checks.under": "{summary}. Kanuni za mahali na mafundi wenye leseni hutangulia.",
    "checks.verdict": "Uamuzi",
    "checks.topic": "Mada",
    "checks.compared": "Kilicholinganishwa",
    "checks.value": "Thamani",
    "checks.limit": "Kikomo",
    "checks.margin": "Nafasi",
    "checks.why": "Kwa nini ni muhimu",
    "checks.remedy": "Suluhisho",
    "checks.source": "Kikomo kutoka",
    "checks.pass": "inafaa",
    "checks.caution": "tahadhari",
    "checks.fail": "haifai",
    "checks.not given": "haikutolewa",
    "checks.route": "Njia na mistari ya shinikizo",
    "checks.in_metres": "{name} (m)",
    "checks.chainage": "Umbali",
    "checks.ground": "Ardhi",
    "checks.duty_line": "Mstari wa shinikizo la maji kwenye kazi",
    "checks.shut_off_line": "Mstari wa shinikizo la maji vali ikiwa imefungwa",
    "checks.allowed_line": "Kikomo cha shinikizo cha bomba",
    "checks.not_known": "haijulikani",
    "checks.chart_alt": "Ardhi, mistari ya shinikizo la maji na kikomo cha bomba kwenye njia kutoka kisima kirefu.",
    "checks.chainage_axis": "Umbali kutoka kisima kirefu (m)",
    "checks.level_axis": "Usawa juu ya ardhi ya kisima kirefu (m)",
    "inputs.under": (
        "Kila kitambulisho cha senario. 'imetolewa' ina maana imo kwenye senario; 'chaguo-msingi' imekadiriwa, "
        "pamoja na chanzo chake; 'haikutolewa' haina thamani; '{starter}' ilibuniwa kwa senario ya kuanzia na "
        "haijabadilishwa tangu hapo."
    ),
    "inputs.money_is": "'money' ni {currency}.",
    "inputs.status_given": "imetolewa",
    "inputs.status_default": "chaguo-msingi",
    "inputs.status_assumed": "imekadiriwa",
    "inputs.status_not given": "haikutolewa",
    "inputs.status_starter": "bado ni thamani ya kuanzia",
    "starter.left_over": (
        "Thamani {count} bado ni zile za kubuni za senario ya kuanzia ('{status}' kwenye laha 'Data'): weka za eneo "
        "lako badala yake kabla ya kutumia takwimu."
    ),
    "inputs.note": (
        "Ili kubadilisha data, nenda kwenye laha 'Fomu': thamani za hapa huifuata, na kila kiasi cha fedha huzifuata "
        "hizi. Bei, muda wa kutumika na matengenezo ya vitu vilivyonunuliwa, asilimia, kiwango cha punguzo, mfumuko "
        "wa bei, ongezeko la bei, ruzuku, mkopo, bei ya maji na bei za umeme vinaweza kubadilishwa hivyo. Mengine "
        "yote yanahitaji kuendesha kitabu hiki cha kazi upya (planner run FILE): chochote kinachobadilisha maji, "
        "nishati, mafuta au saa, kipindi cha uchambuzi, aina ya bei, mipaka ya ngazi za bei, muda wa kutumika wa "
        "pampu, asilimia iliyokuwa 0, na chochote kilichochaguliwa kwa gharama (tanki, mifululizo, viwango), ambacho "
        "hubaki kama kilivyochaguliwa. Laha 'Tanki' na sentensi za laha 'Jibu' hubaki za wakati wa kuendesha."
    ),
    "inputs.key": "Kitambulisho",
    "inputs.value": "Thamani",
    "inputs.status": "Imetolewa au chaguo-msingi",
    "inputs.meaning": "Maana",
    "inputs.source": "Chanzo cha chaguo-msingi, au maana ya kutokuwepo",
    "inputs.by_month": "kwa mwezi",
    "inputs.weather": "Hali ya hewa iliyotumika",
    "inputs.weather_source": "Chanzo: {source}",
    "inputs.weather_note": "Maelezo: {note}",
    "inputs.altitude": "Mwinuko wa eneo",
    "inputs.altitude_given": "imetolewa",
    "inputs.altitude_grid": "kutoka gridi ya dunia ya pvlib",
    "inputs.years": "Mionzi ya jua ya mwaka wa chini zaidi na wa juu zaidi",
    "inputs.from_to": "{low} hadi {high}",
    "inputs.of_mean": "% ya wastani",
    "weather.ghi_kwh_m2_day": "Mionzi mlalo, wastani",
    "weather.ghi_lowest_year_kwh_m2_day": "Mionzi mlalo, mwaka wa chini zaidi",
    "weather.ghi_highest_year_kwh_m2_day": "Mionzi mlalo, mwaka wa juu zaidi",
    "weather.temperature_mean_c": "Joto la hewa, wastani",
    "weather.temperature_min_c": "Joto la hewa, saa ya baridi zaidi",
    "weather.temperature_max_c": "Joto la hewa, saa ya joto zaidi",
    "weather.clearness": "Kielezo cha uangavu, wastani",
    "weather.clearness_spread": "Kielezo cha uangavu, mtawanyiko wa siku",
    "weather.wind_m_s": "Upepo",
}
