"""A process killed at any moment loses no finished edit. SAMEPART_KILLS sets how often it is killed (20)."""

import os
import subprocess
import sys
import threading
from pathlib import Path
from random import Random

from core.store.file import StudyFile
from tests.core.store.files import is_sound, opened
from tests.core.store.killed import fingerprint
from tests.random_edits import raw_log

_KILLS = int(os.environ.get("SAMEPART_KILLS", "20"))


def test_a_killed_process_loses_no_finished_edit(tmp_path: Path):
    path = tmp_path / "clips.samepart"
    file = StudyFile.create(path)
    assert isinstance(file, StudyFile)
    file.close()
    random = Random(20)
    edits_seen = 0
    for kill in range(_KILLS):
        told = _edit_until_killed(path, kill, random.uniform(0.0, 0.25))
        assert told[0][0] == "done", told
        edits_seen += sum(word == "done" for word, _ in told) - 1
        finished = next(mark for word, mark in reversed(told) if word == "done")
        # A write that was under way may have been finished or not; nothing in between is allowed.
        allowed = {finished, told[-1][1]}
        with opened(path) as again:
            assert fingerprint(again.history) in allowed
            assert not again.read_only
            for log in again.history.study.logs:
                number = int(log.sources[0].file_name.removeprefix("log ").removesuffix(".csv"))
                assert again.blob(log.sources[0].digest) == raw_log(number)
        assert is_sound(path)
    assert edits_seen > 2 * _KILLS


def _edit_until_killed(path: Path, seed: int, after_s: float) -> list[tuple[str, str]]:
    """What the process told until it was killed, `after_s` after it had opened the file."""
    with subprocess.Popen(
        [sys.executable, "-m", "tests.core.store.killed", str(path), str(seed)],
        stdout=subprocess.PIPE,
        text=True,
        cwd=Path(__file__).parents[3],
    ) as process:
        assert process.stdout is not None
        first = process.stdout.readline()
        timer = threading.Timer(after_s, process.kill)
        timer.start()
        lines = [first, *process.stdout]
        timer.join()
    # A line without its end was cut by the kill.
    return [(line.split()[0], line.split()[1]) for line in lines if line.endswith("\n")]
