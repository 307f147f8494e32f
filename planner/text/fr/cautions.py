"""Français des mises en garde : sur le travail lui-même, et sur les limites des chiffres d'une étude."""

SENTENCES: dict[str, str] = {
    "caution.local": "La réglementation locale et les règles de l'art priment.",
    "caution.with_local": "{caution} La réglementation locale et les règles de l'art priment.",
    "caution.where_listed": (
        "La réglementation locale et les règles de l'art priment. Lire les mises en garde avant de construire, "
        "d'ouvrir ou de boire quoi que ce soit : « planner run » écrit celles qui valent pour le site sur la feuille « "
        "Méthode et mises en garde »."
    ),
    # of the work itself
    "caution.source.solar": "champ photovoltaïque",
    "caution.source.grid": "réseau électrique",
    "caution.source.generator": "groupe électrogène",
    "caution.source_any": (
        "L'électricité à un forage peut tuer (source : {source}) : mise à la terre, protection, inverseur qui ne peut "
        "la relier à une autre source, et consignation avant de relever la pompe sont l'affaire d'un électricien agréé "
        "et de celui qui l'exploite."
    ),
    "caution.daylight": (
        "Les modules PV donnent une tension CC dangereuse dès qu'il y a de la lumière et ne peuvent être arrêtés de "
        "jour ; sectionneurs, fusibles de chaîne et polarité sont l'affaire d'un électricien agréé."
    ),
    "caution.dc_arc": (
        "Ne jamais débrancher un connecteur CC, retirer un fusible CC ni couper un câble CC sous charge : l'arc ne "
        "s'éteint pas de lui-même, il brûle et met le feu. Arrêter la pompe, ouvrir l'interrupteur-sectionneur CC et "
        "mesurer qu'aucun courant ne passe avant d'ouvrir un connecteur ; un défaut à la terre peut entretenir un "
        "courant : considérer le circuit comme sous tension."
    ),
    "caution.isolate": (
        "Avant d'ouvrir un capot ou de toucher un conducteur, sectionner chaque source ({sources}), condamner et "
        "étiqueter chaque organe de coupure, attendre le temps que le fabricant du variateur indique pour la décharge "
        "de ses condensateurs, puis vérifier l'absence de tension, entre tous les conducteurs et par rapport à la "
        "terre, avec un vérificateur essayé avant et après sur une source connue."
    ),
    "caution.isolate_array": (
        "Avant d'ouvrir un capot ou de toucher un conducteur, sectionner chaque source ({sources}), condamner et "
        "étiqueter chaque organe de coupure, attendre le temps que le fabricant du variateur indique pour la décharge "
        "de ses condensateurs, puis vérifier l'absence de tension, entre tous les conducteurs et par rapport à la "
        "terre, avec un vérificateur essayé avant et après sur une source connue ; de jour, le côté champ de son "
        "sectionneur reste sous tension."
    ),
    "caution.wet_hands": (
        "Ne jamais manœuvrer interrupteurs, prises ou variateur les mains mouillées ou les pieds dans l'eau."
    ),
    "caution.grid": (
        "L'électricité du réseau à un forage peut tuer : mise à la terre, dispositif différentiel et consignation "
        "avant de relever la pompe sont l'affaire d'un électricien agréé et du distributeur."
    ),
    "caution.residual_current": (
        "Le type du dispositif différentiel doit convenir à un variateur électronique, dont le courant de fuite "
        "continu lissé aveugle les types AC et A : type B (CEI 62423) là où le fabricant du variateur ou la "
        "réglementation locale le demande, sans dispositif d'un autre type en amont sur le même circuit."
    ),
    "caution.exhaust": (
        "Les gaz d'échappement d'un groupe électrogène tuent dans les locaux fermés ou à demi fermés : le faire "
        "marcher en plein air, loin des portes, des fenêtres et de la bouche du forage. Le laisser refroidir avant de "
        "le ravitailler, écarter toute flamme, et stocker le carburant là où une fuite ne peut atteindre le forage."
    ),
    "caution.backfeed": (
        "Un groupe électrogène ne doit jamais renvoyer de courant dans le réseau électrique ou une autre source, ce "
        "qui tue ceux qui travaillent sur la ligne : le raccorder par un inverseur qui ne peut relier les deux, jamais "
        "par une fiche dans une prise."
    ),
    "caution.lightning": (
        "La foudre descend par les câbles dans le forage : relier et mettre à la terre variateur, conduite et tubage, "
        "poser des parafoudres au variateur et à la tête du forage, selon la réglementation locale des installations "
        "électriques, et arrêter le travail dès qu'on entend le tonnerre."
    ),
    "caution.lightning_array": (
        "La foudre descend par les câbles dans le forage : relier et mettre à la terre cadres des modules, variateur, "
        "conduite et tubage, poser des parafoudres au champ, au variateur et à la tête du forage, selon la "
        "réglementation locale des installations électriques, et arrêter le travail dès qu'on entend le tonnerre."
    ),
    "caution.lifting": (
        "Une pompe avec sa conduite pleine peut peser plus qu'une équipe ne peut retenir : lever avec trépied ou grue, "
        "colliers et câble de sécurité, tous prévus pour la charge, sans personne dessous."
    ),
    "caution.overhead_lines": (
        "Chercher les lignes aériennes avant de dresser trépied, grue, mât ou tuyau, et garder la distance que demande "
        "le distributeur : une ligne peut tuer sans être touchée."
    ),
    "caution.confined_space": (
        "Ne jamais descendre seul dans un puits creusé, une chambre de pompe ou un réservoir : l'air peut manquer "
        "d'oxygène ou contenir du gaz. Contrôler l'air, ventiler, porter un harnais relié à quelqu'un dehors, éloigner "
        "les moteurs, et ne jamais entrer derrière quelqu'un qui s'est effondré ; appeler les secours."
    ),
    "caution.falls": (
        "On tombe des toits, des échelles et des châteaux d'eau : garde-corps ou harnais sur un ancrage sûr, échelles "
        "attachées, aucun travail là-haut par vent, par pluie ou seul. Toit et tour doivent être calculés pour leur "
        "charge ; chaque m3 d'eau pèse une tonne."
    ),
    "caution.children": (
        "Des enfants se noient dans les réservoirs ouverts et tombent dans les forages ouverts : garder réservoir, "
        "chambres et forage couverts et fermés à clé, et clôturer réservoir et variateur."
    ),
    "caution.children_array": (
        "Des enfants se noient dans les réservoirs ouverts et tombent dans les forages ouverts : garder réservoir, "
        "chambres et forage couverts et fermés à clé, et clôturer réservoir, champ photovoltaïque et variateur."
    ),
    "caution.trench": (
        "Les parois d'une tranchée s'effondrent sans prévenir et ensevelissent : étayer ou taluter toute tranchée où "
        "quelqu'un entre, comme le demande la réglementation locale, tenir déblais et véhicules loin du bord, et "
        "repérer câbles et conduites enterrés avant de creuser."
    ),
    "caution.pressure_test": (
        "Éprouver la conduite à l'eau, jamais à l'air, qui emmagasine de quoi tuer quand un joint lâche : remplir "
        "lentement, purger l'air aux points hauts, puis monter la pression par paliers et tenir les gens à l'écart."
    ),
    "caution.drinking": (
        "Nettoyer, désinfecter et rincer d'abord forage, conduites et réservoir, puis prélever : faire analyser "
        "germes, arsenic, fluorure, nitrate et salinité avant que quiconque boive l'eau. Rien de ce qui est calculé "
        "ici ne dit qu'elle est potable."
    ),
    "caution.not_drinking": (
        "Nettoyer, désinfecter et rincer d'abord forage, conduites et réservoir, puis prélever : faire analyser l'eau "
        "selon ce que demande son usage ; personne ne doit la boire sans analyse."
    ),
    "caution.chlorine": (
        "Le chlore brûle la peau, les yeux et les poumons : gants, lunettes et plein air ; verser le chlore dans "
        "l'eau, jamais l'eau dans le chlore ; ne jamais le mélanger à un acide, à du carburant ou à un autre produit "
        "de nettoyage ; ne laisser boire personne, et écarter l'eau des animaux et des cours d'eau, jusqu'à la fin du "
        "rinçage."
    ),
    "caution.permit": (
        "Prélever de l'eau demande le plus souvent un permis avec un volume journalier ; l'avoir avant de pomper."
    ),
    # of the limits of a study's numbers
    "caution.altitude": ("L'altitude n'était pas indiquée ; {altitude} m sont pris de la grille mondiale de pvlib."),
    "caution.hours_a_day": (
        "La dernière année, la pompe devrait marcher {hours} heures par jour à son débit de fonctionnement de {flow} "
        "m3/h ; les besoins dépassent la pompe ou le forage."
    ),
    "caution.safe_yield": (
        "La pompe pourrait donner plus que le débit d'exploitation du forage, {flow} m3/h ; sa vitesse y est limitée."
    ),
    "caution.dc_window": (
        "Avec {option}, la plage de tension CC du variateur tient le champ hors de son meilleur point {hours} heures "
        "par an ; examiner le nombre de modules en série."
    ),
    "caution.source_carbon": (
        "Aucun chiffre de dioxyde de carbone n'est indiqué (source : {source}) : ses émissions ne sont pas comptées."
    ),
    "caution.lowest_level": (
        "Avec {option}, l'interrupteur à flotteur a été réglé au niveau le plus bas essayé, {level} % du réservoir ; "
        "un niveau plus haut garde plus de réserve en cas de panne."
    ),
    "caution.simulated": (
        "Chaque année de la période est simulée heure par heure, à partir de ce que la précédente laisse dans le "
        "réservoir, avec pompe, forage et modules tels qu'ils ont vieilli ; la qualité de l'eau n'est pas simulée."
    ),
    "caution.summer_time": (
        "Les heures sont en heure normale toute l'année ; l'été, les horloges de {zone} avancent d'une heure : "
        "puisages, plages tarifaires et heures autorisées sont alors en retard d'une heure."
    ),
    "caution.unpriced": (
        "Aucun prix n'est indiqué pour : {names} ; le coût d'une option qui en a besoin est incomplet."
    ),
    "caution.free": "Compté comme présent et payé, un prix de 0 étant indiqué : {names}.",
    "caution.under_budgeted": (
        "{option} est budgétée à {cost} dollars américains de 2011 par personne et par an pour l'exploitation, l'appui "
        "et le renouvellement, au-dessous des {low} à {high} constatés pour de tels réseaux (IRC WASHCost, repères de "
        "coûts, 2012, de seconde main) : chercher ce qui manque, comme salaires, réparations, analyses de l'eau ou "
        "appui, avant de le promettre aux usagers."
    ),
    "caution.loan": (
        "Le taux d'intérêt du prêt, {rate} %, est nominal, les prix sont constants et aucune inflation n'est indiquée "
        ": l'intérêt compte comme s'il s'ajoutait à l'inflation, et le coût pour le propriétaire ressort trop élevé. "
        "Indiquer l'inflation (0 seulement si l'on n'en attend pas)."
    ),
    "caution.turned_away": (
        "Un plan du champ est tourné vers le pôle (azimut {azimuth} à la latitude {latitude}) ; dans cet hémisphère, "
        "les modules PV sont d'ordinaire tournés vers {usual} degrés."
    ),
}
