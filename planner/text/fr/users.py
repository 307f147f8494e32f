"""Français de la page « Ce que paient les usagers »."""

SENTENCES: dict[str, str] = {
    "page.users": "Ce que paient les usagers",
    "users.under": (
        "Prix de l'eau, factures et épargne en {currency} de l'année 0 ; la charge de chaque année en {currency}, "
        "{prices}. Les options sont dans l'ordre du calcul."
    ),
    "users.sentence": (
        "{option} : les usagers couvrent l'exploitation et les remplacements à {renewals} le m3 (l'exploitation seule "
        ": {operation} ; avec l'appui et ce que la subvention laisse de l'investissement : {full}). Une épargne de "
        "{saving} par an paie chaque remplacement à son échéance ; sans épargne, l'année la plus chère est l'année "
        "{year}, avec {largest} pour une moyenne de {mean}."
    ),
    "users.sentence_no_lumps": (
        "{option} : les usagers couvrent l'exploitation à {operation} le m3, et aussi l'appui et ce que la subvention "
        "laisse de l'investissement à {full} ; rien n'est remplacé pendant la période d'analyse, si bien que rien "
        "n'est mis de côté ici pour ce qui vient après elle."
    ),
    "users.part.tariff": "Prix de l'eau par m3 payé",
    "users.part.household": "Ménage : facture, et ce qu'elle prend d'un revenu",
    "users.part.burden": "Charge annuelle après la subvention, de l'année 1 à la dernière",
    "users.part.fund": "Épargne pour les remplacements",
    "users.part.person": "Par personne",
    "users.tariffs": (
        "Un prix constant paie toutes les années ensemble : là où le coût du m3 augmente, il laisse les premières "
        "années un reste dont les dernières ont besoin. L'appui direct n'est compté que dans le dernier prix, car une "
        "autorité le supporte le plus souvent."
    ),
    "users.income": (
        "Limite d'une facture : 3 et 5 % du revenu du ménage servent tous deux d'épreuve (Fankhauser et Tepic 2005 ; 3 "
        "% dans le Rapport mondial sur le développement humain du PNUD 2006 ; l'un et l'autre de seconde main). Aucun "
        "seuil ne fait accord (AQUA 72(8), 2023, une revue de 79 études). Ce qui est encore dépensé pour d'autres "
        "sources les semaines sèches s'y ajoute."
    ),
    "users.no_households": (
        "Pas de facture par ménage : [households] n'est pas indiqué (size, income_per_month et "
        "lowest_income_per_month)."
    ),
    "users.nobody_at_home": "Pas de facture par ménage : aucun usager de l'eau n'est un ménage.",
    "users.fund": (
        "L'épargne est le plus petit versement constant en fin d'année avec lequel les remplacements d'aucune année ne "
        "mettent le fonds à découvert ; la moyenne des remplacements sur les années peut être trop faible. Les "
        "versements augmentent avec les prix."
    ),
    "users.income_judged": "  par rapport aux limites usuelles",
    "users.income_below": "au plus {low} %",
    "users.income_between": "entre {low} et {high} %",
    "users.income_above": "plus de {high} %",
    "users.ranges": "Par rapport aux fourchettes de coûts publiées",
    "users.low": "De ({currency})",
    "users.high": "À ({currency})",
    "users.range_below": "! au-dessous : semble sous-budgété",
    "users.range_above": "au-dessus",
    "users.range_within": "dans la fourchette",
    "users.ranges_source": (
        "Petits et moyens réseaux alimentés par forage motorisé, plus grands au-delà de 5 000 personnes : IRC "
        "WASHCost, repères de coûts, 2012, en dollars américains de 2011, de seconde main, ramenés aux prix qu'indique "
        "finance.usd_prices_since_2011. Ce que prennent bétail, champs et autres est dans ces coûts, mais n'entre dans "
        "la part de personne."
    ),
    "users.ranges_source_2011": (
        "Petits et moyens réseaux alimentés par forage motorisé, plus grands au-delà de 5 000 personnes : IRC "
        "WASHCost, repères de coûts, 2012, en dollars américains de 2011 tels que publiés, de seconde main : ceux "
        "d'aujourd'hui seraient plus élevés (indiquer finance.usd_prices_since_2011). Ce que prennent bétail, champs "
        "et autres est dans ces coûts, mais n'entre dans la part de personne."
    ),
    "users.ranges_not_compared": (
        "Non comparé : les fourchettes publiées sont en dollars américains, les prix en {currency}. Avec "
        "finance.programme_currency = 'USD' et finance.exchange_rate, le coût d'investissement par personne est "
        "comparé à {low} à {high}, et le coût récurrent par personne et par an à {low_yearly} à {high_yearly} dollars "
        "américains de 2011 (IRC WASHCost, repères de coûts, 2012, de seconde main)."
    ),
    "users.programme": "En {programme}, la monnaie du programme",
    "users.by_year": "Par année",
    "users.operation_cost": "Exploitation ({currency})",
    "users.burden": "Charge annuelle ({currency})",
    "users.renewals": "Remplacements, monnaie de l'année 0 ({currency})",
    "users.renewals_present": "Valeur aux intérêts du fonds ({currency})",
    "users.renewals_due": "La même, cumulée ({currency})",
    "users.saving_needed": "Épargne constante nécessaire jusque-là ({currency}/an)",
    "users.fund_balance": "Fonds en fin d'année ({currency})",
}
