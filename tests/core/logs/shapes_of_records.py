"""Logs whose rows are objects, blocks of lines, elements or columns, as programs write them."""

import io
import json
from collections.abc import Callable
from datetime import UTC, timedelta
from typing import Any

from openpyxl import Workbook

from tests.core.logs.corpus import START, Case, Machine, Writer, load, stamp

ALDER, BIRCH = load(), load(seed=2)
_W = Writer(ALDER)
_ROWS = range(ALDER.time_s.size)
_UTC = "2025-06-23T09:36:00+00:00"


def cases() -> list[Case]:
    """Every such shape."""
    return [*_in_lines(), *_printed(), *_json(), *_blocks(), *_tags(), *_lying()]


def _iso(i: int) -> str:
    return stamp(ALDER.time_s[i], "%Y-%m-%dT%H:%M:%S")


def _unix_s(i: int) -> int:
    return int(START.replace(tzinfo=UTC).timestamp() + ALDER.time_s[i])


def _values(i: int) -> dict[str, float]:
    return {"power_w": float(ALDER.power_w[i]), "energy_kwh": float(ALDER.counter_wh[i]) / 1000}


def _lines(name: str, row: Callable[[int], str], file: str = "log.txt", **more: Any) -> Case:
    text = "\n".join(row(i) for i in _ROWS) + "\n"
    return Case(name, text.encode(), more.pop("machines", (Machine(ALDER),)), file=file, **more)


def _both() -> tuple[Machine, ...]:
    return Machine(ALDER, "alder", has_counter=False), Machine(BIRCH, "birch", has_counter=False)


def _in_lines() -> list[Case]:
    def two(i: int) -> str:
        powers = {"alder": ALDER.power_w[i], "birch": BIRCH.power_w[i]}
        lines = [f"{_W.time(i)} {name} {json.dumps({'apower': w})}" for name, w in powers.items()]
        return "\n".join([*lines, f'{_W.time(i)} hall {{"rssi": -60, "uptime": {10 * i}}}'])

    def protocol(i: int) -> str:
        return f"meter,device=alder power={_W.watts(i)},state=1i {_unix_s(i)}000000000"

    only = (Machine(ALDER, "alder", has_counter=False),)
    return [
        _lines(
            "a topic before each object", lambda i: f"hall/plug {json.dumps({'time': _iso(i), **_values(i)})}"
        ),
        _lines(
            "a stamp and a topic before each object",
            lambda i: f"{_W.time(i)} hall/plug {json.dumps(_values(i))}",
        ),
        _lines("topics of machines and of other things", two, machines=_both()),
        _lines("tags, values and a moment", protocol, machines=only, clock="absolute", start=_UTC),
        _lines(
            "a comma before the fraction, a name and a level",
            lambda i: f"{_W.time(i)},000 - plug - INFO - power: {_W.watts(i)} W, energy: {_W.kwh(i)} kWh",
        ),
    ]


def _printed() -> list[Case]:
    def moment(i: int) -> str:
        at = START + timedelta(seconds=float(ALDER.time_s[i]))
        return (
            f"{{'at': {at!r}, 'ok': True, 'note': None, 'power_w': {_W.watts(i)}, 'energy_kwh': {_W.kwh(i)}}}"
        )

    return [
        _lines("printed objects", lambda i: str({"time": _iso(i), "on": True, **_values(i)})),
        _lines("printed objects with moments", moment),
        _lines("printed objects after a stamp", lambda i: f"{_W.time(i)} INFO {_values(i)}"),
    ]


def _json() -> list[Case]:
    histories = [
        [
            {
                "state": str(truth.power_w[i]),
                "last_changed": _iso(i) + "+00:00",
                **({"entity": f"sensor.{name}_power", "unit": "W"} if i == 0 else {}),
            }
            for i in _ROWS
        ]
        for name, truth in (("alder", ALDER), ("birch", BIRCH))
    ]
    return [
        Case("a list for each sensor, named once", json.dumps(histories).encode(), _both(), "absolute", _UTC),
        _lines("objects over several lines", lambda i: json.dumps({"time": _iso(i), **_values(i)}, indent=1)),
    ]


