"""A table sorted into machines: one a file, one a column (wide), or one quantity a row (long).

Rules: columns keep the units they were written in; nothing is put in order or repaired here.
"""

import re
from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from core.logs import numbers
from core.logs.roles import Role, Roles
from core.logs.table import I64, Table
from core.logs.words import PAST, Meaning, meaning, plain
from core.traces import F64

#: most machines a wide or long log is taken to hold
MOST_MACHINES = 500
#: stamps of one moment are no further apart [s]
_SAME_S = 1.0


@frozen
class Raw:
    """Columns of one machine as they stand in the file.

    ``power`` is None when only a counter is logged. ``rows`` are rows of the table (None: all of them),
    ``rows_read`` counts all rows of the file that belong to the machine. ``is_own`` says
    that nobody else uses the columns, so that they may be overwritten. Units are ``""`` where none is stated.
    """

    device: str | None
    seconds: F64 = field(eq=False, repr=False)
    power: F64 | None = field(eq=False, repr=False)
    power_unit: str = ""
    power_name: str = ""
    counter: F64 | None = field(default=None, eq=False, repr=False)
    counter_unit: str = ""
    counter_name: str = ""
    volt_ampere: F64 | None = field(default=None, eq=False, repr=False)
    is_apparent: bool = False
    temperatures_c: Mapping[str, F64] = field(factory=dict, eq=False, repr=False)
    rows: I64 | None = field(default=None, eq=False, repr=False)
    rows_read: int = 0
    layout: str = "one machine"
    is_own: bool = False


def sort_out(table: Table, roles: Roles, seconds: F64, decimal: str) -> list[Raw]:
    """Find the machines of a table; empty when no column holds power or energy."""
    if roles.channel is not None and roles.value is not None:
        return _long(table, roles, seconds, decimal)
    raws = _columns(table, roles, seconds)
    if roles.device is None or not raws:
        return raws
    return _by_device(raws[0], _texts(table.columns[roles.device]))


def _columns(table: Table, roles: Roles, seconds: F64) -> list[Raw]:
    powers = _without_parts([r for r in roles.of("power") if table.numbers(r.position) is not None])
    powers = _without_total(_preferred(powers), table)
    energies = _without_parts([r for r in roles.of("energy") if table.numbers(r.position) is not None])
    energies = [r for r in energies if r.meaning.period not in PAST] or energies
    named = {plain(r.meaning.rest) for r in powers}
    wide = len(powers) > 1 and len(named) == len(powers)
    if not powers:
        named = {plain(r.meaning.rest) for r in energies}
        wide = (
            len(energies) > 1 and len(named) == len(energies) and not any(r.meaning.period for r in energies)
        )
    amps = roles.of("current")
    volts = roles.of("voltage")
    apparent = _product(table, volts, amps)
    factors = [r for r in roles.of("power factor") if table.numbers(r.position) is not None]
    temperatures = _temperatures(table, roles)
    out: list[Raw] = []
    bases: list[Role | None] = list(powers) if powers else (list(energies) if wide else [None])
    for base in bases if wide else bases[:1]:
        mine = [
            e
            for e in energies
            if not wide or (base is not None and plain(e.meaning.rest) == plain(base.meaning.rest))
        ]
        counter = _best_counter(mine)
        power = base if powers else None
        values = None if power is None else table.numbers(power.position)
        is_apparent = False
        unit, name = ("", "") if power is None else (_unit(table, power), power.name)
        if values is None and not wide:
            said = [r for r in roles.of("apparent power") if table.numbers(r.position) is not None]
            if said:
                values, unit, name, is_apparent = (
                    table.numbers(said[0].position),
                    _unit(table, said[0]),
                    said[0].name,
                    True,
                )
                unit = {"kVA": "kW"}.get(unit, "W")
            elif apparent is not None and counter is None:
                values, unit, is_apparent = apparent, "W", True
                name = f"{volts[0].name} x {amps[0].name}"
                factor = table.numbers(factors[0].position) if len(factors) == 1 else None
                if factor is not None:
                    values, is_apparent = _active(apparent, factor), False
                    name = f"{name} x {factors[0].name}"
        if values is None and counter is None:
            continue
        out.append(
            Raw(
                base.meaning.rest or base.name if wide and base is not None else None,
                seconds, values, unit, name,
                None if counter is None else table.numbers(counter.position),
                "" if counter is None else _unit(table, counter), "" if counter is None else counter.name,
                apparent if not wide else None, is_apparent, {} if wide else temperatures, None, table.rows,
                "wide: a column for each machine" if wide else "one machine", not wide,
            )
        )  # fmt: skip
        if len(out) >= MOST_MACHINES:
            break
    return out


def _unit(table: Table, role: Role) -> str:
    return table.units.get(role.position, "") or role.unit


