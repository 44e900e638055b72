"""The run sheet on paper: pages painted alike on a PDF and on a printer, with real text and page numbers.

Theory: everything that stands on the sheet is a strip of the page's width with a height of its own. Strips
are dealt out to pages first, so that each page can say how many there are, and painted then. Sizes are in
millimetres; rows are as high as a hand writes.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

from attrs import field, frozen
from PySide6.QtCore import QLocale, QMarginsF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from core.language import tr
from core.plan.sheet import RUN, RunSheet, SheetRow, section_of

Device = QPdfWriter | QPrinter

_MARGIN_MM, _ROW_MM, _HEAD_MM, _GAP_MM, _FOOT_MM = 12.0, 8.0, 9.0, 2.0, 6.0
_TITLE_PT, _TEXT_PT, _SMALL_PT = 15.0, 9.0, 8.0
_INCH_MM = 25.4
_INK, _FAINT, _BAND = QColor("#000000"), QColor("#8a8a8a"), QColor("#ececec")
_RESOLUTION = 300
#: countries whose paper is Letter (Unicode CLDR, supplemental data, paper sizes; from memory)
_LETTER = frozenset(("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"))


@frozen
class _Column:
    """A column of the printed table; what is not filled in is left blank for the hand."""

    title: str
    weight: float
    text: Callable[[SheetRow], str] = lambda row: ""


@frozen
class _Strip:
    """Something as wide as the page: its height in pixels, how to paint it, whether it clings to the next."""

    height: float
    paint: Callable[[QRectF], None]
    clings: bool = False
    is_row: bool = field(default=False)


def page_size() -> QPageSize:
    """Letter where the user's country has it, else A4."""
    country = QLocale.territoryToCode(QLocale().territory())
    return QPageSize(QPageSize.PageSizeId.Letter if country in _LETTER else QPageSize.PageSizeId.A4)


def page_layout(size: QPageSize) -> QPageLayout:
    """Landscape with room at the edges that every printer can reach."""
    margins = QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM)
    return QPageLayout(size, QPageLayout.Orientation.Landscape, margins, QPageLayout.Unit.Millimeter)


def write_pdf(path: Path, sheet: RunSheet, study_name: str, size: QPageSize | None = None) -> int:
    """Write a sheet as PDF; how many pages it has is returned.

    Raises
    ------
    OSError
        If the file cannot be written.
    """
    with path.open("wb"):
        pass  # the writer of the toolkit does not say why it cannot
    writer = QPdfWriter(str(path))
    writer.setResolution(_RESOLUTION)
    writer.setPageLayout(page_layout(size or page_size()))
    writer.setTitle(sheet.title)
    writer.setCreator("Samepart")
    return print_sheet(writer, sheet, study_name)


def print_sheet(device: Device, sheet: RunSheet, study_name: str) -> int:
    """Paint a sheet on a device that is set up; how many pages it has is returned.

    Raises
    ------
    OSError
        If the device cannot be painted on.
    """
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(tr("nothing can be printed there"))
    try:
        return _Sheet(painter, device, sheet, study_name).paint()
    finally:
        painter.end()


