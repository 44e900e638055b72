"""Pictures as files: PNG and WebP as pixels, SVG and PDF with text that stays text.

Each tells what it shows: title, description and the numbers it was drawn from. WebP as Qt writes it has no
room for words.
"""

import re
from html import escape, unescape
from typing import Final, Literal

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRect, QSize, QSizeF
from PySide6.QtGui import (
    QFont,
    QFontInfo,
    QImage,
    QImageWriter,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
)
from PySide6.QtSvg import QSvgGenerator

from core.figures.source import maker
from core.language import mark, tr
from gui.publish.picture import DrawnPicture, Words

Ending = Literal["png", "webp", "svg", "pdf"]
ENDINGS: Final[tuple[Ending, ...]] = ("png", "svg", "pdf", "webp")
#: how a file dialog offers them
FILTERS: Final[dict[str, str]] = {
    "png": mark("PNG picture (*.png)"),
    "svg": mark("SVG drawing (*.svg)"),
    "pdf": mark("PDF page (*.pdf)"),
    "webp": mark("WebP picture (*.webp)"),
}
#: pixels of CSS are 1/96 of an inch (W3C, CSS Values and Units Level 3, 6.2), points 1/72
_SVG_DPI: Final = 96
_POINTS_PER_PX: Final = 72 / 96
#: the writer of PDF rounds places to its own dots: so many of them to a pixel
_DOTS_PER_PX: Final = 16
#: pixels hold so many dots a metre at 96 to the inch
_DOTS_PER_M: Final = 3780
_SIZE: Final = re.compile(rb'<svg width="[^"]*" height="[^"]*"')
_FAMILY: Final = re.compile(rb'font-family="([^"]*)"')


def image_of(picture: DrawnPicture, ratio: float = 1.0) -> QImage:
    """The picture as pixels, with its words in the picture's text fields.

    Parameters
    ----------
    picture : DrawnPicture
    ratio : float
        2 gives the same picture with twice the pixels each way.
    """
    size = QSize(round(picture.width * ratio), round(picture.height * ratio))
    # with no channel for what shines through, files are smaller and nothing can shine through
    is_clear = picture.look.is_clear
    image = QImage(
        size, QImage.Format.Format_ARGB32_Premultiplied if is_clear else QImage.Format.Format_RGB32
    )
    image.setDevicePixelRatio(ratio)
    image.fill(0)
    painter = QPainter(image)
    try:
        picture.paint(painter)
    finally:
        painter.end()
    image.setDotsPerMeterX(round(_DOTS_PER_M * ratio))
    image.setDotsPerMeterY(round(_DOTS_PER_M * ratio))
    for key, text in text_fields(picture.words).items():
        image.setText(key, text)
    return image


def text_fields(words: Words) -> dict[str, str]:
    """The words under the keys that PNG reserves for them (W3C, PNG Third Edition, 11.3.3)."""
    return {
        "Title": words.title,
        "Description": f"{words.alt} {words.description}",
        "Source": words.numbers,
        "Software": maker(),
    }


def png_bytes(image: QImage) -> bytes:
    """The pixels as the bytes of a PNG file.

    Raises
    ------
    OSError
        If they could not be encoded.
    """
    return _encoded(image, "png", -1)


def webp_bytes(image: QImage) -> bytes:
    """The pixels as the bytes of a WebP file, with none of them changed.

    Raises
    ------
    OSError
        If they could not be encoded, for one because a side is longer than the 16,383 pixels of the format.
    """
    return _encoded(image, "webp", 100)


def _encoded(image: QImage, form: str, quality: int) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, QByteArray(form.encode()))
    writer.setQuality(quality)
    if not writer.write(image):
        why = writer.errorString()
        raise OSError(tr("the picture could not be encoded as {form}: {why}", form=form.upper(), why=why))
    buffer.close()
    return bytes(data.data())


def svg_bytes(picture: DrawnPicture) -> bytes:
    """The picture as the bytes of an SVG file whose text stays text."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setResolution(_SVG_DPI)
    generator.setSize(QSize(picture.width, picture.height))
    generator.setViewBox(QRect(0, 0, picture.width, picture.height))
    generator.setTitle(picture.words.title)
    generator.setDescription(f"{picture.words.alt} {picture.words.description} {picture.words.numbers}")
    painter = QPainter(generator)
    try:
        picture.paint(painter)
    finally:
        painter.end()
    buffer.close()
    # Qt gives the size in millimetres; in pixels it means the same whatever a reader takes for an inch
    size = f'<svg width="{picture.width}" height="{picture.height}"'.encode()
    drawing = _SIZE.sub(size, bytes(data.data()), count=1)
    # another computer may lack the family: then any face without serifs is nearer than its default
    return _FAMILY.sub(_with_fallback, drawing)


def _with_fallback(found: re.Match[bytes]) -> bytes:
    """The family that letters were measured with by its own name, not that of a style, and then any."""
    family = QFontInfo(QFont(unescape(found[1].decode()))).family()
    return f'font-family="{escape(family)}, sans-serif"'.encode()


def pdf_bytes(picture: DrawnPicture) -> bytes:
    """The picture as a page of its own size in a PDF file, its fonts embedded."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_SVG_DPI * _DOTS_PER_PX)
    page = QSizeF(picture.width * _POINTS_PER_PX, picture.height * _POINTS_PER_PX)
    size = QPageSize(page, QPageSize.Unit.Point, "picture", QPageSize.SizeMatchPolicy.ExactMatch)
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)))
    writer.setTitle(picture.words.title)
    writer.setCreator(maker())
    writer.setDocumentXmpMetadata(QByteArray(_xmp(picture.words).encode()))
    painter = QPainter(writer)
    try:
        painter.scale(_DOTS_PER_PX, _DOTS_PER_PX)
        picture.paint(painter)
    finally:
        painter.end()
    buffer.close()
    return bytes(data.data())


def _xmp(words: Words) -> str:
    """Title, description and numbers as a packet of metadata (ISO 16684-1, from memory)."""
    title, alt = escape(words.title), escape(f"{words.alt} {words.description}")
    return (
        '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>'
        '<x:xmpmeta xmlns:x="adobe:ns:meta/">'
        '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">'
        '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" '
        'xmlns:xmp="http://ns.adobe.com/xap/1.0/">'
        f'<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>'
        f'<dc:description><rdf:Alt><rdf:li xml:lang="x-default">{alt}</rdf:li></rdf:Alt></dc:description>'
        f"<dc:source>{escape(words.numbers)}</dc:source>"
        f"<xmp:CreatorTool>{escape(maker())}</xmp:CreatorTool>"
        "</rdf:Description></rdf:RDF></x:xmpmeta>"
        '<?xpacket end="w"?>'
    )


def file_bytes(picture: DrawnPicture, ending: Ending, ratio: float = 1.0) -> bytes:
    """The picture as the bytes of a file; `ratio` counts for pixels only.

    Raises
    ------
    OSError
        If it could not be encoded.
    """
    if ending == "svg":
        return svg_bytes(picture)
    if ending == "pdf":
        return pdf_bytes(picture)
    image = image_of(picture, ratio)
    return png_bytes(image) if ending == "png" else webp_bytes(image)
