"""Français des réponses : comparaison, dimensionnement, utilité, balayage et rentabilité."""

SENTENCES: dict[str, str] = {
    "option_source.solar": "solaire",
    "option_source.grid": "réseau",
    "option_source.generator": "groupe",
    "source.solar": "le soleil",
    "source.grid": "le réseau électrique",
    "source.generator": "le groupe électrogène",
    "source.list": "{others} et {last}",
    # comparison
    "answer.best": (
        "Parmi les options qui atteignent l'objectif de {target:g} % de l'eau, {option} coûte le moins : coût "
        "d'investissement {capital_cost}, coût global (valeur actualisée) {life_cycle_cost} sur la période d'analyse "
        "de {years} ans, coût actualisé du m3 {per_m3}."
    ),
    "answer.best_incomplete": (
        "Parmi les options qui atteignent l'objectif de {target:g} % de l'eau, {option} coûte le moins. Total "
        "incomplet, aucun prix n'étant indiqué pour : {unpriced} ; le reste donne un coût global (valeur actualisée) "
        "de {life_cycle_cost} sur la période d'analyse de {years} ans et un coût actualisé du m3 de {per_m3}."
    ),
    "answer.in_money_of_year_0": "Le coût actualisé du m3 est en monnaie de l'année 0.",
    "answer.none_meets": (
        "Aucune option n'atteint l'objectif de {target:g} % de l'eau ; {option} s'en approche le plus avec "
        "{delivered:.1f} %, pour un coût global (valeur actualisée) de {life_cycle_cost} sur la période d'analyse de "
        "{years} ans."
    ),
    "answer.none_meets_incomplete": (
        "Aucune option n'atteint l'objectif de {target:g} % de l'eau ; {option} s'en approche le plus avec "
        "{delivered:.1f} %. Total incomplet, aucun prix n'étant indiqué pour : {unpriced} ; le reste donne un coût "
        "global (valeur actualisée) de {life_cycle_cost} sur la période d'analyse de {years} ans."
    ),
    "answer.why_none": (
        "Le mois le plus défavorable, {month}, {asked:.1f} m3 par jour sont demandés : {needed:.1f} heures de pompage "
        "au débit de {flow:.2f} m3/h que donnent ici pompe, conduite et forage. {option} donne autant que {ran:.1f} de "
        "ces heures : il faudrait plus d'heures d'énergie, plus de débit dans la limite de ce que le forage peut "
        "donner, ou moins de besoins."
    ),
    "answer.why_none_at_all": (
        "Le mois le plus défavorable, {month}, {asked:.1f} m3 par jour sont demandés : {needed:.0f} heures de pompage "
        "au débit de {flow:.2f} m3/h que donnent ici pompe, conduite et forage, et un jour en a 24. {option} donne "
        "autant que {ran:.1f} de ces heures : il faudrait plus de débit, dans la limite de ce que ce forage peut "
        "donner ou d'un autre, ou moins de besoins."
    ),
    "answer.next_best": (
        "Deuxième choix : {option}, qui coûte {gap} de plus sur la période d'analyse ({percent:.1f} %)."
    ),
    "answer.next_best_close": (
        "Deuxième choix : {option}, qui coûte {gap} de plus sur la période d'analyse ({percent:.1f} %) : trop proche "
        "pour trancher sur le seul coût."
    ),
    "answer.next_best_unpriced": (
        "Ne sont pas comptés les éléments sans prix dont {option} n'a pas besoin ({unpriced}) : indiquer leur prix, "
        "car il peut changer l'ordre."
    ),
    "answer.only_one_days": (
        "C'est la seule option qui atteint l'objectif ; avec {option} l'eau manque jusqu'à {days:.0f} jours de suite, "
        "pour {allowed} admis."
    ),
    "answer.only_one_worst_year": (
        "C'est la seule option qui atteint l'objectif ; {option} le manque l'année la plus défavorable, avec "
        "{percent:.1f} %."
    ),
    "answer.only_one_share": (
        "C'est la seule option qui atteint l'objectif ; {option} le manque de {points:.1f} points de pourcentage."
    ),
    "answer.top_up_needed": (
        "Un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas) est nécessaire pour "
        "l'objectif : il porte l'eau fournie de {alone:.1f} % à {topped_up:.1f} % et coûte {gap} de plus sur la "
        "période d'analyse."
    ),
    "answer.top_up_needed_and_saves": (
        "Un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas) est nécessaire pour "
        "l'objectif : il porte l'eau fournie de {alone:.1f} % à {topped_up:.1f} % et économise même {gap} sur la "
        "période d'analyse."
    ),
    "answer.top_up_misses": (
        "Un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas) fait passer l'eau "
        "fournie de {alone:.1f} % à {topped_up:.1f} %, ce qui manque encore l'objectif."
    ),
    "answer.top_up_not_worth": (
        "Un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas) ne vaut pas la peine "
        "pour l'objectif : le soleil seul l'atteint, et l'appoint coûte {gap} de plus sur la période d'analyse (eau "
        "fournie : {alone:.1f} % sans lui, {topped_up:.1f} % avec lui)."
    ),
    "answer.top_up_worth": (
        "Un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas) vaut la peine : il "
        "économise {gap} sur la période d'analyse par rapport au soleil seul, surtout par un champ ou un réservoir "
        "plus petit, et fait passer l'eau fournie de {alone:.1f} % à {topped_up:.1f} %."
    ),
    "answer.top_up_alike_cheaper": (
        "Avec un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas), le coût est à peu "
        "près le même qu'avec le soleil seul, {gap} de moins sur la période d'analyse ; l'eau fournie passe de "
        "{alone:.1f} % à {topped_up:.1f} %."
    ),
    "answer.top_up_alike_dearer": (
        "Avec un appoint (source : {sources} ; il pompe quand soleil et réservoir ne suffisent pas), le coût est à peu "
        "près le même qu'avec le soleil seul, {gap} de plus sur la période d'analyse ; l'eau fournie passe de "
        "{alone:.1f} % à {topped_up:.1f} %."
    ),
    "answer.sun_saves": (
        "{option} économise {gap} sur la période d'analyse par rapport à la meilleure option sans soleil : {other}."
    ),
    "answer.sun_costs": (
        "{option} coûte {gap} de plus sur la période d'analyse que la meilleure option sans soleil : {other}."
    ),
    "answer.levels_good": (
        "Avec {option}, l'interrupteur à flotteur met l'appoint en marche à {start:g} % du réservoir et l'arrête à "
        "{stop:g} % ; aucun réglage essayé n'économiserait plus de 0,5 % de son coût annualisé."
    ),
    "answer.levels_better": (
        "Avec {option}, l'interrupteur à flotteur est réglé à {start:g}/{stop:g} % du réservoir ; "
        "{better_start:g}/{better_stop:g} % atteindrait aussi l'objectif et économiserait {saving} par an."
    ),
    # sizing
    "sizing_answer.array": "{modules} modules PV en {strings} chaînes ({kwp:.1f} kWc)",
    "sizing_answer.array_one_string": "{modules} modules PV en 1 chaîne ({kwp:.1f} kWc)",
    "sizing_answer.strings": "{strings} chaînes",
    "sizing_answer.one_string": "1 chaîne",
    "sizing_answer.tank": "un réservoir de {tank_m3:g} m3",
    "sizing_answer.switch": "l'interrupteur à flotteur à {start:g}/{stop:g} %",
    "sizing_answer.hours": "pompage sur réseau électrique ou groupe électrogène {hours}",
    "sizing_answer.best": (
        "Sur {tried:,} dimensionnements candidats, chacun calculé à chaque heure de la période d'analyse de {years} "
        "ans, le moins cher qui atteint l'objectif de {target:g} % de l'eau est {option} avec {design} : coût "
        "d'investissement {capital_cost}, coût global (valeur actualisée) {life_cycle_cost}, {delivered:.1f} % fournis."
    ),
    "sizing_answer.best_incomplete": (
        "Sur {tried:,} dimensionnements candidats, chacun calculé à chaque heure de la période d'analyse de {years} "
        "ans, le moins cher qui atteint l'objectif de {target:g} % de l'eau est {option} avec {design} : "
        "{delivered:.1f} % fournis. Total incomplet, aucun prix n'étant indiqué pour : {unpriced} ; le reste donne un "
        "coût global (valeur actualisée) de {life_cycle_cost} sur la période d'analyse de {years} ans."
    ),
    "sizing_answer.none_meets": (
        "Aucun des {tried:,} dimensionnements candidats n'atteint l'objectif ; le plus proche est {option} avec "
        "{design} : {misses}. Coût d'investissement {capital_cost}, coût global (valeur actualisée) {life_cycle_cost} "
        "sur la période d'analyse de {years} ans."
    ),
    "sizing_answer.none_meets_incomplete": (
        "Aucun des {tried:,} dimensionnements candidats n'atteint l'objectif ; le plus proche est {option} avec "
        "{design} : {misses}. Total incomplet, aucun prix n'étant indiqué pour : {unpriced} ; le reste donne un coût "
        "global (valeur actualisée) de {life_cycle_cost} sur la période d'analyse de {years} ans."
    ),
    "sizing_answer.misses_share": (
        "le meilleur de {count:,} candidats fournit {delivered:.1f} % et manque l'objectif de {target:g} % de "
        "{points:.1f} points de pourcentage"
    ),
    "sizing_answer.misses_days": (
        "avec le meilleur de {count:,} candidats, l'eau manque jusqu'à {days:.0f} jours de suite, {more:.0f} de plus "
        "qu'admis"
    ),
    "sizing_answer.misses_worst_year": (
        "le meilleur de {count:,} candidats fournit {delivered:.1f} % l'année la plus défavorable et manque de "
        "{points:.1f} points de pourcentage ce qui est demandé à cette année"
    ),
    "sizing_answer.float_switch": (
        "Interrupteur à flotteur pour {option} : le pompage sur réseau électrique ou groupe électrogène démarre quand "
        "il reste {start_m3:.3g} m3 dans le réservoir ({start:g} %, mesuré depuis le fond) et s'arrête à {stop_m3:.3g} "
        "m3 ({stop:g} %) ; dans un réservoir à parois verticales, les mêmes pourcentages valent pour la hauteur d'eau."
    ),
    "sizing_answer.float_switch_and_timer": (
        "Interrupteur à flotteur pour {option} : le pompage sur réseau électrique ou groupe électrogène démarre quand "
        "il reste {start_m3:.3g} m3 dans le réservoir ({start:g} %, mesuré depuis le fond) et s'arrête à {stop_m3:.3g} "
        "m3 ({stop:g} %), avec une minuterie qui le laisse marcher {hours} ; dans un réservoir à parois verticales, "
        "les mêmes pourcentages valent pour la hauteur d'eau."
    ),
    "sizing_answer.steady_start": (
        "Les niveaux de démarrage de {low:g} % à {high:g} % restent à moins de 2 % de ce coût."
    ),
    "sizing_answer.no_rival": (
        "Aucun autre candidat de l'option {option} qui atteint l'objectif ne vient à moins de 2 % de son coût."
    ),
    "sizing_answer.one_rival": (
        "Un autre candidat de l'option {option} vient à moins de 2 % de son coût : {design} ({percent:.2f} % de plus)."
    ),
    "sizing_answer.rivals": (
        "{count:,} autres candidats de l'option {option} viennent à moins de 2 % de son coût, d'abord {design} "
        "({percent:.2f} % de plus)."
    ),
    "sizing_answer.out_of_reach": (
        "Pour atteindre l'objectif, élargir les candidats (plus de chaînes, réservoirs plus grands), ajouter une "
        "source ou demander moins de {target:g} %."
    ),
    "sizing_answer.no_higher_target": "L'objectif est de {target:g} % : il n'y a rien de plus à obtenir.",
    "sizing_answer.higher_beyond": (
        "Porter l'objectif de {target:g} % à {higher:g} % dépasse tous les candidats de l'option {option}."
    ),
    "sizing_answer.higher_free": (
        "Porter l'objectif de {target:g} % à {higher:g} % ne coûte rien : ce dimensionnement fournit déjà "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds": (
        "Porter l'objectif de {target:g} % à {higher:g} % ajoute {cost} au coût global ({option})."
    ),
    "sizing_answer.run_same": "« planner run » prend le même dimensionnement pour {option}.",
    "sizing_answer.as_given": "ce que donne le scénario",
    "sizing_answer.run_dearer": (
        "Prendre {change} au lieu de {instead}, que « planner run » prend pour {option} : cela atteint l'objectif et "
        "coûte {gap} de moins sur la période d'analyse."
    ),
    "sizing_answer.run_cheaper": (
        "Prendre {change} pour {option} ; « planner run » prend {instead}, qui coûte {gap} de moins sur la période "
        "d'analyse."
    ),
    "sizing_answer.run_misses": "Cet autre dimensionnement manque l'objectif.",
    # worth
    "worth_answer.incomplete": "Coûts incomplets, aucun prix n'étant indiqué pour : {unpriced}.",
    "worth_answer.needed": (
        "Oui, {source} est nécessaire : sans cette source, la meilleure alimentation, {without}, fournit {lacking:.1f} "
        "% de l'eau au lieu de l'objectif de {target:g} %."
    ),
    "worth_answer.needed_in_worst_year": (
        "Oui, {source} est nécessaire : sans cette source, la meilleure alimentation, {without}, manque l'objectif "
        "l'année la plus défavorable ({lacking:.1f} %)."
    ),
    "worth_answer.needed_dearer": (
        "Avec elle, la meilleure, {option}, fournit {delivered:.1f} % de l'eau et coûte {gap} de plus sur la période "
        "d'analyse de {years} ans."
    ),
    "worth_answer.needed_cheaper": (
        "Avec elle, la meilleure, {option}, fournit {delivered:.1f} % de l'eau et coûte même {gap} de moins sur la "
        "période d'analyse de {years} ans."
    ),
    "worth_answer.only_without": (
        "Non, {source} ne vaut pas la peine : {without} atteint l'objectif de {target:g} % sans cette source, pour un "
        "coût global (valeur actualisée) de {life_cycle_cost} sur la période d'analyse de {years} ans, et rien ne "
        "l'atteint avec elle."
    ),
    "worth_answer.neither": (
        "Ni avec ni sans cette source ({source}), aucun dimensionnement n'atteint l'objectif de {target:g} % de l'eau."
    ),
    "worth_answer.neither_more": (
        "Avec elle, la meilleure option, {option}, fournit {delivered:.1f} %, soit {points:.1f} points de pourcentage "
        "de plus que {without}."
    ),
    "worth_answer.neither_less": (
        "Avec elle, la meilleure option, {option}, fournit {delivered:.1f} %, soit {points:.1f} points de pourcentage "
        "de moins que {without}."
    ),
    "worth_answer.neither_dearer": "Elle coûte {gap} de plus sur la période d'analyse de {years} ans.",
    "worth_answer.neither_cheaper": "Elle coûte {gap} de moins sur la période d'analyse de {years} ans.",
    "worth_answer.hardly_matters": (
        "Avoir ou non cette source ({source}) ne change presque rien : le coût global (valeur actualisée) sur la "
        "période d'analyse de {years} ans est de {cost_with} pour l'alimentation la moins chère avec elle, {option}, "
        "et de {cost_without} pour la moins chère sans elle, {without}, une différence de {percent:.1f} %."
    ),
    "worth_answer.worth_having": (
        "Oui, {source} vaut la peine : le coût global (valeur actualisée) sur la période d'analyse de {years} ans est "
        "de {cost_with} pour l'alimentation la moins chère avec cette source, {option}, et de {cost_without} pour la "
        "moins chère sans elle, {without} ; le coût annualisé en est abaissé de {yearly}."
    ),
    "worth_answer.not_worth_having": (
        "Non, {source} ne vaut pas la peine : le coût global (valeur actualisée) sur la période d'analyse de {years} "
        "ans est de {cost_with} pour l'alimentation la moins chère avec cette source, {option}, et de {cost_without} "
        "pour la moins chère sans elle, {without} ; le coût annualisé en serait relevé de {yearly}."
    ),
    "worth_answer.from_now": "{value} (actuellement {base})",
    "worth_answer.above_best": "La meilleure option serait {best} au-dessus de : {input} {value}.",
    "worth_answer.below_best": "La meilleure option serait {best} au-dessous de : {input} {value}.",
    "worth_answer.above_misses": (
        "{first} manquerait l'objectif et la meilleure option serait {best} au-dessus de : {input} {value}."
    ),
    "worth_answer.below_misses": (
        "{first} manquerait l'objectif et la meilleure option serait {best} au-dessous de : {input} {value}."
    ),
    "worth_answer.above_none": (
        "{first} et toutes les autres options manqueraient l'objectif au-dessus de : {input} {value}."
    ),
    "worth_answer.below_none": (
        "{first} et toutes les autres options manqueraient l'objectif au-dessous de : {input} {value}."
    ),
    "worth_answer.all_turn": (
        "Chacune des données examinées pourrait changer la réponse si elle variait suffisamment."
    ),
    "worth_answer.steady": (
        "Elle reste la même, dimensionnements et autres données inchangés, sur toute la plage de : {ranges}."
    ),
    "worth_answer.range": "{input} de {low} à {high}",
    # sweep
    "sweep_answer.life_cycle_cost_of": "Coût global de : {option}",
    "sweep_answer.levelised_cost_of": "Coût actualisé du m3 de : {option}",
    "sweep_answer.lead_of": "Coût global de : {other}, moins celui de : {option}",
    "sweep_answer.no_value": "sans valeur",
    "sweep_answer.first_misses": "{option}, manque l'objectif",
    "sweep_answer.nothing_one_at_a_time": (
        "Aucune donnée variée seule n'a pu être calculée ; la première raison : {reason}."
    ),
    "sweep_answer.nothing_grid": (
        "Aucune combinaison de la grille n'a pu être calculée ; la première raison : {reason}."
    ),
    "sweep_answer.nothing_random": "Aucun cas tiré au sort n'a pu être calculé ; la première raison : {reason}.",
    "sweep_answer.failed": (
        "{failed:,} des {count:,} variantes n'ont pas pu être calculées et sont laissées de côté ; elles sont listées "
        "avec la raison."
    ),
    "sweep_answer.matters_most": (
        "Variées une à une, la donnée qui compte le plus est « {input} » : quand elle va de {low:g} à {high:g}, le "
        "coût global (valeur actualisée) de l'option {option} va de {cost_at_low} à {cost_at_high} ({cost} telle "
        "qu'indiquée)."
    ),
    "sweep_answer.changes": "Variées seules, ces données changent la réponse : {changes}.",
    "sweep_answer.changes_and_more": (
        "Variées seules, ces données changent la réponse : {changes} ; et {more:,} autres."
    ),
    "sweep_answer.change_none_meets": "« {input} » à {value:g} (aucune option n'atteint l'objectif)",
    "sweep_answer.change_nearest": "« {input} » à {value:g} ({option} s'approche le plus)",
    "sweep_answer.change_meets": "« {input} » à {value:g} ({option} atteint l'objectif)",
    "sweep_answer.change_first_misses": (
        "« {input} » à {value:g} ({first} manque l'objectif, la meilleure est {option})"
    ),
    "sweep_answer.change_best": "« {input} » à {value:g} (la meilleure est {option})",
    "sweep_answer.stays_cheapest": (
        "Aucune des données, variée seule dans sa plage, ne change la réponse : {option} reste l'option la moins chère "
        "qui atteint l'objectif."
    ),
    "sweep_answer.stays_nearest": (
        "Aucune des données, variée seule dans sa plage, ne change la réponse : aucune option n'atteint l'objectif, et "
        "{option} reste la plus proche."
    ),
    "sweep_answer.grid": (
        "Dans les {count:,} combinaisons de la grille, l'option la moins chère qui atteint l'objectif est : {counts}."
    ),
    "sweep_answer.grid_part": "{option} dans {count:,}",
    "sweep_answer.grid_none": "aucune dans {count:,}",
    "sweep_answer.random": (
        "Sur 100 cas tirés au sort, l'option la moins chère qui atteint l'objectif est : {shares} ({draws:,} tirages, "
        "donc à {error:.0f} près)."
    ),
    "sweep_answer.random_some_none": (
        "Sur 100 cas tirés au sort, l'option la moins chère qui atteint l'objectif est : {shares} ; aucune option ne "
        "l'atteint dans {none:.0f} ({draws:,} tirages, donc à {error:.0f} près)."
    ),
    "sweep_answer.random_none": ("Dans aucun des {draws:,} cas tirés au sort, une option n'atteint l'objectif."),
    "sweep_answer.random_share": "{option} dans {cases:.0f}",
    "sweep_answer.random_cost": (
        "Le coût global (valeur actualisée) de l'option {option} dépasse {low} dans 90 cas sur 100, et {high} dans 10 "
        "cas sur 100."
    ),
    "sweep_answer.measured_weather": (
        "Avec les besoins de l'année {life_year}, neuf années météorologiques mesurées sur dix ({years:,} ont été "
        "calculées) fournissent au moins cette part de l'eau : {shares}."
    ),
    "sweep_answer.synthetic_weather": (
        "Avec les besoins de l'année {life_year}, neuf années météorologiques de synthèse sur dix ({years:,} ont été "
        "calculées) fournissent au moins cette part de l'eau : {shares}."
    ),
    "sweep_answer.weather_share": "{option} : {percent:.1f} %",
    "sweep_answer.few_years": "Avec seulement {years} années, ce n'est guère plus que la pire d'entre elles.",
    "sweep_answer.chosen_anew": (
        "Ce que le scénario laisse au calcul (réservoir, chaînes, interrupteur à flotteur) a été choisi de nouveau "
        "dans chaque variante."
    ),
    "sweep_answer.built_once": (
        "Réservoir, chaînes et interrupteur à flotteur restent tels qu'ils ont été choisis pour le scénario indiqué, "
        "sauf s'ils sont eux-mêmes variés : les ouvrages ne sont construits qu'une fois."
    ),
    # returns
    "returns.no_outlay": (
        "son investissement n'est pas plus élevé que celui de la référence : il n'y a pas de dépense supplémentaire à "
        "rentabiliser"
    ),
    "returns.never_saves": ("ses années suivantes n'économisent rien qui puisse payer le supplément d'investissement"),
    "returns.loses_all": (
        "à aucun taux supérieur à -100 %, les économies ultérieures ne valent plus que le supplément d'investissement"
    ),
    "returns.several": "plusieurs taux équilibrent dépense et économies : aucun n'est la réponse",
    "returns.at_once": (
        "son investissement n'est pas plus élevé que celui de la référence et elle ne prend jamais de retard"
    ),
    "returns.not_recovered": (
        "le supplément d'investissement n'est pas récupéré durablement pendant la période d'analyse"
    ),
}
