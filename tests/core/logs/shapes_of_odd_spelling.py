"""Cases: rows as programs show or protect them: formulas, frames, arrows, brackets, names of rows, digits."""

from collections.abc import Callable, Iterator
from datetime import timedelta

from tests.core.logs.corpus import START, Case, Machine, Writer, load, table

Cell = Callable[[int], str]
TRUTH = load()
W, C = Writer(TRUTH), Writer(TRUTH, decimal=",")
ROWS = range(TRUTH.time_s.size)
ONE = (Machine(TRUTH),)
_HEAD = ("time", "power [W]", "energy [kWh]")


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _formulas()
    yield from _rare_signs()
    yield from _row_names()
    yield from _printed()
    yield from _digits()


def _of(cells: tuple[Cell, ...], delimiter: str, head: tuple[str, ...] = _HEAD) -> bytes:
    return table(TRUTH, head, cells, delimiter).encode()


def _formulas() -> Iterator[Case]:
    def each(form: str, *cells: Cell) -> tuple[Cell, ...]:
        return tuple(lambda i, c=c: form.format(c(i)) for c in cells)  # type: ignore[misc]

    own = each('="{}"', C.time, C.watts, C.kwh)
    yield Case("cells written as formulas", _of(own, ";"), ONE)
    doubled = each('"=""{}"""', W.time, W.watts, W.kwh)
    yield Case("cells written as formulas, quoted", _of(doubled, ","), ONE)
    first = (*each('="{}"', W.time), W.watts, W.kwh)
    yield Case("only the time written as a formula", _of(first, ","), ONE)


def _rare_signs() -> Iterator[Case]:
    for name, sign in {"^": "^", "~": "~", "0x1F": "\x1f", "0x01": "\x01", "¦": "¦"}.items():
        yield Case(f"cells parted by {name}", _of((W.time, W.watts, W.kwh), sign), ONE)
    named = "sep=^\n" + table(TRUTH, _HEAD, (W.time, C.watts, C.kwh), "^")
    yield Case("a line that names the sign between cells", named.encode(), ONE)


def _row_names() -> Iterator[Case]:
    head = ("time", "power_w", "energy_kwh")

    def quoted(cell: Cell) -> Cell:
        return lambda i: f'"{cell(i)}"'

    names = tuple(f'"{n}"' for n in head)
    counted = quoted(lambda i: str(i + 1))
    for sign, w in ((",", W), (";", C), (" ", W), ("\t", W)):
        cells = (counted, quoted(w.time), w.watts, w.kwh)
        yield Case(f"names of rows without a heading, {sign!r}", _of(cells, sign, names), ONE)
    words = (lambda i: f"a{i + 1}", W.time, W.watts, W.kwh)
    yield Case("words as names of rows without a heading", _of(words, ",", head), ONE)
    last = (W.time, W.watts, W.kwh, lambda i: "21.5")
    yield Case("a last column with values and no heading", _of(last, ",", head), ONE)


def _printed() -> Iterator[Case]:
    head, above = (
        "│ time                ┆ power_w ┆ energy_kwh │\n",
        "┌─────────────────────┬─────────┬────────────┐\n",
    )
    types = "│ ---                 ┆ ---     ┆ ---        │\n│ str                 ┆ f64     ┆ f64        │\n"
    below = "╞═════════════════════╪═════════╪════════════╡\n"
    rows = "".join(f"│ {W.time(i)} ┆ {W.watts(i):>7} ┆ {W.kwh(i):>10} │\n" for i in ROWS)
    end = "└─────────────────────┴─────────┴────────────┘\n"
    framed = above + head + types + below + rows + end
    yield Case("a table in a frame", framed.encode(), ONE, file="log.txt")
    kinds = "│      varchar        │ double  │   double   │\n"
    head, rows = head.replace("┆", "│"), rows.replace("┆", "│")
    framed = above + head + kinds + below + rows + end
    yield Case("a table in a frame, of whole lines", framed.encode(), ONE, file="log.txt")

    def line(i: int, form: str) -> str:
        return form.format(t=W.time(i), w=W.watts(i), k=W.kwh(i), wh=W.wh(i))

    pairs = "".join(line(i, "('{t}', {w}, {k})\n") for i in ROWS)
    yield Case("rows in round brackets", pairs.encode(), ONE, file="log.txt")
    lists = "".join(line(i, "['{t}', {w}, {k}]\n") for i in ROWS)
    yield Case("rows in square brackets", lists.encode(), ONE, file="log.txt")

    def moment(i: int) -> str:
        at = START + timedelta(seconds=float(TRUTH.time_s[i]))
        fields = f"2025, 6, {at.day}, {at.hour}, {at.minute}, {at.second}"
        return f"(datetime.datetime({fields}), {W.watts(i)}, {W.wh(i)})\n"

    yield Case(
        "moments by their fields in brackets", "".join(map(moment, ROWS)).encode(), ONE, file="log.txt"
    )
    day = START.strftime("%Y-%m-%d")
    shown = {"commas": "{w},{wh}", "tabs": "{w}\t{wh}", "spaces": "{w} {wh}"}
    for name, form in shown.items():
        monitor = "".join(line(i, "{t}.000 -> " + form + "\n") for i in ROWS)
        yield Case(f"an arrow behind the time, {name}", monitor.encode(), ONE, file="log.txt")
    clocks = "".join(line(i, "{t}.000 -> {w}\n").removeprefix(day + " ") for i in ROWS)
    alone = (Machine(TRUTH, has_counter=False),)
    yield Case("an arrow behind the clock alone", clocks.encode(), alone, "relative", None, file="log.txt")


def _digits() -> Iterator[Case]:
    signs = {
        "Arabic": ("٠١٢٣٤٥٦٧٨٩٫", ("الوقت", "القدرة (W)", "الطاقة (kWh)"), ";"),
        "Persian": ("۰۱۲۳۴۵۶۷۸۹٫", _HEAD, ","),
        "Devanagari": ("०१२३४५६७८९.", _HEAD, ","),
        "Thai": ("๐๑๒๓๔๕๖๗๘๙.", _HEAD, ","),
    }
    for name, (digits, head, delimiter) in signs.items():
        own = str.maketrans("0123456789.", digits)
        cells = tuple(lambda i, c=c, own=own: c(i).translate(own) for c in (W.time, W.watts, W.kwh))  # type: ignore[misc]
        yield Case(f"{name} digits", _of(cells, delimiter, head), ONE)
    mark = "\u200e"

    def marked(i: int) -> str:
        at = START + timedelta(seconds=float(TRUTH.time_s[i]))
        return f"{mark}{at.month}{mark}/{mark}{at.day}{mark}/{mark}{at.year}{mark} {at:%H:%M:%S}"

    yield Case("marks of direction within dates", _of((marked, W.watts, W.kwh), ","), ONE)
