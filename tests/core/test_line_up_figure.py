"""What a line-up shows, as numbers: whose curves, where, on which scales, with which states and bands."""

import numpy as np
import pytest
from attrs import evolve

from core.figures.line_up import line_up_figure, whole_view
from core.figures.line_up_readout import at_place
from core.figures.line_up_values import Curve, LineUpFigure, Panel, Scale
from core.figures.source import numbers_of
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.line_up.span_table import span_table
from core.line_up.spans import read_span
from core.line_up.strands import ANCHORS, Anchor, Strand
from core.results.values import Comparison
from core.study import Study
from core.tables import to_csv
from core.traces import Trace
from tests.core.lined_up import STANDBY_S, repeats, strand

COMPARISON = Comparison("part", "warm-up and processing", (), (), (), (), "", "")
STUDY = Study("s", name="A bench", invented=True)
RUNS = (
    *repeats(1, 4, after_s=1500, base_w=40),
    *repeats(2, 4, machine="Rowan", slot=1, after_s=2400, base_w=20),
)


def figure(choices: LineUp, runs: tuple[Strand, ...] = RUNS) -> LineUpFigure:
    return line_up_figure(runs, choices, answer(runs, COMPARISON, choices), STUDY)


def power_of(panel: Panel, run_id: str) -> Curve:
    return next(c for c in panel.curves if c.run_id == run_id)


def test_the_figure_says_what_it_was_made_from() -> None:
    made = figure(LineUp())
    assert made.source == "A bench (invented data)"
    assert made.run_ids == tuple(s.run_id for s in RUNS)
    assert numbers_of(made).startswith("Alder (4 runs): warm-up 1 min 30 s, ")
    assert figure(LineUp()) == made
    assert figure(LineUp(anchor="end")) != made
    assert figure(LineUp(), RUNS[1:]) != made


def test_nothing_given_has_no_panels() -> None:
    made = figure(LineUp(), ())
    assert made.rows == ()
    assert made.run_ids == ()


@pytest.mark.parametrize(
    ("choices", "rows", "columns"),
    [
        (LineUp(shown="power"), 1, 1),
        (LineUp(), 2, 1),
        (LineUp(arrangement="machine under machine"), 2, 2),
        (LineUp(arrangement="run under run", shown="running energy"), 8, 1),
        (LineUp(arrangement="difference"), 2, 1),
    ],
)
def test_panels_stand_in_rows_and_columns(choices: LineUp, rows: int, columns: int) -> None:
    made = figure(choices)
    assert len(made.rows) == rows
    assert {len(row) for row in made.rows} == {columns}
    by_unit: dict[str, set[tuple[float, float]]] = {}
    for panel in made.panels:
        by_unit.setdefault(panel.y.unit, set()).add((panel.y.low, panel.y.high))
    assert all(len(scales) == 1 for scales in by_unit.values())  # heights can be compared


@pytest.mark.parametrize("anchor", ANCHORS)
@pytest.mark.parametrize("smooth_s", [0.0, None])
def test_curves_lie_where_the_runs_do(anchor: Anchor, smooth_s: float | None) -> None:
    made = figure(LineUp(anchor=anchor, smooth_s=smooth_s))
    for run in RUNS:
        curve = power_of(made.rows[0][0], run.run_id)
        low, high = (v * made.factor for v in run.reach(anchor))
        known = curve.x[np.isfinite(curve.y)]
        slack = 0.02 * (made.x.high - made.x.low)
        assert known[0] == pytest.approx(low, abs=slack)
        assert known[-1] == pytest.approx(high, abs=slack)


def test_no_spike_of_a_trace_as_logged_is_lost() -> None:
    watts = RUNS[0].trace.power_w.copy()
    watts[int(STANDBY_S) + 777] = 900.0
    run = strand(watts, RUNS[0].warm_s - RUNS[0].start_s)
    made = figure(
        LineUp(smooth_s=0.0), (run,)
    )  # the height is given to processing, of which the spike is part
    curve = made.rows[0][0].curves[0]
    assert float(np.nanmax(curve.y)) == 900.0
    assert made.rows[0][0].y.high > 900
    assert made.is_as_logged
    assert not figure(LineUp(), (run,)).is_as_logged


