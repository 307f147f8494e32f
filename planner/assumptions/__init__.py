"""What may be left out of a scenario, and how it is worked out before the scenario is checked: a module a topic."""
