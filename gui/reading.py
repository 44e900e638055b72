"""What the pool does for the session: files into logs, logs of a study into traces. No Qt."""

from collections.abc import Callable, Sequence
from pathlib import Path, PurePath

from attrs import evolve, field, frozen

from core import edits
from core.activity import Activity, find
from core.analysis import FileAnalysis, FoundLog, find_logs, read_log
from core.figures.envelope import envelope
from core.language import tr
from core.logs import find_files, read_path
from core.logs.reading import Reading
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.store.file import StudyFile
from core.study import Choices, Log
from core.traces import Trace

#: share of the progress strip that reading takes; keeping the bytes takes the rest
_READING = 0.8
#: and of reading, what comes before the runs are looked for
_LOOKING = 0.6


@frozen
class LogData:
    """A log as it was read: its trace, how it came about, and what was found in it."""

    trace: Trace | None = field(default=None, eq=False)
    readings: tuple[Reading, ...] = field(default=(), eq=False, repr=False)
    activity: Activity | None = field(default=None, eq=False, repr=False)
    problems: tuple[Problem, ...] = ()

    @property
    def runs(self) -> tuple[edits.FoundRun, ...]:
        """The stretches as the study takes them."""
        stretches = self.activity.stretches if self.activity else ()
        return tuple(edits.FoundRun(s.start_s, s.end_s, s.kind, s.part, s.why) for s in stretches)


@frozen
class FilesRead:
    """Logs found in files and kept in the study file, what stood in the way, and run sheets beside them."""

    logs: tuple[tuple[FoundLog, LogData], ...]
    problems: tuple[Problem, ...]
    places: tuple[tuple[str, Path], ...] = ()  # digest of the bytes, and where they were read
    sheets: tuple[Path, ...] = ()


def read_files(paths: Sequence[Path], file: StudyFile, progress: Progress) -> FilesRead:
    """Read files and folders, find the runs in them, and keep their bytes in the study file."""
    progress(0.0, tr("looking for logs"))
    places = {shown: path for path, shown in find_files(paths)[0]}
    done = 0

    def analyse(path: Path, shown: str) -> FileAnalysis:
        nonlocal done
        count = max(len(places), 1)
        here = part(progress, _READING * done / count, _READING * (done + 1) / count)
        here(0.0, tr("reading {name}", name=shown))
        reading = read_path(path, shown_name=shown, progress=part(here, 0.0, _LOOKING))
        done += 1
        looking = _saying(part(here, _LOOKING, 1.0), tr("finding runs in {name}", name=shown))
        activities = tuple(None if r.trace is None else found_in(r.trace, looking) for r in reading.readings)
        return FileAnalysis(reading, activities)

    found = find_logs(paths, analyse=analyse)
    problems = list(found.problems)
    kept: set[str] = set()
    for i, reading in enumerate(found.files):
        if not reading.readings:
            continue
        here = part(progress, _READING + (1 - _READING) * i / len(found.files), 1.0)
        problem = _keep(places[reading.file], reading.file, reading.digest, file, here)
        if problem is None:
            kept.add(reading.digest)
        else:
            problems.append(problem)
    logs = tuple(
        (_named(log), LogData(log.trace, log.readings, log.activity))
        for log in found.logs
        if all(source.digest in kept for source in log.sources)
    )
    where = tuple((f.digest, places[f.file]) for f in found.files if f.digest in kept)
    return FilesRead(logs, tuple(problems), where, found.sheets)


def found_in(trace: Trace, progress: Progress = silent) -> Activity:
    """What happened in a trace; what drawing it takes is loaded here, not in the window."""
    if trace.time_s.size > 1:
        envelope(trace, 0.0, trace.end_s, 1)
    return find(trace, progress)


def _saying(progress: Progress, text: str) -> Progress:
    """A progress callable that always says the same."""

    def told(fraction: float, _: str) -> None:
        progress(fraction, text)

    return told


def read_logs(
    logs: Sequence[Log], blob: Callable[[str], bytes | Problem], progress: Progress
) -> tuple[tuple[Log, LogData], ...]:
    """Read logs of a study from the bytes it keeps."""
    read = []
    for i, log in enumerate(logs):
        here = part(progress, i / len(logs), (i + 1) / len(logs))
        here(0.0, tr("reading {name}", name=log.sources[0].file_name))
        read.append((log, read_kept(log, blob, here)))
    return tuple(read)


def read_with(
    log: Log, index: int, choices: Choices, blob: Callable[[str], bytes | Problem], progress: Progress
) -> LogData:
    """Read a log as it would be with other choices for one of its files."""
    progress(0.0, tr("reading {name} again", name=log.sources[index].file_name))
    sources = tuple(evolve(s, choices=choices) if i == index else s for i, s in enumerate(log.sources))
    return read_kept(evolve(log, sources=sources), blob, progress)


def read_kept(log: Log, blob: Callable[[str], bytes | Problem], progress: Progress) -> LogData:
    """Read a log of a study from the bytes it keeps, and find what happened in it."""
    refused: list[Problem] = []

    def bytes_of(digest: str) -> bytes:
        data = blob(digest)
        if isinstance(data, Problem):
            refused.append(data)
            raise KeyError(digest)
        return data

    trace, readings, problems = read_log(log, bytes_of, part(progress, 0.0, _LOOKING))
    looking = _saying(
        part(progress, _LOOKING, 1.0), tr("finding runs in {name}", name=log.sources[0].file_name)
    )
    activity = None if trace is None else found_in(trace, looking)
    return LogData(trace, readings, activity, (*refused, *problems))


def _keep(path: Path, shown: str, digest: str, file: StudyFile, progress: Progress) -> Problem | None:
    """Put a file's bytes into the study, if they are still those that were read."""
    try:
        data = path.read_bytes()
    except OSError as error:
        return Problem("session.gone", Severity.ERROR, shown, facts={"why": error.strerror or str(error)})
    added = file.add_blob(data, progress)
    if isinstance(added, Problem):
        return evolve(added, file=shown)
    return None if added == digest else Problem("session.changed_meanwhile", Severity.ERROR, shown)


def _named(log: FoundLog) -> FoundLog:
    """Files go by their names alone, and a machine named after one gets a capital, as a name has."""
    name = log.machine_name
    if log.readings and log.readings[0].device is None:
        name = name.replace("_", " ").strip() or name
        name = name[:1].upper() + name[1:]
    sources = tuple(evolve(source, file_name=PurePath(source.file_name).name) for source in log.sources)
    return evolve(log, machine_name=name, sources=sources)
