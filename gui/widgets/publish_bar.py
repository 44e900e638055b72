"""What can be done with a picture: save it, save all, save it step by step, copy it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QSizePolicy, QToolButton, QWidget

from core.language import mark, tr
from gui.look import S8, S16
from gui.publish.encode import ENDINGS, Ending
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow

_FILE_NAMES: dict[Ending, str] = {
    "png": mark("PNG, pixels"),
    "svg": mark("SVG, drawing"),
    "pdf": mark("PDF, drawing"),
    "webp": mark("WebP, pixels"),
}
_RATIOS = (1, 2, 3)


class PublishBar(QWidget):
    """Buttons and the choice of a file."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_bar")
        self.save = _button("publish_save", tr("&Save picture…"), tr("Save the picture that is shown"))
        self.save.setProperty("role", "main")
        self.save_all = _button(
            "publish_save_all",
            tr("Save all pic&ked…"),
            tr("Save every pick into a folder: pictures, and tables as CSV"),
        )
        self.steps = _button(
            "publish_steps",
            tr("Ste&p by step…"),
            tr("Save numbered pictures that build the chart up machine by machine, for a video"),
        )
        self.copy = _button(
            "publish_copy", tr("Cop&y"), tr("Copy the picture and its numbers (Ctrl+C on the picture)")
        )
        self.copy_words = _button(
            "publish_copy_words",
            tr("Copy as &words"),
            tr("Copy what the picture shows in words, for readers who cannot see it"),
        )
        self.ending = Choice("publish_ending", tr("Kind of file"))
        self.ending.fill([(tr(_FILE_NAMES[ending]), ending) for ending in ENDINGS], "png")
        self.ratio = Choice("publish_ratio", tr("How sharp pixels are"))
        self.ratio.fill([(f"{n}×", n) for n in _RATIOS], 1)
        self.ratio.setToolTip(tr("2× and 3× give the same picture with more pixels"))
        self.real_size = QToolButton()
        self.real_size.setObjectName("publish_real_size")
        self.real_size.setText("1:&1")
        self.real_size.setToolTip(tr("Show each pixel of the picture as one of the screen"))
        self.real_size.setAccessibleName(tr("Show the picture in its own size"))
        self.real_size.setCheckable(True)
        self.real_size.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        for choice, letters in ((self.ending, 12), (self.ratio, 3)):
            choice.setMinimumContentsLength(letters)
            choice.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        file = QLabel(tr("F&ile:"))
        file.setBuddy(self.ending)
        layout = Flow(self, S8)
        layout.setContentsMargins(S16, 0, S16, 0)
        for widget in (
            self.save,
            self.save_all,
            self.steps,
            file,
            self.ending,
            self.ratio,
            self.copy,
            self.copy_words,
            self.real_size,
        ):
            layout.addWidget(widget)

    @property
    def chosen_ending(self) -> Ending:
        """The kind of file."""
        return next(ending for ending in ENDINGS if ending == self.ending.currentData())

    @property
    def chosen_ratio(self) -> float:
        """Pixels of the file for each of the picture."""
        return float(self.ratio.currentData())

    def show_state(self, *, is_table: bool, has_picture: bool, picks: int) -> None:
        """Offer what can be done now."""
        self.save.setText(tr("&Save table…") if is_table else tr("&Save picture…"))
        self.save.setEnabled(is_table or has_picture)
        self.copy.setEnabled(is_table or has_picture)
        self.steps.setEnabled(has_picture)
        self.copy_words.setEnabled(has_picture)
        self.real_size.setEnabled(has_picture)
        self.save_all.setEnabled(picks > 0)
        self.save_all.setText(
            tr("Save all {count} pic&ked…", count=picks) if picks else tr("Save all pic&ked…")
        )
        self.ratio.setEnabled(self.chosen_ending in ("png", "webp"))


def _button(name: str, text: str, tip: str) -> QPushButton:
    button = QPushButton(text)
    button.setObjectName(name)
    button.setToolTip(tip)
    return button
