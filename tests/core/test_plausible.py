"""Values that are worth a second look; the bounds are judgement, no source."""

import pytest
from attrs import evolve

from core import edits
from core.beds.area import BED_AREA, bed_area_dm2
from core.results.compare import compare, machine_inputs
from core.results.plausible import implausible
from core.results.values import MachineResult, Measured
from core.study import Machine, Study
from core.traces import Trace
from core.wording import sentence
from tests.core.held_beds import Bed
from tests.core.test_bed_shares import day, study_of


@pytest.fixture(scope="module")
def one() -> tuple[Study, dict[str, Trace]]:
    return study_of(day(Bed(), "rh"), "rh", "plausible")


def codes(study: Study, traces: dict[str, Trace], **changes: object) -> list[str]:
    (given,) = machine_inputs(study, traces, {})
    result: MachineResult = evolve(compare(study, traces).machines[0], **changes)  # type: ignore[arg-type]
    found = list(implausible(given, result))
    assert all(f.level == "note" for f in found)
    assert all("{" not in sentence(f.problem) and result.name in sentence(f.problem) for f in found)
    return [f.problem.code for f in found]


def test_an_ordinary_machine_is_no_oddity(one: tuple[Study, dict[str, Trace]]) -> None:
    assert codes(*one) == []
    told = {f.problem.code for f in compare(*one).fairness}
    assert not any(code.startswith("plausible.") for code in told)


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"mean_w": Measured(0.09, None)}, "plausible.mean_w"),
        ({"mean_w": Measured(95_000.0, 5.0)}, "plausible.mean_w"),
        ({"bed_share": Measured(0.1, 0.01)}, "plausible.bed_share"),
        ({"bed_share": Measured(0.95, 0.01)}, "plausible.bed_share"),
        ({"standby_w": Measured(0.4, None)}, "plausible.standby_w"),
        ({"standby_w": Measured(55.0, 0.8)}, "plausible.standby_w"),
    ],
)
def test_what_lies_outside_is_told(
    one: tuple[Study, dict[str, Trace]], change: dict[str, object], code: str
) -> None:
    assert codes(*one, **change) == [code]


def test_a_machine_switched_off_at_the_plug_is_no_oddity(one: tuple[Study, dict[str, Trace]]) -> None:
    assert codes(*one, standby_w=Measured(0.0, 0.3)) == []
    assert codes(*one, standby_w=Measured(0.05, 0.3)) == []
    assert codes(*one, standby_w=None, bed_share=None) == []


@pytest.mark.parametrize(
    ("area_dm2", "told"),
    # the held bed takes 50 W; a plate of 235 mm must lose 51 W
    [(5.5, []), (2.5, []), (9.0, ["plausible.hold_w"]), (1.2, ["plausible.hold_w"])],
)
def test_a_held_bed_against_the_floor(
    one: tuple[Study, dict[str, Trace]], area_dm2: float, told: list[str]
) -> None:
    study, traces = one
    noted = edits.set_property(study, study.machines[0].id, BED_AREA, area_dm2).study
    assert codes(noted, traces) == told
    assert [f.problem.code for f in compare(noted, traces).fairness if "plausible" in f.problem.code] == told


@pytest.mark.parametrize(
    ("name", "value", "area_dm2"),
    [
        (BED_AREA, 5.5, 5.5),
        ("bed area", 5, 5.0),
        ("Area of the bed, cm2", 550.0, 5.5),
        ("bed area [mm^2]", 55_000.0, 5.5),
        ("Bed area in m²", 0.055, 5.5),
        ("bed area", "large", None),
        ("bed area", True, None),
        ("bed area", 0.0, None),
        ("area of the workshop", 40.0, None),
        ("bedroom area", 12.0, None),
    ],
)
def test_area_of_a_bed(name: str, value: str | float | bool, area_dm2: float | None) -> None:
    found = bed_area_dm2(Machine("a1", "Alder", 0, ((name, value),)))
    assert found == (None if area_dm2 is None else pytest.approx(area_dm2))
