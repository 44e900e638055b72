"""Like for like on the Compare page, used as a person does: chosen, given temperatures, read and copied."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from core import edits
from core.figures.curve_values import CurvesFigure
from gui.pages.compare import ComparePage
from tests.gui.driver import Driver
from tests.screens.studies import write_log


class Bench(Driver):
    """A window with two machines that made the part, on the Compare page."""

    def fill(self, folder: Path, bed_c: float | None) -> None:
        """Both logs, and the bed's temperature of the test."""
        self.drop(write_log(folder / "Alder.csv", 3, 4), write_log(folder / "Birch.csv", 6, 4))
        if bed_c is not None:
            self.session.apply(edits.set_bed_c(self.study, bed_c))
        self.window.show_page("Compare")
        self.settle()

    @property
    def page(self) -> ComparePage:
        page = self.window.page
        assert isinstance(page, ComparePage)
        return page

    def show(self, name: str) -> None:
        """Choose a view by keys."""
        choice = self.widget(QComboBox, "compare_view")
        choice.setFocus()
        QTest.keyClicks(choice, name)
        self.settle()

    def adjusted_wh(self) -> list[float]:
        found = self.page.like.found
        assert found is not None
        return [m.adjusted_wh.value for m in found.known if m.adjusted_wh is not None]


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path / "window")
    try:
        yield made
    finally:
        made.close()


def test_measured_is_shown_until_another_view_is_chosen(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    assert bench.page.rows.isVisible()
    assert not bench.page.like.isVisible()
    bench.show("Like")
    assert bench.page.like.rows.isVisible()
    assert not bench.page.rows.isVisible()
    assert bench.page.top.sentence.text().startswith("Made like for like")
    bench.press(Qt.Key.Key_Up, bench.page.view)
    assert bench.page.rows.isVisible()
    assert bench.page.top.sentence.text() == bench.session.comparison.headline  # type: ignore[union-attr]


def test_at_its_own_conditions_a_machine_stays_as_it_was(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    found = bench.page.like.found
    assert found is not None
    measured = sorted(m.measured_wh.value for m in found.machines)
    assert bench.adjusted_wh() == pytest.approx(measured)


def test_a_cooler_bed_lowers_every_energy_and_is_a_step(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    before = bench.adjusted_wh()
    bench.write("common_bed_c", "50")
    after = bench.adjusted_wh()
    assert all(now < then for now, then in zip(after, before, strict=True))
    assert "Bed 50" in bench.page.top.conditions.text()
    figure = bench.page.like.steps.figure
    assert isinstance(figure, CurvesFigure)
    assert figure.facts[0].startswith("Bed: \u2212")


def test_what_was_measured_is_the_same_beside_any_adjustment(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    found = bench.page.like.found
    assert found is not None
    bench.write("common_bed_c", "45")
    then = bench.page.like.found
    assert then is not None
    assert [m.measured_wh for m in then.machines] == [m.measured_wh for m in found.machines]


def test_without_a_bed_temperature_it_says_what_would_help(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, None)
    bench.show("Like")
    assert bench.page.top.sentence.text().startswith("No machine can be adjusted yet")
    assert "note the bed's temperature" in bench.page.like.table.note.text()
    assert not bench.page.like.steps.isVisible()


def test_another_machine_is_chosen_in_the_table(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    view = bench.page.like.table.view
    chosen = set()
    for row in range(2):
        view.setCurrentIndex(bench.page.like.table.model.index(row, 0))
        bench.settle()
        chosen.add(bench.widget(QComboBox, "like_machine").currentText())
    assert chosen == {"Alder", "Birch"}


def test_copying_takes_the_table_of_the_view(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    bench.click("copy")
    assert "Like for like [Wh]" in QGuiApplication.clipboard().text()


def test_a_temperature_that_is_none_is_refused_in_place(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    before = bench.adjusted_wh()
    bench.write("common_bed_c", "900")
    assert bench.page.message.text()
    assert bench.adjusted_wh() == before


def test_undo_of_the_tests_temperature_is_followed(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    bench.press(Qt.Key.Key_Z, bench.window, Qt.KeyboardModifier.ControlModifier)
    assert bench.page.top.sentence.text().startswith("No machine can be adjusted yet")


def test_how_it_was_found_is_told_beside_it(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    bench.click("how_found")
    assert bench.page.found.isVisible()
    assert bench.page.like.isVisible()


def test_another_study_begins_with_its_own_temperatures(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    like = bench.page.like
    bench.write("common_bed_c", "50")
    assert bench.session.new_study()
    bench.settle()
    assert like.bed.text() == ""
    assert like.found is None


def test_both_energies_of_a_machine_say_how_they_were_found(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    bench.write("common_bed_c", "50")
    found = bench.page.like.found
    assert found is not None
    machine = found.known[0]
    bench.page.like.rows.asked.emit(machine.machine_id, "", "measured")
    bench.settle()
    told = bench.page.found.explanation
    assert told is not None
    assert told.topic == "energy"
    bench.page.like.rows.asked.emit(machine.machine_id, "", "adjusted")
    bench.settle()
    told = bench.page.found.explanation
    assert told is not None
    assert told.title == f"{machine.name}: like for like"
    assert any("another temperature of the bed: \u2212" in line for line in told.formula)


def test_a_common_length_is_a_step_of_its_own_and_can_be_taken_back(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, 60.0)
    bench.show("Like")
    before = bench.adjusted_wh()
    bench.write("common_minutes", "90")
    assert all(now > then for now, then in zip(bench.adjusted_wh(), before, strict=True))
    assert "processing for 1 h 30 min each" in bench.page.top.conditions.text()
    figure = bench.page.like.steps.figure
    assert isinstance(figure, CurvesFigure)
    assert figure.facts[-1].startswith("Duration: +")
    field = bench.page.like.length
    field.setFocus()
    field.selectAll()
    bench.press(Qt.Key.Key_Delete, field)
    bench.press(Qt.Key.Key_Return, field)
    assert bench.adjusted_wh() == before
