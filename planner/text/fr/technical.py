"""Français là où il n'y a pas de prix, à la place de ce qui parle de coûts, et de ce sur quoi repose une réponse."""

SENTENCES: dict[str, str] = {
    # ---- comparison, sizing, sweep
    "answer.levels_good_technical": (
        "Avec {option}, l'interrupteur à flotteur met l'appoint en marche à {start:g} % du réservoir et l'arrête à "
        "{stop:g} % ; aucun réglage essayé n'atteint l'objectif avec nettement moins d'énergie extérieure."
    ),
    "answer.kwh_of_grid": "{amount:,.0f} kWh du réseau électrique",
    "answer.l_of_fuel": "{amount:,.0f} L de carburant",
    "answer.technical_meets": (
        "{option} atteint l'objectif de {target:g} % de l'eau : {delivered:.1f} % sur {years} ans, {worst:.0f} % le "
        "mois le plus défavorable ({month}) ; jours par an où il manque plus d'un dixième de l'eau : {short:.1f}, au "
        "plus {longest:.0f} de suite."
    ),
    "answer.technical_never_short": (
        "{option} atteint l'objectif de {target:g} % de l'eau : {delivered:.1f} % sur {years} ans, sans aucun jour où "
        "il manque plus d'un dixième de l'eau."
    ),
    "answer.technical_nearest": (
        "Aucune option n'atteint l'objectif de {target:g} % de l'eau ; {option} s'en approche le plus avec "
        "{delivered:.1f} % sur {years} ans, {worst:.0f} % le mois le plus défavorable ({month}) ; jours par an où il "
        "manque plus d'un dixième de l'eau : {short:.1f}, au plus {longest:.0f} de suite."
    ),
    "answer.technical_others": (
        "L'atteignent aussi : {options}. Sans prix, elles sont dans l'ordre du scénario ; laquelle construire, c'est "
        "aux prix et à ceux qui l'exploiteront de le dire."
    ),
    "answer.technical_sizes": (
        "Les tailles laissées ouvertes ont été choisies sans prix, parmi celles qui passent les vérifications avec le "
        "moins de mises en garde : un m3 de réservoir compte comme {tank:g} kWc de champ (hypothèse, pratique "
        "courante, sans source)."
    ),
    "remedied.none_computed_technical": "Les remèdes de ce qui n'est pas conforme ne peuvent être calculés : {checks}.",
    "sizing_answer.weight": "{kwp:.2g} kWc de champ",
    "sizing_answer.best_technical": (
        "{option} atteint l'objectif de {target:g} % de l'eau avec {design} : {delivered:.1f} % fournis. Sur {tried:,} "
        "dimensionnements candidats, chacun calculé à chaque heure de la période d'analyse de {years} ans, c'est celui "
        "de moindre poids de son option : sans prix, un m3 de réservoir compte comme {tank:g} kWc de champ, un kWh par "
        "an du réseau électrique comme {grid:g} et un litre de carburant par an comme {fuel:g} (hypothèse, pratique "
        "courante, sans source), et les options sont dans l'ordre du scénario."
    ),
    "sizing_answer.none_meets_technical": (
        "Aucun des {tried:,} dimensionnements candidats n'atteint l'objectif ; le plus proche est {option} avec "
        "{design} : {misses}. Sans prix, les dimensionnements sont pesés : un m3 de réservoir compte comme {tank:g} "
        "kWc de champ, un kWh par an du réseau électrique comme {grid:g} et un litre de carburant par an comme "
        "{fuel:g} (hypothèse, pratique courante, sans source)."
    ),
    "sizing_answer.steady_start_technical": (
        "Les niveaux de démarrage de {low:g} % à {high:g} % restent à moins de 2 % de ce poids."
    ),
    "sizing_answer.no_rival_technical": (
        "Aucun autre candidat de l'option {option} qui atteint l'objectif ne vient à moins de 2 % de son poids."
    ),
    "sizing_answer.one_rival_technical": (
        "Un autre candidat de l'option {option} vient à moins de 2 % de son poids : {design} ({percent:.2f} % de plus)."
    ),
    "sizing_answer.rivals_technical": (
        "{count:,} autres candidats de l'option {option} viennent à moins de 2 % de son poids, d'abord {design} "
        "({percent:.2f} % de plus)."
    ),
    "sizing_answer.higher_free_technical": (
        "Porter l'objectif de {target:g} % à {higher:g} % ne demande rien de plus : ce dimensionnement fournit déjà "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds_technical": (
        "Porter l'objectif de {target:g} % à {higher:g} % demande autant de plus que {cost} ({option})."
    ),
    "sizing_answer.run_dearer_technical": (
        "Prendre {change} au lieu de {instead}, que « planner run » prend pour {option} : cela atteint l'objectif et "
        "pèse {gap} de moins."
    ),
    "sizing_answer.run_cheaper_technical": (
        "Prendre {change} pour {option} ; « planner run » prend {instead}, qui pèse {gap} de moins."
    ),
    "sweep_answer.demand_met_of": "Besoins couverts par : {option}",
    "sweep_answer.percent": "{percent:.2f} %",
    "sweep_answer.matters_most_technical": (
        "Variées une à une, la donnée qui compte le plus est {input} : quand elle va de {low:g} à {high:g}, ce que "
        "{option} couvre des besoins va de {cost_at_low} à {cost_at_high} ({cost} telle qu'indiquée)."
    ),
    "sweep_answer.stays_cheapest_technical": (
        "Aucune des données, variée seule dans sa plage, ne change la réponse : {option} reste la première option qui "
        "atteint l'objectif."
    ),
    "sweep_answer.grid_technical": (
        "Dans les {count:,} combinaisons de la grille, la première option qui atteint l'objectif est : {counts}."
    ),
    "sweep_answer.random_technical": (
        "Sur 100 cas tirés au sort, la première option qui atteint l'objectif est : {shares} ({draws:,} tirages, donc "
        "à {error:.0f} près)."
    ),
    "sweep_answer.random_some_none_technical": (
        "Sur 100 cas tirés au sort, la première option qui atteint l'objectif est : {shares} ; aucune option ne "
        "l'atteint dans {none:.0f} ({draws:,} tirages, donc à {error:.0f} près)."
    ),
    "sweep_answer.random_none_technical": (
        "Dans aucun des {draws:,} cas tirés au sort, une option n'atteint l'objectif."
    ),
    "sweep_answer.random_cost_technical": (
        "Ce que {option} couvre des besoins dépasse {low} dans 90 cas sur 100, et {high} dans 10 cas sur 100."
    ),
    # ---- pages of sizing, sweep and comparison
    "size.note_technical": (
        "Chaque candidat a été calculé heure par heure pour chaque année de la période : rien n'a été sauté. Comme il "
        "n'y a pas de prix, ce qui est construit et acheté est pesé, comme le dit la réponse. Vérifier tout choix par "
        "rapport au débit d'exploitation du forage avant de le construire."
    ),
    "size.answer_under_technical": "Dimensionnement, sans prix",
    "size.weight": "Poids (kWc de champ)",
    "size.best_of_technical": "{scenario} : dimensionnement de moindre poids de chaque option d'alimentation",
    "size.best_under_technical": (
        "Celui de moindre poids qui atteint l'objectif ; là où aucun ne l'atteint, celui qui le manque de moins."
    ),
    "size.by_run_technical": "Poids du dimensionnement de « planner run » (kWc)",
    "size.front_under_technical": (
        "Dimensionnements qu'aucun autre de la même option ne bat à la fois en poids et en besoins couverts."
    ),
    "size.front_chart_technical": "Ce que demande plus de service",
    "size.front_alt_technical": (
        "Moindre poids selon les besoins couverts sur la période d'analyse, une ligne par option : {options}."
    ),
    "size.service_technical": "Taille selon le service",
    "size.service_under_technical": "Moindre poids d'un dimensionnement qui fournit au moins cette part de l'eau.",
    "size.service_heading_technical": "Moindre poids (kWc de champ) qui fournit au moins cette part de l'eau",
    "size.service_chart_technical": "Moindre poids selon le service",
    "size.service_alt_technical": "Moindre poids selon les besoins couverts, une colonne par option : {options}.",
    "sweep.one_at_a_time_under_technical": (
        "Chaque donnée va à sa valeur basse et à sa valeur haute pendant que les autres restent ; les données sont par "
        "ordre d'amplitude. La meilleure option y est la première qui atteint l'objectif ou, là où aucune ne "
        "l'atteint, celle qui fournit le plus. L'indicateur est la variation en pour cent du résultat pour chaque pour "
        "cent de variation de la donnée, au bout le plus fort (BAD)."
    ),
    "sweep.cheapest_technical": "Première qui atteint l'objectif",
    "sweep.tornado_met": "{option} : {figure}",
    "sweep.grid_under_technical": (
        "{count} combinaisons ; dans chacune la première option qui atteint l'objectif de service, et ce que chaque "
        "option couvre des besoins."
    ),
    "sweep.grid_alt_technical": "Besoins couverts selon {input}, une ligne par option : {options}.",
    "sweep.map_technical": "Première qui atteint l'objectif : {down} vers le bas, {across} vers la droite",
    "sweep.chances_alt_technical": (
        "Sur 100 cas, dans combien chaque option est la première qui atteint l'objectif, et dans combien elle "
        "l'atteint : {options}."
    ),
    "sweep.exceeded_chart_technical": "Besoins couverts, et combien de fois ils sont dépassés",
    "sweep.exceeded_alt_technical": (
        "Sur 100 cas, combien couvrent une plus grande part des besoins, une ligne par option : {options}."
    ),
    "sweep.correlations_technical": "Corrélation de rang de chaque donnée avec les besoins couverts (Spearman)",
    "sweep.correlation_note_technical": (
        "1 : ce qui est couvert augmente toujours avec la donnée ; -1 : il diminue toujours ; près de 0 : la donnée "
        "compte à peine."
    ),
    "compare.side_under_technical": (
        "L'option qui vient en premier dans chaque scénario : la première qui atteint son objectif ou, là où aucune ne "
        "l'atteint, celle qui fournit le plus ; elle ne peut être construite telle quelle tant que des vérifications "
        "sont non conformes. Les scénarios ne donnent pas de prix."
    ),
    "compare.differ_technical": (
        "! Les scénarios diffèrent sur les points suivants : {what} ; les comparer avec prudence."
    ),
    "compare.first_technical": "Première qui atteint l'objectif, ou la plus proche",
    # ---- terminal
    "narrow.title_technical": "{name} : réponse technique, sans prix",
    # ---- pages of a run
    "answer.setting_technical": (
        "Réponse technique, le scénario ne nommant pas de monnaie et ne donnant pas de prix. Chaque option a été "
        "simulée heure par heure sur {years} ans."
    ),
    "answer.option_technical": "Option d'alimentation",
    "options.under_technical": (
        "Dans l'ordre du calcul, sur {years} ans ; énergie et heures sont des moyennes des années. Celles qui "
        "atteignent l'objectif viennent d'abord, dans l'ordre du scénario."
    ),
    # ---- method
    "method.sizes_words_technical": (
        "Là où c'est laissé ouvert : le plus petit réservoir qui atteint l'objectif de service, et le nombre de "
        "chaînes et les niveaux de l'interrupteur à flotteur qui l'atteignent avec le moindre poids : un kWc de champ "
        "compte 1, un m3 de réservoir {tank:g}, un kWh par an du réseau électrique {grid:g} et un litre de carburant "
        "par an {fuel:g}, ce qui est proche de ce qu'ils pèsent d'habitude l'un par rapport à l'autre (hypothèse, "
        "pratique courante, sans source). Des prix peuvent faire choisir d'autres tailles. Les options qui atteignent "
        "l'objectif sont dans l'ordre du scénario ; celles qui le manquent viennent après, selon ce qu'elles "
        "fournissent."
    ),
    # ---- inputs
    "inputs.note_technical": (
        "Les valeurs suivent ici la feuille « Formulaire », et rien d'autre ne la suit dans ce classeur : après un "
        "changement, refaire le calcul (planner run FICHIER). Avec une monnaie et des prix sur cette feuille, la "
        "réponse devient une réponse en argent."
    ),
    # ---- what an answer rests on
    "rests_on.estimate": "une estimation d'après les coordonnées",
    "rests_on.heading": (
        "Ce sur quoi elle repose : non indiqué, donc essayé plus bas / plus haut ({option}, tailles choisies)"
    ),
    "rests_on.irradiation": "Irradiation globale horizontale, moyenne de l'année",
    "rests_on.key": "Clé",
    "rests_on.label": "Donnée",
    "rests_on.value": "Valeur",
    "rests_on.unit": "Unité",
    "rests_on.tried": "Essayé",
    "rests_on.met": "Besoins couverts %",
    "rests_on.cost": "Coût global {currency}",
    "rests_on.source": "D'où elle vient",
    "rests_on.pair": "{low} / {high}",
    "rests_on.none": (
        "Ce qui n'était pas indiqué a été essayé plus bas et plus haut ({count} nombres, un à la fois) : aucun ne "
        "change de 1 % ou plus l'eau fournie ou le coût ; toute valeur non indiquée figure sur la feuille « Données »"
    ),
    "rests_on.more": (
        "et {count} de plus, qui changent moins ; toute valeur non indiquée figure sur la feuille « Données »"
    ),
}