def _blocks() -> list[Case]:
    def named(i: int) -> str:
        pairs = {"Zeit": _W.time(i), "Leistung": f"{_W.watts(i)} W", "Zählerstand": f"{_W.kwh(i)} kWh"}
        return "\n".join(f"{name}: {value}" for name, value in pairs.items())

    def by_device(truth: Any, name: str) -> str:
        w = Writer(truth)
        return f"Device: {name}\n" + "".join(f"Time: {w.time(i)}\nPower: {w.watts(i)} W\n\n" for i in _ROWS)

    both = (by_device(ALDER, "alder") + by_device(BIRCH, "birch")).encode()
    return [
        _lines("blocks and blank lines", lambda i: named(i) + "\n"),
        _lines("blocks and rulers", lambda i: named(i) + "\n---"),
        _lines("blocks with titles", lambda i: f"===== {i + 1} =====\n" + named(i).replace(": ", " = ")),
        _lines(
            "a list of names and values", lambda i: "- " + named(i).replace("\n", "\n  "), file="log.yaml"
        ),
        _lines(
            "blocks below their stamps",
            lambda i: f"[{_W.time(i)}]\nwatts = {_W.watts(i)}\nkwh = {_W.kwh(i)}",
        ),
        Case("blocks of two machines", both, _both(), file="log.txt"),
    ]


def _tags() -> list[Case]:
    def case(name: str, row: Callable[[int], str], around: tuple[str, str], file: str = "log.xml") -> Case:
        text = around[0] + "\n".join(row(i) for i in _ROWS) + around[1]
        return Case(name, text.encode(), (Machine(ALDER),), file=file)

    def cells(i: int, begin: str, end: str) -> str:
        return "".join(f"{begin}{c}{end}" for c in (_W.time(i), _W.watts(i), _W.kwh(i)))

    form = "urn:schemas-microsoft-com:office:spreadsheet"
    typed = "<ss:Cell><ss:Data ss:Type='{}'>{}</ss:Data></ss:Cell>"
    words = "".join(typed.format("String", h) for h in ("time", "power [W]", "energy [kWh]"))
    book = (
        f"<?xml version='1.0'?><ss:Workbook xmlns:ss='{form}'><ss:Worksheet ss:Name='a'><ss:Table>"
        f"<ss:Row>{words}</ss:Row>",
        "</ss:Table></ss:Worksheet></ss:Workbook>",
    )
    page = (
        "<html><body><table><tr><td>Report</td></tr></table><table><tr><th>time<th>power&nbsp;(W)<th>kWh</tr>",
        "",
    )
    return [
        case(
            "an element for each row",
            lambda i: (
                f"<Row><Time>{_iso(i)}</Time><PowerW>{_W.watts(i)}</PowerW><TotalkWh>{_W.kwh(i)}</TotalkWh></Row>"
            ),
            ("<?xml version='1.0'?>\n<Log>", "</Log>"),
        ),
        case(
            "values as attributes",
            lambda i: f"<s time='{_iso(i)}' power='{_W.watts(i)}' energy_kwh='{_W.kwh(i)}'/>",
            ("<log name='plug'>", "</log>"),
        ),
        case(
            "a workbook as XML",
            lambda i: (
                "<ss:Row>"
                + typed.format("DateTime", f"{_iso(i)}.000")
                + typed.format("Number", _W.watts(i))
                + typed.format("Number", _W.kwh(i))
                + "</ss:Row>"
            ),
            book,
            "log.xls",
        ),
        case("a table of HTML", lambda i: f"<tr>{cells(i, '<td>', '</td>')}</tr>", page, "log.xls"),
    ]


def _lying() -> list[Case]:
    comma = Writer(ALDER, "%d.%m.%Y %H:%M:%S", ",")
    rows = (("Zeit", comma.time), ("Leistung [W]", comma.watts), ("Energie [kWh]", comma.kwh))
    text = "\n".join(";".join([head, *(cell(i) for i in _ROWS)]) for head, cell in rows)
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["a title"])
    sheet.append(["time", *(START + timedelta(seconds=float(s)) for s in ALDER.time_s)])
    sheet.append(["power W", *map(float, ALDER.power_w)])
    sheet.append(["energy kWh", *(float(e) / 1000 for e in ALDER.counter_wh)])
    stream = io.BytesIO()
    book.save(stream)
    return [
        Case("a row for each quantity, many columns", text.encode(), (Machine(ALDER),)),
        Case("a row for each quantity in a sheet", stream.getvalue(), (Machine(ALDER),), file="log.xlsx"),
    ]
