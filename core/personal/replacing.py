"""Personal data replaced by names that say nothing, the same one for the same thing everywhere.

Rules: no reading may change. Every log is read again after its texts were replaced, and one of which
anything but names comes out otherwise is not given away at all.
"""

import hashlib
from collections import Counter
from collections.abc import Callable, Mapping, Sequence

import numpy as np
from attrs import evolve, frozen

from core.analysis import read_log
from core.bundle.writing import LogBytes, without_folders
from core.language import tr
from core.logs import Reading
from core.personal.columns import with_positions_in_columns
from core.personal.kinds import with_positions
from core.personal.own_words import in_words
from core.personal.pseudonyms import Replacement
from core.personal.texts import CannotReplace, changed, whole
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.report.pictures import Drawable
from core.results.compare import compare
from core.study import Log, Source, Study
from core.traces import Trace


@frozen(eq=False)
class Replaced:
    """A study as it is given to others.

    Parameters
    ----------
    drawable : Drawable
        With the replaced study, and everything read and computed again.
    log_bytes : callable
        The bytes of its logs; of one that may not be given away, why.
    readings : mapping of log id to tuple of Reading
    digests : frozenset of str
        Of the logs in which something was replaced.
    notes : tuple of str
        For the manifest.
    problems : tuple of Problem
        Logs that are not given away.
    change : callable
        Does the same to any other text.
    """

    drawable: Drawable
    log_bytes: LogBytes
    readings: Mapping[str, Sequence[Reading]]
    digests: frozenset[str]
    notes: tuple[str, ...]
    problems: tuple[Problem, ...]
    change: Callable[[str], str]


def replace(
    drawable: Drawable,
    readings: Mapping[str, Sequence[Reading]],
    log_bytes: LogBytes,
    replacements: Sequence[Replacement],
    progress: Progress = silent,
) -> Replaced:
    """The study with personal data replaced in its logs and its words, and read again.

    Parameters
    ----------
    drawable : Drawable
    readings : mapping of log id to sequence of Reading
        How the logs were read.
    log_bytes : callable
        A log whose bytes cannot be had stays as it is: it is not given away anyhow.
    replacements : sequence of Replacement
    progress : Progress
        May raise `Cancelled`.

    Notes
    -----
    A log in which nothing is replaced keeps its bytes and its digest.
    """
    change = _changer(replacements)
    study = without_folders(drawable.study)
    packed = _changed_bytes(study, log_bytes, change, part(progress, 0.0, 0.4))
    read: dict[str, _Read] = {}
    spoilt: set[str] = set()
    for i, log in enumerate(study.logs):
        here = part(progress, 0.4 + 0.6 * i / len(study.logs), 0.4 + 0.6 * (i + 1) / len(study.logs))
        here(0.0, tr("reading {name} again", name=log.sources[0].file_name))
        before, read_before = drawable.traces.get(log.id), readings.get(log.id, ())
        found = _read_again(log, before, read_before, packed, log_bytes, change, here)
        if found is None:
            spoilt |= {source.digest for source in log.sources}
        else:
            read[log.id] = found
    spoilt = _with_companions(study, spoilt)
    logs, traces, read_now = [], dict[str, Trace](), dict[str, Sequence[Reading]]()
    for log in study.logs:
        if log.id in read and not spoilt & {source.digest for source in log.sources}:
            made, trace, read_now[log.id] = read[log.id].log, read[log.id].trace, read[log.id].readings
        else:
            # bytes that stay away keep the names of their devices, by which the log is found in them
            made, trace = _renamed(log, {}, change, devices=False), drawable.traces.get(log.id)
        logs.append(made)
        if trace is not None:
            traces[log.id] = trace
    new_study = in_words(evolve(study, logs=tuple(logs)), change)
    kept_back = {s.digest: _kept_back(s) for g in study.logs for s in g.sources if s.digest in spoilt}
    new = {
        made.digest: made.data for old, made in packed.items() if old not in spoilt and made.data is not None
    }

    def bytes_of(digest: str) -> bytes | Problem:
        found = kept_back.get(digest)
        return found if found is not None else new[digest] if digest in new else log_bytes(digest)

    return Replaced(
        drawable=Drawable(
            new_study, compare(new_study, traces, drawable.activities), traces, drawable.activities
        ),
        log_bytes=bytes_of,
        readings=read_now,
        digests=frozenset(
            made.digest for old, made in packed.items() if old != made.digest and old not in spoilt
        ),
        notes=_notes(replacements),
        problems=tuple(dict.fromkeys(kept_back.values())),
        change=change,
    )


def as_it_is(drawable: Drawable, readings: Mapping[str, Sequence[Reading]], log_bytes: LogBytes) -> Replaced:
    """The study as it is given to others with nothing replaced."""
    return Replaced(drawable, log_bytes, readings, frozenset(), (), (), _changer(()))


@frozen
class _Packed:
    """A file after replacing: its digest, and its bytes where they are others than before."""

    digest: str
    data: bytes | None = None
    is_refused: bool = False


