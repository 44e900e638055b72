"""The demo from end to end: its logs through the command line, held against what its generator knows."""

import csv
import io
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from core.places import demo_folder

COMMAND = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
#: a screen of any kind, hidden from the command
SCREENS = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


def samepart(*arguments: str | Path, cwd: Path) -> subprocess.CompletedProcess[str]:
    environment = {name: value for name, value in os.environ.items() if name not in SCREENS}
    return subprocess.run(
        [sys.executable, "-W", "error", "-c", COMMAND, *map(str, arguments)],
        capture_output=True,
        text=True,
        encoding="utf-8",
        env=environment,
        cwd=cwd,
        check=False,
    )


@pytest.fixture(scope="module")
def truth() -> dict[str, Any]:
    found: dict[str, Any] = json.loads((demo_folder() / "truth.json").read_text(encoding="utf-8"))
    return found


@pytest.fixture(scope="module")
def answer(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    done = samepart("compare", demo_folder() / "logs", "--json", cwd=tmp_path_factory.mktemp("answer"))
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    assert "the program itself failed" not in done.stdout
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def whole_runs(truth: dict[str, Any], machine: str) -> list[dict[str, Any]]:
    return [
        {**stretch, "file": log["file"]}
        for log in truth["logs"]
        if log["machine"] == machine
        for stretch in log["stretches"]
        if stretch["kind"] == "run"
    ]


def of(answer: dict[str, Any], machine: str) -> dict[str, Any]:
    found: dict[str, Any] = next(m for m in answer["machines"] if m["machine"].lower() == machine.lower())
    return found


MACHINES = ("Alder", "Birch", "Cedar", "Hazel", "Rowan")


@pytest.mark.parametrize("name", MACHINES)
def test_every_run_is_found_and_nothing_else_counts(
    name: str, truth: dict[str, Any], answer: dict[str, Any]
) -> None:
    real = whole_runs(truth, name)
    found = [r for r in of(answer, name)["runs"] if r["included"]]
    assert len(found) == len(real)
    for run, made in zip(found, real, strict=True):
        assert Path(run["file"]).name == made["file"]
        assert run["start_s"] == pytest.approx(made["start_s"], abs=30)
        assert run["end_s"] == pytest.approx(made["end_s"], abs=30)


@pytest.mark.parametrize("name", MACHINES)
def test_energies_are_right_within_their_intervals(
    name: str, truth: dict[str, Any], answer: dict[str, Any]
) -> None:
    real = whole_runs(truth, name)
    found = [r for r in of(answer, name)["runs"] if r["included"]]
    for run, made in zip(found, real, strict=True):
        assert abs(run["energy_wh"] - made["energy_wh"]) <= run["energy_u95_wh"]
        assert run["energy_u95_wh"] <= 0.03 * run["energy_wh"]


@pytest.mark.parametrize("name", ["Alder", "Birch", "Cedar", "Hazel"])
def test_bed_shares_are_right_within_their_intervals(
    name: str, truth: dict[str, Any], answer: dict[str, Any]
) -> None:
    real = whole_runs(truth, name)
    mean = of(answer, name)["mean"]
    assert mean["bed_share"] == pytest.approx(sum(run["bed_share"] for run in real) / len(real), abs=0.02)
    found = [r for r in of(answer, name)["runs"] if r["included"]]
    for run, made in zip(found, real, strict=True):
        assert abs(run["bed"]["share"] - made["bed_share"]) <= run["bed"]["share_u95"] <= 0.05


def test_a_bed_that_switches_fast_gives_a_bound_and_no_value(
    truth: dict[str, Any], answer: dict[str, Any]
) -> None:
    rowan = of(answer, "Rowan")
    assert rowan["mean"]["bed_share"] is None
    for run, made in zip(
        [r for r in rowan["runs"] if r["included"]], whole_runs(truth, "Rowan"), strict=True
    ):
        assert run["bed"]["share"] is None
        assert run["bed"]["why_not"]
        low, high = run["bed"]["at_least"], run["bed"]["at_most"]
        assert (0.0 if low is None else low) <= made["bed_share"] <= (1.0 if high is None else high)


def test_the_story(answer: dict[str, Any]) -> None:
    order = [m["machine"].lower() for m in answer["machines"]]
    assert (order[0], order[-1]) == ("alder", "rowan")
    assert answer["headline"].lower().startswith("alder makes the part for 21.")
    tie = next(p for p in answer["pairs"] if {p["machine"].lower(), p["other"].lower()} == {"birch", "cedar"})
    assert tie["shown"] is False
    assert any("warm start" in f["text"] and "Birch" in f["machines"] for f in answer["fairness"])
    broken = [r for r in of(answer, "Cedar")["runs"] if not r["included"]]
    assert any("broken off" in r["why_excluded"] for r in broken)


def test_without_a_screen_the_demo_is_told_in_words_and_files(tmp_path: Path) -> None:
    done = samepart("demo", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("No screen was found")
    assert "All numbers of this demonstration are invented." in done.stdout
    assert "Alder makes the hose clip for 21." in done.stdout
    folder = tmp_path / "samepart-demo"
    assert f"Tables and images are in {folder}" in done.stdout
    names = {p.name for p in folder.iterdir()}
    assert {
        "comparison.csv",
        "comparison.md",
        "comparison.xlsx",
        "report.html",
        "report.pdf",
        "tables",
    } <= names
    drawn = ("comparison", "energy-against-time", "line-up", "beds", "loads", "standby", "print")
    assert {f"{key}.{ending}" for key in drawn for ending in ("png", "svg")} <= names
    assert (folder / "report.pdf").read_bytes().startswith(b"%PDF-")
    rows = list(csv.DictReader(io.StringIO((folder / "comparison.csv").read_text(encoding="utf-8"))))
    assert {r["machine"] for r in rows} == set(MACHINES)
    assert (folder / "comparison.png").read_bytes().startswith(b"\x89PNG")
    assert "All numbers are invented" in (folder / "comparison.md").read_text(encoding="utf-8")


def test_logs_without_a_screen_are_answered_as_compare_does(tmp_path: Path) -> None:
    logs = demo_folder() / "logs"
    done = samepart(logs / "Alder.csv", logs / "Rowan.csv", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("No screen was found")
    assert "Rowan" in done.stdout
    assert list(tmp_path.iterdir()) == []
