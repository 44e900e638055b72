"""Whether bytes are those of a log that was read before, with more behind them.

Theory of operation: a log that has grown begins with the very bytes that were read from it, so the digest of
its first part is the digest that is known. Digests of all known lengths come from one pass over the bytes.
"""

import hashlib
from collections.abc import Mapping

from core.traces import Trace


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
