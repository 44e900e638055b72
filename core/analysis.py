"""Files -> readings -> logs with what happened in them -> study.

Theory of operation: reading a file and finding the runs in it is a pure function of that file
(`analyse_file`), so any `concurrent.futures.Executor` can map it; only what needs several logs together is
done afterwards: joining files that continue each other, and the second look at the runs of all machines.
"""

from collections import Counter, defaultdict
from collections.abc import Callable, Collection, Mapping, Sequence
from concurrent.futures import Executor, Future, as_completed
from pathlib import Path, PurePath

from attrs import evolve, frozen

from core import edits
from core.activity import Activity, find, second_look
from core.logs import (
    FileReading,
    Reading,
    find_files,
    join,
    join_readings,
    joined_problem,
    read_bytes,
    read_path,
)
from core.owners import free_name, owner
from core.parcels import Parcel, packed, unpacked
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.run_sheet import is_run_sheet
from core.study import Log, Meter, Source, Study
from core.traces import Trace


@frozen
class FileAnalysis:
    """A file as it was read, and what was found in each of its machines' traces."""

    reading: FileReading
    activities: tuple[Activity | None, ...] = ()


@frozen
class FoundLog:
    """The log of one machine, from one file or from several that continue each other."""

    machine_name: str
    sources: tuple[Source, ...]
    readings: tuple[Reading, ...]
    trace: Trace
    activity: Activity

    @property
    def runs(self) -> tuple[edits.FoundRun, ...]:
        """The stretches as the study takes them."""
        return found_runs(self.activity)


@frozen
class Found:
    """What a set of paths holds: logs, every file as it was read, what stood in the way, and run sheets."""

    logs: tuple[FoundLog, ...]
    files: tuple[FileReading, ...]
    problems: tuple[Problem, ...]
    sheets: tuple[Path, ...] = ()

    @property
    def is_complete(self) -> bool:
        """Whether every file could be read."""
        return not any(p.severity is Severity.ERROR for p in self.problems)


def found_runs(activity: Activity) -> tuple[edits.FoundRun, ...]:
    """The stretches of a log as the study takes them."""
    return tuple(edits.FoundRun(s.start_s, s.end_s, s.kind, s.part, s.why) for s in activity.stretches)


Analyse = Callable[[Path, str], FileAnalysis]


def analyse_file(path: Path, shown_name: str) -> FileAnalysis:
    """Read one file and find the runs of every machine in it: pure, and fit for another process.

    Parameters
    ----------
    path : Path
    shown_name : str
        The file as the user named it.
    """
    reading = read_path(path, shown_name=shown_name)
    activities = tuple(None if r.trace is None else find(r.trace) for r in reading.readings)
    return FileAnalysis(reading, activities)


def find_logs(
    paths: Sequence[Path],
    progress: Progress = silent,
    *,
    executor: Executor | None = None,
    analyse: Analyse = analyse_file,
) -> Found:
    """Read files and folders, and find the runs in them; run sheets among them are told, not read as logs.

    Parameters
    ----------
    paths : sequence of Path
        Files, and folders that are walked.
    progress : Progress
        May raise `Cancelled`.
    executor : Executor, optional
        Where to analyse the files; without one, here and now.
    analyse : callable
        What is done with each file.

    Returns
    -------
    Found
    """
    places, problems = find_files(paths)
    sheets = tuple(path for path, _ in places if is_run_sheet(path))
    files = [place for place in places if place[0] not in sheets]
    analyses = _analysed(files, progress, executor, analyse)
    once, repeated = _each_once(analyses)
    logs = found_logs(once)
    told = tuple(p for a in analyses for p in a.reading.problems)
    joined = tuple(p for log in logs if (p := joined_problem(log.readings)) is not None)
    return Found(logs, tuple(a.reading for a in analyses), (*problems, *told, *repeated, *joined), sheets)


def _each_once(analyses: Sequence[FileAnalysis]) -> tuple[list[FileAnalysis], list[Problem]]:
    """The files without those named twice or copied: the same bytes count once."""
    first: dict[str, str] = {}
    kept, told = [], []
    for analysis in analyses:
        file, digest = analysis.reading.file, analysis.reading.digest
        if not digest or digest not in first:
            first[digest] = file
            kept.append(analysis)
            continue
        code = "analysis.named_twice" if file == first[digest] else "analysis.same_bytes"
        told.append(Problem(code, Severity.CAUTION, file, facts={"other": first[digest]}))
    return kept, told


