"""The list of what is in a bundle, as values, and as the JSON that it is kept as."""

import json
from typing import Final

from attrs import frozen

from core.store.values import decode, encode, from_json

FORMAT: Final = "samepart bundle"
VERSION: Final = 1
MANIFEST: Final = "manifest.json"
STUDY: Final = "values.json"
RESULTS: Final = "results.json"
LOGS: Final = "logs/"
#: how a bundle's name ends where the program chooses it
BUNDLE_SUFFIX: Final = ".samepart.zip"


@frozen
class LogEntry:
    """A raw log.

    Parameters
    ----------
    sha256 : str
        Of its bytes, in hexadecimal; the study names it by this.
    size_bytes : int
    name : str
        Its file name, without folders.
    path : str or None
        Where it lies in the bundle; None where only its SHA-256 is kept.
    is_replaced : bool
        Whether personal data in it were replaced: its SHA-256 is then that of the replaced log.
    """

    sha256: str
    size_bytes: int
    name: str
    path: str | None = None
    is_replaced: bool = False


@frozen
class FileEntry:
    """Another file of the bundle, and what it holds."""

    path: str
    sha256: str
    size_bytes: int
    what: str


@frozen
class Manifest:
    """What is in a bundle.

    Parameters
    ----------
    format : str
        Always `FORMAT`.
    version : int
    program : str
        Program and version that made it.
    made : str
        ISO date.
    study : str
        Name of the study.
    logs : tuple of LogEntry
    files : tuple of FileEntry
    notes : tuple of str
        What a reader must know, such as that personal data were replaced.
    """

    format: str
    version: int
    program: str
    made: str
    study: str
    logs: tuple[LogEntry, ...]
    files: tuple[FileEntry, ...]
    notes: tuple[str, ...] = ()

    def log(self, sha256: str) -> LogEntry | None:
        """The log with this digest; None where the bundle knows of none."""
        return next((entry for entry in self.logs if entry.sha256 == sha256), None)


def to_text(manifest: Manifest) -> str:
    """The manifest as JSON to be read by people too."""
    return json.dumps(encode(manifest, Manifest), indent=1) + "\n"


def version_of(text: str) -> int | None:
    """The version of a manifest; None where the text is none of a bundle's.

    Examples
    --------
    >>> version_of('{"format": "samepart bundle", "version": 3}')
    3
    >>> version_of('{"format": "something else"}') is None
    True
    """
    try:
        data = from_json(text)
    except ValueError:
        return None
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        return None
    version = data.get("version")
    return version if type(version) is int else None


def from_text(text: str) -> Manifest:
    """The manifest that `to_text` wrote.

    Raises
    ------
    core.store.values.Unreadable
        If it is anything else.
    """
    return decode(from_json(text), Manifest)
