"""Français de l'étape suivante d'une option, et de ce que coûte son eau au-delà de celle d'une autre."""

SENTENCES: dict[str, str] = {
    "answer.only_option": (
        "{option}, la seule option comparée, atteint l'objectif de {target:g} % de l'eau : coût d'investissement "
        "{capital_cost}, coût global (valeur actualisée) {life_cycle_cost} sur la période d'analyse de {years} ans, "
        "coût actualisé du m3 {per_m3}."
    ),
    "answer.only_option_incomplete": (
        "{option}, la seule option comparée, atteint l'objectif de {target:g} % de l'eau. Total incomplet, aucun prix "
        "n'étant indiqué pour : {unpriced} ; le reste donne un coût global (valeur actualisée) de {life_cycle_cost} "
        "sur la période d'analyse de {years} ans et un coût actualisé du m3 de {per_m3}."
    ),
    "next_step.kind.string": "une chaîne de modules de plus ({strings} au lieu de {strings_before})",
    "next_step.kind.tank": "le réservoir suivant ({tank:g} m3 au lieu de {tank_before:g} m3)",
    "next_step.kind.string_and_tank": (
        "une chaîne de modules de plus et le réservoir suivant ({strings} chaînes, {tank:g} m3)"
    ),
    "next_step.kind.pump": "une autre pompe ({name})",
    "next_step.kind.source": "en plus, {name}",
    "next_step.would_meet_dearer": (
        "{option} atteindrait l'objectif par cette étape : {step}. Eau couverte {after:.1f} % et {days_after:.1f "
        "jour|jours} sans assez d'eau par an, au lieu de {before:.1f} % et {days_before:.1f jour|jours}. Cela demande "
        "{capital} de plus à la construction ; son coût global est alors de {total}, soit {gap} de plus que celui de "
        "l'option {best}."
    ),
    "next_step.would_meet_cheaper": (
        "{option} atteindrait l'objectif par cette étape : {step}. Eau couverte {after:.1f} % et {days_after:.1f "
        "jour|jours} sans assez d'eau par an, au lieu de {before:.1f} % et {days_before:.1f jour|jours}. Cela demande "
        "{capital} de plus à la construction ; son coût global est alors de {total}, soit {gap} de moins que celui de "
        "l'option {best} telle quelle."
    ),
    "next_step.would_meet_first": (
        "{option} atteindrait l'objectif par cette étape : {step}. Eau couverte {after:.1f} % et {days_after:.1f "
        "jour|jours} sans assez d'eau par an, au lieu de {before:.1f} % et {days_before:.1f jour|jours}. Cela demande "
        "{capital} de plus à la construction ; son coût global est alors de {total} au lieu de {now}."
    ),
    "next_step.would_meet_technical": (
        "{option} atteindrait l'objectif par cette étape : {step}. Eau couverte {after:.1f} % et {days_after:.1f "
        "jour|jours} sans assez d'eau par an, au lieu de {before:.1f} % et {days_before:.1f jour|jours}."
    ),
    "next_step.would_not": (
        "{option} manque l'objectif avec {before:.1f} % de l'eau et {days_before:.1f jour|jours} sans assez d'eau par "
        "an, et aucune étape seule ne l'atteint : celle qui apporte le plus est {step}, avec {after:.1f} % et "
        "{days_after:.1f jour|jours} sans assez d'eau par an, pour {capital} de plus à la construction."
    ),
    "next_step.would_not_technical": (
        "{option} manque l'objectif avec {before:.1f} % de l'eau et {days_before:.1f jour|jours} sans assez d'eau par "
        "an, et aucune étape seule ne l'atteint : celle qui apporte le plus est {step}, avec {after:.1f} % et "
        "{days_after:.1f jour|jours} sans assez d'eau par an."
    ),
    "next_step.would_fail": (
        "{option} ne peut simplement franchir cette étape : {step} ; ces vérifications seraient alors non conformes : "
        "{checks}."
    ),
    "next_step.close": (
        "{option} n'atteint l'objectif que de {points:.1f} points de pourcentage. Pour plus de réserve, cette étape : "
        "{step} ; elle apporte {after:.1f} % de l'eau et {days_after:.1f jour|jours} sans assez d'eau par an au lieu "
        "de {days_before:.1f}, pour {capital} de plus à la construction ; son coût global est alors de {total} au lieu "
        "de {now}."
    ),
    "next_step.close_technical": (
        "{option} n'atteint l'objectif que de {points:.1f} points de pourcentage. Pour plus de réserve, cette étape : "
        "{step} ; elle apporte {after:.1f} % de l'eau et {days_after:.1f jour|jours} sans assez d'eau par an au lieu "
        "de {days_before:.1f}."
    ),
    "next_step.saves": (
        "{option} coûterait moins sur la période d'analyse par cette étape : {step}. Coût global {total} au lieu de "
        "{now}, pour {capital} de plus à la construction."
    ),
    "next_step.incremental": (
        "L'eau que {option} fournit de plus que {other} coûte {extra} par m3, pour {average} en moyenne sur toute son "
        "eau : elle vaut la peine là où chaque m3 qui manque coûte plus que cela à ceux qui s'en passent."
    ),
    "next_step.below": (
        "S'il suffisait de {percent:.1f} % de l'eau au lieu de {target:g} %, la réponse, avec toutes les tailles "
        "telles qu'ici, serait {other} et coûterait {gap} de moins sur la période d'analyse ({share:.0f} %)."
    ),
    "next_step.above": (
        "S'il fallait plus de {percent:.1f} % de l'eau, la réponse, avec toutes les tailles telles qu'ici, serait "
        "{other} et coûterait {gap} de plus sur la période d'analyse."
    ),
    "next_step.valued_same": (
        "Avec chaque m3 qui manque compté {value}, comme indiqué, {option} reste en tête : {total}, y compris l'eau "
        "dont ses usagers se passent."
    ),
    "next_step.valued_other": (
        "Avec chaque m3 qui manque compté {value}, comme indiqué, la première serait {other}, à {total} y compris "
        "l'eau dont ses usagers se passent, pour {total_first} avec {option}. Aucun autre coût ne contient ici cette "
        "valeur."
    ),
    # the page
    "page.next_step": "Étape suivante",
    "next_step.title": "L'étape suivante, et ce que coûte plus d'eau",
    "next_step.under": (
        "Ouvrages tels qu'ils seraient construits, tailles choisies pour chaque option, dans le calcul : ce qui est "
        "modifié ici n'est pas suivi. Sommes en {currency}."
    ),
    "next_step.under_technical": "Ouvrages tels qu'ils seraient construits : tailles choisies pour chaque option.",
    "next_step.steps": "Étapes suivantes",
    "next_step.option": "Option d'alimentation",
    "next_step.step": "Étape",
    "next_step.more_capital": "De plus à construire ({currency})",
    "next_step.more_cost": "De plus sur la période ({currency})",
    "next_step.per_m3": "Par m3 de plus ({currency})",
    "next_step.no_more": "pas plus d'eau",
    "next_step.frontier": "Ce que coûte l'eau d'une option au-delà de celle d'une autre",
    "next_step.water": "Eau fournie, valeur actualisée (m3)",
    "next_step.average": "En moyenne ({currency}/m3)",
    "next_step.increment": "Au-delà de cette option ({currency}/m3)",
    "next_step.standing": "Comparée à",
    "next_step.unserved": "Valeur de l'eau non fournie ({currency})",
    "next_step.cost_with_unserved": "Coût global avec elle ({currency})",
    "next_step.standing.frontier": "{against}",
    "next_step.standing.lowest": "aucune : fournit le moins",
    "next_step.standing.dominated": "{against}, qui ne coûte pas plus et ne fournit pas moins",
    "next_step.standing.extended": "{against} ; la suivante donne plus à moins par m3",
    "next_step.method": (
        "Options dans l'ordre de l'eau qu'elles fournissent, chacune comparée à une qui fournit moins ; un coût par m3 "
        "au-delà de celle-ci est la différence de deux coûts globaux rapportée à celle de l'eau fournie, les deux "
        "actualisées. Méthode : Tan-Torres Edejer et al. (dir.), Making choices in health: WHO guide to "
        "cost-effectiveness analysis, Organisation mondiale de la santé, 2003, l'eau fournie à la place de la santé. "
        "Un m3 cache quand il manque : le lire avec les jours sans assez d'eau."
    ),
    "next_step.value_method": (
        "La valeur de l'eau non fournie est service.unserved_water_value_per_m3 du scénario, pour chaque m3 de besoins "
        "non couvert, actualisé ; elle n'est dans aucun autre coût."
    ),
    "next_step.title_technical": "L'étape suivante",
    "next_step.why_not": "Pas telle quelle : vérifications qui seraient non conformes",
    "next_step.no_dearer": "ne coûte pas plus",
    "worth_answer.turns_as_built": (
        "Avec les ouvrages tels qu'ils seraient construits, la réponse changerait par l'un quelconque de ces "
        "changements, le plus petit d'abord."
    ),
    "worth_answer.nothing_turns_as_built": (
        "Avec les ouvrages tels qu'ils seraient construits, aucune donnée ne change à elle seule cette réponse dans "
        "les plages examinées."
    ),
    "worth_answer.turns_anew": (
        "Avec chaînes et réservoir choisis de nouveau à chaque valeur, elle changerait par l'un quelconque de ces "
        "changements, le plus petit d'abord."
    ),
    "worth_answer.nothing_turns_anew": (
        "Avec chaînes et réservoir choisis de nouveau à chaque valeur, aucune donnée ne la change à elle seule dans "
        "ces plages."
    ),
    "worth_answer.anew_alike": (
        "Avec chaînes et réservoir choisis de nouveau à chaque valeur, elle change aux mêmes valeurs."
    ),
    "worth_answer.nothing_open": (
        "Le scénario ne laisse ouverts ni chaînes ni réservoir : choisis de nouveau, les ouvrages seraient les mêmes."
    ),
    "worth_answer.undecided": (
        "On ne peut pas encore dire si cette source vaut la peine ({source}) : aucun prix n'est indiqué pour : "
        "{unpriced}. Sans cela, le coût global (valeur actualisée) sur la période d'analyse de {years} ans est de "
        "{cost_with} avec elle, {option}, et de {cost_without} sans elle, {without}."
    ),
    "worth_answer.incomplete_alike": (
        "Aucun prix n'est indiqué pour ce dont les deux ont besoin ({unpriced}) : leurs coûts sont incomplets, la "
        "différence ne l'est pas."
    ),
    "worth.note_of_both": (
        "Chaque valeur est cherchée deux fois. Avec les ouvrages tels que construits, chaque dimensionnement reste tel "
        "qu'il a été choisi dans le scénario tel quel (chaînes, réservoir, niveaux du flotteur) pendant qu'une donnée "
        "change ; avec les ouvrages choisis de nouveau, chaque option prend, à chaque valeur, la moins chère de ses "
        "chaînes et de ses réservoirs ouverts qui y atteint l'objectif, parmi ceux qui passent les vérifications du "
        "scénario tel quel et avec les niveaux du flotteur actuels. Une valeur de bascule est là où les deux "
        "meilleures options, l'une avec et l'autre sans la source, ont le même coût global ; elle a été vérifiée en "
        "calculant de nouveau le scénario à cette valeur, et les deux s'accordent à {percent} pour cent près sauf si "
        "le tableau dit autre chose. « La réponse change » regarde toutes les options et aussi l'objectif de service : "
        "au-delà de cette valeur, la meilleure de toutes les options change de côté."
    ),
    "worth.words_as_built": "Même coût global à (ouvrages tels que construits)",
    "worth.turns_as_built": "La réponse change à (ouvrages tels que construits)",
    "worth.words_anew": "Même coût global à (ouvrages choisis de nouveau)",
    "worth.turns_anew": "La réponse change à (ouvrages choisis de nouveau)",
    "worth.cost_unchanged": "ne change aucun coût",
    "worth.without_effect": "Sans effet ici : {inputs}.",
    "worth.with_reason": "{input} ({why})",
}
