"""The command line as a process: its imports; streams, disks, locales and screens it lacks."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.core.command_line import Answer, write_logs


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return write_logs(tmp_path_factory.mktemp("logs"))


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
