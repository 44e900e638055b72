"""Cases: words of ten languages, quantities and units, several machines in one file."""

from collections.abc import Callable, Iterator, Sequence

import numpy as np

from tests.core.logs.corpus import (
    Case,
    Load,
    Machine,
    Writer,
    load,
    stamp,
    table,
)


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _words()
    yield from _quantities()
    yield from _layouts()


def _words() -> Iterator[Case]:
    t = load()
    languages = {
        "English": ("Date", "Time", "Power (W)", "Energy (kWh)", "Voltage (V)"),
        "German": ("Datum", "Uhrzeit", "Wirkleistung [W]", "Zählerstand [kWh]", "Spannung [V]"),
        "French": ("Date", "Heure", "Puissance active (W)", "Énergie consommée (kWh)", "Tension (V)"),
        "Spanish": ("Fecha", "Hora", "Potencia activa (W)", "Energía (kWh)", "Tensión (V)"),
        "Italian": ("Data", "Ora", "Potenza attiva (W)", "Energia (kWh)", "Tensione (V)"),
        "Dutch": ("Datum", "Tijd", "Vermogen (W)", "Meterstand (kWh)", "Spanning (V)"),
        "Polish": ("Data", "Godzina", "Moc czynna (W)", "Zużycie (kWh)", "Napięcie (V)"),
        "Portuguese": ("Data", "Hora", "Potência ativa (W)", "Energia (kWh)", "Tensão (V)"),
        "Swedish": ("Datum", "Klockslag", "Effekt (W)", "Mätarställning (kWh)", "Spänning (V)"),
        "Japanese": ("日付", "時刻", "消費電力 (W)", "積算電力量 (kWh)", "電圧 (V)"),
    }
    w = Writer(t)
    for language, head in languages.items():
        text = table(
            t,
            head,
            (
                lambda i: stamp(t.time_s[i], "%d.%m.%Y"),
                lambda i: stamp(t.time_s[i], "%H:%M:%S"),
                w.watts,
                w.kwh,
                lambda i: f"{229 + i % 3}.{i % 10}",
            ),
            ";",
        )
        yield Case(f"words in {language}", text.encode(), (Machine(t),), file="Alder.csv")
    bare = {
        "German": "Leistung",
        "French": "Puissance",
        "Polish": "Moc",
        "Japanese": "電力",
        "Swedish": "Effekt",
    }
    for language, word in bare.items():
        text = table(t, ("Zeit", word), (w.time, w.watts), ";")
        yield Case(f"power without unit in {language}", text.encode(), (Machine(t, has_counter=False),))


