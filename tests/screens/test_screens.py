"""The window can be rendered at its smallest size in both themes, and no picture is blank."""

from pathlib import Path

from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from tests.screens.render import render
from tests.screens.studies import DESKS


def test_pages_are_rendered_and_not_blank(qapp: QApplication, tmp_path: Path) -> None:
    desks = [desk for desk in DESKS if desk.name in ("empty", "one-run")]
    written = [path for desk in desks for path in render(qapp, tmp_path, desk, sizes=((1024, 700),))]
    assert {path.name for path in written} >= {
        "compare-light-1024x700-one-run.png",
        "compare-dark-1024x700-one-run.png",
        "bed-dark-1024x700-one-run.png",
        "compare-against-a-property-dark-1024x700-one-run.png",
        "compare-like-for-like-light-1024x700-one-run.png",
        "fairness-before-light-1024x700-one-run.png",
        "fairness-after-dark-1024x700-one-run.png",
        "logs-light-1024x700-one-run.png",
        "welcome-dark-1024x700-empty.png",
    }
    for path in written:
        image = QImage(str(path))
        colors = {image.pixel(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)}
        assert len(colors) > 5, path.name
