"""Pictures of a single figure as a page shows it, or at a size by purpose; and what goes to the clipboard."""

from collections.abc import Sequence
from html import escape
from pathlib import Path
from typing import Final

from attrs import frozen
from PySide6.QtCore import QMimeData
from PySide6.QtGui import QImage

from core.figures.values import Figure
from gui.charts.framing import NO_FRAME, Frame
from gui.charts.layout import fitting_scale, lay_out
from gui.look import Look
from gui.publish import encode
from gui.publish.encode import ENDINGS, image_of, png_bytes
from gui.publish.picture import DrawnPicture, words_of

__all__ = ["SIZES", "Size", "clipboard_data", "picture_of", "png_bytes", "render", "save", "svg_bytes"]


@frozen
class Size:
    """Pixels of a picture, and how much larger than on screen its text is."""

    width: int
    height: int
    scale: float = 1.0


#: sizes by purpose; text grows with the distance from which the picture is looked at
SIZES: Final = {
    "wide": Size(1920, 1080, 2.6),
    "square": Size(1080, 1080, 2.0),
}


def picture_of(figure: Figure, size: Size, look: Look, frame: Frame = NO_FRAME) -> DrawnPicture:
    """The figure laid out as its page does, with its words.

    Parameters
    ----------
    figure : Figure
    size : Size
    look : Look
        Theme and family; the scale is the size's, or less where text must shrink for everything to be shown.
    frame : Frame
        Whether headline and conditions are in the picture.
    """
    wished = look.scaled(size.scale)
    fitted = look.scaled(fitting_scale(figure, size.width, size.height, wished, frame))
    scene = lay_out(figure, size.width, size.height, fitted, frame)
    return DrawnPicture(size.width, size.height, scene, fitted, words_of([figure], frame))


def render(figure: Figure, size: Size, look: Look, frame: Frame = NO_FRAME, ratio: float = 1.0) -> QImage:
    """The figure as pixels; a `ratio` of 2 gives the same picture with twice the pixels each way."""
    return image_of(picture_of(figure, size, look, frame), ratio)


def svg_bytes(figure: Figure, size: Size, look: Look, frame: Frame = NO_FRAME) -> bytes:
    """The figure as the bytes of an SVG file whose text stays text."""
    return encode.svg_bytes(picture_of(figure, size, look, frame))


def save(path: Path, figure: Figure, size: Size, look: Look, frame: Frame, ratio: float = 1.0) -> None:
    """Write a picture; the file's ending says how.

    Raises
    ------
    OSError
        If it cannot be written.
    ValueError
        If the ending is none of a picture: the caller's mistake.
    """
    ending = next((each for each in ENDINGS if path.suffix.lower() == f".{each}"), None)
    if ending is None:
        raise ValueError(f"no way to write a picture as {path.suffix or 'a file without ending'}")
    path.write_bytes(encode.file_bytes(picture_of(figure, size, look, frame), ending, ratio))


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
