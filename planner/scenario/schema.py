"""The scenario's JSON Schema, for editors and programs that write scenarios."""

from __future__ import annotations

import json
from typing import Any

from planner.scenario.scenario import OVERRIDABLE, Scenario
from planner.scenario.walk import walk_models

SCHEMA_FILE = "planner.schema.json"
"""Name under which `planner new` puts the schema beside a scenario, whose first line names it."""


def schema_text() -> str:
    """Return the schema as the text of a file."""
    return json.dumps(scenario_schema(), indent=1, ensure_ascii=False) + "\n"


def scenario_schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of a scenario, in the shape that `tomllib` and `json` read.

    Returns
    -------
    dict
        Beside the standard's own words each key has `unit`, `default_source` (where a default comes from), `absent`
        (what it means to leave it out) `how` (from what it is worked out where it is left out)
        and `changes` (what a change of it makes necessary, see `fields.Changes`). What
        several keys demand of one another is not in it: `reader.check_scenario` checks that.
    """
    schema = Scenario.model_json_schema()
    for field in walk_models(Scenario):
        model = schema if field.model is Scenario else schema["$defs"][field.model.__name__]
        if not field.tables:
            model["properties"][field.name]["changes"] = field.changes
        if field.how and field.name in model.get("required", ()):
            model["required"].remove(field.name)
    tables = schema["properties"]["overrides"]["additionalProperties"]
    tables["propertyNames"] = {"enum": list(OVERRIDABLE)}
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema}
