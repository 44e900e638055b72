"""What the user knows of the machines, on a card: the table to type into, and its columns."""

from PySide6.QtCore import QEvent, QModelIndex, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QLabel, QLineEdit, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from core import edits
from core.edits import Edit
from core.formatting import NumberLocale
from core.language import tr
from core.properties.paste import paste
from core.properties.table import KINDS, Column, full_name, read_cell, why_not_a_column
from core.results.property_answer import HOW_TO
from core.study import Study
from gui.look import S8, S12, current
from gui.models.properties import PropertyModel
from gui.session import Session
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.property_grid import PropertyGrid
from gui.widgets.titled_card import muted_words

#: widths of the fields [text heights]
_NAME, _UNIT = 11.0, 4.5


class PropertyCard(QFrame):
    """Cells and columns; everything asked for goes through the session, and what cannot be is told."""

    told = Signal(str)

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self._session = session
        self._locale = locale
        self._wanted = ""  # a column that was added, to go to once it is in the table
        self.model = PropertyModel(self)
        self.grid = PropertyGrid(self.model)
        self.name = _field("property_name", tr("Name of the new column"), tr("Age"), _NAME)
        self.unit = _field("property_unit", tr("Unit of the new column, for numbers"), tr("years"), _UNIT)
        self.kind = Choice("property_kind", tr("Kind of the new column"))
        self.kind.fill([(tr(title), kind) for kind, title in KINDS], "number")
        self.add = _button("add_property", tr("&Add column"))
        self.rename = _field(
            "rename_property", tr("Name of the column that is chosen in the table"), "", _NAME
        )
        self.remove = _button("remove_property", tr("Re&move column"))
        self._lay_out()
        self._connect()
        self._show_column()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S8)
        heading = QLabel(tr("What you know of the machines"))
        heading.setProperty("role", "heading")
        hint = muted_words()
        hint.setText(tr(HOW_TO))
        layout.addWidget(heading)
        layout.addWidget(hint)
        layout.addWidget(self.grid)
        columns = QWidget()
        flow = Flow(columns, S8)
        flow.addWidget(labelled(tr("&New column:"), self.name))
        self._unit = labelled(tr("&in:"), self.unit)
        flow.addWidget(self._unit)
        flow.addWidget(labelled(tr("&Kind:"), self.kind))
        flow.addWidget(self.add)
        flow.addWidget(labelled(tr("Chosen co&lumn:"), self.rename))
        flow.addWidget(self.remove)
        layout.addWidget(columns)

    def _connect(self) -> None:
        self.model.typed.connect(self._on_typed)
        self.grid.pasting.connect(self._on_pasting)
        self.grid.emptying.connect(self._on_emptying)
        self.grid.selectionModel().currentChanged.connect(self._on_current)
        self.model.modelReset.connect(self._show_column)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.add.clicked.connect(self._on_add)
        self.name.returnPressed.connect(self._on_add)
        self.unit.returnPressed.connect(self._on_add)
        self.rename.editingFinished.connect(self._on_rename)
        self.remove.clicked.connect(self._on_remove)

    def show_study(self, study: Study) -> None:
        """Show what is known of the machines of a study."""
        at = self.grid.currentIndex()
        self.model.show_study(study, self._locale)
        if not self.grid.currentIndex().isValid() and self.model.rowCount() and self.model.columnCount():
            row = min(max(at.row(), 0), self.model.rowCount() - 1)
            self.grid.go_to(row, min(max(at.column(), 0), self.model.columnCount() - 1))
        place = next((i for i, c in enumerate(self.model.columns) if c.name == self._wanted), -1)
        if place >= 0 and self.model.rowCount():
            self._wanted = ""
            self.grid.go_to(0, place)
            self.grid.setFocus()
        self.grid.fit()
        self._show_column()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.grid.fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.grid.fit()

    @property
    def column(self) -> Column | None:
        """The column of the current cell."""
        at = self.grid.currentIndex().column()
        return self.model.columns[at] if 0 <= at < len(self.model.columns) else None

    # what the user does

    def _apply(self, edit: Edit, told: str = "") -> None:
        self.told.emit(told)
        self._session.apply(edit)
        self._session.seal()

    def _on_typed(self, machine_id: str, column: Column, text: str) -> None:
        cell = read_cell(text, column, self._locale)
        if cell.why_not:
            self.told.emit(cell.why_not)
        else:
            self._apply(edits.set_property(self._session.study, machine_id, column.name, cell.value))

    def _on_pasting(self, text: str, row: int, column: int) -> None:
        found = paste(self._session.study, text, row, column, self._locale)
        if found.edit is None:
            self.told.emit(found.why_not)
        else:
            self._apply(found.edit, tr("Pasted"))

    def _on_emptying(self, cells: list[tuple[int, int]]) -> None:
        machines, columns = self.model.machines, self.model.columns
        filled = [(r, c) for r, c in cells if self.model.text(r, c)]
        if filled:
            new = [edits.NewCell(machines[r].id, columns[c].name, None) for r, c in filled]
            self._apply(edits.fill_properties(self._session.study, new))

    def _on_current(self, now: QModelIndex, before: QModelIndex) -> None:
        if now.column() != before.column():
            self._show_column()

    def _on_kind(self) -> None:
        self._unit.setVisible(self.kind.currentData() == "number")

    def _on_add(self) -> None:
        kind = next(k for k, _ in KINDS if k == self.kind.currentData())
        name = full_name(self.name.text(), self.unit.text() if kind == "number" else "")
        why_not = why_not_a_column(self._session.study, name)
        if why_not:
            self.told.emit(why_not)
            self.name.setFocus()
            return
        self.name.clear()
        self.unit.clear()
        self._wanted = name
        self._apply(edits.add_property_column(self._session.study, name, kind))

    def _on_rename(self) -> None:
        column, name = self.column, " ".join(self.rename.text().split())
        if column is None or not column.is_own or name == column.name:
            return
        why_not = why_not_a_column(self._session.study, name, but=column.name)
        if why_not:
            self.told.emit(why_not)
            self.rename.setText(column.name)
        else:
            self._apply(edits.rename_property_column(self._session.study, column.name, name))

    def _on_remove(self) -> None:
        column = self.column
        if column is not None and column.is_own:
            told = tr("Removed the column {name}: Ctrl+Z brings it back", name=column.name)
            self._apply(edits.remove_property_column(self._session.study, column.name), told)

    def _show_column(self) -> None:
        column = self.column
        is_own = column is not None and column.is_own
        if column is not None and not self.rename.isModified():
            self.rename.setText(column.name)
        self.rename.setModified(False)
        for widget in (self.rename, self.remove):
            widget.setEnabled(is_own)
            widget.setToolTip("" if is_own else tr("The Bed page asks for this column: it stays as it is"))


def _field(name: str, accessible_name: str, behind: str, width: float) -> QLineEdit:
    field = QLineEdit()
    field.setObjectName(name)
    field.setAccessibleName(accessible_name)
    field.setPlaceholderText(behind)
    field.setMinimumWidth(round(width * current().text_px))
    return field


def _button(name: str, text: str) -> QPushButton:
    button = QPushButton(text)
    button.setObjectName(name)
    return button
