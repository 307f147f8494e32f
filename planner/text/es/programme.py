"""Español de lo que suman varios lugares."""

SENTENCES: dict[str, str] = {
    "programme.heading": "Lugares uno junto a otro, con la opción clasificada primera en cada uno",
    "programme.site": "Lugar",
    "programme.incomplete": "{mark} incompleto: algo no tiene precio; también falta en las sumas de todos los lugares",
    "programme.priced": (
        "Los {count} lugares juntos: costo de inversión {capital_cost}, costo del ciclo de vida (valor actual) "
        "{life_cycle_cost}, {water:,.1f} m3 de agua por día."
    ),
    "programme.granted": "Las subvenciones pagan {grant} del costo de inversión.",
    "programme.per_person": (
        "Sirven a {people:,.0f persona|personas} en el primer año, con un costo de inversión de {cost} por cada una."
    ),
    "programme.per_person_granted": (
        "Sirven a {people:,.0f persona|personas} en el primer año, con un costo de inversión de {cost} por cada una, "
        "del que las subvenciones pagan {grant}."
    ),
    "programme.technical": "Los {count} lugares juntos: {water:,.1f} m3 de agua por día.",
    "programme.open": (
        "No deben construirse como están, porque no se alcanza el objetivo o no se cumple una comprobación: {sites}."
    ),
    "programme.all_hold": (
        "En cada lugar, la opción clasificada primera alcanza el objetivo y cumple sus comprobaciones."
    ),
}
