"""Pictures of figures: PNG, SVG with real text, the clipboard; each carries where its numbers are from."""

import re
from collections.abc import Mapping, Sequence
from html import escape
from pathlib import Path
from typing import Final, Literal

from attrs import frozen
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMimeData, QRect, QSize
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from core.figures.compare import comparison_figure
from core.figures.energy_time import energy_time_figure
from core.figures.line_up import line_up_figure
from core.figures.source import numbers_of
from core.figures.values import Figure
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.line_up.strands import strands
from core.results.values import Comparison
from core.study import Study
from core.traces import Trace
from gui.charts.drawing import paint
from gui.charts.framing import NO_FRAME, Frame
from gui.charts.layout import fitting_scale, lay_out
from gui.look import Look

Style = Literal["light", "dark"]
Purpose = Literal["wide", "square", "as shown"]


@frozen
class Size:
    """Pixels of a picture, and how much larger than on screen its text is."""

    width: int
    height: int
    scale: float = 1.0


#: pixels of CSS are 1/96 of an inch (W3C, CSS Values and Units Level 3, 6.2)
_SVG_DPI: Final = 96
_FAMILY: Final = re.compile(rb'font-family="([^"]*)"')
#: sizes by purpose; text grows with the distance from which the picture is looked at
SIZES: Final = {
    "wide": Size(1920, 1080, 2.6),
    "square": Size(1080, 1080, 2.0),
}


def render(figure: Figure, size: Size, look: Look, frame: Frame = NO_FRAME, ratio: float = 1.0) -> QImage:
    """The figure as pixels, with its source in the picture's text fields.

    Parameters
    ----------
    figure : Figure
    size : Size
        Of the picture before `ratio`.
    look : Look
        Theme and family; the scale is the size's.
    frame : Frame
        Whether headline and conditions are in the picture.
    ratio : float
        2 gives the same picture with twice the pixels each way.
    """
    pixels = QSize(round(size.width * ratio), round(size.height * ratio))
    image = QImage(pixels, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(look.color("card"))
    painter = QPainter(image)
    try:
        _draw(painter, figure, size, look, frame)
    finally:
        painter.end()
    for key, text in description(figure).items():
        image.setText(key, text)
    return image


def png_bytes(image: QImage) -> bytes:
    """The picture as the bytes of a PNG file."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not image.save(buffer, "PNG"):  # type: ignore[call-overload]  # the stubs know no QIODevice here
        raise OSError("the picture could not be encoded as PNG")
    buffer.close()
    return bytes(data.data())


def svg_bytes(figure: Figure, size: Size, look: Look, frame: Frame = NO_FRAME) -> bytes:
    """The figure as the bytes of an SVG file whose text stays text."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setResolution(_SVG_DPI)
    generator.setSize(QSize(size.width, size.height))
    generator.setViewBox(QRect(0, 0, size.width, size.height))
    words = description(figure)
    generator.setTitle(words["Title"])
    generator.setDescription(f"{words['Description']} {words['Source']}")
    painter = QPainter(generator)
    try:
        painter.fillRect(0, 0, size.width, size.height, look.color("card"))
        _draw(painter, figure, size, look, frame)
    finally:
        painter.end()
    buffer.close()
    # another computer may lack the family: then any face without serifs is nearer than its default
    return _FAMILY.sub(_with_fallback, bytes(data.data()))


def _with_fallback(found: re.Match[bytes]) -> bytes:
    family = found[1]
    named = b"" if family.lower().replace(b" ", b"-") == b"sans-serif" else family + b", "
    return b'font-family="' + named + b'sans-serif"'


def description(figure: Figure) -> dict[str, str]:
    """What a picture says about itself: the headline, the conditions, and the numbers it was drawn from."""
    return {
        "Title": figure.headline,
        "Description": f"{figure.conditions} {figure.source}".strip(),
        "Source": numbers_of(figure),
        "Software": "Samepart",
    }


def save(path: Path, figure: Figure, size: Size, look: Look, frame: Frame, ratio: float = 1.0) -> None:
    """Write a picture; the file's ending says whether as PNG or SVG.

    Raises
    ------
    OSError
        If it cannot be written.
    ValueError
        If the ending is neither ``.png`` nor ``.svg``: the caller's mistake.
    """
    ending = path.suffix.lower()
    if ending == ".svg":
        path.write_bytes(svg_bytes(figure, size, look, frame))
    elif ending == ".png":
        path.write_bytes(png_bytes(render(figure, size, look, frame, ratio)))
    else:
        raise ValueError(f"no way to write a picture as {ending or 'a file without ending'}")


def figures_of(
    comparison: Comparison, study: Study, traces: Mapping[str, Trace] | None = None
) -> dict[str, Figure]:
    """The figures of a comparison by file name; those with nothing to show are left out.

    Parameters
    ----------
    comparison : Comparison
    study : Study
    traces : mapping of log id to Trace, optional
        With them the runs that count are lined up, too.
    """
    figures: dict[str, Figure] = {"comparison": comparison_figure(comparison, study)}
    plane = energy_time_figure(comparison, study)
    if plane.marks:
        figures["energy-against-time"] = plane
    lined_up = strands(study, comparison, traces or {})
    if lined_up:
        usual = LineUp()
        said = answer(lined_up, comparison, usual)
        figures["line-up"] = line_up_figure(lined_up, usual, said, study)
    return figures if comparison.machines else {}


def write_images(
    comparison: Comparison,
    study: Study,
    folder: Path,
    style: Style = "light",
    traces: Mapping[str, Trace] | None = None,
) -> list[Path]:
    """Write each figure of the comparison as PNG and SVG, 1920 x 1080.

    Needs a running QGuiApplication (without a screen: on the offscreen platform).

    Raises
    ------
    OSError
        If the folder cannot be written.
    """
    look = Look.of(dark=style == "dark")
    written = []
    for name, figure in figures_of(comparison, study, traces).items():
        for ending in (".png", ".svg"):
            path = folder / f"{name}{ending}"
            save(path, figure, SIZES["wide"], look, Frame())
            written.append(path)
    return written


def clipboard_data(image: QImage | None, rows: Sequence[Sequence[str]]) -> QMimeData:
    """A picture, if there is one, and numbers for other programs: image, tab-separated text, HTML table."""
    data = QMimeData()
    if image is not None:
        data.setImageData(image)
    data.setText("\n".join("\t".join(row) for row in rows))
    cells = [
        "<tr>" + "".join(f"<{tag}>{escape(text)}</{tag}>" for text in row) + "</tr>"
        for i, row in enumerate(rows)
        for tag in ["th" if i == 0 else "td"]
    ]
    data.setHtml(f"<table>{''.join(cells)}</table>")
    return data


def _draw(painter: QPainter, figure: Figure, size: Size, look: Look, frame: Frame) -> None:
    scaled = look.scaled(size.scale)
    scale = fitting_scale(figure, size.width, size.height, scaled, frame)
    fitted = look.scaled(scale)
    paint(painter, lay_out(figure, size.width, size.height, fitted, frame), fitted)
