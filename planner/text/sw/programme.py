"""Kiswahili cha maeneo kadhaa ya programu bega kwa bega, na yanachofanya kwa pamoja."""

SENTENCES: dict[str, str] = {
    "programme.heading": "Maeneo bega kwa bega, chaguo la kwanza katika kila moja",
    "programme.site": "Eneo",
    "programme.incomplete": "{mark} haijakamilika: kuna kitu kisicho na bei; jumla za maeneo yote pia zinakikosa",
    "programme.priced": (
        "Maeneo yote {count} kwa pamoja: gharama za uwekezaji {capital_cost}, gharama za muda wote (thamani ya sasa) "
        "{life_cycle_cost}, maji {water:,.1f} m3 kwa siku."
    ),
    "programme.granted": "Ruzuku hulipa {grant} ya gharama za uwekezaji.",
    "programme.per_person": (
        "Huhudumia watu {people:,.0f} katika mwaka wa kwanza, kwa gharama za uwekezaji za {cost} kwa kila mmoja."
    ),
    "programme.per_person_granted": (
        "Huhudumia watu {people:,.0f} katika mwaka wa kwanza, kwa gharama za uwekezaji za {cost} kwa kila mmoja, "
        "ambazo ruzuku hulipa {grant}."
    ),
    "programme.technical": "Maeneo yote {count} kwa pamoja: maji {water:,.1f} m3 kwa siku.",
    "programme.open": "Yasijengwe kama yalivyo, kwa kuwa lengo limekosekana au ukaguzi umeshindikana: {sites}.",
    "programme.all_hold": "Katika kila eneo chaguo la kwanza hutimiza lengo na hufaulu kaguzi zake.",
}
