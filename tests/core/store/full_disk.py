"""A process of its own that edits a study until its disk is full: tells the problem and how many went in.

The disk is full for it alone: its files may grow only so far.
"""

import resource
import sys
from pathlib import Path

from core import edits
from core.store.file import StudyFile


def main(path: Path, room: int) -> None:
    file = StudyFile.open(path)
    assert isinstance(file, StudyFile)
    limit = path.stat().st_size + room
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))
    with file:
        for number in range(100_000):
            name = f"{number} " + "a long name " * 50
            problem = file.write(
                file.history, file.history.sealed().apply(edits.rename_study(file.history.study, name))
            )
            if problem is not None:
                sys.stdout.write(f"{problem.code} {number}\n")
                return
    raise AssertionError("the disk was never full")


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
