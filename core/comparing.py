"""From the paths of a command line to one study with its traces: logs, folders, a study, a run sheet."""

import shutil
import tempfile
from collections.abc import Mapping, Sequence
from concurrent.futures import Executor
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import evolve, frozen

from core import edits
from core.activity import Activity
from core.analysis import Analyse, FoundLog, add_to_study, analyse_file, by_log, find_logs, read_log
from core.logs import FileReading
from core.problems import Problem, Severity
from core.results.compare import compare
from core.results.values import Comparison
from core.run_sheet import add_sheet, logged_runs
from core.study import Boundary, Study
from core.traces import Trace

if TYPE_CHECKING:
    from core.store.file import StudyFile

STUDY_SUFFIX = ".samepart"


@frozen
class Gathered:
    """A study made or opened, the traces of its logs, and what stood in the way."""

    study: Study
    traces: Mapping[str, Trace]
    activities: Mapping[str, Activity]
    files: tuple[FileReading, ...]
    problems: tuple[Problem, ...]

    def comparison(self) -> Comparison:
        """The comparison of the study's machines."""
        return self.comparison_of(self.study)

    def comparison_of(self, study: Study) -> Comparison:
        """The comparison of the same logs in an edited study."""
        return compare(study, self.traces, self.activities)


def gather(
    paths: Sequence[Path],
    run_sheet: Path | None = None,
    boundary: Boundary | None = None,
    *,
    start: Study | None = None,
    executor: Executor | None = None,
    analyse: Analyse = analyse_file,
) -> Gathered:
    """Read everything that was named.

    Parameters
    ----------
    paths : sequence of Path
        Logs, folders, at most one study.
    run_sheet : Path, optional
        A filled run sheet.
    boundary : Boundary, optional
        Instead of the study's own.
    start : Study, optional
        What the logs are put into; an empty study if nothing else is said.
    executor : Executor, optional
        Where to analyse the logs.
    analyse : callable
        What is done with each log.
    """
    problems: list[Problem] = []
    study = start or Study(id="s1")
    traces: dict[str, Trace] = {}
    studies = [p for p in paths if p.suffix == STUDY_SUFFIX and not p.is_dir()]
    if studies:
        study, traces, told = open_study(studies[0], study)
        problems += told
        problems += (
            Problem("analysis.one_study", Severity.ERROR, str(studies[0]), facts={"other": str(p)})
            for p in studies[1:]
        )
    found = find_logs([p for p in paths if p not in studies], executor=executor, analyse=analyse)
    problems += found.problems
    problems += _same_bytes(found.files)
    study = add_to_study(study, found.logs).study
    logs = by_log(study, found.logs)
    if run_sheet is not None:
        study, told = add_sheet(study, run_sheet, logged_runs(study, {**traces, **_traces(logs)}))
        problems += told
    if boundary is not None:
        study = edits.set_boundary(study, boundary).study
    problems += (p for log in found.logs for r in log.readings for p in r.problems)
    return Gathered(
        study=study,
        traces={**traces, **_traces(logs)},
        activities={log_id: log.activity for log_id, log in logs.items()},
        files=found.files,
        problems=tuple(dict.fromkeys(problems)),
    )


def _traces(logs: Mapping[str, FoundLog]) -> dict[str, Trace]:
    return {log_id: log.trace for log_id, log in logs.items()}


def _same_bytes(files: Sequence[FileReading]) -> list[Problem]:
    """A file named twice, or copied, counts once."""
    first: dict[str, str] = {}
    told = []
    for file in files:
        if file.digest and file.digest in first:
            facts = {"other": first[file.digest]}
            told.append(Problem("analysis.same_bytes", Severity.CAUTION, file.file, facts=facts))
        first.setdefault(file.digest, file.file)
    return told


def open_study(path: Path, otherwise: Study) -> tuple[Study, dict[str, Trace], tuple[Problem, ...]]:
    """A study file's present study and the traces of its logs; `otherwise` when it cannot be opened.

    A copy is opened, so that nothing about the file changes: opening may migrate it, and takes a lock.
    """
    from core.store.file import StudyFile

    with tempfile.TemporaryDirectory(prefix="samepart-") as folder:
        copy = Path(folder) / path.name
        try:
            shutil.copyfile(path, copy)
            journal = path.with_name(path.name + "-journal")
            if journal.exists():
                shutil.copyfile(journal, copy.with_name(journal.name))
        except OSError as error:
            facts = {"why": error.strerror or str(error)}
            return otherwise, {}, (Problem("study.unreadable", Severity.ERROR, str(path), facts=facts),)
        opened = StudyFile.open(copy)
        if isinstance(opened, Problem):
            return otherwise, {}, (evolve(opened, file=str(path)),)
        with opened:
            study = opened.history.study
            traces, problems = _traces_of(study, opened)
            return study, traces, problems


def _traces_of(study: Study, file: "StudyFile") -> tuple[dict[str, Trace], tuple[Problem, ...]]:
    """The traces of a study's logs from the bytes that it keeps, and what could not be read."""
    traces: dict[str, Trace] = {}
    problems: list[Problem] = []

    def bytes_of(digest: str) -> bytes:
        data = file.blob(digest)
        if isinstance(data, Problem):
            problems.append(data)
            raise KeyError(digest)
        return data

    for log in study.logs:
        trace, _, told = read_log(log, bytes_of)
        problems += told
        if trace is not None:
            traces[log.id] = trace
    return traces, tuple(problems)
