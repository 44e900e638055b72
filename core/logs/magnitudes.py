"""Units that no heading states, found from magnitudes: power against the counter, or against volts x amperes.

Rules: a stated unit is never overruled, only doubted aloud.
"""

import math
import re
from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.problems import Problem, Severity
from core.traces import F64, smallest_step
from core.units import ENERGY_IN_WH, POWER_IN_W, SECONDS_PER_HOUR

#: more than any plug carries [W]: 32 A at 250 V
MOST_W = 8000.0
_COUNTERS = ("kWh", "Wh", "kJ", "MJ", "J", "mWh")
#: what registers of meters count in; believed only where a counter of a stated unit agrees this well
_REGISTERS, _REGISTER_AGREES = ("0.1 W", "0.01 W"), 0.1
#: less than this, in milliwatts or gained in milliwatt hours, is of no machine: the M was mega
_LEAST_MILLI = 0.01
#: units that are none of those the program knows, as headings have them in brackets
_FOREIGN = re.compile(
    r"[\[(]\s*([A-Za-zµ]{1,4}\s?/\s?(?:h|hr|min|s|d)|hp|ps|cv|ch|k?cal|btu|dbm|[dch]wh?|gwh?|e[vV])\s*[\])]",
    re.IGNORECASE,
)
_OF_KNOWN = re.compile(r"^k?Wh?\s?/", re.IGNORECASE)


@frozen
class Units:
    """Units to read power and counter in, with the reason where one was inferred."""

    power: str
    counter: str
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()


def settle(
    time_s: F64, power: F64 | None, power_unit: str, counter: F64 | None, counter_unit: str,
    volt_ampere: F64 | None, file: str,
) -> Units:  # fmt: skip
    """Decide the units of a power and a counter column.

    Parameters
    ----------
    time_s : ndarray, shape (n,)
        [s]
    power, counter, volt_ampere : ndarray, shape (n,), or None
        As written.
    power_unit, counter_unit : str
        As stated, ``""`` where not.
    """
    power_unit, counter_unit, mega = _mega(power, power_unit, counter, counter_unit, file)
    if mega:
        units = settle(time_s, power, power_unit, counter, counter_unit, volt_ampere, file)
        return evolve(units, problems=(*units.problems, *mega))
    if (power is None or power_unit in POWER_IN_W) and (counter is None or counter_unit in ENERGY_IN_WH):
        return Units(power_unit or "W", counter_unit or "Wh")
    counted = None if counter is None else gained(counter)
    added_up = None if power is None else worked(time_s, power)
    powers: tuple[str, ...] = (power_unit,) if power_unit in POWER_IN_W else ("W", "kW", "mW")
    counters = (counter_unit,) if counter_unit in ENERGY_IN_WH else _COUNTERS
    if len(powers) > 1 and counter_unit in ENERGY_IN_WH:
        powers = (*powers, *_REGISTERS)
    best: tuple[float, str, str] | None = None
    if counted is not None and added_up is not None and counted > 0 and added_up > 0:
        for p in powers:
            for c in counters:
                off = abs(math.log(added_up * POWER_IN_W[p] / (counted * ENERGY_IN_WH[c])))
                if p in _REGISTERS and off > _REGISTER_AGREES:
                    continue
                off += 0.05 * (powers.index(p) + counters.index(c)) + 5.0 * _absurd(power, p)
                if best is None or off < best[0]:
                    best = (off, p, c)
    reasons: list[tuple[str, str]] = []
    problems: list[Problem] = []
    if best is not None and best[0] < 1.0:
        _, p, c = best
        assert added_up is not None
        assert counted is not None
        ratio = added_up * POWER_IN_W[p] / (counted * ENERGY_IN_WH[c])
        text = f"the power adds up to {ratio:.3g} of what the counter gained"
        if len(powers) > 1:
            reasons.append(("power unit", f"{p}: so {text}"))
        if len(counters) > 1:
            reasons.append(("counter unit", f"{c}: so {text}"))
        return Units(p, c, tuple(reasons))
    p = powers[0] if len(powers) == 1 else _power_alone(power, volt_ampere, reasons, problems, file)
    c = counters[0]
    if len(counters) > 1 and counter is not None:
        c = "kWh" if 0 < smallest_step(counter[np.isfinite(counter)]) <= 0.011 else "Wh"
        reasons.append(("counter unit", f"{c}: from the size of its steps"))
        problems.append(Problem("log.counter_unit_doubtful", Severity.CAUTION, file, facts={"unit": c}))
    return Units(p, c, tuple(reasons), tuple(problems))


