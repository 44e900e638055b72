"""Texts that open in a window of their own and never stop the work, and faults of the program."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QTextBrowser, QVBoxLayout, QWidget

from core import __version__
from core.language import tr
from core.places import explanation
from gui import look
from gui.jobs import Failure
from gui.look import S8, S16


def show_note(parent: QWidget, title: str, topic: str) -> QDialog:
    """Show a text of the assets; the dialog is not modal."""
    file = explanation(topic)
    text = (
        file.read_text(encoding="utf-8") if file.is_file() else tr("The text {file} is missing.", file=file)
    )
    dialog = _dialog(parent, title)
    browser = QTextBrowser()
    browser.setObjectName("note")
    browser.setOpenExternalLinks(False)
    browser.setMarkdown(text.replace("{version}", __version__))
    browser.setAccessibleName(title)
    _fill(dialog, browser, QDialogButtonBox(QDialogButtonBox.StandardButton.Close))
    return dialog


def show_text(parent: QWidget, title: str, words: str, text: str) -> QDialog:
    """Show a text that can be copied, under a line of words about it; the dialog is not modal."""
    dialog = _dialog(parent, title)
    _fill(dialog, _wrapped(words), *_copied(text, "text_to_copy", title))
    return dialog


def show_failure(parent: QWidget, failure: Failure) -> QDialog:
    """Say that the program has failed at something, with all that helps to mend it; once for each fault."""
    for known in parent.findChildren(QDialog, "note_dialog"):
        if known.isVisible() and known.property("fault") == failure.summary:
            known.raise_()
            return known
    dialog = _dialog(parent, tr("Something went wrong inside the program"))
    dialog.setProperty("fault", failure.summary)
    words = _wrapped(
        tr(
            "This is a fault of the program, not of your data. The study is as it was before. "
            "Copy the text and send it to whoever looks after the program."
        )
    )
    details = f"{failure.summary}\n\nwhile: {failure.key}\n\n{failure.details}"
    _fill(dialog, words, *_copied(details, "failure", tr("What went wrong")))
    return dialog


def _wrapped(text: str) -> QLabel:
    words = QLabel(text)
    words.setWordWrap(True)
    return words


def _copied(text: str, name: str, accessible_name: str) -> tuple[QTextBrowser, QDialogButtonBox]:
    """A text, and buttons of which one copies it."""
    browser = QTextBrowser()
    browser.setObjectName(name)
    browser.setAccessibleName(accessible_name)
    browser.setPlainText(text)
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
    copy = buttons.addButton(tr("Copy"), QDialogButtonBox.ButtonRole.ActionRole)
    copy.setObjectName("copy_text")
    copy.clicked.connect(browser.selectAll)
    copy.clicked.connect(browser.copy)
    return browser, buttons


def _dialog(parent: QWidget, title: str) -> QDialog:
    dialog = QDialog(parent)
    dialog.setObjectName("note_dialog")
    dialog.setWindowTitle(title)
    dialog.setWindowModality(Qt.WindowModality.NonModal)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    em = round(look.current().text_px)
    dialog.resize(52 * em, 46 * em)
    return dialog


def _fill(dialog: QDialog, *widgets: QWidget) -> None:
    layout = QVBoxLayout(dialog)
    layout.setContentsMargins(S16, S16, S16, S16)
    layout.setSpacing(S8)
    for widget in widgets:
        layout.addWidget(widget)
        if isinstance(widget, QDialogButtonBox):
            widget.rejected.connect(dialog.close)
    screen = QGuiApplication.primaryScreen()
    if screen is not None:
        dialog.setMaximumSize(screen.availableSize())
    dialog.show()
