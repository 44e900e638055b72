import pytest
from attrs import evolve

from core import edits
from core.beds.area import BED_AREA, bed_area_dm2
from core.beds.supply import BED_SUPPLY, bed_supply
from core.study import CoolerPlan, Study

STUDY = edits.new_study("s").study


def test_a_cooler_bed_is_kept_and_moving_a_slider_is_one_step() -> None:
    plan = CoolerPlan(60.0, 50.0, 900.0, 7200.0, least_c=45.0)
    edit = edits.set_cooler_plan(STUDY, plan)
    assert edit.study.cooler == plan
    assert edit.merge_key == edits.set_cooler_plan(edit.study, evolve(plan, later_c=47.0)).merge_key


@pytest.mark.parametrize(
    "plan",
    [
        CoolerPlan(first_c=float("nan")),
        CoolerPlan(later_c=-300.0),
        CoolerPlan(print_s=-1.0),
        CoolerPlan(first_layers_s=7200.0, print_s=3600.0),
    ],
)
def test_no_such_print(plan: CoolerPlan) -> None:
    with pytest.raises(ValueError):  # noqa: PT011  # each says its own thing
        edits.set_cooler_plan(STUDY, plan)


def test_how_faces_radiate() -> None:
    assert edits.set_emissivity(STUDY, 0.3).study.emissivity == 0.3
    for wrong in (-0.1, 1.1):
        with pytest.raises(ValueError, match="emissivity"):
            edits.set_emissivity(STUDY, wrong)


def test_an_older_study_has_the_defaults() -> None:
    assert Study("s").cooler == CoolerPlan()
    assert Study("s").emissivity == 0.9


def test_area_and_supply_take_the_place_of_what_said_them() -> None:
    study = edits.add_machine(STUDY, "Alder").study
    machine_id = study.machines[0].id
    for name, value in (("Bed area (cm2)", 552.25), ("Noise", 40.0), ("supply of the bed", "mains")):
        study = edits.set_property(study, machine_id, name, value).study
    study = edits.set_bed_area(study, machine_id, 4).study
    study = edits.set_bed_supply(study, machine_id, "low voltage").study
    machine = study.machines[0]
    assert machine.properties == (("Noise", 40.0), (BED_AREA, 4.0), (BED_SUPPLY, "low voltage"))
    assert (bed_area_dm2(machine), bed_supply(machine)) == (4.0, "low voltage")
    gone = edits.set_bed_area(edits.set_bed_supply(study, machine_id, None).study, machine_id, None).study
    assert gone.machines[0].properties == (("Noise", 40.0),)
    with pytest.raises(ValueError, match="area"):
        edits.set_bed_area(study, machine_id, 0.0)
