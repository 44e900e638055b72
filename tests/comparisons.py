"""Comparisons made up for tests of figures, pages and pictures: seeded, of any size."""

import numpy as np

from core.problems import Problem
from core.results.values import (
    BedShare,
    Comparison,
    Energy,
    Finding,
    Influence,
    MachineResult,
    Measured,
    RunResult,
)
from core.study import Log, Machine, Meter, Run, Source, Study

NAMES = (
    "Alder",
    "Birch",
    "Cedar",
    "Hazel",
    "Rowan",
    "Larch",
    "Maple by the workshop door, second shelf",
    "Oak",
    "Elm",
    "Yew",
    "Hornbeam",
    "Willow",
)


def make(
    machines: int = 5, runs: int = 4, *, seed: int = 3, left_out: bool = True, unseen: bool = True
) -> tuple[Study, Comparison]:
    """A study and its comparison: `machines` machines that made `runs` parts each."""
    rng = np.random.default_rng(seed)
    results = []
    study_runs = []
    for i in range(machines):
        name = NAMES[i % len(NAMES)] + (f" {i // len(NAMES) + 1}" if i >= len(NAMES) else "")
        minutes = 36.0 + 50.0 * (i / max(machines - 1, 1)) + rng.uniform(-2, 2)
        mean_wh = 21.0 + 13.0 * (i / max(machines - 1, 1)) + rng.uniform(-0.5, 0.5)
        fast = unseen and i == 3
        made = []
        for j in range(runs):
            run_id = f"r{i}-{j}"
            energy = mean_wh * (1 + 0.015 * rng.standard_normal())
            seconds = 60 * minutes * (1 + 0.004 * rng.standard_normal())
            included = not (left_out and i == 1 and j == runs - 1 and runs > 1)
            share = 0.5 + 0.02 * rng.standard_normal()
            bed = (
                BedShare(None, None, None, "heater switching", None, 0.31, 0.8)
                if fast
                else BedShare(share, 0.012, share * energy, "heater switching")
            )
            made.append(
                RunResult(
                    run_id,
                    f"m{i}",
                    f"run {j + 1}",
                    600.0 * j,
                    600.0 * j + seconds,
                    f"2026-05-{j + 4:02d}T09:15:00",
                    "A",
                    included,
                    None if included else "door was open",
                    not included,
                    seconds,
                    energy,
                    0.012 * energy,
                    energy * 3600 / seconds,
                    1000 / energy,
                    Energy(energy, (Influence("meter gain", 0.005 * energy, "meter"),), "counter"),
                    bed,
                )
            )
            study_runs.append(Run(run_id, f"g{i}", 600.0 * j, 600.0 * j + seconds))
        results.append(_machine(f"m{i}", name, i, tuple(made)))
    results.sort(key=lambda m: m.energy_wh.value if m.energy_wh else np.inf)
    study = Study(
        id="s",
        name="Hose clip study",
        part="hose clip",
        bed_c=60.0,
        machines=tuple(Machine(m.machine_id, m.name, m.slot) for m in results),
        meters=(Meter("k", "meter 1"),),
        logs=tuple(
            Log(f"g{m.slot}", m.machine_id, "k", (Source(f"{m.slot:064d}", f"{m.slot}.csv"),))
            for m in results
        ),
        runs=tuple(study_runs),
        invented=True,
    )
    first = results[0].name if results else ""
    findings = (
        Finding("caution", Problem("fairness.warm_start"), ("m1",), 0.8),
        Finding("note", Problem("fairness.meters_differ"), ("m0", "m1")),
    )
    comparison = Comparison(
        part="hose clip",
        boundary=study.boundary,
        machines=tuple(results),
        pairs=(),
        fairness=findings if machines > 1 else (),
        problems=(),
        headline=f"{first} makes the part for 21.4 Wh, 35 % less than Rowan (95 % interval 33 to 37 %)."
        if machines > 1
        else "Only one machine: there is nothing to compare yet.",
        conditions=f"Warm-up and processing, bed at 60 °C, {runs} runs a machine; one run of Birch left out.",
    )
    return study, comparison


def _machine(machine_id: str, name: str, slot: int, runs: tuple[RunResult, ...]) -> MachineResult:
    counted = [r for r in runs if r.included]

    def mean(key: str) -> Measured | None:
        values = [getattr(r, key) for r in counted]
        if not values:
            return None
        spread = None if len(values) < 2 else 3.18 * float(np.std(values, ddof=1)) / len(values) ** 0.5
        return Measured(float(np.mean(values)), spread)

    shares = [r.bed.share for r in counted if r.bed is not None and r.bed.share is not None]
    mean_w = mean("mean_w")
    return MachineResult(
        machine_id,
        name,
        slot,
        (f"{slot}.csv",),
        runs,
        mean("energy_wh"),
        mean("parts_per_kwh"),
        mean_w,
        mean("seconds"),
        Measured(float(np.mean(shares)), 0.013) if shares else None,
        float(np.mean(shares)) * mean_w.value if shares and mean_w else None,
        Measured(4.2, 0.4),
        "steady rest",
    )
