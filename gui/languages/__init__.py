"""Languages of the window: Qt's own translation, given to the gate of all texts at the start.

Rules: a language is one ``.ts`` file here and the ``.qm`` that ``python -m tests.languages`` makes of it;
nothing else of the program knows which there are. Numbers follow the system's locale, not the language.
"""

from functools import cache
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from core.language import WRITTEN_IN, speak

#: follow the desktop's languages, in their order
SYSTEM: Final = "system"
_FOLDER: Final = Path(__file__).parent
#: texts of this program have no context in Qt's sense: one English text means one thing
_CONTEXT: Final = ""


def languages() -> tuple[str, ...]:
    """Codes of the languages that the window speaks, such as ``"de"``; the one it is written in first."""
    return (WRITTEN_IN, *sorted(file.stem for file in _FOLDER.glob("*.qm")))


def own_name(code: str) -> str:
    """What a language calls itself."""
    name = QLocale(code).nativeLanguageName()
    return name[:1].upper() + name[1:] if code != WRITTEN_IN else "English"


def resolved(wanted: str) -> str:
    """The language to show: the one that was asked for, or the first of the desktop's that there is."""
    there = languages()
    if wanted in there:
        return wanted
    spoken = (name.replace("_", "-").split("-")[0] for name in QLocale.system().uiLanguages())
    return next((code for code in spoken if code in there), WRITTEN_IN)


def install(app: QCoreApplication, wanted: str) -> str:
    """Put the window into a language; before any of its texts is made.

    Parameters
    ----------
    app : QCoreApplication
        Keeps the translators.
    wanted : str
        A code of `languages`, or `SYSTEM`.

    Returns
    -------
    str
        The code of the language that is spoken now.
    """
    code = resolved(wanted)
    if code == WRITTEN_IN:
        speak(None)
        return code
    of_qt = QTranslator(app)
    if of_qt.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        app.installTranslator(of_qt)
    ours = QTranslator(app)
    if not ours.load(str(_FOLDER / f"{code}.qm")):
        speak(None)
        return WRITTEN_IN
    app.installTranslator(ours)
    # a text is asked for again and again, and asking Qt costs a conversion each way
    speak(cache(_translated), code)
    return code


def _translated(text: str) -> str:
    return QCoreApplication.translate(_CONTEXT, text) or text
