"""Finds out how a number was found, outside the GUI thread, and follows the study while it changes."""

from attrs import frozen
from PySide6.QtCore import QObject

from core.formatting import NumberLocale
from core.found import Explanation, explain
from core.progress import Progress
from gui.session import Session
from gui.widgets.found_panel import FoundPanel


@frozen
class _Number:
    """Which number is asked for; no run id for the machine's own, another machine for a ratio."""

    machine_id: str
    run_id: str
    key: str
    other_id: str = ""


class Explaining(QObject):
    """What one page is asked about its numbers."""

    def __init__(self, session: Session, panel: FoundPanel, locale: NumberLocale) -> None:
        super().__init__(panel)
        self._session = session
        self._panel = panel
        self._locale = locale
        self._number: _Number | None = None
        panel.closed.connect(self.let_go)
        panel.run_wanted.connect(self._turn_to)
        session.compared.connect(self._again)
        session.selection_changed.connect(self._follow)

    def ask(self, machine_id: str, run_id: str, key: str, other_id: str = "") -> None:
        """Say how a number was found; an empty `run_id` asks for the machine's."""
        self._number = _Number(machine_id, run_id, key, other_id)
        self._again()

    def let_go(self) -> None:
        """Follow no number any more: the panel shows something else."""
        self._number = None

    def _follow(self, run_id: str | None) -> None:
        """Another run was selected: an open panel turns to it, in the same measure."""
        result = self._session.results.get(run_id or "")
        if self._number is not None and result is not None and run_id != self._number.run_id:
            key = "energy_wh" if self._number.other_id else self._number.key
            self.ask(result.machine_id, result.run_id, key)

    def _turn_to(self, run_id: str) -> None:
        self._session.select(run_id)
        self._follow(run_id)

    def _again(self) -> None:
        number, comparison = self._number, self._session.comparison
        if number is None or comparison is None:
            return
        study, traces, activities = self._session.study, self._session.traces, self._session.activities
        locale = self._locale

        def work(progress: Progress) -> tuple[_Number, Explanation | None]:
            found = explain(
                comparison,
                study,
                traces,
                number.machine_id,
                number.key,
                number.run_id or None,
                other_id=number.other_id or None,
                activities=activities,
                locale=locale,
                progress=progress,
            )
            return number, found

        self._session.jobs.start(
            f"explain {self._panel.objectName()} {id(self._panel)}", work, self._on_found
        )

    def _on_found(self, answer: tuple[_Number, Explanation | None]) -> None:
        number, found = answer
        if number != self._number:
            return
        if found is None:
            self._panel.close_panel()
        else:
            self._panel.show_explanation(found, self._locale)
