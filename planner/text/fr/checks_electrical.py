"""Français des vérifications du champ et du variateur et du côté CA, et de ce qu'elles partagent avec les câbles."""

SENTENCES: dict[str, str] = {
    "unit.modules": "modules",
    "unit.phases": "phases",
    "unit.hours_per_year": "h/an",
    "unit.speed": "tr/min",
    "source.controller": "la fiche technique du variateur",
    "source.plate": "la plaque signalétique de la pompe",
    "source.plate_practice": "la plaque signalétique de la pompe ; pratique courante, sans source",
    "source.plate_and_site": "la plaque signalétique de la pompe ; les données du site",
    "source.site": "les données du site",
    "source.practice": "pratique courante, sans source",
    # what to look for where something was not given
    "check.look_for": "chercher {things}",
    "check.asked.ac_volts": "« AC » ou « ~ » avec des volts sur la plaque de la pompe ou du variateur",
    "check.asked.grid_volts": "la tension du réseau électrique",
    "check.asked.generator_volts": "la tension du groupe électrogène",
    "check.asked.phases": "« 1~ » ou « 3~ » sur la plaque de la pompe ou du variateur",
    "check.asked.grid_phases": "les phases du réseau électrique",
    "check.asked.generator_phases": "les phases du groupe électrogène",
    "check.asked.hertz": "« Hz » sur la plaque de la pompe ou du variateur",
    "check.asked.grid_hertz": "la fréquence du réseau électrique",
    "check.asked.generator_hertz": "la fréquence du groupe électrogène",
    "check.supply.look_for_voltage": "chercher la tension du réseau électrique et du groupe électrogène",
    # modules in series
    "check.series.more.one": "un module de plus en série",
    "check.series.more.two": "deux modules de plus en série",
    "check.series.more.three": "trois modules de plus en série",
    "check.series.more.many": "{count} modules de plus en série",
    "check.series.less.one": "un module de moins en série",
    "check.series.less.two": "deux modules de moins en série",
    "check.series.less.three": "trois modules de moins en série",
    "check.series.less.many": "{count} modules de moins en série",
    "check.series.no_adding": (
        "aucun module ne peut être ajouté en série tant que la plus grande tension CC du variateur n'est pas connue"
    ),
    "check.series.not_even_one": (
        "pas même un de ces modules ne convient : il donne {one_v:.0f} V à vide par temps froid, et {most_v:g} V sont "
        "le plus qui est supporté : un module d'au plus {rated_v} V à vide, ou un autre variateur"
    ),
    "check.series.window_too_narrow": (
        "aucun nombre de ces modules ne convient : au moins {fewest} pour les {least_v:g} V nécessaires au midi le "
        "plus chaud, au plus {most} pour les {most_v:g} V supportés à vide par temps froid : un autre variateur ou un "
        "autre module"
    ),
    "check.series.none_fits": ("aucun nombre de modules en série ne convient : un autre variateur ou un autre module"),
    "check.series.another": "un autre variateur ou un autre module",
    "check.string_open_circuit_voltage.compared": (
        "Tension à vide de {modules} modules au matin le plus froid ({coldest}), face à la limite du variateur ou de "
        "la pompe"
    ),
    "check.string_open_circuit_voltage.compared_working_known": (
        "Tension à vide de {modules} modules au matin le plus froid ({coldest}), face à la limite du variateur ou de "
        "la pompe ; la plus haute tension de service est {highest_v:g} V"
    ),
    "check.string_open_circuit_voltage.compared_with_working": (
        "Tension à vide de {modules} modules au matin le plus froid ({coldest}), face à la plus haute tension de "
        "service, la limite du variateur n'étant pas indiquée"
    ),
    "check.string_open_circuit_voltage.why": (
        "Avant que le moteur ne démarre, la chaîne froide est à cette tension ; au-dessus de la limite elle détruit "
        "l'électronique."
    ),
    "check.string_open_circuit_voltage.look_for": (
        "chercher « max. input voltage » (tension d'entrée maximale), « max. DC » ou « Voc max. » sur la plaque du "
        "variateur ; aucun module ne peut être ajouté en série tant que la plus grande tension CC du variateur n'est "
        "pas connue"
    ),
    "check.string_open_circuit_voltage.remedy_until_known": (
        "chercher « max. input voltage » (tension d'entrée maximale), « max. DC » ou « Voc max. » sur la plaque du "
        "variateur ; tant qu'elle n'est pas connue, {remedy}"
    ),
    "check.string_open_circuit_voltage.source": (
        "la fiche technique du variateur ou la plaque ; la tension par temps froid selon la CEI 62548"
    ),
    "check.module_system_voltage.compared": (
        "Tension à vide d'une chaîne par temps froid, face à la tension système du module"
    ),
    "check.module_system_voltage.why": (
        "Au-dessus, l'isolation même du module peut céder et mettre le cadre à la tension du champ."
    ),
    "check.module_system_voltage.look_for": (
        "chercher « max. system voltage » (tension système maximale) au dos du module"
    ),
    "check.module_system_voltage.source": "la fiche technique du module ; CEI 62548",
    "check.string_voltage_hot.compared": (
        "Tension de service d'une chaîne au midi le plus chaud ({hottest_c:.1f} °C à l'ombre), face à la plus basse du "
        "variateur"
    ),
    "check.string_voltage_hot.why": (
        "Sous la plus basse tension du variateur, la pompe perd de la puissance quand le soleil est au mieux, ou "
        "s'arrête."
    ),
    "check.string_voltage_cold.compared": (
        "Tension de service d'une chaîne au matin le plus froid ({coldest_c:.1f} °C), face à la plus haute du variateur"
    ),
    "check.string_voltage_cold.why": (
        "Au-dessus de la plus haute tension de service du variateur, le champ est tenu hors de son meilleur point ou "
        "coupé."
    ),
    "check.string_voltage.look_for": ("chercher la plage de tension CC ou MPP dans la fiche technique du variateur"),
    "check.modules_in_series.compared": (
        "Modules en série, face aux nombres qui conviennent entre la plus basse tension à midi et la limite par temps "
        "froid"
    ),
    "check.modules_in_series.why": (
        "Seuls ces nombres sont sûrs par temps froid et fonctionnent encore par temps chaud."
    ),
    "check.modules_in_series.look_for": (
        "chercher la plus basse et la plus grande tension CC sur la plaque du variateur"
    ),
    "check.modules_in_series.source": "la fiche technique du variateur ; CEI 62548",
    "check.modules_in_series.span": "{fewest} à {most}",
    "check.modules_in_series.no_span": "aucun",
    "check.modules_in_series.too_many.one": "un module de trop",
    "check.modules_in_series.too_many.two": "deux modules de trop",
    "check.modules_in_series.too_many.three": "trois modules de trop",
    "check.modules_in_series.too_many.many": "{count} modules de trop",
    "check.modules_in_series.too_few.one": "il manque un module",
    "check.modules_in_series.too_few.two": "il manque deux modules",
    "check.modules_in_series.too_few.three": "il manque trois modules",
    "check.modules_in_series.too_few.many": "il manque {count} modules",
    "check.window_hours.compared": (
        "Heures par an où la plage de tension du variateur tient le champ hors de son meilleur point ; {percent:.1f} % "
        "de son énergie est ainsi perdue"
    ),
    "check.window_hours.why": "Pendant ces heures, de la puissance payée est perdue.",
    "check.window_hours.source": (
        "calcul horaire de la première année ; {hours:.0f} heures est une pratique courante, sans source, comme le "
        "dixième de l'énergie au-delà duquel c'est non conforme"
    ),
    # voltage, phases and frequency of grid and generator
    "check.connection.phase_and_neutral": "une phase et neutre ({volts:.0f} V)",
    "check.connection.two_phases": "deux des phases ({volts:.0f} V)",
    "check.supply_voltage.nominal": "{volts:.4g} V",
    "check.supply_voltage.variation": "variation de {percent} %",
    "check.supply_voltage.drop": "{percent:.1f} % dans le câble",
    "check.supply_voltage.drop_not_given": "chute dans le câble non indiquée et non comptée",
    "check.grid_voltage.compared": (
        "Tension du réseau électrique au variateur, {low:.0f} à {high:.0f} V ({facts}), face à {least:g} à {most:g} V"
    ),
    "check.generator_voltage.compared": (
        "Tension du groupe électrogène au variateur, {low:.0f} à {high:.0f} V ({facts}), face à {least:g} à {most:g} V"
    ),
    "check.grid_voltage.compared_not_given": (
        "Tension du réseau électrique au variateur, face aux limites CA de la plaque"
    ),
    "check.generator_voltage.compared_not_given": (
        "Tension du groupe électrogène au variateur, face aux limites CA de la plaque"
    ),
    "check.grid_voltage.source": (
        "la plaque signalétique de la pompe ; variation de {percent} % : les données du site"
    ),
    "check.generator_voltage.source": (
        "la plaque signalétique de la pompe ; variation de {percent} % : ISO 8528-5, de mémoire"
    ),
    "check.supply_voltage.why": (
        "Avec trop peu de tension le moteur prend plus de courant et s'arrête ; avec trop, son isolation souffre."
    ),
    "check.supply_voltage.remedy_low": (
        "un stabilisateur de tension ou un transformateur, choisi et posé par un électricien agréé, ou une pompe pour "
        "une tension plus basse"
    ),
    "check.supply_voltage.remedy_thicker_cable": (
        "une section de {section_mm2:g} mm2 pour le câble CA (non couvert : boucle de défaut à la terre, court-circuit "
        "et dispositif de protection) ; ou un stabilisateur de tension ou un transformateur, choisi et posé par un "
        "électricien agréé, ou une pompe pour une tension plus basse"
    ),
    "check.supply_voltage.remedy_shorter_cable": (
        "un câble CA plus court (non couvert : boucle de défaut à la terre, court-circuit et dispositif de protection) "
        "; ou un stabilisateur de tension ou un transformateur, choisi et posé par un électricien agréé, ou une pompe "
        "pour une tension plus basse"
    ),
    "check.supply_voltage.remedy_high": (
        "un stabilisateur de tension ou un transformateur, choisi et posé par un électricien agréé, ou une pompe pour "
        "une tension plus haute"
    ),
    "check.grid_phases.compared": "Phases du réseau électrique, face à celles de la plaque",
    "check.generator_phases.compared": "Phases du groupe électrogène, face à celles de la plaque",
    "check.supply_phases.why": "Un moteur triphasé ne démarre pas sur une phase, et brûle à l'essayer.",
    "check.supply_phases.why_one_of_three": (
        "Une pompe monophasée charge une phase sur trois, et ne peut donc prendre qu'un tiers de la puissance."
    ),
    "check.grid_phases.remedy_connect_unknown": (
        "raccorder une phase et neutre, si la tension et le distributeur le permettent, par un électricien agréé"
    ),
    "check.grid_phases.remedy_connect.phase_and_neutral": (
        "raccorder une phase et neutre ({volts:.0f} V), si la tension et le distributeur le permettent, par un "
        "électricien agréé"
    ),
    "check.grid_phases.remedy_connect.two_phases": (
        "raccorder deux des phases ({volts:.0f} V), si la tension et le distributeur le permettent, par un électricien "
        "agréé"
    ),
    "check.generator_phases.remedy_connect_unknown": (
        "raccorder une phase et neutre, si la tension et le fabricant du groupe électrogène le permettent, par un "
        "électricien agréé"
    ),
    "check.generator_phases.remedy_connect.phase_and_neutral": (
        "raccorder une phase et neutre ({volts:.0f} V), si la tension et le fabricant du groupe électrogène le "
        "permettent, par un électricien agréé"
    ),
    "check.generator_phases.remedy_connect.two_phases": (
        "raccorder deux des phases ({volts:.0f} V), si la tension et le fabricant du groupe électrogène le permettent, "
        "par un électricien agréé"
    ),
    "check.grid_phases.remedy_three": (
        "un réseau électrique triphasé, ou un variateur qui prend {given} et en donne trois, par un électricien agréé"
    ),
    "check.generator_phases.remedy_three": (
        "un groupe électrogène triphasé, ou un variateur qui prend {given} et en donne trois, par un électricien agréé"
    ),
    "check.grid_frequency.compared": (
        "Fréquence du réseau électrique, face aux {wanted_hz:g} Hz de la plaque, {percent:g} % de part et d'autre"
    ),
    "check.generator_frequency.compared": (
        "Fréquence du groupe électrogène, face aux {wanted_hz:g} Hz de la plaque, {percent:g} % de part et d'autre"
    ),
    "check.grid_frequency.compared_not_given": "Fréquence du réseau électrique, face à celle de la plaque",
    "check.generator_frequency.compared_not_given": "Fréquence du groupe électrogène, face à celle de la plaque",
    "check.supply_frequency.why": (
        "La vitesse suit la fréquence : avec moins, la hauteur baisse au carré ; avec plus, la puissance monte au cube."
    ),
    "check.supply_frequency.side.above": "{percent:.1f} % au-dessus de la plaque",
    "check.supply_frequency.side.below": "{percent:.1f} % au-dessous de la plaque",
    "check.supply_frequency.side.equal": "égale",
    "check.grid_frequency.remedy": (
        "un réseau électrique à {wanted_hz:g} Hz, ou un variateur qui fait sa propre fréquence"
    ),
    "check.generator_frequency.remedy": (
        "un groupe électrogène à {wanted_hz:g} Hz, ou un variateur qui fait sa propre fréquence"
    ),
    "check.supply_frequency.source": "CEI 60034-1, zone A ; la zone B est une mise en garde",
    "check.grid_power.compared": (
        "Puissance que donne le raccordement au réseau électrique, face à ce que prend le variateur avec le moteur à "
        "sa puissance nominale"
    ),
    "check.grid_power.compared_one_phase": (
        "Puissance que donne le raccordement au réseau électrique sur une de ses phases, face à ce que prend le "
        "variateur avec le moteur à sa puissance nominale"
    ),
    "check.grid_power.why": ("Un raccordement trop faible déclenche dès que la pompe marche à pleine vitesse."),
    "check.grid_power.remedy": (
        "un raccordement d'au moins {needed_w} W, si le distributeur l'accorde ; son câble et sa protection alors aussi"
    ),
    # size of the generator
    "check.generator.remedy": (
        "un groupe électrogène de {rating_kw:g} kW ou un peu plus, câble et dispositif de protection en conséquence"
    ),
    "check.generator.remedy_nothing_left": (
        "aucun groupe électrogène de ce déclassement ne donne de puissance ici : revoir altitude et déclassement"
    ),
    "check.generator_running.compared": (
        "Groupe électrogène ({rating_kw:g} kW, dont {percent:.0f} % restent à {altitude_m:.0f} m et {hottest_c:.0f} "
        "°C), face à ce que prend le variateur à la puissance nominale"
    ),
    "check.generator_running.compared_one_phase": (
        "Groupe électrogène ({rating_kw:g} kW, dont {percent:.0f} % restent à {altitude_m:.0f} m et {hottest_c:.0f} °C "
        "et sur une phase sur trois), face à ce que prend le variateur à la puissance nominale"
    ),
    "check.generator_running.why": "Un groupe surchargé ralentit, cale et brûle son bobinage.",
    "check.generator_running.source": "puissance donnée par l'usager, déclassement comme indiqué",
    "check.generator_starting.compared_soft": (
        "Groupe électrogène déclassé, face à ce qui démarre le moteur en douceur par un variateur, {good:g} fois le "
        "besoin en marche ({least:g} au moins)"
    ),
    "check.generator_starting.compared": (
        "Groupe électrogène déclassé, face à ce qui démarre le moteur en direct avec {kva} kVA (lettre de code {code}) "
        "et un creux de {good_dip:.0f} % ({least_kw} kW pour {most_dip:.0f} %)"
    ),
    "check.generator_starting.compared_assumed": (
        "Groupe électrogène déclassé, face à ce qui démarre le moteur en direct avec {kva} kVA (lettre de code {code}, "
        "hypothèse) et un creux de {good_dip:.0f} % ({least_kw} kW pour {most_dip:.0f} %)"
    ),
    "check.generator_starting.why": (
        "Un groupe qui ne peut démarrer le moteur laisse sa tension s'effondrer ; le moteur ronfle et chauffe."
    ),
    "check.generator_starting.source_direct": (
        "kVA rotor bloqué selon la lettre de code, NEMA MG 1 (de mémoire) ; creux sur la réactance transitoire de "
        "l'alternateur ; creux de {good_dip:.0f} % : ISO 8528-5, classe G1 (de mémoire) ; {most_dip:.0f} % est une "
        "pratique courante, sans source"
    ),
    "check.generator_loading.compared": (
        "Charge du groupe électrogène avec le moteur à sa puissance nominale, face à {low:.0f} à {high:.0f} % de sa "
        "puissance déclassée"
    ),
    "check.generator_loading.why": (
        "Un groupe peu chargé s'encrasse ; un groupe chargé des heures au-dessus de sa puissance principale s'use tôt."
    ),
    "check.generator_loading.remedy_light": "{remedy}, ou d'autres charges à côté de la pompe",
    "check.generator_loading.remedy_other_loads": (
        "d'autres charges à côté de la pompe : un groupe plus petit ne la démarrerait pas"
    ),
    "check.generator_loading.source": (
        "{low:.0f} % : pratique NFPA 110 ; {high:.0f} % de charge moyenne en puissance principale : ISO 8528-1"
    ),
}
