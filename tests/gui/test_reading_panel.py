"""The panel that says how a log was read: its first rows, and what a choice changes."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QTableView

from gui.look import contrast
from tests.gui.driver import Driver, opened, write_log


@pytest.fixture
def user(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as driver:
        log = write_log(tmp_path / "alder.csv")
        lines = log.read_text(encoding="utf-8").splitlines()
        rows = [f"{line},{i / 10:.1f},ok" for i, line in enumerate(lines[1:])]
        log.write_text("\n".join([f"{lines[0]},energy (Wh),note", *rows]) + "\n", encoding="utf-8")
        driver.drop(log)
        yield driver


def _choose(user: Driver, value: str) -> None:
    combo = user.widget(QComboBox, "reading_sampling")
    combo.setCurrentIndex(combo.findData(value))
    combo.activated.emit(combo.currentIndex())
    user.settle()


def test_first_rows_are_shown_with_their_meaning_in_words_and_in_colour(user: Driver):
    model = user.widget(QTableView, "first_rows").model()
    heads = [model.headerData(i, Qt.Orientation.Horizontal) for i in range(model.columnCount())]
    assert heads == ["time\ntime", "power, W\npower (W)", "energy, Wh\nenergy (Wh)", "not used\nnote"]
    assert model.index(0, 0).data() == "2026-03-02T08:00:00Z"
    assert model.index(1, 3).data() == "ok"
    grounds = [model.index(0, i).data(Qt.ItemDataRole.BackgroundRole) for i in range(4)]
    assert grounds[3] is None
    assert len({ground.color().name() for ground in grounds[:3]}) == 3
    for place, ground in enumerate(grounds[:3]):
        ink = model.index(0, place).data(Qt.ItemDataRole.ForegroundRole).color().name()
        assert contrast(ink, ground.color().name()) >= 4.5
    assert model.index(0, 1).data(Qt.ItemDataRole.AccessibleTextRole).startswith("power, W: ")


def test_a_choice_says_what_it_changed_until_it_is_taken_back(user: Driver):
    assert not _changes(user).isVisible()
    _choose(user, "averaged")
    assert _changes(user).isVisible()
    assert _changes(user).text().startswith("Your choice changed ")
    assert "Ctrl+Z" in _changes(user).text()
    user.do("action_undo")
    assert not _changes(user).isVisible()
    user.do("action_redo")
    assert _changes(user).isVisible()


def test_power_below_zero_is_a_question_only_where_there_is_some(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path / "one") as user:
        log = write_log(tmp_path / "alder.csv")
        user.drop(log)
        assert user.widget(QComboBox, "reading_sampling")
        combo = user.window.findChild(QComboBox, "reading_negative")
        assert combo is not None
        assert combo.isHidden()
    with opened(qtbot, tmp_path / "other") as user:
        heading, *rows = log.read_text(encoding="utf-8").splitlines()
        turned = [f"{time},-{power}" for time, power in (row.split(",") for row in rows)]
        log.write_text("\n".join([heading, *turned]) + "\n", encoding="utf-8")
        user.drop(log)
        combo = user.widget(QComboBox, "reading_negative")
        assert "turned round" in combo.itemText(0)


def _changes(user: Driver) -> QLabel:
    label = user.window.findChild(QLabel, "reading_changes")
    assert label is not None
    return label


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_columns_stay_legible_in_either_theme(user: Driver, theme: str):
    user.appearance.set_theme("dark" if theme == "dark" else "light")
    model = user.widget(QTableView, "first_rows").model()
    for place in range(3):
        index = model.index(0, place)
        roles = (Qt.ItemDataRole.ForegroundRole, Qt.ItemDataRole.BackgroundRole)
        ink, ground = (index.data(role).color().name() for role in roles)
        assert contrast(ink, ground) >= 4.5
    user.appearance.set_theme("light")
