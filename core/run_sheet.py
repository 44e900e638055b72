"""A filled run sheet put into a study: from the command line, from the window."""

import re
from collections.abc import Mapping
from datetime import datetime
from pathlib import Path

from core import edits
from core.edits.sheets import Logged, LoggedRun
from core.plan.filled import read_sheet
from core.problems import Problem
from core.study import Study
from core.traces import Clock, Trace

__all__ = ["Logged", "LoggedRun", "add_sheet", "is_run_sheet", "logged_runs", "read_sheet"]

#: headings that stand together in no meter log, however the sheet was saved
_HEADINGS = frozenset({b"row", b"run", b"block", b"machine", b"meter", b"starting_state", b"remarks"})
#: the headings stand within this much of the start
_HEAD_BYTES = 4_096


def is_run_sheet(path: Path) -> bool:
    """Whether a file has the headings of a run sheet that was saved here, so that it is no meter log.

    Only the start of the file is read; one that cannot be read is no run sheet.
    """
    try:
        if not path.is_file():  # what is no ordinary file may never answer
            return False
        with path.open("rb") as file:
            head = file.read(_HEAD_BYTES)
    except (OSError, ValueError):
        return False
    # as some spreadsheets save it, each letter is followed by a zero byte
    lines = head.replace(b"\0", b"").lower().splitlines()
    return any(set(re.findall(rb"[a-z_]+", line)) >= _HEADINGS for line in lines)


def add_sheet(study: Study, path: Path, logged: Logged | None = None) -> tuple[Study, tuple[Problem, ...]]:
    """Put the runs of a sheet into a study.

    Parameters
    ----------
    study : Study
    path : Path
    logged : mapping of machine name to LoggedRun, optional
        As `logged_runs` finds them.

    Returns
    -------
    study, problems
    """
    edit, problems = edits.take_in_sheet(study, read_sheet(path), logged)
    return edit.study, problems


def logged_runs(study: Study, traces: Mapping[str, Trace]) -> dict[str, list[LoggedRun]]:
    """When the runs in the logs were, by the wall clock of each log, by the name of the machine.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
        A log that is missing here, or whose clock tells no date, has no runs.
    """
    found: dict[str, list[LoggedRun]] = {machine.name: [] for machine in study.machines}
    for run in study.runs:
        log = study.log(run.log_id)
        clock = traces[log.id].clock if log.id in traces else Clock("relative")
        edges = [clock.iso(at_s) for at_s in (run.start_s, run.end_s)]
        start, end = (None if e is None else datetime.fromisoformat(e).replace(tzinfo=None) for e in edges)
        if start is not None and end is not None:
            found[study.machine(log.machine_id).name].append(LoggedRun(run.id, start, end))
    return found
