"""Bytes of a text file: which encoding, and the same text as UTF-8 with plain line ends.

Rules: nothing is dropped without being told; pure ASCII and UTF-8 are not copied.
"""

import codecs
import re

from attrs import frozen

from core.language import later, mark
from core.logs.reading import CHOSEN
from core.problems import Problem, Severity

#: bytes looked at to judge the encoding and whether this is text at all
HEAD = 1 << 16
_STEP = 1 << 24
#: so many wide digits stand in a name now and then
_MANY_WIDE = 50
_MARKS = (
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)
_MAGIC = (
    (b"%PDF", mark("a PDF document")),
    (b"\x89PNG", mark("a picture")),
    (b"\xff\xd8\xff", mark("a photograph")),
    (b"GIF8", mark("a picture")),
    (b"BM", ""),
    (b"\x7fELF", mark("a program")),
    (b"MZ", ""),
    (b"RIFF", mark("a sound or video file")),
    (b"\x00\x00\x00\x18ftyp", mark("a video file")),
    (b"\x00\x00\x00 ftyp", mark("a video file")),
    (b"II*\x00", mark("a picture")),
    (b"7z\xbc\xaf", mark("a 7z archive")),
    (b"Rar!", mark("a rar archive")),
    (b"BZh", mark("a bzip2 archive")),
    (b"\xfd7zXZ", mark("an xz archive")),
)
#: what a terminal takes for colours, left in by a script whose output was kept (ECMA-48, from memory)
_COLOURS = re.compile(rb"\x1b\[[0-9;]{0,16}[A-Za-z]")
#: the zeros of digits that are written otherwise: as wide as a Japanese letter, as they come from a keyboard
#: for it; Arabic, Persian, Devanagari, Bengali, Thai
_ZEROS = "０٠۰०০๐"
_NARROW = {ord(zero) + i: 0x30 + i for zero in _ZEROS for i in range(10)} | {
    ord(wide): narrow for wide, narrow in zip("．：／－＋，　（）［］٫٬،", ".:/-+, ()[].',", strict=True)
}
_WIDE = re.compile("|".join(f"[{z}-{chr(ord(z) + 9)}]" for z in _ZEROS))
#: what the digits begin with in UTF-8, so that other texts are passed over quickly
_WIDE_BEGINS = tuple({z.encode()[:-1] for z in _ZEROS})
#: marks of the direction of writing, which some browsers put around the parts of a date
_DIRECTIONS = re.compile(b"\xe2\x80[\x8e\x8f\xaa-\xae]|\xe2\x81[\xa6-\xa9]")
#: control characters that some programs put between cells
_PARTING = (b"\x1f", b"\x01")
_HTML = re.compile(
    rb"^\s*(?:<\?xml[^>]*>\s*)?(?:<!--.*?-->\s*)?<(?:!doctype|html|head|body|svg|xml|table)\b", re.I | re.S
)
#: letters and signs that text in western European languages is made of, beyond ASCII
_WESTERN = frozenset(
    b"\xa0\xb0\xb2\xb3\xb5\xb7\x80\x91\x92\x93\x94\x96\x97\xab\xbb\xdf" + bytes(range(0xC0, 0x100))
)


@frozen
class Text:
    """Text as UTF-8 bytes, lines ended by a line feed, and how it was written in the file."""

    data: bytes
    encoding: str
    reason: str
    problems: tuple[Problem, ...] = ()


