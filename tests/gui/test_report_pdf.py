"""The report on the pages of a PDF: real text in embedded fonts, drawings as drawings, nothing parted."""

import re
import zlib
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest
from PySide6.QtCore import QBuffer, QSizeF, qInstallMessageHandler
from PySide6.QtGui import QPageSize, QPdfWriter, QTextTable
from pytestqt.qtbot import QtBot

from core.report.blocks import Block, Bullets, Heading, Paragraph, PictureBlock, Report, TableBlock
from core.report.pictures import Picture
from core.report.write import write_report
from core.tables import Column, Table
from gui.publish.report_pictures import report_pictures
from gui.report_pdf import PagePictures, laid_out, report_pdf
from tests.core.report.demo import MADE, demo_sources

SVG = (
    '<svg viewBox="0 0 1920 1080" xmlns="http://www.w3.org/2000/svg"><rect width="1920" height="1080" '
    'fill="#ffffff"/><text x="100" y="300" font-size="80">Alder</text></svg>'
)


def report(*blocks: Block) -> Report:
    return Report("A study", (Heading("A study", 1), *blocks), MADE, "Samepart 0")


def pages(data: bytes) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", data))


def streams(data: bytes) -> Iterator[bytes]:
    """What is packed in the file, unpacked."""
    for found in re.finditer(rb"stream\r?\n(.*?)\r?\nendstream", data, re.DOTALL):
        try:
            yield zlib.decompress(found[1])
        except zlib.error:
            yield found[1]


def letters(data: bytes) -> set[str]:
    """Every letter that the file says its glyphs stand for."""
    met: set[str] = set()
    for stream in streams(data):
        if b"begincmap" in stream:
            places = re.findall(rb"<[0-9A-Fa-f]+>\s*<[0-9A-Fa-f]+>\s*(\[[^\]]*\]|<[0-9A-Fa-f]+>)", stream)
            met |= {chr(int(c[:4], 16)) for p in places for c in re.findall(rb"<([0-9A-Fa-f]+)>", p)}
    return met


def test_text_is_text_in_embedded_fonts_and_drawings_are_no_pixels(qtbot: QtBot) -> None:
    data = report_pdf(
        report(Paragraph("Zwölf Wattstunden Ω"), PictureBlock(Picture("p", "Shown", "alt", SVG)))
    )
    assert data.startswith(b"%PDF-")
    assert data.rstrip().endswith(b"%%EOF")
    assert b"/FontFile2" in data
    assert b"/Subtype /Image" not in data
    assert set("ZwölfWtsundeΩShAr") <= letters(data)


def test_title_and_program_are_in_the_file(qtbot: QtBot) -> None:
    data = report_pdf(report(Paragraph("x")))
    assert "A study".encode("utf-16-be") in data or b"A study" in data
    assert "Samepart 0".encode("utf-16-be") in data or b"Samepart 0" in data


@pytest.mark.parametrize(
    ("page", "width", "height"),
    [(QPageSize.PageSizeId.A4, 595, 842), (QPageSize.PageSizeId.Letter, 612, 792)],
)
def test_paper(qtbot: QtBot, page: QPageSize.PageSizeId, width: int, height: int) -> None:
    data = report_pdf(report(Paragraph("x")), page=page)
    box = re.search(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)
    assert box is not None
    assert (round(float(box[1])), round(float(box[2]))) == (width, height)


