"""Français des pages sur la hauteur, le réservoir, les vérifications, les données et ce qui a été simulé."""

SENTENCES: dict[str, str] = {
    "simulated.title": "Grandeurs simulées",
    "simulated.under": (
        "Eau, énergie, carburant et heures sont des valeurs de la simulation horaire : elles ne changent qu'avec un "
        "nouveau calcul. Ce que les heures demandent au groupe électrogène et la facture d'électricité, aux prix de la "
        "première année, sont des formules sur la feuille « Données »."
    ),
    "simulated.years": "Période d'analyse (ans)",
    "simulated.people": "Personnes, première année (0 : aucune)",
    "simulated.demand_m3": "Besoins (m3)",
    "simulated.delivered_m3": "Eau fournie (m3)",
    "simulated.fuel_l": "Carburant (L)",
    "simulated.grid_kwh": "Réseau (kWh)",
    "simulated.grid_peaks_kw": "Somme des pointes mensuelles (kW)",
    "simulated.hours": "Groupe électrogène (h)",
    "simulated.run_h": "Groupe électrogène, marche en tout (h)",
    "simulated.services": "Révisions courantes",
    "simulated.used_h": "Heures du groupe en place (h)",
    "simulated.age_years": "Années du groupe en place",
    "simulated.overhauls": "Révisions générales",
    "simulated.worn": "Groupes usés par les heures",
    "simulated.bought": "Groupes remplacés",
    "simulated.kept_h": "Heures du groupe gardé (h)",
    "simulated.kept_years": "Années du groupe gardé",
    "simulated.block_kwh": "Réseau, tranche {number} (kWh)",
    "simulated.grid_bill": "Facture d'électricité ({currency})",
    "simulated.further_kwh": "{source} (kWh)",
    "simulated.further_hours": "{source} (h)",
    "simulated.further_fuel_l": "{source}, carburant (L)",
    "simulated.further_band": "{source}, plage {band} (kWh)",
    "simulated.left": "Vie du groupe restant à la fin (part)",
    # ---- cash flow
    "head.title": "Hauteur manométrique totale et point de fonctionnement",
    "head.under": (
        "Ouvrages de l'option {option} ; hauteurs en mètres d'eau. Le point de fonctionnement est là où la pompe à "
        "pleine vitesse et l'installation s'accordent, ou là où débit d'exploitation, limite de puissance ou niveau de "
        "l'aspiration les limitent."
    ),
    "head.build_up": "Composition au point de fonctionnement",
    "head.part": "Partie",
    "head.head_m": "Hauteur (m)",
    "head.share": "Part (%)",
    "head.static_level": "Niveau statique, moyenne des mois",
    "head.rise": "Montée du sol à l'entrée du réservoir",
    "head.drawdown": "Rabattement",
    "head.pipe_friction": "Pertes de charge dans les conduites",
    "head.fitting_losses": "Pertes dans les raccords",
    "head.residual": "Pression résiduelle à l'entrée",
    "head.other": "Point haut du tracé, ou retenu par une vanne",
    "head.total": "Hauteur manométrique totale (HMT)",
    "head.duty": "Point de fonctionnement, niveau d'eau moyen de l'année",
    "head.figure": "Grandeur",
    "head.value": "Valeur",
    "head.unit": "Unité",
    "head.flow": "Débit",
    "head.shut_off": "Hauteur de la pompe sans débit, vitesse nominale",
    "head.speed": "Vitesse",
    "head.of_rated": "% de la nominale",
    "head.hydraulic_power": "Puissance de l'eau relevée",
    "head.input_power": "Puissance absorbée par le moteur",
    "head.efficiency": "Rendement, du moteur à l'eau",
    "head.limited_by": "Limité par",
    "head.by_run": "Pertes de charge au point de fonctionnement par tronçon ({method})",
    "head.run": "Tronçon de conduite",
    "head.length": "Longueur (m)",
    "head.inside_diameter": "Diamètre intérieur (mm)",
    "head.velocity": "Vitesse (m/s)",
    "head.friction": "Pertes de charge (m)",
    "head.fittings": "Raccords (m)",
    "head.loss": "Perte (m/100 m)",
    "head.by_month": "Point de fonctionnement par mois",
    "head.month": "Mois",
    "head.level": "Niveau statique (m)",
    "head.static_lift": "Hauteur géométrique (m)",
    "head.flow_m3h": "Débit (m3/h)",
    "head.total_head": "HMT (m)",
    "head.input_w": "Puissance absorbée (W)",
    "head.differing": "Options avec une autre pompe, conduite ou limite",
    "head.option": "Option d'alimentation",
    "head.curves": "Points des courbes",
    "head.system": "Installation (m)",
    "head.at_speed": "{speed} % (m)",
    "head.chart": "Pompe et installation",
    "head.chart_alt": (
        "Hauteur selon le débit : l'installation, la pompe à plusieurs vitesses, et le point de fonctionnement où "
        "elles s'accordent."
    ),
    "head.system_curve": "Installation",
    "head.pump_curve": "Pompe à {speed} % de vitesse",
    "head.duty_point": "Point de fonctionnement",
    # ---- tank
    "tank.title": "Réservoir et interrupteur à flotteur",
    "tank.under": (
        "Chaque taille et chaque réglage a été simulé heure par heure sur toutes les années, tout le reste de l'option "
        "comme choisi."
    ),
    "tank.by_size": "Besoins couverts selon la taille du réservoir",
    "tank.option": "Option d'alimentation",
    "tank.tank_m3": "Réservoir (m3)",
    "tank.met": "Besoins couverts (%)",
    "tank.target": "Objectif (%)",
    "tank.price": "Prix du réservoir ({currency})",
    "tank.chosen": "Choisi",
    "tank.is_chosen": "✓ choisi",
    "tank.settings": "Réglages de l'interrupteur à flotteur",
    "tank.none_tried": (
        "Aucune option ne fait compléter par le réseau électrique ou le groupe électrogène ce que pompe le soleil : "
        "aucun réglage n'a été comparé."
    ),
    "tank.start": "Niveau de démarrage (% du réservoir)",
    "tank.stop": "Niveau d'arrêt (% du réservoir)",
    "tank.meets": "Atteint l'objectif",
    "tank.grid": "Réseau (kWh/an)",
    "tank.fuel": "Carburant (L/an)",
    "tank.life_cycle_cost": "Coût global ({currency})",
    "tank.annualised_cost": "Coût annualisé ({currency}/an)",
    "tank.against": "Face au réglage utilisé ({currency}/an)",
    "tank.remark": "Remarque",
    "tank.used": "utilisé",
    "tank.best": "le meilleur",
    "tank.none_better": (
        "{option} : démarrage {start} %, arrêt {stop} % du réservoir ; des réglages essayés aucun n'est meilleur."
    ),
    "tank.would_meet": (
        "{option} : démarrage {start} %, arrêt {stop} % du réservoir manque l'objectif de service ; {better} % "
        "l'atteindrait."
    ),
    "tank.would_save": (
        "{option} : démarrage {start} %, arrêt {stop} % du réservoir ; {better} % économiserait {saving} par an."
    ),
    "tank.most_delivered": (
        "{option} : démarrage {start} %, arrêt {stop} % du réservoir ; {better} % fournirait le plus de ceux essayés."
    ),
    "tank.chart_alt": (
        "Besoins couverts selon la taille du réservoir, pour {option} et les options qui en diffèrent, et l'objectif."
    ),
    "tank.target_line": "Objectif",
    # ---- checks
    "checks.title": "Vérifications du site",
    "checks.under": "{summary}. La réglementation locale et les règles de l'art priment.",
    "checks.verdict": "Résultat",
    "checks.topic": "Sujet",
    "checks.compared": "Ce qui a été comparé",
    "checks.value": "Valeur",
    "checks.limit": "Limite",
    "checks.margin": "Marge",
    "checks.why": "Pourquoi cela compte",
    "checks.remedy": "Remède",
    "checks.source": "Limite tirée de",
    "checks.pass": "conforme",
    "checks.caution": "mise en garde",
    "checks.fail": "non conforme",
    "checks.not given": "non indiqué",
    "checks.route": "Tracé et lignes de pression",
    "checks.in_metres": "{name} (m)",
    "checks.chainage": "Distance",
    "checks.ground": "Sol",
    "checks.duty_line": "Ligne piézométrique en marche",
    "checks.shut_off_line": "Ligne piézométrique vanne fermée",
    "checks.allowed_line": "Limite de pression du tuyau",
    "checks.not_known": "non connue",
    "checks.chart_alt": ("Sol, lignes piézométriques et limite du tuyau le long du tracé depuis le forage."),
    "checks.chainage_axis": "Distance depuis le forage (m)",
    "checks.level_axis": "Niveau au-dessus du sol au forage (m)",
    # ---- inputs
    "inputs.under": (
        "Chaque clé du scénario. « indiqué » figure dans le scénario ; « par défaut » est supposé, avec sa source ; « "
        "non indiqué » n'a pas de valeur ; « {starter} » a été inventé pour le scénario de départ et pas changé depuis."
    ),
    "inputs.money_is": "« money » est {currency}.",
    "inputs.status_given": "indiqué",
    "inputs.status_default": "par défaut",
    "inputs.status_assumed": "supposé",
    "inputs.status_not given": "non indiqué",
    "inputs.status_starter": "encore la valeur de départ",
    "starter.left_over": (
        "{count} valeurs sont encore celles, inventées, du scénario de départ (« {status} » sur la feuille « Données "
        "») : mettre celles du site à leur place avant de se servir des chiffres."
    ),
    "inputs.note": (
        "Pour changer une donnée, aller à la feuille « Formulaire » : les valeurs la suivent ici, et toutes les sommes "
        "d'argent suivent celles-ci. Peuvent être changés ainsi : prix, durées de vie et entretien des choses "
        "achetées, pourcentages, taux d'actualisation, inflation, hausse des prix, subvention, prêt, prix de l'eau et "
        "prix du tarif. Tout le reste demande un nouveau calcul de ce classeur (planner run FICHIER) : ce qui change "
        "eau, énergie, carburant ou heures, la période d'analyse, le genre des prix, les limites des tranches du "
        "tarif, la durée de vie de la pompe, un pourcentage qui était 0, et ce qui a été choisi selon le coût "
        "(réservoir, chaînes, niveaux), qui reste comme choisi. La feuille « Réservoir » et les phrases de la feuille "
        "« Réponse » restent celles du calcul."
    ),
    "inputs.key": "Clé",
    "inputs.value": "Valeur",
    "inputs.status": "Indiqué ou par défaut",
    "inputs.meaning": "Signification",
    "inputs.source": "Source de la valeur par défaut, ou ce que veut dire l'absence",
    "inputs.by_month": "par mois",
    "inputs.weather": "Météo utilisée",
    "inputs.weather_source": "Source de la météo : {source}",
    "inputs.weather_note": "Remarque : {note}",
    "inputs.altitude": "Altitude du site",
    "inputs.altitude_given": "indiquée",
    "inputs.altitude_grid": "de la grille mondiale de pvlib",
    "inputs.years": "Irradiation de l'année la plus basse et de la plus haute",
    "inputs.from_to": "{low} à {high}",
    "inputs.of_mean": "% de la moyenne",
    "weather.ghi_kwh_m2_day": "Irradiation horizontale, moyenne",
    "weather.ghi_lowest_year_kwh_m2_day": "Irradiation horizontale, année la plus basse",
    "weather.ghi_highest_year_kwh_m2_day": "Irradiation horizontale, année la plus haute",
    "weather.temperature_mean_c": "Température de l'air, moyenne",
    "weather.temperature_min_c": "Température de l'air, heure la plus froide",
    "weather.temperature_max_c": "Température de l'air, heure la plus chaude",
    "weather.clearness": "Indice de clarté, moyenne",
    "weather.clearness_spread": "Indice de clarté, dispersion des jours",
    "weather.wind_m_s": "Vent",
}
