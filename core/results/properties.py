"""One measure of the machines against one of their properties: who has both, their order, their groups.

Rules: a machine counts with the mean of its runs, so that one with many runs weighs no more than another. No
link is claimed of fewer than `FEWEST` machines, nor of any number by itself: machines differ in more than one
thing. What has no value, or no property, is left out and named.
"""

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from attrs import evolve, frozen

from core.beds.quantities import HELD_W, W_PER_DM2
from core.language import mark
from core.properties.rank_correlation import GroupDifference, RankCorrelation, group_difference, spearman
from core.properties.table import Column, Value, columns_of, value_of, written
from core.quantities import QUANTITIES, Quantity
from core.results.like_for_like import Given, like_for_like
from core.results.values import Measured
from core.stats import ALPHA, t_interval

#: of fewer machines nothing is claimed
FEWEST: Final = 4
LIKE_WH: Final = Quantity("like_wh", mark("Like-for-like energy"), "Wh", decimals=1, higher_is_better=False)
#: away from the Bed page its measures say whose watts they are
BED_W: Final = evolve(HELD_W, name=mark("Watts of the held bed"))
BED_W_PER_DM2: Final = evolve(W_PER_DM2, name=mark("Bed watts per area"))
#: what can be held against a property, in the order in which it is offered
MEASURES: Final[tuple[Quantity, ...]] = (*QUANTITIES, LIKE_WH, BED_W, BED_W_PER_DM2)


@frozen
class Point:
    """One machine that has both. ``run_id`` is the first of its runs that count.

    ``measured`` is in the core's own unit, as its quantity says.
    """

    machine_id: str
    name: str
    slot: int
    run_id: str
    value: Value
    measured: Measured


@frozen
class Group:
    """Machines with one word, or with yes or no, and the mean of their values.

    ``u95`` is the half-width of its 95 % interval by the spread between the machines; None for one alone.
    """

    title: str
    points: tuple[Point, ...]
    mean: float
    u95: float | None


@frozen
class Against:
    """A measure against a property.

    Parameters
    ----------
    quantity : Quantity
    column : Column
    points : tuple of Point
        In the order of the machines.
    rank : RankCorrelation or None
        Of numbers; None with fewer than three machines, or where all have one value.
    groups : tuple of Group
        Of words, yes and no, the lowest mean first; empty for numbers.
    contrast : GroupDifference or None
        Of two groups.
    no_property, no_value : tuple of str
        Names of the machines that are left out for want of the one or the other.
    """

    quantity: Quantity
    column: Column
    points: tuple[Point, ...]
    rank: RankCorrelation | None
    groups: tuple[Group, ...]
    contrast: GroupDifference | None
    no_property: tuple[str, ...]
    no_value: tuple[str, ...]

    @property
    def p(self) -> float | None:
        """Chance of as much or more were there no link; None where nothing can be said."""
        test = self.rank or self.contrast
        return None if test is None or len(self.points) < FEWEST else test.p

    @property
    def is_shown(self) -> bool:
        """Whether more than chance is shown, this one property taken alone."""
        return self.p is not None and self.p < ALPHA


@lru_cache(maxsize=32)  # each keeps the traces of its comparison alive
def against(from_: Given, quantity: Quantity, column: Column) -> Against:
    """Hold a measure of the machines against one of their properties.

    Parameters
    ----------
    from_ : Given
    quantity : Quantity
        One of `MEASURES`.
    column : Column

    Returns
    -------
    Against
    """
    points: list[Point] = []
    no_property: list[str] = []
    no_value: list[str] = []
    machines = {m.id: m for m in from_.study.machines}
    values = _values(from_, quantity)
    for result in from_.comparison.machines:
        machine = machines.get(result.machine_id)
        value = None if machine is None else value_of(machine, column.name)
        measured = values.get(result.machine_id)
        if value is None:
            no_property.append(result.name)
        elif measured is None:
            no_value.append(result.name)
        else:
            run_id = next((r.run_id for r in result.included), "")
            points.append(Point(result.machine_id, result.name, result.slot, run_id, value, measured))
    rank: RankCorrelation | None = None
    groups: tuple[Group, ...] = ()
    contrast: GroupDifference | None = None
    if column.kind == "number":
        numbers = [float(p.value) for p in points]
        rank = spearman(numbers, [p.measured.value for p in points])
    else:
        groups = _groups(points)
        if len(groups) == 2:
            contrast = group_difference(*([p.measured.value for p in g.points] for g in groups))
    return Against(
        quantity, column, tuple(points), rank, groups, contrast, tuple(no_property), tuple(no_value)
    )


def measures_known(from_: Given) -> tuple[Quantity, ...]:
    """The measures that at least one machine has a value of."""
    return tuple(q for q in MEASURES if _values(from_, q))


def fullest_column(from_: Given) -> Column:
    """The column with values of most machines, the first of several: what is shown where none is chosen."""
    columns = columns_of(from_.study)
    return max(columns, key=lambda c: sum(value_of(m, c.name) is not None for m in from_.study.machines))


def forget() -> None:
    """Let go of everything remembered."""
    against.cache_clear()


def _values(from_: Given, quantity: Quantity) -> dict[str, Measured]:
    """What the machines have of a measure, by their ids, in the core's own unit."""
    found: dict[str, Measured | None]
    if quantity == LIKE_WH:
        found = {m.machine_id: m.adjusted_wh for m in like_for_like(from_).machines}
    elif quantity == BED_W_PER_DM2:
        found = {m.machine_id: m.w_per_dm2 for m in from_.beds.machines}
    elif quantity == BED_W:
        held = ((m.machine_id, m.reference) for m in from_.beds.machines)
        found = {key: None if w is None else Measured(w.power_w, w.u95_w) for key, w in held}
    else:
        found = {m.machine_id: getattr(m, quantity.key) for m in from_.comparison.machines}
    known = ((key, value) for key, value in found.items() if value is not None)
    return dict(known)


def _groups(points: Sequence[Point]) -> tuple[Group, ...]:
    """Machines of one word together, whichever way it is written."""
    by_word: dict[str, list[Point]] = {}
    for point in points:
        by_word.setdefault(written(point.value).casefold(), []).append(point)
    groups = []
    for members in by_word.values():
        values = [p.measured.value for p in members]
        u95 = t_interval(values).half_width if len(values) > 1 else None
        title = written(members[0].value)
        groups.append(Group(title, tuple(members), math.fsum(values) / len(values), u95))
    return tuple(sorted(groups, key=lambda g: g.mean))
