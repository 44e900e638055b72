"""The window in another language: which there are, which is taken, and that a choice is kept."""

from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, QTranslator
from pytestqt.qtbot import QtBot

from core.language import WRITTEN_IN, speak, tr
from gui.languages import SYSTEM, install, languages, own_name, resolved
from gui.settings import Settings
from gui.widgets.language_menu import LanguageMenu


def test_german_is_one_of_the_languages() -> None:
    assert languages()[0] == WRITTEN_IN
    assert "de" in languages()
    assert own_name("de") == "Deutsch"


def test_the_wish_decides_and_else_the_desktop(monkeypatch: pytest.MonkeyPatch) -> None:
    assert resolved("de") == "de"
    assert resolved("xx") == resolved(SYSTEM)
    monkeypatch.setattr(QLocale, "uiLanguages", lambda self: ["xx", "de-AT", "en"])
    assert resolved(SYSTEM) == "de"
    monkeypatch.setattr(QLocale, "uiLanguages", lambda self: ["xx"])
    assert resolved(SYSTEM) == WRITTEN_IN


def test_a_language_reaches_every_text_and_goes_again(qtbot: QtBot) -> None:
    owner = QCoreApplication([]) if QCoreApplication.instance() is None else QCoreApplication.instance()
    assert owner is not None
    before = set(owner.findChildren(QTranslator))
    try:
        assert install(owner, "de") == "de"
        assert tr("The file is empty. Save the log again on the meter's side.").startswith(
            "Die Datei ist leer"
        )
        assert tr("not in the file for translators") == "not in the file for translators"
    finally:
        speak(None)
        for translator in set(owner.findChildren(QTranslator)) - before:
            owner.removeTranslator(translator)
            translator.deleteLater()
    assert install(owner, WRITTEN_IN) == WRITTEN_IN
    assert tr("Saved") == "Saved"


def test_a_choice_is_kept_for_the_next_start(qtbot: QtBot, tmp_path: Path) -> None:
    settings = Settings(tmp_path / "settings.ini")
    menu = LanguageMenu(settings, None)
    qtbot.addWidget(menu)
    chosen = [action for action in menu.actions() if action.isChecked()]
    assert [action.data() for action in chosen] == [SYSTEM]
    german = next(action for action in menu.actions() if action.data() == "de")
    german.trigger()
    assert Settings(tmp_path / "settings.ini").language == "de"
    assert german.isChecked()
    assert not chosen[0].isChecked()
