"""What can be done with a whole log, its machine and its meter; every one is an edit of the study."""

from pathlib import Path

from attrs import asdict, evolve
from PySide6.QtCore import QObject, QPoint, Slot
from PySide6.QtGui import QAction, QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from core import edits
from core.language import tr
from core.study import LoadCheck
from gui import look
from gui.look import marker_path
from gui.session import Session
from gui.widgets.lane_list import LaneList
from gui.widgets.load_checks import CheckTyped
from gui.widgets.meter_form import BED_ALONE_TIP, NO_WHOLE_TIP
from gui.widgets.reading_panel import ReadingPanel
from gui.widgets.typed_form import TypedForm

#: markers offered; more machines than this still get theirs
_SLOTS_OFFERED = 12
_SWATCH_PX = 20


class LogEdits(QObject):
    """Turns what the user asks of a log into edits."""

    def __init__(
        self, session: Session, lanes: LaneList, panel: ReadingPanel, typed: TypedForm, page: QWidget
    ) -> None:
        super().__init__(page)
        self._session, self._lanes, self._panel, self._page = session, lanes, panel, page
        self._log_id = ""
        self._menu = QMenu(page)
        self._menu.setObjectName("log_menu")
        self._rename = self._menu.addAction(tr("Rename the machine"))
        self._rename.triggered.connect(self._edit_name)
        self._markers = self._menu.addMenu(tr("Colour and marker"))
        self._markers.triggered.connect(self._set_slot)
        self._read_on = self._menu.addAction(tr("Read the file again"))
        self._read_on.setToolTip(tr("Take in what was added to the log's file, keeping what you decided"))
        self._read_on.triggered.connect(self._read_file_on)
        self._menu.setToolTipsVisible(True)
        self._of_bed = self._menu.addAction(tr("This log is of the bed alone"))
        self._of_bed.setObjectName("log_of_bed")
        self._of_bed.setCheckable(True)
        self._of_bed.triggered.connect(self._turn_bed_alone)
        self._again = self._menu.addAction(tr("Find its runs again"))
        self._again.triggered.connect(self._find_again)
        self._away = self._menu.addAction(tr("Remove this log"))
        self._away.triggered.connect(self._remove)
        lanes.head_menu_wanted.connect(self._open_menu)
        lanes.machine_renamed.connect(self._rename_machine)
        panel.choices_changed.connect(session.read_again)
        panel.machine_chosen.connect(self._move_log)
        panel.file_wanted_again.connect(self._read_file_of)
        panel.meter.meter_chosen.connect(self._assign_meter)
        panel.meter.meter_added.connect(self._add_meter)
        panel.meter.meter_of_all.connect(self._assign_meter_to_all)
        panel.meter.renamed.connect(self._rename_meter)
        panel.meter.accuracy_stated.connect(self._state_accuracy)
        panel.meter.field_left.connect(session.seal)
        panel.meter.bed_alone_turned.connect(self._turn_shown_bed_alone)
        panel.meter.checks.typed.connect(self._note_check)
        panel.meter.checks.removed.connect(self._remove_check)
        typed.added.connect(self._add_typed)
        typed.removed.connect(self._remove_typed)
        typed.turned.connect(self._turn_typed)

    def _open_menu(self, log_id: str, at: QPoint) -> None:
        self._log_id = log_id
        self._markers.clear()
        study = self._session.study
        mine = study.machine(study.log(log_id).machine_id).slot
        owners = {machine.slot: machine.name for machine in study.machines}
        for slot in range(_SLOTS_OFFERED):
            owner = owners.get(slot)
            style = look.current().machine(slot)
            text = (
                tr(style.marker)
                if owner is None or slot == mine
                else tr("{marker}, of {owner}: change places", marker=tr(style.marker), owner=owner)
            )
            action = self._markers.addAction(_swatch(slot), text)
            action.setData(slot)
            action.setCheckable(True)
            action.setChecked(slot == mine)
        log = study.log(log_id)
        whole = [g for g in study.logs_of(log.machine_id) if g.id != log_id and not g.of_bed]
        self._of_bed.setChecked(log.of_bed)
        self._of_bed.setEnabled(log.of_bed or bool(whole))
        self._of_bed.setToolTip(tr(BED_ALONE_TIP if self._of_bed.isEnabled() else NO_WHOLE_TIP))
        self._menu.popup(at)

    def _edit_name(self) -> None:
        lane = self._lanes.lane(self._log_id)
        if lane is not None:
            lane.edit_name()

    def _rename_machine(self, log_id: str, name: str) -> None:
        study = self._session.study
        if name.strip():
            self._session.apply(edits.rename_machine(study, study.log(log_id).machine_id, name))
            self._session.seal()

    @Slot(QAction)
    def _set_slot(self, action: QAction) -> None:
        study = self._session.study
        self._session.apply(edits.set_slot(study, study.log(self._log_id).machine_id, int(action.data())))
        self._session.seal()

    def _read_file_of(self, log_id: str) -> None:
        self._log_id = log_id
        self._read_file_on()

    def _read_file_on(self) -> None:
        path = self._session.reading_on.path_of(self._log_id)
        if path is not None and path.is_file():
            self._session.reading_on.ask(self._log_id, path)
            return
        name = self._session.study.log(self._log_id).sources[-1].file_name
        dialog = QFileDialog(self._page, tr("Where is {name} now?", name=name))
        dialog.setObjectName("file_dialog")
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.selectFile(name)
        dialog.fileSelected.connect(self._read_chosen_on)
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _read_chosen_on(self, name: str) -> None:
        self._session.reading_on.ask(self._log_id, Path(name))

    def _find_again(self) -> None:
        data = self._session.data(self._log_id)
        if data is not None:
            self._session.apply(edits.find_again(self._session.study, self._log_id, data.runs))

    def _remove(self) -> None:
        self._session.apply(edits.remove_log(self._session.study, self._log_id))

    def _move_log(self, log_id: str, machine_id: str) -> None:
        self._session.apply(edits.move_log(self._session.study, log_id, machine_id))

    def _assign_meter(self, meter_id: str) -> None:
        if self._panel.log_id is not None:
            self._session.apply(edits.assign_meter(self._session.study, self._panel.log_id, meter_id))

    def _assign_meter_to_all(self, meter_id: str) -> None:
        self._session.apply(edits.assign_meter_to_all(self._session.study, meter_id))

    def _add_meter(self) -> None:
        if self._panel.log_id is not None:
            name = tr("Meter {number}", number=len(self._session.study.meters) + 1)
            added = edits.add_meter(self._session.study, name)
            used = edits.assign_meter(added.study, self._panel.log_id, added.study.meters[-1].id)
            self._session.apply(evolve(used, label=added.label))

    def _rename_meter(self, meter_id: str, name: str) -> None:
        self._session.apply(edits.set_meter(self._session.study, meter_id, name=name))
        self._session.seal()

    def _state_accuracy(self, meter_id: str, gain_percent: float, offset_w: float) -> None:
        study = self._session.study
        self._session.apply(edits.set_meter(study, meter_id, gain_percent=gain_percent, offset_w=offset_w))

    def _turn_bed_alone(self, of_bed: bool) -> None:
        self._session.apply(edits.mark_log_of_bed(self._session.study, self._log_id, of_bed))

    def _turn_shown_bed_alone(self, of_bed: bool) -> None:
        if self._panel.log_id is not None:
            self._session.apply(edits.mark_log_of_bed(self._session.study, self._panel.log_id, of_bed))

    @Slot(object)
    def _note_check(self, typed: CheckTyped) -> None:
        study = self._session.study
        said = asdict(typed)
        check_id = said.pop("check_id")
        if check_id:
            self._session.apply(edits.set_load_check(study, LoadCheck(id=check_id, **said)))
            self._session.seal()
        else:
            self._session.apply(edits.add_load_check(study, **said))

    def _remove_check(self, check_id: str) -> None:
        self._session.apply(edits.remove_load_check(self._session.study, check_id))

    def _add_typed(
        self,
        name: str,
        energy_wh: float,
        seconds: float | None,
        step_wh: float,
        note: str,
        meter_id: str | None,
    ) -> None:
        self._session.apply(
            edits.type_reading(
                self._session.study,
                name,
                energy_wh,
                seconds=seconds,
                step_wh=step_wh,
                note=note,
                meter_id=meter_id,
            )
        )

    def _remove_typed(self, typed_id: str) -> None:
        self._session.apply(edits.remove_typed(self._session.study, typed_id))

    def _turn_typed(self, typed_id: str) -> None:
        study = self._session.study
        reading = next(t for t in study.typed if t.id == typed_id)
        turn = (
            edits.leave_out_typed(study, typed_id, "")
            if reading.included
            else edits.include_typed(study, typed_id)
        )
        self._session.apply(turn)
        self._session.seal()


def _swatch(slot: int) -> QIcon:
    """A machine's colour and marker as a little picture."""
    style = look.current()
    pixmap = QPixmap(_SWATCH_PX, _SWATCH_PX)
    pixmap.fill(style.color("card"))
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(_SWATCH_PX / 2, _SWATCH_PX / 2)
    painter.setPen(style.pen("ink"))
    painter.setBrush(style.color(style.machine(slot).fill))
    painter.drawPath(marker_path(style.machine(slot).marker, 0.7 * _SWATCH_PX))
    painter.end()
    return QIcon(pixmap)
