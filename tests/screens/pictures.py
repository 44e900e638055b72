"""``python -m tests.screens.pictures`` makes the README's pictures and the icons of the Linux desktop anew.

Pages are those of the demo, as pictures of few colours, so that they stay small; icons are drawn from the
one drawing there is.
"""

import os
import sys
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtGui import QImage

ASSETS = Path(__file__).resolve().parents[2] / "assets"
PAGE_SIZE = (1280, 800)
ICON_SIZES = (16, 24, 32, 48, 64, 128, 256)


def write_pages(folder: Path) -> list[Path]:
    """Write one picture a page of the demo; the paths are returned."""
    from PySide6.QtGui import QImage
    from PySide6.QtWidgets import QApplication

    from tests.screens.render import render
    from tests.screens.studies import DESKS

    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    folder.mkdir(parents=True, exist_ok=True)
    demo = next(desk for desk in DESKS if desk.name == "demo")
    written = []
    with tempfile.TemporaryDirectory() as scratch:
        for path in render(app, Path(scratch), demo, (PAGE_SIZE,), ("light",)):
            name = path.name.partition("-light-")[0]
            written.append(folder / f"{name}.png")
            _few_colours(QImage(str(path))).save(str(written[-1]), "PNG", 0)
    return written


def _few_colours(image: "QImage") -> "QImage":
    """The picture in 256 colours, none of them like another: enough for a page, and a third of the bytes."""
    import numpy as np
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QImage

    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    colours, counts = np.unique(np.frombuffer(plain.constBits(), np.uint32), return_counts=True)
    colours = colours[np.argsort(counts)[::-1]]
    _, firsts = np.unique(colours & 0xF0F0F0, return_index=True)  # of those that are alike, the most frequent
    palette = colours[np.sort(firsts)[:256]] | 0xFF000000
    flags = Qt.ImageConversionFlag.ThresholdDither | Qt.ImageConversionFlag.AvoidDither
    return plain.convertToFormat(QImage.Format.Format_Indexed8, [int(c) for c in palette], flags)


def write_icons(folder: Path) -> list[Path]:
    """Write the application's icon in the sizes of the desktop; the paths are returned."""
    from PySide6.QtGui import QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    folder.mkdir(parents=True, exist_ok=True)
    drawing = QSvgRenderer(str(ASSETS / "icons" / "samepart.svg"))
    written = []
    for size in ICON_SIZES:
        image = QImage(size, size, QImage.Format.Format_ARGB32)
        image.fill(0)
        painter = QPainter(image)
        drawing.render(painter)
        painter.end()
        written.append(folder / f"{size}.png")
        image.save(str(written[-1]))
    return written


def main() -> int:
    """Write all of them into ``assets``."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    for path in (*write_pages(ASSETS / "pictures"), *write_icons(ASSETS / "linux" / "icons")):
        sys.stdout.write(f"{path.relative_to(ASSETS.parent)}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
