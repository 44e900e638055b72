"""Write the logs of the demo and the truth behind them: ``python -m demo_data.make_demo``.

The same seed gives the same bytes (of the packed log: the same bytes when unpacked, as packers differ).
"""

import argparse
import gzip
import json
from dataclasses import asdict, dataclass
from datetime import datetime
from pathlib import Path

import numpy as np

from demo_data import story
from demo_data.machine import F64, STEP_S, Bench, Machine
from demo_data.meter import Logged, Meter, Setting, read_meter
from demo_data.shapes import (
    Writer,
    device_table,
    epoch_milliwatts,
    german_semicolon,
    iso_comma,
    long_table,
    quoted_twelve_hours,
    summer_time,
)

SEED = 20261013
FOLDER = Path(__file__).parent
COLD = (0.0, 1.0, "")


@dataclass(frozen=True)
class DemoLog:
    """One log of the demo: its text, and what is true of it."""

    file: str
    text: str
    truth: dict[str, object]


def all_logs(seed: int = SEED) -> list[DemoLog]:
    """Every log of the demo, made from `seed`."""
    rngs = [np.random.default_rng([seed, number]) for number in range(9)]
    one, two = "Meter 1", "Meter 2"
    logs = []

    alder = Bench(story.ALDER, rngs[0])
    made = story.day_of_parts(alder, (COLD,) * 4)
    logs.append(
        _log("Alder.csv", alder, made, one, Setting("sampled", 1, 0.1, 0.1, 4211.3), iso_comma,
             summer_time(2026, 10, 13, 9, 2))
    )  # fmt: skip

    birch = Bench(story.BIRCH, rngs[1], room_c=20.2)
    warm = (300.0, 1.0, "warm start: the bed was still hot from the run before")
    made = story.day_of_parts(birch, (COLD, COLD, warm, COLD, COLD))
    logs.append(
        _log("Birch.csv", birch, made, one, Setting("sampled", 2, 0.1, 0.1, 4388.9), german_semicolon,
             summer_time(2026, 10, 14, 8, 40))
    )  # fmt: skip

    cedar = Bench(story.CEDAR, rngs[2], room_c=20.8)
    broken = (0.0, 0.37, "broken off: the part came loose")
    made = story.day_of_parts(cedar, (COLD, COLD, broken, COLD, COLD))
    logs.append(
        _log("Cedar.csv", cedar, made, one, Setting("on_change", 1, 0.1, 0.001, 91.214), epoch_milliwatts,
             summer_time(2026, 10, 15, 8, 31))
    )  # fmt: skip

    hazel = Bench(story.HAZEL, rngs[3], room_c=20.4)
    made = story.day_of_parts(hazel, (COLD,) * 4)
    logs.append(
        _log("Hazel.csv", hazel, made, two, Setting("sampled", 2, 0.1, 0.1, 1702.6), quoted_twelve_hours,
             summer_time(2026, 10, 16, 9, 10))
    )  # fmt: skip

    rowan = Bench(story.ROWAN, rngs[4], room_c=20.6)
    made = story.day_of_parts(rowan, (COLD,) * 4)
    logs.append(
        _log("Rowan.csv", rowan, made, two, Setting("averaged", 10, 0.01, 0.1, 2010.4), long_table("Rowan"),
             summer_time(2026, 10, 17, 8, 55))
    )  # fmt: skip

    logs += [
        _hold_log(story.ALDER, rngs[5], ((60.0, 3600.0),), one, 2, summer_time(2026, 10, 12, 13, 5)),
        _hold_log(story.BIRCH, rngs[6], tuple((t, 2400.0) for t in (40.0, 50.0, 60.0, 70.0)), one, 2,
                  summer_time(2026, 10, 13, 13, 50)),
        _hold_log(story.HAZEL, rngs[7], ((60.0, 3600.0),), two, 2, summer_time(2026, 10, 20, 9, 30)),
        _hold_log(story.ROWAN, np.random.default_rng([seed, 10]), ((60.0, 3600.0),), two, 2,
                  summer_time(2026, 10, 19, 13, 20)),
    ]  # fmt: skip
    return [*logs, _switch_on_log(rngs[8]), _standby_log(seed)]


def _hold_log(
    machine: Machine,
    rng: np.random.Generator,
    levels: tuple[tuple[float, float], ...],
    meter: str,
    period_s: float,
    start: datetime,
) -> DemoLog:
    bench = Bench(machine, rng, room_c=20.9, room_k_per_h=0.0)
    made = story.holds(bench, levels)
    write = device_table(machine.name, ",", bench.bed_c, bench.room_c)
    setting = Setting("sampled", period_s, 0.1, 0.1, 120.0)
    return _log(f"{machine.name} hold test.csv", bench, made, meter, setting, write, start)


def _switch_on_log(rng: np.random.Generator) -> DemoLog:
    bench = Bench(story.HAZEL, rng, room_c=21.0, room_k_per_h=0.0)
    made = story.switch_on(bench)
    write = device_table("Hazel", "\t", None, 0.0)
    setting = Setting("sampled", 1, 0.1, 0.01, 15.0)
    start = summer_time(2026, 10, 20, 15, 5)
    return _log("Hazel switch-on test.tsv", bench, made, "Meter 2", setting, write, start)


