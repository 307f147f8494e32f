"""Français des vérifications de la plaque signalétique face au site."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Puissance de l'eau au point nominal ({hydraulic_kw:.2f} kW) en part des {rated_w:g} W de la plaque, face à "
        "{low:g} à {high:g} %"
    ),
    "check.rated_figures.why": "Une part hors de l'usuel laisse penser à un chiffre mal lu sur la plaque.",
    "check.rated_figures.remedy": (
        "relire puissance, débit et hauteur sur la plaque ; les valeurs nominales, non les plus grandes"
    ),
    "check.rated_figures.source": (
        "la plaque signalétique de la pompe ; la plage est une pratique courante, sans source"
    ),
    "check.motor_power.compared": (
        "Puissance que prend le moteur à {flow}, face à sa puissance nominale et à {percent:.0f} %"
    ),
    "check.motor_power.compared_unlimited": (
        "Puissance que prend le moteur à {flow_m3h:.2f} m3/h, si rien ne la limite, face à sa puissance nominale et à "
        "{percent:.0f} %"
    ),
    "check.motor_power.why": "Un moteur qui prend plus que sa puissance nominale surchauffe.",
    "check.motor_power.remedy_drive": (
        "un variateur réglé pour donner au plus {most_w} W, comme le calcul horaire le suppose, ou {remedy}"
    ),
    "check.motor_power.source": (
        "la plaque signalétique de la pompe ; {percent:.0f} % est une pratique courante, sans source ; jusqu'à "
        "{service_percent:.0f} % c'est une mise en garde (facteur de service, NEMA MG 1), comme ce qu'un variateur "
        "peut limiter"
    ),
    "check.current.compared": "Courant à la puissance nominale ({currents}), face au courant maximal de la plaque",
    "check.current.compared_unknown": (
        "Courant à la puissance nominale (aucune tension d'alimentation n'est connue), face au courant maximal de la "
        "plaque"
    ),
    "check.current.from.array": "{amperes:.1f} A du champ",
    "check.current.from.grid": "{amperes:.1f} A du réseau électrique",
    "check.current.from.generator": "{amperes:.1f} A du groupe électrogène",
    "check.current.why": (
        "Plus de courant que la plaque n'en admet fait déclencher le variateur ou brûle le bobinage."
    ),
    "check.current.look_for": "chercher « A » ou « Amp » sur la plaque",
    "check.current.remedy.array": (
        "relire le courant sur la plaque, ou une pompe faite pour {amperes} A depuis le champ"
    ),
    "check.current.remedy.grid": (
        "relire le courant sur la plaque, ou une pompe faite pour {amperes} A depuis le réseau électrique"
    ),
    "check.current.remedy.generator": (
        "relire le courant sur la plaque, ou une pompe faite pour {amperes} A depuis le groupe électrogène"
    ),
    "check.current.remedy_or_series": "{series} ; ou {remedy}",
    "check.current.remedy_or_volts": (
        "une alimentation d'au moins {volts} V, dans les limites de la plaque ; ou {remedy}"
    ),
    "check.speed_range.compared": (
        "Plage de vitesse du moteur, face à ce que demande une source variable : {low:g} à {high:g} tr/min, la plus "
        "basse en part de la plus haute"
    ),
    "check.speed_range.compared_not_given": "Plage de vitesse du moteur, face à ce que demande une source variable",
    "check.speed_range.why": (
        "La puissance du soleil varie ; seul un moteur qui peut tourner lentement en tire parti quand elle est faible."
    ),
    "check.speed_range.look_for": "chercher « rpm », « tr/min » ou « 1/min » sur la plaque",
    "check.speed_range.remedy": "choisir un moteur à vitesse variable",
    "check.speed_range.source": (
        "la plaque signalétique de la pompe ; un moteur à vitesse variable sur une source variable est une pratique "
        "courante, sans source"
    ),
    "check.frame.compared": "Tubage, face au corps du moteur : {inches:g} pouces font {millimetres:.0f} mm",
    "check.frame.compared_not_given": "Tubage, face au corps du moteur",
    "check.frame.why": "Un moteur n'entre pas dans un tubage plus petit que son corps.",
    "check.frame.look_for_frame": "chercher la taille du corps en pouces sur la plaque",
    "check.frame.look_for_casing": "chercher le diamètre intérieur du tubage dans le rapport du foreur",
    "check.frame.remedy": "une pompe dont le corps fait au plus {inches:g} pouces",
    "check.insulation.compared": (
        "La classe {letter} tient {limit_c} °C : marge au-dessus d'une eau à {water_c:g} °C, face à celle au-dessus de "
        "{coolant_c:g} °C"
    ),
    "check.insulation.compared_not_given": "Classe d'isolation, face à la température de l'eau",
    "check.insulation.why": (
        "Le bobinage ne peut chauffer que jusqu'où tient son isolation ; une eau chaude prend cette marge."
    ),
    "check.insulation.look_for": "chercher « Ins. Cl. » et une lettre sur la plaque",
    "check.insulation.remedy": "un moteur d'une classe plus haute, ou que son fabricant prévoit pour cette eau",
    "check.insulation.source": (
        "CEI 60085 (température de la classe), CEI 60034-1 (fluide de refroidissement à {coolant_c:g} °C)"
    ),
    "check.ingress_protection.compared": "{code} : {meaning} ; face à un moteur suspendu dans l'eau",
    "check.ingress_protection.compared_not_given": "Degré de protection d'un moteur suspendu dans l'eau",
    "check.ingress_protection.why": "Un moteur qui vit sous l'eau doit la supporter pour de bon.",
    "check.ingress_protection.look_for": ("chercher « IP » et deux chiffres sur la plaque ; le second devrait être 8"),
    "check.ingress_protection.remedy": "un moteur immergé IP68, ou l'avis du fabricant sur l'immersion",
    "check.ingress_protection.source": "CEI 60529",
    "check.water_temperature.compared": "Température de l'eau, face à ce que la plaque admet",
    "check.water_temperature.why": (
        "Une eau plus chaude que la plaque ne l'admet est hors du domaine du moteur : elle refroidit trop peu et "
        "raccourcit sa vie."
    ),
    "check.water_temperature.look_for": "chercher « max. liquid temp. » (température max. du liquide) sur la plaque",
    "check.water_temperature.remedy": "un moteur prévu pour une eau d'au moins {water_c:g} °C",
    "check.plate_window.why": "Hors de ses limites de tension, il s'arrête ou est détruit.",
    "check.dc_window.compared": (
        "Tension de service d'une chaîne, de {hot:.0f} V au midi le plus chaud à {cold:.0f} V par temps froid, face à "
        "{low:g} à {high:g} V"
    ),
    "check.dc_window.compared_not_given": (
        "Tension de service d'une chaîne, de {hot:.0f} V au midi le plus chaud à {cold:.0f} V par temps froid, face "
        "aux limites CC de la plaque"
    ),
    "check.dc_window.span": "{hot:.0f} à {cold:.0f}",
    "check.dc_window.look_for": (
        "chercher « DC », « PV » ou « Voc » avec des volts sur la plaque, sauf si seul le variateur voit le champ"
    ),
    "check.ac_window.compared": ("Tension nominale des alimentations ({volts}), face à {low:g} à {high:g} V"),
    "check.ac_window.compared_not_given": (
        "Tension nominale des alimentations ({volts}), face aux limites CA de la plaque"
    ),
    "check.ac_window.compared_none_given": (
        "Tension nominale des alimentations (non indiquée), face aux limites CA de la plaque"
    ),
    "check.ac_window.look_for": "chercher « AC » ou « ~ » avec des volts sur la plaque",
    "check.ac_window.remedy": (
        "un transformateur, choisi et posé par un électricien agréé, ou une pompe pour cette tension"
    ),
    "check.largest_flow.compared": (
        "Plus grand débit de la plaque, face à {times:g} fois le débit nominal de {rated:g} m3/h"
    ),
    "check.largest_flow.why": (
        "Un plus grand débit bien au-dessus du débit nominal laisse penser à une virgule mal placée."
    ),
    "check.largest_flow.remedy": "relire les deux débits sur la plaque",
    "check.largest_flow.source": "la plaque signalétique de la pompe ; la part est une pratique courante, sans source",
}
