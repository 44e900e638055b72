"""The Bed page's charts as figures: beds side by side, watts against the difference, a cooler bed in time."""

import numpy as np
from attrs import evolve

from core.beds.plate import Plate, loss
from core.beds.quantities import (
    EFFICIENCY,
    HALF_HOUR,
    HEAT_CAPACITY,
    HELD_W,
    SLOPE,
    TIMES_FLOOR,
    W_PER_DM2,
    WARM_UP_S,
    WARM_UP_WH,
)
from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, Rest, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.measures import tests_text
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Dot, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, number, with_interval, with_unit
from core.language import mark, tr
from core.quantities import Quantity
from core.results.bed_answer import conditions, headline
from core.results.bed_compared import by_area
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.study import Study

#: points of a curve: enough for any screen
_POINTS = 41
#: of more machines only the chosen one's band is drawn
_MOST_BANDS = 5
#: holds beyond this part of the axis leave its first part away, but for this part of theirs
_FAR_PART, _BEFORE_PART = 0.45, 0.3
_NO_TEST = mark("no hold test")


def beds_figure(beds: Beds, study: Study, locale: NumberLocale = POINT) -> ComparisonFigure:
    """One row a machine, one column a measure; those that lose most for their size first."""
    first = by_area(beds)
    rest = [m for m in beds.machines if m not in first]
    rest.sort(key=lambda m: -(m.reference.power_w if m.reference else -1.0))
    machines = (*first, *(m for m in rest if m.held), *(m for m in rest if not m.held))
    given = (
        (W_PER_DM2, 0, _per_area, tr("dashed: what a plate must lose"), tr("dashed: floor")),
        (HELD_W, 1, _held_w, "", ""),
        (TIMES_FLOOR, 2, _times_floor, "", ""),
        (WARM_UP_WH, 3, _warm_up_wh, "", ""),
        (WARM_UP_S, 4, _warm_up_s, "", ""),
        (HALF_HOUR, 5, _half_hour, "", ""),
        (HEAT_CAPACITY, 6, _heat_capacity, "", ""),
        (EFFICIENCY, 7, _efficiency, "", ""),
    )
    measures: list[Measure] = []
    for quantity, rank, of, legend, short in given:
        values = [of(m) for m in machines]
        if any(v is not None for v in values):
            with_floor = quantity is W_PER_DM2 and any(m.floor_w for m in machines)
            words = (legend, short) if with_floor else ("", "")
            measures.append(_measure(quantity, rank, machines, values, words, locale, not measures))
    return ComparisonFigure(
        headline=headline(beds, locale),
        conditions=conditions(beds, study, locale),
        source=source_of(study),
        rows=tuple(Row(m.machine_id, m.name, m.slot, _row_text(m)) for m in machines),
        measures=tuple(measures),
    )


def _row_text(machine: MachineBed) -> str:
    return tr(machine.supply) if machine.supply else tests_text(machine.tests)


def _measure(
    quantity: Quantity,
    rank: int,
    machines: tuple[MachineBed, ...],
    values: list[Measured | None],
    words: tuple[str, str],
    locale: NumberLocale,
    is_first: bool,
) -> Measure:
    floors = [_floor_per_dm2(m) if quantity is W_PER_DM2 else None for m in machines]
    ends = [(v.value + (v.u95 or 0.0)) * quantity.factor for v in values if v is not None]
    top = axis_end((*ends, *(f for f in floors if f is not None)))
    cells = []
    for machine, value, floor in zip(machines, values, floors, strict=True):
        if value is None:
            note, reason = _lacking(machine, quantity, is_first)
            cells.append(Cell(note=note, reason=reason))
            continue
        u95 = None if value.u95 is None else value.u95 * quantity.factor
        text = with_interval(value.value, value.u95, quantity, locale)
        dots = tuple(
            Dot(h.run_id, v * quantity.factor, included=True, beyond=v * quantity.factor > top)
            for h in machine.held
            for v in [_of_hold(h, quantity)]
            if v is not None
        )
        cells.append(Cell(mark=Mark(value.value * quantity.factor, u95, text), dots=dots, against=floor))
    return Measure(
        quantity.key,
        Axis(quantity.name, quantity.unit, top, locale),
        tuple(cells),
        bars=quantity is W_PER_DM2,
        rank=rank,
        legend=words[0],
        legend_short=words[1],
    )


