"""A clock that is set back, or far ahead, changes nothing: neither the history nor which study is opened."""

import os
import sqlite3
from contextlib import closing
from pathlib import Path
from random import Random

import pytest

from core.store.file import StudyFile
from core.store.untitled import new_untitled_path, remember, untitled_path
from tests.core.store.files import created, dump, is_sound, opened, write_steps

#: times of files [s since 1970]: the first days of computers, and a year far ahead
_PAST_S, _FUTURE_S = 86_400.0, 4.0e9


def dated(path: Path, at_s: float) -> None:
    """Give a file, and what SQLite keeps beside it, the time of a clock that is wrong."""
    for each in path.parent.glob(f"{path.name}*"):
        os.utime(each, (at_s, at_s))


@pytest.mark.parametrize("times", [(_PAST_S,), (_FUTURE_S, _PAST_S), (_PAST_S, _FUTURE_S, _PAST_S)])
def test_the_history_keeps_its_order_over_openings(tmp_path: Path, times: tuple[float, ...]) -> None:
    path, plain = tmp_path / "set back.samepart", tmp_path / "plain.samepart"
    for each in (path, plain):
        created(each).close()
    # the ids of studies are drawn: both begin from one
    plain.write_bytes(path.read_bytes())
    for seed, at_s in enumerate(times):
        for each in (path, plain):
            with opened(each) as file:
                write_steps(file, Random(seed), 5)
                if each == path:
                    dated(path, at_s)
                write_steps(file, Random(100 + seed), 5)
        dated(path, at_s)
    assert dump(path) == dump(plain)
    assert is_sound(path)
    with opened(path) as file:
        assert not file.read_only
        assert len(file.history.past) == 10 * len(times)
        while file.history.past:
            assert file.write(file.history, file.history.undo()) is None
        assert not file.history.study.machines


def test_a_file_from_the_future_is_locked_and_freed_like_any_other(tmp_path: Path) -> None:
    path = tmp_path / "ahead.samepart"
    with created(path):
        dated(path, _FUTURE_S)
        with opened(path) as second:
            assert second.read_only
    with opened(path) as third:
        assert not third.read_only


def test_an_older_file_from_the_future_is_kept_before_it_is_brought_up_to_date(tmp_path: Path) -> None:
    old = sorted((Path(__file__).parents[2] / "store" / "old").glob("*.samepart"))[0]
    for at_s in (_FUTURE_S, _PAST_S):
        path = tmp_path / f"{at_s:.0f}" / old.name
        path.parent.mkdir()
        path.write_bytes(old.read_bytes())
        dated(path, at_s)
        with opened(path) as file:
            assert not file.read_only
        kept = [each for each in path.parent.glob("*.samepart") if each != path]
        assert len(kept) == 1
        with closing(sqlite3.connect(kept[0])) as copy, closing(sqlite3.connect(old)) as before:
            versions = [c.execute("PRAGMA user_version").fetchone() for c in (copy, before)]
        assert versions[0] == versions[1]


def test_the_untitled_study_opened_last_is_opened_again_though_its_file_looks_older(tmp_path: Path) -> None:
    first = untitled_path(tmp_path)
    created(first).close()
    second = new_untitled_path(tmp_path)
    created(second).close()
    for last, other in ((second, first), (first, second)):
        remember(last)
        dated(last, _PAST_S)
        dated(other, _FUTURE_S)
        assert untitled_path(tmp_path) == last


def test_without_a_word_of_the_last_the_times_of_the_files_decide(tmp_path: Path) -> None:
    first, second = tmp_path / "untitled.samepart", tmp_path / "untitled 2.samepart"
    for path in (first, second):
        created(path).close()
    dated(first, _PAST_S)
    assert untitled_path(tmp_path) == second
    named = tmp_path / "clips.samepart"
    remember(named)
    assert untitled_path(tmp_path) == second
    remember(tmp_path / "untitled 9.samepart")  # one that is gone
    assert untitled_path(tmp_path) == second


def test_one_that_somebody_has_open_is_passed_over_though_it_was_the_last(tmp_path: Path) -> None:
    first, second = tmp_path / "untitled.samepart", tmp_path / "untitled 2.samepart"
    created(first).close()
    remember(second)
    file = StudyFile.create(second)
    assert isinstance(file, StudyFile)
    with file:
        assert untitled_path(tmp_path) == first
