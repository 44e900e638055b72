"""Writing a bundle: the same study makes the same bytes, and it appears under its name only when complete.

Rule: everything but the report is English, whatever the window speaks.
"""

import hashlib
import json
import zipfile
import zlib
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import date
from pathlib import Path, PurePath
from typing import Final

from attrs import evolve, frozen

from core import __version__
from core.bundle.manifest import (
    FORMAT,
    LOGS,
    MANIFEST,
    RESULTS,
    STUDY,
    VERSION,
    FileEntry,
    LogEntry,
    Manifest,
    to_text,
)
from core.bundle.reading import FREE_BYTES, MOST_RATIO
from core.given_names import called_in_english
from core.json_answer import compared, dumps, inspected
from core.language import WRITTEN_IN, in_english, spoken, tr
from core.logs import Reading
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.publish.sources import Sources
from core.report.tables import study_tables
from core.results.compare import compare, forget
from core.store.copying import put_in_place, unfinished_path
from core.store.values import encode
from core.study import Study
from core.tables import to_csv

#: a zip knows no day before this; no file of a bundle has one of its own
_DAY: Final = (1980, 1, 1, 0, 0, 0)
_UNIX: Final = 3
_READABLE: Final = 0o644 << 16
_LEVEL: Final = 6
_BLOCK: Final = 1 << 22
#: characters that some disk or program takes for more than a name
_UNFIT: Final = frozenset('<>:"/\\|?*')
_LONGEST_NAME: Final = 100

_README: Final = """\
{study}
Bundle made with {program} on {made}.

To find every figure again:

    samepart compare {name}

{logs}

manifest.json lists every file with its SHA-256. They show that nothing was changed by accident or by
somebody who left the list alone; they do not prove who made the bundle.
"""
_LOGS_INSIDE: Final = "The raw logs are in logs/ as they were saved by the meters."
_LOGS_REPLACED: Final = "Personal data in the logs were replaced; the readings are those of the meters."
_LOGS_OUTSIDE: Final = """\
The raw logs are not inside, only their SHA-256. With the logs in a folder:

    samepart compare {name} FOLDER"""

#: the bytes of a log by its SHA-256, or why they cannot be had
LogBytes = Callable[[str], "bytes | Problem"]


@frozen(eq=False)
class Contents:
    """What goes into a bundle.

    Parameters
    ----------
    sources : Sources
        The study's results.
    made : date
    report : str
        The report as HTML; empty for none.
    log_bytes : callable
    with_logs : bool
        Whether the raw logs go in, or only their SHA-256.
    readings : mapping of log id to tuple of Reading
        How the logs were read.
    replaced : frozenset of str
        SHA-256 of logs in which personal data were replaced.
    notes : tuple of str
        What a reader must know.
    """

    sources: Sources
    made: date
    log_bytes: LogBytes
    report: str = ""
    with_logs: bool = True
    readings: Mapping[str, Sequence[Reading]] = {}
    replaced: frozenset[str] = frozenset()
    notes: tuple[str, ...] = ()

    def with_report(self, report: str) -> "Contents":
        """The same with another report."""
        return evolve(self, report=report)


def write_bundle(path: Path, contents: Contents, progress: Progress = silent) -> tuple[Problem, ...]:
    """Write a bundle, replacing what is at `path`.

    Parameters
    ----------
    path : Path
    contents : Contents
    progress : Progress
        May raise `Cancelled`; what was at `path` is then still there.

    Returns
    -------
    tuple of Problem
        Logs of which only the SHA-256 went in although more was wanted; or why nothing was written.
    """
    unfinished = unfinished_path(path)
    study = without_folders(called_in_english(contents.sources.study))
    try:
        with (
            _results_in_english(),
            zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED, compresslevel=_LEVEL) as archive,
        ):
            problems = _fill(archive, _for_others(contents, study), path.name, progress)
        put_in_place(unfinished, path)
    except OSError as error:
        facts = {"why": error.strerror or str(error)}
        return (Problem("bundle.not_written", Severity.ERROR, str(path), facts=facts),)
    finally:
        unfinished.unlink(missing_ok=True)
    return problems


def without_folders(study: Study) -> Study:
    """The study with its logs called by their file names alone: folders say whose computer it was."""
    logs = tuple(
        evolve(log, sources=tuple(evolve(s, file_name=_base_name(s.file_name)) for s in log.sources))
        for log in study.logs
    )
    return study if logs == study.logs else evolve(study, logs=logs)


@contextmanager
def _results_in_english() -> Iterator[None]:
    """English for what is computed and written; results are remembered with their words, so without those."""
    if spoken() == WRITTEN_IN:
        yield
        return
    forget()
    try:
        with in_english():
            yield
    finally:
        forget()


def _for_others(contents: Contents, study: Study) -> Contents:
    """The same with the results of a study that is told to others, in the language spoken now."""
    drawn = contents.sources.drawable
    comparison = compare(study, drawn.traces, drawn.activities)
    sources = Sources(evolve(drawn, study=study, comparison=comparison), contents.sources.year)
    return evolve(contents, sources=sources)


