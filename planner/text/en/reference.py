"""Words of the reference of commands, keys and figures."""

SENTENCES: dict[str, str] = {
    "reference.title": "Reference",
    "reference.head": (
        "Made by `planner reference` from the commands, the scenario's models and the catalogue of figures; not to be "
        "edited by hand."
    ),
    "reference.commands": "Commands",
    "reference.keys": "Keys of a scenario",
    "reference.keys_note": (
        "Units are part of a key's name; `money` stands for the scenario's currency. A key that says nothing under "
        "'Left out' may stay away."
    ),
    "reference.top": "Above the first table",
    "reference.needed": "must be given",
    "reference.figures": "Figures of a supply option",
    "reference.figures_note": (
        "Each stands under its key in the JSON, in the rows of a sweep and in the tables of the Python interface."
    ),
    "reference.column_option": "Argument or option",
    "reference.column_what": "What it is",
    "reference.column_key": "Key",
    "reference.column_unit": "Unit",
    "reference.column_takes": "Takes",
    "reference.column_left_out": "Left out",
    "reference.column_definition": "Definition and source",
}
