"""Curves cut at the edges of their chart, in saved pictures too."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.figures.placing import Box
from gui.charts.clipping import area_inside, inside

BOX = Box(0.0, 0.0, 10.0, 10.0)
_PLACES = st.lists(st.floats(-30, 30) | st.just(float("nan")), max_size=40)


def test_what_lies_inside_stays_as_it_is() -> None:
    xs, ys = np.array([1.0, 2, 3, 9]), np.array([1.0, 9, 2, 2])
    cut_x, cut_y = inside(xs, ys, BOX)
    assert (cut_x.tolist(), cut_y.tolist()) == (xs.tolist(), ys.tolist())


def test_a_curve_that_leaves_is_cut_at_the_edge_and_comes_back() -> None:
    xs, ys = inside(np.array([1.0, 2, 3]), np.array([5.0, 25, 5]), BOX)
    assert xs == pytest.approx([1.0, 1.25, np.nan, 2.75, 3.0], nan_ok=True)
    assert ys == pytest.approx([5.0, 10, np.nan, 10, 5], nan_ok=True)


def test_a_curve_that_only_crosses_keeps_its_middle() -> None:
    xs, ys = inside(np.array([-10.0, 20]), np.array([5.0, 5]), BOX)
    assert (xs.tolist(), ys.tolist()) == ([0.0, 10.0], [5.0, 5.0])


@pytest.mark.parametrize("n", [0, 1])
def test_nothing_to_draw(n: int) -> None:
    xs, _ = inside(np.ones(n), np.ones(n), BOX)
    assert xs.size == 0


@settings(deadline=None)
@given(_PLACES)
def test_nothing_ever_lies_outside(places: list[float]) -> None:
    xs = np.array(places)
    ys = np.roll(xs, 3)
    cut_x, cut_y = inside(xs, ys, BOX)
    lifted = np.isnan(cut_x)
    assert np.array_equal(lifted, np.isnan(cut_y))
    for cut in (cut_x[~lifted], cut_y[~lifted]):
        assert np.all(cut >= -1e-9)
        assert np.all(cut <= 10 + 1e-9)


@settings(deadline=None)
@given(_PLACES)
def test_points_inside_are_kept(places: list[float]) -> None:
    xs = np.array(places)
    ys = np.roll(xs, 1)
    cut_x, cut_y = inside(xs, ys, BOX)
    drawn = set(zip(np.round(cut_x, 9), np.round(cut_y, 9), strict=True))
    for i in range(1, xs.size):
        a, b = (xs[i - 1], ys[i - 1]), (xs[i], ys[i])
        if all(0 <= v <= 10 for v in (*a, *b)):
            assert tuple(np.round(b, 9)) in drawn


def test_an_area_is_held_within_its_chart() -> None:
    xs = np.array([-5.0, 5, 15])
    places, tops, bottoms = area_inside(xs, np.array([-4.0, 2, 8]), np.array([20.0, 20, 20]), BOX)
    assert places.tolist() == [0.0, 5.0, 10.0]
    assert tops.tolist() == [0.0, 2.0, 5.0]
    assert bottoms.tolist() == [10.0, 10.0, 10.0]
    assert area_inside(xs + 100, xs, xs, BOX)[0].size == 0