def _analysed(
    files: Sequence[tuple[Path, str]], progress: Progress, executor: Executor | None, analyse: Analyse
) -> list[FileAnalysis]:
    if executor is None:
        analyses = []
        for i, (path, shown) in enumerate(files):
            progress(i / len(files), shown)
            analyses.append(analyse(path, shown))
        return analyses
    # whoever reads the file may have another working folder
    futures: dict[Future[_Sent], str] = {
        executor.submit(_sent, analyse, path.absolute(), shown): shown for path, shown in files
    }
    try:
        for i, done in enumerate(as_completed(futures), start=1):
            progress(i / len(futures), futures[done])
        return [_received(future.result()) for future in futures]
    finally:
        for future in futures:
            future.cancel()


@frozen
class _Sent:
    """The analysis of a file on its way to another process: its traces are packed beside it."""

    analysis: FileAnalysis
    parcels: tuple[Parcel | None, ...]


def _sent(analyse: Analyse, path: Path, shown: str) -> _Sent:
    """Analyse a file where it lies, and pack what was found."""
    analysis = analyse(path, shown)
    readings = analysis.reading.readings
    bare = tuple(evolve(r, trace=None) for r in readings)
    return _Sent(
        evolve(analysis, reading=evolve(analysis.reading, readings=bare)),
        tuple(None if r.trace is None else packed(r.trace) for r in readings),
    )


def _received(sent: _Sent) -> FileAnalysis:
    reading = sent.analysis.reading
    whole = tuple(
        r if parcel is None else evolve(r, trace=unpacked(parcel))
        for r, parcel in zip(reading.readings, sent.parcels, strict=True)
    )
    return evolve(sent.analysis, reading=evolve(reading, readings=whole))


def found_logs(analyses: Sequence[FileAnalysis]) -> tuple[FoundLog, ...]:
    """The logs in analysed files: those that continue each other joined, the runs of all seen together."""
    origin: dict[int, tuple[FileReading, Activity]] = {}
    readings: list[Reading] = []
    for analysis in analyses:
        for reading, activity in zip(analysis.reading.readings, analysis.activities, strict=True):
            if reading.trace is not None and activity is not None:
                origin[id(reading)] = (analysis.reading, activity)
                readings.append(reading)
    logs: list[FoundLog] = []
    for group in join_readings(readings):
        alone = group[0]
        joined = join(group) if len(group) > 1 else alone.trace
        if joined is None:
            continue
        logs.append(
            FoundLog(
                machine_name=alone.machine,
                sources=tuple(Source(origin[id(r)][0].digest, r.file, r.device, r.choices) for r in group),
                readings=tuple(group),
                trace=joined,
                activity=find(joined) if len(group) > 1 else origin[id(alone)][1],
            )
        )
    named = _named_apart(logs)
    # a machine's own logs settle its runs first, then the other machines what is left open
    settled = second_look([log.activity for log in named], [log.machine_name for log in named])
    return tuple(evolve(log, activity=a) for log, a in zip(named, settled, strict=True))


def _named_apart(logs: Sequence[FoundLog]) -> tuple[FoundLog, ...]:
    """Files of one name in different folders are different machines, unless the logs name the device."""
    names = Counter(log.machine_name for log in logs if not _is_named(log))
    named: list[FoundLog] = []
    taken: set[str] = set()
    for log in logs:
        name = log.machine_name
        if not _is_named(log) and names[name] > 1:
            folder = PurePath(log.readings[0].file).parent.name
            name = f"{folder}/{name}" if folder else name
            n, first = 2, name
            while name in taken:
                name, n = f"{first} {n}", n + 1
        taken.add(name)
        named.append(evolve(log, machine_name=name))
    return tuple(named)


def _is_named(log: FoundLog) -> bool:
    return log.readings[0].device is not None and log.readings[0].is_named


def add_to_study(
    study: Study,
    logs: Sequence[FoundLog],
    known: Mapping[str, Activity] | None = None,
    traces: Mapping[str, Trace] | None = None,
) -> edits.Edit:
    """Put found logs into a study.

    Parameters
    ----------
    study : Study
    logs : sequence of FoundLog
    known : mapping of log id to Activity, optional
        What was found in logs that the study has already. With it, old and new logs settle together which
        runs are of the part, as if all had been added at once; what the user decided stays.
    traces : mapping of log id to Trace, optional
        Of logs that the study has already: they help to tell machines of one name apart.
    """
    before = {log.id for log in study.logs}
    after = _with_meters(_with_logs(study, logs, traces or {}), before)
    after = _without_idle_meters(after, study.meters)
    if known:
        fresh = {log_id: log.activity for log_id, log in by_log(after, logs).items()}
        after = seen_together(after, {**known, **fresh})
    return edits.Edit(after, edits.import_label(len(after.logs) - len(before)))


