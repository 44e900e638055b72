"""What is no log is refused with a problem that says so: no exception, no long wait, no changed file."""

import hashlib
import io
import lzma
import os
import sqlite3
import time
import zipfile
from collections import deque
from pathlib import Path

import numpy as np
import pytest

from core.logs import FileReading, find_files, read_bytes, read_path
from core.logs.sentences import SENTENCES
from core.logs.source import AHEAD, OnDisk
from core.problems import Severity
from core.progress import Cancelled
from core.wording import placed, sentence
from tests.core.logs.binary_sheets import workbook
from tests.core.logs.corpus import load, plain


def refused(found: FileReading) -> str:
    """The code of the one thing told about a file, whose sentence must be filled in."""
    assert not found.readings
    assert found.is_refused
    (told,) = found.problems
    assert "{" not in sentence(told)
    assert told.severity is Severity.ERROR
    return told.code


def _sqlite() -> bytes:
    base = sqlite3.connect(":memory:")
    base.execute("create table bookmarks (url text, title text)")
    base.execute("insert into bookmarks values ('a', 'b')")
    base.commit()
    data = base.serialize()
    base.close()
    return data


def _entities() -> bytes:
    """A workbook whose sheet names a file outside it as an entity."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr(
            "[Content_Types].xml",
            '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
        )
        archive.writestr(
            "xl/workbook.xml",
            '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]><workbook><sheets>'
            '<sheet name="&e;" sheetId="1"/></sheets></workbook>',
        )
        archive.writestr("xl/worksheets/sheet1.xml", "<worksheet/>")
    return out.getvalue()


def _far_cell() -> bytes:
    """A small workbook with one cell in the last corner that a sheet has."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["time", "power [W]"])
    sheet["XFD1048576"] = 1
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _ring_of_sectors() -> bytes:
    """A workbook of the old format whose second sector is followed by its first again, for ever."""
    data = bytearray(Path(__file__).with_name("invented.xls").read_bytes())
    table_at = (int.from_bytes(data[76:80], "little") + 1) * 512
    assert data[table_at + 4 : table_at + 8] == (2).to_bytes(4, "little")
    data[table_at + 4 : table_at + 8] = bytes(4)
    return bytes(data)


