"""Compressed logs: gzip, bzip2, xz, and zip archives of several logs.

Rules: unpacked in blocks against a limit of size and ratio; an archive inside an archive is opened once.
"""

import bz2
import io
import lzma
import zipfile
import zlib
from collections.abc import Callable
from pathlib import PurePath

from attrs import evolve

from core.logs.unpacked import MOST_BYTES, MOST_PARTS, Item, most_unpacked, refused, too_many
from core.problems import Problem, Severity

#: opens what lies in an archive: bytes, their name, archives around them
OpenInner = Callable[[bytes, str, int], list[Item] | Problem]
_BLOCK = 1 << 22
_DEPTH = 2


def open_gzip(data: bytes, name: str, depth: int, open_inner: OpenInner) -> list[Item] | Problem:
    """The log inside a gzip file; what can be unpacked of a cut one."""
    if depth >= _DEPTH:
        return refused(name, "log.nested_archive")
    parts = io.BytesIO()  # a list of blocks would lie in memory beside the whole
    size, at = 0, data
    problems: tuple[Problem, ...] = ()
    while at:
        unpacker = zlib.decompressobj(wbits=31)
        feed = at
        while feed and not unpacker.eof:
            try:
                piece = unpacker.decompress(feed, _BLOCK)
            except zlib.error:
                problems = (Problem("log.archive_damaged", Severity.CAUTION, name),)
                feed, at = b"", b""
                break
            size += len(piece)
            if size > most_unpacked(len(data)):
                return refused(name, "log.archive_too_large", limit_mb=most_unpacked(len(data)) >> 20)
            parts.write(piece)
            feed = unpacker.unconsumed_tail
        if not at:
            break
        if not unpacker.eof:
            problems = (Problem("log.archive_damaged", Severity.CAUTION, name),)
            break
        at = unpacker.unused_data.lstrip(b"\0")
        if at and not at.startswith(b"\x1f\x8b"):
            break
    whole = parts.getvalue()
    if not whole:
        return refused(name, "log.empty" if not problems else "log.archive_unreadable")
    return _opened(whole, name, ".gz", depth, open_inner, problems)


def open_packed(data: bytes, name: str, depth: int, open_inner: OpenInner) -> list[Item] | Problem:
    """The log inside a bzip2 or xz file; what can be unpacked of a cut one."""
    if depth >= _DEPTH:
        return refused(name, "log.nested_archive")
    is_bzip = data.startswith(b"BZh")
    suffix = ".bz2" if is_bzip else ".xz"
    unpacker: bz2.BZ2Decompressor | lzma.LZMADecompressor
    unpacker = bz2.BZ2Decompressor() if is_bzip else lzma.LZMADecompressor(memlimit=MOST_BYTES)
    parts = io.BytesIO()  # a list of blocks would lie in memory beside the whole
    size, feed = 0, data
    problems: tuple[Problem, ...] = ()
    while not unpacker.eof:
        try:
            piece = unpacker.decompress(feed, _BLOCK)
        except (OSError, lzma.LZMAError, EOFError):
            piece, problems = b"", (Problem("log.archive_damaged", Severity.CAUTION, name),)
            break
        size += len(piece)
        if size > most_unpacked(len(data)):
            return refused(name, "log.archive_too_large", limit_mb=most_unpacked(len(data)) >> 20)
        parts.write(piece)
        if unpacker.needs_input and not unpacker.eof:
            problems = (Problem("log.archive_damaged", Severity.CAUTION, name),)
            break
        feed = b""
    whole = parts.getvalue()
    if not whole:
        return refused(name, "log.empty" if not problems else "log.archive_unreadable")
    return _opened(whole, name, suffix, depth, open_inner, problems)


def _opened(
    whole: bytes, name: str, suffix: str, depth: int, open_inner: OpenInner, problems: tuple[Problem, ...]
) -> list[Item] | Problem:
    """What is in unpacked bytes, under the name without the ending of its packing."""
    opened = open_inner(whole, name.removesuffix(suffix), depth + 1)
    if isinstance(opened, Problem):
        return evolve(opened, file=name)
    inner = PurePath(name).name.removesuffix(suffix)
    return [evolve(i, label=i.label or inner, problems=(*i.problems, *problems)) for i in opened]


def open_zip(data: bytes, name: str, depth: int, open_inner: OpenInner) -> list[Item] | Problem:
    """The logs inside a zip archive."""
    if depth >= _DEPTH:
        return refused(name, "log.nested_archive")
    items: list[Item] = []
    problems: list[Problem] = []
    total = 0
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            members = [m for m in archive.infolist() if not m.is_dir() and "__MACOSX" not in m.filename]
            if len(members) > MOST_PARTS:
                return too_many(name, len(members))
            for member in members:
                if member.flag_bits & 1:
                    problems.append(
                        Problem("log.archive_locked", Severity.ERROR, name, facts={"member": member.filename})
                    )
                    continue
                content = _member(archive, member, most_unpacked(len(data)) - total)
                if content is None:
                    return refused(name, "log.archive_too_large", limit_mb=most_unpacked(len(data)) >> 20)
                total += len(content)
                if not content:
                    continue
                opened = open_inner(content, f"{name}/{member.filename}", depth + 1)
                if isinstance(opened, Problem):
                    problems.append(opened)
                else:
                    items += [
                        evolve(i, label=member.filename if not i.label else f"{member.filename}/{i.label}")
                        for i in opened
                    ]
                if len(items) > MOST_PARTS:
                    return too_many(name, len(items))
    except (zipfile.BadZipFile, NotImplementedError, OSError, zlib.error, EOFError, ValueError):
        if not items:
            return refused(name, "log.archive_unreadable")
        problems.append(Problem("log.archive_damaged", Severity.CAUTION, name))
    if not items:
        return evolve(problems[0], file=name) if problems else refused(name, "log.empty")
    items[0] = evolve(items[0], problems=(*items[0].problems, *problems))
    return items


def _member(archive: zipfile.ZipFile, member: zipfile.ZipInfo, limit: int) -> bytes | None:
    """The bytes of a member, None when there are more than `limit`."""
    parts, size = [], 0
    with archive.open(member) as stream:
        while piece := stream.read(_BLOCK):
            size += len(piece)
            if size > limit:
                return None
            parts.append(piece)
    return b"".join(parts)
