"""The command line as its users meet it: what is printed, where, and with which status."""

import csv
import gzip
import io
import os
import sys
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from core import executors
from core.command_line.command import run
from gui.command import main
from tests.core.command_line import START, Answer, NoPictures, write_logs


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return write_logs(tmp_path_factory.mktemp("logs"))


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
    assert answer.out == f"Nothing could be compared: {answer.messages[0]}\n"
    assert answer.messages[0].startswith(f"{tmp_path / 'empty.csv'}: ")


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


def test_letters_that_would_steer_a_terminal_are_spelt_out(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Names come from files, and may hold codes that colour, clear or turn what a terminal shows."""
    odd = tmp_path / "al\x1b[2Jder.csv"
    text = (logs / "alder.csv").read_text()
    odd.write_text(text)
    bad = tmp_path / "\u202evsc.csv"
    bad.write_text("\x1b]0;title\x07 no log\n")
    for command in ("inspect", "compare"):
        answer = Answer([command, odd, bad], capsys)
        assert "al\\x1b[2Jder" in answer.out
        assert "\\u202evsc.csv" in "".join(answer.messages)
        assert not {"\x1b", "\x07", "\u202e"} & set(answer.out + "".join(answer.messages))
    answer = Answer(["compare", odd, "--json"], capsys)
    assert [m["machine"] for m in answer.json["machines"]] == ["al\x1b[2Jder"]


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
