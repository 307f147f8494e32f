"""Kiswahili cha majibu: ulinganisho, ukubwa, kama chanzo kinafaa, uchunguzi na faida."""

SENTENCES: dict[str, str] = {
    "option_source.solar": "sola",
    "option_source.grid": "gridi",
    "option_source.generator": "jenereta",
    "source.solar": "jua",
    "source.grid": "gridi ya umeme",
    "source.generator": "jenereta",
    "source.list": "{others} na {last}",
    "answer.best": (
        "Kati ya machaguo yanayotimiza lengo la {target:g} % ya maji, lenye gharama ndogo zaidi ni {option}: gharama "
        "za uwekezaji {capital_cost}, gharama za muda wote (thamani ya sasa) {life_cycle_cost} kwa kipindi cha "
        "uchambuzi cha miaka {years}, gharama ya wastani ya maji {per_m3} kwa m3."
    ),
    "answer.best_incomplete": (
        "Kati ya machaguo yanayotimiza lengo la {target:g} % ya maji, lenye gharama ndogo zaidi ni {option}. Jumla "
        "yake haijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: {unpriced}; vilivyobaki vina gharama za muda "
        "wote (thamani ya sasa) za {life_cycle_cost} kwa kipindi cha uchambuzi cha miaka {years} na gharama ya "
        "wastani ya maji ya {per_m3} kwa m3."
    ),
    "answer.in_money_of_year_0": "Gharama ya wastani ni kwa fedha ya mwaka 0.",
    "answer.none_meets": (
        "Hakuna chaguo linalotimiza lengo la {target:g} % ya maji; lililo karibu zaidi ni {option} kwa "
        "{delivered:.1f} %, kwa gharama za muda wote (thamani ya sasa) za {life_cycle_cost} kwa kipindi cha "
        "uchambuzi cha miaka {years}."
    ),
    "answer.none_meets_incomplete": (
        "Hakuna chaguo linalotimiza lengo la {target:g} % ya maji; lililo karibu zaidi ni {option} kwa "
        "{delivered:.1f} %. Jumla yake haijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: {unpriced}; "
        "vilivyobaki vina gharama za muda wote (thamani ya sasa) za {life_cycle_cost} kwa kipindi cha uchambuzi cha "
        "miaka {years}."
    ),
    "answer.why_none": (
        "Katika mwezi mbaya zaidi, {month}, {asked:.1f} m3 kwa siku zinahitajika: saa {needed:.1f} za kusukuma kwa "
        "mtiririko wa {flow:.2f} m3/h ambao pampu, bomba na kisima kirefu hutoa hapa. {option} hutoa kiasi sawa na "
        "saa {ran:.1f} za namna hiyo: kingehitajika kimojawapo cha hivi: saa zaidi za umeme, mtiririko mkubwa zaidi "
        "ndani ya kile ambacho kisima kirefu kinaweza kutoa, au mahitaji madogo zaidi."
    ),
    "answer.why_none_at_all": (
        "Katika mwezi mbaya zaidi, {month}, {asked:.1f} m3 kwa siku zinahitajika: saa {needed:.0f} za kusukuma kwa "
        "mtiririko wa {flow:.2f} m3/h ambao pampu, bomba na kisima kirefu hutoa hapa, na siku ina saa 24. {option} "
        "hutoa kiasi sawa na saa {ran:.1f} za namna hiyo: kingehitajika kimojawapo cha hivi: mtiririko mkubwa zaidi, "
        "ndani ya kile ambacho kisima hiki kirefu kinaweza kutoa au kutoka kingine, au mahitaji madogo zaidi."
    ),
    "answer.next_best": (
        "Chaguo la pili kwa ubora: {option}, kwa gharama ya ziada ya {gap} katika kipindi cha uchambuzi "
        "({percent:.1f} %)."
    ),
    "answer.next_best_close": (
        "Chaguo la pili kwa ubora: {option}, kwa gharama ya ziada ya {gap} katika kipindi cha uchambuzi "
        "({percent:.1f} %): tofauti ni ndogo mno kuamua kwa gharama peke yake."
    ),
    "answer.next_best_unpriced": (
        "Hiyo haihesabu vitu visivyo na bei ambavyo havihitajiki kwa {option} ({unpriced}): weka bei zake, kwani "
        "zinaweza kubadilisha mpangilio."
    ),
    "answer.only_one_days": (
        "Ni chaguo pekee linalotimiza lengo; {option} huwa na upungufu kwa siku {days:.0f} mfululizo, wakati "
        "zinazoruhusiwa ni {allowed}."
    ),
    "answer.only_one_worst_year": (
        "Ni chaguo pekee linalotimiza lengo; {option} huwa na upungufu katika mwaka wake mbaya zaidi, kwa "
        "{percent:.1f} %."
    ),
    "answer.only_one_share": (
        "Ni chaguo pekee linalotimiza lengo; {option} hupungukiwa kwa pointi za asilimia {points:.1f}."
    ),
    "answer.top_up_needed": (
        "Nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) inahitajika "
        "kwa lengo: huongeza maji yanayotolewa kutoka {alone:.1f} % hadi {topped_up:.1f} % kwa gharama ya ziada ya "
        "{gap} katika kipindi cha uchambuzi."
    ),
    "answer.top_up_needed_and_saves": (
        "Nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) inahitajika "
        "kwa lengo: huongeza maji yanayotolewa kutoka {alone:.1f} % hadi {topped_up:.1f} % na hata huokoa {gap} "
        "katika kipindi cha uchambuzi."
    ),
    "answer.top_up_misses": (
        "Nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) hubadilisha "
        "maji yanayotolewa kutoka {alone:.1f} % hadi {topped_up:.1f} %, kiasi ambacho bado hakitimizi lengo."
    ),
    "answer.top_up_not_worth": (
        "Nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) haina maana "
        "kwa lengo: jua peke yake hulitimiza, na nishati ya nyongeza ina gharama ya ziada ya {gap} katika kipindi "
        "cha uchambuzi (maji yanayotolewa: {alone:.1f} % bila hiyo, {topped_up:.1f} % pamoja nayo)."
    ),
    "answer.top_up_worth": (
        "Nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) inafaa: huokoa "
        "{gap} katika kipindi cha uchambuzi ikilinganishwa na jua peke yake, hasa kwa safu ya paneli au tanki dogo "
        "zaidi, na hubadilisha maji yanayotolewa kutoka {alone:.1f} % hadi {topped_up:.1f} %."
    ),
    "answer.top_up_alike_cheaper": (
        "Kwa nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) gharama ni "
        "karibu sawa na za jua peke yake, pungufu kwa {gap} katika kipindi cha uchambuzi; maji yanayotolewa "
        "hubadilika kutoka {alone:.1f} % hadi {topped_up:.1f} %."
    ),
    "answer.top_up_alike_dearer": (
        "Kwa nishati ya nyongeza kutoka {sources} (kusukuma kwa nishati hiyo pale jua na tanki havitoshi) gharama ni "
        "karibu sawa na za jua peke yake, zaidi kwa {gap} katika kipindi cha uchambuzi; maji yanayotolewa hubadilika "
        "kutoka {alone:.1f} % hadi {topped_up:.1f} %."
    ),
    "answer.sun_saves": (
        "{option} huokoa {gap} katika kipindi cha uchambuzi ikilinganishwa na chaguo bora lisilotumia jua: {other}."
    ),
    "answer.sun_costs": (
        "{option} huwa na gharama ya ziada ya {gap} katika kipindi cha uchambuzi ikilinganishwa na chaguo bora "
        "lisilotumia jua: {other}."
    ),
    "answer.levels_good": (
        "Katika {option} swichi ya boya huanzisha nishati ya nyongeza tanki likiwa na {start:g} % na kuisimamisha "
        "likiwa na {stop:g} %; hakuna mpangilio uliojaribiwa ambao ungeokoa zaidi ya 0.5 % ya gharama yake ya "
        "wastani kwa mwaka."
    ),
    "answer.levels_better": (
        "Katika {option} swichi ya boya imewekwa kwenye {start:g}/{stop:g} % ya tanki; "
        "{better_start:g}/{better_stop:g} % pia ingetimiza lengo na kuokoa {saving} kwa mwaka."
    ),
    "sizing_answer.array": "paneli za sola {modules} katika mifululizo {strings} ({kwp:.1f} kWp)",
    "sizing_answer.array_one_string": "paneli za sola {modules} katika mfululizo 1 ({kwp:.1f} kWp)",
    "sizing_answer.strings": "mifululizo {strings}",
    "sizing_answer.one_string": "mfululizo 1",
    "sizing_answer.tank": "tanki la {tank_m3:g} m3",
    "sizing_answer.switch": "swichi ya boya kwenye {start:g}/{stop:g} %",
    "sizing_answer.hours": "kusukuma kwa gridi au jenereta {hours}",
    "sizing_answer.best": (
        "Kati ya miundo {tried:,} iliyojaribiwa, kila mmoja ukiendeshwa kwa kila saa ya kipindi cha uchambuzi cha "
        "miaka {years}, wa bei nafuu zaidi unaotimiza lengo la {target:g} % ya maji ni {option} pamoja na {design}: "
        "gharama za uwekezaji {capital_cost}, gharama za muda wote (thamani ya sasa) {life_cycle_cost}, maji "
        "yanayotolewa {delivered:.1f} %."
    ),
    "sizing_answer.best_incomplete": (
        "Kati ya miundo {tried:,} iliyojaribiwa, kila mmoja ukiendeshwa kwa kila saa ya kipindi cha uchambuzi cha "
        "miaka {years}, wa bei nafuu zaidi unaotimiza lengo la {target:g} % ya maji ni {option} pamoja na {design}: "
        "maji yanayotolewa {delivered:.1f} %. Jumla yake haijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: "
        "{unpriced}; vilivyobaki vina gharama za muda wote (thamani ya sasa) za {life_cycle_cost} kwa kipindi cha "
        "uchambuzi cha miaka {years}."
    ),
    "sizing_answer.none_meets": (
        "Hakuna muundo kati ya {tried:,} iliyojaribiwa unaotimiza lengo; ulio karibu zaidi ni {option} pamoja na "
        "{design}: {misses}. Gharama zake za uwekezaji ni {capital_cost}, gharama za muda wote (thamani ya sasa) "
        "{life_cycle_cost} kwa kipindi cha uchambuzi cha miaka {years}."
    ),
    "sizing_answer.none_meets_incomplete": (
        "Hakuna muundo kati ya {tried:,} iliyojaribiwa unaotimiza lengo; ulio karibu zaidi ni {option} pamoja na "
        "{design}: {misses}. Jumla yake haijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: {unpriced}; "
        "vilivyobaki vina gharama za muda wote (thamani ya sasa) za {life_cycle_cost} kwa kipindi cha uchambuzi cha "
        "miaka {years}."
    ),
    "sizing_answer.misses_share": (
        "ulio bora kati ya miundo {count:,} hutoa {delivered:.1f} % na hukosa lengo la {target:g} % kwa pointi za "
        "asilimia {points:.1f}"
    ),
    "sizing_answer.misses_days": (
        "ulio bora kati ya miundo {count:,} huwa na upungufu siku {days:.0f} mfululizo, siku {more:.0f} zaidi ya "
        "zinazoruhusiwa"
    ),
    "sizing_answer.misses_worst_year": (
        "ulio bora kati ya miundo {count:,} hutoa {delivered:.1f} % katika mwaka wake mbaya zaidi na hukosa "
        "kinachotakiwa kwa mwaka huo kwa pointi za asilimia {points:.1f}"
    ),
    "sizing_answer.float_switch": (
        "Swichi ya boya kwa {option}: kusukuma kwa gridi au jenereta huanza {start_m3:.3g} m3 zikibaki kwenye tanki "
        "({start:g} %, kupimwa kutoka chini) na husimama kwa {stop_m3:.3g} m3 ({stop:g} %); katika tanki lenye kuta "
        "wima asilimia hizohizo hutumika kwa kina cha maji."
    ),
    "sizing_answer.float_switch_and_timer": (
        "Swichi ya boya kwa {option}: kusukuma kwa gridi au jenereta huanza {start_m3:.3g} m3 zikibaki kwenye tanki "
        "({start:g} %, kupimwa kutoka chini) na husimama kwa {stop_m3:.3g} m3 ({stop:g} %), pamoja na kipima muda "
        "kinachoiruhusu kufanya kazi {hours}; katika tanki lenye kuta wima asilimia hizohizo hutumika kwa kina cha "
        "maji."
    ),
    "sizing_answer.steady_start": (
        "Viwango vya kuanzia kutoka {low:g} % hadi {high:g} % vina gharama zisizotofautiana nayo kwa zaidi ya 2 %."
    ),
    "sizing_answer.no_rival": (
        "Hakuna muundo mwingine wa {option} unaotimiza lengo wenye gharama zisizotofautiana nayo kwa zaidi ya 2 %."
    ),
    "sizing_answer.one_rival": (
        "Muundo mwingine mmoja wa {option} una gharama zisizotofautiana nayo kwa zaidi ya 2 %: {design} "
        "({percent:.2f} % zaidi)."
    ),
    "sizing_answer.rivals": (
        "Miundo mingine {count:,} ya {option} ina gharama zisizotofautiana nayo kwa zaidi ya 2 %, wa kwanza: "
        "{design} ({percent:.2f} % zaidi)."
    ),
    "sizing_answer.out_of_reach": (
        "Ili kufikia lengo, panua majaribio (mifululizo zaidi, matanki makubwa zaidi), ongeza chanzo, au taka chini "
        "ya {target:g} %."
    ),
    "sizing_answer.no_higher_target": "Lengo ni {target:g} %: hakuna zaidi ya hapo.",
    "sizing_answer.higher_beyond": (
        "Kupandisha lengo kutoka {target:g} % hadi {higher:g} % ni zaidi ya uwezo wa kila muundo wa {option}."
    ),
    "sizing_answer.higher_free": (
        "Kupandisha lengo kutoka {target:g} % hadi {higher:g} % hakuna gharama: muundo huu tayari hutoa "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds": (
        "Kupandisha lengo kutoka {target:g} % hadi {higher:g} % huongeza {cost} kwenye gharama za muda wote ({option})."
    ),
    "sizing_answer.run_same": "'planner run' huchukua muundo uleule kwa {option}.",
    "sizing_answer.as_given": "kile kilichotolewa na senario",
    "sizing_answer.run_dearer": (
        "Chukua {change} badala ya {instead}, ambayo huchukuliwa na 'planner run' kwa {option}: hutimiza lengo na "
        "hugharimu pungufu kwa {gap} katika kipindi cha uchambuzi."
    ),
    "sizing_answer.run_cheaper": (
        "Chukua {change} kwa {option}; 'planner run' huchukua {instead}, ambayo hugharimu pungufu kwa {gap} katika "
        "kipindi cha uchambuzi."
    ),
    "sizing_answer.run_misses": "Muundo huo mwingine haufikii lengo.",
    "worth_answer.incomplete": "Gharama hazijakamilika, kwa kuwa bei haijawekwa kwa vifuatavyo: {unpriced}.",
    "worth_answer.needed": (
        "Ndiyo, kinahitajika: {source}. Bila chanzo hiki chaguo bora, {without}, hutoa {lacking:.1f} % ya maji "
        "badala ya lengo la {target:g} %."
    ),
    "worth_answer.needed_in_worst_year": (
        "Ndiyo, kinahitajika: {source}. Bila chanzo hiki chaguo bora, {without}, hukosa lengo katika mwaka wake "
        "mbaya zaidi ({lacking:.1f} %)."
    ),
    "worth_answer.needed_dearer": (
        "Pamoja nacho chaguo bora, {option}, hutoa {delivered:.1f} % ya maji kwa gharama ya ziada ya {gap} katika "
        "kipindi cha uchambuzi cha miaka {years}."
    ),
    "worth_answer.needed_cheaper": (
        "Pamoja nacho chaguo bora, {option}, hutoa {delivered:.1f} % ya maji na hata hugharimu pungufu kwa {gap} "
        "katika kipindi cha uchambuzi cha miaka {years}."
    ),
    "worth_answer.only_without": (
        "Hapana, hakifai kuwa nacho: {source}. Bila chanzo hiki {without} hutimiza lengo la {target:g} % kwa gharama "
        "za muda wote (thamani ya sasa) za {life_cycle_cost} katika kipindi cha uchambuzi cha miaka {years}, na "
        "hakuna chaguo lenye chanzo hiki linalolitimiza."
    ),
    "worth_answer.neither": (
        "Hakuna muundo unaotimiza lengo la {target:g} % ya maji, iwe pamoja na chanzo hiki au bila chanzo hiki: "
        "{source}."
    ),
    "worth_answer.neither_more": (
        "Pamoja nacho chaguo bora, {option}, hutoa {delivered:.1f} %, pointi za asilimia {points:.1f} zaidi ya "
        "{without}."
    ),
    "worth_answer.neither_less": (
        "Pamoja nacho chaguo bora, {option}, hutoa {delivered:.1f} %, pointi za asilimia {points:.1f} chini ya "
        "{without}."
    ),
    "worth_answer.neither_dearer": "Hugharimu {gap} zaidi katika kipindi cha uchambuzi cha miaka {years}.",
    "worth_answer.neither_cheaper": "Hugharimu pungufu kwa {gap} katika kipindi cha uchambuzi cha miaka {years}.",
    "worth_answer.hardly_matters": (
        "Hakuna tofauti kubwa kama una chanzo hiki au huna: {source}. Gharama za muda wote (thamani ya sasa) kwa "
        "kipindi cha uchambuzi cha miaka {years} ni {cost_with} kwa chaguo la bei nafuu zaidi lenye chanzo hiki, "
        "{option}, na {cost_without} kwa la bei nafuu zaidi lisilo nacho, {without}, tofauti ya {percent:.1f} %."
    ),
    "worth_answer.worth_having": (
        "Ndiyo, kinafaa kuwa nacho: {source}. Gharama za muda wote (thamani ya sasa) kwa kipindi cha uchambuzi cha "
        "miaka {years} ni {cost_with} kwa chaguo la bei nafuu zaidi lenye chanzo hiki, {option}, na {cost_without} "
        "kwa la bei nafuu zaidi lisilo nacho, {without}, hivyo hupunguza gharama ya wastani kwa mwaka kwa {yearly}."
    ),
    "worth_answer.not_worth_having": (
        "Hapana, hakifai kuwa nacho: {source}. Gharama za muda wote (thamani ya sasa) kwa kipindi cha uchambuzi cha "
        "miaka {years} ni {cost_with} kwa chaguo la bei nafuu zaidi lenye chanzo hiki, {option}, na {cost_without} "
        "kwa la bei nafuu zaidi lisilo nacho, {without}, hivyo kingeongeza gharama ya wastani kwa mwaka kwa {yearly}."
    ),
    "worth_answer.from_now": "{value} (sasa {base})",
    "worth_answer.above_best": "Kama thamani ya {input} ingezidi {value}, chaguo bora lingekuwa {best}.",
    "worth_answer.below_best": "Kama thamani ya {input} ingeshuka chini ya {value}, chaguo bora lingekuwa {best}.",
    "worth_answer.above_misses": (
        "Kama thamani ya {input} ingezidi {value}, {first} lingekosa lengo na chaguo bora lingekuwa {best}."
    ),
    "worth_answer.below_misses": (
        "Kama thamani ya {input} ingeshuka chini ya {value}, {first} lingekosa lengo na chaguo bora lingekuwa {best}."
    ),
    "worth_answer.above_none": (
        "Kama thamani ya {input} ingezidi {value}, {first} na kila chaguo lingine lingekosa lengo."
    ),
    "worth_answer.below_none": (
        "Kama thamani ya {input} ingeshuka chini ya {value}, {first} na kila chaguo lingine lingekosa lengo."
    ),
    "worth_answer.all_turn": "Kila moja ya data zilizoangaliwa ingeweza kugeuza jibu kama ingebadilika vya kutosha.",
    "worth_answer.steady": (
        "Jibu hubaki vilevile, miundo ikiwa kama ilivyo na mengine yote kama yalivyotolewa, katika upeo wote wa: "
        "{ranges}."
    ),
    "worth_answer.range": "{input} kutoka {low} hadi {high}",
    "sweep_answer.life_cycle_cost_of": "Gharama za muda wote: {option}",
    "sweep_answer.levelised_cost_of": "Gharama ya wastani ya maji: {option}",
    "sweep_answer.lead_of": "Gharama za muda wote za {other} kutoa zile za {option}",
    "sweep_answer.no_value": "hakuna thamani",
    "sweep_answer.first_misses": "{option}, hukosa lengo",
    "sweep_answer.nothing_one_at_a_time": (
        "Hakuna data iliyobadilishwa moja moja iliyoweza kukokotolewa; sababu ya kwanza: {reason}."
    ),
    "sweep_answer.nothing_grid": "Hakuna mchanganyiko wa jedwali ulioweza kukokotolewa; sababu ya kwanza: {reason}.",
    "sweep_answer.nothing_random": (
        "Hakuna hali iliyochaguliwa kwa bahati nasibu iliyoweza kukokotolewa; sababu ya kwanza: {reason}."
    ),
    "sweep_answer.failed": (
        "Matoleo {failed:,} kati ya {count:,} hayakuweza kukokotolewa na yameachwa; yameorodheshwa pamoja na sababu."
    ),
    "sweep_answer.matters_most": (
        "Zikibadilishwa moja moja, '{input}' huwa na athari kubwa zaidi: inapotoka {low:g} hadi {high:g}, gharama za "
        "muda wote (thamani ya sasa) za {option} hutoka {cost_at_low} hadi {cost_at_high} ({cost} kama ilivyo sasa)."
    ),
    "sweep_answer.changes": "Zikibadilishwa peke yake, hizi hubadilisha jibu: {changes}.",
    "sweep_answer.changes_and_more": (
        "Zikibadilishwa peke yake, hizi hubadilisha jibu: {changes}; na nyingine {more:,}."
    ),
    "sweep_answer.change_none_meets": "'{input}' ikiwa {value:g} (hakuna chaguo linalotimiza lengo)",
    "sweep_answer.change_nearest": "'{input}' ikiwa {value:g} ({option} huwa karibu zaidi)",
    "sweep_answer.change_meets": "'{input}' ikiwa {value:g} ({option} hutimiza lengo)",
    "sweep_answer.change_first_misses": "'{input}' ikiwa {value:g} ({first} hukosa lengo, chaguo bora ni {option})",
    "sweep_answer.change_best": "'{input}' ikiwa {value:g} (chaguo bora ni {option})",
    "sweep_answer.stays_cheapest": (
        "Hakuna data ambayo, ikibadilishwa peke yake ndani ya upeo wake, hubadilisha jibu: {option} hubaki chaguo la "
        "bei nafuu zaidi linalotimiza lengo."
    ),
    "sweep_answer.stays_nearest": (
        "Hakuna data ambayo, ikibadilishwa peke yake ndani ya upeo wake, hubadilisha jibu: hakuna chaguo "
        "linalotimiza lengo, na {option} hubaki karibu nalo zaidi."
    ),
    "sweep_answer.grid": (
        "Katika michanganyiko {count:,} ya jedwali, chaguo la bei nafuu zaidi linalotimiza lengo ni: {counts}."
    ),
    "sweep_answer.grid_part": "{option} mara {count:,}",
    "sweep_answer.grid_none": "hakuna mara {count:,}",
    "sweep_answer.random": (
        "Katika hali 100 zilizochaguliwa kwa bahati nasibu, chaguo la bei nafuu zaidi linalotimiza lengo ni: "
        "{shares} (sampuli {draws:,}, hivyo kwa tofauti ya {error:.0f} juu au chini)."
    ),
    "sweep_answer.random_some_none": (
        "Katika hali 100 zilizochaguliwa kwa bahati nasibu, chaguo la bei nafuu zaidi linalotimiza lengo ni: "
        "{shares}; hakuna chaguo linalolitimiza katika {none:.0f} (sampuli {draws:,}, hivyo kwa tofauti ya "
        "{error:.0f} juu au chini)."
    ),
    "sweep_answer.random_none": (
        "Katika hali {draws:,} zilizochaguliwa kwa bahati nasibu hakuna hata moja ambapo chaguo lolote hutimiza lengo."
    ),
    "sweep_answer.random_share": "{option} katika {cases:.0f}",
    "sweep_answer.random_cost": (
        "Gharama za muda wote (thamani ya sasa) za {option} huzidi {low} katika hali 90 kati ya 100, na huzidi "
        "{high} katika 10 kati ya 100."
    ),
    "sweep_answer.measured_weather": (
        "Kwa mahitaji ya mwaka wa matumizi {life_year}, miaka tisa kati ya kumi ya hali ya hewa iliyopimwa (miaka "
        "{years:,} ilijaribiwa) hutoa angalau sehemu hii ya maji: {shares}."
    ),
    "sweep_answer.synthetic_weather": (
        "Kwa mahitaji ya mwaka wa matumizi {life_year}, miaka tisa kati ya kumi ya hali ya hewa iliyotengenezwa "
        "(miaka {years:,} ilijaribiwa) hutoa angalau sehemu hii ya maji: {shares}."
    ),
    "sweep_answer.weather_share": "{option} {percent:.1f} %",
    "sweep_answer.few_years": "Kwa miaka {years} tu, hii si zaidi sana ya mwaka mbaya zaidi kati yao.",
    "sweep_answer.chosen_anew": (
        "Kile ambacho senario huachia programu (tanki, mifululizo, swichi ya boya) kilichaguliwa upya katika kila "
        "toleo."
    ),
    "sweep_answer.built_once": (
        "Tanki, mifululizo na swichi ya boya hubaki kama vilivyochaguliwa kwa senario ilivyo, isipokuwa "
        "vikibadilishwa vyenyewe: miundombinu hujengwa mara moja."
    ),
    "returns.no_outlay": (
        "gharama zake za uwekezaji si kubwa kuliko za chaguo la marejeo, hivyo hakuna matumizi ya ziada ya kuleta faida"
    ),
    "returns.never_saves": "miaka yake ya baadaye haiokoi chochote ambacho kingelipia gharama za ziada za uwekezaji",
    "returns.loses_all": (
        "hakuna kiwango kilicho juu ya -100 % ambapo akiba ya baadaye ina thamani zaidi ya gharama za ziada za "
        "uwekezaji"
    ),
    "returns.several": "viwango kadhaa husawazisha matumizi na akiba, hivyo hakuna kilicho jibu",
    "returns.at_once": "gharama zake za uwekezaji si kubwa kuliko za chaguo la marejeo na kamwe halibaki nyuma",
    "returns.not_recovered": "gharama za ziada za uwekezaji hazirejeshwi kwa kudumu ndani ya kipindi cha uchambuzi",
}
