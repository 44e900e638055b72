"""What each column of a table holds: from its heading, its cells, and the company it keeps.

Rules: the heading proposes, the cells dispose. Each decision keeps its reason.
"""

import re
from collections import Counter
from collections.abc import Sequence
from itertools import pairwise

from attrs import evolve, frozen

from core.logs import numbers, split_stamps
from core.logs.cell_kinds import WEEKDAY, cell_kind
from core.logs.number_columns import count_days, counts_rows, finite, is_current, is_power_too, rises
from core.logs.spans_of_time import END
from core.logs.split_stamps import Fields
from core.logs.stamps import HALF_OF_DAY
from core.logs.words import Meaning, meaning, unit_of
from core.study import Choices

_DATE_ONLY = re.compile(
    r"^\W*(?:[^\W\d_]+\.?,?\s+)?(?:令和|平成|昭和|民[國国]|[RHS])?\d{1,4}"
    r"[-/. ](?:\d{1,2}|[^\W\d_]{3,})[-/. ]\d{1,4}\.?"
    rf"{WEEKDAY}$|^(?:令和|平成|昭和|民[國国])?\d{{1,4}}年\d+月\d+日{WEEKDAY}$|^\d{{8}}$"
)
_CLOCK_ONLY = re.compile(
    rf"^(?:{HALF_OF_DAY}\s?)?\d{{1,4}}[:.h時]\d\d(?:[:.m分]\d\d(?:[.,]\d+)?[秒s]?)?\s*{HALF_OF_DAY}?(?:{END})?$"
)
TIMES = ("time", "date", "clock time", "elapsed")
#: cells of a column that are looked at one by one
_LOOKED_AT = 200
_READ_AS_NUMBERS = ("power", "energy", "voltage", "current", "temperature", "apparent power")
NUMBERS = (
    "power", "energy", "voltage", "current", "temperature", "apparent power", "reactive power",
    "power factor", "value",
)  # fmt: skip


@frozen
class Role:
    """A column and what it holds; `kind` is what most of its cells are."""

    position: int
    name: str
    meaning: Meaning
    kind: str
    cell_unit: str = ""

    @property
    def quantity(self) -> str:
        """What it holds."""
        return self.meaning.quantity

    @property
    def unit(self) -> str:
        """Unit as stated in the cells, or else in the heading."""
        return self.cell_unit or self.meaning.unit


@frozen
class Roles:
    """The columns of a table sorted by use.

    ``time`` is one column, or two when date and clock time stand apart, or those of ``fields``, which says
    what each of them holds.
    """

    all: tuple[Role, ...]
    time: tuple[int, ...]
    channel: int | None = None
    value: int | None = None
    device: int | None = None
    reasons: tuple[tuple[str, str], ...] = ()
    fields: Fields = ()

    def of(self, quantity: str) -> list[Role]:
        """Columns of one quantity, in order."""
        return [r for r in self.all if r.quantity == quantity]

    def has_load(self) -> bool:
        """Whether a power or an energy can be had from the columns."""
        known = {r.quantity for r in self.all}
        direct = bool(known & {"power", "energy", "apparent power"})
        return self.channel is not None or direct or known >= {"voltage", "current"}

    def wanted(self) -> list[str]:
        """How each column is needed: ``"time"``, ``"number"``, ``"text"``, or ``""`` for not at all."""
        return [self._wanted(r) for r in self.all]

    def _wanted(self, role: Role) -> str:
        if role.position in self.time:
            return "time"
        if role.position in (self.channel, self.device):
            return "text"
        if role.position == self.value:
            return "text" if role.cell_unit else "number"
        if role.quantity in _READ_AS_NUMBERS:
            return "number"
        if role.quantity == "power factor" and not self.of("power"):
            return "number"
        return "text" if role.quantity == "unit" else ""


