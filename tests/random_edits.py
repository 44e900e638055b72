"""Made logs, and random edits as a user could make them; seeded, so that a failure comes again."""

import hashlib
from collections.abc import Callable
from functools import cache
from random import Random

from attrs import evolve

from core import edits
from core.edits import Edit, FoundRun, NewLog
from core.edits.conditions import TEMPERATURES
from core.history import History
from core.line_up.choices import LineUp
from core.problems import Problem
from core.publish.choices import PLACES, THEMES, Pick, Publishing
from core.results.values import Finding, Level
from core.study import BOUNDARIES, KINDS, Choices, CoolerPlan, Source, Study
from tests.random_plans import filled, planned, priced

_NAMES = ("Alder", "Birch", "Cedar", "Hazel", "Rowan", "Weide Ä", "樺", 'a "quoted" name', "x" * 200)


@cache
def raw_log(number: int) -> bytes:
    """Bytes of a made log."""
    rows = [f"{10 * i},{(number * 37 + i * i) % 251}.5" for i in range(200 + number % 50)]
    return ("time_s,power_w\n" + "\n".join(rows) + "\n").encode()


def new_log(number: int, random: Random) -> NewLog:
    """A log to import whose bytes are `raw_log(number)`."""
    starts = sorted(random.sample(range(0, 20_000, 500), random.randint(0, 4)))
    runs = tuple(
        FoundRun(s + random.random(), s + random.uniform(50, 490), random.choice(KINDS), random.choice("AB"))
        for s in starts
    )
    source = Source(
        hashlib.sha256(raw_log(number)).hexdigest(), f"log {number}.csv", random.choice([None, "plug 2"])
    )
    return NewLog((source,), random.choice(_NAMES), runs)


def random_edit(study: Study, random: Random) -> Edit:
    """An edit that a user could make on `study`, other than changing nothing."""
    makers: list[Callable[[Study, Random], Edit]] = [_import, *_WHOLE]
    if study.machines:
        makers += _MACHINE
    if study.logs:
        makers += _LOG
    if study.runs:
        makers += _RUN * 3
    if study.typed:
        makers += _TYPED
    while True:
        edit = random.choice(makers)(study, random)
        if edit.study != study:
            return edit


def random_history(random: Random, count: int) -> History:
    """A history of `count` edits, some of them merging, with none undone."""
    history = History.start(edits.new_study(f"study-{random.getrandbits(32):08x}"))
    for _ in range(count):
        history = history.apply(random_edit(history.study, random))
        if random.random() < 0.5:
            history = history.sealed()
    return history


def _import(study: Study, random: Random) -> Edit:
    numbers = random.sample(range(40), random.randint(1, 3))
    return edits.import_logs(study, [new_log(number, random) for number in numbers])


def _typed(study: Study, random: Random) -> Edit:
    return edits.add_typed(
        study,
        random.choice(study.machines).id,
        random.uniform(10, 100),
        seconds=random.choice([None, 3600.0]),
        step_wh=random.choice([1.0, 10.0]),
        note=random.choice(_NAMES),
    )


def _merge_or_move(study: Study, random: Random) -> Edit:
    a, b = random.choice(study.machines).id, random.choice(study.machines).id
    return edits.rename_machine(study, a, "Elm") if a == b else edits.merge_machines(study, a, b)


def _move_edges(study: Study, random: Random) -> Edit:
    run = random.choice(study.runs)
    return edits.move_edges(
        study, run.id, run.start_s + random.uniform(-9, 9), run.end_s + random.uniform(10, 20)
    )


def _split(study: Study, random: Random) -> Edit:
    run = random.choice(study.runs)
    return edits.split_run(study, run.id, run.start_s + (run.end_s - run.start_s) * random.uniform(0.2, 0.8))


def _join(study: Study, random: Random) -> Edit:
    runs = study.runs_of(random.choice(study.runs).log_id)
    ids = [run.id for run in runs[:2]]
    return edits.join_runs(study, ids) if edits.can_join(study, ids) else edits.remove_run(study, ids[0])


def _find_again(study: Study, random: Random) -> Edit:
    return edits.find_again(study, random.choice(study.logs).id, new_log(random.randrange(40), random).runs)


def _draw(study: Study, random: Random) -> Edit:
    start_s = random.uniform(0, 1e4)
    return edits.draw_run(study, random.choice(study.logs).id, start_s, start_s + 60.0, random.choice(KINDS))


def _choices(study: Study, random: Random) -> Edit:
    choices = Choices(
        decimal=random.choice([None, ","]),
        header_row=random.choice([None, 3]),
        sampling=random.choice([None, "averaged"]),
        columns=random.choice([(), ((0, "time", "s"), (1, "power", "W"))]),
    )
    return edits.set_choices(study, random.choice(study.logs).id, 0, choices)


def _check(study: Study, random: Random) -> Edit:
    if len(study.meters) < 2 or (study.checks and random.random() < 0.3):
        if study.checks:
            return edits.remove_load_check(study, random.choice(study.checks).id)
        return edits.add_meter(study, random.choice(_NAMES))
    one, other = random.sample(study.meters, 2)
    reading = random.uniform(40, 60)
    return edits.add_load_check(study, one.id, other.id, reading, reading * 1.01, seconds=3600.0, step=0.1)


