"""Français des vérifications de la hauteur manométrique, de la conduite et des chaînes en parallèle."""

SENTENCES: dict[str, str] = {
    # head
    "head_part.part": "{name} {head}",
    "head_part.static": "niveau statique, moyenne de l'année",
    "head_part.deepest": "plus bas le mois le plus profond",
    "head_part.drawdown": "rabattement",
    "head_part.rise": "montée jusqu'à l'entrée du réservoir",
    "head_part.friction": "pertes de charge, {segment}",
    "head_part.fittings": "raccords",
    "head_part.residual": "pression résiduelle à l'entrée",
    "head_part.high_point": "pour passer le point haut du tracé",
    "check.lift.compared": (
        "Hauteur nécessaire avant que l'eau ne coule en {month}, face à la hauteur de la pompe sans débit"
    ),
    "check.lift.why": "Sous cette hauteur, pas une goutte n'atteint le réservoir.",
    "check.lift.source": "la plaque signalétique de la pompe (plus grande hauteur)",
    "check.rated_head.compared": (
        "Hauteur de la pompe au débit nominal {flow} m3/h, face à la hauteur nécessaire à ce débit en {month} [m] : "
        "{parts}"
    ),
    "check.rated_head.compared_yield": (
        "Hauteur de la pompe à {share} % du débit d'exploitation du forage, le débit nominal étant plus grand, {flow} "
        "m3/h, face à la hauteur nécessaire à ce débit en {month} [m] : {parts}"
    ),
    "check.rated_head.why": (
        "Une pompe marche au mieux près de sa hauteur nominale ; en deçà le débit s'effondre, bien au-delà de la "
        "puissance est perdue."
    ),
    "check.rated_head.remedy_short": (
        "prévoir le débit plus petit du point de fonctionnement, ou une pompe de hauteur nominale d'environ {head} m à "
        "{flow} m3/h (environ {power} kW si {share} % en parviennent à l'eau)"
    ),
    "check.rated_head.remedy_over": (
        "une pompe de hauteur nominale d'environ {head} m à {flow} m3/h (environ {power} kW si {share} % en "
        "parviennent à l'eau) ; celle-ci doit être ralentie"
    ),
    "check.rated_head.source": (
        "calculé d'après les données du site ; plus d'un dixième en moins est non conforme, plus d'un tiers en plus "
        "est une mise en garde : pratique courante, sans source"
    ),
    "check.power_limit.compared": ("La plus grande puissance du variateur face à ce que prend la pompe à {flow} m3/h"),
    "check.power_limit.why": (
        "Avec moins de puissance la pompe reste sous son débit, et avec bien moins aucune eau n'arrive."
    ),
    "check.power_limit.remedy": "un variateur d'au moins {power} W qui convient au moteur",
    "check.power_limit.source": ("la fiche technique du variateur ; si peu qu'aucune eau n'arrive est non conforme"),
    "check.duty_flow.compared": (
        "Fonctionnement en {month}, {flow} m3/h à {head} m ({limited}), face à {low} à {high} % du débit nominal de "
        "{rated} m3/h"
    ),
    "check.duty_flow.why": (
        "Loin de son point nominal une pompe gaspille de la puissance et s'use ; prévoir le débit nominal, non le plus "
        "grand."
    ),
    "check.duty_flow.source": (
        "la plaque signalétique de la pompe (débit nominal) ; la plage est une pratique courante, sans source"
    ),
    "check.speed.compared": "Vitesse nécessaire pour {flow} m3/h, face à la vitesse la plus basse de la pompe",
    "check.speed.why": (
        "Sous sa vitesse la plus basse la pompe ne peut être ralentie ; une vanne doit alors détruire la hauteur en "
        "trop."
    ),
    "check.speed.source": "la plaque signalétique de la pompe (plage de vitesse)",
    "check.wire_to_water.compared": (
        "Rendement du fil à l'eau au point de fonctionnement, face à {share} % de celui au point nominal ({rated} %)"
    ),
    "check.wire_to_water.why": (
        "Chaque point perdu ici se paie en modules PV, en énergie ou en carburant toute la vie durant."
    ),
    "check.wire_to_water.source": (
        "la plaque signalétique de la pompe (point nominal) ; la part est une pratique courante, sans source"
    ),
    "check.hours_a_day.compared": (
        "Heures par jour à {flow} le mois le plus chargé : {first} la première année, {last} au plus"
    ),
    "check.hours_a_day.why": (
        "Une pompe qui doit marcher jour et nuit n'a pas de réserve, et le forage pas le temps de remonter."
    ),
    "check.hours_a_day.remedy": "un débit d'au moins {flow} m3/h, ou moins de besoins les dernières années",
    "check.hours_a_day.remedy_less": (
        "moins de besoins, ou un second forage ou une autre source : {flow} m3/h, qui suffiraient, dépassent le débit "
        "d'exploitation du forage, {safe} m3/h"
    ),
    "check.hours_a_day.source": (
        "20 heures par jour est une pratique courante, sans source ; plus de 24 la première année est non conforme"
    ),
    "check.pipe_length.compared": (
        "Longueur de toutes les conduites, face à la profondeur de la pompe et au chemin jusqu'au réservoir"
    ),
    "check.pipe_length.why": "Une conduite qui n'est pas comptée, ce sont des pertes de charge qui ne le sont pas.",
    "check.pipe_length.remedy": "ajouter {length} m aux longueurs de conduite",
    "check.pipe_length.source": "les données du site",
    "check.velocity.compared": "Vitesse à {flow} [m/s] : {segments} ; face à {slowest} à {fastest} m/s",
    "check.velocity.segment": "{segment} {velocity}",
    "check.velocity.why": (
        "Une eau rapide coûte de la hauteur et fait des coups de bélier ; une eau lente laisse se déposer sable et air."
    ),
    "check.velocity.remedy_size": "tronçon {segment} : la taille de tuyau suivante, {pipe}",
    "check.velocity.remedy_diameter": "tronçon {segment} : un diamètre intérieur d'au moins {diameter} mm",
    "check.velocity.remedy_slow": (
        "rien, là où les pertes de charge doivent être faibles ; sinon tronçon {segment} : au plus {diameter} mm de "
        "diamètre intérieur"
    ),
    "check.velocity.source": ("EN 805:2000 annexe A, de mémoire ; 3 m/s : Crane TP-410, service général, de mémoire"),
    # pipeline
    "check.pressure_at_duty.compared": (
        "Plus forte pression à {flow}, face à celle que supporte le tuyau à {temperature} °C ; plus faible marge : "
        "{segment}"
    ),
    "check.pressure_at_duty.compared_open": "Plus forte pression à {flow}, tronçon {segment}",
    "check.pressure_at_duty.why": "Un tuyau au-dessus de sa classe éclate ou flue jusqu'à une fin précoce.",
    "check.pressure_at_duty.remedy": "{pipes}",
    "check.pressure_at_shut_off.compared": (
        "Plus forte pression si une vanne est fermée contre la pompe en marche, face à celle que supporte le tuyau à "
        "{temperature} °C ; plus faible marge : {segment}"
    ),
    "check.pressure_at_shut_off.compared_open": (
        "Plus forte pression si une vanne est fermée contre la pompe en marche, tronçon {segment}"
    ),
    "check.pressure_at_shut_off.why": (
        "Une vanne fermée par erreur, ou un robinet à flotteur, met la plus grande hauteur de la pompe sur la conduite."
    ),
    "check.pressure_at_shut_off.remedy": (
        "{pipes} ; ou un pressostat ou une soupape de décharge, et aucune vanne qui puisse se fermer contre la pompe "
        "en marche"
    ),
    "check.pipe_class.look_for": "chercher « PN » ou bar imprimé le long du tuyau : {segments}",
    "check.pipe_class.source": "classe de pression du tuyau, réduite pour l'eau chaude : {sources}",
    "check.pipe_class.remedy_named": "{segment} : {pipe} (PN {pressure})",
    "check.pipe_class.remedy_class": "{segment} : tuyau, joints et raccords d'au moins PN {pressure}",
    "check.pipe_class.remedy_material": (
        "{segment} : tuyau en {material}, car {given} n'a pas de classe dans une eau aussi chaude"
    ),
    "check.pipe_class.remedy_cooler": (
        "{segment} : une eau plus fraîche, car {given} n'a pas de classe dans une eau aussi chaude"
    ),
    "check.surge.compared": (
        "Plus forte pression quand le débit s'arrête d'un coup ou qu'une vanne claque : une hausse de {rise} m, "
        "tronçon {segment} (onde {speed} m/s)"
    ),
    "check.surge.compared_timed": (
        "Plus forte pression quand le débit s'arrête en {stop} s : une hausse de {rise} m, tronçon {segment} (onde "
        "{speed} m/s)"
    ),
    "check.surge.compared_open": (
        "Plus forte pression quand le débit s'arrête d'un coup ou qu'une vanne claque, tronçons {segments}"
    ),
    "check.surge.compared_open_timed": ("Plus forte pression quand le débit s'arrête en {stop} s, tronçons {segments}"),
    "check.surge.why": (
        "Une coupure de courant arrête l'eau d'un coup ; l'onde éclate les tuyaux et arrache les joints, et aspire "
        "aussi fort qu'elle presse."
    ),
    "check.surge.look_for": ("chercher l'épaisseur de paroi (ou SDR) et la classe (PN) imprimées le long du tuyau"),
    "check.surge.remedy": (
        "laisser le débit s'arrêter en {seconds} s au moins, lors d'une coupure de courant aussi (vanne lente, arrêt "
        "progressif, ballon anti-bélier pour les coupures), ou un tuyau plus large"
    ),
    "check.surge.remedy_class": "un tuyau d'une classe plus haute, ou une eau plus lente dans un tuyau plus large",
    "check.surge.source_open": (
        "Joukowsky 1898 avec la vitesse d'onde du tuyau (Korteweg), sans pertes de charge ; classe de pression du "
        "tuyau, réduite pour l'eau chaude : {sources}"
    ),
    "check.surge.source": (
        "Joukowsky 1898 avec la vitesse d'onde du tuyau (Korteweg), sans pertes de charge ; classe de pression du "
        "tuyau, réduite pour l'eau chaude : {sources} ; jusqu'à {times} fois la classe c'est une mise en garde, "
        "l'estimation étant une borne haute : pratique courante, sans source"
    ),
    "check.high_points.compared_open": "Points hauts du tracé, et la pression à ces points",
    "check.high_points.compared": (
        "Plus faible pression le long du tracé, pompe arrêtée ; points hauts entre les extrémités : {count}"
    ),
    "check.high_points.why": (
        "L'air s'amasse à un point haut et étrangle le débit ; une pression inférieure à celle de l'air aspire des "
        "saletés."
    ),
    "check.high_points.look_for": (
        "parcourir le tracé avec un niveau ou un récepteur satellite, et noter distances et niveaux du sol"
    ),
    "check.high_points.remedy": "une ventouse à la distance de {places} m",
    "check.high_points.remedy_below": (
        "une ventouse à la distance de {places} m ; ou y poser la conduite plus bas, ou relever le réservoir"
    ),
    "check.high_points.source": (
        "le profil du tracé ; les ventouses aux points hauts sont une pratique courante, sans source"
    ),
    "check.profile_length.compared": (
        "Conduite au-delà du forage ({laid} m) et profil ({chainage} m) : leur différence"
    ),
    "check.profile_length.why": (
        "Si les deux diffèrent, pertes de charge et pressions sont calculées pour un autre tracé."
    ),
    "check.profile_length.remedy": "donner le profil jusqu'au réservoir, et des tronçons de même longueur",
    "check.profile_length.source": "les données du site ; {share} % est une pratique courante, sans source",
    # strings in parallel
    "check.strings.remedy": "pas plus de {count} chaîne(s)",
    "check.array_current.compared": (
        "Courant de {count} chaîne(s), 1,25 fois le courant de court-circuit, face au courant maximal du variateur"
    ),
    "check.array_current.compared_open": (
        "Courant de {count} chaîne(s), qui conviendraient (le nombre est ouvert), 1,25 fois le courant de "
        "court-circuit, face au courant maximal du variateur"
    ),
    "check.array_current.why": (
        "Les bords de nuages clairs donnent plus que le courant nominal ; entrées et fusibles doivent le supporter."
    ),
    "check.array_current.look_for": (
        "chercher « max. input current » (courant d'entrée maximal) ou « Isc max. » sur la plaque du variateur"
    ),
    "check.array_current.remedy_controller": "un autre variateur, ou un module de moindre courant",
    "check.array_current.source": "la fiche technique du variateur ; 1,25 fois selon la CEI 62548",
    "check.string_over_current.compared": (
        "Courant que les autres de {count} chaîne(s) envoient dans une chaîne en défaut, face au fusible série du "
        "module"
    ),
    "check.string_over_current.compared_open": (
        "Courant que les autres de {count} chaîne(s), qui conviendraient (le nombre est ouvert), envoient dans une "
        "chaîne en défaut, face au fusible série du module"
    ),
    "check.string_over_current.compared_few": (
        "Courant que les autres de {count} chaîne(s) envoient dans une chaîne en défaut, face au fusible série du "
        "module, qu'une ou deux chaînes n'atteignent pas"
    ),
    "check.string_over_current.compared_few_open": (
        "Courant que les autres de {count} chaîne(s), qui conviendraient (le nombre est ouvert), envoient dans une "
        "chaîne en défaut, face au fusible série du module, qu'une ou deux chaînes n'atteignent pas"
    ),
    "check.string_over_current.compared_fuse": (
        "Fusible de chaque chaîne, face à {least} A au moins et {most} A au plus pour ce module"
    ),
    "check.string_over_current.why": (
        "Un court-circuit dans une chaîne attire le courant de toutes les autres, ce qui peut enflammer ses modules et "
        "son câble."
    ),
    "check.string_over_current.look_for": ("chercher « max. series fuse » (fusible série maximal) au dos du module"),
    "check.string_over_current.remedy": (
        "un fusible gPV (CEI 60269-6) de {rating:g} A, pour au moins {volts} V CC, aux deux pôles de chaque chaîne ; "
        "non couvert : le câble d'une chaîne, qui doit supporter le calibre du fusible"
    ),
    "check.string_over_current.remedy_fewer": (
        "pas plus de {count} chaîne(s) et pas de fusible : aucun calibre usuel ne convient"
    ),
    "check.string_over_current.source": (
        "la fiche technique du module ; CEI 62548 (fusible de 1,5 à 2,4 fois le courant de court-circuit, de mémoire)"
    ),
    "check.power_ratio.compared": (
        "Puissance nominale de {count} chaîne(s) rapportée à ce que prend la pompe, face à {low} à {high}"
    ),
    "check.power_ratio.compared_open": (
        "Puissance nominale de {count} chaîne(s) (le nombre est ouvert ; 1 à {largest} peuvent être essayées) "
        "rapportée à ce que prend la pompe, face à {low} à {high}"
    ),
    "check.power_ratio.why": (
        "Un petit champ amène rarement la pompe à pleine vitesse ; un grand donne de la puissance dont rien ne peut se "
        "servir."
    ),
    "check.power_ratio.remedy": "{count} chaîne(s)",
    "check.power_ratio.remedy_nearest": "{count} chaîne(s), le plus proche possible",
    "check.power_ratio.remedy_least": (
        "moins de modules en série là où les tensions le permettent, ou un module plus petit : une chaîne est le "
        "minimum"
    ),
    "check.power_ratio.source": "pratique courante, sans source",
}
