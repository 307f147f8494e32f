"""Takwimu za katalogi: majina yake, na maana yake."""

FIGURES: dict[str, tuple[str, str]] = {
    "tank_m3": ("Tanki la kuhifadhia", "Ujazo wa tanki unaoweza kutumika."),
    "modules": ("Paneli za sola", "Paneli katika mifululizo yote kwa pamoja."),
    "strings": ("Mifululizo sambamba", "Mifululizo ya paneli, bega kwa bega."),
    "array_kwp": (
        "Safu ya paneli, nguvu ya kawaida",
        "Nguvu ya kawaida ya paneli zote kwa hali sanifu za majaribio (IEC 60904-3).",
    ),
    "start_level_percent": ("Kiwango cha kuanza nyongeza", "Kiwango ambapo swichi ya boya huwasha gridi au jenereta."),
    "stop_level_percent": ("Kiwango cha kusimama nyongeza", "Kiwango ambapo swichi ya boya huzima gridi au jenereta."),
    "duty_flow_m3h": (
        "Mtiririko kwenye nukta ya kazi",
        "Mtiririko ambapo pampu na mfumo hukutana kwa wastani wa kina cha maji wa mwaka.",
    ),
    "total_dynamic_head_m": (
        "Jumla ya kimo cha kusukuma",
        "Kimo tulivu cha kunyanyua, kushuka kwa kina cha maji, msuguano na kimo kinachobaki kwa pamoja, kwenye nukta "
        "ya kazi.",
    ),
    "generator_kw": ("Jenereta, nguvu ya kawaida", "Nguvu ya kawaida ya jenereta kwa hali za marejeo."),
    "meets_target": ("Hutimiza lengo la huduma (1: ndiyo)", "Kama hutoa kinachotakiwa na lengo la huduma."),
    "short_days_per_year": (
        "Siku zenye upungufu",
        "Siku ambazo zaidi ya moja ya kumi ya mahitaji ya siku hukosekana, wastani wa miaka (desturi ya kazi, hakuna "
        "chanzo).",
    ),
    "worst_month": (
        "Mwezi mbaya zaidi (1: Januari)",
        "Mwezi wa kalenda ambapo sehemu ndogo zaidi ya mahitaji hutolewa, miaka yote kwa pamoja.",
    ),
    "worst_month_short_days": (
        "Siku zenye upungufu katika mwezi mbaya zaidi",
        "Siku zenye upungufu katika mwezi huo, wastani wa miaka.",
    ),
    "longest_short_days": (
        "Mfululizo mrefu zaidi wa siku zenye upungufu",
        "Siku nyingi zaidi zenye upungufu mfululizo katika kipindi cha uchambuzi, hata kuvuka mwaka.",
    ),
    "missing_l_per_short_day": (
        "Maji yanayokosekana katika siku ya wastani yenye upungufu",
        "Kile watumiaji wanachokosa katika siku zote zenye upungufu za kipindi cha uchambuzi ikigawanywa kwa idadi "
        "yake.",
    ),
    "demand_met_percent": (
        "Mahitaji yaliyokidhiwa",
        "Maji yaliyotolewa ikigawanywa kwa maji yanayohitajika, miaka yote kwa pamoja.",
    ),
    "demand_met_worst_year_percent": (
        "Mahitaji yaliyokidhiwa katika mwaka mbaya zaidi",
        "Sehemu ndogo zaidi ya mwaka ya mahitaji yaliyotolewa.",
    ),
    "demand_met_worst_month_percent": (
        "Mahitaji yaliyokidhiwa katika mwezi mbaya zaidi",
        "Sehemu ndogo zaidi ya mahitaji yaliyotolewa ya mwezi wowote wa kalenda, miaka yote kwa pamoja.",
    ),
    "demand_first_year_m3": ("Mahitaji katika mwaka wa kwanza", "Maji yanayohitajika na watumiaji katika mwaka 1."),
    "delivered_first_year_m3": ("Yaliyotolewa katika mwaka wa kwanza", "Maji yanayowafikia watumiaji katika mwaka 1."),
    "demand_last_year_m3": (
        "Mahitaji katika mwaka wa mwisho",
        "Maji yanayohitajika na watumiaji katika mwaka wa mwisho.",
    ),
    "delivered_last_year_m3": (
        "Yaliyotolewa katika mwaka wa mwisho",
        "Maji yanayowafikia watumiaji katika mwaka wa mwisho.",
    ),
    "shortfall_m3_per_year": ("Upungufu, wastani", "Mahitaji yasiyokidhiwa, wastani wa miaka."),
    "shortfall_by_daily_limit_m3_per_year": (
        "  kati yake unaosababishwa na kikomo cha siku",
        "Mahitaji ambayo yangekidhiwa bila kikomo cha siku, wastani wa miaka; hupatikana kwa uendeshaji bila kikomo "
        "hicho.",
    ),
    "demand_met_worst_year_in_ten_percent": (
        "Mahitaji yaliyokidhiwa katika mwaka mbaya zaidi katika kumi",
        "Sehemu ya mwaka ya mahitaji yaliyotolewa ambayo miaka tisa kati ya kumi hufikia (pasentaili ya 10 ya miaka).",
    ),
    "short_days_worst_year_in_ten": (
        "Siku zenye upungufu katika mwaka mbaya zaidi katika kumi",
        "Siku zenye upungufu ambazo miaka tisa kati ya kumi haizizidi (pasentaili ya 90 ya miaka).",
    ),
    "missing_l_per_day_worst_year_in_ten": (
        "Yanayokosekana katika mwaka mbaya zaidi katika kumi",
        "Maji yanayokosekana, wastani wa siku za mwaka, ambayo miaka tisa kati ya kumi haiyazidi (pasentaili ya 90 "
        "ya miaka).",
    ),
    "pumped_by_solar_percent": ("Yaliyosukumwa na jua", "Sehemu ya maji yanayosukumwa ambayo nguvu ya PV hunyanyua."),
    "pumped_by_grid_percent": ("Yaliyoongezwa na gridi", "Sehemu ya maji yanayosukumwa ambayo gridi huongeza."),
    "pumped_by_generator_percent": (
        "Yaliyoongezwa na jenereta",
        "Sehemu ya maji yanayosukumwa ambayo jenereta huongeza.",
    ),
    "pv_used_kwh_per_year": (
        "Nishati ya PV iliyotumika (DC)",
        "Nishati ambayo safu ya paneli huipa pampu, wastani wa miaka.",
    ),
    "pv_unused_kwh_per_year": (
        "Nishati ya PV isiyotumika (DC)",
        "Nishati ambayo safu ya paneli ingeweza kutoa, wastani wa miaka.",
    ),
    "grid_kwh_per_year": ("Nishati ya gridi", "Nishati inayonunuliwa kutoka gridi, wastani wa miaka."),
    "grid_hours_per_year": ("Kufanya kazi kwa gridi", "Saa ambazo gridi huendesha pampu, wastani wa miaka."),
    "grid_peak_kw": ("Mahitaji ya juu zaidi ya nusu saa kwenye gridi", "Nusu saa ya juu zaidi ya miezi na miaka yote."),
    "generator_kwh_per_year": ("Nishati ya jenereta", "Nishati inayotolewa na jenereta, wastani wa miaka."),
    "generator_hours_per_year": ("Saa za kazi za jenereta", "Saa ambazo jenereta hufanya kazi, wastani wa miaka."),
    "fuel_l_per_year": ("Mafuta", "Mafuta yanayochomwa na jenereta, wastani wa miaka."),
    "capital_cost": ("Gharama za uwekezaji", "Kinachojengwa mwaka 0, kabla ya ruzuku na mkopo."),
    "life_cycle_cost": (
        "Gharama za muda wote (thamani ya sasa)",
        "Thamani ya sasa ya kila gharama ya kipindi cha uchambuzi kutoa thamani inayobaki (NIST Handbook 135).",
    ),
    "life_cycle_construction": ("  Gharama za uwekezaji", "Sehemu yake inayolipwa mwaka 0."),
    "life_cycle_replacement": ("  Ubadilishaji wa vifaa", "Sehemu yake inayobadilisha vinavyochakaa."),
    "life_cycle_upkeep": ("  Matengenezo", "Sehemu yake inayotunza miundombinu."),
    "life_cycle_grid": ("  Bili za gridi", "Sehemu yake inayolipia nishati ya gridi."),
    "life_cycle_fuel": ("  Mafuta", "Sehemu yake inayolipia mafuta, pamoja na kuyaleta."),
    "life_cycle_generator_service": ("  Huduma ya jenereta", "Sehemu yake ya huduma na ukarabati mkubwa wa jenereta."),
    "life_cycle_yearly_costs": ("  Gharama nyingine za kila mwaka", "Sehemu yake inayorudi kila mwaka."),
    "life_cycle_direct_support": ("  Usaidizi wa moja kwa moja", "Sehemu yake ambayo mamlaka hutumia kwa usaidizi."),
    "life_cycle_residual": ("  Thamani inayobaki", "Thamani ya miundombinu mwishoni, iliyotolewa."),
    "annualised_cost": (
        "Gharama ya wastani kwa mwaka",
        "Gharama isiyobadilika ya kila mwaka, kwa fedha ya mwaka 0, yenye thamani ya sasa ileile (NIST Handbook 135).",
    ),
    "levelised_cost_per_m3": (
        "Gharama ya wastani ya maji",
        "Gharama za muda wote ikigawanywa kwa thamani ya sasa ya ujazo uliotolewa (gharama ya wastani ya nyongeza ya "
        "kiuchumi, ADB 1999).",
    ),
    "annualised_cost_per_person": (
        "Gharama ya wastani kwa mwaka kwa mtu wa mwaka wa kwanza",
        "Gharama ya wastani kwa mwaka ikigawanywa kwa watu wanaohudumiwa mwaka 1.",
    ),
    "revenue_present": (
        "Thamani ya sasa ya kinacholipwa na watumiaji",
        "Thamani ya sasa ya maji yaliyouzwa kwa bei ya maji.",
    ),
    "net_present_value": (
        "Thamani halisi ya sasa",
        "Thamani ya sasa ya kinacholipwa na watumiaji kutoa gharama za muda wote.",
    ),
    "grant": ("Ruzuku", "Kiasi kinachopokelewa mwaka 0 ambacho hakirudishwi."),
    "loan": ("Mkopo", "Kiasi kinachopokelewa mwaka 0 ambacho hurudishwa."),
    "own_funds": ("Fedha zao wenyewe mwaka 0 (jamii au mmiliki)", "Gharama za uwekezaji kutoa ruzuku na mkopo."),
    "owner_life_cycle_cost": (
        "Gharama za muda wote kwa mmiliki",
        "Thamani ya sasa ya gharama zote kutoa ruzuku na mkopo uliochukuliwa, pamoja na malipo ya mkopo.",
    ),
    "capital_expenditure": (
        "Matumizi ya uwekezaji",
        "Gharama za uwekezaji (sehemu za muda wote wa matumizi, IRC 2011).",
    ),
    "operation_and_minor_maintenance": (
        "Uendeshaji na matengenezo madogo",
        "Matengenezo, nishati, mafuta, huduma na gharama nyingine za kila mwaka (sehemu za muda wote wa matumizi, "
        "IRC 2011).",
    ),
    "capital_maintenance": (
        "Matengenezo makubwa (ubadilishaji wa vifaa)",
        "Ubadilishaji wa vifaa (sehemu za muda wote wa matumizi, IRC 2011).",
    ),
    "expenditure_on_direct_support": (
        "Matumizi ya usaidizi wa moja kwa moja",
        "Usaidizi wa mamlaka ya mahali, 0 pale ambapo haukuwekwa (sehemu za muda wote wa matumizi, IRC 2011).",
    ),
    "residual_taken_off": ("Thamani inayobaki, iliyotolewa", "Thamani ya miundombinu mwishoni."),
    "cost_of_capital": (
        "Gharama ya mtaji (malipo ya mkopo kutoa mkopo)",
        "Thamani ya sasa ya malipo ya mkopo kutoa mkopo (sehemu za muda wote wa matumizi, IRC 2011).",
    ),
    "tariff_operation": (
        "Bei ya maji inayogharamia uendeshaji",
        "Bei ya maji isiyobadilika, kwa fedha ya mwaka 0, inayolipia nishati, huduma, matengenezo na gharama "
        "nyingine za kila mwaka.",
    ),
    "tariff_operation_and_renewals": (
        "Bei ya maji inayogharamia uendeshaji na ubadilishaji wa vifaa",
        "Hiyohiyo pamoja na akiba isiyobadilika ya ubadilishaji wa vifaa.",
    ),
    "tariff_full": (
        "Bei ya maji inayogharamia kila kitu (kurejesha gharama zote)",
        "Hiyohiyo pamoja na usaidizi wa moja kwa moja na gharama za uwekezaji kutoa ruzuku na thamani inayobaki, kwa "
        "kiwango cha punguzo.",
    ),
    "household_m3_per_month": (
        "Maji ambayo kaya huhitaji",
        "Maji kwa mtu kwa siku, kama katika mahitaji, mara watu wa kaya; wanafunzi wa shule wameachwa kando.",
    ),
    "bill_operation": ("Bili kwa bei ya uendeshaji", "Maji ambayo kaya huhitaji kwa bei hiyo."),
    "bill_operation_and_renewals": (
        "Bili kwa bei ya uendeshaji na ubadilishaji wa vifaa",
        "Maji ambayo kaya huhitaji kwa bei hiyo.",
    ),
    "bill_full": ("Bili kwa bei ya kila kitu", "Maji ambayo kaya huhitaji kwa bei hiyo."),
    "income_share_operation": ("Ya kipato cha kati: uendeshaji", "Bili hiyo ikigawanywa kwa kipato cha kaya ya kati."),
    "income_share_operation_and_renewals": (
        "Ya kipato cha kati: uendeshaji na ubadilishaji wa vifaa",
        "Bili hiyo ikigawanywa kwa kipato cha kaya ya kati.",
    ),
    "income_share_full": ("Ya kipato cha kati: kila kitu", "Bili hiyo ikigawanywa kwa kipato cha kaya ya kati."),
    "lowest_income_share_operation": (
        "Ya kipato cha moja ya tano maskini zaidi: uendeshaji",
        "Bili hiyo ikigawanywa kwa kipato cha kaya iliyo katika moja ya tano maskini zaidi.",
    ),
    "lowest_income_share_operation_and_renewals": (
        "Ya kipato cha moja ya tano maskini zaidi: uendeshaji na ubadilishaji wa vifaa",
        "Bili hiyo ikigawanywa kwa kipato cha kaya iliyo katika moja ya tano maskini zaidi.",
    ),
    "lowest_income_share_full": (
        "Ya kipato cha moja ya tano maskini zaidi: kila kitu",
        "Bili hiyo ikigawanywa kwa kipato cha kaya iliyo katika moja ya tano maskini zaidi.",
    ),
    "burden_mean": (
        "Mzigo wa kila mwaka, wastani",
        "Kinacholipwa mwaka 1 hadi wa mwisho, baada ya ruzuku: uendeshaji, usaidizi, ubadilishaji wa vifaa na malipo "
        "ya mkopo.",
    ),
    "burden_largest": ("Mzigo wa kila mwaka, mkubwa zaidi", "Huohuo katika mwaka ambao ni mkubwa zaidi."),
    "burden_largest_year": ("  katika mwaka", "Mwaka wa kwanza wenye mzigo huo."),
    "renewal_saving": (
        "Akiba isiyobadilika ya kila mwaka ya ubadilishaji wa vifaa",
        "Amana ndogo zaidi isiyobadilika, kwa fedha ya mwaka 0, ambayo haiachi mfuko mmoja wa ubadilishaji wote "
        "upungukiwe kamwe.",
    ),
    "renewal_fund_empty_year": (
        "  mfuko mtupu baada ya mwaka",
        "Mwaka ambao baada ya ubadilishaji wake mfuko hauna kitu.",
    ),
    "renewal_fund_left": (
        "  kinachobaki kwenye mfuko mwishoni",
        "Kilichomo kwenye mfuko baada ya mwaka wa mwisho, kwa fedha ya mwaka 0: ni cha ubadilishaji unaofuata.",
    ),
    "capital_cost_per_person": (
        "Gharama za uwekezaji kwa mtu",
        "Gharama za uwekezaji ikigawanywa kwa watu wanaohudumiwa mwaka 1.",
    ),
    "recurrent_cost_per_person": (
        "Gharama ya kila mwaka kwa mtu",
        "Uendeshaji, usaidizi wa moja kwa moja na akiba ya ubadilishaji wa vifaa, isiyobadilika, ikigawanywa kwa "
        "watu wanaohudumiwa mwaka 1.",
    ),
    "co2_kg": (
        "Kaboni dioksidi katika kipindi cha uchambuzi",
        "Ya mafuta yanayochomwa na nishati inayonunuliwa; haihesabiwi pale kigezo cha mojawapo hakikutolewa.",
    ),
    "co2_kg_per_year": ("Kaboni dioksidi, wastani", "Hiyohiyo, wastani wa miaka."),
    "co2_kg_per_m3": ("Kaboni dioksidi kwa m3 iliyotolewa", "Hiyohiyo ikigawanywa kwa maji yaliyotolewa."),
    "saving_present": (
        "Akiba katika gharama za muda wote (hasi: hugharimu zaidi)",
        "Gharama za muda wote za marejeo kutoa za hili.",
    ),
    "internal_rate_of_return_percent": (
        "Kiwango cha ndani cha faida",
        "Kiwango ambapo gharama za ziada za uwekezaji ni sawa na akiba ya baadaye dhidi ya marejeo.",
    ),
    "payback_years": (
        "Muda wa kurejesha gharama, rahisi",
        "Miaka hadi gharama za ziada za uwekezaji zirejeshwe kwa kudumu.",
    ),
    "discounted_payback_years": ("Muda wa kurejesha gharama, kwa punguzo", "Hiyohiyo kwa akiba iliyopunguzwa."),
}
