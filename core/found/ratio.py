"""How the ratio of two machines' energies was found, and what cancels in it."""

import math
from collections.abc import Sequence

from attrs import evolve

from core.formatting import duration, number, percent, rounded
from core.found import around, budgets, sensitivity, surer
from core.found.question import Question
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, shown
from core.language import tr
from core.quantities import ENERGY
from core.results.values import Energy, MachineResult, Pair
from core.study import Study

#: runs that are tried without, those that matter most
MOST_WITHOUT = 3
#: an influence that changes the ratio by less than this part of its own size has cancelled
CANCELLED = 1e-9
#: digits of a ratio whose interval does not say how many
DECIMALS = 3
#: a percentage with a narrower half-interval than this is told with a decimal
FINE = 0.0075


def ratio(asked: Question, other: MachineResult) -> Explanation:
    """Energy of a machine over that of another.

    Parameters
    ----------
    asked : Question
        About the machine above the line.
    other : MachineResult
        Below the line.
    """
    machine = asked.machine
    title = tr("{name} against {name_2}: energy per part", name=machine.name, name_2=other.name)
    if machine.energy_wh is None or other.energy_wh is None:
        lacking = machine if machine.energy_wh is None else other
        return Explanation(
            title, tr("not known"), "interval", method=(tr("No run of {name} counts.", name=lacking.name),)
        )
    from core.uncertainty import mean_of
    from core.uncertainty import ratio as of_means

    locale = asked.locale
    found = of_means(mean_of(_energies(machine)), mean_of(_energies(other)))
    pair = next(
        (
            p
            for p in asked.comparison.pairs
            if {p.machine_id, p.other_id} == {machine.machine_id, other.machine_id}
        ),
        None,
    )
    budget, cancelled = budget_of(machine, other, asked.study, asked)
    half = (found.high - found.low) / 2
    decimals = rounded(found.value, half, DECIMALS).decimals
    middle, low, high = (number(v, decimals, locale) for v in (found.value, found.low, found.high))
    share = percent(abs(1 - found.value), 0 if half > FINE else 1, locale)
    less = tr("{share} less", share=share) if found.value < 1 else tr("{share} more", share=share)
    return Explanation(
        title=title,
        value_text=tr(
            "{middle} (95 % interval {low} to {high}): {less}", middle=middle, low=low, high=high, less=less
        ),
        topic="interval",
        method=(
            tr("Mean energy of one divided by mean energy of the other."),
            *cancelled,
            *_judged(asked, pair),
        ),
        formula=(
            tr(
                "{energy_wh} Wh ÷ {energy_wh_2} Wh = {found}",
                energy_wh=figures(machine.energy_wh.value, locale=locale),
                energy_wh_2=figures(other.energy_wh.value, locale=locale),
                found=figures(found.value, locale=locale),
            ),
            *budgets.combined(budget, half, locale, ""),
        ),
        sources=_sources(asked, machine, other),
        budget=budget,
        sensitivity=(
            *_without(asked, machine, other, found.value),
            *_ending_later(asked, other, found.value),
        ),
        surer=_surer(asked, pair, found.u_shared, found.u),
        cautions=around.cautions(asked),
    )


def _energies(machine: MachineResult) -> list[Energy]:
    return [run.energy for run in machine.included if run.energy is not None]


def budget_of(
    machine: MachineResult, other: MachineResult, study: Study, asked: Question
) -> tuple[tuple[BudgetLine, ...], tuple[str, ...]]:
    """The budget of the ratio, and what cancelled in it.

    An influence that both share moves both alike: it is the difference of its two relative sizes that counts.
    Those of one machine alone count whole (JCGM 100:2008, 5.2.2, with correlation 1 and 0).
    """
    assert machine.energy_wh is not None
    assert other.energy_wh is not None
    above, below = machine.energy_wh.value, other.energy_wh.value
    value = above / below
    shared: dict[str, list[float]] = {}
    names: dict[str, str] = {}
    parts: list[tuple[str, float, str, str]] = []
    for side, energy_wh, result in ((0, above, machine), (1, below, other)):
        for influence in result.influences:
            relative = influence.u_wh / energy_wh
            if influence.shared is None:
                name = f"{tr(influence.name)}, {result.name}"
                parts.append((name, value * relative, "", tr(budgets.WHY.get(influence.name, ""))))
            else:
                shared.setdefault(influence.shared, [0.0, 0.0])[side] += relative
                names[influence.shared] = influence.name
    families: dict[tuple[str, str], list[tuple[float, float]]] = {}
    for key, (one, two) in shared.items():
        families.setdefault((names[key], str(budgets.family(key))), []).append((one, two))
    cancelled = []
    for (name, key), sides in families.items():
        u = value * math.hypot(*(one - two for one, two in sides))
        meter = budgets.meter_name(key, study) or key
        if u <= CANCELLED * value * max(max(map(abs, pair)) for pair in sides):
            cancelled.append(
                tr("The {name} of {meter} moves both machines alike and cancels.", name=tr(name), meter=meter)
            )
        else:
            both = (
                tr("both machines, through {meter}", meter=meter)
                if all(one and two for one, two in sides)
                else ""
            )
            parts.append((f"{tr(name)}, {meter}", u, both, budgets.why(name, key, study)))
    return budgets.made(parts, asked.locale, ""), tuple(cancelled)