def _base_name(file_name: str) -> str:
    return PurePath(file_name.replace("\\", "/")).name or file_name


def _fill(archive: zipfile.ZipFile, contents: Contents, name: str, progress: Progress) -> tuple[Problem, ...]:
    logs, problems = _put_logs(archive, contents, part(progress, 0.1, 1.0))
    study = contents.sources.study
    files = [_put(archive, path, text.encode(), what) for path, text, what in _texts(contents, study)]
    manifest = Manifest(
        format=FORMAT,
        version=VERSION,
        program=f"Samepart {__version__}",
        made=contents.made.isoformat(),
        study=study.name,
        logs=tuple(logs),
        files=tuple(files),
        notes=contents.notes,
    )
    readme = _readme(manifest, name, contents)
    files.append(_put(archive, "README.txt", readme.encode(), "how to check the bundle"))
    listed = evolve(manifest, files=tuple(files))
    _put(archive, MANIFEST, to_text(listed).encode(), "this list")
    return tuple(problems)


def _texts(contents: Contents, study: Study) -> list[tuple[str, str, str]]:
    """Path, text and purpose of every file that is no log."""
    sources = contents.sources
    answer = compared(sources.comparison, study, ())
    texts = [
        (STUDY, json.dumps(encode(study, Study), indent=1) + "\n", "the study's own values"),
        (RESULTS, dumps(answer) + "\n", "the figures, as samepart compare --json prints them"),
    ]
    if contents.readings:
        read = [
            inspected(evolve(reading, file=_base_name(reading.file)))
            for log in study.logs
            for reading in contents.readings.get(log.id, ())
        ]
        texts.append(("readings.json", dumps(read) + "\n", "how each log was read"))
    texts += [(f"tables/{t.key}.csv", to_csv(t.data), t.title) for t in study_tables(sources)]
    if contents.report:
        texts.append(("report.html", contents.report, "the report"))
    return texts


def _put_logs(
    archive: zipfile.ZipFile, contents: Contents, progress: Progress
) -> tuple[list[LogEntry], list[Problem]]:
    entries: dict[str, LogEntry] = {}
    problems: list[Problem] = []
    names: set[str] = set()
    wanted = {s.digest: s for log in contents.sources.study.logs for s in log.sources}
    for i, (digest, source) in enumerate(wanted.items()):
        name = _base_name(source.file_name)
        progress(i / len(wanted), tr("putting {name} into the bundle", name=name))
        data = contents.log_bytes(digest)
        if isinstance(data, Problem):
            from core.wording import sentence

            facts = {"name": name, "why": sentence(data).rstrip(".")}
            problems.append(Problem("bundle.log_not_had", Severity.CAUTION, facts=facts))
            entries[digest] = LogEntry(digest, 0, name)
            continue
        entry = LogEntry(digest, len(data), name, is_replaced=digest in contents.replaced)
        if contents.with_logs:
            entry = evolve(entry, path=LOGS + _free_name(name, names))
            _put(archive, entry.path or name, data, "")
        entries[digest] = entry
    return list(entries.values()), problems


def _free_name(name: str, taken: set[str]) -> str:
    """A name for a log that every disk takes and no other log has."""
    plain = "".join("_" if c in _UNFIT or ord(c) < 32 else c for c in name).strip(" .") or "log"
    stem, dot, ending = plain.rpartition(".")
    if not dot:
        stem, ending = plain, ""
    stem = stem[:_LONGEST_NAME]
    free, n = f"{stem}{dot}{ending}", 2
    while free.casefold() in taken:
        free, n = f"{stem} {n}{dot}{ending}", n + 1
    taken.add(free.casefold())
    return free


def _put(archive: zipfile.ZipFile, path: str, data: bytes, what: str) -> FileEntry:
    info = zipfile.ZipInfo(path, _DAY)
    info.compress_type = zipfile.ZIP_STORED if _shrinks_too_far(data) else zipfile.ZIP_DEFLATED
    info.create_system = _UNIX
    info.external_attr = _READABLE
    info.file_size = len(data)
    view = memoryview(data)
    with archive.open(info, "w") as stream:
        for start in range(0, len(data), _BLOCK):
            stream.write(view[start : start + _BLOCK])
    return FileEntry(path, hashlib.sha256(data).hexdigest(), len(data), what)


def _shrinks_too_far(data: bytes) -> bool:
    """Whether a reader would take the packed bytes for a trap: what unpacks to so much more is refused."""
    if len(data) <= FREE_BYTES:
        return False
    return FREE_BYTES + MOST_RATIO * len(zlib.compress(data, _LEVEL)) < len(data)


def _readme(manifest: Manifest, name: str, contents: Contents) -> str:
    logs = _LOGS_INSIDE if contents.with_logs else _LOGS_OUTSIDE.format(name=name)
    if contents.with_logs and contents.replaced:
        logs += f"\n{_LOGS_REPLACED}"
    return _README.format(
        study=manifest.study, program=manifest.program, made=manifest.made, name=name, logs=logs
    )
