"""Français de ce qu'un calcul affiche au terminal."""

SENTENCES: dict[str, str] = {
    "narrow.title": "{name} : options d'alimentation sur {years} ans",
    "narrow.option": "Option\nd'alimentation",
    "narrow.meets_target": "Objectif\natteint",
    "narrow.demand_met_percent": "Besoins\ncouverts\n%",
    "narrow.tank_m3": "Réser-\nvoir\nm3",
    "narrow.array_kwp": "PV\nkWc",
    "narrow.grid_kwh_per_year": "Réseau\nkWh/an",
    "narrow.fuel_l_per_year": "Carbu-\nrant\nL/an",
    "narrow.demand_met_worst_month_percent": "Pire\nmois\n%",
    "narrow.short_days_per_year": "Jours\nde\nmanque\n/an",
    "narrow.worst_month": "Pire\nmois",
    "narrow.worst_month_short_days": "Ce\nmois",
    "narrow.longest_short_days": "De\nsuite",
    "narrow.missing_l_per_short_day": "Manque\nL/jour",
    "narrow.modules": "Série x\nchaînes",
    "narrow.series_by_strings": "{series} x {strings}",
    "narrow.capital_cost": "Investis-\nsement\n{currency}",
    "narrow.life_cycle_cost": "Coût\nglobal\n{currency}",
    "narrow.levelised_cost_per_m3": "Par m3\n{currency}",
    "terminal.duty": (
        "Point de fonctionnement : {flow} m3/h à {head} m (hauteur géométrique {static}, rabattement {drawdown}, "
        "pertes de charge {friction}, pression résiduelle {residual}), puissance absorbée {input_w} W, limité par : "
        "{limit}."
    ),
    "terminal.weather": "Météo : {source}",
    "terminal.incomplete": "{mark} incomplet : aucun prix n'est indiqué pour : {names}",
    "terminal.checks": "Vérifications du site : {summary}",
    "terminal.failed": "{sign} {topic} : {compared} : {value} pour une limite de {limit}. {remedy}",
    "terminal.more_faults": "et {count} de plus : feuille « Vérifications »",
    "sweep.change_less": (
        "Données qui la changent moins, ou pas du tout, et jamais la meilleure option : {count} ; elles sont dans le "
        "classeur."
    ),
    "size.switch": "Interrupteur à flotteur (% du réservoir)",
    "size.levels": "{start:g} / {stop:g}",
    "worth.map_one": (
        "Quelles que soient les valeurs essayées de {down} et de {across}, {option} reste la meilleure option."
    ),
    "worth.map_one_misses": (
        "Quelles que soient les valeurs essayées de {down} et de {across}, {option} s'approche le plus de l'objectif."
    ),
    "terminal.beware": "! {caution}",
    "check.named_fail": "non conformes : {count} ({names})",
    "check.named_first_fail": "non conformes : {count} ({names} ; ...)",
    "check.named_caution": "avec mise en garde : {count} ({names})",
    "check.named_first_caution": "avec mise en garde : {count} ({names} ; ...)",
    # dangers: names of things in a list
    "terminal.dangers": (
        "! Ce qui tue ici : {dangers}. La réglementation locale et les règles de l'art priment. Avant de construire, "
        "d'ouvrir ou de boire quoi que ce soit, lire les mises en garde de la feuille « Méthode et mises en garde » "
        "(--verbose les affiche)."
    ),
    "terminal.more_dangers": "! Et ici aussi : {dangers}.",
    "danger.solar": "tension CC du champ (jamais coupée de jour)",
    "danger.grid": "électricité du réseau",
    "danger.exhaust": "gaz d'échappement du groupe électrogène",
    "danger.backfeed": "groupe électrogène qui renvoie du courant dans la ligne",
    "danger.any": "électricité, source : {source}",
    "danger.lightning": "foudre",
    "danger.loads": "charges qui tombent",
    "danger.falls": "chutes de hauteur",
    "danger.air": "air vicié dans les puits et les réservoirs",
    "danger.trench": "tranchées",
    "danger.tank": "réservoirs ouverts",
    "danger.water": "eau non analysée",
    "rests_on.one": (
        "Ce sur quoi elle repose : {key} n'était pas indiqué ({value} {unit}) ; essayé à {tried}, {option} couvre "
        "{met} % des besoins pour un coût global de {currency} {cost}."
    ),
    "rests_on.one_technical": (
        "Ce sur quoi elle repose : {key} n'était pas indiqué ({value} {unit}) ; essayé à {tried}, {option} couvre "
        "{met} % des besoins."
    ),
}
