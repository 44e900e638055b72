"""The Bed page's charts and tables as values: they hold the results they show."""

import json
import re
from itertools import pairwise

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.beds.plate import Plate, loss
from core.beds.quantities import HALF_HOUR, HEAT_CAPACITY, TIMES_FLOOR, W_PER_DM2
from core.figures.bed import beds_figure, lines_told, watts_figure
from core.figures.cooler_bed import cooler_figure
from core.figures.curve_values import CurvesFigure
from core.figures.source import numbers_of
from core.figures.values import Measure
from core.formatting import NumberLocale
from core.results.bed_table import half_hour_note, holds_table, savings_table
from core.results.cooler_beds import plan_of, savings
from core.results.hold_readout import hold_readout
from core.results.holds import Beds, beds
from core.study import CoolerPlan, Study
from core.tables import to_csv
from tests.core.held_beds import Bed
from tests.core.hold_studies import ROOM_C, held_study, with_areas

Known = tuple[Study, Beds]


@pytest.fixture(scope="module")
def known() -> Known:
    given = [("Alder", Bed(), (45.0, 60.0, 75.0)), ("Birch", Bed(slope_w_per_k=1.1), (60.0,))]
    study, traces = held_study(given)
    study = with_areas(study, (5.0, 5.0), ("low voltage", "mains"))
    study = edits.add_machine(study, "Rowan").study
    return study, beds(study, traces)


def measure(known: Known, key: str) -> Measure:
    return next(m for m in beds_figure(known[1], known[0]).measures if m.key == key)


def test_beds_side_by_side_hold_the_results(known: Known) -> None:
    study, found = known
    figure = beds_figure(found, study)
    assert [row.name for row in figure.rows] == ["Alder", "Birch", "Rowan"]
    assert [row.runs_text for row in figure.rows] == ["low voltage", "mains", "no tests"]
    alder = measure(known, W_PER_DM2.key).cells[0]
    machine = found.machines[0]
    assert alder.mark is not None
    assert machine.w_per_dm2 is not None
    assert alder.mark.value == machine.w_per_dm2.value
    assert alder.against == pytest.approx(loss(Plate.square(5.0), 60, 20).w_per_dm2)
    nobody = measure(known, W_PER_DM2.key).cells[2]
    assert (nobody.mark, nobody.note) == (None, "no hold test")
    assert "Rowan" in nobody.reason


def test_each_hold_is_a_dot_where_it_means_the_same(known: Known) -> None:
    dots = measure(known, TIMES_FLOOR.key).cells[0].dots
    held = known[1].machines[0].held
    assert [d.value for d in dots] == pytest.approx([100 * (h.times_floor or 0) for h in held])
    assert len(measure(known, HEAT_CAPACITY.key).cells[0].dots) == 3
    assert measure(known, HALF_HOUR.key).cells[1].mark is not None


def test_no_area_is_asked_for(known: Known) -> None:
    study, found = known
    bare = evolve(found, machines=tuple(evolve(m, area_dm2=None, floor_w=None) for m in found.machines))
    keys = [m.key for m in beds_figure(bare, study).measures]
    assert W_PER_DM2.key not in keys
    half = evolve(found, machines=(found.machines[0], evolve(found.machines[1], area_dm2=None)))
    cell = next(m for m in beds_figure(half, study).measures if m.key == W_PER_DM2.key).cells[1]
    assert cell.note == "area?"


def watts(known: Known, machine: int = 0) -> CurvesFigure:
    study, found = known
    figure = watts_figure(found, study, found.machines[machine].machine_id)
    assert figure is not None
    return figure


def test_watts_against_the_difference(known: Known) -> None:
    figure = watts(known)
    assert sorted(round(s.x) for s in figure.spots) == [25, 40, 40, 55]
    line = figure.trends[0]
    fit = known[1].machines[0].model.fit  # type: ignore[union-attr]  # the fixture's has one
    assert fit is not None
    assert (line.x[0], line.x[-1]) == (fit.lowest_k, fit.highest_k)  # never beyond what was held
    for x, y, low, high in zip(line.x, line.y, line.low, line.high, strict=True):
        assert y == pytest.approx(fit.coefficients[0] + fit.coefficients[1] * x)
        assert low < y < high
    slope, half = re.findall(r"[\d.]+", figure.headline)[:2]
    assert abs(float(slope) - 1.35) < float(half)


