"""The two phases of a machine's runs on the common axis: until the end of warm-up, and from then on."""

import math
from collections.abc import Sequence
from typing import Final

from attrs import frozen

from core.line_up.spans import as_power, energy_within, mean_measured
from core.line_up.strands import Strand
from core.results.values import Measured

#: a moment found in a trace is no surer than this, and told no finer [s]
TOLD_S: Final = 5.0


@frozen
class Phases:
    """The runs of one machine before and after the end of warm-up, as means.

    ``warm_s`` and ``warm_wh`` are 0 where no warm-up is seen; ``after_w`` is the mean power from then on.
    """

    machine_id: str
    machine: str
    runs: int
    warm_s: float
    warm_wh: float
    after_s: float
    after_wh: float
    after_w: Measured

    @property
    def energy_wh(self) -> float:
        """Both together. [Wh]"""
        return self.warm_wh + self.after_wh


def phases(given: Sequence[Strand]) -> Phases | None:
    """Means of one machine's runs before and after the end of warm-up; None without a run that gets there."""
    whole = [s for s in given if s.end_s > s.warm_s]
    if not whole:
        return None
    n = len(whole)
    after = [energy_within(s.trace, s.warm_s, s.end_s, s.meter) for s in whole]
    after_wh = math.fsum(e.energy_wh for e in after) / n
    return Phases(
        machine_id=whole[0].machine_id,
        machine=whole[0].machine,
        runs=n,
        warm_s=math.fsum(s.warm_s - s.start_s for s in whole) / n,
        warm_wh=math.fsum(s.energy_wh for s in whole) / n - after_wh,
        after_s=math.fsum(s.end_s - s.warm_s for s in whole) / n,
        after_wh=after_wh,
        after_w=mean_measured([as_power(e, s.end_s - s.warm_s) for e, s in zip(after, whole, strict=True)]),
    )


def told_s(seconds: float) -> float:
    """A length of time, as fine as it can be told. [s]"""
    return round(seconds / TOLD_S) * TOLD_S if seconds < 600 else to_the_minute_s(seconds)


def to_the_minute_s(seconds: float) -> float:
    """A length of time to the minute, one below a minute as it is. [s]"""
    return round(seconds / 60) * 60.0 if seconds >= 60 else seconds
