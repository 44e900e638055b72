"""Renders the window: each study, page, theme and size to one picture."""

import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from PySide6.QtWidgets import QApplication

from gui.app import build
from gui.appearance import Appearance
from gui.jobs import Jobs
from gui.main_window import MainWindow
from gui.pages.compare import ComparePage
from gui.pages.fairness import AFTER, BEFORE, FairnessPage
from gui.settings import Settings, Theme
from tests.screens.studies import Desk

SIZES = ((1024, 700), (1440, 900))
THEMES: tuple[Theme, ...] = ("light", "dark")
_PATIENCE_S = 180.0


def render(
    app: QApplication,
    folder: Path,
    desk: Desk,
    sizes: tuple[tuple[int, int], ...] = SIZES,
    themes: tuple[Theme, ...] = THEMES,
) -> list[Path]:
    """Write ``page-theme-size-study.png`` for every page of a study; the paths are returned."""
    written = []
    with tempfile.TemporaryDirectory() as place:
        scratch = Path(place)
        jobs, settings = Jobs(), Settings(scratch / "settings.ini")
        appearance = Appearance(app, themes[0])
        window, session = build(settings, jobs, appearance, scratch)
        session.new_study()
        window.resize(*sizes[0])
        window.show()
        if desk.logs is None:
            window.open_demo()
        else:
            logs = desk.logs(scratch)
            if logs:
                window.add_paths(logs)
        settle(app, jobs)
        for theme in themes:
            appearance.set_theme(theme)
            for name in pages(window):
                for width, height in sizes:
                    window.resize(width, height)
                    settle(app, jobs)
                    path = folder / f"{name}-{theme}-{width}x{height}-{desk.name}.png"
                    window.grab().save(str(path))
                    written.append(path)
        window.close()
        window.deleteLater()
        appearance.deleteLater()
        app.processEvents()
    return written


def pages(window: MainWindow) -> Iterator[str]:
    """Turn to each page, to each view of Compare and each half of Fairness; the name of what is shown."""
    if window.page is None:
        yield "welcome"
        return
    for title in window.titles:
        window.show_page(title)
        QApplication.processEvents()  # the page is turned to once the list of pages has answered
        page = window.page
        if isinstance(page, ComparePage):
            for place in range(page.view.count()):
                page.view.setCurrentIndex(place)
                words = page.view.itemText(place).lower().split() if place else ()
                yield "-".join(("compare", *words))
            page.view.setCurrentIndex(0)
        elif isinstance(page, FairnessPage):
            for face in (BEFORE, AFTER):
                page.turn_to(face)
                yield f"fairness-{face}"
        else:
            yield title.lower().replace(" ", "-")


def settle(app: QApplication, jobs: Jobs) -> None:
    """Let the window come to rest: no job is running and nothing waits to be painted."""
    end_s = time.monotonic() + _PATIENCE_S
    for _ in range(3):
        app.processEvents()
        while jobs.running:
            if time.monotonic() > end_s:
                raise TimeoutError(f"still at work: {', '.join(jobs.running)}")
            app.processEvents()
            time.sleep(0.005)
