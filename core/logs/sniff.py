"""From the first lines of a text log: delimiter, decimal sign, headings, first row of values.

Rules: a choice is made by how many rows agree with it, and the figures are kept as its reason. What a
column *means* is not decided here.
"""

import csv
import re
from collections import Counter

from attrs import evolve, frozen

from core.language import later, mark
from core.logs.cell_kinds import CLOCKED, DATED, cell_kind
from core.logs.heading_rows import (
    beside_row_names,
    fit,
    heading_above,
    is_qualifying,
    is_units,
    is_values,
    over_several,
)
from core.logs.numbers import columns_of_other_sign, decimal_of
from core.logs.reading import CHOSEN
from core.logs.titles import under_titles
from core.study import Choices

#: delimiters in the order in which a tie is settled
DELIMITERS = ("\t", ";", "|", ",", " ")
NAMES = {
    "\t": mark("tab"),
    ";": mark("semicolon"),
    "|": mark("pipe"),
    ",": mark("comma"),
    " ": mark("spaces"),
}
SAMPLE_BYTES = 1 << 16
SAMPLE_LINES = 400
#: lines that each delimiter is tried on
_JUDGED = 200
#: a longer line is no row of a log
LONGEST_LINE = 1 << 20
#: lines at the top among which headings are looked for
_HEADINGS = 40
#: so many clock times in one row are hours of a day
_HOURS = 12

#: of the two decimal signs, the one that is not it
OTHER_SIGN = {",": ".", ".": ","}
NAMED = {",": mark("comma"), ".": mark("point")}
_SWAPPED_SIGNS = str.maketrans(",.", ".,")
_COMMENT = re.compile(r"^\s*(?:#|//|;|%|--|\*|!)")


@frozen
class Form:
    """How a text log is laid out.

    Parameters
    ----------
    delimiter : str
        One of `DELIMITERS`.
    decimal : {".", ","}
    header_line : int or None
        Index of the line of headings, from 0.
    first_line : int
        Index of the first line of values, from 0.
    names : tuple of str
        One heading a column; ``"column 2"`` where there is none.
    sample : tuple of tuple of str
        Rows of values, for deciding what columns mean.
    is_wrapped : bool
        Every line stands in quotes as a whole, as a spreadsheet leaves lines that it took for one cell.
    swapped : frozenset of int
        Columns whose decimal sign is not `decimal` but the other.
    shorter : frozenset of int
        Counts of cells with which a row is whole too: of logs side by side, the shorter ends first.
    preamble : tuple of str
        Lines before the headings.
    reasons : tuple of (choice, text)
    """

    delimiter: str
    decimal: str
    header_line: int | None
    first_line: int
    names: tuple[str, ...]
    sample: tuple[tuple[str, ...], ...]
    preamble: tuple[str, ...] = ()
    reasons: tuple[tuple[str, str], ...] = ()
    is_wrapped: bool = False
    swapped: frozenset[int] = frozenset()
    shorter: frozenset[int] = frozenset()

    def decimal_of(self, position: int) -> str:
        """Decimal sign of a column."""
        return OTHER_SIGN[self.decimal] if position in self.swapped else self.decimal


def split(line: str, delimiter: str) -> list[str]:
    """Cells of one line."""
    if delimiter == " " and ('"' not in line or line.count('"') % 2):
        return line.split()
    if '"' not in line:
        return [c.strip() for c in line.split(delimiter)]
    try:
        return [c.strip() for c in next(csv.reader([line], delimiter=delimiter, skipinitialspace=True))]
    except (csv.Error, StopIteration):
        return line.split(delimiter)


