"""One machine's columns made into a trace: units, order, counter, kind of sampling, checks.

Rules: every step reports what it did; nothing is thrown away silently.
"""

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from core.language import later, mark, tr
from core.logs import counter as counters
from core.logs.clock import Clocked
from core.logs.machines import Raw
from core.logs.magnitudes import doubts_of_units, settle
from core.logs.order import put_in_order
from core.logs.reading import CHOSEN
from core.logs.sampling import judge
from core.logs.signs import settle_signs
from core.logs.stand_ins import stand_in
from core.logs.survey import Survey, survey
from core.problems import Problem, Severity
from core.progress import Progress, silent
from core.study import Choices
from core.traces import F64, Clock, Sampling, Trace, smallest_step, step_extremes
from core.units import ENERGY_IN_WH, POWER_IN_W, SECONDS_PER_HOUR

_DOING = mark("making traces")
#: power and counter differ aloud when further apart than this share and than their steps explain
DIFFER = 0.05
#: no meter shows a larger number, in any unit
_ABSURD = 1e13
#: rows looked at to see whether values are held
_HELD_ROWS = 100_000
_HELD_MOST = 12
#: a shorter step between two times is looked at again once they count from the first of them [s]
_CLEAR_STEP_S = 1e-5
#: a counter whose step is less than this share of the total carries the log's energy
FINE_COUNTER = 0.005


@frozen
class Made:
    """A trace with its energies [Wh], the units its columns were read in, and all there is to tell."""

    trace: Trace | None
    by_power_wh: float | None = None
    by_counter_wh: float | None = None
    used_wh: float | None = None
    missing: int = 0
    power_unit: str = ""
    counter_unit: str = ""
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()


