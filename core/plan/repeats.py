"""How many repeats the planned test needs: for two machines, for all of them, and what the meters allow.

Rules. The runs there are count with the runs that the plan adds. A machine's share of runs on each meter is
that of both together, so that a plan whose meters go round takes their gains out of the ratio as far as it
really does. A machine that was not repeated is taken to scatter like the others; where nothing was repeated,
and nobody states a spread, one is assumed and said to be.
"""

import itertools
import math
from collections.abc import Sequence

from attrs import evolve, frozen

from core.plan.known import UNNAMED, Known, Meters, known_machines, meters_left_open
from core.plan.order import meters_of, order_of
from core.plan.power import (
    Spread,
    fewest,
    floor,
    power,
    runs_for_any,
    smallest_shown,
    spread_interval,
)
from core.results.values import Comparison
from core.stats import POWER
from core.study import Study

#: taken where no run has been repeated and nobody states a spread: a guess, no source
ASSUMED_SPREAD = 0.02
#: the chart goes to so many runs at least, and at most
FEWEST_SHOWN, MOST_SHOWN = 8, 30
#: more runs than this nobody makes
MANY_RUNS = 100


@frozen
class PairRepeats:
    """Two machines: what so many runs of each would show.

    Parameters
    ----------
    first, other : Known
    runs : tuple of int
        Of each machine, in all.
    alone, among_all : tuple of float
        The smallest difference that is shown four times in five, as a share: were these two all there are,
        and among all machines of the plan.
    low, high : tuple of float
        `among_all`, were the spreads at either end of their 95 % interval; empty where they were not
        measured.
    now : float or None
        What the runs there are show among all; None with fewer than two of either.
    planned : float or None
        The same with the runs of the plan made, too.
    more : int or None
        Runs of each beside those there are that show the difference looked for among all; None where no
        number of runs would, or more than anybody makes.
    floor, floor_apart, floor_together : float
        What is not shown among all however many runs are made: by the meters as planned, with a meter for
        each machine, and with one for both.
    """

    first: Known
    other: Known
    runs: tuple[int, ...]
    alone: tuple[float, ...]
    among_all: tuple[float, ...]
    low: tuple[float, ...]
    high: tuple[float, ...]
    now: float | None
    planned: float | None
    more: int | None
    floor: float
    floor_apart: float
    floor_together: float


@frozen
class Repeats:
    """How many repeats the plan needs.

    Parameters
    ----------
    machines : tuple of Known
    difference : float
        What is looked for, as a share.
    spread : float
        Relative standard deviation between runs: pooled over the machines, stated, or assumed.
    spread_df : int
        Degrees of freedom of the pooled one; 0 where it was not measured.
    is_stated : bool
        By the user.
    pair : PairRepeats or None
        None with fewer than two machines.
    for_any : int or None
        Runs of each that show that not all machines are alike, two of them being apart by the difference and
        the others half-way; None with two machines, or where it would take too many.
    """

    machines: tuple[Known, ...]
    difference: float
    spread: float
    spread_df: int
    is_stated: bool
    pair: PairRepeats | None
    for_any: int | None

    @property
    def is_assumed(self) -> bool:
        """Whether nobody has measured or stated the spread."""
        return not self.is_stated and self.spread_df == 0


def repeats(study: Study, comparison: Comparison | None, pair_ids: tuple[str, str] | None = None) -> Repeats:
    """How many repeats the study's plan needs, from the runs that there are.

    Parameters
    ----------
    study : Study
    comparison : Comparison or None
        None where nothing has been measured.
    pair_ids : tuple of str, optional
        Machines that are looked at; else those that the runs so far come nearest to telling apart.
    """
    results = {m.machine_id: m for m in comparison.machines} if comparison is not None else {}
    machines = known_machines(study, results, order_of(study))
    measured, df = _pooled(machines)
    stated = study.plan.spread_percent
    spread = stated / 100 if stated is not None else measured if df else ASSUMED_SPREAD
    difference, count = study.plan.difference_percent / 100, len(machines)
    chosen = _chosen(machines, comparison, pair_ids)
    pair = None
    if chosen is not None:
        taken = (spread, spread) if stated is not None else _spreads(chosen, spread)
        look = _Look(*chosen, taken, count, meters_left_open(study))
        pair = look.pair(difference, 0 if stated is not None else _df(chosen) or df, study)
    # two machines apart and the others half-way between them (Cohen 1988, 8.2.1, pattern 1)
    effect = difference / spread / math.sqrt(2 * count) if spread > 0 and count else 0.0
    return Repeats(
        machines=machines,
        difference=difference,
        spread=spread,
        spread_df=0 if stated is not None else df,
        is_stated=stated is not None,
        pair=pair,
        for_any=runs_for_any(effect, count) if count > 2 else None,
    )


def _pooled(machines: Sequence[Known]) -> tuple[float, int]:
    """Relative spread over all machines that were repeated, and its degrees of freedom."""
    df = _df(machines)
    squares = math.fsum((m.runs - 1) * m.spread**2 for m in machines if m.spread is not None)
    return (math.sqrt(squares / df), df) if df else (0.0, 0)


def _df(machines: Sequence[Known]) -> int:
    return sum(m.runs - 1 for m in machines if m.spread is not None)


