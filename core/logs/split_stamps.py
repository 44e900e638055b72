"""Stamps whose fields stand in columns of their own: year, month, day, hour, minute, second.

Rules: headings name the fields, in ten languages; without headings only columns that lie side by side, are
whole numbers in range and together run forward are taken. The date or the clock time may stand in one column.
"""

import re
from collections.abc import Mapping, Sequence
from typing import Any, Literal

import numpy as np
from attrs import frozen

from core.logs import clock, stamps
from core.logs.clock import Clocked, Hints
from core.logs.table import I64, Table
from core.logs.words import meaning, plain
from core.traces import F64

Field = Literal[
    "year",
    "month",
    "day",
    "day of year",
    "hour",
    "minute",
    "second",
    "half",
    "date",
    "clock",
    "hhmm",
    "hhmmss",
]
Fields = tuple[tuple[Field, int], ...]

#: whole words of a heading, accents dropped; the last line of each are letters, which count only together
_WORDS: dict[Field, str] = {
    "year": "year years yr jahr annee an ano anno jaar rok ar 年 yyyy yy y",
    "month": "month months monat mois mes mese maand miesiac manad 月 mon mo mm m",
    "day": "day days tag jour dia giorno dag dzien 日 dd d",
    "hour": "hour hours hr hrs stunde stunden std heure heures hora horas ora ore uur uren godzina godz "
    "timme timmar 時 hh h",
    "minute": "minute minutes min mins minuten minuto minutos minuti minuut minuta minuty minut minuter 分 "
    "mi mn mm m",
    "second": "second seconds sec secs sekunde sekunden sek seconde secondes segundo segundos secondo "
    "secondi seconden sekunda sekundy sekund sekunder 秒 ss s",
    "half": "ampm am/pm half",
    "day of year": "doy yday dayofyear",
}
_FILLERS = frozenset(
    {
        "date",
        "time",
        "datum",
        "zeit",
        "utc",
        "gmt",
        "local",
        "clock",
        "of",
        "the",
        "du",
        "de",
        "da",
        "do",
        "fecha",
        "data",
        "hora",
        "heure",
        "uhrzeit",
        "0",
        "1",
        "12",
        "24",
    }
)
_IN_RANGE: dict[Field, tuple[float, float]] = {
    "month": (1, 12), "day": (1, 31), "hour": (0, 24), "minute": (0, 59), "second": (0, 60.999)
}  # fmt: skip
_YEARS = (clock.FIRST_YEAR, clock.LAST_YEAR)
_DATE: tuple[Field, ...] = ("year", "month", "day")
_DAY_OF_YEAR = re.compile(r"\bday of (?:the )?year\b|\bjulian day\b|\bjour de l.annee\b|\btag des jahres\b")
_TIMES = frozenset({"time", "clock time", "elapsed"})
_MIDNIGHT = re.compile(
    r"midnight|mitternacht|minuit|medianoche|mezzanotte|middernacht|polnoc|meia noite|midnatt"
    r"|second of day|深夜"
)
_WHOLE = re.compile(r"\d{1,4}")
_PART = re.compile(r"\d{1,2}(?:[.,]\d{1,9})?")
_HALF = re.compile(stamps.HALF_OF_DAY)
_ORDERS: tuple[tuple[Field, ...], ...] = (
    ("year", "month", "day"),
    ("day", "month", "year"),
    ("month", "day", "year"),
)
_LOOKED_AT = 200
#: share of the cells of a named field that must be in its range; other rows are refused by number
_SHARE = 0.95


@frozen
class Found:
    """Fields with their columns, and the reason in words."""

    fields: Fields
    reason: str


def by_headings(
    names: Sequence[str], sample: Sequence[Sequence[str]], date: int | None, clocked: int | None
) -> Found | None:
    """Fields that headings name; None when they make no time.

    Parameters
    ----------
    names : headings
    sample : columns of cells
    date, clocked : int or None
        A column that holds whole dates, and one that holds whole clock times, where there is one.
    """
    found: dict[Field, int] = {}
    for field in _WORDS:
        for i, name in enumerate(names):
            if i not in found.values() and _names(name, field) and _fits(field, sample[i]):
                found[field] = i
                break
    if "month" in found and "minute" not in found and not set(_DATE) <= set(found):
        found["minute"] = found.pop("month")  # a lone m
    if {"year", "day of year"} <= set(found):
        found.pop("month", None)
        found.pop("day", None)
    elif not set(_DATE) <= set(found):
        for field in (*_DATE, "day of year"):
            found.pop(field, None)
        if date is not None:
            found["date"] = date
    else:
        found.pop("day of year", None)
    if not {"hour", "minute"} <= set(found):
        for field in ("hour", "minute", "second", "half"):
            found.pop(field, None)
        if clocked is not None and "year" in found:
            found["clock"] = clocked
        elif clocked is None and ("year" in found or "date" in found):
            found |= _clock_in_digits(names, sample, tuple(found.values()))
        if not {"clock", "hhmm", "hhmmss", "second"} & set(found):
            return None
    if len(found) < 3 and "date" not in found and "year" not in found:
        return None
    shown = ", ".join(f"{field} in '{names[i]}'" for field, i in found.items())
    return Found(tuple(found.items()), shown)


