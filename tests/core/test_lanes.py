from attrs import evolve

from core import edits
from core.figures.lanes import headline, lanes
from core.study import Source, Study


def study_with(*kinds):
    found = tuple(edits.FoundRun(1000.0 * i, 1000.0 * i + 500, kind) for i, kind in enumerate(kinds))
    log = edits.NewLog((Source("d" * 64, "alder.csv"),), "Alder", found)
    return edits.import_logs(Study("s", part="clip"), [log]).study


def test_the_sentence_counts_what_was_found():
    study = study_with("run", "run", "hold test")
    assert headline(study) == "2 runs of the clip found in 1 log; 1 stretch is something else."
    out = edits.leave_out(study, study.runs[0].id, "door open").study
    assert headline(out).startswith("2 runs of the clip found in 1 log; 1 of them left out; 1 stretch")


def test_typed_runs_are_counted_with_and_without_logs():
    study = study_with("run")
    typed = edits.add_typed(study, study.machines[0].id, 300.0).study
    assert headline(typed) == "1 run of the clip found in 1 log, 1 typed in."
    alone = edits.add_machine(Study("s", part="clip"), "Alder").study
    assert headline(edits.add_typed(alone, "a1", 300.0).study) == "1 run of the clip typed in."


def test_no_run_is_said_as_no_run():
    assert (
        headline(study_with("heating")) == "No runs of the clip found in 1 log; 1 stretch is something else."
    )


def test_blocks_say_what_they_are_and_who_decided():
    study = study_with("run", "hold test", "run")
    study = edits.move_edges(study, study.runs[2].id, 2010.0, 2500.0).study
    study = edits.rename_run(study, study.runs[0].id, "first").study
    (lane,) = lanes(study, {})
    assert [b.label for b in lane.blocks] == ["first", "hold test", "run 3"]
    assert [b.is_decided for b in lane.blocks] == [False, False, True]
    assert [b.is_included for b in lane.blocks] == [True, False, True]
    assert lane.summary == "2 runs, 1 other"
    assert lane.files == ("alder.csv",)


def test_what_the_program_takes_for_nothing_is_no_block_but_the_users_nothing_stays_to_be_taken_back():
    study = study_with("run", "nothing")
    assert len(lanes(study, {})[0].blocks) == 1
    removed = edits.remove_run(study, study.runs[0].id).study
    assert [b.kind for b in lanes(removed, {})[0].blocks] == ["nothing"]


def test_lanes_follow_the_order_of_the_machines():
    study = study_with("run")
    for name in ("Birch", "Alder"):
        log = edits.NewLog((Source(name * 8, f"{name}.csv"),), name)
        study = edits.import_logs(study, [log]).study
    turned = evolve(study, machines=study.machines[::-1])
    assert [lane.machine for lane in lanes(study, {})] == ["Alder", "Alder", "Birch"]
    assert [lane.machine for lane in lanes(turned, {})] == ["Birch", "Alder", "Alder"]


def test_the_log_of_a_bed_has_no_runs():
    study = study_with("run", "hold test")
    beside = edits.NewLog((Source("b" * 64, "bed.csv"),), "Alder", (edits.FoundRun(0.0, 500.0),))
    study = edits.import_logs(study, [beside]).study
    marked = edits.mark_log_of_bed(study, study.logs[1].id).study
    assert headline(marked) == (
        "1 run of the clip found in 2 logs; 1 log is of a bed alone; 1 stretch is something else."
    )
    whole, bed = lanes(marked, {})
    assert len(whole.blocks) == 2
    assert (bed.blocks, bed.summary) == ((), "the bed alone")
