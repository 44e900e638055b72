"""Like for like as figures: measured and adjusted values side by side, and a machine's steps between them."""

from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, NamedScale, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, with_interval
from core.quantities import ENERGY
from core.results.like_answer import STEP_NAMES, conditions, headline, step_text
from core.results.like_for_like import Adjusted, LikeForLike
from core.results.values import Measured
from core.study import Study

#: keys of the two columns; both hold energies per part
MEASURED, ADJUSTED = "measured", "adjusted"
#: half the width of a bar, in places of the axis
_HALF = 0.36


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
        headline=headline(found),
        conditions=conditions(found, locale),
        source=source_of(study),
        rows=tuple(Row(m.machine_id, m.name, m.slot, m.how or "as measured") for m in machines),
        measures=(
            Measure(MEASURED, Axis("Measured", "Wh", top, locale), measured, bars=True),
            Measure(ADJUSTED, Axis("Like for like", "Wh", top, locale), adjusted, bars=True, rank=1),
        ),
    )


def _cell(value: Measured | None, machine: Adjusted, locale: NumberLocale) -> Cell:
    if value is None:
        return Cell(note="not adjusted", reason=f"{machine.name}: {machine.why_not}.")
    return Cell(mark=Mark(value.value, value.u95, with_interval(value.value, value.u95, ENERGY, locale)))


def waterfall_figure(
    machine: Adjusted, found: LikeForLike, study: Study, locale: NumberLocale = POINT
) -> CurvesFigure | None:
    """One machine's way from its measured to its adjusted energy; None where there is none.

    Bars of a step reach from the energy before it to that after it; both ends carry their intervals. [Wh]
    """
    if machine.adjusted_wh is None:
        return None
    energy_wh, last = machine.measured_wh.value, len(machine.steps) + 1
    trends = [_bar(0, 0.0, energy_wh, machine.slot, "")]
    for place, step in enumerate(machine.steps, start=1):
        after_wh = energy_wh + step.change_wh
        trends.append(_bar(place, energy_wh, after_wh, machine.slot, step_text(step, locale)))
        energy_wh = after_wh
    trends.append(_bar(last, 0.0, machine.adjusted_wh.value, machine.slot, ""))
    ends = ((0, machine.measured_wh, MEASURED), (last, machine.adjusted_wh, ADJUSTED))
    tops = [v for t in trends for v in t.high] + [m.value + (m.u95 or 0.0) for _, m, _ in ends]
    names = ("Measured", *(STEP_NAMES[s.condition] for s in machine.steps), "Like for like")
    return CurvesFigure(
        headline=f"{machine.name}: from measured to like for like",
        conditions=conditions(found, locale),
        source=source_of(study),
        x=NamedScale("From measured to like for like", "steps", -0.6, last + 0.6, locale, names),
        y=Scale(f"Energy per part, {machine.name}", "Wh", 0.0, axis_end(tuple(tops), margin=0.2), locale),
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
        facts=tuple(f"{STEP_NAMES[s.condition]}: {step_text(s, locale)} Wh" for s in machine.steps),
    )


def _bar(place: int, from_wh: float, to_wh: float, slot: int, name: str) -> Trend:
    x = (place - _HALF, place + _HALF)
    low, high = min(from_wh, to_wh), max(from_wh, to_wh)
    return Trend(x, (to_wh, to_wh), slot, name, (low, low), (high, high))
