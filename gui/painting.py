"""What draws for the core: pictures of a study and the pages of its report, with no window and no screen.

Light: neither NumPy nor Qt is imported before something is drawn.
"""

import os
from collections.abc import Sequence
from typing import TYPE_CHECKING

from gui.system_libraries import ALL_PACKAGES

if TYPE_CHECKING:
    from PySide6.QtGui import QGuiApplication

    from core.report.blocks import Report
    from core.report.pictures import Drawable, Picture, Style


class UnseenPainter:
    """Draws on Qt's platform that shows nothing, which is started when the first picture is wanted."""

    def __init__(self) -> None:
        self._application: QGuiApplication | None = None

    def pictures(self, drawable: "Drawable", style: "Style", year: int) -> "Sequence[Picture] | str":
        """The pictures of all pages of a study; what is missing, when they cannot be drawn."""
        try:
            self._start()
            from gui.publish.report_pictures import report_pictures
        except ImportError as error:
            return library_message(error, "no images were drawn")
        return tuple(report_pictures(drawable, style, year=year))

    def pdf(self, report: "Report") -> bytes | str:
        """The report on pages; what is missing, when they cannot be drawn."""
        try:
            self._start()
            from gui.report_pdf import report_pdf
        except ImportError as error:
            return library_message(error, "the report was not made a PDF")
        return report_pdf(report)

    def _start(self) -> None:
        # nothing is shown, so neither a screen nor what Qt needs to reach one is asked for
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
        from PySide6.QtGui import QGuiApplication

        running = QGuiApplication.instance()
        self._application = running if isinstance(running, QGuiApplication) else QGuiApplication(["samepart"])


def library_message(error: ImportError, what: str) -> str:
    """One line that says what could not be done for want of a system library, and what to install."""
    return f"samepart: {what}: Qt needs a system library ({error}); install the packages {ALL_PACKAGES}"
