"""Bands of repeats: how wide they are, that chance hardly leaves them, and that an odd run is found."""

import numpy as np
import pytest
from attrs import evolve

from core.line_up.answer import leave_told, total_told
from core.line_up.bands import (
    BINS_IN_WIDTH,
    Leave,
    energy_band,
    leaves,
    power_band,
    scale_of,
    step_for,
)
from core.line_up.common_axis import judging_width_s, power
from core.line_up.strands import ANCHORS, Anchor, Strand
from core.traces import Trace
from tests.core.lined_up import STANDBY_S, repeats, strand


def with_extra(run: Strand, from_s: float, to_s: float, extra_w: float) -> Strand:
    """The run with more watts between two moments after its start."""
    watts = run.trace.power_w.copy()
    first = int(STANDBY_S)
    watts[first + int(from_s) : first + int(to_s)] += extra_w
    return strand(watts, run.warm_s - run.start_s, run.name, run.machine, run.slot)


def found(runs: list[Strand], anchor: Anchor = "start") -> tuple[Leave, ...]:
    return leaves(runs, anchor, judging_width_s(runs))


@pytest.mark.parametrize("runs", [2, 3, 5, 10, 16])
def test_the_scale_makes_a_standard_deviation_of_the_median_distance(runs: int) -> None:
    values = np.random.default_rng(runs).standard_normal((60_000, runs))
    distance = np.abs(values - np.median(values, axis=1, keepdims=True))
    assert scale_of(runs) * float(np.median(distance)) == pytest.approx(1.0, rel=0.02)


def test_the_band_holds_most_of_what_the_repeats_do() -> None:
    runs = repeats(11, runs=8)
    width = judging_width_s(runs)
    step = step_for(runs, "start", width)
    band = power_band(runs, "start", step, width)
    inside = []
    for run in runs:
        bins = power(run, "start", step, width)
        own = bins.values[: band.median.size]
        low, high = band.low[: own.size], band.high[: own.size]
        known = np.isfinite(own) & np.isfinite(low)
        inside.append(float(np.mean((own >= low)[known] & (own <= high)[known])))
    assert 0.88 < float(np.mean(inside)) <= 1.0


@pytest.mark.parametrize(("runs", "after_s"), [(3, 1500), (5, 1500), (5, 4000)])
def test_chance_hardly_leaves_the_band(runs: int, after_s: float) -> None:
    """Of repeats that differ by chance alone at most about one in fifty is pointed out."""
    benches = 40
    out = 0
    for seed in range(benches):
        made = repeats(1000 + seed, runs, after_s=after_s)
        out += len({leave.run_id for leave in found(made)})
    assert out <= 0.03 * benches * runs


@pytest.mark.parametrize("anchor", ANCHORS)
def test_an_odd_run_is_found_with_its_place_and_energy(anchor: Anchor) -> None:
    hits = 0
    for seed in range(10):
        runs = repeats(2000 + seed, 5, after_s=2000)
        odd = with_extra(runs[2], 800, 1200, 20.0)
        mine = [leave for leave in found([*runs[:2], odd, *runs[3:]], anchor) if leave.run_id == odd.run_id]
        places = odd.place(np.array([800.0, 1200.0]) + odd.start_s, anchor)
        inside = [leave for leave in mine if leave.start < places[1] and leave.end > places[0]]
        if not inside:
            continue
        hits += 1
        (leave,) = inside
        slack = 1.5 * judging_width_s(runs) / (odd.seconds if anchor == "share of duration" else 1)
        assert leave.start == pytest.approx(places[0], abs=slack)
        assert leave.end == pytest.approx(places[1], abs=slack)
        assert leave.energy_wh == pytest.approx(20 * 400 / 3600, rel=0.35)
        assert leave.by_w > 0
    assert hits >= 9


