"""Values within values (JSON) made into flat rows: lists of sensors or devices, columns, keyed times.

Rules: a row is opened up only where the load stands further inside; what stands outside is then said of every
row inside. Nothing here decides for good what a column means: headings are only asked whether they tell of a
load.
"""

from collections.abc import Iterator, Mapping
from itertools import pairwise
from typing import Any

from attrs import frozen

from core.logs.cell_kinds import cell_kind
from core.logs.words import meaning

Row = dict[str, Any]

#: levels of nesting that a log may have
_DEEPEST = 4
#: keys of an object that are looked at, and fewer than this are no times
_KEYS, _FEWEST_KEYS = 200, 8
_LOADS = frozenset({"power", "energy", "apparent power"})
#: more rows inside than this for each row outside are a log, whatever they are called
_MANY = 2


def rows_of(value: Any, depth: int = 0) -> list[Row]:
    """The rows inside a value, empty when there are none.

    Parameters
    ----------
    value : object
        As the json module reads it.
    depth : int
        Levels it stands below the whole.
    """
    if depth > _DEEPEST:
        return []
    if isinstance(value, list):
        return _of_list(value, depth)
    if isinstance(value, dict):
        return _by_columns(value) or _by_times(value) or _by_names(value, depth) or _longest(value, depth)
    return []


def opened(row: Mapping[str, Any], depth: int = 0) -> list[Row]:
    """A row, or the rows inside it when only those tell of a load."""
    whole = flat(row)
    groups = list(_groups(row, depth)) if depth <= _DEEPEST else []
    inside = tuple(prefix for group in groups for prefix in group.prefixes)
    outer = {k: v for k, v in whole.items() if not k.startswith(inside)} if inside else whole
    if not groups or any(_is_number(v) and is_load(k) for k, v in outer.items()):
        return [whole]
    inner = [_merged(outer, group.name, r) for group in groups for r in group.rows]
    if len(inner) > _MANY or any(map(tells_load, inner)):
        return inner
    return [whole]


def flat(value: Mapping[str, Any], prefix: str = "", depth: int = 0) -> Row:
    """An object with its inner objects as keys named ``outer.inner``; lists are left out."""
    out: Row = {}
    for key, inner in value.items():
        if isinstance(inner, dict) and depth < _DEEPEST:
            out.update(flat(inner, f"{prefix}{key}.", depth + 1))
        elif not isinstance(inner, list | dict):
            out[f"{prefix}{key}"] = inner
    return out


def can_be_opened(row: Mapping[str, Any]) -> bool:
    """Whether a row has anything inside that it could be opened up to."""
    return any(True for _ in _groups(row, 0))


@frozen
class _Group:
    """Rows inside a row; `prefixes` are those of the flat keys that they are made of."""

    name: str
    rows: list[Row]
    prefixes: tuple[str, ...] = ()


def _groups(row: Mapping[str, Any], depth: int, prefix: str = "") -> Iterator[_Group]:
    """Everything inside a row that holds several rows."""
    named = {k: v for k, v in row.items() if isinstance(v, dict) and v}
    if _are_alike(named):
        yield _Group("item", _named(named, depth), tuple(f"{prefix}{k}." for k in named))
    else:
        for key, value in named.items():
            if _are_alike(value):
                yield _Group(key, _named(value, depth), (f"{prefix}{key}.",))
            elif depth < _DEEPEST:
                yield from _groups(value, depth + 1, f"{prefix}{key}.")
    for key, value in row.items():
        if isinstance(value, list) and value and isinstance(value[0], dict | list):
            yield _Group(key, _of_list(value, depth + 1))
    lists = {k: v for k, v in row.items() if isinstance(v, list) and len(v) > 1}
    words = [k for k, v in lists.items() if all(isinstance(x, str) for x in v)]
    counts = [k for k, v in lists.items() if all(_is_number(x) for x in v)]
    if words and counts and len({len(lists[k]) for k in (*words, *counts)}) == 1:
        side = {k: lists[k] for k in words} | {"value" if len(counts) == 1 else k: lists[k] for k in counts}
        cells = zip(*side.values(), strict=True)
        yield _Group("item", [dict(zip(side, c, strict=True)) for c in cells])


def _are_alike(values: Mapping[str, Any]) -> bool:
    """Whether objects say the same of several things: of quantities that have a value each, or of devices."""
    inner = [v for v in values.values() if isinstance(v, dict)]
    if len(inner) < 2 or len(inner) < len(values) or len({frozenset(v) for v in inner}) > 1:
        return False
    return any(meaning(str(k)).quantity == "value" for k in inner[0]) or not any(map(is_load, values))