def _with_logs(study: Study, logs: Sequence[FoundLog], traces: Mapping[str, Trace]) -> Study:
    """The study with each log at the machine it is of."""
    known = dict(traces)
    for log in logs:
        if edits.is_imported(study, log.sources):
            continue
        device = log.readings[0].device
        machine_id = owner(study, log.machine_name, device, log.trace, known)
        name = log.machine_name if machine_id is not None else free_name(study, log.machine_name)
        new = edits.NewLog(log.sources, name, log.runs, machine_id)
        study = edits.import_logs(study, [new]).study
        known[study.logs[-1].id] = log.trace
    return study


def seen_together(study: Study, activities: Mapping[str, Activity]) -> Study:
    """The study with the runs of its logs found again in the light of all of them.

    Logs that are not among `activities`, or of a bed alone, stay as they are; what the user decided stays.
    """
    # what a bed alone draws says nothing of the lengths of runs
    logs = [log for log in study.logs if log.id in activities and not log.of_bed]
    settled = second_look([activities[log.id] for log in logs], [log.machine_id for log in logs])
    held: dict[str, set[edits.FoundRun]] = defaultdict(set)
    for run in study.runs:
        if run.found_start_s is not None and run.found_end_s is not None:
            held[run.log_id].add(
                edits.FoundRun(
                    run.found_start_s, run.found_end_s, run.found_kind, run.found_part, run.found_why
                )
            )
    for log, activity in zip(logs, settled, strict=True):
        runs = found_runs(activity)
        if set(runs) != held[log.id]:
            study = edits.find_again(study, log.id, runs).study
    return study


def _with_meters(study: Study, settled: Collection[str]) -> Study:
    """The study with a meter for every machine whose logs are new.

    Which meter wrote a log is not known until somebody says so. Taking two machines' logs for one meter's
    would make its error cancel in their ratio, and narrow the interval with nothing to show for it.
    """
    done = set(settled)
    for log in study.logs:
        if log.id in done:
            continue
        of_machine = [g.meter_id for g in study.logs_of(log.machine_id) if g.id in done]
        if of_machine:
            meter_id = of_machine[0]
        else:
            study, meter = edits.with_meter_of(study, study.machine(log.machine_id))
            meter_id = meter.id
        study = edits.assign_meter(study, log.id, meter_id).study
        done.add(log.id)
    return study


def _without_idle_meters(study: Study, kept: Collection[Meter]) -> Study:
    """The study without meters that nothing was measured with, except those in `kept`."""
    used = {log.meter_id for log in study.logs} | {typed.meter_id for typed in study.typed}
    for meter in study.meters:
        if meter.id not in used and meter not in kept:
            study = edits.remove_meter(study, meter.id).study
    return study


def by_log(study: Study, logs: Sequence[FoundLog]) -> dict[str, FoundLog]:
    """The found logs by the identifier they have in the study."""
    known = {_identity(log.sources): log for log in logs}
    return {log.id: known[_identity(log.sources)] for log in study.logs if _identity(log.sources) in known}


def _identity(sources: Sequence[Source]) -> tuple[tuple[str, str | None], ...]:
    return tuple((s.digest, s.device) for s in sources)


def read_log(
    log: Log, blob: Callable[[str], bytes], progress: Progress = silent
) -> tuple[Trace | None, tuple[Reading, ...], tuple[Problem, ...]]:
    """Read a log of a study again from its kept bytes.

    Parameters
    ----------
    log : Log
    blob : callable
        Bytes of a digest. Raises `KeyError` where they are not to be had; that file is passed over, and the
        caller knows why.
    progress : Progress
        May raise `Cancelled`.

    Returns
    -------
    trace, readings, problems
        The trace is None when nothing of the log could be read.
    """
    readings: list[Reading] = []
    problems: list[Problem] = []
    for i, source in enumerate(log.sources):
        try:
            data = blob(source.digest)
        except KeyError:
            continue
        here = part(progress, i / len(log.sources), (i + 1) / len(log.sources))
        read = read_bytes(data, source.file_name, source.choices, here)
        problems += read.problems
        readings += (r for r in read.readings if r.device == source.device and r.trace is not None)
    if not readings:
        return None, (), tuple(problems)
    trace = join(tuple(readings)) if len(readings) > 1 else readings[0].trace
    return trace, tuple(readings), tuple(problems)
