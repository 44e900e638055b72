"""Where an axis that starts at zero ends, and where its ticks are."""

import math

#: steps that a reader can count in, as shares of a power of ten
_STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)
#: the most ticks an axis has
MOST_TICKS = 6


def ticks(top: float, most: int = MOST_TICKS) -> tuple[float, ...]:
    """Round values from 0 to `top`, evenly spaced, as many as fit below `most`.

    Parameters
    ----------
    top : float
        End of the axis, in the axis' own unit. Finite and above 0.
    most : int
        Largest number of ticks, 2 or more; the tick at 0 counts.

    Returns
    -------
    tuple of float
        0 first. Only 0 when no round value fits.

    Raises
    ------
    ValueError
        If `top` is not above 0 or `most` is below 2.

    Examples
    --------
    >>> ticks(37.0)
    (0.0, 10.0, 20.0, 30.0)
    >>> ticks(37.0, 3)
    (0.0, 20.0)
    """
    if not (math.isfinite(top) and top > 0) or most < 2:
        raise ValueError("an axis needs an end above zero and room for two ticks")
    power = math.floor(math.log10(top)) - 1
    for exponent in (power, power + 1, power + 2):
        for share in _STEPS:
            step = share * 10.0**exponent
            count = math.floor(top / step * (1 + 1e-12)) + 1
            if count <= most:
                digits = max(0, 1 - exponent)
                return tuple(round(i * step, digits) for i in range(count))
    return (0.0,)


def axis_end(values: tuple[float, ...], margin: float = 0.06) -> float:
    """End of an axis from zero that holds every value with a little room beyond the largest.

    Examples
    --------
    >>> axis_end((20.0, 50.0), margin=0.1)
    55.0
    """
    largest = max((v for v in values if math.isfinite(v)), default=0.0)
    return round(largest * (1 + margin), 12) if largest > 0 else 1.0


def tick_decimals(step: float) -> int:
    """Digits after the mark that a tick's number needs, and no more.

    Examples
    --------
    >>> tick_decimals(2.5), tick_decimals(20.0)
    (1, 0)
    """
    digits = 0
    while digits < 9 and abs(round(step, digits) - step) > 1e-9 * max(step, 1e-300):
        digits += 1
    return digits
