"""Whether bytes are those of a log that was read before, with more behind them, and what is behind them.

Theory of operation: a log that has grown begins with the very bytes that were read from it, so the digest of
its first part is the digest that is known. Digests of all known lengths come from one pass over the bytes.
"""

import hashlib
from collections.abc import Mapping, Sequence
from pathlib import Path

import numpy as np
from attrs import frozen

from core.language import tr
from core.logs import continuing, text
from core.logs.containers import is_text
from core.logs.reading import Reading
from core.logs.source import OnDisk
from core.progress import Progress, silent
from core.study import Choices
from core.traces import Trace

#: bytes of a file that are looked at a time
_CHUNK = 1 << 20
_LINE_FEED = 10


@frozen
class Added:
    """What was added to a log: its bytes, the SHA-256 of the log with them, bytes and lines before them.

    A text is taken up to its last whole line: a program may still be writing the one after it.
    """

    fresh: bytes
    digest: str
    size: int
    lines: int


def added(path: Path, digest: str, size: int, progress: Progress = silent) -> Added | None:
    """What was added to a file since it was read; None if it no longer begins with what was read.

    Parameters
    ----------
    path : Path
    digest : str
        SHA-256 of what was read, in hexadecimal.
    size : int
        Length of what was read. [bytes]
    progress : Progress
        May raise `Cancelled`.

    Raises
    ------
    OSError
        If the file cannot be read.
    """
    begun, lines, at = hashlib.sha256(), 0, 0
    with path.open("rb") as file:
        head = file.read(text.HEAD)
        file.seek(0)
        while at < size and (chunk := file.read(min(_CHUNK, size - at))):
            begun.update(chunk)
            lines += int(np.count_nonzero(np.frombuffer(chunk, np.uint8) == _LINE_FEED))  # quicker than bytes
            at += len(chunk)
            progress(at / size, tr("looking for what was added"))
        if begun.hexdigest() != digest:
            return None
        fresh = file.read()
    if text.is_plain(head) and is_text(head):
        fresh = fresh[: fresh.rfind(b"\n") + 1]
    begun.update(fresh)
    return Added(fresh, begun.hexdigest(), size, lines)


def read_added(
    path: Path, more: Added, before: Sequence[Reading], choices: Choices, progress: Progress = silent
) -> tuple[Reading, ...] | None:
    """The readings of a log that has grown, from its added rows alone; None where it has to be read whole.

    Parameters
    ----------
    path : Path
    more : Added
    before : sequence of Reading
        Every machine that was read from the log before.
    choices : Choices
        Those that it was read with.
    progress : Progress
        May raise `Cancelled`.
    """
    try:
        whole = OnDisk(path, more.size + len(more.fresh))
        head = whole.piece(0, text.HEAD)
        starts_a_line = whole.piece(more.size - 1, 1) == b"\n"
        if not starts_a_line or not text.is_plain(head) or not is_text(head):
            return None
        return continuing.read_on(whole, more.fresh, more.lines, before, more.digest, choices, progress)
    except OSError:
        return None


def known_start(data: bytes | memoryview, known: Mapping[str, int]) -> str | None:
    """The longest known log that the bytes begin with.

    Parameters
    ----------
    data : bytes or memoryview
    known : mapping of str to int
        Lengths of known logs by the SHA-256 of their bytes in hexadecimal.

    Returns
    -------
    str or None
        The SHA-256 of that log; that of `data` itself if nothing was added to it.
    """
    view = memoryview(data).cast("B")
    begun = hashlib.sha256()
    at, longest = 0, None
    for digest, length in sorted(known.items(), key=lambda item: item[1]):
        if not 0 < length <= len(view):
            continue
        begun.update(view[at:length])
        at = length
        if begun.copy().hexdigest() == digest:
            longest = digest
    return longest


def shift_between(old: Trace, new: Trace) -> float:
    """What to add to times of `old` to have them on the clock of `new`; 0 where the clocks do not say. [s]

    Parameters
    ----------
    old, new : Trace
        The log as it was read before, and as it is read now.
    """
    a, b = old.clock, new.clock
    if a.kind != b.kind or a.start_s is None or b.start_s is None:
        return 0.0
    return a.start_s - b.start_s