def by_values(sample: Sequence[Sequence[str]]) -> Found | None:
    """Fields of columns without headings; None where no columns side by side make a time."""
    whole = [_fits("year", c) for c in sample]
    best: tuple[float, Found] | None = None
    for start in range(len(sample) - 4):
        for order in _ORDERS:
            for clocks in (("hour", "minute", "second"), ("hour", "minute")):
                fields = tuple(zip((*order, *clocks), range(start, start + 3 + len(clocks)), strict=False))
                if len(fields) < 3 + len(clocks) or fields[-1][1] >= len(sample):
                    continue
                if not all(whole[i] or f == "second" for f, i in fields):
                    continue
                if not all(_fits(f, sample[i], is_strict=True) for f, i in fields):
                    continue
                seconds = _seconds({f: _numbers(sample[i]) for f, i in fields})
                steps = np.diff(seconds)
                if not steps.size or not (steps >= 0).all() or not (steps > 0).any():
                    continue
                unlikely = float(steps.max()) + 1e9 * (len(clocks) == 2)
                if best is None or unlikely < best[0]:
                    said = ", ".join(f for f, _ in fields)
                    why = f"columns {start + 1} to {start + len(fields)} hold {said}: so they run forward"
                    best = (unlikely, Found(fields, why))
        if best is not None:
            return best[1]
    return None


def clocked(table: Table, fields: Fields, hints: Hints) -> Clocked:
    """The seconds that the fields of each row make."""
    told = dict(fields)
    parts: dict[Field, F64] = {}
    midnight: F64 | None = None
    order: Clocked | None = None
    for field, position in fields:
        column = table.columns[position]
        if field == "date":
            order = clock.from_text(_as_text(column), hints)
            midnight = order.seconds
        elif field == "clock":
            parts["second"] = clock.from_text(_as_text(column), hints).seconds % 86400.0
        else:
            parts[field] = column if isinstance(column, np.ndarray) else _of_words(column, field)
    if "clock" in told and "half" in parts:
        parts["second"] = parts["second"] % 43200.0 + 43200.0 * parts.pop("half")
    for field in ("hhmm", "hhmmss"):
        if field in parts:
            parts |= _taken_apart(parts.pop(field), field)
    if midnight is None and "year" not in told:
        return clock.from_text(_clock_texts(parts), hints)
    seconds = clock.sane(_seconds(parts, midnight))
    tick = 60.0 if "second" not in parts else clock.tick_of(seconds)
    why = "date and time in columns of their own, of no stated zone"
    problems = () if order is None else order.problems
    return clock.zoned(Clocked(seconds, "local", why, tick, problems=problems), hints)


def half_of_day(sample: Sequence[Sequence[str]]) -> int | None:
    """The column that says in each row only which half of the day it is; None where there is none."""
    return next((i for i, cells in enumerate(sample) if any(cells) and _fits("half", cells)), None)


def _clock_in_digits(
    names: Sequence[str], sample: Sequence[Sequence[str]], taken: Sequence[int]
) -> dict[Field, int]:
    """A column beside a date whose digits are those of a clock, or that counts the seconds of the day."""
    for i, name in enumerate(names):
        full = [c.strip().strip('"') for c in sample[i] if c.strip()]
        is_time = meaning(name).quantity in _TIMES or _MIDNIGHT.search(plain(name))
        if i in taken or not is_time or not full:
            continue
        if all(re.fullmatch(r"\d{1,6}", c) for c in full):
            field: Field = "hhmmss" if max(map(len, full)) > 4 else "hhmm"
            parts = _taken_apart(np.array([float(c) for c in full]), field)
            if all(parts[f].max() <= _IN_RANGE[f][1] for f in parts):
                return {field: i}
        if all(re.fullmatch(r"\d{1,5}(?:\.\d+)?", c) for c in full) and meaning(name).unit in ("", "s"):
            return {"second": i} if max(map(float, full)) <= 86400.0 else {}
    return {}


