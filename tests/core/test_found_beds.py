"""How a bed's numbers were found: the lines hold the values they explain."""

import math
import re

import pytest
from attrs import evolve

from core import edits
from core.beds.quantities import HEAT_CAPACITY, HELD_W, TIMES_FLOOR, W_PER_DM2, WARM_UP_WH
from core.formatting import NO_BREAK, NumberLocale
from core.found import as_markdown
from core.found.bed_supply import for_their_size
from core.found.held_bed import held_bed
from core.found.values import Explanation
from core.found.writing import figures
from core.results.holds import Beds, beds
from core.study import Study
from tests.core.held_beds import Bed
from tests.core.hold_studies import held_study, with_areas

KEYS = tuple(q.key for q in (HELD_W, W_PER_DM2, TIMES_FLOOR, WARM_UP_WH, HEAT_CAPACITY))
Known = tuple[Study, Beds]


@pytest.fixture(scope="module")
def known() -> Known:
    given = [("Alder", Bed(), (45.0, 60.0)), ("Birch", Bed(slope_w_per_k=1.1), (70.0,))]
    study, traces = held_study(given, seconds=2600)
    study = edits.set_bed_c(with_areas(study, (5.0, 5.0)), 60.0).study
    study = edits.add_machine(study, "Rowan").study
    return study, beds(study, traces)


def asked(known: Known, machine: int, key: str) -> Explanation:
    study, found = known
    told = held_bed(found, study, found.machines[machine].machine_id, key)
    assert told is not None
    return told


def last_number(line: str) -> float:
    return float(re.findall(r"[\d.]+", line)[-1])


def test_watts_are_worked_out_with_their_values(known: Known) -> None:
    told = asked(known, 0, "held_w")
    reference = known[1].machines[0].reference
    assert reference is not None
    line = next(text for text in told.formula if text.startswith("at 60.00 °C in 20.00"))
    assert last_number(line) == pytest.approx(reference.power_w, rel=1e-3)
    plug, rest, bed = (float(n) for n in re.findall(r"([\d.]+) W", told.formula[0]))
    assert plug - rest == pytest.approx(bed, abs=0.02)
    assert math.hypot(*(b.u for b in told.budget)) == pytest.approx(reference.u_w)
    assert last_number(told.formula[-1]) == pytest.approx(reference.u95_w, rel=0.01)
    assert [s.run_id for s in told.sources] == [h.run_id for h in known[1].machines[0].held]


def test_per_area_and_against_the_floor(known: Known) -> None:
    machine = known[1].machines[0]
    assert machine.reference is not None
    assert machine.floor_w is not None
    per_area = asked(known, 0, "w_per_dm2")
    line = next(text for text in per_area.formula if text.endswith("W/dm²"))
    assert float(re.findall(r"[\d.]+", line)[-1]) == pytest.approx(machine.reference.power_w / 5, rel=1e-3)
    share = asked(known, 0, "times_floor")
    floor = next(text for text in share.formula if text.startswith("floor ="))
    up, down, two, radiation, whole = (float(n) for n in re.findall(r"[\d.]+", floor))
    assert up + down + two * radiation == pytest.approx(whole, rel=1e-3)
    assert whole == pytest.approx(machine.floor_w, rel=1e-3)
    assert any("differ by up to 13 %" in text for text in share.cautions)


def test_a_p_is_never_written_as_nothing(known: Known) -> None:
    told = for_their_size(known[1], known[0])
    assert told is not None
    assert told.method[-1].replace(NO_BREAK, " ").endswith("by Holm's way: p < 0.001.")


def test_beyond_what_was_held_it_says_so(known: Known) -> None:
    told = asked(known, 1, "held_w")
    assert "was not held" in told.method[1]
    assert told.surer[0].startswith("Hold the bed at the temperature asked for")
    assert any(b.name == "plate law" for b in told.budget)
    assert "A weighted line" in asked(known, 0, "held_w").method[1]


def test_a_warmer_room_takes_less(known: Known) -> None:
    lines = asked(known, 0, "held_w").sensitivity
    assert lines[0].startswith("If the room had been 1 K warmer: −1.")
    assert lines[1].startswith("If the bed were held 10 K warmer: +1")


def test_the_warm_up(known: Known) -> None:
    told = asked(known, 0, "heat_capacity")
    capacity = known[1].machines[0].heat_capacity
    assert capacity is not None
    assert float(told.value_text.split(" ")[0]) == pytest.approx(capacity.value, abs=5)
    assert told.title == "Alder, 60.0 °C: heat capacity"
    assert told.formula[0].endswith(f"= {figures(capacity.value)} J/K")
    assert capacity.u95 is not None
    assert math.hypot(*(b.u for b in told.budget)) == pytest.approx(capacity.u95 / 1.96, rel=1e-3)


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("machine", [0, 1, 2])
def test_every_number_is_explained(known: Known, key: str, machine: int) -> None:
    told = asked(known, machine, key)
    text = as_markdown(told)
    assert told.method
    assert told.topic == "bed"
    assert "None" not in text
    assert "nan" not in text.replace("finance", "")
    if machine == 2:
        assert told.value_text == "not known"


def test_numbers_follow_the_locale(known: Known) -> None:
    study, found = known
    told = held_bed(found, study, found.machines[0].machine_id, "w_per_dm2", NumberLocale(",", ""))
    assert told is not None
    assert not re.search(r"\d\.\d", " ".join((*told.formula, *told.sensitivity, told.value_text)))


def test_less_than_the_floor_is_remarked_on(known: Known) -> None:
    study, found = known
    large = evolve(found, machines=(evolve(found.machines[0], floor_w=500.0), *found.machines[1:]))
    told = held_bed(large, study, found.machines[0].machine_id, "times_floor")
    assert told is not None
    assert any(text.startswith("Less than the floor") for text in told.cautions)


def test_a_machine_that_is_gone(known: Known) -> None:
    assert held_bed(known[1], known[0], "gone", "held_w") is None
