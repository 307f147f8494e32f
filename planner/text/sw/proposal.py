"""Kiswahili cha pendekezo kwa mfadhili: sura zake, majedwali yake na kinachosemwa humo."""

SENTENCES: dict[str, str] = {
    "proposal.contents_heading": "Yaliyomo",
    "proposal.page": "Ukurasa wa {page} kati ya {pages}",
    "proposal.wrote": "Imeandikwa: {file}; mistari ya kukamilishwa: {count}.",
    "proposal.kind": "Pendekezo la mradi wa usambazaji wa maji ya pampu kutoka kisima kirefu: {place}",
    "proposal.draft": (
        "Hii ni rasimu iliyotengenezwa kutokana na utafiti wa eneo. Mistari iliyotiwa rangi ya njano inaomba taarifa "
        "ambazo utafiti hauna: weka taarifa hiyo badala ya kila mmoja, na uondoe rangi, kabla ya kuwasilisha. "
        "Takwimu nyingine zote ni za utafiti; tengeneza pendekezo tena utafiti unapobadilika."
    ),
    "proposal.version": "planner {version}",
    "proposal.foot.revision": "Toleo {revision}",
    "proposal.foot.visit": "Eneo lilitembelewa: {date}",
    "proposal.foot.between": " · ",
    "proposal.position_ne": "{latitude}° kaskazini, {longitude}° mashariki",
    "proposal.position_nw": "{latitude}° kaskazini, {longitude}° magharibi",
    "proposal.position_se": "{latitude}° kusini, {longitude}° mashariki",
    "proposal.position_sw": "{latitude}° kusini, {longitude}° magharibi",
    "proposal.record.place": "Mahali",
    "proposal.record.position": "Mahali kwenye ramani",
    "proposal.record.prepared_by": "Imeandaliwa na",
    "proposal.record.visit_date": "Eneo lilitembelewa",
    "proposal.record.price_date": "Bei za",
    "proposal.record.revision": "Toleo",
    "proposal.record.version": "Imekokotolewa na",
    "proposal.chapter.summary": "Muhtasari",
    "proposal.chapter.need": "Mahitaji na watu",
    "proposal.chapter.source": "Chanzo cha maji",
    "proposal.chapter.design": "Usanifu wa kiufundi",
    "proposal.chapter.options": "Machaguo yaliyolinganishwa",
    "proposal.chapter.budget": "Bajeti na ununuzi",
    "proposal.chapter.recovery": "Kurejesha gharama na uwezo wa kulipa",
    "proposal.chapter.operation": "Uendeshaji, matunzo na vipuri",
    "proposal.chapter.environment": "Mazingira na kaboni dioksidi",
    "proposal.chapter.risks": "Hatari za mradi",
    "proposal.chapter.indicators": "Viashiria",
    "proposal.chapter.annexes": "Viambatisho",
    "proposal.value": "Thamani",
    "proposal.column.label": "Nini",
    "proposal.column.value": "Thamani",
    "proposal.column.unit": "Kipimo",
    "proposal.column.basis": "Msingi",
    "proposal.column.source": "Chanzo",
    "proposal.column.what": "Nini",
    "proposal.column.test": "Jaribio",
    "proposal.column.option": "Chaguo la nishati",
    "proposal.grant_asked": "Kinachoombwa: ruzuku ya {grant}, {percent} % ya gharama za uwekezaji za {capital_cost}.",
    "proposal.in_brief": (
        "Tanki la {tank} m3 hujazwa; {water} m3 za maji kwa siku huwafikia watumiaji katika mwaka wa kwanza."
    ),
    "proposal.in_brief_array": (
        "Safu ya paneli ya {kwp} kWp hujengwa na tanki la {tank} m3 hujazwa; {water} m3 za maji kwa siku huwafikia "
        "watumiaji katika mwaka wa kwanza."
    ),
    "proposal.users.heading": "Nani huchota maji, katika mwaka wa kwanza, bila upotevu",
    "proposal.users.user": "Nani",
    "proposal.users.number": "Wangapi",
    "proposal.users.each": "Kwa kila mmoja kwa siku (mwezi wa juu zaidi)",
    "proposal.users.mean": "Wastani (m3/siku)",
    "proposal.users.largest": "Mwezi wa juu zaidi (m3/siku)",
    "proposal.users.people": "watu {count}",
    "proposal.users.animals": "mifugo {count}",
    "proposal.demand_grows": (
        "Utafiti huhesabu mahitaji ya {first} m3 kwa siku katika mwaka wa kwanza na {last} m3 kwa siku katika mwaka "
        "{years}, kama wastani wa mwaka."
    ),
    "proposal.demand_level": (
        "Utafiti huhesabu mahitaji ya {first} m3 kwa siku, kama wastani wa mwaka, ambayo hubaki yaleyale kwa miaka "
        "{years}."
    ),
    "proposal.target": "Kinachotakiwa: angalau {percent} % ya maji hayo, miaka yote {years} kwa pamoja.",
    "proposal.households": "Kwa watu {size} kwa kaya hizi ni karibu kaya {count}.",
    "proposal.service_ladder": (
        "Kwenye ngazi ya WHO na UNICEF (JMP, kupitia chanzo cha pili) bomba la umma linaweza kufikia kiwango cha "
        "'msingi' tu: chanzo kilichoboreshwa, maji kuchotwa ndani ya dakika 30, pamoja na foleni. 'Inayosimamiwa kwa "
        "usalama' huhitaji bomba kwenye kiwanja, maji yanapohitajika, na maji yasiyo na uchafuzi wa kinyesi wala "
        "kemikali za kipaumbele."
    ),
    "proposal.borehole": "Kisima kirefu",
    "proposal.basis.given": "imetolewa",
    "proposal.basis.worked_out": "imekokotolewa",
    "proposal.basis.assumed": "imekadiriwa",
    "proposal.permits": "Vibali na ardhi",
    "proposal.daily_limit": (
        "Si zaidi ya {limit} m3 kwa siku huchukuliwa katika utafiti: huhesabu hicho kuwa ndicho kinachoruhusiwa na "
        "kibali au jaribio."
    ),
    "proposal.design": "Linalopendekezwa ni chaguo la nishati {option} pamoja na pampu '{pump}'.",
    "proposal.design_unnamed": "Linalopendekezwa ni chaguo la nishati {option}.",
    "proposal.works": "Miundombinu",
    "proposal.acceptance": "Majaribio wakati wa makabidhiano, ya kukubaliwa katika mkataba",
    "proposal.acceptance.pump.what": "Pampu",
    "proposal.acceptance.pump.test": (
        "Mkondo wa kimo, mtiririko na nguvu inayoingia kutoka benchi la majaribio la mtengenezaji, kwa daraja la "
        "uvumilivu lililokubaliwa"
    ),
    "proposal.acceptance.pump.source": (
        "ISO 9906:2012, kwa kumbukumbu; pampu ndogo zina uvumilivu mkubwa zaidi, hivyo uliza"
    ),
    "proposal.acceptance.flow.what": "Mfumo mzima",
    "proposal.acceptance.flow.test": (
        "Mtiririko wa angalau 90 % ya uliotabiriwa kwa kimo kilekile na jua au umeme uleule, kwa nguvu tatu au kwa "
        "siku nzima yenye jua; makosa ya vyombo vya kupimia hutajwa pamoja nao"
    ),
    "proposal.acceptance.flow.source": "inapendekezwa hapa, si kiwango rasmi",
    "proposal.acceptance.array.what": "Safu ya paneli",
    "proposal.acceptance.array.test": (
        "Polariti, volti za mzunguko wazi na mkondo wa mzunguko mfupi wa kila mfululizo, uendelevu wa kutuliza umeme "
        "ardhini, insulesheni; hati za mfumo wa pampu: mtiririko kwa nguvu kwa kimo kisichobadilika"
    ),
    "proposal.acceptance.array.source": "IEC 62446-1 na IEC 62253, kupitia chanzo cha pili",
    "proposal.acceptance.works.what": "Bomba kuu, tanki na maji",
    "proposal.acceptance.works.test": (
        "Bomba kuu likijaribiwa kwa maji yenye shinikizo, tanki likiwa limejaa kwa saa 24 bila kupoteza maji, "
        "miundombinu ikiwa imeuliwa vijidudu na kusuuzwa, sampuli zisizo na E. coli; kusimama kwa pampu maji "
        "yanapokosekana na tanki linapojaa kukionyeshwa kufanya kazi; michoro kama ilivyojengwa, vipuri na zana "
        "vikikabidhiwa"
    ),
    "proposal.acceptance.works.source": "desturi ya kazi, hakuna chanzo",
    "proposal.who_pays": "Nani hulipia ujenzi wake",
    "proposal.price_date": "Bei ni za {date}.",
    "proposal.tariffs_too_low": (
        "Kuna kitu kisicho na bei (tazama bajeti), hivyo kila bei ya maji, bili na akiba iliyo chini ni ndogo mno."
    ),
    "proposal.ranges_source": (
        "Viwango: IRC WASHCost, cost benchmarks, 2012, kupitia chanzo cha pili, kwa miradi ya mabomba kutoka visima "
        "virefu vyenye pampu, vilivyoletwa kutoka dola za Marekani za 2011 hadi bei za utafiti huu."
    ),
    "proposal.ranges_source_2011": (
        "Viwango: IRC WASHCost, cost benchmarks, 2012, kupitia chanzo cha pili, kwa miradi ya mabomba kutoka visima "
        "virefu vyenye pampu, kwa dola za Marekani za 2011 kama zilivyochapishwa: kwa bei za leo vingekuwa juu zaidi."
    ),
    "proposal.by_year": "Kinacholipwa kila mwaka baada ya ruzuku, na akiba iliyobaki wakati huo",
    "proposal.water_price": "Utafiti huhesabu bei ya maji ya {currency} {price} kwa m3.",
    "proposal.operation": (
        "Miundombinu hudumu kadiri kuna mtu anayelipwa na anayeweza kuitunza. Kazi zilizo chini ni za miundombinu "
        "inayopendekezwa; maelekezo ya watengenezaji hutangulia. Kazi kwenye sehemu za umeme, kunyanyua pampu na "
        "kuingia kwenye tanki au chemba ni za vikundi vilivyofunzwa, kila chanzo cha umeme kikiwa kimefungwa kwa "
        "kufuli: tazama tahadhari kwenye viambatisho."
    ),
    "proposal.who": "Nani hufanya nini",
    "proposal.yearly_cost": "Imehesabiwa katika gharama za uendeshaji: {name}, {cost} kwa mwaka.",
    "proposal.generator_hours": (
        "Jenereta hufanya kazi karibu saa {hours} kwa mwaka; likifanyiwa huduma kila saa {interval} za kazi, hizo ni "
        "huduma {times} kwa mwaka, na angalau moja kwa mwaka bila kujali saa zake."
    ),
    "proposal.carbon.heading": "Kaboni dioksidi ya mafuta yanayochomwa na umeme unaonunuliwa",
    "proposal.carbon": "Kile kilichohitajika kutengeneza na kuleta miundombinu hakijahesabiwa.",
    "proposal.taken": (
        "Katika mwaka wa kwanza {given} m3 kati ya {wanted} m3 zinazohitajika huwafikia watumiaji; yanayovuja "
        "husukumwa juu ya hizo."
    ),
    "proposal.no_check_warns": "Hakuna ukaguzi wa eneo ulioshindikana au wenye tahadhari.",
    "proposal.risks.heading": "Kilichopatikana na kaguzi za eneo",
    "proposal.risks.turns": "Nini kingebadilisha jibu",
    "proposal.risks.risk": "Hatari",
    "proposal.risks.found": "Kilichopatikana",
    "proposal.risks.why": "Kwa nini ni muhimu",
    "proposal.risks.remedy": "Kinachopaswa kufanywa",
    "proposal.rests_more": (
        "Thamani nyingine {count} zilijaribiwa na hubadilisha kidogo zaidi; yote ambayo hayakutolewa yamo kwenye "
        "Kiambatisho B."
    ),
    "proposal.indicators.heading": "Kitakachopimwa, na kinachotarajiwa",
    "proposal.indicators.what": "Kielezo",
    "proposal.indicators.expected": "Kinachotarajiwa",
    "proposal.indicators.unit": "Kipimo",
    "proposal.indicators.measured": "Jinsi kinavyopimwa",
    "proposal.indicators.to_agree": "kukubaliana",
    "proposal.indicator.people": "Watu wanaohudumiwa katika mwaka wa kwanza",
    "proposal.indicator.people.unit": "watu",
    "proposal.indicator.people.measured": "rejista ya watumiaji, huhesabiwa tena kila mwaka",
    "proposal.indicator.m3_a_day": "Maji yanayotolewa, wastani wa mwaka wa kwanza",
    "proposal.indicator.m3_a_day.unit": "m3/siku",
    "proposal.indicator.m3_a_day.measured": "mita ya maji kwenye tanki, husomwa kila siku",
    "proposal.indicator.demand_met": "Sehemu ya maji yanayohitajika inayotolewa",
    "proposal.indicator.demand_met.unit": "% ya mahitaji",
    "proposal.indicator.demand_met.measured": "mita dhidi ya mahitaji yaliyopangwa kwa mwaka huo",
    "proposal.indicator.short_days": "Siku kwa mwaka ambazo zaidi ya moja ya kumi ya maji ya siku hukosekana",
    "proposal.indicator.short_days.unit": "siku/mwaka",
    "proposal.indicator.short_days.measured": "daftari la mwendeshaji: tanki tupu, saa bila maji",
    "proposal.indicator.longest_short_days": "Siku nyingi zaidi za namna hiyo mfululizo",
    "proposal.indicator.longest_short_days.unit": "siku",
    "proposal.indicator.longest_short_days.measured": "daftari la mwendeshaji",
    "proposal.indicator.functionality": (
        "Utendaji: ziara za bila taarifa zinazokuta maji kwenye kila bomba la kuchotea"
    ),
    "proposal.indicator.functionality.unit": "% ya ziara",
    "proposal.indicator.functionality.measured": "ziara za bila taarifa, angalau mara mbili kwa mwaka",
    "proposal.indicator.repair": "Muda kutoka kuharibika hadi kukarabatiwa",
    "proposal.indicator.repair.unit": "siku",
    "proposal.indicator.repair.measured": "daftari la mwendeshaji: siku ya taarifa, siku ya ukarabati",
    "proposal.indicator.collected": "Malipo ya maji yaliyokusanywa ikigawanywa kwa gharama ya uendeshaji na matunzo",
    "proposal.indicator.collected.unit": "uwiano",
    "proposal.indicator.collected.measured": "daftari la fedha, kila mwaka",
    "proposal.indicator.saving": "Akiba iliyowekwa kwa ubadilishaji wa vifaa",
    "proposal.indicator.saving.unit": "{currency}/mwaka",
    "proposal.indicator.saving.measured": "taarifa ya akaunti ya akiba",
    "proposal.indicator.samples": "E. coli katika sampuli ya 100 mL",
    "proposal.indicator.samples.unit": "kwa 100 mL",
    "proposal.indicator.samples.measured": (
        "sampuli kutoka tanki na mabomba ya kuchotea, angalau kila robo mwaka; kiwango elekezi cha WHO: hakuna hata "
        "moja"
    ),
    "proposal.indicator.women": "Wanawake katika kamati na katika nafasi zake kuu",
    "proposal.indicator.women.unit": "% ya wanachama",
    "proposal.indicator.women.measured": "kumbukumbu za uchaguzi",
    "proposal.indicator.operators": "Waendeshaji waliofunzwa na walio kazini",
    "proposal.indicator.operators.unit": "watu",
    "proposal.indicator.operators.measured": "orodha ya mafunzo, ziara",
    "proposal.indicator.fuel": "Mafuta yaliyochomwa",
    "proposal.indicator.fuel.unit": "L/mwaka",
    "proposal.indicator.fuel.measured": "risiti za mafuta na mita ya saa",
    "proposal.indicator.carbon": "Kaboni dioksidi ya mafuta na umeme",
    "proposal.indicator.carbon.unit": "kg/mwaka",
    "proposal.indicator.carbon.measured": "kutokana na risiti za mafuta na mita ya umeme",
    "proposal.annex.checks": "Kiambatisho A: kaguzi za eneo",
    "proposal.annex.assumptions": "Kiambatisho B: kilichokadiriwa, na kutoka wapi",
    "proposal.annex.cautions": "Kiambatisho C: tahadhari",
    "proposal.annex.papers": "Kiambatisho D: hati za kuambatishwa",
    "proposal.assumptions": (
        "Kila thamani ambayo haikutolewa kwenye eneo, kwa sehemu ya mradi inayohusika. Weka badala yake kilichopimwa "
        "au kilichokubaliwa popote inapowezekana."
    ),
    "proposal.weather": "Jua na joto: {source}.",
}
