"""What the pool does for logs whose files have changed since they were read. No Qt."""

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path

from attrs import evolve, frozen

from core import edits
from core.activity import Activity
from core.analysis import add_to_study, seen_together
from core.edits import Edit
from core.language import tr
from core.logs import find_files, join
from core.logs.growth import Added, added, known_start, read_added, shift_between
from core.logs.reading import Reading
from core.problems import Problem, Severity
from core.progress import Progress, part
from core.store.file import StudyFile
from core.store.sizes import kept_sizes
from core.study import Log, Source, Study
from core.traces import Trace
from gui.reading import FilesRead, LogData, found_in, read_files, read_kept

#: share of the progress strip that keeping the bytes takes; reading them takes the rest
_KEEPING = 0.3


@frozen
class GrownLog:
    """A log of the study and what is read from it now."""

    log: Log
    sources: tuple[Source, ...]
    data: LogData


@frozen
class GrownFile:
    """A file of the study as it is now: its digests before and now, and the logs it is in."""

    name: str
    before: str
    now: str
    logs: tuple[GrownLog, ...] = ()
    problems: tuple[Problem, ...] = ()
    continues: bool = True


def read_on(
    path: Path,
    digest: str,
    study: Study,
    file: StudyFile,
    progress: Progress,
    before: Mapping[str, LogData | None],
    *,
    anew: bool = False,
) -> GrownFile:
    """Read a file of the study on if it has grown; only from where it ended, if that gives the same.

    Parameters
    ----------
    path : Path
    digest : str
        What was read from it.
    study : Study
    file : StudyFile
        Where the bytes are kept.
    progress : Progress
    before : mapping of log id to LogData
        What was known of the logs of the study.
    anew : bool
        Take the file even if it no longer begins with what was read from it.
    """
    name = path.name
    logs = [log for log in study.logs if any(s.digest == digest for s in log.sources)]
    progress(0.0, tr("reading {name} on", name=name))
    try:
        more = added(path, digest, kept_sizes(file.path).get(digest, 0), part(progress, 0.0, _KEEPING))
        if more is None and not anew:
            otherwise = Problem("session.changed_otherwise", Severity.CAUTION, name)
            return GrownFile(name, digest, digest, problems=(otherwise,), continues=False)
        if more is not None and not more.fresh:
            return GrownFile(name, digest, digest)
        if more is None:
            now = file.add_blob(path.read_bytes(), part(progress, 0.0, _KEEPING))
        else:
            now = file.grow_blob(digest, more.fresh, more.digest)
    except OSError as error:
        gone = Problem("session.gone", Severity.ERROR, name, facts={"why": error.strerror or str(error)})
        return GrownFile(name, digest, digest, problems=(gone,))
    if isinstance(now, Problem):
        return GrownFile(name, digest, digest, problems=(evolve(now, file=name),))
    continues = more is not None
    looking = part(progress, _KEEPING, _KEEPING)
    continued = None if more is None else _continued_readings(path, more, digest, logs, before, looking)
    read: list[GrownLog] = []
    for i, log in enumerate(logs):
        here = part(progress, _KEEPING + (1 - _KEEPING) * i / len(logs), 1.0)
        sources = tuple(
            evolve(s, digest=now, file_name=name) if s.digest == digest else s for s in log.sources
        )
        data_now = None if continued is None else _with_more(log, digest, continued, before.get(log.id), here)
        if data_now is None:
            data_now = read_kept(evolve(log, sources=sources), file.blob, here)
        if data_now.trace is None or len(data_now.readings) < len(sources):
            facts = {"machine": study.machine(log.machine_id).name}
            lost = Problem("session.not_in_file", Severity.ERROR, name, facts=facts)
            return GrownFile(name, digest, digest, problems=(lost,), continues=continues)
        read.append(GrownLog(log, sources, data_now))
    return GrownFile(name, digest, now, tuple(read), continues=continues)


def _continued_readings(
    path: Path,
    more: Added,
    digest: str,
    logs: Sequence[Log],
    before: Mapping[str, LogData | None],
    progress: Progress,
) -> dict[str | None, Reading] | None:
    """The readings of a grown file by device, from its added rows alone; None where it must be read whole."""
    known: dict[str | None, Reading] = {}
    choices = {s.choices for log in logs for s in log.sources if s.digest == digest}
    for log in logs:
        data = before.get(log.id)
        if data is None or len(data.readings) != len(log.sources):
            return None
        known |= {s.device: r for s, r in zip(log.sources, data.readings, strict=True) if s.digest == digest}
    if len(choices) != 1:
        return None
    found = read_added(path, more, tuple(known.values()), choices.pop(), progress)
    return None if found is None else {r.device: r for r in found}


