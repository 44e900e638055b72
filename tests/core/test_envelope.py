import numpy as np
import pytest

from core.figures.envelope import envelope
from core.traces import Trace


def test_no_spike_is_lost_however_many_rows_stand_behind_a_column():
    power = np.full(1_000_000, 50.0)
    power[654_321] = 900.0
    power[123_456] = 1.0
    drawn = envelope(Trace.of(np.arange(1_000_000.0), power), 0, 999_999, 800)
    assert drawn.is_reduced
    assert drawn.time_s.size <= 1602
    assert drawn.power_w.max() == 900.0
    assert drawn.power_w.min() == 1.0
    assert drawn.time_s[drawn.power_w == 900.0] == [654_321.0]


def test_zoomed_in_the_samples_themselves_are_given_with_one_beyond_either_end():
    drawn = envelope(Trace.of(np.arange(100.0), np.arange(100.0)), 9.5, 20.5, 500)
    assert not drawn.is_reduced
    assert list(drawn.time_s) == list(range(9, 22))


def test_a_gap_stays_a_gap():
    time = np.concatenate((np.arange(0.0, 100.0), np.arange(600.0, 700.0)))
    trace = Trace.of(time, np.full(200, 40.0))
    for columns in (10, 5000):
        drawn = envelope(trace, 0, 700, columns)
        broken = np.flatnonzero(np.isnan(drawn.time_s))
        assert broken.size == 1
        assert drawn.time_s[broken[0] - 1] == 99.0
        assert drawn.time_s[broken[0] + 1] == 600.0


@pytest.mark.parametrize(
    ("kind", "times", "powers"),
    [
        ("on_change", [0, 10, 10, 20, 20], [1, 1, 2, 2, 3]),
        ("averaged", [0, 0, 10, 10, 20], [1, 2, 2, 3, 3]),
        ("sampled", [0, 10, 20], [1, 2, 3]),
    ],
)
def test_values_are_joined_as_their_kind_demands(kind, times, powers):
    drawn = envelope(Trace.of([0, 10, 20], [1, 2, 3], kind), 0, 20, 100)
    assert list(drawn.time_s) == times
    assert list(drawn.power_w) == powers


def test_a_value_told_on_change_is_held_however_many_rows_stand_behind_a_column():
    """A heater that switches a thousand times, then rests of which little is told."""
    busy, rest = np.arange(1000.0), np.arange(1299.0, 4600.0, 300.0)
    power = np.where(busy % 2 == 0, 600.0, 5.0)  # the last that is told is that it is off
    told = Trace.of([*busy, *rest], [*power, *np.full(rest.size, 6.0)], "on_change")
    assert not told.gaps
    drawn = envelope(told, 0, 4600, 100)
    assert drawn.is_reduced
    assert drawn.power_w.max() == 600.0
    assert set(drawn.power_w[drawn.time_s > busy[-1]]) == {5.0, 6.0}
    steep = np.diff(drawn.time_s)[np.abs(np.diff(drawn.power_w)) > 100]
    assert (steep == 0).all()


def test_an_averaged_value_is_not_drawn_over_a_gap_before_it():
    trace = Trace.of([0, 10, 20, 400, 410], [1, 2, 3, 4, 5], "averaged")
    drawn = envelope(trace, 0, 410, 100)
    at = int(np.flatnonzero(np.isnan(drawn.time_s))[0])
    assert drawn.time_s[at - 1] == 20
    assert (drawn.time_s[at + 1], drawn.power_w[at + 1]) == (400, 4)


def test_a_view_between_two_samples_still_shows_the_line_between_them():
    drawn = envelope(Trace.of([0, 100], [0, 50]), 40, 60, 300)
    assert list(drawn.time_s) == [0, 100]


@pytest.mark.parametrize("columns", [1, 2, 3])
def test_a_picture_may_be_as_narrow_as_a_pixel(columns):
    drawn = envelope(Trace.of(np.arange(1000.0), np.arange(1000.0)), 0, 999, columns)
    assert (drawn.power_w.min(), drawn.power_w.max()) == (0, 999)


def test_an_empty_view_is_the_callers_mistake():
    with pytest.raises(ValueError, match="start_s < end_s"):
        envelope(Trace.of([0, 1], [0, 0]), 1, 1, 10)