@frozen(eq=False)
class _Read:
    """A log as it is after replacing."""

    log: Log
    trace: Trace | None
    readings: Sequence[Reading]


def _changer(replacements: Sequence[Replacement]) -> Callable[[str], str]:
    positions = {r.text: r.pseudonym for r in replacements if r.kind == "position"}
    by_text = {r.text: r.pseudonym for r in replacements if r.kind != "position"}

    def change(text: str) -> str:
        if any(position in text for position in positions):
            text = with_positions_in_columns(with_positions(text, positions), positions)
        present = [each for each in by_text if each in text]
        return whole(present).sub(lambda match: by_text[match[0]], text) if present else text

    return change


def _changed_bytes(
    study: Study, log_bytes: LogBytes, change: Callable[[str], str], progress: Progress
) -> dict[str, _Packed]:
    """By the digest of before: every file after replacing."""
    files = {s.digest: s.file_name for log in study.logs for s in log.sources}
    packed: dict[str, _Packed] = {}
    for i, (digest, name) in enumerate(files.items()):
        progress(i / len(files), tr("replacing personal data in {name}", name=name))
        data = log_bytes(digest)
        if isinstance(data, Problem):
            packed[digest] = _Packed(digest)
            continue
        try:
            new = changed(data, change)
        except CannotReplace:
            packed[digest] = _Packed(digest, is_refused=True)
            continue
        is_same = new == data
        packed[digest] = _Packed(digest) if is_same else _Packed(hashlib.sha256(new).hexdigest(), new)
    return packed


def _read_again(
    log: Log,
    before: Trace | None,
    readings: Sequence[Reading],
    packed: Mapping[str, _Packed],
    log_bytes: LogBytes,
    change: Callable[[str], str],
    progress: Progress,
) -> _Read | None:
    """The log after replacing; None where it may not be given away."""
    files = [packed[source.digest] for source in log.sources]
    if any(file.is_refused for file in files):
        return None
    digests = {source.digest: file.digest for source, file in zip(log.sources, files, strict=True)}
    made = _renamed(log, digests, change)
    if all(old == new for old, new in digests.items()):
        told = tuple(evolve(reading, file=change(reading.file)) for reading in readings)
        return _Read(evolve(made, sources=_with_devices(made, log)), before, told)
    held = {file.digest: file.data for file in files if file.data is not None}

    def bytes_of(digest: str) -> bytes:
        data = held.get(digest) or log_bytes(digest)
        if isinstance(data, Problem):
            raise KeyError(digest)
        return data

    trace, read, _ = read_log(made, bytes_of, progress)
    if before is None or trace is None or not _is_same(before, trace):
        return None
    return _Read(made, trace, read)


def _renamed(
    log: Log, digests: Mapping[str, str], change: Callable[[str], str], *, devices: bool = True
) -> Log:
    sources = tuple(
        evolve(
            s,
            digest=digests.get(s.digest, s.digest),
            file_name=change(s.file_name),
            device=change(s.device) if devices and s.device is not None else s.device,
        )
        for s in log.sources
    )
    return evolve(log, sources=sources)


def _with_devices(log: Log, other: Log) -> tuple[Source, ...]:
    """The log's sources with the devices of another: its bytes are as they were, and so their names."""
    return tuple(evolve(s, device=o.device) for s, o in zip(log.sources, other.sources, strict=True))


def _with_companions(study: Study, spoilt: set[str]) -> set[str]:
    """Files that stay away, with those of every log that one of them is a part of."""
    while True:
        more = {
            source.digest
            for log in study.logs
            if spoilt & {s.digest for s in log.sources}
            for source in log.sources
        }
        if more <= spoilt:
            return spoilt
        spoilt = spoilt | more


def _is_same(before: Trace, after: Trace) -> bool:
    """Whether two traces hold the same readings at the same times."""
    arrays = (
        (before.time_s, after.time_s),
        (before.power_w, after.power_w),
        (before.counter_wh, after.counter_wh),
    )
    same = all(
        (a is None and b is None)
        or (a is not None and b is not None and np.array_equal(a, b, equal_nan=True))
        for a, b in arrays
    )
    warm, other = before.temperatures_c, after.temperatures_c
    alike = warm.keys() == other.keys() and all(
        np.array_equal(warm[place], other[place], equal_nan=True) for place in warm
    )
    return same and alike and before.kind == after.kind and before.clock == after.clock


def _kept_back(source: Source) -> Problem:
    facts = {"name": source.file_name}
    return Problem("personal.kept_back", Severity.CAUTION, facts=facts)


def _notes(replacements: Sequence[Replacement]) -> tuple[str, ...]:
    if not replacements:
        return ()
    counts = Counter(r.kind for r in replacements)
    listed = ", ".join(f"{kind} ({n})" for kind, n in counts.items())
    return (f"Personal data were replaced by names that say nothing: {listed}. No reading was changed.",)
