"""Français de ce qu'un scénario laisse de côté et qui est calculé : d'après quoi, et selon quelle règle."""

SENTENCES: dict[str, str] = {
    "assumed.place": "le nom du projet",
    "assumed.time_zone": "d'après les coordonnées",
    "assumed.weather": (
        "aucune météo indiquée : estimée d'après les coordonnées ; mesurer ou télécharger avant d'engager de l'argent"
    ),
    "assumed.user": "le genre d'usager",
    "assumed.user.people": "Personnes",
    "assumed.user.livestock": "Bétail",
    "assumed.user.irrigation": "Champ irrigué",
    "assumed.user.volume": "Eau au volume",
    "assumed.specific_capacity": (
        "{flow} m3/h pour {drawdown} m de rabattement ; un seul palier ne montre pas comment le rabattement augmente à "
        "d'autres débits"
    ),
    "assumed.safe_yield": (
        "le débit de l'essai de pompage, {flow} m3/h : un essai court dit peu d'une saison sèche ; faire fixer le "
        "débit d'exploitation par un essai d'un jour ou plus"
    ),
    "assumed.pump_name": "Pompe",
    "assumed.pump_named": "aucun nom indiqué",
    "assumed.pump_kind": (
        "plus grand débit égal à {ratio} fois le débit nominal : pratique courante, sans source ; regarder la pompe ou "
        "sa fiche technique"
    ),
    "assumed.controller_window": "la tension CC sur la plaque de la pompe",
    "assumed.riser": "Colonne montante",
    "assumed.main": "Conduite de refoulement",
    "assumed.segments": (
        "une colonne montante de la profondeur de la pompe et une conduite de pipeline.length_m ; aucun raccord compté"
    ),
    "assumed.pipe": (
        "{velocity} m/s à {flow} m3/h (environ 1 m/s ou moins : pratique courante, sans source), classe de pression "
        "{bar} bar pour la pompe contre une vanne fermée ; dimensions selon {standard}"
    ),
    "assumed.sources": "aucune source indiquée : le soleil seul",
    "assumed.module": (
        "un module générique aux chiffres ronds, fiche technique de personne : pratique courante, sans source"
    ),
    "assumed.series": (
        "de {fewest} à {most} conviennent aux tensions du variateur et au courant de la plaque, par un midi chaud et "
        "un matin froid ; parmi ceux-ci, la chaîne la plus proche de {ratio} fois la puissance absorbée par la pompe"
    ),
    "assumed.series_by_power": (
        "ce qui est le plus proche de {ratio} fois la puissance absorbée par la pompe ; les tensions du variateur ne "
        "sont pas toutes connues : vérifier que {fewest} à {most} est ce qu'elles admettent"
    ),
    "assumed.series_chosen": "choisi avec le nombre de chaînes, parmi ceux qui passent les vérifications",
    "assumed.string_fuse": (
        "le plus petit fusible gPV usuel (CEI 60269-6) de 1,5 à 2,4 fois le courant de court-circuit du module (CEI "
        "62548, de mémoire), aux deux pôles de chaque chaîne ; moins de trois chaînes n'en ont pas besoin"
    ),
    "assumed.section_chosen": (
        "la plus petite qui passe les vérifications de courant admissible et de chute de tension pour le champ choisi"
    ),
    "assumed.section": (
        "la plus petite section de la CEI 60228 qui supporte le courant (CEI 60364-5-52) et perd au plus {percent:g} % "
        "de la tension"
    ),
    "assumed.planes": (
        "vers l'équateur, incliné de la latitude mais d'au moins 10 degrés, à partir desquels la pluie lave le verre : "
        "pratique courante, sans source"
    ),
    "assumed.tank": "aucun réservoir indiqué : un réservoir est choisi",
    "assumed.rating": (
        "le plus petit qui fait marcher et démarrer un moteur qui prend {need:.1f} kW, et dont {percent:.0f} % de la "
        "puissance restent à cette altitude et à {hottest:.0f} °C"
    ),
    "assumed.level": "un cinquième du réservoir d'écart avec le niveau indiqué : pratique courante, sans source",
    "assumed.tank_sizes": "tailles usuelles : pratique courante, sans source",
    "assumed.price": "d'après {listed}",
    "assumed.stand_in_price": "la structure est dans prices.pv_per_kwp",
}
