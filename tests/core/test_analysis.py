"""From files to a study: reading in other processes, joining, naming, meters."""

from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path

import numpy as np
import pytest

from core import edits
from core.analysis import Found, add_to_study, by_log, find_logs, read_log
from core.comparing import gather
from core.history import History
from core.problems import Problem
from core.progress import Cancelled
from core.results.compare import compare
from core.store.file import StudyFile
from core.study import Study
from core.traces import Trace
from core.wording import placed
from tests.core.benches import Making, alike, trace

EMPTY = edits.new_study("s").study


def written(
    path: Path, whole: Trace, *, device: str | None = None, start: str = "2026-06-15T09:00:00"
) -> Path:
    """A log of `whole` with a local clock and, if one is named, a device column."""
    stamps = np.datetime64(start) + (whole.time_s * 1000).astype("timedelta64[ms]")
    tail = f",{device}" if device else ""
    rows = [f"{t},{p:.1f}{tail}" for t, p in zip(stamps.astype(str), whole.power_w, strict=True)]
    head = "time,power [W],device" if device else "time,power [W]"
    path.write_text("\n".join([head, *rows]) + "\n")
    return path


def part(whole: Trace, first: int, last: int) -> tuple[Trace, str]:
    """Rows `first` to `last` of a trace, and the stamp of the first."""
    start = np.datetime64("2026-06-15T09:00:00") + np.timedelta64(round(whole.time_s[first] * 1000), "ms")
    return Trace.of(whole.time_s[first:last] - whole.time_s[first], whole.power_w[first:last]), str(start)


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("logs")
    for i, (name, level_w) in enumerate({"alder": 60.0, "birch": 66.0, "rowan": 90.0}.items()):
        written(made / f"{name}.csv", trace(alike(3, level_w=level_w, seed=i), seed=i))
    return made


def shape(found: Found) -> list[tuple[str, list[tuple[float, float, str]]]]:
    return [(log.machine_name, [(r.start_s, r.end_s, r.kind) for r in log.runs]) for log in found.logs]


def test_other_processes_answer_the_same(folder: Path) -> None:
    here = find_logs([folder])
    with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as executor:
        there = find_logs([folder], executor=executor)
    assert shape(there) == shape(here)
    assert [log.trace for log in there.logs] == [log.trace for log in here.logs]
    assert [name for name, _ in shape(here)] == ["alder", "birch", "rowan"]
    assert all(len([r for r in runs if r[2] == "run"]) == 3 for _, runs in shape(here))


def test_progress_is_told_and_can_cancel(folder: Path) -> None:
    told: list[float] = []

    def watch(fraction: float, text: str) -> None:
        told.append(fraction)
        if len(told) == 2:
            raise Cancelled

    with pytest.raises(Cancelled):
        find_logs([folder], watch)
    assert told == pytest.approx([0.0, 1 / 3])


def test_a_run_cut_over_two_files_comes_out_whole(tmp_path: Path) -> None:
    whole = trace(alike(3))
    cut = 300 + 90 + 600  # in the middle of the first run's processing
    for name, first, last in (("monday", 0, cut), ("tuesday", cut, whole.time_s.size)):
        piece, start = part(whole, first, last)
        written(tmp_path / f"{name}.csv", piece, device="Alder", start=start)
    found = find_logs([tmp_path])
    (log,) = found.logs
    assert log.machine_name == "Alder"
    assert [Path(s.file_name).name for s in log.sources] == ["monday.csv", "tuesday.csv"]
    assert [r.kind for r in log.runs] == ["run", "run", "run"]
    assert log.runs[0].start_s < whole.time_s[cut] < log.runs[0].end_s


def test_each_machine_gets_a_meter_of_its_own(folder: Path) -> None:
    study = add_to_study(EMPTY, find_logs([folder]).logs).study
    assert [m.name for m in study.meters] == ["Meter of alder", "Meter of birch", "Meter of rowan"]
    assert {log.meter_id for log in study.logs} == {m.id for m in study.meters}


def test_a_further_log_of_a_machine_keeps_its_meter(tmp_path: Path) -> None:
    written(tmp_path / "a.csv", trace(alike(3)), device="Alder")
    study = add_to_study(EMPTY, find_logs([tmp_path / "a.csv"]).logs).study
    written(tmp_path / "b.csv", trace(alike(3), seed=5), device="Alder", start="2026-07-01T10:00:00")
    study = add_to_study(study, find_logs([tmp_path / "b.csv"]).logs).study
    assert len(study.machines) == 1
    assert len(study.logs) == 2
    assert len(study.meters) == 1


def test_stated_meters_of_a_study_stay(folder: Path) -> None:
    study = edits.add_meter(EMPTY, "Meter 1").study
    study = edits.set_meter(study, study.meters[0].id, gain_percent=0.5).study
    after = add_to_study(study, find_logs([folder]).logs).study
    assert after.meters[0] == study.meters[0]
    assert len(after.meters) == 4


def test_adding_the_same_files_again_changes_nothing(folder: Path) -> None:
    found = find_logs([folder])
    once = add_to_study(EMPTY, found.logs).study
    assert add_to_study(once, found.logs).study == once
    assert set(by_log(once, found.logs)) == {log.id for log in once.logs}