def _judged(asked: Question, pair: Pair | None) -> tuple[str, ...]:
    """What the two tests say."""
    if pair is None or pair.shown is None or pair.ratio_p is None or pair.repeats_p is None:
        return (tr("Whether they differ cannot be judged: it takes two runs or more of each."),)
    said = tr("A difference is shown") if pair.shown else tr("No difference is shown")
    test = (
        tr("Welch's test")
        if pair.tested <= 2
        else tr("Games and Howell's test of {tested} machines", tested=pair.tested)
    )
    pairs = sum(p.ratio_p is not None for p in asked.comparison.pairs)
    adjusted = tr(", adjusted for {pairs:pair|pairs} by Holm's way", pairs=pairs) if pairs > 1 else ""
    by_repeats, by_ratio = (_chance(p, asked) for p in (pair.repeats_p, pair.ratio_p))
    return (
        tr(
            "{said}. If there were none, the repeats alone would lie this far apart with a chance of "
            "{by_repeats} ({test}), and the ratio, with what the meters leave open, with one of "
            "{by_ratio} (two-sided{adjusted}). It takes both below 0.05.",
            said=said,
            by_repeats=by_repeats,
            test=test,
            by_ratio=by_ratio,
            adjusted=adjusted,
        ),
    )


def _chance(p: float, asked: Question) -> str:
    """A chance in words."""
    return (
        number(p, 3, asked.locale)
        if p >= 0.001
        else tr("below {value}", value=number(0.001, 3, asked.locale))
    )


def _sources(asked: Question, machine: MachineResult, other: MachineResult) -> tuple[SourceLine, ...]:
    said = []
    for result in (machine, other):
        mean = shown(result.energy_wh, ENERGY, asked.locale)
        said.append(
            SourceLine(
                tr(
                    "{name}: {mean}, mean of {included:run|runs}",
                    name=result.name,
                    mean=mean,
                    included=len(result.included),
                )
            )
        )
        for run in result.included:
            energy = figures(run.energy_wh or 0.0, locale=asked.locale)
            said.append(
                SourceLine(
                    tr("{name}, {name_2}: {energy} Wh", name=result.name, name_2=run.name, energy=energy),
                    run.run_id,
                )
            )
    return tuple(said)


def _without(asked: Question, machine: MachineResult, other: MachineResult, value: float) -> tuple[str, ...]:
    """The ratio without each of the runs that matter most."""
    above = [run.energy_wh or 0.0 for run in machine.included]
    below = [run.energy_wh or 0.0 for run in other.included]
    found: list[tuple[float, str]] = []
    for result, mine, is_above in ((machine, above, True), (other, below, False)):
        for i, run in enumerate(result.included):
            rest = mine[:i] + mine[i + 1 :]
            if rest:
                mean = sum(rest) / len(rest)
                then = mean / _mean(below) if is_above else _mean(above) / mean
                found.append(
                    (then - value, tr("Without {name}, {name_2}", name=result.name, name_2=run.name))
                )
    found.sort(key=lambda pair: -abs(pair[0]))
    locale = asked.locale
    return tuple(
        f"{what}: {number(value + by, 3, locale)} ({'+' if by > 0 else ''}{number(by, 3, locale)})"
        for by, what in found[:MOST_WITHOUT]
    )


def _ending_later(asked: Question, other: MachineResult, value: float) -> tuple[str, ...]:
    """The ratio with every run of one machine ending later, each measured again."""
    told = []
    for result, is_above in ((asked.machine, True), (other, False)):
        of_it = evolve(asked, machine=result)
        study = sensitivity.moved(of_it, end_by_s=sensitivity.LATER_S)
        then_wh = None if study is None else sensitivity.again(of_it, ENERGY, study)
        now = result.energy_wh
        if then_wh and now is not None:
            then = value * (then_wh / now.value if is_above else now.value / then_wh)
            what = tr(
                "If every run of {machine} ended {later} later",
                machine=result.name,
                later=duration(sensitivity.LATER_S),
            )
            by = number(then - value, 3, asked.locale)
            told.append(f"{what}: {number(then, 3, asked.locale)} ({'+' if then > value else ''}{by})")
    if not told:
        told = [
            tr(
                "If the energy of {machine} were 1 % more: {ratio}",
                machine=result.name,
                ratio=number(value * (1.01 if is_above else 1 / 1.01), 3, asked.locale),
            )
            for result, is_above in ((asked.machine, True), (other, False))
        ]
    return tuple(told)


def _mean(values: Sequence[float]) -> float:
    return sum(values) / len(values)


def _surer(asked: Question, pair: Pair | None, u_shared: float, u: float) -> tuple[str, ...]:
    said = []
    if pair is not None and pair.runs_needed is not None and pair.needed_percent is not None:
        percent_text = number(pair.needed_percent, 0, asked.locale)
        said.append(
            tr(
                "{runs_needed:run|runs} of each would show a difference of {percent_text} %.",
                runs_needed=pair.runs_needed,
                percent_text=percent_text,
            )
        )
    if u > 0 and (u_shared / u) ** 2 > surer.WORTH:
        share = percent((u_shared / u) ** 2, 0, asked.locale)
        said.append(
            tr(
                "One meter for both machines: {share} of the variance is the meters', and would all but "
                "cancel.",
                share=share,
            )
        )
        said.append(tr("Or the same steady load held against both meters: it tells their ratio."))
    if u > 0 and (u_shared / u) ** 2 < 1 - surer.WORTH:
        said.append(tr("More runs of both: the rest of the variance falls with their number."))
    return tuple(said)