def _preferred(powers: list[Role]) -> list[Role]:
    """Leave out highest and lowest values where a plain or mean value stands beside them."""
    plain_ones = [r for r in powers if r.meaning.statistic != "extreme"]
    powers = plain_ones or powers
    means = [r for r in powers if r.meaning.statistic == "mean"]
    here = {plain(r.meaning.rest) for r in powers if not r.meaning.statistic}
    if here:  # a mean beside the power itself may be one since the start, or of the day
        powers = [r for r in powers if not r.meaning.statistic or plain(r.meaning.rest) not in here]
    elif means and len({plain(r.meaning.rest) for r in powers}) < len(powers):
        return means
    seen: set[tuple[str, str]] = set()
    out = []
    for r in sorted(powers, key=lambda r: (r.unit == "", r.position)):
        key = (plain(r.meaning.rest), "")
        if key not in seen:
            seen.add(key)
            out.append(r)
    return sorted(out, key=lambda r: r.position)


_TOTAL = re.compile(r"\b(?:total|sum|summe|gesamt|somme|suma|totale|totaal|all)\b|合計")
_PHASE = re.compile(r"\b(?:l[123]|(?:phase|ph) ?[abc123])\b")


def _without_parts(columns: list[Role]) -> list[Role]:
    """Without the phases of one supply where their total stands beside them."""
    whole = [r for r in columns if not _PHASE.search(plain(r.name))]
    return whole if whole and len(columns) - len(whole) > 1 else columns


def _without_total(powers: list[Role], table: Table) -> list[Role]:
    """Without a column that is the sum of all the others: no machine of its own."""
    if len(powers) < 3:
        return powers
    values = {r.position: table.numbers(r.position) for r in powers}
    for total in powers:
        if not _TOTAL.search(plain(total.name)):
            continue
        parts = [v for p, v in values.items() if p != total.position and v is not None]
        whole = values[total.position]
        if whole is not None and len(parts) == len(powers) - 1:
            apart = np.abs(np.sum(parts, axis=0) - whole)
            if float(np.mean(apart <= 0.02 * np.abs(whole) + 0.5)) > 0.9:
                return [r for r in powers if r is not total]
    return powers


def _best_counter(energies: list[Role]) -> Role | None:
    """The running total, or else one that starts again each day or month."""
    ranked = sorted(energies, key=lambda r: (bool(r.meaning.period), r.position))
    return ranked[0] if ranked else None


def _product(table: Table, volts: list[Role], amps: list[Role]) -> F64 | None:
    if not volts or not amps:
        return None
    u, i = table.numbers(volts[0].position), table.numbers(amps[0].position)
    if u is None or i is None:
        return None
    factor = (0.001 if volts[0].unit == "mV" else 1.0) * (0.001 if amps[0].unit == "mA" else 1.0)
    return u * i * factor


def _active(apparent_va: F64, factor: F64) -> F64:
    """Active power by the power factor, a share or a percentage; its sign tells the kind of load alone."""
    size = np.abs(factor)
    percent = bool(size.size) and float(np.fmax.reduce(size)) > 1.5
    return apparent_va * (size / 100.0 if percent else size)


def _temperatures(table: Table, roles: Roles) -> dict[str, F64]:
    out: dict[str, F64] = {}
    for role in roles.of("temperature"):
        values = table.numbers(role.position)
        place = role.meaning.place or plain(role.meaning.rest) or "machine"
        if values is not None and place not in out:
            out[place] = (values - 32) / 1.8 if role.unit == "degF" else values
    return out


def _texts(column: Any) -> tuple[list[str], NDArray[np.int64]]:
    """Distinct texts of a column and the code of each row (-1 where empty)."""
    import pyarrow as pa

    if isinstance(column, np.ndarray):
        column = pa.array([None if np.isnan(v) else f"{v:g}" for v in column.tolist()], type=pa.string())
    whole = column.combine_chunks() if isinstance(column, pa.ChunkedArray) else column
    if isinstance(whole, pa.ChunkedArray):  # Arrow gives chunks back when one would be too large
        whole = pa.concat_arrays(whole.chunks)
    coded = whole.dictionary_encode()
    texts = [str(t).strip() for t in coded.dictionary.to_pylist()]
    codes = np.asarray(coded.indices.fill_null(-1).to_numpy(zero_copy_only=False), dtype=np.int64)
    return texts, codes


def _by_device(raw: Raw, device: tuple[list[str], NDArray[np.int64]]) -> list[Raw]:
    texts, codes = device
    out = []
    for i, text in list(enumerate(texts))[:MOST_MACHINES]:
        rows = np.flatnonzero(codes == i)
        if not rows.size or not text:
            continue
        out.append(
            Raw(
                text, raw.seconds[rows], None if raw.power is None else raw.power[rows],
                raw.power_unit, raw.power_name,
                None if raw.counter is None else raw.counter[rows], raw.counter_unit, raw.counter_name,
                None if raw.volt_ampere is None else raw.volt_ampere[rows], raw.is_apparent,
                {k: v[rows] for k, v in raw.temperatures_c.items()}, rows, int(rows.size),
                "long: a row for each machine" if len(texts) > 1 else "one machine, named in a column",
            )
        )  # fmt: skip
    return out


