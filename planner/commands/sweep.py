"""`planner sweep`: what becomes of the comparison where its inputs are uncertain."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any

import typer

from planner.commands.options import DONE, OUR_FAULT

if TYPE_CHECKING:
    from planner.study.sweep.run import SweepResult


class Rows(StrEnum):
    """Kinds of file for the rows."""

    CSV = "csv"
    PARQUET = "parquet"


def sweep(
    scenario: Annotated[Path, typer.Argument(help="Scenario file (TOML).", show_default=False)],
    outputs: Annotated[Path, typer.Option("--outputs", help="Folder for the workbook and the rows.")] = Path("outputs"),
    rows: Annotated[Rows, typer.Option("--rows", help="Kind of the file of rows.")] = Rows.CSV,
    workers: Annotated[int, typer.Option("--workers", min=1, max=256, help="Processes of this machine to use.")] = 1,
    cluster: Annotated[
        str | None,
        typer.Option("--cluster", help="Address of a Dask scheduler to use instead.", show_default=False),
    ] = None,
    resume: Annotated[bool, typer.Option("--resume", help="Go on with the same sweep where it was stopped.")] = False,
    seed: Annotated[
        int | None,
        typer.Option("--seed", min=0, max=2**31, help="Seed to use instead of the scenario's.", show_default=False),
    ] = None,
    quiet: Annotated[bool, typer.Option("--quiet", "-q", help="Print nothing but errors.")] = False,
    verbose: Annotated[
        bool, typer.Option("--verbose", "-v", help="Say more; show the traceback of our own faults.")
    ] = False,
) -> int:
    """Vary uncertain inputs one at a time, in a grid, at random and over weather years, as the [sweep] table says."""
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in, writing
    from planner.report.sweep_report import sweep_report, write_sweep_workbook
    from planner.report.sweep_rows import has_parquet, write_rows
    from planner.report.sweep_store import ChunkFolder
    from planner.scenario.reader import located, read_scenario
    from planner.study.sweep.run import run_sweep
    from planner.study.sweep.summary import sentences

    checked = read_scenario(scenario)
    if seed is not None:
        checked = checked.model_copy(update={"seed": seed})
    kind = rows.value
    if rows is Rows.PARQUET and not has_parquet():
        typer.echo("Parquet needs pyarrow, which is not installed; the rows are written as CSV.", err=True)
        kind = "csv"
    book, table = outputs / f"{scenario.stem}-sweep.xlsx", outputs / f"{scenario.stem}-sweep.{kind}"
    check_folder(outputs, [book.name, table.name])
    store = ChunkFolder(outputs / f"{scenario.stem}.sweep", checked, scenario.parent)
    with writing(store.folder):
        if not resume:
            store.clear()
        crew = _crew(workers, cluster)
        try:
            with located(scenario), _progress(quiet) as progress:
                swept = run_sweep(checked, scenario.parent, workers=crew, store=store, progress=progress)
                lost = _lost(swept)
        except KeyboardInterrupt:
            typer.echo("\nStopped. The finished chunks are kept; --resume goes on with them.", err=True)
            raise
        finally:
            crew.close()
    said = sentences(swept)
    with results_in(outputs) as folder:
        write_sweep_workbook(swept, said, folder / book.name)
        write_rows(swept, folder / table.name)
    if not lost:
        store.clear()
    if not quiet:
        out_console().print(sweep_report(swept, said))
        typer.echo(f"\nWrote {book} and {table}\n")
    if lost:
        typer.echo(f"{lost} variants were given up with their workers; --resume does them again", err=True)
    return OUR_FAULT if lost else DONE


def _lost(swept: SweepResult) -> int:
    """Count the variants given up with their workers; refuse a sweep of which nothing could be worked out."""
    from planner.scenario.errors import InputError, Problem
    from planner.study.sweep.workers import GIVEN_UP

    lost = 0
    for results in swept.results:
        reasons = list(results.problems.values())
        if reasons and len(reasons) == results.plan.size:
            text = f"none of its {results.plan.size} variants ({results.plan.mode}) could be worked out; the first: "
            if not reasons[0].startswith(GIVEN_UP):
                raise InputError("", [Problem("sweep", text + reasons[0])])
            typer.echo(text + reasons[0], err=True)
            raise typer.Exit(OUR_FAULT)
        lost += sum(why.startswith(GIVEN_UP) for why in reasons)
    return lost


def _crew(workers: int, cluster: str | None) -> Any:
    from planner.study.sweep.workers import Alone, Cluster, Processes

    if cluster is not None:
        return Cluster(cluster)
    return Alone() if workers == 1 else Processes(workers)


@contextmanager
def _progress(quiet: bool) -> Iterator[Callable[[str, int, int, float], None] | None]:
    """Show how far the sweep is and the time left, on a terminal only."""
    if quiet or not sys.stderr.isatty():
        yield None
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

    columns = (
        TextColumn("{task.description}"),
        BarColumn(),
        MofNCompleteColumn(),
        TextColumn("{task.fields[left]}"),
    )
    with Progress(*columns, console=Console(stderr=True), transient=True) as shown:
        tasks: dict[str, Any] = {}

        def told(kind: str, done: int, count: int, seconds: float) -> None:
            if kind not in tasks:
                tasks[kind] = shown.add_task(kind, total=count, left="")
            shown.update(tasks[kind], completed=done, left=f"{_time(seconds)} left")

        yield told


def _time(seconds: float) -> str:
    """Write a time for people."""
    if seconds < 90:
        return f"{seconds:.0f} s"
    return f"{seconds / 60:.0f} min" if seconds < 5400 else f"{seconds / 3600:.1f} h"
