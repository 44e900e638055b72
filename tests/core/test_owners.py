"""Which machine a new log is of: by the device it names, never by a file's name against the clocks."""

from pathlib import Path

import pytest
from attrs import evolve

from core import edits
from core.analysis import add_to_study, by_log, find_logs
from core.owners import free_name
from core.study import Study
from tests.core.benches import alike, trace

EMPTY = Study(id="s1")
DAY_S = 86_400


def _log(path: Path, device: str | None = None, start_s: int = 1_750_000_000) -> Path:
    made = trace(alike(2))
    head, tail = ("time,power [W],device", f",{device}") if device else ("time,power [W]", "")
    rows = [f"{start_s + t:.0f},{p:.1f}{tail}" for t, p in zip(made.time_s, made.power_w, strict=True)]
    path.write_text("\n".join([head, *rows]) + "\n")
    return path


def _added(*drops: tuple[Path, ...]) -> Study:
    """The study after files were dropped one lot after another."""
    study, traces, activities = EMPTY, {}, {}
    for paths in drops:
        found = find_logs(paths)
        study = add_to_study(study, found.logs, activities, traces).study
        traces |= {log_id: log.trace for log_id, log in by_log(study, found.logs).items()}
        activities |= {log_id: log.activity for log_id, log in by_log(study, found.logs).items()}
    return study


def _names(study: Study) -> list[str]:
    return [machine.name for machine in study.machines]


@pytest.mark.parametrize("together", [True, False])
def test_a_file_goes_to_the_device_of_its_name_on_another_day(tmp_path: Path, together: bool):
    named, plain = (
        _log(tmp_path / "all.csv", "Quartz"),
        _log(tmp_path / "quartz.csv", None, 1_750_000_000 + DAY_S),
    )
    study = _added((named, plain)) if together else _added((named,), (plain,))
    assert _names(study) == ["Quartz"]
    assert len(study.logs) == 2
    assert len(study.meters) == 1


@pytest.mark.parametrize("together", [True, False])
def test_a_file_of_the_same_hour_as_the_device_is_of_another_machine(tmp_path: Path, together: bool):
    named, plain = _log(tmp_path / "all.csv", "Quartz"), _log(tmp_path / "quartz.csv", None, 1_750_003_000)
    study = _added((named, plain)) if together else _added((named,), (plain,))
    assert _names(study) == ["Quartz", "quartz 2"]
    assert len(study.meters) == 2


def test_files_of_one_name_dropped_one_after_another_are_of_two_machines(tmp_path: Path):
    for day in ("monday", "tuesday"):
        (tmp_path / day).mkdir()
    first = _log(tmp_path / "monday" / "log.csv")
    second = _log(tmp_path / "tuesday" / "log.csv", None, 1_750_000_000 + 7 * DAY_S)
    assert _names(_added((first,), (second,))) == ["log", "log 2"]


def test_logs_that_name_their_device_are_of_one_machine(tmp_path: Path):
    first = _log(tmp_path / "a.csv", "Quartz")
    second = _log(tmp_path / "b.csv", "QUARTZ", 1_750_000_000 + 500 * DAY_S)
    study = _added((first,), (second,))
    assert _names(study) == ["Quartz"]
    assert len(study.logs) == 2


def test_a_log_goes_to_a_machine_of_which_only_readings_were_typed(tmp_path: Path):
    typed = edits.add_machine(EMPTY, "Quartz").study
    typed = edits.add_typed(typed, typed.machines[0].id, 20.0).study
    found = find_logs([_log(tmp_path / "quartz.csv")])
    assert _names(add_to_study(typed, found.logs).study) == ["Quartz"]


def test_a_free_name_counts_on():
    study = EMPTY
    for name in ("Quartz", "quartz 2"):
        study = edits.add_machine(study, name).study
    assert free_name(study, "Quartz") == "Quartz 3"
    assert free_name(evolve(study, machines=()), "Quartz") == "Quartz"
