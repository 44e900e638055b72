"""Cases: lines that name their values."""

from collections.abc import Callable, Iterator

import numpy as np

from tests.core.logs.corpus import Case, Load, Machine, Writer, load, stamp

ABSOLUTE = {"clock": "absolute", "start": "2025-06-23T09:36:00+00:00"}


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    half = Load(t.time_s, np.round(t.power_w / 2, 1), t.counter_wh)
    w, comma, h = Writer(t), Writer(t, "%d.%m.%Y %H:%M:%S", ","), Writer(half)
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)

    def lines(write: Callable[[int], str]) -> bytes:
        return "".join(write(i) + "\n" for i in range(t.time_s.size)).encode()

    def told(i: int) -> str:
        return f"power={w.watts(i)} W energy={w.kwh(i)} kWh"

    yield Case(
        "pairs after a stamp", lines(lambda i: f"{stamp(t.time_s[i], '%Y-%m-%dT%H:%M:%S')} {told(i)}"), one
    )
    yield Case(
        "pairs without spaces", lines(lambda i: f"{w.time(i)};P={w.watts(i)}W;E={w.wh(i)}Wh;on=1"), one
    )
    yield Case(
        "pairs with decimal commas among commas",
        lines(lambda i: f"time={comma.time(i)}, power={comma.watts(i)} W, energy={comma.kwh(i)} kWh"),
        one,
        reading={"decimal": ","},
    )
    yield Case("pairs in quotes", lines(lambda i: f'ts="{w.time(i)}";P="{w.watts(i)}";E="{w.wh(i)}"'), one)
    yield Case(
        "pairs of letters",
        lines(lambda i: f"t={1750671360 + 10 * i} p={w.watts(i)} e={w.wh(i)} u=230.1 i=0.5"),
        one,
        **ABSOLUTE,
    )
    yield Case(
        "pairs with colons",
        lines(lambda i: f"{w.time(i)} Power: {w.watts(i)} W, Energy: {w.kwh(i)} kWh"),
        one,
    )
    yield Case(
        "pairs in a program's log",
        lines(lambda i: f"[{w.time(i)}] INFO Alder: {told(i)}"),
        (Machine(t, "Alder"),),
    )
    yield Case(
        "pairs of two machines",
        lines(
            lambda i: (
                f"{w.time(i)},device=Alder,power={w.watts(i)}\n{w.time(i)},device=Birch,power={h.watts(i)}"
            )
        ),
        (Machine(t, "Alder", False), Machine(half, "Birch", False)),
    )
    yield Case(
        "pairs with German names of several words",
        lines(
            lambda i: (
                f"Zeit={comma.time(i)}; aktuelle Leistung (W) = {comma.watts(i)}; Zählerstand (kWh) = "
                f"{comma.kwh(i)}"
            )
        ),
        one,
    )
    rows = lines(lambda i: f"{w.time(i)} power={w.watts(i)}").replace(b"\n", b"\nrestarted\n", 1)
    yield Case("a line of words among pairs", rows, alone, problems=("log.refused_rows",), refused=1)
    utf16 = lines(lambda i: f"time={w.time(i)} puissance={w.watts(i)} énergie_wh={w.wh(i)}").decode()
    yield Case("pairs in UTF-16", utf16.encode("utf-16"), one)
