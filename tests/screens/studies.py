"""The studies that are rendered: what lies on a user's desk, from nothing to a dozen machines."""

from collections.abc import Callable
from pathlib import Path

import numpy as np
from attrs import frozen

from tests.comparisons import NAMES

STEP_S = 2.0
EPOCH_S = 1_790_000_000


@frozen
class Desk:
    """A study to render: its name in the pictures' names, and the logs that are dropped for it."""

    name: str
    logs: Callable[[Path], list[Path]] | None


def one_run(folder: Path) -> list[Path]:
    """A single machine that made a single part."""
    return [write_log(folder / "Alder.csv", 0, runs=1)]


def twelve_machines(folder: Path) -> list[Path]:
    """A dozen machines, one of them with a name too long for any column."""
    return [write_log(folder / f"{name}.csv", seed, runs=4) for seed, name in enumerate(NAMES)]


DESKS = (
    Desk("demo", None),
    Desk("empty", lambda folder: []),
    Desk("one-run", one_run),
    Desk("twelve", twelve_machines),
)


def write_log(path: Path, seed: int, runs: int) -> Path:
    """Write the log of an invented machine that made `runs` parts, with rests between them."""
    rng = np.random.default_rng(seed)
    standby_w, base_w, bed_w = 3.0 + 0.3 * seed, 16.0 + 1.5 * rng.random(), 70.0 + 4.0 * seed
    minutes = 24.0 + 2.2 * seed
    parts = [np.full(round(600 / STEP_S), standby_w)]
    for _ in range(runs):
        parts += [_run(rng, standby_w, base_w, bed_w, minutes), np.full(round(1500 / STEP_S), standby_w)]
    power_w = np.concatenate(parts) + 0.05 * rng.standard_normal(sum(p.size for p in parts))
    counter_wh = np.cumsum(power_w) * STEP_S / 3600
    rows = [
        f"{EPOCH_S + i * STEP_S:.0f},{max(w, 0.0):.1f},{wh:.1f}"
        for i, (w, wh) in enumerate(zip(power_w, counter_wh, strict=True))
    ]
    path.write_text("\n".join(["time,power (W),energy (Wh)", *rows]) + "\n", encoding="utf-8")
    return path


def _run(
    rng: np.random.Generator, standby_w: float, base_w: float, bed_w: float, minutes: float
) -> np.ndarray:
    """Warm-up at full power, then a bed that switches under a restless base load."""
    warm_up = np.full(round(rng.uniform(200, 220) / STEP_S), standby_w + bed_w + 30.0)
    count = round(60 * minutes * (1 + 0.004 * rng.standard_normal()) / STEP_S)
    at_s = np.arange(count) * STEP_S
    period_s = 44.0 + 3.0 * rng.standard_normal()
    is_on = (at_s % period_s) < 0.33 * period_s * (1 + 0.03 * rng.standard_normal())
    return np.concatenate([warm_up, standby_w + base_w + bed_w * is_on + 1.6 * rng.standard_normal(count)])
