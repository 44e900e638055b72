"""Cases: containers, and files with flaws that can be got over."""

import gzip
import io
import json
import sqlite3
import zipfile
from collections.abc import Iterator, Sequence
from datetime import UTC, timedelta
from pathlib import Path

import numpy as np

from tests.core.logs import binary_sheets
from tests.core.logs.corpus import (
    START,
    Case,
    Load,
    Machine,
    load,
    moment,
    plain,
    stamp,
)


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _containers()
    yield from _flaws()


def _containers() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    text = plain(t).encode()
    yield Case("gzip", gzip.compress(text), one, file="Alder.csv.gz")
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("Alder.csv", text)
        archive.writestr("folder/Birch.csv", plain(load(seed=2)))
    yield Case(
        "zip of two",
        packed.getvalue(),
        (Machine(t, "Alder"), Machine(load(seed=2), "Birch")),
        file="logs.zip",
    )
    rows = [
        {"t": stamp(s, "%Y-%m-%dT%H:%M:%S"), "power": p, "total_kwh": c / 1000}
        for s, p, c in zip(t.time_s, t.power_w, t.counter_wh, strict=True)
    ]
    lines = "\n".join(json.dumps(r) for r in rows)
    yield Case("JSON lines", lines.encode(), one, file="log.jsonl")
    yield Case("JSON lines, one broken", (lines + '\n{"t": "2025').encode(), one, refused=1, file="log.jsonl")
    yield Case("JSON array", json.dumps(rows).encode(), one, file="log.json")
    nested = {"meter": "x", "rows": [{"time": r["t"], "values": {"power_w": r["power"]}} for r in rows]}
    yield Case("JSON nested", json.dumps(nested).encode(), (Machine(t, has_counter=False),), file="log.json")
    yield from _tables(t, one)


def _tables(t: Load, one: tuple[Machine, ...]) -> Iterator[Case]:
    import openpyxl
    import pyarrow as pa
    from pyarrow import feather, parquet

    moments = [START + timedelta(seconds=float(s)) for s in t.time_s]
    for is_1904 in (False, True):
        book = openpyxl.Workbook()
        if is_1904:
            book.epoch = moment(1904, 1, 1)
        sheet = book.active
        assert sheet is not None
        sheet.append(["Bench meter"])
        sheet.append([])
        sheet.append(["Time", "Power (W)", "Energy (kWh)"])
        for at, p, c in zip(moments, t.power_w, t.counter_wh, strict=True):
            sheet.append([at, float(p), float(c) / 1000])
        out = io.BytesIO()
        book.save(out)
        yield Case(
            f"xlsx {'1904' if is_1904 else '1900'}",
            out.getvalue(),
            one,
            file="log.xlsx",
            reading={"header_row": 3},
        )
    for is_1904 in (False, True):
        first = moment(1904, 1, 1) if is_1904 else moment(1899, 12, 30)
        cells: dict[tuple[int, int], str | float] = {(0, 0): "Bench meter"}
        cells |= {(2, i): head for i, head in enumerate(("Time", "Power (W)", "Energy (kWh)"))}
        for i, at in enumerate(moments):
            cells[i + 3, 0] = (at - first) / timedelta(days=1)
            cells[i + 3, 1], cells[i + 3, 2] = float(t.power_w[i]), float(t.counter_wh[i]) / 1000
        yield Case(
            f"xlsb {'1904' if is_1904 else '1900'}",
            binary_sheets.workbook(cells, is_1904),
            one,
            file="log.xlsb",
            reading={"header_row": 3},
        )
    yield Case("ods", _ods(t), one, file="log.ods", reading={"header_row": 3})
    # written once by a library that writes the old format; nothing in it is measured
    old = Path(__file__).with_name("invented.xls").read_bytes()
    yield Case("xls", old, (Machine(load(rows=60)),), file="log.xls")
    columns = pa.table(
        {"time": pa.array(moments, pa.timestamp("ms")), "power_w": t.power_w, "energy_wh": t.counter_wh}
    )
    sink = io.BytesIO()
    parquet.write_table(columns, sink)
    yield Case("Parquet", sink.getvalue(), one, file="log.parquet")
    zoned = columns.set_column(0, "time", columns["time"].cast(pa.timestamp("us", "UTC")))
    sink = io.BytesIO()
    feather.write_feather(zoned, sink, "uncompressed")
    yield Case(
        "Arrow", sink.getvalue(), one, file="log.arrow", clock="absolute", start="2025-06-23T09:36:00+00:00"
    )
    base = sqlite3.connect(":memory:")
    base.execute("create table readings (id integer primary key, ts integer, watts real, note text)")
    base.execute("create table other (a, b)")
    first = START.replace(tzinfo=UTC).timestamp()
    base.executemany(
        "insert into readings (ts, watts) values (?, ?)",
        [(int(first + s), float(p)) for s, p in zip(t.time_s, t.power_w, strict=True)],
    )
    base.commit()
    data = base.serialize()
    base.close()
    alone = (Machine(t, has_counter=False),)
    yield Case("SQLite", data, alone, file="log.sqlite", clock="absolute", start="2025-06-23T09:36:00+00:00")


