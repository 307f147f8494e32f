"""Français des vérifications des câbles."""

SENTENCES: dict[str, str] = {
    "check.dc_cable.compared": "Câble du champ au variateur : chute de tension et courant admissible",
    "check.ac_cable.compared": (
        "Câble du réseau électrique ou du groupe électrogène au variateur : chute de tension et courant admissible"
    ),
    "check.drop_cable.compared": "Câble du variateur jusqu'au moteur : chute de tension et courant admissible",
    "check.dc_cable.look_for": (
        "mesurer le parcours du champ au variateur et chercher la section (mm2) imprimée sur le câble ; indiquer les "
        "deux pour le câble du champ"
    ),
    "check.ac_cable.look_for": (
        "mesurer le parcours du réseau électrique ou du groupe électrogène au variateur et chercher la section (mm2) "
        "imprimée sur le câble ; indiquer les deux pour le câble CA"
    ),
    "check.drop_cable.look_for": (
        "mesurer le parcours du variateur jusqu'au moteur et chercher la section (mm2) imprimée sur le câble ; "
        "indiquer les deux pour le câble de descente"
    ),
    "check.cable.source": ("CEI 60364-5-52 annexe G, usages autres que l'éclairage sur un réseau public"),
    "check.cable.array": "Câble du champ avec {strings} chaîne(s)",
    "check.cable.array_open": ("Câble du champ avec {strings} chaîne(s), qui conviendraient (le nombre est ouvert)"),
    "check.cable.grid": "Câble CA sur le réseau électrique",
    "check.cable.generator": "Câble CA sur le groupe électrogène",
    "check.cable.drop": "Câble de descente",
    "check.cable_drop.compared": (
        "{cable}, {length_m:g} m de {section_mm2:g} mm2 ({ohm:.3f} ohm à {conductor_c:g} °C) : tension perdue à "
        "{current_a} A et {voltage_v} V"
    ),
    "check.cable_drop.why": (
        "La tension perdue dans le câble est de la puissance perdue à vie, et trop peu de tension arrête le moteur."
    ),
    "check.cable_drop.source": "pratique courante, sans source ; résistance selon la CEI 60228",
    "check.ac_cable_drop.source": (
        "CEI 60364-5-52 annexe G, usages autres que l'éclairage sur un réseau public ; résistance selon la CEI 60228"
    ),
    "check.cable_ampacity.compared": (
        "{cable}, {section_mm2:g} mm2 posé selon {installation} à {ambient_c:.0f} °C : courant admissible, face au "
        "courant de calcul"
    ),
    "check.cable_ampacity.compared_grouped": (
        "{cable}, {section_mm2:g} mm2 posé selon {installation} à {ambient_c:.0f} °C, {circuits} circuits ensemble "
        "(facteur {factor:g}) : courant admissible, face au courant de calcul"
    ),
    "check.cable_ampacity.why": (
        "Un câble qui porte plus que son courant admissible surchauffe et peut mettre le feu."
    ),
    "check.cable_ampacity.source": ("CEI 60364-5-52, PVC, avec les facteurs de température ambiante et de groupement"),
    "check.cable_ampacity.source_datasheet": "la fiche technique du câble",
    "check.cable.remedy": (
        "une section de {section_mm2:g} mm2, la plus petite qui passe chute de tension et courant admissible en PVC, "
        "posée seule selon {installation} à {ambient_c:.0f} °C ; non couvert : {not_covered}"
    ),
    "check.cable.remedy_grouped": (
        "une section de {section_mm2:g} mm2, la plus petite qui passe chute de tension et courant admissible en PVC, "
        "posée avec {circuits} circuits ensemble selon {installation} à {ambient_c:.0f} °C ; non couvert : "
        "{not_covered}"
    ),
    "check.cable.remedy_none": (
        "un parcours plus court, ou un autre câble calculé par un électricien agréé : aucune section jusqu'à 50 mm2 ne "
        "suffit"
    ),
    "check.cable.not_covered.faults": "boucle de défaut à la terre et court-circuit",
    "check.cable.not_covered.device": "le dispositif de protection",
    "check.cable.not_covered.outdoors": "isolation pour le CC, le soleil et les intempéries",
    "check.cable.not_covered.ground": "profondeur, fourreaux et sécheresse du sol",
    "check.cable.not_covered.ground_grouping": "le facteur de groupement propre au sol",
    "check.ac_cable_protection.compared": (
        "Dispositif de protection du câble CA, {device}, face aux {carried_a} A que le câble doit porter et aux "
        "{most_a} A qui le protègent"
    ),
    "check.drop_cable_protection.compared": (
        "Dispositif de protection du câble de descente, {device}, face aux {carried_a} A que le câble doit porter et "
        "aux {most_a} A qui le protègent"
    ),
    "check.ac_cable_protection.compared_not_given": "Dispositif de protection du câble CA",
    "check.cable_protection.why": (
        "Un dispositif trop petit fait déclencher la pompe ; trop grand, il laisse brûler le câble avant de déclencher."
    ),
    "check.cable_protection.look_for": (
        "chercher le courant nominal sur le disjoncteur ou le fusible avant le câble ; il doit être d'au moins "
        "{carried_a} A et d'au plus {most_a} A"
    ),
    "check.cable_protection.device.breaker": "un disjoncteur de {rating_a:g} A",
    "check.cable_protection.device.fuse": "un fusible gG de {rating_a:g} A",
    "check.cable_protection.remedy": (
        "{device}, avec à côté la protection du moteur contre les surcharges ; non couvert : boucle de défaut à la "
        "terre et court-circuit"
    ),
    "check.cable_protection.remedy_and_cable": (
        "{device}, avec à côté la protection du moteur contre les surcharges, et {remedy}"
    ),
    "check.cable_protection.remedy_none": (
        "un dispositif pour plus de courant que ceux de taille usuelle, choisi par un électricien agréé"
    ),
    "check.cable_protection.source": "CEI 60364-4-43:2008, 433.1 : Ib <= In <= Iz et I2 <= 1,45 Iz",
    "check.dc_cable_voltage.compared": (
        "Tension à vide d'une chaîne par temps froid, face à la tension CC pour laquelle le câble du champ est fait"
    ),
    "check.dc_cable_voltage.why": (
        "Une isolation qui n'est pas faite pour la tension cède, et un arc en CC ne s'éteint pas de lui-même."
    ),
    "check.dc_cable_voltage.look_for": ("chercher la tension CC imprimée sur le câble, comme « DC 1500 V »"),
    "check.dc_cable_voltage.remedy": "un câble fait pour le PV (EN 50618 ou CEI 62930, 1 500 V CC)",
    "check.dc_cable_voltage.source": ("CEI 62548 ; le câble pour le PV est fait pour 1 500 V CC (EN 50618, CEI 62930)"),
    "check.dc_cable_outdoor.compared": "Câble du champ, face au soleil et aux intempéries",
    "check.dc_cable_outdoor.made_for_it": "fait pour cela",
    "check.dc_cable_outdoor.not_made_for_it": "pas fait pour cela",
    "check.dc_cable_outdoor.why": (
        "Une isolation que soleil et pluie usent fuit à la terre en quelques années, et électrise ou brûle."
    ),
    "check.dc_cable_outdoor.look_for": ("chercher « EN 50618 », « IEC 62930 » ou « H1Z2Z2-K » imprimé sur le câble"),
    "check.dc_cable_outdoor.remedy": (
        "un câble fait pour le PV (EN 50618 ou CEI 62930), ou un conduit qui tient au soleil sur toute sa longueur"
    ),
    "check.dc_cable_outdoor.source": "CEI 62548 ; EN 50618, CEI 62930",
    "check.drop_cable_length.compared": "Longueur du câble de descente, face à la profondeur de la pompe",
    "check.drop_cable_length.why": "Une jonction sous l'eau est la première chose à lâcher.",
    "check.drop_cable_length.remedy": "un câble de descente d'au moins {length_m} m d'une seule pièce",
}