def foreign(data: bytes) -> str:
    """What the bytes are when they are clearly no log, in words; empty when they may be one."""
    for magic, what in _MAGIC:
        if what and data.startswith(magic):
            return later(what)
    if is_page(data):
        return later(mark("a web page"))
    head = data[:HEAD]
    if head[:2] in (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE) or _utf16_without_mark(head):
        return ""
    strange = sum(head.count(bytes([c])) for c in (*range(1, 9), *range(14, 27), *range(28, 32), 127))
    parting = max((head.count(c) for c in _PARTING), default=0)
    if parting == strange and parting >= head.count(b"\n"):
        strange = 0
    nuls = head.count(b"\0")
    if strange > max(2, len(head) // 100) or nuls > len(head) // 3:
        return later(mark("binary data"))
    return ""


def is_page(head: bytes) -> bool:
    """Whether a text begins as a page of a browser does, or as a picture made of tags."""
    return _HTML.match(head[:4096]) is not None


def _is_wide(head: bytes) -> bool:
    """Whether a text in UTF-8 writes its numbers in other digits than 0 to 9."""
    if head.isascii() or not any(b in head for b in _WIDE_BEGINS):
        return False
    return len(_WIDE.findall(head.decode("utf-8", "replace"))) > _MANY_WIDE


def _has_directions(head: bytes) -> bool:
    return not head.isascii() and _DIRECTIONS.search(head) is not None


def _utf16_without_mark(head: bytes) -> str:
    if len(head) < 8 or head.count(b"\0") < len(head) // 4:
        return ""
    even, odd = head[0::2].count(b"\0"), head[1::2].count(b"\0")
    if odd > 0.4 * len(head) / 2 and even < odd / 8:
        return "utf-16-le"
    if even > 0.4 * len(head) / 2 and odd < even / 8:
        return "utf-16-be"
    return ""


def is_plain(head: bytes) -> bool:
    """Whether a text can be read block by block: no mark, no zero bytes, line feeds, UTF-8 as far as seen."""
    if (
        any(head.startswith(mark) for mark, _ in _MARKS)
        or b"\0" in head
        or b"\n" not in head
        or _is_wide(head)
        or _has_directions(head)
        or foreign(head)
    ):
        return False
    cut = head.rfind(b"\n") + 1
    return _is_utf8(head[:cut])


def decode(data: bytes, file: str, chosen: str | None = None) -> Text:
    """Bring `data` to UTF-8.

    Parameters
    ----------
    data : bytes
    file : str
        Name for problems.
    chosen : str, optional
        Encoding the user chose.
    """
    problems: list[Problem] = []
    encoding, reason, skip = _find(data) if chosen is None else (chosen, CHOSEN, 0)
    if chosen is not None:
        skip = next((len(begin) for begin, _ in _MARKS if data.startswith(begin)), 0)
    if encoding in ("ascii", "utf-8"):
        out = data[skip:] if skip else data
        if encoding == "utf-8" and (chosen or skip) and not _is_utf8(out):
            out = out.decode("utf-8", "replace").encode()
            problems.append(
                Problem("log.encoding_doubtful", Severity.CAUTION, file, facts={"encoding": encoding})
            )
        encoding = "utf-8"
    else:
        try:
            text = data[skip:].decode(encoding, "replace")
        except LookupError:
            encoding = "cp1252"
            reason = later(mark("there is no encoding called {encoding}"), encoding=chosen)
            text = data.decode(encoding, "replace")
        if text.count("\ufffd") > 0:
            problems.append(
                Problem("log.encoding_doubtful", Severity.CAUTION, file, facts={"encoding": encoding})
            )
        out = text.encode("utf-8")
    nuls = out.count(b"\0")
    if nuls:
        out = out.replace(b"\0", b"")
        problems.append(Problem("log.nul_bytes", Severity.CAUTION, file, facts={"count": nuls}))
    if b"\x1b[" in out[:HEAD]:
        out = _COLOURS.sub(b"", out)
    if _has_directions(out[:HEAD]):
        out = _DIRECTIONS.sub(b"", out)
    if _is_wide(out[:HEAD]):
        out = out.decode("utf-8", "replace").translate(_NARROW).encode()
    if b"\r" in out[:HEAD] and b"\n" not in out[:HEAD]:
        out = out.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    return Text(out, encoding, reason, tuple(problems))


def _find(data: bytes) -> tuple[str, str, int]:
    for begin, encoding in _MARKS:
        if data.startswith(begin):
            return encoding, later(mark("the file starts with this encoding's mark")), len(begin)
    guess = _utf16_without_mark(data[:HEAD])
    if guess:
        return guess, later(mark("every other byte is zero")), 0
    if data.isascii():
        return "ascii", later(mark("only plain characters, which are the same in nearly every encoding")), 0
    if _is_utf8(data):
        return "utf-8", later(mark("all its accented characters are valid UTF-8")), 0
    high = bytes(b for b in data[: HEAD * 4] if b > 127)
    if not high:
        high = bytes(set(data) & set(range(128, 256)))
    if all(b in _WESTERN for b in high):
        return (
            "cp1252",
            later(mark("not UTF-8, and its accented characters are letters of western European languages")),
            0,
        )
    from charset_normalizer import from_bytes

    best = from_bytes(data[:HEAD]).best()
    if best is None or best.encoding in ("utf_8", "ascii"):
        return "cp1252", later(mark("not UTF-8, and nothing told the 8-bit encodings apart")), 0
    return (
        best.encoding.replace("_", "-"),
        later(mark("not UTF-8; the most likely encoding of its letters")),
        0,
    )


def _is_utf8(data: bytes) -> bool:
    decoder = codecs.getincrementaldecoder("utf-8")()
    try:
        for start in range(0, len(data), _STEP):
            decoder.decode(data[start : start + _STEP], start + _STEP >= len(data))
    except UnicodeDecodeError:
        return False
    return True
