"""The command line as its users meet it: what is printed, where, and with which status."""

import csv
import gzip
import io
import json
import os
import subprocess
import sys
import zipfile
from collections.abc import Sequence
from datetime import datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import pytest

from core import executors
from core.command import run
from core.report.blocks import Report
from core.report.pictures import Drawable, Picture, Style
from core.traces import Trace
from gui.command import main
from tests.core.benches import alike, trace

START = datetime(2026, 6, 15, 9, 0, tzinfo=timezone(timedelta(hours=2)))


def log_text(whole: Trace) -> str:
    """A log as a meter saves it: ISO stamps with offset, power in watts."""
    rows = ["time,power [W]"]
    for at_s, power_w in zip(whole.time_s, whole.power_w, strict=True):
        rows.append(f"{(START + timedelta(seconds=float(at_s))).isoformat()},{power_w:.1f}")
    return "\n".join(rows) + "\n"


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("logs")
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


def test_inspect_as_json(logs: Path, capsys: pytest.CaptureFixture[str]) -> None:
    answer = Answer(["inspect", logs / "alder.csv", "--json"], capsys)
    assert answer.status == 0
    assert answer.messages == []
    (entry,) = answer.json
    assert entry["file"] == str(logs / "alder.csv")
    assert entry["machine"] == "alder"
    assert (entry["delimiter"], entry["decimal"], entry["header_row"]) == (",", ".", 1)
    assert entry["rows_refused"] == 0
    assert entry["columns"] == [
        {"name": "time", "quantity": "time", "unit": ""},
        {"name": "power [W]", "quantity": "power", "unit": "W"},
    ]
    assert entry["clock"]["kind"] == "absolute"
    assert entry["clock"]["start"] == "2026-06-15T09:00:00+02:00"
    assert entry["sampling"]["kind"] == "sampled"
    assert entry["sampling"]["median_s"] == 2.0
    assert entry["gaps"] == []
    assert entry["energy_wh"]["by_counter"] is None
    assert entry["energy_wh"]["used"] == pytest.approx(entry["energy_wh"]["by_power"])


def test_inspect_in_words(logs: Path, capsys: pytest.CaptureFixture[str]) -> None:
    answer = Answer(["inspect", logs], capsys)
    assert answer.status == 0
    assert "columns parted by comma, decimal point, heading in row 1" in answer.out
    assert "sampled, every 2.00 s" in answer.out
    assert answer.out.count("clock") == 2


def test_compare_as_json(logs: Path, capsys: pytest.CaptureFixture[str]) -> None:
    answer = Answer(["compare", logs, "--json"], capsys)
    assert answer.status == 0
    whole = answer.json
    assert whole["boundary"] == "warm-up and processing"
    assert [m["machine"] for m in whole["machines"]] == ["alder", "rowan"]
    for machine in whole["machines"]:
        assert machine["file"] == str(logs / f"{machine['machine']}.csv")
        included = [r for r in machine["runs"] if r["included"]]
        assert len(included) == machine["mean"]["runs"] == 3
        mean_wh = sum(r["energy_wh"] for r in included) / 3
        assert machine["mean"]["energy_wh"] == pytest.approx(mean_wh, rel=1e-6)
        assert machine["mean"]["parts_per_kwh"] == pytest.approx(1000 / mean_wh, rel=1e-6)
        assert machine["standby_w"] == pytest.approx(5.0, abs=0.3)
        for each in included:
            assert each["why_excluded"] is None
            assert each["seconds"] == pytest.approx(each["end_s"] - each["start_s"])
            assert each["mean_w"] == pytest.approx(each["energy_wh"] * 3600 / each["seconds"], rel=1e-6)
            told = datetime.fromisoformat(each["start"])
            assert told == START + timedelta(seconds=each["start_s"])
            assert {s["state"] for s in each["states"]} <= {
                "off",
                "standby",
                "warm-up",
                "processing",
                "cooling",
            }
    assert whole["headline"].startswith("alder makes the part for ")
    assert {f["level"] for f in whole["fairness"]} <= {"note", "caution", "unfair"}
    assert all(set(f["machines"]) <= {"alder", "rowan"} for f in whole["fairness"])


