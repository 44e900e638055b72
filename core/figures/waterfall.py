"""Like for like as figures: measured and adjusted values side by side, and a machine's steps between them."""

from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, NamedScale, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, with_interval
from core.language import tr
from core.quantities import ENERGY
from core.results.like_answer import STEP_NAMES, conditions, headline, step_text
from core.results.like_for_like import Adjusted, LikeForLike
from core.results.values import Measured
from core.study import Study

#: keys of the two columns; both hold energies per part
MEASURED, ADJUSTED = "measured", "adjusted"
#: half the width of a bar, in places of the axis
_HALF = 0.36
#: the axis of the steps spans at least this part of the energy
_LEAST_SPREAD = 0.1


def like_figure(found: LikeForLike, study: Study, locale: NumberLocale = POINT) -> ComparisonFigure:
    """One row a machine; measured and adjusted energy on axes of one length, never one over another.

    Machines that could be adjusted come first, by their adjusted energy.
    """
    machines = (*found.known, *(m for m in found.machines if m.adjusted_wh is None))
    values = [v for m in machines for v in (m.measured_wh, m.adjusted_wh) if v is not None]
    top = axis_end(tuple(v.value + (v.u95 or 0.0) for v in values))
    measured = tuple(_cell(m.measured_wh, m, locale) for m in machines)
    adjusted = tuple(_cell(m.adjusted_wh, m, locale) for m in machines)
    return ComparisonFigure(
        headline=headline(found, locale),
        conditions=conditions(found, locale),
        source=source_of(study),
        rows=tuple(
            Row(m.machine_id, m.name, m.slot, tr(m.how) if m.how else tr("as measured")) for m in machines
        ),
        measures=(
            # no rank is the first: columns of one width, in which lengths can be held against each other
            Measure(MEASURED, Axis(tr("Measured"), "Wh", top, locale), measured, bars=True, rank=1),
            Measure(ADJUSTED, Axis(tr("Like for like"), "Wh", top, locale), adjusted, bars=True, rank=2),
        ),
    )


def _cell(value: Measured | None, machine: Adjusted, locale: NumberLocale) -> Cell:
    if value is None:
        return Cell(note=tr("not adjusted"), reason=f"{machine.name}: {tr(machine.why_not)}.")
    return Cell(mark=Mark(value.value, value.u95, with_interval(value.value, value.u95, ENERGY, locale)))


def waterfall_figure(
    machine: Adjusted, found: LikeForLike, study: Study, locale: NumberLocale = POINT
) -> CurvesFigure | None:
    """One machine's way from its measured to its adjusted energy; None where there is none.

    A bar of a step reaches from the energy before it to that after it; a dashed line leads on to the next;
    both ends are points with their intervals. The axis need not begin at zero: the bars are differences. [Wh]
    """
    if machine.adjusted_wh is None:
        return None
    ends = ((0, machine.measured_wh, MEASURED), (len(machine.steps) + 1, machine.adjusted_wh, ADJUSTED))
    levels_wh = [machine.measured_wh.value]
    trends: list[Trend] = []
    for place, step in enumerate(machine.steps, start=1):
        before_wh = levels_wh[-1]
        levels_wh.append(before_wh + step.change_wh)
        trends += _step(place, before_wh, levels_wh[-1], machine.slot, step_text(step, locale))
    last = len(machine.steps) + 1
    trends.append(_level(last - 1 + _HALF, last, levels_wh[-1]))
    values = [
        *levels_wh,
        *(m.value - (m.u95 or 0.0) for _, m, _ in ends),
        *(m.value + (m.u95 or 0.0) for _, m, _ in ends),
    ]
    low, high = _room(min(values), max(values))
    names = (tr("Measured"), *(tr(STEP_NAMES[s.condition]) for s in machine.steps), tr("Like for like"))
    return CurvesFigure(
        headline=tr("{name}: from measured to like for like", name=machine.name),
        conditions=conditions(found, locale),
        source=source_of(study),
        x=NamedScale(tr("From measured to like for like"), "", -0.6, last + 0.6, locale, names),
        y=Scale(tr("Energy per part, {machine}", machine=machine.name), "Wh", low, high, locale),
        trends=tuple(trends),
        spots=tuple(
            Spot(
                float(place),
                value.value,
                value.u95,
                machine.slot,
                machine.run_id,
                machine.machine_id,
                key,
                with_interval(value.value, value.u95, ENERGY, locale),
            )
            for place, value, key in ends
        ),
        facts=tuple(
            tr(
                "{condition}: {energy} Wh",
                condition=tr(STEP_NAMES[s.condition]),
                energy=step_text(s, locale),
            )
            for s in machine.steps
        ),
    )


def _step(place: int, from_wh: float, to_wh: float, slot: int, name: str) -> tuple[Trend, ...]:
    """The line that leads to a step, its bar, and what it changes, at the bar's upper edge."""
    x = (place - _HALF, place + _HALF)
    low, high = min(from_wh, to_wh), max(from_wh, to_wh)
    return (
        _level(place - 1 + (_HALF if place > 1 else 0.0), place + _HALF, from_wh),
        Trend(x, (to_wh, to_wh), slot, "", (low, low), (high, high)),
        Trend((float(place),), (high,), slot, name),
    )


def _level(from_place: float, to_place: float, energy_wh: float) -> Trend:
    return Trend((from_place, to_place), (energy_wh, energy_wh), None, is_dashed=True)


def _room(low_wh: float, high_wh: float) -> tuple[float, float]:
    """Ends of an axis around values, with room for words above; not below zero, nor all but one."""
    spread_wh = max(high_wh - low_wh, _LEAST_SPREAD * high_wh, 1e-9)
    middle_wh = (low_wh + high_wh) / 2
    return max(0.0, middle_wh - 0.65 * spread_wh), middle_wh + 0.85 * spread_wh
