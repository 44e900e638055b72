"""Before a test: its plan, the order of its runs, and how many repeats it takes."""

from PySide6.QtWidgets import QVBoxLayout, QWidget

from core.formatting import NumberLocale
from core.results.values import Comparison
from core.study import Study
from gui.charts.view import ChartView
from gui.dialogs import notes
from gui.look import S12
from gui.session import Session
from gui.widgets.titled_card import bare_card


class PlanView(QWidget):
    """Shows the plan of the open study."""

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("plan_view")
        self._session = session
        self._locale = locale
        self.repeats = ChartView("repeats")
        self.repeats.setAccessibleName("How many runs of each machine it takes to show a difference")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S12)
        layout.addWidget(bare_card(self.repeats))
        layout.addStretch(1)

    def views(self) -> dict[str, ChartView]:
        """The charts by the names under which their pictures are saved."""
        return {"How many repeats": self.repeats}

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison."""

    def explain(self) -> None:
        """Say how a plan is made and how the number of repeats is found."""
        notes.show_note(self, "A fair test", "plan")
