"""What the user says of the conditions of a stretch; every one is an edit of the study."""

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from core import edits
from core.results.runs import seen
from core.results.temperatures import Temperature, nozzle_temperature, temperatures
from core.study import Run
from gui.session import Session
from gui.widgets.condition_row import ConditionRow


class ConditionEdits(QObject):
    """Turns what the user notes of the selected stretch into edits."""

    def __init__(self, session: Session, row: ConditionRow, page: QWidget) -> None:
        super().__init__(page)
        self._session, self._row = session, row
        row.temperatures_noted.connect(self._note)
        row.nozzle_noted.connect(self._note_nozzle)
        row.bed_turned.connect(self._turn_bed)
        row.field_left.connect(session.seal)

    def told(self, run: Run | None) -> tuple[Temperature, ...] | None:
        """At which temperatures of bed, room and nozzle a stretch is taken to have been made."""
        self._row.setEnabled(not self._session.is_read_only)
        if run is None:
            return None
        trace = self._session.traces.get(run.log_id)
        log = None if trace is None else seen(trace, self._session.activities.get(run.log_id))
        result = self._session.results.get(run.id)
        bed_and_room = temperatures(self._session.study, run, log, result)
        return (*bed_and_room, nozzle_temperature(run, log, result))

    def _note(self, run_id: str, bed_c: float | None, room_c: float | None) -> None:
        self._session.apply(edits.note_temperatures(self._session.study, run_id, bed_c, room_c))

    def _note_nozzle(self, run_id: str, nozzle_c: float | None) -> None:
        study = self._session.study
        run = study.run(run_id)
        first = run.first_layer_bed_c, run.first_layer_nozzle_c
        self._session.apply(edits.note_making(study, run_id, nozzle_c, *first))

    def _turn_bed(self, run_id: str, is_off: bool) -> None:
        self._session.apply(edits.mark_bed_off(self._session.study, run_id, is_off))
