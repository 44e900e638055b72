"""What comes back from the process that opens old spreadsheets: values of cells, and nothing that runs."""

import json
from datetime import date, datetime, time, timedelta
from pathlib import Path

import pytest

from core.logs import old_sheets
from core.logs.old_sheets import rows_of_sheets

CELLS = [
    1,
    2.5,
    "watt",
    True,
    "",
    datetime(2026, 3, 2, 8, 0, 1, 500_000),  # noqa: DTZ001  # a cell of a sheet has no zone
    date(2026, 3, 2),
    time(8, 0, 1),
    timedelta(hours=30, seconds=1.5),
]


def test_every_kind_of_cell_comes_back_as_it_was(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The child as it is, but for the library: a book of ours stands in for a file."""
    book = tmp_path / "python_calamine.py"
    book.write_text(
        "from datetime import date, datetime, time, timedelta\n"
        "class Sheet:\n"
        "    def to_python(self, skip_empty_area):\n"
        f"        import datetime as d; return [{_source(CELLS)}]\n"
        "class CalamineWorkbook:\n"
        "    sheet_names = ['log']\n"
        "    from_object = classmethod(lambda cls, file: cls())\n"
        "    def get_sheet_by_name(self, title): return Sheet()\n"
    )
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    assert rows_of_sheets(b"") == [("log", [CELLS])]


def _source(cells: list[object]) -> str:
    return (
        repr(cells)
        .replace("datetime.datetime(", "d.datetime(")
        .replace("datetime.date(", "d.date(")
        .replace("datetime.time(", "d.time(")
        .replace("datetime.timedelta(", "d.timedelta(")
    )


@pytest.mark.parametrize("data", [b"", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(2000), bytes(range(16))])
def test_what_is_no_spreadsheet_is_damage(data: bytes) -> None:
    with pytest.raises(ValueError, match="do not fit together"):
        rows_of_sheets(data)


def test_an_answer_of_another_kind_is_refused() -> None:
    with pytest.raises((KeyError, ValueError)):
        json.loads('[{"os.system": "true"}]', object_hook=old_sheets._value)
