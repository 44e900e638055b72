"""Cases: delimiters, encodings, headings, and how numbers are spelt."""

from collections.abc import Iterator

import numpy as np

from tests.core.logs.corpus import (
    Case,
    Load,
    Machine,
    Writer,
    load,
    plain,
    table,
)


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _text()
    yield from _numbers()


def _text() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    for sign, name in ((",", "comma"), (";", "semicolon"), ("\t", "tab"), ("|", "pipe")):
        yield Case(f"delimiter {name}", plain(t, delimiter=sign).encode(), one, reading={"delimiter": sign})
    spaced = "\n".join(
        "   ".join(line.split(",")) for line in plain(t, head=("date clock", "W", "kWh")).splitlines()
    )
    yield Case(
        "delimiter spaces",
        spaced.replace("date clock", "date   clock").encode(),
        one,
        reading={"delimiter": " "},
    )
    yield Case("quotes", plain(t, quoted=True).encode(), one)
    yield Case("mark of UTF-8", b"\xef\xbb\xbf" + plain(t).encode(), one, reading={"encoding": "utf-8"})
    yield Case(
        "UTF-16 little", b"\xff\xfe" + plain(t).encode("utf-16-le"), one, reading={"encoding": "utf-16-le"}
    )
    yield Case(
        "UTF-16 big", b"\xfe\xff" + plain(t).encode("utf-16-be"), one, reading={"encoding": "utf-16-be"}
    )
    yield Case("UTF-16 without mark", plain(t).encode("utf-16-le"), one)
    umlaut = plain(
        t,
        delimiter=";",
        decimal=",",
        form="%d.%m.%Y %H:%M:%S",
        head=("Zeit", "Leistung (W)", "Zählerstand (kWh)"),
    )
    yield Case("cp1252", umlaut.encode("cp1252"), one, reading={"encoding": "cp1252", "decimal": ","})
    polish = plain(
        t,
        delimiter=";",
        decimal=",",
        form="%d.%m.%Y %H:%M:%S",
        head=("Czas", "Moc (W)", "Zużycie energii (kWh)"),
    )
    yield Case("cp1250", ("Urządzenie: żółte\n" + polish).encode("cp1250"), one)
    yield Case("CRLF", plain(t, newline="\r\n").encode(), one)
    yield Case("CR alone", plain(t, newline="\r").encode(), one)
    yield Case("no last line end", plain(t).rstrip("\n").encode(), one)
    yield Case(
        "preamble",
        b"Meter log\nserial: 000\n\n# columns below\n" + plain(t).encode(),
        one,
        reading={"header_row": 5},
    )
    units = plain(t, head=("time", "power", "energy")).replace("energy\n", "energy\n,W,kWh\n", 1)
    yield Case("units row", units.encode(), one)
    brackets = plain(t, head=("time", "power", "energy")).replace("energy\n", "energy\n[s],[W],[kWh]\n", 1)
    yield Case("units row in brackets", brackets.encode(), one)
    yield Case("no headings", plain(t, head=()).encode(), one, reading={"header_row": None})
    yield Case("trailing delimiter", plain(t).replace("\n", ",\n").encode(), one)
    yield Case("headings in a comment", ("# " + plain(t)).encode(), one)
    yield Case("blank lines", plain(t).replace("\n", "\n\n").encode(), one)


def _numbers() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    day = "%d.%m.%Y %H:%M:%S"
    yield Case(
        "decimal comma",
        plain(t, delimiter=";", decimal=",", form=day).encode(),
        one,
        reading={"decimal": ","},
    )
    high = load(start_wh=1234567.0)
    for group, decimal, name in (
        (".", ",", "points"),
        (",", ".", "commas"),
        ("\u00a0", ",", "no-break spaces"),
        ("\u202f", ",", "narrow spaces"),
        (" ", ",", "spaces"),
        ("'", ".", "apostrophes"),
    ):
        w = Writer(high, decimal=decimal, group=group)
        text = table(high, ("time", "power (W)", "energy (Wh)"), (w.time, w.watts, w.wh), ";")
        yield Case(f"thousands {name}", text.encode(), (Machine(high),))
    w = Writer(t)
    in_cell = table(
        t, ("time", "power", "energy"), (w.time, lambda i: w.watts(i) + " W", lambda i: w.kwh(i) + " kWh")
    )
    yield Case("unit in the cell", in_cell.encode(), one)
    exponent = table(t, ("time", "power [W]"), (w.time, lambda i: f"{t.power_w[i]:.4e}"))
    yield Case("exponents", exponent.encode(), (Machine(t, has_counter=False),))
    every = np.arange(t.time_s.size) % 17 == 5
    for spelling in ("NaN", "-", "", "unavailable", "n/a", "null"):
        text = table(t, ("time", "W"), (w.time, lambda i, s=spelling: s if every[i] else w.watts(i)))  # type: ignore[misc]
        kept = Load(t.time_s[~every], t.power_w[~every], t.counter_wh[~every])
        case = (Machine(kept, has_counter=False),)
        yield Case(f"missing as '{spelling}'", text.encode(), case, problems=("log.missing_values",))
    mixed = table(
        t,
        ("time", "power"),
        (
            w.time,
            lambda i: f"{t.power_w[i]:.1f} W" if t.power_w[i] < 200 else f"{t.power_w[i] / 1000:.4f} kW",
        ),
    )
    yield Case("W and kW by turns", mixed.encode(), (Machine(t, has_counter=False),))
