"""How a point of fairness was found, and how what it could matter was worked out."""

import math
from collections.abc import Callable

from core.formatting import POINT, NumberLocale, duration, number
from core.found import budgets
from core.found.values import Explanation, SourceLine
from core.found.writing import figures, otherwise
from core.language import mark, tr
from core.results.fairness_answer import ACTION_NAMES, LEVEL_NAMES, held_against, matters_text, of_whom
from core.results.fairness_points import point_of
from core.results.fairness_weight import differences, smallest_shown
from core.results.values import Comparison, Finding
from core.uncertainty import NORMAL_95
from core.wording import sentence

TOPIC = "fairness"
#: runs, or machines, that are tried without
MOST_WITHOUT = 3
#: the comparison without these runs
Again = Callable[[tuple[str, ...]], Comparison]
_BOUND = mark("A bound says how much it could be at most; it is most likely less.")
_NOT_IN = mark("The point changes no number of the comparison by itself.")


def explain_finding(
    finding: Finding,
    comparison: Comparison,
    locale: NumberLocale = POINT,
    compared_again: Again | None = None,
) -> Explanation:
    """Say how a point of fairness was found.

    Parameters
    ----------
    finding : Finding
        Of this comparison.
    comparison : Comparison
    locale : NumberLocale
    compared_again : callable, optional
        Gives the comparison without these runs; else what leaving them out would change is left unsaid.
    """
    point = point_of(finding)
    matters = (
        tr("not known in Wh")
        if finding.matters_wh is None
        else tr("could matter {energy} Wh a part", energy=matters_text(finding.matters_wh, locale))
    )
    cautions = [tr(_NOT_IN)]
    if "bound" in point.model:
        cautions.append(tr(_BOUND))
    if finding.lapsed:
        cautions.append(tr("It was accepted when it was less grave: {lapsed}", lapsed=finding.lapsed))
    elif finding.accepted:
        cautions.append(tr("It was accepted: {accepted}", accepted=finding.accepted))
    return Explanation(
        title=f"{point.name}: {of_whom(finding, comparison)}",
        value_text=f"{tr(LEVEL_NAMES[finding.level])}, {matters}",
        topic=TOPIC,
        method=(sentence(finding.problem), held_against(finding, comparison, locale)),
        formula=finding.working or (f"{point.name}: {matters}",),
        sources=_sources(finding, comparison, locale),
        without_budget=tr(
            "It has no interval: it tells how much the point could matter, not how much it did."
        ),
        sensitivity=() if compared_again is None else _without(finding, comparison, compared_again, locale),
        surer=(tr(ACTION_NAMES[point.action]),),
        cautions=tuple(cautions),
    )


def _without(
    finding: Finding, comparison: Comparison, compared_again: Again, locale: NumberLocale
) -> tuple[str, ...]:
    """What would be left of the point without each run that it touches, or that counts most in it."""
    told = []
    for name, run_ids in _left_out(finding, comparison)[:MOST_WITHOUT]:
        then = next((f for f in compared_again(run_ids).fairness if f.key == finding.key), None)
        if then is None:
            left = tr("the point is gone")
        elif then.matters_wh is None:
            left = tr("not known in Wh")
        else:
            left = f"{matters_text(then.matters_wh, locale)} Wh"
        told.append(f"{tr('Without {name}', name=name)}: {left}")
    return tuple(told) or (tr("It touches no run that could be left out."),)


def _left_out(finding: Finding, comparison: Comparison) -> list[tuple[str, tuple[str, ...]]]:
    """Runs by name that are tried without; those of a whole machine where the point touches no single run."""
    touched = [m for m in comparison.machines if m.machine_id in finding.machine_ids]
    runs = [(m, r) for m in touched for r in m.included if r.run_id in finding.run_ids]
    if runs:
        return [(f"{m.name}, {r.name}", (r.run_id,)) for m, r in runs]
    if len(touched) == 1:
        return [(f"{touched[0].name}, {r.name}", (r.run_id,)) for r in touched[0].included]
    return [(m.name, tuple(r.run_id for r in m.included)) for m in touched]


def smallest_found(comparison: Comparison, locale: NumberLocale = POINT) -> Explanation | None:
    """What the points of fairness are held against: the smallest difference shown; None where none is.

    Parameters
    ----------
    comparison : Comparison
    locale : NumberLocale
    """
    known = differences(comparison.machines, comparison.pairs)
    smallest = smallest_shown(known)
    if smallest is None:
        return None
    machines = {m.machine_id: m for m in comparison.machines}
    one, other = machines[smallest.machine_id], machines[smallest.other_id]
    assert one.energy_wh is not None
    assert other.energy_wh is not None
    values = [figures(m.energy_wh.value, locale=locale) for m in (one, other) if m.energy_wh]
    sign = 1.0 if other.energy_wh.value > one.energy_wh.value else -1.0
    told = []
    for machine, way in ((one, -sign), (other, sign)):
        energies = [r.energy_wh for r in machine.included if r.energy_wh is not None]
        for run in machine.included if len(energies) > 1 else ():
            by = (math.fsum(energies) - (run.energy_wh or 0.0)) / (len(energies) - 1)
            moved = way * (by - math.fsum(energies) / len(energies))
            what = tr("Without {name}", name=f"{machine.name}, {run.name}")
            told.append((abs(moved), otherwise(what, moved, "Wh", locale)))
    told.sort(key=lambda line: -line[0])
    parts = [
        (m.name, m.energy_wh.u95 / NORMAL_95, "", tr("what its runs and their meter leave open"))
        for m in (one, other)
        if m.energy_wh is not None and m.energy_wh.u95
    ]
    return Explanation(
        title=tr("Smallest difference shown: {name} and {name_2}", name=one.name, name_2=other.name),
        value_text=f"{number(smallest.wh, 1, locale)} Wh",
        topic=TOPIC,
        method=(
            tr("Of all pairs of machines that are told apart, the two whose mean energies lie nearest."),
            tr("A point that could matter more than this could make a difference that is none."),
        ),
        formula=(f"| {values[0]} Wh − {values[1]} Wh | = {figures(smallest.wh, locale=locale)} Wh",),
        sources=tuple(
            SourceLine(f"{m.name}, {r.name}: {number(r.energy_wh, 2, locale)} Wh", r.run_id)
            for m in (one, other)
            for r in m.included
        ),
        budget=budgets.made(parts, locale, "Wh"),
        without_budget="" if parts else tr("Neither mean has an interval."),
        sensitivity=tuple(text for _, text in told[:MOST_WITHOUT])
        or (tr("One run each: none can be left out."),),
    )


def _sources(finding: Finding, comparison: Comparison, locale: NumberLocale) -> tuple[SourceLine, ...]:
    """The runs that it touches, and then all that count of its machines."""
    told = []
    touched = [m for m in comparison.machines if m.machine_id in finding.machine_ids]
    for machine in touched:
        for run in sorted(machine.runs, key=lambda r: r.run_id not in finding.run_ids):
            if run.run_id not in finding.run_ids and not run.included:
                continue
            words = [
                tr(
                    "{name}, {name_2}: {energy_wh} Wh",
                    name=machine.name,
                    name_2=run.name,
                    energy_wh=number(run.energy_wh, 2, locale),
                )
            ]
            words += [
                f"{tr(span.state)} {duration(span.end_s - span.start_s)}"
                for span in run.states
                if span.state in ("warm-up", "processing")
            ]
            told.append(SourceLine(", ".join(words), run.run_id, run.included))
    return tuple(told)
