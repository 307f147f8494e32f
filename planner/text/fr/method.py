"""Français de la méthode, de ses limites et de ses mots."""

SENTENCES: dict[str, str] = {
    "method.under": "Calculé par planner {version!s}, graine {seed}.",
    "method.cautions": "Mises en garde",
    "method.caution": "! Mise en garde {number}",
    "method.method": "Méthode",
    "method.limits": "Limites du modèle",
    "method.words": "Mots",
    "method.weather": "Météo",
    "method.weather_file": (
        "Fichier horaire : {source}. Là où il n'a pas d'éclairement direct et diffus à lui, le global est partagé "
        "d'après Erbs, Klein et Duffie (1982)."
    ),
    "method.weather_means": (
        "Heures tirées de douze moyennes mensuelles, de nouveau pour chaque année : clarté journalière d'après {law} ; "
        "heures d'après Graham et Hollands (1990) et Knight, Klein et Duffie (1991), direct et diffus d'après Erbs, "
        "Klein et Duffie (1982), température d'après Erbs, Klein et Beckman (1983). Les sommes des mois sont gardées."
    ),
    "method.array": "Champ photovoltaïque",
    "method.array_words": (
        "Éclairement sur les modules d'après {sky} ; réflexion ({reflection}) d'après De Soto, Klein et Beckman (2006) "
        "et Marion (2017) ; température des cellules d'après Faiman (2008), puissance d'un module à tout éclairement "
        "et toute température d'après Batzelis (2017) depuis sa fiche technique, et l'équation à une diode de De Soto "
        "là où la plage de tension du variateur le tient hors de son meilleur point ; le tout comme dans pvlib. "
        "Ombrage, salissure, disparité, câblage, dégradation initiale et annuelle sont déduits comme indiqué."
    ),
    "sky.perez-driesse": "Perez et al. (1990), rendu continu par Driesse, Jensen et Perez (2024)",
    "sky.haydavies": "Hay et Davies (1980)",
    "reflection.glass": "verre simple",
    "reflection.coated_glass": "verre traité",
    "reflection.none": "sans verre (non comptée)",
    "method.borehole": "Forage et conduites",
    "method.borehole_words": (
        "Rabattement s = B Q + C Q2 (Jacob 1947), d'un débit spécifique ou d'un essai par paliers. Pertes de charge "
        "d'après {friction}, pertes dans les raccords par leurs coefficients K. Diamètres intérieurs des tuyaux en PE "
        "d'après ISO 4427-2, des tubes en acier d'après EN 10255."
    ),
    "friction.darcy-weisbach": "Darcy-Weisbach avec Colebrook-White (Colebrook 1939)",
    "friction.hazen-williams": "Hazen-Williams",
    "method.pump": "Pompe",
    "pump.centrifugal": "Lois de similitude autour de la courbe à la vitesse nominale.",
    "pump.helical-rotor": (
        "Volumétrique : débit proportionnel à la vitesse moins le glissement ; le couple suit la hauteur."
    ),
    "method.loop": "Boucle horaire",
    "method.loop_words": (
        "Chaque heure de chaque année : le soleil pompe d'abord ; réseau électrique et groupe électrogène font "
        "l'appoint entre niveau de démarrage et niveau d'arrêt, dans leurs heures et leurs coupures ; les usagers "
        "puisent dans le réservoir. Des sources peuvent se partager une heure là où le variateur les fait marcher en "
        "parallèle. Rien ne se crée ni ne se perd : ce qui est pompé égale ce qui est fourni, perdu en fuites et "
        "stocké."
    ),
    "method.generator": "Groupe électrogène",
    "method.generator_words": (
        "Carburant = part à vide x puissance x heures + part en charge x énergie (Skarstein et Uhlen 1989, de mémoire) "
        "; puissance réduite pour l'altitude et la chaleur ; révisions courantes et générales et remplacement selon "
        "les heures de marche."
    ),
    "method.sizes": "Choix des tailles",
    "method.sizes_words": (
        "Là où c'est laissé ouvert : le plus petit réservoir qui atteint l'objectif de service, le nombre de chaînes "
        "et les niveaux de l'interrupteur à flotteur de moindre coût global qui l'atteignent. Les options qui "
        "atteignent l'objectif sont classées par coût global ; celles qui le manquent viennent après, selon ce "
        "qu'elles fournissent."
    ),
    "method.money": "Coûts",
    "method.money_words": (
        "Coût global comme dans 10 CFR 436 et NIST Handbook 135 (Fuller et Petersen 1995) : investissement l'année 0, "
        "tout le reste en fin d'année ; remplacement à la fin de chaque durée de vie ; valeur résiduelle linéaire. "
        "Coût actualisé du m3 comme coût marginal économique moyen (BAD, Handbook for the Economic Analysis of Water "
        "Supply Projects, 1999). Taux réels et nominaux d'après Fisher."
    ),
    "limit.hours": (
        "Des heures, non des minutes : le bilan d'eau est fait dans l'heure, mais un nuage qui passe n'est pas vu."
    ),
    "limit.start": (
        "Chaque année commence avec ce que la précédente laisse dans le réservoir ; la première commence aussi pleine "
        "qu'elle finit."
    ),
    "limit.weather": (
        "Un fichier météo unique se répète chaque année ; seules des moyennes mensuelles donnent des années "
        "différentes."
    ),
    "limit.nameplate": (
        "D'après la seule plaque signalétique, la puissance à charge partielle est une hypothèse ; des points de la "
        "fiche technique valent mieux."
    ),
    "limit.ageing": (
        "Les ouvrages vieillissent régulièrement, selon les baisses annuelles des données ; un forage n'est jamais "
        "nettoyé."
    ),
    "limit.not_run": ("Coups de bélier, qualité de l'eau et ruptures ne font pas partie du calcul horaire."),
    "limit_of_money.flows": (
        "Les coûts tombent en fin d'année, les remboursements du prêt sont constants, les impôts sur le revenu sont "
        "omis."
    ),
    "limit.carbon": ("Le dioxyde de carbone de la fabrication et du transport du matériel n'est pas compté."),
    "limit.inspection": (
        "Le programme calcule, il n'inspecte pas : essai de pompage, levé du tracé et devis viennent d'abord."
    ),
    "word.source": "source d'énergie",
    "meaning.source": "Soleil, réseau électrique ou groupe électrogène.",
    "word.option": "option d'alimentation",
    "meaning.option": "Une combinaison de sources qui répond aux mêmes besoins, comme solaire + réseau.",
    "word.top_up": "appoint",
    "meaning.top_up": (
        "Pompage sur réseau électrique ou groupe électrogène parce que soleil et réservoir ne suffisent pas."
    ),
    "word.levels": "niveau de démarrage, niveau d'arrêt",
    "meaning.levels": ("Niveaux du réservoir où l'appoint démarre et s'arrête : l'interrupteur à flotteur."),
    "word.demand_met": "besoins couverts, déficit",
    "meaning.demand_met": ("Eau fournie rapportée à l'eau demandée ; le déficit est ce qui est demandé et non fourni."),
    "word.pv_unused": "énergie PV non utilisée",
    "meaning.pv_unused": (
        "Énergie PV disponible mais non utilisée (écrêtée) : réservoir plein, sous la puissance de démarrage, ou plus "
        "que la pompe n'en prend."
    ),
    "word.static_lift": "hauteur géométrique",
    "meaning.static_lift": "Du niveau statique dans le forage jusqu'à l'entrée du réservoir.",
    "word.head": "hauteur manométrique totale (HMT)",
    "meaning.head": "Hauteur géométrique + rabattement + pertes de charge + pression résiduelle.",
    "word.duty_point": "point de fonctionnement",
    "meaning.duty_point": "Débit et hauteur auxquels pompe et installation s'accordent.",
    "word_of_money.life_cycle_cost": "coût global",
    "meaning.life_cycle_cost": (
        "Valeur actualisée de tous les coûts de la période d'analyse, moins la valeur résiduelle."
    ),
    "word_of_money.net_present_value": "valeur actuelle nette (VAN)",
    "meaning.net_present_value": "Valeur actualisée de ce que paient les usagers, moins le coût global.",
    "word_of_money.annualised_cost": "coût annualisé",
    "meaning.annualised_cost": "Somme annuelle constante dont la valeur actualisée est le coût global.",
    "word_of_money.levelised_cost": "coût actualisé du m3",
    "meaning.levelised_cost": "Coût global / valeur actualisée des m3 fournis, en monnaie de l'année 0.",
    "word_of_money.rate": "taux de rentabilité interne",
    "meaning.rate": (
        "Taux auquel le supplément d'investissement par rapport à la référence égale les économies ultérieures."
    ),
    "word_of_money.payback": "délai de récupération",
    "meaning.payback": (
        "Années jusqu'à ce que le supplément d'investissement soit récupéré durablement ; actualisé ou non."
    ),
    "word_of_money.residual_value": "valeur résiduelle",
    "meaning.residual_value": (
        "Ce que vaut le matériel à la fin : son prix multiplié par la part de sa vie qui reste."
    ),
}
