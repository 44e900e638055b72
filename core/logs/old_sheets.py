"""Sheets of the old spreadsheet format, opened in a process of their own.

Rules: on damaged files of this format the library asks for any amount of memory and ends the process that
does so. That must not be ours; in the other process it has a limit and a time (a limit where the system knows
one), and whatever happens there is damage.
"""

import json
import subprocess
import sys
from collections.abc import Callable
from datetime import date, datetime, time, timedelta
from typing import Any

from core.language import mark

#: memory and time that opening may take [bytes], [s]
MOST_MEMORY = 1 << 30
LONGEST_S = 60.0

_CHILD = f"""
import datetime, io, json, sys
try:
    import resource
    resource.setrlimit(resource.RLIMIT_AS, ({MOST_MEMORY}, {MOST_MEMORY}))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
except (ImportError, ValueError, OSError):
    pass
from python_calamine import CalamineWorkbook
book = CalamineWorkbook.from_object(io.BytesIO(sys.stdin.buffer.read()))
sheets = [(t, book.get_sheet_by_name(t).to_python(skip_empty_area=False)) for t in book.sheet_names]
def told(value):
    if isinstance(value, datetime.timedelta):
        return {{"timedelta": value.total_seconds()}}
    return {{type(value).__name__: value.isoformat()}}
json.dump(sheets, sys.stdout, default=told)
"""
#: what the child tells by name, since JSON has no word for it
_KINDS: dict[str, Callable[[Any], object]] = {
    "datetime": datetime.fromisoformat,
    "date": date.fromisoformat,
    "time": time.fromisoformat,
    "timedelta": lambda seconds: timedelta(seconds=seconds),
}


def rows_of_sheets(data: bytes) -> list[tuple[str, list[list[Any]]]]:
    """Title and rows of every sheet.

    Raises
    ------
    ValueError
        If the file is damaged.
    """
    try:
        done = subprocess.run(
            [sys.executable, "-c", _CHILD], input=data, capture_output=True, timeout=LONGEST_S, check=False
        )
    except subprocess.TimeoutExpired:
        raise ValueError(mark("it takes too long to open")) from None
    if done.returncode != 0:
        raise ValueError(mark("its parts do not fit together"))
    # read as text: a child that a hostile file has taken over must not be able to have anything run here
    return [(title, rows) for title, rows in json.loads(done.stdout, object_hook=_value)]


def _value(told: dict[str, Any]) -> Any:
    ((kind, value),) = told.items()
    return _KINDS[kind](value)
