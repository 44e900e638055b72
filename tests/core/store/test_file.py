"""The study file: what is written comes back, and every kind of bad file is refused and left alone."""

from pathlib import Path
from random import Random

import pytest
from attrs import evolve

from core import edits
from core.store.file import StudyFile
from core.study import Source
from tests.core.store.files import created, dump, opened, write_steps
from tests.random_edits import random_history


def test_new_file_holds_an_empty_untitled_study(path: Path, file: StudyFile):
    assert file.history.study.name == "Untitled study"
    assert not file.history.study.machines
    assert not file.read_only
    assert file.problem is None
    assert file.history.study.id != ""


def test_each_new_study_has_an_id_of_its_own(tmp_path: Path):
    with created(tmp_path / "a.samepart") as a, created(tmp_path / "b.samepart") as b:
        assert a.history.study.id != b.history.study.id


@pytest.mark.parametrize("seed", range(5))
def test_forty_edits_undone_and_redone_give_the_same_study_and_file(path: Path, file: StudyFile, seed: int):
    random = Random(seed)
    write_steps(file, random, 40)
    history, content = file.history, dump(path)
    for _ in range(40):
        assert file.write(file.history, file.history.undo()) is None
    assert file.history.past == ()
    assert file.history.study.machines == ()
    for _ in range(40):
        assert file.write(file.history, file.history.redo()) is None
    assert file.history == history
    assert dump(path) == content
    file.close()
    with opened(path) as again:
        assert again.history == history
        assert dump(path)["steps"] == content["steps"]


@pytest.mark.parametrize("seed", range(3))
def test_undo_survives_a_restart_and_goes_on(path: Path, file: StudyFile, seed: int):
    write_steps(file, Random(seed), 12)
    for _ in range(5):
        file.write(file.history, file.history.undo())
    history = file.history
    file.close()
    with opened(path) as again:
        assert again.history == history
        assert again.history.redo_label == history.redo_label
        edit = edits.rename_part(again.history.study, "a part of its own")
        assert again.write(again.history, again.history.apply(edit)) is None
        assert again.history.future == ()
        history = again.history
    with opened(path) as again:
        assert again.history == history


def test_merged_edits_are_one_step_in_the_file(path: Path, file: StudyFile):
    for part in ("h", "ho", "hose"):
        file.write(file.history, file.history.apply(edits.rename_part(file.history.study, part)))
    assert len(dump(path)["steps"]) == 2
    file.close()
    with opened(path) as again:
        assert again.history.study.part == "hose"
        assert again.history.undo().study.part == "part"


def test_forgotten_steps_leave_the_file(path: Path, file: StudyFile):
    for number in range(30):
        edit = edits.rename_part(file.history.study, str(number))
        assert file.write(file.history, file.history.sealed().apply(edit, limit=10)) is None
    history = file.history
    assert len(dump(path)["steps"]) == 11
    file.close()
    with opened(path) as again:
        assert again.history == history
        assert len(dump(path)["pieces"]) <= 11 + 1


def test_a_thousand_steps_share_almost_everything(path: Path, file: StudyFile):
    runs = tuple(edits.FoundRun(100.0 * i, 100.0 * i + 80) for i in range(500))
    log = edits.NewLog((Source("0" * 64, "log.csv"),), "Alder", runs)
    file.write(file.history, file.history.apply(edits.import_logs(file.history.study, [log])))
    before = path.stat().st_size
    for i in range(200):
        run = file.history.study.runs[i]
        edit = edits.move_edges(file.history.study, run.id, run.start_s, run.end_s + 1)
        file.write(file.history, file.history.apply(edit))
    assert len(dump(path)["pieces"]) < 1 + 500 + 4 * 202
    assert (path.stat().st_size - before) / 200 < 5000


def test_strange_names_come_back(path: Path, file: StudyFile):
    names = ['"; DROP TABLE steps; --', "樺\u2028\u00a0x", "a\x00b", "undecodable \udce4", "\U0001f332"]
    for name in names:
        file.write(file.history, file.history.apply(edits.add_machine(file.history.study, name)).sealed())
    file.close()
    with opened(path) as again:
        assert [machine.name for machine in again.history.study.machines] == [
            " ".join(n.split()) for n in names
        ]


def test_writing_what_is_not_the_files_history_is_a_mistake(file: StudyFile):
    other = random_history(Random(0), 3)
    with pytest.raises(ValueError, match="not the history"):
        file.write(other, other.undo())


def test_number_that_is_not_finite_is_a_mistake_and_changes_nothing(path: Path, file: StudyFile):
    before, content = file.history, dump(path)
    bad = edits.Edit(evolve(file.history.study, bed_c=float("nan")), "Break it")
    with pytest.raises(ValueError, match="finite"):
        file.write(file.history, file.history.apply(bad))
    assert file.history is before
    assert dump(path) == content
    edit = edits.rename_part(file.history.study, "hose clip")
    assert file.write(file.history, file.history.apply(edit)) is None