class _Sheet:
    """One sheet on one device."""

    def __init__(self, painter: QPainter, device: Device, sheet: RunSheet, study_name: str) -> None:
        self._painter, self._device, self._sheet, self._study_name = painter, device, sheet, study_name
        self._width, self._height = float(device.width()), float(device.height())
        self._mm = device.logicalDpiX() / _INCH_MM
        self._columns = self._made_columns()
        weight = sum(c.weight for c in self._columns)
        self._widths = [self._width * c.weight / weight for c in self._columns]

    def paint(self) -> int:
        """Paint all pages."""
        pages = self._pages()
        for number, page in enumerate(pages, start=1):
            if number > 1:
                self._device.newPage()
            top = 0.0
            for strip in page:
                strip.paint(QRectF(0.0, top, self._width, strip.height))
                top += strip.height
            self._foot(number, len(pages))
        return len(pages)

    def _made_columns(self) -> list[_Column]:
        unit = self._sheet.unit
        columns = [
            _Column(tr("Run"), 11, lambda row: row.label if row.kind == RUN else tr("check")),
            _Column(tr("Machine"), 28, lambda row: row.machine or tr("one steady load")),
            _Column(tr("Meter"), 20, lambda row: row.meter),
            _Column(tr("Start: date, time"), 29),
            _Column(tr("End"), 18),
            _Column(tr("Display at start ({unit})", unit=unit), 27),
            _Column(tr("Display at end ({unit})", unit=unit), 27),
            _Column(tr("Energy (Wh)"), 17),
            _Column(tr("Room (°C)"), 13),
            _Column(tr("Remarks"), 52),
        ]
        if self._sheet.has_rounds:
            columns.insert(1, _Column(tr("Round"), 12, lambda row: str(row.round) if row.round else ""))
        return columns

    # dealing strips out to pages

    def _pages(self) -> list[list[_Strip]]:
        room = self._height - _FOOT_MM * self._mm
        head = self._table_head()
        pages: list[list[_Strip]] = [[]]
        used = 0.0
        strips = list(self._strips(head))
        for i, strip in enumerate(strips):
            needed = strip.height + (strips[i + 1].height if strip.clings and i + 1 < len(strips) else 0.0)
            if used + needed > room and pages[-1]:
                pages.append([head] if strip.is_row else [])
                used = sum(s.height for s in pages[-1])
            pages[-1].append(strip)
            used += strip.height
        return pages

    def _strips(self, head: _Strip) -> Iterator[_Strip]:
        sheet = self._sheet
        yield self._words(sheet.title, _TITLE_PT, is_bold=True)
        for lines, is_bold in ((sheet.conditions, False), (sheet.steps, False), (sheet.cautions, True)):
            for text in lines:
                yield self._words(text, _TEXT_PT, is_bold=is_bold)
            yield self._gap()
        yield head
        section = ""
        for row in sheet.rows:
            above = section_of(row, sheet.plan.repeats)
            if above != section:
                section = above
                yield self._band(section)
            yield self._row(row)

    def _font(self, points: float, *, is_bold: bool = False) -> QFont:
        font = QFont(self._painter.font())
        font.setPointSizeF(points)
        font.setBold(is_bold)
        return font

    def _words(self, text: str, points: float, *, is_bold: bool = False) -> _Strip:
        font = self._font(points, is_bold=is_bold)
        flags = Qt.TextFlag.TextWordWrap.value | Qt.AlignmentFlag.AlignLeft.value
        room = QRectF(0.0, 0.0, self._width, self._height)
        box = QFontMetricsF(font, self._device).boundingRect(room, flags, text)

        def paint(at: QRectF) -> None:
            self._painter.setFont(font)
            self._painter.setPen(_INK)
            self._painter.drawText(at, flags, text)

        return _Strip(box.height() + 0.6 * self._mm, paint)

    def _gap(self) -> _Strip:
        return _Strip(_GAP_MM * self._mm, lambda at: None)

    def _table_head(self) -> _Strip:
        font = self._font(_SMALL_PT, is_bold=True)
        flags = (Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignBottom).value

        def paint(at: QRectF) -> None:
            self._painter.setFont(font)
            self._painter.setPen(_INK)
            for column, box in zip(self._columns, self._boxes(at), strict=True):
                self._painter.drawText(box.adjusted(0, 0, 0, -self._mm), flags, column.title)
            self._line(at.bottom() - 0.35 * self._mm, _INK, 0.35)

        return _Strip(_HEAD_MM * self._mm, paint, clings=True)

    def _band(self, text: str) -> _Strip:
        font = self._font(_SMALL_PT, is_bold=True)

        def paint(at: QRectF) -> None:
            self._painter.fillRect(at, _BAND)
            self._painter.setFont(font)
            self._painter.setPen(_INK)
            inner = at.adjusted(self._mm, 0, 0, 0)
            self._painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter.value, text)

        return _Strip(0.7 * _ROW_MM * self._mm, paint, clings=True, is_row=True)

    def _row(self, row: SheetRow) -> _Strip:
        def paint(at: QRectF) -> None:
            self._painter.setPen(_INK)
            for column, box in zip(self._columns, self._boxes(at), strict=True):
                self._cell(column.text(row), box)
            self._line(at.bottom(), _FAINT, 0.2)
            for box in self._boxes(at):
                x = box.x() - self._mm
                self._painter.fillRect(QRectF(x, at.top(), max(0.2 * self._mm, 1.0), at.height()), _FAINT)

        return _Strip(_ROW_MM * self._mm, paint, is_row=True)

    def _cell(self, text: str, box: QRectF) -> None:
        """A name on one line, or smaller on two; what does not fit there is cut with dots."""
        flags = (Qt.TextFlag.TextWrapAnywhere | Qt.AlignmentFlag.AlignVCenter).value
        font = self._font(_TEXT_PT)
        if QFontMetricsF(font, self._device).horizontalAdvance(text) > box.width():
            font = self._font(_SMALL_PT)
            flags = (Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter).value
            metrics = QFontMetricsF(font, self._device)
            text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, 1.7 * box.width())
        self._painter.setFont(font)
        self._painter.drawText(box, flags, text)

    def _boxes(self, at: QRectF) -> Iterator[QRectF]:
        """Where each column of a strip is written."""
        x = 0.0
        for width in self._widths:
            yield QRectF(x + self._mm, at.y(), width - 1.5 * self._mm, at.height())
            x += width

    def _line(self, y: float, color: QColor, width_mm: float) -> None:
        self._painter.fillRect(QRectF(0.0, y, self._width, max(width_mm * self._mm, 1.0)), color)

    def _foot(self, number: int, count: int) -> None:
        self._painter.setFont(self._font(_SMALL_PT))
        self._painter.setPen(_INK)
        box = QRectF(0.0, self._height - _FOOT_MM * self._mm, self._width, _FOOT_MM * self._mm)
        left = tr(
            "{title}, {study}, order by seed {seed}",
            title=self._sheet.title,
            study=self._study_name,
            seed=self._sheet.seed,
        )
        self._painter.drawText(box, Qt.AlignmentFlag.AlignBottom.value, left)
        right = (Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignRight).value
        self._painter.drawText(box, right, tr("Page {number} of {count}", number=number, count=count))
