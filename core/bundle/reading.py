"""Opening a bundle: everything in it is taken for what a stranger may have sent.

Rules: nothing is written to disk; names that would lead out of the bundle are refused, and sizes are counted
while unpacking, because what a zip says of itself may be false.
"""

import hashlib
import zipfile
import zlib
from pathlib import Path
from typing import Final

from attrs import frozen

from core.bundle.manifest import (
    FORMAT,
    MANIFEST,
    RESULTS,
    STUDY,
    VERSION,
    Manifest,
    from_text,
    version_of,
)
from core.bundle.sound import what_is_wrong
from core.language import tr
from core.problems import Problem, Severity
from core.store.values import Unreadable, decode, from_json
from core.study import Study

#: most bytes of a log, of any other file, and of all others together; and most files
MOST_LOG_BYTES: Final = 1 << 30
MOST_FILE_BYTES: Final = 1 << 27
MOST_FILES_BYTES: Final = 1 << 30
MOST_MEMBERS: Final = 20_000
#: most unpacked bytes for each packed one, beyond the first of them
MOST_RATIO: Final = 300
FREE_BYTES: Final = 1 << 26
_BLOCK: Final = 1 << 20
_MEGABYTE: Final = 1 << 20
#: how a file that may be a bundle begins
_ZIP: Final = b"PK\x03\x04"
_BROKEN: Final = (
    zipfile.BadZipFile,
    zlib.error,
    EOFError,
    OSError,
    NotImplementedError,
    RuntimeError,
    ValueError,
)


class _TooLarge(Exception):
    """A file of the bundle unpacks to more than it may."""


@frozen(eq=False)
class Bundle:
    """A bundle that was opened: its manifest and its study.

    Parameters
    ----------
    path : Path
    manifest : Manifest
    study : Study
        The study's own values.
    claimed : str
        The figures as JSON text, as its maker has them; empty where it has none.
    problems : tuple of Problem
        Files that are no longer what they were; they were read all the same.
    """

    path: Path
    manifest: Manifest
    study: Study
    claimed: str
    problems: tuple[Problem, ...] = ()

    def log(self, sha256: str) -> bytes | Problem | None:
        """The bytes of a log; why not, if it was changed; None where only its SHA-256 is kept."""
        entry = self.manifest.log(sha256)
        if entry is None or entry.path is None:
            return None
        try:
            with zipfile.ZipFile(self.path) as archive:
                data = _unpacked(archive, entry.path, MOST_LOG_BYTES)
        except _TooLarge:
            return _too_large(self.path, entry.path, MOST_LOG_BYTES)
        except (*_BROKEN, KeyError) as error:
            return _damaged(self.path, f"{entry.name}: {error}")
        found = hashlib.sha256(data).hexdigest()
        if found != sha256:
            return log_changed(f"{self.path}/{entry.path}", entry.name, found, sha256)
        return data


def is_bundle(path: Path) -> bool:
    """Whether a file is a bundle of any version; never raises, never waits for a pipe."""
    try:
        if not path.is_file():
            return False
        with path.open("rb") as stream:
            if stream.read(len(_ZIP)) != _ZIP:
                return False
        with zipfile.ZipFile(path) as archive:
            return version_of(_unpacked(archive, MANIFEST, MOST_FILE_BYTES).decode()) is not None
    except (*_BROKEN, KeyError, _TooLarge, UnicodeDecodeError):
        return False


def open_bundle(path: Path) -> Bundle | Problem:
    """Read a bundle's manifest and study.

    Parameters
    ----------
    path : Path

    Returns
    -------
    Bundle or Problem
        A problem for what cannot be read, was made by a newer version, or brings what no bundle holds.
    """
    try:
        with zipfile.ZipFile(path) as archive:
            refused = _refused(archive, path)
            if refused is not None:
                return refused
            return _opened(archive, path)
    except _TooLarge as error:
        return _too_large(path, str(error), MOST_FILE_BYTES)
    except KeyError as error:
        return _damaged(path, str(error.args[0] if error.args else error))
    except (Unreadable, UnicodeDecodeError) as error:
        return _damaged(path, str(error))
    except _BROKEN as error:
        return _damaged(path, str(error) or type(error).__name__)


