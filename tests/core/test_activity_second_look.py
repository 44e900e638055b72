"""What the logs of other machines settle."""

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.activity import Activity, Stretch, find, second_look
from core.activity.grouping import agree
from core.analysis import seen_together
from core.study import Source
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate
from tests.core.test_activity import DAY


def found(*tasks: Task, seed: int = 0) -> Activity:
    made = [Task("idle", 400), *(x for task in tasks for x in (task, Task("idle", 600)))]
    return find(simulate(MachineModel(), MeterModel(2.0), made, seed).trace)


def test_other_machines_say_which_of_two_lengths_is_the_part() -> None:
    open_log = found(Task("part", 1500), Task("part", 3600, part="B"))
    assert [s.kind for s in open_log.stretches] == ["broken off", "run"]
    assert not open_log.runs[0].sure
    settled = find(simulate(MachineModel(), MeterModel(), DAY).trace)  # 1800 s
    first, second = second_look([open_log, settled])
    assert [s.kind for s in first.stretches] == ["run", "other part"]
    assert first.runs[0].sure
    assert second == settled


def test_a_length_unlike_any_other_machine_settles_nothing() -> None:
    open_log = found(Task("part", 600), Task("part", 6000, part="B"))
    settled = find(simulate(MachineModel(), MeterModel(), DAY).trace)
    assert second_look([open_log, settled]) == (open_log, settled)


def test_a_log_that_is_sure_of_its_part_is_left_alone() -> None:
    long = found(Task("part", 4000), Task("part", 4000), seed=1)
    short = found(Task("part", 1500), Task("part", 1500), seed=2)
    assert second_look([long, short]) == (long, short)


def test_one_machine_alone_is_left_as_it_is() -> None:
    alone = found(Task("part", 1500), Task("part", 3600, part="B"))
    assert second_look([alone]) == (alone,)


def test_a_soaked_run_agrees_by_its_processing() -> None:
    plain = Stretch(0, 2000, energy_wh=60, warm_up_end_s=200, processing_wh=50)
    soaked = Stretch(0, 2900, energy_wh=90, warm_up_end_s=1100, processing_wh=50)
    assert agree(plain, soaked)
    assert not agree(plain, Stretch(0, 2900, energy_wh=90, warm_up_end_s=200, processing_wh=80))


def test_logs_of_one_machine_are_looked_at_together() -> None:
    whole = [found(Task("part", 1800), seed=seed) for seed in (3, 4)]
    broken = found(Task("part", 1800, stopped_after_s=600), seed=5)
    assert [s.kind for s in broken.stretches] == ["run"]
    *_, looked_at = second_look([*whole, broken], ["left", "left", "left"])
    assert [s.kind for s in looked_at.stretches] == ["broken off"]
    *_, alone = second_look([*whole, broken], ["left", "left", "right"])
    assert [s.kind for s in alone.stretches] == ["run"]


def test_every_log_needs_a_machine() -> None:
    with pytest.raises(ValueError, match="machine"):
        second_look([found(Task("part", 1500))], [])


def begun_hot() -> Activity:
    made = simulate(MachineModel(), MeterModel(2.0), (Task("part", 1800, homing_s=0), Task("idle", 600)), 6)
    return find(made.trace)


def test_a_run_whose_beginning_was_not_seen_counts_only_where_there_is_no_other() -> None:
    hot = begun_hot()
    assert [(s.kind, s.sure) for s in hot.stretches] == [("run", False)]
    assert second_look([hot, found(Task("part", 1800))], ["left", "right"])[0] == hot
    looked_at, _ = second_look([hot, found(Task("part", 1800))], ["left", "left"])
    assert [s.kind for s in looked_at.stretches] == ["cut"]


def test_a_length_made_more_often_is_the_part_whatever_other_machines_take() -> None:
    many = found(Task("part", 700), Task("part", 700), Task("part", 1900))
    assert [s.kind for s in many.stretches] == ["run", "run", "other part"]
    assert second_look([many, find(simulate(MachineModel(), MeterModel(), DAY).trace)])[0] == many


def test_a_whole_run_shorter_than_one_that_the_log_cuts_may_be_broken_off() -> None:
    tasks = (Task("idle", 400), Task("part", 600), Task("idle", 600), Task("part", 3000))
    trace = simulate(MachineModel(), MeterModel(), tasks).trace
    kept = trace.time_s < 3200
    stretches = find(Trace.of(trace.time_s[kept], trace.power_w[kept])).stretches
    assert [(s.kind, s.sure) for s in stretches] == [("broken off", False), ("cut", True)]


def test_a_fast_switched_bed_held_in_a_log_of_its_own_is_no_run() -> None:
    """Its watts never rest, so that alone it seems to move; the machine's runs draw far more."""
    seconds = np.arange(0.0, 5400.0, 2.0)
    random = np.random.default_rng(2)

    def log(working_w: float, key: str) -> Activity:
        heats = (seconds >= 600) & (seconds < 4800)
        bed_w = np.where(seconds < 900, 80.0, 14.0 + random.normal(0, 1.5, seconds.size))
        moves_w = working_w * (1 + 0.1 * random.normal(size=seconds.size)) * (seconds >= 900)
        power_w = 3.0 + random.normal(0, 0.06, seconds.size) + np.where(heats, bed_w + moves_w, 0.0)
        return find(Trace.of(seconds, np.round(power_w, 1), key=key))

    runs, held = [log(11.0, f"run {n}") for n in range(3)], log(0.0, "held")
    assert [s.kind for s in held.stretches] == ["run"]
    *kept, told = second_look([*runs, held], ["one"] * 4)
    assert [s.kind for s in told.stretches] == ["hold test"]
    assert told.stretches[0].why == "run.far_below_the_runs"
    assert [s.kind for log in kept for s in log.stretches] == ["run"] * 3
    # of another machine it tells nothing, and neither does a single run
    *_, apart = second_look([*runs, held], ["one"] * 3 + ["other"])
    assert [s.kind for s in apart.stretches] == ["run"]
    assert "hold test" not in {s.kind for s in second_look([runs[0], held], ["one"] * 2)[1].stretches}


def test_the_log_of_a_bed_alone_has_no_say() -> None:
    runs, bed = found(Task("part", 1800)), found(*[Task("hold", 3000)] * 3, seed=4)
    logs = [edits.NewLog((Source(n, f"{n}.csv"),), "Alder") for n in ("plug", "bed")]
    study = edits.import_logs(edits.new_study("s").study, logs).study
    plug_log, bed_log = study.logs
    taken = evolve(bed, stretches=tuple(evolve(s, kind="run", why="", part="A") for s in bed.stretches))
    activities = {plug_log.id: runs, bed_log.id: taken}
    marked = seen_together(edits.mark_log_of_bed(study, bed_log.id).study, activities)
    assert [run.kind for run in marked.runs_of(plug_log.id)] == ["run"]
    assert marked.runs_of(bed_log.id) == ()
    # taken for a log of the whole machine, its three would be the part
    unmarked = seen_together(study, activities)
    assert [run.kind for run in unmarked.runs_of(plug_log.id)] != ["run"]
