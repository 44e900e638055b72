"""Small benches for tests of the comparison: traces of plain machines whose runs are where we put them."""

import sys
from collections.abc import Mapping, Sequence

import numpy as np
from attrs import frozen

from core import edits
from core.activity import find
from core.study import Source, Study
from core.traces import Trace


@frozen
class Making:
    """One making of the part: samples of warm-up and of processing, and the level of processing."""

    warm_up: int = 90
    processing: int = 1200
    level_w: float = 60.0
    pause: int = 0


STANDBY_W = 5.0
HEATING_W = 260.0
BED_W = 150.0


def trace(
    makings: Sequence[Making], *, seed: int = 0, step_s: float = 2.0, counter: bool = False, **more: object
) -> Trace:
    """Power of a machine that heats, makes the part with a switching bed, and rests, again and again."""
    rng = np.random.default_rng(seed)
    parts = [np.full(300, STANDBY_W) + rng.normal(0, 0.1, 300)]
    for making in makings:
        rows = np.arange(making.processing)
        work = making.level_w + (rows % 40 < 12) * BED_W + rng.normal(0, 6, making.processing)
        half = making.processing // 2
        rest = making.level_w * 0.8 + (np.arange(making.pause) % 40 < 12) * BED_W
        parts += [
            HEATING_W + rng.normal(0, 2, making.warm_up),
            work[:half],
            rest,
            work[half:],
            STANDBY_W + rng.normal(0, 0.1, 400),
        ]
    power_w = np.round(np.concatenate(parts), 1)
    time_s = np.arange(power_w.size) * step_s
    counter_wh = np.floor(np.cumsum(power_w) * step_s / 3600 / 0.1) * 0.1 if counter else None
    # results are remembered by the key: whatever they depend on has to be in it
    with np.printoptions(threshold=sys.maxsize):
        key = f"{seed} {step_s} {counter} {makings} {sorted(more.items())}"
    return Trace.of(time_s, power_w, "sampled", counter_wh, key=key, **more)  # type: ignore[arg-type]  # passed on


def without(whole: Trace, start_s: float, end_s: float) -> Trace:
    """The trace with the samples between two moments lost."""
    kept = (whole.time_s <= start_s) | (whole.time_s >= end_s)
    counter = None if whole.counter_wh is None else whole.counter_wh[kept]
    return Trace.of(
        whole.time_s[kept],
        whole.power_w[kept],
        whole.kind,
        counter,
        key=f"{whole.key} without {start_s} {end_s}",
    )


def bench(traces: Mapping[str, Trace], *, meters: bool = False) -> tuple[Study, dict[str, Trace]]:
    """A study of one log a machine, and its traces by log id; with `meters`, each machine has its own."""
    study = edits.new_study("s").study
    by_log = {}
    for name, each in traces.items():
        found = [edits.FoundRun(s.start_s, s.end_s, s.kind, s.part, s.why) for s in find(each).stretches]
        log = edits.NewLog((Source(f"digest of {name}", f"{name.lower()}.csv"),), name, tuple(found))
        study = edits.import_logs(study, [log]).study
        log_id = study.logs[-1].id
        if meters and len(study.logs) > 1:
            study = edits.add_meter(study, f"Meter of {name}").study
            study = edits.assign_meter(study, log_id, study.meters[-1].id).study
        by_log[log_id] = each
    return study, by_log


def alike(runs: int = 4, level_w: float = 60.0, spread: int = 6, seed: int = 0) -> list[Making]:
    """Makings that differ by a few samples."""
    rng = np.random.default_rng(seed)
    return [
        Making(processing=1200 + int(rng.integers(-spread, spread + 1)), level_w=level_w) for _ in range(runs)
    ]
