"""What is done about a point of fairness: an edit of the study, or the page where it can be done."""

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from core import edits
from core.language import tr
from core.results.fairness_answer import phrase
from core.results.fairness_points import point_of
from core.results.values import Comparison, Finding
from gui.session import Session


class FairnessEdits(QObject):
    """Turns the actions of the Fairness page into edits, and leads to other pages."""

    page_wanted = Signal(str, str)  # title of a page, and what is to be seen there
    plan_wanted = Signal()
    told = Signal(str)  # what has been done

    def __init__(self, session: Session, page: QWidget) -> None:
        super().__init__(page)
        self._session = session

    def act(self, finding: Finding, comparison: Comparison) -> None:
        """Do the one thing that a finding calls for; nothing if what it is of has gone since it was found."""
        study = self._session.study
        known = {m.id for m in study.machines} | {r.id for r in study.runs} | {t.id for t in study.typed}
        if not known.issuperset((*finding.machine_ids, *finding.run_ids)):
            return
        action = point_of(finding).action
        if action == "like for like":
            self.page_wanted.emit("Compare", "like for like")
        elif action == "check meters":
            self._select_log_of(finding)
            self.page_wanted.emit("Logs", "meter")
        elif action == "processing only" and self._session.study.boundary == "processing only":
            self.told.emit(tr("Processing only is compared already; leave the run out, or accept this"))
        elif action == "processing only":
            self._session.apply(edits.set_boundary(self._session.study, "processing only"))
            self._session.seal()
            self.told.emit(tr("Processing only is compared now; Ctrl+Z takes that back"))
        elif action == "leave out":
            self._leave_out(finding, comparison)
        elif action == "hand back":
            self._hand_back(finding)
        elif action == "repeat":
            self._plan(finding)

    def accept(self, finding: Finding, reason: str) -> None:
        """Accept a finding for a reason."""
        self._session.apply(edits.accept_finding(self._session.study, finding, reason))
        self._session.seal()
        self.told.emit(tr("Accepted; it is listed below"))

    def take_back(self, key: str) -> None:
        """Let an accepted finding count again."""
        self._session.apply(edits.take_back_acceptance(self._session.study, key))
        self._session.seal()
        self.told.emit("")

    def note(self, machine_id: str, name: str, value_c: float | None) -> None:
        """Note a temperature in all runs of a machine."""
        self._session.apply(edits.note_machine(self._session.study, machine_id, name, value_c))

    def _select_log_of(self, finding: Finding) -> None:
        """Select a run of the first machine touched, so that its log is the one that is shown."""
        study = self._session.study
        logs = {log.id for log in study.logs if log.machine_id in finding.machine_ids}
        run = next((r for r in study.runs if r.log_id in logs and r.included), None)
        if run is not None:
            self._session.select(run.id)

    def _leave_out(self, finding: Finding, comparison: Comparison) -> None:
        """Leave the run out, with the finding as the reason; the Compare page can say another."""
        run_id = finding.run_ids[0]
        is_typed = any(t.id == run_id for t in self._session.study.typed)
        leave_out = edits.leave_out_typed if is_typed else edits.leave_out
        why = point_of(finding).phrase
        self._session.apply(leave_out(self._session.study, run_id, why))
        self._session.seal()
        self.told.emit(
            tr("Left out for {reason}; Ctrl+Z takes that back", reason=phrase(finding, comparison))
        )

    def _hand_back(self, finding: Finding) -> None:
        self._session.apply(edits.hand_back_runs(self._session.study, finding.run_ids))
        self._session.seal()
        self.told.emit(tr("Handed back to the program; Ctrl+Z takes that back"))

    def _plan(self, finding: Finding) -> None:
        """Put the runs that are asked for into the plan, and show it."""
        edit = edits.plan_again(self._session.study, finding)
        if edit.study != self._session.study:
            self._session.apply(edit)
            self._session.seal()
        self.plan_wanted.emit()
