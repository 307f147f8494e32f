"""Français de la plaque signalétique ligne par ligne, et du premier constat : si la pompe convient au site."""

SENTENCES: dict[str, str] = {
    "plate.not_given": "non indiqué",
    "plate.printed.range": "{low:g} à {high:g} {unit}",
    "plate.rated_flow.symbol": "Q, Qn",
    "plate.rated_flow.meaning": "débit à la hauteur nominale : celui à prévoir",
    "plate.rated_flow.asks": "au plus {limit}, le débit d'exploitation du forage",
    "plate.rated_head.symbol": "H, Hn",
    "plate.rated_head.meaning": "hauteur au débit nominal : celle à prévoir",
    "plate.rated_head.asks": "{limit} à {flow} m3/h",
    "plate.largest_flow.symbol": "Qmax",
    "plate.largest_flow.meaning": "débit sans hauteur : ne jamais le prévoir",
    "plate.largest_head.symbol": "Hmax",
    "plate.largest_head.meaning": "hauteur sans débit : ne jamais la prévoir, mais la conduite doit la supporter",
    "plate.largest_head.asks": "plus de {value} avant que l'eau ne coule",
    "plate.rated_power.symbol": "P, P1",
    "plate.rated_power.meaning": "ce que prend le moteur au point nominal ; {percent:.0f} % en parviennent à l'eau",
    "plate.rated_power.asks": "{value} au débit qu'elle donne ici",
    "plate.dc_supply.symbol": "U DC, PV, Voc",
    "plate.dc_supply.meaning": "la tension du champ doit rester dans ces limites",
    "plate.dc_supply.asks": (
        "{hot:.0f} à {cold:.0f} V en marche, {open:.0f} V à vide par temps froid, {count} modules en série"
    ),
    "plate.dc_supply.look_for": "chercher « DC », « PV » ou « Voc » avec des volts",
    "plate.ac_supply.symbol": "U AC, ~",
    "plate.ac_supply.meaning": "la tension du réseau électrique ou du groupe électrogène doit y rester",
    "plate.ac_supply.look_for": "chercher « AC » ou « ~ » avec des volts",
    "plate.phases.symbol": "1~, 3~, ph",
    "plate.phases.meaning": "phases de l'alimentation CA",
    "plate.phases.look_for": "chercher « 1~ » ou « 3~ »",
    "plate.frequency.symbol": "f, Hz",
    "plate.frequency.meaning": (
        "un moteur CA tourne à son pas : moins de hertz, moins de vitesse, bien moins de hauteur"
    ),
    "plate.frequency.look_for": "chercher « Hz »",
    "plate.current.symbol": "I, Imax, A",
    "plate.current.meaning": "le plus qu'il peut prendre",
    "plate.current.asks": "{value} à la puissance nominale",
    "plate.current.look_for": "chercher « A » ou « Amp »",
    "plate.speed.symbol": "n, rpm, 1/min",
    "plate.speed.meaning": "le débit suit la vitesse, la hauteur son carré",
    "plate.speed.asks": "tourne lentement sous un soleil faible",
    "plate.speed.look_for": "chercher « rpm », « tr/min » ou « 1/min »",
    "plate.frame.symbol": 'inch, "',
    "plate.frame.meaning": "classe de taille du moteur ; n'entre pas dans un tubage de moins de {millimetres:.0f} mm",
    "plate.frame.asks": "entre dans un tubage de {value}",
    "plate.frame.asks_open": "tubage non indiqué",
    "plate.frame.look_for": "chercher la taille en pouces",
    "plate.insulation.symbol": "Ins. Cl.",
    "plate.insulation.meaning": "le bobinage tient {limit_c} °C (CEI 60085)",
    "plate.insulation.asks": "eau à {water_c:g} °C",
    "plate.insulation.look_for": "chercher « Ins. Cl. » et une lettre",
    "plate.ingress.symbol": "IP",
    "plate.ingress.meaning": "{solids} ; {water} (CEI 60529)",
    "plate.ingress.asks": "reste suspendu sous l'eau",
    "plate.ingress.look_for": "chercher « IP » et deux chiffres",
    "plate.liquid.symbol": "t max",
    "plate.liquid.meaning": "une eau plus chaude est hors de son domaine",
    "plate.liquid.asks": "eau à {water_c:g} °C",
    "plate.liquid.look_for": "chercher « max. liquid temp. »",
    "plate.submergence.symbol": "min. submergence",
    "plate.submergence.meaning": "eau qui doit rester au-dessus de l'aspiration",
    "plate.submergence.asks": "{value} sont au-dessus d'elle",
    "plate.submergence.look_for": "chercher « min. submergence », souvent dans le manuel seulement",
    "plate.asked_by": "{value}, source : {source}",
    "plate.holds.pass": "convient",
    "plate.holds.caution": "mise en garde",
    "plate.holds.fail": "non conforme",
    "plate.holds.not given": "non indiqué",
    "plate.holds.open": "-",
    "plate.heading": "La plaque, ligne par ligne",
    "plate.column.symbol": "Sur la plaque",
    "plate.column.printed": "Imprimé",
    "plate.column.meaning": "Ce que cela veut dire",
    "plate.column.asks": "Ce que demande ce site",
    "plate.column.holds": "Ici",
    "plate.solids.0": "aucune protection contre les corps solides",
    "plate.solids.1": "arrête les corps de plus de 50 mm, comme le dos d'une main",
    "plate.solids.2": "arrête les corps de 12,5 mm et plus, comme un doigt",
    "plate.solids.3": "arrête les corps de 2,5 mm et plus, comme un outil",
    "plate.solids.4": "arrête les corps de 1 mm et plus, comme un fil",
    "plate.solids.5": "protégé contre la poussière",
    "plate.solids.6": "étanche à la poussière",
    "plate.solids.X": "corps solides non précisés",
    "plate.water.0": "aucune protection contre l'eau",
    "plate.water.1": "contre les gouttes qui tombent droit",
    "plate.water.2": "contre les gouttes, incliné jusqu'à 15 degrés",
    "plate.water.3": "contre l'eau en pluie jusqu'à 60 degrés de la verticale",
    "plate.water.4": "contre les projections de tous côtés",
    "plate.water.5": "contre les jets",
    "plate.water.6": "contre les jets puissants",
    "plate.water.7": "supporte l'immersion pour un temps",
    "plate.water.8": "supporte l'immersion prolongée, aux conditions qu'indique le fabricant",
    "plate.water.9": "contre les jets chauds à haute pression, ce qui ne dit rien de l'immersion",
    "plate.water.X": "eau non précisée",
    # whether the pump fits
    "finding.contradiction": "Les chiffres de cette plaque se contredisent : {fault}.",
    "finding.cannot_lift": (
        "Cette pompe ne peut relever l'eau ici : elle atteint au plus {most} m, sans débit, et le site demande {lift} "
        "m avant que l'eau ne coule."
    ),
    "finding.too_weak": (
        "Cette pompe est trop faible : à {flow} m3/h elle atteint {given} m, le site demande {needed} m."
    ),
    "finding.cannot_draw": (
        "Cette pompe ne donne pas d'eau ici : l'eau au repos est à {level:.1f} m de profondeur et ne couvre pas "
        "l'aspiration à {depth:g} m."
    ),
    "finding.cannot_start": (
        "Cette pompe ne donne pas d'eau ici : les {limit:g} W que le variateur peut lui donner ne font pas monter "
        "l'eau."
    ),
    "finding.short": (
        "Cette pompe est un peu juste : à {flow} m3/h elle atteint {given} m, le site demande {needed} m ; elle se "
        "cale à {duty} m3/h."
    ),
    "finding.over_yield": (
        "Cette pompe est faite pour plus que ce forage ne peut donner : débit nominal {rated} m3/h, débit "
        "d'exploitation {safe} m3/h."
    ),
    "finding.over": (
        "Cette pompe relève {times} ce que demande le site : à {flow} m3/h elle pourrait atteindre {given} m ({most} m "
        "sans débit), le site demande {needed} m."
    ),
    "finding.times": "{times} fois",
    "finding.twice": "deux fois",
    "finding.fits": ("Cette pompe convient : à {flow} m3/h elle atteint {given} m, le site demande {needed} m."),
    "finding.would_fit": (
        "Ce qui conviendrait : une pompe de hauteur nominale d'environ {head} m à {flow} m3/h, avec un moteur qui "
        "prend environ {power} kW si {share} % en parviennent à l'eau."
    ),
}
