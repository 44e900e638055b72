"""What the tests of the study file share: opening, dumping, and writing made steps."""

import sqlite3
from collections.abc import Iterable
from contextlib import closing
from pathlib import Path
from random import Random

from core import edits
from core.problems import Problem
from core.store.connecting import connect
from core.store.file import StudyFile
from core.store.schema import TABLES
from core.store.sentences import SENTENCES
from tests.random_edits import new_log, random_edit, raw_log


def created(path: Path) -> StudyFile:
    """A new file at `path`."""
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile), file
    return file


def opened(path: Path) -> StudyFile:
    """The file at `path`, which must open."""
    file = StudyFile.open(path)
    assert isinstance(file, StudyFile), file
    return file


def dump(path: Path) -> dict[str, list[tuple[object, ...]]]:
    """Every row of every table."""
    with closing(connect(path, read_only=True)) as connection:
        there = {row[0] for row in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
        return {name: sorted(connection.execute(f"SELECT * FROM {name}")) for name in TABLES if name in there}


def is_sound(path: Path) -> bool:
    """Whether SQLite finds nothing wrong with the file and all references hold."""
    with closing(sqlite3.connect(path)) as connection:
        integrity = connection.execute("PRAGMA integrity_check").fetchall()
        return integrity == [("ok",)] and not connection.execute("PRAGMA foreign_key_check").fetchall()


def said(problem: Problem) -> str:
    """The sentence of a problem of the store, with its facts in it."""
    return SENTENCES[problem.code].format(**dict(problem.facts))


def write_steps(file: StudyFile, random: Random, count: int) -> None:
    """Make `count` random edits, each a step of its own, with their logs."""
    for _ in range(count):
        edit = random_edit(file.history.study, random)
        keep_logs(file, edit)
        assert file.write(file.history, file.history.sealed().apply(edit)) is None


def add_logs(file: StudyFile, random: Random, numbers: Iterable[int]) -> None:
    """Import made logs in one step."""
    edit = edits.import_logs(file.history.study, [new_log(number, random) for number in numbers])
    keep_logs(file, edit)
    assert file.write(file.history, file.history.apply(edit)) is None


def keep_logs(file: StudyFile, edit: edits.Edit) -> None:
    """Put the bytes of every made log of a study into its file."""
    for log in edit.study.logs:
        for source in log.sources:
            number = int(source.file_name.removeprefix("log ").removesuffix(".csv"))
            assert file.add_blob(raw_log(number)) == source.digest
