"""Words that the commands print beside their results."""

SENTENCES: dict[str, str] = {
    "command.wrote": "Wrote {file}",
    "command.wrote_schema": "Wrote {file}, by which an editor that reads the first line completes keys",
    "command.wrote_all": "\nWrote {files}\n",
    "command.wrote_both": "\nWrote {first} and {second}\n",
    "command.wrote_form": "Wrote {file}. Fill in the framed cells, then: planner run {file}",
    "command.wrote_starter": "Wrote {file}. Fill in your own site, then: planner run {file}",
    "command.wrote_weather": 'Wrote {file}. In the scenario: [weather] kind = "file", file = "{name}"',
    "command.cannot_write": "{file}: cannot be written: {reason}",
    "command.internal_error": (
        "planner failed and should not have: {error}\nPlease report it with the scenario; --verbose shows where."
    ),
    "command.internal_error_at": (
        "{file}: planner failed and should not have: {error}\nPlease report it with the scenario; --verbose shows "
        "where."
    ),
    "command.no_parquet": "Parquet needs pyarrow, which is not installed; the rows are written as CSV.",
    "command.stopped": "\nStopped. The finished chunks are kept; --resume goes on with them.",
    "command.given_up": "{count:,} variants were given up with their workers; --resume does them again",
    "command.nothing_worked_out": "{file}: no variant of the sweep could be worked out; the first reason: {reason}",
    "command.seconds_left": "{time:.0f} s left",
    "command.minutes_left": "{time:.0f} min left",
    "command.hours_left": "{time:.1f} h left",
    "command.weather_not_fetched": (
        'The weather could not be fetched: {reason}. Until it can be, [weather] kind = "estimate" gives a first look.'
    ),
    "command.weather_of_what": (
        "planner weather needs a scenario, or --latitude and --longitude: one or the other, and both figures"
    ),
}
