"""Kiswahili cha kaguzi za kisima kirefu, upoaji, tanki na maji, na zinachoshiriki."""

SENTENCES: dict[str, str] = {
    "basis.duty_flow": "{flow} m3/h (mtiririko wa kazi)",
    "basis.planned_flow": "{flow} m3/h (mtiririko wa kupangia kwa pampu inayoweza kuunyanyua)",
    "basis.drawn_flow": "{flow} m3/h (mtiririko ambao pampu ingechukua)",
    "basis.coldest_given": "{temperature} °C, kama ilivyotolewa",
    "basis.coldest_of_weather": (
        "{temperature} °C, saa ya baridi zaidi ya hali ya hewa kutoa {allowance} K (haikutolewa)"
    ),
    "basis.better_pump": (
        "pampu ya kawaida ya karibu {head} m kwa {flow} m3/h (karibu {power} kW ikiwa {share} % yake hufika kwenye "
        "maji)"
    ),
    "check.specific_capacity.compared": (
        "Kushuka kwa kina cha maji kwa mtiririko wa {given:g} m3/h kwa kila mita ya kushuka, kwa kiasi salama cha "
        "kusukuma cha {flow:g} m3/h, dhidi ya {there_m:.1f} m za maji juu ya mdomo wa kunyonya"
    ),
    "check.specific_capacity.why": (
        "Ikiandikwa kinyume, hufanya kisima kirefu dhaifu kionekane chenye nguvu, na pampu huning'inizwa mahali "
        "ambapo hukauka."
    ),
    "check.specific_capacity.remedy": (
        "soma tena jaribio la kusukuma maji: likisema kushuka kwa {given:g} m kwa kila m3/h, mtiririko kwa kila mita "
        "ya kushuka ni {inverse}, na kiasi salama cha kusukuma hushusha maji kwa {drawdown_m:.1f} m"
    ),
    "check.specific_capacity.source": "data za eneo; shaka chini ya {percent:.0f} % imekadiriwa, desturi ya kazi",
    "check.safe_yield.compared": (
        "Mtiririko ambao pampu hutoa hapa kwa kasi kamili, dhidi ya kiasi salama cha kusukuma cha kisima kirefu"
    ),
    "check.safe_yield.compared_rated": (
        "Mtiririko wa kawaida wa pampu, dhidi ya kiasi salama cha kusukuma cha kisima kirefu"
    ),
    "check.safe_yield.why": (
        "Kusukuma kupita kiasi huvuta mchanga, huiacha pampu ikauke na kunaweza kuharibu kisima kirefu kabisa."
    ),
    "check.safe_yield.remedy_speed": (
        "weka kasi ya juu zaidi ya kidhibiti cha kasi kuwa {speed} %, au pampu ya mtiririko mdogo zaidi"
    ),
    "check.safe_yield.remedy_pump": (
        "pampu ya kawaida isiyozidi {flow} m3/h, kwa karibu {head} m; hadi wakati huo kidhibiti cha kasi au vali "
        "inayoizuia isizidi {limit} m3/h"
    ),
    "check.safe_yield.source": (
        "data za eneo (jaribio la kusukuma maji); pampu ya kawaida iliyo juu ya kiasi salama hushindikana, ile "
        "inayoweza kuzuiwa kwa kasi yake haishindikani"
    ),
    "check.pumping_level.compared": "Kina cha maji mwezi wa {month} kwa {flow}, dhidi ya mdomo wa kunyonya wa pampu",
    "check.pumping_level.why": "Pampu inayovuta hewa hupoteza maji, hukauka na huungua.",
    "check.pumping_level.source": "data za eneo",
    "check.deeper.remedy": "weka pampu {by} m chini zaidi, pamoja na bomba na waya vinavyolingana, au {less}",
    "check.deeper.remedy_if_bottom": (
        "weka pampu {by} m chini zaidi, pamoja na bomba na waya vinavyolingana, mara kumbukumbu ya mchimbaji "
        "inapoonyesha kuwa sakafu ya kisima kirefu iko chini zaidi, au {less}"
    ),
    "check.deeper.remedy_if_screen": (
        "weka pampu {by} m chini zaidi, pamoja na bomba na waya vinavyolingana, mara kumbukumbu ya mchimbaji "
        "inapoonyesha kuwa kichujio kiko chini zaidi, au {less}"
    ),
    "check.deeper.remedy_if_both": (
        "weka pampu {by} m chini zaidi, pamoja na bomba na waya vinavyolingana, mara kumbukumbu ya mchimbaji "
        "inapoonyesha kuwa sakafu ya kisima kirefu na kichujio viko chini zaidi, au {less}"
    ),
    "check.deeper.remedy_shallow": "{less}: kisima kirefu hakina kina cha kutosha kuning'iniza pampu chini zaidi",
    "check.deeper.remedy_in_screen": (
        "{less}: chini zaidi ya hapo pampu ingening'inia ndani ya kichujio, jambo linalovuta mchanga na kuacha mota "
        "ikiwa na joto"
    ),
    "check.deeper.less": "sukuma kidogo zaidi",
    "check.deeper.less_held": (
        "sukuma kidogo zaidi (uendeshaji wa saa kwa saa huizuia kwa {flow} m3/h: kidhibiti cha kasi kilichowekwa "
        "kisizidi kasi ya {speed} % na kikata umeme cha maji kupungua)"
    ),
    "check.submergence.compared": (
        "Maji juu ya mdomo wa kunyonya mwezi wa {month} kwa {flow}, dhidi ya yanayohitajika na pampu"
    ),
    "check.submergence.why": (
        "Maji machache mno juu ya mdomo wa kunyonya huvuta hewa na kuiacha pampu ipate mapovu (cavitation)."
    ),
    "check.submergence.look_for": "tafuta 'minimum submergence' au NPSH kwenye karatasi ya taarifa ya pampu",
    "check.submergence.source": "bamba la taarifa za pampu",
    "check.level_through_life.compared": (
        "Kina cha maji mwezi wa {month} wa mwaka wa mwisho kwa {flow}, kina cha maji tulivu kikishuka {decline} m na "
        "mtiririko kwa kila mita ya kushuka ukipungua {loss} % kwa mwaka, dhidi ya mdomo wa kunyonya kutoa maji "
        "yanayopaswa kubaki juu yake"
    ),
    "check.level_through_life.compared_dry": (
        "Kina cha maji mwezi wa {month} wa mwaka wa mwisho kwa {flow}, kina cha maji tulivu kikishuka {decline} m na "
        "mtiririko kwa kila mita ya kushuka ukipungua {loss} % kwa mwaka, dhidi ya mdomo wa kunyonya kutoa maji "
        "yanayopaswa kubaki juu yake; ni chini mno kuanzia mwaka {year}"
    ),
    "check.level_through_life.why": (
        "Pampu iliyoning'inizwa kwa maji ya leo hukauka katika miaka ya baadaye, na uendeshaji wa saa kwa saa "
        "huiacha isukume kidogo zaidi na zaidi."
    ),
    "check.level_through_life.source": (
        "kupungua kama kulivyowekwa au kukadiriwa; kisima kirefu kinachosafishwa kwa wakati hupungua kidogo zaidi"
    ),
    "check.screen.compared": "Kina cha maji mwezi wa {month} kwa {flow}, dhidi ya sehemu ya juu ya kichujio",
    "check.screen.why": "Kichujio kinachokauka huziba na kuingiza hewa kwenye maji.",
    "check.screen.look_for": "tafuta kina cha kichujio kwenye kumbukumbu ya mchimbaji",
    "check.screen.source_log": "kumbukumbu ya mchimbaji",
    "check.screen.remedy": "sukuma kidogo zaidi, ili maji yabaki juu ya kichujio",
    "check.screen.source": "data za eneo; kukiweka kichujio ndani ya maji ni desturi ya kazi, hakuna chanzo",
    "check.casing_clearance.compared_open": "Kipenyo cha ndani cha kesingi, dhidi ya kipenyo cha nje cha pampu",
    "check.casing_clearance.compared": (
        "Kipenyo cha ndani cha kesingi, dhidi ya kipenyo cha nje cha pampu cha {outer} mm na nafasi ya {room} mm"
    ),
    "check.casing_clearance.why": "Pampu inayokwama haiwezi kunyanyuliwa tena na inaweza kupoteza kisima kirefu.",
    "check.casing_clearance.source_open": "bamba la taarifa za pampu na data za eneo",
    "check.casing_clearance.remedy": "pampu ya kipenyo cha nje kisichozidi {outer} mm",
    "check.casing_clearance.source": (
        "bamba la taarifa za pampu (kipenyo: NEMA MG 1 sehemu ya 18); nafasi ni desturi ya kazi, hakuna chanzo"
    ),
    "check.motor_size.look_for_casing": "tafuta kipenyo cha ndani cha kesingi kwenye kumbukumbu ya mchimbaji",
    "check.motor_size.look_for_motor": "tafuta kipenyo cha nje au kipenyo kwa inchi kwenye bamba",
    "check.motor_size.look_for_both": (
        "tafuta kipenyo cha ndani cha kesingi kwenye kumbukumbu ya mchimbaji na kipenyo cha nje au kipenyo kwa inchi "
        "kwenye bamba"
    ),
    "check.below_motor.compared": "Sehemu ya kisima kirefu iliyobaki chini ya mota",
    "check.below_motor.compared_intake": (
        "Sehemu ya kisima kirefu iliyobaki chini ya mdomo wa kunyonya, ambapo urefu wa mota unapaswa kutolewa"
    ),
    "check.below_motor.why": (
        "Mchanga hukusanyika chini; mota iliyosimama ndani yake hupata joto kupita kiasi na hukwama."
    ),
    "check.below_motor.look_for": "tafuta kina cha kisima kirefu kwenye kumbukumbu ya mchimbaji, au kipime",
    "check.below_motor.source_log": "kumbukumbu ya mchimbaji",
    "check.below_motor.look_for_length": "tafuta urefu wa mota kwenye mchoro wa karatasi ya taarifa",
    "check.below_motor.source_plate": "bamba la taarifa za pampu",
    "check.below_motor.remedy": "weka pampu {by} m juu zaidi",
    "check.below_motor.source": "data za eneo; {sump} m za shimo la mchanga ni desturi ya kazi, hakuna chanzo",
    "check.daily_limit.compared": (
        "Maji yanayochukuliwa katika mwezi wa matumizi makubwa zaidi, {first} m3/siku katika mwaka wa kwanza na si "
        "zaidi ya {most}, dhidi ya kikomo cha siku"
    ),
    "check.daily_limit.compared_over": (
        "Maji yanayochukuliwa katika mwezi wa matumizi makubwa zaidi, {first} m3/siku katika mwaka wa kwanza na si "
        "zaidi ya {most}, dhidi ya kikomo cha siku; yanazidi kuanzia mwaka {year}"
    ),
    "check.daily_limit.compared_open": (
        "Maji yanayochukuliwa katika mwezi wa matumizi makubwa zaidi, {first} m3/siku katika mwaka wa kwanza na si "
        "zaidi ya {most}, dhidi ya kibali"
    ),
    "check.daily_limit.why": (
        "Kibali kinachozidishwa kinaweza kufutwa, na hifadhi ya maji chini ya ardhi ikapotea nacho."
    ),
    "check.daily_limit.look_for": (
        "tafuta kiasi cha kila siku kwenye kibali cha kuchukua maji au ripoti ya jaribio la kusukuma maji"
    ),
    "check.daily_limit.source_permit": "kibali cha kuchukua maji",
    "check.daily_limit.remedy": "kibali cha {volume}, au mahitaji madogo zaidi",
    "check.daily_limit.source": "data za eneo (kibali au jaribio)",
    "check.motor_cooling.compared": (
        "Kasi ya maji yanayopita kando ya mota ndani ya kesingi kwa {flow}, dhidi ya inayoipoza"
    ),
    "check.motor_cooling.compared_small": (
        "Kasi ya maji yanayopita kando ya mota ndani ya kesingi kwa {flow}, dhidi ya inayoipoza; mota ya inchi nne "
        "chini ya 3 hp haihitaji yoyote"
    ),
    "check.motor_cooling.compared_beside": (
        "Kasi ya maji yanayopita kando ya mota ndani ya kesingi kwa {flow}, dhidi ya inayoipoza; mdomo wa kunyonya "
        "uko kando au chini ya kichujio, hivyo maji hayapiti kando ya mota"
    ),
    "check.motor_cooling.compared_small_beside": (
        "Kasi ya maji yanayopita kando ya mota ndani ya kesingi kwa {flow}, dhidi ya inayoipoza; mota ya inchi nne "
        "chini ya 3 hp haihitaji yoyote; mdomo wa kunyonya uko kando au chini ya kichujio, hivyo maji hayapiti kando "
        "ya mota"
    ),
    "check.motor_cooling.compared_sleeve": (
        "Kasi ya maji yanayopita kando ya mota ndani ya mkono wa mtiririko kwa {flow}, dhidi ya inayoipoza"
    ),
    "check.motor_cooling.compared_sleeve_small": (
        "Kasi ya maji yanayopita kando ya mota ndani ya mkono wa mtiririko kwa {flow}, dhidi ya inayoipoza; mota ya "
        "inchi nne chini ya 3 hp haihitaji yoyote"
    ),
    "check.motor_cooling.why": (
        "Mota ya kuzama majini hupozwa na maji yanayopita kando yake; katika maji yaliyotulia koili zake huungua."
    ),
    "check.motor_cooling.remedy": "mkono wa mtiririko wa kipenyo cha ndani kisichozidi {width} mm juu ya mota",
    "check.motor_cooling.remedy_if_room": (
        "mkono wa mtiririko wa kipenyo cha ndani kisichozidi {width} mm juu ya mota, ikiwa kesingi ina nafasi yake"
    ),
    "check.motor_cooling.remedy_motor": (
        "mota ndogo zaidi, au ambayo mtengenezaji wake anaiidhinisha kwa mtiririko na maji haya: hakuna mkono wa "
        "mtiririko unaoingia kati"
    ),
    "check.motor_cooling.source": (
        "0.25 ft/s kwa mota za inchi 4 kuanzia 3 hp, 0.5 ft/s kwa kubwa zaidi: desturi ya kazi, hakuna chanzo; data "
        "za eneo"
    ),
    "check.irradiation.compared": (
        "Mionzi ya jua ya {month}, mwezi ulio mbali zaidi na takwimu za hali ya hewa za ukanda huu: {given} dhidi ya "
        "{usual} kWh/m2/siku"
    ),
    "check.irradiation.compared_not": "Mionzi ya jua, dhidi ya takwimu za hali ya hewa za ukanda huu",
    "check.irradiation.why": (
        "Ukubwa wa safu ya paneli huamuliwa kwa takwimu hizi; kipimo au mwezi usio sahihi hauonekani katika ukaguzi "
        "mwingine wowote."
    ),
    "check.irradiation.source": (
        "takwimu za hali ya hewa za digrii 3 kwa 3 (NASA MERRA-2, 2011-2015); {limit:g} % imekadiriwa, zaidi ya 29 % "
        "iliyopatikana kwa miaka mitatu ya kawaida"
    ),
    "check.irradiation.above": (
        "{month} yako iko {apart} % juu ya ile ya ukanda huu: angalia kama takwimu ni kWh/m2 kwa siku kwenye sehemu "
        "mlalo (1 kWh = 3.6 MJ), zinaanza na Januari na ni za mahali hapa, na alama za latitudo na longitudo yake"
    ),
    "check.irradiation.below": (
        "{month} yako iko {apart} % chini ya ile ya ukanda huu: angalia kama takwimu ni kWh/m2 kwa siku kwenye "
        "sehemu mlalo (si saa za jua, wala jumla za mwezi), zinaanza na Januari na ni za mahali hapa"
    ),
    "check.irradiation.measure": (
        "mionzi ya jua ni makadirio kutokana na takwimu hizohizo za hali ya hewa: ipime au ipakue kabla ya kutoa "
        "fedha (planner weather --fetch, au kituo kilicho karibu)"
    ),
    "check.irradiation.elsewhere": (
        "takwimu za hali ya hewa hazina chochote kwa mahali hapa: linganisha takwimu na chanzo cha pili, kama "
        "planner weather --fetch au kituo kilicho karibu"
    ),
    "check.air_temperature.compared": (
        "Hewa ya {month}, mwezi ulio mbali zaidi na takwimu za hali ya hewa za ukanda huu: {given} dhidi ya {usual} "
        "°C kwa mwinuko huu"
    ),
    "check.air_temperature.compared_not": "Joto la hewa, dhidi ya takwimu za hali ya hewa za ukanda huu",
    "check.air_temperature.why": "Paneli na nyaya hutathminiwa kwa viwango hivi vya joto.",
    "check.air_temperature.source": (
        "takwimu za hali ya hewa za digrii 3 kwa 3 (ERA5, 2000-2025; contains modified Copernicus Climate Change "
        "Service information), 6.5 K/km za mwinuko; {limit:g} K imekadiriwa, zaidi ya 4 K iliyopatikana kwa miaka "
        "mitatu ya kawaida"
    ),
    "check.air_temperature.above": (
        "{month} yako ina joto {apart} K zaidi ya ukanda huu: angalia kama takwimu ni digrii Selsiasi, wastani wa "
        "mchana na usiku, na zinaanza na Januari, na angalia mwinuko"
    ),
    "check.air_temperature.below": (
        "{month} yako ina baridi {apart} K zaidi ya ukanda huu: angalia kama takwimu ni digrii Selsiasi, wastani wa "
        "mchana na usiku, na zinaanza na Januari, na angalia mwinuko"
    ),
    "check.air_temperature.measure": (
        "joto ni makadirio kutokana na takwimu hizohizo za hali ya hewa: lipime au lipakue kabla ya kutoa fedha"
    ),
    "check.air_temperature.elsewhere": (
        "takwimu za hali ya hewa hazina chochote kwa mahali hapa: linganisha takwimu na chanzo cha pili"
    ),
    "check.days_held.compared": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi wa mwaka wa kwanza ambayo {volume} m3 huweza kuhifadhi: saa "
        "{hours}"
    ),
    "check.days_held.compared_open": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi wa mwaka wa kwanza ambayo {volume} m3 (ujazo haujaamuliwa: "
        "mdogo zaidi unaofaa) huweza kuhifadhi: saa {hours}"
    ),
    "check.days_held.why": "Tanki huwavusha watumiaji wakati wa mawingu, kukatika kwa umeme na ukarabati.",
    "check.days_held.remedy": "tanki la {volume} m3, au dogo zaidi pale ambapo kuna chanzo cha pili",
    "check.days_held.source": (
        "mahitaji ya siku moja: Recommended Standards for Water Works 7.0.1, kwa kumbukumbu; uendeshaji wa saa kwa "
        "saa husema kinachotosha"
    ),
    "check.busiest_hour.compared": (
        "Ujazo wa tanki, dhidi ya maji yanayochotwa katika saa yenye matumizi makubwa zaidi ya mwaka wa kwanza"
    ),
    "check.busiest_hour.why": "Tanki linalomalizwa na saa moja huwaacha watumiaji bila maji kila siku.",
    "check.busiest_hour.remedy": "tanki la angalau {volume} m3",
    "check.busiest_hour.source": "data za eneo",
    "check.refill_time.compared": "Saa za kusukuma zinazojaza {volume} m3 kwa {flow}, bila kuchotwa",
    "check.refill_time.why": (
        "Tanki linalochukua muda mrefu kujaa hubaki na maji machache baada ya kila kukatika kwa umeme."
    ),
    "check.refill_time.remedy": "mtiririko wa angalau {flow} m3/h",
    "check.refill_time.remedy_smaller": "tanki lisilozidi {volume} m3, au mtiririko wa angalau {flow} m3/h",
    "check.refill_time.remedy_only_smaller": "tanki lisilozidi {volume} m3",
    "check.refill_time.remedy_second": (
        "kisima kirefu au chanzo cha pili: {flow} m3/h, ambazo zingelijaza kwa wakati, ni zaidi ya kiasi salama cha "
        "kusukuma cha hiki"
    ),
    "check.refill_time.source": "desturi ya kazi, hakuna chanzo",
    "check.inlet_height.compared": (
        "Mdomo wa kuingizia wa tanki uliotumika kwenye kimo, dhidi ya ardhi mwishoni mwa njia"
    ),
    "check.inlet_height.why": (
        "Mdomo wa kuingizia uliochukuliwa chini mno kwenye kimo huiacha pampu ikipungukiwa mita ya mwisho."
    ),
    "check.inlet_height.look_for": (
        "pima mwinuko wa eneo la tanki ukilinganisha na kisima kirefu, na toa wasifu wa njia"
    ),
    "check.inlet_height.remedy": (
        "pima tena: mdomo wa kuingizia uko {ground} m au zaidi juu ya ardhi ya kisima kirefu, kwa urefu wa tanki "
        "lenyewe"
    ),
    "check.inlet_height.source": "data za eneo",
    "check.outlet_head.compared": (
        "Urefu wa mdomo wa kutolea wa tanki juu ya mabomba ya kuchotea, kabla ya hasara yoyote katika mabomba ya "
        "kwenda huko"
    ),
    "check.outlet_head.why": "Mabomba ya kuchotea bila kimo hutoa matone, na ya mbali hayatoi chochote.",
    "check.outlet_head.look_for": (
        "pima mwinuko wa mdomo wa kutolea ukilinganisha na bomba la kuchotea lililo juu zaidi"
    ),
    "check.outlet_head.remedy": "inua tanki kwa {by} m, ambazo pampu pia italazimika kunyanyua",
    "check.outlet_head.source": (
        "7 m kwa ghorofa moja: mwongozo wa CPHEEO wa usambazaji maji; 2 m ni desturi ya kazi, hakuna chanzo"
    ),
    "check.per_person.compared_pupils": (
        "Maji kwa mtu kwa siku ya {user}, mtumiaji mwenye kiasi kidogo zaidi kwa aina yake"
    ),
    "check.per_person.compared_below_basic": (
        "Maji kwa mtu kwa siku ya {user} (chini ya huduma ya msingi), mtumiaji mwenye kiasi kidogo zaidi kwa aina yake"
    ),
    "check.per_person.compared_basic": (
        "Maji kwa mtu kwa siku ya {user} (huduma ya msingi), mtumiaji mwenye kiasi kidogo zaidi kwa aina yake"
    ),
    "check.per_person.compared_intermediate": (
        "Maji kwa mtu kwa siku ya {user} (huduma ya kati na zaidi), mtumiaji mwenye kiasi kidogo zaidi kwa aina yake"
    ),
    "check.per_person.why": "Maji yakiwa machache mno watu huchota mengine kutoka mahali pasipo salama.",
    "check.per_person.remedy": "toa {volume}, au onyesha kuwa wana chanzo kingine salama",
    "check.per_person.source": (
        "Sphere Handbook: 15 L, shule 3 L kwa mwanafunzi (kwa kumbukumbu); WHO kiasi cha maji ya nyumbani: 20 L "
        "msingi, 50 L kati"
    ),
    "check.yield_through_life.compared": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi yakiwa makubwa kabisa, dhidi ya kiasi salama cha kusukuma kwa "
        "saa 20: hutosha kipindi chote cha uchambuzi"
    ),
    "check.yield_through_life.compared_short": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi yakiwa makubwa kabisa, dhidi ya kiasi salama cha kusukuma kwa "
        "saa 20: hakitoshi tena kuanzia mwaka {year}"
    ),
    "check.yield_through_life.compared_limit": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi yakiwa makubwa kabisa, dhidi ya kikomo cha siku: hutosha "
        "kipindi chote cha uchambuzi"
    ),
    "check.yield_through_life.compared_limit_short": (
        "Mahitaji ya mwezi wa matumizi makubwa zaidi yakiwa makubwa kabisa, dhidi ya kikomo cha siku: hakitoshi tena "
        "kuanzia mwaka {year}"
    ),
    "check.yield_through_life.why": (
        "Kisima kirefu kisichoweza kwenda sambamba na ongezeko huwaacha watumiaji na upungufu, au husukumwa kupita "
        "kiasi."
    ),
    "check.yield_through_life.remedy": (
        "kisima kirefu au chanzo cha pili ifikapo mwaka {year}, au zuia mahitaji yasizidi {volume} m3/siku"
    ),
    "check.yield_through_life.source": (
        "data za eneo; saa 20 kwa siku, ili kina kirejee, ni desturi ya kazi, hakuna chanzo"
    ),
}
