"""Reads prices by date from a CSV file: half-hourly, hourly or in any even step, with or without offsets.

Rules: what cannot be read is told as problems, with file, row and what would mend it; the order of day, month
and year is the one in which the whole column runs forward evenly. Holes stay holes.
"""

import csv
import re
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
from attrs import frozen

from core.costs.rates import PriceList
from core.problems import Problem, Severity
from core.units import SECONDS_PER_DAY, WH_PER_KWH

#: larger files hold no prices of a few years
MOST_BYTES = 32_000_000
_SHORTEST_S, _LONGEST_S = 60.0, SECONDS_PER_DAY
_MOST_PRICES = 400_000
_CENTS = 100.0
_DATE = re.compile(r"^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})(?:[ T,]+(\d{1,2}):(\d{2})(?::(\d{2}))?)?$")
_TIME = re.compile(r"^(\d{1,2}):(\d{2})(?::(\d{2}))?$")
_PER_MWH = re.compile(r"mwh", re.IGNORECASE)
_IN_CENTS = re.compile(r"\b(ct|cts|cent|cents|p|pence|öre|øre)\s*(/|per)\s*kwh", re.IGNORECASE)


@frozen
class PricesRead:
    """What a file of prices gave: a list, unless one of the problems is an error."""

    listed: PriceList | None
    problems: tuple[Problem, ...] = ()


def read_prices(data: bytes, name: str, zone: str | None = None) -> PricesRead:
    """Read prices by date.

    Parameters
    ----------
    data : bytes
    name : str
        The file's name, for messages and for the list.
    zone : str, optional
        IANA name of the zone whose clock the dates are, where they state no offset.

    Returns
    -------
    PricesRead
        Prices in the currency's main unit a kWh: a heading that says MWh, cents or pence is followed.
    """
    if len(data) > MOST_BYTES:
        return _refused("prices.too_large", name, megabytes=round(len(data) / 1e6))
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        text = data.decode("cp1252", errors="replace")
    if "\0" in text or not text.strip():
        return _refused("prices.no_text", name)
    rows = _rows(text)
    head, first = _headings(rows)
    found: list[tuple[int, str, float]] = []
    problems: list[Problem] = []
    for number, row in rows[first:]:
        stamp, price = _stamp_and_price(row)
        if stamp is not None and price is not None:
            found.append((number, stamp, price))
        elif any(cell.strip() for cell in row) and len(problems) < 20:
            problems.append(
                Problem("prices.row", Severity.CAUTION, name, number, {"text": " ".join(row)[:60]})
            )
    if len(found) < 2:
        return PricesRead(None, (*_refused("prices.none", name).problems, *problems[:3]))
    instants = _instants([stamp for _, stamp, _ in found], zone)
    if isinstance(instants, str):
        return _refused(instants, name)
    starts_s, is_local = instants
    factor = 1 / WH_PER_KWH if _PER_MWH.search(head) else 1 / _CENTS if _IN_CENTS.search(head) else 1.0
    return _listed(name, starts_s, [p * factor for _, _, p in found], is_local, problems)


def _listed(
    name: str, starts_s: Sequence[float], prices: Sequence[float], is_local: bool, problems: list[Problem]
) -> PricesRead:
    """The prices on an even grid; what is named twice counts as it stands last."""
    by_start = dict(zip(starts_s, prices, strict=True))
    if len(by_start) < len(starts_s):
        twice = len(starts_s) - len(by_start)
        problems.append(Problem("prices.twice", Severity.CAUTION, name, facts={"count": twice}))
    starts = np.array(sorted(by_start))
    steps, counts = np.unique(np.diff(starts), return_counts=True)
    step_s = float(steps[np.argmax(counts)]) if steps.size else 0.0
    if not _SHORTEST_S <= step_s <= _LONGEST_S:
        return _refused("prices.step", name)
    places = (starts - starts[0]) / step_s
    if np.abs(places - np.round(places)).max() > 1e-6:
        return _refused("prices.uneven", name)
    count = round(float(places[-1])) + 1
    if count > _MOST_PRICES:
        return _refused("prices.too_long", name)
    listed: list[float | None] = [None] * count
    for place, start in zip(np.round(places).astype(int).tolist(), starts.tolist(), strict=True):
        listed[place] = by_start[start]
    holes = listed.count(None)
    if holes:
        problems.append(Problem("prices.holes", Severity.CAUTION, name, facts={"count": holes}))
    made = PriceList("", name, float(starts[0]), step_s, tuple(listed), is_local)
    return PricesRead(made, tuple(problems))


