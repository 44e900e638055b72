"""What a supply loses, by a meter on the bed beside the one at the plug; the truth is known."""

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.beds.quantities import EFFICIENCY
from core.figures.bed import beds_figure
from core.found.held_bed import held_bed
from core.results.bed_answer import supply_sentence
from core.results.holds import beds
from core.results.values import Measured
from core.study import Source, Study
from core.traces import Clock, Trace
from tests.core.held_beds import Bed
from tests.core.hold_studies import held_study

TRUE = 0.87
BED = Bed()
START_S = 1_790_000_000.0


def with_own_meter(
    seed: int = 1,
    *,
    gain: float = 1.0,
    own_gain: float = 1.0,
    late_s: float = 100.0,
    is_one_meter: bool = False,
) -> tuple[Study, dict[str, Trace]]:
    """A bed held at 60 degC; its own meter began before the plug's. `TRUE` of its watts reach it."""
    late_s = 100.0
    study, traces = held_study([("Alder", BED, (60.0,))], seed=seed)
    plug = traces[study.logs[0].id]
    rng = np.random.default_rng(seed + 1000)
    heat_w = TRUE * np.where(plug.power_w > BED.base_w + 50, BED.heater_w, 0.0)
    own_w = np.maximum(own_gain * (heat_w + 0.1 * rng.standard_normal(heat_w.size)), 0.0)
    before = np.arange(plug.time_s[0], late_s, 2.0)
    own = Trace.of(
        np.r_[before, plug.time_s + late_s],
        np.r_[np.zeros(before.size), np.round(own_w, 1)],
        key=f"own {seed} {own_gain}",
        clock=Clock("absolute", START_S - late_s),
    )
    study = edits.import_logs(study, [edits.NewLog((Source("own", "bed.csv"),), "Bed", ())]).study
    study = edits.move_log(study, study.logs[-1].id, study.machines[0].id).study
    own_log = study.logs[-1].id
    study = edits.mark_log_of_bed(study, own_log, True).study
    if not is_one_meter:
        study = edits.add_meter(study, "On the bed").study
        study = edits.assign_meter(study, own_log, study.meters[-1].id).study
    first = evolve(
        Trace.of(plug.time_s, gain * plug.power_w, key=f"plug {seed} {gain}"),
        clock=Clock("absolute", START_S),
    )
    return study, {study.logs[0].id: first, own_log: own}


def efficiency(study: Study, traces: dict[str, Trace]) -> Measured | None:
    return beds(study, traces).machines[0].efficiency


def test_the_loss_of_the_supply_is_found() -> None:
    found = efficiency(*with_own_meter())
    assert found is not None
    assert found.u95 is not None
    assert abs(found.value - TRUE) <= found.u95 < 0.04


def test_its_interval_holds_the_truth_over_meters_and_beds() -> None:
    """Gains drawn from what two meters of 1 % leave open: at least 93 of 100."""
    rng = np.random.default_rng(4)
    held, tries = 0, 60
    for seed in range(tries):
        gain, own = (1 + rng.uniform(-0.01, 0.01) for _ in range(2))
        found = efficiency(*with_own_meter(seed, gain=gain, own_gain=own))
        assert found is not None
        held += abs(found.value - TRUE) <= (found.u95 or 0.0)
    assert held >= 0.93 * tries


def test_of_one_meter_the_gain_cancels() -> None:
    two, one = efficiency(*with_own_meter()), efficiency(*with_own_meter(is_one_meter=True))
    assert two is not None
    assert one is not None
    assert one.value == pytest.approx(two.value)
    assert (one.u95 or 0.0) < (two.u95 or 0.0)


def test_without_a_log_of_the_same_time_there_is_none() -> None:
    study, traces = with_own_meter()
    plug, own = (traces[log.id] for log in study.logs)
    apart = {study.logs[0].id: plug, study.logs[1].id: evolve(own, clock=Clock("absolute", START_S + 1e6))}
    assert efficiency(study, apart) is None
    local = {study.logs[0].id: plug, study.logs[1].id: evolve(own, clock=Clock("local", START_S))}
    assert efficiency(study, local) is None
    assert efficiency(study, {study.logs[0].id: plug}) is None


def test_it_is_said_shown_and_explained_with_its_caution() -> None:
    study, traces = with_own_meter()
    found = beds(study, traces)
    assert supply_sentence(found).startswith("By a meter of its own, of the watts at the plug 8")
    figure = beds_figure(found, study)
    assert EFFICIENCY.key in [m.key for m in figure.measures]
    told = held_bed(found, study, study.machines[0].id, EFFICIENCY.key)
    assert told is not None
    assert "%" in told.value_text
    assert "qualified electrician" in told.cautions[0]


def test_without_a_second_meter_nothing_is_said_of_it() -> None:
    study, traces = held_study([("Alder", BED, (60.0,))])
    found = beds(study, traces)
    assert supply_sentence(found) == ""
    assert EFFICIENCY.key not in [m.key for m in beds_figure(found, study).measures]