NOISE = np.random.default_rng(5).bytes(50_000)
HEAD = b"time,power [W]\n"
ROWS_OF_TAGS = b"".join(b"<tr><td>2025-06-23 09:%02d:00<td>62.3</tr>" % i for i in range(60))
ROWS_OF_XML = b"<r><time>2025-06-23 09:36:00</time><power>62.3</power></r>" * 20 + b"<r><power>%b</power></r>"
BAD = {
    "empty": (b"", "log.empty"),
    "blank": (b" \n\n \n", "log.empty"),
    "headings only": (HEAD, "log.no_rows"),
    "one row": (HEAD + b"2025-06-23 09:36:00,5.0\n", "log.too_few_rows"),
    "binary": (NOISE, "log.not_a_log"),
    "photograph": (b"\xff\xd8\xff\xe0\x00\x10JFIF" + NOISE, "log.not_a_log"),
    "document": (b"%PDF-1.7\n%\xe2\xe3\n1 0 obj\n", "log.not_a_log"),
    "web page": (b"<!DOCTYPE html>\n<html><body>1,2,3</body></html>", "log.not_a_log"),
    "web page with a table": (b"<!DOCTYPE html><table>" + ROWS_OF_TAGS + b"</table>", "log.not_a_log"),
    "names for more words in XML": (
        b'<!DOCTYPE l [<!ENTITY a "62.3"><!ENTITY b "&a;&a;">]><l>' + ROWS_OF_XML % b"&b;" + b"</l>",
        "log.not_a_log",
    ),
    "elements within elements": (b"<a>" * 100_000, "log.no_rows"),
    "prose": (b"Dear all,\nplease find the log attached.\nKind regards\n" * 20, "log.no_table"),
    "another program's database": (_sqlite(), "log.database_foreign"),
    "damaged database": (_sqlite()[:100] + NOISE, "log.database_damaged"),
    "damaged zip": (b"PK\x03\x04" + NOISE, "log.archive_unreadable"),
    "damaged gzip": (b"\x1f\x8b\x08\x00" + NOISE, "log.archive_unreadable"),
    "damaged Parquet": (b"PAR1" + NOISE + b"PAR1", "log.columns_damaged"),
    "damaged Arrow": (b"ARROW1\x00\x00" + NOISE, "log.columns_damaged"),
    "damaged xls": (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + NOISE, "log.sheet_damaged"),
    "outside entity": (_entities(), "log.sheet_damaged"),
    "two columns of which either may be cut": (
        b"time,volt,amp\n"
        + b"".join(
            b"2025-06-23 09:%02d:00,1%d,%d,%d\n" % (i, i % 10, i % 9 + 1, i % 7 + 1) for i in range(40)
        ),
        "log.decimal_comma_unclear",
    ),
    "a cell far out": (_far_cell(), "log.sheet_too_wide"),
    "a binary workbook without its sheet": (
        workbook({(0, 0): "time", (1, 0): 1.0}, relation="rId9"),
        "log.sheet_damaged",
    ),
    "a cell far out in a binary sheet": (
        workbook({(0, 0): "time", (0, 1): "power [W]", (1_048_575, 16_383): 1.0}),
        "log.sheet_too_wide",
    ),
    "a ring of sectors": (_ring_of_sectors(), "log.sheet_damaged"),
    "xz cut at once": (lzma.compress(b"time,W\n" * 99)[:9], "log.archive_unreadable"),
    "deep JSON": (b"[" * 200_000, "log.json_damaged"),
    "deep JSON objects": (b'{"a":' * 100_000, "log.json_damaged"),
    "JSON of one number": (b'{"a": 1}', "log.no_time"),
    "one long line": (b"1234567890" * (2 << 20), "log.line_too_long"),
    "very many columns": (b"," * (10 << 20) + b"\n" + b"1," * (5 << 20), "log.line_too_long"),
    "a row a day, a column an hour": (
        b"date,"
        + b",".join(b"%02d:00" % h for h in range(24))
        + b"\n"
        + b"".join(b"2025-06-%02d" % d + b",0.12" * 24 + b"\n" for d in range(1, 20)),
        "log.no_power",
    ),
    "no time": (b"a,b\n" + b"x,1.5\ny,0.5\n" * 50, "log.no_time"),
    "no power": (
        b"time,bed temperature [degC]\n2025-06-23 09:36:00,50\n2025-06-23 09:36:10,51\n",
        "log.no_power",
    ),
    "years that are none": (
        HEAD + b"0001-01-01 00:00:00,5\n0001-01-01 00:00:10,6\n" * 9,
        "log.times_outside",
    ),
    "years that will never be": (
        HEAD + b"31.12.9999 23:00:00,5\n31.12.9999 23:00:10,6\n" * 9,
        "log.times_outside",
    ),
    "no such hours": (HEAD + b"2025-06-23 25:61:61,5\n2025-06-23 25:61:62,6\n" * 9, "log.times_unreadable"),
    "all missing": (
        HEAD + b"".join(b"2025-06-23 09:36:%02d,NaN\n" % i for i in range(60)),
        "log.too_few_rows",
    ),
}


@pytest.mark.parametrize("name", BAD)
def test_refused_with_its_reason(name: str) -> None:
    data, code = BAD[name]
    started = time.perf_counter()
    found = read_bytes(data, "thing.csv")
    assert refused(found) == code, [(p.code, sentence(p)) for p in found.problems]
    assert time.perf_counter() - started < 30


@pytest.mark.parametrize("stamp", ["0001-01-01 00:00:00", "9999-12-31 23:59:59", "01.01.0001 00:00:00"])
def test_times_of_no_possible_year_are_named(stamp: str) -> None:
    data = HEAD + f"{stamp},5\n".encode() * 30
    found = read_bytes(data, "Alder.csv")
    refused(found)
    said = next(placed(p) for p in found.problems if p.severity is Severity.ERROR)
    assert said.startswith("Alder.csv, row 2: ")
    assert stamp in said
    assert "1990 to 2100" in said


