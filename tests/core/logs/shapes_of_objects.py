"""Cases: JSON whose rows hold lists of sensors or devices, or objects for each of them."""

import json
from collections.abc import Callable, Iterator
from typing import Any

import numpy as np

from tests.core.logs.corpus import Case, Load, Machine, Writer, load

ABSOLUTE = {"clock": "absolute", "start": "2025-06-23T09:36:00+00:00"}
Row = Callable[[int], dict[str, Any]]


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    half = Load(t.time_s, np.round(t.power_w / 2, 1), np.round(t.counter_wh / 2, 1))
    w = Writer(t)
    one, two = (Machine(t),), (Machine(t, "Alder"), Machine(half, "Birch"))

    def watts(i: int, of: Load = t) -> float:
        return float(of.power_w[i])

    def wh(i: int, of: Load = t) -> float:
        return float(of.counter_wh[i])

    def plain(i: int, of: Load = t) -> dict[str, Any]:
        return {"power_w": watts(i, of), "energy_wh": wh(i, of)}

    def valued(i: int, of: Load = t, key: str = "name") -> list[dict[str, Any]]:
        return [
            {key: "power", "value": watts(i, of), "unit": "W"},
            {key: "energy", "value": wh(i, of), "unit": "Wh"},
        ]

    rows: dict[str, tuple[Row, tuple[Machine, ...]]] = {
        "a list of sensors in each row": (lambda i: {"time": w.time(i), "sensors": valued(i)}, one),
        "a list of devices in each row": (
            lambda i: {
                "time": w.time(i),
                "name": "bench",
                "devices": [{"name": "Alder", **plain(i)}, {"name": "Birch", **plain(i, half)}],
            },
            two,
        ),
        "an object for each device": (
            lambda i: {"time": w.time(i), "devices": {"Alder": plain(i), "Birch": plain(i, half)}},
            two,
        ),
        "sensors of devices": (
            lambda i: {
                "data": {
                    "time": w.time(i),
                    "devices": [
                        {"id": "Alder", "sensors": valued(i, key="type")},
                        {"id": "Birch", "sensors": valued(i, half, "type")},
                    ],
                }
            },
            two,
        ),
        "a value and a unit for each quantity": (
            lambda i: {"time": w.time(i), **{r.pop("name"): r for r in valued(i)}},
            one,
        ),
        "a mean and a maximum for each quantity": (
            lambda i: {
                "time": w.time(i),
                "power": {"max": watts(i) + 20.0, "mean": watts(i)},
                "energy_wh": wh(i),
            },
            one,
        ),
        "a list of alarms beside the power": (
            lambda i: {"time": w.time(i), **plain(i), "alarms": [{"code": 1}, {"code": 2}, {"code": 3}]},
            one,
        ),
    }
    for name, (row, machines) in rows.items():
        written = [row(i) for i in range(t.time_s.size)]
        lines = "\n".join(map(json.dumps, written))
        yield Case(f"{name}, a line each", lines.encode(), machines, file="log.json")
        yield Case(f"{name}, in an array", json.dumps(written).encode(), machines, file="log.json")
    sides = [
        {"ts": 1750671360 + 10 * i, "names": ["power", "energy"], "values": [watts(i), wh(i) / 1000],
         "units": ["W", "kWh"]}
        for i in range(t.time_s.size)
    ]  # fmt: skip
    yield Case(
        "names, values and units side by side", json.dumps(sides).encode(), one, file="log.json", **ABSOLUTE
    )
    apart = {
        name: {"time": [w.time(i) for i in range(t.time_s.size)], "power_w": of.power_w.tolist()}
        for name, of in (("Alder", t), ("Birch", half))
    }
    yield Case(
        "columns of each device",
        json.dumps(apart).encode(),
        (Machine(t, "Alder", False), Machine(half, "Birch", False)),
        file="log.json",
    )
