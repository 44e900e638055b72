"""Values of a trace: steps, gaps, resolution, stamps."""

import numpy as np
import pytest

from core.traces import (
    Clock,
    Gap,
    Trace,
    _distinct,
    evenly,
    heartbeat_s,
    smallest_step,
    some_steps,
    step_extremes,
)


def test_trace_works_out_its_intervals() -> None:
    trace = Trace.of([100.0, 110.0, 120.0, 200.0], [5.0, 5.5, 6.0, 5.0])
    assert trace.time_s.tolist() == [0.0, 10.0, 20.0, 100.0]
    assert trace.median_s == 10.0
    assert trace.max_s == 80.0
    assert trace.gaps == (Gap(20.0, 100.0),)
    assert trace.gaps[0].seconds == 80.0
    assert trace.resolution_w == 0.5
    assert trace.end_s == 100.0


@pytest.mark.parametrize(
    ("time_s", "power_w"), [([0, 1, 1], [1, 2, 3]), ([0, 2, 1], [1, 2, 3]), ([0, 1], [1, 2, 3])]
)
def test_trace_refuses_what_is_no_trace(time_s: list[float], power_w: list[float]) -> None:
    with pytest.raises(ValueError, match="time_s"):
        Trace.of(time_s, power_w)


def test_columns_cannot_be_changed() -> None:
    trace = Trace.of([0, 1], [5, 6])
    with pytest.raises(ValueError, match="read-only"):
        trace.power_w[0] = 7


def test_empty_and_single() -> None:
    assert Trace.of([], []).end_s == 0.0
    assert Trace.of([7.0], [5.0]).max_s == 0.0


@pytest.mark.parametrize(
    ("step", "offset"),
    [(0.1, 0.0), (1.0, 0.0), (0.5, 3.0), (0.01, 0.0), (10.0, 0.0), (0.2, 0.1), (1e-3, 1234.0)],
)
def test_smallest_step_of_a_display(step: float, offset: float) -> None:
    counts = np.random.default_rng(1).integers(0, 5000, 20_000)
    assert smallest_step(counts * step + offset) == pytest.approx(step)


def test_smallest_step_of_what_no_display_shows() -> None:
    assert smallest_step(np.full(50, 3.3)) == 0.0
    assert smallest_step(np.array([np.nan, 1.0])) == 0.0
    third = smallest_step(np.arange(30) / 3)
    assert third == pytest.approx(1 / 3)


def test_gap_of_a_log_on_change_is_longer_than_its_sign_of_life() -> None:
    time_s = np.cumsum([0, 1, 2, 60, 1, 60, 3, 60, 1, 200, 1, 1])
    assert heartbeat_s(np.diff(time_s)) == 60.0
    assert [
        g.seconds for g in Trace.of(time_s.astype(float), np.ones(time_s.size), kind="on_change").gaps
    ] == [200.0]
    assert Trace.of([0.0, 1.0, 50.0], np.ones(3), kind="on_change").gaps == ()


def test_long_columns_are_looked_at_from_both_sides() -> None:
    time_s = np.concatenate(([0.0], np.cumsum(np.tile([1.0, 3.0], 500_000))))
    assert np.mean(some_steps(time_s)) == pytest.approx(2.0, abs=1e-3)
    assert step_extremes(time_s) == (1.0, 3.0)
    assert evenly(time_s).size < 250_000


def test_stamps() -> None:
    assert Clock("relative").iso(5.0) is None
    assert Clock("local", 0.0).iso(61.5) == "1970-01-01T00:01:01.500000"
    assert Clock("absolute", 0.0, 7200.0).iso(0.0) == "1970-01-01T02:00:00+02:00"
    assert Clock("absolute", 1750664160.0, zone="Europe/Berlin").iso(0.0) == "2025-06-23T09:36:00+02:00"
    spring = Clock("local", 0.0, shifts=((3600.0, 3600.0),))
    assert spring.iso(3599.0) == "1970-01-01T00:59:59"
    assert spring.iso(3600.0) == "1970-01-01T02:00:00"


@pytest.mark.parametrize("few", [1, 7, 400, 20_000])
def test_distinct_values_are_those_of_unique(few: int) -> None:
    rng = np.random.default_rng(few)
    values = np.round(rng.choice(np.append(rng.normal(60, 40, few), [0.0, -0.0]), 30_000), 7)
    assert np.array_equal(_distinct(values), np.unique(values))
    assert np.array_equal(_distinct(np.sort(values)), np.unique(values))
