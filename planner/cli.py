"""Command line: parse, call, print. Heavy libraries are imported only by the command that needs them."""

from __future__ import annotations

import functools
import sys
from collections.abc import Callable
from enum import StrEnum
from pathlib import Path
from typing import Annotated, Any, ParamSpec

import typer

from planner import __version__

app = typer.Typer(
    name="planner",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
    help="Size, simulate and cost the supply of a borehole pump: sun, grid, generator and their mixes.",
)

P = ParamSpec("P")

DONE, OUR_FAULT, WRONG_INPUT = 0, 1, 2

Scenarios = Annotated[list[Path], typer.Argument(help="Scenario files (TOML).", show_default=False)]
OneScenario = Annotated[Path, typer.Argument(help="Scenario file (TOML).", show_default=False)]
Outputs = Annotated[Path, typer.Option("--outputs", help="Folder for the workbook and the JSON.")]
Quiet = Annotated[bool, typer.Option("--quiet", "-q", help="Print nothing but errors.")]
Verbose = Annotated[bool, typer.Option("--verbose", "-v", help="Say more; show the traceback of our own faults.")]
Seed = Annotated[
    int | None,
    typer.Option("--seed", min=0, max=2**31, help="Seed to use instead of the scenario's.", show_default=False),
]


class Service(StrEnum):
    """Open-data services from which weather can be fetched."""

    PVGIS = "pvgis"
    NASA_POWER = "nasa-power"


def _guarded(command: Callable[P, int | None]) -> Callable[P, None]:
    """Turn wrong input into exit code 2 with one clear message each, and our own faults into exit code 1."""

    @functools.wraps(command)
    def wrapped(*args: P.args, **kwargs: P.kwargs) -> None:
        from planner.scenario.errors import InputError

        try:
            code = command(*args, **kwargs)
        except InputError as error:
            for line in error.lines():
                typer.echo(line, err=True)
            raise typer.Exit(WRONG_INPUT) from error
        except (typer.Exit, typer.Abort, KeyboardInterrupt):
            raise
        except Exception as error:
            if kwargs.get("verbose"):
                raise
            typer.echo(
                f"planner failed and should not have: {type(error).__name__}: {error}\n"
                "Please report it with the scenario; --verbose shows where.",
                err=True,
            )
            raise typer.Exit(OUR_FAULT) from error
        if code:
            raise typer.Exit(code)

    return wrapped


def _show_version(value: bool) -> None:
    if value:
        typer.echo(f"planner {__version__}")
        raise typer.Exit


@app.callback()
def _options(
    version: Annotated[
        bool, typer.Option("--version", callback=_show_version, is_eager=True, help="Show the version and stop.")
    ] = False,
) -> None:
    pass


@app.command()
@_guarded
def new(
    file: Annotated[Path, typer.Argument(help="Scenario file to write.", show_default=False)],
    force: Annotated[bool, typer.Option("--force", help="Replace a file that is there.")] = False,
) -> int:
    """Write a commented starter scenario that runs as it is."""
    from planner.report.files import write_text
    from planner.scenario.errors import InputError, Problem
    from planner.scenario.writer import starter_text

    if file.exists() and not force:
        raise InputError(str(file), [Problem("", "is already there; give another name, or --force to replace it")])
    write_text(file, starter_text())
    typer.echo(f"Wrote {file}. Fill in your own site, then: planner run {file}")
    return DONE