def _lacking(machine: MachineBed, quantity: Quantity, is_first: bool) -> tuple[str, str]:
    """Why a machine has no value, in short and at length."""
    if not machine.tests:
        short = tr(_NO_TEST) if is_first else ""
        return short, tr("{name}: no hold test was found or marked.", name=machine.name)
    if machine.area_dm2 is None and quantity in (W_PER_DM2, TIMES_FLOOR):
        return tr("area?"), tr("{name}: type the area of its bed below.", name=machine.name)
    if machine.model is None:
        return tr("not known"), tr(
            "{name}: note the bed's temperature during the test, below.", name=machine.name
        )
    if quantity is EFFICIENCY:
        return "", tr("{name}: no log of the bed alone covers a hold test.", name=machine.name)
    if quantity is HALF_HOUR:
        return tr("too short"), tr(
            "{name}: no temperature was held for an hour from cold.", name=machine.name
        )
    return tr("not seen"), tr(
        "{name}: the test began warm, or its warm-up is not in the log.", name=machine.name
    )


def _of_hold(held: Held, quantity: Quantity) -> float | None:
    """A single hold's own value, where it means the same as the machine's."""
    if quantity is TIMES_FLOOR:
        return held.times_floor
    if quantity is HEAT_CAPACITY:
        return None if held.heat_capacity is None else held.heat_capacity.value
    return None


def _per_area(machine: MachineBed) -> Measured | None:
    return machine.w_per_dm2


def _held_w(machine: MachineBed) -> Measured | None:
    watts = machine.reference
    return None if watts is None else Measured(watts.power_w, watts.u95_w)


def _times_floor(machine: MachineBed) -> Measured | None:
    if machine.reference is None or not machine.floor_w:
        return None
    return Measured(machine.reference.power_w / machine.floor_w, machine.reference.u95_w / machine.floor_w)


def _warm_up_wh(machine: MachineBed) -> Measured | None:
    held = machine.from_cold
    return None if held is None else held.warm_up_wh


def _warm_up_s(machine: MachineBed) -> Measured | None:
    held = machine.from_cold
    return None if held is None else Measured(held.hold.warm_up_s, None)


def _half_hour(machine: MachineBed) -> Measured | None:
    """Of the first test that lasted an hour."""
    first = machine.first_hour
    return None if first is None else Measured(first.half_over_full or 0.0, None)


def _heat_capacity(machine: MachineBed) -> Measured | None:
    return machine.heat_capacity


def _efficiency(machine: MachineBed) -> Measured | None:
    return machine.efficiency


def _floor_per_dm2(machine: MachineBed) -> float | None:
    return machine.floor_w / machine.area_dm2 if machine.floor_w and machine.area_dm2 else None


def watts_figure(
    beds: Beds, study: Study, machine_id: str, locale: NumberLocale = POINT
) -> CurvesFigure | None:
    """Watts against the difference of the bed from the room; one machine's floor and residuals with it.

    Parameters
    ----------
    beds : Beds
    study : Study
    machine_id : str
        Whose floor and residuals are shown; the residuals of another where it has no line.
    locale : NumberLocale

    Returns
    -------
    CurvesFigure or None
        None where no hold has both watts and a temperature. x in K, y in W.
    """
    known = [m for m in beds.machines if m.model is not None]
    if not known:
        return None
    spots = tuple(s for m in known for s in _spots(m))
    chosen = next((m for m in known if m.machine_id == machine_id), known[0])
    lines = [(m, t) for m in known for t in [_line(m)] if t is not None]
    is_crowded = len(lines) > _MOST_BANDS
    trends = [evolve(t, low=(), high=()) if is_crowded and m is not chosen else t for m, t in lines]
    far = 1.08 * max(s.x for s in spots)
    floor = _floor(chosen, beds, far)
    if floor is not None:
        trends.append(floor)
    tops = [s.y + (s.u95 or 0.0) for s in spots] + [v for t in trends for v in (t.high or t.y)]
    return CurvesFigure(
        headline=_fit_text(chosen, locale),
        conditions=conditions(beds, study, locale),
        source=source_of(study),
        x=Scale(tr("Bed above room"), "K", _near_k(min(s.x for s in spots), far), far, locale),
        y=Scale(tr("Watts of the bed"), "W", 0.0, axis_end(tuple(tops), margin=0.08), locale),
        trends=tuple(trends),
        spots=spots,
        rest=next((r for m in (chosen, *known) for r in [_rest(m, locale)] if r is not None), None),
        note=_band_note(chosen, is_crowded) if any(t.low for t in trends) else "",
        facts=tuple(_fit_text(m, locale) for m in known),
    )


def _band_note(chosen: MachineBed, is_crowded: bool) -> str:
    return (
        tr("band: 95 % of the line of {name}", name=chosen.name)
        if is_crowded
        else tr("band: 95 % of the line")
    )


