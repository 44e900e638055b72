"""The whole study for others: report, tables, bundle; personal data are listed before a bundle is saved."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QFrame, QLabel, QPushButton, QVBoxLayout, QWidget

from core.language import mark, tr
from core.personal.search import THE_STUDY, Personal
from gui.look import S4, S8, S12
from gui.publish.whole_study import Giving, Wanted
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow

#: so many personal things are named one by one
_MOST_NAMED = 12
_WITH_LOGS, _HASHES = mark("Raw logs inside"), mark("Only the SHA-256 of each log")
_BUTTONS: tuple[tuple[Wanted, str, str], ...] = (
    ("html", mark("Report, HTML…"), mark("One file with pictures, tables and method, for any browser")),
    ("pdf", mark("Report, P&DF…"), mark("The same on pages")),
    (
        "tables",
        mark("&All tables…"),
        mark("A spreadsheet with a sheet for each table, and one for the method"),
    ),
    ("everything", mark("Everythin&g…"), mark("Report, tables, pictures and bundle in one folder")),
)


class PublishWhole(QFrame):
    """Buttons, and what is asked before a bundle leaves."""

    wanted = Signal(str)  # Wanted
    looking = Signal()  # personal data are to be looked for

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.found = QLabel()
        self.found.setObjectName("publish_personal")
        self.found.setWordWrap(True)
        self.replaces = QCheckBox(tr("&Replace personal data by names that say nothing"))
        self.replaces.setObjectName("publish_replace_personal")
        self.logs = Choice("publish_logs", tr("Whether raw logs go into the bundle"))
        self.logs.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToContents)  # alone in its line
        self.logs.fill([(tr(_WITH_LOGS), True), (tr(_HASHES), False)], True)
        self.save_bundle = QPushButton(tr("Save &bundle…"))
        self.save_bundle.setObjectName("publish_save_bundle")
        self._buttons: dict[str, QPushButton] = {}
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S4)
        heading = QLabel(tr("The whole study"))
        heading.setProperty("role", "heading")
        said = QLabel(
            tr(
                "A report that stands on its own, every table, and a bundle from which others "
                "can compute every figure again."
            )
        )
        said.setProperty("role", "muted")
        said.setWordWrap(True)
        layout.addWidget(heading)
        layout.addWidget(said)
        row = QWidget()
        line = Flow(row, S8)
        for name, text, tip in _BUTTONS:
            line.addWidget(self._button(name, tr(text), tr(tip)))
        self.ask_bundle = QPushButton(tr("&Bundle…"))
        self.ask_bundle.setObjectName("publish_bundle")
        self.ask_bundle.setToolTip(tr("A zip with logs, readings, runs and results; opens in Samepart"))
        self.ask_bundle.clicked.connect(self._on_bundle)
        line.addWidget(self.ask_bundle)
        layout.addWidget(row)
        self._bundle = QWidget()
        below = QVBoxLayout(self._bundle)
        below.setContentsMargins(0, S4, 0, 0)
        below.setSpacing(S4)
        below.addWidget(self.found)
        below.addWidget(self.replaces)
        choices = QWidget()
        last = Flow(choices, S8)
        last.addWidget(self.logs)
        last.addWidget(self.save_bundle)
        below.addWidget(choices)
        layout.addWidget(self._bundle)
        self.save_bundle.clicked.connect(self._on_save_bundle)
        self._bundle.hide()

    @property
    def giving(self) -> Giving:
        """What is given to others."""
        return Giving(bool(self.logs.currentData()), self.replaces.isChecked())

    def show_personal(self, found: Sequence[Personal]) -> None:
        """List what was found, before anything is saved."""
        self.save_bundle.setEnabled(True)
        self.replaces.setVisible(bool(found))
        if not found:
            self.found.setText(tr("No personal data was found in the logs or in the study's own words."))
            return
        named = [
            tr("{kind} “{text}” in {places}", kind=tr(p.kind), text=p.text, places=_places(p))
            for p in found[:_MOST_NAMED]
        ]
        more = len(found) - len(named)
        lines = [tr("{count:personal thing|personal things} would be given away:", count=len(found)), *named]
        lines += [tr("and {count} more", count=more)] if more else []
        self.found.setText("\n".join(lines))

    def close_bundle(self) -> None:
        """Put away what was asked before a bundle."""
        self._bundle.hide()
        self.replaces.setChecked(False)

    def _button(self, name: str, text: str, tip: str) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(f"publish_{name}")
        button.setProperty("wanted", name)
        button.setToolTip(tip)
        button.clicked.connect(self._on_button)
        self._buttons[name] = button
        return button

    def _on_button(self) -> None:
        sender = self.sender()
        if sender is not None:
            self.wanted.emit(str(sender.property("wanted")))

    def _on_bundle(self) -> None:
        """Look for personal data first; the bundle is saved from what opens beneath."""
        if self._bundle.isVisibleTo(self):
            self.close_bundle()
            return
        self.found.setText(tr("Looking for personal data…"))
        self.replaces.hide()
        self.save_bundle.setEnabled(False)
        self._bundle.show()
        self.looking.emit()

    def _on_save_bundle(self) -> None:
        self.wanted.emit("bundle")


def _places(personal: Personal) -> str:
    told = [
        tr("{place} ({count} times)", place=place, count=n) if n > 1 else place
        for where, n in personal.places
        for place in [tr(where) if where == THE_STUDY else where]
    ]
    return ", ".join(told) or tr("the names of devices")
