"""How much runs of one machine scatter, as a share of their energy."""

import math
import statistics
from collections.abc import Sequence

from core.results.values import Energy


def scatter(energies: Sequence[Energy]) -> float | None:
    """Relative standard deviation from run to run; None of a single run.

    Runs that agree by luck more closely than each was measured scatter by what each is unsure of by itself:
    as in the interval of their mean, the larger of the two counts.

    Parameters
    ----------
    energies : sequence of Energy
        Of the runs of one machine that count.

    Examples
    --------
    >>> round(scatter([Energy(99.0, (), "typed"), Energy(101.0, (), "typed")]), 4)
    0.0141
    """
    if len(energies) < 2:
        return None
    values = [e.energy_wh for e in energies]
    mean_wh = statistics.fmean(values)
    return max(statistics.stdev(values), own_u_wh(energies)) / mean_wh if mean_wh > 0 else None


def own_u_wh(energies: Sequence[Energy]) -> float:
    """Standard uncertainty that a run has by itself, beside what it shares with others. [Wh]"""
    if not energies:
        return 0.0
    variances = [i.u_wh**2 for e in energies for i in e.influences if i.shared is None]
    return math.sqrt(math.fsum(variances) / len(energies))
