"""How long the Compare page takes to show another answer and to be painted again."""

from collections.abc import Iterator
from itertools import cycle
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from gui.jobs import Jobs
from gui.pages.compare import ComparePage
from gui.session import Session
from tests.comparisons import make


@pytest.fixture
def page(qtbot: QtBot, tmp_path: Path) -> Iterator[ComparePage]:
    jobs = Jobs()
    session = Session(jobs, tmp_path)
    page = ComparePage(session)
    qtbot.addWidget(page)
    page.resize(1280, 860)
    with qtbot.waitExposed(page):
        page.show()
    yield page
    session.close()
    jobs.close()


def test_a_changed_answer_of_12_machines_of_10_runs(benchmark: BenchmarkFixture, page: ComparePage) -> None:
    answers = cycle([make(12, 10, seed=1), make(12, 10, seed=2)])

    def show_and_paint() -> None:
        page.show_study(*next(answers))
        page.grab()

    show_and_paint()
    benchmark(show_and_paint)
    # the fastest round: the others tell how busy the computer was
    assert benchmark.stats.stats.min < 0.05
