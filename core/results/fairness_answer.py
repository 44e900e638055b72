"""The fairness of a comparison in words: the sentence on top, and what each point comes to.

Rules: sentences are made from the findings that are open; what the user has accepted is told apart.
"""

from collections.abc import Sequence

from core.formatting import POINT, NumberLocale, capitalised, in_words, listed, number, one_of
from core.language import mark, tr
from core.results.fairness_points import Action, point_of
from core.results.fairness_weight import differences, smallest_shown
from core.results.values import Comparison, Finding
from core.tables import Column, Table
from core.wording import sentence

LEVEL_NAMES = {"unfair": mark("Unfair"), "caution": mark("Caution"), "note": mark("Note")}
#: so many findings are named in the sentence, and so many machines of one
_NAMED, _NAMED_MACHINES = 3, 3
#: temperatures that nobody noted, as they are told in a sentence
_OF_PLACE = {"bed": mark("the bed"), "room": mark("the room"), "nozzle": mark("the nozzle")}
#: what can be done, as the words of a table
ACTION_NAMES: dict[Action, str] = {
    "like for like": mark("Compare like for like"),
    "processing only": mark("Compare processing only"),
    "hand back": mark("Hand the edges back"),
    "check meters": mark("See to the meters"),
    "leave out": mark("Leave the run out"),
    "repeat": mark("Plan more runs"),
    "accept": mark("Accept with a reason"),
}


