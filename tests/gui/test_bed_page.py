"""The Bed page, used as a person does: by sliders, by fields, by keys, and read as text."""

import re
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QLabel, QSlider, QTableView
from pytestqt.qtbot import QtBot

from core import edits
from core.beds.area import bed_area_dm2
from core.beds.supply import bed_supply
from core.results.holds import beds
from core.traces import Trace
from gui.charts.view import ChartView
from gui.images import SIZES, render
from gui.pages.bed import BedPage
from gui.widgets.number_field import NumberField
from tests.core.held_beds import BEFORE_S, Bed, simulated
from tests.gui.driver import Driver, write_log

ROOM_C = 20.0


def write_hold(path: Path, bed: Bed, bed_c: float, *, with_temperatures: bool = True, seed: int = 3) -> Path:
    """A log of a hold test: an hour from cold, clock, watts, and where asked the two temperatures."""
    traces, _, _ = simulated(bed, np.array([bed_c - ROOM_C]), 4000, seed)
    trace: Trace = traces[0]
    start = np.datetime64("2026-03-02T08:00:00")
    lines = ["time,power (W)" + (",bed (°C),room (°C)" if with_temperatures else "")]
    for at_s, power_w in zip(trace.time_s.tolist(), trace.power_w.tolist(), strict=True):
        stamp = start + np.timedelta64(round(at_s), "s")
        now_c = ROOM_C + (bed_c - ROOM_C) * min(max(at_s - BEFORE_S, 0.0) / 80.0, 1.0)
        lines.append(f"{stamp}Z,{power_w:.1f}" + (f",{now_c:.1f},{ROOM_C}" if with_temperatures else ""))
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


class Bench(Driver):
    """A window whose Bed page is shown."""

    def fill(self, folder: Path, **more: bool) -> None:
        """Two machines with a hold test at 60 degC."""
        self.drop(
            write_hold(folder / "Alder.csv", Bed(), 60.0, **more),
            write_hold(folder / "Birch.csv", Bed(slope_w_per_k=1.0), 60.0, **more),
        )
        self.mark()
        self.window.show_page("Bed")
        self.settle()

    def settle(self) -> None:
        """Wait until what was asked for is computed and shown; showing it may ask for more."""
        for _ in range(3):
            super().settle()
            self.wait_until(lambda: not self.window.is_busy)

    def mark(self) -> None:
        """Call the long stretch of each log a hold test, where the program did not."""
        for log in self.study.logs:
            if any(r.kind == "hold test" for r in self.study.runs_of(log.id)):
                continue
            end_s = self.session.traces[log.id].end_s
            self.session.apply(edits.draw_run(self.study, log.id, float(BEFORE_S), end_s, "hold test"))
        self.settle()

    @property
    def page(self) -> BedPage:
        page = self.window.page
        assert isinstance(page, BedPage)
        return page

    def slider(self, name: str) -> QSlider:
        return self.widget(QSlider, name)

    def enter(self, name: str, text: str) -> None:
        """Write into a field and leave it."""
        field = self.widget(NumberField, name)
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Return)
        self.settle()


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path / "window")
    try:
        yield made
    finally:
        made.close()


def chosen(bench: Bench) -> str:
    return bench.widget(QComboBox, "bed_machine").currentText()


def test_it_is_listed_after_compare(bench: Bench, tmp_path: Path) -> None:
    titles = bench.window.titles
    assert titles.index("Compare") < titles.index("Bed")


