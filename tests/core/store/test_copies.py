"""One writer at a time, copies under another name, and studies that have no name yet."""

import os
from pathlib import Path
from random import Random

import pytest

from core.problems import Problem, Severity
from core.progress import Cancelled
from core.store.file import StudyFile
from core.store.locking import lock_path
from core.store.untitled import new_untitled_path, untitled_path
from tests.core.store.files import add_logs, created, dump, opened, write_steps
from tests.random_edits import raw_log


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
        with created(path.with_name("other.samepart")) as other:
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
        with created(path) as file:
            write_steps(file, Random(0), 3)
            history = file.history
        assert untitled_path(folder) == path
        with opened(untitled_path(folder)) as again:
            assert again.history == history

    def test_one_that_is_open_elsewhere_is_passed_over(self, tmp_path: Path):
        with created(untitled_path(tmp_path)) as first, created(untitled_path(tmp_path)) as second:
            assert first.path != second.path

    def test_one_that_is_no_study_is_passed_over(self, tmp_path: Path):
        bad = tmp_path / "untitled.samepart"
        bad.write_text("not a study")
        path = untitled_path(tmp_path)
        assert path != bad
        created(path).close()
        assert bad.read_text() == "not a study"

    def test_another_untitled_study_gets_a_free_name(self, tmp_path: Path):
        first = untitled_path(tmp_path)
        created(first).close()
        assert not new_untitled_path(tmp_path).exists()
        assert new_untitled_path(tmp_path) != first
