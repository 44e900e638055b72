"""What is read out of a line-up where the pointer is: who, when, how many watts, how much so far."""

import numpy as np

from core.figures.line_up_values import LineUpFigure
from core.formatting import POINT, NumberLocale, number
from core.language import tr


def at_place(figure: LineUpFigure, run_id: str, x: float, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """One run read out at a place of the axis, as lines: who, where, its power, what it has used so far.

    Parameters
    ----------
    figure : LineUpFigure
    run_id : str
        Of a run that is shown.
    x : float
        In the unit of the axis.
    locale : NumberLocale

    Returns
    -------
    tuple of str
        Empty when there is no such run.
    """
    strand = next((s for s in figure.strands if s.run_id == run_id), None)
    if strand is None:
        return ()
    anchor = figure.choices.anchor
    moment_s = float(strand.moment_s(np.array([x / figure.factor]), anchor)[0])
    decimals = 0 if figure.x.unit in ("%", "s") else 1
    at = {"place": number(x, decimals, locale), "unit": figure.x.unit}
    if not strand.start_s <= moment_s <= strand.end_s:
        return (strand.label, tr("at {place} {unit}: not running", **at))
    lines = [strand.label, tr("at {place} {unit}", **at)]
    state = next((s.state for s in strand.states if s.start_s <= moment_s <= s.end_s), "")
    used_wh = float(strand.course.used_wh(np.array([moment_s - strand.start_s]))[0]) * strand.closing
    for panel in figure.panels:
        for curve in panel.curves:
            if curve.run_id == run_id and panel.y.unit == "W" and curve.x.size:
                value = number(float(np.interp(x, curve.x, curve.y)), 1, locale)
                told = tr("{watts} W more", watts=value) if panel.y.low < 0 else f"{value} W"
                lines.append(f"{told}, {tr(state)}" if state else told)
                break
    lines.append(tr("{energy} Wh so far", energy=number(used_wh, 2, locale)))
    return tuple(lines)