def test_lines_in_words(known: Known) -> None:
    found = known[1]
    assert lines_told(found, found.machines[0].machine_id)[0] == watts(known).headline
    one_temperature, line = lines_told(found, found.machines[1].machine_id)
    assert one_temperature.startswith("Birch: one temperature held")
    assert line.startswith("Alder: a line of ")


def test_the_floor_rises_faster_than_in_proportion(known: Known) -> None:
    floor = watts(known).trends[-1]
    assert floor.name == "floor of Alder"
    per_k = [y / x for x, y in zip(floor.x[1:], floor.y[1:], strict=True)]
    assert all(a < b for a, b in pairwise(per_k))


def test_what_is_left_of_the_points(known: Known) -> None:
    figure = watts(known)
    assert figure.rest is not None
    fit = known[1].machines[0].model.fit  # type: ignore[union-attr]  # the fixture's has one
    assert fit is not None
    assert [s.y for s in figure.rest.spots] == pytest.approx(list(fit.residuals_w))
    # a machine with one temperature has no line of its own: another's is shown
    assert watts(known, 1).rest == figure.rest
    assert "a line needs two" in watts(known, 1).headline


def test_a_restless_hold_is_drawn_hollow_and_counts_for_nothing() -> None:
    study, traces = held_study([("Alder", Bed(), (45.0, 60.0, 75.0))])
    calm = beds(study, traces)
    key = study.logs[1].id
    restless = traces[key].power_w * np.linspace(0.5, 1.5, traces[key].power_w.size)
    odd = beds(study, {**traces, key: evolve(traces[key], power_w=restless, key="restless")})
    machine = odd.machines[0]
    assert [machine.counts(h) for h in machine.held] == [True, False, True]
    assert machine.model is not None
    assert len(machine.model.points) == 2
    figure = watts_figure(odd, study, machine.machine_id)
    assert figure is not None
    assert [s.is_counted for s in figure.spots] == [True, False, True]
    table = holds_table(odd)
    place = [c.key for c in table.columns].index("steady_after_min")
    assert table.rows[1][place] == "never"
    assert "w_per_dm2" not in [c.key for c in table.columns]  # no area is known here
    assert calm.machines[0].model is not None
    assert len(calm.machines[0].model.points) == 3


def test_nothing_held_no_chart(known: Known) -> None:
    study, found = known
    empty = evolve(found, machines=found.machines[2:])
    assert watts_figure(empty, study, "x") is None
    assert cooler_figure(savings(empty, plan_of(CoolerPlan(), empty)), study, "x") is None


@pytest.mark.parametrize(("print_s", "unit", "end"), [(36_000.0, "h", 10.0), (5400.0, "min", 90.0)])
def test_a_cooler_bed_over_time(known: Known, print_s: float, unit: str, end: float) -> None:
    study, found = known
    plan = plan_of(CoolerPlan(print_s=print_s), found)
    each = savings(found, plan)
    figure = cooler_figure(each, study, found.machines[0].machine_id)
    saving = each.of(found.machines[0].machine_id)
    assert figure is not None
    assert saving is not None
    assert figure.x.unit == unit
    assert figure.x.high == pytest.approx(end)
    assert figure.between is not None
    area = np.trapezoid(np.subtract(figure.between.top, figure.between.bottom), figure.between.x)
    hours = 1.0 if unit == "h" else 1 / 60
    assert area * hours == pytest.approx(saving.saved_wh.value, rel=1e-6)
    assert figure.between.text.startswith("saved: ")
    assert "min of cooling without heat" in figure.conditions


def test_figures_are_equal_where_they_show_the_same(known: Known) -> None:
    study, found = known
    assert watts(known) == watts(known)
    plans = [plan_of(CoolerPlan(later_c=c), found) for c in (50.0, 50.0, 45.0)]
    one, same, other = (cooler_figure(savings(found, p), study, found.machines[0].machine_id) for p in plans)
    assert one == same
    assert one != other