def _spreads(chosen: tuple[Known, Known], pooled: float) -> tuple[float, float]:
    """Each machine's own spread, or that of all where it has none."""
    first, other = (pooled if m.spread is None else m.spread for m in chosen)
    return first, other


def nearest_pair(machine_ids: Sequence[str], comparison: Comparison | None) -> tuple[str, str] | None:
    """Two of these machines: of those not told apart yet the pair that comes nearest to it.

    Where all were told apart it is the pair that was so least clearly, and where none was judged the first
    two.
    """
    judged = [
        p
        for p in (comparison.pairs if comparison is not None else ())
        if p.p is not None and {p.machine_id, p.other_id} <= set(machine_ids)
    ]
    hidden = [p for p in judged if not p.shown]
    if hidden:
        near = min(hidden, key=lambda p: (p.p or 0.0, -abs(p.ratio - 1)))
        return near.machine_id, near.other_id
    if judged:
        least = max(judged, key=lambda p: p.p or 0.0)
        return least.machine_id, least.other_id
    return (machine_ids[0], machine_ids[1]) if len(machine_ids) > 1 else None


def _chosen(
    machines: Sequence[Known], comparison: Comparison | None, pair_ids: tuple[str, str] | None
) -> tuple[Known, Known] | None:
    """The machines asked for, where they take part, or else the nearest pair."""
    by_id = {m.machine_id: m for m in machines}
    if pair_ids is None or not set(pair_ids) <= by_id.keys() or pair_ids[0] == pair_ids[1]:
        pair_ids = nearest_pair(tuple(by_id), comparison)
    return None if pair_ids is None else (by_id[pair_ids[0]], by_id[pair_ids[1]])


@frozen(eq=False)
class _Look:
    """Two machines with all that their power depends on."""

    first: Known
    other: Known
    spreads: tuple[float, float]
    machines: int
    meters: Meters

    def spread(self, runs: tuple[float, float], *, scale: float = 1.0, is_alone: bool = False) -> Spread:
        """Scatter and meters after so many runs of each."""
        shares = self.first.shares(runs[0]), self.other.shares(runs[1])
        shared = self.meters.shared_u(self.first, self.other, shares)
        return self._spread(shared, scale=scale, is_alone=is_alone)

    def _spread(self, shared: float, *, scale: float = 1.0, is_alone: bool = False) -> Spread:
        one, two = (scale * s for s in self.spreads)
        groups = 2 if is_alone else max(self.machines, 2)
        return Spread(one, two, shared, groups, groups * (groups - 1) // 2)

    def pair(self, difference: float, df: int, study: Study) -> PairRepeats:
        more = self._more(difference)
        so_far = self.first.runs, self.other.runs
        planned = so_far[0] + self.first.planned_runs, so_far[1] + self.other.planned_runs
        wished = MOST_SHOWN if more is None else max(*planned, max(so_far) + more) + 2
        runs = tuple(range(2, min(max(wished, FEWEST_SHOWN), MOST_SHOWN) + 1))
        ends = spread_interval(1.0, df) if df else ()
        bands = [
            tuple(smallest_shown(self.spread((n, n), scale=end), n, n) for n in runs) for end in ends
        ] or [(), ()]
        return PairRepeats(
            first=self.first,
            other=self.other,
            runs=runs,
            alone=tuple(smallest_shown(self.spread((n, n), is_alone=True), n, n) for n in runs),
            among_all=tuple(smallest_shown(self.spread((n, n)), n, n) for n in runs),
            low=bands[0],
            high=bands[1],
            now=self._shown_by(so_far),
            planned=self._shown_by(planned),
            more=more,
            floor=floor(self.spread((math.inf, math.inf))),
            floor_apart=self._floor_apart(study),
            floor_together=floor(self._spread(self._together(study))),
        )

    def _shown_by(self, runs: tuple[int, int]) -> float | None:
        return smallest_shown(self.spread(runs), *runs) if min(runs) >= 2 else None

    def _more(self, difference: float) -> int | None:
        first, other = self.first.runs, self.other.runs
        least = max(2 - first, 2 - other, 0)

        def is_enough(more: int) -> bool:
            runs = first + more, other + more
            return power(difference, self.spread(runs), *runs) >= POWER

        return fewest(is_enough, least, MANY_RUNS, least + 4)

    def _floor_apart(self, study: Study) -> float:
        """With a meter for each machine: the worst pair of those there are, or of one like that there is."""
        ids = [m.id for m in meters_of(study)] or [UNNAMED.id]
        if len(ids) > 1:
            pairs = itertools.permutations(ids, 2)
            worst = max(self.meters.shared_u(self.first, self.other, ({a: 1.0}, {b: 1.0})) for a, b in pairs)
            return floor(self._spread(worst))
        twin = evolve(
            self.meters,
            gains={
                **self.meters.gains,
                "twin": tuple((f"twin {k}", u) for k, u in self.meters.gains[ids[0]]),
            },
            offsets_w={**self.meters.offsets_w, "twin": self.meters.offsets_w[ids[0]]},
        )
        return floor(self._spread(twin.shared_u(self.first, self.other, ({ids[0]: 1.0}, {"twin": 1.0}))))

    def _together(self, study: Study) -> float:
        ids = [m.id for m in meters_of(study)] or [UNNAMED.id]
        return max(self.meters.shared_u(self.first, self.other, ({a: 1.0}, {a: 1.0})) for a in ids)
