"""Bringing older files up to date, with made-up later versions."""

import sqlite3
from pathlib import Path
from random import Random

import pytest
from attrs import evolve

from core.problems import Problem
from core.store.file import StudyFile
from core.store.migrations import MIGRATIONS, backup_path
from core.store.schema import CURRENT, TABLES, VERSION, Schema
from tests.core.store.files import dump, opened, said, write_steps


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "clips.samepart"
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile)
    with file:
        write_steps(file, Random(1), 8)
    return path


def _add_notes(connection: sqlite3.Connection) -> None:
    connection.execute("CREATE TABLE notes (step INTEGER PRIMARY KEY, text TEXT)")


def _fill_notes(connection: sqlite3.Connection) -> None:
    connection.execute("INSERT INTO notes SELECT position, 'kept' FROM steps")


def _later(*steps: object) -> Schema:
    migrations = {VERSION + i: step for i, step in enumerate(steps)}
    tables = {**TABLES, "notes": "CREATE TABLE notes (step INTEGER PRIMARY KEY, text TEXT)"}
    return evolve(CURRENT, version=VERSION + len(steps), tables=tables, migrations=migrations)


def test_there_is_a_step_from_every_past_version():
    assert sorted(MIGRATIONS) == list(range(1, VERSION))


def test_older_file_is_brought_up_to_date_and_kept_as_it_was(path: Path):
    content = dump(path)
    file = StudyFile.open(path, _later(_add_notes, _fill_notes))
    assert isinstance(file, StudyFile)
    with file:
        assert len(file.history.steps) == 9
        assert file.problem is not None
        assert file.problem.code == "store.migrated"
        assert f"clips (version {VERSION}).samepart" in said(file.problem)
    backup = path.with_name(f"clips (version {VERSION}).samepart")
    assert dump(backup) == content
    with opened(backup) as older:
        assert older.history == file.history
    assert isinstance(StudyFile.open(path), Problem)
    again = StudyFile.open(path, _later(_add_notes, _fill_notes))
    assert isinstance(again, StudyFile)
    with again:
        assert again.problem is None


def test_failing_step_leaves_the_file_as_it_was(path: Path):
    def fail(connection: sqlite3.Connection) -> None:
        connection.execute("DELETE FROM steps")
        connection.execute("SELECT * FROM a_table_that_is_not_there")

    content = path.read_bytes()
    problem = StudyFile.open(path, _later(_add_notes, fail))
    assert isinstance(problem, Problem)
    assert path.read_bytes() == content
    assert list(path.parent.iterdir()) == [path]
    with opened(path) as file:
        assert len(file.history.steps) == 9


def test_an_earlier_copy_is_never_written_over(path: Path):
    first = backup_path(path, 1)
    first.touch()
    second = backup_path(path, 1)
    assert second != first
    assert second.name == "clips (version 1, copy 2).samepart"