def make(
    raw: Raw, clocked: Clocked, key: str, file: str, choices: Choices, progress: Progress = silent
) -> Made:
    """Make the trace of one machine.

    Parameters
    ----------
    raw : Raw
    clocked : Clocked
        The clock of the file; its seconds are those of `raw` already.
    key : str
        Identity for the trace.
    file : str
        Name for problems.
    choices : Choices
    progress : Progress
        Called between the passes over a long log; may raise `Cancelled`.
    """
    source = raw.power if raw.power is not None else raw.counter
    assert source is not None
    look = survey(raw.seconds, source, raw.counter)
    noted: tuple[Problem, ...] = ()
    instead = None if raw.power is None else stand_in(raw.power, look.lowest, look.highest)
    if raw.power is not None and instead is not None:
        is_instead = raw.power == instead
        told: dict[str, object] = {"count": int(is_instead.sum()), "value": f"{instead:g}"}
        noted = (Problem("log.stand_in", Severity.NOTE, file, facts=told),)
        source = np.where(is_instead, np.nan, raw.power)
        raw = evolve(raw, power=source)
        look = survey(raw.seconds, source, raw.counter)
    keep: slice | NDArray[np.bool_] = slice(None)
    missing, carried = 0, raw.counter
    if not look.is_whole or look.largest > _ABSURD:
        keep, missing = _usable(raw.seconds, source)
        carried = _carried(raw.counter, keep, missing)
    seconds = raw.seconds[keep]
    if seconds.size < 2:
        return _too_few(seconds.size, missing, file)
    progress(0.1, tr(_DOING))
    steps = (look.shortest_s, look.longest_s) if look.is_whole else step_extremes(seconds)
    order = put_in_order(seconds, source[keep], clocked.kind, clocked.tick_s, file, steps)
    if order.seconds.size < 2:
        return _too_few(int(order.seconds.size), missing, file)
    problems = [*noted, *order.problems]

    def sorted_(column: F64 | None) -> F64 | None:
        if column is None:
            return None
        column = column[keep]
        return column if order.rows is None else column[order.rows]

    first_s = float(order.seconds[0])
    time_s = np.subtract(order.seconds, first_s, out=_room(order.seconds, raw))
    power, total, product = sorted_(raw.power), sorted_(carried), sorted_(raw.volt_ampere)
    is_other = not isinstance(keep, slice) or order.rows is not None
    if total is not None and _largest_count(total, look) > _ABSURD:
        total = np.where(np.abs(total) <= _ABSURD, total, np.nan)
        is_other = True
    reasons: list[tuple[str, str]] = []
    if power is not None and look.lowest < 0:
        signed = settle_signs(time_s, power, raw.power_unit, total, raw.counter_unit, file, choices.negative)
        problems += signed.problems
        reasons += [("negative", signed.reason)] if signed.reason else []
        if signed.power is not None:
            power, is_other = signed.power, True
        total = signed.counter if signed.counter is not None else total if signed.is_counter_used else None
    if is_other:
        look = survey(time_s, time_s if power is None else power, total)
    progress(0.3, tr(_DOING))
    units = settle(time_s, power, raw.power_unit, total, raw.counter_unit, product, file)
    problems += units.problems
    written = (
        (raw.power_name if raw.power is not None else "", raw.power_unit, units.power),
        (raw.counter_name if total is not None else "", raw.counter_unit, units.counter),
    )
    problems += doubts_of_units(written, file)
    reasons += units.reasons
    factor = POWER_IN_W[units.power]
    power_w = None if power is None else _scaled(power, factor, raw)
    progress(0.45, tr(_DOING))
    stitched = None
    if total is not None:
        scale = ENERGY_IN_WH[units.counter]
        gains_wh = (look.least_gain * scale, look.most_gain * scale)
        stitched = counters.stitch(time_s, _scaled(total, scale, raw), power_w, file, gains_wh)
        problems += [] if stitched is None else stitched.problems
    kind: Sampling = "averaged"
    resolution_w: float | None = None
    why: str = later(
        mark("averaged: only a counter is logged, so each power is the mean of the interval before it")
    )
    if power_w is not None:
        counted, breaks = (None, ()) if stitched is None else (stitched.counter_wh, stitched.breaks_s)
        resolution_w = smallest_step(power_w)
        judged = judge(time_s, power_w, resolution_w, counted, breaks)
        kind, why = judged.kind, judged.reason
    elif stitched is not None:
        power_w = _from_counter(time_s, stitched.counter_wh)
        facts: dict[str, object] = {"step_wh": stitched.step_wh}
        problems.append(Problem("log.power_from_counter", Severity.CAUTION, file, facts=facts))
    else:
        problem = Problem("log.nothing_counted", Severity.ERROR, file)
        return Made(None, missing=missing, problems=(*problems, problem))
    if choices.sampling is not None:
        kind, why = choices.sampling, CHOSEN
    reasons.append(("sampling", why))
    if raw.is_apparent:
        facts_a = {"column": raw.power_name}
        problems.append(Problem("log.apparent_power", Severity.CAUTION, file, facts=facts_a))
    progress(0.7, tr(_DOING))
    clock = Clock(
        clocked.kind,
        None if clocked.kind == "relative" else first_s,
        clocked.offset_s,
        clocked.zone,
        order.shifts,
    )
    temperatures = {k: v for k, t in raw.temperatures_c.items() if (v := sorted_(t)) is not None}
    trace = Trace.of(
        time_s, power_w, kind, None if stitched is None else stitched.counter_wh, key=key, clock=clock,
        counter_step_wh=0.0 if stitched is None else stitched.step_wh,
        counter_breaks_s=() if stitched is None else stitched.breaks_s, resolution_w=resolution_w,
        temperatures_c=temperatures,
        steps_s=(look.shortest_s, look.longest_s) if look.shortest_s > _CLEAR_STEP_S else None,
    )  # fmt: skip
    progress(0.9, tr(_DOING))
    made = Made(
        trace, missing=missing, power_unit=units.power if power is not None else "",
        counter_unit=units.counter if total is not None else "", reasons=tuple(reasons),
        problems=tuple(problems),
    )  # fmt: skip
    by_power = None if power is None else energy_by_power_wh(trace, look, factor)
    return _checked(made, by_power, raw, file)


def _usable(seconds: F64, source: F64) -> tuple[NDArray[np.bool_], int]:
    """Rows with a time and a value, and how many have a time alone."""
    timed = np.isfinite(seconds)
    usable = timed & np.isfinite(source) & (np.abs(source) <= _ABSURD)
    return usable, int(timed.sum() - usable.sum())


def _carried(counter: F64 | None, usable: NDArray[np.bool_], missing: int) -> F64 | None:
    """A counter that stands on other rows than the power, carried on to the rows of the power."""
    if counter is None or not missing:
        return counter
    known = np.isfinite(counter)
    if 2 * int((known & usable).sum()) >= int(known.sum()):
        return counter
    last = np.maximum.accumulate(np.where(known, np.arange(counter.size), -1))
    return np.where(last >= 0, counter[last], np.nan)


def _too_few(count: int, missing: int, file: str) -> Made:
    problem = Problem("log.too_few_rows", Severity.ERROR, file, facts={"count": count})
    return Made(None, missing=missing, problems=(problem,))


def _room(values: F64, raw: Raw) -> F64 | None:
    """Where a result may be written: over the column itself when nobody else needs it.

    In a long log new columns cost more than what is computed in them.
    """
    return values if raw.is_own and values.flags.writeable else None


def _largest_count(total: F64, look: Survey) -> float:
    """Largest magnitude of a counter, missing values aside; one that never falls has it at its ends."""
    if look.least_gain >= 0 and np.isfinite(look.most_gain):
        return max(abs(float(total[0])), abs(float(total[-1])))
    return max(float(np.fmax.reduce(total)), -float(np.fmin.reduce(total)))