def test_a_heading_is_on_the_page_of_what_follows(qtbot: QtBot) -> None:
    """However much text stands before it."""
    line = Paragraph("A line of text that is long enough to fill most of the width of a sheet of paper.")
    area = QSizeF(4100, 5900)
    moved = 0
    for n in range(30, 70):
        writer = QPdfWriter(QBuffer())
        writer.setResolution(600)
        blocks = report(*[line] * n, Heading("Part"), Heading("Inner", 3), Bullets(("one", "two", "three")))
        document = laid_out(blocks, writer, area, PagePictures(area))
        layout = document.documentLayout()
        places = {}
        block = document.begin()
        while block.isValid():
            if block.blockFormat().pageBreakPolicy():
                moved += 1
            places[block.text()] = int(layout.blockBoundingRect(block).top() // area.height())
            block = block.next()
        assert places["Part"] == places["Inner"] == places["one"], n
    assert moved


def test_a_heading_goes_with_a_table_that_is_moved(qtbot: QtBot) -> None:
    line = Paragraph("A line of text that is long enough to fill most of the width of a sheet of paper.")
    area = QSizeF(4100, 5900)
    table = Table("Meters", (Column("a", "Meter", "left"),), tuple((f"meter {i}",) for i in range(8)))
    for n in range(20, 60):
        writer = QPdfWriter(QBuffer())
        writer.setResolution(600)
        document = laid_out(
            report(*[line] * n, Heading("Part"), TableBlock(table)), writer, area, PagePictures(area)
        )
        layout = document.documentLayout()
        places = {}
        block = document.begin()
        while block.isValid():
            places[block.text()] = int(layout.blockBoundingRect(block).top() // area.height())
            block = block.next()
        assert places["Part"] == places["Meters"] == places["meter 7"], n


def test_a_small_table_is_kept_in_one_piece(qtbot: QtBot) -> None:
    rows = tuple((f"row {i}", float(i)) for i in range(6))
    table = Table("Small", (Column("a", "A", "left"), Column("b", "B", decimals=1)), rows, ("note",))
    line = Paragraph("A line of text.")
    assert pages(report_pdf(report(*[line] * 20, TableBlock(table)))) == 1
    assert pages(report_pdf(report(*[line] * 52, TableBlock(table)))) == 2


def test_names_cannot_become_markup(qtbot: QtBot) -> None:
    bad = "<b>Ж</b> & <img src='x'>"
    data = report_pdf(report(Heading(bad), Paragraph(bad), PictureBlock(Picture("p", bad, bad, SVG))))
    assert {"<", ">", "&", "Ж"} <= letters(data)


def test_a_picture_that_is_none_costs_no_page(qtbot: QtBot) -> None:
    assert pages(report_pdf(report(PictureBlock(Picture("p", "Title", "alt", "no drawing"))))) == 1


def test_it_can_be_made_in_a_thread_of_the_pool(qtbot: QtBot) -> None:
    whole = report(*[Paragraph("A line of text.")] * 90, PictureBlock(Picture("p", "Shown", "alt", SVG)))
    told: list[str] = []
    before = qInstallMessageHandler(lambda kind, context, text: told.append(text or ""))
    with ThreadPoolExecutor(1) as pool:
        there = pool.submit(report_pdf, whole).result()
        again = pool.submit(report_pdf, whole).result()
    qInstallMessageHandler(before)
    assert pages(there) == pages(again) == pages(report_pdf(whole)) > 1
    assert told == []


def test_the_demo_report(qtbot: QtBot) -> None:
    sources = demo_sources()
    pictures = tuple(report_pictures(sources.drawable, "light", sources.year, has_pixels=False))
    whole = write_report(sources, pictures, MADE)
    shown = sum(isinstance(block, PictureBlock) for block in whole.blocks)
    assert shown >= 10
    data = report_pdf(whole)
    assert 10 <= pages(data) <= 30
    assert b"/Subtype /Image" not in data


@pytest.mark.parametrize(("columns", "in_one_piece"), [(7, True), (12, False)])
def test_an_interval_is_in_one_piece_where_the_page_has_room(
    qtbot: QtBot, columns: int, in_one_piece: bool
) -> None:
    heads = (Column("name", "Machine", "left"), *(Column(f"c{i}", f"Of {i}") for i in range(columns)))
    row = ("Maple by the workshop door, on the second shelf, left", *(["1340.5 ± 160.2"] * columns))
    table = TableBlock(Table("Held", heads, (row,)))
    writer = QPdfWriter(QBuffer())
    writer.setResolution(600)
    area = QSizeF(4100, 5900)
    document = laid_out(report(table), writer, area, PagePictures(area))
    (frame,) = [f for f in document.rootFrame().childFrames() if isinstance(f, QTextTable)]
    assert document.documentLayout().frameBoundingRect(frame).width() <= area.width() + 1
    cell = frame.cellAt(1, 2).firstCursorPosition().block()
    assert cell.text() == "1340.5 ± 160.2"
    assert (cell.layout().lineCount() == 1) is in_one_piece
