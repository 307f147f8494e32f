"""Kiswahili cha kinachoonyeshwa na amri kando ya matokeo yake."""

SENTENCES: dict[str, str] = {
    "command.wrote": "Imeandikwa: {file}",
    "command.wrote_schema": (
        "Imeandikwa: {file}, ambayo kihariri kinachosoma mstari wa kwanza huitumia kukamilisha vitambulisho"
    ),
    "command.wrote_all": "\nImeandikwa: {files}\n",
    "command.wrote_both": "\nImeandikwa: {first} na {second}\n",
    "command.wrote_form": "Imeandikwa: {file}. Jaza seli zenye fremu, kisha: planner run {file}",
    "command.wrote_starter": "Imeandikwa: {file}. Jaza eneo lako mwenyewe, kisha: planner run {file}",
    "command.wrote_weather": 'Imeandikwa: {file}. Kwenye senario: [weather] kind = "file", file = "{name}"',
    "command.cannot_write": "{file}: haiwezi kuandikwa: {reason}",
    "command.internal_error": (
        "planner imeshindwa na haikupaswa: {error}\nTafadhali toa taarifa pamoja na senario; --verbose huonyesha ni "
        "wapi."
    ),
    "command.internal_error_at": (
        "{file}: planner imeshindwa na haikupaswa: {error}\nTafadhali toa taarifa pamoja na senario; --verbose "
        "huonyesha ni wapi."
    ),
    "command.no_parquet": "Parquet inahitaji pyarrow, ambayo haijasakinishwa; safu zimeandikwa kama CSV.",
    "command.stopped": "\nImesimamishwa. Sehemu zilizokamilika zimehifadhiwa; --resume huendelea nazo.",
    "command.given_up": "Matoleo {count:,} yaliachwa pamoja na michakato yake; --resume huyafanya tena",
    "command.nothing_worked_out": (
        "{file}: hakuna toleo la uchunguzi lililoweza kukokotolewa; sababu ya kwanza: {reason}"
    ),
    "command.seconds_left": "zimebaki {time:.0f} s",
    "command.minutes_left": "zimebaki dakika {time:.0f}",
    "command.hours_left": "zimebaki saa {time:.1f}",
    "command.weather_not_fetched": (
        'Hali ya hewa haikuweza kupakuliwa: {reason}. Hadi itakapowezekana, [weather] kind = "estimate" hutoa '
        "mtazamo wa kwanza."
    ),
    "command.weather_of_what": (
        "planner weather inahitaji senario, au --latitude na --longitude: moja au nyingine, na takwimu zote mbili"
    ),
}
