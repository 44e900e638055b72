"""A study with two logs, as edits begin from it."""

from typing import Any

import pytest

from core import edits
from core.edits import FoundRun, NewLog
from core.study import Source, Study


def source(name: str = "alder.csv", digest: str = "a" * 64, device: str | None = None) -> Source:
    return Source(digest, name, device)


def found(*spans: tuple[float, float], kind: Any = "run") -> tuple[FoundRun, ...]:
    return tuple(FoundRun(start_s, end_s, kind) for start_s, end_s in spans)


@pytest.fixture
def study() -> Study:
    """Alder with three runs in one log, Birch with a hold test."""
    logs = [
        NewLog((source(),), "Alder", found((0, 100), (200, 300), (400, 500))),
        NewLog((source("birch.csv", "b" * 64),), "Birch", found((10, 90), kind="hold test")),
    ]
    return edits.import_logs(edits.new_study("s1").study, logs).study
