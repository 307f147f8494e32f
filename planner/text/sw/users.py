"""Kiswahili cha ukurasa 'Malipo ya watumiaji'."""

SENTENCES: dict[str, str] = {
    "page.users": "Malipo ya watumiaji",
    "users.under": (
        "Bei za maji, bili na akiba kwa {currency} za mwaka 0; mzigo wa kila mwaka kwa {currency}, {prices}. "
        "Machaguo yamo kwa mpangilio wa uendeshaji."
    ),
    "users.sentence": (
        "{option}: watumiaji hugharamia uendeshaji na ubadilishaji wa vifaa kwa {renewals} kwa m3 (uendeshaji peke "
        "yake {operation}; pamoja na usaidizi na kinachobaki cha gharama za uwekezaji baada ya ruzuku {full}). Akiba "
        "ya {saving} kwa mwaka hulipia kila ubadilishaji unapofika; bila akiba mwaka wa gharama kubwa zaidi ni mwaka "
        "{year}, kwa {largest} dhidi ya wastani wa {mean}."
    ),
    "users.sentence_no_lumps": (
        "{option}: watumiaji hugharamia uendeshaji kwa {operation} kwa m3, na pia usaidizi na kinachobaki cha "
        "gharama za uwekezaji baada ya ruzuku kwa {full}; hakuna kinachobadilishwa ndani ya kipindi cha uchambuzi, "
        "hivyo hakuna akiba inayowekwa hapa kwa kinachokuja baada yake."
    ),
    "users.part.tariff": "Bei kwa m3 inayolipiwa",
    "users.part.household": "Kaya: bili, na sehemu yake ya kipato",
    "users.part.burden": "Mzigo wa kila mwaka baada ya ruzuku, mwaka 1 hadi wa mwisho",
    "users.part.fund": "Akiba ya ubadilishaji wa vifaa",
    "users.part.person": "Kwa mtu",
    "users.tariffs": (
        "Bei isiyobadilika hulipia miaka yote kwa pamoja: pale gharama kwa m3 zinapopanda, huacha ziada katika miaka "
        "ya mwanzo ambayo ya mwisho huihitaji. Usaidizi wa moja kwa moja umo katika bei ya mwisho tu, kwa kuwa mara "
        "nyingi hubebwa na mamlaka."
    ),
    "users.income": (
        "Kikomo cha bili: 3 na 5 % ya kipato cha kaya zote hutumika kama vipimo (Fankhauser na Tepic 2005; 3 % "
        "katika UNDP Human Development Report 2006; zote kupitia chanzo cha pili). Hakuna kiwango kilichokubaliwa "
        "(AQUA 72(8), 2023, mapitio ya tafiti 79). Kinachoendelea kutumika kwa vyanzo vingine katika wiki za ukame "
        "huongezeka juu yake."
    ),
    "users.no_households": (
        "Hakuna bili kwa kaya: [households] haikutolewa (size, income_per_month na lowest_income_per_month)."
    ),
    "users.nobody_at_home": "Hakuna bili kwa kaya: hakuna mtumiaji wa maji ambaye ni watu wa nyumbani.",
    "users.fund": (
        "Akiba ni amana ndogo zaidi isiyobadilika ya mwisho wa kila mwaka ambayo haiachi mfuko upungukiwe na "
        "ubadilishaji wa mwaka wowote; wastani wa ubadilishaji wa miaka unaweza kuwa mdogo mno. Amana hupanda pamoja "
        "na bei."
    ),
    "users.income_judged": "  dhidi ya vikomo vya kawaida",
    "users.income_below": "si zaidi ya {low} %",
    "users.income_between": "kati ya {low} na {high} %",
    "users.income_above": "juu ya {high} %",
    "users.ranges": "Dhidi ya viwango vya gharama vilivyochapishwa",
    "users.low": "Kutoka ({currency})",
    "users.high": "Hadi ({currency})",
    "users.range_below": "! chini: inaonekana kuwa bajeti ni ndogo mno",
    "users.range_above": "juu",
    "users.range_within": "ndani",
    "users.ranges_source": (
        "Miradi midogo na ya kati ya mabomba kutoka visima virefu vyenye pampu, mikubwa zaidi juu ya watu 5,000: IRC "
        "WASHCost, cost benchmarks, 2012, kwa dola za Marekani za 2011, kupitia chanzo cha pili, zilizoletwa kwenye "
        "bei zinazosemwa na finance.usd_prices_since_2011. Kinachochotwa na mifugo, mashamba na wengine kimo katika "
        "gharama hapa, lakini si katika sehemu ya mtu yeyote."
    ),
    "users.ranges_source_2011": (
        "Miradi midogo na ya kati ya mabomba kutoka visima virefu vyenye pampu, mikubwa zaidi juu ya watu 5,000: IRC "
        "WASHCost, cost benchmarks, 2012, kwa dola za Marekani za 2011 kama zilivyochapishwa, kupitia chanzo cha "
        "pili: za leo zingekuwa juu zaidi (toa finance.usd_prices_since_2011). Kinachochotwa na mifugo, mashamba na "
        "wengine kimo katika gharama hapa, lakini si katika sehemu ya mtu yeyote."
    ),
    "users.ranges_not_compared": (
        "Havikulinganishwa: viwango vilivyochapishwa ni kwa dola za Marekani, bei ni kwa {currency}. Kwa "
        "finance.programme_currency = 'USD' na finance.exchange_rate gharama za uwekezaji kwa mtu hulinganishwa na "
        "dola za Marekani {low} hadi {high} za 2011 na gharama za kila mwaka kwa mtu na {low_yearly} hadi "
        "{high_yearly} (IRC WASHCost, cost benchmarks, 2012, kupitia chanzo cha pili)."
    ),
    "users.programme": "Kwa {programme}, sarafu ya programu",
    "users.by_year": "Kwa mwaka",
    "users.operation_cost": "Uendeshaji ({currency})",
    "users.burden": "Mzigo wa kila mwaka ({currency})",
    "users.renewals": "Ubadilishaji wa vifaa, fedha za mwaka 0 ({currency})",
    "users.renewals_present": "Thamani kwa riba ya mfuko ({currency})",
    "users.renewals_due": "Hiyohiyo, iliyojumlishwa ({currency})",
    "users.saving_needed": "Akiba isiyobadilika inayohitajika hadi hapo ({currency}/mwaka)",
    "users.fund_balance": "Mfuko mwishoni mwa mwaka ({currency})",
}