def _scaled(values: F64, factor: float, raw: Raw) -> F64:
    return values if factor == 1.0 else np.multiply(values, factor, out=_room(values, raw))


def _from_counter(time_s: F64, counter_wh: F64) -> F64:
    steps = np.diff(counter_wh) * SECONDS_PER_HOUR / np.diff(time_s)
    return np.nan_to_num(np.concatenate((steps[:1], steps)))


def energy_by_power_wh(trace: Trace, look: Survey, factor: float) -> float:
    """Energy of a whole trace from its power alone; the power was surveyed in units of `factor` W. [Wh]"""
    first, last = {"on_change": (1.0, 0.0), "averaged": (0.0, 1.0), "sampled": (0.5, 0.5)}[trace.kind]
    total = factor * (first * look.by_first + last * look.by_last)
    if trace.kind == "averaged":
        for gap in trace.gaps:  # a mean over the interval before it says nothing about a gap
            i = int(np.searchsorted(trace.time_s, gap.end_s))
            total += float(0.5 * (trace.power_w[i - 1] - trace.power_w[i]) * gap.seconds)
    return total / SECONDS_PER_HOUR


def _checked(made: Made, by_power: float | None, raw: Raw, file: str) -> Made:
    """Add energies, and hold power and counter against each other."""
    trace = made.trace
    assert trace is not None
    by_counter = None
    problems = list(made.problems)
    if trace.counter_wh is not None:
        ends = _ends(trace.counter_wh)
        if ends is not None:
            first, last = ends
            by_counter = float(trace.counter_wh[last] - trace.counter_wh[first])
            covered = float(trace.time_s[last] - trace.time_s[first])
            if covered < 0.95 * trace.end_s:
                by_counter = None
    used = by_power if by_counter is None else by_counter
    if by_power is not None and by_counter is not None:
        step = trace.counter_step_wh * (1 + len(trace.counter_breaks_s))
        used = by_counter if step / np.sqrt(6) < FINE_COUNTER * by_counter else by_power
        apart = abs(by_power - by_counter)
        ratio = by_power / by_counter if by_counter > 0 else np.inf
        if by_counter > 4 * step and not 0.2 < ratio < 5:
            stated = {"power_unit": raw.power_unit or "W", "counter_unit": raw.counter_unit or "Wh"}
            facts_u = {**stated, "ratio": float(f"{ratio:.3g}")}
            problems.append(Problem("log.power_and_counter_differ", Severity.CAUTION, file, facts=facts_u))
        elif apart > DIFFER * max(by_power, by_counter) + 2 * step:
            facts = {"by_power_wh": round(by_power, 2), "by_counter_wh": round(by_counter, 2)}
            problems.append(Problem("log.energies_differ", Severity.CAUTION, file, facts=facts))
    if trace.gaps:
        lost = sum(g.seconds for g in trace.gaps)
        facts_g: dict[str, object] = {
            "count": len(trace.gaps), "seconds": round(lost, 1),
            "percent": round(100 * lost / max(trace.end_s, 1e-9), 2),
        }  # fmt: skip
        severity = Severity.CAUTION if lost > 0.01 * trace.end_s else Severity.NOTE
        problems.append(Problem("log.gaps", severity, file, facts=facts_g))
    held = _held(trace)
    if held > 1:
        problems.append(Problem("log.values_held", Severity.CAUTION, file, facts={"rows": held}))
    return evolve(
        made, by_power_wh=by_power, by_counter_wh=by_counter, used_wh=used, problems=tuple(problems)
    )


def _ends(values: F64) -> tuple[int, int] | None:
    """First and last row with a value, None when there is none."""
    if np.isfinite(values[0]) and np.isfinite(values[-1]):
        return 0, values.size - 1
    known = np.flatnonzero(np.isfinite(values))
    return (int(known[0]), int(known[-1])) if known.size else None


def _held(trace: Trace) -> int:
    """Rows that a meter holds each value for while the load is moving; 1 when it does not.

    A meter that holds its values changes them only every so many rows, whatever the load does.
    """
    power = trace.power_w[:_HELD_ROWS]
    change = np.abs(np.diff(power))
    changes = np.flatnonzero(change)
    # a load at rest that flips by a digit now and then says nothing about the meter
    if (
        trace.kind == "on_change"
        or not changes.size
        or float(np.median(change[changes])) < 3 * trace.resolution_w
    ):
        return 1
    between = np.diff(changes)
    between = between[between <= 3 * _HELD_MOST]
    if between.size < 30:
        return 1
    counts = np.bincount(between, minlength=3 * _HELD_MOST + 1)
    for rows in range(_HELD_MOST, 1, -1):
        if counts[::rows].sum() > 0.95 * between.size and counts[rows] > 0.2 * between.size:
            return rows
    return 1
