"""Seeded studies of invented machines, alike or with one thing planted that makes them unfair.

A machine holds its bed by a thermostat, warms up from where the last run left it, and makes a part with a
spread from run to run; a meter reads it with a gain of its own. The bed loses heat as (T - room)^1.23 and
cools with one time constant. All numbers are of the order that such machines have (common practice, no
source); the rules of fairness know none of them.
"""

from collections.abc import Sequence
from typing import Literal

import numpy as np
from attrs import evolve, frozen

from core import edits
from core.activity import Activity, find
from core.results.compare import compare
from core.results.values import Comparison
from core.study import Source, Study
from core.traces import F64, Trace

Planted = Literal["nothing", "warm start", "meter", "bed", "outlier", "drift"]
STEP_S = 5.0
#: samples for which a thermostat's heater stays on
BURST = 3
BED_C, COOLER_C = 60.0, 50.0
METER_HIGH = 1.03
#: effort of the outlying run, and by how much effort rises from the first to the last run of a drift
OUTLYING, RISE = 1.13, 0.14


@frozen
class Model:
    """An invented machine. [W], [s], [Wh], [K]"""

    standby_w: float
    heater_w: float
    held_w: float
    work_w: float
    warming_s: float
    nozzle_s: float
    cools_s: float
    processing_s: float
    spread: float


@frozen
class Made:
    """One run: the bed's temperature and where it began, the room, and how hard the machine worked."""

    bed_c: float
    start_c: float
    room_c: float
    effort: float
    seconds: float


@frozen(eq=False)
class Bench:
    """A study of a few machines, with what was planted on the machine called `odd`."""

    models: tuple[Model, ...]
    runs: tuple[tuple[Made, ...], ...]
    gains: tuple[float, ...]
    meter_of: tuple[int, ...]
    odd: int


def bench(seed: int) -> Bench:
    """Machines, runs and meters of a fair test."""
    rng = np.random.default_rng(seed)
    count = int(rng.integers(2, 6))
    repeats = int(rng.integers(3, 6))
    models = tuple(_model(rng) for _ in range(count))
    runs = tuple(tuple(_made(model, rng) for _ in range(repeats)) for model in models)
    meters = int(rng.integers(1, 3))
    gains = tuple(1 + 0.01 * float(rng.uniform(-1, 1)) for _ in range(meters))
    return Bench(models, runs, gains, tuple(i % meters for i in range(count)), int(rng.integers(count)))


def _model(rng: np.random.Generator) -> Model:
    return Model(
        standby_w=rng.uniform(2, 8),
        heater_w=rng.uniform(120, 300),
        held_w=rng.uniform(30, 60),
        work_w=rng.uniform(20, 45),
        warming_s=rng.uniform(160, 320),
        nozzle_s=rng.uniform(50, 80),
        cools_s=rng.uniform(900, 1500),
        processing_s=rng.uniform(1500, 2700),
        spread=rng.uniform(0.004, 0.02),
    )


def _made(model: Model, rng: np.random.Generator) -> Made:
    room_c = 21.0 + rng.normal(0, 0.2)
    return Made(
        bed_c=BED_C,
        start_c=room_c + abs(rng.normal(0, 1.5)),
        room_c=room_c,
        effort=1 + model.spread * rng.normal(),
        seconds=model.processing_s * (1 + 0.003 * rng.normal()),
    )


def planted(fair: Bench, what: Planted, seed: int) -> Bench:
    """The same test with one thing wrong with one of its machines, or of its meters."""
    rng = np.random.default_rng([seed, 1])
    model, runs = fair.models[fair.odd], list(fair.runs[fair.odd])
    if what == "warm start":
        place = int(rng.integers(1, len(runs)))
        kept = np.exp(-rng.uniform(120, 480) / model.cools_s)
        run = runs[place]
        runs[place] = evolve(run, start_c=run.room_c + (run.bed_c - run.room_c) * float(kept))
    elif what == "bed":
        runs = [evolve(run, bed_c=COOLER_C) for run in runs]
    elif what == "outlier":
        runs = [*runs, *(evolve(runs[0], effort=1 + model.spread * rng.normal()) for _ in range(3))]
        runs[-2] = evolve(runs[-2], effort=OUTLYING)
    elif what == "drift":
        runs = [*runs, *(evolve(runs[0], effort=1 + model.spread * rng.normal()) for _ in range(3))]
        rise = np.linspace(-RISE / 2, RISE / 2, len(runs))
        runs = [evolve(run, effort=run.effort + float(by)) for run, by in zip(runs, rise, strict=True)]
    elif what == "meter":
        gains = (METER_HIGH, *(fair.gains[1:] or (1.0,)))
        return evolve(fair, gains=gains, meter_of=tuple(i % 2 for i in range(len(fair.models))), odd=0)
    every = tuple(tuple(runs) if i == fair.odd else each for i, each in enumerate(fair.runs))
    return evolve(fair, runs=every)


