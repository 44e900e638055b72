"""A measure of the machines against one of their properties as a figure: scatter for numbers, else groups."""

from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, NamedScale, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.formatting import POINT, NumberLocale
from core.language import tr
from core.results.properties import Against, Group, Point
from core.results.property_answer import conditions, headline, mean_text, measured_text, value_text
from core.study import Study

#: a group's dots lie within this half-width of its place, and its mean's line is as long
_HALF = 0.34
#: dots of a group are no further apart than this
_STEP = 0.16
#: an axis of numbers begins at zero if the smallest is less than this part of the largest
_FROM_ZERO = 0.5
#: an interval of a mean may stretch the axis to this many times what the machines need
_STRETCH = 1.25
#: among more machines names would only hide the points; each is read out where the pointer is
_MOST_NAMED = 60
#: room beyond the values at either end
_MARGIN = 0.12


def properties_figure(found: Against, study: Study, locale: NumberLocale = POINT) -> CurvesFigure | None:
    """Points with their intervals and names; of words and of yes and no, groups with their means.

    Parameters
    ----------
    found : Against
    study : Study
        Names the source of the numbers.
    locale : NumberLocale

    Returns
    -------
    CurvesFigure or None
        None where no machine has both. y in the unit shown of the measure, from zero.
    """
    if not found.points:
        return None
    if found.column.kind == "number":
        x: Scale = _numbers(found, locale)
        spots = tuple(_spot(p, float(p.value), found) for p in found.points)
        trends: tuple[Trend, ...] = ()
        note = tr("bars: 95 %") if any(s.u95 for s in spots) else ""
    else:
        names = tuple(g.title for g in found.groups)
        x = NamedScale(found.column.title, "", -0.6, len(names) - 0.4, locale, names)
        spots = tuple(s for i, g in enumerate(found.groups) for s in _group_spots(i, g, found))
        trends = tuple(t for i, g in enumerate(found.groups) for t in _mean(i, g, found, locale))
        note = tr("dashed: mean; band: its 95 %") if any(t.low for t in trends) else tr("dashed: mean")
    tops = [s.y + (s.u95 or 0.0) for s in spots]
    most = _STRETCH * max(tops)
    tops += [min(v, most) for t in trends for v in t.high]
    bottoms = [s.y - (s.u95 or 0.0) for s in spots]
    low = min(0.0, *bottoms) if min(s.y for s in spots) < 0 else 0.0
    return CurvesFigure(
        headline=headline(found, locale),
        conditions=conditions(found, study, locale),
        source=source_of(study),
        x=x,
        y=Scale(
            found.quantity.name, found.quantity.unit, low, axis_end((*tops, 1e-9), margin=_MARGIN), locale
        ),
        trends=trends,
        spots=spots,
        note=note,
        facts=tuple(_fact(p, found, locale) for p in found.points),
    )


def _numbers(found: Against, locale: NumberLocale) -> Scale:
    values = [float(p.value) for p in found.points]
    low, high = min(values), max(values)
    if 0 <= low < _FROM_ZERO * high:
        low = 0.0
    spread = (high - low) or abs(high) or 1.0
    least = low - _MARGIN * spread if low != 0 else -0.04 * spread
    return Scale(found.column.title, found.column.unit, least, high + _MARGIN * spread, locale)


def _spot(point: Point, x: float, found: Against) -> Spot:
    name = point.name if len(found.points) <= _MOST_NAMED else ""
    factor, measured = found.quantity.factor, point.measured
    u95 = None if measured.u95 is None else measured.u95 * factor
    return Spot(
        x,
        measured.value * factor,
        u95,
        point.slot,
        point.run_id,
        point.machine_id,
        found.quantity.key,
        name,
    )


def _group_spots(place: int, group: Group, found: Against) -> tuple[Spot, ...]:
    """Beside each other by rising value, so that none hides another."""
    order = sorted(group.points, key=lambda p: p.measured.value)
    step = min(_STEP, 2 * _HALF / max(len(order) - 1, 1))
    first = place - step * (len(order) - 1) / 2
    return tuple(_spot(p, first + i * step, found) for i, p in enumerate(order))


def _mean(place: int, group: Group, found: Against, locale: NumberLocale) -> tuple[Trend, ...]:
    """The line of a group's mean with its band, and its words at the middle, over its own group."""
    factor = found.quantity.factor
    x, mean = (place - _HALF, place + _HALF), group.mean * factor
    if group.u95 is None:
        return (Trend(x, (mean, mean), is_dashed=True),)
    low, high = mean - group.u95 * factor, mean + group.u95 * factor
    name = tr("mean {value}", value=mean_text(group, found.quantity, locale))
    return (
        Trend(x, (mean, mean), None, "", (low, low), (high, high), is_dashed=True),
        Trend((float(place),), (mean,), None, name),
    )


def _fact(point: Point, found: Against, locale: NumberLocale) -> str:
    measured = measured_text(point, found.quantity, locale)
    return f"{point.name}: {found.column.title} {value_text(point, found.column, locale)}, {measured}"
