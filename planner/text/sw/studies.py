"""Kiswahili cha ukubwa, kama chanzo kinafaa, uchunguzi, ulinganisho, kaguzi na hali ya hewa."""

SENTENCES: dict[str, str] = {
    "figure.heading": "{label} ({unit})",
    "figure.heading_in_bracket": "{label}, {unit})",
    "studies.answer": "Jibu",
    "studies.how_found": "Jinsi ilivyopatikana",
    "studies.option": "Chaguo la nishati",
    "studies.meets_target": "Hutimiza lengo",
    "studies.yes": "✓ ndiyo",
    "studies.no": "✗ hapana",
    "studies.option_cost": "{option} ({currency})",
    "size.note": (
        "Kila muundo uliendeshwa saa kwa saa kwa kila mwaka wa matumizi na kukokotolewa gharama: hakuna "
        "kilichorukwa. Gharama za muda wote ni thamani ya sasa ya gharama zote kutoa thamani ya miundombinu "
        "mwishoni. Kagua uteuzi wowote dhidi ya uwezo wa kisima kirefu kabla ya kujenga."
    ),
    "size.answer_under": "Kupanga ukubwa; fedha kwa {currency}",
    "size.switches": "Swichi za boya, kwa chaguo la nishati",
    "size.unmet": "! {option} haliwezi kutimiza lengo: {why}.",
    "size.left_out": "Kilichoachwa kwa {option}: {what}.",
    "size.best": "Miundo bora",
    "size.best_of": "{scenario}: muundo wa bei nafuu zaidi wa kila chaguo la nishati",
    "size.best_under": "Wa bei nafuu zaidi unaotimiza lengo; pale ambapo hakuna, ule unaolikosa kwa kidogo zaidi.",
    "size.starts_at_m3": "Nyongeza huanza kwa (m3 kutoka chini)",
    "size.stops_at_m3": "Nyongeza husimama kwa (m3 kutoka chini)",
    "size.hours": "Saa za nyongeza",
    "size.pump_and_pipes": "Pampu na mabomba",
    "size.tried": "Miundo iliyojaribiwa",
    "size.by_run": "Gharama ya muundo wa 'planner run' ({currency})",
    "size.misses_by": "Hukosa kwa (pointi za asilimia)",
    "size.runners": "Miundo inayofuata",
    "size.runners_under": (
        "Mingine inayotimiza lengo kwa si zaidi ya asilimia {percent} juu ya ulio bora wa chaguo lake."
    ),
    "size.first_runners": "{option}: mingine ndani ya asilimia {percent}, {count} kati ya {all} imeonyeshwa",
    "size.above_best": "Juu ya ulio bora (%)",
    "size.front": "Ulinganifu wa gharama na huduma",
    "size.front_under": (
        "Miundo ambayo hakuna mwingine wa chaguo hilohilo unaoishinda kwa gharama za muda wote na kwa mahitaji "
        "yaliyokidhiwa kwa pamoja."
    ),
    "size.front_chart": "Gharama ya huduma zaidi",
    "size.front_alt": (
        "Gharama ndogo zaidi za muda wote dhidi ya mahitaji yaliyokidhiwa katika kipindi cha uchambuzi, mstari mmoja "
        "kwa chaguo: {options}."
    ),
    "size.service": "Gharama ya huduma",
    "size.service_under": "Gharama ndogo zaidi za muda wote za muundo unaotoa angalau kiasi hiki cha maji.",
    "size.service_heading": "Gharama ndogo zaidi za muda wote ({currency}) zinazotoa angalau kiasi hiki cha maji",
    "size.share": "Mahitaji yaliyokidhiwa",
    "size.at_least": "angalau {percent} %",
    "size.at_least_target": "angalau {percent} %, lengo",
    "size.not_reached": "haikufikiwa",
    "size.service_chart": "Gharama ndogo zaidi za muda wote kwa huduma",
    "size.service_alt": (
        "Gharama ndogo zaidi za muda wote kwa mahitaji yaliyokidhiwa, nguzo moja kwa chaguo: {options}."
    ),
    "worth.title": "Je, inafaa kuwa na chanzo hiki: {source}?",
    "worth.answer_under": "{scenario}; fedha kwa {currency}",
    "worth.options": "Pamoja na bila",
    "worth.options_under": "Muundo wa kila chaguo ni ule unaochaguliwa na uendeshaji wa kawaida; chanzo: {source}.",
    "worth.options_heading": "{scenario}: pamoja na bila {source}",
    "worth.options_chart": "Gharama za muda wote pamoja na (nyeusi) na bila (nyepesi) {source}",
    "worth.options_alt": (
        "Gharama za muda wote za kila chaguo, bora kwanza, nyeusi pamoja na nyepesi bila {source}: {options}."
    ),
    "worth.option": "Chaguo la nishati, bora kwanza",
    "worth.has_source": "Lina {source}",
    "worth.has_it": "linacho",
    "worth.saving": "Kuongeza {source} huokoa ({currency}; hasi: hugharimu zaidi)",
    "worth.switching": "Thamani za kugeuza",
    "worth.switching_under": (
        "Pale ambapo {having} na {lacking} yana gharama sawa za muda wote, miundo ikiwa haibadiliki."
    ),
    "worth.switching_heading": "Pale ambapo {having} na {lacking} yana gharama sawa, na pale ambapo jibu hugeuka",
    "worth.switching_chart": "Kila data ingepaswa kubadilika kwa kiasi gani",
    "worth.switching_alt": "Badiliko la kila data, peke yake, ambapo {having} na {lacking} yana gharama sawa.",
    "worth.input": "Data",
    "worth.unit": "Kipimo",
    "worth.base": "Sasa",
    "worth.value": "Thamani ya kugeuza",
    "worth.change_percent": "Badiliko kutoka sasa (%)",
    "worth.change_axis": "Badiliko la data linalofanya gharama za yote mawili ziwe sawa (%)",
    "worth.key": "Kitambulisho kwenye senario",
    "worth.alike": "hubadilisha yote mawili sawasawa",
    "worth.none": "hakuna kutoka {low} hadi {high}",
    "worth.none_beyond": "hakuna kutoka {low} hadi {high} (ingekuwa {beyond})",
    "worth.jump": "{value}: mruko, gharama hazikutani hapo",
    "worth.no_longer_serves": "{value}, lakini hapo moja halitimizi tena lengo kama sasa",
    "worth.turn": "{value}: {best}",
    "worth.none_serves": "hakuna linalotimiza lengo",
    "worth.nowhere": "hakuna mahali ndani ya upeo",
    "worth.map": "Ramani",
    "worth.map_under": "Chaguo bora kwa {down}, kwenda chini, na {across}, kwenda kando; miundo ikiwa haibadiliki.",
    "worth.map_corner": "{down} / {across}",
    "worth.map_cost": "Ya chaguo bora: {cost}",
    "worth.map_chart": "Gharama za muda wote za chaguo bora",
    "worth.map_alt": "Gharama za muda wote za chaguo bora kwa {across}, mstari mmoja kwa kila thamani ya {down}.",
    "worth.misses": "{option} (hukosa lengo)",
    "sweep.title": "{scenario}: kisicho na uhakika",
    "sweep.options": "Senario kama ilivyo",
    "sweep.options_of": "{scenario}, kama ilivyo",
    "sweep.inputs": "Data zilizobadilishwa",
    "sweep.input": "Data",
    "sweep.mode": "Uchunguzi",
    "sweep.base": "Kama ilivyo",
    "sweep.lowest": "Chini zaidi",
    "sweep.highest": "Juu zaidi",
    "sweep.unit": "Kipimo",
    "sweep.changes": "Kinachokokotolewa upya",
    "sweep.changes_weather": "hali ya hewa na saa upya",
    "sweep.changes_run": "saa upya, hali ya hewa ileile",
    "sweep.changes_money": "bei tu, saa zilezile",
    "sweep.changes_nothing": "hakuna: inakaguliwa tu",
    "sweep.chosen": "huchaguliwa na programu",
    "sweep.no_value": "hakuna thamani",
    "sweep.none": "hakuna",
    "sweep.failed": "imeshindikana",
    "sweep.cheapest": "La bei nafuu zaidi linalotimiza lengo",
    "sweep.left_out": "Yaliyoachwa",
    "sweep.left_out_title": "Matoleo ambayo hayakuweza kukokotolewa",
    "sweep.left_out_under": "Mengine yote yalikokotolewa.",
    "sweep.key": "Kitambulisho",
    "sweep.variant": "Toleo",
    "sweep.given": "Data",
    "sweep.why": "Kosa ni nini",
    "sweep.mode_one_at_a_time": "moja moja",
    "sweep.mode_grid": "gridi",
    "sweep.mode_random": "nasibu",
    "sweep.one_at_a_time": "Moja moja",
    "sweep.one_at_a_time_title": "Data moja kwa wakati",
    "sweep.one_at_a_time_under": (
        "Kila data huenda kwenye thamani yake ya chini na ya juu huku nyingine zote zikibaki; data zimepangwa kwa "
        "ukubwa wa mabadiliko. Chaguo bora hapo ni la bei nafuu zaidi linalotimiza lengo, au, pale ambapo hakuna, "
        "linalotoa maji mengi zaidi. Kielezo ni asilimia ya badiliko la matokeo kwa kila asilimia ya badiliko la "
        "data, upande ulio mkubwa zaidi (ADB)."
    ),
    "sweep.low_value": "Thamani ya chini",
    "sweep.high_value": "Thamani ya juu",
    "sweep.at_low": "Kwa ya chini",
    "sweep.at_high": "Kwa ya juu",
    "sweep.swing": "Mabadiliko",
    "sweep.low_less_base": "Ya chini kutoa ya msingi",
    "sweep.high_less_base": "Ya juu kutoa ya msingi",
    "sweep.indicator": "Kielezo",
    "sweep.best_at_low": "Bora kwa ya chini",
    "sweep.best_at_high": "Bora kwa ya juu",
    "sweep.tornado_cost": "{option}: {figure}",
    "sweep.tornado_levelised": "{option}: {figure}",
    "sweep.tornado_lead": "{second} kutoa {option}: {figure}",
    "sweep.tornado_heading": "{title}; kama senario ilivyo: {value}",
    "sweep.tornado_of": "{scenario}: {tornado}",
    "sweep.tornado_chart": "Badiliko la: {title}",
    "sweep.tornado_alt": (
        "Chati ya tornado ya {title}: badiliko kwa kila data ikiwa kwenye thamani yake ya chini na ya juu; "
        "linalobadilisha zaidi ni {largest}."
    ),
    "sweep.input_low": "Data ya chini",
    "sweep.input_high": "Data ya juu",
    "sweep.change": "Badiliko kutoka senario kama ilivyo",
    "sweep.grid": "Jedwali",
    "sweep.grid_title": "Michanganyiko yote",
    "sweep.grid_under": (
        "Michanganyiko {count}; chaguo la bei nafuu zaidi linalotimiza lengo la huduma katika kila mmoja, na gharama "
        "za muda wote za kila chaguo."
    ),
    "sweep.more_combinations": "Michanganyiko mingine {count} imo kwenye faili la safu.",
    "sweep.grid_alt": "Gharama za muda wote kwa {input}, mstari mmoja kwa chaguo: {options}.",
    "sweep.map": "La bei nafuu zaidi linalotimiza lengo: {down} kwenda chini, {across} kwenda kando",
    "sweep.random": "Nasibu",
    "sweep.random_title": "Sampuli za nasibu",
    "sweep.random_under": (
        "Sampuli {draws} kwa Latin hypercube, {worked} zilikokotolewa. Uwezekano ni hesabu ya sampuli; juu au chini "
        "kwa mara mbili ya kosa sanifu la sampuli huru."
    ),
    "sweep.chances": "Uwezekano (wa hali 100)",
    "sweep.error": "Juu au chini",
    "sweep.none_meets": "hakuna linalotimiza lengo",
    "sweep.chances_chart": "Ni mara ngapi kila chaguo ni bora, na hutimiza lengo",
    "sweep.chances_alt": (
        "Kati ya hali 100, ni katika ngapi kila chaguo ni la bei nafuu zaidi linalotimiza lengo, na ni katika ngapi "
        "hutimiza lengo: {options}."
    ),
    "sweep.of_100": "Kati ya hali 100",
    "sweep.percentile": "P{percent}: {meaning}",
    "sweep.percentiles": "{figure}: thamani kwa idadi ya hali kati ya 100 zinazoizidi",
    "sweep.exceeded_in": "huzidiwa katika hali {cases:g} kati ya 100",
    "sweep.exceeded": "hali zinazoizidi, kati ya 100",
    "sweep.exceeded_chart": "Gharama za muda wote na ni mara ngapi huzidiwa",
    "sweep.exceeded_alt": (
        "Kati ya hali 100, ni ngapi huzidi gharama za muda wote, mstari mmoja kwa chaguo: {options}."
    ),
    "sweep.exceeded_axis": "Hali zinazoizidi, kati ya 100",
    "sweep.correlations": "Uwiano wa nafasi wa kila data na gharama za muda wote (Spearman)",
    "sweep.correlation_note": (
        "1: gharama daima huongezeka na data; -1: daima hupungua; karibu na 0: data haina athari kubwa."
    ),
    "sweep.does_not_vary": "haibadiliki",
    "sweep.weather": "Miaka ya hali ya hewa",
    "sweep.measured": "iliyopimwa, kutoka faili la hali ya hewa",
    "sweep.synthetic": "iliyotengenezwa",
    "sweep.weather_under": (
        "Miaka {years} ({kind}), kila mmoja kwa mahitaji ya mwaka wa matumizi {life_year} na safu ya paneli ikiwa "
        "imechakaa kwa kiwango cha wakati huo, kuanzia na kile ambacho mwaka uliotangulia uliacha kwenye tanki; "
        "kukatika kwa umeme wa gridi huchaguliwa upya kwa nasibu kila mwaka."
    ),
    "sweep.worst": (
        "Mwaka mbaya zaidi katika kumi: mahitaji yaliyokidhiwa ambayo miaka tisa kati ya kumi hufikia au huzidi (%)"
    ),
    "sweep.worst_in_ten": "Mwaka mbaya zaidi katika kumi",
    "sweep.mean": "Wastani wa miaka",
    "sweep.lowest_year": "Wa chini zaidi kati ya miaka",
    "sweep.highest_year": "Wa juu zaidi kati ya miaka",
    "sweep.years": "Mahitaji yaliyokidhiwa kwa mwaka (%), mwaka wenye jua dogo zaidi kwanza",
    "sweep.irradiation": "Mionzi ya jua mlalo (GHI, kWh/m2)",
    "sweep.demand_met": "Mahitaji yaliyokidhiwa (%)",
    "sweep.weather_chart": "Mahitaji yaliyokidhiwa na mionzi ya jua ya mwaka",
    "sweep.weather_alt": (
        "Mahitaji yaliyokidhiwa dhidi ya mionzi ya jua ya kila mwaka, alama moja kwa mwaka na chaguo: {options}."
    ),
    "compare.programme": "Programu",
    "compare.option": "Gharama ndogo zaidi, au karibu zaidi",
    "compare.option_technical": "La kwanza linalotimiza lengo, au lililo karibu zaidi",
    "compare.meets": "Hutimiza lengo",
    "compare.grant_per_person": "Ruzuku kwa mtu ({currency}/mtu)",
    "compare.all_sites": "Maeneo yote {count} (mwaka mbaya zaidi: wa lile baya zaidi)",
    "compare.rate": "{scenario}: bei kwa {own}, kwa {own} {rate:,.10g} kwa {currency} 1.",
    "compare.side": "Bega kwa bega",
    "compare.side_title": "Senario bega kwa bega",
    "compare.side_under": (
        "Chaguo la kwanza la kila senario, au, pale ambapo hakuna linalotimiza lengo lake, linalotoa maji mengi "
        "zaidi; halipendekezwi wakati kaguzi za eneo zimeshindikana, na gharama yake haijakamilika pale bei "
        "zinapokosekana. Fedha kwa {currency}."
    ),
    "compare.differ": "! Senario zina tofauti katika: {what}. Linganisha gharama zake kwa uangalifu.",
    "compare.differ_analysis_period": "vipindi vya uchambuzi",
    "compare.differ_discount_rate": "viwango vya punguzo",
    "compare.differ_prices": "aina za bei",
    "compare.differ_inflation": "viwango vya mfumuko wa bei",
    "compare.differ_target": "malengo ya huduma",
    "compare.numbered": "{name} ({number})",
    "compare.figure": "Takwimu",
    "compare.unit": "Kipimo",
    "compare.place": "Mahali",
    "compare.first": "Gharama ndogo zaidi, au karibu zaidi",
    "compare.service": "Huduma",
    "compare.failing": "Kaguzi za eneo zilizoshindikana",
    "compare.unpriced": "Bei haijawekwa kwa",
    "compare.people": "Watu, mwaka wa kwanza",
    "compare.no_people": "hakuna",
    "compare.demand": "Mahitaji katika mwaka wa kwanza",
    "compare.demand_unit": "m3/siku",
    "compare.delivered": "Yaliyotolewa, wastani",
    "compare.delivered_unit": "m3/mwaka",
    "compare.analysis_period": "Kipindi cha uchambuzi",
    "compare.analysis_period_unit": "miaka",
    "compare.discount_rate": "Kiwango cha punguzo",
    "compare.discount_rate_unit": "%/mwaka",
    "compare.prices": "Bei",
    "compare.scenario": "Senario",
    "compare.cost_axis": "Senario",
    "compare.chart_alt": "{figure}, chaguo la kwanza katika kila senario: {scenarios}.",
    "compare.all": "Machaguo yote",
    "compare.all_title": "Machaguo yote ya senario zote",
    "compare.all_under": "Bora kwanza ndani ya kila senario.",
    "compare.incomplete": "{option}, gharama haijakamilika",
    "compare.too_few": "ulinganisho unahitaji angalau senario mbili zinazoendeshwa",
    "compare.currencies": (
        "senario za sarafu tofauti haziwezi kulinganishwa ({listed}); toa bei zote kwa sarafu moja, au katika kila "
        "senario ya sarafu nyingine finance.programme_currency, ileile katika zote, na finance.exchange_rate"
    ),
    "compare.some_unpriced": (
        "senario zenye bei na zisizo na bei haziwezi kulinganishwa; sarafu haijatajwa katika: {listed}"
    ),
    "compare.in_currency": "'{scenario}' kwa {currency}",
    "weather.title": "{place}: hali ya hewa iliyotumika",
    "weather.column_month": "Mwezi",
    "weather.column_ghi_kwh_m2_day": "Mionzi ya jua mlalo (GHI, kWh/m2/siku)",
    "weather.column_ghi_lowest_year_kwh_m2_day": "mwaka wa chini zaidi (kWh/m2/siku)",
    "weather.column_ghi_highest_year_kwh_m2_day": "mwaka wa juu zaidi (kWh/m2/siku)",
    "weather.column_temperature_mean_c": "Hewa, wastani (°C)",
    "weather.column_temperature_min_c": "saa ya chini zaidi (°C)",
    "weather.column_temperature_max_c": "saa ya juu zaidi (°C)",
    "weather.one_year": "Miaka: {count}; {mean:.0f} kWh/m2 za mionzi ya jua mlalo kwa mwaka.",
    "weather.years": (
        "Miaka: {count}; {mean:.0f} kWh/m2 za mionzi ya jua mlalo kwa mwaka, kutoka {low:.0f} hadi {high:.0f}."
    ),
    "weather.note": "! {note}",
    "weather.estimate_title": "Latitudo {latitude:g}, longitudo {longitude:g}: jua na joto vilivyokadiriwa",
    "weather.estimate_clock": "Ukanda wa saa {zone}; mwinuko {altitude:.0f} m, kutoka gridi ya dunia ya pvlib.",
    "weather.estimate_use": 'Kwenye senario: [weather] kind = "estimate"',
    "weather.column_ghi_as_tabled_kwh_m2_day": "kabla ya kupunguzwa (kWh/m2/siku)",
    "weather.column_temperature_c": "Hewa, wastani (°C)",
    "check.title": "{scenario}: kaguzi za eneo",
    "check.head": "{symbol} {outcome}: {topic} - {compared}",
    "check.fail": "haifai",
    "check.caution": "tahadhari",
    "check.not given": "haikutolewa",
    "check.pass": "inafaa",
    "check.count_fail": "zilizoshindikana: {count}",
    "check.count_caution": "zenye tahadhari: {count}",
    "check.count_not given": "hazikutolewa: {count}",
    "check.count_pass": "zilizofaulu: {count}",
    "check.against": "{value} dhidi ya {limit}",
    "check.against_with_margin": "{value} dhidi ya {limit}; {margin}",
    "check.remedy": "Suluhisho: {remedy}",
    "check.source": "Kikomo kutoka: {source}",
    "check.open_one": "? Ukaguzi mmoja haukuweza kufanywa kwa kukosa takwimu; --verbose husema cha kutafuta.",
    "check.open_many": "? Kaguzi {count} hazikuweza kufanywa kwa kukosa takwimu; --verbose husema cha kutafuta.",
    "check.more": "--verbose huonyesha pia kaguzi zilizofaulu.",
}