def test_a_log_is_read_again_from_its_bytes(folder: Path) -> None:
    found = find_logs([folder / "alder.csv"])
    study = add_to_study(EMPTY, found.logs).study
    kept = {study.logs[0].sources[0].digest: (folder / "alder.csv").read_bytes()}
    again, readings, problems = read_log(study.logs[0], kept.__getitem__)
    assert again == found.logs[0].trace
    assert len(readings) == 1
    assert problems == found.logs[0].readings[0].problems
    assert read_log(study.logs[0], {}.__getitem__) == (None, (), ())


def test_a_study_file_gives_the_answer_of_its_logs(folder: Path, tmp_path: Path) -> None:
    found = find_logs([folder])
    study = add_to_study(EMPTY, found.logs).study
    left_out = edits.leave_out(study, study.runs[0].id, "door was open").study
    path = tmp_path / "bench.samepart"
    created = StudyFile.create(path)
    assert isinstance(created, StudyFile)
    with created as file:
        for each in sorted(folder.iterdir()):
            file.add_blob(each.read_bytes())
        assert file.write(file.history, History.start(edits.Edit(left_out, "Leave out"))) is None
    before = path.read_bytes()
    gathered = gather([path])
    assert gathered.problems == ()
    assert gathered.study == left_out
    straight = compare(left_out, {k: log.trace for k, log in by_log(study, found.logs).items()})
    assert gathered.comparison() == straight
    assert path.read_bytes() == before


def test_a_study_that_cannot_be_opened(tmp_path: Path, folder: Path) -> None:
    bad = tmp_path / "bad.samepart"
    bad.write_bytes(b"SQLite format 3\x00" + bytes(200))
    gathered = gather([bad, folder, tmp_path / "gone.samepart"])
    assert len(gathered.study.machines) == 3
    lines = [placed(p) for p in gathered.problems]
    assert any(line.startswith(f"{bad}: ") for line in lines)
    assert any(line.startswith(f"{tmp_path / 'bad.samepart'}: One study at a time") for line in lines)


def test_a_study_and_logs_together(folder: Path, tmp_path: Path) -> None:
    study: Study = edits.add_machine(edits.new_study("s", name="Bench").study, "Hazel").study
    study = edits.add_typed(study, study.machines[0].id, 31.0, seconds=4260).study
    path = tmp_path / "bench.samepart"
    created = StudyFile.create(path, History.start(edits.Edit(study, "Start")))
    assert not isinstance(created, Problem)
    created.close()
    gathered = gather([path, folder], boundary="processing only")
    assert gathered.study.name == "Bench"
    assert [m.name for m in gathered.study.machines] == ["Hazel", "alder", "birch", "rowan"]
    assert gathered.study.boundary == "processing only"
    assert gathered.comparison().machines[0].name == "Hazel"


def test_a_log_of_something_else_does_not_pass_for_the_part(tmp_path: Path) -> None:
    """Alone, a short making is the only candidate; beside the machine's other log it is not of the part."""
    # elapsed time cannot be put in order with the other log's clock, so the two stay apart
    short = trace([Making(processing=500)])
    rows = [f"{t:.0f},{p:.1f},Alder" for t, p in zip(short.time_s, short.power_w, strict=True)]
    (tmp_path / "short.csv").write_text("\n".join(["elapsed [s],power [W],device", *rows]) + "\n")
    (alone,) = find_logs([tmp_path]).logs
    assert [r.kind for r in alone.runs] == ["run"]
    written(tmp_path / "parts.csv", trace(alike(3)), device="Alder")
    found = {Path(log.sources[0].file_name).name: log for log in find_logs([tmp_path]).logs}
    assert [r.kind for r in found["parts.csv"].runs] == ["run", "run", "run"]
    assert [r.kind for r in found["short.csv"].runs] == ["broken off"]


def test_logs_added_one_after_the_other_are_seen_together(tmp_path: Path) -> None:
    short = trace([Making(processing=500)])
    rows = [f"{t:.0f},{p:.1f},Alder" for t, p in zip(short.time_s, short.power_w, strict=True)]
    (tmp_path / "short.csv").write_text("\n".join(["elapsed [s],power [W],device", *rows]) + "\n")
    written(tmp_path / "parts.csv", trace(alike(3)), device="Alder")
    first, second = (find_logs([tmp_path / name]).logs for name in ("short.csv", "parts.csv"))
    at_once = add_to_study(EMPTY, find_logs([tmp_path / "short.csv", tmp_path / "parts.csv"]).logs).study
    study = add_to_study(EMPTY, first).study
    assert [r.kind for r in study.runs] == ["run"]
    left_out = edits.leave_out(study, study.runs[0].id, "a trial").study
    activities = {study.logs[0].id: first[0].activity}
    for before in (study, left_out):
        after = add_to_study(before, second, activities).study
        assert [(r.found_kind, r.found_start_s) for r in after.runs] == [
            (r.found_kind, r.found_start_s) for r in at_once.runs
        ]
    assert after.runs[0].why_left_out == "a trial"
