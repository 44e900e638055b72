"""How long a step of a slider on the Bed page takes, with a dozen machines, and the page's first showing."""

from collections.abc import Iterator
from itertools import cycle
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from core import edits
from core.traces import Trace
from gui.jobs import Jobs
from gui.pages.bed import BedPage
from gui.session import Session
from tests.core.held_beds import Bed
from tests.core.hold_studies import held_study, with_areas

MACHINES = 12


class _Opened(Session):
    """A session whose logs have been read."""

    def __init__(self, jobs: Jobs, folder: Path, traces: dict[str, Trace]) -> None:
        super().__init__(jobs, folder)
        self._read = traces

    @property
    def traces(self) -> dict[str, Trace]:
        return self._read


@pytest.fixture
def page(qtbot: QtBot, tmp_path: Path) -> Iterator[BedPage]:
    given = [(f"Machine {i}", Bed(slope_w_per_k=0.9 + 0.05 * i), (50.0, 60.0, 70.0)) for i in range(MACHINES)]
    study, traces = held_study(given, seconds=2400)
    study = with_areas(study, [5.0 + 0.1 * i for i in range(MACHINES)])
    jobs = Jobs()
    session = _Opened(jobs, tmp_path, traces)
    page = BedPage(session)
    qtbot.addWidget(page)
    page.resize(1280, 860)
    session.apply(edits.Edit(study, "Fill"))
    with qtbot.waitExposed(page):
        page.show()
    page.show_study(session.study, None)
    qtbot.waitUntil(lambda: page.cooler.isVisible())
    yield page
    session.close()
    jobs.close()


def test_a_step_of_a_slider(benchmark: BenchmarkFixture, page: BedPage) -> None:
    slider = page.cooler.sliders.later
    slider.setSliderDown(True)
    steps = cycle(range(41, 60))

    def step() -> None:
        slider.setSliderPosition(next(steps))
        page.cooler.grab()
        QApplication.processEvents()

    step()
    benchmark(step)
    slider.setSliderDown(False)
    # the fastest round: the others tell how busy the computer was
    assert benchmark.stats.stats.min < 0.033


def test_the_page_is_drawn(benchmark: BenchmarkFixture, page: BedPage) -> None:
    sizes = cycle([(1280, 860), (1300, 880)])

    def draw() -> None:
        page.resize(*next(sizes))
        page.grab()

    draw()
    benchmark(draw)
    assert benchmark.stats.stats.min < 0.1
