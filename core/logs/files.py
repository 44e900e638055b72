"""Paths to bytes: folders walked, links followed once, what is no ordinary file refused.

Rules: nothing is written, nothing is waited for; a file that changes while it is read is reported.
"""

import stat
from collections.abc import Sequence
from pathlib import Path

from core.problems import Problem, Severity

#: larger files are refused before they are read
MOST_BYTES = 6 << 30
#: a file of which less than this share is on the disk is a hole
LEAST_STORED = 0.01
_MOST_FILES = 20_000
_HIDDEN = (".", "~$")
_OWN = (".samepart", ".samepart.zip")


def find_files(paths: Sequence[Path | str]) -> tuple[tuple[tuple[Path, str], ...], tuple[Problem, ...]]:
    """Files behind what the user named.

    Parameters
    ----------
    paths : files and folders
        Folders are walked, in the order of names; hidden files, studies and bundles inside folders are
        passed over.

    Returns
    -------
    files : tuple of (path, name to show)
        The name is the path as given, for a folder joined with the name inside it.
    problems : tuple of Problem
    """
    found: list[tuple[Path, str]] = []
    problems: list[Problem] = []
    seen: set[tuple[int, int]] = set()
    for given in paths:
        path, shown = Path(given), _as_text(given)
        kind = _kind(path)
        if kind == "folder":
            before = len(found)
            _walk(path, shown, found, problems, seen)
            if len(found) == before:
                problems.append(Problem("file.empty_folder", Severity.ERROR, shown))
        elif kind == "file":
            found.append((path, shown))
        else:
            problems.append(Problem(kind, Severity.ERROR, shown))
    return tuple(found), tuple(problems)


def _as_text(name: Path | str) -> str:
    """A name as text: what of its bytes is none (some systems allow any) is written as an escape."""
    return str(name).encode("utf-8", "backslashreplace").decode()


def _kind(path: Path) -> str:
    """``"folder"``, ``"file"``, or the code of what is wrong."""
    try:
        mode = path.stat().st_mode
    except FileNotFoundError:
        return "file.dead_link" if path.is_symlink() else "file.missing"
    except PermissionError:
        return "file.unreadable"
    except (OSError, ValueError):
        return "file.loop" if _is_link(path) else "file.missing"
    if stat.S_ISDIR(mode):
        return "folder"
    return "file" if stat.S_ISREG(mode) else "file.not_ordinary"


def _is_link(path: Path) -> bool:
    try:
        return path.is_symlink()
    except (OSError, ValueError):
        return False


def _walk(
    folder: Path,
    shown: str,
    found: list[tuple[Path, str]],
    problems: list[Problem],
    seen: set[tuple[int, int]],
) -> None:
    try:
        status = folder.stat()
        names = sorted(p.name for p in folder.iterdir())
    except OSError:
        problems.append(Problem("file.unreadable", Severity.ERROR, shown))
        return
    mark = (status.st_dev, status.st_ino)
    if mark in seen and mark != (0, 0):
        problems.append(Problem("file.loop", Severity.CAUTION, shown))
        return
    seen.add(mark)
    for name in names:
        path, inner = folder / name, str(Path(shown) / _as_text(name))
        if name.startswith(_HIDDEN) or name.endswith(_OWN):
            continue
        if len(found) >= _MOST_FILES:
            problems.append(Problem("file.too_many", Severity.CAUTION, shown, facts={"limit": _MOST_FILES}))
            return
        kind = _kind(path)
        if kind == "folder":
            _walk(path, inner, found, problems, seen)
        elif kind == "file":
            found.append((path, inner))
        else:
            problems.append(Problem(kind, Severity.CAUTION, inner))


def check(path: Path, name: str) -> Problem | None:
    """Why a path cannot be read as a file, None when it can."""
    kind = _kind(path)
    if kind != "file":
        return Problem("file.folder" if kind == "folder" else kind, Severity.ERROR, name)
    try:
        status = path.stat()
        with path.open("rb"):
            pass
    except PermissionError:
        return Problem("file.unreadable", Severity.ERROR, name)
    except OSError as error:
        return Problem("file.failed", Severity.ERROR, name, facts={"error": error.strerror or str(error)})
    if status.st_size > MOST_BYTES:
        return Problem("log.too_large", Severity.ERROR, name, facts={"bytes": status.st_size})
    stored = getattr(status, "st_blocks", None)
    if stored is not None and status.st_size > (1 << 26) and stored * 512 < LEAST_STORED * status.st_size:
        return Problem("file.sparse", Severity.ERROR, name, facts={"bytes": status.st_size})
    return None


def load(path: Path, name: str) -> bytes | Problem:
    """The bytes of a file, or why they cannot be had."""
    try:
        return path.read_bytes()
    except PermissionError:
        return Problem("file.unreadable", Severity.ERROR, name)
    except MemoryError:
        return Problem("log.too_large", Severity.ERROR, name, facts={"bytes": path.stat().st_size})
    except OSError as error:
        return Problem("file.failed", Severity.ERROR, name, facts={"error": error.strerror or str(error)})