def assign(
    names: Sequence[str], sample: Sequence[Sequence[str]], decimal: str, choices: Choices
) -> Roles | None:
    """Decide what the columns hold; None when no column can be the time.

    Parameters
    ----------
    names : headings
    sample : columns of cells
    """
    roles = proposed(names, sample, decimal, choices)
    reasons: list[tuple[str, str]] = []
    time, fields = _time(roles, sample, reasons, any(q in TIMES for _, q, _ in choices.columns))
    if time is None:
        return None
    for position in time:
        if roles[position].quantity not in TIMES:
            roles[position] = evolve(
                roles[position], meaning=evolve(roles[position].meaning, quantity="time")
            )
    for role in roles:
        if role.quantity in TIMES and role.position not in time:
            roles[role.position] = evolve(role, meaning=evolve(role.meaning, quantity="other"))
    channel, value = _long(roles, sample, reasons)
    if channel is None:
        _by_values(roles, sample, set(time), decimal, reasons)
    device = _device(roles, sample, channel, set(time), reasons)
    return Roles(tuple(roles), time, channel, value, device, tuple(reasons), fields)


def proposed(
    names: Sequence[str], sample: Sequence[Sequence[str]], decimal: str, choices: Choices
) -> list[Role]:
    """What each column holds by its own heading and cells, or as the user chose, the others unheard.

    Parameters
    ----------
    names : headings
    sample : columns of cells
    """
    chosen = {p: (q, u) for p, q, u in choices.columns}
    roles = []
    for i, (name, cells) in enumerate(zip(names, sample, strict=True)):
        role = _propose(i, name, cells, decimal)
        if i in chosen:
            role = evolve(
                role, meaning=evolve(role.meaning, quantity=chosen[i][0], unit=chosen[i][1]), cell_unit=""
            )
        roles.append(role)
    return roles


def _propose(position: int, name: str, cells: Sequence[str], decimal: str) -> Role:
    said = meaning(name) if not re.fullmatch(r"column \d+", name) else Meaning("")
    kinds = [(c, cell_kind(c)) for c in cells[:_LOOKED_AT] if c.strip()]
    full = [c for c, k in kinds if k != "empty"]
    counted = Counter(k for _, k in kinds)
    kind = max(("number", "stamp", "text"), key=lambda k: counted[k]) if full else "empty"
    units: dict[str, int] = {}
    for cell in full:
        unit = numbers.parse(cell, decimal)[1]
        if unit:
            units[unit] = units.get(unit, 0) + 1
    cell_unit = max(units, key=lambda u: units[u]) if units and max(units.values()) > 0.5 * len(full) else ""
    quantity = said.quantity
    if kind == "text" and quantity in NUMBERS and full:
        quantity = "channel" if quantity in ("power", "energy") and len(set(full)) <= 40 else ""
    if kind in ("text", "stamp") and quantity == "row number":
        quantity = ""
    if kind == "number" and quantity in ("device", "channel", "state"):
        quantity = quantity if quantity == "device" and _few(full) else ""
    if kind == "stamp" and quantity in NUMBERS and counted["stamp"] > 0.9 * len(full):
        quantity = "time"
    if kind == "text" and quantity in TIMES:
        quantity = ""
    if kind == "text" and not quantity and all(unit_of(c)[1] for c in full):
        quantity = "unit"
    if cell_unit:
        by_cell = unit_of(cell_unit)[0]
        if not quantity or quantity == "channel" or by_cell == "share":
            quantity = by_cell
    return Role(position, name, evolve(said, quantity=quantity), kind, cell_unit)


def _few(cells: Sequence[str]) -> bool:
    return len(set(cells)) <= max(1, len(cells) // 10) and all(
        re.fullmatch(r"\d{1,12}", c.strip()) for c in cells
    )


