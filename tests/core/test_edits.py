"""Every user action as a function: what it changes, what it leaves alone, what it refuses."""

from typing import Any

import pytest

from core import edits
from core.edits import Edit, FoundRun, NewLog
from core.study import Choices, Run, Study
from tests.core import imported_logs
from tests.core.imported_logs import found, source

# pytest looks for a fixture by its name in the file of the test
study = imported_logs.study


def _edges(study: Study, log_id: str = "g1") -> list[tuple[float, float]]:
    return [(run.start_s, run.end_s) for run in study.runs_of(log_id)]


class TestImporting:
    def test_makes_machines_meter_logs_and_runs(self, study: Study):
        assert [(machine.name, machine.slot) for machine in study.machines] == [("Alder", 0), ("Birch", 1)]
        (meter,) = study.meters
        assert (meter.name, meter.stated, meter.gain_percent, meter.offset_w) == ("Meter", False, 1.0, 0.3)
        assert [log.meter_id for log in study.logs] == [meter.id, meter.id]
        assert [run.id for run in study.runs] == ["r1", "r2", "r3", "r4"]
        assert study.run("r1").included
        assert not study.run("r4").included

    def test_label_says_how_many(self):
        one = NewLog((source(),), "Alder")
        assert edits.import_logs(edits.new_study("s1").study, [one]).label == "Import a log"
        two = [one, NewLog((source("b.csv", "b" * 64),), "Birch")]
        assert edits.import_logs(edits.new_study("s1").study, two).label == "Import 2 logs"

    def test_another_log_of_a_machine_goes_to_it(self, study: Study):
        more = [
            NewLog((source("more.csv", "c" * 64),), "Alder"),
            NewLog((source("even more.csv", "d" * 64),), "any name", machine_id="a2"),
        ]
        after = edits.import_logs(study, more).study
        assert [log.machine_id for log in after.logs] == ["a1", "a2", "a1", "a2"]
        assert after.machines == study.machines

    def test_same_bytes_twice_are_one_log(self, study: Study):
        again = NewLog((source("a copy of alder.csv"),), "Alder, copy", found((0, 100)))
        assert edits.is_imported(study, again.sources)
        assert edits.import_logs(study, [again]).study == study
        new = NewLog((source("c.csv", "c" * 64),), "Cedar")
        assert len(edits.import_logs(study, [new, new]).study.logs) == 3

    def test_two_devices_of_one_file_are_two_logs(self, study: Study):
        plugs = [NewLog((source(device=plug),), plug) for plug in ("plug 1", "plug 2")]
        assert len(edits.import_logs(study, plugs).study.logs) == 4

    def test_next_machine_takes_the_lowest_free_slot(self, study: Study):
        without_alder = edits.remove_machine(study, "a1").study
        after = edits.add_machine(without_alder, "Cedar").study
        assert [(m.id, m.slot) for m in after.machines] == [("a2", 1), ("a3", 0)]

    def test_refuses_a_log_from_nowhere_or_of_no_machine(self, study: Study):
        with pytest.raises(ValueError, match="source"):
            edits.import_logs(study, [NewLog((), "Alder")])
        with pytest.raises(ValueError, match="machine"):
            edits.import_logs(study, [NewLog((source("x", "x" * 64),), "X", machine_id="a9")])
        with pytest.raises(ValueError, match="name"):
            edits.import_logs(study, [NewLog((source("x", "x" * 64),), "  ")])


