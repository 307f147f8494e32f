"""Kiswahili cha jaribio la kusukuma maji na upimaji wa maji: kaguzi zake, na ukurasa unaoonyesha vyote."""

SENTENCES: dict[str, str] = {
    "page.records": "Majaribio na ubora",
    "records.under": (
        "Jaribio la kusukuma maji lililorekodiwa, na upimaji wa maji dhidi ya viwango elekezi vya maji ya kunywa."
    ),
    "records.test": "Jaribio la kusukuma maji",
    "records.no_test": "Hakuna jaribio la mtiririko usiobadilika lililorekodiwa ([pumping_test] haikutolewa).",
    "records.steps": "Jaribio la hatua kwa hatua",
    "records.step": "Hatua",
    "records.step_flow": "Mtiririko (m3/h)",
    "records.step_drawdown": "Kushuka kwa kina cha maji (m)",
    "records.step_specific": "Mtiririko kwa kila mita ya kushuka (m3/h kwa m)",
    "records.item": "Kumbukumbu",
    "records.value": "Thamani",
    "records.quality": "Ubora wa maji",
    "records.no_quality": "Maji hayakupimwa, au matokeo hayakutolewa ([water_quality]).",
    "records.not_drunk": "Hakuna anayekunywa maji haya, hivyo hayahukumiwi kama maji ya kunywa.",
    "records.analysed": "Sampuli ya {date}, iliyopimwa na {laboratory}.",
    "records.parameter": "Kigezo",
    "records.result": "Matokeo",
    "records.limit": "Kiwango elekezi",
    "records.kind": "Kinahusu",
    "records.kind_health": "afya",
    "records.kind_acceptance": "ladha, madoa, miundombinu",
    "records.verdict": "Uamuzi",
    "records.source": "Chanzo",
    "records.second_hand": "WHO 2022, kupitia chanzo cha pili",
    "records.from_memory": "WHO 2022, kwa kumbukumbu: thibitisha",
    "records.not_tested": "haikupimwa",
    "records.national": (
        "WHO 2022: Guidelines for drinking-water quality, toleo la 4 likijumuisha nyongeza ya kwanza na ya pili. Si "
        "sheria: kiwango cha nchi yenyewe hutangulia, na matokeo huhusu sampuli yake pekee. Hakuna kilicho hapa "
        "kinachosema kuwa maji ni salama."
    ),
    "quality.range": "{low} hadi {high}",
    "quality.compared": "Maji ghafi dhidi ya kiwango elekezi cha maji ya kunywa: {name}",
    "quality.compared_nitrogen": "Nitrati kwa kiwango chake elekezi na nitriti kwa chake, kwa pamoja",
    "quality.source": (
        "WHO, Guidelines for drinking-water quality, toleo la 4 pamoja na nyongeza, 2022, kupitia chanzo cha pili; "
        "viwango vya taifa hutangulia"
    ),
    "quality.source_from_memory": (
        "WHO, Guidelines for drinking-water quality, toleo la 4 pamoja na nyongeza, 2022, kwa kumbukumbu: "
        "kithibitishe; viwango vya taifa hutangulia"
    ),
    "quality.why.health": "Hudhuru afya ya wanaokunywa maji haya, mengine bila kuonekana kwa miaka.",
    "quality.why.acceptance": (
        "Watu huacha maji yenye ladha, harufu au madoa na kwenda kwenye maji yanayoweza kuwa si salama; pia huchafua "
        "miundombinu."
    ),
    "quality.remedy.health": (
        "yasinywewe wala kupikiwa bila kutibiwa kwa njia iliyothibitishwa kuyashusha chini ya kikomo, kwani "
        "kuchemsha hakuondoi; chukua sampuli tena, uliza mamlaka ya afya, au tafuta chanzo kingine"
    ),
    "quality.remedy.nitrate_mg_l": (
        "yasinywewe, na kamwe si kwa chupa ya mtoto mchanga, bila kutibiwa kwa njia iliyothibitishwa kuyashusha "
        "chini ya kikomo: kuchemsha huongeza tatizo; weka vyoo na mifugo mbali, uliza mamlaka ya afya, au tafuta "
        "chanzo kingine"
    ),
    "quality.remedy.nitrite_mg_l": (
        "yasinywewe, na kamwe si kwa chupa ya mtoto mchanga, bila kutibiwa kwa njia iliyothibitishwa kuyashusha "
        "chini ya kikomo: kuchemsha huongeza tatizo; uliza mamlaka ya afya, au tafuta chanzo kingine"
    ),
    "quality.remedy.e_coli_per_100ml": (
        "yasinywewe kabla ya kuua vijidudu: tafuta vinavyoingia (kifuniko, muhuri, vyoo, mifugo), ua vijidudu kwenye "
        "kisima kirefu, mabomba na tanki, na tumia maji pale tu sampuli mpya zinapokuwa safi; uliza mamlaka ya afya"
    ),
    "quality.remedy.acceptance": (
        "chukua sampuli tena, na uliza watumiaji na mamlaka ya afya kama yanahitaji kutibiwa"
    ),
    "check.quality_e_coli_per_100ml.what": "E. coli au koliformi zinazostahimili joto",
    "check.quality_arsenic_mg_l.what": "arseniki",
    "check.quality_fluoride_mg_l.what": "floridi",
    "check.quality_nitrate_mg_l.what": "nitrati, kama NO3",
    "check.quality_nitrite_mg_l.what": "nitriti, kama NO2",
    "check.quality_manganese_mg_l.what": "manganisi",
    "check.quality_lead_mg_l.what": "risasi",
    "check.quality_uranium_mg_l.what": "urani",
    "check.quality_boron_mg_l.what": "boroni",
    "check.quality_chromium_mg_l.what": "kromi",
    "check.quality_cadmium_mg_l.what": "kadimi",
    "check.quality_iron_mg_l.what": "chuma",
    "check.quality_chloride_mg_l.what": "kloridi",
    "check.quality_sulfate_mg_l.what": "salfeti",
    "check.quality_sodium_mg_l.what": "sodiamu",
    "check.quality_hardness_mg_l.what": "jumla ya ugumu, kama CaCO3",
    "check.quality_dissolved_solids_mg_l.what": "jumla ya yabisi zilizoyeyuka",
    "check.quality_turbidity_ntu.what": "uchafu wa tope",
    "check.quality_ph.what": "pH",
    "check.quality_nitrate_and_nitrite.what": "nitrati na nitriti kwa pamoja",
    "check.water_analysis.what": "upimaji wa maji",
    "check.water_analysis.compared": "Upimaji wa maji",
    "check.water_analysis.compared_in_part": "Sehemu iliyobaki ya upimaji wa maji",
    "check.water_analysis.why": (
        "Maji maangavu yanaweza kuwa na vitu vinavyowaugua watu; hakuna awezaye kuonja vijidudu, arseniki au floridi."
    ),
    "check.water_analysis.look_for": (
        "havikupimwa: {names}; maabara ichukue na kupima sampuli kabla mtu yeyote hajanywa maji au kulipia miundombinu"
    ),
    "check.water_analysis.source": (
        "orodha ya chini kabisa inayopendekezwa hapa, si kiwango rasmi; vikomo vya WHO, 2022"
    ),
    "check.pumping_test.what": "jaribio la kusukuma maji",
    "check.yield_of_test.what": "kiasi salama cha kusukuma dhidi ya jaribio",
    "check.recovery.what": "kurejea kwa maji baada ya jaribio",
    "check.pumping_test.compared": "Muda wa jaribio la mtiririko usiobadilika",
    "check.pumping_test.compared_not": "Kumbukumbu ya jaribio la mtiririko usiobadilika",
    "check.pumping_test.why": (
        "Jaribio fupi huonyesha maji yaliyohifadhiwa kando ya kisima kirefu, si yale yanayoingia humo wakati wote wa "
        "kiangazi."
    ),
    "check.pumping_test.look_for": (
        "muulize mchimbaji au ofisi ya maji kumbukumbu ya jaribio la mtiririko usiobadilika wa saa {hours} au zaidi, "
        "pamoja na kurejea kwa maji baadaye"
    ),
    "check.pumping_test.remedy": (
        "fanya jaribio kwa mtiririko usiobadilika kwa saa {hours} au zaidi, na fuatilia kurejea kwa maji"
    ),
    "check.pumping_test.source": (
        "saa 24: mwongozo wa usanifu wa Wizara ya Maji ya Tanzania; saa 24 hadi 72: SANS 10299-4:2003; vyote kupitia "
        "chanzo cha pili"
    ),
    "check.yield_of_test.compared": "Kiasi salama cha kusukuma, kama sehemu ya {flow} m3/h zilizodumishwa na jaribio",
    "check.yield_of_test.why": (
        "Kile ambacho kisima kirefu huvumilia kwa siku katika msimu mmoja huenda kisikivumilie kwa miaka."
    ),
    "check.yield_of_test.remedy": (
        "panga kwa si zaidi ya {flow} m3/h, au mtaalamu wa maji chini ya ardhi akokotoe kiasi salama kutokana na "
        "jaribio na kurejea kwa maji"
    ),
    "check.yield_of_test.source": "60 hadi 70 % ni desturi ya kazi, kwa kumbukumbu, hakuna chanzo",
    "check.recovery.compared": (
        "Jinsi maji yalivyobaki chini ya kina chake cha utulivu ufuatiliaji wa kurejea ulipoisha"
    ),
    "check.recovery.why": "Maji yasiyorejea yalichukuliwa kutoka akiba ya mwamba, na hayatadumu.",
    "check.recovery.remedy": (
        "fuatilia kurejea kwa maji kwa muda mrefu zaidi; maji yakibaki chini, panga kwa kiasi kidogo zaidi na "
        "mtaalamu wa maji chini ya ardhi akitathmini chanzo"
    ),
    "check.recovery.source": "desturi kufuatana na SANS 10299-4:2003, kupitia chanzo cha pili",
}
