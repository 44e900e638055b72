"""The order in which machines make the part, and on which meter each of them does.

Theory. A block holds every machine once, in an order of its own, so that whatever changes slowly (the room,
the mains, the time of day) meets all machines alike and what is left of it is chance [1]_. Meters go round:
within each cycle of as many blocks as there are meters a machine meets every meter once, so in the mean over
whole cycles the error of a meter's gain is the same for all machines and cancels in their ratio. Of several
chance orders the one is taken in which no machine comes early, or beside the same other machine, more often
than it must.

The generator is the Mersenne twister of Python's `random`, of which only ``random()`` is used: its sequence
for a whole-number seed is promised to be the same in every version and on every platform [2]_. Everything
above it is made here.

References
----------
.. [1] R. A. Fisher, *The Design of Experiments*, Oliver and Boyd, 1935, chapter 4 (from memory).
.. [2] Python documentation, module `random`, "Notes on Reproducibility".
"""

import itertools
from collections import Counter
from collections.abc import Iterable, Sequence
from functools import lru_cache
from random import Random
from typing import TypeVar

from attrs import frozen

from core.study import Machine, Meter, Study

#: so many orders of a block are tried, fewer with many machines: one of them is then as good as another
_TRIES, _PLACES = 60, 600
Item = TypeVar("Item")


@frozen
class Turn:
    """A run that is to be made.

    Parameters
    ----------
    number : int
        From 1, over the whole test.
    block : int
        From 1; runs beyond the blocks have the number after the last.
    round : int
        From 1, over the whole test: runs of one round are made at the same time.
    machine_id : str
    meter_id : str
        Empty where there is no meter yet.
    """

    number: int
    block: int
    round: int
    machine_id: str
    meter_id: str


def machines_of(study: Study) -> tuple[Machine, ...]:
    """The machines that take part in the plan."""
    chosen = study.plan.machine_ids
    return tuple(m for m in study.machines if chosen is None or m.id in chosen)


def meters_of(study: Study) -> tuple[Meter, ...]:
    """The meters that take part in the plan."""
    chosen = study.plan.meter_ids
    return tuple(m for m in study.meters if chosen is None or m.id in chosen)


def at_once_of(study: Study) -> int:
    """How many machines can work at the same time: no more than there are meters or machines."""
    return max(1, min(study.plan.at_once, len(machines_of(study)), len(meters_of(study))))


def order_of(study: Study) -> tuple[Turn, ...]:
    """The runs of the study's plan in the order in which they are to be made."""
    plan = study.plan
    machine_ids = tuple(m.id for m in machines_of(study))
    extra = tuple((e.machine_id, e.runs) for e in plan.extra if e.machine_id in machine_ids)
    meter_ids = tuple(m.id for m in meters_of(study))
    return order(machine_ids, meter_ids, plan.repeats, at_once_of(study), plan.seed, extra)


@lru_cache(maxsize=64)
def order(
    machine_ids: tuple[str, ...],
    meter_ids: tuple[str, ...],
    repeats: int,
    at_once: int,
    seed: int,
    extra: tuple[tuple[str, int], ...] = (),
) -> tuple[Turn, ...]:
    """Runs in shuffled blocks, each with its meter.

    Parameters
    ----------
    machine_ids, meter_ids : tuple of str
        With no meter the runs have none.
    repeats : int
        Blocks, at least 1. More of them leave the earlier ones as they were.
    at_once : int
        Runs of a round, from 1 to the number of meters.
    seed : int
    extra : tuple of (str, int)
        Runs of a machine beyond the blocks.

    Returns
    -------
    tuple of Turn

    Raises
    ------
    ValueError
        If more machines are to work at once than there are meters, or `repeats` is less than 1.
    """
    if repeats < 1 or not 1 <= at_once <= max(len(meter_ids), 1):
        raise ValueError("a plan has one block or more, and no more runs at once than meters")
    if not machine_ids:
        return ()
    maker = _Maker(machine_ids, meter_ids or ("",), at_once, Random(seed))
    for _ in range(repeats):
        maker.add_block()
    left = Counter(dict(extra))
    while left.total():
        again = tuple(m for m in machine_ids if left[m] > 0)
        maker.add_block(again, last_block=repeats + 1)
        left.subtract(again)
    return tuple(maker.turns)


