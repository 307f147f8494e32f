"""Français de plusieurs sites d'un programme côte à côte, et de ce qu'ils font ensemble."""

SENTENCES: dict[str, str] = {
    "programme.heading": "Sites côte à côte, l'option classée première à chacun",
    "programme.site": "Lieu",
    "programme.incomplete": (
        "{mark} incomplet : quelque chose n'a pas de prix ; cela manque aussi aux sommes de tous les sites"
    ),
    "programme.priced": (
        "Les {count} sites ensemble : coût d'investissement {capital_cost}, coût global (valeur actualisée) "
        "{life_cycle_cost}, {water:,.1f} m3 d'eau par jour."
    ),
    "programme.granted": "Les subventions paient {grant} du coût d'investissement.",
    "programme.per_person": (
        "Ils desservent {people:,.0f} personnes la première année, pour un coût d'investissement de {cost} chacune."
    ),
    "programme.per_person_granted": (
        "Ils desservent {people:,.0f} personnes la première année, pour un coût d'investissement de {cost} chacune, "
        "dont les subventions paient {grant}."
    ),
    "programme.technical": "Les {count} sites ensemble : {water:,.1f} m3 d'eau par jour.",
    "programme.open": (
        "À ne pas construire tels quels, car l'objectif est manqué ou une vérification est non conforme : {sites}."
    ),
    "programme.all_hold": "À chaque site, l'option classée première atteint l'objectif et passe ses vérifications.",
}
