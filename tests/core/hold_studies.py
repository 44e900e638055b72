"""Studies of hold tests whose beds are known: one log a test, from simulated beds."""

from collections.abc import Sequence

import numpy as np
from attrs import evolve

from core import edits
from core.study import Source, Study
from core.traces import Trace
from tests.core.held_beds import BEFORE_S, Bed, simulated

ROOM_C = 20.0
SECONDS = 4000


def held_study(
    given: Sequence[tuple[str, Bed, Sequence[float]]],
    *,
    seconds: int = SECONDS,
    seed: int = 1,
    one_meter: bool = False,
) -> tuple[Study, dict[str, Trace]]:
    """Machines with a bed and the temperatures it was held at, each in a log of its own. [degC]"""
    study = edits.set_room_c(edits.new_study("s").study, ROOM_C).study
    traces: dict[str, Trace] = {}
    for place, (name, bed, temperatures_c) in enumerate(given):
        differences = np.asarray(temperatures_c, dtype=np.float64) - ROOM_C
        found, _, _ = simulated(bed, differences, seconds, seed + place)
        for bed_c, trace in zip(temperatures_c, found, strict=True):
            run = edits.FoundRun(float(BEFORE_S), trace.end_s, "hold test", "", "")
            source = Source(f"{name} {bed_c}", f"{name} {bed_c:g}.csv")
            study = edits.import_logs(study, [edits.NewLog((source,), name, (run,))]).study
            log_id = study.logs[-1].id
            traces[log_id] = evolve(trace, key=f"{trace.key} {seconds}")
            study = edits.note_temperatures(study, study.runs_of(log_id)[0].id, bed_c, ROOM_C).study
        if place and not one_meter:
            study = edits.add_meter(study, f"Meter of {name}").study
        for log in study.logs_of(study.machines[-1].id):
            study = edits.assign_meter(study, log.id, study.meters[-1].id).study
    return study, traces


def with_areas(study: Study, areas_dm2: Sequence[float], supplies: Sequence[str] = ()) -> Study:
    """The study with the areas of its beds, and how they are fed."""
    for machine, area_dm2 in zip(study.machines, areas_dm2, strict=True):
        study = edits.set_property(study, machine.id, "Bed area (dm²)", area_dm2).study
    for machine, supply in zip(study.machines, supplies, strict=False):
        study = edits.set_property(study, machine.id, "Bed supply", supply).study
    return study
