"""A same-load check in words: what was read, what that says of the two meters, and what it changes."""

import math

from core.formatting import PLUS_MINUS, POINT, NumberLocale, duration, listed, number, percent, rounded
from core.language import tr
from core.loads.same_load import Calibration
from core.results.checked_meters import calibration, same_load
from core.study import LoadCheck, Meter, Study
from core.uncertainty import NORMAL_95

#: a correction below this share is told as none
_NO_CORRECTION = 0.00005


def read(study: Study, check: LoadCheck, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """What the two meters showed, one after the other, and how long and of what where that was noted.

    Parameters
    ----------
    study : Study
    check : LoadCheck
        Of the study.
    locale : NumberLocale
    """
    said = [
        f"{study.meter(meter_id).name} {as_read(value, step, locale)} {check.unit}"
        for meter_id, value, step in (
            (check.meter_id, check.reading, check.step),
            (check.other_id, check.other_reading, check.other_step),
        )
    ]
    took = (
        tr("in {length}", length=duration(check.seconds))
        if check.unit == "Wh" and check.seconds is not None
        else ""
    )
    about = ", ".join(text for text in (took, check.note) if text)
    return (*said, about) if about else tuple(said)


def as_read(value: float, step: float, locale: NumberLocale = POINT) -> str:
    """A reading with the digits that its display has.

    Examples
    --------
    >>> as_read(60.0, 0.1), as_read(412.0, 1.0), as_read(59.25, 0.0)
    ('60.0', '412', '59.25')
    """
    if step > 0:
        return number(value, max(0, -math.floor(math.log10(step) + 1e-9)), locale)
    whole, _, digits = f"{value:.6f}".rstrip("0").partition(".")
    return f"{whole}{locale.decimal}{digits}" if digits else whole


def told(study: Study, check: LoadCheck, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """What a check says, what it corrects, and what it makes of a ratio between the two meters.

    Parameters
    ----------
    study : Study
    check : LoadCheck
        Of the study.
    locale : NumberLocale

    Returns
    -------
    tuple of str
        Sentences.
    """
    meter, other = study.meter(check.meter_id), study.meter(check.other_id)
    known = calibration(study.meters, study.checks)
    if known is None:
        return ()
    seen = same_load(check, meter, other)
    said = [_apart(meter.name, other.name, seen.energy_wh / seen.other_wh - 1, seen.u_relative, locale)]
    corrections = [_correction(m, known, locale) for m in (meter, other)]
    if any(corrections):
        said.append(
            tr(
                "{corrections}, by all checks and the meters' accuracies.",
                corrections=listed([c for c in corrections if c]),
            )
        )
    gains_u = math.hypot(meter.gain_percent, other.gain_percent) / 100 / math.sqrt(3)
    left_u = _u_of_difference(meter, other, known)
    said.append(
        tr(
            "To a ratio between machines on these two meters their gains bring {left}; "
            "without a check it would be {whole}.",
            left=_half(left_u, locale),
            whole=_half(gains_u, locale),
        )
    )
    return tuple(said)


def _apart(name: str, other: str, share: float, u: float, locale: NumberLocale) -> str:
    """How far two meters are apart, with the 95 % interval."""
    u95 = NORMAL_95 * u
    shown = rounded(100 * abs(share), 100 * u95, 2)
    apart = number(shown.value, shown.decimals, locale)
    if shown.u95 is not None:
        apart += f" {PLUS_MINUS} {number(shown.u95, shown.decimals, locale)}"
    facts = {"meter": name, "other": other, "percents": apart}
    if abs(share) <= u95:
        if share > 0:
            return tr(
                "On one load no difference is shown: {meter} reads {percents} % more than {other}.", **facts
            )
        return tr(
            "On one load no difference is shown: {meter} reads {percents} % less than {other}.", **facts
        )
    if share > 0:
        return tr("On one load {meter} reads {percents} % more than {other}.", **facts)
    return tr("On one load {meter} reads {percents} % less than {other}.", **facts)


def _correction(meter: Meter, known: Calibration, locale: NumberLocale) -> str:
    scale = 1 / (1 + known.errors[meter.id]) - 1
    if abs(scale) < _NO_CORRECTION:
        return ""
    facts = {"meter": meter.name, "share": percent(abs(scale), 2, locale)}
    if scale < 0:
        return tr("{meter}'s energies are taken {share} lower", **facts)
    return tr("{meter}'s energies are taken {share} higher", **facts)


def _u_of_difference(meter: Meter, other: Meter, known: Calibration) -> float:
    """Standard uncertainty of the difference of two gains; what they share cancels. [1]"""
    parts, others = dict(known.doubts[meter.id]), dict(known.doubts[other.id])
    return math.sqrt(sum((parts.get(k, 0.0) - others.get(k, 0.0)) ** 2 for k in parts.keys() | others.keys()))


def _half(u: float, locale: NumberLocale) -> str:
    return f"{PLUS_MINUS} {percent(NORMAL_95 * u, 2, locale)}"