def _quantities() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    alone = (Machine(t, has_counter=False),)
    w = Writer(t)

    def of(head: Sequence[str], *columns: Callable[[int], str]) -> bytes:
        return table(t, ("time", *head), (w.time, *columns)).encode()

    yield Case("power kW", of(("kW", "kWh"), w.kilowatts, w.kwh), one)
    yield Case("power mW", of(("P/mW", "E/Wh"), w.milliwatts, w.wh), one)
    yield Case("milliwatts unsaid", of(("power", "energy_wh"), w.milliwatts, w.wh), one)
    yield Case("milliwatts unsaid, no counter", of(("power",), w.milliwatts), alone)
    yield Case("kilowatts unsaid", of(("power", "energy (Wh)"), w.kilowatts, w.wh), one)
    yield Case("counter unit unsaid", of(("power (W)", "energy"), w.watts, w.kwh), one)
    yield Case("counter kJ", of(("W", "energy kJ"), w.watts, w.joules(1e3, 2)), one)
    yield Case("counter MJ", of(("W", "energy MJ"), w.watts, w.joules(1e6, 5)), one)
    yield Case(
        "counter alone",
        of(("energy (Wh)",), w.wh),
        (Machine(t, power_within=400.0),),
        problems=("log.power_from_counter",),
    )
    volts, amps = (lambda i: "230.0"), (lambda i: f"{t.power_w[i] / 230:.4f}")
    yield Case(
        "volts and amperes", of(("U [V]", "I [A]"), volts, amps), alone, problems=("log.apparent_power",)
    )
    apparent = lambda i: f"{t.power_w[i] * 1.3:.1f}"  # noqa: E731
    reactive = lambda i: f"{t.power_w[i] * 0.8:.1f}"  # noqa: E731
    head = ("Apparent power (VA)", "Reactive power (var)", "Power factor", "Active power (W)")
    yield Case("active among others", of(head, apparent, reactive, lambda i: "0.77", w.watts), alone)
    german = ("Scheinleistung", "Blindleistung", "Leistungsfaktor", "Wirkleistung")
    yield Case(
        "active among others in German", of(german, apparent, reactive, lambda i: "0.77", w.watts), alone
    )
    most = lambda i: f"{t.power_w[i] + 5:.1f}"  # noqa: E731
    least = lambda i: f"{t.power_w[i] - 5:.1f}"  # noqa: E731
    yield Case("mean between extremes", of(("min W", "avg W", "max W"), least, w.watts, most), alone)
    half = t.time_s.size // 2
    reset = lambda i: f"{t.counter_wh[i] - (t.counter_wh[half] if i >= half else 0):.1f}"  # noqa: E731
    yield Case(
        "counter reset",
        of(("W", "Wh"), w.watts, reset),
        (Machine(t, counter_within=0.6),),
        problems=("log.counter_reset",),
    )
    rolled = lambda i: f"{(t.counter_wh[i] + 9960.0) % 10000:.1f}"  # noqa: E731
    yield Case("counter rolls over", of(("W", "Wh"), w.watts, rolled), one, problems=("log.counter_reset",))
    glitch = lambda i: "0.0" if i == 150 else f"{t.counter_wh[i]:.1f}"  # noqa: E731
    yield Case("counter with one bad value", of(("W", "Wh"), w.watts, glitch), one)
    each = np.diff(t.counter_wh, prepend=t.counter_wh[0])
    yield Case(
        "energy per interval",
        of(("W", "Wh"), w.watts, lambda i: f"{each[i]:.1f}"),
        one,
        problems=("log.energy_per_interval",),
    )
    day = of(
        ("W", "energy today (kWh)", "energy total (kWh)"),
        w.watts,
        w.kwh,
        lambda i: f"{t.counter_wh[i] / 1000 + 500:.4f}",
    )
    yield Case("day and total counters", day, one)
    warm = of(
        ("W", "bed temperature (°C)", "nozzle temp", "room °F", "state"),
        w.watts,
        lambda i: "60.0",
        lambda i: "210",
        lambda i: "68.0",
        lambda i: "busy",
    )
    yield Case("temperatures and a state", warm, alone)
    steps = np.arange(t.time_s.size) // 3 * 3
    yield Case(
        "values held",
        of(("W",), lambda i: f"{t.power_w[steps[i]] + steps[i] % 7:.1f}"),
        (Machine(Load(t.time_s, t.power_w[steps] + steps % 7, t.counter_wh), has_counter=False),),
        problems=("log.values_held",),
    )


def _layouts() -> Iterator[Case]:
    a, b = load(seed=1), load(seed=2, start_wh=500.0)
    wa, wb = Writer(a), Writer(b)
    two = (Machine(a, "Alder"), Machine(b, "Birch"))
    wide = table(
        a,
        ("time", "Alder [W]", "Alder [kWh]", "Birch [W]", "Birch [kWh]"),
        (wa.time, wa.watts, wa.kwh, wb.watts, wb.kwh),
    )
    yield Case("wide", wide.encode(), two)
    words = table(a, ("time", "Alder power (W)", "Birch power (W)"), (wa.time, wa.watts, wb.watts))
    lone = (Machine(a, "Alder", False), Machine(b, "Birch", False))
    yield Case("wide in words", words.encode(), lone)
    rows = ["time,machine,W,kWh"]
    for i in range(a.time_s.size):
        rows += [
            f"{wa.time(i)},Alder,{wa.watts(i)},{wa.kwh(i)}",
            f"{wb.time(i)},Birch,{wb.watts(i)},{wb.kwh(i)}",
        ]
    yield Case("a row for each machine", "\n".join(rows).encode(), two)
    rows = ["device;quantity;value;time"]
    for i in range(a.time_s.size):
        for name, w in (("Alder", wa), ("Birch", wb)):
            rows += [f"{name};power;{w.watts(i)} W;{w.time(i)}", f"{name};energy;{w.kwh(i)} kWh;{w.time(i)}"]
    yield Case("a row for each quantity", "\n".join(rows).encode(), two)
    rows = ["when,item,value"]
    for i in range(a.time_s.size):
        rows += [f"{wa.time(i)},Alder power,{wa.watts(i)}", f"{wa.time(i)},Alder energy,{wa.kwh(i)}"]
    yield Case("machine and quantity in one name", "\n".join(rows).encode(), (Machine(a, "Alder"),))
    rows = ["time,quantity,value,unit"]
    for i in range(a.time_s.size):
        rows += [f"{wa.time(i)},power,{wa.watts(i)},W", f"{wa.time(i)},energy,{wa.kwh(i)},kWh"]
    yield Case("unit in a column", "\n".join(rows).encode(), (Machine(a),))
    named = table(a, ("device", "time", "W"), (lambda i: "Cedar", wa.time, wa.watts))
    yield Case("one machine named in a column", named.encode(), (Machine(a, "Cedar", False),))
