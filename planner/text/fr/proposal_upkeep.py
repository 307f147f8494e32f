"""Français des tâches d'entretien et des pièces de rechange : qui fait quoi, à quel rythme, et d'après qui."""

_PRACTICE = "pratique courante, sans source"
_IRRIGATION_GUIDE = "GIZ et FAO, entretien de l'irrigation solaire, de seconde main"
_OPERATOR, _ELECTRICIAN, _CREW, _MECHANIC = "exploitant", "électricien agréé", "équipe formée", "mécanicien"

_TASKS: dict[str, tuple[str, str, str]] = {
    "daily.works": ("Relever compteur et pression ; chercher les fuites, voir les robinets", _OPERATOR, _PRACTICE),
    "daily.solar": ("Voir s'il marche ; regarder les voyants de défaut", _OPERATOR, _IRRIGATION_GUIDE),
    "daily.grid": ("Regarder la tension et les voyants des phases", _OPERATOR, _PRACTICE),
    "daily.generator": (
        "Huile, liquide de refroidissement, carburant et fuites avant le démarrage ; noter heures et litres", _OPERATOR,
        _PRACTICE,
    ),
    "weekly.works": ("Niveau du réservoir, interrupteur à flotteur, clôture et couvercles", _OPERATOR, _PRACTICE),
    "weekly.solar": (
        "Voir la production, le montage et le variateur, sans l'ouvrir", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "weekly.generator": ("Regarder la batterie", _OPERATOR, _PRACTICE),
    "monthly.works": (
        "Noter le niveau dynamique et les m3 par kWh ; signaler une tendance au comité de l'eau", _OPERATOR, _PRACTICE,
    ),
    "monthly.solar": (
        "Laver les modules à la fraîche, depuis le sol, sans marcher dessus", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "monthly.generator": (
        "S'il est en réserve : le faire marcher 30 minutes à un tiers de sa puissance ou plus", _OPERATOR,
        "tous les 30 jours : US Army TM 9-6115-464-12 ; charge : NFPA 110 ; les deux de seconde main",
    ),
    "quarterly.works": (
        "Analyser chlore et E. coli ; manœuvrer chaque vanne", "exploitant avec le service de santé", _PRACTICE,
    ),
    "quarterly.solar": ("Boulons, câbles, ombrage et végétation", _OPERATOR, _IRRIGATION_GUIDE),
    "quarterly.grid": ("Contacts, poussière dans le tableau", _ELECTRICIAN, _PRACTICE),
    "quarterly.generator": (
        "Filtre à air, courroies, purge du filtre à carburant", _MECHANIC, _PRACTICE,
    ),
    "yearly.works": (
        "Niveau au repos en saison sèche ; réservoir vidé, brossé, désinfecté ; compteur contrôlé ; isolement du "
        "moteur",
        _CREW, _PRACTICE,
    ),
    "yearly.solar": (
        "Tension et courant de chaque chaîne, isolement, résistance de terre, parafoudres", _ELECTRICIAN,
        _IRRIGATION_GUIDE,
    ),
    "yearly.grid": ("Résistance de terre, disjoncteurs et dispositif différentiel", _ELECTRICIAN, _PRACTICE),
    "yearly.generator": ("Révision complète et essai en charge", _MECHANIC, _PRACTICE),
    "years.works": (
        "Pompe et colonne montante relevées ; forage essayé de nouveau là où son débit spécifique a baissé d'un "
        "cinquième ou plus",
        _CREW, _PRACTICE,
    ),
    "years.solar": ("Ventilateurs, variateur, sectionneurs CC", _ELECTRICIAN, _PRACTICE),
    "years.grid": ("Pièces du tableau", _ELECTRICIAN, _PRACTICE),
    "years.generator": ("Révision générale, selon ses heures", _MECHANIC, _PRACTICE),
}  # fmt: skip
"""Ce qui est à faire, qui le fait, et d'où cela vient, par rythme et par ouvrage."""

SENTENCES: dict[str, str] = {
    "proposal.upkeep.heading": "Tâches d'entretien",
    "proposal.upkeep.column.of": "Ouvrages",
    "proposal.upkeep.column.task": "Tâche",
    "proposal.upkeep.column.by": "Par",
    "proposal.upkeep.column.basis": "Origine",
    "proposal.upkeep.daily": "Chaque jour",
    "proposal.upkeep.weekly": "Chaque semaine",
    "proposal.upkeep.monthly": "Toutes les deux à quatre semaines",
    "proposal.upkeep.quarterly": "Chaque trimestre",
    "proposal.upkeep.yearly": "Chaque année",
    "proposal.upkeep.years": "Tous les cinq à dix ans",
    "proposal.upkeep.of.works": "forage, pompe, conduites, réservoir",
    "proposal.upkeep.of.solar": "champ photovoltaïque",
    "proposal.upkeep.of.grid": "raccordement au réseau électrique",
    "proposal.upkeep.of.generator": "groupe électrogène",
    "proposal.upkeep.sources": (
        "Qui fait une tâche est une pratique courante, sans source ; l'adapter à ceux qui sont là."
    ),
    "proposal.spares.heading": "Pièces de rechange (pratique courante, sans source)",
    "proposal.spares.kept": "Gardées",
    "proposal.spares.parts": "Pièces",
    "proposal.spares.on_site": "sur place",
    "proposal.spares.in_district": "dans le district, une pour environ dix installations",
    "proposal.spares.on_site.works": (
        "interrupteur à flotteur et sonde de niveau, clapet anti-retour, vanne, manchons de conduite, joints de "
        "robinet, kit de jonction du câble, relais de surcharge"
    ),
    "proposal.spares.on_site.solar": (
        "fusibles, cartouche de parafoudre, connecteurs et la pince pour les sertir, un module du même type"
    ),
    "proposal.spares.on_site.grid": "contacteur, fusibles, cartouche de parafoudre",
    "proposal.spares.on_site.generator": (
        "huile, filtres à huile, à carburant et à air, courroie, batterie de démarrage"
    ),
    "proposal.spares.in_district.works": "partie pompe, moteur et variateur, les plus longs à venir",
}
for _key, _parts in _TASKS.items():
    SENTENCES |= {
        f"proposal.upkeep.{_key}.{_part}": _said for _part, _said in zip(("task", "by", "basis"), _parts, strict=True)
    }
