"""A switch-on test as a figure: its power over time, its levels, and each step with its name and watts."""

from collections.abc import Mapping

import numpy as np

from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, Spot, Trend
from core.figures.envelope import Envelope, envelope
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.formatting import POINT, NumberLocale, number, value_alone, with_unit
from core.language import tr
from core.loads.names import BY_KEY
from core.results.load_answer import LOAD_W, conditions, headline, step_name, step_watts
from core.results.load_naming import LoadStep
from core.results.loads import Loads, LoadTest, MachineLoads
from core.study import Study
from core.traces import Trace
from core.units import SECONDS_PER_MINUTE

#: the power is drawn in so many columns of lowest and highest values
_COLUMNS = 400
#: what heats up is so large that small loads would not be seen: it may lie beyond the axis from this many
#: times the other levels on
_BEYOND = 1.5


def step_id(log_id: str, number_of: int) -> str:
    """What a step is told by in the chart: its log and its number."""
    return f"{log_id} step {number_of}"


def staircase_figure(
    loads: Loads,
    machine: MachineLoads,
    place: int,
    study: Study,
    traces: Mapping[str, Trace],
    locale: NumberLocale = POINT,
) -> CurvesFigure | None:
    """One test of a machine over the minutes of its log.

    Parameters
    ----------
    loads : Loads
        What the headline is made of.
    machine : MachineLoads
    place : int
        Which of its tests, from 0.
    study : Study
    traces : mapping of log id to Trace
    locale : NumberLocale

    Returns
    -------
    CurvesFigure or None
        None where there is no such test, or its trace is not read. x in min, y in W.
    """
    if not 0 <= place < len(machine.stairs):
        return None
    test = machine.stairs[place]
    trace = traces.get(test.log_id)
    if trace is None:
        return None
    steps = [s for s in machine.steps if test.first <= s.number < test.first + len(test.plateaus) - 1]
    most = max(p.mean_w for p in test.plateaus)
    top, is_cut = _top(test, steps, most)
    drawn = envelope(trace, test.start_s, test.end_s, _COLUMNS)
    lines = _pieces(drawn, machine.slot)
    levels = tuple(
        Trend(_minutes(np.array([p.start_s, p.end_s])), (p.mean_w, p.mean_w), None, is_dashed=True)
        for p in test.plateaus
    )
    spots = tuple(
        _spot(step, after.mean_w, top, machine, locale)
        for step, after in zip(steps, test.plateaus[1:], strict=True)
    )
    note = tr("dashed: levels")
    if is_cut:
        note = tr("{note}; heating goes up to {watts} W", note=note, watts=number(most, 0, locale))
    return CurvesFigure(
        headline=headline(loads, machine.machine_id, locale),
        conditions=conditions(loads, study, locale),
        source=source_of(study),
        x=Scale(
            tr("Time in the log"),
            "min",
            test.start_s / SECONDS_PER_MINUTE,
            test.end_s / SECONDS_PER_MINUTE,
            locale,
        ),
        y=Scale(tr("Power, {machine}", machine=machine.name), "W", 0.0, top, locale),
        trends=(*lines, *levels),
        spots=spots,
        note=note,
        facts=tuple(
            tr(
                "Step {number}: {load} {watts}",
                number=s.number,
                load=step_name(s),
                watts=step_watts(s, locale),
            )
            for s in steps
        ),
    )


def _top(test: LoadTest, steps: list[LoadStep], most: float) -> tuple[float, bool]:
    """End of the axis, and whether what heats up lies beyond it."""
    heated = {s.number - test.first + 1 for s in steps if s.load and BY_KEY[s.load].held_by}
    rest = [p.mean_w for i, p in enumerate(test.plateaus) if i not in heated]
    if heated and rest and most > _BEYOND * max(rest):
        return axis_end((max(rest),), margin=0.35), True
    return axis_end((most,), margin=0.2), False


def _spot(step: LoadStep, level_w: float, top: float, machine: MachineLoads, locale: NumberLocale) -> Spot:
    moved = ("+" if step.watts > 0 else "") + with_unit(
        value_alone(step.watts, step.u95_w, LOAD_W, locale), LOAD_W
    )
    name = f"{step.number}: {step_name(step)} {moved}"
    return Spot(
        step.at_s / SECONDS_PER_MINUTE,
        min(max(level_w, 0.0), top),
        None,
        machine.slot,
        step_id(step.log_id, step.number),
        machine.machine_id,
        str(step.number),
        name,
        is_counted=bool(step.load),
    )


def _pieces(drawn: Envelope, slot: int) -> tuple[Trend, ...]:
    """The line of the power, a piece between each two gaps."""
    is_known = ~np.isnan(drawn.power_w)
    edges = np.flatnonzero(np.diff(np.r_[False, is_known, False].astype(int)))
    return tuple(
        Trend(_minutes(drawn.time_s[a:b]), tuple(drawn.power_w[a:b].tolist()), slot)
        for a, b in edges.reshape(-1, 2)
    )


def _minutes(time_s: np.ndarray) -> tuple[float, ...]:
    return tuple((time_s / SECONDS_PER_MINUTE).tolist())
