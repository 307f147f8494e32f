"""Português do que os comandos mostram ao lado dos seus resultados."""

SENTENCES: dict[str, str] = {
    "command.wrote": "Escrito: {file}",
    "command.wrote_schema": "Escrito: {file}, com que um editor que leia a primeira linha completa as chaves",
    "command.wrote_all": "\nEscrito: {files}\n",
    "command.wrote_both": "\nEscrito: {first} e {second}\n",
    "command.wrote_form": "Escrito: {file}. Preencha as células com moldura, depois: planner run {file}",
    "command.wrote_starter": "Escrito: {file}. Preencha o seu próprio local, depois: planner run {file}",
    "command.wrote_weather": 'Escrito: {file}. No cenário: [weather] kind = "file", file = "{name}"',
    "command.cannot_write": "{file}: não pode ser escrito: {reason}",
    "command.internal_error": (
        "o planner falhou e não devia: {error}\nPor favor comunique-o com o cenário; --verbose mostra onde."
    ),
    "command.internal_error_at": (
        "{file}: o planner falhou e não devia: {error}\nPor favor comunique-o com o cenário; --verbose mostra onde."
    ),
    "command.no_parquet": "O Parquet precisa de pyarrow, que não está instalado; as linhas são escritas em CSV.",
    "command.stopped": "\nParado. As partes acabadas ficam guardadas; --resume continua com elas.",
    "command.given_up": "{count:,} variantes foram abandonadas com os seus processos; --resume volta a fazê-las",
    "command.nothing_worked_out": "{file}: nenhuma variante da variação pôde ser calculada; a primeira razão: {reason}",
    "command.seconds_left": "faltam {time:.0f} s",
    "command.minutes_left": "faltam {time:.0f} min",
    "command.hours_left": "faltam {time:.1f} h",
    "command.weather_not_fetched": (
        'Não foi possível obter a meteorologia: {reason}. Até que se possa, [weather] kind = "estimate" dá uma '
        "primeira ideia."
    ),
    "command.weather_of_what": (
        "planner weather precisa de um cenário, ou de --latitude e --longitude: um ou outros, e ambos os números"
    ),
}