def test_compare_in_words(logs: Path, capsys: pytest.CaptureFixture[str]) -> None:
    answer = Answer(["compare", logs / "alder.csv", logs / "rowan.csv"], capsys)
    lines = answer.out.splitlines()
    assert "less than rowan (95 % interval " in lines[0]
    assert lines[1].startswith("Warm-up and processing, 3 runs a machine.")
    assert lines[3].split() == [
        *("Machine", "Runs", "Energy", "per", "part", "[Wh]", "Parts", "per", "kWh", "Mean", "power", "[W]"),
        *("Duration", "[min]", "Bed", "share", "[%]", "Standby", "power", "[W]"),
    ]
    assert lines[4].split()[:2] == ["alder", "3"]


def test_boundary_can_be_chosen(logs: Path, capsys: pytest.CaptureFixture[str]) -> None:
    whole = Answer(["compare", logs, "--json", "--boundary", "processing only"], capsys).json
    default = Answer(["compare", logs, "--json"], capsys).json
    assert whole["boundary"] == "processing only"
    for a, b in zip(whole["machines"], default["machines"], strict=True):
        assert a["mean"]["energy_wh"] < b["mean"]["energy_wh"]
        assert [r["start_s"] for r in a["runs"]] == [r["start_s"] for r in b["runs"]]


