"""Figures of every kind for any number of machines, made up for tests of published pictures."""

import numpy as np
from attrs import evolve

from core.costs.weeks import Block
from core.figures.calendar_values import CalendarFigure, CalendarRow
from core.figures.compare import comparison_figure
from core.figures.curve_values import CurvesFigure, NamedScale, Rest, Spot, Trend
from core.figures.energy_time import energy_time_figure
from core.figures.line_up import line_up_figure
from core.figures.line_up_values import Scale
from core.figures.values import Figure
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.results.values import Comparison
from core.study import Study
from tests.comparisons import NAMES, make
from tests.core.lined_up import repeats

#: two names that are too long for any column, with and without a place to break
LONG = ("The machine by the workshop door, second shelf from below", "Hochtemperaturwerkzeugmaschine")
KINDS = (
    "comparison",
    "energy against time",
    "line-up",
    "line-up by machine",
    "curves to the border",
    "curves that end apart",
    "fit with residuals",
    "steps",
    "weeks",
)
CONDITIONS = "Warm-up and processing, bed at 60 °C, 4 runs a machine; one run of Birch left out. " * 2


def names_of(machines: int) -> list[str]:
    """Names, every ninth of them long."""
    plain = [
        NAMES[i % len(NAMES)] + (f" {i // len(NAMES) + 1}" if i >= len(NAMES) else "")
        for i in range(machines)
    ]
    return [LONG[i % 2] + f" {i}" if i % 9 == 1 else name for i, name in enumerate(plain)]


def study_of(machines: int) -> tuple[Study, Comparison]:
    """A study and its comparison, some names long."""
    study, comparison = make(machines, 1 if machines == 1 else 4)
    names = names_of(machines)
    results = tuple(evolve(m, name=names[m.slot]) for m in comparison.machines)
    renamed = tuple(evolve(m, name=names[m.slot]) for m in study.machines)
    return evolve(study, machines=renamed), evolve(comparison, machines=results)


def figure_of(kind: str, machines: int) -> Figure:
    """A figure of a kind with so many machines."""
    study, comparison = study_of(machines)
    if kind == "comparison":
        return comparison_figure(comparison, study)
    if kind == "energy against time":
        return energy_time_figure(comparison, study)
    if kind.startswith("line-up"):
        return _line_up(machines, "machine under machine" if kind.endswith("machine") else "over each other")
    if kind == "weeks":
        return _weeks(machines)
    if kind == "steps":
        return _steps()
    return _curves(kind, machines)


def _line_up(machines: int, arrangement: str) -> Figure:
    names = names_of(machines)
    runs = tuple(
        run
        for i in range(machines)
        for run in repeats(i, 2, names[i], i, after_s=700 + 40 * i, base_w=20 + 2 * i)
    )
    choices = LineUp(arrangement=arrangement, shown="power")  # type: ignore[arg-type]
    empty = Comparison("part", "warm-up and processing", (), (), (), (), "", "")
    return line_up_figure(runs, choices, answer(runs, empty, choices), Study("s", name="A bench"))


def _curves(kind: str, machines: int) -> CurvesFigure:
    rng = np.random.default_rng(machines)
    x = np.linspace(0.0, 24.0, 30)
    trends, spots = [], []
    for i, name in enumerate(names_of(machines)):
        y = 0.05 + 0.002 * i + 0.01 * np.sin(x / 4) + 0.0004 * rng.standard_normal()
        end = 30 if kind == "curves to the border" else 30 - (i % 12)
        trends.append(Trend(tuple(x[:end]), tuple(y[:end]), i, name))
        spots.append(Spot(float(x[end // 2]), float(y[end // 2]), 0.002, i, f"r{i}", f"m{i}", "key"))
    rest = None
    if kind == "fit with residuals":
        trends, spots = (
            trends[:1],
            [evolve(s, name=n) for s, n in zip(spots, names_of(machines), strict=True)],
        )
        rest = Rest(
            Scale("Watts over the line, Alder", "W", -1.0, 1.0), tuple(evolve(s, y=0.2) for s in spots[:4])
        )
    return CurvesFigure(
        headline="A print of 10 h on Alder costs least when it starts at 22:00: 0.079 €, not 0.103 €.",
        conditions=CONDITIONS.strip(),
        source="Hose clip study (invented data)",
        x=Scale("Start of the print, local time", "h", 0.0, 24.0),
        y=Scale("Electricity of the print", "€", 0.0, 0.15),
        trends=tuple(trends),
        spots=tuple(spots),
        rest=rest,
        note="marks: the cheapest start",
    )


def _steps() -> CurvesFigure:
    names = ("Measured", "Bed", "Room", "Warm start", "Like for like")
    trends = tuple(
        Trend(
            (i - 0.36, i + 0.36), (20.0 + i, 20.0 + i), 0, "+0.101 ± 0.018", (0.0, 0.0), (20.0 + i, 20.0 + i)
        )
        for i in range(len(names))
    )
    return CurvesFigure(
        headline="Alder: from measured to like for like",
        conditions=CONDITIONS.strip(),
        source="Hose clip study (invented data)",
        x=NamedScale("From measured to like for like", "", -0.6, 4.6, names=names),
        y=Scale("Energy per part, Alder", "Wh", 0.0, 30.0),
        trends=trends,
    )


def _weeks(machines: int) -> CalendarFigure:
    blocks = (
        Block("standby", 3.0, 20.0),
        Block("warm-up", 20.0, 21.5),
        Block("processing", 21.5, 40.0),
    )
    return CalendarFigure(
        headline="Left on all year and doing nothing, the machines use 160 ± 11 kWh: 49.0 ± 3.5 €.",
        conditions=CONDITIONS.strip(),
        source="Hose clip study (invented data)",
        rows=tuple(
            CalendarRow(f"m{i}", name, i, "12 Oct", blocks) for i, name in enumerate(names_of(machines))
        ),
        legend=(
            ("off", "off"),
            ("standby", "standby"),
            ("cooling", "cooling"),
            ("warm-up", "warm-up"),
            ("processing", "processing"),
        ),
        facts=(),
    )
