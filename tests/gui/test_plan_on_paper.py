"""The run sheet of a plan: saved, filled in and read back, and printed."""

import csv
import io
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtGui import QPageSize
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
)
from pytestqt.qtbot import QtBot

from core import edits
from core.plan.sheet import run_sheet
from core.study import Study
from core.wording import placed
from gui.widgets.plan_print import page_layout, page_size, print_sheet, write_pdf
from tests.gui.driver import Driver, opened, write_log
from tests.gui.planned import begin


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path / "bench") as driver:
        yield driver


def save(bench: Driver, button: str, path: Path) -> None:
    bench.click(button)
    bench.choose_file(path)
    assert path.exists(), bench.text("plan_message")


def fill_in(path: Path, energies: dict[str, float]) -> None:
    """Fill the file in as a spreadsheet of a country with decimal commas would save it."""
    rows = list(csv.DictReader(io.StringIO(path.read_text("utf-8-sig"))))
    table = [row for row in rows if not row["row"].startswith("#")]
    for place, row in enumerate(table):
        energy = energies.get(row["machine"], 100.0) + 0.1 * (place % 3)
        row |= {"start": f"{2 + place:02}.11.2026 09:00", "end": f"{2 + place:02}.11.2026 09:40"}
        row |= {"energy_wh": f"{energy:.1f}".replace(".", ","), "room_c": "20,5"}
    out = io.StringIO()
    writer = csv.DictWriter(out, list(rows[0]), delimiter=";")
    writer.writeheader()
    writer.writerows(table)
    path.write_bytes(b"\xef\xbb\xbf" + out.getvalue().encode())


def test_the_sheet_goes_round(bench: Driver, tmp_path: Path) -> None:
    view = begin(bench)
    bench.write("plan_bed_c", "60")
    path = tmp_path / "sheet.csv"
    save(bench, "plan_csv", path)
    assert "fill in its blanks" in bench.text("plan_message")
    fill_in(path, {"Alder": 20.0, "Birch": 25.0})
    bench.click("plan_read")
    bench.choose_file(path)
    assert bench.text("plan_message") == "Read 8 readings and 2 same-load checks from sheet.csv"
    assert len(bench.study.typed) == 8
    assert {t.bed_c for t in bench.study.typed} == {60.0}
    assert {t.room_c for t in bench.study.typed} == {20.5}
    assert bench.session.problems == ()
    bench.window.show_page("Compare")
    bench.settle()
    sentence = next(w for w in bench.window.findChildren(QLabel, "sentence") if w.isVisible()).text()
    assert sentence.startswith("Alder makes the part for 20.10 Wh, 19.9 % less than Birch")
    # the plan now knows the scatter
    bench.window.show_page("Fairness")
    bench.settle()
    assert "8 runs so far" in view.top.conditions.text()
    bench.do("action_undo")
    assert (len(bench.study.typed), len(bench.study.checks)) == (0, 0)


def test_a_filled_sheet_dropped_on_the_window_is_read_as_one(bench: Driver, tmp_path: Path) -> None:
    begin(bench)
    path = tmp_path / "sheet.csv"
    save(bench, "plan_csv", path)
    fill_in(path, {"Alder": 20.0, "Birch": 25.0})
    bench.drop(path)
    assert (len(bench.study.typed), len(bench.study.logs)) == (8, 0)
    (told,) = bench.session.problems
    assert (
        placed(told) == "Taken as a filled run sheet: Read 8 readings and 2 same-load checks from sheet.csv."
    )