def test_out_writes_tables_and_says_so(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "new" / "folder"
    answer = Answer(["compare", logs, "--json", "--out", out, "--style", "dark"], capsys)
    assert answer.status == 0
    assert answer.json["machines"]
    assert sorted(p.name for p in out.iterdir()) == [
        "comparison.csv",
        "comparison.md",
        "comparison.xlsx",
        "report.html",
        "tables",
    ]
    assert "no pictures of 2 machines in dark here" in answer.messages
    assert answer.messages[-1] == (
        f"{out}: comparison.xlsx, comparison.csv, comparison.md, report.html and "
        f"{len(list((out / 'tables').iterdir()))} tables written"
    )
    rows = list(csv.DictReader(io.StringIO((out / "comparison.csv").read_text(encoding="utf-8"))))
    assert [r["machine"] for r in rows] == ["alder", "rowan"]
    assert float(rows[0]["energy_wh"]) == pytest.approx(
        answer.json["machines"][0]["mean"]["energy_wh"], rel=1e-6
    )
    text = (out / "comparison.md").read_text(encoding="utf-8")
    assert answer.json["headline"] in text
    assert "#### Runs" in text


def test_out_that_cannot_be_written(logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "file").write_text("in the way")
    answer = Answer(["compare", logs, "--json", "--out", tmp_path / "file" / "x"], capsys)
    assert answer.status == 3
    assert answer.json["machines"]
    assert any("cannot be written" in m and "name another folder" in m for m in answer.messages)


def test_bad_files_do_not_cost_the_good_ones(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    empty, picture, gone = tmp_path / "empty.csv", tmp_path / "photo.csv", tmp_path / "gone.csv"
    empty.write_bytes(b"")
    picture.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 20)
    for asked in ("inspect", "compare"):
        answer = Answer([asked, logs, empty, picture, gone, "--json"], capsys)
        assert answer.status == 3
        assert len(answer.json if asked == "inspect" else answer.json["machines"]) == 2
        for bad in (empty, picture, gone):
            assert sum(m.startswith(f"{bad}: ") for m in answer.messages) == 1
        assert not any("Traceback" in m for m in answer.messages)


def test_nothing_readable(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "empty.csv").write_bytes(b"")
    answer = Answer(["compare", tmp_path / "empty.csv"], capsys)
    assert answer.status == 3
    assert answer.out.startswith("Nothing to compare yet")


def test_run_sheet_alone_and_beside_logs(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    sheet = tmp_path / "sheet.csv"
    sheet.write_text(
        "machine,run,start,end,energy\nhazel,1,09:00,10:11,31\nhazel,2,11:00,12:11,31.5\nalder,9,,,x\n"
    )
    alone = Answer(["compare", "--run-sheet", sheet, "--json"], capsys)
    assert alone.status == 3
    assert [m["machine"] for m in alone.json["machines"]] == ["hazel"]
    first = alone.json["machines"][0]["runs"][0]
    assert (first["energy_wh"], first["seconds"], first["start_s"], first["bed"]) == (
        31.0,
        71 * 60,
        None,
        None,
    )
    assert alone.messages == [f"{sheet}, row 4: 'x' is no energy; write a number, such as 21.4."]
    both = Answer(["compare", logs, "--run-sheet", sheet, "--json"], capsys)
    assert [m["machine"] for m in both.json["machines"]] == ["hazel", "alder", "rowan"]


def test_one_file_given_twice_counts_once(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    alder = logs / "alder.csv"
    alone = Answer(["compare", alder, "--json"], capsys).json
    twice = Answer(["compare", alder, alder, "--json"], capsys).json
    assert twice["machines"] == alone["machines"]
    assert f"{alder}: It is named twice; counted once." in twice["warnings"]
    (tmp_path / "copy.csv").write_bytes(alder.read_bytes())
    copied = Answer(["compare", alder, tmp_path / "copy.csv", "--json"], capsys).json
    assert copied["machines"] == alone["machines"]
    told = [text for text in copied["warnings"] if "copy.csv" in text]
    assert told == [f"{tmp_path / 'copy.csv'}: The same bytes as {alder}; counted once."]


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux takes any bytes for a name")
def test_a_name_that_is_no_text(logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    odd = tmp_path / os.fsdecode(b"lat\xff.csv")
    odd.write_bytes((logs / "alder.csv").read_bytes())
    answer = Answer(["compare", odd, logs / "rowan.csv", "--out", tmp_path / "out", "--json"], capsys)
    assert answer.status == 0
    assert [m["machine"] for m in answer.json["machines"]] == ["lat\\udcff", "rowan"]
    assert (tmp_path / "out" / "comparison.xlsx").is_file()


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="only some systems have named pipes")
def test_a_pipe_is_refused_at_once(logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    for asked in ("inspect", "compare"):
        answer = Answer([asked, pipe, logs / "alder.csv", "--json"], capsys)
        assert answer.status == 3
        (told,) = answer.messages
        assert told.startswith(f"{pipe}: This is a pipe")


def test_files_of_one_name_in_two_folders_are_two_machines(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for source, folder in (("alder", "first"), ("rowan", "second")):
        (tmp_path / folder).mkdir()
        (tmp_path / folder / "log.csv").write_bytes((logs / f"{source}.csv").read_bytes())
    answer = Answer(["compare", tmp_path, "--json"], capsys)
    assert [m["machine"] for m in answer.json["machines"]] == ["first/log", "second/log"]


def test_many_logs_are_shared_among_processes_with_the_same_answer(
    logs: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    here = Answer(["compare", logs, "--json"], capsys)
    monkeypatch.setattr(executors, "MANY_LOGS", 2)
    monkeypatch.setattr(os, "cpu_count", lambda: 2)
    there = Answer(["compare", logs, "--json"], capsys)
    assert there.out == here.out
    assert there.status == here.status == 0


def test_packed_log(logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "alder.csv.gz"
    path.write_bytes(gzip.compress((logs / "alder.csv").read_bytes()))
    (machine,) = Answer(["compare", path, "--json"], capsys).json["machines"]
    assert machine["machine"] == "alder"
    assert machine["mean"]["runs"] == 3


@pytest.mark.parametrize(
    "argv",
    [
        ["compare"],
        ["inspect"],
        ["compare", "x", "--style", "pink"],
        ["compare", "x", "--bound"],
        ["inspect", "--what"],
    ],
)
def test_wrong_arguments(argv: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        run(argv, NoPictures())
    assert stopped.value.code == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert err.startswith(f"samepart {argv[0]}: ")


@pytest.mark.parametrize("argv", [["--colour"], ["demo", "log.csv"]])
def test_wrong_arguments_of_the_whole(argv: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(argv) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1


@pytest.mark.parametrize(
    ("argv", "words"),
    [
        (["--help"], "Exit status"),
        (["--version"], "samepart "),
        (["inspect", "--help"], "--json"),
        (["compare", "--help"], "--out"),
    ],
)
def test_help_and_version_import_nothing_slow(argv: list[str], words: str) -> None:
    code = (
        "import sys, gui.command\n"
        "try:\n    status = gui.command.main(sys.argv[1:])\n"
        "except SystemExit as stop:\n    status = stop.code\n"
        "slow = {'numpy', 'pandas', 'PySide6', 'pyarrow'} & set(sys.modules)\n"
        "sys.exit(f'imported {slow}' if slow else status)\n"
    )
    done = subprocess.run([sys.executable, "-c", code, *argv], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert words in done.stdout


def test_inspect_imports_neither_qt_nor_the_slow_libraries(logs: Path) -> None:
    code = (
        "import sys\nfrom gui.command import main\nstatus = main(sys.argv[1:])\n"
        "slow = {'scipy', 'statsmodels', 'GTC', 'PySide6'} & set(sys.modules)\n"
        "sys.exit(f'imported {slow}' if slow else status)\n"
    )
    argv = [sys.executable, "-c", code, "inspect", str(logs / "alder.csv"), "--json"]
    done = subprocess.run(argv, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr


def test_compare_needs_no_qt_without_images(logs: Path) -> None:
    code = (
        "import sys\nfrom gui.command import main\nstatus = main(sys.argv[1:])\n"
        "sys.exit('imported Qt' if 'PySide6' in sys.modules else status)\n"
    )
    argv = [sys.executable, "-c", code, "compare", str(logs), "--json"]
    done = subprocess.run(argv, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr


def _environment(**changes: str) -> dict[str, str]:
    hidden = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return {**{k: v for k, v in os.environ.items() if k not in hidden}, **changes}


def test_a_reader_that_stops_reading_is_no_fault(logs: Path) -> None:
    code = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
    argv = [sys.executable, "-c", code, "compare", str(logs), "--json"]
    with subprocess.Popen(argv, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        err = process.stderr.read().decode()
    assert "Traceback" not in err
    assert "BrokenPipe" not in err


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="only Linux has a disk that is always full")
@pytest.mark.parametrize("asked", ["inspect", "compare"])
def test_a_full_disk_under_the_answer_is_told_in_one_line(logs: Path, asked: str) -> None:
    code = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
    argv = [sys.executable, "-c", code, asked, str(logs), "--json"]
    with Path("/dev/full").open("wb") as full:
        done = subprocess.run(argv, stdout=full, stderr=subprocess.PIPE, text=True, check=False)
    assert done.returncode == 3
    (told,) = done.stderr.splitlines()
    assert told.startswith(f"samepart {asked}: the answer cannot be written (")


@pytest.mark.skipif(sys.platform == "win32", reason="there programs without streams begin otherwise")
@pytest.mark.parametrize("closed", [">&-", "2>&-", "<&-"])
def test_a_closed_stream_is_no_fault(logs: Path, closed: str) -> None:
    code = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
    argv = [
        "sh",
        "-c",
        f'exec "$@" {closed}',
        "sh",
        sys.executable,
        "-c",
        code,
        "compare",
        str(logs / "gone.csv"),
    ]
    done = subprocess.run(argv, capture_output=True, text=True, check=False)
    assert done.returncode == 3
    assert "failed" not in done.stdout + done.stderr


def test_a_name_too_long_for_any_file(capsys: pytest.CaptureFixture[str]) -> None:
    answer = Answer(["compare", "x" * 5000, "--json"], capsys)
    assert answer.status == 3
    assert [m[5000:] for m in answer.messages] == [": There is no such file. Check the name and the folder."]


def test_output_in_a_plain_locale(logs: Path) -> None:
    code = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
    argv = [sys.executable, "-c", code, "compare", str(logs)]
    env = _environment(PYTHONIOENCODING="ascii")
    done = subprocess.run(argv, capture_output=True, text=True, env=env, check=False)
    assert done.returncode == 0, done.stderr
    assert "Energy per part" in done.stdout


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux names its screens")
def test_no_screen_no_files(tmp_path: Path) -> None:
    code = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
    done = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        env=_environment(),
        cwd=tmp_path,
        check=False,
    )
    assert done.returncode == 2
    assert "no screen was found" in done.stderr


def test_bundle_written_and_read_by_the_command_line(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first = Answer(["compare", logs, "--json", "--out", tmp_path, "--bundle", "hashes-only"], capsys)
    bundle = tmp_path / "bundle.samepart.zip"
    assert bundle.is_file()
    alone = Answer(["compare", bundle, "--json"], capsys)
    assert alone.status == 3
    assert any("holds only the SHA-256 of the log alder.csv" in m for m in alone.messages)
    again = Answer(["compare", bundle, logs, "--json"], capsys)
    assert again.status == 0
    assert again.messages[-1].startswith("All ")
    wanted = first.out.replace(f"{logs}{os.sep}", "")
    assert again.out == wanted


def test_a_folder_with_a_bundle_in_it_counts_its_logs_once(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for path in logs.iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    alone = Answer(["compare", tmp_path, "--json"], capsys)
    Answer(["compare", tmp_path, "--out", tmp_path, "--bundle", "with-logs"], capsys)
    (tmp_path / "bundle.samepart.zip").rename(tmp_path.parent / "apart.zip")
    for path in (*tmp_path.glob("comparison.*"), *(tmp_path / "tables").iterdir(), tmp_path / "report.html"):
        path.unlink()
    (tmp_path.parent / "apart.zip").rename(tmp_path / "bundle.samepart.zip")
    again = Answer(["compare", tmp_path, "--json"], capsys)
    assert again.json["machines"] == alone.json["machines"]


def test_personal_data_are_listed_and_replaced_when_asked(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = log_text(trace(alike(3), seed=0)).splitlines()
    text = "\n".join(["# of ann@workshop.example", *rows]) + "\n"
    (tmp_path / "alder.csv").write_text(text)
    out = tmp_path / "out"
    asked: list[str | Path] = ["compare", tmp_path / "alder.csv", "--out", out, "--bundle", "with-logs"]
    listed = Answer(asked, capsys)
    assert "e-mail address: ann@workshop.example in alder.csv" in listed.messages
    replaced = Answer([*asked, "--replace-personal"], capsys)
    assert any("replaced by names that say nothing" in m for m in replaced.messages)
    assert replaced.out == listed.out
    again = Answer(["compare", out / "bundle.samepart.zip"], capsys)
    assert again.status == 0
    assert again.out == listed.out
    with zipfile.ZipFile(out / "bundle.samepart.zip") as archive:
        assert all(b"ann@workshop" not in archive.read(name) for name in archive.namelist())


@pytest.mark.parametrize("argv", [["--bundle", "with-logs"], ["--replace-personal"], ["--bundle", "all"]])
def test_a_bundle_needs_a_place(argv: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        run(["compare", "x", *argv], NoPictures())
    assert stopped.value.code == 2


def test_inspect_tells_how_the_logs_of_a_bundle_are_read(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    Answer(["compare", logs, "--out", tmp_path, "--bundle", "with-logs"], capsys)
    here = Answer(["inspect", tmp_path / "bundle.samepart.zip", "--json"], capsys)
    there = Answer(["inspect", logs, "--json"], capsys)
    assert here.status == 0
    assert [r["machine"] for r in here.json] == [r["machine"] for r in there.json] == ["alder", "rowan"]
    assert [r["energy_wh"] for r in here.json] == [r["energy_wh"] for r in there.json]
