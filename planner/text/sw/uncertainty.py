"""Kiswahili cha shaka ya jibu: nini kingelibadilisha, mwaka mbaya zaidi katika kumi, yaliyokaribiana mno."""

SENTENCES: dict[str, str] = {
    "uncertainty.too_close": (
        "{first} na {second} yamekaribiana mno kuweza kuamua: kati ya mabadiliko {changes} ya data moja moja isiyo "
        "na uhakika, idadi inayogeuza mpangilio wake ni {turned}, na idadi nyingine inayoacha tofauti ya gharama "
        "chini ya {percent:g} % kati yake ni {close}."
    ),
    "uncertainty.ahead_in_most": (
        "{first} kwa sehemu kubwa hubaki mbele ya {second}: kati ya mabadiliko {changes} ya data moja moja isiyo na "
        "uhakika, idadi inayogeuza mpangilio wake ni {turned}, na idadi nyingine inayoacha tofauti ya gharama chini "
        "ya {percent:g} % kati yake ni {close}."
    ),
    "uncertainty.ahead_in_all": (
        "{first} hubaki mbele ya {second} kwa {percent:g} % ya gharama au zaidi, au kwa sababu {second} hukosa "
        "lengo, katika mabadiliko yote {changes} ya data moja moja isiyo na uhakika."
    ),
    "uncertainty.misses_in_some": (
        "{first} hukosa lengo katika {turned} kati ya mabadiliko {changes} ya data moja moja isiyo na uhakika."
    ),
    "uncertainty.meets_in_all": (
        "{first} hutimiza lengo katika mabadiliko yote {changes} ya data moja moja isiyo na uhakika."
    ),
    "uncertainty.worst_year": (
        "Mwaka mbaya zaidi katika kumi kwa {option}: mahitaji yaliyokidhiwa {met:.2f} %; siku zinazokosa zaidi ya "
        "moja ya kumi ya maji yake {days:.0f}; maji yanayokosekana, wastani wa siku zote, {litres:,.0f} L kwa siku."
    ),
    "uncertainty.worst_year_full": "Mwaka mbaya zaidi katika kumi kwa {option}: hakuna maji yanayokosekana.",
    "uncertainty.few_years": (
        "Mwaka mbaya zaidi katika kumi uko karibu na mbaya zaidi wa miaka iliyohesabiwa ({years})."
    ),
    "uncertainty.percent": "{value:,.10g} %",
    "uncertainty.other_first_above": (
        "{input}: juu ya {value} (sasa {base}), la kwanza huwa {other} badala ya {option}."
    ),
    "uncertainty.other_first_below": (
        "{input}: chini ya {value} (sasa {base}), la kwanza huwa {other} badala ya {option}."
    ),
    "uncertainty.misses_above": (
        "{input}: juu ya {value} (sasa {base}), {option} hukosa lengo na la kwanza huwa {other}."
    ),
    "uncertainty.misses_below": (
        "{input}: chini ya {value} (sasa {base}), {option} hukosa lengo na la kwanza huwa {other}."
    ),
    "uncertainty.none_meets_above": "{input}: juu ya {value} (sasa {base}), hakuna chaguo linalotimiza lengo.",
    "uncertainty.none_meets_below": "{input}: chini ya {value} (sasa {base}), hakuna chaguo linalotimiza lengo.",
    "uncertainty.meets_above": "{input}: juu ya {value} (sasa {base}), {other} hutimiza lengo.",
    "uncertainty.meets_below": "{input}: chini ya {value} (sasa {base}), {other} hutimiza lengo.",
    "uncertainty.nearest_above": "{input}: juu ya {value} (sasa {base}), lililo karibu zaidi na lengo huwa {other}.",
    "uncertainty.nearest_below": (
        "{input}: chini ya {value} (sasa {base}), lililo karibu zaidi na lengo huwa {other}."
    ),
    "uncertainty.stays_first": "{input}: kati ya {low} na {high} (sasa {base}), {option} hubaki la kwanza.",
    "uncertainty.stays_nearest": (
        "{input}: kati ya {low} na {high} (sasa {base}), hakuna chaguo linalotimiza lengo na {option} hubaki karibu "
        "nalo zaidi."
    ),
    "uncertainty.works_held": (
        "Thamani hizi ni za miundombinu kama ingejengwa, kila ukubwa kama ulivyochaguliwa leo; ukubwa uliochaguliwa "
        "upya kwa thamani nyingine unaweza kugeuka mahali pengine."
    ),
    "uncertainty.works_held_in_years": (
        "Thamani hizi ni za miundombinu kama ingejengwa, kila ukubwa kama ulivyochaguliwa leo, na zinatokana na "
        "miaka {run} kati ya {years}; ukubwa uliochaguliwa upya kwa thamani nyingine unaweza kugeuka mahali pengine."
    ),
    "uncertainty.heading": "Nini kingebadilisha jibu (miundombinu kama ingejengwa)",
    "uncertainty.input": "Data",
    "uncertainty.base": "Thamani",
    "uncertainty.unit": "Kipimo",
    "uncertainty.tried": "Iliyojaribiwa",
    "uncertainty.below": "La kwanza chini ya hapo",
    "uncertainty.above": "La kwanza juu ya hapo",
    "uncertainty.range": "{low:,.10g} hadi {high:,.10g}",
    "uncertainty.first_there": "{value:,.10g}: {option}",
    "uncertainty.nearest_there": "{value:,.10g}: {option} (hukosa lengo)",
    "uncertainty.no_turn": "hubaki",
}
