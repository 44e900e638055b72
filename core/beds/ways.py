"""The bed's part of a run by something else than its own trace (ways 1 to 3), and whether two ways agree.

Way 1 is a second meter on the bed, way 2 a run of the same part with the bed off, way 3 a hold test of the
same machine. Way 4, from the run's own trace, is `core.beds.share.share`. Each result names its way.
"""

import math

from attrs import frozen

from core.problems import Problem
from core.results.values import BedShare, Energy, Measured
from core.uncertainty import Inputs, coverage_factor, standard_of
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
    return _share(bed.energy_wh / energy.energy_wh, part, bed.energy_wh, OWN_METER)


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
    return _share(bed_wh / energy.energy_wh, part, bed_wh, BED_OFF)


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
    return _share(bed_wh / energy.energy_wh, part, bed_wh, HOLD_TEST)


def _share(value: float, uncertain: object, bed_wh: float, method: str) -> BedShare:
    u, df = standard_of(uncertain)
    return BedShare(value, coverage_factor(df) * u, bed_wh, method)


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
            "first": first.method,
            "second": second.method,
            "first_percent": 100 * first.share,
            "second_percent": 100 * second.share,
            "u_percent": 100 * u95,
        }
        problem = Problem("bed.ways_disagree", facts=facts)
    return Agreement(difference, u95, problem)
