"""The Publish page, used as a person does: pick, look, change how it looks, save, copy, add."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QAction, QGuiApplication, QImage, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox, QComboBox, QFileDialog, QLabel, QLineEdit, QListWidget, QPushButton
from pytestqt.qtbot import QtBot

from core.publish.choices import Pick, Publishing
from gui.pages.publish import PublishPage
from gui.publish.files import SAVE
from gui.widgets.picture_menu import PictureMenu
from tests.gui.driver import Driver, write_log


class Desk(Driver):
    """A window whose Publish page is shown."""

    def fill(self, folder: Path) -> None:
        """Two machines that made parts, and the Publish page."""
        self.drop(
            write_log(folder / "Alder.csv", runs=2, minutes=9.0),
            write_log(folder / "Birch.csv", runs=2, minutes=12.0, seed=2),
        )
        self.show_page()

    def show_page(self) -> None:
        self.window.show_page("Publish")
        self.settle()

    def settle(self) -> None:
        """Wait until what was asked for is worked out and shown; showing it may ask for more."""
        for _ in range(4):
            super().settle()
            self.wait_until(lambda: not self.window.is_busy)

    @property
    def page(self) -> PublishPage:
        return next(p for p in self.window.findChildren(PublishPage))

    @property
    def publishing(self) -> Publishing:
        return self.study.publishing

    def tick(self, key: str, on: bool = True) -> None:
        """Tick an entry of the shelf."""
        item = self.page.shelf._items[key]
        item.setCheckState(0, Qt.CheckState.Checked if on else Qt.CheckState.Unchecked)
        self.settle()

    def choose(self, key: str) -> None:
        """Choose an entry of the shelf."""
        self.page.shelf.setCurrentItem(self.page.shelf._items[key])
        self.settle()

    def pick(self, name: str, value: object) -> None:
        """Choose from a list."""
        box = self.widget(QComboBox, name)
        box.setCurrentIndex(box.findData(value))
        box.activated.emit(box.currentIndex())
        self.settle()

    def answer(self, path: Path) -> None:
        """Answer the file dialog that is open."""
        dialog = self.page.files.dialog
        assert isinstance(dialog, QFileDialog)
        dialog.fileSelected.emit(str(path))
        dialog.accepted.emit()
        dialog.done(0)
        self.wait_until(lambda: not self.jobs.is_running(SAVE))
        self.settle()

    @property
    def said(self) -> str:
        return self.widget(QLabel, "publish_message").text()


@pytest.fixture
def desk(qtbot: QtBot, tmp_path: Path) -> Iterator[Desk]:
    made = Desk(qtbot, tmp_path / "desk")
    made.fill(tmp_path)
    yield made
    made.close()


def same(one: QImage, other: QImage) -> bool:
    form = QImage.Format.Format_ARGB32
    return one.convertToFormat(form) == other.convertToFormat(form)


def test_the_picture_shown_is_the_picture_saved_pixel_for_pixel(desk: Desk, tmp_path: Path) -> None:
    assert desk.page.preview.image.width() == 1920
    desk.click("publish_save")
    desk.answer(tmp_path / "out.png")
    assert desk.said == "Saved out.png"
    assert same(QImage(str(tmp_path / "out.png")), desk.page.preview.image)
    for purpose, theme in (("square", "dark"), ("tall", "print")):
        desk.pick("publish_purpose", purpose)
        desk.pick("publish_theme", theme)
        desk.click("publish_save")
        desk.answer(tmp_path / f"{purpose}.png")
        assert same(QImage(str(tmp_path / f"{purpose}.png")), desk.page.preview.image)


def test_in_its_own_size_each_pixel_of_the_picture_is_one_of_the_screen(desk: Desk) -> None:
    desk.click("publish_real_size")
    preview = desk.page.preview
    assert preview.placed().size() == preview.image.size()
    shown = preview.grab(preview.placed().adjusted(1, 1, -1, -1)).toImage()
    whole = preview.image.copy(1, 1, shown.width(), shown.height())
    assert same(shown, whole)
    desk.click("publish_real_size")
    assert preview.placed().width() < preview.image.width()


def test_ticks_pick_and_are_undone(desk: Desk) -> None:
    desk.tick("energy-against-time")
    desk.tick("table-runs")
    assert desk.publishing.keys == ("energy-against-time", "table-runs")
    desk.tick("table-runs", on=False)
    assert desk.publishing.keys == ("energy-against-time",)
    desk.session.undo()
    desk.settle()
    assert desk.publishing.keys == ("energy-against-time", "table-runs")
    item = desk.page.shelf._items["table-runs"]
    assert item.checkState(0) == Qt.CheckState.Checked


def test_a_row_is_picked_by_keyboard(desk: Desk) -> None:
    desk.choose("energy-against-time")
    desk.press(Qt.Key.Key_Space, desk.page.shelf)
    assert desk.publishing.keys == ("energy-against-time",)


def test_picks_and_looks_are_there_again_after_the_study_was_closed(desk: Desk) -> None:
    desk.tick("comparison")
    desk.pick("publish_purpose", "tall")
    path = desk.session.path
    assert path is not None
    desk.session.new_study()
    desk.settle()
    assert desk.session.open(path)
    desk.show_page()
    assert desk.publishing.keys == ("comparison",)
    assert desk.widget(QComboBox, "publish_purpose").currentData() == "tall"
    assert desk.page.preview.image.height() == 1920


def test_a_title_of_ones_own_picks_the_figure_and_is_one_step(desk: Desk) -> None:
    field = desk.widget(QLineEdit, "publish_title")
    field.setFocus()
    QTest.keyClicks(field, "Which needs least?")
    field.editingFinished.emit()
    desk.settle()
    assert desk.publishing.picks == (Pick("comparison", title="Which needs least?"),)
    assert desk.page.top.sentence.text() == "Which needs least?"
    desk.session.undo()
    desk.settle()
    assert desk.publishing.picks == ()
    assert "Alder" in desk.page.top.sentence.text()


def test_machines_are_taken_out_and_ordered(desk: Desk) -> None:
    machines = desk.widget(QListWidget, "publish_machines")
    ids = [machine.id for machine in desk.study.machines]
    machines.setCurrentRow(1)
    desk.press(Qt.Key.Key_Up, machines, Qt.KeyboardModifier.AltModifier)
    assert desk.publishing.machine_ids == tuple(reversed(ids))
    machines.item(0).setCheckState(Qt.CheckState.Unchecked)
    desk.settle()
    assert desk.publishing.machine_ids == (ids[0],)
    words = desk.widget(QLabel, "publish_words").text()
    assert "1 of 2 machines shown" in words
    assert "Birch" not in words
    machines.item(0).setCheckState(Qt.CheckState.Unchecked)  # the last one
    desk.settle()
    assert "one machine at least" in desk.page.message.text()
    assert desk.publishing.machine_ids == ()


def test_a_machine_stands_out(desk: Desk) -> None:
    before = desk.page.preview.image.copy()
    desk.pick("publish_highlighted", desk.study.machines[0].id)
    assert desk.publishing.highlighted == desk.study.machines[0].id
    assert not same(before, desk.page.preview.image)


def test_a_free_size_is_typed_and_nonsense_is_told(desk: Desk) -> None:
    desk.pick("publish_purpose", "free")
    desk.write("publish_width", "1000")
    desk.write("publish_height", "700")
    assert desk.page.preview.image.size().toTuple() == (1000, 700)
    desk.write("publish_width", "7")
    assert desk.publishing.width_px == 1000
    assert desk.said


def test_figures_share_a_picture(desk: Desk) -> None:
    desk.tick("comparison")
    desk.tick("energy-against-time")
    desk.choose("line-up")
    desk.widget(QCheckBox, "publish_together").click()
    desk.settle()
    assert desk.publishing.is_together
    assert desk.widget(QLabel, "publish_words").text().startswith("Chart 1 of 2")


def test_beside_svg_it_is_said_that_its_font_is_only_named(desk: Desk) -> None:
    assert "font" not in desk.widget(QLabel, "conditions").text()
    desk.pick("publish_ending", "svg")
    assert "SVG names the font of its text and does not hold it" in desk.widget(QLabel, "conditions").text()
    desk.pick("publish_ending", "pdf")
    assert "font" not in desk.widget(QLabel, "conditions").text()


def test_all_picks_are_saved_into_a_folder(desk: Desk, tmp_path: Path) -> None:
    folder = tmp_path / "out"
    folder.mkdir()
    assert not desk.widget(QPushButton, "publish_save_all").isEnabled()
    desk.tick("comparison")
    desk.tick("table-comparison")
    desk.pick("publish_ending", "svg")
    desk.click("publish_save_all")
    desk.answer(folder)
    assert sorted(p.name for p in folder.iterdir()) == ["01-comparison.svg", "02-table-comparison.csv"]
    assert "2 files" in desk.said


def test_a_chart_is_saved_step_by_step(desk: Desk, tmp_path: Path) -> None:
    desk.click("publish_steps")
    desk.answer(tmp_path)
    assert {p.name for p in tmp_path.glob("comparison-*.png")} == {f"comparison-{n:02}.png" for n in range(3)}


def test_a_folder_that_cannot_be_written_is_told(desk: Desk, tmp_path: Path) -> None:
    (tmp_path / "a file").write_text("")
    desk.click("publish_save")
    desk.answer(tmp_path / "a file" / "out.png")
    assert "was not saved" in desk.said


def test_picture_numbers_and_words_are_copied(desk: Desk) -> None:
    desk.press(Qt.Key.Key_C, desk.page.preview, Qt.KeyboardModifier.ControlModifier)
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert data.text().startswith("Machine\tEnergy per part (Wh)")
    assert "<td>Alder</td>" in data.html()
    desk.click("publish_copy_words")
    assert QGuiApplication.clipboard().text().startswith("Chart with one row")
    desk.choose("table-runs")
    desk.click("publish_copy")
    data = QGuiApplication.clipboard().mimeData()
    assert not data.hasImage()
    assert "run 1" in data.text()


def test_a_table_is_shown_and_saved_as_one(desk: Desk, tmp_path: Path) -> None:
    desk.choose("table-comparison")
    assert desk.page.body.table.isVisible()
    assert desk.widget(QPushButton, "publish_save").text() == "&Save table…"
    desk.click("publish_save")
    desk.answer(tmp_path / "table.html")
    assert "<table>" in (tmp_path / "table.html").read_text("utf-8")


def test_the_picture_is_pulled_out_of_the_window(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    pulled = []
    desk.page.preview.pulled.disconnect()
    desk.page.preview.pulled.connect(lambda: pulled.append(True))
    preview = desk.page.preview
    for kind, x in ((QEvent.Type.MouseButtonPress, 40), (QEvent.Type.MouseMove, 140)):
        at = QPointF(x, 60)
        event = QMouseEvent(
            kind,
            at,
            preview.mapToGlobal(QPoint(x, 60)).toPointF(),
            Qt.MouseButton.LeftButton,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        QGuiApplication.sendEvent(preview, event)
    assert pulled == [True]
    picture = desk.page.desk.picture("comparison") if desk.page.desk is not None else None
    assert picture is not None
    data = desk.page.drag.data(picture, "comparison")
    assert same(QImage(data.imageData()), preview.image)
    assert Path(data.urls()[0].toLocalFile()).name == "comparison.png"
    assert data.hasFormat("image/svg+xml")


def test_charts_of_other_pages_are_added_as_they_are_shown(desk: Desk) -> None:
    desk.window.show_page("Compare")
    desk.settle()
    _add(desk, "energy_against_time")
    assert desk.publishing.keys == ("energy-against-time",)
    desk.window.show_page("Line-up")
    desk.settle()
    page = desk.window.page
    assert page is not None
    bar = next(w for w in page.findChildren(QComboBox) if w.findText("Run under run") >= 0)
    bar.setCurrentIndex(bar.findText("Run under run"))
    bar.activated.emit(bar.currentIndex())
    desk.settle()
    _add(desk, "line_up")
    pick = desk.publishing.picks[-1]
    assert pick.key == "line-up-arranged-1"
    assert pick.line_up is not None
    assert pick.line_up.arrangement == "run under run"
    desk.show_page()
    assert "line-up-arranged-1" in desk.page.shelf._items
    assert desk.page.preview.image.width() == 1920


def _add(desk: Desk, view: str) -> None:
    page = desk.window.page
    assert page is not None
    menu = page.findChild(PictureMenu)
    assert menu is not None
    action = menu.menu.findChild(QAction, f"add_{view}_to_publish") or next(
        a for a in desk.window.findChildren(QAction) if a.objectName() == f"add_{view}_to_publish"
    )
    action.trigger()
    desk.settle()


def test_report_tables_and_bundle_are_saved(desk: Desk, tmp_path: Path) -> None:
    for name, file in (("html", "report.html"), ("pdf", "report.pdf"), ("tables", "tables.xlsx")):
        desk.click(f"publish_{name}")
        desk.answer(tmp_path / file)
        assert desk.said.startswith(f"Saved {file}"), desk.said
        assert (tmp_path / file).stat().st_size > 2000
    assert "<svg" in (tmp_path / "report.html").read_text("utf-8")


def test_before_a_bundle_is_saved_personal_data_are_listed(desk: Desk, tmp_path: Path) -> None:
    desk.click("publish_bundle")
    desk.wait_until(lambda: desk.widget(QPushButton, "publish_save_bundle").isEnabled())
    assert desk.widget(QLabel, "publish_personal").text()
    desk.click("publish_save_bundle")
    desk.answer(tmp_path / "study")
    assert list(tmp_path.glob("study*"))
    assert desk.said.startswith("Saved study")


def test_saving_does_not_hold_up_the_window(desk: Desk, tmp_path: Path) -> None:
    for key in ("comparison", "energy-against-time", "line-up"):
        desk.tick(key)
    folder = tmp_path / "out"
    folder.mkdir()
    desk.click("publish_save_all")
    dialog = desk.page.files.dialog
    assert dialog is not None
    dialog.fileSelected.emit(str(folder))
    # the click has come back, and the files are still to be written
    assert desk.jobs.is_running(SAVE)
    dialog.done(0)
    desk.wait_until(lambda: not desk.jobs.is_running(SAVE))
    assert len(list(folder.iterdir())) == 3
