"""Laws of the study file: what is written is what is read, whatever the way there."""

import tempfile
from pathlib import Path

from hypothesis import given, settings

from core.history import History
from core.store.file import StudyFile
from core.store.values import decode, encode, from_json, to_json
from core.study import Study
from tests.core.store.files import dump, opened
from tests.strategies import histories, studies


@given(studies())
def test_a_study_written_as_text_comes_back(study: Study):
    text = to_json(encode(study, Study))
    again = decode(from_json(text), Study)
    assert again == study
    assert repr(again) == repr(study)


@settings(deadline=None, max_examples=40)
@given(histories())
def test_an_opened_file_holds_what_was_written(history: History):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "a.samepart"
        file = StudyFile.create(path, history)
        assert isinstance(file, StudyFile)
        file.close()
        with opened(path) as again:
            assert again.history == history
            assert repr(again.history) == repr(history)


@settings(deadline=None, max_examples=40)
@given(histories(), histories())
def test_any_history_can_follow_any_other(first: History, second: History):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "a.samepart"
        file = StudyFile.create(path, first)
        assert isinstance(file, StudyFile)
        with file:
            assert file.write(file.history, second) is None
        with opened(path) as again:
            assert again.history == second


@settings(deadline=None, max_examples=40)
@given(histories())
def test_undo_and_redo_change_only_which_step_is_present(history: History):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "a.samepart"
        file = StudyFile.create(path, history)
        assert isinstance(file, StudyFile)
        with file:
            before = dump(path)
            file.write(file.history, file.history.undo())
            file.write(file.history, file.history.redo())
            file.write(file.history, file.history.redo())
            after = dump(path)
        assert {name: rows for name, rows in after.items() if name != "present"} == {
            name: rows for name, rows in before.items() if name != "present"
        }
