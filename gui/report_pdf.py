"""The report on pages of a PDF: real text, drawings as drawings, pages numbered.

The pages are laid out by Qt's rich text, which knows neither SVG nor headings that stay with what follows
them; both are added here. Needs a running QGuiApplication (without a screen: on the offscreen platform).
"""

from typing import Final

from PySide6.QtCore import (
    QBuffer,
    QByteArray,
    QEventLoop,
    QIODevice,
    QLocale,
    QMarginsF,
    QObject,
    QRect,
    QRectF,
    QSizeF,
    Qt,
)
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QFont,
    QFontMetricsF,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPyTextObject,
    QTextBlock,
    QTextBlockFormat,
    QTextCursor,
    QTextDocument,
    QTextFormat,
    QTextLength,
    QTextTable,
)
from PySide6.QtSvg import QSvgRenderer

from core.language import tr
from core.report.blocks import Report
from core.report.html import blocks_html
from core.report.pictures import Picture

#: dots an inch in which pages are laid out: finer than a printer shows
_DPI: Final = 600


_MARGIN_MM: Final = 18.0
_TEXT_PT: Final = 9.5
_FOOT_PT: Final = 8.0
#: a heading needs so many lines of what follows on its own page
_LINES_WITH_HEADING: Final = 3
#: headings are looked at again after each that was moved; more than this is none of a report's
_MOST_MOVES: Final = 400
#: of the height of a page, a picture takes no more than this, and a table is kept in one piece up to this
_TALLEST: Final = 0.6
_SMALL_TABLE: Final = 0.5

#: what tells an interval, and what a cell takes beside its text [mm]
_SIGN: Final = " ± "
_CELL_MM: Final = 1.8

_STYLE: Final = """
h1 { font-size: 20pt; font-weight: bold; margin-bottom: 11px; }
h2 { font-size: 14pt; font-weight: bold; margin-top: 24px; margin-bottom: 8px; }
h3 { font-size: 10.5pt; font-weight: bold; margin-top: 15px; margin-bottom: 4px; }
p { margin-top: 4px; margin-bottom: 4px; }
p.answer { font-size: 12.5pt; }
p.number { font-size: 12.5pt; }
p.conditions { color: #5f6772; font-size: 8.5pt; }
p.note { color: #5f6772; font-size: 8.5pt; }
p.caution { color: #8a5200; }
p.figure { color: #5f6772; font-size: 8.5pt; margin-bottom: 11px; }
ul { margin-top: 3px; margin-bottom: 3px; -qt-list-indent: 1; }
table { font-size: 7.5pt; margin-top: 8px; margin-bottom: 3px; }
th { font-weight: bold; border-bottom: 1px solid #5f6772; vertical-align: bottom; }
td { border-bottom: 1px solid #e3dfd5; vertical-align: top; }
"""


def report_pdf(report: Report, *, page: QPageSize.PageSizeId | None = None) -> bytes:
    """The report as the bytes of a PDF file.

    Parameters
    ----------
    report : Report
    page : QPageSize.PageSizeId, optional
        Paper, upright; unless given, what is usual where the computer stands.
    """
    # a document sets timers, even one that nobody looks at: a thread of the pool has nothing to set them with
    timers = QEventLoop()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    margins = QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM)
    paper = QPageSize(_usual_paper() if page is None else page)
    layout = QPageLayout(paper, QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter)
    writer.setPageLayout(layout)
    writer.setTitle(report.title)
    writer.setCreator(report.program)
    area = QSizeF(layout.paintRectPixels(_DPI).size())
    foot = _foot_font(writer)
    text_area = QSizeF(area.width(), area.height() - 2.5 * QFontMetricsF(foot, writer).height())
    pictures = PagePictures(text_area)
    document = laid_out(report, writer, text_area, pictures)
    painter = QPainter(writer)
    try:
        _paint(painter, document, writer, text_area, area, foot, report)
    finally:
        painter.end()
    buffer.close()
    del document, timers
    return bytes(data.data())


def _usual_paper() -> QPageSize.PageSizeId:
    is_american = QLocale.system().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
    return QPageSize.PageSizeId.Letter if is_american else QPageSize.PageSizeId.A4


