"""Kiswahili cha kaguzi za bamba la taarifa dhidi ya eneo."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Nguvu ya maji kwenye kazi ya kawaida ({hydraulic_kw:.2f} kW) kama sehemu ya {rated_w:g} W za bamba, dhidi "
        "ya {low:g} hadi {high:g} %"
    ),
    "check.rated_figures.why": "Sehemu iliyo nje ya kawaida huashiria takwimu iliyosomwa vibaya kwenye bamba.",
    "check.rated_figures.remedy": (
        "soma tena nguvu, mtiririko na kimo kwenye bamba; vile vya kawaida, si vikubwa zaidi"
    ),
    "check.rated_figures.source": "bamba la taarifa za pampu; upeo ni desturi ya kazi, hakuna chanzo",
    "check.largest_flow.compared": (
        "Mtiririko mkubwa zaidi wa bamba, dhidi ya mara {times:g} ya mtiririko wa kawaida wa {rated:g} m3/h"
    ),
    "check.largest_flow.why": (
        "Mtiririko mkubwa zaidi ulio juu sana ya ule wa kawaida huashiria nukta ya desimali iliyowekwa vibaya."
    ),
    "check.largest_flow.remedy": "soma tena mitiririko yote miwili kwenye bamba",
    "check.largest_flow.source": "bamba la taarifa za pampu; sehemu ni desturi ya kazi, hakuna chanzo",
    "check.motor_power.compared": (
        "Nguvu inayochukuliwa na mota kwa {flow}, dhidi ya nguvu yake ya kawaida na {percent:.0f} %"
    ),
    "check.motor_power.compared_unlimited": (
        "Nguvu inayochukuliwa na mota kwa {flow_m3h:.2f} m3/h, ikiwa hakuna kinachozuia nguvu yake, dhidi ya nguvu "
        "yake ya kawaida na {percent:.0f} %"
    ),
    "check.motor_power.why": "Mota inayochukua zaidi ya uwezo wake hupata joto kupita kiasi.",
    "check.motor_power.remedy_drive": (
        "kidhibiti cha kasi kilichowekwa kutoa si zaidi ya {most_w} W, kama uendeshaji wa saa kwa saa unavyochukua, "
        "au {remedy}"
    ),
    "check.motor_power.source": (
        "bamba la taarifa za pampu; {percent:.0f} % ni desturi ya kazi, hakuna chanzo, hadi {service_percent:.0f} % "
        "ni tahadhari (kigezo cha huduma, NEMA MG 1), na vivyo hivyo kile ambacho kidhibiti cha kasi kinaweza kuzuia"
    ),
    "check.current.compared": "Mkondo kwa nguvu ya kawaida ({currents}), dhidi ya mkubwa zaidi wa bamba",
    "check.current.compared_unknown": (
        "Mkondo kwa nguvu ya kawaida (volti za chanzo hazijulikani), dhidi ya mkubwa zaidi wa bamba"
    ),
    "check.current.from.array": "{amperes:.1f} A kutoka safu ya paneli",
    "check.current.from.grid": "{amperes:.1f} A kutoka gridi",
    "check.current.from.generator": "{amperes:.1f} A kutoka jenereta",
    "check.current.why": "Mkondo mkubwa kuliko bamba linavyoruhusu hukata kidhibiti au huunguza koili.",
    "check.current.look_for": "tafuta 'A' au 'Amp' kwenye bamba",
    "check.current.remedy.array": (
        "soma tena mkondo kwenye bamba, au pampu iliyotengenezwa kwa {amperes} A kutoka safu ya paneli"
    ),
    "check.current.remedy.grid": (
        "soma tena mkondo kwenye bamba, au pampu iliyotengenezwa kwa {amperes} A kutoka gridi"
    ),
    "check.current.remedy.generator": (
        "soma tena mkondo kwenye bamba, au pampu iliyotengenezwa kwa {amperes} A kutoka jenereta"
    ),
    "check.current.remedy_or_series": "{series}; au {remedy}",
    "check.current.remedy_or_volts": "chanzo cha angalau {volts} V, ndani ya vikomo vya bamba; au {remedy}",
    "check.speed_range.compared": (
        "Upeo wa kasi wa mota, dhidi ya kile ambacho chanzo kinachobadilika huhitaji: mizunguko {low:g} hadi "
        "{high:g} kwa dakika, ya chini zaidi kama sehemu ya ya juu zaidi"
    ),
    "check.speed_range.compared_not_given": (
        "Upeo wa kasi wa mota, dhidi ya kile ambacho chanzo kinachobadilika huhitaji"
    ),
    "check.speed_range.why": (
        "Nguvu ya jua hubadilika; ni mota inayoweza kuzunguka polepole tu ndiyo hutumia jua dhaifu."
    ),
    "check.speed_range.look_for": "tafuta 'rpm' au '1/min' kwenye bamba",
    "check.speed_range.remedy": "chagua mota ya kasi inayobadilika",
    "check.speed_range.source": (
        "bamba la taarifa za pampu; mota ya kasi inayobadilika kwa chanzo kinachobadilika ni desturi ya kazi, hakuna "
        "chanzo"
    ),
    "check.frame.compared": "Kesingi, dhidi ya kipenyo cha mota: inchi {inches:g} ni {millimetres:.0f} mm",
    "check.frame.compared_not_given": "Kesingi, dhidi ya kipenyo cha mota",
    "check.frame.why": "Mota haiingii kwenye kesingi iliyo ndogo kuliko kipenyo chake.",
    "check.frame.look_for_frame": "tafuta kipenyo kwa inchi kwenye bamba",
    "check.frame.look_for_casing": "tafuta kipenyo cha ndani cha kesingi kwenye kumbukumbu ya mchimbaji",
    "check.frame.remedy": "pampu yenye kipenyo kisichozidi inchi {inches:g}",
    "check.insulation.compared": (
        "Daraja {letter} huvumilia {limit_c} °C: nafasi juu ya maji ya {water_c:g} °C, dhidi ya ile juu ya "
        "{coolant_c:g} °C"
    ),
    "check.insulation.compared_not_given": "Daraja la insulesheni, dhidi ya joto la maji",
    "check.insulation.why": (
        "Koili zinaweza kupata joto hadi pale insulesheni yake inapovumilia tu; maji ya moto hupunguza nafasi hiyo."
    ),
    "check.insulation.look_for": "tafuta 'Ins. Cl.' na herufi kwenye bamba",
    "check.insulation.remedy": "mota ya daraja la juu zaidi, au ambayo mtengenezaji wake anaiidhinisha kwa maji haya",
    "check.insulation.source": "IEC 60085 (joto la daraja), IEC 60034-1 (kipozeshi cha {coolant_c:g} °C)",
    "check.ingress_protection.compared": "{code}: {meaning}; dhidi ya mota inayoning'inia majini",
    "check.ingress_protection.compared_not_given": "Kinga (IP) ya mota inayoning'inia majini",
    "check.ingress_protection.why": "Mota inayokaa chini ya maji lazima ivumilie hilo daima.",
    "check.ingress_protection.look_for": "tafuta 'IP' na tarakimu mbili kwenye bamba; ya pili inapaswa kuwa 8",
    "check.ingress_protection.remedy": "mota ya kuzama majini ya IP68, au uthibitisho wa mtengenezaji kuhusu kuzama",
    "check.ingress_protection.source": "IEC 60529",
    "check.water_temperature.compared": "Joto la maji, dhidi ya linaloruhusiwa na bamba",
    "check.water_temperature.why": (
        "Maji ya joto kuliko bamba linavyoruhusu yako nje ya kazi ya mota: huipoza kidogo mno na kufupisha maisha yake."
    ),
    "check.water_temperature.look_for": "tafuta 'max. liquid temp.' kwenye bamba",
    "check.water_temperature.remedy": "mota iliyoidhinishwa kwa maji ya angalau {water_c:g} °C",
    "check.plate_window.why": "Nje ya vikomo vyake vya volti huzimika, au huharibika.",
    "check.dc_window.compared": (
        "Volti za kazi za mfululizo, {hot:.0f} V mchana wa joto zaidi hadi {cold:.0f} V kwenye baridi, dhidi ya "
        "{low:g} hadi {high:g} V"
    ),
    "check.dc_window.compared_not_given": (
        "Volti za kazi za mfululizo, {hot:.0f} V mchana wa joto zaidi hadi {cold:.0f} V kwenye baridi, dhidi ya "
        "vikomo vya DC vya bamba"
    ),
    "check.dc_window.span": "{hot:.0f} hadi {cold:.0f}",
    "check.dc_window.look_for": (
        "tafuta 'DC', 'PV' au 'Voc' pamoja na volti kwenye bamba, isipokuwa kidhibiti pekee ndicho kinachounganishwa "
        "na safu ya paneli"
    ),
    "check.ac_window.compared": "Volti za jina za vyanzo ({volts}), dhidi ya {low:g} hadi {high:g} V",
    "check.ac_window.compared_not_given": "Volti za jina za vyanzo ({volts}), dhidi ya vikomo vya AC vya bamba",
    "check.ac_window.compared_none_given": "Volti za jina za vyanzo (hazikutolewa), dhidi ya vikomo vya AC vya bamba",
    "check.ac_window.look_for": "tafuta 'AC' au '~' pamoja na volti kwenye bamba",
    "check.ac_window.remedy": (
        "transfoma, iliyochaguliwa na kufungwa na fundi umeme mwenye leseni, au pampu ya volti hizi"
    ),
}