def sniff(lines: list[str], further: list[str], choices: Choices) -> Form | None:
    """Work out the form from the first lines and from lines further on.

    Parameters
    ----------
    lines : list of str
        The file's first lines, in order, without line ends.
    further : list of str
        Lines from the middle and the end; they vote but have no place in the order.
    choices : Choices

    Returns
    -------
    Form or None
        None when no delimiter gives rows of values.
    """
    is_wrapped = _are_wrapped(lines)
    if is_wrapped:
        lines, further = [unwrapped(x) for x in lines], [unwrapped(x) for x in further]
    lines = _with_whole_quotes(lines)
    tried = [choices.delimiter] if choices.delimiter else list(DELIMITERS)
    best: tuple[float, int, str, int, float] | None = None
    picked = [x for x in (*lines, *further) if x.strip()]
    if len(picked) > _JUDGED:
        picked = picked[: _JUDGED // 2] + picked[_JUDGED // 2 :: max(1, 2 * len(picked) // _JUDGED)]
    single = not any(sum(d in x for x in picked) > 0.4 * len(picked) for d in DELIMITERS)
    for order, delimiter in enumerate(tried):
        if not (single or choices.delimiter) and sum(delimiter in x for x in picked) < 0.4 * len(picked):
            continue
        width, share, typed, columns = _judge(picked, delimiter)
        score = share * typed * (1.0 if columns > 1 else 0.3)
        if best is None or score > best[0] + 0.02:
            best = (score, order, delimiter, width, share)
        if score > 0.98 and width > 1:
            break
    if best is None or best[0] <= 0.05:
        return None
    _, _, delimiter, width, share = best
    name = later(NAMES.get(delimiter, repr(delimiter)))
    reason = later(
        mark("{name}: {percent} % of rows have the same count of {width} cells"),
        name=name,
        percent=f"{100 * share:.4g}",
        width=width,
    )
    rows = [split(x, delimiter) for x in lines]
    first = _first_row(lines, rows, width)
    if first is None:
        return None
    if delimiter == " ":
        rows = _beside_stamps(rows, first, width)
    form = _with_headings(lines, rows, first, width, delimiter, choices)
    body = [r for r in rows[form.first_line : form.first_line + _JUDGED] if len(r) == width and is_values(r)]
    body += [r for r in (split(x, delimiter) for x in further[:_JUDGED]) if len(r) == width and is_values(r)]
    sign, yes, no = decimal_of(c for r in body for c in r)
    swapped: frozenset[int] = frozenset()
    if choices.decimal:
        sign, why = choices.decimal, CHOSEN
    elif yes or no:
        why = later(
            mark("{sign}: so in {count} of {most} sampled cells with a fraction"),
            sign=later(NAMED[sign]),
            count=yes,
            most=yes + no,
        )
        swapped = columns_of_other_sign([[r[i] for r in body] for i in range(width)], sign)
    else:
        why = later(mark("no cell has a fraction; a point is assumed"))
    if swapped:
        names = ", ".join(f"'{form.names[i]}'" for i in sorted(swapped))
        why = later(
            mark("{why}; but {sign} in {columns}, where every fraction has one"),
            why=why,
            sign=later(NAMED[OTHER_SIGN[sign]]),
            columns=names,
        )
    reasons = (
        ("delimiter", CHOSEN if choices.delimiter else reason),
        ("decimal", why),
        *form.reasons,
    )
    sample = tuple(tuple(r) for r in body)
    return evolve(form, decimal=sign, sample=sample, reasons=reasons, is_wrapped=is_wrapped, swapped=swapped)


def hours_above(form: Form) -> tuple[str, ...]:
    """Headings that are clock times, over a row a day and a column an hour; empty where they are none.

    What such a table holds is said nowhere in it, and its columns are no machines.
    """
    for cells in (form.names, *form.sample[:1]):
        if sum(bool(CLOCKED.match(c)) for c in cells) >= _HOURS:
            return tuple(cells)
    return ()


def as_decided(form: Form) -> list[list[str]]:
    """The sampled columns with one decimal sign in all of them."""
    columns = [[row[i] for row in form.sample] for i in range(len(form.names))]
    for i in form.swapped:
        columns[i] = [c.translate(_SWAPPED_SIGNS) for c in columns[i]]
    return columns


def _with_whole_quotes(lines: list[str]) -> list[str]:
    """Lines whose quotes are closed: headings in quotes may run over several, and then stand in the last."""
    out: list[str] = []
    begun: list[str] = []
    for i, line in enumerate(lines):
        if not begun and (line.count('"') % 2 == 0 or i >= _HEADINGS):
            out.append(line)
            continue
        begun.append(line)
        if (line.count('"') % 2 and len(begun) > 1) or len(begun) > _HEADINGS:
            is_closed = sum(x.count('"') for x in begun) % 2 == 0
            out += ["" for _ in begun[1:]] + [" ".join(begun)] if is_closed else begun
            begun = []
    return [*out, *begun]


def unwrapped(line: str) -> str:
    """A line without the quotes around the whole of it; quotes doubled inside become single."""
    bare = line.strip()
    if len(bare) > 1 and bare[0] == bare[-1] == '"':
        return bare[1:-1].replace('""', '"')
    return line


def _are_wrapped(lines: list[str]) -> bool:
    full = [x.strip() for x in lines if x.strip()]
    quoted = sum(len(x) > 1 and x[0] == x[-1] == '"' and '"' not in x[1:-1].replace('""', "") for x in full)
    parted = sum(any(d in x for d in DELIMITERS) for x in full)
    return len(full) > 2 and quoted > 0.9 * len(full) and parted > 0.9 * len(full)


def _judge(picked: list[str], delimiter: str) -> tuple[int, float, float, int]:
    """Most frequent width of rows, its share, share of typed cells in them, and count of cells."""
    counted: Counter[int] = Counter()
    typed_of: Counter[int] = Counter()
    cells_of: Counter[int] = Counter()
    for line in picked:
        cells = split(line, delimiter)
        counted[len(cells)] += 1
        kinds = [cell_kind(c) for c in cells]
        typed_of[len(cells)] += (
            sum(k in ("number", "stamp") for k in kinds) if not _COMMENT.match(line) else 0
        )
        cells_of[len(cells)] += sum(k != "empty" for k in kinds)
    if not counted:
        return 0, 0.0, 0.0, 0
    width = max(counted, key=lambda w: (counted[w] * (w > 1) * (typed_of[w] > 0), counted[w]))
    share = counted[width] / sum(counted.values())
    typed = typed_of[width] / max(1, cells_of[width])
    # in a long log half the cells are words: two typed cells a row say as much as all of them
    full = typed_of[width] / max(1, counted[width])
    return width, share, max(typed, min(0.8, full / 2.5)), width


def _first_row(lines: list[str], rows: list[list[str]], width: int) -> int | None:
    for i, row in enumerate(rows):
        if len(row) == width and not _COMMENT.match(lines[i]) and is_values(row):
            following = [r for r in rows[i + 1 : i + 8] if len(r) == width]
            if not following or sum(map(is_values, following)) >= len(following) / 2:
                return i
    return None


def _with_headings(
    lines: list[str], rows: list[list[str]], first: int, width: int, delimiter: str, choices: Choices
) -> Form:
    header: int | None = None
    units: list[str] | None = None
    said: list[str] = []
    if choices.header_row is not None:
        header = choices.header_row - 1 if choices.header_row > 0 else None
        first = max(first, (header or 0) + 1) if header is not None else first
    else:
        for i in range(first - 1, max(-1, first - 4), -1):
            row = fit(rows[i], width)
            if row is None or not any(c.strip() for c in row):
                continue
            if is_units(row) and units is None and heading_above(rows, i, width):
                units = row
                continue
            if is_qualifying(row) and heading_above(rows, i, width):
                said = [c.strip().strip('"') for c in row]
                continue
            header = i
            break
    names = [f"column {i + 1}" for i in range(width)]
    if header is not None and header < len(rows):
        found = fit(rows[header], width) or rows[header][:width]
        if 1 < len(rows[header]) == width - 1:
            found = beside_row_names(rows[header], [r for r in rows[first:] if len(r) == width])
        found = [c.strip().strip('"').strip() for c in found]
        if found and lines[header].lstrip().startswith("#"):
            found[0] = found[0].lstrip("# ")
        if units:
            found = over_several(found, units)
        for i, name in enumerate(found[:width]):
            unit = units[i].strip(" []()") if units else ""
            name = f"{name} {said[i]}".strip() if said else name
            names[i] = (f"{name} [{unit}]" if unit and unit != "-" else name) or names[i]
        names = under_titles(names, rows[header - 1] if header else [])
        why = f"line {header + 1} is the last line of words before the values" + (
            ", units below it" if units else ""
        )
        if choices.header_row is not None:
            why = CHOSEN
    else:
        why = (
            "the first line already holds values"
            if first == 0
            else "no line above the values has their count of cells"
        )
    preamble = tuple(x for x in lines[: header if header is not None else first] if x.strip())[:50]
    return Form(delimiter, ".", header, first, tuple(names), (), preamble, (("headings", why),))


def _beside_stamps(rows: list[list[str]], first: int, width: int) -> list[list[str]]:
    """Rows above the values with an empty cell where a date and its clock time have one heading for both."""
    cells = rows[first]
    parted = [i for i in range(1, width) if DATED.match(cells[i - 1]) and CLOCKED.match(cells[i])]
    if not parted:
        return rows
    at = parted[0]
    above = [r if len(r) != width - 1 or is_values(r) else [*r[:at], "", *r[at:]] for r in rows[:first]]
    return [*above, *rows[first:]]
