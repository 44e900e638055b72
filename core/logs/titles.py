"""Headings under names: a line above them says whose columns they are, each name once over several.

Rules: names are put before headings only where headings alone do not tell the columns apart; logs that stand
side by side, each with its own time, are told apart elsewhere.
"""

from collections import Counter
from collections.abc import Sequence

from core.logs.cell_kinds import cell_kind
from core.logs.words import meaning, unit_of

_LOADS = frozenset({"power", "energy", "apparent power"})
_TIMES = frozenset({"time", "date", "clock time", "elapsed"})


def under_titles(names: Sequence[str], above: Sequence[str]) -> list[str]:
    """Headings with the names that stand over them, or numbered where nothing tells them apart.

    Parameters
    ----------
    names : sequence of str
        Headings, ``"column 2"`` where there is none.
    above : sequence of str
        Cells of the line above; empty where there is none.

    Examples
    --------
    >>> under_titles(["time", "W", "kWh", "W", "kWh"], ["", "Alder", "", "Birch", ""])
    ['time', 'Alder W', 'Alder kWh', 'Birch W', 'Birch kWh']
    >>> under_titles(["time", "power W", "power W"], [])
    ['time', '1 power W', '2 power W']
    """
    counted = Counter(names)
    twice = {n for n, count in counted.items() if count > 1}
    if not twice or any(meaning(n).quantity in _TIMES for n in twice):
        return list(names)
    filled = _filled([c.strip().strip('"').strip() for c in above], len(names))
    said = [
        f"{over} {name}" if over and name in twice else name for over, name in zip(filled, names, strict=True)
    ]
    if len(set(said)) == len(said) and any(meaning(s).quantity in _LOADS for s in said):
        # a name over the empty heading of the time
        return [
            over if over and n.startswith("column ") else s
            for n, s, over in zip(names, said, filled, strict=True)
        ]
    return _numbered(names, {n for n in twice if meaning(n).quantity in _LOADS})


def _filled(cells: list[str], width: int) -> list[str]:
    """Cells of a line in which an empty one goes with the one before it; all empty where it is no names."""
    if len(cells) > width or sum(map(bool, cells)) < 2 or any(c and _is_no_name(c) for c in cells):
        return [""] * width
    out: list[str] = []
    for i in range(width):
        cell = cells[i] if i < len(cells) else ""
        out.append(cell or (out[-1] if out else ""))
    return out


def _is_no_name(cell: str) -> bool:
    return cell_kind(cell) != "text" or bool(unit_of(cell.strip(" []()"))[1])


def _numbered(names: Sequence[str], twice: set[str]) -> list[str]:
    seen: Counter[str] = Counter()
    out = []
    for name in names:
        seen[name] += 1
        out.append(f"{seen[name]} {name}" if name in twice else name)
    return out
