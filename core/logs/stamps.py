"""Written time stamps taken apart: which digits of a text are year, month, day, hour, minute, second.

Rules: texts are grouped by their skeleton (digits made alike), so that each form is understood once and its
digits are then read as columns of bytes; nothing here decides between day-first and month-first.
"""

import re
from collections.abc import Iterator
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from core.logs.month_names import MONTHS
from core.logs.words import plain
from core.logs.zone_letters import OFFSETS_S, is_unknown
from core.traces import F64

__all__ = ["MONTHS", "Group", "Shape", "groups", "understand"]

I64 = NDArray[np.int64]
U8 = NDArray[np.uint8]

#: words for the halves of the day, as cells write them and as `plain` has them without spaces; a letter
#: alone stands only behind a clock time
HALF_OF_DAY = r"(?:[AaPp]\.?\s?[Mm]\.?|[πμ]\.?\s?μ\.?|午前|午後|上午|下午|오전|오후)"
MORNING = frozenset({"am", "a", "午前", "上午", "오전", "πμ", "π"})
EVENING = frozenset({"pm", "p", "午後", "下午", "오후", "μμ", "μ"})
_TOKEN = re.compile(r"0+|[^\W\d_]+|[^\w]+|_")
_DURATION = re.compile(r"^P(?:(0+)D)?(?:T(?:(0+)H)?(?:(0+)M)?(?:(0+)(?:[.,](0+))?S)?)?$")
#: the zone's name may follow, in brackets or not
_OFFSET = re.compile(r"\s?(?:UTC|GMT)?([+\-−])(00?):?(00)?(?:\s\([^()0]+\)|\s[A-Z]{2,5})?$")
#: date and clock in digits alone, where a zone follows
_DIGITS = re.compile(r"^0{8}[Tt ]?0{4}(?:00)?(?=[Zz]$|[+\-−])")
_OF_WEEKS = re.compile(r"^0000-?W00-?0(?!0)")
#: a zone named behind the offset, which says it all
_NAMED_ZONE = re.compile(r"(?<=[\dZz])\[[A-Za-z/_+\-]{2,40}\]?$")
_CLOCK = re.compile(r"(0{1,6})\s?[:時h]\s?(00)(?:\s?[:分m]\s?(00)(?:[.,](0{1,9})|:(000)(?![0:]))?)?\s?[秒s]?")
_LETTERED = re.compile(
    r"^(?=.*[dhms])(?:(0+)\s?d\s?)?(?:(0+)\s?h\s?)?(?:(0+)\s?m(?:in)?\s?)?(?:(0+)(?:\.(0+))?\s?s)?$"
)
#: minutes and seconds without their hour, as spreadsheets show a clock with fractions
_OF_HOUR = re.compile(r"^(000?):(00)[.,](0{1,3})$")
#: all fields with signs between them that clock times do not have
_FIELDS = re.compile(r"^(0000)([-./:_])(00)\2(00)[-./:_T ](00)([-./:_])(00)(?:\6(00))?$")
#: a colon between date and clock time, as web servers write it
_GLUED = re.compile(r"^([^:\s]*[-/.][^:\s]*):(?=00:00:00(?![0:]))")
#: counted from the first year of a reign, or of a republic: years to add
_ERAS = {
    "令和": 2018,
    "平成": 1988,
    "昭和": 1925,
    "民國": 1911,
    "民国": 1911,
    "R": 2018,
    "H": 1988,
    "S": 1925,
}
_ERA = re.compile(rf"^({'|'.join(_ERAS)})\s?(?=00?[/.年]|000年)")
_DOTTED = re.compile(r"(?<=[\sT_])(00?)\.(00)(?:\.(00))?$|(?<=[\sT_])(00?)-(00)-(00)$")

#: what may stand around a stamp
_AROUND = " \t\u00a0[]\"'"
#: a longer text is no stamp [bytes]
_LONGEST = 96

Span = tuple[int, int]


@frozen
class Shape:
    """Where the fields stand in a skeleton; spans are (start, end) in bytes.

    ``date`` holds three spans in the order written, or two beside a month given as a word; in an ordinal date
    the year and its day, in a date of weeks (ISO 8601) the year, the week and its day. ``era`` are years to
    add to a year counted from another beginning; ``letters`` are those of a zone; of a time ``is_of_hour`` no
    hour is written.
    """

    date: tuple[Span, ...] = ()
    month_word: int = 0
    hour: Span | None = None
    minute: Span | None = None
    second: Span | None = None
    fraction: Span | None = None
    day_count: Span | None = None
    half: int = -1
    offset: tuple[int, Span, Span | None] | None = None
    zone_s: int | None = None
    is_duration: bool = False
    is_of_weeks: bool = False
    is_of_hour: bool = False
    era: int = 0
    letters: str = ""


