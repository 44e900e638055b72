"""Logs below one another in one file: which are cut apart, and where their rows stand."""

import io
import zipfile

import pytest

from core.logs import read_bytes
from tests.core.logs.corpus import load, plain

ALDER, BIRCH = plain(load(60)), plain(load(60, seed=2))


def _titled(first: str, second: str) -> bytes:
    return f"{first}\n{ALDER}\n{second}\n{BIRCH}".encode()


def test_rows_are_counted_from_the_beginning_of_the_file() -> None:
    data = _titled("Alder", "Birch").decode().splitlines()
    assert data[63] == "Birch"
    data[80] = data[80][:12]
    birch = read_bytes("\n".join(data).encode(), "log.csv").readings[1]
    assert (birch.machine, birch.header_row) == ("Birch", 65)
    assert [r.row for r in birch.refused] == [81]
    (told,) = [p for p in birch.problems if p.code == "log.refused_rows"]
    assert (told.row, dict(told.facts)["first"]) == (81, 81)


@pytest.mark.parametrize(
    ("first", "second", "machines"),
    [
        ("Alder", "Birch", ["Alder", "Birch"]),
        ("Plug 1", "Plug 2", ["Plug 1", "Plug 2"]),
        ("Session 1", "Session 2", ["log"]),
        ("Alder", "Alder", ["log"]),
        ("2025-06-23", "2025-06-24", ["log"]),
    ],
)
def test_titles_cut_where_they_name_things(first: str, second: str, machines: list[str]) -> None:
    assert [r.machine for r in read_bytes(_titled(first, second), "log.csv").readings] == machines


def test_logs_below_one_another_in_an_archive() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("both.csv", _titled("Alder", "Birch"))
    assert [r.machine for r in read_bytes(out.getvalue(), "log.zip").readings] == ["Alder", "Birch"]