def power(model: Model, runs: Sequence[Made], gain: float, rng: np.random.Generator) -> F64:
    """What the meter reads each `STEP_S` while the machine makes its runs and rests. [W]"""
    rest = np.full(240, model.standby_w)
    parts = [rest]
    for run in runs:
        share = (run.bed_c - run.start_c) / (BED_C - 21.0)
        warming_s = max(model.warming_s * share, model.nozzle_s)
        bed_s = np.arange(round(warming_s / STEP_S)) * STEP_S
        warm = np.where(bed_s < model.warming_s * share, model.heater_w, 0.0) + 40.0 * (
            bed_s < model.nozzle_s
        )
        rows = round(run.seconds / STEP_S)
        held_w = model.held_w * ((run.bed_c - run.room_c) / (BED_C - 21.0)) ** 1.23 * run.effort
        is_on = _switching(held_w / model.heater_w, rows, float(rng.uniform(0, BURST)))
        work = 12.0 + model.work_w * run.effort + 2.0 * rng.normal(size=rows)
        parts += [model.standby_w + warm, model.standby_w + work + model.heater_w * is_on, rest]
    whole = np.concatenate(parts)
    return np.asarray(np.round(np.maximum(gain * whole + 0.05 * rng.normal(size=whole.size), 0.0), 1))


def _switching(share: float, rows: int, phase: float) -> F64:
    """A thermostat's heater: on for `BURST` samples whenever so much heat is missing."""
    missing = np.floor((phase + share * np.arange(rows + 1)) / BURST)
    begins = np.flatnonzero(np.diff(missing) > 0)
    is_on = np.zeros(rows + BURST)
    for k in range(BURST):
        is_on[begins + k] = 1.0
    return np.asarray(is_on[:rows])


class Desk:
    """Turns benches into comparisons; a machine that two benches share is read and looked at once."""

    def __init__(self, seed: int) -> None:
        self._seed = seed
        self._known: dict[tuple[object, ...], tuple[Trace, Activity]] = {}

    def study(self, bench_: Bench) -> tuple[Study, dict[str, Trace], dict[str, Activity]]:
        """The study as a user would have it: stated meters, a check of both, temperatures noted."""
        study = edits.new_study("s").study
        traces, activities = {}, {}
        for i, (model, runs) in enumerate(zip(bench_.models, bench_.runs, strict=True)):
            gain = bench_.gains[bench_.meter_of[i]]
            trace, activity = self._read(i, model, runs, gain)
            found = [edits.FoundRun(s.start_s, s.end_s, s.kind, s.part, s.why) for s in activity.stretches]
            log = edits.NewLog((Source(f"digest {i}", f"{i}.csv"),), f"Machine {i}", tuple(found))
            study = edits.import_logs(study, [log]).study
            traces[study.logs[-1].id], activities[study.logs[-1].id] = trace, activity
        study = _with_meters(study, bench_)
        return _with_temperatures(study, bench_), traces, activities

    def comparison(self, bench_: Bench) -> Comparison:
        """The comparison of a bench."""
        return compare(*self.study(bench_))

    def _read(self, i: int, model: Model, runs: Sequence[Made], gain: float) -> tuple[Trace, Activity]:
        key = (i, tuple(runs), gain)
        if key not in self._known:
            rng = np.random.default_rng([self._seed, 2, i])
            power_w = power(model, runs, gain, rng)
            time_s = np.arange(power_w.size) * STEP_S
            counter_wh = np.floor(np.cumsum(power_w) * STEP_S / 3600 / 0.1) * 0.1
            name = f"{self._seed} {i} {hash(key)}"
            trace = Trace.of(time_s, power_w, "sampled", counter_wh, key=name)
            self._known[key] = trace, find(trace)
        return self._known[key]


def _with_meters(study: Study, bench_: Bench) -> Study:
    """One meter a gain, stated as the data sheets do; where there are two, one steady load read with both."""
    ids = []
    for number in range(len(bench_.gains)):
        study = edits.add_meter(study, f"Meter {number + 1}").study
        ids.append(study.meters[-1].id)
        study = edits.set_meter(study, ids[-1], gain_percent=1.0, offset_w=0.1).study
    for i, log in enumerate(study.logs):
        study = edits.assign_meter(study, log.id, ids[bench_.meter_of[i]]).study
    if len(ids) > 1:
        one, other = (round(1000.0 * gain, 1) for gain in bench_.gains[:2])
        study = edits.add_load_check(
            study, ids[0], ids[1], one, other, seconds=36_000.0, step=0.1, other_step=0.1
        ).study
    return study


def _with_temperatures(study: Study, bench_: Bench) -> Study:
    """Temperatures as somebody notes them, to the degree."""
    for i, log in enumerate(study.logs):
        made = [run for run in study.runs_of(log.id) if run.kind == "run"]
        for run, truth in zip(made, bench_.runs[i], strict=False):
            study = edits.note_temperatures(study, run.id, round(truth.bed_c), round(truth.room_c)).study
    return study