@frozen
class Group:
    """Rows that are written alike: their indices, their bytes (m, L), and the skeleton."""

    rows: I64
    matrix: U8
    skeleton: str


def groups(column: Any) -> Iterator[Group]:
    """Group the texts of an Arrow string column by skeleton; missing and empty texts are in no group."""
    import pyarrow as pa

    base = 0
    for chunk in column.chunks if isinstance(column, pa.ChunkedArray) else [column]:
        for start in range(0, len(chunk), 1 << 20):
            block = chunk.slice(start, 1 << 20)
            yield from _groups(block, base + start)
        base += len(chunk)


def _groups(block: Any, base: int) -> Iterator[Group]:
    buffers = block.buffers()
    if not len(block) or buffers[2] is None:
        return
    wide = str(block.type).startswith("large")
    offsets = np.frombuffer(buffers[1], dtype=np.int64 if wide else np.int32)[
        block.offset : block.offset + len(block) + 1
    ]
    data = np.frombuffer(buffers[2], dtype=np.uint8)
    lengths = np.diff(offsets)
    valid = np.ones(len(block), dtype=bool)
    if block.null_count:
        valid = ~np.asarray(block.is_null())
    for length in np.unique(lengths[valid]).tolist():
        if not 0 < length <= _LONGEST:
            continue
        rows = np.flatnonzero((lengths == length) & valid)
        if rows.size == len(block):
            first = int(offsets[0])
            matrix = data[first : first + length * rows.size].reshape(rows.size, length)
        else:
            matrix = data[offsets[rows][:, None] + np.arange(length)]
        yield from _by_skeleton(rows + base, matrix)


def _by_skeleton(rows: I64, matrix: U8) -> Iterator[Group]:
    is_digit = (matrix - np.uint8(48)) < 10
    first = np.where(is_digit[0], np.uint8(48), matrix[0])
    if bool((is_digit == is_digit[0]).all()) and bool(
        (matrix[:, ~is_digit[0]] == matrix[0, ~is_digit[0]]).all()
    ):
        yield Group(rows, matrix, bytes(first).decode("utf-8", "replace"))
        return
    skeletons = np.where(is_digit, np.uint8(48), matrix)
    weights = np.random.default_rng(1).integers(1, 1 << 61, matrix.shape[1], dtype=np.uint64)
    marks = skeletons.astype(np.uint64) @ weights
    _, index, inverse, counts = np.unique(marks, return_index=True, return_inverse=True, return_counts=True)
    for i in np.argsort(-counts)[:64].tolist():
        picked = np.flatnonzero(inverse == i)
        yield Group(rows[picked], matrix[picked], bytes(skeletons[index[i]]).decode("utf-8", "replace"))


