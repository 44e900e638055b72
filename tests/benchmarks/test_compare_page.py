"""How long the Compare page takes to show another answer and to be painted again."""

from collections.abc import Iterator
from itertools import cycle
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from gui.jobs import Jobs
from gui.pages.compare import ComparePage
from gui.session import Session
from tests.comparisons import make


@pytest.fixture
def session(tmp_path: Path) -> Iterator[Session]:
    jobs = Jobs()
    session = Session(jobs, tmp_path)
    yield session
    session.close()
    jobs.close()


@pytest.fixture
def page(qtbot: QtBot, session: Session) -> ComparePage:
    page = ComparePage(session)
    qtbot.addWidget(page)
    page.resize(1280, 860)
    with qtbot.waitExposed(page):
        page.show()
    return page


def test_a_changed_answer_of_12_machines_of_10_runs(benchmark: BenchmarkFixture, page: ComparePage) -> None:
    answers = cycle([make(12, 10, seed=1), make(12, 10, seed=2)])

    def show_and_paint() -> None:
        page.show_study(*next(answers))
        page.grab()

    show_and_paint()
    benchmark(show_and_paint)
    # the fastest round: the others tell how busy the computer was
    assert benchmark.stats.stats.min < 0.05


@pytest.mark.parametrize(("machines", "most_s"), [(5, 0.05), (200, 0.2)])
def test_the_first_answer(
    benchmark: BenchmarkFixture, qtbot: QtBot, session: Session, machines: int, most_s: float
) -> None:
    answer = make(machines, 4)

    def empty() -> tuple[tuple[ComparePage], dict[str, object]]:
        fresh = ComparePage(session)
        qtbot.addWidget(fresh)
        fresh.resize(1280, 860)
        with qtbot.waitExposed(fresh):
            fresh.show()
        return (fresh,), {}

    def show_and_paint(fresh: ComparePage) -> None:
        fresh.show_study(*answer)
        for _ in range(3):  # laid out, painted, and painted again where the layout has moved it
            QApplication.processEvents()

    benchmark.pedantic(show_and_paint, setup=empty, rounds=6)
    assert benchmark.stats.stats.min < most_s
