"""Majedwali, vitambulisho visivyo na namba na machaguo ya senario, na maana ya kutokuwepo, kwa Kiingereza chake."""

PARTS: dict[str, str] = {
    "Everything the user tells us about one site": "Yote ambayo mtumiaji anatuambia kuhusu eneo moja",
    "The place on the map": "Mahali kwenye ramani",
    "Twelve monthly means": "Wastani kumi na mbili wa kila mwezi",
    "Twelve monthly means of a coarse climatology": (
        "Wastani kumi na mbili wa kila mwezi wa takwimu za jumla za hali ya hewa"
    ),
    "A weather file": "Faili la hali ya hewa",
    "Everything that is drawn from the tank": "Yote yanayochotwa kwenye tanki",
    "People": "Watu",
    "Animals": "Mifugo",
    "A watered field": "Shamba linalomwagiliwa",
    "The borehole": "Kisima kirefu",
    "One step of a pumping test": "Hatua moja ya jaribio la kusukuma maji",
    "The way from the pump to the tank": "Njia kutoka pampu hadi tanki",
    "One run of pipe": "Kipande kimoja cha bomba",
    "One point of the pipeline's route": "Nukta moja ya njia ya bomba",
    "The pump": "Pampu",
    "One point of a pump's datasheet at rated speed": (
        "Nukta moja ya karatasi ya taarifa ya pampu kwa kasi ya kawaida"
    ),
    "What else the pump's nameplate says": "Kingine kinachosemwa na bamba la taarifa za pampu",
    "The drive between the supplies and the motor": "Kidhibiti kati ya vyanzo na mota",
    "The float switch": "Swichi ya boya",
    "The sources at hand": "Vyanzo vilivyopo",
    "The PV array": "Safu ya paneli",
    "A PV module from its datasheet at standard test conditions": (
        "Paneli ya sola kutoka karatasi yake ya taarifa kwa hali sanifu za majaribio"
    ),
    "Strings of modules that face one way": "Mifululizo ya paneli inayoelekea upande mmoja",
    "The grid": "Gridi ya umeme",
    "Random failures of the grid": "Hitilafu za nasibu za gridi",
    "What the grid's energy costs": "Gharama ya nishati ya gridi",
    "Hours of the day with an energy price of their own": "Saa za siku zenye bei yake ya nishati",
    "A step of a rising-block tariff": "Ngazi ya bei inayopanda",
    "The generating set": "Jenereta",
    "The tank": "Tanki",
    "A size that can be built or bought": "Ukubwa unaoweza kujengwa au kununuliwa",
    "What counts as serving the demand": "Kinachohesabiwa kuwa kukidhi mahitaji",
    "Costs that are not the price of a thing described elsewhere": (
        "Gharama zisizo bei ya kitu kilichoelezwa mahali pengine"
    ),
    "One more line of the bill of quantities": "Mstari mmoja zaidi wa orodha ya vifaa na bei",
    "A cost that comes back each year": "Gharama inayorudi kila mwaka",
    "The rules of the money": "Kanuni za fedha",
    "Households among the people served": "Kaya kati ya watu wanaohudumiwa",
    "The constant-rate pumping test on record": "Jaribio la mtiririko usiobadilika lililorekodiwa",
    "Results of the analysis of the raw water": "Matokeo ya upimaji wa maji ghafi",
    "A few prices": "Bei chache",
    "Price of one pipe of the tables": "Bei ya bomba moja la majedwali",
    "The cables": "Nyaya",
    "The run from the array to the controller": "Waya kutoka safu ya paneli hadi kidhibiti",
    "The run from grid or generator to the controller": "Waya kutoka gridi au jenereta hadi kidhibiti",
    "The run from the controller down to the motor": "Waya kutoka kidhibiti kushuka hadi mota",
    "Name of the project": "Jina la mradi",
    "The question the comparison should answer": "Swali ambalo ulinganisho unapaswa kujibu",
    "Files": "Mafaili",
    "Currency of every price": "Sarafu ya kila bei",
    "Language of the answer and the reports": "Lugha ya jibu na ripoti",
    "When the prices were asked": "Lini bei ziliulizwa",
    "Who prepared the study": "Nani aliandaa utafiti",
    "When the site was visited": "Lini eneo lilitembelewa",
    "Revision of the study": "Toleo la utafiti",
    "Site": "Eneo",
    "Name of the place": "Jina la mahali",
    "Fixed offset of local standard time such as '+05": (
        "Tofauti isiyobadilika ya wakati wa kawaida wa mahali kama '+05"
    ),
    "The weather": "Hali ya hewa",
    "Kind": "Aina",
    "Monthly mean of daily irradiation on a horizontal plane": (
        "Wastani wa mwezi wa mionzi ya jua ya siku kwenye sehemu mlalo"
    ),
    "Monthly mean air temperature": "Wastani wa mwezi wa joto la hewa",
    "Monthly mean of the daily range": "Wastani wa mwezi wa tofauti ya joto ya siku",
    "Law of daily clearness": "Kanuni ya uangavu wa siku",
    "Brightest day of a month": "Siku angavu zaidi ya mwezi",
    "Path of the weather file": "Njia ya faili la hali ya hewa",
    "Format of the file": "Muundo wa faili",
    "When in the day the water is drawn": "Wakati wa siku maji yanapochotwa",
    "Who draws the water": "Nani huchota maji",
    "Net irrigation requirement by month": "Mahitaji halisi ya umwagiliaji kwa mwezi",
    "Steps of a pumping test": "Hatua za jaribio la kusukuma maji",
    "Friction formula": "Fomula ya msuguano",
    "Pipe of that main": "Bomba la bomba kuu hilo",
    "Pipe of the riser in the borehole": "Bomba la kisimani",
    "Runs of pipe from the pump to the tank": "Vipande vya bomba kutoka pampu hadi tanki",
    "Which run of pipe": "Kipande kipi cha bomba",
    "A size from the pipe tables": "Kipimo kutoka majedwali ya mabomba",
    "Ground level along the route": "Mwinuko wa ardhi kwenye njia",
    "Whether an air valve stands there": "Kama kuna vali ya hewa hapo",
    "Which pump": "Pampu ipi",
    "Kind of pump end": "Aina ya sehemu ya pampu",
    "Points of the datasheet at rated speed": "Nukta za karatasi ya taarifa kwa kasi ya kawaida",
    "The rest of the nameplate": "Sehemu iliyobaki ya bamba la taarifa",
    "DC supply voltage as printed": "Volti za chanzo cha DC kama zilivyochapishwa",
    "AC supply voltage as printed": "Volti za chanzo cha AC kama zilivyochapishwa",
    "Frequency of the AC supply as printed": "Frikwensi ya chanzo cha AC kama ilivyochapishwa",
    "Code letter of the locked-rotor kVA": "Herufi ya kodi ya kVA za rota iliyozuiwa",
    "Speed as printed": "Kasi kama ilivyochapishwa",
    "Insulation class": "Daraja la insulesheni",
    "Ingress protection": "Kinga dhidi ya maji na vumbi (IP)",
    "'parallel' adds grid or generator to the sun in the same hour": (
        "'parallel' huongeza gridi au jenereta kwa jua katika saa moja"
    ),
    "How the motor starts on grid or generator": "Jinsi mota inavyoanza kwa gridi au jenereta",
    "Topup": "Nyongeza",
    "The sources of power": "Vyanzo vya nguvu",
    "The sun": "Jua",
    "The module": "Paneli",
    "Planes of the array": "Pande za safu ya paneli",
    "The same by month": "Kilekile kwa mwezi",
    "What light that falls in aslant loses at the module's glass": (
        "Kinachopotezwa na mwanga wa mshazari kwenye kioo cha paneli"
    ),
    "Model of the sky's light on a tilted plane": "Modeli ya mwanga wa anga kwenye paneli iliyoinama",
    "Hours of the day in which the grid is on": "Saa za siku ambazo gridi hupatikana",
    "Random outages within those hours": "Kukatika kwa nasibu ndani ya saa hizo",
    "Hours without grid in each month against each other": (
        "Saa bila gridi katika kila mwezi ikilinganishwa na mingine"
    ),
    "How often outages begin in each hour of the day from midnight": (
        "Mara ngapi kukatika huanza katika kila saa ya siku kuanzia saa sita usiku"
    ),
    "The tariff": "Bei ya umeme",
    "Time bands with their own price": "Vipindi vya muda vyenye bei yake",
    "Name of the band": "Jina la kipindi",
    "Parts of the day": "Sehemu za siku",
    "Months in which the band holds": "Miezi ambayo kipindi hutumika",
    "Rising": "Inayopanda",
    "A generator": "Jenereta",
    "Hours of the day in which it may run": "Saa za siku ambazo linaweza kufanya kazi",
    "Sizes that can be built": "Ukubwa unaoweza kujengwa",
    "Supply options to compare": "Machaguo ya nishati ya kulinganisha",
    "Supply option against which saving and payback are counted": (
        "Chaguo la nishati ambalo akiba na muda wa kurejesha gharama huhesabiwa dhidi yake"
    ),
    "Further lines of the bill of quantities": "Mistari zaidi ya orodha ya vifaa na bei",
    "What it is": "Ni nini",
    "Unit of the quantity": "Kipimo cha kiasi",
    "Sources it belongs to": "Vyanzo ambavyo ni sehemu yake",
    "Yearly costs": "Gharama za kila mwaka",
    "Constant prices of year 0": "Bei zisizobadilika za mwaka 0",
    "Currency of the programme": "Sarafu ya programu",
    "The households that pay": "Kaya zinazolipa",
    "Day of the test": "Siku ya jaribio",
    "Who tested": "Nani alijaribu",
    "Results of the water's analysis": "Matokeo ya upimaji wa maji",
    "Day of the sample": "Siku ya sampuli",
    "Who analysed it": "Nani aliyapima",
    "A short price list": "Orodha fupi ya bei",
    "Pipes with a price of their own": "Mabomba yenye bei yake",
    "The pipe": "Bomba",
    "Array to controller": "Safu ya paneli hadi kidhibiti",
    "Copper of the conductor": "Shaba ya kondakta",
    "How it is laid": "Jinsi unavyolazwa",
    "Whether it is made for sun and weather": "Kama umetengenezwa kwa jua na mvua",
    "Grid or generator to controller": "Gridi au jenereta hadi kidhibiti",
    "Its kind": "Aina yake",
    "Controller to motor": "Kidhibiti hadi mota",
    "What it carries": "Inachobeba",
    "household": "kaya",
    "school": "shule",
    "livestock": "mifugo",
    "morning": "asubuhi",
    "night": "usiku",
    "even": "sawasawa",
    "by latitude": "kwa latitudo",
    "clear sky": "anga safi",
    "general": "ya jumla",
    "soft": "polepole",
    "direct": "moja kwa moja",
    "glass": "kioo",
    "coated glass": "kioo kilichopakwa",
    "breaker": "kikata umeme",
    "gG fuse": "fyuzi ya gG",
    "plain": "tupu",
    "tinned": "iliyopakwa bati",
    "constant": "zisizobadilika",
    "nominal": "za kawaida (nominal)",
    "parallel": "sambamba",
    "changeover": "kubadilisha chanzo",
    "centrifugal": "ya sentrifugali",
    "helical-rotor": "ya rota ya skrubu",
    "estimate": "makadirio",
    "monthly": "ya kila mwezi",
    "file": "faili",
    "auto": "otomatiki",
    "no currency in ISO 4217: no prices, and a technical answer": (
        "hakuna sarafu ya ISO 4217: hakuna bei, na jibu la kiufundi"
    ),
    "the language of these files": "lugha ya faili hizi",
    (
        "Saunier, Reddy and Kumar 1987, Solar Energy 38:169-177, for the tropics; Bendt, Collares-Pereira and Rabl "
        "1981, Solar Energy 27:1-5, beyond; the latitudes assumed, judged at three typical years"
    ): (
        "Saunier, Reddy na Kumar 1987, Solar Energy 38:169-177, kwa tropiki; Bendt, Collares-Pereira na Rabl 1981, "
        "Solar Energy 27:1-5, nje yake; latitudo zimekadiriwa, zimepimwa kwa miaka mitatu ya kawaida"
    ),
    ("Hollands and Huget 1983, Solar Energy 30:195-209; the 1.15 assumed, judged at three typical years"): (
        "Hollands na Huget 1983, Solar Energy 30:195-209; 1.15 imekadiriwa, imepimwa kwa miaka mitatu ya kawaida"
    ),
    "guessed from the file's name and first lines": "hukisiwa kutokana na jina la faili na mistari yake ya kwanza",
    "Darcy-Weisbach with Colebrook-White": "Darcy-Weisbach pamoja na Colebrook-White",
    "none mentioned": "hakuna aliyetajwa",
    "the more common kind of hybrid drive, from memory": "aina ya kawaida zaidi ya kidhibiti mseto, kwa kumbukumbu",
    "what a drive does": "kinachofanywa na kidhibiti cha kasi",
    "De Soto, Klein and Beckman 2006, Solar Energy 80:78-88; plain glass loses most": (
        "De Soto, Klein na Beckman 2006, Solar Energy 80:78-88; kioo cha kawaida hupoteza zaidi"
    ),
    (
        "Perez et al. 1990, Solar Energy 44:271-289, made continuous by Driesse, Jensen and Perez 2024, Solar Energy "
        "267:112093"
    ): (
        "Perez et al. 1990, Solar Energy 44:271-289, iliyofanywa endelevu na Driesse, Jensen na Perez 2024, Solar "
        "Energy 267:112093"
    ),
    "item": "kifaa",
    "constant prices": "bei zisizobadilika",
    "the careful choice": "chaguo la tahadhari",
    "the name of the project": "jina la mradi",
    "from the coordinates": "kutokana na kuratibu za mahali",
    "taken from pvlib's world grid": "imechukuliwa kutoka gridi ya dunia ya pvlib",
    "the coldest hour of the weather less 5 K": "saa ya baridi zaidi ya hali ya hewa kutoa 5 K",
    "the hottest hour of the weather": "saa ya joto zaidi ya hali ya hewa",
    "derived from the clearness of each month (Erbs, Klein and Beckman 1983), poor at humid places": (
        "imekokotolewa kutokana na uangavu wa kila mwezi (Erbs, Klein na Beckman 1983), dhaifu kwa maeneo yenye unyevu"
    ),
    "what chance makes of the month's days by the law of daily clearness, about 2 to 14 %": (
        "kile ambacho bahati hufanya kwa siku za mwezi kwa kanuni ya uangavu wa siku, karibu 2 hadi 14 %"
    ),
    "the kind of user": "aina ya mtumiaji",
    "the growth of the whole demand": "ongezeko la mahitaji yote",
    "the profile of the whole demand": "mgawanyo wa mahitaji yote",
    "the largest flow of the pumping test": "mtiririko mkubwa zaidi wa jaribio la kusukuma maji",
    "no daily limit": "hakuna kikomo cha siku",
    "no sleeve": "hakuna mkono wa mtiririko",
    "chosen by velocity and pressure": "huchaguliwa kwa kasi ya maji na shinikizo",
    "from the pipe table": "kutoka jedwali la mabomba",
    "the inside diameter is used": "kipenyo cha ndani hutumika",
    "of the pipe's material (0.007 mm plastic)": "ya kitu cha bomba (0.007 mm plastiki)",
    "of the pipe's material (150 plastic, 120 galvanised steel)": (
        "ya kitu cha bomba (150 plastiki, 120 chuma kilichopakwa zinki)"
    ),
    "from material and wall of the pipe table": "kutokana na kitu na ukuta wa jedwali la mabomba",
    "it stops at once, the worst case": "husimama ghafla, hali mbaya zaidi",
    "from how far the largest flow lies above the rated one": (
        "kutokana na jinsi mtiririko mkubwa zaidi ulivyo juu ya ule wa kawaida"
    ),
    "the usual letter of motors of its size": "herufi ya kawaida ya mota za ukubwa wake",
    "0 m in the hourly run, assumed": "0 m katika uendeshaji wa saa kwa saa, imekadiriwa",
    "the pump's rated power": "nguvu ya kawaida ya pampu",
    "the plate's DC voltage, else no lower limit in the hourly run": (
        "volti za DC za bamba, vinginevyo hakuna kikomo cha chini katika uendeshaji wa saa kwa saa"
    ),
    "the plate's DC voltage, else no upper limit in the hourly run": (
        "volti za DC za bamba, vinginevyo hakuna kikomo cha juu katika uendeshaji wa saa kwa saa"
    ),
    "what the controller's voltages and the pump's power ask for": (
        "kinachohitajika na volti za kidhibiti na nguvu ya pampu"
    ),
    "Static water level by month: depth of the water at rest": "Kina cha maji yakiwa tulivu kwa mwezi",
    "the same level all year": "kina kilekile mwaka mzima",
    "no loss but that in the array's DC wiring": "hakuna upotevu isipokuwa ule wa nyaya za DC za safu ya paneli",
    "ready lists of candidates": "orodha zilizo tayari za machaguo ya kujaribu",
    "a ready list of inputs is moved down and up by a fifth": (
        "orodha iliyo tayari ya data hupunguzwa na kuongezwa kwa moja ya tano"
    ),
    "no outages": "hakuna kukatika kwa umeme",
    "see segments": "tazama segments",
    "no generator option": "hakuna chaguo la jenereta",
    "no bill per household": "hakuna bili kwa kaya",
    "Daily volume by month": "Kiasi cha maji kwa siku, kwa mwezi",
    "as test_flow_m3h": "kama test_flow_m3h",
    "specific_capacity_m3h_per_m or step_test is used": "specific_capacity_m3h_per_m au step_test hutumika",
    "every price stands with the thing itself": "kila bei iko pamoja na kitu chenyewe",
    "Candidates that 'planner size' tries": "Machaguo ambayo 'planner size' hujaribu",
    "What 'planner sweep' varies": "Data ambayo 'planner sweep' hubadilisha",
    "no grid option": "hakuna chaguo la gridi",
    "no solar option": "hakuna chaguo la sola",
    "no loss counted": "hakuna upotevu unaohesabiwa",
    "the array's loss in the DC wiring": "upotevu wa safu ya paneli kwenye nyaya za DC",
    "the sun alone": "jua peke yake",
    "inner_diameter_mm is used": "inner_diameter_mm hutumika",
    "the same share in every month": "sehemu ileile kila mwezi",
    "the same loss in every month": "hasara ileile kila mwezi",
    "a steady loss to dust": "hasara isiyobadilika ya vumbi",
    "alike in every month": "sawa kila mwezi",
    "alike in every hour": "sawa kila saa",
    "no limit": "hakuna kikomo",
    "blocks are given instead": "ngazi zimetolewa badala yake",
    "no upper end": "hakuna mwisho wa juu",
    "no figure: grid emissions are not counted": "hakuna takwimu: gesi za gridi hazihesabiwi",
    "what the pump needs to start and run here": "kile ambacho pampu huhitaji kuanza na kufanya kazi hapa",
    "read off the sizes between their prices": "husomwa kati ya ukubwa mbalimbali na bei zake",
    "no such condition": "hakuna sharti la namna hiyo",
    "the value at which the answer would turn is worked out": "thamani ambayo jibu lingegeuka hukokotolewa",
    "generator alone, else grid alone, else the first option": (
        "jenereta peke yake, vinginevyo gridi peke yake, vinginevyo chaguo la kwanza"
    ),
    "lasts the whole life": "hudumu muda wote",
    "published figures of 2011 are shown as they are": "takwimu zilizochapishwa za 2011 zinaonyeshwa kama zilivyo",
    "what has no price of its own is named as unpriced": "kisicho na bei yake hutajwa kuwa hakina bei",
    "the smallest that bears the current and loses no more of the voltage than is allowed": (
        "ndogo zaidi inayobeba mkondo na isiyopoteza volti zaidi ya zinazoruhusiwa"
    ),
    "the hottest hour of the weather; in the ground, the mean of the warmest month": (
        "saa ya joto zaidi ya hali ya hewa; ardhini, wastani wa mwezi wa joto zaidi"
    ),
    "IEC 60364-5-52 for PVC, with the factors for ambient temperature and grouping": (
        "IEC 60364-5-52 kwa PVC, pamoja na vigezo vya joto la mazingira na kuwekwa pamoja"
    ),
    "no test on record": "hakuna jaribio lililorekodiwa",
    "not analysed": "haikupimwa",
}