def _rows(text: str) -> list[tuple[int, list[str]]]:
    """Lines cut at the sign that cuts most of them alike, with their numbers."""
    lines = text.splitlines()
    some = [line for line in lines if line.strip()][:200]
    sign = max(";\t,", key=lambda s: sum(s in line for line in some) - 0.5 * (s == ","))
    try:
        return [(i, row) for i, row in enumerate(csv.reader(lines, delimiter=sign), start=1) if any(row)]
    except csv.Error:  # a cell longer than any: no table of prices
        return []


def _headings(rows: list[tuple[int, list[str]]]) -> tuple[str, int]:
    """What the lines before the first price say, and how many they are."""
    for place, (_, row) in enumerate(rows):
        stamp, price = _stamp_and_price(row)
        if stamp is not None and price is not None:
            return " ".join(cell for _, before in rows[:place] for cell in before), place
    return "", 0


def _stamp_and_price(row: Sequence[str]) -> tuple[str | None, float | None]:
    """The first date of a row, with a time beside it where there is one, and its last number."""
    cells = [cell.strip() for cell in row]
    stamp: str | None = None
    price: float | None = None
    for place, cell in enumerate(cells):
        if stamp is None and (_DATE.match(cell) or _iso(cell) is not None):
            stamp = cell
            after = cells[place + 1] if place + 1 < len(cells) else ""
            if _TIME.match(after):
                stamp = f"{cell} {after}"
        else:
            number = _number(cell)
            price = price if number is None else number
    return stamp, price


def _number(cell: str) -> float | None:
    text = cell.replace("\u2212", "-")
    if re.fullmatch(r"[-+]?\d+,\d+", text):
        text = text.replace(",", ".")
    if not re.fullmatch(r"[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?", text):
        return None
    value = float(text)
    return value if np.isfinite(value) else None


def _iso(text: str) -> datetime | None:
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        return None


def _instants(stamps: Sequence[str], zone: str | None) -> tuple[list[float], bool] | str:
    """Unix times of the stamps and whether they are a wall clock of no zone; or the code of what is wrong."""
    walls: list[datetime] | None
    parsed = [_iso(stamp) for stamp in stamps]
    known = [wall for wall in parsed if wall is not None]
    walls = known if len(known) == len(stamps) else _by_order(stamps)
    if walls is None:
        return "prices.dates"
    with_offset = [wall.tzinfo is not None for wall in walls]
    if all(with_offset):
        return [wall.timestamp() for wall in walls], False
    if any(with_offset):
        return "prices.some_offsets"
    if zone is None:
        return [wall.replace(tzinfo=UTC).timestamp() for wall in walls], True
    return _in_zone(walls, ZoneInfo(zone)), False


def _in_zone(walls: Sequence[datetime], zone: ZoneInfo) -> list[float]:
    """Instants of a local clock; an hour that comes twice means the first until the clock was put back."""
    found: list[float] = []
    for wall in walls:
        at_s = wall.replace(tzinfo=zone).timestamp()
        if found and at_s <= found[-1]:
            again_s = wall.replace(tzinfo=zone, fold=1).timestamp()
            at_s = again_s if again_s > found[-1] else at_s
        found.append(at_s)
    return found


def _by_order(stamps: Sequence[str]) -> list[datetime] | None:
    """Dates in the one order of day, month and year that fits all of them and runs forward most evenly."""
    parts = [match.groups() for match in map(_DATE.match, stamps) if match]
    if len(parts) < len(stamps):
        return None
    numbers = [tuple(int(p) for p in match[:3]) for match in parts]
    times = [timedelta(hours=int(h or 0), minutes=int(m or 0), seconds=int(s or 0)) for *_, h, m, s in parts]
    best: tuple[float, list[datetime]] | None = None
    for year, month, day in ((0, 1, 2), (2, 1, 0), (2, 0, 1)):
        try:
            walls = [
                datetime(n[year] + (2000 if n[year] < 100 else 0), n[month], n[day]) + time  # noqa: DTZ001
                for n, time in zip(numbers, times, strict=True)
            ]
        except ValueError:
            continue
        steps = np.diff([wall.timestamp() for wall in (w.replace(tzinfo=UTC) for w in walls)])
        uneven = float(np.mean(steps != np.median(steps)))
        if best is None or uneven < best[0]:
            best = uneven, walls
    return None if best is None else best[1]


def _refused(code: str, name: str, **facts: object) -> PricesRead:
    return PricesRead(None, (Problem(code, Severity.ERROR, name, facts=facts),))