def test_a_smoothed_curve_keeps_the_energy() -> None:
    run = RUNS[0]
    made = figure(LineUp(anchor="share of duration"), (run,))
    curve = made.rows[0][0].curves[0]
    mean_w = float(np.nanmean(curve.y))
    assert mean_w * run.seconds / 3600 == pytest.approx(run.course.energy_wh, rel=1e-3)


def test_a_gap_stays_open() -> None:
    time = np.concatenate((np.arange(0, 600.0), np.arange(1200.0, 2000.0)))
    trace = Trace.of(time, np.full(time.size, 50.0))
    run = evolve(RUNS[0], trace=trace, start_s=0.0, end_s=1999.0, warm_s=100.0, states=())
    for smooth_s in (0.0, 60.0):
        curve = figure(LineUp(smooth_s=smooth_s), (run,)).rows[0][0].curves[0]
        inside = (curve.x > 610 / 60) & (curve.x < 1190 / 60)
        assert not np.isfinite(curve.y[inside]).any()
        assert np.isnan(curve.y).any()


def test_running_energy_ends_at_what_counts() -> None:
    made = figure(LineUp(shown="running energy"))
    for run in RUNS:
        curve = power_of(made.rows[0][0], run.run_id)
        assert curve.y[np.isfinite(curve.y)][-1] == pytest.approx(run.energy_wh, rel=0.01)


def test_a_difference_leaves_its_reference_out_and_is_zero_for_a_twin() -> None:
    twin = evolve(RUNS[0], run_id="twin", name="run 9")
    made = figure(LineUp(arrangement="difference", reference="twin"), (*RUNS, twin))
    power, energy = (row[0] for row in made.rows)
    assert "twin" not in {c.run_id for c in power.curves}
    own = power_of(power, RUNS[0].run_id)
    assert float(np.nanmax(np.abs(own.y))) < 1e-9
    other = power_of(energy, RUNS[-1].run_id)
    assert np.isfinite(other.y).any()
    assert "more than Alder, run 9" in power.y.title
    assert power.y.low < 0 < power.y.high


def test_a_view_sets_the_axis_and_its_unit() -> None:
    low, high = whole_view(RUNS, "start")
    assert (low, high) == (0.0, max(s.seconds for s in RUNS))
    close = figure(LineUp(view=(600.0, 700.0)))
    assert (close.x.unit, close.x.low, close.x.high) == ("s", 600.0, 700.0)
    far = figure(LineUp(view=(-1e6, 1e6)))
    assert (far.x.unit, far.x.low, far.x.high) == ("min", 0.0, high / 60)
    assert close.rows[0][0].y.high < far.rows[0][0].y.high  # the warm-up is out of sight


def test_the_height_can_be_given_to_processing() -> None:
    whole, fitted = figure(LineUp(fit_processing=False)), figure(LineUp())
    assert fitted.rows[0][0].y.high < 0.7 * whole.rows[0][0].y.high
    assert fitted.rows[0][0].beyond == pytest.approx(whole.rows[0][0].y.high / 1.06, rel=0.05)
    assert whole.rows[0][0].beyond is None
    assert fitted.rows[1][0].y == whole.rows[1][0].y
    warm_up = figure(LineUp(view=(0.0, 150.0))).rows[0][0]
    assert warm_up.beyond is None  # looked at closely, it is what one wants to see
    assert warm_up.y.high == pytest.approx(whole.rows[0][0].y.high, rel=0.05)


@pytest.mark.parametrize(("repeats_shown", "runs", "bands"), [("runs", 8, 0), ("bands", 0, 2)])
def test_repeats_are_drawn_as_chosen(repeats_shown: str, runs: int, bands: int) -> None:
    (panel,) = figure(LineUp(shown="power", repeats=repeats_shown)).rows[0]  # type: ignore[arg-type]
    assert sum(bool(c.run_id) for c in panel.curves) == runs
    assert len(panel.ribbons) == bands
    assert len(panel.hidden) == 8 - runs
    for ribbon in panel.ribbons:
        assert (ribbon.low <= ribbon.high).all()
        assert (ribbon.low >= 0).all()