def _near_k(least_k: float, far_k: float) -> float:
    """Where the axis begins: at zero, or just before the first hold where all lie far from it. [K]"""
    return 0.0 if least_k < _FAR_PART * far_k else least_k - _BEFORE_PART * (far_k - least_k)


def lines_told(beds: Beds, machine_id: str, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """The lines of watts against temperature in words: the chosen machine's first, then all that have one."""
    known = [m for m in beds.machines if m.model is not None]
    others = [
        m for m in known if m.machine_id != machine_id and m.model is not None and m.model.fit is not None
    ]
    first = [m for m in known if m.machine_id == machine_id]
    return tuple(_fit_text(m, locale) for m in (*first, *others))


def _spots(machine: MachineBed) -> list[Spot]:
    shown = [h for h in machine.held if h.bed_w is not None and (h.difference_k or 0.0) > 0]
    warmest = max((h.difference_k or 0.0 for h in shown), default=0.0)
    named = machine.model is None or machine.model.fit is None
    return [
        Spot(
            h.difference_k or 0.0,
            h.bed_w.value if h.bed_w else 0.0,
            None if h.bed_w is None else h.bed_w.u95,
            machine.slot,
            h.run_id,
            machine.machine_id,
            str(h.number),
            machine.name if named and h.difference_k == warmest else "",
            machine.counts(h),
        )
        for h in shown
    ]


def _line(machine: MachineBed) -> Trend | None:
    """The fitted line with its band, over the held temperatures only."""
    fit = machine.model.fit if machine.model is not None else None
    if fit is None:
        return None
    x = np.linspace(fit.lowest_k, fit.highest_k, _POINTS)
    at = [fit.at(k) for k in x.tolist()]
    return Trend(
        tuple(x.tolist()),
        tuple(p.power_w for p in at),
        machine.slot,
        machine.name,
        tuple(p.low_w for p in at),
        tuple(p.high_w for p in at),
    )


def _floor(machine: MachineBed, beds: Beds, far_k: float) -> Trend | None:
    if machine.area_dm2 is None:
        return None
    plate = Plate.square(machine.area_dm2)
    x = np.linspace(0.0, far_k, _POINTS).tolist()
    y = [
        loss(plate, beds.room_c + k, beds.room_c, emissivity=beds.emissivity).total_w if k > 0 else 0.0
        for k in x
    ]
    return Trend(tuple(x), tuple(y), None, tr("floor of {name}", name=machine.name), is_dashed=True)


def _rest(machine: MachineBed, locale: NumberLocale) -> Rest | None:
    """What the fit leaves of each point."""
    fit = machine.model.fit if machine.model is not None else None
    if fit is None or fit.df == 0:
        return None
    spots = []
    for spot in (s for s in _spots(machine) if s.is_counted):
        over_w = spot.y - fit.at(spot.x).power_w
        spots.append(Spot(spot.x, over_w, spot.u95, spot.slot, spot.run_id, spot.machine_id, spot.key))
    reach = 1.15 * max(abs(s.y) + (s.u95 or 0.0) for s in spots)
    return Rest(
        Scale(tr("Watts over the line, {name}", name=machine.name), "W", -reach, reach, locale), tuple(spots)
    )


def _fit_text(machine: MachineBed, locale: NumberLocale) -> str:
    """A machine's line in words, with what it says of its slope."""
    model = machine.model
    if model is None:
        return tr("{name}: not known", name=machine.name)
    if model.fit is None:
        points = model.points
        k, w = number(points[0].difference_k, 1, locale), number(points[0].power_w, 1, locale)
        return tr(
            "{name}: one temperature held, {watts} W at {kelvin} K above the room; a line needs two.",
            name=machine.name,
            watts=w,
            kelvin=k,
        )
    fit = model.fit
    middle_k = (fit.lowest_k + fit.highest_k) / 2
    slope = fit.coefficients[1] + (2 * fit.coefficients[2] * middle_k if fit.is_curve else 0.0)
    u95 = None if fit.is_curve else fit.u95(1)
    told = {
        "name": machine.name,
        "slope": with_unit(with_interval(slope, u95, SLOPE, locale), SLOPE),
        "low": number(fit.lowest_k, 0, locale),
        "high": number(fit.highest_k, 0, locale),
    }
    if fit.is_curve:
        said = tr("{name}: a curve: in its middle {slope} from {low} to {high} K above the room", **told)
    else:
        said = tr("{name}: a line of {slope} from {low} to {high} K above the room", **told)
    if fit.is_consistent or fit.df == 0:
        return f"{said}."
    return tr("{said}; the points lie off it, so the band was widened.", said=said)
