"""`planner sweep`: what becomes of the comparison where its inputs are uncertain."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any

import typer

from planner.commands.options import DONE, OUR_FAULT, WRONG_INPUT, Language, OneScenario, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed, rows_kind
from planner.text import text

if TYPE_CHECKING:
    from planner.study.sweep.reasons import Reason
    from planner.study.sweep.run import SweepResult


class Rows(StrEnum):
    """Kinds of file for the rows."""

    CSV = "csv"
    PARQUET = "parquet"


def sweep(
    scenario: OneScenario,
    outputs: Annotated[Path, typer.Option("--outputs", help="Folder for the workbook and the rows.")] = Path("outputs"),
    rows: Annotated[Rows, typer.Option("--rows", help="Kind of the file of rows.")] = Rows.CSV,
    workers: Annotated[int, typer.Option("--workers", min=1, max=256, help="Processes of this machine to use.")] = 1,
    cluster: Annotated[
        str | None,
        typer.Option("--cluster", help="Address of a Dask scheduler to use instead.", show_default=False),
    ] = None,
    resume: Annotated[bool, typer.Option("--resume", help="Go on with the same sweep where it was stopped.")] = False,
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Vary uncertain inputs one at a time, in a grid, at random and over weather years, as the [sweep] table says."""
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in, writing
    from planner.report.pages.sweep.report import sweep_report, sweep_summary
    from planner.report.sweep_rows import write_rows
    from planner.report.sweep_store import ChunkFolder
    from planner.report.terminal_writer import terminal_blocks
    from planner.report.workbook.book import write_book
    from planner.study.sweep.run import run_sweep
    from planner.study.sweep.summary import sentences

    checked = read_with_seed(scenario, seed, language)
    kind = rows_kind(parquet=rows is Rows.PARQUET)
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
        except KeyboardInterrupt:
            typer.echo(text("command.stopped"), err=True)
            raise
        finally:
            crew.close()
    lost = _lost(swept)
    if not swept.worked:
        if not lost:
            store.clear()
        return _failed(scenario, next(results.first_reason for results in swept.results if results.first_reason))
    said = sentences(swept)
    with results_in(outputs) as folder:
        write_book(sweep_report(swept, said), folder / book.name)
        write_rows(swept, folder / table.name)
    if not lost:
        store.clear()
    if not quiet:
        typer.echo(text("command.wrote_both", first=book, second=table))
        out_console().print(terminal_blocks(sweep_summary(swept, said)))
    if lost:
        typer.echo(text("command.given_up", count=lost), err=True)
    return OUR_FAULT if lost else DONE


def _lost(swept: SweepResult) -> int:
    """Count the variants given up with their workers."""
    return sum(why.given_up for results in swept.results for why in results.problems.values())


def _failed(scenario: Path, reason: Reason) -> int:
    """Say why nothing could be worked out; the exit code tells whose fault it is."""
    typer.echo(text("command.nothing_worked_out", file=scenario, reason=reason.words), err=True)
    return WRONG_INPUT if reason.is_input else OUR_FAULT


def _crew(workers: int, cluster: str | None) -> Any:
    from planner.study.sweep.workers import Cluster, Processes, Serial

    if cluster is not None:
        return Cluster(cluster)
    return Serial() if workers == 1 else Processes(workers)


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
                tasks[kind] = shown.add_task(text(f"sweep.mode_{kind}"), total=count, left="")
            shown.update(tasks[kind], completed=done, left=_time_left(seconds))

        yield told


def _time_left(seconds: float) -> str:
    """Write the time left for people."""
    if seconds < 90:
        return text("command.seconds_left", time=seconds)
    if seconds < 5400:
        return text("command.minutes_left", time=seconds / 60)
    return text("command.hours_left", time=seconds / 3600)
