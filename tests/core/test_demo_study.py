"""The demo study says of its meters what the generator of its logs knows."""

import json

from core import edits
from core.beds.area import bed_area_dm2
from core.beds.plate import Plate, loss
from core.beds.supply import bed_supply
from core.comparing import gather
from core.demo import (
    BED_C,
    BEDS,
    METERS,
    PART,
    STATED_PERCENT,
    STATED_W,
    demo_study,
    with_known_beds,
    with_stated_meters,
)
from core.places import demo_folder

TRUTH = json.loads((demo_folder() / "truth.json").read_text(encoding="utf-8"))


def test_the_demo_s_constants_are_those_of_its_generator():
    assert (TRUTH["part"], TRUTH["bed_c"]) == (PART, BED_C)
    stated = {(m["name"], m["stated_percent"], m["stated_w"]) for m in TRUTH["meters"]}
    assert stated == {(name, STATED_PERCENT, STATED_W) for name in METERS}
    used = {(log["meter"], log["machine"]) for log in TRUTH["logs"]}
    assert used == {(name, machine) for name, machines in METERS.items() for machine in machines}


def test_the_demo_has_five_machines_and_two_stated_meters():
    gathered = gather([demo_folder() / "logs"], start=demo_study())
    study = with_stated_meters(gathered.study)
    assert len(study.machines) == 5
    assert len(study.logs) == len(TRUTH["logs"])
    assert [(m.name, m.stated) for m in study.meters] == [("Meter 1", True), ("Meter 2", True)]
    files = {log["file"]: log["meter"] for log in TRUTH["logs"]}
    for log in study.logs:
        names = {s.file_name.rsplit("/", 1)[-1] for s in log.sources}
        assert {files[name] for name in names} == {study.meter(log.meter_id).name}
    assert study.bed_c == BED_C


def test_what_is_known_of_the_beds_is_what_they_are() -> None:
    study = demo_study()
    for name in BEDS:
        study = edits.add_machine(study, name).study
    known = with_known_beds(study)
    truth = json.loads((demo_folder() / "truth.json").read_text(encoding="utf-8"))
    beds = {m["name"]: (m["bed_dm2"], m["bed_supply"]) for m in truth["machines"]}
    assert {m.name: (bed_area_dm2(m), bed_supply(m)) for m in known.machines} == beds


def test_no_invented_bed_loses_less_heat_than_a_plate_of_its_size_must() -> None:
    """Still air and both faces, as `core.beds.plate` has it; what a supply loses is no heat of the bed."""
    room_c = 20.9
    for machine in TRUTH["machines"]:
        above_k = BED_C - room_c
        heat_w = machine["bed_loss_w_per_k"] * above_k + machine["bed_loss_w_per_k2"] * above_k**2
        floor = loss(Plate.square(machine["bed_dm2"]), BED_C, room_c)
        assert heat_w >= floor.total_w, machine["name"]
