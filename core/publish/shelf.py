"""The shelf: every figure and table of a study under a key, made when it is wanted."""

from collections.abc import Callable, Iterator
from functools import partial
from typing import Final

from attrs import evolve, field, frozen

from core.figures.bed import beds_figure, watts_figure
from core.figures.compare import comparison_figure
from core.figures.cooler_bed import cooler_figure
from core.figures.energy_time import energy_time_figure
from core.figures.fairness import fairness_figure
from core.figures.line_up import line_up_figure
from core.figures.loads import loads_figure
from core.figures.plan import repeats_figure
from core.figures.staircase import staircase_figure
from core.figures.standby_cost import (
    calendar_figure,
    print_figure,
    saving_figure,
    standby_figure,
    starts_figure,
)
from core.figures.values import Figure
from core.figures.waterfall import like_figure, waterfall_figure
from core.language import tr
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.line_up.strands import strands
from core.plan.repeats import nearest_pair, repeats
from core.publish.against import AGAINST, VIEW, figure_for, key_for_figure, title_of
from core.publish.choices import Pick
from core.publish.ordering import in_order
from core.publish.sources import MOST_LINED_UP, Sources
from core.report.tables import StudyTable, study_table, tables_there
from core.results.bed_compared import by_area

#: keys of line-ups that a person arranged begin so
AS_ARRANGED: Final = "line-up-arranged"
_SMOOTH = LineUp(shown="power")
_UNDER = LineUp(arrangement="machine under machine", shown="power")


@frozen
class Entry:
    """A figure or a table that can be published.

    Parameters
    ----------
    key : str
        Its name in files too: small letters, digits and hyphens.
    page : str
        The page that shows it.
    title : str
        What it is, in a few words.
    view : str
        Name of the chart on that page; empty for a table.
    """

    key: str
    page: str
    title: str
    view: str = ""
    make_figure: Callable[[Sources], Figure | None] | None = field(default=None, eq=False, repr=False)
    make_table: Callable[[Sources], StudyTable | None] | None = field(default=None, eq=False, repr=False)

    @property
    def is_table(self) -> bool:
        """Whether it is a table, not a figure."""
        return self.make_table is not None

    def figure(self, sources: Sources) -> Figure | None:
        """The figure of the machines shown, in their order; None where there is nothing to show."""
        made = None if self.make_figure is None else self.make_figure(sources)
        if made is None:
            return None
        made = in_order(made, sources.shown_ids) if sources.is_chosen else made
        shown, all_machines = len(sources.shown_ids), len(sources.drawable.study.machines)
        if shown == all_machines:
            return made
        words = tr("{shown} of {machines:machine|machines} shown.", shown=shown, machines=all_machines)
        return evolve(made, conditions=f"{made.conditions} {words}".strip())

    def table(self, sources: Sources) -> StudyTable | None:
        """The table of the machines shown; None for a figure."""
        return None if self.make_table is None else self.make_table(sources)


def shelf(sources: Sources) -> tuple[Entry, ...]:
    """What there is to publish: figures page by page, then tables.

    Parameters
    ----------
    sources : Sources
        Results are worked out as far as it takes to know what there is.

    Returns
    -------
    tuple of Entry
        Empty where nothing was compared yet.
    """
    if not sources.drawable.comparison.machines:
        return ()
    return (
        *_compare(sources),
        *_line_up(sources),
        *_bed(sources),
        *_loads(sources),
        *_cost(sources),
        *_plan(sources),
        *_tables(sources),
    )


def entry_of(pick: Pick, entries: tuple[Entry, ...]) -> Entry | None:
    """The entry of a pick; None where the study has it no more."""
    if pick.line_up is not None:
        make = partial(_lined_up, choices=pick.line_up, run_ids=pick.run_ids)
        return Entry(pick.key, "Line-up", tr("Line-up as arranged"), "line_up", make)
    if pick.key.startswith(AGAINST):
        return Entry(pick.key, "Compare", title_of(pick.key), VIEW, partial(figure_for, key=pick.key))
    return next((entry for entry in entries if entry.key == pick.key), None)


