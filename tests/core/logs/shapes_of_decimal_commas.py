"""Cases: decimal commas among cells that are parted by commas, without quotes."""

from collections.abc import Iterator

from tests.core.logs.corpus import Case, Machine, Writer, load, table


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    w = Writer(t, decimal=",")
    point = Writer(t)
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)
    told = {"delimiter": ",", "decimal": ","}
    head = ("time", "power [W]", "energy [kWh]")
    text = table(t, head, (w.time, w.watts, w.kwh))
    yield Case("all numbers cut by commas", text.encode(), one, reading=told)
    yield Case(
        "power alone cut by commas", table(t, head[:2], (w.time, w.watts)).encode(), alone, reading=told
    )
    yield Case("numbers cut by commas, no headings", table(t, (), (w.time, w.watts, w.kwh)).encode(), one)
    text = table(
        t,
        ("Zeit", "Gerät", "Leistung (W)", "Pegel", "Energie (kWh)", "Zustand"),
        (w.time, lambda i: "Alder", w.watts, lambda i: "-61", w.kwh, lambda i: "an"),
    )
    yield Case("numbers cut by commas beside whole ones", text.encode(), (Machine(t, "Alder"),), reading=told)
    text = table(
        t, ("time", "power", "voltage", "energy kWh"), (w.time, w.watts, lambda i: f"{229 + i % 3}", w.kwh)
    )
    yield Case("numbers cut by commas beside whole volts", text.encode(), one, reading=told)

    def shortest(i: int) -> str:
        return f"{t.power_w[i]:g}".replace(".", ",")

    text = table(t, head, (w.time, shortest, w.kwh))
    yield Case("fractions of zero left out", text.encode(), one, reading=told)
    text = table(t, ("time", "power"), (point.time, lambda i: f"{t.power_w[i]:.0f}", lambda i: f"{i % 2}"))
    rounded = Machine(t, has_counter=False, power_within=0.51)
    yield Case("a last column without a heading", text.encode(), (rounded,))
