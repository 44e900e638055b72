"""Study files that somebody has made to do harm, and disks that fail while a study is open."""

import hashlib
import os
import shutil
import sqlite3
import subprocess
import sys
import zlib
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from random import Random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core import edits
from core.problems import Problem
from core.store import blobs
from core.store.checking import problem_of
from core.store.connecting import connect
from core.store.file import StudyFile
from tests.core.store.files import add_logs, dump, is_sound, opened, said, write_steps
from tests.random_edits import random_edit


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A study with some steps and logs, closed."""
    return made(tmp_path / "clips.samepart")


def made(path: Path) -> Path:
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile)
    with file:
        add_logs(file, Random(3), [1, 2])
        write_steps(file, Random(3), 10)
    return path


@pytest.mark.parametrize(
    "statements",
    [
        ["CREATE TRIGGER t AFTER INSERT ON steps BEGIN DELETE FROM blobs; END"],
        ["CREATE VIEW v AS SELECT * FROM blobs"],
        ["ALTER TABLE blobs RENAME TO b", "CREATE VIEW blobs AS SELECT * FROM b"],
        [
            "ALTER TABLE blobs RENAME TO b",
            "CREATE VIEW blobs AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) "
            "SELECT i AS digest, i AS size, i AS parts FROM n",
        ],
        ["CREATE TABLE more (a)"],
        ["CREATE INDEX slow ON blobs (abs(size))"],
    ],
    ids=["trigger", "view", "view for a table", "endless view", "another table", "index on an expression"],
)
def test_what_a_study_has_not_is_refused_before_any_of_it_runs(path: Path, statements: list[str]):
    with closing(sqlite3.connect(path)) as connection, connection:
        for statement in statements:
            connection.execute(statement)
    content = path.read_bytes()
    answer = StudyFile.open(path)
    assert isinstance(answer, Problem)
    assert answer.code == "store.damaged"
    assert "{" not in said(answer)
    assert path.read_bytes() == content


def packed_bomb(path: Path, *, stated: int, parts: int) -> str:
    """Put a blob of many full parts into a file that says to have `stated` bytes."""
    part = zlib.compress(bytes(blobs.PART_BYTES), 9)
    digest = hashlib.sha256(b"anything").hexdigest()
    with closing(connect(path)) as connection:
        for number in range(parts):
            connection.execute("INSERT INTO blob_parts VALUES (?, ?, ?)", (digest, number, part))
        connection.execute("INSERT INTO blobs VALUES (?, ?, ?)", (digest, stated, parts))
    return digest


@pytest.mark.parametrize(
    ("stated", "said_so"),
    [(1000, "more of it than the 1000 bytes"), (blobs.MOST_BYTES + 1, "longer than a log can be")],
)
def test_bytes_that_would_fill_the_memory_are_not_unpacked(path: Path, stated: int, said_so: str):
    digest = packed_bomb(path, stated=stated, parts=20)
    with closing(connect(path)) as connection, pytest.raises(blobs.Damaged, match=said_so):
        blobs.get(connection, digest)


@pytest.mark.parametrize("column", ["size", "parts"])
@pytest.mark.parametrize("value", ["many", 1.5, None, -1, 2**62, b"x"])
def test_numbers_of_a_blob_that_are_none_are_damage(path: Path, column: str, value: object):
    digest = packed_bomb(path, stated=blobs.PART_BYTES, parts=1)
    with closing(connect(path)) as connection:
        connection.execute("PRAGMA ignore_check_constraints = ON")
        try:
            connection.execute(f"UPDATE blobs SET {column} = ? WHERE digest = ?", (value, digest))
        except sqlite3.IntegrityError:
            return  # the file itself does not take it
        with pytest.raises(blobs.Damaged):
            blobs.get(connection, digest)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return made(tmp_path_factory.mktemp("whole") / "clips.samepart")


#: where (as a share of the file), what is put there, and how much is taken out [bytes]
_DAMAGE = st.tuples(st.floats(0, 1), st.binary(max_size=300), st.integers(0, 5000))


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(_DAMAGE, min_size=1, max_size=4))
def test_any_damage_is_told_or_does_no_harm(
    whole: Path, tmp_path: Path, damages: list[tuple[float, bytes, int]]
):
    """Stretches overwritten, taken out or put in: no exception, and a refused file stays as it was."""
    content = bytearray(whole.read_bytes())
    for share, piece, taken in damages:
        at = int(share * (len(content) - 1))
        content[at : at + taken] = piece
    path = tmp_path / "damaged.samepart"
    for left in tmp_path.iterdir():
        left.unlink()
    path.write_bytes(content)
    answer = StudyFile.open(path)
    if isinstance(answer, Problem):
        assert path.read_bytes() == content
        assert "{" not in said(answer)
        return
    with answer:
        for log in answer.history.study.logs:
            for source in log.sources:
                answer.blob(source.digest)
        answer.write(answer.history, answer.history.apply(random_edit(answer.history.study, Random(1))))


#: a study's fields as text, with what nobody types
_STRANGE = st.one_of(
    st.text(max_size=200),
    st.integers().map(str),
    st.floats().map(str),
    st.sampled_from(["null", "[]", "{}", "[" * 5000, "1e999", "9" * 5000, '"\\ud800"', "\x00", "NaN"]),
)


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.integers(0, 1000), st.one_of(_STRANGE, st.binary(max_size=50), st.integers(-(2**63), 2**63 - 1)))
def test_any_value_in_any_cell_is_told_or_does_no_harm(
    whole: Path, tmp_path: Path, place: int, value: object
):
    path = tmp_path / "odd.samepart"
    for left in tmp_path.iterdir():
        left.unlink()
    path.write_bytes(whole.read_bytes())
    tables = sorted(name for name, rows in dump(path).items() if rows)
    table = tables[place % len(tables)]
    with closing(sqlite3.connect(path)) as connection, connection:
        columns = [row[1] for row in connection.execute(f"PRAGMA table_info({table})")]
        column = columns[place % len(columns)]
        connection.execute("PRAGMA ignore_check_constraints = ON")
        try:
            connection.execute(f"UPDATE OR REPLACE {table} SET {column} = ?", (value,))
        except sqlite3.Error:
            return  # SQLite itself does not take it
    answer = StudyFile.open(path)
    if isinstance(answer, Problem):
        assert "{" not in said(answer)
        return
    with answer:
        for log in answer.history.study.logs:
            for source in log.sources:
                answer.blob(source.digest)


@pytest.mark.skipif(os.name != "posix", reason="such a limit exists on POSIX only")
@pytest.mark.parametrize("room", [0, 5_000, 60_000])
def test_a_disk_that_is_full_loses_no_finished_edit(path: Path, room: int):
    done = subprocess.run(
        [sys.executable, "-m", "tests.core.store.full_disk", str(path), str(room)],
        cwd=Path(__file__).parents[3],
        capture_output=True,
        text=True,
        timeout=120,
        check=True,
    )
    code, finished = done.stdout.split()
    assert code in ("store.disk_full", "store.disk_error")
    assert is_sound(path)
    with opened(path) as file:
        if int(finished):
            assert file.history.study.name.startswith(f"{int(finished) - 1} ")
        assert (
            file.write(file.history, file.history.apply(edits.rename_part(file.history.study, "clip")))
            is None
        )


@pytest.fixture
def open_file(path: Path) -> Iterator[StudyFile]:
    with opened(path) as file:
        yield file


@pytest.mark.skipif(os.name != "posix", reason="elsewhere an open file cannot be taken away")
def test_a_share_that_vanishes_is_told_and_nothing_is_lost_in_the_window(open_file: StudyFile, path: Path):
    before = open_file.history
    shutil.rmtree(path.parent)
    new = before.sealed().apply(edits.rename_study(before.study, "after the share has gone"))
    problem = open_file.write(before, new)
    assert isinstance(problem, Problem)
    assert problem.file == str(path)
    assert "{" not in said(problem)
    assert not open_file.is_saved
    assert open_file.history.study.name == "after the share has gone"


def test_damaged_text_is_not_quoted_at_length(tmp_path: Path) -> None:
    error = sqlite3.OperationalError("Could not decode to UTF-8 column 'study' with text '{\"id\": 1}'")
    told = said(problem_of(error, tmp_path / "clips.samepart"))
    assert "Could not decode to UTF-8 column 'study'" in told
    assert "{" not in told
