"""Steps of a run's energy against numbers worked out by hand."""

import math

import numpy as np
import pytest

from core.energy.integral import pieces
from core.energy.refresh import _fresh
from core.energy.settling import _fitted
from core.energy.ticks import Tick, Used, reading_at
from core.traces import Sampling, Trace

Q_WH = 12.0


def counted(q_wh: float = Q_WH, hours: int = 5) -> Trace:
    """A counter of so coarse a step, read each hour."""
    time = np.arange(hours) * 3600.0
    return Trace.of(time, np.full(hours, 5.0), counter_wh=np.arange(hours) * q_wh, counter_step_wh=q_wh)


@pytest.mark.parametrize(
    ("used", "above_wh", "u_wh"),
    [
        # surely 4 Wh: the tick lies anywhere in them
        (Used(4.0, 0.0), 2.0, 4.0 / math.sqrt(12)),
        # 6 +- 3 Wh: m2 = 45, so 45 / 12 and 12 + 9 - 3.75^2
        (Used(6.0, 3.0), 3.75, math.sqrt(6.9375)),
        # nothing is told, and 2 Wh may have been: taken for 2 +- 2 Wh
        (Used(0.0, 2.0), 2.0, math.sqrt(4 / 3)),
        # nothing at all: a hundredth of the step
        (Used(-1.0, 0.0), 0.06, 0.12 / math.sqrt(12)),
        # never more than the step
        (Used(30.0, 0.0), 6.0, 12.0 / math.sqrt(12)),
        (Used(2.0, 40.0), 6.0, 12.0 / math.sqrt(12)),
    ],
)
def test_a_tick_tells_the_counter_by_what_was_used_before_it(
    used: Used, above_wh: float, u_wh: float
) -> None:
    told = reading_at(counted(), Tick(2, 1, 120.0, Q_WH), used)
    assert told == pytest.approx((120.0 + above_wh, u_wh))


@pytest.mark.parametrize(("step_wh", "above_wh"), [(18.0, 2.0), (18.1, 6.0)])
def test_a_jump_over_several_steps_tells_the_step_alone(step_wh: float, above_wh: float) -> None:
    told, u_wh = reading_at(counted(), Tick(2, 1, 120.0, step_wh), Used(4.0, 0.0))
    assert told == pytest.approx(120.0 + above_wh)
    assert u_wh == pytest.approx(2 * above_wh / math.sqrt(12))


# four steps leave 1.62 times the doubt of many; a fourth of the square of a tick's 1 / sqrt(12) stays
@pytest.mark.parametrize(
    ("sampled_wh", "weight", "u_wh"),
    [
        # the counter goes up 1, 3, 1, 3 Wh, the samples by half as much more and less: they count in full,
        # half of each deviation is left: 4 x 0.25 over 3 - 4 / 6, less the noise of two ticks, 2 / 12
        ((1.5, 2.5, 1.5, 2.5), 1.0, math.sqrt(3 / 7 - 2 / 12)),
        # twice as much: half of it is believed, as was expected, and only the ticks' own doubt is left
        ((0.0, 4.0, 0.0, 4.0), 0.5, math.sqrt(1 / 12 / 4)),
        # the other way round: not believed
        ((2.5, 1.5, 2.5, 1.5), 0.0, math.sqrt(12 / 7 - 2 / 12)),
        # no deviation at all
        ((2.0, 2.0, 2.0, 2.0), 0.0, math.sqrt(12 / 7 - 2 / 12)),
    ],
)
def test_samples_are_believed_as_far_as_the_ticks_bear_them_out(
    sampled_wh: tuple[float, ...], weight: float, u_wh: float
) -> None:
    trace = counted(1.0)
    counter = np.cumsum([0.0, 1.0, 3.0, 1.0, 3.0])
    # each tick falls in a whole step, so it is unsure by 1 / sqrt(12)
    ticks = [Tick(row, max(row - 1, 0), float(wh), 1.0) for row, wh in enumerate(counter)]
    found = _fitted(trace, ticks, [Used(1.0, 0.0)] * 5, np.array(sampled_wh), told=0.5)
    assert (found.counter_w, found.sampled_w) == pytest.approx((2.0, 2.0))
    assert found.weight == pytest.approx(weight)
    assert found.u_wh == pytest.approx(1.62 * u_wh)
    assert (found.first_row, found.seconds) == (0, 3600.0)


@pytest.mark.parametrize(("told", "weight"), [(0.0, 1 / 3), (0.5, 0.5), (1.0, 2 / 3)])
def test_what_is_expected_of_samples_counts_as_two_steps_more(told: float, weight: float) -> None:
    counter = np.cumsum([0.0, 1.0, 3.0, 1.0, 3.0])
    ticks = [Tick(row, max(row - 1, 0), float(wh), 1.0) for row, wh in enumerate(counter)]
    found = _fitted(counted(1.0), ticks, [Used(1.0, 0.0)] * 5, np.array([0.0, 4.0, 0.0, 4.0]), told)
    assert found.weight == pytest.approx(weight)


@pytest.mark.parametrize(
    ("kind", "means_w"),
    [
        # the mean since the row before; beyond the last row the last is all there is
        ("averaged", [50.0, 80.0, 20.0, 20.0]),
        # what was told holds until the next row
        ("on_change", [50.0, 50.0, 80.0, 20.0]),
    ],
)
def test_pieces_reach_beyond_both_ends_of_a_trace(kind: Sampling, means_w: list[float]) -> None:
    trace = Trace.of([0.0, 10.0, 20.0], [50.0, 80.0, 20.0], kind=kind)
    found = pieces(trace, -5.0, 30.0)
    assert found.start_s.tolist() == [-5.0, 0.0, 10.0, 20.0]
    assert found.seconds.tolist() == [5.0, 10.0, 10.0, 10.0]
    assert found.mean_w.tolist() == means_w


def test_pieces_of_samples_begin_at_each_row() -> None:
    found = pieces(Trace.of([0.0, 10.0, 20.0], [50.0, 80.0, 20.0]), 5.0, 20.0)
    assert found.start_s.tolist() == [5.0, 10.0]
    assert found.mean_w.tolist() == [72.5, 50.0]


@pytest.mark.parametrize(
    ("power_w", "rows", "fresh"),
    [
        ([1, 1, 2, 2, 2, 2, 3, 3], 2, [0, 2, 4, 6, 7]),
        # before the first change the rhythm runs backwards from it
        ([1, 1, 1, 2, 2, 3, 3, 3], 2, [0, 1, 3, 5, 7]),
        ([1, 1, 1, 1, 2, 2, 2], 3, [0, 1, 4, 6]),
        # nothing changes: from the first row on
        ([1, 1, 1, 1, 1, 1], 2, [0, 2, 4, 5]),
    ],
)
def test_rows_with_a_fresh_value(power_w: list[float], rows: int, fresh: list[int]) -> None:
    assert _fresh(np.array(power_w, dtype=float), rows).tolist() == fresh