def understand(skeleton: str) -> Shape | None:
    """Find the fields of a skeleton such as ``"00.00.0000 00:00:00"``; None when it is no time."""
    at = _byte_positions(skeleton)

    def span(match: re.Match[str], group: int) -> Span | None:
        return None if match.group(group) is None else (at[match.start(group)], at[match.end(group)])

    text = skeleton.strip(_AROUND)
    lead = len(skeleton) - len(skeleton.lstrip(_AROUND))
    era = _ERA.match(text)
    if era:
        lead += era.end()
        text = text[era.end() :]
    text = _GLUED.sub(r"\1 ", _NAMED_ZONE.sub("", text))
    if lead:
        at = at[lead:]
    duration = _DURATION.match(text)
    if duration and len(text) > 2:
        hour, minute, second, fraction = (span(duration, g) for g in (2, 3, 4, 5))
        return Shape((), 0, hour, minute, second, fraction, span(duration, 1), is_duration=True)
    lettered = _LETTERED.match(text)
    if lettered and text:
        hour, minute, second, fraction = (span(lettered, g) for g in (2, 3, 4, 5))
        return Shape((), 0, hour, minute, second, fraction, span(lettered, 1), is_duration=True)
    of_hour = _OF_HOUR.match(text)
    if of_hour:
        minute, second, fraction = (span(of_hour, g) for g in (1, 2, 3))
        return Shape((), 0, None, minute, second, fraction, is_duration=True, is_of_hour=True)
    in_full = _FIELDS.match(text)
    if in_full:
        year, month_at, day, hour, minute, second = (span(in_full, g) for g in (1, 3, 4, 5, 7, 8))
        if year and month_at and day:
            return Shape((year, month_at, day), 0, hour, minute, second)
    clock = _CLOCK.search(text)
    offset = None
    if clock is None:
        clock = _DOTTED.search(text)
    rest, tail = text, ""
    fields: tuple[Span | None, ...] = (None, None, None, None)
    if clock is not None:
        taken = [g for g in range(1, clock.re.groups + 1) if clock.group(g) is not None]
        found = [span(clock, g) for g in taken]
        fields = tuple((found + [None] * 4)[:4])
        rest, tail = text[: clock.start()], text[clock.end() :]
    else:
        digits_alone = _DIGITS.match(text)
        if digits_alone:
            rest, tail = digits_alone.group(0), text[digits_alone.end() :]
    if tail:
        match = _OFFSET.match(tail)
        if match and span(match, 2):
            base = len(text) - len(tail)
            hours = (at[base + match.start(2)], at[base + match.end(2)])
            minutes = None if match.group(3) is None else (at[base + match.start(3)], at[base + match.end(3)])
            offset = (1 if match.group(1) == "+" else -1, hours, minutes)
            tail = tail[match.end() :]
    tail_at = len(text) - len(tail)
    half, month, zone_s, letters = -1, 0, None, ""
    runs: list[Span] = []
    for part, begin in ((rest, 0), (tail, tail_at)):
        for token in _TOKEN.finditer(part):
            word = token.group(0)
            if word[0] == "0":
                runs.append((at[begin + token.start()], at[begin + token.end()]))
            elif word[0].isalpha():
                flat = plain(word)
                if (flat in MONTHS and part is rest) or (flat in MONTHS and not month and len(flat) > 2):
                    month = MONTHS[flat]
                elif half < 0 and flat in MORNING and (part is tail or len(flat) > 1):
                    half = 0
                elif half < 0 and flat in EVENING and (part is tail or len(flat) > 1):
                    half = 1
                elif part is tail and (flat in OFFSETS_S or is_unknown(word)):
                    zone_s, letters = OFFSETS_S.get(flat), word
    if era:
        years = _ERAS[era.group(1)]
        hour, minute, second, fraction = fields
        whole = Shape(tuple(runs), 0, hour, minute, second, fraction, None, half, offset, zone_s, era=years)
        return whole if len(runs) == 3 and not month else None
    shape = _shape(runs, month, fields, half, offset, zone_s)
    if shape is None:
        return None
    if letters:
        shape = evolve(shape, letters=letters)
    return evolve(shape, is_of_weeks=True) if _OF_WEEKS.match(text) else shape


def _byte_positions(text: str) -> list[int]:
    positions = [0]
    for char in text:
        positions.append(positions[-1] + len(char.encode("utf-8")))
    return positions


def _shape(
    runs: list[Span], month: int, fields: tuple[Span | None, ...], half: int,
    offset: tuple[int, Span, Span | None] | None, zone_s: int | None,
) -> Shape | None:  # fmt: skip
    hour, minute, second, fraction = fields
    widths = [b - a for a, b in runs]
    if hour is None and (widths in ([8], [8, 6], [8, 4]) or widths[:1] in ([12], [14])):
        return _digits_only(runs, widths, half, offset, zone_s)
    if hour is not None and widths == [8]:
        a = runs[0][0]
        runs = [(a, a + 4), (a + 4, a + 6), (a + 6, a + 8)]
        widths = [4, 2, 2]
    if not month and widths == [4, 3]:
        return Shape(tuple(runs), 0, hour, minute, second, fraction, None, half, offset, zone_s)
    if hour is None and not month and len(runs) != 3:
        return None
    if month and len(runs) == 3 and hour is not None:  # not a month but a weekday that is written like one
        month = 0
    if month and len(runs) >= 2:
        return Shape(tuple(runs[:2]), month, hour, minute, second, fraction, None, half, offset, zone_s)
    if len(runs) == 3 and all(w in (1, 2, 4) for w in widths) and widths.count(4) <= 1:
        return Shape(tuple(runs), 0, hour, minute, second, fraction, None, half, offset, zone_s)
    if len(runs) == 1 and hour is not None:  # "3 days, 4:05:06" or "3.04:05:06"
        return Shape((), 0, hour, minute, second, fraction, runs[0], half, offset, zone_s, is_duration=True)
    if not runs and hour is not None:
        return Shape((), 0, hour, minute, second, fraction, None, half, offset, zone_s)
    return None


