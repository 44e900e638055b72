"""An explanation as Markdown, for the clipboard and the report."""

import re

from core.formatting import percent
from core.found.values import BudgetLine, Explanation
from core.language import tr

_SPECIAL = re.compile(r"([\\`*_{}\[\]<>#|~])")


def escaped(text: str) -> str:
    r"""Text that Markdown takes as it stands: names come from files and may hold anything.

    Examples
    --------
    >>> escaped("a*b|c")
    'a\\*b\\|c'
    """
    return " ".join(_SPECIAL.sub(r"\\\1", text).split())


def as_markdown(explanation: Explanation, level: int = 2) -> str:
    """The explanation under a heading of this level.

    Parameters
    ----------
    explanation : Explanation
    level : int
        1 for the largest heading; the parts stand one level below.
    """
    said = [f"{'#' * level} {escaped(explanation.title)}", "", f"**{escaped(explanation.value_text)}**", ""]
    part = "#" * (level + 1)
    if explanation.method:
        said += [
            f"{part} {tr('How it was found')}",
            "",
            " ".join(escaped(line) for line in explanation.method),
            "",
        ]
    if explanation.formula:
        said += [f"{part} {tr('In numbers')}", ""]
        said += [f"- {escaped(line)}" for line in explanation.formula] + [""]
    if explanation.budget:
        said += [f"{part} {tr('What makes it unsure')}", ""]
        said += [
            tr("| What | Standard uncertainty | Share of the variance | Shared with |"),
            "| --- | --- | --- | --- |",
        ]
        said += [_row(line) for line in explanation.budget] + [""]
    elif explanation.without_budget:
        said += [f"{part} {tr('What makes it unsure')}", "", escaped(explanation.without_budget), ""]
    for title, lines in (
        (tr("If it had been otherwise"), explanation.sensitivity),
        (tr("What would make it surer"), explanation.surer),
        (tr("Made of"), tuple(source.text for source in explanation.sources)),
        (tr("Keep in mind"), explanation.cautions),
    ):
        if lines:
            said += [f"{part} {title}", "", *(f"- {escaped(line)}" for line in lines), ""]
    return "\n".join(said)


def _row(line: BudgetLine) -> str:
    name = f"{line.title}: {line.why}" if line.why else line.title
    share = percent(line.share_of_variance)
    return f"| {escaped(name)} | {escaped(line.u_text)} | {share} | {escaped(line.shared_with)} |"
