"""How a point of fairness was found, and how what it could matter was worked out."""

from core.formatting import POINT, NumberLocale, duration, number
from core.found.values import Explanation, SourceLine
from core.language import mark, tr
from core.results.fairness_answer import ACTION_NAMES, LEVEL_NAMES, held_against, matters_text, of_whom
from core.results.fairness_points import point_of
from core.results.values import Comparison, Finding
from core.wording import sentence

TOPIC = "fairness"
_BOUND = mark("A bound says how much it could be at most; it is most likely less.")
_NOT_IN = mark("The point changes no number of the comparison by itself.")


def explain_finding(finding: Finding, comparison: Comparison, locale: NumberLocale = POINT) -> Explanation:
    """Say how a point of fairness was found.

    Parameters
    ----------
    finding : Finding
        Of this comparison.
    comparison : Comparison
    locale : NumberLocale
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
        formula=finding.working,
        sources=_sources(finding, comparison, locale),
        surer=(tr(ACTION_NAMES[point.action]),),
        cautions=tuple(cautions),
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
