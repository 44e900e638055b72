"""Where a stretch begins and ends, by what a value of the log stands for, and which dips are bridged."""

import numpy as np
import pytest

from core.activity.levels import Levels
from core.activity.rows import rows_of
from core.activity.stretches import above, edges, first_heating
from core.traces import Sampling, Trace


def levels(rows_n: int, *, idle_w: float = 10.0, threshold_w: float = 25.0, quiet: bool = False) -> Levels:
    return Levels(8.0, idle_w, threshold_w, 50.0, 0.1, 0.0, np.full(rows_n, quiet))


@pytest.mark.parametrize(
    ("kind", "start_s", "end_s"),
    [("sampled", 25.0, 55.0), ("averaged", 20.0, 50.0), ("on_change", 30.0, 60.0)],
)
def test_edges_of_a_stretch(kind: Sampling, start_s: float, end_s: float) -> None:
    trace = Trace.of(np.arange(9) * 10.0, [8, 8, 8, 58, 58, 58, 8, 8, 8], kind)
    rows = rows_of(trace)
    ((first, last),) = above(rows, levels(rows.time_s.size))
    assert edges(rows, int(first), int(last)) == pytest.approx((start_s, end_s))


def test_an_averaged_row_is_split_by_its_level() -> None:
    # a quarter of the fourth interval and half of the eighth are heated
    trace = Trace.of(np.arange(10) * 10.0, [8, 8, 8, 30.5, 98, 98, 98, 53, 8, 8], "averaged")
    rows = rows_of(trace)
    assert edges(rows, 3, 6) == pytest.approx((27.5, 65.0))


def test_a_little_heating_in_the_row_before_belongs_to_the_run() -> None:
    # an eighth of the third interval is heated: too little to pass the threshold
    trace = Trace.of(np.arange(10) * 10.0, [8, 8, 8, 19.25, 98, 98, 98, 53, 8, 8], "averaged")
    rows = rows_of(trace)
    assert edges(rows, 4, 6) == pytest.approx((28.75, 65.0))


def dipped(dip_s: int, dip_w: float) -> Trace:
    power_w = np.r_[np.full(300, 60.0), np.full(dip_s, dip_w), np.full(300, 60.0)]
    return Trace.of(np.arange(power_w.size, dtype=float), power_w, resolution_w=0.1)


@pytest.mark.parametrize(
    ("dip_s", "dip_w", "quiet", "stretches"),
    [
        (100, 8.0, True, 1),  # too short for hands
        (200, 8.0, True, 2),  # the next run
        (200, 15.0, False, 1),  # a bed that rests while motors move
        (200, 15.0, True, 1),  # a held hot end: more than idle ever draws
        (200, 10.5, True, 2),  # held motors
        (30, 0.0, True, 2),  # a power cut
    ],
)
def test_dips_are_bridged_that_nobody_could_have_used(
    dip_s: int, dip_w: float, quiet: bool, stretches: int
) -> None:
    rows = rows_of(dipped(dip_s, dip_w))
    assert len(above(rows, levels(rows.time_s.size, quiet=quiet))) == stretches


def test_a_homing_move_before_the_heating_is_left_out() -> None:
    power_w = np.r_[np.full(60, 8.0), np.full(20, 27.0), np.full(200, 300.0), np.full(300, 60.0)]
    rows = rows_of(Trace.of(np.arange(power_w.size, dtype=float), power_w))
    assert first_heating(rows, levels(power_w.size), 60, power_w.size - 1) == 80


def test_an_on_change_log_is_held_between_its_rows() -> None:
    rows = rows_of(Trace.of([0, 3.5, 5, 1000], [5, 60, 5, 5], "on_change"))
    assert rows.power_w[rows.time_s == 3].tolist() == [5]
    assert rows.power_w[rows.time_s == 4].tolist() == [60]
    assert rows.time_s[-1] == 1000
    assert rows.time_s.size < 400  # the silence is thinned out
    assert (np.diff(rows.time_s) > 0).all()