@frozen(eq=False)
class _Strand:
    """One quantity of one machine in a long log."""

    said: Meaning
    rows: I64
    values: F64
    unit: str
    name: str


def _long(table: Table, roles: Roles, seconds: F64, decimal: str) -> list[Raw]:
    assert roles.channel is not None
    assert roles.value is not None
    channels, codes = _texts(table.columns[roles.channel])
    devices, device_codes = ([""], np.zeros(table.rows, dtype=np.int64))
    if roles.device is not None:
        devices, device_codes = _texts(table.columns[roles.device])
    units, unit_codes = ([""], np.zeros(table.rows, dtype=np.int64))
    for role in roles.of("unit")[:1]:
        if table.columns[role.position] is not None:
            units, unit_codes = _texts(table.columns[role.position])
    said = [meaning(c) for c in channels]
    strands: dict[str, list[_Strand]] = {}
    for d in range(len(devices)):
        in_device = device_codes == d
        for c, name in enumerate(channels):
            rows = np.flatnonzero(in_device & (codes == c))
            if not rows.size or said[c].quantity not in (
                "power",
                "energy",
                "temperature",
                "voltage",
                "current",
            ):
                continue
            values, unit = _values(table.columns[roles.value], rows, decimal)
            stated = units[unit_codes[rows[0]]] if units and unit_codes[rows[0]] >= 0 else ""
            from core.logs.words import unit_of

            unit = unit or unit_of(stated)[1] or said[c].unit
            device = (
                " ".join(x for x in (devices[d], said[c].rest) if x) if roles.device is None else devices[d]
            )
            strands.setdefault(device.strip(), []).append(_Strand(said[c], rows, values, unit, name))
    if len(strands) == 2 and "" in strands:  # what names no machine belongs to the only one that is named
        shared = strands.pop("")
        next(iter(strands.values())).extend(shared)
    out = [_joined(device or None, mine, seconds) for device, mine in strands.items()]
    return [r for r in out if r is not None][:MOST_MACHINES]


def _values(column: Any, rows: I64, decimal: str) -> tuple[F64, str]:
    if isinstance(column, np.ndarray):
        return column[rows], ""
    import pyarrow as pa

    parsed = numbers.parse_column(column.take(pa.array(rows)), decimal)
    return parsed.values, parsed.units[0][0] if parsed.units else ""


def _joined(device: str | None, strands: list[_Strand], seconds: F64) -> Raw | None:
    """One machine's quantities on the rows of its power (or, with none, of its counter)."""

    def first(quantity: str) -> _Strand | None:
        found = [s for s in strands if s.said.quantity == quantity and s.said.statistic != "extreme"]
        found = [s for s in found if s.said.period not in PAST] or found
        return min(found, key=lambda s: (bool(s.said.period), -s.rows.size)) if found else None

    power, energy = first("power"), first("energy")
    base = power or energy
    if base is None:
        return None
    times = seconds[base.rows]
    counter = None
    if energy is not None:
        counter = energy.values if energy is base else _onto(times, seconds[energy.rows], energy.values)
    temperatures: dict[str, F64] = {}
    for s in strands:
        if s.said.quantity == "temperature":
            place = s.said.place or plain(s.said.rest) or "machine"
            temperatures.setdefault(place, _onto(times, seconds[s.rows], s.values))
    return Raw(
        device, times, None if power is None else power.values, "" if power is None else power.unit,
        "" if power is None else power.name, counter, "" if energy is None else energy.unit,
        "" if energy is None else energy.name, None, False, temperatures, base.rows,
        int(sum(s.rows.size for s in strands if s in (power, energy))), "long: a row for each quantity",
    )  # fmt: skip


def _onto(times: F64, at: F64, values: F64) -> F64:
    """Values carried onto other rows: row by row where the stamps agree, or else the last one known."""
    if times.size == at.size and bool(np.array_equal(times, at, equal_nan=True)):
        return values
    good = np.flatnonzero(np.isfinite(at) & np.isfinite(values))
    out = np.full(times.shape, np.nan)
    if not good.size:
        return out
    order = good[np.argsort(at[good], kind="stable")]
    steps = np.diff(at[order])
    # what a logger writes of one moment may have stamps a little apart
    same_s = min(_SAME_S, 0.1 * float(np.median(steps))) if steps.size else 0.0
    place = np.searchsorted(at[order], times + same_s, side="right") - 1
    found = (place >= 0) & np.isfinite(times)
    out[found] = values[order][place[found]]
    return out
