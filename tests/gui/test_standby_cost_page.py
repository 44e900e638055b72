"""The Standby and cost page, used as a person does: by typing, choosing and reading."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from gui.charts.scene import Target
from gui.charts.view import ChartView
from gui.pages.standby_cost import StandbyCostPage
from gui.widgets.found_panel import FoundPanel
from tests.gui.driver import Driver, opened
from tests.screens.studies import write_log

PAGE = "Standby and cost"


@pytest.fixture
def user(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path) as driver:
        driver.drop(
            write_log(tmp_path / "Alder.csv", 0, runs=2), write_log(tmp_path / "Birch.csv", 3, runs=2)
        )
        turn(driver)
        yield driver


def turn(user: Driver) -> None:
    """Turn to the page and wait for its answer."""
    user.window.show_page(PAGE)
    settle(user)


def settle(user: Driver) -> None:
    """The page works in the pool too, after everybody else."""
    for _ in range(3):
        user.settle()


def page(user: Driver) -> StandbyCostPage:
    return user.widget(StandbyCostPage, "standby_cost_page")


def choose(user: Driver, name: str, text: str) -> None:
    combo = user.widget(QComboBox, name)
    combo.setCurrentIndex(combo.findText(text))
    combo.activated.emit(combo.currentIndex())
    settle(user)


def write(user: Driver, name: str, text: str) -> None:
    user.write(name, text)
    settle(user)


def said(user: Driver) -> str:
    return page(user).top.sentence.text()


def priced(user: Driver) -> None:
    write(user, "currency", "EUR")
    write(user, "price_per_kwh", "0,30")


def test_without_a_price_it_says_kilowatt_hours_alone(user: Driver) -> None:
    assert said(user).startswith("Left on all year and doing nothing, the two machines use")
    assert "€" not in said(user)
    assert "No price is set." in page(user).top.conditions.text()
    assert page(user).standby.figure is not None
    assert "0.50 W standby" in " ".join(label.text() for label in page(user).findChildren(QLabel))


def test_a_price_that_is_typed_is_in_the_sentence_and_can_be_undone(user: Driver) -> None:
    priced(user)
    tariff = user.study.costs.tariff
    assert (tariff.currency, tariff.price_per_kwh) == ("EUR", 0.30)
    assert "EUR at 0.30 EUR/kWh" in said(user)
    write(user, "price_per_kwh", "0.40")
    assert "at 0.40 EUR/kWh" in said(user)
    user.do("action_undo")
    settle(user)
    assert "at 0.30 EUR/kWh" in said(user)
    assert page(user).form.field("price_per_kwh").text() == "0.30"


def test_a_number_that_is_none_is_refused_in_place(user: Driver) -> None:
    write(user, "price_per_kwh", "a lot")
    assert "a lot" in user.text("cost_why_not")
    assert user.study.costs.tariff.price_per_kwh is None


def test_bands_of_the_day(user: Driver) -> None:
    priced(user)
    choose(user, "priced_by", "by time of day")
    user.click("add_band")
    settle(user)
    write(user, "band_0_name", "small hours")
    write(user, "band_0_price", "0.10")
    write(user, "band_0_start", "23")
    write(user, "band_0_end", "6:30")
    choose(user, "band_0_days", "Mon to Fri")
    (band,) = user.study.costs.tariff.bands
    assert (band.name, band.price_per_kwh, band.start_min, band.end_min) == ("small hours", 0.10, 1380, 390)
    assert band.weekdays == (0, 1, 2, 3, 4)
    assert "on average" in said(user)
    assert page(user).starts.isVisible()
    write(user, "band_0_end", "25:00")
    assert "no time of day" in user.text("cost_why_not")
    write(user, "price_zone", "Middle/Earth")
    assert "Middle/Earth" in user.text("cost_why_not")
    write(user, "price_zone", "Europe/Lisbon")
    assert user.study.costs.tariff.zone == "Europe/Lisbon"
    user.click("band_0_remove")
    settle(user)
    assert user.study.costs.tariff.bands == ()
    assert not page(user).starts.isVisible()


def test_prices_from_a_file(user: Driver, tmp_path: Path) -> None:
    write(user, "currency", "EUR")
    rows = [f"2026-09-{21 + i // 24:02} {i % 24:02}:00,{100 + 10 * (i % 24)}" for i in range(72)]
    path = tmp_path / "spot.csv"
    path.write_text("\n".join(["hour,€/MWh", *rows]) + "\n", encoding="utf-8")
    choose(user, "priced_by", "a list by date")
    user.choose_file(path)
    settle(user)
    assert user.study.costs.tariff.priced_by == "list"
    assert user.study.price_lists[0].prices_per_kwh[:2] == (0.1, 0.11)
    assert "at 0.215 EUR/kWh on average" in said(user)
    assert user.widget(QComboBox, "price_list").currentText() == "spot.csv"


def test_a_file_that_holds_no_prices_is_told_and_changes_nothing(user: Driver, tmp_path: Path) -> None:
    path = tmp_path / "letter.csv"
    path.write_text("dear customer,\nprices rise\n", encoding="utf-8")
    choose(user, "priced_by", "a list by date")
    user.choose_file(path)
    settle(user)
    assert user.study.price_lists == ()
    assert user.session.problems[0].code == "prices.none"
    assert user.widget(QComboBox, "priced_by").currentText() == "one price"


def test_switching_off_follows_the_minutes(user: Driver) -> None:
    assert "no rest in the logs lasts 60 min" in said(user)
    write(user, "off_after_min", "5")
    assert "switching off after 5 min idle saves" in said(user)
    assert "stops its cooling fan" in user.text("hot_caution")
    write(user, "off_after_min", "45")
    assert "no rest in the logs lasts 90 min" in said(user)


def test_machines_of_a_kind_and_the_price_of_a_print(user: Driver) -> None:
    priced(user)
    choose(user, "cost_machine", "Birch")
    write(user, "count", "3")
    write(user, "price", "400")
    write(user, "life_hours", "4000")
    write(user, "material_g", "100")
    write(user, "material_per_kg", "20")
    write(user, "print_hours", "12")
    assert "the four machines use" in said(user)
    result = page(user).result
    assert result is not None
    price = result.machines[1].price
    assert price.material == 2.0
    assert price.purchase == pytest.approx(1.2)
    assert "12 h" in " ".join(label.text() for label in page(user).findChildren(QLabel))
    write(user, "count", "2.5")
    assert "whole number" in user.text("cost_why_not")
    assert user.study.costs.of(user.study.machines[1].id).count == 3


def test_each_number_says_how_it_was_found(user: Driver) -> None:
    priced(user)
    user.click("cost_how_found")
    panel = page(user).findChild(FoundPanel)
    assert panel is not None
    assert panel.isVisible()
    assert panel.explanation is not None
    assert "standby of a year" in panel.explanation.title
    for view in (page(user).standby, page(user).prints):
        scene = view.scene()
        assert scene is not None
        assert scene.values
        for place in scene.values:
            view.asked.emit(place.machine_id, "", place.key)
            assert panel.explanation is not None
            assert panel.explanation.value_text != "not known", place


def test_weeks_of_one_machine(user: Driver) -> None:
    assert [row.name for row in page(user).calendar.figure.rows] == ["Alder", "Birch"]  # type: ignore[union-attr]  # a calendar
    choose(user, "week_machine", "Birch")
    assert [row.name for row in page(user).calendar.figure.rows] == ["Birch"]  # type: ignore[union-attr]  # a calendar


def test_copying_gives_the_picture_and_the_numbers(user: Driver) -> None:
    user.click("cost_copy")
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert "Alder" in data.text()


def test_a_picture_of_every_chart_is_saved(user: Driver, tmp_path: Path) -> None:
    priced(user)
    for title in ("Standby", "Switching off", "Weeks", "Print"):
        picture = page(user).pictures.picture(title, "wide")
        assert picture is not None
        path = tmp_path / f"{title}.png"
        page(user).pictures.write(picture, path)
        image = QImage(str(path))
        assert (image.width(), image.height()) == (1920, 1080)
        assert "Alder" in image.text("Source")


def test_typed_readings_alone_price_a_print(qtbot: QtBot, tmp_path: Path) -> None:
    from core import edits

    with opened(qtbot, tmp_path) as driver:
        study = edits.add_machine(driver.study, "Alder").study
        typed = edits.add_typed(study, study.machines[0].id, 120.0, seconds=3600.0)
        driver.session.apply(edits.Edit(edits.set_price(typed.study, 0.30).study, "Type"))
        turn(driver)
        assert "standby is not known" in said(driver) or "Nothing to price" in said(driver)
        result = page(driver).result
        assert result is not None
        assert result.machines[0].printed is not None
        assert result.machines[0].printed.energy.value == pytest.approx(1200.0)


@pytest.mark.parametrize("size", [(1024, 700), (1440, 900)])
def test_nothing_is_cut_off(user: Driver, size: tuple[int, int]) -> None:
    priced(user)
    write(user, "failed_percent", "5")
    user.window.resize(*size)
    settle(user)
    for card in (page(user).hours, page(user).parts):
        header = card.view.horizontalHeader()
        user.wait_until(lambda h=header, v=card.view: h.length() <= v.viewport().width())  # type: ignore[misc]  # defaults
    for view in (page(user).standby, page(user).prints):
        scene = view.scene()
        assert scene is not None
        for text in scene.texts:
            assert text.box.x >= -0.5
            assert text.box.right <= view.width() + 0.5


def test_every_control_has_a_name_for_a_screen_reader(user: Driver) -> None:
    choose(user, "priced_by", "by time of day")
    user.click("add_band")
    settle(user)
    for widget in page(user).findChildren(QWidget):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.isVisible():
            text = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
            assert widget.accessibleName() or text, widget.objectName()


def pointed(view: ChartView, of: Callable[[Target], bool]) -> tuple[str, ...]:
    """Scroll to the first fitting place, put the pointer there, and read what is read out."""
    scene = view.scene()
    assert scene is not None
    target = next(t for t in scene.targets if of(t))
    at = QPoint(round(target.x), round(target.y))
    scroll = next(w for w in view.window().findChildren(QScrollArea, "standby_cost_scroll"))
    inner = scroll.widget()
    assert inner is not None
    in_page = view.mapTo(inner, at)
    scroll.ensureVisible(in_page.x(), in_page.y())
    QTest.mouseMove(view, at)
    return view.readout_lines()


def test_every_chart_is_read_out_under_the_pointer(user: Driver) -> None:
    priced(user)
    choose(user, "priced_by", "by time of day")
    user.click("add_band")
    settle(user)
    write(user, "band_0_price", "0.10")
    shown = page(user)
    result = shown.result
    assert result is not None
    alder = next(m for m in result.machines if m.name == "Alder")
    lines = pointed(shown.standby, lambda t: t.machine_id == alder.machine_id and t.key == "standby_mean_w")
    assert alder.standby is not None
    assert lines[0] == "Alder"
    assert lines[1].startswith(f"Standby power: {alder.standby.power_w:.2f}")
    assert lines[1].endswith(" W")
    assert "over" in lines[2]
    lines = pointed(shown.prints, lambda t: t.machine_id == alder.machine_id and t.key == "print_kwh")
    assert lines[1].startswith("Energy of the print: ")
    assert lines[1].endswith(" kWh")
    lines = pointed(shown.starts, lambda t: bool(t.lines) and t.lines[0] == "Alder" and "12:00" in t.lines[1])
    assert alder.starts is not None
    at_noon = float(alder.starts.amounts[alder.starts.hours.tolist().index(12.0)])
    assert lines[1] == f"start at 12:00: {at_noon:.3f} EUR"
    lines = pointed(shown.saving, lambda t: bool(t.lines) and "off after" in t.lines[1])
    assert lines[0] in ("Alder", "Birch")
    assert lines[1].endswith("% saved")
    # it is no run: a click selects nothing
    assert user.session.selected is None