def _with_more(
    log: Log,
    digest: str,
    continued: Mapping[str | None, Reading],
    before: LogData | None,
    progress: Progress,
) -> LogData | None:
    """A log with the new readings of one of its files."""
    if before is None:
        return None
    readings = tuple(
        continued[s.device] if s.digest == digest else r
        for s, r in zip(log.sources, before.readings, strict=True)
    )
    trace = join(readings) if len(readings) > 1 else readings[0].trace
    if trace is None:
        return None
    progress(0.0, tr("finding runs in {name}", name=log.sources[0].file_name))
    return LogData(trace, readings, found_in(trace, progress), before.problems)


@frozen(eq=False)
class Basis:
    """The study that logs are added to, what is known of its own logs, and what comes after adding them."""

    study: Study
    read: Mapping[str, LogData | None]
    finish: Callable[[Study], Study] | None = None

    def adding(self, new: FilesRead) -> Edit | None:
        """The edit that adds logs; None where all are in the study already."""
        logs = [log for log, _ in new.logs if not edits.is_imported(self.study, log.sources)]
        if not logs:
            return None
        known = {log_id: data for log_id, data in self.read.items() if data is not None}
        activities = {i: data.activity for i, data in known.items() if data.activity is not None}
        traces = {i: data.trace for i, data in known.items() if data.trace is not None}
        edit = add_to_study(self.study, logs, activities, traces)
        return edit if self.finish is None else evolve(edit, study=self.finish(edit.study))


@frozen
class TakenIn:
    """What dropped files hold: logs of their own, and more of logs that are in the study.

    ``edit`` adds the new ones to the study as it was when reading began.
    """

    new: FilesRead
    grown: tuple[tuple[Path, GrownFile], ...] = ()
    edit: Edit | None = None


def take_in(paths: Sequence[Path], basis: Basis, file: StudyFile, progress: Progress) -> TakenIn:
    """Read files and folders, telling logs of the study that have grown from new ones."""
    study = basis.study
    places, problems = find_files(paths)
    begun = _continued(places, study, file, progress)
    if not begun:
        new = read_files(paths, file, progress)
        return TakenIn(new, edit=basis.adding(new))
    grown = []
    for i, (path, digest) in enumerate(begun.items()):
        here = part(progress, i / len(begun), (i + 1) / len(begun))
        grown.append((path, read_on(path, digest, study, file, here, basis.read)))
    rest = [path for path, _ in places if path not in begun]
    new = read_files(rest, file, progress) if rest else FilesRead((), ())
    told = evolve(new, problems=(*problems, *new.problems))
    return TakenIn(told, tuple(grown), basis.adding(new))


def _continued(
    places: Sequence[tuple[Path, str]], study: Study, file: StudyFile, progress: Progress
) -> dict[Path, str]:
    """Files that begin with what was read of another log of the study, by the digest of that.

    A file whose own bytes are in the study is not among them.
    """
    used = {source.digest for log in study.logs for source in log.sources}
    known = {digest: size for digest, size in kept_sizes(file.path).items() if digest in used}
    found: dict[Path, str] = {}
    if not known:
        return found
    for i, (path, shown) in enumerate(places):
        progress(i / len(places), tr("looking into {name}", name=shown))
        try:
            size = path.stat().st_size
            shorter = {digest: length for digest, length in known.items() if length < size}
            start = known_start(path.read_bytes(), shorter) if shorter else None
        except OSError:
            continue  # told when it is read
        if start is not None:
            found[path] = start
    return found


def growth_edit(study: Study, grown: GrownFile, before: Mapping[str, LogData | None]) -> Edit:
    """The edit that takes a file as it is now into the study.

    Parameters
    ----------
    study : Study
    grown : GrownFile
    before : mapping of log id to LogData
        What was known of every log of the study.
    """
    label, activities = "", dict[str, Activity]()
    for log_id, data in before.items():
        if data is not None and data.activity is not None:
            activities[log_id] = data.activity
    for one in grown.logs:
        old = before.get(one.log.id)
        shift_s = _shift_s(None if old is None else old.trace, one.data.trace)
        edit = edits.read_again(study, one.log.id, one.sources, one.data.runs, shift_s)
        study, label = edit.study, edit.label
        if one.data.activity is not None:
            activities[one.log.id] = one.data.activity
    # readings of one growing file that follow each other are one step of the history
    return Edit(seen_together(study, activities), label, f"grown {grown.name}")


def told(grown: GrownFile, before: Mapping[str, LogData | None]) -> tuple[Problem, ...]:
    """What is worth saying about a file that was read on."""
    if not grown.logs:
        return grown.problems
    if not grown.continues:
        return (Problem("session.read_anew", Severity.NOTE, grown.name),)
    rows = 0
    for one in grown.logs:
        old = before.get(one.log.id)
        rows += _rows(one.data) - (0 if old is None else _rows(old))
    return (Problem("session.grown", Severity.NOTE, grown.name, facts={"rows": rows}),)


def _shift_s(old: Trace | None, new: Trace | None) -> float:
    return 0.0 if old is None or new is None else shift_between(old, new)


def _rows(data: LogData) -> int:
    return sum(reading.rows_read for reading in data.readings)
