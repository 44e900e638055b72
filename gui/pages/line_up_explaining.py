"""How the numbers of the Line-up page were found: worked out outside the GUI thread, shown in its panel."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QObject

from core.formatting import NumberLocale
from core.found import explain
from core.found.line_up import MINUTES, POWER, SHARE, WH, phases_found, span_found
from core.found.values import Explanation
from core.language import tr
from core.line_up.spans import SpanReading
from core.line_up.strands import Anchor, Strand
from core.progress import Progress
from core.quantities import ENERGY
from core.results.values import Comparison
from core.study import Study
from gui.session import Session
from gui.widgets.found_panel import FoundPanel

#: key of the job
EXPLAINING = "explain line-up"


class LineUpExplaining(QObject):
    """What the page is asked about its numbers."""

    def __init__(self, session: Session, panel: FoundPanel, locale: NumberLocale) -> None:
        super().__init__(panel)
        self._session = session
        self._panel = panel
        self._locale = locale
        self._readings: tuple[SpanReading, ...] = ()
        self._span = (0.0, 0.0)
        panel.run_wanted.connect(session.select)

    def show_readings(self, readings: tuple[SpanReading, ...], span: tuple[float, float]) -> None:
        """The rows of the table are these, read within this span."""
        self._readings, self._span = readings, span

    def ask_of_answer(self, strands: Sequence[Strand], comparison: Comparison, study: Study) -> None:
        """Say how the sentence on top was found."""
        counted = tuple(s for s in strands if s.included) or tuple(strands)
        self._work_out(partial(phases_found, counted, comparison, study, self._locale))

    def ask_of_cell(
        self, row: int, key: str, strands: Sequence[Strand], anchor: Anchor, study: Study
    ) -> None:
        """Say how a number of the marked span was found."""
        if row < len(self._readings):
            key = key if key in (POWER, WH, SHARE, MINUTES) else WH
            reading, locale = self._readings[row], self._locale
            self._work_out(partial(span_found, strands, anchor, self._span, reading, key, study, locale))

    def ask_of_run(self, machine_id: str, run_id: str, key: str) -> None:
        """Say how the whole energy of a run in the chart was found."""
        comparison, session = self._session.comparison, self._session
        if comparison is not None:
            self._work_out(
                partial(
                    explain,
                    comparison,
                    session.study,
                    session.traces,
                    machine_id,
                    ENERGY.key,
                    run_id or None,
                    activities=session.activities,
                    locale=self._locale,
                )
            )

    def _work_out(self, make: Callable[[], Explanation | None]) -> None:
        def work(progress: Progress) -> Explanation | None:
            progress(0.0, tr("reading a span"))
            return make()

        self._session.jobs.start(EXPLAINING, work, self._on_explained)

    def _on_explained(self, told: Explanation | None) -> None:
        if told is not None:
            self._panel.show_explanation(told, self._locale)
