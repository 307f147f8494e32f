"""Kiswahili cha muhtasari, kando ya uamuzi: vichwa vyake, chati zake, na chati hizo kwa maneno."""

SENTENCES: dict[str, str] = {
    "brief.place_people": "{place}. Huhudumia watu {people} katika mwaka wa kwanza.",
    "brief.days": "Siku zenye upungufu wa maji",
    "brief.pay": "Kiasi ambacho watumiaji wanapaswa kulipa",
    "brief.turns": "Nini kingebadilisha jibu",
    "brief.options": "Machaguo, bora kwanza",
    "brief.who": "Nani, lini, kutokana na nini",
    "brief.cautions_follow": "Tahadhari zilizo mwishoni ni sehemu ya muhtasari huu.",
    "brief.costs": "Gharama za muda wote kwa sehemu",
    "brief.costs_alt": (
        "Nguzo za gharama za muda wote za kila chaguo kwa sehemu, kila sehemu ikifuata nyingine. {option}, chaguo la "
        "kwanza, kwa jumla hugharimu {cost} kwa miaka {years}; sehemu kubwa zaidi: {part}."
    ),
    "brief.water": "Maji kwa mwezi na chanzo: {option}",
    "brief.water_alt": (
        "Nguzo za maji yanayosukumwa na kila chanzo, kwa mwezi, wastani wa miaka {years}, na juu yake maji "
        "yanayokosekana. Upungufu mkubwa zaidi uko mwezi wa {month}: {missing} m3 kwa siku."
    ),
    "brief.water_alt_none_missing": (
        "Nguzo za maji yanayosukumwa na kila chanzo, kwa mwezi, wastani wa miaka {years}. Hakuna mwezi wenye "
        "upungufu wa maji."
    ),
    "brief.water_axis": "m3 kwa siku, wastani wa miaka {years}",
    "brief.water_missing": "yanayokosekana",
    "brief.tank": "Tanki katika wiki mbili mbaya zaidi: {option}",
    "brief.tank_alt": (
        "Mstari wa maji yaliyomo kwenye tanki saa kwa saa kuanzia {day} {month} ya mwaka {year}, siku kumi na nne "
        "zenye upungufu mkubwa zaidi wa maji katika miaka yote, ambapo {missing} m3 zinakosekana. Tanki hubeba "
        "{tank} m3; kina chake cha chini zaidi katika siku hizi ni {lowest} m3."
    ),
    "brief.tank_alt_none_missing": (
        "Mstari wa maji yaliyomo kwenye tanki saa kwa saa kuanzia {day} {month} ya mwaka {year}, siku kumi na nne "
        "ambapo tanki lina maji machache zaidi katika miaka yote. Hakuna maji yanayokosekana. Tanki hubeba {tank} "
        "m3; kina chake cha chini zaidi katika siku hizi ni {lowest} m3."
    ),
    "brief.tank_axis": "m3",
    "brief.tank_days": "siku tangu {day} {month} ya mwaka {year}",
    "brief.tank_level": "kiasi",
    "brief.tank_full": "limejaa",
    "brief.tank_missing": "yanayokosekana siku hiyo",
}
