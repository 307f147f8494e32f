"""Kiswahili cha kazi za matunzo na vipuri: nani hufanya nini, lini, na kwa kufuata nani."""

SENTENCES: dict[str, str] = {
    "proposal.upkeep.heading": "Kazi za matunzo",
    "proposal.upkeep.column.of": "Miundombinu",
    "proposal.upkeep.column.task": "Kazi",
    "proposal.upkeep.column.by": "Na nani",
    "proposal.upkeep.column.basis": "Msingi",
    "proposal.upkeep.daily": "Kila siku",
    "proposal.upkeep.weekly": "Kila wiki",
    "proposal.upkeep.monthly": "Kila wiki mbili hadi nne",
    "proposal.upkeep.quarterly": "Kila robo mwaka",
    "proposal.upkeep.yearly": "Kila mwaka",
    "proposal.upkeep.years": "Kila miaka mitano hadi kumi",
    "proposal.upkeep.of.works": "kisima kirefu, pampu, mabomba, tanki",
    "proposal.upkeep.of.solar": "Safu ya paneli",
    "proposal.upkeep.of.grid": "muunganisho wa gridi",
    "proposal.upkeep.of.generator": "jenereta",
    "proposal.upkeep.sources": (
        "Nani hufanya kazi ni desturi ya kazi, hakuna chanzo; ibadilishe kulingana na walio pale."
    ),
    "proposal.spares.heading": "Vipuri (desturi ya kazi, hakuna chanzo)",
    "proposal.spares.kept": "Huwekwa",
    "proposal.spares.parts": "Sehemu",
    "proposal.spares.on_site": "kwenye eneo",
    "proposal.spares.in_district": "wilayani, moja kwa karibu miradi kumi",
    "proposal.spares.on_site.works": (
        "swichi ya boya na kihisi cha kina, vali ya kuzuia maji kurudi, vali ya lango, viunganishi vya bomba, washa "
        "za bomba la kuchotea, seti ya kuunga waya, kikata umeme cha mzigo uliozidi"
    ),
    "proposal.spares.on_site.solar": (
        "fyuzi, katriji ya kinga dhidi ya radi, viunganishi na zana ya kuvibana, paneli moja ya aina ileile"
    ),
    "proposal.spares.on_site.grid": "kontakta, fyuzi, katriji ya kinga dhidi ya radi",
    "proposal.spares.on_site.generator": "oili, vichujio vya oili, mafuta na hewa, mkanda, betri ya kuwashia",
    "proposal.spares.in_district.works": (
        "sehemu ya pampu, mota na kidhibiti, ambavyo huchukua muda mrefu zaidi kufika"
    ),
    "proposal.upkeep.daily.works.task": "Soma mita na shinikizo; tafuta uvujaji, angalia mabomba ya kuchotea",
    "proposal.upkeep.daily.works.by": "mwendeshaji",
    "proposal.upkeep.daily.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.daily.solar.task": "Hakikisha inafanya kazi; angalia taa za hitilafu",
    "proposal.upkeep.daily.solar.by": "mwendeshaji",
    "proposal.upkeep.daily.solar.basis": (
        "GIZ na FAO, matunzo ya umwagiliaji wa nishati ya jua, kupitia chanzo cha pili"
    ),
    "proposal.upkeep.daily.grid.task": "Angalia volti na taa za fezi",
    "proposal.upkeep.daily.grid.by": "mwendeshaji",
    "proposal.upkeep.daily.grid.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.daily.generator.task": (
        "Oili, maji ya kupoza, mafuta na uvujaji kabla ya kuwasha; andika saa na lita"
    ),
    "proposal.upkeep.daily.generator.by": "mwendeshaji",
    "proposal.upkeep.daily.generator.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.weekly.works.task": "Kiasi cha maji kwenye tanki, swichi ya boya, uzio na vifuniko",
    "proposal.upkeep.weekly.works.by": "mwendeshaji",
    "proposal.upkeep.weekly.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.weekly.solar.task": "Angalia nishati iliyopatikana, fremu na kidhibiti, bila kukifungua",
    "proposal.upkeep.weekly.solar.by": "mwendeshaji",
    "proposal.upkeep.weekly.solar.basis": (
        "GIZ na FAO, matunzo ya umwagiliaji wa nishati ya jua, kupitia chanzo cha pili"
    ),
    "proposal.upkeep.weekly.generator.task": "Angalia betri",
    "proposal.upkeep.weekly.generator.by": "mwendeshaji",
    "proposal.upkeep.weekly.generator.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.monthly.works.task": (
        "Andika kina cha maji wakati wa kusukuma na m3 kwa kWh; ijulishe kamati kuhusu mwelekeo"
    ),
    "proposal.upkeep.monthly.works.by": "mwendeshaji",
    "proposal.upkeep.monthly.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.monthly.solar.task": "Osha paneli wakati wa ubaridi wa siku, ukiwa ardhini, bila kuzikanyaga",
    "proposal.upkeep.monthly.solar.by": "mwendeshaji",
    "proposal.upkeep.monthly.solar.basis": (
        "GIZ na FAO, matunzo ya umwagiliaji wa nishati ya jua, kupitia chanzo cha pili"
    ),
    "proposal.upkeep.monthly.generator.task": (
        "Likiwa la akiba: liendeshe kwa dakika 30 kwa theluthi moja ya uwezo wake au zaidi"
    ),
    "proposal.upkeep.monthly.generator.by": "mwendeshaji",
    "proposal.upkeep.monthly.generator.basis": (
        "kila siku 30: US Army TM 9-6115-464-12; mzigo: NFPA 110; vyote kupitia chanzo cha pili"
    ),
    "proposal.upkeep.quarterly.works.task": "Pima klorini na E. coli; zungusha kila vali",
    "proposal.upkeep.quarterly.works.by": "mwendeshaji pamoja na ofisi ya afya",
    "proposal.upkeep.quarterly.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.quarterly.solar.task": "Bolti, nyaya, kivuli na mimea",
    "proposal.upkeep.quarterly.solar.by": "mwendeshaji",
    "proposal.upkeep.quarterly.solar.basis": (
        "GIZ na FAO, matunzo ya umwagiliaji wa nishati ya jua, kupitia chanzo cha pili"
    ),
    "proposal.upkeep.quarterly.grid.task": "Viunganishi, vumbi kwenye paneli ya umeme",
    "proposal.upkeep.quarterly.grid.by": "fundi umeme mwenye leseni",
    "proposal.upkeep.quarterly.grid.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.quarterly.generator.task": "Kichujio cha hewa, mikanda, kutoa maji ya kichujio cha mafuta",
    "proposal.upkeep.quarterly.generator.by": "fundi mitambo",
    "proposal.upkeep.quarterly.generator.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.yearly.works.task": (
        "Kina cha maji yakiwa tulivu wakati wa kiangazi; tanki likimwagwa, kusuguliwa, kuuliwa vijidudu; mita "
        "ikijaribiwa; insulesheni ya mota"
    ),
    "proposal.upkeep.yearly.works.by": "kikundi kilichofunzwa",
    "proposal.upkeep.yearly.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.yearly.solar.task": (
        "Volti na mkondo wa kila mfululizo, insulesheni, ukinzani wa ardhi, kinga dhidi ya radi"
    ),
    "proposal.upkeep.yearly.solar.by": "fundi umeme mwenye leseni",
    "proposal.upkeep.yearly.solar.basis": (
        "GIZ na FAO, matunzo ya umwagiliaji wa nishati ya jua, kupitia chanzo cha pili"
    ),
    "proposal.upkeep.yearly.grid.task": "Ukinzani wa ardhi, vikata umeme na kifaa cha kukata umeme unaovuja (RCD)",
    "proposal.upkeep.yearly.grid.by": "fundi umeme mwenye leseni",
    "proposal.upkeep.yearly.grid.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.yearly.generator.task": "Huduma kamili na jaribio chini ya mzigo",
    "proposal.upkeep.yearly.generator.by": "fundi mitambo",
    "proposal.upkeep.yearly.generator.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.years.works.task": (
        "Pampu na bomba la kisimani vikinyanyuliwa; kisima kirefu kikijaribiwa upya pale mtiririko wake kwa kila "
        "mita ya kushuka umepungua kwa moja ya tano au zaidi"
    ),
    "proposal.upkeep.years.works.by": "kikundi kilichofunzwa",
    "proposal.upkeep.years.works.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.years.solar.task": "Feni, kidhibiti, swichi za kutenga za DC",
    "proposal.upkeep.years.solar.by": "fundi umeme mwenye leseni",
    "proposal.upkeep.years.solar.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.years.grid.task": "Sehemu za paneli ya umeme",
    "proposal.upkeep.years.grid.by": "fundi umeme mwenye leseni",
    "proposal.upkeep.years.grid.basis": "desturi ya kazi, hakuna chanzo",
    "proposal.upkeep.years.generator.task": "Ukarabati mkubwa, kwa saa zake",
    "proposal.upkeep.years.generator.by": "fundi mitambo",
    "proposal.upkeep.years.generator.basis": "desturi ya kazi, hakuna chanzo",
}