def test_of_many_machines_only_bands_are_drawn_but_every_run_can_be_pointed_at() -> None:
    runs = tuple(s for i in range(7) for s in repeats(i, 2, f"M{i}", i, after_s=600))
    (panel,) = figure(LineUp(shown="power"), runs).rows[0]
    assert {c.run_id for c in panel.curves} == {""}
    assert {c.run_id for c in panel.hidden} == {s.run_id for s in runs}


def test_states_are_drawn_for_each_run_or_for_each_machine() -> None:
    few = figure(LineUp()).rows[0][0].state_rows
    assert [row.name for row in few] == [s.label for s in RUNS]
    (warm, low, high), (work, start, end) = few[0].spans
    assert (warm, work, low) == ("warm-up", "processing", 0.0)
    assert high == start == pytest.approx((RUNS[0].warm_s - RUNS[0].start_s) / 60)
    assert end == pytest.approx(RUNS[0].seconds / 60)
    many = figure(LineUp(), (*RUNS, *(evolve(s, run_id=f"{s.run_id} again") for s in RUNS)))
    assert [row.name for row in many.rows[0][0].state_rows] == ["Alder", "Rowan"]
    assert many.rows[1][0].state_rows == ()  # the energy stands under the power of the same runs


def test_a_run_that_leaves_is_marked_where_it_does() -> None:
    watts = RUNS[1].trace.power_w.copy()
    watts[int(STANDBY_S) + 800 : int(STANDBY_S) + 1200] += 30.0
    odd = strand(watts, RUNS[1].warm_s - RUNS[1].start_s, "run 2")
    made = figure(LineUp(repeats="bands"), (RUNS[0], odd, *RUNS[2:]))
    (excursion,) = made.rows[0][0].excursions
    assert excursion.run_id == odd.run_id
    assert excursion.low < 1000 / 60 < excursion.high
    assert excursion.by_text.endswith(" W more")
    assert odd.run_id in {c.run_id for c in made.rows[0][0].curves}  # drawn although only bands are wanted


def test_a_run_is_read_out_at_a_place() -> None:
    made, run = figure(LineUp(smooth_s=60.0)), RUNS[0]
    lines = at_place(made, run.run_id, 10.0)
    assert lines[:2] == ("Alder, run 1", "at 10.0 min")
    assert lines[2].endswith(" W, processing")
    used_wh = float(run.course.used_wh(np.array([600.0]))[0])
    assert lines[3] == f"{used_wh:.2f} Wh so far"
    assert at_place(made, run.run_id, 39.0)[1] == "at 39.0 min: not running"
    assert at_place(made, "nobody", 1.0) == ()


def test_a_span_lies_on_the_axis_and_in_the_table() -> None:
    made = figure(LineUp(span=(300.0, 600.0)))
    assert made.span == pytest.approx((5.0, 10.0))
    table = span_table(read_span(RUNS, "start", 300.0, 600.0), "from 5 to 10 min")
    assert [row[0] for row in table.rows][:3] == [
        "Alder, mean of 4 runs",
        "Rowan, mean of 4 runs",
        "Alder, run 1",
    ]
    assert len(to_csv(table).splitlines()) == 11
    away = span_table(read_span(RUNS, "start", 1e5, 2e5), "far away")
    assert {row[-1] for row in away.rows} == {"not there"}


@pytest.mark.parametrize(
    ("scale", "most", "texts"),
    [
        (Scale("t", "min", 0.0, 84.0), 7, ["0", "15", "30", "45", "60", "75"]),
        (Scale("t", "min", -3.0, 4.0), 5, ["−2", "0", "2", "4"]),
        (Scale("t", "s", 10.0, 12.0), 6, ["10.0", "10.5", "11.0", "11.5", "12.0"]),
        (Scale("P", "W", -70.0, 10.0), 5, ["−60", "−40", "−20", "0"]),
        (Scale("P", "W", 0.0, 47.0), 2, ["0", "40"]),
        (Scale("E", "Wh", 0.0, 0.86), 2, ["0.0", "0.5"]),
        (Scale("t", "h", 0.0, 9.0), 4, ["0", "3", "6", "9"]),
    ],
)
def test_ticks_are_round_and_no_more_than_fit(scale: Scale, most: int, texts: list[str]) -> None:
    assert [text for _, text in scale.ticks(most)] == texts
    assert len(scale.ticks(most)) <= most
