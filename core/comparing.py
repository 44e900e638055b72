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
from core.bundle.beside import read_logs
from core.bundle.claims import held_against
from core.bundle.log_bytes import of_file, of_study_file
from core.bundle.reading import Bundle, is_bundle, open_bundle
from core.logs import FileReading, Reading
from core.problems import Problem, Severity
from core.results.compare import compare
from core.results.values import Comparison
from core.run_sheet import add_sheet, logged_runs
from core.study import Boundary, Study
from core.traces import Trace

if TYPE_CHECKING:
    from core.store.file import StudyFile

STUDY_SUFFIX = ".samepart"
#: a study, the traces and the readings of its logs, and what was wrong
OpenedStudy = tuple[Study, dict[str, Trace], dict[str, tuple[Reading, ...]], tuple[Problem, ...]]


@frozen
class Gathered:
    """A study made or opened, the traces of its logs, and what stood in the way.

    ``readings`` is by log id; ``bundle`` or ``study_path`` is where the study came from, if from one.
    """

    study: Study
    traces: Mapping[str, Trace]
    activities: Mapping[str, Activity]
    files: tuple[FileReading, ...]
    problems: tuple[Problem, ...]
    readings: Mapping[str, tuple[Reading, ...]] = {}
    bundle: Bundle | None = None
    study_path: Path | None = None

    def comparison(self) -> Comparison:
        """The comparison of the study's machines."""
        return self.comparison_of(self.study)

    def comparison_of(self, study: Study) -> Comparison:
        """The comparison of the same logs in an edited study."""
        return compare(study, self.traces, self.activities)

    def held_against_bundle(self, comparison: Comparison) -> Problem | None:
        """Whether the figures are those of the bundle that was read; None where something else was asked."""
        if self.bundle is None or self.study != self.bundle.study:
            return None
        missing = sum(p.code == "bundle.log_missing" for p in self.problems)
        return held_against(self.bundle.manifest, self.bundle.claimed, comparison, self.study, missing)

    def log_bytes(self, digest: str) -> bytes | Problem:
        """The raw bytes of a log, from where they were read."""
        found = None if self.bundle is None else self.bundle.log(digest)
        if found is not None:
            return found
        place = next((file.file for file in self.files if file.digest == digest), None)
        if place is not None:
            return of_file(Path(place), digest)
        if self.study_path is not None:
            return of_study_file(self.study_path, digest)
        return Problem("store.blob_missing", Severity.ERROR, facts={"digest": digest[:12]})


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
        Logs, folders, filled run sheets, at most one study; or one bundle, and folders with the logs of which
        it holds only the SHA-256: a bundle is checked, never added to.
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
    bundles = [p for p in paths if is_bundle(p)]
    if bundles:
        others = [p for p in paths if p not in bundles]
        return _from_bundle(bundles, others, run_sheet, boundary, start or Study(id="s1"))
    problems: list[Problem] = []
    study = start or Study(id="s1")
    traces: dict[str, Trace] = {}
    readings: dict[str, tuple[Reading, ...]] = {}
    studies = [p for p in paths if p.suffix == STUDY_SUFFIX and not p.is_dir()]
    if studies:
        study, traces, readings, told = open_study(studies[0], study)
        problems += told
        problems += (
            Problem("analysis.one_study", Severity.ERROR, str(studies[0]), facts={"other": str(p)})
            for p in studies[1:]
        )
    found = find_logs([p for p in paths if p not in studies], executor=executor, analyse=analyse)
    problems += found.problems
    study = add_to_study(study, found.logs).study
    logs = by_log(study, found.logs)
    for sheet in found.sheets:
        study, told = add_sheet(study, sheet, logged_runs(study, {**traces, **_traces(logs)}))
        problems += told
    study, told = _as_wished(study, {**traces, **_traces(logs)}, run_sheet, boundary)
    problems += told
    problems += (p for log in found.logs for r in log.readings for p in r.problems)
    return Gathered(
        study=study,
        traces={**traces, **_traces(logs)},
        activities={log_id: log.activity for log_id, log in logs.items()},
        files=found.files,
        problems=tuple(dict.fromkeys(problems)),
        readings={**readings, **{log_id: log.readings for log_id, log in logs.items()}},
        study_path=studies[0] if studies else None,
    )


def _from_bundle(
    bundles: Sequence[Path],
    beside: Sequence[Path],
    run_sheet: Path | None,
    boundary: Boundary | None,
    otherwise: Study,
) -> Gathered:
    """The study of the first bundle with its logs."""
    path, *more = bundles
    facts = ({"other": str(other)} for other in more)
    problems = [Problem("bundle.one_only", Severity.ERROR, str(path), facts=f) for f in facts]
    opened = open_bundle(path)
    if isinstance(opened, Problem):
        return Gathered(otherwise, {}, {}, (), (opened, *problems))
    found = read_logs(opened, beside)
    study, told = _as_wished(opened.study, found.traces, run_sheet, boundary)
    return Gathered(
        study=study,
        traces=found.traces,
        activities={},
        files=(),
        problems=(*found.problems, *problems, *told),
        readings=found.readings,
        bundle=opened,
    )


def _as_wished(
    study: Study, traces: Mapping[str, Trace], run_sheet: Path | None, boundary: Boundary | None
) -> tuple[Study, tuple[Problem, ...]]:
    """The study with what was said on the command line."""
    told: Sequence[Problem] = ()
    if run_sheet is not None:
        study, told = add_sheet(study, run_sheet, logged_runs(study, traces))
    if boundary is not None:
        study = edits.set_boundary(study, boundary).study
    return study, tuple(told)


def _traces(logs: Mapping[str, FoundLog]) -> dict[str, Trace]:
    return {log_id: log.trace for log_id, log in logs.items()}


def open_study(path: Path, otherwise: Study) -> OpenedStudy:
    """A study file's present study, its logs as read, and problems; `otherwise` when it cannot be opened.

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
            return otherwise, {}, {}, (Problem("study.unreadable", Severity.ERROR, str(path), facts=facts),)
        opened = StudyFile.open(copy)
        if isinstance(opened, Problem):
            return otherwise, {}, {}, (evolve(opened, file=str(path)),)
        with opened:
            study = opened.history.study
            return (study, *_read_of(study, opened))


def _read_of(
    study: Study, file: "StudyFile"
) -> tuple[dict[str, Trace], dict[str, tuple[Reading, ...]], tuple[Problem, ...]]:
    """A study's logs from the bytes that it keeps: traces, readings, and what could not be read."""
    traces: dict[str, Trace] = {}
    readings: dict[str, tuple[Reading, ...]] = {}
    problems: list[Problem] = []

    def bytes_of(digest: str) -> bytes:
        data = file.blob(digest)
        if isinstance(data, Problem):
            problems.append(data)
            raise KeyError(digest)
        return data

    for log in study.logs:
        trace, readings[log.id], told = read_log(log, bytes_of)
        problems += told
        if trace is not None:
            traces[log.id] = trace
    return traces, readings, tuple(problems)
