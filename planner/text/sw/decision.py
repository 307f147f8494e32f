"""Kiswahili cha uamuzi: ukurasa wa kwanza, muhtasari na pendekezo."""

SENTENCES: dict[str, str] = {
    "decision.recommended": (
        "Pendekezo: {option}, ambalo hutimiza lengo la {target:g} % ya maji kwa gharama ndogo zaidi."
    ),
    "decision.on_conditions": (
        "Pendekezo, kwa masharti yaliyo chini: {option}, ambalo hutimiza lengo la {target:g} % ya maji kwa gharama "
        "ndogo zaidi."
    ),
    "decision.not_yet": (
        "Lisijengwe bado: {option} hutimiza lengo la {target:g} % ya maji kwa gharama ndogo zaidi, mara kaguzi "
        "zilizoshindikana zitakaporekebishwa."
    ),
    "decision.none_meets": (
        "Hakuna chaguo linalotimiza lengo la {target:g} % ya maji; lililo karibu zaidi ni {option}, kwa "
        "{delivered:.1f} %."
    ),
    "decision.serves": "{option} hutimiza lengo la {target:g} % ya maji.",
    "decision.serves_on_conditions": "{option} hutimiza lengo la {target:g} % ya maji, kwa masharti yaliyo chini.",
    "decision.serves_not_yet": (
        "Lisijengwe bado: {option} hutimiza lengo la {target:g} % ya maji, mara kaguzi zilizoshindikana "
        "zitakaporekebishwa."
    ),
    "decision.estimated_weather": "Jua na joto ni makadirio ya mahali hapa: yapime au yapakue kabla ya kutoa fedha.",
    "decision.starter": (
        "Thamani {count} bado ni zile za kubuni za senario ya kuanzia: weka za eneo lako badala yake kabla ya "
        "kutumia takwimu."
    ),
    "decision.unpriced": "Jumla hazijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: {names}.",
    "decision.to_build": "Gharama ya ujenzi",
    "decision.to_build_at_least": "Gharama ya ujenzi, angalau",
    "decision.to_build_note": "kabla ya ruzuku yoyote",
    "decision.to_build_note_grant": "kati yake {own} hubaki kulipwa baada ya ruzuku na mkopo",
    "decision.to_build_note_people": "{per_person} kwa mtu",
    "decision.users_pay": "Watumiaji wanapaswa kulipa",
    "decision.users_pay_at_least": "Watumiaji wanapaswa kulipa, angalau",
    "decision.users_pay_note": "kwa uendeshaji na ubadilishaji wa vifaa",
    "decision.users_pay_note_income": (
        "kwa uendeshaji na ubadilishaji wa vifaa: {share:.1f} % ya kipato cha kaya ya kati"
    ),
    "decision.short_days": "Siku zenye upungufu wa maji",
    "decision.short_days_note": (
        "zaidi ya moja ya kumi ya maji ya siku hukosekana; nyingi zaidi mwezi wa {month}, hadi {longest:.0f} mfululizo"
    ),
    "decision.short_days_never": "hakuna siku ambayo zaidi ya moja ya kumi hukosekana katika miaka {years}",
    "decision.water": "Maji kwa siku",
    "decision.water_note": "yanayotolewa, wastani wa miaka {years}",
    "decision.array_and_tank": "Ya kujengwa",
    "decision.array_and_tank_note": "safu ya paneli na tanki la kuhifadhia: {option}",
    "decision.tank_note": "tanki la kuhifadhia: {option}",
    "decision.value_money": "{currency} {value:,.0f}",
    "decision.value_money_per_m3": "{currency} {value:,.2f} kwa m3",
    "decision.value_days": "siku {value:,.1f} kwa mwaka",
    "decision.value_water": "{value:,.1f} m3",
    "decision.value_array_and_tank": "{kwp:,.2f} kWp + {tank:,.1f} m3",
    "decision.value_tank": "{tank:,.1f} m3",
    "decision.pay_unpriced": (
        "Kiasi ambacho watumiaji wanapaswa kulipa ni zaidi ya takwimu hizi, kwa kuwa bei haijawekwa kwa vifuatavyo: "
        "{names}."
    ),
    "decision.pay_income": (
        "Kwa bei ya maji ya uendeshaji na ubadilishaji wa vifaa, bili huchukua {middle:.1f} % ya kipato cha kaya ya "
        "kati."
    ),
    "decision.pay_income_lowest": (
        "Kwa bei ya maji ya uendeshaji na ubadilishaji wa vifaa, bili huchukua {middle:.1f} % ya kipato cha kaya ya "
        "kati na {lowest:.1f} % ya kile cha kaya iliyo katika moja ya tano maskini zaidi."
    ),
    "decision.record": (
        "Imeandaliwa na: {prepared_by}. Eneo lilitembelewa: {visit_date}. Bei za: {price_date}. Toleo: {revision}."
    ),
    "decision.no_record": "Haikusemwa: nani aliandaa, lini eneo lilitembelewa, bei ni za lini, ni toleo gani.",
    "decision.weather_estimate": (
        "Hali ya hewa: wastani wa kila mwezi uliokadiriwa kwa mahali hapa, uliogeuzwa kuwa miaka ya saa kwa saa."
    ),
    "decision.weather_monthly": (
        "Hali ya hewa: wastani wa kila mwezi uliotolewa, uliogeuzwa kuwa miaka ya saa kwa saa."
    ),
    "decision.weather_file": "Hali ya hewa: kumbukumbu ya saa kwa saa '{file}'.",
    "decision.version": "Imekokotolewa na planner {version}, mbegu ya nasibu {seed}.",
    "decision.changed": (
        "! Bei au viwango vimebadilishwa tangu kuendesha: kati ya machaguo yanayotimiza lengo, kwa ukubwa wa "
        "uendeshaji, lenye gharama ndogo zaidi sasa ni {option}. Endesha utafiti tena kabla ya kutumia hii."
    ),
    "decision.run_again": (
        "! Endesha utafiti tena: data ambayo takwimu hizi haziifuati imebadilishwa (laha 'Data' husema ipi; takwimu "
        "ni za uendeshaji uliopita)."
    ),
    "decision.overpaid": (
        "! Ruzuku na mkopo kwa pamoja vinazidi asilimia 100 ya gharama za uwekezaji: virekebishe kabla ya kutumia hii."
    ),
    "decision.given_way": (
        "Takwimu zilizo chini hufuata bei zilizobadilishwa; yaliyosemwa kuhusu kaguzi, masharti na chaguo la pili "
        "yameondolewa, kwani uendeshaji mpya tu ndio unaoweza kuyasema."
    ),
    "decision.days_heading": "Siku zenye upungufu wa maji, na kile watumiaji wanacholipa",
    "decision.days_heading_technical": "Siku zenye upungufu wa maji",
    "decision.turns_heading": "Nini kingeligeuza",
    "decision.who_heading": "Nani, lini, kutokana na nini",
    "decision.large_unit": "{label} ({unit})",
    "decision.cautions": (
        "Soma tahadhari kwenye laha 'Mbinu na tahadhari' kabla ya kununua, kufungua au kunywa chochote; kanuni za "
        "mahali na mafundi wenye leseni hutangulia."
    ),
    "decision.printing": (
        "Kurasa za kuchapisha zina yale yanayosomwa na wengine. Ili kuchapisha laha nyingine, au zaidi ya sehemu ya "
        "laha, ondoa eneo lake la kuchapisha au chapisha sehemu iliyochaguliwa."
    ),
    "checks.names_not_given": "Havikutolewa, hivyo havikukaguliwa: {names}.",
    "checks.names_passed": "Zimefaulu: {names}.",
    "page.basis": "Msingi wa jibu",
    "inputs.since": "Tangu kuendesha",
    "inputs.since_count": "Idadi",
    "inputs.since_form": "Zilizobadilishwa kwenye fomu mbali na zile zinazofuatwa na thamani za hapa",
    "inputs.since_again": "Zilizobadilishwa kwa jumla ambazo takwimu hazizifuati",
    "inputs.since_followed": "Zilizobadilishwa na kufuatwa na kila kiasi cha fedha",
    "inputs.since_state": (
        "Hali: 0 kama ilivyoendeshwa, 1 takwimu hufuata, 2 iendeshwe tena, 3 ruzuku na mkopo zaidi ya 100 %"
    ),
    "inputs.since_state_technical": "Hali: 0 kama ilivyoendeshwa, 2 iendeshwe tena",
    "inputs.again": "! endesha tena",
    "inputs.followed": "imebadilishwa, inafuatwa",
    "page.form_of_run": "Fomu ya uendeshaji",
    "short.meets_target": "Hutimiza lengo",
    "short.tariff_operation_and_renewals": (
        "Watumiaji hulipia uendeshaji na ubadilishaji wa vifaa{incomplete} ({unit})"
    ),
}
