"""The fairness of a comparison in words: the sentence on top, and what each point comes to.

Rules: sentences are made from the findings that are open; what the user has accepted is told apart.
"""

from collections.abc import Sequence

from core.formatting import POINT, NumberLocale, count, listed, number
from core.results.fairness_points import Action, point_of
from core.results.fairness_weight import differences, smallest_shown
from core.results.values import Comparison, Finding
from core.tables import Column, Table
from core.wording import sentence

LEVEL_NAMES = {"unfair": "Unfair", "caution": "Caution", "note": "Note"}
#: so many findings are named in the sentence, and so many machines of one
_NAMED, _NAMED_MACHINES = 3, 3
_WORDS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
#: what can be done, as the words of a table
ACTION_NAMES: dict[Action, str] = {
    "like for like": "Compare like for like",
    "processing only": "Compare processing only",
    "hand back": "Hand the edges back",
    "check meters": "See to the meters",
    "leave out": "Leave the run out",
    "repeat": "Plan more runs",
    "accept": "Accept with a reason",
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
        return "No run has been measured yet, so there is nothing to be fair or unfair."
    found = comparison.open_findings
    unfair = [f for f in found if f.level == "unfair"]
    cautions = [f for f in found if f.level == "caution"]
    what = "this comparison" if len(known) > 1 else "this measurement"
    if unfair:
        verb = "thing makes" if len(unfair) == 1 else "things make"
        return f"{_in_words(len(unfair)).capitalize()} {verb} {what} unfair: {_named(unfair, comparison)}."
    clear = f"Nothing that was found makes {what} unfair"
    if cautions:
        first = max(cautions, key=lambda f: f.matters_wh or 0.0)
        told = f"{phrase(first, comparison)}{_could(first, locale)}"
        if len(cautions) == 1:
            return f"{clear}; one thing asks for caution: {told}."
        return f"{clear}; {_in_words(len(cautions))} things ask for caution, above all {told}."
    if found:
        return f"{clear}; {count(len(found), 'note')} on how to be surer."
    return f"Nothing was found against {what}."


def conditions(comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What the findings are held against, what is accepted, and what nobody can tell, in one line."""
    names = {m.machine_id: m.name for m in comparison.machines}
    said = []
    smallest = smallest_shown(differences(comparison.machines, comparison.pairs))
    if smallest is not None:
        who = listed([names[smallest.machine_id], names[smallest.other_id]])
        said.append(f"Smallest difference shown: {number(smallest.wh, 1, locale)} Wh, between {who}.")
    elif sum(m.energy_wh is not None for m in comparison.machines) > 1:
        said.append("No difference between machines is shown.")
    if comparison.accepted_findings:
        said.append(f"{count(len(comparison.accepted_findings), 'point')} accepted.")
    if comparison.unseen:
        said.append(f"Not looked at, because nobody noted it: temperature of the {_or(comparison.unseen)}.")
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
        return "all machines" if len(told) >= whole else f"{len(told)} machines"
    who = listed(told)
    run = finding.problem.fact("run")
    return f"{who}, {run}" if run and len(finding.run_ids) == 1 else who


def held_against(finding: Finding, comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What a finding could matter, by what model, and what that is held against."""
    model = point_of(finding).model
    if finding.matters_wh is None:
        return "How much it could matter in Wh, no model tells."
    told = f"It could matter {_wh(finding.matters_wh, locale)} a part"
    told += f", by {model}." if model else "."
    if finding.against_wh is None:
        return told
    than = "more" if finding.matters_wh > finding.against_wh else "less"
    alone = sum(m.energy_wh is not None for m in comparison.machines) < 2
    what = (
        "the half-width of the machine's interval"
        if alone
        else "the smallest difference that is shown, or left open, between a machine it touches and another"
    )
    return f"{told} That is {than} than {_wh(finding.against_wh, locale)}, {what}."


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
    level = f"{finding.level}, accepted ({finding.accepted})" if finding.accepted else finding.level
    return f"{level}: {sentence(finding.problem)}"


def counted(found: Sequence[Finding]) -> str:
    """How many points there are, and how grave.

    Examples
    --------
    >>> counted([])
    'no open points of fairness'
    """
    told = count(len(found), "open point of fairness", "open points of fairness")
    parts = [
        f"{n} {name if n == 1 else plural}"
        for level, name, plural in (
            ("unfair", "unfair", "unfair"),
            ("caution", "caution", "cautions"),
            ("note", "note", "notes"),
        )
        if (n := sum(f.level == level for f in found))
    ]
    return f"{told}: {', '.join(parts)}" if parts else told


def findings_table(comparison: Comparison, locale: NumberLocale = POINT) -> Table:
    """One row an open finding, the gravest first, as people read it."""
    columns = (
        Column("level", "Level", "left"),
        Column("what", "What", "left"),
        Column("of", "Of", "left"),
        Column("matters_wh", "Could matter [Wh]"),
        Column("against_wh", "Held against [Wh]"),
        Column("action", "What to do", "left"),
    )
    rows = tuple(
        (
            LEVEL_NAMES[f.level],
            point_of(f).name,
            of_whom(f, comparison),
            matters_text(f.matters_wh, locale),
            matters_text(f.against_wh, locale),
            ACTION_NAMES[point_of(f).action],
        )
        for f in comparison.open_findings
    )
    return Table("Fairness", columns, rows)


def _named(found: Sequence[Finding], comparison: Comparison) -> str:
    """The gravest kinds of finding, each once, and how many findings are left."""
    kinds: dict[str, list[Finding]] = {}
    for finding in found:
        kinds.setdefault(finding.problem.code, []).append(finding)
    told = [_kind(group, comparison) for group in list(kinds.values())[:_NAMED]]
    more = sum(len(group) for group in list(kinds.values())[_NAMED:])
    return listed([*told, f"{_in_words(more)} more"] if more else told)


def _kind(group: Sequence[Finding], comparison: Comparison) -> str:
    if len(group) == 1:
        return phrase(group[0], comparison)
    times = "twice" if len(group) == 2 else f"{_in_words(len(group))} times"
    return f"{point_of(group[0]).phrase} ({times})"


def _could(finding: Finding, locale: NumberLocale) -> str:
    if finding.matters_wh is None:
        return ""
    return f", which could matter {_wh(finding.matters_wh, locale)} a part"


def _wh(value_wh: float, locale: NumberLocale) -> str:
    return f"{number(value_wh, 1, locale) if value_wh >= 1 else matters_text(value_wh, locale)} Wh"


def _in_words(n: int) -> str:
    return _WORDS[n] if n < len(_WORDS) else str(n)


def _or(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', the '.join(words[:-1])} or the {words[-1]}"
