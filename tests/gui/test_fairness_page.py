"""The Fairness page after a test, used as a person does: read, walked, copied, at every size."""

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QLabel,
    QPushButton,
    QScrollArea,
    QTableView,
)
from pytestqt.qtbot import QtBot

from core import edits
from gui.charts.view import ChartView
from gui.images import SIZES, render
from tests.gui import fairness_user
from tests.gui.driver import Driver, opened
from tests.gui.fairness_user import (
    TITLE,
    WARM,
    listed,
    names,
    page,
    press,
    rows,
    select,
    settle,
    turn,
    warm_run,
)

# pytest looks for a fixture by its name in the file of the test
user = fairness_user.user


def test_it_says_in_a_sentence_what_the_table_and_the_card_say_at_length(user: Driver) -> None:
    assert "a warm start (Alder, run 3), which could matter " in user.text("sentence")
    assert "Smallest difference shown: " in user.text("conditions")
    assert names(user)[0] == WARM
    assert rows(user)[0][0] == "Caution"
    assert user.text("finding_title") == "Warm start: Alder, run 3"
    assert user.text("finding_why").startswith("Alder, run 3: the warm-up took ")
    assert "mean of its other runs" in user.text("finding_matters")


def test_the_open_points_are_counted_in_the_page_list_on_every_page(user: Driver) -> None:
    open_points = len(rows(user))
    assert listed(user) == f"Fairness ({open_points})"
    turn(user, "Compare")
    user.session.apply(edits.leave_out(user.study, warm_run(user).id, "began warm"))
    settle(user)
    assert listed(user) == f"Fairness ({open_points - 1})"
    user.do("action_undo")
    settle(user)
    assert listed(user) == f"Fairness ({open_points})"


def test_arrow_keys_walk_the_table_and_the_chart_follows(user: Driver) -> None:
    view = user.widget(QTableView, "findings_table")
    chart = user.widget(ChartView, "fairness")
    first = chart.selected
    user.press(Qt.Key.Key_Down, view)
    assert user.text("finding_title").startswith(names(user)[1])
    user.press(Qt.Key.Key_Up, view)
    assert user.text("finding_title") == "Warm start: Alder, run 3"
    assert chart.selected == first


def test_a_bar_that_is_clicked_is_selected_in_the_table(user: Driver) -> None:
    chart = user.widget(ChartView, "fairness")
    user.widget(QScrollArea, "fairness_scroll").ensureWidgetVisible(chart)
    scene = chart.scene()
    assert scene is not None
    last = [t for t in scene.targets if t.run_id][-1]
    at = QPoint(round(last.x), round(last.y))
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    settle(user)
    row = user.widget(QTableView, "findings_table").currentIndex().row()
    assert user.session.comparison is not None
    assert user.session.comparison.open_findings[row].key == last.run_id


def test_the_compare_page_leads_here_and_greys_what_is_accepted(user: Driver) -> None:
    assert user.session.comparison is not None
    finding = next(f for f in user.session.comparison.fairness if f.problem.code == "fair.warm_start")
    user.session.apply(edits.accept_finding(user.study, finding, "by choice"))
    turn(user, "Compare")
    button = user.widget(QPushButton, "fairness_button")
    assert button.text().startswith(f"{len(user.session.comparison.open_findings)} point")
    press(user, "fairness_button")
    accepted = [x for x in user.window.findChildren(QLabel) if x.text().startswith("Accepted (by choice): ")]
    assert [x.property("role") for x in accepted if x.isVisible()] == ["muted"]
    press(user, "fairness_more")
    assert user.window.page is page(user)


def test_the_picture_and_the_list_are_copied(user: Driver) -> None:
    press(user, "copy")
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert WARM in data.text()


def test_the_picture_is_the_chart(user: Driver) -> None:
    chart = user.widget(ChartView, "fairness")
    assert chart.figure is not None
    picture = page(user).pictures.picture("Fairness", "wide")
    assert picture is not None
    image = render(picture.figure, SIZES["wide"], chart.look, picture.frame)
    assert (image.width(), image.height()) == (1920, 1080)


def test_a_file_open_for_reading_can_be_read_and_not_changed(user: Driver, tmp_path: Path) -> None:
    copy = tmp_path / "copy.samepart"
    assert user.session.file is not None
    assert user.session.file.save_copy(copy) is None
    with opened(user.qtbot, tmp_path / "other") as first:
        first.session.open(copy)
        settle(first)
        with opened(user.qtbot, tmp_path / "another") as second:
            second.session.open(copy)
            settle(second)
            turn(second)
            assert second.session.is_read_only
            assert names(second)[0] == WARM
            assert not second.widget(QPushButton, "finding_act").isEnabled()
            assert not second.widget(QPushButton, "finding_accept").isEnabled()


def test_nothing_is_said_of_an_empty_study(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "window") as user:
        user.session.apply(edits.add_machine(user.study, "Alder"))
        user.do("action_type")
        turn(user)
        assert user.text("sentence").startswith("No run has been measured yet")
        assert listed(user) == TITLE


@pytest.mark.parametrize("zoom", [1.0, 1.5])
def test_no_word_is_cut_off_at_the_smallest_size(user: Driver, zoom: float) -> None:
    user.window.resize(1024, 700)
    user.appearance.set_zoom(zoom)
    select(user, WARM)
    shown: list[QAbstractButton | QLabel]
    shown = [w for w in page(user).findChildren(QAbstractButton) if w.isVisible()]
    shown += [w for w in page(user).findChildren(QLabel) if w.isVisible() and not w.wordWrap()]
    cut = [w.text() for w in shown if w.text() and w.width() < w.minimumSizeHint().width()]
    user.appearance.set_zoom(1.0)
    assert cut == []
