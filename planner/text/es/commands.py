"""Español de lo que las órdenes muestran junto a sus resultados."""

SENTENCES: dict[str, str] = {
    "command.wrote": "Se escribió {file}",
    "command.wrote_schema": "Se escribió {file}, con el que un editor que lee la primera línea completa las claves",
    "command.wrote_all": "\nSe escribieron {files}\n",
    "command.wrote_both": "\nSe escribieron {first} y {second}\n",
    "command.wrote_form": "Se escribió {file}. Rellene las celdas enmarcadas y después: planner run {file}",
    "command.wrote_starter": "Se escribió {file}. Indique los datos de su lugar y después: planner run {file}",
    "command.wrote_weather": 'Se escribió {file}. En el escenario: [weather] kind = "file", file = "{name}"',
    "command.cannot_write": "{file}: no se puede escribir: {reason}",
    "command.internal_error": (
        "planner falló y no debería haberlo hecho: {error}\nComuníquelo junto con el escenario; --verbose muestra "
        "dónde."
    ),
    "command.internal_error_at": (
        "{file}: planner falló y no debería haberlo hecho: {error}\nComuníquelo junto con el escenario; --verbose "
        "muestra dónde."
    ),
    "command.no_parquet": "Parquet necesita pyarrow, que no está instalado; las filas se escriben como CSV.",
    "command.stopped": "\nDetenido. Los bloques terminados se conservan; --resume continúa con ellos.",
    "command.given_up": "se abandonaron {count:,} variantes con sus procesos; --resume las repite",
    "command.nothing_worked_out": (
        "{file}: no se pudo calcular ninguna variante del barrido; el primer motivo: {reason}"
    ),
    "command.seconds_left": "quedan {time:.0f} s",
    "command.minutes_left": "quedan {time:.0f} min",
    "command.hours_left": "quedan {time:.1f} h",
    "command.weather_not_fetched": (
        "No se pudieron descargar los datos meteorológicos: {reason}. Hasta que se pueda, [weather] kind = "
        '"estimate" da una primera idea.'
    ),
    "command.weather_of_what": (
        "planner weather necesita un escenario, o --latitude y --longitude: lo uno o lo otro, y las dos cifras"
    ),
}
