"""The demo's generator, its logs and its truth agree, and the files in the repository are what it makes."""

import csv
import gzip
import json
import re
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest

from core import edits
from core.activity import find, second_look
from core.analysis import add_to_study, by_log, find_logs
from core.logs import read_path
from core.results.compare import compare
from demo_data import make_demo, story

FOLDER = Path(make_demo.__file__).parent
LOGS = sorted((FOLDER / "logs").iterdir())
TRUTH = json.loads((FOLDER / "truth.json").read_text(encoding="utf-8"))
RUNS = [s for log in TRUTH["logs"] for s in log["stretches"] if s["kind"] == "run"]


def unpacked(path: Path) -> bytes:
    data = path.read_bytes()
    return gzip.decompress(data) if path.suffix == ".gz" else data


def rows_of(file: str) -> list[list[str]]:
    """Rows below the header, split by a plain reader that knows nothing of the program."""
    lines = unpacked(FOLDER / "logs" / file).decode("utf-8").splitlines()
    delimiter = {"Birch.csv": ";", "Hazel switch-on test.tsv": "\t"}.get(file, ",")
    rows = list(csv.reader((line for line in lines if not line.startswith("#")), delimiter=delimiter))
    return rows[2:] if file == "Hazel.csv" else rows[1:]


def power_w(file: str) -> np.ndarray:
    rows = rows_of(file)
    if file == "Rowan.csv":
        return np.array([float(r[3]) for r in rows if r[2] == "power"])
    power = np.array([float(r[1].replace(",", ".")) for r in rows])
    return power / 1000.0 if file == "Cedar.csv" else power


def stamps_s(file: str) -> np.ndarray:
    """Unix time of each row; local clocks are an hour ahead of UTC."""
    rows = rows_of(file)
    cells = [r[0] for r in rows if file != "Rowan.csv" or r[2] == "power"]
    if file == "Cedar.csv":
        return np.array([int(c) / 1000.0 for c in cells])
    local = {"Birch.csv": "%d.%m.%Y %H:%M:%S", "Hazel.csv": "%m/%d/%Y %I:%M:%S %p"}.get(file)
    if local is None:
        return np.array([datetime.fromisoformat(c).timestamp() for c in cells])
    return np.array([datetime.strptime(c, local).replace(tzinfo=UTC).timestamp() - 3600.0 for c in cells])