class TestEdges:
    def test_moved_edge_is_the_users_and_the_other_stays_the_programs(self, study: Study):
        run = edits.move_edges(study, "r1", 0, 90).study.run("r1")
        assert (run.set_start_s, run.set_end_s, run.start_s, run.end_s) == (None, 90.0, 0.0, 90.0)

    def test_a_drag_is_one_step_of_the_history(self, study: Study):
        first = edits.move_edges(study, "r1", 0, 90)
        second = edits.move_edges(first.study, "r1", 0, 80)
        assert first.merge_key == second.merge_key != edits.move_edges(study, "r2", 200, 290).merge_key

    @pytest.mark.parametrize(("start_s", "end_s"), [(5, 5), (9, 5), (float("nan"), 5), (0, float("inf"))])
    def test_empty_stretch_is_refused(self, study: Study, start_s: float, end_s: float):
        with pytest.raises(ValueError, match=r"empty|finite"):
            edits.move_edges(study, "r1", start_s, end_s)

    def test_split_makes_two_of_one(self, study: Study):
        after = edits.split_run(study, "r2", 250).study
        assert _edges(after) == [(0, 100), (200, 250), (250, 300), (400, 500)]
        assert after.run("r5").kind == "run"
        assert edits.is_drawn(after.run("r5"))
        assert not edits.is_drawn(after.run("r2"))

    @pytest.mark.parametrize("at_s", [100, 200, 300, 350])
    def test_split_outside_is_refused(self, study: Study, at_s: float):
        with pytest.raises(ValueError, match="not inside"):
            edits.split_run(study, "r2", at_s)

    def test_join_makes_one_of_several(self, study: Study):
        after = edits.join_runs(study, ["r3", "r2"]).study
        assert _edges(after) == [(0, 100), (200, 500)]
        assert after.run("r2").kind == "run"

    def test_two_broken_pieces_joined_are_a_run(self, study: Study):
        broken = edits.set_kind(edits.set_kind(study, "r1", "broken off").study, "r2", "cut").study
        joined = edits.join_runs(broken, ["r1", "r2"]).study.run("r1")
        assert joined.kind == "run"
        assert joined.included

    def test_heating_joined_with_a_run_keeps_the_kind_of_the_first(self, study: Study):
        heating = edits.set_kind(study, "r1", "heating").study
        assert edits.join_runs(heating, ["r1", "r2"]).study.run("r1").kind == "heating"

    @pytest.mark.parametrize("ids", [["r1"], ["r1", "r1"], ["r1", "r3"], ["r1", "r4"], []])
    def test_what_does_not_follow_each_other_is_not_joined(self, study: Study, ids: list[str]):
        assert not edits.can_join(study, ids)
        with pytest.raises(ValueError, match="follow each other"):
            edits.join_runs(study, ids)

    def test_split_then_join_gives_the_edges_back(self, study: Study):
        split = edits.split_run(study, "r2", 250).study
        assert _edges(edits.join_runs(split, ["r2", "r5"]).study) == _edges(study)


