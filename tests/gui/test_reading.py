"""What the pool does for the session can be stopped at every step."""

from collections.abc import Callable
from pathlib import Path

import pytest

from core import edits
from core.progress import Cancelled, silent
from core.store.file import StudyFile
from core.study import Study
from gui import growing, reading
from tests.gui.driver import write_log


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return write_log(tmp_path / "alder.csv")


@pytest.fixture
def file(tmp_path: Path):
    created = StudyFile.create(tmp_path / "study.samepart")
    assert isinstance(created, StudyFile)
    with created:
        yield created


def _stopping_at(step: str, told: list[str]) -> Callable[[float, str], None]:
    def progress(fraction: float, text: str) -> None:
        assert 0.0 <= fraction <= 1.0
        told.append(text)
        if text.startswith(step):
            raise Cancelled

    return progress


def _steps(told: list[str]) -> list[str]:
    return list(dict.fromkeys(" ".join(text.split()[:2]) for text in told))


@pytest.mark.parametrize("step", ["looking for", "reading", "finding runs", "keeping the log"])
def test_files_are_given_up_at_any_step(log: Path, file: StudyFile, step: str):
    told: list[str] = []
    with pytest.raises(Cancelled):
        reading.read_files([log], file, _stopping_at(step, told))
    assert told[-1].startswith(step)


def test_finding_runs_is_a_step_that_goes_on(log: Path, file: StudyFile):
    told: list[str] = []
    reading.read_files([log], file, _stopping_at("nothing", told))
    assert sum(text.startswith("finding runs in") for text in told) >= 3
    assert _steps(told)[-1] == "keeping the"


@pytest.mark.parametrize("step", ["reading", "finding runs"])
def test_a_kept_log_is_given_up_too(log: Path, file: StudyFile, step: str):
    found = reading.read_files([log], file, silent)
    new = [edits.NewLog(one.sources, one.machine_name, one.runs) for one, _ in found.logs]
    study = edits.import_logs(Study(id="s1"), new).study
    told: list[str] = []
    with pytest.raises(Cancelled):
        reading.read_logs(study.logs, file.blob, _stopping_at(step, told))
    with log.open("a", encoding="utf-8") as more:
        more.write("2026-03-02T12:00:00Z,4.0\n")
    digest = study.logs[0].sources[0].digest
    with pytest.raises(Cancelled):
        growing.read_on(log, digest, study, file, _stopping_at(step, told), {})
    assert growing.read_on(log, digest, study, file, silent, {}).logs


@pytest.mark.parametrize("step", ["reading alder.csv on", "looking for what", "reading rows", "finding runs"])
def test_a_log_that_is_read_on_is_given_up_at_any_step(log: Path, file: StudyFile, step: str):
    found = reading.read_files([log], file, silent)
    study = edits.import_logs(
        Study(id="s1"), [edits.NewLog(one.sources, one.machine_name, one.runs) for one, _ in found.logs]
    ).study
    (kept,) = study.logs
    before = {kept.id: found.logs[0][1]}
    with log.open("a", encoding="utf-8") as more:
        more.write("2026-03-02T12:00:00Z,4.0\n")
    told: list[str] = []
    with pytest.raises(Cancelled):
        growing.read_on(log, kept.sources[0].digest, study, file, _stopping_at(step, told), before)
    told.clear()
    now = growing.read_on(log, kept.sources[0].digest, study, file, _stopping_at("nothing", told), before)
    assert now.logs[0].data.readings[0].rows_read == found.logs[0][1].readings[0].rows_read + 1
    assert not any(text.startswith("looking at the file") for text in told)  # nothing was read whole
