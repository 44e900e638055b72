"""What the lines above the headings say of the clock: when the log begins, and how far its rows are apart.

Rules: a line counts only with the word for it, in ten languages; nothing is taken from a bare number.
"""

import re
from collections.abc import Sequence

import numpy as np

from core.logs import stamps
from core.logs.words import plain

_INTERVAL = re.compile(
    r"\b(?:interval\w*|interwal\w*|sampling(?: (?:time|period|rate))?|sample (?:time|period)"
    r"|abtast\w*|messintervall|schrittweite|periode?|period|periodo|okres|takt|log rate|logging rate)\b"
    r"|間隔|周期"
)
_SPAN = re.compile(r"(\d+(?:[.,]\d+)?)\s*(ms|sec\w*|sek\w*|seg\w*|s|min\w*|h|hours?|秒|分|時間)(?![a-z])")
_CLOCK_SPAN = re.compile(r"\b(\d{1,2}):(\d\d):(\d\d)\b")
_SECONDS = {"ms": 0.001, "s": 1.0, "秒": 1.0, "m": 60.0, "分": 60.0, "h": 3600.0, "時": 3600.0}
_START = re.compile(
    r"\b(?:start\w*|begin\w*|began|beginn\w*|first|from|von|debut|depuis|inicio|desde|inizio|dal|van|od|"
    r"poczatek|inicio|borjan|fran)\b|開始"
)
_STAMP = re.compile(
    r"(\d{4})[-/.](\d\d?)[-/.](\d\d?)[T ,]\s*(\d\d?):(\d\d)(?::(\d\d))?"
    r"|(\d\d?)\.(\d\d?)\.(\d{4}),?\s+(\d\d?):(\d\d)(?::(\d\d))?"
)


def interval_in(lines: Sequence[str]) -> float | None:
    """The interval between rows that a line states, None when none does. [s]

    Examples
    --------
    >>> interval_in(["Device: bench", "Sampling interval: 10 s"])
    10.0
    """
    for line in lines:
        text = plain(line)
        if not _INTERVAL.search(text):
            continue
        span = _CLOCK_SPAN.search(line)
        if span is not None:
            hours, minutes, seconds = (float(x) for x in span.groups())
            return (3600 * hours + 60 * minutes + seconds) or None
        found = _SPAN.search(line.casefold())
        if found is not None:
            unit = found.group(2)
            return (
                float(found.group(1).replace(",", ".")) * _SECONDS["ms" if unit == "ms" else unit[0]] or None
            )
    return None


def start_in(lines: Sequence[str]) -> float | None:
    """The wall clock at which a line says that the log begins, None when none does. [s]

    Only stamps with the year first, or with points and the day first, are certain enough.
    """
    for line in lines:
        found = _STAMP.search(line) if _START.search(plain(line)) else None
        if found is None:
            continue
        parts = [int(x or 0) for x in found.groups()]
        year, month, day, hour, minute, second = (
            parts[:6] if found.group(1) else (parts[8], parts[7], parts[6], *parts[9:])
        )
        midnight = float(stamps.midnight(*(np.array([x]) for x in (year, month, day)))[0])
        if np.isfinite(midnight) and hour < 24 and minute < 60 and second < 60:
            return midnight + 3600 * hour + 60 * minute + second
    return None
