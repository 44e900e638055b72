"""What charts show, read as numbers."""

from itertools import combinations, pairwise

import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st

from core.figures.compare import comparison_figure, shown_runs, ties
from core.figures.energy_time import energy_time_figure, watt_lines
from core.figures.placing import Anchor, Box, crosses, place, swarm
from core.figures.readout import readout
from core.figures.source import numbers_of
from core.figures.ticks import axis_end, tick_decimals, ticks
from core.figures.values import Axis, Point
from core.formatting import NumberLocale
from core.quantities import BED_SHARE, DURATION, ENERGY
from core.results.values import Pair
from tests.comparisons import make


@given(st.floats(1e-3, 1e7), st.integers(2, 6))
def test_ticks_are_round_even_and_few(top: float, most: int) -> None:
    places = ticks(top, most)
    assert places[0] == 0.0
    assert 1 <= len(places) <= most
    assert places[-1] <= top * (1 + 1e-9)
    steps = {round((b - a) / places[1], 9) for a, b in pairwise(places)}
    assert steps <= {1.0}


@pytest.mark.parametrize(
    ("top", "most", "expected"),
    [
        (37.0, 6, (0, 10, 20, 30)),
        (100.0, 6, (0, 20, 40, 60, 80, 100)),
        (0.9, 6, (0, 0.2, 0.4, 0.6, 0.8)),
        (120.0, 3, (0, 50, 100)),
    ],
)
def test_ticks_of_known_axes(top: float, most: int, expected: tuple[float, ...]) -> None:
    assert ticks(top, most) == pytest.approx(expected)


def test_an_axis_needs_an_end() -> None:
    with pytest.raises(ValueError, match="end above zero"):
        ticks(0.0)


def test_tick_texts_follow_the_step_and_the_locale() -> None:
    assert [t for _, t in Axis("", "", 5.1).ticks()] == ["0", "1", "2", "3", "4", "5"]
    assert [t for _, t in Axis("", "", 0.62, NumberLocale(",")).ticks()] == ["0,0", "0,2", "0,4", "0,6"]
    assert tick_decimals(0.25) == 2


def test_axis_end_of_nothing_is_still_an_axis() -> None:
    assert axis_end(()) == 1.0


def test_each_machine_is_a_row_and_each_measure_a_column() -> None:
    study, comparison = make(5, 4)
    figure = comparison_figure(comparison, study)
    assert [r.name for r in figure.rows] == [m.name for m in comparison.machines]
    assert [m.key for m in figure.measures] == [
        "energy_wh",
        "parts_per_kwh",
        "mean_w",
        "seconds",
        "bed_share",
    ]
    assert all(len(m.cells) == 5 for m in figure.measures)
    assert figure.source == "Hose clip study (invented data)"


def test_values_are_in_the_units_shown() -> None:
    study, comparison = make(3, 4)
    figure = comparison_figure(comparison, study)
    by_key = {m.key: m for m in figure.measures}
    machine = comparison.machines[0]
    assert machine.seconds is not None
    assert machine.bed_share is not None
    minutes = by_key["seconds"].cells[0].mark
    share = by_key["bed_share"].cells[0].mark
    assert minutes is not None
    assert share is not None
    assert minutes.value == pytest.approx(machine.seconds.value / 60)
    assert share.value == pytest.approx(100 * machine.bed_share.value)
    assert by_key["mean_w"].cells[0].inner == machine.bed_w


def test_axes_start_at_zero_and_hold_every_mark_with_its_interval() -> None:
    study, comparison = make(12, 5)
    for measure in comparison_figure(comparison, study).measures:
        for cell in measure.cells:
            if cell.mark is not None:
                assert 0 <= cell.mark.low <= cell.mark.value <= cell.mark.high <= measure.axis.top
            assert not any(d.beyond for d in cell.dots if d.included)


def test_a_run_left_out_stays_visible_but_a_wild_one_does_not_stretch_the_axis() -> None:
    study, comparison = make(3, 4)
    birch = next(m for m in comparison.machines if m.name == "Birch")
    wild = tuple(evolve(r, energy_wh=900.0) if not r.included else r for r in birch.runs)
    machines = tuple(evolve(m, runs=wild) if m is birch else m for m in comparison.machines)
    energy = comparison_figure(evolve(comparison, machines=machines), study).measures[0]
    dots = [d for cell in energy.cells for d in cell.dots if not d.included]
    assert [(d.value, d.beyond) for d in dots] == [(900.0, True)]
    assert energy.axis.top < 60