class _Maker:
    """Adds one block after another, and remembers what has been so far."""

    def __init__(
        self, machine_ids: tuple[str, ...], meter_ids: tuple[str, ...], at_once: int, random: Random
    ) -> None:
        self.turns: list[Turn] = []
        self._machine_ids, self._meter_ids = machine_ids, meter_ids
        self._at_once, self._random = at_once, random
        self._blocks = 0
        self._rounds = 0
        self._places: dict[str, float] = dict.fromkeys(machine_ids, 0.0)
        self._beside: Counter[frozenset[str]] = Counter()
        self._offsets: dict[str, int] = {}
        self._cycle: list[str] = []

    def add_block(self, machine_ids: tuple[str, ...] | None = None, last_block: int | None = None) -> None:
        """Every machine once, or those that are named; a block of some has the number `last_block`."""
        wanted = self._machine_ids if machine_ids is None else machine_ids
        meter_of = self._meters(wanted)
        tries = max(1, min(_TRIES, _PLACES // len(self._machine_ids)))
        made = [self._rounds_of(wanted, meter_of) for _ in range(tries)]
        chosen = min(made, key=self._unevenness)
        self._blocks += 1
        for together in chosen:
            self._rounds += 1
            for machine_id in together:
                number = len(self.turns) + 1
                block = self._blocks if last_block is None else last_block
                self.turns.append(Turn(number, block, self._rounds, machine_id, meter_of[machine_id]))
        if machine_ids is None:
            self._remember(chosen)

    def _meters(self, wanted: Iterable[str]) -> dict[str, str]:
        """The meter of each machine in this block: each goes on to its next in a cycle, drawn anew."""
        step = self._blocks % len(self._meter_ids)
        if step == 0:
            shuffled = _shuffled(self._machine_ids, self._random)
            self._offsets = {machine_id: i for i, machine_id in enumerate(shuffled)}
            self._cycle = _shuffled(self._meter_ids, self._random)
        return {m: self._cycle[(self._offsets[m] + step) % len(self._cycle)] for m in wanted}

    def _rounds_of(self, wanted: Sequence[str], meter_of: dict[str, str]) -> list[list[str]]:
        """A chance order, cut into rounds in which no meter is wanted twice."""
        waiting: dict[str, list[str]] = {}
        for machine_id in _shuffled(wanted, self._random):
            waiting.setdefault(meter_of[machine_id], []).append(machine_id)
        rounds = []
        while waiting:
            # the longest queues first, so that there are no more rounds than there must be
            queues = sorted(_shuffled(tuple(waiting), self._random), key=lambda m: -len(waiting[m]))
            rounds.append([waiting[meter].pop() for meter in queues[: self._at_once]])
            waiting = {meter: queue for meter, queue in waiting.items() if queue}
        return _shuffled(rounds, self._random)

    def _unevenness(self, rounds: Sequence[Sequence[str]]) -> tuple[int, float]:
        """How often machines would meet again, and how unlike their mean places would be."""
        met = sum(self._beside[pair] ** 2 + 2 * self._beside[pair] + 1 for pair in _pairs(rounds))
        places = dict(self._places)
        for place, machine_id in _placed(rounds):
            places[machine_id] += place
        middle = sum(places.values()) / len(places)
        return met, round(sum((p - middle) ** 2 for p in places.values()), 9)

    def _remember(self, rounds: Sequence[Sequence[str]]) -> None:
        self._beside.update(_pairs(rounds))
        for place, machine_id in _placed(rounds):
            self._places[machine_id] += place


def _placed(rounds: Sequence[Sequence[str]]) -> Iterable[tuple[float, str]]:
    """Each machine with its place in the block, from -1 at its start to 1 at its end."""
    last = max(len(rounds) - 1, 1)
    return ((2 * at / last - 1, machine_id) for at, together in enumerate(rounds) for machine_id in together)


def _pairs(rounds: Sequence[Sequence[str]]) -> list[frozenset[str]]:
    return [frozenset(pair) for together in rounds for pair in itertools.combinations(together, 2)]


def _shuffled(items: Sequence[Item], random: Random) -> list[Item]:
    """The items in a chance order, each order as likely as any (Fisher and Yates).

    Not ``Random.shuffle``, whose way through the generator's numbers may change with the version of Python.
    """
    made = list(items)
    for last in range(len(made) - 1, 0, -1):
        other = int(random.random() * (last + 1))
        made[last], made[other] = made[other], made[last]
    return made


def meetings(turns: Iterable[Turn]) -> Counter[tuple[str, str]]:
    """How often each machine is measured with each meter, by (machine id, meter id)."""
    return Counter((turn.machine_id, turn.meter_id) for turn in turns)
