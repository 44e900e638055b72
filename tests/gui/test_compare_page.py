"""The Compare page, used as a person does: by pointing, by keys, and read as text."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QObject, QPoint, Qt, QUrl
from PySide6.QtGui import QAction, QDragEnterEvent, QGuiApplication, QImage
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from core import edits
from core.results.values import Comparison
from core.study import Study
from gui.jobs import Jobs
from gui.pages.compare import ComparePage
from gui.session import Session
from tests.comparisons import make
from tests.gui.driver import opened

ENERGIES = {"Alder": (21.2, 21.6, 21.4, 21.5), "Birch": (25.0, 25.3, 24.9, 25.2), "Rowan": (33.1, 33.6, 33.2)}


class Bench:
    """A page, its session, and the way results reach the page in the window."""

    def __init__(self, qtbot: QtBot, folder: Path) -> None:
        self.qtbot = qtbot
        self.jobs = Jobs()
        self.session = Session(self.jobs, folder)
        assert self.session.open_untitled()
        self.page = ComparePage(self.session)
        qtbot.addWidget(self.page)
        self.session.compared.connect(self.refresh)
        self.session.changed.connect(self.refresh)
        self.page.resize(1180, 780)
        with qtbot.waitExposed(self.page):
            self.page.show()

    def refresh(self, *_: object) -> None:
        self.page.show_study(self.session.study, self.session.comparison)

    def fill(self) -> None:
        study = self.session.study
        for name, energies in ENERGIES.items():
            study = edits.add_machine(study, name).study
            for i, energy in enumerate(energies):
                typed = edits.add_typed(
                    study,
                    study.machines[-1].id,
                    energy,
                    seconds=2200 + 10 * i,
                    step_wh=0.1,
                    note=f"run {i + 1}",
                )
                study = typed.study
        self.session.apply(edits.Edit(study, "Fill"))
        self.settle()

    def settle(self) -> None:
        """Wait until the comparison is that of the study."""
        self.qtbot.waitUntil(lambda: not self.jobs.running)

    def comparison(self) -> Comparison:
        assert self.session.comparison is not None
        return self.session.comparison

    def point_of(self, run_id: str) -> QPoint:
        scene = self.page.rows.scene()
        assert scene is not None
        target = next(t for t in scene.targets if t.run_id == run_id)
        return QPoint(round(target.x), round(target.y))

    def close(self) -> None:
        self.session.close()
        self.jobs.close()


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path)
    made.fill()
    yield made
    made.close()


def child(page: QWidget, kind: type[QWidget], name: str) -> QWidget:
    found = page.findChild(kind, name)
    assert found is not None, name
    return found


def test_the_answer_stands_on_top_in_words(bench: Bench) -> None:
    assert bench.page.top.sentence.text() == bench.comparison().headline
    assert "Alder" in bench.page.top.sentence.text()
    assert bench.page.top.conditions.text() == bench.comparison().conditions


def test_chart_plane_and_table_show_the_same_machines_in_the_same_order(bench: Bench) -> None:
    names = [m.name for m in bench.comparison().machines]
    assert names == ["Alder", "Birch", "Rowan"]
    assert [row[0] for row in bench.page.table.model.rows[1:]] == names
    rows, plane = bench.page.rows.figure, bench.page.plane.figure
    assert rows is not None
    assert plane is not None
    assert [r.name for r in rows.rows] == names  # type: ignore[union-attr]  # it is the comparison
    assert [m.name for m in plane.marks] == names  # type: ignore[union-attr]  # it is the plane


def test_what_counts_as_a_run_is_an_edit_that_can_be_undone(bench: Bench) -> None:
    combo = child(bench.page, QComboBox, "boundary")
    combo.setFocus()
    bench.qtbot.keyClick(combo, Qt.Key.Key_Down)
    assert bench.session.study.boundary == "processing only"
    bench.session.undo()
    assert bench.session.study.boundary == "warm-up and processing"
    assert isinstance(combo, QComboBox)
    assert combo.currentIndex() == 0


def test_a_run_that_is_picked_is_selected_on_every_page(bench: Bench) -> None:
    run = bench.comparison().machines[1].runs[0].run_id
    bench.qtbot.mouseClick(bench.page.rows, Qt.MouseButton.LeftButton, pos=bench.point_of(run))
    assert bench.session.selected == bench.page.rows.selected == bench.page.plane.selected is not None
    other = bench.comparison().machines[2].runs[0].run_id
    bench.session.select(other)
    assert bench.page.rows.selected == bench.page.plane.selected == other


def test_delete_leaves_a_run_out_and_the_reason_is_asked_in_place(bench: Bench) -> None:
    before = bench.session.study
    run = bench.comparison().machines[0].runs[1].run_id
    bench.session.select(run)
    bench.page.rows.setFocus()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Delete)
    assert bench.page.left_out.isVisible()
    bench.qtbot.keyClicks(child(bench.page, QLineEdit, "left_out_reason"), "door was open")
    bench.qtbot.keyClick(child(bench.page, QLineEdit, "left_out_reason"), Qt.Key.Key_Return)
    bench.settle()
    assert not bench.page.left_out.isVisible()
    left_out = next(t for t in bench.session.study.typed if t.id == run)
    assert (left_out.included, left_out.why_left_out) == (False, "door was open")
    assert "door was open" in bench.page.table.note.text()
    assert bench.page.table.model.rows[1][1] == "3"
    bench.session.undo()
    assert bench.session.study == before


def test_a_run_left_out_can_be_counted_again_from_the_same_place(bench: Bench) -> None:
    run = bench.comparison().machines[0].runs[1].run_id
    bench.session.select(run)
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Delete)
    bench.settle()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Delete)
    bench.qtbot.mouseClick(child(bench.page, QAbstractButton, "count_again"), Qt.MouseButton.LeftButton)
    bench.settle()
    assert next(t for t in bench.session.study.typed if t.id == run).included
    assert bench.page.table.model.rows[1][1] == "4"


def test_the_reason_bar_closes_when_another_run_is_selected(bench: Bench) -> None:
    runs = bench.comparison().machines[0].runs
    bench.session.select(runs[0].run_id)
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_Delete)
    bench.session.select(runs[1].run_id)
    assert not bench.page.left_out.isVisible()


@pytest.mark.parametrize(
    ("action", "file_name", "size"),
    [
        ("save_comparison_wide", "wide.png", (1920, 1080)),
        ("save_energy_against_time_square", "square.png", (1080, 1080)),
    ],
)
def test_a_picture_is_saved_at_its_size(
    bench: Bench, tmp_path: Path, action: str, file_name: str, size: tuple[int, int]
) -> None:
    save(bench, action, tmp_path / file_name)
    image = QImage(str(tmp_path / file_name))
    assert (image.width(), image.height()) == size
    assert image.text("Title") == bench.comparison().headline
    assert bench.page.message.text() == f"Saved {file_name}"


def test_the_picture_as_shown_without_a_frame_is_the_chart_on_screen(bench: Bench, tmp_path: Path) -> None:
    bench.page.pictures.with_title.setChecked(False)
    bench.page.pictures.with_conditions.setChecked(False)
    bench.page.rows.clearFocus()
    shown = bench.page.rows.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    save(bench, "save_comparison_as_shown", tmp_path / "shown.png")
    saved = QImage(str(tmp_path / "shown.png")).convertToFormat(QImage.Format.Format_RGB32)
    shown.setDevicePixelRatio(1.0)
    assert saved.size() == shown.size()
    assert all(
        saved.pixel(x, y) == shown.pixel(x, y)
        for x in range(saved.width())
        for y in range(0, saved.height(), 7)
    )


def test_a_picture_can_be_saved_as_svg(bench: Bench, tmp_path: Path) -> None:
    save(bench, "save_comparison_wide", tmp_path / "wide.svg")
    assert "<text" in (tmp_path / "wide.svg").read_text(encoding="utf-8")


def test_a_picture_can_have_twice_the_pixels(bench: Bench, tmp_path: Path) -> None:
    bench.page.pictures.doubled.setChecked(True)
    save(bench, "save_comparison_square", tmp_path / "a.png")
    assert QImage(str(tmp_path / "a.png")).width() == 2160


def test_the_menu_copies_too(bench: Bench) -> None:
    QGuiApplication.clipboard().clear()
    action = bench.page.pictures.menu.findChild(QAction, "copy_picture")
    assert action is not None
    action.trigger()
    assert QGuiApplication.clipboard().mimeData().hasImage()


def test_a_study_with_no_run_that_counts_shows_no_empty_plane(bench: Bench) -> None:
    study = bench.session.study
    for typed in study.typed:
        study = edits.leave_out_typed(study, typed.id, "").study
    bench.session.apply(edits.Edit(study, "Leave all out"))
    bench.settle()
    assert bench.page.rows.isVisible()
    assert not bench.page.plane.isVisible()
    assert "7 more" in bench.page.table.note.text()


def test_a_picture_that_cannot_be_saved_says_why(bench: Bench, tmp_path: Path) -> None:
    picture = bench.page.pictures.picture("Comparison", "wide")
    assert picture is not None
    bench.page.pictures.write(picture, tmp_path / "no such folder" / "a.png")
    assert "a.png was not saved" in bench.page.message.text()


def save(bench: Bench, action: str, path: Path) -> None:
    found = bench.page.pictures.menu.findChild(QAction, action)
    assert found is not None
    found.trigger()
    dialog = bench.page.pictures.dialog
    assert dialog is not None
    dialog.selectFile(str(path))
    dialog.accept()
    bench.qtbot.waitUntil(lambda: bench.page.pictures.dialog is None)


def test_copy_gives_the_picture_and_the_numbers(bench: Bench) -> None:
    bench.page.rows.setFocus()
    bench.qtbot.keyClick(bench.page.rows, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    lines = data.text().splitlines()
    assert lines[0].startswith("Machine\tRuns\tEnergy per part [Wh]")
    assert lines[1].startswith("Alder\t4\t21.4")
    assert data.hasHtml()


def test_points_of_fairness_are_counted_and_open_on_demand(bench: Bench) -> None:
    page = bench.page
    study, comparison = make(5, 4)
    page.show_study(study, comparison)
    assert page.fairness.button.text().startswith("2 points of fairness")
    assert not page.fairness.isVisible()
    bench.qtbot.mouseClick(page.fairness.button, Qt.MouseButton.LeftButton)
    assert page.fairness.isVisible()
    assert len(page.fairness.texts) == 2
    assert page.fairness.texts[0].startswith("Caution: ")


def test_an_empty_study_says_what_to_drop(bench: Bench) -> None:
    bench.page.show_study(Study("empty"), None)
    assert "Drop meter logs" in bench.page.top.conditions.text()
    assert not bench.page.rows.isVisible()
    assert not bench.page.table.isVisible()


def test_nothing_is_cut_off_at_the_smallest_window(bench: Bench) -> None:
    bench.page.resize(830, 640)
    study, comparison = make(12, 4)
    bench.page.show_study(study, comparison)
    view = bench.page.table.view
    header, rows = view.horizontalHeader(), view.verticalHeader()
    bench.qtbot.waitUntil(lambda: header.length() <= view.viewport().width())
    bench.qtbot.waitUntil(lambda: rows.length() <= view.viewport().height())
    assert bench.page.rows.height() >= bench.page.rows.minimumSizeHint().height()


def test_every_control_has_a_name_for_a_screen_reader(bench: Bench) -> None:
    for widget in bench.page.findChildren(QWidget):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.isVisible():
            text = widget.text() if isinstance(widget, QAbstractButton) else ""
            assert widget.accessibleName() or text, widget


def test_a_chart_is_dragged_out_as_pixels_a_drawing_and_a_file(bench: Bench) -> None:
    page = bench.page
    assert page.rows.figure is not None
    data = page.drag.data(page.rows, page.rows.figure)
    (url,) = data.urls()
    assert url.toLocalFile().endswith("/comparison.png")
    written, given = QImage(url.toLocalFile()), QImage(data.imageData())
    assert written.size() == given.size()
    assert written.convertToFormat(given.format()) == given
    assert bench.comparison().headline in written.text("Title")
    drawing = bytes(data.data("image/svg+xml").data()).decode()
    assert all(machine.name in drawing for machine in bench.comparison().machines)


class _FromHere(QDragEnterEvent):
    """A drag that began in this program: Qt knows where only while the window system drags."""

    def source(self) -> QObject:
        return self._source

    def of(self, source: QObject) -> "_FromHere":
        self._source = source
        return self


def test_a_picture_on_its_way_out_is_not_taken_for_a_log(qtbot: QtBot, tmp_path: Path) -> None:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(tmp_path / "comparison.png"))])
    given = (QPoint(9, 9), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton)
    with opened(qtbot, tmp_path) as user:
        from_elsewhere = QDragEnterEvent(*given, Qt.KeyboardModifier.NoModifier)
        from_here = _FromHere(*given, Qt.KeyboardModifier.NoModifier).of(user.window)
        for event in (from_elsewhere, from_here):
            event.ignore()
            user.window.dragEnterEvent(event)
        assert from_elsewhere.isAccepted()
        assert not from_here.isAccepted()