class PagePictures(QPyTextObject):
    """Draws SVG where the text has an image, in the width of the page."""

    def __init__(self, area: QSizeF, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._area = area
        self._drawn: dict[str, QSvgRenderer] = {}

    def add(self, name: str, picture: Picture) -> None:
        self._drawn[name] = QSvgRenderer(QByteArray(picture.svg.encode()))

    def intrinsicSize(self, document: QTextDocument, position: int, text_format: QTextFormat) -> QSizeF:
        renderer = self._renderer(text_format)
        if renderer is None:
            return QSizeF(0, 0)
        view = renderer.viewBoxF()
        ratio = view.height() / view.width() if view.width() > 0 else 1.0
        width = min(self._area.width(), _TALLEST * self._area.height() / ratio)
        return QSizeF(width, width * ratio)

    def drawObject(
        self,
        painter: QPainter,
        rect: QRectF | QRect,
        document: QTextDocument,
        position: int,
        text_format: QTextFormat,
    ) -> None:
        renderer = self._renderer(text_format)
        if renderer is not None:
            renderer.render(painter, QRectF(rect))

    def _renderer(self, text_format: QTextFormat) -> QSvgRenderer | None:
        found = self._drawn.get(text_format.toImageFormat().name())
        return found if found is not None and found.isValid() else None


def _foot_font(writer: QPdfWriter) -> QFont:
    font = QFont("sans-serif")
    font.setPointSizeF(_FOOT_PT)
    return font


def laid_out(
    report: Report, device: QPagedPaintDevice, area: QSizeF, pictures: PagePictures
) -> QTextDocument:
    """The report as a document whose pages are as large as `area`, in dots of the device."""
    document = QTextDocument()
    document.setUndoRedoEnabled(False)
    document.setDocumentMargin(0)
    font = QFont("sans-serif")
    font.setPointSizeF(_TEXT_PT)
    document.setDefaultFont(font)
    document.setDefaultStyleSheet(_STYLE)
    document.documentLayout().setPaintDevice(device)
    document.documentLayout().registerHandler(QTextFormat.ObjectTypes.ImageObject.value, pictures)

    def figure(picture: Picture, number: int) -> str:
        name = f"picture-{number}"
        pictures.add(name, picture)
        return f'<p><img src="{name}"></p><p class="figure">{_escaped(picture.title)}</p>'

    document.setHtml(_with_wide_tables(blocks_html(report, figure)))
    document.setPageSize(area)
    _fit_tables(document, area.width())
    _keep_headings(document, area.height())
    return document


def _escaped(text: str) -> str:
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


def _with_wide_tables(html: str) -> str:
    """Rich text takes the width of a table from its tag alone, and its title for a cell."""
    plain = html.replace("<table>", '<table width="100%" border="0" cellspacing="0" cellpadding="3">')
    return plain.replace("<caption>", "<p><b>").replace("</caption>", "</b></p>")


def _fit_tables(document: QTextDocument, width: float) -> None:
    """Give columns of intervals the room for them in one line, in tables that can spare it."""
    for frame in document.rootFrame().childFrames():
        if isinstance(frame, QTextTable):
            least = [_least_width(document, frame, column) for column in range(frame.columns())]
            spare = (width - sum(least)) / len(least)
            if spare >= 0 and _has_broken_interval(frame):
                wanted = frame.format()
                share = QTextLength.Type.PercentageLength
                shares = [QTextLength(share, 100 * (each + spare) / width) for each in least]
                wanted.setColumnWidthConstraints(shares)
                frame.setFormat(wanted)


def _least_width(document: QTextDocument, table: QTextTable, column: int) -> float:
    """Width that a column needs to break no number and no word."""
    dots = document.documentLayout().paintDevice()
    widest = 0.0
    for row in range(table.rows()):
        cell = table.cellAt(row, column)
        text = cell.firstCursorPosition().block().text()
        pieces = [text] if _SIGN in text else text.split()
        metrics = QFontMetricsF(cell.firstCursorPosition().charFormat().font(), dots)
        widest = max([widest, *(metrics.horizontalAdvance(piece) for piece in pieces)])
    return widest + _CELL_MM / 25.4 * dots.logicalDpiX()


def _has_broken_interval(table: QTextTable) -> bool:
    blocks = (
        table.cellAt(row, column).firstCursorPosition().block()
        for row in range(table.rows())
        for column in range(table.columns())
    )
    return any(_SIGN in block.text() and block.layout().lineCount() > 1 for block in blocks)


def _keep_headings(document: QTextDocument, page_height: float) -> None:
    """Begin a page before each heading, or title of a small table, that would be parted from what follows."""
    block = document.begin()
    for _ in range(_MOST_MOVES):
        while block.isValid() and not _is_parted(document, block, page_height):
            block = block.next()
        if not block.isValid():
            return
        cursor = QTextCursor(_first_heading(block))
        wanted = QTextBlockFormat(cursor.blockFormat())
        wanted.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
        cursor.setBlockFormat(wanted)
        block = block.next()


def _is_parted(document: QTextDocument, block: QTextBlock, page_height: float) -> bool:
    layout = document.documentLayout()
    top = layout.blockBoundingRect(block)
    if block.position() == 0:
        return False
    table = QTextCursor(block.next()).currentTable() if block.next().isValid() else None
    if table is not None and QTextCursor(block).currentTable() is None:
        ends = layout.frameBoundingRect(table).bottom()
        is_small = ends - top.top() < _SMALL_TABLE * page_height
    elif block.blockFormat().headingLevel() > 0:
        follows = _after_headings(block)
        begins = layout.blockBoundingRect(follows)
        ends = begins.top() + min(begins.height(), _LINES_WITH_HEADING * top.height())
        is_small = follows.isValid()
    else:
        return False
    return is_small and int(top.top() // page_height) != int(ends // page_height)


def _first_heading(block: QTextBlock) -> QTextBlock:
    """The first of the headings right above a block, which go where it goes; the block where it has none."""
    first, above = block, block.previous()
    while above.isValid() and (above.blockFormat().headingLevel() > 1 or not above.text()):
        # rich text has an empty line where the division of a table begins
        first = above if above.text() else first
        above = above.previous()
    return first


def _after_headings(block: QTextBlock) -> QTextBlock:
    """The first block with text after a heading that is none itself."""
    follows = block.next()
    while follows.isValid() and (follows.blockFormat().headingLevel() > 0 or not follows.text()):
        follows = follows.next()
    return follows


def _paint(
    painter: QPainter,
    document: QTextDocument,
    writer: QPdfWriter,
    text_area: QSizeF,
    area: QSizeF,
    foot: QFont,
    report: Report,
) -> None:
    pages = document.pageCount()
    for number in range(pages):
        if number:
            writer.newPage()
        painter.save()
        top = number * text_area.height()
        painter.translate(0, -top)
        visible = QRectF(0, top, text_area.width(), text_area.height())
        painter.setClipRect(visible)
        context = QAbstractTextDocumentLayout.PaintContext()
        context.clip = visible
        document.documentLayout().draw(painter, context)
        painter.restore()
        _paint_foot(painter, area, foot, report, number + 1, pages)


def _paint_foot(
    painter: QPainter, area: QSizeF, foot: QFont, report: Report, number: int, pages: int
) -> None:
    painter.save()
    painter.setFont(foot)
    painter.setPen(Qt.GlobalColor.darkGray)
    line = QRectF(0, area.height() - painter.fontMetrics().height(), area.width(), area.height())
    top_left = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
    day = report.made.isoformat()
    made = tr("{title}, made with {program} on {day}", title=report.title, program=report.program, day=day)
    longest = tr("page {number} of {pages}", number=999, pages=999)
    room = area.width() - painter.fontMetrics().horizontalAdvance(f"{longest}  ")
    painter.drawText(
        line, top_left, painter.fontMetrics().elidedText(made, Qt.TextElideMode.ElideMiddle, int(room))
    )
    top_right = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight
    painter.drawText(line, top_right, tr("page {number} of {pages}", number=number, pages=pages))
    painter.restore()
