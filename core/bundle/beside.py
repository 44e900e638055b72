"""The logs of a bundle: those inside it, and those that somebody names beside it."""

import hashlib
from collections.abc import Mapping, Sequence
from pathlib import Path, PurePath

from attrs import evolve, frozen

from core.analysis import read_log
from core.bundle.reading import Bundle, log_changed
from core.formatting import listed
from core.language import tr
from core.logs import Reading, find_files
from core.logs.files import check, load
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.traces import Trace


@frozen(eq=False)
class BundleLogs:
    """The traces of a bundle's logs by log id, how they were read, and what could not be had."""

    traces: Mapping[str, Trace]
    readings: Mapping[str, tuple[Reading, ...]]
    problems: tuple[Problem, ...]


@frozen(eq=False)
class BundleFiles:
    """The raw logs of a bundle, wherever they are.

    Parameters
    ----------
    bundle : Bundle
    beside : mapping of str to Path
        Files given beside it, by their SHA-256.
    changed : frozenset of str
        Names of logs of which a changed file was given.
    problems : tuple of Problem
        What is wrong with the files that were given.
    """

    bundle: Bundle
    beside: Mapping[str, Path]
    changed: frozenset[str]
    problems: tuple[Problem, ...]

    def bytes_of(self, sha256: str) -> bytes | Problem:
        """The bytes of a log; why not, if they were changed or are missing."""
        found = self.bundle.log(sha256)
        if found is None and sha256 in self.beside:
            path = self.beside[sha256]
            found = load(path, str(path))
            if isinstance(found, bytes) and hashlib.sha256(found).hexdigest() != sha256:
                found = None  # it was changed since it was looked at
        return _missing(self.bundle, sha256) if found is None else found


def files_of(bundle: Bundle, beside: Sequence[Path] = (), progress: Progress = silent) -> BundleFiles:
    """Where the raw logs of a bundle are.

    Parameters
    ----------
    bundle : Bundle
    beside : sequence of Path
        Files and folders with logs that the bundle holds only the SHA-256 of. Files are told by their bytes,
        whatever they are called; one that is called like a missing log and has other bytes was changed.
    progress : Progress
        May raise `Cancelled`.
    """
    given, problems = _given(bundle, beside, progress)
    changed = frozenset(str(p.fact("name")) for p in problems if p.code == "bundle.log_changed")
    return BundleFiles(bundle, given, changed, tuple(problems))


def told_together(problems: Sequence[Problem]) -> tuple[Problem, ...]:
    """The same problems, logs that a bundle does not hold told in one where there are several."""
    missing = [p for p in problems if p.code == "bundle.log_missing"]
    if len(missing) < 2:
        return tuple(problems)
    facts = {"count": len(missing), "names": listed([str(p.fact("name")) for p in missing])}
    joined = evolve(missing[0], code="bundle.logs_missing", facts=facts)
    return (joined, *(p for p in problems if p not in missing))


def read_logs(bundle: Bundle, beside: Sequence[Path] = (), progress: Progress = silent) -> BundleLogs:
    """Read every log that a bundle's study names.

    Parameters
    ----------
    bundle : Bundle
    beside : sequence of Path
        As in `files_of`.
    progress : Progress
        May raise `Cancelled`.
    """
    files = files_of(bundle, beside, part(progress, 0.0, 0.3))
    problems = [*bundle.problems, *files.problems]
    traces: dict[str, Trace] = {}
    readings: dict[str, tuple[Reading, ...]] = {}

    def bytes_of(sha256: str) -> bytes:
        found = files.bytes_of(sha256)
        if isinstance(found, bytes):
            return found
        # of a log that somebody gave and that was changed, it is not said that it is missing too
        if found.code != "bundle.log_missing" or found.fact("name") not in files.changed:
            problems.append(found)
        raise KeyError(sha256)

    logs = bundle.study.logs
    for i, log in enumerate(logs):
        here = part(progress, 0.3 + 0.7 * i / len(logs), 0.3 + 0.7 * (i + 1) / len(logs))
        trace, readings[log.id], said = read_log(log, bytes_of, here)
        problems += said
        if trace is not None:
            traces[log.id] = trace
    return BundleLogs(traces, readings, tuple(dict.fromkeys(problems)))


def _given(
    bundle: Bundle, beside: Sequence[Path], progress: Progress
) -> tuple[dict[str, Path], list[Problem]]:
    """Files by the digests that the bundle asks for, and what is wrong with the others."""
    files, problems = find_files(beside)
    told = list(problems)
    wanted = {entry.sha256: entry for entry in bundle.manifest.logs}
    found: dict[str, Path] = {}
    others: list[tuple[str, str]] = []
    for i, (path, shown) in enumerate(files):
        progress(i / len(files), tr("looking into {file}", file=shown))
        unfit = check(path, shown)
        digest = unfit if unfit is not None else _digest(path, shown)
        if isinstance(digest, Problem):
            told.append(digest)
        elif digest in wanted:
            found[digest] = path
        else:
            others.append((shown, digest))
    left = {e.name: e for e in wanted.values() if e.path is None and e.sha256 not in found}
    for shown, digest in others:
        entry = left.get(PurePath(shown).name)
        if entry is not None:
            told.append(log_changed(shown, entry.name, digest, entry.sha256))
        else:
            told.append(Problem("bundle.passed_over", Severity.NOTE, shown))
    return found, told


def _digest(path: Path, shown: str) -> str | Problem:
    try:
        with path.open("rb") as stream:
            return hashlib.file_digest(stream, "sha256").hexdigest()
    except OSError as error:
        facts = {"error": error.strerror or str(error)}
        return Problem("file.failed", Severity.ERROR, shown, facts=facts)


def _missing(bundle: Bundle, sha256: str) -> Problem:
    entry = bundle.manifest.log(sha256)
    facts = {"name": entry.name if entry else sha256[:12], "expected": sha256[:12]}
    return Problem("bundle.log_missing", Severity.ERROR, str(bundle.path), facts=facts)