def test_one_row_is_said_in_the_singular() -> None:
    (only,) = read_bytes(HEAD + b"2025-06-23 09:36:00,5.0\n", "log.csv").problems
    assert sentence(only).startswith("Only 1 row could be used")
    text = plain(load()).replace("2025-06-23 09:37:00", "never")
    (reading,) = read_bytes(text.encode(), "log.csv").readings
    said = [sentence(p) for p in reading.problems]
    assert said == ["1 row could not be used, the first at line 8. The Reading panel lists it."]
    twice = text.replace("2025-06-23 09:38:00", "never")
    (reading,) = read_bytes(twice.encode(), "log.csv").readings
    assert sentence(reading.problems[0]).startswith("2 rows could not be used")


def test_a_year_9999_among_good_rows_is_only_that_row() -> None:
    text = plain(load()).replace("2025-06-23 09:37:00", "9999-12-31 23:59:59")
    (reading,) = read_bytes(text.encode(), "log.csv").readings
    assert reading.rows_refused == 1
    assert reading.trace is not None
    assert reading.trace.time_s.size == 239


def test_folder_and_odd_files(tmp_path: Path) -> None:
    (tmp_path / "dead").symlink_to(tmp_path / "nothing")
    (tmp_path / "loop").symlink_to(tmp_path / "loop")
    os.mkfifo(tmp_path / "pipe")
    codes = {name: refused(read_path(tmp_path / name)) for name in ("dead", "loop", "pipe", "missing")}
    assert codes == {
        "dead": "file.dead_link",
        "loop": "file.loop",
        "pipe": "file.not_ordinary",
        "missing": "file.missing",
    }
    assert refused(read_path(tmp_path)) == "file.folder"


def test_folders_are_walked_once_and_what_cannot_be_read_is_told(tmp_path: Path) -> None:
    inner = tmp_path / "a" / "b"
    inner.mkdir(parents=True)
    (inner / "log.csv").write_text("x")
    (inner / ".hidden").write_text("x")
    (tmp_path / "a" / "round").symlink_to(tmp_path / "a", target_is_directory=True)
    (tmp_path / "a" / "dead.csv").symlink_to(tmp_path / "nothing")
    os.mkfifo(tmp_path / "a" / "pipe")
    files, problems = find_files([tmp_path, tmp_path / "gone"])
    assert [shown for _, shown in files] == [str(inner / "log.csv")]
    assert sorted(p.code for p in problems) == [
        "file.dead_link",
        "file.loop",
        "file.missing",
        "file.not_ordinary",
    ]
    for problem in problems:
        assert "{" not in sentence(problem)


