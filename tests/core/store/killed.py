"""A process to be killed: edits a study for ever and tells what it has finished.

Run as ``python -m tests.core.store.killed FILE SEED``. Before each write it prints ``begin`` and afterwards
``done``, with what `fingerprint` says of the history.
"""

import hashlib
import sys
from pathlib import Path
from random import Random

from core.history import History
from core.store import blobs
from core.store.file import StudyFile
from tests.core.store.files import keep_logs
from tests.random_edits import random_edit


def fingerprint(history: History) -> str:
    """Short text that two different histories do not share."""
    text = "\n".join([repr(history.study), str(len(history.past)), *(step.label for step in history.steps)])
    return hashlib.sha256(text.encode()).hexdigest()


def main(path: Path, seed: int) -> None:
    """Edit until killed."""
    blobs.PART_BYTES = 700  # several parts a log, so that a kill falls between them too
    random = Random(seed)
    file = StudyFile.open(path)
    if not isinstance(file, StudyFile):
        sys.exit(f"cannot open: {file}")
    _tell("done", file.history)
    while True:
        history = _next(file, random)
        _tell("begin", history)
        problem = file.write(file.history, history)
        if problem is not None:
            sys.exit(f"cannot write: {problem}")
        _tell("done", history)


def _next(file: StudyFile, random: Random) -> History:
    move = random.random()
    if move < 0.15 and file.history.past:
        return file.history.undo()
    if move < 0.25 and file.history.future:
        return file.history.redo()
    edit = random_edit(file.history.study, random)
    keep_logs(file, edit)
    return file.history.apply(edit, limit=60)


def _tell(word: str, history: History) -> None:
    sys.stdout.write(f"{word} {fingerprint(history)}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
