"""Português dos dias sem água."""

SENTENCES: dict[str, str] = {
    "figure.nothing_missing": "nenhuma",
    "figure.no_short_day": "nenhum dia sem água suficiente",
    "days.heading": "Dias em que falta mais de um décimo da água",
    "days.none": "Com a opção {option} em nenhum dia de {years} anos falta mais de um décimo da água.",
    "days.short": (
        "Com a opção {option} há {short:.1f dia|dias} por ano em que falta mais de um décimo da água, com uma "
        "sequência máxima de {longest:.0f dia|dias}; o pior mês é {month}, com {in_month:.1f dia|dias} assim; num "
        "dia médio sem água suficiente faltam aos utilizadores {litres:,.0f litro|litros}."
    ),
}