def _time(
    roles: list[Role], sample: Sequence[Sequence[str]], reasons: list[tuple[str, str]], is_chosen: bool
) -> tuple[tuple[int, ...] | None, Fields]:
    """The columns of the time, and what each holds where its fields stand apart."""

    def share(position: int, pattern: re.Pattern[str]) -> float:
        full = [c.strip() for c in sample[position] if c.strip()][:200]
        return sum(bool(pattern.match(c)) for c in full) / len(full) if full else 0.0

    named = [r for r in roles if r.quantity in TIMES and r.kind in ("stamp", "number")]
    unnamed = [r for r in roles if r.quantity in ("", "other") and r.kind == "stamp"]
    # 23.06.25 and 09.36.00 look alike: the heading tells them apart, or else the order
    dates = [
        r for r in (*named, *unnamed) if r.quantity != "clock time" and share(r.position, _DATE_ONLY) > 0.8
    ]
    clocks = [
        r
        for r in (*named, *unnamed)
        if r.kind == "stamp" and r.quantity != "date" and share(r.position, _CLOCK_ONLY) > 0.8
    ]
    if len(clocks) > 1 and clocks[0] in dates:
        clocks = clocks[1:]
    dates = [r for r in dates if r not in clocks] or dates
    both = [r for r in (*named, *unnamed) if r.kind == "stamp" and r not in dates and r not in clocks]
    if both:
        reasons.append(("time", f"'{both[0].name}' holds date and time"))
        return (both[0].position,), ()
    if dates and clocks and dates[0] is not clocks[0] and dates[0].quantity != "elapsed":
        reasons.append(("time", f"date in '{dates[0].name}', clock time in '{clocks[0].name}'"))
        half = split_stamps.half_of_day(sample)
        if half is not None:
            fields: split_stamps.Fields = (
                ("date", dates[0].position),
                ("clock", clocks[0].position),
                ("half", half),
            )
            return tuple(p for _, p in fields), fields
        return (dates[0].position, clocks[0].position), ()
    if not is_chosen:
        split = split_stamps.by_headings(
            [r.name for r in roles],
            sample,
            dates[0].position if dates else None,
            clocks[0].position if clocks else None,
        )
        if split is None and not (clocks or dates or any(r.kind == "number" for r in named)):
            split = split_stamps.by_values(sample)
        counted = [r for r in named if r.kind == "number" and rises(sample[r.position])]
        if split is not None and all(r.position in dict(split.fields).values() for r in counted):
            reasons.append(("time", split.reason))
            return tuple(p for _, p in split.fields), split.fields
    counting = [r for r in named if r.quantity == "date" and r.kind == "number" and r not in dates]
    if clocks and counting and count_days(sample[counting[0].position]):
        reasons.append(("time", f"days counted in '{counting[0].name}', clock time in '{clocks[0].name}'"))
        return (counting[0].position, clocks[0].position), ()
    for r in named:
        if r.kind == "number" and r not in dates:
            reasons.append(("time", f"'{r.name}' holds numbers that count time"))
            return (r.position,), ()
    for r in (*clocks, *dates):
        reasons.append(("time", f"'{r.name}' holds {'clock times' if r in clocks else 'dates'} only"))
        return (r.position,), ()
    for r in roles:
        if r.kind == "number" and r.quantity in ("", "row number") and rises(sample[r.position]):
            reasons.append(("time", f"'{r.name}' rises in every row and no heading names a time"))
            return (r.position,), ()
    return None, ()


