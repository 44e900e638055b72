"""Files that are no study, damaged, newer, or in a place where nothing can be written."""

import os
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from random import Random

import pytest
from attrs import evolve

from core import edits
from core.problems import Problem, Severity
from core.store import blobs
from core.store.connecting import connect
from core.store.file import StudyFile
from core.store.schema import APPLICATION_ID, CURRENT, VERSION
from tests.core.store.files import add_logs, dump, is_sound, opened, said, write_steps
from tests.random_edits import random_edit


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A study with some steps and logs, closed."""
    path = tmp_path / "clips.samepart"
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile)
    with file:
        add_logs(file, Random(3), [1, 2])
        write_steps(file, Random(3), 10)
    return path


def _refused(path: Path) -> Problem:
    """The problem with which `path` is refused; the file and its folder stay as they were."""
    content = path.read_bytes() if path.is_file() else None
    around = sorted(path.parent.iterdir())
    problem = StudyFile.open(path)
    assert isinstance(problem, Problem)
    assert problem.severity is Severity.ERROR
    assert (path.read_bytes() if path.is_file() else None) == content
    assert sorted(path.parent.iterdir()) == around
    assert problem.file == str(path)
    assert "{" not in said(problem)
    return problem


def _change(path: Path, *statements: str) -> None:
    with closing(connect(path)) as connection:
        connection.execute("PRAGMA foreign_keys = OFF")
        for statement in statements:
            connection.execute(statement)


def test_missing_file(tmp_path: Path):
    assert _refused(tmp_path / "nothing.samepart").code == "store.missing"


def test_folder(tmp_path: Path):
    assert _refused(tmp_path).code == "store.is_folder"


@pytest.mark.skipif(os.name != "posix", reason="such files exist on POSIX only")
def test_pipe_is_refused_at_once(tmp_path: Path):
    os.mkfifo(tmp_path / "pipe.samepart")
    assert _refused(tmp_path / "pipe.samepart").code == "store.not_a_study"


@pytest.mark.parametrize(
    "content",
    [b"", b"time,power\n1,2\n", b"SQLite format 3\x00", os.urandom(5000), b"\x89PNG\r\n\x1a\n" + bytes(500)],
    ids=["empty", "log", "only a mark", "noise", "picture"],
)
def test_file_that_is_no_study(tmp_path: Path, content: bytes):
    path = tmp_path / "clips.samepart"
    path.write_bytes(content)
    assert _refused(path).code == "store.not_a_study"


def test_database_of_another_program(tmp_path: Path):
    path = tmp_path / "theirs.samepart"
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("CREATE TABLE steps (position INTEGER PRIMARY KEY)")
    assert _refused(path).code == "store.foreign"


def test_newer_version(path: Path):
    _change(path, "PRAGMA user_version = 99")
    problem = _refused(path)
    assert problem.code == "store.newer"
    assert "99" in said(problem)


def test_field_that_a_newer_version_has_added(path: Path):
    _change(path, """UPDATE pieces SET json = replace(json, '"slot":', '"colour":"red","slot":')""")
    assert _refused(path).code == "store.newer_field"


def test_field_that_an_older_version_did_not_have(path: Path):
    with opened(path) as file:
        name = file.history.study.name
    _change(path, """UPDATE pieces SET json = replace(json, ',"invented":false', '')""")
    with opened(path) as file:
        assert file.history.study.name == name
        assert file.history.study.invented is False


def test_study_with_no_version(path: Path):
    _change(path, "PRAGMA user_version = 0")
    assert _refused(path).code == "store.damaged"


@pytest.mark.parametrize(
    "statement",
    [
        "DELETE FROM steps",
        "DELETE FROM present",
        "DELETE FROM pieces WHERE id = 3",
        "UPDATE present SET position = 1000",
        "UPDATE steps SET edit = '{'",
        "UPDATE steps SET edit = '[]'",
        "UPDATE steps SET edit = x'ff'",
        "UPDATE steps SET study = 1 WHERE position = 4",
        "UPDATE steps SET study = 'two' WHERE position = 4",
        "DELETE FROM steps WHERE position = 4",
        "UPDATE pieces SET json = 'NaN'",
        "UPDATE pieces SET json = CAST(x'ff' AS TEXT)",
        'UPDATE pieces SET json = replace(json, \'"slot":\', \'"slot":1.5,"x":\')',
        'UPDATE pieces SET json = replace(json, \'"boundary":"\', \'"boundary":"no \')',
        'UPDATE pieces SET json = replace(json, \'"gain_percent":\', \'"gain_percent":"1","gain":\')',
        "UPDATE pieces SET json = '" + "[" * 100_000 + "'",
        "DROP TABLE blobs",
        "CREATE TABLE notes (a)",
        "CREATE VIEW notes AS SELECT * FROM steps",
        "CREATE TRIGGER wipe AFTER INSERT ON steps BEGIN DELETE FROM blobs; END",
    ],
)
def test_study_that_does_not_hold_together(path: Path, statement: str):
    _change(path, statement)
    assert _refused(path).code in ("store.damaged", "store.newer_field")


@pytest.mark.parametrize("share", [0.1, 0.3, 0.5, 0.9])
def test_study_that_is_cut_off(path: Path, share: float):
    content = path.read_bytes()
    path.write_bytes(content[: max(200, int(len(content) * share))])
    answer = StudyFile.open(path)
    assert isinstance(answer, Problem)
    assert answer.code == "store.damaged"


@pytest.mark.parametrize("seed", range(60))
def test_flipped_bytes_raise_nothing_and_refused_files_are_left_alone(path: Path, seed: int):
    random = Random(seed)
    content = bytearray(path.read_bytes())
    for _ in range(random.choice([1, 3, 30])):
        content[random.randrange(len(content))] = random.randrange(256)
    path.write_bytes(content)
    answer = StudyFile.open(path)
    if isinstance(answer, Problem):
        assert path.read_bytes() == content
        return
    with answer:
        answer.write(answer.history, answer.history.apply(random_edit(answer.history.study, random)))
        for log in answer.history.study.logs:
            answer.blob(log.sources[0].digest)


@contextmanager
def _nobody() -> Iterator[None]:
    """Act as a user without rights, where the tests run as one with all."""
    if os.geteuid() != 0:
        yield
        return
    os.seteuid(65534)
    try:
        yield
    finally:
        os.seteuid(0)


@pytest.fixture
def protected() -> Iterator[Path]:
    """A study in a folder that anybody may read and nobody may write."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        file = StudyFile.create(folder / "clips.samepart")
        assert isinstance(file, StudyFile)
        with file:
            add_logs(file, Random(3), [1])
        file.path.chmod(0o444)
        folder.chmod(0o555)
        yield file.path
        folder.chmod(0o755)