def key_for(view: str, figure: Figure, entries: tuple[Entry, ...], sources: Sources) -> str | None:
    """The key of the figure that a chart shows: the only one of the chart, or else the one that is equal.

    Parameters
    ----------
    view : str
        Name of the chart.
    figure : Figure
        What it shows.
    entries : tuple of Entry
    sources : Sources
        Of all machines.

    Returns
    -------
    str or None
        None where the shelf has nothing of that chart.
    """
    if view == VIEW:
        return key_for_figure(figure, sources)
    candidates = [entry for entry in entries if entry.view == view]
    if len(candidates) < 2:
        return candidates[0].key if candidates else None
    equal = (entry.key for entry in candidates if entry.figure(sources) == figure)
    return next(equal, candidates[0].key)


def _compare(sources: Sources) -> Iterator[Entry]:
    yield Entry(
        "comparison",
        "Compare",
        tr("Comparison"),
        "comparison",
        lambda s: comparison_figure(s.in_order, s.study, s.locale),
    )
    if any(m.energy_wh and m.seconds for m in sources.comparison.machines):
        yield Entry(
            "energy-against-time",
            "Compare",
            tr("Energy against time"),
            "energy_against_time",
            lambda s: energy_time_figure(s.in_order, s.study, s.locale),
        )
    known = sources.like.known
    if known:
        yield Entry(
            "like-for-like",
            "Compare",
            tr("Like for like"),
            "like_for_like",
            lambda s: like_figure(s.like, s.study, s.locale),
        )
    for machine in known:
        yield Entry(
            f"like-for-like-{machine.machine_id}",
            "Compare",
            tr("{machine}: like for like in steps", machine=machine.name),
            "like_steps",
            partial(_steps, machine_id=machine.machine_id),
        )


def _steps(sources: Sources, machine_id: str) -> Figure | None:
    machine = sources.like.of(machine_id)
    return None if machine is None else waterfall_figure(machine, sources.like, sources.study, sources.locale)


def _line_up(sources: Sources) -> Iterator[Entry]:
    if not sources.strands:
        return
    yield Entry(
        "line-up", "Line-up", tr("Power of all machines"), "line_up", partial(_lined_up, choices=_SMOOTH)
    )
    if len({s.machine_id for s in sources.strands}) > 1:
        yield Entry(
            "line-up-by-machine",
            "Line-up",
            tr("Power machine by machine"),
            "line_up",
            partial(_lined_up, choices=_UNDER),
        )


def _lined_up(sources: Sources, choices: LineUp, run_ids: tuple[str, ...] = ()) -> Figure | None:
    """Runs lined up; those named, or else as many of those that count as can be told apart."""
    given = sources.strands[:MOST_LINED_UP]
    more = len(sources.strands) - len(given)
    if run_ids:
        chosen = strands(sources.study, sources.comparison, sources.drawable.traces, frozenset(run_ids))
        given, more = chosen, 0
    if not given:
        return None
    said = answer(given, sources.comparison, choices, sources.locale, not_shown=more)
    return line_up_figure(given, choices, said, sources.study, sources.locale)


def _bed(sources: Sources) -> Iterator[Entry]:
    found = sources.beds
    if not any(m.held for m in found.machines):
        return
    yield Entry("beds", "Bed", tr("Beds"), "beds", lambda s: beds_figure(s.beds, s.study, s.locale))
    known = [m for m in found.machines if m.model is not None]
    first = [m for m in by_area(found) if m in known]
    for machine in (*first, *(m for m in known if m not in first)):
        yield Entry(
            f"bed-watts-{machine.machine_id}",
            "Bed",
            tr("{machine}: watts by temperature", machine=machine.name),
            "bed_watts",
            partial(_watts, machine_id=machine.machine_id),
        )
    for machine in known:
        if sources.savings.of(machine.machine_id) is not None:
            yield Entry(
                f"cooler-bed-{machine.machine_id}",
                "Bed",
                tr("{machine}: a cooler bed", machine=machine.name),
                "cooler_bed",
                partial(_cooler, machine_id=machine.machine_id),
            )