def _publish(study: Study, random: Random) -> Edit:
    picked = study.publishing.keys
    if picked and random.random() < 0.3:
        return edits.remove_pick(study, random.choice(picked))
    if random.random() < 0.5:
        line_up = random.choice([None, LineUp(arrangement="difference", span=(1.0, 60.0))])
        key = random.choice(("comparison", "line-up-arranged-1", "table-runs"))
        return edits.add_pick(study, Pick(key, random.choice(_NAMES), line_up, ("r1",) if line_up else ()))
    ids = [machine.id for machine in study.machines]
    wanted = Publishing(
        picks=study.publishing.picks,
        purpose=random.choice(("wide", "tall", "free")),
        theme=random.choice(THEMES),
        place=random.choice((None, *PLACES)),
        is_clear=random.random() < 0.5,
        note=random.choice(_NAMES),
        machine_ids=tuple(random.sample(ids, random.randint(0, len(ids)))),
        highlighted=random.choice(["", *ids]),
    )
    return edits.set_publishing(study, wanted, random.choice(("", "note")))


def _property_column(study: Study, random: Random) -> Edit:
    own = [c.name for c in study.property_columns]
    name, to = random.choice(own) if own else "", random.choice(("Age (years)", "Enclosed", "Motion"))
    if own and random.random() < 0.3:
        return edits.remove_property_column(study, name)
    if to in own:
        return edits.rename_property_column(study, to, f"{to} {len(own)} {random.random()}")
    return edits.add_property_column(study, to, random.choice(("number", "words", "yes/no")))


def _accept(study: Study, random: Random) -> Edit:
    if study.accepted and random.random() < 0.4:
        return edits.take_back_acceptance(study, random.choice(study.accepted).key)
    run = random.choice(study.runs)
    levels: tuple[Level, ...] = ("note", "caution", "unfair")
    problem = Problem("fair.outlier", facts={"machine": "Alder", "run": run.id})
    finding = Finding(random.choice(levels), problem, (), run_ids=(run.id,), key=f"fair.outlier {run.id}")
    if random.random() < 0.3:
        return edits.plan_again(study, evolve(finding, machine_ids=(random.choice(study.machines).id,)))
    return edits.accept_finding(study, finding, random.choice(_NAMES))


_Makers = list[Callable[[Study, Random], Edit]]
_WHOLE: _Makers = [
    lambda s, r: edits.rename_study(s, r.choice(_NAMES)),
    lambda s, r: edits.rename_part(s, r.choice(_NAMES)),
    lambda s, r: edits.set_boundary(s, r.choice(BOUNDARIES)),
    lambda s, r: edits.set_bed_c(s, r.choice([None, 45, 60.0, 80.5])),
    lambda s, r: edits.set_room_c(s, r.choice([None, 20, 21.5])),
    lambda s, r: edits.set_cooler_plan(
        s, CoolerPlan(None, r.choice([None, 45.0]), 60.0, r.choice([7e3, 4e4]))
    ),
    lambda s, r: edits.set_emissivity(s, r.choice([0.1, 0.9, 1])),
    _check,
    _property_column,
    _publish,
    planned,
    filled,
    priced,
    lambda s, r: edits.add_machine(s, r.choice(_NAMES)),
    lambda s, r: edits.add_meter(s, r.choice(_NAMES)),
]
_MACHINE: _Makers = [
    _typed,
    _merge_or_move,
    lambda s, r: edits.rename_machine(s, r.choice(s.machines).id, r.choice(_NAMES)),
    lambda s, r: edits.note_machine(
        s, r.choice(s.machines).id, r.choice(TEMPERATURES), r.choice([None, 60, 210.5])
    ),
    lambda s, r: edits.set_slot(s, r.choice(s.machines).id, r.randrange(8)),
    lambda s, r: edits.set_property(
        s, r.choice(s.machines).id, "bed", r.choice([None, "mains", 5.5, 4, True])
    ),
]
_LOG: _Makers = [
    _find_again,
    _draw,
    _choices,
    lambda s, r: edits.remove_log(s, r.choice(s.logs).id),
    lambda s, r: edits.move_log(s, r.choice(s.logs).id, r.choice(s.machines).id),
    lambda s, r: edits.mark_log_of_bed(s, r.choice(s.logs).id, r.random() < 0.5),
    lambda s, r: edits.assign_meter(s, r.choice(s.logs).id, r.choice(s.meters).id),
    lambda s, r: edits.set_meter(
        s, r.choice(s.meters).id, gain_percent=r.choice([0.5, 2]), offset_w=r.random()
    ),
]
_RUN: _Makers = [
    _move_edges,
    _split,
    _join,
    lambda s, r: edits.hand_back(s, r.choice(s.runs).id),
    lambda s, r: edits.set_kind(s, r.choice(s.runs).id, r.choice(KINDS)),
    lambda s, r: edits.leave_out(s, r.choice(s.runs).id, r.choice(["", "the door was open"])),
    lambda s, r: edits.include(s, r.choice(s.runs).id),
    lambda s, r: edits.rename_run(s, r.choice(s.runs).id, r.choice(["", "first", "zweite"])),
    lambda s, r: edits.remove_run(s, r.choice(s.runs).id),
    lambda s, r: edits.mark_bed_off(s, r.choice(s.runs).id, r.random() < 0.5),
    _accept,
    lambda s, r: edits.hand_back_runs(s, tuple(run.id for run in r.sample(s.runs, 1))),
    lambda s, r: edits.note_making(
        s, r.choice(s.runs).id, r.choice([None, 210.0]), r.choice([None, 65]), None
    ),
    lambda s, r: edits.note_temperatures(
        s, r.choice(s.runs).id, r.choice([None, 60.0]), r.choice([None, 21])
    ),
]
_TYPED: _Makers = [
    lambda s, r: edits.remove_typed(s, r.choice(s.typed).id),
    lambda s, r: edits.leave_out_typed(s, r.choice(s.typed).id, "misread"),
    lambda s, r: edits.include_typed(s, r.choice(s.typed).id),
]
