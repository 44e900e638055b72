"""Watts of the beds against their difference from the room: the chart, and its lines in words."""

from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from core.figures.bed import lines_told, watts_figure
from core.formatting import NumberLocale
from core.language import tr
from core.results.holds import Beds
from core.study import Study
from gui.charts.view import ChartView, Readout
from gui.look import S8, S12
from gui.widgets.asking import AskingLabel

#: lines of so many machines are told in words, the chosen one's first
_MOST_LINES = 4


class WattsCard(QFrame):
    """Shows nothing where no bed's watts are known."""

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._locale = locale
        self.chart = ChartView("bed_watts")
        self.chart.setAccessibleName(tr("Watts of the beds against their difference from the room"))
        self.fits = AskingLabel()
        self.fits.setObjectName("fit_sentences")
        self.fits.setProperty("role", "muted")
        self.fits.setContentsMargins(S12, 0, S12, S8)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(1, 1, 1, 1)
        layout.addWidget(self.chart)
        layout.addWidget(self.fits)

    def show_beds(self, beds: Beds, study: Study, machine_id: str, readout: Readout) -> None:
        """Show the beds, with the floor and the residuals of one machine."""
        figure = watts_figure(beds, study, machine_id, self._locale)
        self.chart.show_figure(figure, readout)
        self.setVisible(figure is not None)
        self.fits.setText(" ".join(lines_told(beds, machine_id, self._locale)[:_MOST_LINES]))
