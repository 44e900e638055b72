"""What is sure of a bed's share that cannot be seen, in words."""

import math

from core.formatting import POINT, NumberLocale, number
from core.language import tr


def bound_words(at_least: float | None, at_most: float | None, locale: NumberLocale = POINT) -> str:
    """A bound of a share, as a percentage.

    It is rounded away from what it bounds, because rounded towards it it would be none; a bound that says
    nothing is left out.

    Parameters
    ----------
    at_least, at_most : float or None
        Shares from 0 to 1; None where there is no bound. [1]
    locale : NumberLocale

    Returns
    -------
    str
        Empty where nothing is sure.

    Examples
    --------
    >>> bound_words(0.318, 0.791)
    'at least 31 %, at most 80 %'
    >>> bound_words(0.004, 0.955)
    'at most 96 %'
    >>> bound_words(None, 0.999)
    ''
    """
    said = []
    low = None if at_least is None else math.floor(100 * at_least)
    high = None if at_most is None else math.ceil(100 * at_most)
    if low is not None and low > 0:
        said.append(tr("at least {percent} %", percent=number(low, 0, locale)))
    if high is not None and high < 100:
        said.append(tr("at most {percent} %", percent=number(high, 0, locale)))
    return ", ".join(said)
