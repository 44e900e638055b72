"""Logs that grow while their study is open, or between two openings."""

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QAction

from core import edits
from tests.gui.driver import Driver, opened, write_log


@pytest.fixture
def user(qtbot, tmp_path):
    with opened(qtbot, tmp_path) as driver:
        yield driver


def _beginning(path: Path, whole: str, share: float) -> Path:
    """The first part of a log, ending with a whole row."""
    lines = whole.splitlines(keepends=True)
    path.write_text("".join(lines[: round(share * len(lines))]), encoding="utf-8")
    return path


def _whole(tmp_path: Path, name: str = "whole.csv") -> str:
    path = write_log(tmp_path / name, runs=3)
    text = path.read_text(encoding="utf-8")
    path.unlink()
    return text


def _made(user: Driver) -> list[str]:
    return [run.id for run in user.study.runs_of(user.study.logs[0].id) if run.kind == "run"]


def _codes(user: Driver) -> list[str]:
    return [problem.code for problem in user.session.problems]


def _read_again(user: Driver) -> None:
    head_menu = user.lane().head_menu_wanted
    head_menu.emit(user.study.logs[0].id, QPoint(0, 0))
    action = next(a for a in user.window.findChildren(QAction) if a.text() == "Read the file again")
    action.trigger()
    user.settle()


def test_a_log_that_grows_is_read_on_and_edits_stay(user: Driver, tmp_path: Path):
    whole = _whole(tmp_path)
    log = _beginning(tmp_path / "alder.csv", whole, 0.7)
    user.drop(log)
    assert len(_made(user)) == 2
    user.lane().zoom(0.3, 0.4)
    seen = user.lane().view.start_s, user.lane().view.end_s
    first = user.run()
    user.session.select(first.id)
    user.do("stretch_action_leave_out")
    assert not user.run().included
    with log.open("a", encoding="utf-8") as file:
        file.write(whole[len(log.read_text(encoding="utf-8")) :])
    user.wait_until(lambda: len(_made(user)) == 3)
    user.settle()
    assert user.run().id == first.id
    assert not user.run().included
    assert user.session.selected == first.id
    assert len(user.study.logs) == 1
    assert (user.lane().view.start_s, user.lane().view.end_s) == seen
    assert _codes(user) == ["session.grown"]
    assert user.text("problem_summary").startswith("1 remark: alder.csv: The file has grown")
    user.session.undo()
    user.settle()
    assert len(_made(user)) == 2
    assert not user.run().included


def test_dropping_a_grown_log_reads_it_on_after_a_restart(qtbot, tmp_path: Path):
    whole = _whole(tmp_path)
    log = _beginning(tmp_path / "alder.csv", whole, 0.7)
    with opened(qtbot, tmp_path) as user:
        user.drop(log)
        before = _made(user)
    log.write_text(whole, encoding="utf-8")
    with opened(qtbot, tmp_path) as user:
        user.drop(log, write_log(tmp_path / "birch.csv", seed=2))
        assert len(user.study.logs) == 2
        assert _made(user)[:2] == before
        assert len(_made(user)) == 3


def test_a_log_that_changed_otherwise_is_left_alone_until_the_user_asks(user: Driver, tmp_path: Path):
    whole = _whole(tmp_path)
    log = _beginning(tmp_path / "alder.csv", whole, 0.7)
    user.drop(log)
    before = user.study
    user.session.select(user.run().id)
    lines = whole.splitlines(keepends=True)
    log.write_text("".join([lines[0], *lines[100:]]), encoding="utf-8")
    user.wait_until(lambda: _codes(user) == ["session.changed_otherwise"])
    assert user.study is before
    start_s = user.run().start_s
    _read_again(user)
    assert _codes(user) == ["session.read_anew"]
    assert len(_made(user)) == 3
    # 99 rows of 2 s are gone at the beginning
    assert user.run().id == before.runs[0].id
    assert user.run().start_s == pytest.approx(start_s - 198.0, abs=10.0)


@pytest.mark.parametrize("where", ["menu", "panel"])
def test_asking_for_a_log_that_has_not_grown_says_so(user: Driver, tmp_path: Path, where: str):
    user.drop(write_log(tmp_path / "alder.csv"))
    before = user.study
    if where == "menu":
        _read_again(user)
    else:
        user.click("reading_again")
    assert user.study is before
    assert _codes(user) == ["session.not_grown"]


def test_after_a_restart_the_user_is_asked_where_the_file_is(qtbot, tmp_path: Path):
    whole = _whole(tmp_path)
    log = _beginning(tmp_path / "alder.csv", whole, 0.7)
    with opened(qtbot, tmp_path) as user:
        user.drop(log)
    log.write_text(whole, encoding="utf-8")
    with opened(qtbot, tmp_path) as user:
        user.window.show_page("Logs")
        user.settle()
        _read_again(user)
        user.choose_file(log)
        assert len(_made(user)) == 3
        assert _codes(user) == ["session.grown"]


def test_a_file_that_is_another_log_altogether_leaves_the_study_as_it_was(user: Driver, tmp_path: Path):
    log = write_log(tmp_path / "alder.csv")
    user.drop(log)
    before = user.study
    log.write_bytes(b"no log at all\n")
    user.wait_until(lambda: bool(_codes(user)))
    _read_again(user)
    assert user.study is before
    assert "session.not_in_file" in _codes(user)


def test_one_row_more_is_said_as_one(user: Driver, tmp_path: Path):
    log = write_log(tmp_path / "alder.csv")
    user.drop(log)
    with log.open("a", encoding="utf-8") as file:
        file.write("2026-03-02T12:00:00Z,4.0\n")
    user.wait_until(lambda: bool(_codes(user)))
    assert user.text("problem_summary").endswith("read on from where it ended, 1 more row.")


def test_a_log_that_cannot_be_read_on_keeps_no_other_log_away(user: Driver, tmp_path: Path):
    whole = _whole(tmp_path)
    log = _beginning(tmp_path / "alder.csv", whole, 0.7)
    user.drop(log)
    copy = tmp_path / "copy.csv"
    copy.write_text(log.read_text(encoding="utf-8") + "not a row at all\n", encoding="utf-8")
    user.drop(copy, write_log(tmp_path / "birch.csv", seed=2))
    assert [m.name for m in user.study.machines] == ["Alder", "Birch"]


def test_logs_are_added_to_the_study_as_it_is_when_they_have_been_read(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    user.session.add_logs([write_log(tmp_path / "birch.csv", seed=2)])
    user.session.apply(edits.rename_part(user.study, "clip"))
    user.settle()
    assert user.study.part == "clip"
    assert [m.name for m in user.study.machines] == ["Alder", "Birch"]
