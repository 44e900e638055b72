"""Edits of the plan of the next test."""

import math
from collections.abc import Callable

import pytest

from core import edits
from core.edits import Edit
from core.plan.values import ExtraRun
from core.study import Study


def bench() -> Study:
    study = edits.new_study("s").study
    for name in ("Alder", "Birch", "Cedar"):
        study = edits.add_machine(study, name).study
    for name in ("Meter 1", "Meter 2"):
        study = edits.add_meter(study, name).study
    return study


@pytest.mark.parametrize(
    "edit",
    [
        lambda s: edits.plan_repeats(s, 0),
        lambda s: edits.plan_repeats(s, 101),
        lambda s: edits.plan_at_once(s, 0),
        lambda s: edits.shuffle_plan(s, -1),
        lambda s: edits.plan_extra(s, "a1", -1),
        lambda s: edits.plan_extra(s, "nobody", 1),
        lambda s: edits.plan_machine(s, "nobody"),
        lambda s: edits.plan_meter(s, "nobody"),
        lambda s: edits.set_plan_temperature(s, "bed_c", math.nan),
        lambda s: edits.set_plan_temperature(s, "bed_c", -300),
        lambda s: edits.set_plan_temperature(s, "chamber_c", 40),  # type: ignore[arg-type]  # on purpose
        lambda s: edits.set_plan_start(s, "hot"),  # type: ignore[arg-type]  # on purpose
        lambda s: edits.set_plan_start(s, "cold", -5),
        lambda s: edits.set_plan_display(s, "MJ"),  # type: ignore[arg-type]  # on purpose
        lambda s: edits.set_plan_goal(s, difference_percent=0),
        lambda s: edits.set_plan_goal(s, spread_percent=-1),
    ],
)
def test_what_makes_no_sense_is_the_caller_s_mistake(edit: Callable[[Study], Edit]) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        edit(bench())


def test_runs_beyond_the_blocks_take_a_machine_in() -> None:
    study = edits.plan_machine(bench(), "a2", takes_part=False).study
    assert study.plan.machine_ids == ("a1", "a3")
    study = edits.plan_extra(study, "a2", 2).study
    assert study.plan.machine_ids is None
    assert study.plan.extra == (ExtraRun("a2", 2),)
    assert edits.plan_extra(study, "a2", 0).study.plan.extra == ()
    assert edits.plan_machine(study, "a2", takes_part=False).study.plan.extra == ()


def test_a_machine_or_meter_that_is_gone_is_out_of_the_plan() -> None:
    study = edits.plan_machine(bench(), "a1", takes_part=False).study
    study = edits.plan_meter(study, "m1", takes_part=False).study
    study = edits.plan_extra(study, "a3", 2).study
    gone = edits.remove_machine(study, "a3").study
    assert gone.plan.machine_ids == ("a2",)
    assert gone.plan.extra == ()
    # another machine gets the identifier that is free again
    again = edits.add_machine(gone, "Hazel").study
    assert again.machines[-1].id == "a3"
    assert again.plan.machine_ids == ("a2",)
    assert edits.merge_machines(study, "a3", "a2").study.plan.machine_ids == ("a2",)
    assert edits.remove_meter(study, "m2").study.plan.meter_ids == ()


def test_a_field_that_is_typed_in_is_one_step() -> None:
    study = bench()
    keys = {edits.set_plan_material(study, text).merge_key for text in ("P", "PL", "PLA")}
    assert keys == {"plan material"}
    assert edits.set_plan_material(study, "  PLA \n grey ").study.plan.material == "PLA grey"