def test_a_run_with_less_is_told_with_less() -> None:
    runs = repeats(31, 5)
    odd = with_extra(runs[0], 900, 1400, -20.0)
    (leave,) = (x for x in found([odd, *runs[1:]]) if x.run_id == odd.run_id)
    assert leave.by_w < 0
    said = leave_told(leave, odd, "start")
    assert said.startswith("Alder, run 1 leaves its band from 1")
    assert " W less, " in said
    assert said.endswith(" Wh less")


def test_one_odd_run_hardly_widens_the_band() -> None:
    runs = repeats(32, 5)
    odd = with_extra(runs[0], 600, 1500, 60.0)
    step, width = 30.0, 180.0
    plain, pulled = (power_band(r, "start", step, width) for r in (runs, [odd, *runs[1:]]))
    assert np.nanmax(pulled.high - pulled.median) < 2.0 * np.nanmax(plain.high - plain.median)
    assert float(np.nanmedian(np.abs(pulled.median - plain.median))) < 3.0


def test_of_two_runs_none_is_odd_and_of_one_there_is_no_band() -> None:
    runs = repeats(33, 2)
    odd = with_extra(runs[0], 600, 1500, 60.0)
    assert found([odd, runs[1]]) == ()
    assert power_band(runs, "start", 30.0, 180.0).runs == 2
    with pytest.raises(ValueError, match="two"):
        power_band(runs[:1], "start", 30.0, 180.0)


def test_identical_runs_have_a_narrow_band_and_none_leaves() -> None:
    run = repeats(34, 1)[0]
    runs = [evolve(run, run_id=str(i)) for i in range(4)]
    band = power_band(runs, "start", 30.0, 180.0)
    known = np.isfinite(band.median)
    assert (band.high >= band.median)[known].all()
    assert float(np.nanmax(band.high - band.low)) < 0.05 * float(np.nanmax(band.median))
    assert found(runs) == ()


def test_the_band_ends_where_fewer_than_half_of_the_runs_are_left() -> None:
    lengths = (600, 600, 1200)
    runs = [strand(np.full(int(n + 2 * STANDBY_S), 50.0), 10.0, f"run {i}") for i, n in enumerate(lengths)]
    band = power_band(runs, "start", 10.0, 0.0)
    assert band.places[np.isfinite(band.median)][-1] == pytest.approx(595.0)


def test_the_band_of_the_running_energy_ends_around_the_energies() -> None:
    runs = repeats(35, 5)
    band = energy_band(runs, "share of duration", 1 / 100)
    energies = [run.energy_wh for run in runs]
    assert min(energies) <= band.median[-1] * 1.01
    assert band.median[-1] * 0.99 <= max(energies)
    assert (np.diff(band.median[np.isfinite(band.median)]) > 0).all()


def test_bins_of_judging_are_finer_than_the_moving_mean() -> None:
    runs = repeats(36, 2)
    assert step_for(runs, "end", 120.0) == 120.0 / BINS_IN_WIDTH
    assert step_for(runs, "share of duration", 120.0) * max(s.seconds for s in runs) <= 120.0 / BINS_IN_WIDTH


def test_slow_logs_are_judged_too() -> None:
    rng = np.random.default_rng(5)
    made = []
    for i in range(4):
        watts = 60 + rng.normal(0, 2, 200)
        watts[100:140] += 40.0 if i == 1 else 0.0
        trace = Trace.of(np.arange(200) * 30.0, watts, "averaged", resolution_w=0.1)
        base = strand(np.full(300, 60.0), 10.0, f"run {i + 1}")
        made.append(evolve(base, trace=trace, start_s=0.0, end_s=5970.0, warm_s=300.0, energy_wh=100.0))
    assert {leave.run_id for leave in found(made)} == {"Alder run 2"}


def test_how_many_leave_is_said_of_those_that_can_be_judged() -> None:
    runs = [*repeats(37, 3), *repeats(38, 2, machine="Rowan", slot=1)]
    assert total_told(0, runs) == "None of 3 runs leaves its band"
    assert total_told(1, runs) == "1 of 3 runs leaves its band"
    assert total_told(2, runs) == "2 of 3 runs leave their band"
    assert total_told(0, runs[3:]) == ""