class TestDecisions:
    def test_handing_back_forgets_every_decision(self, study: Study):
        after = edits.move_edges(study, "r1", 5, 90).study
        after = edits.set_kind(after, "r1", "other part").study
        after = edits.leave_out(after, "r1", "door open").study
        after = edits.rename_run(after, "r1", "first").study
        run = edits.hand_back(after, "r1").study.run("r1")
        assert edits.is_decided(after.run("r1"))
        assert not edits.is_decided(run)
        assert run == Run("r1", "g1", 0.0, 100.0, name="first")

    def test_handing_back_a_split_run_takes_its_other_piece_away(self, study: Study):
        split = edits.split_run(study, "r2", 250).study
        assert edits.hand_back(split, "r2").study == study

    def test_handing_back_leaves_other_drawn_stretches_alone(self, study: Study):
        drawn = edits.draw_run(study, "g1", 120, 180, "heating").study
        moved = edits.move_edges(drawn, "r1", 0, 90).study
        assert edits.hand_back(moved, "r1").study == drawn

    def test_drawn_stretch_keeps_its_edges_and_kind(self, study: Study):
        drawn = edits.draw_run(study, "g1", 120, 180, "heating").study
        included = edits.include(drawn, "r5").study
        assert edits.is_decided(included.run("r5"))
        assert edits.hand_back(included, "r5").study == drawn
        assert not edits.is_decided(drawn.run("r5"))

    def test_left_out_run_keeps_the_reason_and_comes_back(self, study: Study):
        left = edits.leave_out(study, "r1", " door\nopen ").study
        assert (left.run("r1").included, left.run("r1").why_left_out) == (False, "door open")
        back = edits.include(left, "r1").study
        assert (back.run("r1").included, back.run("r1").why_left_out) == (True, "")

    def test_typing_the_reason_merges_with_leaving_out(self, study: Study):
        assert edits.leave_out(study, "r1", "").merge_key == edits.leave_out(study, "r1", "door").merge_key

    def test_what_is_no_run_counts_only_if_the_user_says_so_afterwards(self, study: Study):
        included = edits.include(study, "r1").study
        hold = edits.set_kind(included, "r1", "hold test").study
        assert not hold.run("r1").included
        assert edits.include(hold, "r1").study.run("r1").included

    def test_left_out_run_stays_left_out_when_its_kind_is_said(self, study: Study):
        left = edits.leave_out(study, "r1", "door open").study
        assert not edits.set_kind(left, "r1", "run").study.run("r1").included

    def test_removing_a_found_stretch_outlasts_finding_it_again(self, study: Study):
        removed = edits.remove_run(study, "r1").study
        again = edits.find_again(removed, "g1", found((0, 100), (200, 300), (400, 500))).study
        assert again.run("r1").kind == "nothing"
        assert not again.run("r1").included

    def test_removing_a_drawn_stretch_takes_it_away(self, study: Study):
        drawn = edits.draw_run(study, "g1", 120, 180).study
        assert edits.remove_run(drawn, "r5").study == study

    def test_empty_name_gives_the_number_back(self, study: Study):
        named = edits.rename_run(study, "r2", "  the  second ").study
        assert edits.title(named, named.run("r2")) == "the second"
        back = edits.rename_run(named, "r2", " ").study
        assert edits.title(back, back.run("r2")) == "Alder, run 2"


class TestFindingAgain:
    def test_decisions_go_to_the_stretch_that_overlaps_most(self, study: Study):
        decided = edits.leave_out(study, "r2", "door open").study
        decided = edits.move_edges(decided, "r1", 5, 100).study
        after = edits.find_again(decided, "g1", found((1, 101), (180, 310), (600, 700))).study
        first, second = after.run("r1"), after.run("r2")
        assert (first.found_start_s, first.start_s, first.end_s) == (1, 5, 101)
        assert (second.start_s, second.end_s, second.why_left_out) == (180, 310, "door open")

    def test_what_is_found_no_more_goes_unless_something_was_decided(self, study: Study):
        decided = edits.leave_out(study, "r2", "door open").study
        after = edits.find_again(decided, "g1", ()).study
        assert [run.id for run in after.runs_of("g1")] == ["r2"]
        assert edits.is_drawn(after.run("r2"))
        assert after.run("r2").why_left_out == "door open"

    def test_new_stretches_get_new_ids(self, study: Study):
        after = edits.find_again(study, "g1", found((0, 100), (200, 300), (400, 500), (600, 700))).study
        assert _edges(after)[-1] == (600, 700)
        assert after.run("r5").start_s == 600

    def test_joined_run_does_not_fall_apart(self, study: Study):
        joined = edits.join_runs(study, ["r1", "r2"]).study
        after = edits.find_again(joined, "g1", found((0, 100), (200, 300), (400, 500))).study
        assert _edges(after) == [(0, 300), (400, 500)]

    def test_split_run_does_not_grow_together(self, study: Study):
        split = edits.split_run(study, "r2", 250).study
        after = edits.find_again(split, "g1", found((0, 100), (200, 300), (400, 500))).study
        assert after == split

    def test_drawn_stretch_stays(self, study: Study):
        drawn = edits.draw_run(study, "g1", 120, 180).study
        assert edits.find_again(drawn, "g1", found((0, 100), (200, 300), (400, 500))).study == drawn

    def test_edges_of_the_user_outlive_a_program_edge_that_crosses_them(self, study: Study):
        moved = edits.move_edges(study, "r1", 80, 100).study
        after = edits.find_again(moved, "g1", found((0, 70), (200, 300), (400, 500))).study
        assert _edges(after)[0] == (80, 100)

    def test_other_logs_are_left_alone(self, study: Study):
        after = edits.find_again(study, "g1", ()).study
        assert after.runs_of("g2") == study.runs_of("g2")

    def test_log_that_now_starts_earlier_carries_the_edges_along(self, study: Study):
        moved = edits.move_edges(study, "r1", 5, 90).study
        sources = (source("before.csv", "e" * 64), *moved.log("g1").sources)
        again = found((1000, 1100), (1200, 1300), (1400, 1500))
        after = edits.read_again(moved, "g1", sources, again, shift_s=1000).study
        assert _edges(after)[0] == (1005, 1090)
        assert after.log("g1").sources == sources

    def test_choices_and_what_is_then_found_are_one_edit(self, study: Study):
        choices = Choices(decimal=",")
        after = edits.set_choices(study, "g1", 0, choices, found((0, 100))).study
        assert after.log("g1").sources[0].choices == choices
        assert _edges(after) == [(0, 100)]
        assert edits.set_choices(study, "g1", 0, choices).study.runs == study.runs
        with pytest.raises(ValueError, match="source"):
            edits.set_choices(study, "g1", 1, choices)