@app.command()
@_guarded
def run(
    scenarios: Scenarios,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Simulate, cost and compare every supply option; write a workbook and a JSON file for each scenario."""
    from planner.scenario.errors import InputError, Problem

    doubled = {file.stem for file in scenarios if sum(other.stem == file.stem for other in scenarios) > 1}
    if doubled:
        name = sorted(doubled)[0]
        raise InputError(name, [Problem("", "two scenarios of this name would write the same files; rename one")])
    wrong = False
    with _progress(len(scenarios), quiet) as advance:
        for file in scenarios:
            advance(file.name)
            try:
                _run_one(file, outputs, seed, quiet=quiet, verbose=verbose)
            except InputError as error:
                wrong = True
                for line in error.lines():
                    typer.echo(line, err=True)
    return WRONG_INPUT if wrong else DONE


def _run_one(file: Path, outputs: Path, seed: int | None, *, quiet: bool, verbose: bool) -> None:
    from planner.checks.cautions import cautions
    from planner.report.console import out_console
    from planner.report.json_file import write_json
    from planner.report.terminal import study_report
    from planner.report.workbook import write_workbook
    from planner.study.compare import study_scenario
    from planner.study.words import sentences

    with _located(file):
        study = study_scenario(_read(file, seed), file.parent)
    said, beware = sentences(study), cautions(study)
    workbook, data = outputs / f"{file.stem}.xlsx", outputs / f"{file.stem}.json"
    with _writing(workbook):
        write_workbook(study, said, beware, workbook)
        write_json(study, said, beware, data)
    if not quiet:
        out_console().print(study_report(study, said, beware, verbose=verbose))
        typer.echo(f"\nWrote {workbook} and {data}\n")


@app.command()
@_guarded
def weather(
    scenario: OneScenario,
    seed: Seed = None,
    fetch: Annotated[
        Service | None,
        typer.Option(
            "--fetch", help="Fetch a typical year for the site from an open-data service.", show_default=False
        ),
    ] = None,
    save: Annotated[
        Path | None,
        typer.Option("--save", help="File for the fetched weather, to be named in the scenario.", show_default=False),
    ] = None,
    first_year: Annotated[
        int,
        typer.Option("--first-year", min=1984, max=2100, help="First year to fetch, where the service has real years."),
    ] = 2015,
    last_year: Annotated[int, typer.Option("--last-year", min=1984, max=2100, help="Last year to fetch.")] = 2019,
    service_url: Annotated[
        str | None,
        typer.Option("--service-url", help="Address of the service, if not the usual one.", show_default=False),
    ] = None,
    verbose: Verbose = False,
) -> int:
    """Show the sun and temperature that will be used, month by month; or fetch them for the site."""
    from planner.report.console import out_console
    from planner.report.weather_table import weather_report
    from planner.study.site import place_of, weather_of

    checked = _read(scenario, seed)
    with _located(scenario):
        place = place_of(checked)
        if fetch is not None:
            file = save or scenario.with_suffix(".weather.csv")
            return _fetch(fetch, place, file, (first_year, last_year), service_url)
        used = weather_of(checked, place, scenario.parent)
    out_console().print(weather_report(used, checked.site.place))
    return DONE


def _fetch(service: Service, place: Any, file: Path, years: tuple[int, int], url: str | None) -> int:
    from datetime import date

    from planner.report.files import writing
    from planner.resource.fetch import FetchError, fetch_nasa_power, fetch_pvgis_tmy, save_as_csv

    try:
        if service is Service.PVGIS:
            frame = fetch_pvgis_tmy(place, url=url)
        else:
            frame = fetch_nasa_power(place, years, url=url)
    except FetchError as error:
        typer.echo(f"The weather could not be fetched: {error}", err=True)
        return WRONG_INPUT
    with writing(file):
        save_as_csv(frame, file, fetched_on=date.today())
    typer.echo(f'Wrote {file}. In the scenario: [weather] kind = "file", file = "{file.name}"')
    return DONE


def _read(file: Path, seed: int | None) -> Any:
    from planner.scenario.reader import read_scenario

    scenario = read_scenario(file)
    return scenario if seed is None else scenario.model_copy(update={"seed": seed})


def _located(file: Path) -> Any:
    """Name file and line of problems that show only when the scenario is worked out."""
    from planner.scenario.reader import located

    return located(file)


def _writing(path: Path) -> Any:
    from planner.report.files import writing

    return writing(path)


def _progress(count: int, quiet: bool) -> Any:
    """Show which of several scenarios is at work, on a terminal only."""
    from contextlib import contextmanager

    @contextmanager
    def shown() -> Any:
        if quiet or count < 2 or not sys.stderr.isatty():
            yield lambda name: None
            return
        from rich.console import Console
        from rich.progress import Progress

        with Progress(console=Console(stderr=True), transient=True) as progress:
            task = progress.add_task("scenarios", total=count)

            def advance(name: str) -> None:
                progress.update(task, description=name, completed=min(advance.done, count))  # type: ignore[attr-defined]
                advance.done += 1  # type: ignore[attr-defined]

            advance.done = 0  # type: ignore[attr-defined]
            yield advance

    return shown()


def main() -> None:
    """Run the command line."""
    app()


if __name__ == "__main__":
    main()
