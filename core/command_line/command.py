"""``samepart inspect`` and ``samepart compare``: the core's answers without a window.

Rules: standard output holds the answer alone; messages go to standard error, one line each; never a
traceback. Only what an answer needs is imported, so that a small log is inspected in well under a second.
"""

import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from core.command_line.arguments import compare_parser, inspect_parser
from core.faults import facts_of
from core.language import tr
from core.problems import Problem, Severity

if TYPE_CHECKING:
    from core.analysis import FileAnalysis
    from core.comparing import Gathered
    from core.logs import FileReading
    from core.report.painter import Painter
    from core.results.values import Comparison

DONE, WRONG_ARGUMENTS, UNREADABLE = 0, 2, 3


def run(argv: Sequence[str], painter: "Painter") -> int:
    """Answer ``inspect`` or ``compare``.

    Parameters
    ----------
    argv : sequence of str
        The arguments, the command first.
    painter : Painter
        Draws for ``--out``.

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
            status = _compare(argv[1:], painter)
    except BrokenPipeError:
        _leave_output()  # whoever read the answer has stopped
        return DONE
    except _NoOutput as error:
        _leave_output()
        message(f"samepart {argv[0]}: the answer cannot be written ({error}); send it to another place")
        return UNREADABLE
    return status


class _NoOutput(Exception):
    """Standard output takes no more; the text says why."""


def _leave_output() -> None:
    """Let the rest of the answer go nowhere: the interpreter would complain once more when it closes it."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def write_anything(stream: TextIO) -> None:
    """Let a stream write file names and signs that its encoding does not know, in place of failing."""
    reconfigure = getattr(stream, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors="backslashreplace")


#: letters of names that would move the cursor, colour a terminal or turn the order of what follows
_UNSEEN = {
    code: f"\\x{code:02x}" if code < 256 else f"\\u{code:04x}"
    for code in (*range(32), *range(127, 160), *range(0x202A, 0x202F), *range(0x2066, 0x206A))
    if code not in (9, 10)
}


def harmless(text: str) -> str:
    """A text for a terminal, with letters that would steer it spelt out."""
    return text.translate(_UNSEEN)


def message(text: str) -> None:
    """One line on standard error, where there is one that takes it."""
    if sys.stderr is not None:
        with suppress(OSError):
            print(harmless(" ".join(text.split())), file=sys.stderr, flush=True)


def say(text: str) -> None:
    """Part of the answer, on standard output."""
    try:
        print(text, flush=True)
    except BrokenPipeError:
        raise
    except OSError as error:
        raise _NoOutput(error.strerror or str(error)) from error


def tell(problems: Sequence[Problem], *, errors_only: bool = False) -> None:
    """Problems on standard error, each once."""
    from core.wording import each_once

    for line in each_once(p for p in problems if p.severity is Severity.ERROR or not errors_only):
        message(line)


def _status(problems: Sequence[Problem]) -> int:
    return UNREADABLE if any(p.severity is Severity.ERROR for p in problems) else DONE


def _inspect(argv: Sequence[str]) -> int:
    wanted = inspect_parser().parse_args(argv)
    from core.bundle.reading import is_bundle
    from core.logs import find_files

    bundles = [path for path in wanted.files if is_bundle(path)]
    files, problems = find_files([path for path in wanted.files if path not in bundles])
    readings = [_read_bundle(path) for path in bundles]
    readings += [_carefully_read(path, shown) for path, shown in files]
    told = [*problems, *(p for reading in readings for p in reading.problems)]
    if wanted.json:
        from core.json_answer import dumps, inspected

        say(dumps([inspected(r) for reading in readings for r in reading.readings]))
    else:
        from core.logs.reading_text import reading_text

        say(harmless("\n\n".join(reading_text(r) for reading in readings for r in reading.readings)))
    tell(told, errors_only=wanted.json)
    return _status(told)


def _read_bundle(path: Path) -> "FileReading":
    """The logs of a bundle as its study has them read."""
    from core.bundle.beside import read_logs
    from core.bundle.reading import open_bundle
    from core.logs import FileReading

    opened = open_bundle(path)
    if isinstance(opened, Problem):
        return FileReading(str(path), "", 0, problems=(opened,))
    found = read_logs(opened)
    read = tuple(reading for readings in found.readings.values() for reading in readings)
    return FileReading(str(path), "", path.stat().st_size, read, found.problems)


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


def _compare(argv: Sequence[str], painter: "Painter") -> int:
    parser = compare_parser()
    wanted = parser.parse_args(argv)
    if not wanted.files and wanted.run_sheet is None:
        parser.error("name at least one log, study, bundle, folder or run sheet")
    if wanted.bundle is not None and wanted.out is None:
        parser.error("--bundle needs --out FOLDER: the bundle is written there")
    if wanted.replace_personal and wanted.out is None:
        parser.error("--replace-personal needs --out FOLDER: it is for what is written there")
    from core.bundle.beside import told_together
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
    if wanted.json:
        from core.json_answer import compared, dumps
        from core.wording import each_once

        warnings = each_once((*gathered.problems, *comparison.problems))
        say(dumps(compared(comparison, gathered.study, warnings)))
    else:
        say(harmless(_answer(gathered, comparison)))
    tell(told_together(gathered.problems), errors_only=wanted.json)
    checked = gathered.held_against_bundle(comparison)
    tell([checked] if checked is not None else [])
    status = _status(gathered.problems)
    if wanted.out is not None:
        from core.command_line.answer_files import Wish, write

        wish = Wish(wanted.style, wanted.bundle, wanted.replace_personal)
        written = write(gathered, gathered.study, wanted.out, painter, wish, say=message)
        status = status if written else UNREADABLE
    return status


def _answer(gathered: "Gathered", comparison: "Comparison") -> str:
    """The comparison, or why there is none: what is wrong with the only file, a bundle without its logs."""
    is_missing = any(p.code == "bundle.log_missing" for p in gathered.problems)
    if is_missing and not gathered.traces and not gathered.study.typed:
        return tr("Nothing can be checked yet: none of the bundle's logs is there.")
    from core.wording import placed

    wrong = next((p for p in gathered.problems if p.severity is Severity.ERROR), None)
    if wrong is not None and not comparison.machines:
        return tr("Nothing could be compared: {what}", what=placed(wrong))
    return comparison_text(comparison)


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
