"""The history: merging, sealing, the limit. Its laws are in tests/properties."""

from core import edits
from core.history import History


def _start() -> History:
    return History.start(edits.new_study("s1"))


def test_first_step_cannot_be_undone():
    history = _start()
    assert history.undo_label is None
    assert history.undo() is history
    assert history.redo() is history


def test_labels_say_what_would_be_undone_and_redone():
    history = _start()
    history = history.apply(edits.rename_part(history.study, "hose clip"))
    assert history.undo_label == "Rename the part"
    assert history.redo_label is None
    undone = history.undo()
    assert undone.undo_label is None
    assert undone.redo_label == "Rename the part"


def test_typing_into_one_field_is_one_step():
    history = _start()
    for text in ("h", "ho", "hose"):
        history = history.apply(edits.rename_part(history.study, text))
    assert len(history.past) == 1
    assert history.study.part == "hose"
    assert history.undo().study.part == "part"


def test_sealed_history_starts_a_new_step():
    history = _start()
    history = history.apply(edits.rename_part(history.study, "hose")).sealed()
    history = history.apply(edits.rename_part(history.study, "clip"))
    assert len(history.past) == 2
    assert history.undo().study.part == "hose"


def test_edit_after_undo_or_redo_does_not_merge():
    history = _start()
    history = history.apply(edits.rename_part(history.study, "hose")).sealed()
    history = history.apply(edits.rename_part(history.study, "clip")).undo()
    again = history.apply(edits.rename_part(history.study, "ring"))
    assert [step.study.part for step in again.steps] == ["part", "hose", "ring"]
    redone = history.redo()
    again = redone.apply(edits.rename_part(redone.study, "ring"))
    assert [step.study.part for step in again.steps] == ["part", "hose", "clip", "ring"]


def test_edits_without_a_key_never_merge():
    history = _start()
    history = history.apply(edits.set_boundary(history.study, "processing only"))
    history = history.apply(edits.set_boundary(history.study, "until cooled"))
    assert len(history.past) == 2


def test_edit_that_changes_nothing_is_no_step():
    history = _start()
    assert history.apply(edits.rename_part(history.study, "part")) is history


def test_property_from_yes_to_one_is_a_change():
    with_machine = edits.add_machine(_start().study, "Alder").study
    history = History.start(edits.set_property(with_machine, "a1", "box", True))
    assert history.apply(edits.set_property(history.study, "a1", "box", 1)) is not history


def test_oldest_steps_are_forgotten_beyond_the_limit():
    history = _start()
    for number in range(8):
        history = history.apply(edits.rename_part(history.study, str(number)), limit=5).sealed()
    assert len(history.past) == 5
    assert [step.study.part for step in history.steps] == ["2", "3", "4", "5", "6", "7"]
