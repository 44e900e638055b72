"""Loads: named by the user or by what the test itself shows, and held against processing."""

import numpy as np
import pytest

from core import edits
from core.results.loads import forget, loads
from core.study import Study
from core.traces import Trace
from tests.core.stairs import EACH_S, STANDBY_W, heater, made, staircase, study_with


@pytest.fixture(autouse=True)
def _forget() -> None:
    forget()


def named(study: Study, traces: dict[str, Trace], *names: str) -> Study:
    """Steps by their order with those names."""
    steps = loads(study, traces).machines[0].steps
    for step, name in zip(steps, names, strict=False):
        if name:
            study = edits.name_step(study, step.log_id, step.at_s, name).study
    return study


def test_named_in_any_order_and_off_again() -> None:
    study, traces = study_with(staircase([4.0, 0.7, -4.0, 2.0, -2.0]))
    study = named(study, traces, "part fan", "camera", "", "lamp")
    machine = loads(study, traces).machines[0]
    assert [s.load for s in machine.steps] == ["part fan", "camera", "part fan", "lamp", "lamp"]
    assert [s.is_named for s in machine.steps] == [True, True, False, True, False]
    watts = {w.load: w.watts for w in machine.loads}
    assert watts == pytest.approx(
        {"electronics": STANDBY_W, "part fan": 4.0, "camera": 0.7, "lamp": 2.0}, abs=0.1
    )
    assert {w.load for w in machine.loads if w.is_idle} == {"electronics", "camera"}


def test_a_heater_that_lets_go_is_held() -> None:
    power_w = np.r_[np.full(240, 5.0), 5.0 + heater(25.0, 150.0), np.full(240, 5.0)]
    study, traces = study_with(
        made(power_w + 0.05 * np.random.default_rng(1).standard_normal(power_w.size)), 240.0
    )
    machine = loads(named(study, traces, "bed heating"), traces).machines[0]
    assert [s.load for s in machine.steps] == ["bed heating", "bed holding", "bed holding"]
    heating, holding = machine.of("bed heating"), machine.of("bed holding")
    assert heating is not None
    assert holding is not None
    assert heating.watts == pytest.approx(150.0, abs=0.2)
    assert abs(holding.watts - 25.0) <= holding.u95_w < 3.0
    assert machine.sum_w is not None
    assert machine.sum_w.value == pytest.approx(30.0, abs=1.0)  # what heats up is not counted


def test_the_user_s_word_wins_and_can_be_undone() -> None:
    study, traces = study_with(staircase([4.0, -4.0]))
    step = loads(study, traces).machines[0].steps[0]
    edit = edits.name_step(study, step.log_id, step.at_s + 5.0, "lamp")
    assert loads(edit.study, traces).machines[0].of("lamp") is not None
    handed_back = edits.name_step(edit.study, step.log_id, step.at_s, None).study
    assert handed_back.step_names == study.step_names
    idle = edits.set_load_idle(edit.study, study.machines[0].id, "lamp", True).study
    lamp = loads(idle, traces).machines[0].of("lamp")
    assert lamp is not None
    assert lamp.is_idle
    with pytest.raises(ValueError, match="no load"):
        edits.name_step(study, step.log_id, step.at_s, "kettle")


def test_a_log_that_goes_takes_its_names_along() -> None:
    study, traces = study_with(staircase([4.0]))
    study = named(study, traces, "lamp")
    study = edits.set_load_idle(study, study.machines[0].id, "lamp", True).study
    for bare in (
        edits.remove_log(study, study.logs[0].id).study,
        edits.remove_machine(study, study.machines[0].id).study,
    ):
        assert (bare.step_names, bare.idle_loads) == ((), ())


def test_names_stay_with_their_steps() -> None:
    study, traces = study_with(staircase([4.0, 2.0]), start_s=EACH_S)
    study = named(study, traces, "lamp", "camera")
    moved = edits.move_edges(study, study.runs[0].id, EACH_S / 2, traces[study.logs[0].id].end_s).study
    assert [s.load for s in loads(moved, traces).machines[0].steps] == ["lamp", "camera"]