def test_pictures_carry_their_numbers(known: Known) -> None:
    assert "Alder: a line of" in numbers_of(watts(known))
    assert "W/dm²" in numbers_of(beds_figure(known[1], known[0]))


def test_the_table_has_a_row_for_each_temperature(known: Known) -> None:
    table = holds_table(known[1])
    assert [row[0] for row in table.rows] == ["Alder", "Alder", "Alder", "Birch"]
    assert [row[1] for row in table.rows] == ["45.0", "60.0", "75.0", "60.0"]
    assert len({len(row) for row in table.rows} | {len(table.columns)}) == 1
    assert to_csv(table).count("\n") == 5
    watts_of = [float(str(row[3]).split(" ")[0]) for row in table.rows]
    held = [h.bed_w.value for m in known[1].machines for h in m.held if h.bed_w]
    assert watts_of == pytest.approx(held, abs=0.6)


def test_half_an_hour_against_the_hour(known: Known) -> None:
    said = half_hour_note(known[1])
    held = known[1].machines[1].held[0]
    assert held.half_over_full is not None
    percent = 100 * (held.half_over_full - 1)
    assert f"Birch: the first half hour reads {percent:.{0 if percent >= 10 else 1}f} % more" in said
    short, traces = held_study([("Alder", Bed(), (60.0,))], seconds=2000)
    assert half_hour_note(beds(short, traces)).startswith("No test from cold lasted an hour")


def test_a_star_marks_temperatures_of_the_test() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))], seconds=2400)
    study = edits.note_temperatures(study, study.runs[0].id, None, None).study
    study = edits.set_bed_c(study, 60.0).study
    found = beds(study, traces)
    assert holds_table(found).rows[0][1:3] == ("60.0*", f"{ROOM_C:.1f}*")
    assert "* of the test" in half_hour_note(found)


def test_savings_add_up(known: Known) -> None:
    found = known[1]
    each = savings(found, plan_of(CoolerPlan(), found))
    table = savings_table(each, price_per_kwh=0.5, currency="€")
    assert [row[0] for row in table.rows] == ["Alder", "Birch", "One print on each"]
    first, second, both = (float(str(row[1]).split(" ")[0]) for row in table.rows)
    assert both == pytest.approx(first + second, abs=11)
    assert table.columns[3].title == "Saved [€]"
    money = [float(str(row[3]).split(" ")[0]) for row in table.rows]
    assert money == pytest.approx([first * 0.5e-3, second * 0.5e-3, both * 0.5e-3], rel=0.1)
    assert len(savings_table(each).columns) == 3


def test_numbers_follow_the_locale(known: Known) -> None:
    comma = NumberLocale(",", "")
    table = holds_table(known[1], comma)
    assert not re.search(r"\d\.\d", json.dumps(table.rows))
    assert not re.search(r"\d\.\d", half_hour_note(known[1], comma))


def test_what_is_read_out(known: Known) -> None:
    study, found = known
    alder = found.machines[0]
    lines = hold_readout(found, alder.held[1].run_id, "0")
    assert lines[0] == "Alder, 60.0 °C in a room of 20.0 °C"
    assert any("of what a plate of its size must lose" in line for line in lines)
    assert hold_readout(found, "gone") == ()
    assert study.name


def test_of_many_beds_only_the_chosen_one_has_its_band_and_the_axis_begins_near() -> None:
    given = [(name, Bed(), (50.0, 65.0)) for name in ("Alder", "Birch", "Cedar", "Hazel", "Rowan", "Elm")]
    study, traces = held_study(given, seconds=2400)
    chosen = study.machines[2]
    figure = watts_figure(beds(study, traces), study, chosen.id)
    assert figure is not None
    banded = [t.slot for t in figure.trends if t.low]
    assert banded == [chosen.slot]
    assert figure.note == f"band: 95 % of the line of {chosen.name}"
    assert 20 < figure.x.low < 30.0
    assert all(figure.x.low < s.x < figure.x.high for s in figure.spots)
