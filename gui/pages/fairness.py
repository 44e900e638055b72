"""The Fairness page: how to run the next test so that it is fair, and whether the last one was."""

from PySide6.QtWidgets import QVBoxLayout, QWidget

from core.formatting import count
from core.results.values import Comparison
from core.study import Study
from gui.dialogs import notes
from gui.look import S4, S12, S16
from gui.pages.compare import screen_locale
from gui.pages.page import Badge, Page, SentenceTop
from gui.session import Session
from gui.widgets.page_switch import PageSwitch
from gui.widgets.plan_view import PlanView

BEFORE, AFTER = "before", "after"


class FairnessPage(Page):
    """Before the test its plan; after it what was not alike."""

    title = "Fairness"
    icon = "fairness"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("fairness_page")
        self._session = session
        self._locale = screen_locale()
        self.top = SentenceTop()
        faces = ((BEFORE, "&Before the test"), (AFTER, "A&fter the test"))
        self.switch = PageSwitch("fairness_face", "Before or after the test", faces)
        self.switch.turn_to(AFTER)
        self.plan = PlanView(session, self._locale)
        self._lay_out()
        self.switch.turned.connect(self._show_face)
        self._show_face()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, 0, S16, S12)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self.switch)
        layout.addWidget(self.plan, 1)
        layout.addStretch(1)

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        self._show_face()

    def badge(self, comparison: Comparison | None) -> Badge:
        points = 0 if comparison is None else len(comparison.fairness)
        if not points:
            return Badge()
        return Badge(str(points), count(points, "open point of fairness", "open points of fairness"))

    def explain(self) -> None:
        if self.switch.face == BEFORE:
            self.plan.explain()
        else:
            notes.show_note(self, "Fairness", "fairness")

    def _show_face(self) -> None:
        is_before = self.switch.face == BEFORE
        self.plan.setVisible(is_before)
        self.top.setVisible(not is_before)
        if is_before:
            self.plan.show_study(self._session.study, self._session.comparison)
