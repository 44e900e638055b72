"""How long it takes to line up and paint 50 runs of an hour at one second."""

import time
from itertools import cycle

import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from core.figures.line_up import line_up_figure
from core.formatting import POINT
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.results.values import Comparison
from core.study import Study
from gui.charts.line_up_view import LineUpView
from tests.core.lined_up import repeats

RUNS = tuple(
    run
    for place in range(10)
    for run in repeats(place, 5, f"machine {place}", place, after_s=3500, base_w=20 + place)
)
COMPARISON = Comparison("part", "warm-up and processing", (), (), (), (), "", "")
CHOICES = {
    "over each other": LineUp(),
    "as logged": LineUp(smooth_s=0.0),
    "machines": LineUp(arrangement="machine under machine"),
    "runs": LineUp(arrangement="run under run"),
    "difference": LineUp(arrangement="difference"),
}


def nothing(run_id: str, key: str) -> tuple[str, ...]:
    return ()


# time of this process: on a busy computer the wall clock measures the others
@pytest.mark.benchmark(timer=time.process_time)
@pytest.mark.parametrize("name", CHOICES)
def test_50_runs_of_an_hour_are_painted_anew(benchmark: BenchmarkFixture, qtbot: QtBot, name: str) -> None:
    view = LineUpView("line_up", POINT)
    qtbot.addWidget(view)
    choices, study = CHOICES[name], Study("s")
    said = answer(RUNS, COMPARISON, choices)
    views = cycle([(0.0, 3500.0), (10.0, 3510.0)])

    def look_and_paint() -> None:
        from attrs import evolve

        figure = line_up_figure(RUNS, evolve(choices, view=next(views)), said, study)
        view.show_figure(figure, nothing)
        view.resize(1000, max(700, view.minimumHeight()))
        view.grab()

    look_and_paint()
    benchmark(look_and_paint)
    assert benchmark.stats.stats.min < 0.1
