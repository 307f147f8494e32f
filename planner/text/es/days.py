"""Español de los días sin agua."""

SENTENCES: dict[str, str] = {
    "figure.nothing_missing": "no falta nada",
    "figure.no_short_day": "ningún día",
    "days.heading": "Días en los que falta más de la décima parte del agua",
    "days.none": "Con {option}, en {years} años no hay ningún día al que le falte más de la décima parte de su agua.",
    "days.short": (
        "Con {option}, falta más de la décima parte del agua {short:.1f día|días} al año (racha más larga: "
        "{longest:.0f día|días}); peor mes: {month}, con {in_month:.1f día|días} así; en un día medio sin agua "
        "suficiente, a los usuarios les faltan {litres:,.0f litro|litros}."
    ),
}