class TestWhole:
    def test_names_are_one_line_and_never_empty(self, study: Study):
        assert edits.rename_study(study, " two\n lines ").study.name == "two lines"
        for empty in ("", " \n"):
            with pytest.raises(ValueError, match="name"):
                edits.rename_study(study, empty)

    def test_conditions(self, study: Study):
        assert edits.set_boundary(study, "processing only").study.boundary == "processing only"
        assert edits.set_bed_c(study, 60).study.bed_c == 60.0
        assert edits.set_bed_c(edits.set_bed_c(study, 60).study, None).study == study

    def test_new_study_can_be_marked_as_invented(self):
        assert edits.new_study("demo", name="Demo", invented=True).study.invented


def _impossible(study: Study) -> list[tuple[Any, ...]]:
    return [
        (edits.hand_back, "r9"),
        (edits.set_kind, "r1", "a dance"),
        (edits.draw_run, "g9", 0, 1),
        (edits.set_boundary, "all day"),
        (edits.set_bed_c, -300),
        (edits.set_bed_c, float("nan")),
        (edits.rename_machine, "a9", "x"),
        (edits.set_slot, "a1", -1),
        (edits.set_property, "a1", "", 1),
        (edits.set_property, "a1", "bed area", float("inf")),
        (edits.merge_machines, "a1", "a1"),
        (edits.assign_meter, "g1", "m9"),
        (edits.move_log, "g1", "a9"),
        (edits.remove_log, "g9"),
        (edits.add_typed, "a1", -1),
        (edits.find_again, "g9", ()),
        (edits.read_again, "g1", (), ()),
        (edits.remove_typed, "t9"),
    ]


@pytest.mark.parametrize("number", range(18))
def test_requests_that_make_no_sense_are_mistakes(study: Study, number: int):
    action, *arguments = _impossible(study)[number]
    with pytest.raises(ValueError, match=r"is|no|needs|cannot"):
        action(study, *arguments)


def test_stretch_found_must_not_be_empty():
    with pytest.raises(ValueError, match="empty"):
        FoundRun(5.0, 5.0)


def test_labels_read_well(study: Study):
    made: list[Edit] = [
        edits.move_edges(study, "r2", 200, 250),
        edits.leave_out(study, "r4", "x"),
        edits.join_runs(study, ["r1", "r2"]),
        edits.remove_log(study, "g2"),
    ]
    assert [edit.label for edit in made] == [
        "Move an edge of Alder, run 2",
        "Leave out Birch, run 1",
        "Join 2 stretches of Alder",
        "Remove a log of Birch",
    ]
