"""How the line of a bed's watts against its difference from the room was found, by its slope."""

from core.beds.hold_fit import Fit
from core.beds.model import BedModel
from core.beds.quantities import SLOPE
from core.formatting import POINT, NumberLocale, number
from core.found import budgets
from core.found.held_bed import sources_of_watts
from core.found.values import Explanation, SourceLine
from core.found.writing import figures, otherwise, shown, too_high
from core.language import tr
from core.results.bed_answer import settled_text
from core.results.holds import Beds, MachineBed
from core.results.values import Measured
from core.study import Study

_TOPIC = "bed"


def line_found(beds: Beds, study: Study, machine_id: str, locale: NumberLocale = POINT) -> Explanation | None:
    """What stands behind a bed's watts a kelvin.

    Parameters
    ----------
    beds : Beds
    study : Study
    machine_id : str
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where no line was fitted: one temperature held, or none.
    """
    bed = beds.of(machine_id)
    if bed is None or bed.model is None or bed.model.fit is None:
        return None
    fit = bed.model.fit
    slope = _slope(fit)
    u95 = None if fit.is_curve else fit.u95(1)
    told = sources_of_watts(bed, study, locale)
    gives = fit.gives[1].tolist()
    parts = [(name, abs(u), whom, why) for (name, whom, why), u in zip(told, gives, strict=False) if u]
    lines = budgets.made(parts, locale, SLOPE.unit)
    terms = [
        f"{figures(c, locale=locale)} d{'²' if i == 2 else ''}" if i else figures(c, locale=locale)
        for i, c in enumerate(fit.coefficients)
    ]
    rest = "  ".join(number(r, 2, locale) for r in fit.residuals_w)
    return Explanation(
        title=tr("{name}: watts a kelvin", name=bed.name),
        value_text=shown(Measured(slope, u95), SLOPE, locale),
        topic=_TOPIC,
        method=(
            tr("A line through the held temperatures, each weighted by how sure its watts are."),
            tr("A curve is taken only where the data demand it; this is its slope in the middle.")
            if fit.is_curve
            else tr("A straight line is a local description: it holds between the held temperatures."),
            tr("The points lie on it as well as their uncertainties say.")
            if fit.is_consistent
            else tr("The points lie off it, so what they leave open was widened until they do not."),
        ),
        formula=(
            tr("P = {terms}, d in K above the room", terms=" + ".join(terms)),
            tr("what it leaves of each point: {rest} W", rest=rest),
            *budgets.combined(lines, u95, locale, SLOPE.unit),
        ),
        sources=tuple(
            SourceLine(f"{number(h.bed_c, 1, locale)} °C: {settled_text(h)}", h.run_id, bed.counts(h))
            for h in bed.held
            if h.bed_c is not None
        ),
        budget=lines,
        sensitivity=(*_without(bed, slope, locale), too_high(slope, SLOPE.unit, locale)),
        surer=(tr("Hold a third temperature, far from both: then the line is tested, and surer."),),
    )


def _slope(fit: Fit) -> float:
    """Slope of a line, or that of a curve in its middle. [W/K]"""
    middle_k = (fit.lowest_k + fit.highest_k) / 2
    return fit.coefficients[1] + (2 * fit.coefficients[2] * middle_k if fit.is_curve else 0.0)


def _without(bed: MachineBed, slope: float, locale: NumberLocale) -> tuple[str, ...]:
    """The slope fitted again without each hold, where two are left that lie far enough apart."""
    assert bed.model is not None
    told = []
    for point in bed.model.points:
        rest = tuple(p for p in bed.model.points if p is not point)
        then = BedModel.of(rest, bed.model.gain_u).fit if rest else None
        if then is not None:
            what = tr("Without the hold at {kelvin} K", kelvin=number(point.difference_k, 0, locale))
            told.append(otherwise(what, _slope(then) - slope, SLOPE.unit, locale))
    return tuple(told)
