"""How each number was found: the lines hold the numbers they explain."""

import math
import re

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.energy.total import by_power_wh
from core.formatting import NumberLocale
from core.found import RATIO, as_markdown, explain
from core.found.writing import change, figures
from core.places import assets_folder
from core.progress import Cancelled
from core.quantities import BED_SHARE, QUANTITIES
from core.results.compare import compare
from core.results.values import Comparison
from core.traces import Trace
from core.uncertainty import coverage_factor, mean_of, ratio
from tests.comparisons import make
from tests.core import explained
from tests.core.benches import STANDBY_W, alike, bench, trace
from tests.core.explained import Bench, asked, last_number, line, of

# pytest looks for a fixture by its name in the file of the test
three, compared = explained.three, explained.compared

KEYS = (*(q.key for q in QUANTITIES), RATIO)


def test_a_mean_is_written_out_with_its_runs(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Alder")
    found = asked(three, compared, machine, "energy_wh")
    terms = " + ".join(f"{run.energy_wh:.2f}" for run in machine.runs)
    assert machine.energy_wh is not None
    assert found.formula[0] == f"({terms}) ÷ 4 = {machine.energy_wh.value:.3f} Wh"
    assert [s.run_id for s in found.sources] == [run.run_id for run in machine.runs]


@pytest.mark.parametrize("key", ["energy_wh", "parts_per_kwh", "mean_w"])
@pytest.mark.parametrize("of_run", [False, True])
def test_the_budget_makes_the_interval(three: Bench, compared: Comparison, key: str, of_run: bool) -> None:
    machine = of(compared, "Rowan")
    run = machine.runs[1]
    found = asked(three, compared, machine, key, run.run_id if of_run else None)
    assert sum(b.share_of_variance for b in found.budget) == pytest.approx(1.0)
    assert [b.u for b in found.budget] == sorted((b.u for b in found.budget), reverse=True)
    u = math.hypot(*(b.u for b in found.budget))
    if of_run:
        assert run.energy_u95_wh is not None
        assert run.energy_wh is not None
        value = getattr(run, key)
        u95, k = value * run.energy_u95_wh / run.energy_wh, coverage_factor(math.inf)
    else:
        u95 = getattr(machine, key).u95
        k = last_number(line(found.formula, "95 % interval").split("×")[0])
        assert k >= 1.95
    assert k * u == pytest.approx(u95, rel=0.005)
    assert last_number(line(found.formula, "95 % interval")) == pytest.approx(u95, rel=0.005)


def test_what_one_meter_does_to_all_its_runs_is_said(three: Bench, compared: Comparison) -> None:
    found = asked(three, compared, of(compared, "Birch"), "energy_wh")
    gain = next(b for b in found.budget if b.name == "meter gain")
    assert gain.shared_with == "every run measured with Meter of Birch"
    assert "assumed: nobody stated it" in gain.why
    study, traces = three
    meter = next(m for m in study.meters if m.name == "Meter of Birch")
    stated = edits.set_meter(study, meter.id, gain_percent=0.5, offset_w=0.1).study
    found = asked((stated, traces), compare(stated, traces), of(compared, "Birch"), "energy_wh")
    gain = next(b for b in found.budget if b.name == "meter gain")
    assert "(±0.5 % of reading)" in gain.why
    assert not any("State the accuracy" in text for text in found.surer)


def test_an_edge_moved_later_adds_what_was_drawn_then(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Alder")
    run = machine.runs[0]
    found = asked(three, compared, machine, "energy_wh", run.run_id)
    # after the run the machine stands by
    assert line(found.sensitivity, "If the run ended 30 s later") == (
        f"If the run ended 30 s later: +{STANDBY_W * 30 / 3600:.2f} Wh"
    )
    assert line(found.sensitivity, "If the run started one sample (2 s) earlier").endswith(": no change")


def test_the_energy_of_a_run_is_added_up_from_its_rows(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Alder")
    run = machine.runs[0]
    found = asked(three, compared, machine, "energy_wh", run.run_id)
    study, traces = three
    each = traces[study.logs_of(machine.machine_id)[0].id]
    rows = (each.time_s >= run.start_s) & (each.time_s <= run.end_s)
    inside = by_power_wh(each, float(each.time_s[rows][0]), float(each.time_s[rows][-1]))
    told = line(found.formula, "Σ ½")
    assert f"over {rows.sum()} rows" in told
    assert last_number(told) == pytest.approx(inside, abs=6e-4)
    assert last_number(line(found.formula, "with what lies")) == pytest.approx(run.energy_wh, abs=6e-4)
    parts = re.findall(r"([\d.]+) Wh in", line(found.formula, "of it by the power"))
    assert sum(map(float, parts)) == pytest.approx(run.energy_wh, rel=0.01)


def test_a_counter_is_tied_to_the_edges() -> None:
    both = bench(
        {"Alder": trace(alike(3), counter=True), "Birch": trace(alike(3, 80.0), seed=1)}, meters=True
    )
    comparison = compare(*both)
    machine = of(comparison, "Alder")
    run = machine.runs[0]
    assert run.energy is not None
    assert run.energy.method == "counter with power at the edges"
    found = asked(both, comparison, machine, "energy_wh", run.run_id)
    assert "energy counter" in found.method[2]
    assert last_number(line(found.formula, "tied to")) == pytest.approx(run.energy.by_counter_wh, abs=6e-3)
    assert last_number(line(found.formula, "power and counter")) == pytest.approx(run.energy_wh, abs=6e-3)
    rise = last_number(line(found.formula, "counter from"))
    assert rise == pytest.approx(run.energy_wh, abs=0.3)
    assert any("joined, each weighted by how sure it is" in text for text in found.method)


@pytest.mark.parametrize("meters", [True, False])
def test_the_ratio_s_budget_is_that_of_the_ratio(meters: bool) -> None:
    both = bench(
        {
            n: trace(alike(4, w, seed=i), seed=i)
            for i, (n, w) in enumerate({"Alder": 60.0, "Rowan": 90.0}.items())
        },
        meters=meters,
    )
    comparison = compare(*both)
    one, other = comparison.machines
    found = explain(comparison, *both, one.machine_id, RATIO, other_id=other.machine_id)
    assert found is not None
    means = [mean_of([r.energy for r in m.included if r.energy is not None]) for m in (one, other)]
    expected = ratio(*means)
    assert math.hypot(*(b.u for b in found.budget)) == pytest.approx(expected.u)
    cancels = [text for text in found.method if text.endswith("moves both machines alike and cancels.")]
    assert len(cancels) == (0 if meters else 1)
    assert found.value_text.startswith(f"{expected.value:.3f} (95 % interval {expected.low:.3f} to")
    assert line(found.surer, "One meter for both machines") if meters else found.surer


def test_the_bed_s_share_is_worked_out_with_its_values(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Alder")
    run = machine.runs[0]
    assert run.bed is not None
    assert run.bed.share is not None
    found = asked(three, compared, machine, "bed_share", run.run_id)
    assert last_number(line(found.formula, "share =")) == pytest.approx(100 * run.bed.share, abs=0.06)
    assert "switches on and off" in found.method[0]
    assert run.seconds is not None
    assert run.energy_wh is not None
    points = 100 * run.seconds / 3600 / run.energy_wh
    told = line(found.sensitivity, "If what is not the bed drew 1 W more")
    assert last_number(told) == pytest.approx(points, abs=0.006)
    # the bench's machine draws 60 W, and 150 W more in 12 of 40 rows
    level, share = re.findall(r"[\d.]+", line(found.formula, "between the heater's pulses"))
    assert float(level) == pytest.approx(60, abs=3)
    assert float(share) == pytest.approx(70, abs=8)
    assert float(re.findall(r"[\d.]+", line(found.formula, "its pulses"))[0]) == pytest.approx(150, abs=8)
    mean = asked(three, compared, machine, "bed_share")
    assert machine.bed_share is not None
    assert last_number(mean.formula[0]) == pytest.approx(100 * machine.bed_share.value, abs=0.006)
    assert sum(b.share_of_variance for b in mean.budget) == pytest.approx(1.0)


def test_a_bed_that_cannot_be_seen_says_why_and_gives_its_bound() -> None:
    study, comparison = make(5, 4)
    machine = next(m for m in comparison.machines if m.bed_share is None)
    found = explain(comparison, study, {}, machine.machine_id, "bed_share")
    assert found is not None
    assert found.value_text == "at least 31 %, at most 80 %"
    assert any("bound" in text for text in found.method)
    assert found.surer[0].startswith("A hold test")


def test_a_refusal_is_given_in_its_own_words(three: Bench) -> None:
    study, traces = three
    steady = {
        key: evolve(each, power_w=each.power_w.clip(max=100.0), key=f"{key} steady")
        for key, each in traces.items()
    }
    comparison = compare(study, steady)
    machine = comparison.machines[0]
    refused = next(r for r in machine.runs if r.bed is not None and r.bed.why_not is not None)
    found = asked((study, steady), comparison, machine, "bed_share", refused.run_id)
    assert "cannot be seen" in " ".join(found.method) or "bound" in " ".join(found.method)
    assert found.formula


def test_duration_is_the_difference_of_two_moments(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Birch")
    run = machine.runs[0]
    found = asked(three, compared, machine, "seconds", run.run_id)
    ended, began, length = re.findall(r"[\d.]+", found.formula[0])
    assert float(ended) - float(began) == pytest.approx(float(length), abs=0.11)
    assert float(length) == pytest.approx(run.seconds, abs=0.1)
    assert line(found.sensitivity, "If the run ended 30 s later").endswith("+0.50 min")
    # an edge lies anywhere within one interval of 2 s
    assert [b.u for b in found.budget] == pytest.approx([2 / math.sqrt(12)] * 2)


def test_standby_with_short_rests_is_told_as_the_lowest_level(three: Bench, compared: Comparison) -> None:
    found = asked(three, compared, of(compared, "Alder"), "standby_w")
    # one value in twenty lies below it, and they scatter by 0.1 W
    assert last_number(found.value_text) == pytest.approx(STANDBY_W - 1.645 * 0.1, abs=0.06)
    assert found.value_text.endswith(" W, the lowest level")
    assert not found.budget
    assert "kWh" in line(found.sensitivity, "A year of it")


def test_standby_of_a_long_rest_says_what_the_meter_leaves_open() -> None:
    made = trace(alike(3, seed=8), seed=8)
    power_w = np.concatenate((made.power_w, np.full(1800, STANDBY_W)))
    given = bench({"Alder": Trace.of(np.arange(power_w.size) * 2.0, power_w, key="long rest 8")}, meters=True)
    machine = compare(*given).machines[0]
    assert machine.standby_w is not None
    assert machine.standby_w.u95 is not None
    found = asked(given, compare(*given), machine, "standby_w")
    assert next(b for b in found.budget if b.name == "meter offset").u == pytest.approx(0.3 / math.sqrt(3))
    parts = math.sqrt(sum(b.u**2 for b in found.budget))
    assert machine.standby_w.u95 == pytest.approx(coverage_factor(math.inf) * parts, rel=1e-3)
    assert machine.standby_w.value == pytest.approx(STANDBY_W, abs=0.02)


def test_typed_readings_are_explained_with_no_trace() -> None:
    study = edits.add_machine(edits.new_study("s").study, "Alder").study
    study = edits.add_meter(study, "Meter 1").study
    machine_id, meter_id = study.machines[-1].id, study.meters[-1].id
    for energy_wh in (21.0, 22.0, 23.0):
        study = edits.add_typed(study, machine_id, energy_wh, meter_id=meter_id, step_wh=1.0).study
    comparison = compare(study, {})
    run = comparison.machines[0].runs[0]
    found = explain(comparison, study, {}, machine_id, "energy_wh", run.run_id)
    assert found is not None
    assert "display" in found.method[0]
    assert any(b.name == "display step" for b in found.budget)
    lacking = explain(comparison, study, {}, machine_id, "seconds", run.run_id)
    assert lacking is not None
    assert lacking.value_text == "not known"
    assert "not noted" in lacking.method[0]


@pytest.mark.parametrize("key", KEYS)
def test_every_number_is_explained(three: Bench, compared: Comparison, key: str) -> None:
    for machine in compared.machines:
        for run in (None, *(r.run_id for r in machine.runs)):
            found = asked(three, compared, machine, key, run)
            assert found.method
            assert (assets_folder() / "explain" / f"{found.topic}.md").is_file()
            text = as_markdown(found)
            assert found.value_text.split(" ")[0] in text
            assert "nan" not in text.lower().replace("finance", "")
            assert "None" not in text
            assert "{" not in text


@pytest.mark.parametrize("key", KEYS)
def test_a_study_whose_logs_are_not_read_is_explained_too(key: str) -> None:
    study, comparison = make(5, 3)
    for machine in comparison.machines:
        for run in (None, machine.runs[0].run_id):
            found = explain(comparison, study, {}, machine.machine_id, key, run)
            assert found is not None
            assert found.value_text


def test_machines_and_runs_that_are_gone_have_no_explanation(three: Bench, compared: Comparison) -> None:
    assert explain(compared, *three, "gone", "energy_wh") is None
    assert explain(compared, *three, compared.machines[0].machine_id, "energy_wh", "gone") is None
    with pytest.raises(KeyError):
        explain(compared, *three, compared.machines[0].machine_id, "no such quantity")


def test_it_can_be_cancelled(three: Bench, compared: Comparison) -> None:
    def stop(fraction: float, text: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        explain(compared, *three, compared.machines[0].machine_id, "energy_wh", progress=stop)


def test_numbers_follow_the_locale(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Alder")
    found = explain(compared, *three, machine.machine_id, "energy_wh", locale=NumberLocale(",", ""))
    assert found is not None
    assert machine.energy_wh is not None
    assert f"{machine.energy_wh.value:.3f}".replace(".", ",") in found.formula[0]
    assert not re.search(r"\d\.\d", " ".join((*found.formula, *found.sensitivity, found.value_text)))


def test_names_do_not_become_markup() -> None:
    study, comparison = make(2, 3)
    odd = "A*b* <i>|x|</i> [y](z)"
    comparison = evolve(comparison, machines=(evolve(comparison.machines[0], name=odd),))
    found = explain(comparison, study, {}, comparison.machines[0].machine_id, "energy_wh")
    assert found is not None
    assert (
        as_markdown(found).splitlines()[0] == "## A\\*b\\* \\<i\\>\\|x\\|\\</i\\> \\[y\\](z): energy per part"
    )


def test_figures_keep_their_digits() -> None:
    assert [figures(v) for v in (0.0, 9.9996, 1234.56, 0.00012)] == ["0", "10.000", "1235", "0.000120"]
    assert change(0.004, BED_SHARE) == "+0.4 percentage points"
