"""Start-up of the window, and its end in the right order."""

import faulthandler
import signal
import sys
import traceback
from importlib import import_module
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication

from core.problems import Problem
from core.progress import Progress
from gui.appearance import Appearance
from gui.icons import application_icon
from gui.jobs import Failure, Jobs
from gui.languages import install
from gui.opening import Opening
from gui.settings import Settings, data_folder

if TYPE_CHECKING:
    from gui.main_window import MainWindow
    from gui.session import Session

_TURN_S = 0.001
_SLOW_TO_LOAD = (
    "pyarrow.csv",
    "tsdownsample",
    "core.found",
    "core.publish.shelf",
    "core.report.tables",
    "core.bundle.writing",
    "pandas",
    "scipy.stats",
    "statsmodels.stats.api",
    "GTC",
)


def build(
    settings: Settings, jobs: Jobs, appearance: Appearance, folder: Path
) -> "tuple[MainWindow, Session]":
    """Make the window and its session; nothing is opened yet."""
    from gui.main_window import MainWindow
    from gui.pages.contents import Contents
    from gui.session import Session

    session = Session(jobs, folder)
    with appearance.put_on_last():
        entries = Contents(session, settings).entries
        window = MainWindow(session, jobs, settings, appearance, entries)
    session.setParent(window)
    return window, session


def run(paths: list[str], demo: bool = False) -> int:
    """Open the window and stay until it is closed.

    Parameters
    ----------
    paths : list of str
        Studies, logs and folders to open.
    demo : bool
        Open the demo study.

    Returns
    -------
    int
        Exit status.
    """
    if sys.stderr is not None and not faulthandler.is_enabled():
        faulthandler.enable()
    # Ctrl+C in a terminal ends the program at once: Qt would not hear of it, and every edit is saved already.
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    QCoreApplication.setOrganizationName("Samepart")
    QCoreApplication.setApplicationName("samepart")
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationDisplayName("Samepart")
    app.setWindowIcon(application_icon())
    settings, jobs = Settings(), Jobs()
    install(app, settings.language)
    appearance = Appearance(app, settings.theme, settings.zoom)
    # most of the program is loaded only now, with its frame to be seen already
    opening = Opening(settings.geometry)
    opening.show_at_once()
    from gui.study_files import STUDY_SUFFIX

    window, session = build(settings, jobs, appearance, data_folder())
    _report_exceptions(jobs)
    if demo:
        window.open_demo()
    else:
        open_last(session, settings)
        is_taken = bool(session.study.logs) or not session.is_untitled
        if is_taken and any(not path.lower().endswith(STUDY_SUFFIX) for path in paths):
            session.new_study()  # logs named at the start are a question of their own
        window.add_paths([Path(path) for path in paths])
    window.show()
    app.processEvents()
    opening.close()
    opening.deleteLater()
    # The pool computes in Python too: the window asks for its turn more often than the usual 5 ms.
    sys.setswitchinterval(_TURN_S)
    jobs.start("warm up", _load_libraries, lambda _: window.make_pages_ahead())
    try:
        return app.exec()
    finally:
        _end(app, window)


def _load_libraries(progress: Progress) -> None:
    """Load what the first import would load: some of it holds the interpreter for a tenth of a second."""
    for name in _SLOW_TO_LOAD:
        progress(0.0, "")  # asks only whether to go on
        import_module(name)


def open_last(session: "Session", settings: Settings) -> None:
    """Open the study that was open last, with a name or without; or one that is new.

    One with a name that another window is writing is left to it.
    """
    last = settings.last_study
    told: tuple[Problem, ...] = ()
    if last is not None:
        if session.open(last) and not session.is_read_only:
            return
        told = () if session.is_read_only else session.problems
    if not session.open_untitled():
        session.new_study()
    session.tell(*told)


def _end(app: QApplication, window: "MainWindow") -> None:
    # Widgets first, then the application: the other way round Qt dies in garbage collection (tried).
    sys.excepthook = sys.__excepthook__
    window.close()
    window.deleteLater()
    app.processEvents()
    app.sendPostedEvents(None, 0)


def _report_exceptions(jobs: Jobs) -> None:
    """Show exceptions that escape from slots like those of the pool."""

    def report(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        sys.__excepthook__(kind, error, trace)
        if not issubclass(kind, KeyboardInterrupt):
            details = "".join(traceback.format_exception(kind, error, trace))
            jobs.failed.emit(Failure("the window", f"{kind.__name__}: {error}", details))

    sys.excepthook = report
