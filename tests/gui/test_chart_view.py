"""A chart in the window: pointing, selecting, keys, and what a screen reader is told."""

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from core.figures.compare import comparison_figure
from core.figures.curve_values import CurvesFigure, Reading, Trend
from core.figures.energy_time import energy_time_figure
from core.figures.line_up_values import Scale
from core.figures.placing import Box
from core.figures.readout import readout
from core.quantities import quantity
from core.results.values import Comparison
from gui.charts.readout import in_width, readout_box
from gui.charts.scene import Ruler
from gui.charts.view import ChartView
from gui.look import current
from tests.comparisons import make


def shown(qtbot: QtBot, *, plane: bool = False, machines: int = 5) -> tuple[ChartView, Comparison]:
    study, comparison = make(machines, 4)

    def say(run_id: str, key: str) -> tuple[str, ...]:
        return readout(comparison, run_id, quantity(key))

    view = ChartView("chart")
    qtbot.addWidget(view)
    figure = (energy_time_figure if plane else comparison_figure)(comparison, study)
    view.show_figure(figure, say)
    view.resize(1000, 480)
    with qtbot.waitExposed(view):
        view.show()
    return view, comparison


def point_of(view: ChartView, run_id: str, key: str = "energy_wh") -> QPoint:
    scene = view.scene()
    assert scene is not None
    target = next(t for t in scene.targets if t.run_id == run_id and t.key == key)
    return QPoint(round(target.x), round(target.y))


def hover(view: ChartView, at: QPoint) -> None:
    place = QPointF(at)
    event = QMouseEvent(
        QMouseEvent.Type.MouseMove,
        place,
        view.mapToGlobal(place),
        Qt.MouseButton.NoButton,
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
    )
    QApplication.sendEvent(view, event)


@pytest.mark.parametrize("plane", [False, True])
def test_hover_reads_out_the_run_that_is_pointed_at(qtbot: QtBot, plane: bool) -> None:
    view, comparison = shown(qtbot, plane=plane)
    machine = comparison.machines[2]
    hover(view, point_of(view, machine.runs[0].run_id))
    assert view.hovered is not None
    pointed = view.hovered.run_id
    assert pointed in {r.run_id for r in machine.runs}
    assert view.readout_lines() == readout(comparison, pointed)
    assert machine.name in view.accessibleDescription()
    hover(view, QPoint(2, view.height() - 2))
    assert view.hovered is None
    assert view.readout_lines() == ()


def test_hover_reads_out_the_measure_that_is_pointed_at(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    hover(view, point_of(view, comparison.machines[0].runs[0].run_id, "seconds"))
    assert view.readout_lines()[1].startswith("Duration: ")


def test_a_click_selects_and_a_click_beside_selects_nothing(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    picked: list[object] = []
    view.picked.connect(picked.append)
    qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=point_of(view, "r0-0"))
    qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=QPoint(3, 3))
    assert picked[0] in {r.run_id for r in comparison.machines[0].runs}
    assert picked[1:] == [None]
    assert view.selected is None


