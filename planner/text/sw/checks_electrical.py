"""Kiswahili cha kaguzi za safu ya paneli, kidhibiti na upande wa AC, na zinachoshiriki na nyaya."""

SENTENCES: dict[str, str] = {
    "unit.modules": "paneli",
    "unit.phases": "fezi",
    "unit.hours_per_year": "h/mwaka",
    "unit.speed": "mizunguko kwa dakika",
    "source.controller": "karatasi ya taarifa ya kidhibiti",
    "source.plate": "bamba la taarifa za pampu",
    "source.plate_practice": "bamba la taarifa za pampu; desturi ya kazi, hakuna chanzo",
    "source.plate_and_site": "bamba la taarifa za pampu; data za eneo",
    "source.site": "data za eneo",
    "source.practice": "desturi ya kazi, hakuna chanzo",
    "check.look_for": "tafuta {things}",
    "check.asked.ac_volts": "'AC' au '~' pamoja na volti kwenye bamba la pampu au kidhibiti",
    "check.asked.grid_volts": "volti za gridi",
    "check.asked.generator_volts": "volti za jenereta",
    "check.asked.phases": "'1~' au '3~' kwenye bamba la pampu au kidhibiti",
    "check.asked.grid_phases": "fezi za gridi",
    "check.asked.generator_phases": "fezi za jenereta",
    "check.asked.hertz": "'Hz' kwenye bamba la pampu au kidhibiti",
    "check.asked.grid_hertz": "frikwensi ya gridi",
    "check.asked.generator_hertz": "frikwensi ya jenereta",
    "check.supply.look_for_voltage": "tafuta volti za gridi na za jenereta",
    "check.series.more.one": "paneli moja zaidi katika mfululizo",
    "check.series.more.two": "paneli mbili zaidi katika mfululizo",
    "check.series.more.three": "paneli tatu zaidi katika mfululizo",
    "check.series.more.many": "paneli {count} zaidi katika mfululizo",
    "check.series.less.one": "paneli moja pungufu katika mfululizo",
    "check.series.less.two": "paneli mbili pungufu katika mfululizo",
    "check.series.less.three": "paneli tatu pungufu katika mfululizo",
    "check.series.less.many": "paneli {count} pungufu katika mfululizo",
    "check.series.no_adding": (
        "paneli isiongezwe kwenye mfululizo hadi volti kubwa zaidi za DC za kidhibiti zijulikane"
    ),
    "check.series.not_even_one": (
        "hata paneli moja ya aina hii haifai: hutoa {one_v:.0f} V bila mzigo kwenye baridi, na zinazovumiliwa "
        "haziwezi kuzidi {most_v:g} V: paneli ya volti za mzunguko wazi zisizozidi {rated_v} V, au kidhibiti kingine"
    ),
    "check.series.window_too_narrow": (
        "hakuna idadi ya paneli hizi inayofaa: angalau {fewest} kwa {least_v:g} V zinazohitajika mchana wa joto "
        "zaidi, zisizozidi {most} kwa {most_v:g} V zinazovumiliwa bila mzigo kwenye baridi: kidhibiti kingine au "
        "paneli nyingine"
    ),
    "check.series.none_fits": (
        "hakuna idadi ya paneli katika mfululizo inayofaa: kidhibiti kingine au paneli nyingine"
    ),
    "check.series.another": "kidhibiti kingine au paneli nyingine",
    "check.string_open_circuit_voltage.compared": (
        "Volti za mzunguko wazi za paneli {modules} asubuhi ya baridi zaidi ({coldest}), dhidi ya kikomo cha "
        "kidhibiti au pampu"
    ),
    "check.string_open_circuit_voltage.compared_working_known": (
        "Volti za mzunguko wazi za paneli {modules} asubuhi ya baridi zaidi ({coldest}), dhidi ya kikomo cha "
        "kidhibiti au pampu; volti za kazi za juu zaidi ni {highest_v:g} V"
    ),
    "check.string_open_circuit_voltage.compared_with_working": (
        "Volti za mzunguko wazi za paneli {modules} asubuhi ya baridi zaidi ({coldest}), dhidi ya volti za kazi za "
        "juu zaidi, kwa kuwa kikomo cha kidhibiti hakikutolewa"
    ),
    "check.string_open_circuit_voltage.why": (
        "Kabla mota haijaanza, mfululizo wenye baridi huwa na volti hizi; juu ya kikomo huharibu vifaa vya "
        "kielektroniki."
    ),
    "check.string_open_circuit_voltage.look_for": (
        "tafuta 'max. input voltage', 'max. DC' au 'Voc max.' kwenye bamba la kidhibiti; paneli isiongezwe kwenye "
        "mfululizo hadi volti kubwa zaidi za DC za kidhibiti zijulikane"
    ),
    "check.string_open_circuit_voltage.remedy_until_known": (
        "tafuta 'max. input voltage', 'max. DC' au 'Voc max.' kwenye bamba la kidhibiti; hadi ijulikane, {remedy}"
    ),
    "check.string_open_circuit_voltage.source": (
        "karatasi ya taarifa ya kidhibiti au bamba; volti kwenye baridi kwa IEC 62548"
    ),
    "check.module_system_voltage.compared": (
        "Volti za mzunguko wazi za mfululizo kwenye baridi, dhidi ya volti za mfumo za paneli"
    ),
    "check.module_system_voltage.why": (
        "Juu ya hizo insulesheni ya paneli yenyewe inaweza kushindwa, na kuipa fremu volti za safu ya paneli."
    ),
    "check.module_system_voltage.look_for": "tafuta 'max. system voltage' nyuma ya paneli",
    "check.module_system_voltage.source": "karatasi ya taarifa ya paneli; IEC 62548",
    "check.string_voltage_hot.compared": (
        "Volti za kazi za mfululizo mchana wa joto zaidi ({hottest_c:.1f} °C kivulini), dhidi ya zile za chini zaidi "
        "za kidhibiti"
    ),
    "check.string_voltage_hot.why": (
        "Chini ya volti za chini zaidi za kidhibiti pampu hupoteza nguvu wakati jua ni zuri zaidi, au husimama."
    ),
    "check.string_voltage_cold.compared": (
        "Volti za kazi za mfululizo asubuhi ya baridi zaidi ({coldest_c:.1f} °C), dhidi ya zile za juu zaidi za "
        "kidhibiti"
    ),
    "check.string_voltage_cold.why": (
        "Juu ya volti za kazi za juu zaidi za kidhibiti safu ya paneli huzuiwa kufikia nukta yake bora au hukatwa."
    ),
    "check.string_voltage.look_for": "tafuta upeo wa volti za DC au MPP kwenye karatasi ya taarifa ya kidhibiti",
    "check.modules_in_series.compared": (
        "Paneli katika mfululizo, dhidi ya idadi zinazofaa kati ya volti za chini zaidi za mchana na kikomo kwenye "
        "baridi"
    ),
    "check.modules_in_series.why": "Idadi hizi tu ndizo salama kwenye baridi na bado hufanya kazi kwenye joto.",
    "check.modules_in_series.look_for": "tafuta volti za chini zaidi na za juu zaidi za DC kwenye bamba la kidhibiti",
    "check.modules_in_series.source": "karatasi ya taarifa ya kidhibiti; IEC 62548",
    "check.modules_in_series.span": "{fewest} hadi {most}",
    "check.modules_in_series.no_span": "hakuna",
    "check.modules_in_series.too_many.one": "paneli moja imezidi",
    "check.modules_in_series.too_many.two": "paneli mbili zimezidi",
    "check.modules_in_series.too_many.three": "paneli tatu zimezidi",
    "check.modules_in_series.too_many.many": "paneli {count} zimezidi",
    "check.modules_in_series.too_few.one": "paneli moja imepungua",
    "check.modules_in_series.too_few.two": "paneli mbili zimepungua",
    "check.modules_in_series.too_few.three": "paneli tatu zimepungua",
    "check.modules_in_series.too_few.many": "paneli {count} zimepungua",
    "check.window_hours.compared": (
        "Saa kwa mwaka ambapo upeo wa volti wa kidhibiti huizuia safu ya paneli kufikia nukta yake bora; "
        "{percent:.1f} % ya nishati yake hupotea hivyo"
    ),
    "check.window_hours.why": "Katika saa hizo hupotea nguvu ambayo imelipiwa.",
    "check.window_hours.source": (
        "uendeshaji wa saa kwa saa wa mwaka wa kwanza; saa {hours:.0f} ni desturi ya kazi, hakuna chanzo, na vivyo "
        "hivyo moja ya kumi ya nishati ambayo ikizidi ukaguzi hushindikana"
    ),
    "check.connection.phase_and_neutral": "fezi moja na nyutro ({volts:.0f} V)",
    "check.connection.two_phases": "fezi mbili ({volts:.0f} V)",
    "check.supply_voltage.nominal": "{volts:.4g} V",
    "check.supply_voltage.variation": "mabadiliko {percent} %",
    "check.supply_voltage.drop": "{percent:.1f} % kwenye waya",
    "check.supply_voltage.drop_not_given": "kushuka kwenye waya hakukutolewa na hakujahesabiwa",
    "check.grid_voltage.compared": (
        "Volti za gridi kwenye kidhibiti, {low:.0f} hadi {high:.0f} V ({facts}), dhidi ya {least:g} hadi {most:g} V"
    ),
    "check.generator_voltage.compared": (
        "Volti za jenereta kwenye kidhibiti, {low:.0f} hadi {high:.0f} V ({facts}), dhidi ya {least:g} hadi {most:g} V"
    ),
    "check.grid_voltage.compared_not_given": "Volti za gridi kwenye kidhibiti, dhidi ya vikomo vya AC vya bamba",
    "check.generator_voltage.compared_not_given": (
        "Volti za jenereta kwenye kidhibiti, dhidi ya vikomo vya AC vya bamba"
    ),
    "check.grid_voltage.source": "bamba la taarifa za pampu; mabadiliko ya {percent} %: data za eneo",
    "check.generator_voltage.source": (
        "bamba la taarifa za pampu; mabadiliko ya {percent} %: ISO 8528-5, kwa kumbukumbu"
    ),
    "check.supply_voltage.why": (
        "Volti zikiwa chache mno mota huvuta mkondo mkubwa zaidi na husimama; zikiwa nyingi mno insulesheni yake "
        "hudhurika."
    ),
    "check.supply_voltage.remedy_low": (
        "kisawazisha volti au transfoma, iliyochaguliwa na kufungwa na fundi umeme mwenye leseni, au pampu ya volti "
        "chache zaidi"
    ),
    "check.supply_voltage.remedy_thicker_cable": (
        "eneo la mkato la {section_mm2:g} mm2 kwa waya wa AC (havikuhusishwa: mzunguko wa hitilafu ya umeme kwenda "
        "ardhini, mzunguko mfupi na kifaa cha kinga); au kisawazisha volti au transfoma, iliyochaguliwa na kufungwa "
        "na fundi umeme mwenye leseni, au pampu ya volti chache zaidi"
    ),
    "check.supply_voltage.remedy_shorter_cable": (
        "waya wa AC mfupi zaidi (havikuhusishwa: mzunguko wa hitilafu ya umeme kwenda ardhini, mzunguko mfupi na "
        "kifaa cha kinga); au kisawazisha volti au transfoma, iliyochaguliwa na kufungwa na fundi umeme mwenye "
        "leseni, au pampu ya volti chache zaidi"
    ),
    "check.supply_voltage.remedy_high": (
        "kisawazisha volti au transfoma, iliyochaguliwa na kufungwa na fundi umeme mwenye leseni, au pampu ya volti "
        "nyingi zaidi"
    ),
    "check.grid_phases.compared": "Fezi za gridi, dhidi ya zile za bamba",
    "check.generator_phases.compared": "Fezi za jenereta, dhidi ya zile za bamba",
    "check.supply_phases.why": "Mota ya fezi tatu haianzi kwa fezi moja, na huungua ikijaribu.",
    "check.supply_phases.why_one_of_three": (
        "Pampu ya fezi moja hupakia fezi moja kati ya tatu, hivyo inaweza kuvuta theluthi moja ya nguvu."
    ),
    "check.grid_phases.remedy_connect_unknown": (
        "fezi moja na nyutro ziunganishwe, ikiwa volti na shirika la umeme huruhusu, na fundi umeme mwenye leseni"
    ),
    "check.grid_phases.remedy_connect.phase_and_neutral": (
        "fezi moja na nyutro ({volts:.0f} V) ziunganishwe, ikiwa volti na shirika la umeme huruhusu, na fundi umeme "
        "mwenye leseni"
    ),
    "check.grid_phases.remedy_connect.two_phases": (
        "fezi mbili ({volts:.0f} V) ziunganishwe, ikiwa volti na shirika la umeme huruhusu, na fundi umeme mwenye "
        "leseni"
    ),
    "check.generator_phases.remedy_connect_unknown": (
        "fezi moja na nyutro ziunganishwe, ikiwa volti na mtengenezaji wa jenereta huruhusu, na fundi umeme mwenye "
        "leseni"
    ),
    "check.generator_phases.remedy_connect.phase_and_neutral": (
        "fezi moja na nyutro ({volts:.0f} V) ziunganishwe, ikiwa volti na mtengenezaji wa jenereta huruhusu, na "
        "fundi umeme mwenye leseni"
    ),
    "check.generator_phases.remedy_connect.two_phases": (
        "fezi mbili ({volts:.0f} V) ziunganishwe, ikiwa volti na mtengenezaji wa jenereta huruhusu, na fundi umeme "
        "mwenye leseni"
    ),
    "check.grid_phases.remedy_three": (
        "gridi ya fezi tatu, au kidhibiti cha kasi kinachochukua {given} na kutoa tatu, kwa fundi umeme mwenye leseni"
    ),
    "check.generator_phases.remedy_three": (
        "jenereta la fezi tatu, au kidhibiti cha kasi kinachochukua {given} na kutoa tatu, kwa fundi umeme mwenye "
        "leseni"
    ),
    "check.grid_frequency.compared": (
        "Frikwensi ya gridi, dhidi ya {wanted_hz:g} Hz za bamba, {percent:g} % juu au chini"
    ),
    "check.generator_frequency.compared": (
        "Frikwensi ya jenereta, dhidi ya {wanted_hz:g} Hz za bamba, {percent:g} % juu au chini"
    ),
    "check.grid_frequency.compared_not_given": "Frikwensi ya gridi, dhidi ya ile ya bamba",
    "check.generator_frequency.compared_not_given": "Frikwensi ya jenereta, dhidi ya ile ya bamba",
    "check.supply_frequency.why": (
        "Kasi huenda na frikwensi: ikipungua kimo hushuka kwa mraba, ikizidi nguvu hupanda kwa kipeo cha tatu."
    ),
    "check.supply_frequency.side.above": "{percent:.1f} % juu ya bamba",
    "check.supply_frequency.side.below": "{percent:.1f} % chini ya bamba",
    "check.supply_frequency.side.equal": "sawa",
    "check.grid_frequency.remedy": "gridi ya {wanted_hz:g} Hz, au kidhibiti cha kasi kinachotengeneza frikwensi yake",
    "check.generator_frequency.remedy": (
        "jenereta la {wanted_hz:g} Hz, au kidhibiti cha kasi kinachotengeneza frikwensi yake"
    ),
    "check.supply_frequency.source": "IEC 60034-1, ukanda A; ukanda B ni tahadhari",
    "check.grid_power.compared": (
        "Nguvu inayotolewa na muunganisho wa gridi, dhidi ya inayochukuliwa na kidhibiti mota ikiwa kwenye nguvu ya "
        "kawaida"
    ),
    "check.grid_power.compared_one_phase": (
        "Nguvu inayotolewa na muunganisho wa gridi kwenye fezi yake moja, dhidi ya inayochukuliwa na kidhibiti mota "
        "ikiwa kwenye nguvu ya kawaida"
    ),
    "check.grid_power.why": "Muunganisho mdogo mno hukata umeme mara pampu inapofanya kazi kwa kasi kamili.",
    "check.grid_power.remedy": (
        "muunganisho wa angalau {needed_w} W, ikiwa shirika la umeme litauruhusu; kisha na waya wake na kinga yake"
    ),
    "check.generator.remedy": (
        "jenereta la {rating_kw:g} kW au zaidi kidogo, pamoja na waya na kifaa cha kinga vinavyolingana nalo"
    ),
    "check.generator.remedy_nothing_left": (
        "hakuna jenereta lenye upunguaji huu wa uwezo linalotoa nguvu hapa: angalia tena mwinuko na upunguaji wa uwezo"
    ),
    "check.generator_running.compared": (
        "Jenereta ({rating_kw:g} kW, ambazo {percent:.0f} % hubaki kwenye {altitude_m:.0f} m na {hottest_c:.0f} °C), "
        "dhidi ya inayochukuliwa na kidhibiti kwa nguvu ya kawaida"
    ),
    "check.generator_running.compared_one_phase": (
        "Jenereta ({rating_kw:g} kW, ambazo {percent:.0f} % hubaki kwenye {altitude_m:.0f} m na {hottest_c:.0f} °C "
        "na kwa fezi moja kati ya tatu), dhidi ya inayochukuliwa na kidhibiti kwa nguvu ya kawaida"
    ),
    "check.generator_running.why": "Jenereta lililozidiwa mzigo hupunguza kasi, huzimika na huunguza koili zake.",
    "check.generator_running.source": "uwezo kwa mtumiaji, upunguaji wa uwezo kama ulivyowekwa",
    "check.generator_starting.compared_soft": (
        "Jenereta baada ya upunguaji wa uwezo, dhidi ya kinachoanzisha mota polepole kwa kidhibiti cha kasi, mara "
        "{good:g} ya hitaji la kazi (angalau {least:g})"
    ),
    "check.generator_starting.compared": (
        "Jenereta baada ya upunguaji wa uwezo, dhidi ya kinachoanzisha mota moja kwa moja kwenye laini kwa {kva} kVA "
        "(herufi ya kodi {code}) na mdidimio wa volti wa {good_dip:.0f} % ({least_kw} kW kwa {most_dip:.0f} %)"
    ),
    "check.generator_starting.compared_assumed": (
        "Jenereta baada ya upunguaji wa uwezo, dhidi ya kinachoanzisha mota moja kwa moja kwenye laini kwa {kva} kVA "
        "(herufi ya kodi {code}, imekadiriwa) na mdidimio wa volti wa {good_dip:.0f} % ({least_kw} kW kwa "
        "{most_dip:.0f} %)"
    ),
    "check.generator_starting.why": (
        "Jenereta lisiloweza kuanzisha mota huacha volti zake ziporomoke; mota hunguruma na kupata joto."
    ),
    "check.generator_starting.source_direct": (
        "kVA za rota iliyozuiwa kwa herufi ya kodi, NEMA MG 1 (kwa kumbukumbu); mdidimio kupitia riaktansi ya mpito "
        "ya alternata; mdidimio wa {good_dip:.0f} %: ISO 8528-5, daraja G1 (kwa kumbukumbu); {most_dip:.0f} % ni "
        "desturi ya kazi, hakuna chanzo"
    ),
    "check.generator_loading.compared": (
        "Mzigo wa jenereta mota ikiwa kwenye nguvu ya kawaida, dhidi ya {low:.0f} hadi {high:.0f} % ya uwezo wake "
        "uliopunguzwa"
    ),
    "check.generator_loading.why": (
        "Jenereta lenye mzigo mdogo hujaza kaboni; lenye mzigo juu ya uwezo wake wa kazi endelevu kwa saa nyingi "
        "huchakaa mapema."
    ),
    "check.generator_loading.remedy_light": "{remedy}, au mizigo mingine kando ya pampu",
    "check.generator_loading.remedy_other_loads": (
        "mizigo mingine kando ya pampu: jenereta dogo zaidi lisingeianzisha"
    ),
    "check.generator_loading.source": (
        "{low:.0f} %: desturi ya NFPA 110; mzigo wa wastani wa {high:.0f} % wa kazi endelevu: ISO 8528-1"
    ),
}
