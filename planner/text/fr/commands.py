"""Français de ce que les commandes affichent à côté de leurs résultats."""

SENTENCES: dict[str, str] = {
    "command.wrote": "Écrit : {file}",
    "command.wrote_schema": ("Écrit : {file}, d'après lequel un éditeur qui lit la première ligne complète les clés"),
    "command.wrote_all": "\nÉcrit : {files}\n",
    "command.wrote_both": "\nÉcrit : {first} et {second}\n",
    "command.wrote_form": "Écrit : {file}. Remplir les cases encadrées, puis : planner run {file}",
    "command.wrote_starter": "Écrit : {file}. Indiquer votre propre site, puis : planner run {file}",
    "command.wrote_weather": 'Écrit : {file}. Dans le scénario : [weather] kind = "file", file = "{name}"',
    "command.cannot_write": "{file} : ne peut pas être écrit : {reason}",
    "command.internal_error": (
        "planner a échoué et n'aurait pas dû : {error}\nMerci de le signaler avec le scénario ; --verbose montre où."
    ),
    "command.internal_error_at": (
        "{file} : planner a échoué et n'aurait pas dû : {error}\nMerci de le signaler avec le scénario ; --verbose "
        "montre où."
    ),
    "command.no_parquet": ("Parquet a besoin de pyarrow, qui n'est pas installé ; les lignes sont écrites en CSV."),
    "command.stopped": "\nArrêté. Les parties terminées sont gardées ; --resume reprend à partir d'elles.",
    "command.given_up": "{count:,} variantes abandonnées avec leurs processus ; --resume les refait",
    "command.nothing_worked_out": (
        "{file} : aucune variante du balayage n'a pu être calculée ; la première raison : {reason}"
    ),
    "command.seconds_left": "encore {time:.0f} s",
    "command.minutes_left": "encore {time:.0f} min",
    "command.hours_left": "encore {time:.1f} h",
    "command.weather_not_fetched": (
        'La météo n\'a pas pu être téléchargée : {reason}. En attendant, [weather] kind = "estimate" donne un premier '
        "aperçu."
    ),
    "command.weather_of_what": (
        "planner weather demande un scénario, ou --latitude et --longitude : l'un ou l'autre, et les deux nombres"
    ),
}
