"""The study file: what is written comes back, and every kind of bad file is refused and left alone."""

import hashlib
import os
import threading
import tracemalloc
import zlib
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from random import Random

import pytest
from attrs import evolve

from core import edits
from core.problems import Problem, Severity
from core.progress import Cancelled
from core.store import blobs
from core.store.connecting import connect
from core.store.file import StudyFile
from core.store.locking import lock_path
from core.store.untitled import new_untitled_path, untitled_path
from core.study import Source
from tests.core.store.files import add_logs, dump, is_sound, opened, write_steps
from tests.random_edits import random_history, raw_log


def _created(path: Path) -> StudyFile:
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile)
    return file


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "clips.samepart"


@pytest.fixture
def file(path: Path) -> Iterator[StudyFile]:
    with _created(path) as file:
        yield file


def test_new_file_holds_an_empty_untitled_study(path: Path, file: StudyFile):
    assert file.history.study.name == "Untitled study"
    assert not file.history.study.machines
    assert not file.read_only
    assert file.problem is None
    assert file.history.study.id != ""


def test_each_new_study_has_an_id_of_its_own(tmp_path: Path):
    with _created(tmp_path / "a.samepart") as a, _created(tmp_path / "b.samepart") as b:
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


class TestBlobs:
    def test_bytes_come_back_under_their_digest(self, file: StudyFile):
        for data in (b"", b"x", raw_log(1), os.urandom(100_000)):
            digest = file.add_blob(data)
            assert isinstance(digest, str)
            assert len(digest) == 64
            assert file.blob(digest) == data

    def test_long_logs_are_kept_in_parts_with_progress(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 1000)
        seen: list[float] = []
        digest = file.add_blob(b"0123456789" * 450, lambda fraction, text: seen.append(fraction))
        assert len(dump(path)["blob_parts"]) == 5
        assert seen == [0.2, 0.4, 0.6, 0.8, 1.0]
        assert file.blob(str(digest)) == b"0123456789" * 450

    def test_the_same_bytes_are_kept_once(self, path: Path, file: StudyFile):
        assert file.add_blob(raw_log(2)) == file.add_blob(raw_log(2))
        assert len(dump(path)["blobs"]) == 1

    def test_cancelled_log_is_not_there_and_is_swept_out(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 100)

        def cancel(fraction: float, text: str) -> None:
            if fraction > 0.5:
                raise Cancelled

        with pytest.raises(Cancelled):
            file.add_blob(raw_log(3), cancel)
        assert dump(path)["blobs"] == []
        assert dump(path)["blob_parts"] != []
        file.close()
        with opened(path):
            assert dump(path)["blob_parts"] == []

    def test_only_logs_that_no_step_refers_to_are_swept_out(self, path: Path, file: StudyFile):
        add_logs(file, Random(1), [1])
        file.write(file.history, file.history.undo())
        orphan = file.add_blob(b"an orphan")
        kept = {row[0] for row in dump(path)["blobs"]} - {orphan}
        file.close()
        with opened(path) as again:
            assert {row[0] for row in dump(path)["blobs"]} == kept
            again.write(again.history, again.history.redo())
            (log,) = again.history.study.logs
            assert again.blob(log.sources[0].digest) == raw_log(1)

    def test_a_log_that_grows_is_kept_once(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 4000)
        random = Random(3)
        whole = random.randbytes(1000)
        digest = str(file.add_blob(whole))
        for _ in range(200):
            fresh = random.randbytes(random.choice((20, 60, 100)))
            whole += fresh
            before, digest = digest, hashlib.sha256(whole).hexdigest()
            assert file.grow_blob(before, fresh, digest) == digest
            assert file.grow_blob(before, fresh, digest) == digest
        assert file.blob(digest) == whole
        packed = sum(len(row[2]) for row in dump(path)["blob_parts"])
        assert packed < 8 * len(whole)
        assert {row[0]: row[2] for row in dump(path)["blobs"]}[digest] <= 12

    def test_what_a_grown_log_shares_outlives_what_it_was_before(self, path: Path, file: StudyFile):
        whole, fresh = raw_log(1), b"more of it\n"
        add_logs(file, Random(1), [1])
        (log,) = file.history.study.logs
        before = log.sources[0].digest
        now = hashlib.sha256(whole + fresh).hexdigest()
        assert file.grow_blob(before, fresh, now) == now
        sources = (evolve(log.sources[0], digest=now),)
        study = evolve(file.history.study, logs=(evolve(log, sources=sources),))
        grown = file.history.apply(edits.Edit(study, "Read on"))
        only = evolve(grown, past=(), future=())
        assert file.write(file.history, only) is None
        file.close()
        with opened(path) as again:
            assert {row[0] for row in dump(path)["blobs"]} == {now}
            assert again.blob(now) == whole + fresh
            assert is_sound(path)

    def test_a_log_grows_only_from_what_is_there(self, file: StudyFile):
        problem = file.grow_blob("0" * 64, b"more", "1" * 64)
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_missing"

    def test_missing_log_is_a_problem(self, file: StudyFile):
        problem = file.blob("0" * 64)
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_missing"

    @pytest.mark.parametrize(
        "damage",
        [
            "UPDATE blob_parts SET packed = x'00'",
            "UPDATE blob_parts SET packed = 'text'",
            "UPDATE blob_parts SET packed = substr(packed, 1, length(packed) - 9)",
            "UPDATE blobs SET parts = 2",
            "UPDATE blobs SET parts = 0",
            "UPDATE blobs SET parts = 'many'",
            "DELETE FROM blob_parts",
        ],
    )
    def test_damaged_log_is_a_problem(self, path: Path, file: StudyFile, damage: str):
        digest = file.add_blob(raw_log(4))
        with closing(connect(path)) as connection:
            connection.execute(damage)
        problem = file.blob(str(digest))
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_damaged"

    def test_a_part_that_unpacks_to_far_too_much_is_refused(self, path: Path, file: StudyFile):
        digest = str(file.add_blob(raw_log(4)))
        with closing(connect(path)) as connection:
            bomb = zlib.compress(bytes(20 * blobs.PART_BYTES))
            connection.execute("UPDATE blob_parts SET packed = ?", (bomb,))
        tracemalloc.start()
        problem = file.blob(digest)
        peak = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
        assert isinstance(problem, Problem)
        assert peak < 3 * blobs.PART_BYTES

    def test_any_thread_may_keep_and_fetch_logs(self, file: StudyFile):
        answers: dict[int, object] = {}

        def work(number: int) -> None:
            answers[number] = file.blob(str(file.add_blob(raw_log(number))))

        threads = [threading.Thread(target=work, args=(number,)) for number in range(4)]
        for thread in threads:
            thread.start()
        for number in range(20):
            edit = edits.rename_part(file.history.study, f"part {number}")
            assert file.write(file.history, file.history.apply(edit)) is None
        for thread in threads:
            thread.join()
        assert answers == {number: raw_log(number) for number in range(4)}


