"""The Line-up page, read as text: its answer, how its runs are arranged, what is copied and saved."""

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QPushButton,
)
from pytestqt.qtbot import QtBot

from core import edits
from gui.pages.line_up import LineUpPage
from tests.gui import line_up_bench
from tests.gui.driver import opened
from tests.gui.line_up_bench import OFF, ON, Bench

# pytest looks for a fixture by its name in the file of the test
logs, bench = line_up_bench.logs, line_up_bench.bench


def test_the_page_stands_between_logs_and_compare(bench: Bench) -> None:
    titles = bench.driver.titles
    assert titles.index("Logs") < titles.index("Line-up") < titles.index("Compare")


def test_the_answer_names_both_machines_with_their_watts(bench: Bench) -> None:
    said = bench.page.top.sentence.text()
    assert "Alder" in said
    assert "Rowan then draws less (" in said
    assert "but for longer (24 against 14 min)" in said
    assert bench.page.top.conditions.text().startswith("Warm-up and processing; 7 runs of 2 machines")
    assert list(bench.figure.run_ids) == bench.runs
    assert bench.figure.headline == said


def test_every_run_lies_over_the_others_with_bands_and_states(bench: Bench) -> None:
    power, energy = (row[0] for row in bench.figure.rows)
    assert (power.y.unit, energy.y.unit) == ("W", "Wh")
    assert {c.run_id for c in power.curves} == {*bench.runs, ""}
    assert len(power.ribbons) == 2
    assert [state for state, _, _ in power.state_rows[0].spans] == ["warm-up", "processing"]
    comparison = bench.driver.session.comparison
    assert comparison is not None
    ends = {c.run_id: c.y[np.isfinite(c.y)][-1] for c in energy.curves}
    for run in (r for m in comparison.machines for r in m.included):
        assert run.energy_wh is not None
        assert ends[run.run_id] == pytest.approx(run.energy_wh, rel=0.02)


@pytest.mark.parametrize(("text", "rows"), [("Machine", 2), ("Run under", 7), ("Difference", 2), ("Over", 2)])
def test_runs_are_arranged_as_chosen(bench: Bench, text: str, rows: int) -> None:
    bench.choose("arrangement", text)
    assert len(bench.figure.rows) == rows
    bench.page.grab()


def test_a_difference_is_from_the_run_that_is_chosen(bench: Bench) -> None:
    bench.choose("arrangement", "Difference")
    combo = bench.driver.widget(QComboBox, "reference")
    reference = combo.itemData(5)
    combo.setCurrentIndex(5)
    combo.activated.emit(5)
    bench.settle()
    (power,), (energy,) = bench.figure.rows
    assert {c.run_id for c in power.curves} == {*bench.runs} - {reference}
    assert power.y.title == f"Power, more than {combo.itemText(5)}"
    assert energy.y.low < 0 < energy.y.high


@pytest.mark.parametrize(("text", "unit"), [("Share", "%"), ("End of", "min"), ("End", "min")])
def test_runs_are_lined_up_as_chosen(bench: Bench, text: str, unit: str) -> None:
    bench.choose("anchor", text)
    assert bench.figure.x.unit == unit
    assert bench.figure.choices.anchor in bench.page.top.conditions.text()


def test_smoothing_is_shown_and_can_be_switched_off(bench: Bench) -> None:
    assert "moving mean over" in bench.page.top.conditions.text()
    bench.choose("smooth", "Not")
    assert "power as logged" in bench.page.top.conditions.text()
    curve = bench.figure.rows[0][0].curves[0]
    assert float(np.nanmax(curve.y)) > 180  # the bed's pulses are there
    assert bench.figure.is_as_logged


def test_a_run_is_left_out_from_here_with_its_reason(bench: Bench) -> None:
    run_id = bench.runs[1]
    bench.driver.session.select(run_id)
    QTest.keyClick(bench.page.chart, Qt.Key.Key_Delete)
    bench.settle()
    bench.driver.write("left_out_reason", "the door was open")
    bench.settle()
    run = bench.driver.study.run(run_id)
    assert (run.included, run.why_left_out) == (False, "the door was open")
    assert run_id not in bench.figure.run_ids
    assert "(not counted)" in bench.item(run_id).text(0)
    bench.tick(run_id, ON)
    assert run_id in bench.figure.run_ids
    curve = next(c for c in bench.figure.rows[0][0].curves if c.run_id == run_id)
    assert not curve.included
    assert curve.name == "Alder, run 2 (not counted)"
    bench.driver.do("action_undo")
    bench.settle()
    assert bench.driver.study.run(run_id).included


def test_the_picture_and_its_numbers_are_copied(bench: Bench) -> None:
    bench.driver.click("copy")
    bench.settle()
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert "Alder (4 runs): warm-up" in data.text()
    bench.drag(bench.point(5.0), bench.point(8.0))
    bench.driver.click("copy")
    bench.settle()
    assert "Rowan, mean of 3 runs" in QGuiApplication.clipboard().mimeData().text()


