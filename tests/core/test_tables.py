import csv
import io
from pathlib import Path

import pytest

from core.spreadsheet import spreadsheet_bytes, write_spreadsheet
from core.tables import Cell, Column, Table, harmless, to_csv, to_html, to_markdown, to_text

TABLE = Table(
    title="Comparison",
    columns=(
        Column("machine", "Machine", "left"),
        Column("energy_wh", "Energy per part [Wh]", decimals=1),
        Column("included", "Counts", "left"),
    ),
    rows=(("Alder", 21.3456, True), ("Birch, old", None, False)),
    notes=("Warm-up and processing.",),
)
FORMULAS = [
    "=1+1",
    "+1",
    "-1+2",
    "@SUM(A1)",
    "\t=1",
    "\r=1",
    " =1",
    "\u00a0=1",
    "\n@A1",
    "\uff1d1+1",
    '=HYPERLINK("x")',
]


def named(*names: str) -> Table:
    return Table("Names", (Column("machine", "Machine", "left"),), tuple((n,) for n in names))


def test_csv_keeps_full_precision_and_leaves_unknown_empty() -> None:
    rows = list(csv.reader(io.StringIO(to_csv(TABLE))))
    assert rows == [
        ["machine", "energy_wh", "included"],
        ["Alder", "21.3456", "yes"],
        ["Birch, old", "", "no"],
    ]


@pytest.mark.parametrize("text", FORMULAS)
def test_formula_text_is_made_harmless(text: str) -> None:
    assert harmless(text) == "'" + text
    cell = list(csv.reader(io.StringIO(to_csv(named(text)))))[1][0]
    assert cell.startswith("'")


@pytest.mark.parametrize("sign", [";", "\t", "\n"])
def test_formula_after_another_separator_is_made_harmless(sign: str) -> None:
    text = to_csv(named(f"Alder{sign} =1+1"))
    assert f"Alder{sign} '=1+1" in text
    assert harmless("Alder; 21 Wh") == "Alder; 21 Wh"


def test_html_escapes_everything_that_comes_from_a_name() -> None:
    names = ["<script>alert(1)</script>", 'a"b', "a&b", "=1+1"]
    text = to_html(named(*names))
    assert "<script" not in text
    assert "&lt;script&gt;alert(1)&lt;/script&gt;" in text
    assert "a&quot;b" in text
    assert "a&amp;b" in text
    assert text.count("<tr>") == 1 + len(names)


def test_html_rounds_lines_up_and_says_what_is_unknown() -> None:
    text = to_html(TABLE)
    assert '<td class="right" align="right">21.3</td>' in text
    assert '<td class="right" align="right">–</td>' in text
    assert '<th scope="col" class="left" align="left">Machine</th>' in text
    assert "<caption>Comparison</caption>" in text
    assert text.endswith("<p>Warm-up and processing.</p>")


def test_negative_numbers_are_no_formulas() -> None:
    assert "-1.5" in to_csv(Table("T", (Column("x", "x"),), ((-1.5,),)))


def test_markdown_escapes_what_would_break_the_table() -> None:
    text = to_markdown(named("a|b", "two\nlines", "<b>", "*x*"))
    lines = text.splitlines()
    assert lines[2:6] == ["| Machine |", "| --- |", "| a\\|b |", "| two lines |"]
    assert "\\<b>" in text
    assert "\\*x\\*" in text


def test_markdown_has_title_and_notes_and_rounds() -> None:
    text = to_markdown(TABLE)
    assert text.startswith("## Comparison\n")
    assert "| Alder | 21.3 | yes |" in text
    assert "| Birch, old | – | no |" in text
    assert text.rstrip().endswith("Warm-up and processing.")


def test_terminal_text_lines_up() -> None:
    assert to_text(TABLE).splitlines() == [
        "Machine     Energy per part [Wh]  Counts",
        "Alder                       21.3  yes",
        "Birch, old                     –  no",
    ]


def test_spreadsheet_holds_numbers_as_numbers_and_no_formula(tmp_path: Path) -> None:
    openpyxl = pytest.importorskip("openpyxl")
    path = tmp_path / "t.xlsx"
    write_spreadsheet(path, [TABLE, named(*FORMULAS, "http://example.org"), named("x")])
    book = openpyxl.load_workbook(path)
    assert book.sheetnames == ["Comparison", "Names", "Names 2"]
    sheet = book["Comparison"]
    assert sheet["B2"].value == 21.3456
    assert sheet["B3"].value is None
    assert sheet["A5"].value == "Warm-up and processing."
    for row in book["Names"].iter_rows(min_row=2, values_only=False):
        assert row[0].data_type == "s"
        assert row[0].hyperlink is None
    quoted = [row[0].quotePrefix for row in book["Names"].iter_rows(min_row=2)]
    assert quoted == [True] * len(FORMULAS) + [False]
    book.close()


def test_spreadsheet_in_no_folder_is_an_os_error(tmp_path: Path) -> None:
    with pytest.raises(OSError, match="nowhere"):
        write_spreadsheet(tmp_path / "nowhere" / "t.xlsx", [TABLE])


def test_sheet_names_are_made_valid(tmp_path: Path) -> None:
    openpyxl = pytest.importorskip("openpyxl")
    rows: tuple[tuple[Cell, ...], ...] = (("x",),)
    titles = ["a/b:c*d?" + "e" * 40, "'quoted'", ""]
    path = tmp_path / "t.xlsx"
    write_spreadsheet(path, [Table(t, (Column("x", "x"),), rows) for t in titles])
    book = openpyxl.load_workbook(path)
    assert [len(n) <= 31 for n in book.sheetnames] == [True] * 3
    assert book.sheetnames[1:] == ["quoted", "Table"]
    book.close()


def test_the_same_tables_make_the_same_workbook() -> None:
    assert spreadsheet_bytes([TABLE]) == spreadsheet_bytes([TABLE])


def test_numbers_in_a_spreadsheet_show_their_columns_digits() -> None:
    openpyxl = pytest.importorskip("openpyxl")
    book = openpyxl.load_workbook(io.BytesIO(spreadsheet_bytes([TABLE])))
    assert book["Comparison"]["B2"].number_format == "0.0"
    book.close()
