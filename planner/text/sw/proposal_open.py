"""Kiswahili cha mistari ya pendekezo inayoomba taarifa ambayo utafiti hauna, dokezo likiwa katika mabano."""

SENTENCES: dict[str, str] = {
    "proposal.open.applicant": (
        "Ya kukamilishwa: nani anaomba, na kwa nani [jina, anwani, mawasiliano, hadhi ya kisheria]"
    ),
    "proposal.open.prepared_by": "Ya kukamilishwa: nani aliandaa utafiti [jina, fani, shirika]",
    "proposal.open.visit_date": "Ya kukamilishwa: lini eneo lilitembelewa [siku, na nani]",
    "proposal.open.revision": "Ya kukamilishwa: toleo la pendekezo hili [namba au siku]",
    "proposal.open.prices": (
        "Ya kukamilishwa: gharama za kujenga na kuendesha miundombinu [bei haijawekwa, hivyo utafiti hauna gharama]"
    ),
    "proposal.open.unpriced": (
        "Ya kukamilishwa: bajeti haijakamilika, bei haijawekwa kwa vifuatavyo: {names} [bei za wauzaji]"
    ),
    "proposal.open.grant": (
        "Ya kukamilishwa: kiasi kinachoombwa, na kutoka kwa nani [sehemu ya gharama za uwekezaji, mfadhili]"
    ),
    "proposal.open.funder": "Ya kukamilishwa: mfadhili, na lini kiasi kinahitajika [jina, awamu]",
    "proposal.open.growth": (
        "Ya kukamilishwa: ongezeko la mahitaji [halikutolewa, hivyo halikuhesabiwa; sensa, uandikishaji, mipango]"
    ),
    "proposal.open.leakage": (
        "Ya kukamilishwa: maji yanayopotea kati ya tanki na mabomba ya kuchotea [hayakutolewa, hivyo hayakuhesabiwa; "
        "usomaji wa mita]"
    ),
    "proposal.open.litres": (
        "Ya kukamilishwa: maji kwa mtu kwa siku [hayakutolewa, hivyo takwimu ya kawaida imehesabiwa; kiwango cha "
        "taifa, utafiti wa kaya]"
    ),
    "proposal.open.present_sources": (
        "Ya kukamilishwa: mahali watu wanapochota maji leo [vyanzo, umbali, foleni, bei, ubora, miezi ya kiangazi]"
    ),
    "proposal.open.baseline": (
        "Ya kukamilishwa: hali ya awali kabla ya mradi [utafiti wa kaya: lita, dakika na fedha ambazo kaya hutumia "
        "kwa maji]"
    ),
    "proposal.open.inclusion": (
        "Ya kukamilishwa: nani anaweza kuachwa nje, na nini kinafanywa kuhusu hilo [wanawake, maskini zaidi, wenye "
        "ulemavu, wafugaji, wapangaji]"
    ),
    "proposal.open.consent": (
        "Ya kukamilishwa: ridhaa ya watumiaji [siku na kumbukumbu za mkutano, nani alikuwepo, wanachangia nini]"
    ),
    "proposal.open.coordination": (
        "Ya kukamilishwa: makubaliano na mamlaka na miradi mingine ya jirani [barua, mpango unaohusika]"
    ),
    "proposal.open.borehole": (
        "Ya kukamilishwa: kuhusu kisima kirefu hivi havikutolewa: {names} [ripoti ya mchimbaji, jaribio, kibali]"
    ),
    "proposal.open.completion_report": (
        "Ya kukamilishwa: ripoti ya uchimbaji [mchimbaji na leseni, tabaka, kesingi, vichujio, muhuri, kuua vijidudu]"
    ),
    "proposal.open.hydrogeologist": (
        "Ya kukamilishwa: ripoti ya mtaalamu wa maji chini ya ardhi [jina, siku, kiasi na saa zinazopendekezwa, "
        "athari kwa visima vingine]"
    ),
    "proposal.open.pumping_test": (
        "Ya kukamilishwa: jaribio la kusukuma maji la mtiririko usiobadilika pamoja na kurejea kwa maji [siku, nani "
        "alijaribu, mtiririko, saa, vina: hakuna lililorekodiwa]"
    ),
    "proposal.open.test_record": (
        "Ya kukamilishwa: kuhusu jaribio la kusukuma maji hivi havikutolewa: {names} [kumbukumbu ya jaribio]"
    ),
    "proposal.open.quality": (
        "Ya kukamilishwa: upimaji wa maji, hakuna uliorekodiwa [maabara, siku, matokeo ya angalau {names}]"
    ),
    "proposal.open.quality_rest": "Ya kukamilishwa: hivi havikupimwa: {names} [maabara, siku, matokeo]",
    "proposal.open.quality_for_use": (
        "Ya kukamilishwa: upimaji wa maji kwa matumizi yake [maabara, siku, chumvi, sodiamu, chuma, yabisi]"
    ),
    "proposal.open.laboratory": "Ya kukamilishwa: nani alipima maji, na lini [maabara, siku ya sampuli]",
    "proposal.open.treatment": (
        "Ya kukamilishwa: jinsi maji yanavyoshushwa chini ya viwango elekezi [matibabu, gharama yake, nani huyaendesha]"
    ),
    "proposal.open.water_permit": (
        "Ya kukamilishwa: kibali cha kuchukua maji [mamlaka, namba, siku, kiasi kwa siku, hadi lini]"
    ),
    "proposal.open.land": (
        "Ya kukamilishwa: haki ya ardhi ya kisima kirefu, bomba kuu, safu ya paneli na tanki [mmiliki, hati au "
        "makubaliano, haki ya njia]"
    ),
    "proposal.open.pump": (
        "Ya kukamilishwa: mtengenezaji na aina ya pampu [bamba, karatasi ya taarifa pamoja na mkondo wake, dhamana]"
    ),
    "proposal.open.profile": (
        "Ya kukamilishwa: wasifu wa bomba kuu [minuko kwenye njia; haikutolewa, hivyo ncha zake tu ndizo zimehesabiwa]"
    ),
    "proposal.open.drawings": (
        "Ya kukamilishwa: michoro [ramani, mpangilio, mdomo wa kisima kirefu, mchoro wa umeme wa mstari mmoja, tanki "
        "na vituo vya kuchotea maji]"
    ),
    "proposal.open.array_place": (
        "Ya kukamilishwa: mahali pa safu ya paneli [kivuli mwaka mzima, msingi, upepo, uzio, nani huilinda]"
    ),
    "proposal.open.tank_structure": (
        "Ya kukamilishwa: usanifu wa mnara au msingi wa tanki na mhandisi wa miundo [ardhi, upepo, tetemeko la ardhi]"
    ),
    "proposal.open.other_ways": (
        "Ya kukamilishwa: njia nyingine zilizoangaliwa, na kwa nini hazikuchaguliwa [pampu ya mkono, chemchemi, "
        "mvua, kupanua mtandao]"
    ),
    "proposal.open.percentages": (
        "Ya kukamilishwa: hivi havikutolewa: {names} [havijahesabiwa; sema pale bei zinapovijumuisha]"
    ),
    "proposal.open.price_date": "Ya kukamilishwa: lini bei ziliulizwa [siku, bei za wauzaji, zinadumu kwa muda gani]",
    "proposal.open.exchange_rate": (
        "Ya kukamilishwa: kiwango cha kubadilisha {currency} kwa sarafu ya mfadhili [kiwango, siku, nani hubeba "
        "mabadiliko yake]"
    ),
    "proposal.open.contributions": (
        "Ya kukamilishwa: michango ya fedha na ya vitu [watumiaji, serikali, wengine; kiasi, nguvu kazi, vifaa]"
    ),
    "proposal.open.procurement": (
        "Ya kukamilishwa: mpango wa ununuzi [mafungu, jinsi zabuni zinavyotangazwa, nani huamua, dhamana, vipuri "
        "kwenye agizo]"
    ),
    "proposal.open.timetable": (
        "Ya kukamilishwa: ratiba [vibali, zabuni, uwasilishaji, ujenzi, makabidhiano, mwisho wa dhamana]"
    ),
    "proposal.open.tariff_unpriced": (
        "Ya kukamilishwa: kiasi ambacho watumiaji wanapaswa kulipa kwa uendeshaji na ubadilishaji wa vifaa [hutokana "
        "na bei, ambazo hazikuwekwa]"
    ),
    "proposal.open.tariff": (
        "Ya kukamilishwa: bei ya maji iliyokubaliwa na watumiaji [kwa m3, ndoo au mwezi; nani huiweka]"
    ),
    "proposal.open.willingness": (
        "Ya kukamilishwa: kiasi ambacho watumiaji wanaweza na wako tayari kulipa [kinacholipwa leo, utafiti wa kaya, "
        "msaada kwa maskini zaidi]"
    ),
    "proposal.open.savings_account": (
        "Ya kukamilishwa: akaunti ya akiba ya ubadilishaji wa vifaa [benki, nani husaini, riba, nani hukagua]"
    ),
    "proposal.open.households": (
        "Ya kukamilishwa: kaya zinazolipa [watu kwa kaya, kipato cha kaya ya kati na cha maskini]"
    ),
    "proposal.open.income": "Ya kukamilishwa: kipato cha kaya [ya kati, na moja ya sehemu ya tano maskini zaidi]",
    "proposal.open.collection": (
        "Ya kukamilishwa: sehemu ya maji inayolipiwa [haikutolewa, hivyo yote yamehesabiwa kuwa yamelipiwa]"
    ),
    "proposal.open.stockist": "Ya kukamilishwa: nani huuza vipuri [jina, umbali, sehemu zipi, siku hadi kwenye eneo]",
    "proposal.open.operator": "Ya kukamilishwa: mwendeshaji [jina, mafunzo, saa kwa wiki, malipo, msaidizi]",
    "proposal.open.committee": (
        "Ya kukamilishwa: chombo kinachowajibika kwa mradi wa maji [kamati au shirika, kanuni ndogo, wanachama, "
        "wanawake ndani yake]"
    ),
    "proposal.open.electrician": (
        "Ya kukamilishwa: fundi umeme mwenye leseni na kikundi kinachonyanyua pampu [majina, umbali, bei ya kuitwa]"
    ),
    "proposal.open.operation_contract": (
        "Ya kukamilishwa: mkataba wa huduma na dhamana [na nani, muda gani, muda wa ukarabati]"
    ),
    "proposal.open.support": (
        "Ya kukamilishwa: usaidizi wa mamlaka ya mahali [ziara kwa mwaka, mafunzo, fedha; hakuna kilichowekwa]"
    ),
    "proposal.open.theft": "Ya kukamilishwa: ulinzi dhidi ya wizi na uharibifu [mahali, bolti, mlinzi, bima]",
    "proposal.open.grid_factor": (
        "Ya kukamilishwa: kaboni dioksidi kwa kWh ya gridi [kiwango cha taifa, mwaka na aina yake; haijahesabiwa hapa]"
    ),
    "proposal.open.grid_factor_source": (
        "Ya kukamilishwa: zinatoka wapi {factor} kg za kaboni dioksidi kwa kWh za gridi [chanzo, mwaka, aina]"
    ),
    "proposal.open.screening": "Ya kukamilishwa: tathmini ya mazingira [mamlaka, kundi, siku, leseni]",
    "proposal.open.protection": (
        "Ya kukamilishwa: ulinzi wa mdomo wa kisima kirefu [umbali hadi vyoo, mifugo, mafuta na makaburi; uzio, "
        "mifereji]"
    ),
    "proposal.open.waste_water": (
        "Ya kukamilishwa: maji yaliyomwagika na maji taka yanakwenda wapi [mfereji, shimo la kunyonya, birika la "
        "mifugo]"
    ),
    "proposal.open.end_of_life": (
        "Ya kukamilishwa: kinachofanyiwa paneli, pampu, betri na oili vilivyochakaa [nani huvirudisha]"
    ),
    "proposal.open.safeguards": (
        "Ya kukamilishwa: kinga za kijamii [ardhi iliyochukuliwa, kazi za watoto, usalama kwenye eneo la ujenzi, "
        "malalamiko]"
    ),
    "proposal.open.other_risks": (
        "Ya kukamilishwa: hatari ambazo hakuna utafiti unaoziona [migogoro, wizi, siasa, kiwango cha kubadilisha "
        "fedha, muuzaji; nani huzibeba]"
    ),
    "proposal.open.targets": "Ya kukamilishwa: malengo ya viashiria vilivyoandikwa 'kukubaliana' [namba, hadi lini]",
    "proposal.open.monitoring": (
        "Ya kukamilishwa: nani hupima viashiria [hali ya awali, mara ngapi, nani humpa nani ripoti, bajeti yake]"
    ),
    "proposal.open.logframe": (
        "Ya kukamilishwa: mfumo wa kimantiki (logframe) kwa fomu ya mfadhili [lengo kuu, kusudi, matokeo, shughuli]"
    ),
    "proposal.open.exit": (
        "Ya kukamilishwa: kinachofuata ufadhili unapoisha [nani humiliki miundombinu, nani hulipa, nani huitwa]"
    ),
    "proposal.open.checks": (
        "Ya kukamilishwa, {topic}: hivi havikukaguliwa kwa kukosa takwimu: {names} [bamba, karatasi ya taarifa, kipimo]"
    ),
    "proposal.open.papers": (
        "Ya kukamilishwa: hati za kuambatishwa [kumbukumbu ya jaribio, karatasi ya maabara, bei za wauzaji, vibali, "
        "ramani, kumbukumbu za ridhaa, michoro]"
    ),
}
