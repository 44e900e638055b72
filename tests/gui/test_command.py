"""The entry point where the window is wanted: screens, system libraries, faults."""

import subprocess
import sys
from pathlib import Path

import pytest

from gui import command, system_libraries


@pytest.fixture
def bare(monkeypatch: pytest.MonkeyPatch) -> pytest.MonkeyPatch:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    return monkeypatch


@pytest.mark.parametrize(
    ("environment", "has_screen"),
    [
        ({}, False),
        ({"DISPLAY": ":0"}, True),
        ({"DISPLAY": ""}, False),
        ({"WAYLAND_DISPLAY": "wayland-0"}, True),
        ({"DISPLAY": ":0", "QT_QPA_PLATFORM": "offscreen"}, False),
        ({"QT_QPA_PLATFORM": "vnc:size=800x600"}, True),
    ],
)
def test_has_screen(bare: pytest.MonkeyPatch, environment: dict[str, str], has_screen: bool) -> None:
    for name, value in environment.items():
        bare.setenv(name, value)
    assert command.has_screen() is has_screen


def test_other_systems_always_have_a_screen(bare: pytest.MonkeyPatch) -> None:
    bare.setattr(sys, "platform", "win32")
    assert command.has_screen()
    assert system_libraries.missing_packages() == ""


def test_missing_libraries_are_named_by_their_packages(
    bare: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    bare.setenv("DISPLAY", ":0")
    bare.setattr(system_libraries, "_LIBRARIES", {"libof-no-system.so.1": "libof-no-system1"})
    bare.setattr(system_libraries, "_X11_LIBRARIES", {"libof-no-screen.so.1": "libof-no-screen1"})
    assert system_libraries.missing_packages() == "libof-no-system1 libof-no-screen1"
    assert command.main([]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert err == (
        "samepart: the window cannot open without the system packages libof-no-system1 libof-no-screen1\n"
    )
    bare.setenv("WAYLAND_DISPLAY", "wayland-0")
    assert system_libraries.missing_packages() == "libof-no-system1"


def test_tables_are_written_where_images_cannot_be_drawn(tmp_path: Path) -> None:
    sheet = tmp_path / "sheet.csv"
    sheet.write_text("machine,energy\nAlder,21\nAlder,22\nRowan,33\nRowan,34\n")
    # what an absent system library looks like from Python: the extension module cannot be imported
    code = (
        "import sys; sys.modules['PySide6.QtGui'] = None\n"
        "from gui.command import main; sys.exit(main(sys.argv[1:]))"
    )
    argv = [sys.executable, "-c", code, "compare", "--run-sheet", sheet, "--out", tmp_path / "out"]
    done = subprocess.run([str(a) for a in argv], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "out" / "comparison.csv").exists()
    message = next(line for line in done.stderr.splitlines() if "no images were drawn" in line)
    assert "install the packages libegl1" in message
    assert "Traceback" not in done.stderr


def test_a_fault_of_our_own_is_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail() -> str:
        raise RuntimeError("two\nlines")

    monkeypatch.setattr(command, "version", fail)
    assert command.main(["--version"]) == 1
    (line,) = capsys.readouterr().err.splitlines()
    assert "RuntimeError: two lines" in line
    assert "test_command.py:" in line


def test_interrupted(monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupt() -> str:
        raise KeyboardInterrupt

    monkeypatch.setattr(command, "version", interrupt)
    assert command.main(["--version"]) == 130


@pytest.mark.skipif(sys.platform == "win32", reason="pipes close otherwise there")
def test_a_demo_cut_short_by_its_reader_is_no_fault(bare: pytest.MonkeyPatch, tmp_path: Path) -> None:
    bare.setenv("XDG_DATA_HOME", str(tmp_path))
    argv = [sys.executable, "-u", "-c", "from gui.command import main; raise SystemExit(main())", "demo"]
    with subprocess.Popen(argv, stdout=subprocess.PIPE, stderr=subprocess.PIPE, cwd=tmp_path) as running:
        assert running.stdout is not None
        assert running.stderr is not None
        running.stdout.close()
        told = running.stderr.read()
    assert b"failed" not in told
    assert running.returncode == 0