@pytest.fixture(scope="module")
def made_again(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("demo")
    make_demo.write_demo(folder)
    return folder


def test_the_same_seed_makes_the_files_of_the_repository_byte_for_byte(made_again: Path) -> None:
    assert sorted(p.name for p in (made_again / "logs").iterdir()) == [p.name for p in LOGS]
    for path in LOGS:
        assert unpacked(made_again / "logs" / path.name) == unpacked(path), path.name
    assert (made_again / "truth.json").read_bytes() == (FOLDER / "truth.json").read_bytes()


def test_another_seed_makes_other_numbers() -> None:
    assert make_demo.all_logs(1)[0].text != make_demo.all_logs(2)[0].text


def test_the_demo_stays_under_four_megabytes() -> None:
    files = [p for p in FOLDER.rglob("*") if p.is_file() and "__pycache__" not in p.parts]
    assert sum(p.stat().st_size for p in files) < 4_000_000


@pytest.mark.parametrize("path", [p for p in LOGS if p.name != "Cedar.csv"], ids=lambda p: p.name)
def test_each_log_says_that_it_is_invented_where_its_shape_has_room(path: Path) -> None:
    first = unpacked(path).split(b"\n", 1)[0].decode("utf-8").lower()
    assert "invented" in first or "erfunden" in first


def test_each_machine_makes_the_part_at_least_four_times_from_cold() -> None:
    for machine in story.MACHINES:
        cold = [r for r in RUNS if r["name"].startswith(machine.name) and "remark" not in r]
        assert len(cold) >= 4, machine.name


def test_the_story_holds() -> None:
    energy = {m.name: [r["energy_wh"] for r in RUNS if r["name"].startswith(m.name)] for m in story.MACHINES}
    mean = {name: float(np.mean(values)) for name, values in energy.items()}
    watts = {m.name: max(r["mean_w"] for r in RUNS if r["name"].startswith(m.name)) for m in story.MACHINES}
    assert min(mean, key=mean.__getitem__) == "Alder" == max(watts, key=watts.__getitem__)
    assert max(mean, key=mean.__getitem__) == "Rowan"
    apart = abs(mean["Birch"] - mean["Cedar"])
    assert apart < float(np.std(energy["Birch"], ddof=1)) / 2
    assert story.HAZEL.bed_supply == "mains"
    assert story.ROWAN.bed_control == "fast pulses"


def test_the_warm_start_needs_less_than_the_others() -> None:
    birch = [r for r in RUNS if r["name"].startswith("Birch")]
    warm = [r for r in birch if "warm start" in r.get("remark", "")]
    assert len(warm) == 1
    assert warm[0]["bed_start_c"] > 35
    assert all(warm[0]["energy_wh"] < r["energy_wh"] for r in birch if r is not warm[0])


@pytest.mark.parametrize("file", ["Alder.csv", "Birch.csv", "Cedar.csv", "Hazel.csv", "Rowan.csv"])
def test_the_logged_power_adds_up_to_the_true_energy(file: str) -> None:
    truth = next(log for log in TRUTH["logs"] if log["file"] == file)
    time, power = stamps_s(file), power_w(file)
    assert time.size == truth["rows"]
    assert np.all(np.diff(time) > 0)
    for stretch in truth["stretches"]:
        begin = datetime.fromisoformat(stretch["start"]).timestamp()
        end = datetime.fromisoformat(stretch["end"]).timestamp()
        assert stretch["start_s"] == pytest.approx(begin - time[0], abs=0.01)
        grid = np.arange(begin, end, 0.5)
        side = "left" if truth["sampling"] == "averaged" else "right"
        shift = 0 if side == "left" else -1
        row = np.clip(np.searchsorted(time, grid, side=side) + shift, 0, time.size - 1)
        logged_wh = float(power[row].sum()) * 0.5 / 3600.0
        assert logged_wh == pytest.approx(stretch["energy_as_metered_wh"], rel=0.012)


def test_the_counters_add_up_to_the_true_energy() -> None:
    rows = rows_of("Alder.csv")
    counter = np.array([float(r[2]) for r in rows])
    time = stamps_s("Alder.csv")
    truth = TRUTH["logs"][0]
    for stretch in truth["stretches"]:
        a, b = (datetime.fromisoformat(stretch[k]).timestamp() for k in ("start", "end"))
        at = np.interp([a, b], time, counter)
        assert at[1] - at[0] == pytest.approx(stretch["energy_as_metered_wh"], abs=0.2)


def test_a_meter_sees_the_true_energy_through_its_gain_and_offset() -> None:
    for log in TRUTH["logs"]:
        meter = story.METERS[log["meter"]]
        for s in log["stretches"]:
            metered_wh = s["energy_wh"] * meter.gain + meter.offset_w * s["seconds"] / 3600.0
            assert s["energy_as_metered_wh"] == pytest.approx(metered_wh, abs=2e-4)


def test_energies_of_a_stretch_belong_together() -> None:
    for log in TRUTH["logs"]:
        for s in log["stretches"]:
            assert s["mean_w"] == pytest.approx(s["energy_wh"] * 3600.0 / s["seconds"], abs=0.01)
            assert s["bed_share"] == pytest.approx(s["bed_energy_wh"] / s["energy_wh"], abs=1e-3)
            assert 0.0 <= s["bed_share"] < 1.0
        in_stretches = sum(s["energy_wh"] for s in log["stretches"] if s["kind"] != "load")
        assert in_stretches <= log["energy_wh"] + 0.01


def test_a_held_bed_draws_what_its_losses_say() -> None:
    """Heat in equals heat out: the steady watts follow from the machine's loss and its supply."""
    machines = {m.name: m for m in story.MACHINES}
    holds = [(log, s) for log in TRUTH["logs"] for s in log["stretches"] if s["kind"] == "hold test"]
    assert {log["machine"] for log, _ in holds} == {"Alder", "Birch", "Hazel", "Rowan"}
    for log, s in holds:
        m = machines[log["machine"]]
        # a thermostat with a slow sensor rides a little high
        over_c = 1.0 if m.bed_control == "thermostat" else 0.0
        above = s["bed_set_c"] + over_c - log["room_c"]
        expected = above * (m.bed_loss_w_per_k + m.bed_loss_w_per_k2 * above) / m.bed_efficiency
        assert s["bed_steady_w"] == pytest.approx(expected, rel=0.05)


def test_no_text_points_outside_the_demo() -> None:
    """No address, no mail, no absolute path, and no machine or meter but the invented ones."""
    for path in FOLDER.rglob("*"):
        if path.suffix in {".py", ".md", ".json", ".csv", ".tsv", ".gz"}:
            text = unpacked(path).decode("utf-8")
            assert not re.search(r"://|\w@\w|(?<![\w.)/])/[a-z]+/", text), path.name
    names = {m.name for m in story.MACHINES}
    assert {log["machine"] for log in TRUTH["logs"]} == names
    assert {log["meter"] for log in TRUTH["logs"]} == {"Meter 1", "Meter 2"}
    tests = [f"{name} hold test.csv" for name in ("Alder", "Birch", "Hazel", "Rowan")]
    for file in (*tests, "Rowan.csv"):
        assert {row[1] for row in rows_of(file)} == {file.split(" ")[0].removesuffix(".csv")}


@pytest.mark.parametrize("log", TRUTH["logs"], ids=lambda log: log["file"])
def test_the_program_reads_each_log_as_it_is(log: dict[str, object]) -> None:
    found = read_path(FOLDER / "logs" / str(log["file"]))
    assert found.problems == ()
    (reading,) = found.readings
    assert reading.trace is not None
    assert reading.machine == log["machine"]
    assert reading.rows_refused == 0
    assert reading.problems == ()
    assert reading.trace.time_s.size == pytest.approx(log["rows"], rel=0.002)
    assert reading.trace.kind == log["sampling"]
    stamp = datetime.fromisoformat(str(log["first_stamp"]))
    read = datetime.fromisoformat(str(reading.trace.clock.iso(0.0)))
    assert read == (stamp if reading.trace.clock.kind == "absolute" else stamp.replace(tzinfo=None))
    assert reading.energy_used_wh == pytest.approx(log["energy_wh"], rel=0.02)


@pytest.mark.parametrize("machine", [m.name for m in story.MACHINES])
def test_the_program_finds_each_run_and_no_other(machine: str) -> None:
    log = next(log for log in TRUTH["logs"] if log["file"] == f"{machine}.csv")
    trace = read_path(FOLDER / "logs" / f"{machine}.csv").readings[0].trace
    assert trace is not None
    found = find(trace).stretches
    assert [s.kind for s in found] == [s["kind"] for s in log["stretches"]]
    for stretch, truth in zip(found, log["stretches"], strict=True):
        assert stretch.start_s == pytest.approx(truth["start_s"], abs=15)
        assert stretch.end_s == pytest.approx(truth["end_s"], abs=15)


@pytest.mark.parametrize("machine", ["Alder", "Birch", "Hazel", "Rowan"])
def test_the_program_takes_no_hold_test_for_a_run(machine: str) -> None:
    names = (f"{machine}.csv", f"{machine} hold test.csv")
    traces = [read_path(FOLDER / "logs" / name).readings[0].trace for name in names]
    found = [find(trace) for trace in traces if trace is not None]
    day, held = second_look(found, [machine] * 2)
    assert {s.kind for s in held.stretches} == {"hold test"}
    assert day.runs == found[0].runs


def test_a_hold_test_tells_the_bed_that_the_log_of_the_runs_cannot_show() -> None:
    logs = find_logs([FOLDER / "logs" / name for name in ("Rowan.csv", "Rowan hold test.csv")]).logs
    study = add_to_study(edits.set_bed_c(edits.new_study("demo").study, story.BED_C).study, logs).study
    traces = {log_id: found.trace for log_id, found in by_log(study, logs).items()}
    (rowan,) = compare(study, traces).machines
    true = [r["bed_share"] for r in RUNS if r["name"].startswith("Rowan")]
    assert len(rowan.included) == len(true) == 4
    for run, share in zip(rowan.included, true, strict=True):
        assert run.bed is not None
        assert run.bed.method == "hold test"
        assert run.bed.share is not None
        assert run.bed.share_u95 is not None
        assert run.bed.share == pytest.approx(share, abs=run.bed.share_u95)
        assert 0.02 < run.bed.share_u95 < 0.1
