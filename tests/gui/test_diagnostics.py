"""What is sent with a fault helps to mend it and gives nothing of anybody away."""

import getpass
import platform
import re
from pathlib import Path

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QTextBrowser

from core import __version__, edits
from tests.gui.driver import opened, write_log


def test_diagnostics_hold_versions_and_sizes_and_nothing_private(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path / "secret folder") as user:
        user.drop(write_log(tmp_path / "alderson.csv"), write_log(tmp_path / "birchwood.csv", seed=2))
        study = edits.rename_part(edits.rename_study(user.study, "Hushed bench").study, "hush clip").study
        study = edits.add_meter(study, "Meter of Quincy").study
        user.session.apply(edits.Edit(study, "Name it"))
        user.session.apply(edits.leave_out(user.study, user.run().id, "Quincy opened the door"))
        user.settle()
        user.do("action_diagnostics")
        text = user.widget(QTextBrowser, "text_to_copy").toPlainText()
        user.click("copy_text")
        assert QGuiApplication.clipboard().text() == text
        rows = sum(trace.time_s.size for trace in user.session.traces.values())
    assert f"samepart {__version__}" in text
    assert "2 machines, 3 meters, 2 logs, " in text
    assert f"2 logs read, {rows} rows" in text
    private = [
        "alderson", "birchwood", "hush", "quincy", "door", "secret", "/", "\\", str(Path.home()).lower(),
        platform.node().lower(), str(tmp_path).lower(), "2026-03-02",
    ]  # fmt: skip
    told = text.lower()
    assert [word for word in private if word and word in told] == []
    assert not re.search(rf"\b{re.escape(getpass.getuser().lower())}\b", told)
