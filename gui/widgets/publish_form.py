"""How pictures are to look: purpose, place, theme, words around them, machines."""

from attrs import evolve
from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QFormLayout, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from core.language import mark, tr
from core.publish.choices import PLACES, SIDE_PX, THEMES, Publishing, Theme
from core.study import Study
from gui.look import S4, S8, S12
from gui.publish.purposes import FORMATS, PLACE_NAMES
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField
from gui.widgets.publish_machines import PublishMachines

_THEME_NAMES: dict[Theme, str] = {
    "light": mark("Light"),
    "dark": mark("Dark"),
    "print": mark("Black on white"),
}
_NOBODY = mark("No machine")


class PublishForm(QWidget):
    """Shows what the study keeps of it, and asks for changes of it."""

    wanted = Signal(object, str)  # Publishing, what of it changed
    titled = Signal(str)  # the user's title of the picture that is shown
    left = Signal()  # a field was finished
    refused = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_form")
        self._publishing = Publishing()
        self.purpose = Choice("publish_purpose", tr("What the picture is for"))
        self.purpose.fill([(tr(chosen.title), key) for key, chosen in FORMATS.items()], "wide")
        limits = (float(SIDE_PX[0]), float(SIDE_PX[1]))
        self.width_px = NumberField("publish_width", tr("Width in pixels"), limits)
        self.height_px = NumberField("publish_height", tr("Height in pixels"), limits)
        self.place = Choice("publish_place", tr("From where the picture is looked at"))
        self.theme = Choice("publish_theme", tr("Colours of the picture"))
        self.theme.fill([(tr(_THEME_NAMES[theme]), theme) for theme in THEMES], "light")
        self.clear_ground = _tick("publish_clear", tr("Transparent ground"))
        self.together = _tick("publish_together", tr("Up to four figures on one picture"))
        self.has_title = _tick("publish_has_title", tr("With a tit&le"))
        self.has_conditions = _tick("publish_has_conditions", tr("With conditions and source"))
        self.title_text = _line("publish_title", tr("Title of this picture"))
        self.note = _line("publish_note", tr("A line of your own under the charts"))
        self.highlighted = Choice("publish_highlighted", tr("Machine that stands out"))
        self.machines = PublishMachines()
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        self._size = QWidget()
        size = QHBoxLayout(self._size)
        size.setContentsMargins(0, 0, 0, 0)
        size.setSpacing(S4)
        size.addWidget(self.width_px)
        size.addWidget(QLabel("×"))
        size.addWidget(self.height_px)
        size.addWidget(QLabel("px"))
        form = QFormLayout()
        form.setSpacing(S8)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.addRow(tr("F&or"), self.purpose)
        form.addRow(tr("Size"), self._size)
        form.addRow(tr("&Read"), self.place)
        form.addRow(tr("&Colours"), self.theme)
        form.addRow(tr("&Title"), self.title_text)
        form.addRow(tr("&Note"), self.note)
        form.addRow(tr("Stands o&ut"), self.highlighted)
        self._form = form
        shown = QLabel(tr("&Machines shown"))
        shown.setBuddy(self.machines)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S8)
        heading = QLabel(tr("How it looks"))
        heading.setProperty("role", "heading")
        layout.addWidget(heading)
        layout.addLayout(form)
        for tick in (self.clear_ground, self.together, self.has_title, self.has_conditions):
            layout.addWidget(tick)
        layout.addWidget(shown)
        layout.addWidget(self.machines)
        layout.addStretch(1)

    def _connect(self) -> None:
        self.purpose.activated.connect(self._on_purpose)
        for field in (self.width_px, self.height_px):
            field.entered.connect(self._on_size)
            field.refused.connect(self.refused)
        self.place.activated.connect(self._on_place)
        self.theme.activated.connect(self._on_theme)
        self.clear_ground.clicked.connect(self._on_ticks)
        self.together.clicked.connect(self._on_ticks)
        self.has_title.clicked.connect(self._on_ticks)
        self.has_conditions.clicked.connect(self._on_ticks)
        self.title_text.textEdited.connect(self.titled)
        self.note.textEdited.connect(self._on_note)
        for line in (self.title_text, self.note):
            line.editingFinished.connect(self.left)
        self.highlighted.activated.connect(self._on_highlighted)
        self.machines.arranged.connect(self._on_machines)

    # showing

    def show_study(self, study: Study, title: str, behind: str) -> None:
        """Show what the study keeps; `title` is the user's for what is shown, `behind` that of the data."""
        publishing = self._publishing = study.publishing
        with QSignalBlocker(self):
            self.purpose.setCurrentIndex(self.purpose.findData(publishing.purpose))
            self._form.setRowVisible(self._size, publishing.purpose == "free")
            self.width_px.show_text(str(publishing.width_px), "")
            self.height_px.show_text(str(publishing.height_px), "")
            usual = FORMATS[publishing.purpose].place
            places = [
                (tr("{place} (usual)", place=tr(PLACE_NAMES[place])), None)
                if place == usual
                else (tr(PLACE_NAMES[place]), place)
                for place in PLACES
            ]
            self.place.fill(places, None if publishing.place == usual else publishing.place)
            self.theme.setCurrentIndex(self.theme.findData(publishing.theme))
            self.clear_ground.setChecked(publishing.is_clear)
            self.together.setChecked(publishing.is_together)
            self.has_title.setChecked(publishing.has_title)
            self.has_conditions.setChecked(publishing.has_conditions)
            _show(self.title_text, title)
            self.title_text.setPlaceholderText(behind)
            self.title_text.setEnabled(publishing.has_title and bool(behind))
            _show(self.note, publishing.note)
            machines = [(machine.id, machine.name) for machine in study.machines]
            names = [(tr(_NOBODY), ""), *((name, machine_id) for machine_id, name in machines)]
            self.highlighted.fill(names, publishing.highlighted)
            self.machines.show_machines(machines, publishing.machine_ids)

    # what the user does

    def _ask(self, publishing: Publishing, what: str) -> None:
        if publishing != self._publishing:
            self.wanted.emit(publishing, what)

    def _on_purpose(self) -> None:
        chosen = self.purpose.currentData()
        self._ask(evolve(self._publishing, purpose=chosen), mark("purpose"))

    def _on_size(self) -> None:
        width, height = self.width_px.value, self.height_px.value
        if width is not None and height is not None:
            self._ask(evolve(self._publishing, width_px=round(width), height_px=round(height)), mark("size"))

    def _on_place(self) -> None:
        self._ask(evolve(self._publishing, place=self.place.currentData()), mark("text size"))

    def _on_theme(self) -> None:
        self._ask(evolve(self._publishing, theme=self.theme.currentData()), mark("colours"))

    def _on_ticks(self) -> None:
        changed = evolve(
            self._publishing,
            is_clear=self.clear_ground.isChecked(),
            is_together=self.together.isChecked(),
            has_title=self.has_title.isChecked(),
            has_conditions=self.has_conditions.isChecked(),
        )
        self._ask(changed, "")

    def _on_note(self, text: str) -> None:
        self._ask(evolve(self._publishing, note=text), mark("note"))

    def _on_highlighted(self) -> None:
        self._ask(
            evolve(self._publishing, highlighted=self.highlighted.currentData()),
            mark("machine that stands out"),
        )

    def _on_machines(self, shown: tuple[str, ...]) -> None:
        rows = range(self.machines.count())
        states = [self.machines.item(row).checkState() for row in rows]
        self._ask(evolve(self._publishing, machine_ids=shown), mark("machines"))
        if Qt.CheckState.Checked not in states:
            self.refused.emit(tr("A picture needs one machine at least; all are shown again."))


def _show(field: QLineEdit, text: str) -> None:
    """Put a text into a field unless it is what somebody is typing there."""
    if " ".join(field.text().split()) != text or not field.hasFocus():
        field.setText(text)
        if not field.hasFocus():
            field.setCursorPosition(0)


def _tick(name: str, text: str) -> QCheckBox:
    tick = QCheckBox(text)
    tick.setObjectName(name)
    return tick


def _line(name: str, accessible_name: str) -> QLineEdit:
    line = QLineEdit()
    line.setObjectName(name)
    line.setAccessibleName(accessible_name)
    return line
