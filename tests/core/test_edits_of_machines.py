"""Edits of machines, of meters and of readings typed from a display."""

import pytest

from core import edits
from core.study import Study
from tests.core import imported_logs

# pytest looks for a fixture by its name in the file of the test
study = imported_logs.study


class TestMachinesAndMeters:
    def test_slots_are_swapped_so_that_none_is_used_twice(self, study: Study):
        after = edits.set_slot(study, "a1", 1).study
        assert [machine.slot for machine in after.machines] == [1, 0]
        after = edits.set_slot(after, "a1", 7).study
        assert [machine.slot for machine in after.machines] == [7, 0]

    def test_properties_are_set_replaced_and_taken_away(self, study: Study):
        after = edits.set_property(study, "a1", "bed area", 5).study
        after = edits.set_property(after, "a1", "supply", "mains").study
        after = edits.set_property(after, "a1", "closed", True).study
        after = edits.set_property(after, "a1", "bed area", 6.5).study
        assert after.machine("a1").properties == (("bed area", 6.5), ("supply", "mains"), ("closed", True))
        after = edits.set_property(after, "a1", "supply", None).study
        assert after.machine("a1").properties == (("bed area", 6.5), ("closed", True))
        assert edits.set_property(after, "a1", "not there", None).study == after

    def test_merging_takes_logs_readings_and_properties_over(self, study: Study):
        study = edits.add_typed(study, "a2", 21).study
        study = edits.set_property(study, "a2", "supply", "mains").study
        after = edits.merge_machines(study, "a2", "a1").study
        assert [machine.name for machine in after.machines] == ["Alder"]
        assert {log.machine_id for log in after.logs} == {"a1"}
        assert after.typed[0].machine_id == "a1"
        assert after.machine("a1").properties == (("supply", "mains"),)
        assert after.runs == study.runs

    def test_machine_left_with_nothing_goes_with_its_last_log(self, study: Study):
        assert [m.id for m in edits.remove_log(study, "g2").study.machines] == ["a1"]
        assert [m.id for m in edits.move_log(study, "g2", "a1").study.machines] == ["a1"]
        typed = edits.add_typed(study, "a2", 21).study
        assert [m.id for m in edits.remove_log(typed, "g2").study.machines] == ["a1", "a2"]

    def test_log_can_go_to_a_machine_of_its_own(self, study: Study):
        after = edits.move_log_to_new_machine(study, "g2", "Cedar").study
        assert [(m.id, m.name) for m in after.machines] == [("a1", "Alder"), ("a3", "Cedar")]
        assert after.log("g2").machine_id == "a3"

    def test_removing_a_log_takes_its_runs_along(self, study: Study):
        assert {run.log_id for run in edits.remove_log(study, "g1").study.runs} == {"g2"}

    def test_stated_accuracy_is_noted_as_stated(self, study: Study):
        renamed = edits.set_meter(study, "m1", name="Blue meter").study.meter("m1")
        assert (renamed.name, renamed.stated, renamed.gain_percent) == ("Blue meter", False, 1.0)
        stated = edits.set_meter(study, "m1", gain_percent=0.5).study.meter("m1")
        assert (stated.gain_percent, stated.offset_w, stated.stated) == (0.5, 0.3, True)

    def test_meters_can_be_added_assigned_and_removed_when_unused(self, study: Study):
        after = edits.add_meter(study, "Second meter").study
        assert edits.remove_meter(after, "m2").study == study
        after = edits.assign_meter(after, "g1", "m2").study
        assert after.log("g1").meter_id == "m2"
        with pytest.raises(ValueError, match="in use"):
            edits.remove_meter(after, "m2")

    def test_typed_readings(self, study: Study):
        after = edits.add_typed(study, "a1", 21, seconds=1800, step_wh=10, note="first\n").study
        (reading,) = after.typed
        assert (reading.id, reading.meter_id, reading.energy_wh, reading.note) == ("t1", "m1", 21.0, "first")
        left = edits.leave_out_typed(after, "t1", "misread").study.typed[0]
        assert (left.included, left.why_left_out) == (False, "misread")
        assert edits.include_typed(edits.leave_out_typed(after, "t1", "x").study, "t1").study == after
        assert edits.remove_typed(after, "t1").study == study

    def test_one_meter_can_be_said_to_have_measured_all(self, study: Study):
        apart = edits.type_reading(study, "Cedar", 20).study
        assert len({log.meter_id for log in apart.logs} | {apart.typed[0].meter_id}) == 2
        mine = edits.set_meter(edits.add_meter(apart, "Blue").study, "m3", gain_percent=0.5).study
        after = edits.assign_meter_to_all(mine, "m1").study
        assert {log.meter_id for log in after.logs} == {"m1"} == {t.meter_id for t in after.typed}
        assert [meter.name for meter in after.meters] == [study.meter("m1").name, "Blue"]
        bed = edits.mark_log_of_bed(edits.assign_meter(mine, "g2", "m2").study, "g2", True).study
        assert edits.assign_meter_to_all(bed, "m1").study.log("g2").meter_id == "m2"

    def test_a_reading_of_a_machine_is_of_the_meter_that_measured_it_or_of_a_new_one(self, study: Study):
        study = edits.add_meter(study, "Other").study
        study = edits.assign_meter(study, "g1", "m2").study
        known = edits.type_reading(study, "Alder", 20).study
        assert known.typed[0].meter_id == "m2"
        assert known.meters == study.meters
        new = edits.type_reading(known, "Cedar", 21).study
        assert new.meter(new.typed[1].meter_id).name == "Meter of Cedar"
        again = edits.type_reading(new, "Cedar", 22).study
        assert again.typed[2].meter_id == again.typed[1].meter_id
        assert edits.type_reading(new, "Rowan", 23, meter_id="m2").study.typed[2].meter_id == "m2"

    def test_typed_reading_on_a_new_machine_makes_a_meter(self):
        study = edits.add_machine(edits.new_study("s1").study, "Alder").study
        after = edits.add_typed(study, "a1", 21).study
        assert after.meter(after.typed[0].meter_id).stated is False
