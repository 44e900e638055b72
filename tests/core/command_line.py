"""The command line asked within a test, and a log for it to read."""

import json
from collections.abc import Sequence
from datetime import datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import pytest

from core.command_line.command import run
from core.report.blocks import Report
from core.report.pictures import Drawable, Picture, Style
from core.traces import Trace
from tests.core.benches import alike, trace

START = datetime(2026, 6, 15, 9, 0, tzinfo=timezone(timedelta(hours=2)))


def log_text(whole: Trace) -> str:
    """A log as a meter saves it: ISO stamps with offset, power in watts."""
    rows = ["time,power [W]"]
    for at_s, power_w in zip(whole.time_s, whole.power_w, strict=True):
        rows.append(f"{(START + timedelta(seconds=float(at_s))).isoformat()},{power_w:.1f}")
    return "\n".join(rows) + "\n"


def write_logs(folder: Path) -> Path:
    """Put the logs of two machines with three runs each into a folder."""
    for i, (name, level_w) in enumerate({"alder": 60.0, "rowan": 90.0}.items()):
        (folder / f"{name}.csv").write_text(log_text(trace(alike(3, level_w=level_w, seed=i), seed=i)))
    return folder


class NoPictures:
    """A computer that cannot draw."""

    def pictures(self, drawable: Drawable, style: Style, year: int) -> Sequence[Picture] | str:
        return f"no pictures of {len(drawable.comparison.machines)} machines in {style} here"

    def pdf(self, report: Report) -> bytes | str:
        return "no pages here"


class Answer:
    def __init__(self, argv: Sequence[str | Path], capsys: pytest.CaptureFixture[str]) -> None:
        self.status = run([str(a) for a in argv], NoPictures())
        self.out, err = capsys.readouterr()
        self.messages = err.splitlines()

    @property
    def json(self) -> Any:
        def refuse(constant: str) -> None:
            raise AssertionError(f"{constant} is no JSON")

        return json.loads(self.out, parse_constant=refuse)
