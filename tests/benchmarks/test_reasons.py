"""How long the views take that say why machines differ: like for like, properties, loads."""

from collections.abc import Callable, Iterator
from itertools import cycle
from pathlib import Path

import pytest
from attrs import evolve
from PySide6.QtWidgets import QApplication, QWidget
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from core import edits
from core.results.like_for_like import given, like_for_like
from core.study import Study
from gui.pages.compare import ComparePage
from gui.pages.loads import LoadsPage
from tests.comparisons import make
from tests.core.stairs import staircase, study_with
from tests.gui.driver import Driver
from tests.screens.studies import twelve_machines

MOST_S, MOST_STEP_S = 0.1, 0.033


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    made = Driver(qtbot, tmp_path / "window")
    made.drop(*twelve_machines(tmp_path))
    study = edits.set_bed_c(made.study, 60.0).study
    study = edits.add_property_column(study, "Age (years)", "number").study
    for i, machine in enumerate(study.machines):
        study = edits.set_property(study, machine.id, "Age (years)", 0.5 * ((5 * i) % 12)).study
    made.session.apply(edits.Edit(study, "Fill"))
    made.window.show_page("Compare")
    made.settle()
    try:
        yield made
    finally:
        made.close()


def compare_page(bench: Driver, view: int) -> ComparePage:
    page = bench.window.page
    assert isinstance(page, ComparePage)
    page.view.setCurrentIndex(view)
    bench.settle()
    return page


def drawn(page: QWidget) -> Callable[[], None]:
    sizes = cycle([(1280, 860), (1300, 880)])

    def draw() -> None:
        page.resize(*next(sizes))
        page.grab()

    return draw


@pytest.mark.parametrize("view", [1, 2])
def test_a_view_of_compare_is_drawn(benchmark: BenchmarkFixture, bench: Driver, view: int) -> None:
    draw = drawn(compare_page(bench, view))
    draw()
    benchmark(draw)
    # the fastest round: the others tell how busy the computer was
    assert benchmark.stats.stats.min < MOST_S


def test_another_property_is_shown(benchmark: BenchmarkFixture, bench: Driver) -> None:
    page = compare_page(bench, 2)
    places = cycle(range(page.properties.against.count()))

    def choose() -> None:
        place = next(places)
        page.properties.against.setCurrentIndex(place)
        page.properties.against.activated.emit(place)
        page.properties.chart.grab()
        QApplication.processEvents()

    choose()
    benchmark(choose)
    assert benchmark.stats.stats.min < MOST_STEP_S


def test_like_for_like_at_other_temperatures(benchmark: BenchmarkFixture) -> None:
    """With the search for the temperature at which two change places; none of it remembered."""
    study, comparison = make(12, 4)
    from_ = given(evolve(study, bed_c=60.0, room_c=20.0), comparison, {})
    temperatures = cycle([40.0 + 0.1 * i for i in range(400)])
    benchmark(lambda: like_for_like(from_, next(temperatures)))
    assert benchmark.stats.stats.min < 0.05


def test_the_loads_page_is_drawn(benchmark: BenchmarkFixture, qtbot: QtBot, tmp_path: Path) -> None:
    made = Driver(qtbot, tmp_path / "window")
    try:
        made.do("action_demo")
        made.window.show_page("Loads")
        made.settle()
        page = made.window.page
        assert isinstance(page, LoadsPage)
        made.wait_until(lambda: page.rows.isVisible() and page.stairs.figure is not None)
        draw = drawn(page)
        draw()
        benchmark(draw)
        assert benchmark.stats.stats.min < MOST_S
    finally:
        made.close()


def test_a_long_test_is_read(benchmark: BenchmarkFixture) -> None:
    """An hour of rows of a second with a dozen loads."""
    from core.results.loads import forget, loads

    moves_w = [3.0, 1.0, 2.0, 5.0, -3.0, 4.0, -1.0, 2.5, -2.0, 6.0, -5.0, 1.5]
    study, traces = study_with(staircase(moves_w, each_s=280))

    def read(study: Study = study) -> None:
        forget()
        loads(study, traces)

    benchmark(read)
    assert benchmark.stats.stats.min < MOST_S
