"""Pieces of one level in a log, and where they go up and down in turn: a heater that switches."""

import statistics

from attrs import frozen

#: pieces that go up and down: low, high, low, high, low at least
LEAST_PIECES = 5
#: of a heater's cycle one phase is shorter than this; a person leaves a load on for longer [s]
PHASE_S = 60.0
#: a phase this many times longer than the others of its kind is no part of the cycle
LONGER = 2.0
#: levels of one phase agree within this part of the pulse
SAME_PART = 0.04


@frozen
class Piece:
    """Rows `first` to `end` (not included), from `start_s` to `end_s`, at the median `level_w`."""

    first: int
    end: int
    start_s: float
    end_s: float
    level_w: float

    @property
    def seconds(self) -> float:
        """Length. [s]"""
        return self.end_s - self.start_s


def trains(pieces: list[Piece]) -> list[tuple[int, int]]:
    """First and last piece of each train of pulses, by time.

    Parameters
    ----------
    pieces : list of Piece
        Neighbours differ in level.

    Returns
    -------
    list of (first, last)
        Both included; not overlapping.
    """
    found: list[tuple[int, int]] = []
    first = 0
    while first + LEAST_PIECES <= len(pieces):
        last = _last_alike(pieces, first)
        begin, end = _trimmed(pieces, first, last)
        if end - begin + 1 >= LEAST_PIECES and _is_fast(pieces[begin : end + 1]):
            found.append((begin, end))
            first = end + 1
        else:
            first += 1
    return found


def _last_alike(pieces: list[Piece], first: int) -> int:
    """The last piece up to which each is like the one before the last."""
    last = first + 1
    pulse_w = abs(pieces[first].level_w - pieces[first + 1].level_w)
    while last + 1 < len(pieces):
        if abs(pieces[last + 1].level_w - pieces[last - 1].level_w) > SAME_PART * pulse_w:
            break
        last += 1
    return last


def _trimmed(pieces: list[Piece], first: int, last: int) -> tuple[int, int]:
    """Without a long phase at either end: the level before, the heating up, the level after."""
    while last - first + 1 >= LEAST_PIECES:
        if _is_longer(pieces, first, first, last):
            first += 1
        elif _is_longer(pieces, last, first, last):
            last -= 1
        else:
            break
    return first, last


def _is_longer(pieces: list[Piece], which: int, first: int, last: int) -> bool:
    others = [pieces[i].seconds for i in range(first, last + 1) if i != which and (i - which) % 2 == 0]
    return bool(others) and pieces[which].seconds > LONGER * statistics.median(others)


def _is_fast(pieces: list[Piece]) -> bool:
    even, odd = (statistics.median(p.seconds for p in pieces[i::2]) for i in (0, 1))
    return min(even, odd) < PHASE_S
