"""What helps to mend a fault, with what only the window knows; nothing private (see `core.diagnostics`)."""

from PySide6.QtCore import qVersion
from PySide6.QtGui import QGuiApplication

from core.diagnostics import about_program, about_study
from gui.session import Session
from gui.settings import Settings


def diagnostics(session: Session, settings: Settings) -> str:
    """Versions, kind of computer and sizes, a line each."""
    screens = (
        f"{screen.size().width()} x {screen.size().height()} at {screen.devicePixelRatio():g}"
        for screen in QGuiApplication.screens()
    )
    window = (
        f"Qt {qVersion()} on {QGuiApplication.platformName()}, screens {', '.join(screens)}",
        f"theme {settings.theme}, text {settings.zoom:.0%}, {QGuiApplication.layoutDirection().name}",
        f"study {'read only' if session.is_read_only else 'open'}, {len(session.problems)} problems listed",
    )
    about = about_study(session.study, session.traces, len(session.history.past))
    return "\n".join((*about_program(), *window, *about))