def _taken_apart(digits: F64, field: Field) -> dict[Field, F64]:
    """Hour, minute and second of digits such as 93600 or 936."""
    short = digits // 100 if field == "hhmmss" else digits
    out: dict[Field, F64] = {"hour": short // 100, "minute": short % 100}
    return out | {"second": digits % 100} if field == "hhmmss" else out


def _names(heading: str, field: Field) -> bool:
    if field == "day of year" and _DAY_OF_YEAR.search(plain(heading)):
        return True
    words = re.findall(r"am/pm|\w+", plain(heading))
    own = _WORDS[field].split()
    return any(w in own for w in words) and all(w in own or w in _FILLERS for w in words)


def _fits(field: Field, cells: Sequence[str], is_strict: bool = False) -> bool:
    """Whether cells can be the values of a field; where `is_strict`, only digits and years of a log count."""
    full = [c.strip().strip('"') for c in cells[:_LOOKED_AT] if c.strip()]
    if not full:
        return False
    if field == "half":
        return all(_HALF.fullmatch(c) for c in full)
    if field == "month" and not is_strict and all(plain(c) in stamps.MONTHS for c in full):
        return True
    if field == "day of year":
        return all(_WHOLE.fullmatch(c) and 1 <= int(c) <= 366 for c in full)
    pattern = _PART if field == "second" else _WHOLE
    values = [float(c.replace(",", ".")) for c in full if pattern.fullmatch(c)]
    least = len(full) if is_strict else _SHARE * len(full)
    if len(values) < least:
        return False
    if field == "year":
        return not is_strict or all(_YEARS[0] <= v <= _YEARS[1] for v in values) or max(values) < 100
    low, high = _IN_RANGE[field]
    return sum(low <= v <= high for v in values) >= least


def _numbers(cells: Sequence[str]) -> F64:
    return np.array([float(c.strip().strip('"').replace(",", ".") or "nan") for c in cells])


def _seconds(parts: Mapping[Field, F64], midnight: F64 | None = None) -> F64:
    """Seconds of dates and clock times in numbers; NaN where a field is missing or out of range. [s]"""
    if midnight is None:
        year = _whole(parts["year"])
        year = np.where(year < 100, stamps.of_century(year), year)
        of_year = parts.get("day of year")
        one = np.ones_like(year)
        month, day = (one, one) if of_year is not None else (_whole(parts["month"]), _whole(parts["day"]))
        midnight = stamps.midnight(year, month, day)
        if of_year is not None:
            midnight = midnight + (of_year - 1.0) * 86400.0
    zero = np.zeros(midnight.shape)
    hour = parts.get("hour", zero)
    if "half" in parts:
        hour = hour % 12 + 12 * parts["half"]
    total: F64 = midnight + 3600.0 * hour + 60.0 * parts.get("minute", zero) + parts.get("second", zero)
    for field in ("hour", "minute"):
        low, high = _IN_RANGE[field]
        if field in parts:
            total[(parts[field] < low) | (parts[field] > high)] = np.nan
    return total


def _whole(values: F64) -> I64:
    return np.where(np.isfinite(values), values, 0.0).astype(np.int64)


def _of_words(column: Any, field: Field) -> F64:
    """A column of texts as numbers: names of months, halves of the day, or digits."""
    coded = column.dictionary_encode()
    if hasattr(coded, "chunks"):
        coded = coded.unify_dictionaries().combine_chunks()
    texts = [str(t).strip().strip('"') for t in coded.dictionary.to_pylist()]
    if field == "half":
        values = [float(plain(t).replace(" ", "") in stamps.EVENING) for t in texts]
    else:
        values = [
            float(stamps.MONTHS.get(plain(t), "nan" if not _PART.fullmatch(t) else t.replace(",", ".")))
            for t in texts
        ]
    codes = coded.indices.fill_null(len(texts)).to_numpy(zero_copy_only=False)
    numbers: F64 = np.array([*values, np.nan])[codes]
    return numbers


def _clock_texts(parts: Mapping[Field, F64]) -> Any:
    """Clock times without a date, written out: what they mean is decided where all such times are."""
    import pyarrow as pa

    zero = np.zeros(next(iter(parts.values())).shape)
    hour = parts["hour"]
    if "half" in parts:
        hour = hour % 12 + 12 * parts["half"]
    rows = zip(hour, parts["minute"], parts.get("second", zero), strict=True)
    texts = [
        None
        if np.isnan(h + m + s)
        else f"{h:02.0f}:{m:02.0f}:{int(s):02d}" + f"{s % 1:.3f}"[1:] * int(s % 1 > 0)
        for h, m, s in rows
    ]
    return pa.array(texts, type=pa.string())


def _as_text(column: Any) -> Any:
    import pyarrow as pa

    if not isinstance(column, np.ndarray):
        return column
    return pa.array([None if np.isnan(v) else f"{v:.0f}" for v in column.tolist()], type=pa.string())
