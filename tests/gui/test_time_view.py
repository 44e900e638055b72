"""The visible part of a lane: laws that hold for any zoom and move."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.charts.time_view import SHORTEST_S, TimeView

spans = st.floats(0.0, 4e7)
views = st.builds(TimeView.whole, spans, st.floats(0, 300), st.floats(1, 4000))
steps = st.lists(st.tuples(st.sampled_from(["zoom", "move"]), st.floats(-3, 3), st.floats(0, 1)), max_size=30)


@given(views, steps)
def test_a_view_never_leaves_the_data_and_never_gets_too_narrow(view, steps):
    for what, amount, share in steps:
        if what == "zoom":
            view = view.zoomed(2.0**amount, view.start_s + share * view.span_s)
        else:
            view = view.moved(amount * view.span_s)
        whole = max(view.whole_s, SHORTEST_S)
        assert -1e-6 <= view.start_s <= view.end_s <= whole + 1e-6
        assert view.span_s >= min(SHORTEST_S, whole) - 1e-9


@given(views, st.floats(0, 1))
def test_pixels_and_times_are_inverse(view, share):
    at_s = view.start_s + share * view.span_s
    assert view.at(view.x(at_s)) == pytest.approx(at_s, abs=1e-6 * max(view.span_s, 1))


def test_zooming_keeps_the_time_under_the_pointer():
    view = TimeView.whole(1000, 100, 500)
    closer = view.zoomed(0.5, 400)
    assert closer.x(400) == pytest.approx(view.x(400))
    assert closer.span_s == 500


def test_a_stretch_is_shown_with_a_margin_and_a_far_edge_is_brought_in():
    view = TimeView.whole(1000, 0, 500).showing(200, 300)
    assert (view.start_s, view.end_s) == pytest.approx((195, 305))
    moved = view.including(900)
    assert moved.start_s <= 900 <= moved.end_s
    assert moved.span_s == pytest.approx(view.span_s)
    assert view.including(250) is view


@given(views, st.floats(0.01, 1), st.floats(0, 1), spans)
def test_a_log_of_another_length_is_shown_within_its_bounds(view, factor, share, whole_s):
    other = view.zoomed(factor, view.start_s + share * view.span_s).of_length(whole_s)
    assert other.whole_s == whole_s
    assert -1e-6 <= other.start_s <= other.end_s <= max(whole_s, SHORTEST_S) + 1e-6


def test_a_log_that_has_grown_shows_the_same_stretch_or_else_the_whole():
    whole = TimeView.whole(1000, 0, 500)
    assert whole.of_length(1500).is_whole
    closer = whole.showing(200, 300)
    grown = closer.of_length(1500)
    assert (grown.start_s, grown.end_s) == (closer.start_s, closer.end_s)
    assert not grown.is_whole
