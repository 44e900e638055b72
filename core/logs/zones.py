"""Wall clocks of a known zone turned into instants, through both changes of the year."""

import re
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np

from core.traces import F64

_HOUR = 3600
_FIXED = re.compile(r"^(?:UTC|GMT)\s?([+\-−])\s?(\d{1,2})(?::?(\d\d))?$", re.IGNORECASE)


def is_zone(name: str) -> bool:
    """Whether there is a zone of this (IANA) name."""
    try:
        ZoneInfo(name)
    except (KeyError, ValueError, OSError):
        return False
    return True


def fixed_offset_s(name: str) -> float | None:
    """Offset from UTC of a name such as ``"UTC+02:00"``, None when it is none. [s]

    Examples
    --------
    >>> fixed_offset_s("GMT-3:30")
    -12600.0
    """
    match = _FIXED.match(name.strip())
    if match is None:
        return None
    sign = 1.0 if match.group(1) == "+" else -1.0
    return sign * (int(match.group(2)) * 3600.0 + int(match.group(3) or 0) * 60.0)


def utc_of(wall_s: F64, zone: ZoneInfo) -> F64:
    """Unix time of wall-clock stamps (given as if they were UTC); NaN stays NaN. [s]

    Offsets are looked up once an hour of wall clock. In the hour that happens twice, the second pass begins
    where the stamps jump back.

    Parameters
    ----------
    wall_s : ndarray, shape (n,)
        In the order of the log. [s]
    zone : ZoneInfo
    """
    out = np.full(wall_s.shape, np.nan)
    good = np.flatnonzero(np.isfinite(wall_s))
    if not good.size:
        return out
    wall = wall_s[good]
    quarters = np.floor_divide(wall, _HOUR / 4).astype(np.int64)
    distinct, inverse = np.unique(quarters, return_inverse=True)
    early = np.array([_offset(q * _HOUR / 4, zone, 0) for q in distinct.tolist()])[inverse]
    late = np.array([_offset(q * _HOUR / 4, zone, 1) for q in distinct.tolist()])[inverse]
    twice = early > late
    offsets = early.copy()
    if twice.any():
        edges = np.flatnonzero(np.diff(np.concatenate(([0], twice.astype(np.int8), [0]))))
        for start, stop in zip(edges[::2].tolist(), edges[1::2].tolist(), strict=True):
            back = np.flatnonzero(np.diff(wall[start:stop]) < -_HOUR / 4)
            if not back.size and stop - start == 2 and wall[start] == wall[start + 1]:
                back = np.zeros(1, dtype=np.int64)  # a row an hour
            if back.size:
                offsets[start + int(back[0]) + 1 : stop] = late[start + int(back[0]) + 1 : stop]
            elif start and wall[start] - wall[start - 1] < -_HOUR / 4:
                offsets[start:stop] = late[start:stop]
    out[good] = wall - offsets
    return out


def _offset(wall_s: float, zone: ZoneInfo, fold: int) -> float:
    moment = datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=wall_s)
    offset = moment.replace(tzinfo=zone, fold=fold).utcoffset()
    return offset.total_seconds() if offset is not None else 0.0


def zone_named_in(text: str) -> str | None:
    """A time zone named in a heading or in the lines above it: ``"UTC+02:00"``, ``"UTC"`` or an IANA name."""
    for match in re.finditer(
        r"\b(?:Africa|America|Asia|Atlantic|Australia|Europe|Indian|Pacific)/[A-Za-z_/+-]+", text
    ):
        if is_zone(match.group(0)):
            return match.group(0)
    offset = re.search(r"\b(?:UTC|GMT)\s?[+\-−]\s?\d{1,2}(?::?\d\d)?\b", text)
    if offset:
        return offset.group(0)
    return "UTC" if re.search(r"\b(?:UTC|GMT|Zulu)\b", text) else None