class TestOneWriter:
    def test_second_opener_can_only_look(self, path: Path, file: StudyFile):
        write_steps(file, Random(1), 3)
        with opened(path) as second:
            assert second.read_only
            assert second.problem is not None
            assert second.problem.code == "store.in_use"
            assert second.problem.severity is Severity.CAUTION
            assert second.history == file.history
            with pytest.raises(ValueError, match="reading only"):
                second.write(second.history, second.history.undo())
            with pytest.raises(ValueError, match="reading only"):
                second.add_blob(b"x")
        assert file.write(file.history, file.history.undo()) is None

    def test_the_lock_goes_with_the_file(self, path: Path, file: StudyFile):
        assert lock_path(path).exists()
        file.close()
        assert sorted(path.parent.iterdir()) == [path]
        with opened(path) as again:
            assert not again.read_only

    def test_lock_file_left_by_a_killed_process_is_harmless(self, path: Path, file: StudyFile):
        file.close()
        lock_path(path).touch()
        with opened(path) as again:
            assert not again.read_only

    @pytest.mark.skipif(os.name != "posix", reason="links need no rights on POSIX only")
    def test_a_link_is_the_same_file(self, path: Path, file: StudyFile):
        link = path.with_name("link.samepart")
        link.symlink_to(path)
        with opened(link) as second:
            assert second.read_only


class TestCopies:
    def test_copy_has_every_step_and_log(self, path: Path, file: StudyFile):
        add_logs(file, Random(1), [1, 2])
        copy = path.with_name("copy.samepart")
        told: list[float] = []
        assert file.save_copy(copy, lambda fraction, text: told.append(fraction)) is None
        assert told[-1] == 1.0
        assert dump(copy) == dump(path)
        with opened(copy) as other:
            assert not other.read_only
            assert other.history == file.history
            assert other.blob(other.history.study.logs[0].sources[0].digest) == raw_log(1)

    def test_cancelled_copy_leaves_what_was_there(self, path: Path, file: StudyFile):
        copy = path.with_name("copy.samepart")
        copy.write_bytes(b"something else")

        def cancel(fraction: float, text: str) -> None:
            raise Cancelled

        with pytest.raises(Cancelled):
            file.save_copy(copy, cancel)
        assert copy.read_bytes() == b"something else"
        assert sorted(p.name for p in path.parent.iterdir()) == [
            ".clips.samepart.lock",
            "clips.samepart",
            "copy.samepart",
        ]

    def test_a_study_is_not_copied_onto_itself_or_an_open_one(self, path: Path, file: StudyFile):
        problem = file.save_copy(path)
        assert problem is not None
        assert problem.code == "store.same_file"
        with _created(path.with_name("other.samepart")) as other:
            problem = file.save_copy(other.path)
            assert problem is not None
            assert problem.code == "store.busy"

    def test_nothing_is_created_over_another_file(self, path: Path):
        path.write_text("a letter")
        problem = StudyFile.create(path)
        assert isinstance(problem, Problem)
        assert problem.code == "store.exists"
        assert path.read_text() == "a letter"

    def test_folder_that_is_not_there_is_a_problem(self, path: Path):
        problem = StudyFile.create(path.parent / "missing" / "a.samepart")
        assert isinstance(problem, Problem)
        assert problem.code == "store.disk_error"


class TestUntitled:
    def test_untitled_study_is_found_again(self, tmp_path: Path):
        folder = tmp_path / "kept" / "here"
        path = untitled_path(folder)
        with _created(path) as file:
            write_steps(file, Random(0), 3)
            history = file.history
        assert untitled_path(folder) == path
        with opened(untitled_path(folder)) as again:
            assert again.history == history

    def test_one_that_is_open_elsewhere_is_passed_over(self, tmp_path: Path):
        with _created(untitled_path(tmp_path)) as first, _created(untitled_path(tmp_path)) as second:
            assert first.path != second.path

    def test_one_that_is_no_study_is_passed_over(self, tmp_path: Path):
        bad = tmp_path / "untitled.samepart"
        bad.write_text("not a study")
        path = untitled_path(tmp_path)
        assert path != bad
        _created(path).close()
        assert bad.read_text() == "not a study"

    def test_another_untitled_study_gets_a_free_name(self, tmp_path: Path):
        first = untitled_path(tmp_path)
        _created(first).close()
        assert not new_untitled_path(tmp_path).exists()
        assert new_untitled_path(tmp_path) != first
