"""Kiswahili cha kaguzi za nyaya."""

SENTENCES: dict[str, str] = {
    "check.dc_cable.compared": (
        "Waya kutoka safu ya paneli hadi kidhibiti: kushuka kwa volti na uwezo wa kubeba mkondo"
    ),
    "check.ac_cable.compared": (
        "Waya kutoka gridi au jenereta hadi kidhibiti: kushuka kwa volti na uwezo wa kubeba mkondo"
    ),
    "check.drop_cable.compared": (
        "Waya kutoka kidhibiti kushuka hadi mota: kushuka kwa volti na uwezo wa kubeba mkondo"
    ),
    "check.dc_cable.look_for": (
        "pima urefu kutoka safu ya paneli hadi kidhibiti na tafuta eneo la mkato (mm2) lililochapishwa kwenye waya; "
        "weka yote mawili kwa waya wa safu ya paneli"
    ),
    "check.ac_cable.look_for": (
        "pima urefu kutoka gridi au jenereta hadi kidhibiti na tafuta eneo la mkato (mm2) lililochapishwa kwenye "
        "waya; weka yote mawili kwa waya wa AC"
    ),
    "check.drop_cable.look_for": (
        "pima urefu kutoka kidhibiti kushuka hadi mota na tafuta eneo la mkato (mm2) lililochapishwa kwenye waya; "
        "weka yote mawili kwa waya wa kisimani"
    ),
    "check.cable.source": "IEC 60364-5-52 kiambatisho G, matumizi mengine yasiyo ya taa kwenye mtandao wa umma",
    "check.cable.array": "Waya wa safu ya paneli, mifululizo {strings}",
    "check.cable.array_open": "Waya wa safu ya paneli, mifululizo {strings} ambayo ingefaa (idadi haijaamuliwa)",
    "check.cable.grid": "Waya wa AC kwenye gridi",
    "check.cable.generator": "Waya wa AC kwenye jenereta",
    "check.cable.drop": "Waya wa kisimani",
    "check.cable_drop.compared": (
        "{cable}, {length_m:g} m za {section_mm2:g} mm2 ({ohm:.3f} ohm kwa {conductor_c:g} °C): volti zinazopotea "
        "kwa {current_a} A na {voltage_v} V"
    ),
    "check.cable_drop.why": (
        "Volti zinazopotea kwenye waya ni nguvu inayopotea maisha yote, na volti chache mno husimamisha mota."
    ),
    "check.cable_drop.source": "desturi ya kazi, hakuna chanzo; ukinzani kwa IEC 60228",
    "check.ac_cable_drop.source": (
        "IEC 60364-5-52 kiambatisho G, matumizi mengine yasiyo ya taa kwenye mtandao wa umma; ukinzani kwa IEC 60228"
    ),
    "check.cable_ampacity.compared": (
        "{cable}, {section_mm2:g} mm2 uliolazwa kwa njia ya {installation} kwa {ambient_c:.0f} °C: uwezo wa kubeba "
        "mkondo, dhidi ya mkondo wa kusanifia"
    ),
    "check.cable_ampacity.compared_grouped": (
        "{cable}, {section_mm2:g} mm2 uliolazwa kwa njia ya {installation} kwa {ambient_c:.0f} °C, mizunguko "
        "{circuits} pamoja (kigezo {factor:g}): uwezo wa kubeba mkondo, dhidi ya mkondo wa kusanifia"
    ),
    "check.cable_ampacity.why": "Waya unaobeba zaidi ya uwezo wake hupata joto kupita kiasi na unaweza kuwasha moto.",
    "check.cable_ampacity.source": "IEC 60364-5-52, PVC, pamoja na vigezo vya joto la mazingira na kuwekwa pamoja",
    "check.cable_ampacity.source_datasheet": "karatasi ya taarifa ya waya",
    "check.cable.remedy": (
        "eneo la mkato la {section_mm2:g} mm2, dogo zaidi linalofaulu kushuka kwa volti na uwezo wa kubeba mkondo "
        "kwa PVC, ukilazwa peke yake kwa njia ya {installation} kwa {ambient_c:.0f} °C; havikuhusishwa: {not_covered}"
    ),
    "check.cable.remedy_grouped": (
        "eneo la mkato la {section_mm2:g} mm2, dogo zaidi linalofaulu kushuka kwa volti na uwezo wa kubeba mkondo "
        "kwa PVC, ukilazwa na mizunguko {circuits} pamoja kwa njia ya {installation} kwa {ambient_c:.0f} °C; "
        "havikuhusishwa: {not_covered}"
    ),
    "check.cable.remedy_none": (
        "waya mfupi zaidi, au waya mwingine uliosanifiwa na fundi umeme mwenye leseni: hakuna eneo la mkato hadi 50 "
        "mm2 linalotosha"
    ),
    "check.cable.not_covered.faults": "mzunguko wa hitilafu ya umeme kwenda ardhini na mzunguko mfupi",
    "check.cable.not_covered.device": "kifaa cha kinga",
    "check.cable.not_covered.outdoors": "insulesheni kwa DC, jua na mvua",
    "check.cable.not_covered.ground": "kina, mifereji na ukavu wa ardhi",
    "check.cable.not_covered.ground_grouping": "kigezo cha ardhi yenyewe cha kuwekwa pamoja",
    "check.ac_cable_protection.compared": (
        "Kifaa cha kinga cha waya wa AC, {device}, dhidi ya {carried_a} A ambazo waya unapaswa kubeba na {most_a} A "
        "zinazoulinda"
    ),
    "check.drop_cable_protection.compared": (
        "Kifaa cha kinga cha waya wa kisimani, {device}, dhidi ya {carried_a} A ambazo waya unapaswa kubeba na "
        "{most_a} A zinazoulinda"
    ),
    "check.ac_cable_protection.compared_not_given": "Kifaa cha kinga cha waya wa AC",
    "check.cable_protection.why": (
        "Kifaa kidogo mno hukata umeme wa pampu; kikubwa mno huacha waya uungue kabla hakijakata."
    ),
    "check.cable_protection.look_for": (
        "tafuta mkondo wa kawaida kwenye kikata umeme au fyuzi iliyo kabla ya waya; unapaswa kuwa angalau "
        "{carried_a} A na usiozidi {most_a} A"
    ),
    "check.cable_protection.device.breaker": "kikata umeme cha {rating_a:g} A",
    "check.cable_protection.device.fuse": "fyuzi ya gG ya {rating_a:g} A",
    "check.cable_protection.remedy": (
        "{device}, pamoja na kinga ya mota yenyewe dhidi ya mzigo uliozidi; havikuhusishwa: mzunguko wa hitilafu ya "
        "umeme kwenda ardhini na mzunguko mfupi"
    ),
    "check.cable_protection.remedy_and_cable": (
        "{device}, pamoja na kinga ya mota yenyewe dhidi ya mzigo uliozidi, na {remedy}"
    ),
    "check.cable_protection.remedy_none": (
        "kifaa cha mkondo mkubwa kuliko vya ukubwa wa kawaida, kilichochaguliwa na fundi umeme mwenye leseni"
    ),
    "check.cable_protection.source": "IEC 60364-4-43:2008, 433.1: Ib <= In <= Iz na I2 <= 1.45 Iz",
    "check.dc_cable_voltage.compared": (
        "Volti za mzunguko wazi za mfululizo kwenye baridi, dhidi ya volti za DC ambazo waya wa safu ya paneli "
        "umetengenezewa"
    ),
    "check.dc_cable_voltage.why": (
        "Insulesheni isiyotengenezwa kwa volti hizo hushindwa, na cheche (arc) ya DC haizimiki yenyewe."
    ),
    "check.dc_cable_voltage.look_for": "tafuta volti za DC zilizochapishwa kwenye waya, kama 'DC 1500 V'",
    "check.dc_cable_voltage.remedy": "waya uliotengenezwa kwa PV (EN 50618 au IEC 62930, 1,500 V DC)",
    "check.dc_cable_voltage.source": "IEC 62548; waya wa PV hutengenezwa kwa 1,500 V DC (EN 50618, IEC 62930)",
    "check.dc_cable_outdoor.compared": "Waya wa safu ya paneli, dhidi ya jua na mvua",
    "check.dc_cable_outdoor.made_for_it": "umetengenezwa kwa hilo",
    "check.dc_cable_outdoor.not_made_for_it": "haukutengenezwa kwa hilo",
    "check.dc_cable_outdoor.why": (
        "Insulesheni inayochakazwa na jua na mvua huvujisha umeme ardhini ndani ya miaka michache, na hupiga shoti "
        "au huungua."
    ),
    "check.dc_cable_outdoor.look_for": "tafuta 'EN 50618', 'IEC 62930' au 'H1Z2Z2-K' iliyochapishwa kwenye waya",
    "check.dc_cable_outdoor.remedy": (
        "waya uliotengenezwa kwa PV (EN 50618 au IEC 62930), au mfereji unaostahimili jua kwa urefu wake wote"
    ),
    "check.dc_cable_outdoor.source": "IEC 62548; EN 50618, IEC 62930",
    "check.drop_cable_length.compared": "Urefu wa waya wa kisimani, dhidi ya kina cha pampu",
    "check.drop_cable_length.why": "Kiungo cha waya chini ya maji ndicho kinachoharibika kwanza.",
    "check.drop_cable_length.remedy": "waya wa kisimani wa angalau {length_m} m bila kiungo",
}