def test_empty_folder(tmp_path: Path) -> None:
    files, problems = find_files([tmp_path])
    assert not files
    assert [p.code for p in problems] == ["file.empty_folder"]


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="this user may read everything")
def test_unreadable(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text("x")
    path.chmod(0)
    assert refused(read_path(path)) == "file.unreadable"


def test_a_hole_of_two_gigabytes(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    with path.open("wb") as stream:
        stream.truncate(2 << 30)
    started = time.perf_counter()
    assert refused(read_path(path)) in ("file.sparse", "log.not_a_log")
    assert time.perf_counter() - started < 30


@pytest.fixture
def streamed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A log that is read block by block, because blocks are made small."""
    monkeypatch.setattr("core.logs.read.STREAMED", 1000)
    monkeypatch.setattr("core.logs.source.BLOCK", 10_000)
    path = tmp_path / "log.csv"
    path.write_text(plain(load(rows=6000, step_s=1.0)))
    return path


def test_a_file_cut_while_it_is_read(streamed: Path) -> None:
    path = streamed
    size = path.stat().st_size

    def cut(fraction: float, text: str) -> None:
        if fraction > 0.05 and path.stat().st_size == size:
            os.truncate(path, size // 3)

    found = read_path(path, progress=cut)
    codes = {p.code for r in found.readings for p in r.problems} | {p.code for p in found.problems}
    assert "file.changed" in codes


def test_reading_can_be_cancelled_and_reports_progress(streamed: Path) -> None:
    path = streamed
    seen: list[float] = []

    def watch(fraction: float, text: str) -> None:
        seen.append(fraction)

    found = read_path(path, progress=watch)
    assert found.readings
    assert seen == sorted(seen)
    assert seen[-1] == 1.0

    def stop(fraction: float, text: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        read_path(path, progress=stop)


def test_block_by_block_gives_what_reading_at_once_gives(streamed: Path) -> None:
    path = streamed
    (by_block,), (at_once,) = read_path(path).readings, read_bytes(path.read_bytes(), str(path)).readings
    assert by_block.trace is not None
    assert at_once.trace is not None
    assert by_block.trace.key == at_once.trace.key
    np.testing.assert_array_equal(by_block.trace.time_s, at_once.trace.time_s)
    np.testing.assert_array_equal(by_block.trace.power_w, at_once.trace.power_w)


def test_every_code_of_the_reader_has_a_sentence() -> None:
    import re

    import core.logs

    folder = Path(core.logs.__file__).parent
    used = {
        code
        for path in folder.glob("*.py")
        for code in re.findall(r'"((?:log|file|row)\.[a-z_0-9]+)"', path.read_text("utf-8"))
        if path.name != "sentences.py"
    }
    assert used == set(SENTENCES)


def test_a_line_longer_than_a_block(streamed: Path) -> None:
    text = streamed.read_text().splitlines()
    streamed.write_text("\n".join([*text[:500], "9" * 50_000, *text[500:]]) + "\n")
    (reading,) = read_path(streamed).readings
    assert reading.rows_refused == 1
    assert reading.refused[0].row == 501
    assert reading.rows_read == 6000


def test_blocks_in_use_are_left_alone_beside_a_long_line(streamed: Path) -> None:
    text = streamed.read_text().splitlines()
    streamed.write_text("\n".join([*text[:3000], "9" * 95_000, *text[3000:]]) + "\n")
    held: deque[tuple[bytes | memoryview, bytes]] = deque(maxlen=AHEAD + 1)
    source = OnDisk(streamed)
    for block in source.blocks(0):
        held.append((block, bytes(block)))
        assert all(view == kept for view, kept in held)
    source.close()
    assert len(held) == AHEAD + 1


def test_lines_of_refused_rows_are_right_in_every_block(streamed: Path) -> None:
    text = streamed.read_text().splitlines()
    odd = {700: "broken", 2500: text[2500] + text[2501], 4800: text[4800].replace(",", ",x", 1)}
    for i, line in odd.items():
        text[i] = line
    text.insert(3000, "")
    streamed.write_text("\n".join(text) + "\n")
    (reading,) = read_path(streamed).readings
    assert {r.row: r.text for r in reading.refused} == {i + 1 + (i > 3000): line for i, line in odd.items()}


def test_units_of_a_meter_that_only_feeds_back_are_no_fault() -> None:
    rows = [f"2025-06-23 09:{i // 6:02d}:{i % 6}0,-{50 + i % 7},{i}.5" for i in range(60)]
    (reading,) = read_bytes(("time,power,energy\n" + "\n".join(rows)).encode(), "log.csv").readings
    assert "log.power_turned" in {p.code for p in reading.problems}
    assert reading.trace is not None
    assert reading.trace.power_w.min() == 50


def test_the_digest_of_a_file_is_that_of_its_bytes(streamed: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    expected = hashlib.sha256(streamed.read_bytes()).hexdigest()
    for first in (1, 9_999, 40_000, 1 << 24):
        monkeypatch.setattr("core.logs.source._FIRST", first)
        for start in (0, 12, 25_000):
            source = OnDisk(streamed)
            source.begin()
            whole = b"".join(bytes(b) for b in source.blocks(start))
            assert whole == streamed.read_bytes()[start:]
            assert source.digest() == expected
            source.close()


def test_xml_cut_short_is_read_as_far_as_it_goes() -> None:
    rows = b"".join(b"<r><time>2025-06-23 09:%02d:00</time><power>62.3</power></r>\n" % i for i in range(60))
    (reading,) = read_bytes(b"<log>\n" + rows[:-30], "log.xml").readings
    assert reading.trace is not None
    assert reading.trace.time_s.size == 59
    (damaged,) = [p for p in reading.problems if p.code == "log.xml_damaged"]
    assert damaged.row == 61