@pytest.mark.skipif(os.name != "posix", reason="rights are set otherwise on Windows")
class TestWriteProtected:
    def test_study_can_be_looked_at(self, protected: Path):
        with _nobody(), opened(protected) as file:
            assert file.read_only
            assert file.problem is not None
            assert file.problem.code == "store.read_only"
            assert file.history.study.logs
            assert isinstance(file.blob(file.history.study.logs[0].sources[0].digest), bytes)

    def test_protected_file_in_an_open_folder_can_be_looked_at(self, protected: Path):
        protected.parent.chmod(0o777)
        with _nobody(), opened(protected) as file:
            assert file.read_only

    def test_copy_of_it_can_be_changed(self, protected: Path):
        with tempfile.TemporaryDirectory() as name:
            Path(name).chmod(0o777)
            copy = Path(name) / "copy.samepart"
            with _nobody(), opened(protected) as file:
                assert file.save_copy(copy) is None
                with opened(copy) as other:
                    assert not other.read_only
                    assert other.write(other.history, other.history.undo()) is None

    def test_unreadable_file_is_refused(self, protected: Path):
        protected.chmod(0)
        with _nobody():
            problem = StudyFile.open(protected)
        assert isinstance(problem, Problem)
        assert problem.code == "store.no_permission"

    def test_no_study_or_copy_can_be_made_there(self, protected: Path, path: Path):
        with _nobody():
            problem = StudyFile.create(protected.with_name("new.samepart"))
        assert isinstance(problem, Problem)
        assert problem.code == "store.no_permission"
        with opened(path) as file, _nobody():
            answer = file.save_copy(protected.with_name("copy.samepart"))
        assert answer is not None
        assert answer.code == "store.no_permission"

    def test_older_study_cannot_be_brought_up_to_date_there(self, protected: Path):
        later = evolve(CURRENT, version=VERSION + 1, migrations={VERSION: lambda connection: None})
        with _nobody():
            problem = StudyFile.open(protected, later)
        assert isinstance(problem, Problem)
        assert problem.code == "store.old_read_only"


def _fill(file: StudyFile) -> Callable[[], None]:
    """Let the file grow no more; the answer lets it grow again."""
    connection = file._connection  # a full disk cannot be had otherwise without rights of an administrator
    pages = connection.execute("PRAGMA page_count").fetchone()[0]
    limit = connection.execute("PRAGMA max_page_count").fetchone()[0]
    connection.execute(f"PRAGMA max_page_count = {pages}")
    return lambda: connection.execute(f"PRAGMA max_page_count = {limit}") and None


def test_full_disk_loses_no_edit_and_is_made_up_for(path: Path):
    with opened(path) as file:
        content, saved = dump(path), file.history
        make_room = _fill(file)
        problem = None
        while problem is None:
            content, saved = dump(path), file.history
            edit = edits.rename_study(file.history.study, "a long name " * 50 + str(len(file.history.past)))
            problem = file.write(file.history, file.history.sealed().apply(edit))
        assert problem.code == "store.disk_full"
        assert dump(path) == content
        assert file.history.past == (*saved.past, saved.present)
        assert not file.is_saved
        edit = edits.rename_part(file.history.study, "part after the failure")
        make_room()
        assert file.write(file.history, file.history.sealed().apply(edit)) is None
        assert file.is_saved
        history = file.history
    assert is_sound(path)
    with opened(path) as again:
        assert again.history == history


def test_full_disk_keeps_a_log_out(path: Path):
    with opened(path) as file:
        make_room = _fill(file)
        with pytest.raises(sqlite3.Error) as raised:
            blobs.add(file._connection, os.urandom(100_000))
        assert raised.value.sqlite_errorcode == sqlite3.SQLITE_FULL
        make_room()
    with opened(path):
        assert is_sound(path)


def test_application_id_is_in_the_header_where_tools_look_for_it(path: Path):
    assert int.from_bytes(path.read_bytes()[68:72], "big") == APPLICATION_ID
