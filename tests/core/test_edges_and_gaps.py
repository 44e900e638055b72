"""Edges of a run and gaps in its log against numbers worked out by hand."""

import math

import numpy as np
import pytest

from core.activity import find
from core.energy.bridges import bridges
from core.energy.edges import MIXED_ROW_PLACE, Edge, edge
from core.energy.timing import dead_band_w, shortest_interval_s, stamp_u_s
from core.energy.total import between
from core.study import Meter
from core.traces import Sampling, Trace
from core.wording import reason, sentences
from tests.core.simulated import MachineModel, MeterModel, Simulated, Task, simulate

METER = Meter("m", "bench meter")


def trace(power: list[float], kind: Sampling = "sampled", step_s: float = 10.0) -> Trace:
    return Trace.of(np.arange(len(power)) * step_s, np.array(power), kind=kind)


# from 6 W to 200 W between the rows at 20 s and 30 s, back between 50 s and 60 s
STEP = [6.0, 6.0, 6.0, 200.0, 200.0, 200.0, 6.0, 6.0]


@pytest.mark.parametrize(
    ("kind", "at_s", "is_start", "is_step", "wanted"),
    [
        # sampled: the step lies anywhere between the two rows
        ("sampled", 24.0, True, True, Edge(24.0, 2, 3, 6.0, 200.0, 10 / math.sqrt(12))),
        # no step: along the straight line, 83.6 W at 24 s, each side its mean
        ("sampled", 24.0, True, False, Edge(24.0, 2, 3, 44.8, 141.8, 0.0)),
        # a sample at the very moment belongs to the side whose level it shows
        ("sampled", 20.0, True, True, Edge(20.0, 2, 3, 6.0, 200.0, 10 / math.sqrt(12))),
        ("sampled", 30.0, True, True, Edge(30.0, 2, 3, 6.0, 200.0, 10 / math.sqrt(12))),
        # nothing is known of before the first row
        ("sampled", 0.0, True, True, Edge(0.0, 0, 1, 6.0, 6.0, 0.0)),
        # told on change: at the poll after it
        ("on_change", 24.0, True, True, Edge(24.0, 2, 3, 6.0, 200.0, 10 / math.sqrt(12))),
        ("on_change", 24.0, True, False, Edge(24.0, 2, 3, 6.0, 6.0, 0.0)),
        # averaged: 2000 W s in the row to 30 s, of which 24 belong to before: 1976 W s in 6 s
        (
            "averaged",
            24.0,
            True,
            True,
            Edge(24.0, 2, 3, 6.0, 1976 / 6, 10 * MIXED_ROW_PLACE, 6.0),
        ),
        # at the end the row to 60 s is of 6 W throughout
        ("averaged", 54.0, False, True, Edge(54.0, 5, 6, 6.0, 6.0, 10 * MIXED_ROW_PLACE, 6.0)),
        # the row to 50 s holds 2000 W s, of which 6 s are at the 6 W of the row behind it: 1964 W s in 4 s
        ("averaged", 44.0, False, True, Edge(44.0, 4, 5, 491.0, 6.0, 10 * MIXED_ROW_PLACE, 6.0)),
        ("averaged", 24.0, True, False, Edge(24.0, 2, 3, 200.0, 200.0, 0.0, 200.0)),
        ("averaged", 30.0, True, True, Edge(30.0, 2, 3, 200.0, 200.0, 10 * MIXED_ROW_PLACE, 6.0)),
    ],
)
def test_an_edge_has_its_rows_levels_and_doubt(
    kind: Sampling, at_s: float, is_start: bool, is_step: bool, wanted: Edge
) -> None:
    found = edge(trace(STEP, kind), at_s, is_start=is_start, is_step=is_step)
    assert (found.row_before, found.row_after) == (wanted.row_before, wanted.row_after)
    assert (found.at_s, found.before_w, found.after_w) == pytest.approx(
        (wanted.at_s, wanted.before_w, wanted.after_w)
    )
    assert found.u_s == pytest.approx(wanted.u_s)
    assert found.mixed_w == wanted.mixed_w


