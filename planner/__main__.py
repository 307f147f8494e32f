"""Run the command line as `python -m planner`."""

from planner.cli import main

main()
