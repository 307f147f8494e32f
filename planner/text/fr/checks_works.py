"""Français des vérifications du forage, du refroidissement, du réservoir et de l'eau, et de ce qu'elles partagent."""

SENTENCES: dict[str, str] = {
    # what all checks of a site share
    "basis.duty_flow": "{flow} m3/h (le débit de fonctionnement)",
    "basis.planned_flow": "{flow} m3/h (le débit à prévoir avec une pompe qui le relève)",
    "basis.drawn_flow": "{flow} m3/h (le débit que la pompe prélèverait)",
    "basis.coldest_given": "{temperature} °C, comme indiqué",
    "basis.coldest_of_weather": (
        "{temperature} °C, l'heure la plus froide de la météo moins {allowance} K (rien n'était indiqué)"
    ),
    "basis.better_pump": (
        "une pompe de hauteur nominale d'environ {head} m à {flow} m3/h (environ {power} kW si {share} % en "
        "parviennent à l'eau)"
    ),
    # borehole
    "check.specific_capacity.compared": (
        "Rabattement selon un débit spécifique de {given:g} m3/h par m au débit d'exploitation de {flow:g} m3/h, face "
        "aux {there_m:.1f} m d'eau au-dessus de l'aspiration"
    ),
    "check.specific_capacity.why": (
        "Écrit à l'envers, il fait paraître fort un forage faible, et la pompe est posée là où elle marche à sec."
    ),
    "check.specific_capacity.remedy": (
        "relire l'essai de pompage : s'il dit {given:g} m de rabattement par m3/h, le débit spécifique est {inverse}, "
        "et le débit d'exploitation rabat l'eau de {drawdown_m:.1f} m"
    ),
    "check.specific_capacity.source": (
        "les données du site ; un doute sous {percent:.0f} % est une hypothèse, pratique courante"
    ),
    "check.safe_yield.compared": (
        "Débit que la pompe donne ici à pleine vitesse, face au débit d'exploitation du forage"
    ),
    "check.safe_yield.compared_rated": "Débit nominal de la pompe, face au débit d'exploitation du forage",
    "check.safe_yield.why": (
        "Pomper trop attire du sable, fait marcher la pompe à sec et peut ruiner le forage pour de bon."
    ),
    "check.safe_yield.remedy_speed": (
        "régler la vitesse maximale du variateur à {speed} %, ou une pompe de moindre débit"
    ),
    "check.safe_yield.remedy_pump": (
        "une pompe de débit nominal d'au plus {flow} m3/h, à environ {head} m ; d'ici là un variateur ou une vanne qui "
        "la tient à {limit} m3/h"
    ),
    "check.safe_yield.source": (
        "les données du site (essai de pompage) ; une pompe de débit nominal supérieur est non conforme, une pompe que "
        "sa vitesse peut tenir ne l'est pas"
    ),
    "check.pumping_level.compared": ("Profondeur de l'eau en {month} à {flow}, face à l'aspiration de la pompe"),
    "check.pumping_level.why": "Une pompe qui prend de l'air se désamorce, marche à sec et brûle.",
    "check.pumping_level.source": "les données du site",
    "check.deeper.remedy": "poser la pompe {by} m plus bas, conduite et câble en conséquence, ou {less}",
    "check.deeper.remedy_if_bottom": (
        "poser la pompe {by} m plus bas, conduite et câble en conséquence, une fois que le rapport du foreur montre "
        "que le fond est plus bas, ou {less}"
    ),
    "check.deeper.remedy_if_screen": (
        "poser la pompe {by} m plus bas, conduite et câble en conséquence, une fois que le rapport du foreur montre "
        "que la crépine est plus bas, ou {less}"
    ),
    "check.deeper.remedy_if_both": (
        "poser la pompe {by} m plus bas, conduite et câble en conséquence, une fois que le rapport du foreur montre "
        "que fond et crépine sont plus bas, ou {less}"
    ),
    "check.deeper.remedy_shallow": "{less} : le forage n'est pas assez profond pour poser la pompe plus bas",
    "check.deeper.remedy_in_screen": (
        "{less} : plus bas, la pompe serait dans la crépine, ce qui attire du sable et laisse le moteur chauffer"
    ),
    "check.deeper.less": "pomper moins",
    "check.deeper.less_held": (
        "pomper moins (le calcul horaire la tient à {flow} m3/h : un variateur réglé à {speed} % de vitesse au plus et "
        "une coupure par manque d'eau)"
    ),
    "check.submergence.compared": ("Eau au-dessus de l'aspiration en {month} à {flow}, face à ce que demande la pompe"),
    "check.submergence.why": "Trop peu d'eau au-dessus de l'aspiration attire de l'air et fait caviter la pompe.",
    "check.submergence.look_for": (
        "chercher « minimum submergence » (immersion minimale) ou NPSH dans la fiche technique de la pompe"
    ),
    "check.submergence.source": "la plaque signalétique de la pompe",
    "check.level_through_life.compared": (
        "Profondeur de l'eau en {month} de la dernière année à {flow}, le niveau statique baissant de {decline} m et "
        "le débit spécifique de {loss} % par an, face à l'aspiration moins ce qui doit rester au-dessus"
    ),
    "check.level_through_life.compared_dry": (
        "Profondeur de l'eau en {month} de la dernière année à {flow}, le niveau statique baissant de {decline} m et "
        "le débit spécifique de {loss} % par an, face à l'aspiration moins ce qui doit rester au-dessus ; trop bas à "
        "partir de l'année {year}"
    ),
    "check.level_through_life.why": (
        "Une pompe posée pour l'eau d'aujourd'hui marche à sec les années suivantes, et le calcul horaire la fait "
        "pomper de moins en moins."
    ),
    "check.level_through_life.source": ("baisses indiquées ou supposées ; un forage nettoyé à temps baisse moins"),
    "check.screen.compared": "Profondeur de l'eau en {month} à {flow}, face au haut de la crépine",
    "check.screen.why": "Une crépine qui se dénoie se colmate et laisse entrer de l'air dans l'eau.",
    "check.screen.look_for": "chercher la profondeur de la crépine dans le rapport du foreur",
    "check.screen.source_log": "le rapport du foreur",
    "check.screen.remedy": "pomper moins, pour que l'eau reste au-dessus de la crépine",
    "check.screen.source": "les données du site ; la garder noyée est une pratique courante, sans source",
    "check.casing_clearance.compared_open": "Diamètre intérieur du tubage, face au diamètre extérieur de la pompe",
    "check.casing_clearance.compared": (
        "Diamètre intérieur du tubage, face au diamètre extérieur de la pompe de {outer} mm et {room} mm de jeu"
    ),
    "check.casing_clearance.why": "Une pompe coincée ne peut être relevée et peut coûter le forage.",
    "check.casing_clearance.source_open": "la plaque signalétique de la pompe et les données du site",
    "check.casing_clearance.remedy": "une pompe d'au plus {outer} mm de diamètre extérieur",
    "check.casing_clearance.source": (
        "la plaque signalétique de la pompe (corps : NEMA MG 1 partie 18) ; le jeu est une pratique courante, sans "
        "source"
    ),
    "check.motor_size.look_for_casing": "chercher le diamètre intérieur du tubage dans le rapport du foreur",
    "check.motor_size.look_for_motor": ("chercher le diamètre extérieur ou la taille du corps en pouces sur la plaque"),
    "check.motor_size.look_for_both": (
        "chercher le diamètre intérieur du tubage dans le rapport du foreur, et le diamètre extérieur ou la taille du "
        "corps en pouces sur la plaque"
    ),
    "check.below_motor.compared": "Forage restant sous le moteur",
    "check.below_motor.compared_intake": ("Forage restant sous l'aspiration, dont la longueur du moteur est à déduire"),
    "check.below_motor.why": "Le sable s'amasse au fond ; un moteur qui s'y tient surchauffe et se coince.",
    "check.below_motor.look_for": "chercher la profondeur du forage dans le rapport du foreur, ou la sonder",
    "check.below_motor.source_log": "le rapport du foreur",
    "check.below_motor.look_for_length": "chercher la longueur du moteur sur le dessin de la fiche technique",
    "check.below_motor.source_plate": "la plaque signalétique de la pompe",
    "check.below_motor.remedy": "poser la pompe {by} m plus haut",
    "check.below_motor.source": ("les données du site ; {sump} m de décanteur sont une pratique courante, sans source"),
    "check.daily_limit.compared": (
        "Eau prélevée le mois le plus chargé, {first} m3/jour la première année et {most} au plus, face à la limite "
        "journalière"
    ),
    "check.daily_limit.compared_over": (
        "Eau prélevée le mois le plus chargé, {first} m3/jour la première année et {most} au plus, face à la limite "
        "journalière ; trop à partir de l'année {year}"
    ),
    "check.daily_limit.compared_open": (
        "Eau prélevée le mois le plus chargé, {first} m3/jour la première année et {most} au plus, face au permis"
    ),
    "check.daily_limit.why": "Un permis dépassé peut être retiré, et l'aquifère avec lui.",
    "check.daily_limit.look_for": (
        "chercher le volume journalier dans le permis de prélèvement ou le rapport de l'essai de pompage"
    ),
    "check.daily_limit.source_permit": "le permis de prélèvement",
    "check.daily_limit.remedy": "un permis pour {volume}, ou moins de besoins",
    "check.daily_limit.source": "les données du site (permis ou essai)",
    # cooling of the motor
    "check.motor_cooling.compared": (
        "Vitesse de l'eau le long du moteur dans le tubage à {flow}, face à ce qui le refroidit"
    ),
    "check.motor_cooling.compared_small": (
        "Vitesse de l'eau le long du moteur dans le tubage à {flow}, face à ce qui le refroidit ; un moteur de quatre "
        "pouces sous 3 ch n'en demande pas"
    ),
    "check.motor_cooling.compared_beside": (
        "Vitesse de l'eau le long du moteur dans le tubage à {flow}, face à ce qui le refroidit ; l'aspiration est à "
        "côté ou au-dessous de la crépine, si bien que l'eau ne passe pas le long du moteur"
    ),
    "check.motor_cooling.compared_small_beside": (
        "Vitesse de l'eau le long du moteur dans le tubage à {flow}, face à ce qui le refroidit ; un moteur de quatre "
        "pouces sous 3 ch n'en demande pas ; l'aspiration est à côté ou au-dessous de la crépine, si bien que l'eau ne "
        "passe pas le long du moteur"
    ),
    "check.motor_cooling.compared_sleeve": (
        "Vitesse de l'eau le long du moteur dans la chemise de refroidissement à {flow}, face à ce qui le refroidit"
    ),
    "check.motor_cooling.compared_sleeve_small": (
        "Vitesse de l'eau le long du moteur dans la chemise de refroidissement à {flow}, face à ce qui le refroidit ; "
        "un moteur de quatre pouces sous 3 ch n'en demande pas"
    ),
    "check.motor_cooling.why": (
        "Un moteur immergé est refroidi par l'eau qui passe le long de lui ; dans une eau immobile son bobinage brûle."
    ),
    "check.motor_cooling.remedy": (
        "une chemise de refroidissement d'au plus {width} mm de diamètre intérieur sur le moteur"
    ),
    "check.motor_cooling.remedy_if_room": (
        "une chemise de refroidissement d'au plus {width} mm de diamètre intérieur sur le moteur, si le tubage a la "
        "place"
    ),
    "check.motor_cooling.remedy_motor": (
        "un moteur plus petit, ou que son fabricant prévoit pour ce débit et cette eau : aucune chemise de "
        "refroidissement ne passe entre les deux"
    ),
    "check.motor_cooling.source": (
        "0,25 ft/s pour les moteurs de 4 pouces à partir de 3 ch, 0,5 ft/s pour les plus grands : pratique courante, "
        "sans source ; les données du site"
    ),
    # tank
    "check.irradiation.compared": (
        "Irradiation de {month}, le mois le plus éloigné de la climatologie de la région : {given} face à {usual} "
        "kWh/m2/jour"
    ),
    "check.irradiation.compared_not": "Irradiation, face à la climatologie de la région",
    "check.irradiation.why": (
        "Le champ est dimensionné sur ces chiffres ; une unité ou un mois faux ne se voit dans aucune autre "
        "vérification."
    ),
    "check.irradiation.source": (
        "une climatologie de 3 degrés sur 3 (NASA MERRA-2, 2011-2015) ; {limit:g} % est une hypothèse, au-delà des 29 "
        "% trouvés pour trois années types"
    ),
    "check.irradiation.above": (
        "votre mois ({month}) est {apart} % au-dessus de ce qu'a cette région : vérifier que les chiffres sont des "
        "kWh/m2 par jour sur un plan horizontal (1 kWh = 3,6 MJ), commencent en janvier et sont pour ce lieu, et les "
        "signes de sa latitude et de sa longitude"
    ),
    "check.irradiation.below": (
        "votre mois ({month}) est {apart} % au-dessous de ce qu'a cette région : vérifier que les chiffres sont des "
        "kWh/m2 par jour sur un plan horizontal (non des heures de soleil ou des sommes d'un mois), commencent en "
        "janvier et sont pour ce lieu"
    ),
    "check.irradiation.measure": (
        "l'irradiation est une estimation de cette climatologie même : la mesurer ou la télécharger avant d'engager de "
        "l'argent (planner weather --fetch, ou une station proche)"
    ),
    "check.irradiation.elsewhere": (
        "la climatologie n'a rien pour ce lieu : comparer les chiffres à une seconde source, comme planner weather "
        "--fetch ou une station proche"
    ),
    "check.air_temperature.compared": (
        "Air de {month}, le mois le plus éloigné de la climatologie de la région : {given} face à {usual} °C à cette "
        "altitude"
    ),
    "check.air_temperature.compared_not": "Température de l'air, face à la climatologie de la région",
    "check.air_temperature.why": "Modules et câbles sont jugés à ces températures.",
    "check.air_temperature.source": (
        "une climatologie de 3 degrés sur 3 (ERA5, 2000-2025 ; contient des informations modifiées du service "
        "Copernicus sur le changement climatique), 6,5 K/km d'altitude ; {limit:g} K est une hypothèse, au-delà des 4 "
        "K trouvés pour trois années types"
    ),
    "check.air_temperature.above": (
        "votre mois ({month}) est {apart} K plus chaud que cette région : vérifier que les chiffres sont des degrés "
        "Celsius, des moyennes du jour et de la nuit, et commencent en janvier, et l'altitude"
    ),
    "check.air_temperature.below": (
        "votre mois ({month}) est {apart} K plus froid que cette région : vérifier que les chiffres sont des degrés "
        "Celsius, des moyennes du jour et de la nuit, et commencent en janvier, et l'altitude"
    ),
    "check.air_temperature.measure": (
        "la température est une estimation de cette climatologie même : la mesurer ou la télécharger avant d'engager "
        "de l'argent"
    ),
    "check.air_temperature.elsewhere": (
        "la climatologie n'a rien pour ce lieu : comparer les chiffres à une seconde source"
    ),
    "check.days_held.compared": (
        "Besoins du mois le plus chargé de la première année que contiennent {volume} m3 : {hours} heures"
    ),
    "check.days_held.compared_open": (
        "Besoins du mois le plus chargé de la première année que contiennent {volume} m3 (le volume est ouvert : le "
        "plus petit qui convient) : {hours} heures"
    ),
    "check.days_held.why": "Le réservoir fait passer aux usagers nuages, coupures et réparations.",
    "check.days_held.remedy": "un réservoir de {volume} m3, ou moins là où une seconde source est prête",
    "check.days_held.source": (
        "les besoins d'un jour : Recommended Standards for Water Works 7.0.1, de mémoire ; le calcul horaire dit ce "
        "qui suffit"
    ),
    "check.busiest_hour.compared": (
        "Volume du réservoir, face à l'eau puisée à l'heure de pointe de la première année"
    ),
    "check.busiest_hour.why": "Un réservoir qu'une heure vide laisse chaque jour les usagers à sec.",
    "check.busiest_hour.remedy": "un réservoir d'au moins {volume} m3",
    "check.busiest_hour.source": "les données du site",
    "check.refill_time.compared": "Heures de pompage qui remplissent {volume} m3 à {flow}, sans puisage",
    "check.refill_time.why": "Un réservoir long à remplir reste bas après chaque coupure.",
    "check.refill_time.remedy": "un débit d'au moins {flow} m3/h",
    "check.refill_time.remedy_smaller": ("un réservoir d'au plus {volume} m3, ou un débit d'au moins {flow} m3/h"),
    "check.refill_time.remedy_only_smaller": "un réservoir d'au plus {volume} m3",
    "check.refill_time.remedy_second": (
        "un second forage ou une autre source : {flow} m3/h, qui le rempliraient à temps, dépassent le débit "
        "d'exploitation de celui-ci"
    ),
    "check.refill_time.source": "pratique courante, sans source",
    "check.inlet_height.compared": (
        "Entrée du réservoir prise en compte dans la hauteur, face au sol à la fin du tracé"
    ),
    "check.inlet_height.why": (
        "Une entrée prise trop bas dans la hauteur laisse la pompe trop courte au dernier mètre."
    ),
    "check.inlet_height.look_for": ("niveler le site du réservoir par rapport au forage, et donner le profil du tracé"),
    "check.inlet_height.remedy": (
        "niveler de nouveau : l'entrée est à {ground} m ou plus au-dessus du sol au forage, de la hauteur du réservoir "
        "lui-même"
    ),
    "check.inlet_height.source": "les données du site",
    "check.outlet_head.compared": (
        "Hauteur de la sortie du réservoir au-dessus des robinets, avant toute perte dans les conduites qui y mènent"
    ),
    "check.outlet_head.why": ("Des robinets sans pression donnent un filet d'eau, et les plus éloignés rien."),
    "check.outlet_head.look_for": "niveler la sortie par rapport au robinet le plus haut",
    "check.outlet_head.remedy": ("relever le réservoir de {by} m, que la pompe doit alors relever aussi"),
    "check.outlet_head.source": (
        "7 m pour un étage : manuel du CPHEEO sur l'adduction d'eau ; 2 m est une pratique courante, sans source"
    ),
    # water
    "check.per_person.compared_pupils": (
        "Eau par personne et par jour, usager {user}, celui qui en a le moins pour son genre"
    ),
    "check.per_person.compared_below_basic": (
        "Eau par personne et par jour, usager {user} (moins que le service de base), celui qui en a le moins pour son "
        "genre"
    ),
    "check.per_person.compared_basic": (
        "Eau par personne et par jour, usager {user} (service de base), celui qui en a le moins pour son genre"
    ),
    "check.per_person.compared_intermediate": (
        "Eau par personne et par jour, usager {user} (service intermédiaire et plus), celui qui en a le moins pour son "
        "genre"
    ),
    "check.per_person.why": "Avec trop peu d'eau, on va chercher le reste en des lieux dangereux.",
    "check.per_person.remedy": "donner {volume}, ou montrer qu'ils ont une autre source sûre",
    "check.per_person.source": (
        "Manuel Sphère : 15 L, école 3 L par élève (de mémoire) ; OMS, quantité d'eau domestique : 20 L de base, 50 L "
        "intermédiaire"
    ),
    "check.yield_through_life.compared": (
        "Besoins du mois le plus chargé à leur maximum, face au débit d'exploitation en 20 heures : il suffit pendant "
        "la période d'analyse"
    ),
    "check.yield_through_life.compared_short": (
        "Besoins du mois le plus chargé à leur maximum, face au débit d'exploitation en 20 heures : il ne suffit plus "
        "à partir de l'année {year}"
    ),
    "check.yield_through_life.compared_limit": (
        "Besoins du mois le plus chargé à leur maximum, face à la limite journalière : elle suffit pendant la période "
        "d'analyse"
    ),
    "check.yield_through_life.compared_limit_short": (
        "Besoins du mois le plus chargé à leur maximum, face à la limite journalière : elle ne suffit plus à partir de "
        "l'année {year}"
    ),
    "check.yield_through_life.why": (
        "Un forage qui ne suit pas la croissance laisse les usagers à court, ou est surexploité."
    ),
    "check.yield_through_life.remedy": (
        "un second forage ou une autre source d'ici l'année {year}, ou tenir les besoins à {volume} m3/jour"
    ),
    "check.yield_through_life.source": (
        "les données du site ; 20 heures par jour, pour laisser le niveau remonter, est une pratique courante, sans "
        "source"
    ),
}
