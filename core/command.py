"""``samepart inspect`` and ``samepart compare``: the core's answers without a window.

Rules: standard output holds the answer alone; messages go to standard error, one line each; never a
traceback. Only what an answer needs is imported, so that a small log is inspected in well under a second.
"""

import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from core.arguments import compare_parser, inspect_parser
from core.faults import facts_of
from core.problems import Problem, Severity

if TYPE_CHECKING:
    from core.analysis import FileAnalysis
    from core.logs import FileReading
    from core.results.values import Comparison
    from core.study import Study

DONE, WRONG_ARGUMENTS, UNREADABLE = 0, 2, 3

#: draws the charts of a comparison into a folder in a style; returns the files, or why there are none
Images = Callable[["Comparison", "Study", Path, str], "Sequence[Path] | str"]


def run(argv: Sequence[str], images: Images) -> int:
    """Answer ``inspect`` or ``compare``.

    Parameters
    ----------
    argv : sequence of str
        The arguments, the command first.
    images : callable
        Draws the charts for ``--out``.

    Returns
    -------
    int
        Exit status.
    """
    write_anything(sys.stdout)
    write_anything(sys.stderr)
    try:
        if argv[0] == "inspect":
            status = _inspect(argv[1:])
        else:
            status = _compare(argv[1:], images)
        sys.stdout.flush()
    except BrokenPipeError:
        # whoever read the answer has stopped; the interpreter would complain once more when it closes it
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return DONE
    return status


def write_anything(stream: TextIO) -> None:
    """Let a stream write file names and signs that its encoding does not know, in place of failing."""
    reconfigure = getattr(stream, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors="backslashreplace")


def message(text: str) -> None:
    """One line on standard error."""
    print(" ".join(text.split()), file=sys.stderr)


def say(text: str) -> None:
    """Part of the answer, on standard output."""
    print(text)


def tell(problems: Sequence[Problem], *, errors_only: bool = False) -> None:
    """Problems on standard error, each once."""
    from core.wording import placed

    for line in dict.fromkeys(placed(p) for p in problems if p.severity is Severity.ERROR or not errors_only):
        message(line)


def _status(problems: Sequence[Problem]) -> int:
    return UNREADABLE if any(p.severity is Severity.ERROR for p in problems) else DONE


def _inspect(argv: Sequence[str]) -> int:
    wanted = inspect_parser().parse_args(argv)
    from core.logs import find_files

    files, problems = find_files(wanted.files)
    readings = [_carefully_read(path, shown) for path, shown in files]
    told = [*problems, *(p for reading in readings for p in reading.problems)]
    if wanted.json:
        from core.json_answer import dumps, inspected

        print(dumps([inspected(r) for reading in readings for r in reading.readings]))
    else:
        from core.reading_text import reading_text

        print("\n\n".join(reading_text(r) for reading in readings for r in reading.readings))
    tell(told, errors_only=wanted.json)
    return _status(told)


def _carefully_read(path: Path, shown: str) -> "FileReading":
    """Read a file; should the reader itself fail, that is told of this file and the others go on."""
    from core.logs import FileReading, read_path

    try:
        return read_path(path, shown_name=shown)
    except Exception as error:  # noqa: BLE001  # a fault of ours must not cost the answer for the other files
        return FileReading(shown, "", 0, problems=(_fault(shown, error),))


def _carefully_analysed(path: Path, shown: str) -> "FileAnalysis":
    from core.analysis import FileAnalysis, analyse_file
    from core.logs import FileReading

    try:
        return analyse_file(path, shown)
    except Exception as error:  # noqa: BLE001  # as above
        return FileAnalysis(FileReading(shown, "", 0, problems=(_fault(shown, error),)))


def _fault(shown: str, error: Exception) -> Problem:
    return Problem("analysis.fault", Severity.ERROR, shown, facts=facts_of(error))


def _compare(argv: Sequence[str], images: Images) -> int:
    parser = compare_parser()
    wanted = parser.parse_args(argv)
    if not wanted.files and wanted.run_sheet is None:
        parser.error("name at least one log, study, folder or run sheet")
    from core.comparing import gather
    from core.executors import NoCluster, cluster, local_processes

    place = local_processes(wanted.files) if wanted.on is None else cluster(wanted.on)
    try:
        with place as executor:
            gathered = gather(
                wanted.files,
                wanted.run_sheet,
                wanted.boundary,
                executor=executor,
                analyse=_carefully_analysed,
            )
    except NoCluster as error:
        message(f"samepart compare: {error}")
        return WRONG_ARGUMENTS
    comparison = gathered.comparison()
    warnings = _warnings(comparison, gathered.problems)
    if wanted.json:
        from core.json_answer import compared, dumps

        print(dumps(compared(comparison, gathered.study, warnings)))
    else:
        print(comparison_text(comparison))
    tell(gathered.problems, errors_only=wanted.json)
    status = _status(gathered.problems)
    if wanted.out is not None:
        written = write(comparison, gathered.study, wanted.out, wanted.style, images, warnings)
        status = status if written else UNREADABLE
    return status


def _warnings(comparison: "Comparison", problems: Sequence[Problem]) -> list[str]:
    from core.wording import placed

    return list(dict.fromkeys(placed(p) for p in (*problems, *comparison.problems)))


def comparison_text(comparison: "Comparison") -> str:
    """The comparison for a terminal: the answer in words, the table, what is not alike, what was left out."""
    from core.results.fairness_answer import line
    from core.results.table import readable_table
    from core.tables import to_text

    blocks = [f"{comparison.headline}\n{comparison.conditions}".rstrip()]
    if comparison.machines:
        blocks.append(to_text(readable_table(comparison)))
    if comparison.fairness:
        lines = [f"  {line(finding)}" for finding in comparison.fairness]
        blocks.append("\n".join(["Fairness", *lines]))
    left_out = [
        f"  {machine.name}, {run.name}: {run.why_excluded}"
        for machine in comparison.machines
        for run in machine.runs
        if not run.included
    ]
    if left_out:
        blocks.append("\n".join(["Found and not counted", *left_out]))
    return "\n\n".join(blocks)


def write(
    comparison: "Comparison",
    study: "Study",
    folder: Path,
    style: str,
    images: Images,
    warnings: Sequence[str] = (),
) -> tuple[Path, ...]:
    """Write tables and images, and say on standard error which; nothing when the folder cannot be written."""
    from core.outputs import write_tables

    try:
        paths = write_tables(comparison, study, folder, warnings)
        drawn = images(comparison, study, folder, style)
    except OSError as error:
        message(f"{folder}: cannot be written ({error.strerror or error}); name another folder with --out")
        return ()
    if isinstance(drawn, str):
        message(drawn)
    else:
        paths += drawn
    message(f"{folder}: {', '.join(path.name for path in paths)} written")
    return tuple(paths)