def _digits_only(
    runs: list[Span], widths: list[int], half: int,
    offset: tuple[int, Span, Span | None] | None, zone_s: int | None,
) -> Shape:  # fmt: skip
    """Stamps such as 20250623, 20250623T093600, 202506230936 and 20250623093600."""
    a = runs[0][0]
    date = ((a, a + 4), (a + 4, a + 6), (a + 6, a + 8))
    if widths == [8]:
        return Shape(date)
    b = runs[1][0] if widths[0] == 8 else a + 8
    has_seconds = widths[0] == 14 or widths == [8, 6]
    second = (b + 4, b + 6) if has_seconds else None
    return Shape(date, 0, (b, b + 2), (b + 2, b + 4), second, half=half, offset=offset, zone_s=zone_s)


def digits(matrix: U8, span: Span | None) -> I64:
    """The whole number written in `span` of every row; zeros where there is no span."""
    if span is None:
        return np.zeros(matrix.shape[0], dtype=np.int64)
    value: NDArray[np.signedinteger] = np.zeros(
        matrix.shape[0], dtype=np.int32 if span[1] - span[0] < 10 else np.int64
    )
    for i in range(*span):
        value = value * 10 + (matrix[:, i] - np.uint8(48))
    return value.astype(np.int64)


def seconds_of_day(group: Group, shape: Shape) -> F64:
    """Clock time of every row in seconds; NaN where minutes, seconds or a dated hour do not exist. [s]"""
    hour = digits(group.matrix, shape.hour)
    minute, second = digits(group.matrix, shape.minute), digits(group.matrix, shape.second)
    if shape.half >= 0:
        hour = hour % 12 + 12 * shape.half
    total = (hour * 3600 + minute * 60 + second).astype(np.float64)
    if shape.fraction is not None:
        total += digits(group.matrix, shape.fraction) / 10.0 ** (shape.fraction[1] - shape.fraction[0])
    if shape.day_count is not None:
        total += digits(group.matrix, shape.day_count) * 86400.0
    wrong = np.zeros(total.shape, dtype=bool)
    if not shape.is_duration:
        wrong = (minute > 59) | (second > 59)
    if (
        shape.date
    ):  # midnight at the end of a day may be written as 24:00:00 (ISO 8601:2004, 4.2.3, from memory)
        wrong |= (hour > 23) & ((hour != 24) | (minute > 0) | (second > 0))
    if wrong.any():
        total[wrong] = np.nan
    return total


def offset_seconds(group: Group, shape: Shape) -> F64 | None:
    """Offset from UTC of every row, None where none is written. [s]"""
    if shape.offset is not None:
        sign, hours, minutes = shape.offset
        return sign * (digits(group.matrix, hours) * 3600.0 + digits(group.matrix, minutes) * 60.0)
    if shape.zone_s is not None:
        return np.full(group.rows.shape, float(shape.zone_s))
    return None


def of_century(year: I64) -> I64:
    """Years written with two digits as years from 1970 to 2069."""
    return np.where(year < 70, year + 2000, year + 1900)


def midnight(year: I64, month: I64, day: I64) -> F64:
    """Seconds from 1970-01-01 to midnight of a date; NaN where there is no such date. [s]"""
    good = (month >= 1) & (month <= 12) & (day >= 1) & (day <= 31) & (year >= 1) & (year <= 9999)
    safe_year, safe_month = np.where(good, year, 1970), np.where(good, month, 1)
    months = (safe_year - 1970) * 12 + safe_month - 1
    days = months.astype("M8[M]").astype("M8[D]").astype(np.int64) + np.where(good, day, 1) - 1
    next_month = (months + 1).astype("M8[M]").astype("M8[D]").astype(np.int64)
    good &= days < next_month
    return np.where(good, days * 86400.0, np.nan)


def midnight_of_day(year: I64, day: I64) -> F64:
    """Seconds from 1970-01-01 to midnight of a day of a year, from 1; NaN where there is no such day. [s]"""
    one = np.ones_like(year)
    first, next_first = midnight(year, one, one), midnight(year + 1, one, one)
    at = first + (day - 1) * 86400.0
    return np.where((day >= 1) & (at < next_first), at, np.nan)


def midnight_of_week(year: I64, week: I64, day: I64) -> F64:
    """Seconds from 1970-01-01 to midnight of a weekday, Monday 1, of a week; NaN where there is none. [s]

    The first week of a year is the one with 4 January in it (ISO 8601).
    """
    one = np.ones_like(year)
    fourth = midnight(year, one, 4 * one)
    monday = fourth - (np.floor(fourth / 86400.0) + 3) % 7 * 86400.0  # 1970-01-01 was a Thursday
    good = (week >= 1) & (week <= 53) & (day >= 1) & (day <= 7)
    return np.where(good, monday + ((week - 1) * 7 + day - 1) * 86400.0, np.nan)
