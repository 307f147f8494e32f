"""Français du dimensionnement, de l'utilité, du balayage, de la comparaison, des vérifications et de la météo."""

SENTENCES: dict[str, str] = {
    "figure.heading": "{label} ({unit})",
    "figure.heading_in_bracket": "{label}, {unit})",
    "studies.answer": "Réponse",
    "studies.how_found": "Comment elle a été trouvée",
    "studies.option": "Option d'alimentation",
    "studies.meets_target": "Atteint l'objectif",
    "studies.yes": "✓ oui",
    "studies.no": "✗ non",
    "studies.option_cost": "{option} ({currency})",
    "size.note": (
        "Chaque candidat a été calculé heure par heure pour chaque année de la période, et chiffré : rien n'a été "
        "sauté. Le coût global est la valeur actualisée de tous les coûts moins ce que valent les ouvrages à la fin. "
        "Vérifier tout choix par rapport au débit d'exploitation du forage avant de le construire."
    ),
    "size.answer_under": "Dimensionnement ; sommes en {currency}",
    "size.switches": "Interrupteurs à flotteur, par option d'alimentation",
    "size.unmet": "! {option} ne peut atteindre l'objectif : {why}.",
    "size.left_out": "Laissé de côté pour {option} : {what}.",
    "size.best": "Meilleurs dimensionnements",
    "size.best_of": "{scenario} : dimensionnement le moins cher de chaque option d'alimentation",
    "size.best_under": (
        "Le moins cher qui atteint l'objectif ; là où aucun ne l'atteint, celui qui le manque de moins."
    ),
    "size.starts_at_m3": "L'appoint démarre à (m3 depuis le fond)",
    "size.stops_at_m3": "L'appoint s'arrête à (m3 depuis le fond)",
    "size.hours": "Heures d'appoint",
    "size.pump_and_pipes": "Pompe et conduites",
    "size.tried": "Candidats essayés",
    "size.by_run": "Le dimensionnement de « planner run » coûte ({currency})",
    "size.misses_by": "Manque de (points de pourcentage)",
    "size.runners": "Suivants",
    "size.runners_under": (
        "Les autres qui atteignent l'objectif à {percent} pour cent au plus au-dessus du meilleur de leur option."
    ),
    "size.first_runners": "{option} : autres à moins de {percent} pour cent, {count} de {all} montrés",
    "size.above_best": "Au-dessus du meilleur (%)",
    "size.front": "Compromis",
    "size.front_under": (
        "Dimensionnements qu'aucun autre de la même option ne bat à la fois en coût global et en besoins couverts."
    ),
    "size.front_chart": "Ce que coûte plus de service",
    "size.front_alt": (
        "Moindre coût global selon les besoins couverts sur la période d'analyse, une ligne par option : {options}."
    ),
    "size.service": "Coût du service",
    "size.service_under": "Moindre coût global d'un dimensionnement qui fournit au moins cette part de l'eau.",
    "size.service_heading": "Moindre coût global ({currency}) qui fournit au moins cette part de l'eau",
    "size.share": "Besoins couverts",
    "size.at_least": "au moins {percent} %",
    "size.at_least_target": "au moins {percent} %, l'objectif",
    "size.not_reached": "pas atteint",
    "size.service_chart": "Moindre coût global selon le service",
    "size.service_alt": "Moindre coût global selon les besoins couverts, une colonne par option : {options}.",
    "worth.title": "Est-ce que cela vaut la peine ? Source : {source}",
    "worth.answer_under": "{scenario} ; sommes en {currency}",
    "worth.options": "Avec et sans",
    "worth.options_under": (
        "Le dimensionnement de chaque option est celui que choisit le calcul ordinaire ; source en question : {source}."
    ),
    "worth.options_heading": "{scenario} : avec et sans la source ({source})",
    "worth.options_chart": "Coût global avec (foncé) et sans (clair) la source : {source}",
    "worth.options_alt": (
        "Coût global de chaque option, la meilleure d'abord, foncé avec et clair sans la source ({source}) : {options}."
    ),
    "worth.option": "Option d'alimentation, la meilleure d'abord",
    "worth.has_source": "A la source : {source}",
    "worth.has_it": "l'a",
    "worth.saving": "Ajouter la source ({source}) économise ({currency} ; négatif : coûte plus)",
    "worth.switching": "Valeurs de bascule",
    "worth.switching_under": ("Là où {having} et {lacking} ont le même coût global, les dimensionnements étant tenus."),
    "worth.switching_heading": "Là où {having} et {lacking} coûtent autant, et là où la réponse change",
    "worth.switching_chart": "De combien chaque donnée devrait changer",
    "worth.switching_alt": ("Changement de chaque donnée, seule, auquel {having} et {lacking} coûtent autant."),
    "worth.input": "Donnée",
    "worth.unit": "Unité",
    "worth.base": "Actuellement",
    "worth.value": "Valeur de bascule",
    "worth.change_percent": "Changement (%)",
    "worth.change_axis": "Changement de la donnée qui fait coûter autant aux deux (%)",
    "worth.key": "Clé du scénario",
    "worth.alike": "change les deux de même",
    "worth.none": "aucune de {low} à {high}",
    "worth.none_beyond": "aucune de {low} à {high} (elle serait à {beyond})",
    "worth.jump": "{value} : un saut, les coûts ne s'y rencontrent pas",
    "worth.no_longer_serves": "{value}, mais là l'une n'atteint plus l'objectif comme maintenant",
    "worth.turn": "{value} : {best}",
    "worth.none_serves": "aucune qui atteint l'objectif",
    "worth.nowhere": "nulle part dans la plage",
    "worth.map": "Carte",
    "worth.map_under": (
        "Meilleure option selon {down}, vers le bas, et {across}, vers la droite ; les dimensionnements étant tenus."
    ),
    "worth.map_corner": "{down} / {across}",
    "worth.map_cost": "De la meilleure option : {cost}",
    "worth.map_chart": "Coût global de la meilleure option",
    "worth.map_alt": ("Coût global de la meilleure option selon {across}, une ligne pour chaque valeur de {down}."),
    "worth.misses": "{option} (manque l'objectif)",
    "sweep.title": "{scenario} : ce qui est incertain",
    "sweep.options": "Le scénario tel quel",
    "sweep.options_of": "{scenario}, tel quel",
    "sweep.inputs": "Données variées",
    "sweep.input": "Donnée",
    "sweep.mode": "Balayage",
    "sweep.base": "Telle quelle",
    "sweep.lowest": "La plus basse",
    "sweep.highest": "La plus haute",
    "sweep.unit": "Unité",
    "sweep.changes": "Ce qui est calculé de nouveau",
    "sweep.changes_weather": "météo et heures de nouveau",
    "sweep.changes_run": "heures de nouveau, même météo",
    "sweep.changes_money": "prix seulement, mêmes heures",
    "sweep.changes_nothing": "rien : seulement vérifié",
    "sweep.chosen": "choisi par le calcul",
    "sweep.no_value": "sans valeur",
    "sweep.none": "aucune",
    "sweep.failed": "échec",
    "sweep.cheapest": "La moins chère qui atteint l'objectif",
    "sweep.left_out": "Laissé de côté",
    "sweep.left_out_title": "Variantes qui n'ont pu être calculées",
    "sweep.left_out_under": "Tout le reste a été calculé.",
    "sweep.key": "Clé",
    "sweep.variant": "Variante",
    "sweep.given": "Données",
    "sweep.why": "Ce qui ne va pas",
    "sweep.mode_one_at_a_time": "une à la fois",
    "sweep.mode_grid": "grille",
    "sweep.mode_random": "au sort",
    "sweep.one_at_a_time": "Une à la fois",
    "sweep.one_at_a_time_title": "Une donnée à la fois",
    "sweep.one_at_a_time_under": (
        "Chaque donnée va à sa valeur basse et à sa valeur haute pendant que les autres restent ; les données sont par "
        "ordre d'amplitude. La meilleure option y est la moins chère qui atteint l'objectif ou, là où aucune ne "
        "l'atteint, celle qui fournit le plus. L'indicateur est la variation en pour cent du résultat pour chaque pour "
        "cent de variation de la donnée, au bout le plus fort (BAD)."
    ),
    "sweep.low_value": "Valeur basse",
    "sweep.high_value": "Valeur haute",
    "sweep.at_low": "À la basse",
    "sweep.at_high": "À la haute",
    "sweep.swing": "Amplitude",
    "sweep.low_less_base": "Basse moins base",
    "sweep.high_less_base": "Haute moins base",
    "sweep.indicator": "Indicateur",
    "sweep.best_at_low": "Meilleure à la basse",
    "sweep.best_at_high": "Meilleure à la haute",
    "sweep.tornado_cost": "{option} : {figure}",
    "sweep.tornado_levelised": "{option} : {figure}",
    "sweep.tornado_lead": "{second} moins {option} : {figure}",
    "sweep.tornado_heading": "{title} ; scénario tel quel : {value}",
    "sweep.tornado_of": "{scenario} : {tornado}",
    "sweep.tornado_chart": "Variation de : {title}",
    "sweep.tornado_alt": (
        "Diagramme en tornade de {title} : la variation avec chaque donnée à sa valeur basse et à sa valeur haute ; "
        "celle qui le change le plus : {largest}."
    ),
    "sweep.input_low": "Donnée basse",
    "sweep.input_high": "Donnée haute",
    "sweep.change": "Variation par rapport au scénario tel quel",
    "sweep.grid": "Grille",
    "sweep.grid_title": "Toutes les combinaisons",
    "sweep.grid_under": (
        "{count} combinaisons ; dans chacune l'option la moins chère qui atteint l'objectif de service, et le coût "
        "global de chaque option."
    ),
    "sweep.more_combinations": "Les {count} autres combinaisons sont dans le fichier des lignes.",
    "sweep.grid_alt": "Coût global selon {input}, une ligne par option : {options}.",
    "sweep.map": "La moins chère qui atteint l'objectif : {down} vers le bas, {across} vers la droite",
    "sweep.random": "Au sort",
    "sweep.random_title": "Tirages au sort",
    "sweep.random_under": (
        "{draws} tirages par hypercube latin, {worked} calculés. Les chances sont des comptes de tirages ; la marge "
        "est de deux fois l'erreur type de tirages indépendants."
    ),
    "sweep.chances": "Chances (sur 100 cas)",
    "sweep.error": "À combien près",
    "sweep.none_meets": "aucune n'atteint l'objectif",
    "sweep.chances_chart": "Combien de fois chaque option est la meilleure, et atteint l'objectif",
    "sweep.chances_alt": (
        "Sur 100 cas, dans combien chaque option est la moins chère qui atteint l'objectif, et dans combien elle "
        "l'atteint : {options}."
    ),
    "sweep.of_100": "Sur 100 cas",
    "sweep.percentile": "P{percent} : {meaning}",
    "sweep.percentiles": "{figure} : valeur selon combien de cas sur 100 la dépassent",
    "sweep.exceeded_in": "dépassée dans {cases:g} cas sur 100",
    "sweep.exceeded": "cas qui la dépassent, sur 100",
    "sweep.exceeded_chart": "Coût global, et combien de fois il est dépassé",
    "sweep.exceeded_alt": "Sur 100 cas, combien dépassent un coût global, une ligne par option : {options}.",
    "sweep.exceeded_axis": "Cas qui le dépassent, sur 100",
    "sweep.correlations": "Corrélation de rang de chaque donnée avec le coût global (Spearman)",
    "sweep.correlation_note": (
        "1 : le coût augmente toujours avec la donnée ; -1 : il diminue toujours ; près de 0 : la donnée compte à "
        "peine."
    ),
    "sweep.does_not_vary": "ne varie pas",
    "sweep.weather": "Années météo",
    "sweep.measured": "mesurées, du fichier météo",
    "sweep.synthetic": "de synthèse",
    "sweep.weather_under": (
        "{years} années ({kind}), chacune avec les besoins de l'année {life_year} et le champ tel qu'il a vieilli, à "
        "partir de ce que la précédente laisse dans le réservoir ; les coupures du réseau électrique sont tirées de "
        "nouveau pour chaque année."
    ),
    "sweep.worst": "Pire année sur dix : besoins couverts que neuf années sur dix atteignent ou dépassent (%)",
    "sweep.worst_in_ten": "Pire année sur dix",
    "sweep.mean": "Moyenne des années",
    "sweep.lowest_year": "La plus basse des années",
    "sweep.highest_year": "La plus haute des années",
    "sweep.years": "Besoins couverts par année (%), la plus sombre d'abord",
    "sweep.irradiation": "Irradiation globale horizontale (kWh/m2)",
    "sweep.demand_met": "Besoins couverts (%)",
    "sweep.weather_chart": "Besoins couverts et irradiation de l'année",
    "sweep.weather_alt": (
        "Besoins couverts selon l'irradiation de chaque année, une marque par année et par option : {options}."
    ),
    "compare.side": "Côte à côte",
    "compare.side_title": "Scénarios côte à côte",
    "compare.side_under": (
        "L'option classée première de chaque scénario ou, là où aucune n'atteint son objectif, celle qui fournit le "
        "plus ; elle n'est pas recommandée tant que des vérifications sont non conformes, et son coût est incomplet là "
        "où des prix manquent. Sommes en {currency}."
    ),
    "compare.differ": (
        "! Les scénarios diffèrent sur les points suivants : {what} ; comparer leurs coûts avec prudence."
    ),
    "compare.differ_analysis_period": "périodes d'analyse",
    "compare.differ_discount_rate": "taux d'actualisation",
    "compare.differ_prices": "genres de prix",
    "compare.differ_inflation": "taux d'inflation",
    "compare.differ_target": "objectifs de service",
    "compare.numbered": "{name} ({number})",
    "compare.figure": "Grandeur",
    "compare.unit": "Unité",
    "compare.place": "Lieu",
    "compare.first": "Moindre coût, ou la plus proche",
    "compare.service": "Service rendu",
    "compare.failing": "Vérifications non conformes",
    "compare.unpriced": "Aucun prix n'est indiqué pour",
    "compare.people": "Personnes, première année",
    "compare.no_people": "aucune",
    "compare.demand": "Besoins de la première année",
    "compare.demand_unit": "m3/jour",
    "compare.delivered": "Eau fournie, moyenne",
    "compare.delivered_unit": "m3/an",
    "compare.analysis_period": "Période d'analyse",
    "compare.analysis_period_unit": "ans",
    "compare.discount_rate": "Taux d'actualisation",
    "compare.discount_rate_unit": "%/an",
    "compare.prices": "Prix",
    "compare.scenario": "Scénario",
    "compare.cost_axis": "Scénario",
    "compare.chart_alt": "{figure} de l'option classée première de chaque scénario : {scenarios}.",
    "compare.all": "Toutes les options",
    "compare.all_title": "Toutes les options de tous les scénarios",
    "compare.all_under": "La meilleure d'abord dans chaque scénario.",
    "compare.incomplete": "{option}, coût incomplet",
    "compare.too_few": "une comparaison demande au moins deux scénarios qui se calculent",
    "compare.currencies": (
        "des scénarios en monnaies différentes ne peuvent être comparés ({listed}) ; donner tous les prix dans une "
        "seule monnaie, ou dans chaque scénario d'une autre monnaie finance.programme_currency, la même dans tous, et "
        "finance.exchange_rate"
    ),
    "compare.some_unpriced": (
        "des scénarios avec et sans prix ne peuvent être comparés ; aucune monnaie n'est nommée dans : {listed}"
    ),
    "compare.in_currency": "« {scenario} » en {currency}",
    "weather.title": "{place} : météo utilisée",
    "weather.column_month": "Mois",
    "weather.column_ghi_kwh_m2_day": "Irradiation globale horizontale (kWh/m2/jour)",
    "weather.column_ghi_lowest_year_kwh_m2_day": "année la plus basse (kWh/m2/jour)",
    "weather.column_ghi_highest_year_kwh_m2_day": "année la plus haute (kWh/m2/jour)",
    "weather.column_temperature_mean_c": "Air, moyenne (°C)",
    "weather.column_temperature_min_c": "heure la plus froide (°C)",
    "weather.column_temperature_max_c": "heure la plus chaude (°C)",
    "weather.one_year": "{count} année(s) ; {mean:.0f} kWh/m2 d'irradiation globale horizontale par an.",
    "weather.years": (
        "{count} année(s) ; {mean:.0f} kWh/m2 d'irradiation globale horizontale par an, de {low:.0f} à {high:.0f}."
    ),
    "weather.note": "! {note}",
    "weather.estimate_title": "Latitude {latitude:g}, longitude {longitude:g} : soleil et température estimés",
    "weather.estimate_clock": ("Fuseau horaire {zone} ; altitude {altitude:.0f} m, de la grille mondiale de pvlib."),
    "weather.estimate_use": 'Dans le scénario : [weather] kind = "estimate"',
    "weather.column_ghi_as_tabled_kwh_m2_day": "avant la réduction (kWh/m2/jour)",
    "weather.column_temperature_c": "Air, moyenne (°C)",
    "check.title": "{scenario} : vérifications du site",
    "check.head": "{symbol} {outcome} : {topic} - {compared}",
    "check.fail": "non conforme",
    "check.caution": "mise en garde",
    "check.not given": "non indiqué",
    "check.pass": "conforme",
    "check.count_fail": "non conformes : {count}",
    "check.count_caution": "avec mise en garde : {count}",
    "check.count_not given": "non indiqués : {count}",
    "check.count_pass": "conformes : {count}",
    "check.against": "{value} face à {limit}",
    "check.against_with_margin": "{value} face à {limit} ; {margin}",
    "check.remedy": "Remède : {remedy}",
    "check.source": "Limite tirée de : {source}",
    "check.open_one": ("? Une vérification n'a pu être faite faute d'un chiffre ; --verbose dit quoi chercher."),
    "check.open_many": (
        "? {count} vérifications n'ont pu être faites faute d'un chiffre ; --verbose dit quoi chercher."
    ),
    "check.more": "--verbose montre aussi les vérifications conformes.",
    "compare.programme": "Ensemble du programme",
    "compare.option": "Moindre coût, ou la plus proche",
    "compare.option_technical": "Première qui atteint l'objectif, ou la plus proche",
    "compare.meets": "Atteint l'objectif",
    "compare.grant_per_person": "Subvention par personne ({currency}/personne)",
    "compare.all_sites": "Les {count} sites ensemble (pire année : la pire d'entre eux)",
    "compare.rate": "{scenario} : prix en {own}, à {rate:,.10g} {own} pour 1 {currency}.",
}
