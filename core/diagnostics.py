"""What helps to mend a fault of the program, and nothing that is anybody's own.

Rules: versions, kind of computer and sizes only. No name, path, time, value or text of a study goes in.
"""

import platform
from collections.abc import Mapping
from importlib import metadata
from typing import Final

from core import __version__
from core.store.schema import VERSION
from core.study import Study
from core.traces import Trace

_LIBRARIES: Final = (
    "PySide6_Essentials", "pyqtgraph", "numpy", "pandas", "pyarrow", "scipy", "statsmodels", "GTC", "attrs",
    "tsdownsample", "python-calamine", "XlsxWriter", "distributed",
)  # fmt: skip


def about_program() -> tuple[str, ...]:
    """Lines on the program, the computer and the libraries."""
    return (
        f"samepart {__version__}, study files of version {VERSION}",
        f"{platform.python_implementation()} {platform.python_version()}",
        f"{platform.system()} {platform.release()}, {platform.machine()}",
        ", ".join(f"{name} {_version(name)}" for name in _LIBRARIES),
    )


def _version(library: str) -> str:
    try:
        return metadata.version(library)
    except metadata.PackageNotFoundError:
        return "not there"


def about_study(study: Study, traces: Mapping[str, Trace], steps: int) -> tuple[str, ...]:
    """Lines on how large a study is.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
        Those that have been read.
    steps : int
        How many steps can be undone.
    """
    rows = sorted((trace.time_s.size for trace in traces.values()), reverse=True)
    kinds = sorted({trace.kind for trace in traces.values()})
    return (
        f"{len(study.machines)} machines, {len(study.meters)} meters, {len(study.logs)} logs, "
        f"{len(study.runs)} stretches, {len(study.typed)} typed readings, {steps} steps to undo",
        f"{len(rows)} logs read, {sum(rows)} rows, {rows[0] if rows else 0} in the longest"
        + (f", {' and '.join(kinds)}" if kinds else ""),
    )