def headline(comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What is to be said of the comparison's fairness, in one sentence.

    Parameters
    ----------
    comparison : Comparison
    locale : NumberLocale
    """
    known = [m for m in comparison.machines if m.energy_wh is not None]
    if not known:
        return tr("No run has been measured yet, so there is nothing to be fair or unfair.")
    found = comparison.open_findings
    unfair = [f for f in found if f.level == "unfair"]
    cautions = [f for f in found if f.level == "caution"]
    what = tr("this comparison") if len(known) > 1 else tr("this measurement")
    if unfair:
        named = _named(unfair, comparison)
        if len(unfair) == 1:
            return tr("One thing makes {what} unfair: {points}.", what=what, points=named)
        return tr(
            "{count} things make {what} unfair: {points}.",
            count=capitalised(in_words(len(unfair))),
            what=what,
            points=named,
        )
    clear = tr("Nothing that was found makes {what} unfair", what=what)
    if cautions:
        first = max(cautions, key=lambda f: f.matters_wh or 0.0)
        told = _could(phrase(first, comparison), first, locale)
        if len(cautions) == 1:
            return tr("{clear}; one thing asks for caution: {point}.", clear=clear, point=told)
        return tr(
            "{clear}; {count} things ask for caution, above all {point}.",
            clear=clear,
            count=in_words(len(cautions)),
            point=told,
        )
    if found:
        return tr("{clear}; {notes:note|notes} on how to be surer.", clear=clear, notes=len(found))
    return tr("Nothing was found against {what}.", what=what)


def conditions(comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What the findings are held against, what is accepted, and what nobody can tell, in one line."""
    names = {m.machine_id: m.name for m in comparison.machines}
    said = []
    smallest = smallest_shown(differences(comparison.machines, comparison.pairs))
    if smallest is not None:
        who = listed([names[smallest.machine_id], names[smallest.other_id]])
        said.append(
            tr(
                "Smallest difference shown: {energy} Wh, between {machines}.",
                energy=number(smallest.wh, 1, locale),
                machines=who,
            )
        )
    elif sum(m.energy_wh is not None for m in comparison.machines) > 1:
        said.append(tr("No difference between machines is shown."))
    if comparison.accepted_findings:
        said.append(tr("{count:point|points} accepted.", count=len(comparison.accepted_findings)))
    if comparison.unseen:
        places = one_of([tr(_OF_PLACE.get(place, place)) for place in comparison.unseen])
        said.append(tr("Not looked at, because nobody noted it: temperature of {places}.", places=places))
    return " ".join(said)


def phrase(finding: Finding, comparison: Comparison) -> str:
    """A finding and what it is of, to go on in a sentence: "a warm start (Birch, run 3)"."""
    return f"{point_of(finding).phrase} ({of_whom(finding, comparison)})"


def of_whom(finding: Finding, comparison: Comparison) -> str:
    """Machines, or the one run, that a finding touches."""
    names = {m.machine_id: m.name for m in comparison.machines}
    told = [names[i] for i in finding.machine_ids if i in names]
    if len(told) > _NAMED_MACHINES:
        whole = sum(m.energy_wh is not None for m in comparison.machines)
        return tr("all machines") if len(told) >= whole else tr("{count} machines", count=len(told))
    who = listed(told)
    run = finding.problem.fact("run")
    return f"{who}, {run}" if run and len(finding.run_ids) == 1 else who


def held_against(finding: Finding, comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What a finding could matter, by what model, and what that is held against."""
    model = point_of(finding).model
    if finding.matters_wh is None:
        return tr("How much it could matter in Wh, no model tells.")
    energy = _wh(finding.matters_wh, locale)
    told = (
        tr("It could matter {energy} a part, by {model}.", energy=energy, model=model)
        if model
        else tr("It could matter {energy} a part.", energy=energy)
    )
    if finding.against_wh is None:
        return told
    against = _wh(finding.against_wh, locale)
    than = (
        mark("That is about {energy}, {what}.")
        if against == energy
        else mark("That is more than {energy}, {what}.")
        if finding.matters_wh > finding.against_wh
        else mark("That is less than {energy}, {what}.")
    )
    alone = sum(m.energy_wh is not None for m in comparison.machines) < 2
    what = (
        tr("the half-width of the machine's interval")
        if alone
        else tr(
            "the smallest difference that is shown, or left open, between a machine it touches and another"
        )
    )
    return f"{told} {tr(than, energy=against, what=what)}"


def matters_text(value_wh: float | None, locale: NumberLocale = POINT) -> str:
    """What something could matter, in Wh without the unit; what is no more than rounding says so.

    Examples
    --------
    >>> matters_text(0.331), matters_text(0.002), matters_text(12.3)
    ('0.33', '<0.01', '12.30')
    """
    least = 0.01
    if value_wh is not None and 0 < value_wh < least / 2:
        return f"<{number(least, 2, locale)}"
    return number(value_wh, 2, locale)


def line(finding: Finding) -> str:
    """A finding as a line of text: its level, whether it was accepted, and what it says."""
    level = tr(finding.level)
    if finding.accepted:
        level = tr("{level}, accepted ({why})", level=level, why=finding.accepted)
    return f"{level}: {sentence(finding.problem)}"


def counted(found: Sequence[Finding]) -> str:
    """How many points there are, and how grave.

    Examples
    --------
    >>> counted([])
    'no open points of fairness'
    """
    if not found:
        return tr("no open points of fairness")
    told = tr("{count:open point|open points} of fairness", count=len(found))
    parts = [
        tr(words, count=n)
        for level, words in (
            ("unfair", mark("{count} unfair")),
            ("caution", mark("{count:caution|cautions}")),
            ("note", mark("{count:note|notes}")),
        )
        if (n := sum(f.level == level for f in found))
    ]
    return f"{told}: {', '.join(parts)}"


def findings_table(comparison: Comparison, locale: NumberLocale = POINT) -> Table:
    """One row an open finding, the gravest first, as people read it."""
    columns = (
        Column("level", tr("Level"), "left"),
        Column("what", tr("What"), "left"),
        Column("of", tr("Of"), "left"),
        Column("matters_wh", tr("Could matter [Wh]")),
        Column("against_wh", tr("Held against [Wh]")),
        Column("action", tr("What to do"), "left"),
    )
    rows = tuple(
        (
            tr(LEVEL_NAMES[f.level]),
            point_of(f).name,
            of_whom(f, comparison),
            matters_text(f.matters_wh, locale),
            matters_text(f.against_wh, locale),
            tr(ACTION_NAMES[point_of(f).action]),
        )
        for f in comparison.open_findings
    )
    return Table(tr("Fairness"), columns, rows)


def _named(found: Sequence[Finding], comparison: Comparison) -> str:
    """The gravest kinds of finding, each once, and how many findings are left."""
    kinds: dict[str, list[Finding]] = {}
    for finding in found:
        kinds.setdefault(finding.problem.code, []).append(finding)
    told = [_kind(group, comparison) for group in list(kinds.values())[:_NAMED]]
    more = sum(len(group) for group in list(kinds.values())[_NAMED:])
    if more:
        told.append(tr("one more") if more == 1 else tr("{count} more", count=in_words(more)))
    return listed(told)


def _kind(group: Sequence[Finding], comparison: Comparison) -> str:
    if len(group) == 1:
        return phrase(group[0], comparison)
    times = tr("twice") if len(group) == 2 else tr("{count} times", count=in_words(len(group)))
    return f"{point_of(group[0]).phrase} ({times})"


def _could(point: str, finding: Finding, locale: NumberLocale) -> str:
    if finding.matters_wh is None:
        return point
    return tr(
        "{point}, which could matter {energy} a part", point=point, energy=_wh(finding.matters_wh, locale)
    )


def _wh(value_wh: float, locale: NumberLocale) -> str:
    return f"{number(value_wh, 1, locale) if value_wh >= 1 else matters_text(value_wh, locale)} Wh"