def test_a_trace_of_one_row_has_its_level_on_both_sides() -> None:
    assert edge(trace([7.0]), 0.0, is_start=True, is_step=True) == Edge(0.0, 0, 0, 7.0, 7.0, 0.0)


def test_a_gap_is_bridged_by_the_means_beside_it() -> None:
    # 100 W and 300 W by turns every 10 s up to 200 s, then silence to 300 s, then 40 W
    before, after = np.tile([100.0, 300.0], 11)[:21], np.full(21, 40.0)
    time = np.concatenate((np.arange(21) * 10.0, 300.0 + np.arange(21) * 10.0))
    log = Trace.of(time, np.concatenate((before, after)))
    (gap,) = log.gaps
    assert (gap.start_s, gap.end_s) == (200.0, 300.0)
    more_wh, u_wh = bridges(log, log.gaps, 0.0, 500.0, 40.0, 300.0)
    # the means beside it are 200 W and 40 W, for 200 s each; the line over the gap is of 70 W
    assert more_wh == pytest.approx((120.0 - 70.0) * 100 / 3600)
    assert u_wh == pytest.approx(260.0 / math.sqrt(12) * 100 / 3600)


def test_a_gap_with_hardly_a_row_beside_it_is_left_to_the_straight_line() -> None:
    time = np.array([0.0, 10.0, 20.0, 200.0, 210.0])
    log = Trace.of(time, np.array([100.0, 300.0, 100.0, 40.0, 40.0]))
    more_wh, u_wh = bridges(log, log.gaps, 0.0, 210.0, 40.0, 300.0)
    assert more_wh == 0.0
    assert u_wh == pytest.approx(260.0 / math.sqrt(12) * 180 / 3600)


def test_two_gaps_are_doubted_by_the_root_of_squares() -> None:
    time = np.concatenate((np.arange(20.0), 120.0 + np.arange(20.0), 220.0 + np.arange(20.0)))
    log = Trace.of(time, np.full(60, 50.0))
    assert len(log.gaps) == 2
    _, u_wh = bridges(log, log.gaps, 0.0, 239.0, 20.0, 50.0)
    each_wh = [30.0 / math.sqrt(12) * gap.seconds / 3600 for gap in log.gaps]
    assert u_wh == pytest.approx(math.hypot(*each_wh))


@pytest.mark.parametrize(
    ("time_s", "kind", "u_s"),
    [
        ([0.0, 60.0, 120.0, 240.0], "sampled", 60 / math.sqrt(12)),
        ([0.0, 10.0, 21.0], "sampled", 1 / math.sqrt(12)),
        ([0.0, 10.1, 20.0], "sampled", 0.1 / math.sqrt(12)),
        ([0.0, 10.01, 20.0], "sampled", 0.01 / math.sqrt(12)),
        ([0.0, 10.0123, 20.0], "sampled", 0.0),
        # windows of 9 s and 11 s by turns scatter by 1 s
        ([0.0, 9.0, 20.0, 29.0, 40.0], "averaged", 1 / math.sqrt(2)),
    ],
)
def test_stamps_are_as_sure_as_their_step(time_s: list[float], kind: Sampling, u_s: float) -> None:
    assert stamp_u_s(Trace.of(time_s, np.ones(len(time_s)), kind=kind)) == pytest.approx(u_s)


def test_what_an_on_change_meter_looks_at_and_reports() -> None:
    time = np.concatenate(([0.0], np.cumsum(np.tile([2.0, 30.0], 40))))
    power = np.cumsum(np.tile([0.5, -4.0], 41))[: time.size]
    log = Trace.of(time, power + 400.0, kind="on_change")
    assert shortest_interval_s(log) == pytest.approx(2.0)
    assert dead_band_w(log) == pytest.approx(0.5)
    still = Trace.of([0.0], [5.0], kind="on_change")
    assert (shortest_interval_s(still), dead_band_w(still)) == (0.0, 0.0)