def test_arrow_keys_walk_runs_and_machines(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    first, second = comparison.machines[0].runs, comparison.machines[1].runs
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert view.selected == first[0].run_id
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert view.selected == first[1].run_id
    qtbot.keyClick(view, Qt.Key.Key_Down)
    assert view.selected == second[1].run_id
    qtbot.keyClick(view, Qt.Key.Key_Up)
    qtbot.keyClick(view, Qt.Key.Key_Left)
    qtbot.keyClick(view, Qt.Key.Key_Left)
    assert view.selected == first[0].run_id
    qtbot.keyClick(view, Qt.Key.Key_Escape)
    assert view.selected is None


def test_delete_asks_to_leave_the_selected_run_out(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    asked: list[str] = []
    view.leaving_out.connect(asked.append)
    qtbot.keyClick(view, Qt.Key.Key_Delete)
    assert asked == []
    qtbot.keyClick(view, Qt.Key.Key_Down)
    qtbot.keyClick(view, Qt.Key.Key_Delete)
    assert asked == [comparison.machines[0].runs[0].run_id]


def test_a_selected_run_is_seen_in_every_measure(qtbot: QtBot) -> None:
    view, _ = shown(qtbot)
    view.clearFocus()
    before = view.grab().toImage()
    view.select("r0-1")
    after = view.grab().toImage()
    scene = view.scene()
    assert scene is not None
    targets = [t for t in scene.targets if t.run_id == "r0-1"]
    assert len(targets) == 5
    reach = round(view.look.px(7))
    for t in targets:
        near = [(round(t.x) + dx, round(t.y)) for dx in range(-reach - 2, reach + 3)]
        assert any(before.pixel(x, y) != after.pixel(x, y) for x, y in near)


def test_a_screen_reader_is_told_every_number(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    for machine in comparison.machines:
        assert machine.name in view.accessibleDescription()


def test_a_shortened_name_is_told_whole(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot, machines=12)
    scene = view.scene()
    assert scene is not None
    long_name = max((m.name for m in comparison.machines), key=len)
    assert any(t.full == long_name and t.text != long_name for t in scene.texts)
    assert any(h.text.startswith(long_name) for h in scene.hints)


def test_an_unknown_value_explains_itself(qtbot: QtBot) -> None:
    view, _ = shown(qtbot)
    scene = view.scene()
    assert scene is not None
    note = next(t for t in scene.texts if t.text == "at least 31 %")
    assert any(h.box == note.box and h.text for h in scene.hints)


def test_a_line_of_the_readout_that_is_wider_than_the_chart_is_broken() -> None:
    look = current()
    why = "caution: between runs one bed rested for longer than the other, so that it was colder at its start"
    lines = in_width((why, "1.2 Wh  a part"), 240.0, look)
    assert [text for text, is_bold in lines if not is_bold] == ["1.2 Wh  a part"]
    bold = [text for text, is_bold in lines if is_bold]
    assert len(bold) > 2
    assert " ".join(bold) == why
    assert all(Ruler(look).width(text, bold=True) <= 240.0 for text in bold)


def test_the_readout_never_covers_what_it_reads_out() -> None:
    whole = Box(0, 0, 400, 300)
    for x, y in ((5, 5), (395, 5), (200, 150), (5, 295), (395, 295)):
        box = readout_box(150, 60, (x, y), whole, 10)
        assert whole.holds(box)
        assert not (box.x < x < box.right and box.y < y < box.bottom)


def test_a_chart_without_a_figure_is_calm(qtbot: QtBot) -> None:
    view = ChartView("chart")
    qtbot.addWidget(view)
    view.resize(200, 100)
    view.grab()
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert view.selected is None
    assert view.scene() is None


def _drag(view: ChartView, by: QPoint) -> list[str]:
    """Press in the middle of a run, move and let go; what was told in which order."""
    told: list[str] = []
    view.pulled.connect(lambda: told.append("pulled"))
    view.picked.connect(told.append)
    run_id = next(t.run_id for t in view.scene().targets if t.run_id)  # type: ignore[union-attr]
    at = point_of(view, run_id)
    QTest.mousePress(view, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    for share in (0.5, 1.0):
        QTest.mouseMove(view, at + by * share)
        QApplication.processEvents()
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at + by)
    return told


def test_pulling_the_picture_takes_it_out_and_selects_nothing(qtbot: QtBot) -> None:
    view, _ = shown(qtbot)
    far = QApplication.startDragDistance()
    assert _drag(view, QPoint(3 * far, far)) == ["pulled"]
    assert view.selected is None


def test_a_hand_that_trembles_still_clicks(qtbot: QtBot) -> None:
    view, comparison = shown(qtbot)
    (picked,) = _drag(view, QPoint(QApplication.startDragDistance() // 3, 0))
    assert picked == view.selected
    assert picked in {run.run_id for m in comparison.machines for run in m.runs}


def test_a_very_high_chart_looks_the_same_painted_in_pieces(qtbot: QtBot) -> None:
    view, _ = shown(qtbot, machines=5)
    view.setMaximumHeight(2600)
    view.resize(1000, 2600)
    whole = view.grab().toImage()
    for top in (0, 700, 2300):
        piece = view.grab(QRect(0, top, 1000, 300)).toImage()
        is_same = piece == whole.copy(0, top, 1000, 300)
        assert is_same


def test_places_of_a_curve_are_read_out_and_walked_with_the_keys(qtbot: QtBot) -> None:
    said = (("2 runs", "12 %"), ("3 runs", "7 %"), ("4 runs", "5 %"))
    readings = tuple(Reading(n, y, lines) for n, y, lines in zip((2, 3, 4), (12, 7, 5), said, strict=True))
    figure = CurvesFigure(
        "headline",
        "",
        "",
        Scale("Runs", "", 2.0, 4.0),
        Scale("Difference", "%", 0.0, 15.0),
        (Trend((2.0, 3.0, 4.0), (12.0, 7.0, 5.0)),),
        readings=readings,
    )
    view = ChartView("curve")
    qtbot.addWidget(view)
    view.show_figure(figure, lambda run_id, key: ())
    view.resize(600, 300)
    with qtbot.waitExposed(view):
        view.show()
    scene = view.scene()
    assert scene is not None
    middle = scene.targets[1]
    QTest.mouseMove(view, QPoint(round(middle.x) + 3, round(middle.y) - 3))
    assert view.readout_lines() == ("3 runs", "7 %")
    assert view.accessibleDescription() == "3 runs, 7 %"
    QTest.keyClick(view, Qt.Key.Key_Right)
    assert view.readout_lines() == ("4 runs", "5 %")
    QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Left)
    assert view.readout_lines() == ("3 runs", "7 %")
    # it is no run: nothing is selected there
    QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=QPoint(round(middle.x), round(middle.y)))
    assert view.selected is None
