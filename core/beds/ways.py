"""The bed's part of a run by something else than its own trace (ways 1 to 3), and whether two ways agree.

Way 1 is a second meter on the bed, way 2 a run of the same part with the bed off, way 3 a hold test of the
same machine. Way 4, from the run's own trace, is `core.beds.share.share`. Each result names its way.
"""

import math
from collections.abc import Sequence

from attrs import evolve, frozen

from core.language import later, mark
from core.problems import Problem
from core.results.values import BedShare, Energy, Influence, Measured
from core.uncertainty import NORMAL_95, Inputs, coverage_factor, standard_of
from core.units import J_PER_WH

OWN_METER = "own meter"
BED_OFF = "run with the bed off"
HOLD_TEST = "hold test"


@frozen
class Agreement:
    """Two ways on one run: first share less second, its 95 % half-width, and what to say of it."""

    difference: float
    u95: float
    problem: Problem | None

    @property
    def agree(self) -> bool:
        """Whether the interval of the difference holds 0."""
        return abs(self.difference) <= self.u95


def by_own_meter(energy: Energy, bed: Energy) -> BedShare:
    """Way 1: the bed's own meter or channel.

    Parameters
    ----------
    energy, bed : Energy
        Of the whole machine at the plug and of the bed alone, over the same interval. Influences that both
        share (one meter with two channels) cancel.

    Raises
    ------
    ValueError
        If the run's energy is not positive.
    """
    if energy.energy_wh <= 0:
        raise ValueError("a share needs a positive energy")
    inputs = Inputs()
    part = inputs.energy(bed.energy_wh, bed.influences) / inputs.energy(energy.energy_wh, energy.influences)
    value = bed.energy_wh / energy.energy_wh
    influences = (*bed.influences, *_times(energy.influences, -value))
    return _share(value, part, bed.energy_wh, OWN_METER, influences)


def by_run_without(energy: Energy, without: Energy) -> BedShare:
    """Way 2: the same part made once with the bed off; the difference is the bed.

    Parameters
    ----------
    energy, without : Energy
        Of the run, and of a run of the same part and duration with the bed off. On one meter the gain
        cancels.

    Raises
    ------
    ValueError
        If the run's energy is not positive.
    """
    if energy.energy_wh <= 0:
        raise ValueError("a share needs a positive energy")
    inputs = Inputs()
    rest = inputs.energy(without.energy_wh, without.influences)
    part = 1 - rest / inputs.energy(energy.energy_wh, energy.influences)
    bed_wh = energy.energy_wh - without.energy_wh
    value = bed_wh / energy.energy_wh
    influences = (*_times(without.influences, -1.0), *_times(energy.influences, 1 - value))
    return _share(value, part, bed_wh, BED_OFF, influences)


def by_hold(
    energy: Energy, hold_w: Measured, baseline_w: Measured, seconds: float, warm_up_wh: Measured
) -> BedShare:
    """Way 3: a hold test of the same machine at the run's bed temperature.

    Parameters
    ----------
    energy : Energy
        Of the run.
    hold_w, baseline_w : Measured
        Steady watts with the bed held and nothing else running, and of the same state with the bed off. [W]
    seconds : float
        Time from the end of warm-up to the end of processing. [s]
    warm_up_wh : Measured
        What the bed took in its warm-up. [Wh]

    Raises
    ------
    ValueError
        If the run's energy is not positive.
    """
    if energy.energy_wh <= 0:
        raise ValueError("a share needs a positive energy")
    inputs = Inputs()
    hours = seconds / J_PER_WH
    bed_wh = (hold_w.value - baseline_w.value) * hours + warm_up_wh.value
    bed = inputs.measured(hold_w) * hours - inputs.measured(baseline_w) * hours + inputs.measured(warm_up_wh)
    part = bed / inputs.energy(energy.energy_wh, energy.influences)
    value = bed_wh / energy.energy_wh
    influences = (
        Influence(mark("bed held"), _u(hold_w) * hours),
        Influence(mark("baseline of the hold"), -_u(baseline_w) * hours),
        Influence(mark("warm-up of the bed"), _u(warm_up_wh)),
        *_times(energy.influences, -value),
    )
    return _share(value, part, bed_wh, HOLD_TEST, influences)


def _share(
    value: float, uncertain: object, bed_wh: float, method: str, influences: Sequence[Influence]
) -> BedShare:
    u, df = standard_of(uncertain)
    told = tuple(each for each in influences if each.u_wh != 0)
    return BedShare(value, coverage_factor(df) * u, bed_wh, method, influences=told)


def _times(influences: Sequence[Influence], factor: float) -> tuple[Influence, ...]:
    """What the influences of an energy do to the bed's, with their signs: one meter's may cancel."""
    return tuple(evolve(each, u_wh=each.u_wh * factor) for each in influences)


def _u(value: Measured) -> float:
    return (value.u95 or 0.0) / NORMAL_95


def agreement(first: BedShare, second: BedShare) -> Agreement | None:
    """Whether two ways give one run the same bed share; None where either gives none.

    Parameters
    ----------
    first, second : BedShare
        Of one run. Taken as independent: what they share (the run's energy) moves both alike and matters
        less.
    """
    if first.share is None or second.share is None:
        return None
    difference = first.share - second.share
    u95 = math.hypot(first.share_u95 or 0.0, second.share_u95 or 0.0)
    problem = None
    if abs(difference) > u95:
        facts = {
            "first": later(first.method),
            "second": later(second.method),
            "first_percent": 100 * first.share,
            "second_percent": 100 * second.share,
            "u_percent": 100 * u95,
        }
        problem = Problem("bed.ways_disagree", facts=facts)
    return Agreement(difference, u95, problem)
