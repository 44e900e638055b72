"""Where the program in one folder begins. It stands in for Python where that is started again."""

import multiprocessing
import os
import sys


def main() -> int:
    """Do what was asked for."""
    multiprocessing.freeze_support()
    if sys.argv[1:2] == ["-c"]:  # a process of our own that is to open what may end it
        exec(sys.argv[2], {"__name__": "__main__"})
        return 0
    if os.environ.get("SAMEPART_SELF_TEST") == "window":
        return show_window()
    from gui.command import main as samepart

    return samepart()


def show_window() -> int:
    """Open the window, and close it once it has been seen: for a test of the folder without a screen."""
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication, QMainWindow

    from gui.app import run

    app = QApplication(sys.argv[:1])
    seen = []

    def look() -> None:
        windows = [w for w in app.topLevelWidgets() if isinstance(w, QMainWindow) and w.isVisible()]
        if any(w.objectName() == "main_window" for w in windows):
            seen.append(windows)
            app.quit()

    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(100)
    status = run([])
    return status if seen else 1


if __name__ == "__main__":
    sys.exit(main())