def _named(values: Mapping[str, Mapping[str, Any]], depth: int) -> list[Row]:
    """Rows of objects that are told apart by their keys."""
    return [_with_name(key, row) for key, value in values.items() for row in opened(value, depth + 1)]


def _with_name(name: str, row: Row) -> Row:
    return {("item" if "name" in row else "name"): name, **row}


def _merged(outer: Mapping[str, Any], name: str, row: Row) -> Row:
    """An inner row with what stands outside; a key that stands in both gets the name of the group."""
    return {**outer, **{f"{name}.{k}" if k in outer else k: v for k, v in row.items()}}


def tells_load(row: Mapping[str, Any]) -> bool:
    """Whether a row holds a power or an energy, told by a key or by the name of what it holds."""
    return any(is_load(k) if _is_number(v) else isinstance(v, str) and is_load(v) for k, v in row.items())


def is_load(name: str) -> bool:
    """Whether a key tells of a power or an energy."""
    return len(name) < _KEYS and meaning(name).quantity in _LOADS


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float)


def _of_list(value: list[Any], depth: int) -> list[Row]:
    if depth > _DEEPEST:
        return []
    objects = [v for v in value if isinstance(v, dict)]
    if len(objects) > 0.5 * len(value):
        return [row for v in objects for row in opened(v, depth)]
    lists = [v for v in value if isinstance(v, list)]
    if lists and len(lists) == len(value):
        if all(v and isinstance(v[0], dict) for v in lists):
            return [row for v in lists for row in _with_first(_of_list(v, depth + 1))]
        width = max(len(v) for v in lists)
        head = lists[0] if all(isinstance(c, str) for c in lists[0]) else None
        names = [str(c) for c in head] if head else [f"column {i + 1}" for i in range(width)]
        return [dict(zip(names, v, strict=False)) for v in lists[1 if head else 0 :]]
    return []


def _with_first(rows: list[Row]) -> list[Row]:
    """Rows with the words of the first that the others leave out, as those of one sensor do."""
    if len(rows) < _FEWEST_KEYS:
        return rows
    words = {k: v for k, v in rows[0].items() if isinstance(v, str) and cell_kind(v) == "text"}
    said = {k: v for k, v in words.items() if sum(k in row for row in rows) < 0.5 * len(rows)}
    return [{**said, **row} for row in rows] if said else rows


def _by_columns(value: Mapping[str, Any]) -> list[Row]:
    """An object that holds columns as lists of one length, or as objects with the same row numbers."""
    columns = {
        k: v for k, v in value.items() if isinstance(v, list) and v and not isinstance(v[0], dict | list)
    }
    numbered = [v for v in value.values() if isinstance(v, dict)]
    if not columns and len(numbered) == len(value) > 1 and all(map(_is_numbered, numbered)):
        columns = {k: list(v.values()) for k, v in value.items()}
    if len(columns) < 2 or len({len(v) for v in columns.values()}) > 1:
        return []
    return [dict(zip(columns, row, strict=True)) for row in zip(*columns.values(), strict=True)]


def _is_numbered(values: Mapping[str, Any]) -> bool:
    """Whether an object holds plain values under 0, 1, 2 and so on."""
    return len(values) > 1 and all(
        k == str(i) and not isinstance(v, dict | list) for i, (k, v) in enumerate(values.items())
    )


def _by_times(value: Mapping[str, Any]) -> list[Row]:
    """An object whose keys are times, as rows; empty when they are none."""
    kinds = {cell_kind(k) for k in list(value)[:_KEYS]}
    if len(value) < _FEWEST_KEYS or not (kinds == {"stamp"} or (kinds == {"number"} and _rise(value))):
        return []
    return [{"time": k, **(flat(v) if isinstance(v, dict) else {"value": v})} for k, v in value.items()]


def _rise(value: Mapping[str, Any]) -> bool:
    keys = [float(k) for k in list(value)[:_KEYS] if k.replace(".", "", 1).isdigit()]
    return len(keys) > 2 and all(b > a for a, b in pairwise(keys))


def _by_names(value: Mapping[str, Any], depth: int) -> list[Row]:
    """An object that holds a log for each of several names."""
    inside = {k: rows_of(v, depth + 1) for k, v in value.items() if isinstance(v, dict | list)}
    inside = {k: rows for k, rows in inside.items() if len(rows) > 1}
    if len(inside) < 2 or len({frozenset(rows[0]) for rows in inside.values()}) > 1:
        return []
    return [_with_name(key, row) for key, rows in inside.items() for row in rows]


def _longest(value: Mapping[str, Any], depth: int) -> list[Row]:
    """The rows of the longest list inside an object."""
    for v in sorted(value.values(), key=lambda v: -len(v) if isinstance(v, list) else 0):
        found = rows_of(v, depth + 1) if isinstance(v, list | dict) else []
        if found:
            return found
    return []