def test_another_part_is_not_shown_unless_a_person_decided() -> None:
    _, comparison = make(2, 3, left_out=False)
    machine = comparison.machines[0]
    other = evolve(machine.runs[0], part="B", included=False, decided_by_user=False, run_id="x")
    assert other not in shown_runs(evolve(machine, runs=(*machine.runs, other)))
    decided = evolve(other, decided_by_user=True, left_out_by_user=True)
    assert decided in shown_runs(evolve(machine, runs=(*machine.runs, decided)))


def test_an_unknown_bed_share_says_what_is_known() -> None:
    study, comparison = make(5, 4)
    row = next(i for i, m in enumerate(comparison.machines) if m.bed_share is None)
    cell = comparison_figure(comparison, study).measures[-1].cells[row]
    assert cell.mark is None
    assert cell.note == "at least 31 %"
    assert cell.bound is not None
    assert (cell.bound.low, cell.bound.high) == pytest.approx((31.0, 80.0))


def test_a_bar_is_filled_as_far_as_the_bed_is_known() -> None:
    study, comparison = make(5, 4)
    row = next(i for i, m in enumerate(comparison.machines) if m.bed_share is None)
    mean = next(m for m in comparison_figure(comparison, study).measures if m.key == "mean_w")
    cell, machine = mean.cells[row], comparison.machines[row]
    assert machine.mean_w is not None
    assert cell.inner is None
    assert cell.inner_least == pytest.approx(0.31 * machine.mean_w.value)
    assert all(c.inner_least is None for i, c in enumerate(mean.cells) if i != row)


def test_a_machine_without_a_counted_run_has_a_row_that_says_so() -> None:
    study, comparison = make(2, 2, left_out=False)
    machine = comparison.machines[1]
    empty = evolve(
        machine,
        runs=tuple(evolve(r, included=False) for r in machine.runs),
        energy_wh=None,
        parts_per_kwh=None,
        mean_w=None,
        seconds=None,
        bed_share=None,
    )
    figure = comparison_figure(evolve(comparison, machines=(comparison.machines[0], empty)), study)
    assert figure.rows[1].runs_text == "no runs"
    assert [m.cells[1].note for m in figure.measures] == ["no run counts", "", "", "", ""]
    assert {m.cells[1].reason for m in figure.measures} == {f"{machine.name} has no run that counts."}


def pair(one: int, other: int, shown: bool | None) -> Pair:
    return Pair(f"m{one}", f"m{other}", 1.0, 0.9, 1.1, 0.5, shown)


@pytest.mark.parametrize(
    ("alike", "expected"),
    [
        ([], ()),
        ([(1, 2)], ((1, 2),)),
        ([(0, 1), (1, 2)], ((0, 1), (1, 2))),  # 0 and 2 differ
        ([(0, 1), (1, 2), (0, 2), (3, 4)], ((0, 2), (3, 4))),
        ([(0, 2)], ()),  # no neighbours
    ],
)
def test_neighbours_that_show_no_difference_are_tied(
    alike: list[tuple[int, int]], expected: tuple[tuple[int, int], ...]
) -> None:
    _, comparison = make(5, 3)
    machines = tuple(sorted(comparison.machines, key=lambda m: m.machine_id))
    pairs = tuple(pair(*p, shown=p not in alike) for p in combinations(range(5), 2))
    tested = evolve(comparison, machines=machines, pairs=pairs)
    assert ties(tested) == expected
    untested = evolve(tested, pairs=tuple(evolve(p, shown=None) for p in pairs))
    assert ties(untested) == ()


def test_ties_are_explained_in_the_energy_column() -> None:
    study, comparison = make(5, 3)
    ids = [m.machine_id for m in comparison.machines]
    tied = Pair(ids[1], ids[2], 1.0, 0.9, 1.1, 0.5, False)
    figure = comparison_figure(evolve(comparison, pairs=(tied,)), study)
    assert figure.ties == ((1, 2),)
    assert figure.measures[0].legend == "bracket: no difference shown"
    assert comparison_figure(comparison, study).measures[0].legend == ""