def _ods(t: Load) -> bytes:
    """A spreadsheet in the OpenDocument format: a title, an empty row, headings, rows with real dates."""

    def words(*cells: str) -> str:
        inner = "".join(
            f'<table:table-cell office:value-type="string"><text:p>{c}</text:p></table:table-cell>'
            for c in cells
        )
        return f"<table:table-row>{inner or '<table:table-cell/>'}</table:table-row>"

    def values(s: float, p: float, c: float) -> str:
        at = stamp(s, "%Y-%m-%dT%H:%M:%S")
        numbers = "".join(
            f'<table:table-cell office:value-type="float" office:value="{v!r}"/>' for v in (p, c / 1000)
        )
        date = f'<table:table-cell office:value-type="date" office:date-value="{at}"/>'
        return f"<table:table-row>{date}{numbers}</table:table-row>"

    rows = "".join(
        values(s, p, c)
        for s, p, c in zip(t.time_s.tolist(), t.power_w.tolist(), t.counter_wh.tolist(), strict=True)
    )
    space = "urn:oasis:names:tc:opendocument:xmlns:"
    content = (
        f'<?xml version="1.0" encoding="UTF-8"?><office:document-content xmlns:office="{space}office:1.0" '
        f'xmlns:table="{space}table:1.0" xmlns:text="{space}text:1.0" office:version="1.2"><office:body>'
        f'<office:spreadsheet><table:table table:name="Log">{words("Bench meter")}{words()}'
        f"{words('Time', 'Power (W)', 'Energy (kWh)')}{rows}"
        "</table:table></office:spreadsheet></office:body></office:document-content>"
    )
    kind = "application/vnd.oasis.opendocument.spreadsheet"
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("mimetype", kind, zipfile.ZIP_STORED)
        archive.writestr(
            "META-INF/manifest.xml",
            f'<?xml version="1.0"?><manifest:manifest xmlns:manifest="{space}manifest:1.0">'
            f'<manifest:file-entry manifest:full-path="/" manifest:media-type="{kind}"/>'
            '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>'
            "</manifest:manifest>",
        )
        archive.writestr("content.xml", content)
    return out.getvalue()


def _flaws() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    lines = plain(t).splitlines()
    head, rows = lines[0], lines[1:]

    def text(*parts: Sequence[str]) -> bytes:
        return ("\n".join(x for p in parts for x in p) + "\n").encode()

    again = [x for i, row in enumerate(rows) for x in ((head, row) if i and i % 60 == 0 else (row,))]
    yield Case("repeated headings", text([head], again), one, problems=("log.repeated_headings",))
    yield Case("trailing summary", text(lines, ["", "Total,,0.1234", "Mean power: 90 W"]), one, refused=2)
    yield Case("cut last row", text(lines)[:-1] + b"\n2025-06-23 10:1", one, refused=1)
    nul = text(lines[:100]) + b"\0" * 64 + text(lines[100:])
    yield Case("zero bytes", nul, one, problems=("log.nul_bytes",))
    spliced = [*lines[:50], lines[50] + lines[51], *lines[52:]]
    kept = np.delete(np.arange(t.time_s.size), (49, 50))
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("spliced row", text(spliced), fewer, refused=1)
    doubled = [x for i, x in enumerate(lines) for x in ((x, x) if i and i % 40 == 0 else (x,))]
    yield Case("repeated rows", text(doubled), one, problems=("log.repeated_rows",))
    yield Case("newest first", text([head], rows[::-1]), one, problems=("log.newest_first",))
    order = np.random.default_rng(3).permutation(len(rows))
    moved = [rows[i] for i in np.lexsort((order, np.arange(len(rows)) // 5))]
    yield Case("unsorted", text([head], moved), one, problems=("log.unsorted",))
    worded = [r.replace(r.split(",")[1], "broken") if i in (30, 90) else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), (30, 90))
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("words for a number", text([head], worded), fewer, refused=2)
    endless = [r.replace(r.split(",")[1], "inf") if i == 30 else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), 30)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("infinite value", text([head], endless), fewer, refused=1)
    odd = [r.replace("2025-06-23", "2025-06-31") if i == 70 else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), 70)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("a day that is not", text([head], odd), fewer, refused=1)
    leap = [r.replace("09:36:50", "09:36:60") for r in rows]
    kept = np.delete(np.arange(t.time_s.size), 5)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("leap second", text([head], leap), fewer, refused=1)