@pytest.mark.parametrize("interval_s", [1.0, 30.0, 60.0])
@pytest.mark.parametrize("cycle_s", [4.0, 60.0, 130.0])
def test_all_that_is_said_of_an_energy_has_the_facts_of_its_sentence(
    interval_s: float, cycle_s: float
) -> None:
    time = np.arange(0.0, 5400.0, interval_s)
    is_on = (time < 1200) | (time % cycle_s < cycle_s / 3)
    power = np.where((time > 600) & (time < 4800), 60.0 + 300.0 * is_on, 6.0)
    kept = (time < 2500) | (time > 3000)
    for rows in (slice(None), kept):
        log = Trace.of(time[rows], power[rows], resolution_w=0.1)
        for problem in between(log, 600.0, 4800.0, METER).problems:
            facts = dict(problem.facts)
            assert reason(problem.code, **facts) != ""
            # a sentence that lacks a fact is told as its bare code
            assert not reason(problem.code, **facts).startswith(problem.code)
            assert problem.code in sentences()


def test_an_interval_with_no_row_inside_is_the_straight_line_and_all_unsure() -> None:
    log = Trace.of([0.0, 100.0, 200.0], [50.0, 80.0, 20.0])
    found = between(log, 120.0, 140.0, METER, rising_edges=False)
    # 68 W to 56 W for 20 s, between rows that differ by 60 W
    assert found.energy_wh == pytest.approx(62.0 * 20 / 3600)
    (sampling,) = [each for each in found.influences if each.name == "sampling"]
    assert sampling.u_wh == pytest.approx(60.0 / math.sqrt(12) * 20 / 3600)


def with_a_gap_over_the_start(meter: MeterModel, seed: int) -> tuple[Simulated, Trace]:
    """Three parts, and the trace with the minutes around the start of the second lost."""
    rest, part = Task("idle", 900), Task("part", 3000)
    machine = MachineModel(control="fast pulses", bed_w=250.0)
    found = simulate(machine, meter, (rest, part, rest, part, rest, part, rest), seed)
    rng = np.random.default_rng(seed)
    from_s = found.truths[1].start_s - 150.0 * float(rng.uniform(0.1, 0.9))
    whole = found.trace
    kept = (whole.time_s < from_s) | (whole.time_s > from_s + 150.0)
    counter = None if whole.counter_wh is None else whole.counter_wh[kept]
    return found, Trace.of(
        whole.time_s[kept], whole.power_w[kept], whole.kind, counter, key=f"gap {meter} {seed}"
    )


@pytest.mark.parametrize(
    "meter",
    [
        MeterModel(interval_s=2.0),
        MeterModel(interval_s=10.0, averaging=True),
        MeterModel(interval_s=2.0, counter_step_wh=0.1),
        MeterModel(interval_s=10.0, averaging=True, counter_step_wh=0.1),
        MeterModel(on_change_w=1.0, heartbeat_s=300.0, counter_step_wh=0.1),
    ],
)
def test_a_gap_over_the_start_is_in_the_interval(meter: MeterModel) -> None:
    held, bias, starts_s = 0, [], []
    for seed in range(12):
        found, cut = with_a_gap_over_the_start(meter, seed)
        stretch = find(cut).stretches[1]
        used = between(cut, stretch.start_s, stretch.end_s, METER)
        own_u_wh = math.hypot(*(i.u_wh for i in used.influences if i.shared is None))
        error_wh = used.energy_wh - found.truths[1].energy_wh
        held += abs(error_wh) < 1.96 * own_u_wh
        bias.append(error_wh / found.truths[1].energy_wh)
        starts_s.append(abs(stretch.start_s - found.truths[1].start_s))
        if meter.counter_step_wh:
            assert abs(error_wh) < 0.01 * found.truths[1].energy_wh
    assert held >= 11
    assert abs(float(np.mean(bias))) < 0.02
    assert max(starts_s) < 120
