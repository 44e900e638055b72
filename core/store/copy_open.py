"""A study copied to another place while it is open."""

from pathlib import Path

from core.problems import Problem
from core.progress import Progress
from core.store.file import StudyFile


def copy_open(here: Path, there: Path, progress: Progress) -> Problem | None:
    """Copy a study file that another thread has open.

    A connection belongs to its thread; this one finds the study locked and may only read it, which is enough.

    Parameters
    ----------
    here, there : Path
    progress : Progress
        May raise `Cancelled`.

    Returns
    -------
    Problem or None
        Why it could not be copied.
    """
    opened = StudyFile.open(here)
    if isinstance(opened, Problem):
        return opened
    with opened:
        return opened.save_copy(there, progress)