def _long(
    roles: list[Role], sample: Sequence[Sequence[str]], reasons: list[tuple[str, str]]
) -> tuple[int | None, int | None]:
    """(channel, value) columns of a log that writes one quantity a row."""
    for role in roles:
        if role.kind != "text" or role.quantity in ("unit", "state"):
            continue
        full = [c.strip() for c in sample[role.position] if c.strip()]
        if len(full) < 0.5 * len(sample[role.position]):
            continue  # a note now and then
        distinct = set(full)
        if not 1 <= len(distinct) <= max(4, len(sample[role.position]) // 2):
            continue
        told = {meaning(c).quantity for c in distinct}
        if not told & {"power", "energy", "current", "voltage"}:
            continue
        values = [r for r in roles if r.kind == "number" and r.quantity == "value"]
        values = values or [r for r in roles if r.kind == "number" and r.quantity in ("", "power", "energy")]
        values = values or _only_number(roles)
        if role.quantity == "device" and any(r.quantity == "power" and r.kind == "number" for r in roles):
            continue
        # the value of a quantity stands after its name
        values.sort(key=lambda r: (r.position < role.position, abs(r.position - role.position)))
        if values:
            found = ", ".join(sorted(t for t in told if t))
            reasons.append(("layout", f"long: '{role.name}' says what each row holds ({found})"))
            return role.position, values[0].position
    return None, None


def _only_number(roles: list[Role]) -> list[Role]:
    """The column of numbers, whatever its heading, when there is but one beside the time."""
    numbers_left = [
        r for r in roles if r.kind == "number" and r.quantity not in (*TIMES, "row number", "device")
    ]
    return numbers_left if len(numbers_left) == 1 else []


def _device(
    roles: list[Role],
    sample: Sequence[Sequence[str]],
    channel: int | None,
    time: set[int],
    reasons: list[tuple[str, str]],
) -> int | None:
    named = [r for r in roles if r.quantity == "device" and r.position != channel]
    unnamed = [
        r for r in roles
        if r.kind == "text" and r.position not in time and r.position != channel and r.quantity == ""
        and re.fullmatch(r"column \d+", r.name)
    ]  # fmt: skip
    found = {r.position: {c.strip() for c in sample[r.position] if c.strip()} for r in (*named, *unnamed)}
    naming = [p for p, names in found.items() if names and len(names) <= max(3, len(sample[p]) // 3)]
    if not naming:
        return None
    # what is the same in every row tells no machines apart
    position = next((p for p in naming if len(found[p]) > 1), naming[0])
    names = ", ".join(sorted(found[position])[:5])
    reasons.append(("machine", f"'{roles[position].name}' names the machine: {names}"))
    return position


def _is_another(other: Role, power: Role, sample: Sequence[Sequence[str]], decimal: str) -> bool:
    is_named = bool(other.meaning.rest) and not other.meaning.quantity
    return is_named and is_power_too(sample[power.position], sample[other.position], decimal)


def _by_values(
    roles: list[Role],
    sample: Sequence[Sequence[str]],
    time: set[int],
    decimal: str,
    reasons: list[tuple[str, str]],
) -> None:
    """Give a meaning to unnamed columns of numbers when no heading names a power."""
    known = {r.quantity for r in roles}
    if known & {"power", "apparent power"} or {"voltage", "current"} <= known:
        return
    loose = [
        r
        for r in roles
        if r.kind == "number" and r.position not in time and r.quantity in ("", "value", "row number")
    ]
    read = {r.position: finite(sample[r.position], decimal) for r in loose}
    for role in sorted(loose, key=lambda r: is_current(read[r.position], list(read.values()))):
        values = read[role.position]
        if len(values) < 2:
            continue
        low, high = min(values), max(values)
        if counts_rows(values):
            continue
        rising = all(b >= a for a, b in pairwise(values[:300])) and high > low
        if rising and "energy" not in known:
            quantity, unit, why = "energy", "", "never falls, as an energy counter does"
        elif (
            (205 <= low <= high <= 260 or 95 <= low <= high <= 132)
            and high - low < 25
            and "voltage" not in known
        ):
            quantity, unit, why = "voltage", "V", "stays near the voltage of a mains socket"
        elif "power" not in known:
            quantity, unit, why = "power", "", "rises and falls as a power does"
        else:
            continue
        known.add(quantity)
        alike = [role]
        if quantity == "power" and role.meaning.rest and not role.meaning.quantity:
            alike += [r for r in loose if r is not role and _is_another(r, role, sample, decimal)]
        for each in alike:
            roles[each.position] = evolve(each, meaning=evolve(each.meaning, quantity=quantity, unit=unit))
            reasons.append(("columns", f"'{each.name}' is taken as {quantity}: it {why}"))
