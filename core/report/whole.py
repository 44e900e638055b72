"""Everything that a study tells, computed once, for its tables, its report and its bundle."""

from datetime import date

from attrs import frozen

from core.line_up.strands import Strand, strands
from core.progress import Progress, silent
from core.report.pictures import Drawable
from core.results.cooler_beds import Savings, plan_of, savings
from core.results.cost_values import StandbyCost
from core.results.costs import standby_cost
from core.results.holds import Beds, beds
from core.results.like_for_like import LikeForLike, given, like_for_like
from core.results.loads import Loads, loads
from core.results.values import Comparison
from core.study import Study


@frozen(eq=False)
class Whole:
    """A study with the results of every page.

    Parameters
    ----------
    drawn : Drawable
        The study, its comparison, and what was read.
    made : date
        The day for which it is made: costs are of its calendar year, files name it.
    """

    drawn: Drawable
    made: date
    beds: Beds
    savings: Savings
    loads: Loads
    costs: StandbyCost
    like: LikeForLike
    strands: tuple[Strand, ...]

    @property
    def study(self) -> Study:
        """The study."""
        return self.drawn.study

    @property
    def comparison(self) -> Comparison:
        """Its comparison."""
        return self.drawn.comparison


def whole(drawn: Drawable, made: date, progress: Progress = silent) -> Whole:
    """Compute everything that a study tells.

    Parameters
    ----------
    drawn : Drawable
    made : date
    progress : Progress
        May raise `Cancelled`.
    """
    study, comparison, traces, activities = drawn.study, drawn.comparison, drawn.traces, drawn.activities
    progress(0.0, "beds")
    found = beds(study, traces, activities)
    progress(0.3, "loads")
    steps = loads(study, traces, comparison)
    progress(0.5, "costs")
    costs = standby_cost(study, traces, activities, year=made.year)
    progress(0.8, "like for like")
    like = like_for_like(given(study, comparison, traces))
    return Whole(
        drawn=drawn,
        made=made,
        beds=found,
        savings=savings(found, plan_of(study.cooler, found)),
        loads=steps,
        costs=costs,
        like=like,
        strands=strands(study, comparison, traces),
    )
