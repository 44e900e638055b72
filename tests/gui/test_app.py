"""The program as a process: it starts, shows the demo, and ends with status 0."""

import os
import subprocess
import sys
from pathlib import Path

_SCRIPT = """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

app = QApplication(sys.argv[:1])
app.setQuitOnLastWindowClosed(True)

def close_when_idle():
    from gui.main_window import MainWindow
    windows = [w for w in app.topLevelWidgets() if isinstance(w, MainWindow)]
    page = windows[0].page if windows and not windows[0].is_busy else None
    if page is not None and page.title == "Compare":
        print(windows[0].windowTitle())
        windows[0].close()

timer = QTimer()
timer.setInterval(50)
timer.timeout.connect(close_when_idle)
timer.start()
from gui.app import run
sys.exit(run([], demo=True))
"""


def test_the_demo_opens_in_a_window_of_its_own_and_ends_well(tmp_path: Path):
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": str(tmp_path)}
    environment |= {
        name: str(tmp_path / name) for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")
    }
    done = subprocess.run(
        [sys.executable, "-X", "faulthandler", "-c", _SCRIPT],
        env=environment, cwd=Path(__file__).parents[2],
        capture_output=True, text=True, timeout=120, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert "Hose clip study" in done.stdout
    assert "Traceback" not in done.stderr
    kept = list(tmp_path.rglob("*.samepart"))
    assert [path.name for path in kept] == ["demo.samepart"]
