"""Simulated switch-on tests whose watts are known."""

import numpy as np

from core import edits
from core.study import Source, Study
from core.traces import Sampling, Trace

STANDBY_W = 3.0
#: [s]
EACH_S = 180


def staircase(
    moves_w: list[float],
    seed: int = 1,
    *,
    noise_w: float = 0.06,
    resolution_w: float = 0.1,
    each_s: int = EACH_S,
    kind: Sampling = "sampled",
) -> Trace:
    """A trace of one row a second; each of `moves_w` comes after another `each_s`. [W]"""
    rng = np.random.default_rng(seed)
    levels_w = STANDBY_W + np.r_[0.0, np.cumsum(moves_w)]
    power_w = np.repeat(levels_w, each_s)
    return made(power_w + noise_w * rng.standard_normal(power_w.size), resolution_w, kind)


def made(power_w: np.ndarray, resolution_w: float = 0.1, kind: Sampling = "sampled") -> Trace:
    """A trace of those watts as a display of that resolution shows them."""
    shown_w = np.round(power_w / resolution_w) * resolution_w
    return Trace.of(np.arange(float(power_w.size)), shown_w, kind, resolution_w=resolution_w)


def heater(
    held_w: float, full_w: float, *, heating_s: int = 90, cycles: int = 6, period_s: int = 60
) -> np.ndarray:
    """Watts of a heater that heats up and then switches, on for `held_w / full_w` of its period. [W]"""
    on_s = round(period_s * held_w / full_w)
    cycle = np.r_[np.zeros(period_s - on_s), np.full(on_s, full_w)]
    return np.r_[np.full(heating_s, full_w), np.tile(cycle, cycles)]


def study_with(trace: Trace, start_s: float = EACH_S) -> tuple[Study, dict[str, Trace]]:
    """A study of one machine whose log is a switch-on test from `start_s` on."""
    study = edits.new_study("study").study
    study = edits.import_logs(study, [edits.NewLog((Source("d", "Alder.csv"),), "Alder", ())]).study
    log_id = study.logs[0].id
    study = edits.draw_run(study, log_id, start_s, trace.end_s, "switch-on test").study
    return study, {log_id: trace}
