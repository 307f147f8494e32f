"""Kiswahili cha tahadhari: kuhusu kazi yenyewe, na kuhusu mipaka ya takwimu za utafiti."""

SENTENCES: dict[str, str] = {
    "caution.local": "Kanuni za mahali na mafundi wenye leseni hutangulia.",
    "caution.with_local": "{caution} Kanuni za mahali na mafundi wenye leseni hutangulia.",
    "caution.where_listed": (
        "Kanuni za mahali na mafundi wenye leseni hutangulia. Soma tahadhari kabla ya kujenga, kufungua au kunywa "
        "chochote: 'planner run' huandika zile zinazohusu eneo hili kwenye laha 'Mbinu na tahadhari'."
    ),
    "caution.source.solar": "safu ya paneli",
    "caution.source.grid": "gridi",
    "caution.source.generator": "jenereta",
    "caution.source_any": (
        "Umeme kutoka {source} kwenye kisima kirefu unaweza kuua: kutuliza umeme ardhini, vifaa vya kinga, swichi ya "
        "kubadili chanzo isiyoweza kuunganisha chanzo hiki na kingine, na kukata umeme na kufunga kwa kufuli kabla "
        "ya kunyanyua pampu ni kazi ya fundi umeme mwenye leseni na ya anayeendesha chanzo hicho."
    ),
    "caution.daylight": (
        "Paneli za sola hutoa volti hatari za DC wakati wowote kuna mwanga na haziwezi kuzimwa mchana; swichi za "
        "kutenga, fyuzi za mifululizo na polariti ni kazi ya fundi umeme mwenye leseni."
    ),
    "caution.dc_arc": (
        "Kamwe usichomoe kiunganishi cha DC, usitoe fyuzi ya DC wala usikate waya wa DC wakati mkondo unapita: "
        "cheche ya umeme (arc) haizimiki yenyewe, huunguza na huwasha moto. Simamisha pampu, fungua swichi ya "
        "kutenga DC inayoweza kukata mkondo, na pima kuhakikisha hakuna mkondo unaopita kabla ya kufungua "
        "kiunganishi; hitilafu ya umeme kwenda ardhini inaweza kuendeleza mkondo, hivyo chukulia kuwa bado kina "
        "umeme."
    ),
    "caution.isolate": (
        "Kabla ya kufungua kifuniko au kugusa kondakta, tenga kila chanzo ({sources}), funga kila kimoja kwa kufuli "
        "na ukiwekee lebo, subiri muda ambao mtengenezaji wa kidhibiti anasema kapasita zake zimalize umeme, kisha "
        "thibitisha kuwa hakuna umeme, kati ya kondakta zote na kati ya kila kondakta na ardhi, kwa kipimaji "
        "kilichojaribiwa kwenye chanzo kinachojulikana kabla na baada."
    ),
    "caution.isolate_array": (
        "Kabla ya kufungua kifuniko au kugusa kondakta, tenga kila chanzo ({sources}), funga kila kimoja kwa kufuli "
        "na ukiwekee lebo, subiri muda ambao mtengenezaji wa kidhibiti anasema kapasita zake zimalize umeme, kisha "
        "thibitisha kuwa hakuna umeme, kati ya kondakta zote na kati ya kila kondakta na ardhi, kwa kipimaji "
        "kilichojaribiwa kwenye chanzo kinachojulikana kabla na baada; mchana upande wa safu ya paneli wa swichi ya "
        "kutenga hubaki na umeme."
    ),
    "caution.wet_hands": (
        "Kamwe usishike swichi, plagi au kidhibiti kwa mikono yenye maji au ukiwa umesimama kwenye maji."
    ),
    "caution.grid": (
        "Umeme wa gridi kwenye kisima kirefu unaweza kuua: kutuliza umeme ardhini, kifaa cha kukata umeme unaovuja "
        "(RCD) na kukata umeme na kufunga kwa kufuli kabla ya kunyanyua pampu ni kazi ya fundi umeme mwenye leseni "
        "na shirika la umeme."
    ),
    "caution.residual_current": (
        "Aina ya kifaa cha kukata umeme unaovuja (RCD) lazima ifae kidhibiti cha kielektroniki, ambacho uvujaji wake "
        "laini wa DC hupofusha aina AC na A: aina B (IEC 62423) pale mtengenezaji wa kidhibiti au kanuni za mahali "
        "zinapoitaka, bila kifaa cha aina nyingine kabla yake katika mzunguko uleule."
    ),
    "caution.exhaust": (
        "Moshi wa jenereta huua katika vyumba vilivyofungwa na vilivyofungwa nusu: liendeshe mahali pa wazi, mbali "
        "na milango, madirisha na mdomo wa kisima kirefu. Liache lipoe kabla ya kuongeza mafuta, weka moto mbali, na "
        "hifadhi mafuta mahali ambapo yakimwagika hayawezi kufika kwenye kisima kirefu."
    ),
    "caution.backfeed": (
        "Jenereta lisirudishe umeme kamwe kwenye gridi au chanzo kingine, jambo linaloua wanaofanya kazi kwenye "
        "nyaya: liunganishe kupitia swichi ya kubadili isiyoweza kuunganisha vyanzo viwili, kamwe si kwa plagi "
        "kwenye soketi."
    ),
    "caution.lightning": (
        "Radi hushuka kupitia nyaya hadi kwenye kisima kirefu: unganisha pamoja na uwekee mfumo wa kutuliza umeme "
        "ardhini kidhibiti, bomba na kesingi, weka vifaa vya kinga dhidi ya radi kwenye kidhibiti na kwenye mdomo wa "
        "kisima kirefu, kulingana na kanuni za mahali za nyaya, na simamisha kazi ngurumo inaposikika."
    ),
    "caution.lightning_array": (
        "Radi hushuka kupitia nyaya hadi kwenye kisima kirefu: unganisha pamoja na uwekee mfumo wa kutuliza umeme "
        "ardhini fremu za paneli, kidhibiti, bomba na kesingi, weka vifaa vya kinga dhidi ya radi kwenye safu ya "
        "paneli, kwenye kidhibiti na kwenye mdomo wa kisima kirefu, kulingana na kanuni za mahali za nyaya, na "
        "simamisha kazi ngurumo inaposikika."
    ),
    "caution.lifting": (
        "Pampu pamoja na bomba lake lililojaa inaweza kuwa nzito kuliko watu wanavyoweza kushika: nyanyua kwa "
        "tripodi au kreni, klampu na kamba ya usalama, vyote vilivyoidhinishwa kwa uzito huo, bila mtu yeyote chini "
        "yake."
    ),
    "caution.overhead_lines": (
        "Tazama nyaya za umeme za juu kabla ya kuinua tripodi, kreni, mlingoti au kipande cha bomba, na weka umbali "
        "unaotakiwa na shirika la umeme: waya unaweza kuua bila kuguswa."
    ),
    "caution.confined_space": (
        "Kamwe usiingie peke yako kwenye shimo lililochimbwa, chemba ya pampu au tanki: hewa inaweza kukosa oksijeni "
        "au kuwa na gesi. Pima hewa, ingiza hewa safi, vaa mkanda wa usalama wenye kamba kwa mtu aliye nje, weka "
        "injini mbali, na kamwe usimfuate ndani mtu aliyezimia; ita waokoaji."
    ),
    "caution.falls": (
        "Watu huanguka kutoka mapaa, ngazi na minara ya tanki: tumia vizuizi vya kinga au mkanda wa usalama kwenye "
        "nanga imara, ngazi zifungwe kwa kamba, usifanye kazi huko kwenye upepo, mvua au peke yako. Paa na mnara "
        "lazima visanifiwe kwa uzito wake; kila m3 ya maji ina uzito wa tani moja."
    ),
    "caution.children": (
        "Watoto huzama kwenye matanki yaliyo wazi na huanguka kwenye visima virefu vilivyo wazi: weka tanki, chemba "
        "na kisima kirefu vikiwa vimefunikwa na kufungwa kwa kufuli, na zungushia uzio tanki na kidhibiti."
    ),
    "caution.children_array": (
        "Watoto huzama kwenye matanki yaliyo wazi na huanguka kwenye visima virefu vilivyo wazi: weka tanki, chemba "
        "na kisima kirefu vikiwa vimefunikwa na kufungwa kwa kufuli, na zungushia uzio tanki, safu ya paneli na "
        "kidhibiti."
    ),
    "caution.trench": (
        "Kuta za mitaro huporomoka bila onyo na kufukia watu: wekea egemeo au mteremko kila mtaro ambao mtu huingia, "
        "kama kanuni za mahali zinavyotaka, weka udongo uliochimbwa na magari mbali na ukingo wake, na tafuta nyaya "
        "na mabomba yaliyofukiwa kabla ya kuchimba."
    ),
    "caution.pressure_test": (
        "Jaribu bomba kwa maji, kamwe si kwa hewa, ambayo huhifadhi nguvu ya kutosha kuua kiungo kinapofyatuka: jaza "
        "polepole, toa hewa kwenye sehemu za juu, kisha ongeza shinikizo kwa hatua na weka watu mbali."
    ),
    "caution.drinking": (
        "Kwanza safisha, ua vijidudu na suuza kisima kirefu, mabomba na tanki, kisha chukua sampuli: pima vijidudu, "
        "arseniki, floridi, nitrati na chumvi kabla mtu yeyote hajanywa maji. Hakuna kilichokokotolewa hapa "
        "kinachosema kuwa yanafaa kunywewa."
    ),
    "caution.not_drinking": (
        "Kwanza safisha, ua vijidudu na suuza kisima kirefu, mabomba na tanki, kisha chukua sampuli: pima maji kwa "
        "kile ambacho matumizi yake yanahitaji; mtu yeyote asiyanywe bila kupimwa."
    ),
    "caution.chlorine": (
        "Klorini huunguza ngozi, macho na mapafu: glavu, miwani ya kinga na mahali pa wazi; iongeze kwenye maji, "
        "kamwe si maji kwenye klorini; kamwe usiichanganye na asidi, mafuta au kisafishaji kingine; mtu yeyote "
        "asinywe, na peleka maji mbali na mifugo na vijito, hadi isuuzwe yote."
    ),
    "caution.permit": (
        "Kuchukua maji mara nyingi huhitaji kibali chenye kiasi cha kila siku; kuwa nacho kabla ya kusukuma."
    ),
    "caution.altitude": "Mwinuko haukutolewa; {altitude} m imechukuliwa kutoka gridi ya dunia ya pvlib.",
    "caution.hours_a_day": (
        "Katika mwaka wa mwisho pampu ingelazimika kufanya kazi saa {hours} kwa siku kwa mtiririko wake wa kazi wa "
        "{flow} m3/h; mahitaji yanazidi uwezo wa pampu au kisima kirefu."
    ),
    "caution.safe_yield": (
        "Pampu ingeweza kutoa zaidi ya kiasi salama cha kusukuma cha kisima kirefu, {flow} m3/h; kasi yake imezuiwa "
        "hapo."
    ),
    "caution.dc_window": (
        "Katika {option} upeo wa volti za DC wa kidhibiti huizuia safu ya paneli kufikia nukta yake bora kwa saa "
        "{hours} kwa mwaka; angalia idadi ya paneli katika mfululizo."
    ),
    "caution.source_carbon": (
        "Kiasi cha kaboni dioksidi hakikutolewa kwa chanzo hiki: {source}; hivyo gesi zake hazijahesabiwa."
    ),
    "caution.lowest_level": (
        "Katika {option} swichi ya boya iliwekwa kwenye kiwango cha chini zaidi kilichojaribiwa, {level} % ya tanki; "
        "kiwango cha juu zaidi huweka akiba kubwa kwa ajili ya hitilafu."
    ),
    "caution.simulated": (
        "Kila mwaka wa matumizi huigizwa saa kwa saa, kuanzia na kile ambacho mwaka uliotangulia uliacha kwenye "
        "tanki, pampu, kisima kirefu na paneli zikiwa zimechakaa kwa kiwango cha wakati huo; ubora wa maji si sehemu "
        "ya uigaji."
    ),
    "caution.summer_time": (
        "Saa ni za wakati wa kawaida mwaka wote; wakati wa kiangazi saa za {zone} huenda saa moja mbele, hivyo "
        "uchotaji, vipindi vya bei na saa zinazoruhusiwa huchelewa saa moja."
    ),
    "caution.unpriced": "Bei haijawekwa kwa vifuatavyo: {names}; gharama ya chaguo linalovihitaji haijakamilika.",
    "caution.free": "Vimehesabiwa kuwa vipo na vimelipiwa, kwa kuwa bei iliyowekwa ni 0: {names}.",
    "caution.under_budgeted": (
        "{option} limetengewa dola za Marekani {cost} za 2011 kwa mtu kwa mwaka kuliendesha, kulisaidia na kulifanya "
        "upya, chini ya {low} hadi {high} zilizopatikana kwa miradi kama hii (IRC WASHCost, cost benchmarks, 2012, "
        "kupitia chanzo cha pili): tafuta kinachokosekana, kama mishahara, ukarabati, upimaji wa maji au usaidizi, "
        "kabla ya kuwaahidi watumiaji."
    ),
    "caution.loan": (
        "Riba ya mkopo ya {rate} % ni ya kawaida (nominal), bei hazibadiliki na mfumuko wa bei haukuwekwa, hivyo "
        "riba huhesabiwa kana kwamba iko juu ya mfumuko wa bei na gharama ya mmiliki hutoka kubwa mno: weka mfumuko "
        "wa bei (0 pale tu ambapo hautarajiwi)."
    ),
    "caution.turned_away": (
        "Sehemu ya safu ya paneli inaelekea ncha ya dunia (azimuthi {azimuth} katika latitudo {latitude}); katika "
        "nusu hii ya dunia paneli za sola kwa kawaida huelekea digrii {usual}."
    ),
}
