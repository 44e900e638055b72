"""Bundles and personal data from the command line."""

import os
import zipfile
from pathlib import Path

import pytest

from core.bundle.manifest import STUDY
from core.command_line.command import run
from tests.core.benches import alike, trace
from tests.core.command_line import Answer, NoPictures, log_text, write_logs


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return write_logs(tmp_path_factory.mktemp("logs"))


def test_bundle_written_and_read_by_the_command_line(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first = Answer(["compare", logs, "--json", "--out", tmp_path, "--bundle", "hashes-only"], capsys)
    bundle = tmp_path / "bundle.samepart.zip"
    assert bundle.is_file()
    alone = Answer(["compare", bundle, "--json"], capsys)
    assert alone.status == 3
    assert sum("holds only the SHA-256" in m for m in alone.messages) == 1
    assert any("the SHA-256 of 2 logs (alder.csv and " in m for m in alone.messages)
    text = Answer(["compare", bundle], capsys)
    assert text.status == 3
    assert text.out == "Nothing can be checked yet: none of the bundle's logs is there.\n"
    again = Answer(["compare", bundle, logs, "--json"], capsys)
    assert again.status == 0
    assert again.messages[-1].startswith("All ")
    wanted = first.out.replace(f"{logs}{os.sep}", "")
    assert again.out == wanted


def test_a_damaged_bundle_says_what_is_wrong_with_it(
    logs: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    Answer(["compare", logs, "--out", tmp_path, "--bundle", "with-logs"], capsys)
    bundle = tmp_path / "bundle.samepart.zip"
    whole = bundle.read_bytes()
    with zipfile.ZipFile(bundle) as archive:
        study = archive.getinfo(STUDY)
    at = study.header_offset + 30 + len(study.filename) + study.compress_size // 2
    bundle.write_bytes(whole[:at] + bytes(b ^ 0xFF for b in whole[at : at + 8]) + whole[at + 8 :])
    damaged = Answer(["compare", bundle], capsys)
    assert damaged.status == 3
    what = f"The bundle is damaged ({STUDY} cannot be unpacked)"
    assert damaged.out.startswith(f"Nothing could be compared: {bundle}: {what}; ask")
    bundle.write_bytes(whole[: len(whole) // 2])
    cut = Answer(["compare", bundle], capsys)
    assert cut.status == 3
    assert cut.out.startswith(f"Nothing could be compared: {bundle}: The archive is damaged")


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
