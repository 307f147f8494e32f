"""Kiswahili cha mbinu, mipaka yake na maneno yake."""

SENTENCES: dict[str, str] = {
    "method.under": "Imekokotolewa na planner {version}, mbegu ya nasibu {seed}.",
    "method.cautions": "Tahadhari",
    "method.caution": "! Tahadhari {number}",
    "method.method": "Mbinu",
    "method.limits": "Mipaka ya modeli",
    "method.words": "Maneno",
    "method.weather": "Hali ya hewa",
    "method.weather_file": (
        "Faili la saa kwa saa: {source}. Pale ambapo halina mwanga wake wa moja kwa moja na uliotawanyika, wa jumla "
        "hugawanywa kufuatana na Erbs, Klein na Duffie (1982)."
    ),
    "method.weather_means": (
        "Saa zilizotengenezwa kutokana na wastani kumi na mbili wa kila mwezi, upya kwa kila mwaka: uangavu wa siku "
        "kufuatana na {law}; saa kufuatana na Graham na Hollands (1990) na Knight, Klein na Duffie (1991), mwanga wa "
        "moja kwa moja na uliotawanyika kufuatana na Erbs, Klein na Duffie (1982), joto kufuatana na Erbs, Klein na "
        "Beckman (1983). Jumla za miezi hudumishwa."
    ),
    "method.array": "Safu ya paneli",
    "method.array_words": (
        "Mwanga kwenye paneli kufuatana na {sky}; uakisi kwenye {reflection} kufuatana na De Soto, Klein na Beckman "
        "(2006) na Marion (2017); joto la seli kufuatana na Faiman (2008), nguvu ya paneli kwa mwanga na joto lolote "
        "kufuatana na Batzelis (2017) kutoka karatasi yake ya taarifa, na mlinganyo wa diodi moja wa De Soto pale "
        "upeo wa volti wa kidhibiti unapoizuia kufikia nukta yake bora; yote kama katika pvlib. Kivuli, uchafu, "
        "kutolingana kwa paneli, nyaya, upungufu unaosababishwa na mwanga na wa kila mwaka hutolewa kama "
        "vilivyowekwa."
    ),
    "sky.perez-driesse": "Perez et al. (1990) iliyofanywa endelevu na Driesse, Jensen na Perez (2024)",
    "sky.haydavies": "Hay na Davies (1980)",
    "reflection.glass": "kioo cha kawaida",
    "reflection.coated_glass": "kioo kilichopakwa",
    "reflection.none": "bila kioo (imeachwa)",
    "method.borehole": "Kisima kirefu na mabomba",
    "method.borehole_words": (
        "Kushuka kwa kina cha maji s = B Q + C Q2 (Jacob 1947), kutoka mtiririko kwa kila mita ya kushuka au jaribio "
        "la hatua kwa hatua. Msuguano kufuatana na {friction}, hasara katika viungo kwa vigezo vyake K. Vipenyo vya "
        "ndani vya bomba la PE kutoka ISO 4427-2, vya bomba la chuma kutoka EN 10255."
    ),
    "friction.darcy-weisbach": "Darcy-Weisbach pamoja na Colebrook-White (Colebrook 1939)",
    "friction.hazen-williams": "Hazen-Williams",
    "method.pump": "Pampu",
    "pump.centrifugal": "Kanuni za ulinganifu (affinity laws) kuzunguka mkondo wa kasi ya kawaida.",
    "pump.helical-rotor": (
        "Pampu ya ujazo: mtiririko hulingana na kasi kutoa uvujaji wa ndani; nguvu ya mzunguko hufuata kimo."
    ),
    "method.loop": "Mzunguko wa saa",
    "method.loop_words": (
        "Kila saa ya kila mwaka: jua husukuma kwanza; gridi na jenereta huongezea kati ya kiwango cha kuanza na cha "
        "kusimama, katika saa zao na wakati umeme haujakatika; watumiaji huchota kwenye tanki. Vyanzo vinaweza "
        "kushiriki saa moja pale kidhibiti kinapoviendesha sambamba. Hakuna kinachoumbwa wala kupotea: "
        "kinachosukumwa ni sawa na kinachotolewa, kinachovuja na kinachohifadhiwa."
    ),
    "method.generator": "Jenereta",
    "method.generator_words": (
        "Mafuta = sehemu ya bila mzigo x uwezo x saa + sehemu ya ziada x nishati (Skarstein na Uhlen 1989, kwa "
        "kumbukumbu); uwezo hupunguzwa kwa mwinuko na joto; huduma, ukarabati mkubwa na ubadilishaji kwa saa za kazi."
    ),
    "method.sizes": "Uteuzi wa ukubwa",
    "method.sizes_words": (
        "Pale palipoachwa wazi: tanki dogo zaidi linalotimiza lengo la huduma, idadi ya mifululizo na viwango vya "
        "swichi ya boya vyenye gharama ndogo zaidi za muda wote vinavyolitimiza. Machaguo yanayotimiza lengo "
        "hupangwa kwa gharama za muda wote; yanayolikosa huja baada yake, kwa kile yanachotoa."
    ),
    "method.money": "Fedha",
    "method.money_words": (
        "Gharama za muda wote kama katika 10 CFR 436 na NIST Handbook 135 (Fuller na Petersen 1995): gharama za "
        "uwekezaji mwaka 0, mengine yote mwisho wa miaka; ubadilishaji mwishoni mwa kila muda wa kutumika; thamani "
        "inayobaki kwa mstari ulionyooka. Gharama ya wastani ya maji kama gharama ya wastani ya nyongeza ya kiuchumi "
        "(ADB, Handbook for the Economic Analysis of Water Supply Projects, 1999). Viwango halisi na vya kawaida "
        "(nominal) kufuatana na Fisher."
    ),
    "limit.hours": "Saa, si dakika: ndani ya saa urari wa maji hukokotolewa, lakini wingu linalopita halionekani.",
    "limit.start": (
        "Kila mwaka huanza na kile ambacho mwaka uliotangulia uliacha kwenye tanki; wa kwanza huanza na maji kama "
        "yale unayoishia nayo."
    ),
    "limit.weather": (
        "Faili moja la hali ya hewa hujirudia kila mwaka; ni wastani wa kila mwezi tu unaotoa miaka inayotofautiana."
    ),
    "limit.nameplate": (
        "Kutokana na bamba la taarifa peke yake, nguvu kwa mzigo usio kamili ni makadirio; nukta za karatasi ya "
        "taarifa ni bora zaidi."
    ),
    "limit.ageing": (
        "Miundombinu huzeeka sawasawa, kwa upunguaji wa kila mwaka uliowekwa; kisima kirefu hakisafishwi kamwe."
    ),
    "limit.not_run": "Mapigo ya maji, ubora wa maji na kupasuka kwa mabomba si sehemu ya uendeshaji wa saa kwa saa.",
    "limit_of_money.flows": (
        "Gharama huwa mwisho wa miaka, malipo ya mkopo ni sawa kila mwaka, kodi za mapato zimeachwa."
    ),
    "limit.carbon": "Kaboni dioksidi ya kutengeneza na kusafirisha vifaa haihesabiwi.",
    "limit.inspection": (
        "Programu hukokotoa; haikagui kwa macho: jaribio la kusukuma maji, upimaji wa njia na bei za wauzaji "
        "hutangulia."
    ),
    "word.source": "chanzo",
    "meaning.source": "Sola, gridi au jenereta.",
    "word.option": "chaguo la nishati",
    "meaning.option": "Mchanganyiko mmoja wa vyanzo unaokidhi mahitaji yaleyale, kama sola + gridi.",
    "word.top_up": "nishati ya nyongeza",
    "meaning.top_up": "Kusukuma kwa gridi au jenereta kwa sababu jua na tanki havitoshi.",
    "word.levels": "kiwango cha kuanza, kiwango cha kusimama",
    "meaning.levels": "Viwango vya tanki ambapo nishati ya nyongeza huanza na husimama: swichi ya boya.",
    "word.demand_met": "mahitaji yaliyokidhiwa, upungufu",
    "meaning.demand_met": (
        "Maji yaliyotolewa ikigawanywa kwa maji yaliyohitajika; upungufu ni kile kinachohitajika na hakikutolewa."
    ),
    "word.pv_unused": "nishati ya PV isiyotumika",
    "meaning.pv_unused": (
        "Nishati ya PV iliyopatikana lakini haikutumika: tanki limejaa, chini ya nguvu ya kuanzia, au zaidi ya "
        "inayochukuliwa na pampu."
    ),
    "word.static_lift": "kimo tulivu cha kunyanyua",
    "meaning.static_lift": (
        "Kutoka kina cha maji yakiwa tulivu kwenye kisima kirefu hadi mdomo wa kuingizia wa tanki."
    ),
    "word.head": "jumla ya kimo cha kusukuma",
    "meaning.head": "Kimo tulivu cha kunyanyua + kushuka kwa kina cha maji + msuguano + kimo kinachobaki.",
    "word.duty_point": "nukta ya kazi",
    "meaning.duty_point": "Mtiririko na kimo ambapo pampu na mfumo hukutana.",
    "word_of_money.life_cycle_cost": "gharama za muda wote",
    "meaning.life_cycle_cost": (
        "Thamani ya sasa ya kila gharama katika kipindi cha uchambuzi, kutoa thamani inayobaki."
    ),
    "word_of_money.net_present_value": "thamani halisi ya sasa",
    "meaning.net_present_value": "Thamani ya sasa ya kinacholipwa na watumiaji, kutoa gharama za muda wote.",
    "word_of_money.annualised_cost": "gharama ya wastani kwa mwaka",
    "meaning.annualised_cost": (
        "Kiasi kisichobadilika cha kila mwaka ambacho thamani yake ya sasa ni gharama za muda wote."
    ),
    "word_of_money.levelised_cost": "gharama ya wastani ya maji",
    "meaning.levelised_cost": "Gharama za muda wote / thamani ya sasa ya m3 zilizotolewa, kwa fedha ya mwaka 0.",
    "word_of_money.rate": "kiwango cha ndani cha faida",
    "meaning.rate": "Kiwango ambapo gharama za ziada za uwekezaji dhidi ya marejeo ni sawa na akiba ya baadaye.",
    "word_of_money.payback": "muda wa kurejesha gharama",
    "meaning.payback": (
        "Miaka hadi gharama za ziada za uwekezaji zirejeshwe na zibaki zimerejeshwa; kwa punguzo au bila."
    ),
    "word_of_money.residual_value": "thamani inayobaki",
    "meaning.residual_value": "Thamani ya vifaa mwishoni: bei yake mara sehemu ya muda wake wa kutumika iliyobaki.",
}
