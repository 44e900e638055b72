"""The icons: own drawings that follow the text colour and that the window toolkit can draw."""

from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

ICONS = sorted((Path(__file__).parents[2] / "assets" / "icons").glob("*.svg"))
DRAWN_IN_INK = [path for path in ICONS if path.stem != "samepart"]


def share_of_ink(path: Path, size: int) -> float:
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(QByteArray(path.read_bytes())).render(painter)
    painter.end()
    inked = sum(image.pixelColor(x, y).alpha() > 64 for x in range(size) for y in range(size))
    return inked / size**2


def test_there_are_icons() -> None:
    assert "samepart" in {path.stem for path in ICONS}
    assert DRAWN_IN_INK


@pytest.mark.parametrize("path", DRAWN_IN_INK, ids=lambda p: p.stem)
def test_an_icon_follows_the_text_colour_and_has_a_title(path: Path) -> None:
    root = ET.fromstring(path.read_text(encoding="utf-8"))
    assert root.get("viewBox") == "0 0 24 24"
    assert root.get("stroke") == "currentColor"
    assert root.get("stroke-width") == "1.5"
    assert root.findtext("{http://www.w3.org/2000/svg}title")
    assert "#" not in path.read_text(encoding="utf-8")


@pytest.mark.parametrize("path", ICONS, ids=lambda p: p.stem)
def test_an_icon_can_be_drawn_small(path: Path, qapp: object) -> None:
    assert QSvgRenderer(QByteArray(path.read_bytes())).isValid()
    assert share_of_ink(path, 24) > 0.05
