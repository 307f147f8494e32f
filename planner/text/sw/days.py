"""Kiswahili cha siku bila maji."""

SENTENCES: dict[str, str] = {
    "figure.nothing_missing": "hakuna",
    "figure.no_short_day": "hakuna siku yenye upungufu",
    "days.heading": "Siku ambazo zaidi ya moja ya kumi ya maji hukosekana",
    "days.none": "Kwa {option} hakuna siku katika miaka {years} inayokosa zaidi ya moja ya kumi ya maji yake.",
    "days.short": (
        "Kwa {option}, siku {short:.1f} kwa mwaka hukosa zaidi ya moja ya kumi ya maji yake, nyingi zaidi "
        "{longest:.0f} mfululizo; mwezi mbaya zaidi ni {month} wenye siku {in_month:.1f} za namna hiyo; katika siku "
        "ya wastani yenye upungufu watumiaji hukosa lita {litres:,.0f}."
    ),
}
