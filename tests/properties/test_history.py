"""Laws of the history and of the edits."""

from random import Random

from hypothesis import given
from hypothesis import strategies as st

from core.history import History
from core.study import Study
from tests.random_edits import random_edit, random_history
from tests.strategies import histories, randoms, studies


@given(histories(), randoms())
def test_undo_after_an_edit_gives_back_what_was(history: History, random: Random):
    edited = history.sealed().apply(random_edit(history.study, random))
    undone = edited.undo()
    assert undone.study == history.study
    assert undone.past == history.past
    assert undone.present == history.present


@given(histories())
def test_redo_after_undo_gives_back_what_was(history: History):
    if history.past:
        assert history.undo().redo() == history
    if history.future:
        assert history.redo().undo() == history


@given(histories())
def test_undoing_and_redoing_lose_no_step(history: History):
    assert history.undo().steps == history.steps
    assert history.redo().steps == history.steps


@given(st.integers(0, 2**32))
def test_the_same_edits_give_the_same_study(seed: int):
    assert random_history(Random(seed), 8) == random_history(Random(seed), 8)


@given(studies())
def test_edits_leave_a_study_that_holds_together(study: Study):
    for items in (study.machines, study.meters, study.logs, study.runs, study.typed):
        ids = [item.id for item in items]
        assert len(set(ids)) == len(ids)
    machines = {machine.id for machine in study.machines}
    meters = {meter.id for meter in study.meters}
    logs = {log.id for log in study.logs}
    assert {log.machine_id for log in study.logs} <= machines
    assert {log.meter_id for log in study.logs} <= meters
    assert {run.log_id for run in study.runs} <= logs
    assert {reading.machine_id for reading in study.typed} <= machines
    assert {reading.meter_id for reading in study.typed} <= meters
    slots = [machine.slot for machine in study.machines]
    assert len(set(slots)) == len(slots)
    assert all(run.start_s < run.end_s for run in study.runs)


@given(studies(), randoms())
def test_an_edit_leaves_the_study_before_it_alone(study: Study, random: Random):
    before = repr(study)
    random_edit(study, random)
    assert repr(study) == before
