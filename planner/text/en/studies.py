"""Words of sizing, worth, sweep, comparison, site checks and weather."""

SENTENCES: dict[str, str] = {}
