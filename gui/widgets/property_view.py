"""A measure against a property on the Compare page: two choices, the chart, and the table of properties."""

from attrs import frozen
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from core.figures.properties import properties_figure
from core.formatting import NumberLocale
from core.found.held_bed import held_bed
from core.found.like import like_found
from core.found.properties import property_found
from core.found.values import Explanation
from core.language import tr
from core.properties.table import columns_of
from core.quantities import ENERGY, Quantity
from core.results.like_for_like import Given, given, like_for_like
from core.results.properties import (
    LIKE_WH,
    MEASURES,
    Against,
    against,
    forget,
    fullest_column,
    measures_known,
)
from core.results.property_answer import against_table, point_readout
from core.results.values import Comparison
from core.study import Study
from core.tables import shown
from gui.charts.view import ChartView
from gui.look import S8, S12
from gui.session import Session
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.property_card import PropertyCard
from gui.widgets.titled_card import bare_card

#: key of the job
PROPERTIES = "properties"
#: width of the choices
_LETTERS = 22


@frozen(eq=False)
class _Read:
    """What a study's measures are found from, and which of them some machine has."""

    given: Given
    known: tuple[Quantity, ...]


class PropertyView(QWidget):
    """Shows what was found for the measure and the property that are chosen."""

    changed = Signal()  # the sentence on top is another
    told = Signal(str)

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("property_view")
        self._session = session
        self._locale = locale
        self._read: _Read | None = None
        self._measure = ENERGY.key
        self._property = ""
        self.found: Against | None = None
        self.measure = Choice("property_measure", tr("Measure that is held against a property"))
        self.against = Choice("property_column", tr("Property of the machines"))
        self.chart = ChartView("against_property")
        self.chart.setAccessibleName(tr("A measure of the machines against one of their properties"))
        self.card = PropertyCard(session, locale)
        self._lay_out()
        self.measure.activated.connect(self._on_choice)
        self.against.activated.connect(self._on_choice)
        self.card.told.connect(self.told)
        session.opened.connect(self._on_opened)

    def _lay_out(self) -> None:
        choices = QWidget()
        row = Flow(choices, S8)
        for text, widget in ((tr("Meas&ure:"), self.measure), (tr("Against p&roperty:"), self.against)):
            widget.setMinimumContentsLength(_LETTERS)
            row.addWidget(labelled(text, widget))
        self._chart_card = bare_card(self.chart)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S12)
        layout.addWidget(choices)
        layout.addWidget(self._chart_card, 1)
        layout.addWidget(self.card)
        layout.addStretch(0)

    @property
    def rows(self) -> list[tuple[str, ...]]:
        """Heading and rows behind the chart, for the clipboard."""
        if self.found is None:
            return []
        table = against_table(self.found, self._locale)
        texts = [
            tuple(shown(cell, column) for cell, column in zip(row, table.columns, strict=True))
            for row in table.rows
        ]
        return [tuple(c.title for c in table.columns), *texts]

    def explanation(self) -> Explanation | None:
        """How the sentence on top was found; None before anything is."""
        return None if self.found is None else property_found(self.found, self._locale)

    def explanation_of(self, machine_id: str, key: str) -> Explanation | None:
        """How a machine's own number was found that is none of the comparison's."""
        if self._read is None:
            return None
        from_ = self._read.given
        if key == LIKE_WH.key:
            return like_found(like_for_like(from_), machine_id, self._locale, from_)
        return held_bed(from_.beds, from_.study, machine_id, key, self._locale, from_.traces)

    def show_study(self, study: Study, comparison: Comparison) -> None:
        """Show a comparison; what its measures need is found outside the GUI thread."""
        self.card.show_study(study)
        read = self._read
        if read is not None and read.given.study is study and read.given.comparison is comparison:
            self._show()
            return
        traces = self._session.traces

        def work(_: object) -> _Read:
            found = given(study, comparison, traces)
            return _Read(found, measures_known(found))

        self._session.jobs.start(PROPERTIES, work, self._on_read)

    def _on_opened(self) -> None:
        """Another study is open: nothing of the one before counts there, nor is its data kept."""
        self._read, self.found = None, None
        self._measure, self._property = ENERGY.key, ""
        forget()

    def _on_read(self, read: _Read) -> None:
        if read.given.study is self._session.study:
            self._read = read
            self._show()
            self.changed.emit()

    def _show(self) -> None:
        if self._read is None:
            return
        from_, study = self._read.given, self._read.given.study
        columns = columns_of(study)
        if self._property not in {c.name for c in columns}:
            self._property = fullest_column(from_).name
        known = self._read.known or (ENERGY,)
        if self._measure not in {q.key for q in known}:
            self._measure = known[0].key
        self.measure.fill([(tr(q.name), q.key) for q in known], self._measure)
        self.against.fill([(c.heading, c.name) for c in columns], self._property)
        quantity = next(q for q in MEASURES if q.key == self._measure)
        column = next(c for c in columns if c.name == self._property)
        self.found = found = against(from_, quantity, column)
        figure = properties_figure(found, study, self._locale)
        self._chart_card.setVisible(figure is not None)
        self.chart.show_figure(figure, self._say)

    def _say(self, run_id: str, key: str) -> tuple[str, ...]:
        return () if self.found is None else point_readout(self.found, run_id, self._locale)

    def _on_choice(self) -> None:
        self._measure = str(self.measure.currentData())
        self._property = str(self.against.currentData())
        self.told.emit("")
        self._show()
        self.changed.emit()
