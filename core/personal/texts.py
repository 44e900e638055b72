"""The texts inside the bytes of a log, and the same bytes with other texts in them."""

import gzip
import io
import re
import zipfile
import zlib
from collections.abc import Callable, Sequence
from typing import Final

from core.logs.unpacked import FREE_BYTES, MOST_BYTES, MOST_RATIO

#: in and out of one text
Change = Callable[[str], str]
_MARKS: Final = (
    (b"\xef\xbb\xbf", "utf-8"),
    (b"\xff\xfe", "utf-16-le"),
    (b"\xfe\xff", "utf-16-be"),
)
_GZIP: Final = b"\x1f\x8b"
_ZIP: Final = b"PK\x03\x04"
#: files of these kinds hold their texts in ways that are read here and not written
_BINARY: Final = (b"PAR1", b"ARROW1", b"SQLite format 3\x00", b"\xd0\xcf\x11\xe0", b"\xff\xff\xff\xff")
_DAY: Final = (1980, 1, 1, 0, 0, 0)
_BROKEN: Final = (
    OSError,
    EOFError,
    zlib.error,
    zipfile.BadZipFile,
    ValueError,
    NotImplementedError,
    RuntimeError,
)


class CannotReplace(Exception):
    """The bytes are of a kind in which no text can be replaced, or that could not be unpacked."""


def whole(texts: Sequence[str]) -> re.Pattern[str]:
    """Any of the texts where it is no part of a longer word; of two that begin alike, the longer."""
    ordered = sorted(set(texts), key=lambda text: (-len(text), text))
    return re.compile(rf"(?<!\w)(?:{'|'.join(re.escape(text) for text in ordered)})(?!\w)")


def changed(data: bytes, change: Change, depth: int = 0) -> bytes:
    """The bytes with every text in them changed; what stays as it was stays to the last byte.

    Parameters
    ----------
    data : bytes
        A text in any encoding, a gzip file, or a zip (a spreadsheet is one).
    change : callable

    Raises
    ------
    CannotReplace
        If `change` changes something that cannot be written back.
    """
    if depth > 2:
        raise CannotReplace
    if data.startswith(_GZIP):
        inside = _unpacked_gzip(data)
        new = changed(inside, change, depth + 1)
        return data if new == inside else gzip.compress(new, mtime=0)
    if data.startswith(_ZIP):
        return _changed_zip(data, change, depth)
    encoding = _encoding(data)
    text = data.decode(encoding)
    new_text = change(text)
    if new_text == text:
        return data
    if data.startswith(_BINARY) or "\x00" in text:
        raise CannotReplace
    try:
        return new_text.encode(encoding)
    except UnicodeEncodeError as error:
        raise CannotReplace from error


def _changed_zip(data: bytes, change: Change, depth: int) -> bytes:
    out = io.BytesIO()
    touched = False
    total = 0
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
            for member in old.infolist():
                with old.open(member) as stream:
                    content = stream.read(_most(len(data)) - total + 1)
                total += len(content)
                if total > _most(len(data)):
                    raise CannotReplace
                name, other = change(member.filename), changed(content, change, depth + 1)
                touched = touched or name != member.filename or other != content
                info = zipfile.ZipInfo(name, _DAY)
                info.compress_type = zipfile.ZIP_DEFLATED
                new.writestr(info, other)
    except _BROKEN as error:
        raise CannotReplace from error
    return out.getvalue() if touched else data


def _unpacked_gzip(data: bytes) -> bytes:
    try:
        with gzip.GzipFile(fileobj=io.BytesIO(data)) as stream:
            inside = stream.read(_most(len(data)) + 1)
    except _BROKEN as error:
        raise CannotReplace from error
    if len(inside) > _most(len(data)):
        raise CannotReplace
    return inside


def _most(packed: int) -> int:
    return min(MOST_BYTES, FREE_BYTES + MOST_RATIO * packed)


def _encoding(data: bytes) -> str:
    """An encoding in which the bytes can be written back as they were."""
    for mark, encoding in _MARKS:
        if data.startswith(mark) and len(data) % (2 if "16" in encoding else 1) == 0:
            try:
                data.decode(encoding)
            except UnicodeDecodeError:
                break
            return encoding
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return "latin-1"
    return "utf-8"