@pytest.mark.parametrize("in_a_folder", [False, True])
def test_a_sheet_dropped_with_its_logs_tells_of_their_runs(
    bench: Driver, tmp_path: Path, in_a_folder: bool
) -> None:
    folder = tmp_path / "session"
    folder.mkdir()
    log = write_log(folder / "Alder.csv", runs=2)
    path = folder / "sheet.csv"
    path.write_text(
        "row,run,block,machine,meter,starting_state,start,end,energy_wh,room_c,remarks\n"
        "run,1,1,Alder,Meter 1,cold,2026-03-02 08:10,2026-03-02 08:32,,19.5,\n"
    )
    # the sheet first: it still waits for the log
    bench.drop(*([folder] if in_a_folder else [path, log]))
    assert [run.room_c for run in bench.study.runs] == [19.5, None]
    assert bench.study.typed == ()
    told = [placed(p) for p in bench.session.problems]
    assert "Taken as a filled run sheet: Read conditions of logged runs from sheet.csv." in told
    assert {bench.study.meter(log.meter_id).name for log in bench.study.logs} == {"Meter 1"}


def test_what_is_no_sheet_says_so_and_changes_nothing(bench: Driver, tmp_path: Path) -> None:
    begin(bench)
    before = bench.study
    path = tmp_path / "list.csv"
    path.write_text("name,colour\nAlder,blue\n")
    bench.click("plan_read")
    bench.choose_file(path)
    assert bench.study == before
    assert bench.text("plan_message") == "list.csv is no run sheet"
    assert [p.code for p in bench.session.problems] == ["sheet.no_columns"]


def test_a_sheet_that_cannot_be_written_says_so(bench: Driver, tmp_path: Path) -> None:
    view = begin(bench)
    view.files.save(str(tmp_path / "no such folder" / "sheet.pdf"))
    assert "was not saved" in bench.text("plan_message")
    view.files.save(str(tmp_path / "no such folder" / "sheet.csv"))
    assert "was not saved" in bench.text("plan_message")


def twelve(at_once: int = 1) -> Study:
    study = edits.new_study("s", name="Twelve").study
    for number in range(12):
        name = "Maple by the workshop door, second shelf" if number == 3 else f"Machine {number}"
        study = edits.add_machine(study, name).study
    for name in ("Meter 1", "Meter 2"):
        study = edits.add_meter(study, name).study
    return edits.plan_at_once(study, at_once).study


@pytest.mark.parametrize("size", [QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter])
def test_the_printed_sheet_has_pages_of_its_size_and_real_text(
    bench: Driver, tmp_path: Path, size: QPageSize.PageSizeId
) -> None:
    path = tmp_path / "sheet.pdf"
    pages = write_pdf(path, run_sheet(twelve(2)), "Twelve", QPageSize(size))
    data = path.read_bytes()
    assert data.startswith(b"%PDF-")
    assert data.count(b"/Type /Page\n") == pages
    # 52 rows of 8 mm each with their headings, and the words above them, on some 185 mm a page
    assert pages in (3, 4)
    points = QPageSize(size).sizePoints()
    box = f"/MediaBox [0 0 {points.height()}".encode()
    assert box in data
    # fonts are embedded and text is text: no page is an image
    assert b"/FontFile" in data
    assert b"/Subtype /Image" not in data


@pytest.mark.parametrize(
    ("name", "size"),
    [
        ("en_US", QPageSize.PageSizeId.Letter),
        ("fr_CA", QPageSize.PageSizeId.Letter),
        ("en_GB", QPageSize.PageSizeId.A4),
        ("de_DE", QPageSize.PageSizeId.A4),
    ],
)
def test_the_paper_is_that_of_the_country(qapp: QApplication, name: str, size: QPageSize.PageSizeId) -> None:
    before = QLocale()
    QLocale.setDefault(QLocale(name))
    try:
        assert page_size().id() == size
    finally:
        QLocale.setDefault(before)


def test_a_printer_gets_the_same_pages(bench: Driver, tmp_path: Path) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    layout = page_layout(QPageSize(QPageSize.PageSizeId.A4))
    printer.setPageLayout(layout)
    pages = print_sheet(printer, run_sheet(twelve()), "Twelve")
    assert pages == write_pdf(
        tmp_path / "sheet.pdf", run_sheet(twelve()), "Twelve", QPageSize(QPageSize.PageSizeId.A4)
    )
    assert (tmp_path / "printed.pdf").read_bytes().count(b"/Type /Page\n") == pages
