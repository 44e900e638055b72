"""What the core asks of whoever can draw: pictures of a study, and the pages of a report."""

from collections.abc import Sequence
from typing import Protocol

from core.report.blocks import Report
from core.report.pictures import Drawable, Picture, Style


class Painter(Protocol):
    """Draws, or says in words why nothing could be drawn."""

    def pictures(self, drawable: Drawable, style: Style, year: int) -> Sequence[Picture] | str:
        """The pictures of all pages of a study."""

    def pdf(self, report: Report) -> bytes | str:
        """The report on pages."""