def log_changed(file: str, name: str, found: str, expected: str) -> Problem:
    """What is said of a log whose bytes are not those of the study."""
    facts = {"name": name, "found": found[:12], "expected": expected[:12]}
    return Problem("bundle.log_changed", Severity.ERROR, file, facts=facts)


def _opened(archive: zipfile.ZipFile, path: Path) -> Bundle | Problem:
    text = _unpacked(archive, MANIFEST, MOST_FILE_BYTES).decode()
    version = version_of(text)
    if version is None:
        return _damaged(path, tr("its manifest is none of a {kind}", kind=FORMAT))
    if version > VERSION:
        facts = {"version": version, "known": VERSION}
        return Problem("bundle.newer", Severity.ERROR, str(path), facts=facts)
    manifest = from_text(text)
    told: list[Problem] = []
    held: dict[str, bytes] = {}
    present = set(archive.namelist())
    left = MOST_FILES_BYTES
    for entry in manifest.files:
        if entry.path not in present:
            told.append(_changed(path, entry.path))
            continue
        data = _unpacked(archive, entry.path, min(MOST_FILE_BYTES, left))
        left -= len(data)
        if hashlib.sha256(data).hexdigest() != entry.sha256:
            told.append(_changed(path, entry.path))
        if entry.path in (STUDY, RESULTS):
            held[entry.path] = data
    if STUDY not in held:
        return _damaged(path, tr("{file} is missing", file=STUDY))
    study = decode(from_json(held[STUDY].decode()), Study)
    wrong = what_is_wrong(study)
    if wrong:
        return _damaged(path, f"{STUDY}: {wrong}")
    return Bundle(path, manifest, study, held.get(RESULTS, b"").decode(), tuple(told))


def _refused(archive: zipfile.ZipFile, path: Path) -> Problem | None:
    """Why a bundle is not opened, by the names in it."""
    members = archive.infolist()
    if len(members) > MOST_MEMBERS:
        return _damaged(path, tr("it holds {count} files", count=len(members)))
    seen: set[str] = set()
    for member in members:
        name = member.filename
        # a second file of one name would be another for every reader; two that differ in case, on some disks
        if not is_safe(name) or name.casefold() in seen:
            return Problem("bundle.unsafe", Severity.ERROR, str(path), facts={"name": name})
        seen.add(name.casefold())
        if member.flag_bits & 1:
            return _damaged(path, tr("{file} is encrypted", file=name))
    return None


def is_safe(name: str) -> bool:
    r"""Whether a name stays inside the bundle, wherever it is unpacked.

    Examples
    --------
    >>> is_safe("logs/Alder.csv"), is_safe("../x"), is_safe("/x"), is_safe("c:x"), is_safe("logs/a\\b")
    (True, False, False, False, False)
    """
    if not name or "\\" in name or ":" in name or any(ord(c) < 32 for c in name):
        return False
    return all(part not in ("", ".", "..") for part in name.removesuffix("/").split("/"))


def _unpacked(archive: zipfile.ZipFile, name: str, most_bytes: int) -> bytes:
    """The bytes of a file of the bundle, counted while they are unpacked."""
    member = archive.getinfo(name)
    limit = min(most_bytes, FREE_BYTES + MOST_RATIO * member.compress_size)
    parts, size = [], 0
    try:
        with archive.open(member) as stream:
            while piece := stream.read(_BLOCK):
                size += len(piece)
                if size > limit:
                    raise _TooLarge(name)
                parts.append(piece)
    except (zipfile.BadZipFile, zlib.error, EOFError) as error:
        raise zipfile.BadZipFile(tr("{file} cannot be unpacked", file=name)) from error
    return b"".join(parts)


def _changed(path: Path, name: str) -> Problem:
    return Problem("bundle.file_changed", Severity.CAUTION, str(path), facts={"name": name})


def _damaged(path: Path, what: str) -> Problem:
    return Problem("bundle.damaged", Severity.ERROR, str(path), facts={"what": what})


def _too_large(path: Path, name: str, limit: int) -> Problem:
    facts = {"name": name, "limit_mb": limit // _MEGABYTE}
    return Problem("bundle.too_large", Severity.ERROR, str(path), facts=facts)
