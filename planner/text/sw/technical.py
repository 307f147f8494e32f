"""Kiswahili cha pale ambapo hakuna bei, badala ya kinachosema gharama, na msingi wa jibu."""

SENTENCES: dict[str, str] = {
    "answer.levels_good_technical": (
        "Katika {option} swichi ya boya huanzisha nishati ya nyongeza tanki likiwa na {start:g} % na kuisimamisha "
        "likiwa na {stop:g} %; hakuna mpangilio uliojaribiwa unaotimiza lengo kwa nishati ndogo zaidi ya kutosha "
        "kutoka nje."
    ),
    "answer.kwh_of_grid": "{amount:,.0f} kWh kutoka gridi",
    "answer.l_of_fuel": "{amount:,.0f} L za mafuta",
    "answer.technical_meets": (
        "{option} hutimiza lengo la {target:g} % ya maji: {delivered:.1f} % kwa miaka {years}, {worst:.0f} % katika "
        "mwezi mbaya zaidi ({month}); siku {short:.1f} kwa mwaka hukosa zaidi ya moja ya kumi ya maji yake, nyingi "
        "zaidi {longest:.0f} mfululizo."
    ),
    "answer.technical_never_short": (
        "{option} hutimiza lengo la {target:g} % ya maji: {delivered:.1f} % kwa miaka {years}, bila siku inayokosa "
        "zaidi ya moja ya kumi ya maji yake."
    ),
    "answer.technical_nearest": (
        "Hakuna chaguo linalotimiza lengo la {target:g} % ya maji; lililo karibu zaidi ni {option} kwa "
        "{delivered:.1f} % kwa miaka {years}, {worst:.0f} % katika mwezi mbaya zaidi ({month}); siku {short:.1f} kwa "
        "mwaka hukosa zaidi ya moja ya kumi ya maji yake, nyingi zaidi {longest:.0f} mfululizo."
    ),
    "answer.technical_others": (
        "Vivyo hivyo na haya: {options}. Bila bei yamepangwa kwa mpangilio wa senario; lipi la kujenga, ni bei na "
        "watakaoliendesha watakaosema."
    ),
    "answer.technical_sizes": (
        "Ukubwa ulioachwa wazi ulichaguliwa bila bei, kati ya unaofaulu kaguzi kwa tahadhari chache zaidi: m3 ya "
        "tanki huhesabiwa kama {tank:g} kWp za safu ya paneli (imekadiriwa, desturi ya kazi, hakuna chanzo)."
    ),
    "remedied.none_computed_technical": "Masuluhisho ya yaliyoshindikana hayawezi kukokotolewa: {checks}.",
    "sizing_answer.weight": "{kwp:.2g} kWp za safu ya paneli",
    "sizing_answer.best_technical": (
        "{option} hutimiza lengo la {target:g} % ya maji pamoja na {design}: maji yanayotolewa {delivered:.1f} %. "
        "Kati ya miundo {tried:,} iliyojaribiwa, kila mmoja ukiendeshwa kwa kila saa ya kipindi cha uchambuzi cha "
        "miaka {years}, ndio wenye uzito mdogo zaidi katika chaguo lake: bila bei m3 ya tanki huhesabiwa kama "
        "{tank:g} kWp za safu ya paneli, kWh kwa mwaka kutoka gridi kama {grid:g} na lita ya mafuta kwa mwaka kama "
        "{fuel:g} (imekadiriwa, desturi ya kazi, hakuna chanzo), na machaguo yamo kwa mpangilio wa senario."
    ),
    "sizing_answer.none_meets_technical": (
        "Hakuna muundo kati ya {tried:,} iliyojaribiwa unaotimiza lengo; ulio karibu zaidi ni {option} pamoja na "
        "{design}: {misses}. Bila bei miundo hupimwa kwa uzito: m3 ya tanki huhesabiwa kama {tank:g} kWp za safu ya "
        "paneli, kWh kwa mwaka kutoka gridi kama {grid:g} na lita ya mafuta kwa mwaka kama {fuel:g} (imekadiriwa, "
        "desturi ya kazi, hakuna chanzo)."
    ),
    "sizing_answer.steady_start_technical": (
        "Viwango vya kuanzia kutoka {low:g} % hadi {high:g} % vina uzito usiotofautiana nayo kwa zaidi ya 2 %."
    ),
    "sizing_answer.no_rival_technical": (
        "Hakuna muundo mwingine wa {option} unaotimiza lengo wenye uzito usiotofautiana nao kwa zaidi ya 2 %."
    ),
    "sizing_answer.one_rival_technical": (
        "Muundo mwingine mmoja wa {option} una uzito usiotofautiana nao kwa zaidi ya 2 %: {design} ({percent:.2f} % "
        "zaidi)."
    ),
    "sizing_answer.rivals_technical": (
        "Miundo mingine {count:,} ya {option} ina uzito usiotofautiana nao kwa zaidi ya 2 %, wa kwanza: {design} "
        "({percent:.2f} % zaidi)."
    ),
    "sizing_answer.higher_free_technical": (
        "Kupandisha lengo kutoka {target:g} % hadi {higher:g} % hakuhitaji chochote zaidi: muundo huu tayari hutoa "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds_technical": (
        "Kupandisha lengo kutoka {target:g} % hadi {higher:g} % huhitaji nyongeza sawa na {cost} ({option})."
    ),
    "sizing_answer.run_dearer_technical": (
        "Chukua {change} badala ya {instead}, ambayo huchukuliwa na 'planner run' kwa {option}: hutimiza lengo na "
        "uzito ni pungufu kwa {gap}."
    ),
    "sizing_answer.run_cheaper_technical": (
        "Chukua {change} kwa {option}; 'planner run' huchukua {instead}, ambayo uzito wake ni pungufu kwa {gap}."
    ),
    "sweep_answer.demand_met_of": "Mahitaji yaliyokidhiwa na {option}",
    "sweep_answer.percent": "{percent:.2f} %",
    "sweep_answer.matters_most_technical": (
        "Zikibadilishwa moja moja, {input} huwa na athari kubwa zaidi: inapotoka {low:g} hadi {high:g}, mahitaji "
        "yanayokidhiwa na {option} hutoka {cost_at_low} hadi {cost_at_high} ({cost} kama ilivyo sasa)."
    ),
    "sweep_answer.stays_cheapest_technical": (
        "Hakuna data ambayo, ikibadilishwa peke yake ndani ya upeo wake, hubadilisha jibu: {option} hubaki chaguo la "
        "kwanza linalotimiza lengo."
    ),
    "sweep_answer.grid_technical": (
        "Katika michanganyiko {count:,} ya jedwali, chaguo la kwanza linalotimiza lengo ni: {counts}."
    ),
    "sweep_answer.random_technical": (
        "Katika hali 100 zilizochaguliwa kwa bahati nasibu, chaguo la kwanza linalotimiza lengo ni: {shares} "
        "(sampuli {draws:,}, hivyo kwa tofauti ya {error:.0f} juu au chini)."
    ),
    "sweep_answer.random_some_none_technical": (
        "Katika hali 100 zilizochaguliwa kwa bahati nasibu, chaguo la kwanza linalotimiza lengo ni: {shares}; hakuna "
        "chaguo linalolitimiza katika {none:.0f} (sampuli {draws:,}, hivyo kwa tofauti ya {error:.0f} juu au chini)."
    ),
    "sweep_answer.random_none_technical": (
        "Katika hali {draws:,} zilizochaguliwa kwa bahati nasibu hakuna hata moja ambapo chaguo lolote hutimiza lengo."
    ),
    "sweep_answer.random_cost_technical": (
        "Mahitaji yanayokidhiwa na {option} huzidi {low} katika hali 90 kati ya 100, na huzidi {high} katika 10 kati "
        "ya 100."
    ),
    "size.note_technical": (
        "Kila muundo uliendeshwa saa kwa saa kwa kila mwaka wa matumizi: hakuna kilichorukwa. Kwa kuwa hakuna bei, "
        "kinachojengwa na kununuliwa hupimwa kwa uzito, kama jibu linavyosema. Kagua uteuzi wowote dhidi ya uwezo wa "
        "kisima kirefu kabla ya kujenga."
    ),
    "size.answer_under_technical": "Kupanga ukubwa, bila bei",
    "size.weight": "Uzito (kWp za safu ya paneli)",
    "size.best_of_technical": "{scenario}: muundo wenye uzito mdogo zaidi wa kila chaguo la nishati",
    "size.best_under_technical": (
        "Wenye uzito mdogo zaidi unaotimiza lengo; pale ambapo hakuna, ule unaolikosa kwa kidogo zaidi."
    ),
    "size.by_run_technical": "Uzito wa muundo wa 'planner run' (kWp)",
    "size.front_under_technical": (
        "Miundo ambayo hakuna mwingine wa chaguo hilohilo unaoishinda kwa uzito na kwa mahitaji yaliyokidhiwa kwa "
        "pamoja."
    ),
    "size.front_chart_technical": "Huduma zaidi huhitaji nini",
    "size.front_alt_technical": (
        "Uzito mdogo zaidi dhidi ya mahitaji yaliyokidhiwa katika kipindi cha uchambuzi, mstari mmoja kwa chaguo: "
        "{options}."
    ),
    "size.service_technical": "Ukubwa kwa huduma",
    "size.service_under_technical": "Uzito mdogo zaidi wa muundo unaotoa angalau kiasi hiki cha maji.",
    "size.service_heading_technical": "Uzito mdogo zaidi (kWp za safu ya paneli) unaotoa angalau kiasi hiki cha maji",
    "size.service_chart_technical": "Uzito mdogo zaidi kwa huduma",
    "size.service_alt_technical": "Uzito mdogo zaidi kwa mahitaji yaliyokidhiwa, nguzo moja kwa chaguo: {options}.",
    "sweep.one_at_a_time_under_technical": (
        "Kila data huenda kwenye thamani yake ya chini na ya juu huku nyingine zote zikibaki; data zimepangwa kwa "
        "ukubwa wa mabadiliko. Chaguo bora hapo ni la kwanza linalotimiza lengo, au, pale ambapo hakuna, linalotoa "
        "maji mengi zaidi. Kielezo ni asilimia ya badiliko la matokeo kwa kila asilimia ya badiliko la data, upande "
        "ulio mkubwa zaidi (ADB)."
    ),
    "sweep.cheapest_technical": "La kwanza linalotimiza lengo",
    "sweep.tornado_met": "{option}: {figure}",
    "sweep.grid_under_technical": (
        "Michanganyiko {count}; chaguo la kwanza linalotimiza lengo la huduma katika kila mmoja, na mahitaji "
        "yanayokidhiwa na kila chaguo."
    ),
    "sweep.grid_alt_technical": "Mahitaji yaliyokidhiwa kwa {input}, mstari mmoja kwa chaguo: {options}.",
    "sweep.map_technical": "La kwanza linalotimiza lengo: {down} kwenda chini, {across} kwenda kando",
    "sweep.chances_alt_technical": (
        "Kati ya hali 100, ni katika ngapi kila chaguo ni la kwanza linalotimiza lengo, na ni katika ngapi hutimiza "
        "lengo: {options}."
    ),
    "sweep.exceeded_chart_technical": "Mahitaji yaliyokidhiwa na ni mara ngapi huzidiwa",
    "sweep.exceeded_alt_technical": (
        "Kati ya hali 100, ni ngapi hukidhi zaidi ya mahitaji, mstari mmoja kwa chaguo: {options}."
    ),
    "sweep.correlations_technical": "Uwiano wa nafasi wa kila data na mahitaji yaliyokidhiwa (Spearman)",
    "sweep.correlation_note_technical": (
        "1: kinachokidhiwa daima huongezeka na data; -1: daima hupungua; karibu na 0: data haina athari kubwa."
    ),
    "compare.side_under_technical": (
        "Chaguo lililo la kwanza katika kila senario: la kwanza linalotimiza lengo lake, au, pale ambapo hakuna, "
        "linalotoa maji mengi zaidi; haliwezi kujengwa kama lilivyo wakati kaguzi za eneo zimeshindikana. Senario "
        "hazitoi bei."
    ),
    "compare.differ_technical": "! Senario zina tofauti katika: {what}. Zilinganishe kwa uangalifu.",
    "compare.first_technical": "La kwanza linalotimiza lengo, au lililo karibu zaidi",
    "narrow.title_technical": "{name}: jibu la kiufundi, bila bei",
    "answer.setting_technical": (
        "Jibu la kiufundi, kwa kuwa senario haitaji sarafu wala haitoi bei. Kila chaguo liliigizwa saa kwa saa kwa "
        "miaka {years}."
    ),
    "answer.option_technical": "Chaguo la nishati",
    "options.under_technical": (
        "Kwa mpangilio wa uendeshaji, kwa miaka {years}; nishati na saa ni wastani wa miaka. Yanayotimiza lengo "
        "hutangulia, kwa mpangilio wa senario."
    ),
    "method.sizes_words_technical": (
        "Pale palipoachwa wazi: tanki dogo zaidi linalotimiza lengo la huduma, na idadi ya mifululizo na viwango vya "
        "swichi ya boya vinavyolitimiza kwa uzito mdogo zaidi: kWp ya safu ya paneli huhesabiwa 1, m3 ya tanki "
        "{tank:g}, kWh kwa mwaka kutoka gridi {grid:g} na lita ya mafuta kwa mwaka {fuel:g}, ambavyo ni karibu na "
        "uzito wake wa kawaida kimoja kwa kingine (imekadiriwa, desturi ya kazi, hakuna chanzo). Bei zinaweza "
        "kuchagua ukubwa mwingine. Machaguo yanayotimiza lengo yamo kwa mpangilio wa senario; yanayolikosa huja "
        "baada yake, kwa kile yanachotoa."
    ),
    "inputs.note_technical": (
        "Thamani za hapa hufuata laha 'Fomu', na hakuna kingine katika kitabu hiki cha kazi kinachoifuata: baada ya "
        "badiliko, kiendeshe tena (planner run FILE). Kwa sarafu na bei kwenye laha hiyo jibu huwa la fedha."
    ),
    "rests_on.estimate": "makadirio kutokana na kuratibu za mahali",
    "rests_on.heading": (
        "Jibu linategemea nini: havikutolewa, hivyo vilijaribiwa chini / juu ({option} kwa ukubwa uliochaguliwa)"
    ),
    "rests_on.irradiation": "Mionzi ya jua, wastani wa mwaka",
    "rests_on.key": "Kitambulisho",
    "rests_on.label": "Data",
    "rests_on.value": "Thamani",
    "rests_on.unit": "Kipimo",
    "rests_on.tried": "Iliyojaribiwa",
    "rests_on.met": "Mahitaji yaliyokidhiwa %",
    "rests_on.cost": "Gharama za muda wote {currency}",
    "rests_on.source": "Inatoka wapi",
    "rests_on.pair": "{low} / {high}",
    "rests_on.none": (
        "Kile ambacho hakikutolewa kilijaribiwa chini na juu (namba {count}): hakuna kinachobadilisha jibu kwa kiasi "
        "kikubwa; kila thamani ambayo haikutolewa imo kwenye laha 'Data'"
    ),
    "rests_on.more": (
        "na nyingine {count}, zinazolibadilisha kidogo zaidi; kila thamani ambayo haikutolewa imo kwenye laha 'Data'"
    ),
}
