"""The plan of a test, as a user makes it in the window."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QCheckBox,
    QComboBox,
    QFileDialog,
    QLabel,
    QPushButton,
)
from pytestqt.qtbot import QtBot

from core import edits
from core.plan.order import order_of
from gui.widgets.plan_view import PlanView
from tests.gui.driver import Driver, opened, write_log
from tests.gui.planned import begin, plan_of


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path / "bench") as driver:
        yield driver


def choose(bench: Driver, name: str, text: str) -> None:
    """Choose an entry of a list by the keyboard."""
    box = bench.widget(QComboBox, name)
    box.setFocus()
    index = box.findText(text)
    assert index >= 0, [box.itemText(i) for i in range(box.count())]
    while box.currentIndex() != index:
        QTest.keyClick(box, Qt.Key.Key_Down if box.currentIndex() < index else Qt.Key.Key_Up)
    bench.settle()


def rows_shown(view: PlanView) -> list[tuple[str, ...]]:
    return view.order.model.rows[1:]


def test_a_test_is_planned_before_anything_is_measured(bench: Driver) -> None:
    view = begin(bench)
    assert [m.name for m in bench.study.machines] == ["Alder", "Birch"]
    assert [m.name for m in bench.study.meters] == ["Meter 1", "Meter 2"]
    said = view.top.sentence.text()
    assert "runs on each of Alder and Birch would show a difference of 5 % between them." in said
    assert "a scatter of 2 % is assumed" in view.top.conditions.text()
    runs = [row for row in rows_shown(view) if row[0].isdigit()]
    assert len(runs) == 8
    assert {row[2] for row in runs} == {"Alder", "Birch"}
    assert {row[3] for row in runs} == {"Meter 1", "Meter 2"}
    for words in ("Mains", "qualified electrician", "Hot parts", "Unattended"):
        assert words in bench.text("plan_cautions")


def test_an_empty_plan_says_what_to_do(bench: Driver) -> None:
    bench.click("welcome_plan")
    view = plan_of(bench)
    assert view.top.sentence.text() == "No machine is planned yet: add the machines of the test below."
    assert not view.repeats.isVisible()
    assert not bench.widget(QPushButton, "plan_csv").isEnabled()
    assert bench.widget(QPushButton, "plan_read").isEnabled()
    bench.write("plan_new_machine", "Alder")
    assert "Alder alone can be compared with nothing" in view.top.sentence.text()
    assert bench.widget(QPushButton, "plan_csv").isEnabled()


def test_what_is_typed_is_the_plan_and_can_be_undone(bench: Driver) -> None:
    begin(bench)
    before = bench.study
    bench.write("plan_repeats", "6")
    bench.write("plan_nozzle_c", "212,5")
    bench.write("plan_first_layer_bed_c", "65")
    bench.write("plan_wait", "20")
    bench.write("plan_material", "PLA")
    choose(bench, "plan_start", "a warm machine")
    choose(bench, "plan_at_once", "2 machines")
    choose(bench, "plan_display", "Wh")
    plan = bench.study.plan
    assert (plan.repeats, plan.nozzle_c, plan.first_layer_bed_c, plan.wait_min) == (6, 212.5, 65.0, 20.0)
    assert (plan.material, plan.start, plan.at_once, plan.display_unit) == ("PLA", "warm", 2, "Wh")
    for _ in range(8):
        bench.do("action_undo")
    assert bench.study == before


def test_a_machine_that_is_unticked_takes_no_part(bench: Driver) -> None:
    view = begin(bench)
    bench.write("plan_new_machine", "Cedar")
    box = bench.widget(QCheckBox, f"plan_{bench.study.machines[1].id}")
    assert box.text() == "Birch"
    box.setFocus()
    bench.press(Qt.Key.Key_Space, box)
    assert {row[2] for row in rows_shown(view) if row[0].isdigit()} == {"Alder", "Cedar"}
    bench.do("action_undo")
    assert {row[2] for row in rows_shown(view) if row[0].isdigit()} == {"Alder", "Birch", "Cedar"}


def test_runs_beyond_the_blocks_are_shown_and_can_be_taken_out(bench: Driver) -> None:
    view = begin(bench)
    birch = bench.study.machines[1].id
    bench.session.apply(edits.plan_extra(bench.study, birch, 2))
    bench.settle()
    after = [row for row in rows_shown(view) if row[1] == "after the blocks"]
    assert [row[2] for row in after] == ["Birch", "Birch"]
    button = bench.widget(QPushButton, f"plan_extra_{birch}")
    assert button.text() == "Take out 2 more runs of Birch"
    bench.press(Qt.Key.Key_Space, button)
    assert bench.study.plan.extra == ()
    assert not [row for row in rows_shown(view) if row[1] == "after the blocks"]


def test_shuffling_takes_the_next_seed_and_a_seed_gives_its_order_again(bench: Driver) -> None:
    begin(bench)
    first = order_of(bench.study)
    bench.click("plan_shuffle")
    bench.click("plan_shuffle")
    assert bench.study.plan.seed == 3
    assert order_of(bench.study) != first
    bench.write("plan_seed", "1")
    assert order_of(bench.study) == first


def test_a_number_that_cannot_be_used_is_refused_in_words(bench: Driver) -> None:
    begin(bench)
    bench.write("plan_repeats", "many")
    assert "cannot be used" in bench.text("plan_why_not")
    assert bench.study.plan.repeats == 4
    bench.write("plan_repeats", "3")
    assert bench.study.plan.repeats == 3
    assert not any(w.isVisible() for w in bench.window.findChildren(QLabel, "plan_why_not"))


def test_another_difference_and_another_scatter_take_other_repeats(bench: Driver) -> None:
    view = begin(bench)
    assert view.found is not None
    assert view.found.pair is not None
    usual = view.found.pair.more
    bench.write("plan_difference", "2")
    assert "difference of 2 %" in view.top.sentence.text()
    assert view.found.pair.more is not None
    assert usual is not None
    assert view.found.pair.more > usual
    bench.write("plan_spread", "0.5")
    assert "as you have stated" in view.top.conditions.text()
    assert view.found.pair.more < 10
    bench.click("plan_take")
    assert bench.study.plan.repeats == view.found.pair.more
    view.spread.setFocus()
    view.spread.selectAll()
    bench.press(Qt.Key.Key_Delete, view.spread)
    bench.press(Qt.Key.Key_Return, view.spread)
    assert bench.study.plan.spread_percent is None


def test_meters_that_do_not_go_round_hide_what_no_repeats_show(bench: Driver) -> None:
    view = begin(bench)
    assert "as planned here" in bench.text("plan_floors")
    assert view.found is not None
    assert view.found.pair is not None
    # two meters of ±1 % that go round are as good as one; apart they hide 2.3 %
    assert view.found.pair.floor == pytest.approx(0.0, abs=1e-9)
    assert view.found.pair.floor_apart == pytest.approx(0.0229, abs=2e-4)
    box = bench.widget(QCheckBox, f"plan_{bench.study.meters[1].id}")
    bench.press(Qt.Key.Key_Space, box)
    assert {row[3] for row in rows_shown(view) if row[0].isdigit()} == {"Meter 1"}


def test_the_curve_is_read_out_under_the_pointer(bench: Driver) -> None:
    view = begin(bench)
    scene = view.repeats.scene()
    assert scene is not None
    assert view.found is not None
    assert view.found.pair is not None
    place = next(t for t in scene.targets if t.lines and t.lines[0].startswith("5 runs"))
    QTest.mouseMove(view.repeats, QPoint(round(place.x), round(place.y)))
    smallest = view.found.pair.among_all[view.found.pair.runs.index(5)]
    assert view.repeats.readout_lines()[1] == f"{100 * smallest:.1f} % is shown"


def test_asking_for_a_file_does_not_block_the_window(bench: Driver) -> None:
    begin(bench)
    for button, words in (
        ("plan_pdf", "Save run sheet (PDF)"),
        ("plan_csv", "Save run sheet (CSV)"),
        ("plan_read", "Read a filled run sheet"),
    ):
        bench.click(button)
        dialog = next(d for d in bench.window.findChildren(QFileDialog, "file_dialog") if d.isVisible())
        assert dialog.windowTitle() == words
        dialog.reject()
        bench.settle()


def test_everything_can_be_reached_by_the_tab_key(bench: Driver) -> None:
    view = begin(bench)
    names = set()
    view.difference.setFocus()
    for _ in range(60):
        focused = QApplication.focusWidget()
        assert focused is not None
        names.add(focused.objectName())
        QTest.keyClick(focused, Qt.Key.Key_Tab)
    wanted = {"plan_difference", "plan_spread", "plan_first", "plan_other", "plan_take", "repeats"}
    wanted |= {"plan_repeats", "plan_at_once", "plan_start", "plan_wait", "plan_material", "plan_bed_c"}
    wanted |= {"plan_seed", "plan_shuffle", "plan_checks", "plan_pdf", "plan_csv", "plan_print", "plan_read"}
    wanted |= {"plan_new_machine", "plan_new_meter", "plan_order"}
    assert wanted <= names


def test_with_logs_the_plan_begins_from_their_scatter(bench: Driver, tmp_path: Path) -> None:
    paths = [
        write_log(tmp_path / f"{n}.csv", seed=i, processing_w=60 + i)
        for i, n in enumerate(("Alder", "Birch"))
    ]
    bench.drop(*paths)
    bench.window.show_page("Fairness")
    bench.wait_until(lambda: not bench.window.is_busy)
    bench.click("fairness_face_before")
    view = plan_of(bench)
    assert "6 runs so far" in view.top.conditions.text()
    bench.do("action_explain")
    assert view.panel.title.text() == "Alder and Birch: how many repeats"
    assert view.panel.explanation is not None
    assert view.panel.explanation.lacks == ()


def test_no_letter_leads_to_two_places(bench: Driver) -> None:
    view = begin(bench)
    texts = [w.text() for w in view.findChildren(QLabel) if w.buddy() is not None and w.isVisible()]
    texts += [w.text() for w in view.findChildren(QAbstractButton) if w.isVisible()]
    page = view.parentWidget()
    assert page is not None
    texts += [w.text() for w in page.findChildren(QPushButton) if w.isVisible() and not view.isAncestorOf(w)]
    texts += [action.text() for action in bench.window.menuBar().actions() if action.isVisible()]
    mnemonics = [QKeySequence.mnemonic(text).toString() for text in texts]
    # the window's own Help and the page's How share a letter: the menu bar is asked with F10, too
    mine = [key for key in mnemonics if key and key != "Alt+H"]
    assert sorted(mine) == sorted(set(mine))
    assert len(mine) > 15