def _watts(sources: Sources, machine_id: str) -> Figure | None:
    return watts_figure(sources.beds, sources.study, machine_id, sources.locale)


def _cooler(sources: Sources, machine_id: str) -> Figure | None:
    return cooler_figure(sources.savings, sources.study, machine_id, sources.locale)


def _loads(sources: Sources) -> Iterator[Entry]:
    if sources.loads.tested:
        yield Entry(
            "loads",
            "Loads",
            tr("Loads"),
            "loads",
            lambda s: loads_figure(s.loads, s.study, locale=s.locale),
        )
    for machine in sources.loads.tested:
        for place in range(len(machine.stairs)):
            title = (
                tr("{machine}: switch-on test {place}", machine=machine.name, place=place + 1)
                if len(machine.stairs) > 1
                else tr("{machine}: switch-on test", machine=machine.name)
            )
            yield Entry(
                f"loads-{machine.machine_id}-{place + 1}",
                "Loads",
                title,
                "load_steps",
                partial(_stairs, machine_id=machine.machine_id, place=place),
            )


def _stairs(sources: Sources, machine_id: str, place: int) -> Figure | None:
    machine = next((m for m in sources.loads.machines if m.machine_id == machine_id), None)
    if machine is None:
        return None
    traces = sources.drawable.traces
    return staircase_figure(sources.loads, machine, place, sources.study, traces, sources.locale)


def _cost(sources: Sources) -> Iterator[Entry]:
    page = "Standby and cost"
    costs = sources.costs
    if any(m.standby is not None for m in costs.machines):
        yield Entry(
            "standby",
            page,
            tr("Doing nothing"),
            "standby",
            lambda s: standby_figure(s.costs, s.study, s.locale),
        )
    if any(m.rests.count for m in costs.machines):
        yield Entry(
            "switching-off",
            page,
            tr("Switching off"),
            "switching_off",
            lambda s: saving_figure(s.costs, s.study, s.locale),
        )
    if any(m.weeks for m in costs.machines):
        yield Entry(
            "weeks",
            page,
            tr("Hours in each operating state"),
            "weeks",
            lambda s: calendar_figure(s.costs, s.study, locale=s.locale),
        )
    if any(m.printed is not None for m in costs.machines):
        yield Entry("print", page, tr("A print"), "print", lambda s: print_figure(s.costs, s.study, s.locale))
    if any(m.starts is not None for m in costs.machines):
        yield Entry(
            "starts", page, tr("When to start"), "starts", lambda s: starts_figure(s.costs, s.study, s.locale)
        )


def _plan(sources: Sources) -> Iterator[Entry]:
    if fairness_figure(sources.comparison, sources.study) is not None:
        yield Entry(
            "fairness",
            "Fairness",
            tr("What could make the comparison unfair"),
            "fairness",
            lambda s: fairness_figure(s.comparison, s.study, s.locale),
        )
    if len(sources.shown_ids) > 1:
        yield Entry("repeats", "Fairness", tr("How many repeats"), "repeats", _repeats)


def _repeats(sources: Sources) -> Figure | None:
    """Two of the machines shown, as machines of the whole study: what is shown plans no other test."""
    study, comparison = sources.drawable.study, sources.drawable.comparison
    shown = nearest_pair(sources.shown_ids, comparison)
    return repeats_figure(repeats(study, comparison, shown), study, sources.locale)


def _tables(sources: Sources) -> Iterator[Entry]:
    for key, page, title in tables_there(sources):
        yield Entry(f"table-{key}", page, title, make_table=partial(study_table, key=key))