def test_lines_of_equal_watts_end_on_the_edge_of_the_plot() -> None:
    for line in watt_lines((Point(34, 20), Point(85, 34)), 95, 40):
        assert line.end.y == pytest.approx(line.watts * line.end.x / 60)
        assert line.end.x == pytest.approx(95) or line.end.y == pytest.approx(40)


def test_lines_of_equal_watts_are_few_and_round() -> None:
    for spread in (1.0, 1.5, 4.0, 30.0):
        lines = watt_lines((Point(60, 50), Point(60, 50 * spread)), 70, 60 * spread)
        assert 1 <= len(lines) <= 5
        assert all(line.watts == round(line.watts) for line in lines)


def test_energy_against_time_shows_every_counted_run_once() -> None:
    study, comparison = make(5, 4)
    figure = energy_time_figure(comparison, study)
    shown = [d.run_id for m in figure.marks for d in m.dots if d.included]
    counted = [r.run_id for m in comparison.machines for r in m.included]
    assert sorted(shown) == sorted(counted)


boxes = st.tuples(st.floats(10, 390), st.floats(10, 290), st.floats(20, 90))


@given(st.lists(boxes, min_size=1, max_size=25))
def test_labels_never_overlap_and_never_leave_the_plot(points: list[tuple[float, float, float]]) -> None:
    bounds = Box(0, 0, 400, 300)
    obstacles = (Box(100, 100, 60, 20),)
    anchors = tuple(Anchor(x, y, 5, width, 14) for x, y, width in points)
    placed = place(anchors, bounds, obstacles)
    assert placed == place(anchors, bounds, obstacles)
    found = [p for p in placed if p is not None]
    for p in found:
        assert bounds.holds(p.box)
        assert not p.box.overlaps(obstacles[0])
        assert not any(p.box.overlaps(Box(a.x - 5, a.y - 5, 10, 10)) for a in anchors)
    for one, other in combinations(found, 2):
        assert not one.box.overlaps(other.box)
        assert other.leader is None or not crosses(other.leader, one.box)


def test_a_lone_label_stands_beside_its_point_without_a_line() -> None:
    (placed,) = place((Anchor(50, 50, 5, 20, 10),), Box(0, 0, 100, 100))
    assert placed is not None
    assert placed.leader is None
    assert placed.box == Box(58, 45, 20, 10)


def test_a_label_moves_off_a_line_when_there_is_room() -> None:
    (placed,) = place((Anchor(50, 50, 5, 20, 10),), Box(0, 0, 100, 100), (), ((0, 50, 100, 50),))
    assert placed is not None
    assert not crosses((0, 50, 100, 50), placed.box)


def test_dots_lie_side_by_side_where_there_are_lanes() -> None:
    lanes = swarm((1.0, 1.1, 1.2, 9.0), 1.0, 3)
    assert lanes == (0, 1, 2, 0)
    assert set(swarm((1.0,) * 7, 1.0, 2)) == {0, 1}


def test_a_run_is_read_out_with_value_interval_and_method() -> None:
    _, comparison = make(5, 4)
    machine = comparison.machines[0]
    lines = readout(comparison, machine.runs[0].run_id, ENERGY)
    assert lines[0].startswith(f"{machine.name}, run 1, 2026-05-04 09:15")
    assert "Energy per part: " in lines[1]
    assert "±" in lines[1]
    assert lines[1].endswith("Wh")
    assert lines[2] == "from the energy counter"
    assert readout(comparison, "nobody") == ()


def test_a_run_left_out_says_why() -> None:
    _, comparison = make(5, 4)
    run = next(r for m in comparison.machines for r in m.runs if not r.included)
    assert readout(comparison, run.run_id, DURATION)[-1] == "not counted: door was open"


def test_an_unseen_bed_is_read_out_with_its_bound() -> None:
    _, comparison = make(5, 4)
    machine = next(m for m in comparison.machines if m.bed_share is None)
    lines = readout(comparison, machine.runs[0].run_id, BED_SHARE)
    assert lines[1] == "Bed share: at least 31 %, at most 80 %"


def test_the_numbers_of_a_picture_name_every_machine() -> None:
    study, comparison = make(5, 4)
    for figure in (comparison_figure(comparison, study), energy_time_figure(comparison, study)):
        text = numbers_of(figure)
        assert all(m.name in text for m in comparison.machines)
        assert "Wh" in text