def _mega(
    power: F64 | None, power_unit: str, counter: F64 | None, counter_unit: str, file: str
) -> tuple[str, str, tuple[Problem, ...]]:
    """Units with those made mega that are written as milli and cannot be; what there is to say of it."""
    problems: list[Problem] = []
    if power is not None and power_unit == "mW" and np.isfinite(power).any():
        highest = float(np.nanmax(np.abs(power)))
        if 0 < highest < _LEAST_MILLI:
            power_unit = "MW"
            problems.append(Problem("log.unit_mega", Severity.NOTE, file, facts={"unit": "MW"}))
    if counter is not None and counter_unit == "mWh" and 0 < gained(counter) < _LEAST_MILLI:
        counter_unit = "MWh"
        problems.append(Problem("log.unit_mega", Severity.NOTE, file, facts={"unit": "MWh"}))
    return power_unit, counter_unit, tuple(problems)


def foreign_unit(heading: str) -> str:
    """A unit in a heading that is none of those known, "" where there is none.

    Examples
    --------
    >>> foreign_unit("power [BTU/h]"), foreign_unit("power [W]"), foreign_unit("power (plug 1)")
    ('BTU/h', '', '')
    """
    found = _FOREIGN.search(heading)
    return "" if found is None or _OF_KNOWN.match(found[1]) else found[1]


def doubts_of_units(written: Sequence[tuple[str, str, str]], file: str) -> tuple[Problem, ...]:
    """What has to be said of headings whose unit is not known.

    Parameters
    ----------
    written : sequence of (heading, unit stated, unit taken)
    file : str
        Name for problems.
    """
    return tuple(
        Problem(
            "log.unit_unknown", Severity.CAUTION, file, facts={"unit": unit, "column": name, "taken": taken}
        )
        for name, stated, taken in written
        if not stated and (unit := foreign_unit(name))
    )


def _absurd(power: F64 | None, unit: str) -> bool:
    return power is not None and float(np.nanmax(power)) * POWER_IN_W[unit] > MOST_W


def gained(counter: F64) -> float:
    """What the counter gained, in its own unit; 0 when that is only a few of its steps."""
    finite = counter[np.isfinite(counter)]
    steps = np.diff(finite)
    fell = steps < 0
    if fell.size and fell.mean() > 0.1:
        return float(finite.sum())
    gained = float(steps[~fell].sum())
    step = smallest_step(finite)
    return gained if gained >= 4 * step else 0.0


def worked(time_s: F64, power: F64) -> float:
    """Energy of the power column as if it were written in watts. [Wh]"""
    good = np.isfinite(power)
    time, values = time_s[good], power[good]
    steps = (
        np.minimum(np.diff(time), 20 * max(1e-9, float(np.median(np.diff(time)))))
        if time.size > 1
        else np.zeros(0)
    )
    return float((0.5 * (values[1:] + values[:-1]) * steps).sum()) / SECONDS_PER_HOUR


def _power_alone(
    power: F64 | None,
    volt_ampere: F64 | None,
    reasons: list[tuple[str, str]],
    problems: list[Problem],
    file: str,
) -> str:
    """The unit of a power that no counter vouches for."""
    if power is None or not np.isfinite(power).any():
        return "W"
    highest = float(np.nanmax(power))
    if volt_ampere is not None and np.isfinite(volt_ampere).any() and float(np.nanmax(volt_ampere)) > 0:
        busy = volt_ampere > 0.3 * float(np.nanmax(volt_ampere))
        ratio = float(np.nanmedian(power[busy] / volt_ampere[busy]))
        for unit, low, high in (("W", 0.2, 1.3), ("mW", 200.0, 1300.0), ("kW", 2e-4, 1.3e-3)):
            if low <= ratio <= high:
                reasons.append(
                    ("power unit", f"{unit}: so power is {ratio * POWER_IN_W[unit]:.2f} of volts x amperes")
                )
                return unit
    if highest > MOST_W:
        reasons.append(("power unit", f"mW: in watts {highest:.6g} would be more than a plug carries"))
        problems.append(Problem("log.power_in_milliwatts", Severity.NOTE, file, facts={"highest": highest}))
        return "mW"
    if highest < 4.0 and smallest_step(power[np.isfinite(power)]) <= 0.0011:
        problems.append(
            Problem("log.power_unit_doubtful", Severity.CAUTION, file, facts={"highest": round(highest, 4)})
        )
    reasons.append(("power unit", "W: none is stated, and the values are those of a plug-in load in watts"))
    return "W"
