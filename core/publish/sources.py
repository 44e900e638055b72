"""What figures and tables are made of: the study's results, each worked out when it is first wanted.

Rules: a choice of machines is a choice of what is shown. Tests between machines stay those of all machines,
so that nobody makes a difference appear by showing fewer; sentences are made again of the machines shown,
and every picture says how many those are.
"""

from functools import cached_property

from attrs import evolve, frozen

from core.formatting import POINT, NumberLocale
from core.line_up.spans import SpanReading, read_span
from core.line_up.strands import Strand, strands
from core.report.pictures import Drawable
from core.results import answer, cost_answer
from core.results.cooler_beds import Savings, plan_of, savings
from core.results.cost_values import StandbyCost
from core.results.costs import standby_cost
from core.results.holds import Beds, beds
from core.results.like_for_like import LikeForLike, given, like_for_like
from core.results.loads import Loads, loads
from core.results.values import Comparison
from core.study import Study

#: so many runs are lined up unless a person chose them
MOST_LINED_UP = 120
#: further than any run reaches on either side of the end of its warm-up [s]
_FAR_S = 1e9
_STATES = (("warm-up", -_FAR_S, 0.0), ("processing", 0.0, _FAR_S))


@frozen(eq=False)
class Sources:
    """A study's results for the machines that are shown.

    Parameters
    ----------
    drawable : Drawable
        The whole study, with everything that was read and computed.
    year : int
        Calendar year whose hours and price bands are meant.
    locale : NumberLocale
    machine_ids : tuple of str
        The machines shown, in their order; empty for all. Ids that the study does not have are passed over.
    """

    drawable: Drawable
    year: int
    locale: NumberLocale = POINT
    machine_ids: tuple[str, ...] = ()

    @cached_property
    def shown_ids(self) -> tuple[str, ...]:
        """The machines shown, in the user's order or else that of the study."""
        known = tuple(machine.id for machine in self.drawable.study.machines)
        chosen = tuple(m for m in self.machine_ids if m in known)
        return chosen or known

    @property
    def is_chosen(self) -> bool:
        """Whether the user chose machines or their order."""
        return self.shown_ids != tuple(machine.id for machine in self.drawable.study.machines)

    @cached_property
    def study(self) -> Study:
        """The study with the machines shown only."""
        whole = self.drawable.study
        return evolve(whole, machines=tuple(whole.machine(m) for m in self.shown_ids))

    @cached_property
    def comparison(self) -> Comparison:
        """The comparison of the machines shown, least energy first."""
        whole = self.drawable.comparison
        machines = tuple(m for m in whole.machines if m.machine_id in self.shown_ids)
        if len(machines) == len(whole.machines):
            return whole
        pairs = tuple(p for p in whole.pairs if {p.machine_id, p.other_id} <= set(self.shown_ids))
        # what touches a machine shown still makes it unfair, whoever else it touches
        touched = (
            (finding, tuple(m for m in finding.machine_ids if m in self.shown_ids))
            for finding in whole.fairness
        )
        fairness = tuple(
            evolve(finding, machine_ids=ids) for finding, ids in touched if ids or not finding.machine_ids
        )
        fewer = evolve(whole, machines=machines, pairs=pairs, fairness=fairness)
        return evolve(
            fewer,
            headline=answer.headline(fewer),
            conditions=answer.conditions(fewer, self.study),
        )

    @cached_property
    def in_order(self) -> Comparison:
        """The comparison with its machines as the user ordered them, if he did."""
        if not self.is_chosen:
            return self.comparison
        order = {m: place for place, m in enumerate(self.shown_ids)}
        machines = sorted(self.comparison.machines, key=lambda m: order[m.machine_id])
        return evolve(self.comparison, machines=tuple(machines))

    @cached_property
    def beds(self) -> Beds:
        """Hold tests."""
        return beds(self.study, self.drawable.traces, self.drawable.activities)

    @cached_property
    def savings(self) -> Savings:
        """What a cooler bed saves, as planned in the study."""
        return savings(self.beds, plan_of(self.study.cooler, self.beds))

    @cached_property
    def loads(self) -> Loads:
        """Switch-on tests."""
        return loads(self.study, self.drawable.traces, self.comparison)

    @cached_property
    def costs(self) -> StandbyCost:
        """Standby and what prints cost."""
        found = standby_cost(self.study, self.drawable.traces, self.drawable.activities, year=self.year)
        return evolve(
            found,
            headline=cost_answer.headline(found, self.locale),
            conditions=cost_answer.conditions(found, self.locale),
        )

    @cached_property
    def like(self) -> LikeForLike:
        """Machines like for like at the temperatures of the test."""
        return like_for_like(given(self.study, self.comparison, self.drawable.traces))

    @cached_property
    def strands(self) -> tuple[Strand, ...]:
        """The runs that count and have a trace."""
        return strands(self.study, self.comparison, self.drawable.traces)

    @cached_property
    def warm_up_and_processing(self) -> tuple[tuple[str, tuple[SpanReading, ...]], ...]:
        """What runs and machines used in either state, by the state's name."""
        return tuple((state, read_span(self.strands, "end of warm-up", a, b)) for state, a, b in _STATES)
