"""Kiswahili cha hatua inayofuata ya chaguo, na gharama ya maji yake zaidi ya yale ya jingine."""

SENTENCES: dict[str, str] = {
    "answer.only_option": (
        "{option}, chaguo pekee lililolinganishwa, hutimiza lengo la {target:g} % ya maji: gharama za uwekezaji "
        "{capital_cost}, gharama za muda wote (thamani ya sasa) {life_cycle_cost} kwa kipindi cha uchambuzi cha "
        "miaka {years}, gharama ya wastani ya maji {per_m3} kwa m3."
    ),
    "answer.only_option_incomplete": (
        "{option}, chaguo pekee lililolinganishwa, hutimiza lengo la {target:g} % ya maji. Jumla yake haijakamilika, "
        "kwa kuwa bei haijawekwa kwa vifuatavyo: {unpriced}; vilivyobaki vina gharama za muda wote (thamani ya sasa) "
        "za {life_cycle_cost} kwa kipindi cha uchambuzi cha miaka {years} na gharama ya wastani ya maji ya {per_m3} "
        "kwa m3."
    ),
    "next_step.kind.string": "mfululizo mmoja zaidi wa paneli ({strings} badala ya {strings_before})",
    "next_step.kind.tank": "tanki linalofuata ({tank:g} m3 badala ya {tank_before:g} m3)",
    "next_step.kind.string_and_tank": (
        "mfululizo mmoja zaidi wa paneli na tanki linalofuata (mifululizo {strings}, {tank:g} m3)"
    ),
    "next_step.kind.pump": "pampu nyingine ({name})",
    "next_step.kind.source": "chanzo cha ziada ({name})",
    "next_step.would_meet_dearer": (
        "Kwa {step}, {option} lingetimiza lengo: {after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa "
        "mwaka, badala ya {before:.1f} % na {days_before:.1f}. Hilo huhitaji {capital} zaidi za ujenzi; gharama zake "
        "za muda wote huwa {total}, {gap} zaidi ya zile za {best}."
    ),
    "next_step.would_meet_cheaper": (
        "Kwa {step}, {option} lingetimiza lengo: {after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa "
        "mwaka, badala ya {before:.1f} % na {days_before:.1f}. Hilo huhitaji {capital} zaidi za ujenzi; gharama zake "
        "za muda wote huwa {total}, pungufu kwa {gap} kuliko zile za {best} kama lilivyo."
    ),
    "next_step.would_meet_first": (
        "Kwa {step}, {option} lingetimiza lengo: {after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa "
        "mwaka, badala ya {before:.1f} % na {days_before:.1f}. Hilo huhitaji {capital} zaidi za ujenzi; gharama zake "
        "za muda wote huwa {total} badala ya {now}."
    ),
    "next_step.would_meet_technical": (
        "Kwa {step}, {option} lingetimiza lengo: {after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa "
        "mwaka, badala ya {before:.1f} % na {days_before:.1f}."
    ),
    "next_step.would_not": (
        "{option} hukosa lengo kwa {before:.1f} % ya maji na siku {days_before:.1f} zenye upungufu kwa mwaka, na "
        "hakuna hatua moja inayofuata inayolitimiza: kubwa zaidi hutokana na {step}, kwa {after:.1f} % na siku "
        "{days_after:.1f} zenye upungufu kwa mwaka, kwa {capital} zaidi za ujenzi."
    ),
    "next_step.would_not_technical": (
        "{option} hukosa lengo kwa {before:.1f} % ya maji na siku {days_before:.1f} zenye upungufu kwa mwaka, na "
        "hakuna hatua moja inayofuata inayolitimiza: kubwa zaidi hutokana na {step}, kwa {after:.1f} % na siku "
        "{days_after:.1f} zenye upungufu kwa mwaka."
    ),
    "next_step.would_fail": "{option} haliwezi kuongezewa hivi tu: {step}. Kaguzi hizi zingeshindikana: {checks}.",
    "next_step.close": (
        "{option} hutimiza lengo kwa pointi za asilimia {points:.1f} tu. Ili kuwa na akiba zaidi, {step} hutoa "
        "{after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa mwaka badala ya {days_before:.1f}, kwa "
        "{capital} zaidi za ujenzi; gharama zake za muda wote huwa {total} badala ya {now}."
    ),
    "next_step.close_technical": (
        "{option} hutimiza lengo kwa pointi za asilimia {points:.1f} tu. Ili kuwa na akiba zaidi, {step} hutoa "
        "{after:.1f} % ya maji na siku {days_after:.1f} zenye upungufu kwa mwaka badala ya {days_before:.1f}."
    ),
    "next_step.saves": (
        "Kwa {step}, {option} lingegharimu pungufu katika kipindi cha uchambuzi: {total} badala ya {now}, kwa "
        "{capital} zaidi za ujenzi."
    ),
    "next_step.incremental": (
        "Maji ambayo {option} hutoa zaidi ya {other} hugharimu {extra} kwa m3, dhidi ya wastani wa {average} kwa "
        "maji yote: yanafaa kuwa nayo pale ambapo kila m3 inayokosekana huwagharimu wanaoikosa zaidi ya hapo."
    ),
    "next_step.below": (
        "Kama {percent:.1f} % ya maji ingetosha badala ya {target:g} %, jibu, kwa ukubwa wote kama ulivyo hapa, "
        "lingekuwa {other} na lingegharimu pungufu kwa {gap} katika kipindi cha uchambuzi ({share:.0f} %)."
    ),
    "next_step.above": (
        "Kama zaidi ya {percent:.1f} % ya maji ingehitajika, jibu, kwa ukubwa wote kama ulivyo hapa, lingekuwa "
        "{other} na lingegharimu {gap} zaidi katika kipindi cha uchambuzi."
    ),
    "next_step.valued_same": (
        "Kila m3 inayokosekana ikithaminiwa {value}, kama ilivyowekwa, {option} bado huwa la kwanza: {total} pamoja "
        "na maji ambayo watumiaji wake hukosa."
    ),
    "next_step.valued_other": (
        "Kila m3 inayokosekana ikithaminiwa {value}, kama ilivyowekwa, {other} lingekuwa la kwanza, kwa {total} "
        "pamoja na maji ambayo watumiaji wake hukosa, dhidi ya {total_first} kwa {option}. Hakuna gharama nyingine "
        "hapa yenye thamani hiyo."
    ),
    "page.next_step": "Hatua inayofuata",
    "next_step.title": "Hatua inayofuata kwenda juu, na gharama ya maji zaidi",
    "next_step.title_technical": "Hatua inayofuata kwenda juu",
    "next_step.under": (
        "Miundombinu kama ingejengwa, ukubwa kama ulivyochaguliwa kwa kila chaguo, katika uendeshaji: "
        "kinachobadilishwa hapa hakifuatwi. Fedha kwa {currency}."
    ),
    "next_step.under_technical": "Miundombinu kama ingejengwa: ukubwa kama ulivyochaguliwa kwa kila chaguo.",
    "next_step.steps": "Hatua zinazofuata",
    "next_step.option": "Chaguo la nishati",
    "next_step.step": "Hatua",
    "next_step.why_not": "Haiwezekani kama ilivyo: kaguzi ambazo zingeshindikana",
    "next_step.more_capital": "Zaidi za ujenzi ({currency})",
    "next_step.more_cost": "Zaidi kwa muda wote ({currency})",
    "next_step.per_m3": "Kwa kila m3 zaidi ({currency})",
    "next_step.no_more": "hakuna maji zaidi",
    "next_step.no_dearer": "hakuna gharama zaidi",
    "next_step.frontier": "Gharama ya maji ya chaguo moja zaidi ya yale ya jingine",
    "next_step.water": "Maji yaliyotolewa, thamani ya sasa (m3)",
    "next_step.average": "Kwa wastani ({currency}/m3)",
    "next_step.increment": "Zaidi ya chaguo hilo ({currency}/m3)",
    "next_step.standing": "Limelinganishwa na",
    "next_step.unserved": "Thamani ya maji yasiyotolewa ({currency})",
    "next_step.cost_with_unserved": "Gharama za muda wote pamoja nayo ({currency})",
    "next_step.standing.frontier": "{against}",
    "next_step.standing.lowest": "hakuna: hutoa kidogo zaidi",
    "next_step.standing.dominated": "{against}, ambalo halina gharama zaidi wala halitoi kidogo zaidi",
    "next_step.standing.extended": "{against}; linalofuata hutoa zaidi kwa gharama ndogo kwa m3",
    "next_step.method": (
        "Machaguo kwa mpangilio wa maji wanayotoa, kila moja likilinganishwa na linalotoa kidogo zaidi; gharama kwa "
        "m3 zaidi ya lile ni tofauti ya gharama mbili za muda wote ikigawanywa kwa tofauti ya maji yaliyotolewa, "
        "zote kwa punguzo. Mbinu: Tan-Torres Edejer na wenzake (wahariri), Making choices in health: WHO guide to "
        "cost-effectiveness analysis, World Health Organization, 2003, maji yaliyotolewa yakichukua nafasi ya afya. "
        "M3 haionyeshi ni lini inakosekana: isome kando ya siku zenye upungufu."
    ),
    "next_step.value_method": (
        "Thamani ya maji yasiyotolewa ni service.unserved_water_value_per_m3 ya senario, kwa kila m3 ya mahitaji "
        "yasiyokidhiwa, kwa punguzo; haimo katika gharama nyingine yoyote."
    ),
    "worth_answer.turns_as_built": (
        "Kwa miundombinu kama ingejengwa, jibu lingegeuka kwa lolote kati ya haya peke yake, badiliko dogo zaidi "
        "kwanza."
    ),
    "worth_answer.nothing_turns_as_built": (
        "Kwa miundombinu kama ingejengwa, hakuna data ambayo ikibadilishwa yenyewe hugeuza jibu hili ndani ya upeo "
        "ulioangaliwa."
    ),
    "worth_answer.turns_anew": (
        "Kwa mifululizo na tanki vilivyochaguliwa upya kwa kila thamani, lingegeuka kwa lolote kati ya haya peke "
        "yake, badiliko dogo zaidi kwanza."
    ),
    "worth_answer.nothing_turns_anew": (
        "Kwa mifululizo na tanki vilivyochaguliwa upya kwa kila thamani, hakuna data ambayo ikibadilishwa yenyewe "
        "huligeuza ndani ya upeo huu."
    ),
    "worth_answer.anew_alike": (
        "Kwa mifululizo na tanki vilivyochaguliwa upya kwa kila thamani hugeuka kwa thamani zilezile."
    ),
    "worth_answer.nothing_open": (
        "Senario haiachi wazi mifululizo wala tanki, hivyo miundombinu ikichaguliwa upya ingekuwa ileile."
    ),
    "worth_answer.undecided": (
        "Bado haiwezi kusemwa kama chanzo hiki kinafaa kuwa nacho: {source}. Bei haijawekwa kwa vifuatavyo: "
        "{unpriced}. Bila hivyo gharama za muda wote (thamani ya sasa) kwa kipindi cha uchambuzi cha miaka {years} "
        "ni {cost_with} kwa {option}, pamoja nacho, na {cost_without} kwa {without}, bila hicho."
    ),
    "worth_answer.incomplete_alike": (
        "Bei haijawekwa kwa vile ambavyo yote mawili huhitaji ({unpriced}): gharama zake hazijakamilika, lakini "
        "tofauti imekamilika."
    ),
    "worth.note_of_both": (
        "Kila thamani hutafutwa mara mbili. Kwa miundombinu kama ilivyojengwa, kila muundo hubaki kama "
        "ulivyochaguliwa katika senario ilivyo (mifululizo, tanki, viwango vya swichi ya boya) huku data "
        "ikibadilika; kwa miundombinu iliyochaguliwa upya, kila chaguo huchukua, kwa kila thamani, iliyo nafuu zaidi "
        "ya mifululizo na matanki yake yaliyo wazi inayotimiza lengo hapo, kati ya yale yanayofaulu kaguzi kama "
        "senario ilivyo na kwa viwango vya sasa vya swichi ya boya. Thamani ya kugeuza ni pale machaguo mawili bora, "
        "moja lenye chanzo na moja lisilo nacho, yanapokuwa na gharama sawa za muda wote; ilithibitishwa kwa "
        "kuendesha senario tena hapo, na yote mawili hulingana kwa asilimia {percent} isipokuwa jedwali likisema "
        "vingine. 'Jibu hugeuka' huangalia pia kila chaguo na lengo la huduma: zaidi ya thamani hiyo chaguo bora "
        "kuliko yote hubadilisha upande."
    ),
    "worth.words_as_built": "Gharama sawa za muda wote kwa (miundombinu kama ilivyojengwa)",
    "worth.turns_as_built": "Jibu hugeuka kwa (miundombinu kama ilivyojengwa)",
    "worth.words_anew": "Gharama sawa za muda wote kwa (miundombinu iliyochaguliwa upya)",
    "worth.turns_anew": "Jibu hugeuka kwa (miundombinu iliyochaguliwa upya)",
    "worth.cost_unchanged": "haibadilishi gharama yoyote",
    "worth.without_effect": "Hazina athari hapa: {inputs}.",
    "worth.with_reason": "{input} ({why})",
}
