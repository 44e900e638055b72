"""The panel of how a number was found, by pointing, by keys, and read as text."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from attrs import evolve
from PySide6.QtCore import QPoint, Qt, QUrl
from PySide6.QtGui import QColor, QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from core import edits
from core.formatting import NumberLocale
from core.found import Explanation, explain
from core.found.topics import TOPICS
from core.results.values import Influence
from gui.appearance import Appearance
from gui.look import DARK
from gui.widgets.budget_chart import BudgetChart
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from tests.comparisons import make
from tests.gui.driver import opened, write_log
from tests.gui.test_compare_page import Bench


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path)
    made.fill()
    yield made
    made.close()


def explanation(key: str = "energy_wh") -> Explanation:
    study, comparison = make(3, 4)
    influences = (Influence("meter gain", 0.1, "gain:k"), Influence("repeats", 0.08, df=3))
    machine = evolve(comparison.machines[0], influences=influences)
    comparison = evolve(comparison, machines=(machine, *comparison.machines[1:]))
    found = explain(comparison, study, {}, machine.machine_id, key)
    assert found is not None
    return found


@pytest.fixture
def panel(qtbot: QtBot) -> FoundPanel:
    made = FoundPanel()
    qtbot.addWidget(made)
    made.resize(900, 300)
    return made


def said(panel: FoundPanel) -> str:
    """All that the panel says, whatever part says it."""
    inner = panel.body.widget()
    assert inner is not None
    return "\n".join(label.text() for label in inner.findChildren(QLabel))


def test_it_opens_with_all_parts(panel: FoundPanel) -> None:
    found = explanation()
    panel.show_explanation(found)
    assert panel.isVisible()
    assert panel.title.text() == "Alder: energy per part"
    assert panel.value.text() == found.value_text
    for title in (
        "How it was found",
        "In numbers",
        "What makes it unsure",
        "If it had been otherwise",
        "Made of",
    ):
        assert title in said(panel)
    assert found.formula[0] in said(panel)
    assert "meter gain" in panel.findChild(BudgetChart, "budget").accessibleDescription()  # type: ignore[union-attr]  # it is there
    assert found.formula[0] in panel.body.accessibleDescription().replace("\\", "")
    panel.grab()


def test_a_number_with_no_budget_shows_none(panel: FoundPanel) -> None:
    panel.show_explanation(evolve(explanation(), budget=(), without_budget="It is a count."))
    assert panel.body.widget().findChild(BudgetChart, "budget") is None
    assert "It is a count." in said(panel)


def test_it_follows_another_theme_while_it_is_open(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    sources = panel.findChild(QLabel, "found_sources")
    assert sources is not None
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    appearance = Appearance(app, "light")
    light = sources.grab().toImage()
    appearance.set_theme("dark")
    assert panel.findChild(QLabel, "found_sources") is sources
    dark = sources.grab().toImage()
    link = QColor(DARK.link)
    assert any(
        dark.pixelColor(x, y) == link for y in range(dark.height()) for x in range(min(60, dark.width()))
    )
    appearance.set_theme("light")
    assert sources.grab().toImage() == light
    appearance.deleteLater()


def test_escape_puts_it_away(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    with qtbot.waitSignal(panel.closed):
        qtbot.keyClick(panel.body, Qt.Key.Key_Escape)
    assert not panel.isVisible()
    assert panel.explanation is None


def test_all_of_it_is_copied_as_text(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    qtbot.mouseClick(panel.copy, Qt.MouseButton.LeftButton)
    text = QGuiApplication.clipboard().text()
    assert text.startswith("## Alder: energy per part\n")
    assert "| meter gain" in text
    assert panel.copy.text() == "Copied"
    panel.show_explanation(explanation("mean_w"))
    assert panel.copy.text() == "Copy text"


def test_it_leads_to_its_page_and_on_and_back(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    qtbot.mouseClick(panel.more, Qt.MouseButton.LeftButton)
    assert panel.page.isVisible()
    assert panel.page.toPlainText().startswith("Energy per part")
    for topic in TOPICS["energy"].related:
        assert TOPICS[topic].title in panel.page.toPlainText()
    panel.page.anchorClicked.emit(QUrl("topic:gaps"))
    assert panel.page.toPlainText().startswith("Gaps and slow logs")
    panel.page.anchorClicked.emit(QUrl("https://example.org"))
    assert panel.page.toPlainText().startswith("Gaps and slow logs")
    assert panel.more.text() == "Back to the number"
    qtbot.mouseClick(panel.more, Qt.MouseButton.LeftButton)
    assert panel.body.isVisible()


def test_another_number_comes_back_from_the_page(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    qtbot.mouseClick(panel.more, Qt.MouseButton.LeftButton)
    panel.show_explanation(explanation("mean_w"))
    assert panel.body.isVisible()
    assert panel.more.text() == "More about this"


def test_names_are_text_and_never_markup(panel: FoundPanel, qtbot: QtBot) -> None:
    study, comparison = make(2, 3)
    machine = evolve(comparison.machines[0], name="<b>A</b>")
    runs = tuple(evolve(run, name='<img src="x">') for run in machine.runs)
    comparison = evolve(comparison, machines=(evolve(machine, runs=runs),))
    found = explain(comparison, study, {}, machine.machine_id, "energy_wh")
    assert found is not None
    panel.show_explanation(found, NumberLocale(",", ""))
    assert panel.title.textFormat() == Qt.TextFormat.PlainText
    assert "<img" not in said(panel)
    assert "&lt;img" in said(panel)


def test_a_run_among_the_sources_can_be_turned_to(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_explanation(explanation())
    sources = panel.findChild(QLabel, "found_sources")
    assert sources is not None
    run = explanation().sources[1].run_id
    with qtbot.waitSignal(panel.run_wanted, check_params_cb=lambda name: name == run):
        sources.linkActivated.emit(run)


def test_it_stands_beside_a_wide_page_and_under_a_narrow_one(qtbot: QtBot) -> None:
    content, panel = QWidget(), FoundPanel()
    frame = FoundFrame(content, panel)
    qtbot.addWidget(frame)
    panel.show_explanation(explanation())
    frame.resize(800, 600)
    with qtbot.waitExposed(frame):
        frame.show()
    assert panel.y() >= content.height()
    assert panel.height() < 300
    assert panel.width() == 800
    frame.resize(1500, 600)
    qtbot.waitUntil(lambda: panel.x() >= content.width() > 900)
    assert panel.height() == 600
    frame.resize(800, 600)
    qtbot.waitUntil(lambda: panel.width() == 800)
    assert panel.height() < 300


@pytest.mark.parametrize("width", [300, 840, 1400])
@pytest.mark.parametrize("key", ["energy_wh", "bed_share", "standby_w"])
def test_no_text_is_cut_off(panel: FoundPanel, qtbot: QtBot, width: int, key: str) -> None:
    panel.set_beside(width < 500)
    panel.resize(width, 320)
    panel.show_explanation(explanation(key))
    with qtbot.waitExposed(panel):
        panel.show()
    inner = panel.body.widget()
    assert inner.width() <= panel.body.viewport().width()
    for label in inner.findChildren(QLabel):
        assert label.height() >= label.heightForWidth(label.width()), label.text()
        assert label.geometry().right() <= label.parentWidget().width()


def test_a_page_that_belongs_to_no_number(panel: FoundPanel, qtbot: QtBot) -> None:
    panel.show_topic("runs")
    assert panel.page.isVisible()
    assert panel.title.text() == "How runs are found"
    assert not panel.more.isVisible()
    panel.show_explanation(explanation())
    assert panel.body.isVisible()
    assert panel.more.isVisible()
    panel.show_topic("runs")
    qtbot.keyClick(panel.page, Qt.Key.Key_Escape)
    assert not panel.isVisible()


# through the pages


def test_f1_on_the_logs_page(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "Alder.csv"))
        user.window.show_page("Logs")
        user.settle()
        user.press(Qt.Key.Key_F1, user.lane())
        found = user.widget(FoundPanel, "found_panel")
        assert found.title.text() == "Runs of the part in the logs"
        assert found.value.text() == "3 runs"
        user.session.select(user.run(1).id)
        user.press(Qt.Key.Key_F1, user.lane())
        assert found.title.text() == "Alder, run 2: energy"
        assert user.lane().isVisible()
        assert user.window.minimumSizeHint().width() <= 1024
        user.session.select(user.run(0).id)
        user.settle()
        assert found.title.text() == "Alder, run 1: energy"
        user.do("stretch_action_leave_out")
        assert "It does not count" in said(found)
        user.press(Qt.Key.Key_Escape, found)
        assert not found.isVisible()


# through the Compare page


def test_a_click_on_a_value_says_how_it_was_found(bench: Bench) -> None:
    scene = bench.page.rows.scene()
    assert scene is not None
    machine = bench.comparison().machines[0]
    value = next(v for v in scene.values if v.machine_id == machine.machine_id and v.key == "energy_wh")
    middle = QPoint(round(value.box.x + value.box.width / 2), round(value.box.y + value.box.height / 2))
    bench.qtbot.mouseClick(bench.page.rows, Qt.MouseButton.LeftButton, pos=middle)
    bench.settle()
    found = bench.page.found
    assert found.isVisible()
    assert found.title.text() == "Alder: energy per part"
    assert found.value.text().startswith("21.4")
    assert "(21.20 + 21.60 + 21.40 + 21.50) ÷ 4 = 21.425 Wh" in said(found)


def test_f1_says_how_the_selected_run_was_found_and_follows_edits(bench: Bench) -> None:
    run = bench.comparison().machines[0].runs[1]
    bench.session.select(run.run_id)
    bench.page.rows.setFocus()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_F1)
    bench.settle()
    found = bench.page.found
    assert found.title.text() == f"Alder, {run.name}: energy"
    assert found.value.text().startswith("21.6")
    assert "display" in said(found)
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Delete)
    bench.settle()
    assert "It does not count in the comparison: left out by hand" in said(found)
    bench.session.undo()
    bench.settle()
    assert "It does not count" not in said(found)
    bench.qtbot.keyClick(found, Qt.Key.Key_Escape)
    assert not found.isVisible()


def test_an_open_panel_turns_to_the_run_that_is_picked(bench: Bench) -> None:
    runs = bench.comparison().machines[0].runs
    bench.session.select(runs[0].run_id)
    bench.settle()
    assert not bench.page.found.isVisible()
    bench.page.rows.setFocus()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_F1)
    bench.settle()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Right)
    bench.settle()
    assert bench.page.found.title.text() == f"Alder, {runs[1].name}: energy"


def test_a_machine_s_number_stays_when_the_study_changes(bench: Bench) -> None:
    machine = bench.comparison().machines[0]
    bench.session.select(machine.runs[0].run_id)
    bench.page.rows.asked.emit(machine.machine_id, "", "energy_wh")
    bench.settle()
    bench.session.apply(edits.leave_out_typed(bench.session.study, machine.runs[0].run_id, "door was open"))
    bench.settle()
    assert bench.page.found.title.text() == "Alder: energy per part"
    assert "not counted: left out by hand: door was open" in said(bench.page.found)


def test_enter_in_the_table_says_how_a_number_was_found(bench: Bench) -> None:
    view = bench.page.table.view
    keys = [c.key for c in bench.page.table.model.table.columns]  # type: ignore[union-attr]  # it is filled
    view.setCurrentIndex(bench.page.table.model.index(2, keys.index("seconds")))
    view.setFocus()
    bench.qtbot.keyClick(view, Qt.Key.Key_Return)
    bench.settle()
    assert bench.page.found.title.text() == "Rowan: duration"
    view.setCurrentIndex(bench.page.table.model.index(0, keys.index("mean_w")))
    bench.page.explain()
    bench.settle()
    assert bench.page.found.title.text() == "Alder: mean power"


def test_the_sentence_on_top_can_be_asked_for(bench: Bench) -> None:
    button = bench.page.findChild(QWidget, "how_found")
    assert button is not None
    bench.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    bench.settle()
    found = bench.page.found
    assert found.title.text() == "Alder against Rowan: energy per part"
    assert "21.43 Wh ÷ 33.30 Wh = 0.6434" in said(found)
    bench.qtbot.keyClick(found, Qt.Key.Key_Escape)
    assert not found.isVisible()
    bench.page.explain()
    bench.settle()
    assert found.title.text() == "Alder against Rowan: energy per part"
    run = bench.comparison().machines[1].runs[0]
    bench.session.select(run.run_id)
    bench.page.explain()
    bench.settle()
    assert found.title.text() == f"Birch, {run.name}: energy"


def test_the_panel_goes_with_what_it_explained(bench: Bench) -> None:
    run = bench.comparison().machines[0].runs[0]
    bench.page.rows.asked.emit(run.machine_id, run.run_id, "energy_wh")
    bench.settle()
    bench.session.apply(edits.remove_typed(bench.session.study, run.run_id))
    bench.settle()
    assert not bench.page.found.isVisible()