def _standby_log(seed: int) -> DemoLog:
    bench = Bench(story.CEDAR, np.random.default_rng([seed, 9]))
    bench.plug_w = story.standby_week(bench.machine, bench.rng).tolist()
    bench.heater_w = [0.0] * len(bench.plug_w)
    made = [story.Stretch("standby", "Cedar standby", 0, len(bench.plug_w))]
    setting = Setting("sampled", 60, 0.1, 0.1, 300.0)
    write = device_table("Cedar", ",", None, 0.0)
    return _log(
        "Cedar standby week.csv.gz", bench, made, "Meter 1", setting, write, summer_time(2026, 10, 16, 0, 0)
    )


def _log(
    file: str,
    bench: Bench,
    made: list[story.Stretch],
    meter: str,
    setting: Setting,
    write: Writer,
    start: datetime,
) -> DemoLog:
    plug = np.asarray(bench.plug_w)
    logged = read_meter(story.METERS[meter], setting, plug)
    truth: dict[str, object] = {
        "file": file,
        "machine": bench.machine.name,
        "meter": meter,
        "sampling": setting.kind,
        "period_s": setting.period_s,
        "counter_step_wh": setting.counter_step_wh,
        "rows": int(logged.time_s.size),
        "first_stamp": _stamp(start, float(logged.time_s[0])),
        "room_c": bench.room_c,
        "energy_wh": _energy_wh(plug, 0, plug.size),
        "stretches": [
            _truth_of(s, plug, np.asarray(bench.heater_w), story.METERS[meter], logged, start) for s in made
        ],
    }
    return DemoLog(file, write(logged, start), truth)


def _truth_of(
    stretch: story.Stretch, plug: F64, heater: F64, meter: Meter, logged: Logged, start: datetime
) -> dict[str, object]:
    first_s = float(logged.time_s[0])
    energy = _energy_wh(plug, stretch.start, stretch.end)
    bed = _energy_wh(heater, stretch.start, stretch.end)
    seconds = (stretch.end - stretch.start) * STEP_S
    truth: dict[str, object] = {
        "kind": stretch.kind,
        "name": stretch.name,
        "start_s": stretch.start * STEP_S - first_s,
        "end_s": stretch.end * STEP_S - first_s,
        "start": _stamp(start, stretch.start * STEP_S),
        "end": _stamp(start, stretch.end * STEP_S),
        "seconds": seconds,
        "energy_wh": energy,
        "energy_as_metered_wh": round(energy * meter.gain + meter.offset_w * seconds / 3600.0, 4),
        "mean_w": round(energy * 3600.0 / seconds, 3),
        "bed_energy_wh": bed,
        "bed_share": round(bed / energy, 4),
    }
    if stretch.warm_up_end is not None:
        truth["warm_up_end_s"] = stretch.warm_up_end * STEP_S - first_s
        truth["bed_start_c"] = round(float(stretch.bed_start_c or 0.0), 1)
        truth["bed_set_c"] = stretch.bed_set_c
    if stretch.kind == "hold test" and stretch.warm_up_end is not None:
        last = slice(max(stretch.warm_up_end, stretch.end - round(1800 / STEP_S)), stretch.end)
        truth["bed_steady_w"] = round(float(heater[last].mean()), 3)
    if stretch.remark:
        truth["remark"] = stretch.remark
    return truth


def _energy_wh(power_w: F64, start: int, end: int) -> float:
    return round(float(power_w[start:end].sum()) * STEP_S / 3600.0, 4)


def _stamp(start: datetime, seconds: float) -> str:
    return datetime.fromtimestamp(start.timestamp() + seconds, start.tzinfo).isoformat(
        timespec="milliseconds"
    )


def truth_of(logs: list[DemoLog], seed: int) -> dict[str, object]:
    """Everything that is true of the demo: the machines, the meters, and what happened in each log."""
    return {
        "invented": "Every machine, meter, place and number here is invented; nothing was measured.",
        "place": story.LIBRARY,
        "part": story.PART,
        "bed_c": story.BED_C,
        "seed": seed,
        "meters": [asdict(meter) for meter in story.METERS.values()],
        "machines": [asdict(machine) for machine in story.MACHINES],
        "logs": [log.truth for log in logs],
    }


def write_demo(folder: Path, seed: int = SEED) -> None:
    """Write ``logs/`` and ``truth.json`` into `folder`."""
    logs = all_logs(seed)
    (folder / "logs").mkdir(parents=True, exist_ok=True)
    for log in logs:
        data = log.text.encode("utf-8")
        if log.file.endswith(".gz"):
            data = gzip.compress(data, mtime=0)
        (folder / "logs" / log.file).write_bytes(data)
    text = json.dumps(truth_of(logs, seed), indent=1, ensure_ascii=False) + "\n"
    (folder / "truth.json").write_bytes(text.encode("utf-8"))


def main() -> None:
    """Write the demo where it belongs, or into another folder."""
    parser = argparse.ArgumentParser(description="Write the logs of the demo and the truth behind them.")
    parser.add_argument("--to", type=Path, default=FOLDER, help="folder to write into")
    parser.add_argument("--seed", type=int, default=SEED)
    arguments = parser.parse_args()
    write_demo(arguments.to, arguments.seed)


if __name__ == "__main__":
    main()
