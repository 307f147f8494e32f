"""Kiswahili cha kaguzi za kimo, mabomba na mifululizo sambamba."""

SENTENCES: dict[str, str] = {
    "head_part.part": "{name} {head}",
    "head_part.static": "kina cha maji yakiwa tulivu, wastani wa mwaka",
    "head_part.deepest": "chini zaidi katika mwezi wa kina kikubwa zaidi",
    "head_part.drawdown": "kushuka kwa kina cha maji",
    "head_part.rise": "kupanda hadi mdomo wa kuingizia wa tanki",
    "head_part.friction": "msuguano katika {segment}",
    "head_part.fittings": "viungo",
    "head_part.residual": "kimo kinachobaki kwenye mdomo wa kuingizia",
    "head_part.high_point": "kupita sehemu ya juu ya njia",
    "check.lift.compared": (
        "Kimo kinachohitajika kabla maji hayajaanza kutiririka mwezi wa {month}, dhidi ya kimo cha pampu bila mtiririko"
    ),
    "check.lift.why": "Chini ya kimo hiki hakuna hata tone linalofika kwenye tanki.",
    "check.lift.source": "bamba la taarifa za pampu (kimo kikubwa zaidi)",
    "check.rated_head.compared": (
        "Kimo cha pampu kwa mtiririko wa kawaida {flow} m3/h, dhidi ya kimo kinachohitajika hapo mwezi wa {month} "
        "[m]: {parts}"
    ),
    "check.rated_head.compared_yield": (
        "Kimo cha pampu kwa {share} % ya kiasi salama cha kusukuma cha kisima kirefu, kwa kuwa mtiririko wa kawaida "
        "ni mkubwa zaidi, {flow} m3/h, dhidi ya kimo kinachohitajika hapo mwezi wa {month} [m]: {parts}"
    ),
    "check.rated_head.why": (
        "Pampu hufanya kazi vizuri zaidi karibu na kimo chake cha kawaida; ikipungukiwa mtiririko hupungua, ikizidi "
        "sana nguvu hupotea bure."
    ),
    "check.rated_head.remedy_short": (
        "panga kwa mtiririko mdogo zaidi wa nukta ya kazi, au pampu ya kawaida ya karibu {head} m kwa {flow} m3/h "
        "(karibu {power} kW ikiwa {share} % yake hufika kwenye maji)"
    ),
    "check.rated_head.remedy_over": (
        "pampu ya kawaida ya karibu {head} m kwa {flow} m3/h (karibu {power} kW ikiwa {share} % yake hufika kwenye "
        "maji); hii lazima izuiwe kwa kasi"
    ),
    "check.rated_head.source": (
        "imekokotolewa kutokana na data za eneo; pungufu ya zaidi ya moja ya kumi hushindikana, zaidi ya theluthi "
        "moja juu ni tahadhari: desturi ya kazi, hakuna chanzo"
    ),
    "check.power_limit.compared": "Nguvu kubwa zaidi ya kidhibiti dhidi ya inayochukuliwa na pampu kwa {flow} m3/h",
    "check.power_limit.why": (
        "Kwa nguvu ndogo pampu hubaki chini ya mtiririko wake, na kwa ndogo sana hakuna maji yanayofika kabisa."
    ),
    "check.power_limit.remedy": "kidhibiti cha angalau {power} W kinachofaa mota",
    "check.power_limit.source": (
        "karatasi ya taarifa ya kidhibiti; ndogo kiasi kwamba hakuna maji yanayofika hushindikana"
    ),
    "check.duty_flow.compared": (
        "Kazi mwezi wa {month}, {flow} m3/h kwa {head} m ({limited}), dhidi ya {low} hadi {high} % ya {rated} m3/h "
        "za kawaida"
    ),
    "check.duty_flow.why": (
        "Mbali na kazi yake ya kawaida pampu hupoteza nguvu na huchakaa; panga kwa mtiririko wa kawaida, si ule "
        "mkubwa zaidi."
    ),
    "check.duty_flow.source": (
        "bamba la taarifa za pampu (mtiririko wa kawaida); upeo ni desturi ya kazi, hakuna chanzo"
    ),
    "check.speed.compared": "Kasi inayohitajika kwa {flow} m3/h, dhidi ya kasi ya chini zaidi ya pampu",
    "check.speed.why": (
        "Chini ya kasi yake ya chini zaidi pampu haiwezi kupunguzwa; hapo vali lazima iondoe kimo kilichozidi."
    ),
    "check.speed.source": "bamba la taarifa za pampu (upeo wa kasi)",
    "check.wire_to_water.compared": (
        "Ufanisi kutoka umeme hadi maji kwenye kazi, dhidi ya {share} % ya ule wa kazi ya kawaida ({rated} %)"
    ),
    "check.wire_to_water.why": (
        "Kila pointi inayopotea hapa hulipiwa kwa paneli za sola, nishati au mafuta kwa maisha yote."
    ),
    "check.wire_to_water.source": (
        "bamba la taarifa za pampu (kazi ya kawaida); sehemu ni desturi ya kazi, hakuna chanzo"
    ),
    "check.hours_a_day.compared": (
        "Saa kwa siku kwa {flow} katika mwezi wa matumizi makubwa zaidi: {first} katika mwaka wa kwanza, si zaidi ya "
        "{last}"
    ),
    "check.hours_a_day.why": (
        "Pampu inayolazimika kufanya kazi usiku na mchana haina akiba, na kisima kirefu hakina muda wa maji kurejea."
    ),
    "check.hours_a_day.remedy": "mtiririko wa angalau {flow} m3/h, au mahitaji madogo zaidi katika miaka ya mwisho",
    "check.hours_a_day.remedy_less": (
        "mahitaji madogo zaidi, au kisima kirefu au chanzo cha pili: {flow} m3/h, ambazo zingetosha, ni zaidi ya "
        "kiasi salama cha kusukuma cha kisima kirefu, {safe} m3/h"
    ),
    "check.hours_a_day.source": (
        "saa 20 kwa siku ni desturi ya kazi, hakuna chanzo; zaidi ya 24 katika mwaka wa kwanza hushindikana"
    ),
    "check.pipe_length.compared": "Urefu wa mabomba yote, dhidi ya kina cha pampu na njia hadi tanki",
    "check.pipe_length.why": "Bomba lisilohesabiwa ni msuguano usiohesabiwa.",
    "check.pipe_length.remedy": "ongeza {length} m kwenye urefu wa mabomba",
    "check.pipe_length.source": "data za eneo",
    "check.velocity.compared": "Kasi ya maji kwa {flow} [m/s]: {segments}; dhidi ya {slowest} hadi {fastest} m/s",
    "check.velocity.segment": "{segment} {velocity}",
    "check.velocity.why": (
        "Maji ya kasi hugharimu kimo na huleta mapigo ya maji; maji ya polepole huacha mchanga na hewa vitulie."
    ),
    "check.velocity.remedy_size": "kwa {segment} kipimo kinachofuata cha bomba, {pipe}",
    "check.velocity.remedy_diameter": "kwa {segment} kipenyo cha ndani cha angalau {diameter} mm",
    "check.velocity.remedy_slow": (
        "hakuna, pale msuguano unapopaswa kuwa mdogo; vinginevyo {segment} ya kipenyo cha ndani kisichozidi "
        "{diameter} mm"
    ),
    "check.velocity.source": (
        "EN 805:2000 kiambatisho A, kwa kumbukumbu; 3 m/s: Crane TP-410, huduma ya jumla, kwa kumbukumbu"
    ),
    "check.pressure_at_duty.compared": (
        "Shinikizo kubwa zaidi kwa {flow}, dhidi ya shinikizo ambalo bomba huhimili kwa {temperature} °C; nafasi "
        "ndogo zaidi iko katika {segment}"
    ),
    "check.pressure_at_duty.compared_open": "Shinikizo kubwa zaidi kwa {flow}, katika {segment}",
    "check.pressure_at_duty.why": "Bomba lililo chini ya shinikizo zaidi ya daraja lake hupasuka au huchakaa mapema.",
    "check.pressure_at_duty.remedy": "{pipes}",
    "check.pressure_at_shut_off.compared": (
        "Shinikizo kubwa zaidi ikiwa vali imefungwa dhidi ya pampu inayofanya kazi, dhidi ya shinikizo ambalo bomba "
        "huhimili kwa {temperature} °C; nafasi ndogo zaidi iko katika {segment}"
    ),
    "check.pressure_at_shut_off.compared_open": (
        "Shinikizo kubwa zaidi ikiwa vali imefungwa dhidi ya pampu inayofanya kazi, katika {segment}"
    ),
    "check.pressure_at_shut_off.why": (
        "Vali iliyofungwa kimakosa, au vali ya boya, huweka kimo kikubwa zaidi cha pampu kwenye bomba."
    ),
    "check.pressure_at_shut_off.remedy": (
        "{pipes}; au swichi ya shinikizo au vali ya kupunguza shinikizo, na pasiwe na vali inayoweza kufungwa dhidi "
        "ya pampu inayofanya kazi"
    ),
    "check.pipe_class.look_for": "tafuta 'PN' au bar iliyochapishwa kwenye bomba la {segments}",
    "check.pipe_class.source": "daraja la shinikizo la bomba, lililopunguzwa kwa maji ya joto: {sources}",
    "check.pipe_class.remedy_named": "{segment}: {pipe} (PN {pressure})",
    "check.pipe_class.remedy_class": "{segment}: bomba na viungo vyote vya angalau PN {pressure}",
    "check.pipe_class.remedy_material": (
        "{segment}: bomba la {material}, kwa kuwa {given} haina daraja kwa maji ya joto kiasi hiki"
    ),
    "check.pipe_class.remedy_cooler": (
        "{segment}: maji baridi zaidi, kwa kuwa {given} haina daraja kwa maji ya joto kiasi hiki"
    ),
    "check.surge.compared": (
        "Shinikizo kubwa zaidi mtiririko unaposimama ghafla, au vali ya bomba inapojifunga kwa nguvu: ongezeko la "
        "{rise} m katika {segment} (wimbi {speed} m/s)"
    ),
    "check.surge.compared_timed": (
        "Shinikizo kubwa zaidi mtiririko unaposimama kwa {stop} s: ongezeko la {rise} m katika {segment} (wimbi "
        "{speed} m/s)"
    ),
    "check.surge.compared_open": (
        "Shinikizo kubwa zaidi mtiririko unaposimama ghafla, au vali ya bomba inapojifunga kwa nguvu, katika {segments}"
    ),
    "check.surge.compared_open_timed": "Shinikizo kubwa zaidi mtiririko unaposimama kwa {stop} s, katika {segments}",
    "check.surge.why": (
        "Umeme ukikatika maji husimama ghafla; wimbi hupasua mabomba na kung'oa viungo, na hunyonya kwa nguvu sawa "
        "na linavyosukuma."
    ),
    "check.surge.look_for": "tafuta unene wa ukuta (au SDR) na daraja (PN) vilivyochapishwa kwenye bomba",
    "check.surge.remedy": (
        "mtiririko usimame kwa muda usiopungua {seconds} s, hata umeme ukikatika (vali ya polepole, kusimama "
        "taratibu, chombo cha hewa kwa kukatika kwa umeme), au bomba pana zaidi"
    ),
    "check.surge.remedy_class": "bomba la daraja la juu zaidi, au maji ya polepole zaidi kwenye bomba pana zaidi",
    "check.surge.source_open": (
        "Joukowsky 1898 kwa kasi ya wimbi ya bomba (Korteweg), bila msuguano; daraja la shinikizo la bomba, "
        "lililopunguzwa kwa maji ya joto: {sources}"
    ),
    "check.surge.source": (
        "Joukowsky 1898 kwa kasi ya wimbi ya bomba (Korteweg), bila msuguano; daraja la shinikizo la bomba, "
        "lililopunguzwa kwa maji ya joto: {sources}; hadi mara {times} ya daraja ni tahadhari, kwa kuwa makadirio ni "
        "kikomo cha juu: desturi ya kazi, hakuna chanzo"
    ),
    "check.high_points.compared_open": "Sehemu za juu za njia, na shinikizo lililopo hapo",
    "check.high_points.compared": (
        "Kimo cha shinikizo cha chini zaidi kwenye njia pampu ikiwa imesimama; sehemu za juu kati ya ncha: {count}"
    ),
    "check.high_points.why": (
        "Hewa hukusanyika kwenye sehemu ya juu na huzuia mtiririko; shinikizo lililo chini ya la hewa hunyonya uchafu."
    ),
    "check.high_points.look_for": (
        "tembea njia ukiwa na kipima usawa au kipokezi cha satelaiti, na andika umbali na mwinuko wa ardhi"
    ),
    "check.high_points.remedy": "vali ya hewa kwenye umbali wa {places} m",
    "check.high_points.remedy_below": (
        "vali ya hewa kwenye umbali wa {places} m; au laza bomba chini zaidi hapo, au inua tanki"
    ),
    "check.high_points.source": "wasifu wa njia; vali za hewa kwenye sehemu za juu ni desturi ya kazi, hakuna chanzo",
    "check.profile_length.compared": (
        "Bomba zaidi ya kisima kirefu ({laid} m) na wasifu wa njia ({chainage} m): tofauti yake"
    ),
    "check.profile_length.why": "Vikitofautiana, msuguano na mashinikizo hukokotolewa kwa njia nyingine.",
    "check.profile_length.remedy": "toa wasifu wa njia hadi tanki, na vipande vya urefu uleule",
    "check.profile_length.source": "data za eneo; {share} % ni desturi ya kazi, hakuna chanzo",
    "check.strings.remedy": "mifululizo isiyozidi {count}",
    "check.array_current.compared": (
        "Mkondo wa mifululizo ({count}), mara 1.25 ya mkondo wa mzunguko mfupi, dhidi ya mkubwa zaidi wa kidhibiti"
    ),
    "check.array_current.compared_open": (
        "Mkondo wa mifululizo (inayofaa: {count}; idadi haijaamuliwa), mara 1.25 ya mkondo wa mzunguko mfupi, dhidi "
        "ya mkubwa zaidi wa kidhibiti"
    ),
    "check.array_current.why": (
        "Kingo angavu za mawingu hutoa zaidi ya mkondo wa kawaida; viingilio na fyuzi lazima viuhimili."
    ),
    "check.array_current.look_for": "tafuta 'max. input current' au 'Isc max.' kwenye bamba la kidhibiti",
    "check.array_current.remedy_controller": "kidhibiti kingine, au paneli ya mkondo mdogo zaidi",
    "check.array_current.source": "karatasi ya taarifa ya kidhibiti; mara 1.25 kwa IEC 62548",
    "check.string_over_current.compared": (
        "Mkondo ambao mifululizo mingine kati ya {count} husukuma kwenye mmoja wenye hitilafu, dhidi ya fyuzi ya "
        "mfululizo ya paneli"
    ),
    "check.string_over_current.compared_open": (
        "Mkondo ambao mifululizo mingine kati ya {count} (inayofaa; idadi haijaamuliwa) husukuma kwenye mmoja wenye "
        "hitilafu, dhidi ya fyuzi ya mfululizo ya paneli"
    ),
    "check.string_over_current.compared_few": (
        "Mkondo ambao mifululizo mingine kati ya {count} husukuma kwenye mmoja wenye hitilafu, dhidi ya fyuzi ya "
        "mfululizo ya paneli, ambayo mfululizo mmoja au miwili haiifikii"
    ),
    "check.string_over_current.compared_few_open": (
        "Mkondo ambao mifululizo mingine kati ya {count} (inayofaa; idadi haijaamuliwa) husukuma kwenye mmoja wenye "
        "hitilafu, dhidi ya fyuzi ya mfululizo ya paneli, ambayo mfululizo mmoja au miwili haiifikii"
    ),
    "check.string_over_current.compared_fuse": (
        "Fyuzi katika kila mfululizo, dhidi ya angalau {least} A na isiyozidi {most} A kwa paneli hii"
    ),
    "check.string_over_current.why": (
        "Mzunguko mfupi katika mfululizo mmoja huvuta mkondo wa mingine yote, jambo linaloweza kuwasha moto paneli "
        "na waya wake."
    ),
    "check.string_over_current.look_for": "tafuta 'max. series fuse' nyuma ya paneli",
    "check.string_over_current.remedy": (
        "fyuzi ya gPV (IEC 60269-6) ya {rating:g} A, kwa angalau {volts} V DC, katika ncha zote mbili za kila "
        "mfululizo; haikuhusishwa: waya wa mfululizo, ambao lazima uhimili uwezo wa fyuzi"
    ),
    "check.string_over_current.remedy_fewer": (
        "mifululizo isiyozidi {count} na bila fyuzi: hakuna uwezo wa kawaida unaofaa"
    ),
    "check.string_over_current.source": (
        "karatasi ya taarifa ya paneli; IEC 62548 (fyuzi ya mara 1.5 hadi 2.4 ya mkondo wa mzunguko mfupi, kwa "
        "kumbukumbu)"
    ),
    "check.power_ratio.compared": (
        "Nguvu ya kawaida ya mifululizo ({count}) ikigawanywa kwa inayochukuliwa na pampu, dhidi ya {low} hadi {high}"
    ),
    "check.power_ratio.compared_open": (
        "Nguvu ya kawaida ya mifululizo ({count}; idadi haijaamuliwa; 1 hadi {largest} zinaweza kujaribiwa) "
        "ikigawanywa kwa inayochukuliwa na pampu, dhidi ya {low} hadi {high}"
    ),
    "check.power_ratio.why": (
        "Safu ndogo ya paneli mara chache hufikisha pampu kwenye kasi kamili; kubwa hutoa nguvu isiyoweza kutumiwa "
        "na chochote."
    ),
    "check.power_ratio.remedy": "mifululizo: {count}",
    "check.power_ratio.remedy_nearest": "mifululizo: {count}, idadi iliyo karibu zaidi",
    "check.power_ratio.remedy_least": (
        "paneli chache zaidi katika mfululizo pale volti zinaporuhusu, au paneli ndogo zaidi: mfululizo mmoja ndio "
        "kiwango cha chini"
    ),
    "check.power_ratio.source": "desturi ya kazi, hakuna chanzo",
}