def test_the_answer_is_that_of_the_beds(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    found = beds(bench.study, bench.session.traces)
    assert [m.tests for m in found.machines] == [1, 1]
    said = bench.text("sentence")
    alder, birch = (m.reference for m in found.machines)
    assert alder is not None
    assert birch is not None
    told_w = [float(w) for w in re.findall(r"([\d.]+) ± ", said)]
    assert told_w == pytest.approx([alder.power_w, birch.power_w], abs=0.06)
    assert said.startswith("Held at 60 °C, the bed of Alder takes")
    assert "with the areas of the beds" in said
    assert "steady: the last 5 windows" in bench.text("conditions")
    bench.enter(f"bed_area_{bench.study.machines[0].id}", "5,5")
    bench.enter(f"bed_area_{bench.study.machines[1].id}", "5.5")
    assert [bed_area_dm2(m) for m in bench.study.machines] == [5.5, 5.5]
    ratio = 100 * (alder.power_w / birch.power_w - 1)
    assert bench.text("sentence").startswith("For its size the bed of Alder loses most")
    assert f"{ratio:.0f} % more than Birch" in bench.text("sentence")


def test_without_a_hold_test_it_says_how_to_make_one(bench: Bench, tmp_path: Path) -> None:
    bench.drop(write_log(tmp_path / "Alder.csv", runs=1))
    bench.window.show_page("Bed")
    bench.settle()
    assert bench.text("sentence").startswith("No hold test yet")
    assert "for an hour" in bench.text("conditions")
    assert not bench.page.rows.isVisible()
    assert not bench.page.cooler.isVisible()
    assert bench.widget(NumberField, f"bed_area_{bench.study.machines[0].id}").isVisible()


def test_a_slider_is_followed_at_once_and_saved_when_it_rests(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    before, said = bench.study, bench.text("saving_sentence")
    slider = bench.slider("cooler_later")
    slider.setSliderDown(True)
    slider.setSliderPosition(45)
    assert bench.text("saving_sentence") != said
    assert bench.text("saving_sentence").startswith("45 instead of 60 °C")
    assert bench.study is before  # nothing is saved while the hand holds it
    slider.setSliderPosition(47)
    slider.setSliderDown(False)
    bench.settle()
    assert bench.study.cooler.later_c == 47.0
    assert bench.text("saving_sentence").startswith("47 instead of 60 °C")
    bench.do("action_undo")
    assert bench.study.cooler == before.cooler
    assert bench.text("saving_sentence") == said
    assert slider.value() == 50


def test_sliders_by_keys_are_one_step(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    before = bench.study
    slider = bench.slider("cooler_print")
    slider.setFocus()
    for _ in range(4):
        bench.press(Qt.Key.Key_Right, slider)
    assert bench.study.cooler.print_s == before.cooler.print_s + 4 * 1800
    assert "in a print of 12 h" in bench.text("saving_sentence")
    assert slider.accessibleDescription() == "12 h"
    bench.do("action_undo")
    assert bench.study.cooler == before.cooler


def test_the_user_s_limit_stops_the_slider(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    assert "come loose" in bench.text("cooler_caution")
    bench.enter("cooler_least", "48")
    slider = bench.slider("cooler_later")
    slider.setFocus()
    bench.press(Qt.Key.Key_Home, slider)
    assert bench.text("saving_sentence").startswith("48 instead of 60 °C")
    assert "stopped at your limit" in bench.text("saving_note")
    assert slider.value() == 48
    bench.enter("cooler_least", "abc")
    assert "cannot be used" in bench.text("message")
    assert bench.study.cooler.least_c == 48.0


def test_a_print_shorter_than_its_first_layers(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    layers, whole = bench.slider("cooler_first_layers"), bench.slider("cooler_print")
    layers.setFocus()
    bench.press(Qt.Key.Key_End, layers)
    whole.setFocus()
    bench.press(Qt.Key.Key_Home, whole)
    plan = bench.study.cooler
    assert plan.first_layers_s == plan.print_s == 1800.0
    assert layers.value() == 30


def test_money_when_the_price_is_told(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    assert len(bench.page.cooler.table.model.rows[0]) == 3
    bench.enter("cooler_price", "0.40")
    assert bench.study.costs.tariff.price_per_kwh == 0.4
    assert bench.page.cooler.table.model.rows[0][-1] == "Saved [money]"
    assert bench.page.cooler.table.model.rows[-1][0] == "One print on each"


def test_the_machine_chosen_is_the_one_told_of(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    machine = bench.widget(QComboBox, "bed_machine")
    assert chosen(bench) in bench.text("saving_sentence")
    machine.setFocus()
    bench.press(Qt.Key.Key_Down if machine.currentIndex() == 0 else Qt.Key.Key_Up, machine)
    assert f"on {chosen(bench)}:" in bench.text("saving_sentence")


def test_a_temperature_is_typed_where_no_log_has_it(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path, with_temperatures=False)
    assert bench.text("sentence").startswith("Hold tests were found, but")
    view = bench.widget(QTableView, "holds_table")
    view.setFocus()
    view.selectRow(0)
    bench.settle()
    assert bench.text("hold_whose") == "Temperatures of Alder:"
    bench.enter("hold_bed_c", "60")
    bench.enter("hold_room_c", "19.5")
    run = next(r for r in bench.study.runs_of(bench.study.logs[0].id) if r.kind == "hold test")
    assert (run.bed_c, run.room_c) == (60.0, 19.5)
    assert bench.text("sentence").startswith("Held at 60 °C, the bed of Alder takes")
    assert bench.session.selected == run.id


def test_how_a_bed_is_fed(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    first, second = bench.study.machines
    for machine, index in ((first, 2), (second, 1)):
        bench.enter(f"bed_area_{machine.id}", "5")
        choice = bench.widget(QComboBox, f"bed_supply_{machine.id}")
        choice.setCurrentIndex(index)
        choice.activated.emit(index)
        bench.settle()
    assert [bed_supply(m) for m in bench.study.machines] == ["low voltage", "mains"]
    assert bench.text("bed_supply_sentence").startswith("Mains (Birch) against low voltage (Alder)")


def test_faces_of_bare_metal_lower_the_floor(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    machine = bench.study.machines[0]
    bench.enter(f"bed_area_{machine.id}", "5")

    def of_floor() -> str:
        titles, first = bench.page.table.model.rows[:2]
        return first[titles.index("Of the floor [%]")]

    before = float(of_floor())
    bench.enter("emissivity", "0.1")
    assert bench.study.emissivity == 0.1
    assert float(of_floor()) > 1.3 * before


def test_hover_reads_out_a_hold(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    view = bench.widget(ChartView, "bed_watts")
    scene = view.scene()
    assert scene is not None
    target = scene.targets[0]
    found = view.target_at(target.x + 1, target.y + 1)
    assert found is not None
    lines = bench.page._say(found.run_id, found.key)
    assert lines[0] == "Alder, 60.0 °C in a room of 20.0 °C"
    assert any(line.startswith("settled ") for line in lines)
    assert any(line.startswith("warm-up: ") for line in lines)


def test_the_way_is_explained(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.click("how_found")
    explanation = bench.page.found.explanation
    assert explanation is not None
    assert explanation.title == "Alder: watts held at 60 °C"
    assert explanation.value_text in bench.text("sentence")
    bench.press(Qt.Key.Key_Escape, bench.page.found)
    assert not bench.page.found.isVisible()


def test_a_value_that_is_clicked_on_is_explained(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    scene = bench.page.rows.scene()
    assert scene is not None
    place = next(v for v in scene.values if v.key == "held_w")
    at = QPoint(round(place.box.x + place.box.width / 2), round(place.box.y + place.box.height / 2))
    QTest.mouseClick(bench.page.rows, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    bench.settle()
    assert bench.page.found.title.text() == "Alder: watts held at 60 °C"
    before = bench.page.found.value.text()
    bench.session.apply(edits.set_bed_c(bench.study, 70.0))
    bench.settle()
    assert bench.page.found.title.text() == "Alder: watts held at 70 °C"  # it follows the study
    assert bench.page.found.value.text() != before


def test_f1_asks_about_the_selected_hold(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.page.rows.setFocus()
    bench.session.select(beds(bench.study, bench.session.traces).machines[1].held[0].run_id)
    bench.page.explain()
    assert bench.page.found.title.text() == "Birch: watts held at 60 °C"


def test_copying_takes_picture_and_numbers(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.click("copy")
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert data.text().startswith("Machine\tBed [°C]")
    bench.press(Qt.Key.Key_C, bench.page.cooler.chart, Qt.KeyboardModifier.ControlModifier)
    assert "One print on each" in QGuiApplication.clipboard().mimeData().text()


@pytest.mark.parametrize("title", ["Beds", "Cooler bed", "Watts"])
def test_every_chart_can_be_saved(bench: Bench, tmp_path: Path, title: str) -> None:
    bench.fill(tmp_path)
    for purpose in SIZES:
        picture = bench.page.pictures.picture(title, purpose)
        assert picture is not None
        image: QImage = render(picture.figure, picture.size, picture.view.look, picture.frame)
        assert (image.width(), image.height()) == (picture.size.width, picture.size.height)
        assert len(image.text("Source")) > 20
    path = tmp_path / "out.svg"
    picture = bench.page.pictures.picture(title, "wide")
    assert picture is not None
    bench.page.pictures.write(picture, path)
    assert "Watts" in path.read_text(encoding="utf-8") or title == "Beds"


def test_every_control_has_a_name(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    for kind in (QSlider, QComboBox, NumberField, ChartView, QTableView):
        for widget in bench.page.findChildren(kind):
            assert widget.accessibleName(), widget.objectName()


def test_nothing_is_wider_than_the_smallest_window(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.window.resize(1024, 700)
    bench.settle()
    inner = bench.page._scroll.widget()
    assert inner is not None
    assert inner.width() <= bench.page._scroll.viewport().width()
    for label in bench.page.findChildren(QLabel):
        if label.isVisible() and not label.wordWrap():
            assert label.width() >= label.sizeHint().width(), label.text()


def test_another_study_leaves_nothing_behind(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.do("action_new")
    bench.drop(write_log(tmp_path / "Cedar.csv", runs=1))
    bench.window.show_page("Bed")
    bench.settle()
    assert bench.text("sentence").startswith("No hold test yet")
    assert not bench.widget(NumberField, f"bed_area_{bench.study.machines[0].id}").text()


def test_the_demo_answers(bench: Bench) -> None:
    bench.do("action_demo")
    bench.window.show_page("Bed")
    bench.settle()
    said = bench.text("sentence")
    assert said.startswith("For its size the bed of Alder loses")
    assert "W/dm²" in said
    assert "Birch: a line of 0.3" in bench.text("fit_sentences")
    assert bench.text("bed_supply_sentence").startswith("Mains (Hazel) against low voltage")
    assert "on Alder:" in bench.text("saving_sentence")