def test_the_picture_is_saved_with_its_numbers(bench: Bench, tmp_path: Path) -> None:
    picture = bench.page.pictures.picture("Line-up", "wide")
    assert picture is not None
    for name in ("line-up.png", "line-up.svg"):
        bench.page.pictures.write(picture, tmp_path / name)
    image = QImage(str(tmp_path / "line-up.png"))
    assert (image.width(), image.height()) == (1920, 1080)
    assert "Rowan (3 runs): warm-up" in image.text("Source")
    assert "Rowan" in (tmp_path / "line-up.svg").read_text(encoding="utf-8")


def test_an_odd_run_is_pointed_out_where_it_leaves(qtbot: QtBot, tmp_path: Path, logs: list[Path]) -> None:
    header, *rows = logs[0].read_text(encoding="utf-8").splitlines()
    runs = 300 + 60 + 14 * 30
    first = 2 * runs + 300 + 60 + 100  # in the third run
    for i in range(first, first + 150):
        stamp, watts = rows[i].split(",")
        rows[i] = f"{stamp},{float(watts) + 30:.1f}"
    odd = tmp_path / "Alder.csv"
    odd.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    with opened(qtbot, tmp_path / "place") as driver:
        bench = Bench(driver, [odd])
        button = driver.widget(QPushButton, "leaves_button")
        assert button.text() == "1 of 4 runs leaves its band ▾"
        driver.click("leaves_button")
        (told,) = bench.page.leaves.texts
        assert told.startswith("Alder, run 3 leaves its band from ")
        assert told.endswith(" Wh more")
        assert "◂ leaves" in bench.item(bench.runs[2]).text(0)
        (excursion,) = bench.figure.rows[0][0].excursions
        assert excursion.low < 200 * 2 / 60 + 2 < excursion.high
        qtbot.mouseClick(bench.page.leaves._lines[0], Qt.MouseButton.LeftButton)
        assert driver.session.selected == bench.runs[2]


def test_of_a_farm_only_some_runs_are_shown_until_others_are_ticked(
    bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("gui.pages.line_up.MOST_SHOWN", 3)
    bench.driver.window.show_page("Compare")
    bench.settle()
    bench.driver.window.show_page("Line-up")
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs[:3]
    assert "4 more runs can be ticked in the list." in bench.page.top.conditions.text()
    assert bench.page.picker.ticked == set(bench.runs[:3])
    bench.tick(bench.runs[5], ON)
    assert set(bench.figure.run_ids) == {*bench.runs[:3], bench.runs[5]}
    bench.page._on_chosen(None)
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs[:3]


def test_without_a_run_the_page_says_what_to_do(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "place") as driver:
        study = edits.add_machine(driver.study, "Alder").study
        typed = edits.add_typed(study, study.machines[0].id, 21.0, seconds=2000)
        driver.session.apply(edits.Edit(typed.study, "Type"))
        driver.settle()
        driver.window.show_page("Line-up")
        driver.settle()
        page = driver.window.page
        assert isinstance(page, LineUpPage)
        assert page.top.sentence.text() == "There is nothing to line up"
        assert "Drop a meter log" in page.top.conditions.text()
        assert not page.chart.isVisible()


def test_a_log_without_a_run_leads_to_the_logs_page(qtbot: QtBot, tmp_path: Path) -> None:
    idle = tmp_path / "Alder.csv"
    rows = [f"2026-03-02T08:{m:02d}:{s:02d}Z,4.{s % 3}" for m in range(40) for s in range(0, 60, 5)]
    idle.write_text("\n".join(["time,power (W)", *rows]) + "\n", encoding="utf-8")
    with opened(qtbot, tmp_path / "place") as driver:
        driver.drop(idle)
        driver.window.show_page("Line-up")
        driver.settle()
        page = driver.window.page
        assert isinstance(page, LineUpPage)
        assert page.top.sentence.text() == "No complete run of the part was found"
        assert "Logs page" in page.top.conditions.text()


def test_the_page_says_how_it_is_read(bench: Bench) -> None:
    bench.driver.click("explain_line_up")
    bench.settle()
    dialog = bench.page.findChild(QDialog)
    assert dialog is not None
    assert dialog.windowTitle() == "Line-up"
    dialog.close()


def test_another_study_starts_with_nothing_chosen(bench: Bench) -> None:
    bench.drag(bench.point(5.0), bench.point(8.0))
    bench.tick(bench.runs[0], OFF)
    bench.driver.do("action_new")
    bench.settle()
    assert bench.page.chart.line_up is None or not bench.page.chart.isVisible()
    assert bench.page._choices.span is None


def test_everything_is_redrawn_in_the_dark(bench: Bench) -> None:
    light = bench.page.chart.grab().toImage()
    bench.driver.appearance.set_theme("dark")
    bench.settle()
    dark = bench.page.chart.grab().toImage()
    assert light.pixelColor(3, 3).lightness() > 200 > 80 > dark.pixelColor(3, 3).lightness()
    bench.driver.appearance.set_theme("light")
