"""What lies where on a lane, as plain geometry."""

import pytest

from core.figures.lanes import Block, LaneContent
from core.traces import Trace
from gui.charts import lane_hits as hits
from gui.charts.time_view import TimeView


def lane(*edges):
    blocks = tuple(Block(f"r{i}", a, b, "run", f"run {i}", True, False) for i, (a, b) in enumerate(edges))
    return LaneContent("g1", "a1", "Alder", 0, ("alder.csv",), blocks)


def test_the_edge_within_reach_is_hit_and_the_selected_stretch_wins_where_two_touch():
    view = TimeView.whole(1000, 0, 1000)
    content = lane((100, 300), (300, 500))
    assert hits.edge_at(content, view, 104, None) == (content.blocks[0], "start")
    assert hits.edge_at(content, view, 200, None) is None
    assert hits.edge_at(content, view, 300, "r0") == (content.blocks[0], "end")
    assert hits.edge_at(content, view, 300, "r1") == (content.blocks[1], "start")


def test_the_shortest_of_stretches_that_overlap_is_meant():
    content = lane((0, 900), (100, 200))
    assert hits.block_at(content, 150) is content.blocks[1]
    assert hits.block_at(content, 500) is content.blocks[0]
    assert hits.block_at(content, 950) is None


def test_an_edge_stays_inside_the_log_and_on_its_side():
    trace = Trace.of([0, 10, 20, 30, 40], [1, 1, 1, 1, 1])
    block = lane((10, 30)).blocks[0]
    assert hits.allowed_s(trace, block, "start", -50) == 0
    assert hits.allowed_s(trace, block, "start", 100) == 20
    assert hits.allowed_s(trace, block, "end", 0) == 20
    assert hits.allowed_s(trace, block, "end", 100) == 40


@pytest.mark.parametrize(
    ("at_s", "samples", "moved_s"),
    [(10, 1, 20), (10, -1, 0), (14, 1, 20), (14, -1, 10), (14, 2, 30), (0, -1, 0), (40, 5, 40)],
)
def test_an_edge_is_nudged_from_sample_to_sample(at_s, samples, moved_s):
    trace = Trace.of([0, 10, 20, 30, 40], [1, 1, 1, 1, 1])
    assert hits.nudged_s(trace, at_s, samples) == moved_s


@pytest.mark.parametrize(
    ("kind", "at_4", "at_6"), [("sampled", 10, 20), ("averaged", 20, 20), ("on_change", 10, 10)]
)
def test_a_moment_is_told_as_the_kind_of_log_demands(kind, at_4, at_6):
    trace = Trace.of([0, 10, 20], [10, 20, 30], kind)
    assert hits.power_at_w(trace, 4) == at_4
    assert hits.power_at_w(trace, 6) == at_6
    assert hits.power_at_w(trace, 10) == 20


def test_nothing_is_told_of_a_moment_in_a_gap():
    trace = Trace.of([0, 1, 2, 3, 500, 501], [5, 5, 5, 5, 5, 5])
    assert hits.power_at_w(trace, 250) is None
    assert hits.power_at_w(trace, 2.6) == 5


def test_walking_from_stretch_to_stretch_ends_at_the_ends():
    content = lane((0, 1), (2, 3))
    assert hits.neighbour(content, None, 1) is content.blocks[0]
    assert hits.neighbour(content, None, -1) is content.blocks[1]
    assert hits.neighbour(content, "r1", 1) is content.blocks[1]
    assert hits.neighbour(lane(), None, 1) is None
