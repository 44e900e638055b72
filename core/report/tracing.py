"""How each number was found: the energy of every machine with its budget, then its bed and its standby."""

from collections.abc import Collection, Iterator

from core.formatting import POINT
from core.found.asking import explain
from core.found.budgets import LEAST_SHARE, described
from core.found.values import RATIO, Explanation
from core.language import mark, tr
from core.progress import Progress, part
from core.publish.sources import Sources
from core.report.blocks import Block, Bullets, Heading, Paragraph
from core.wording import sentence

#: machines whose numbers are traced one by one; of a farm the tables and the bundle hold the others
MOST_MACHINES = 12
_QUANTITIES = ("energy_wh", "bed_share", "standby_w")
_DERIVED = mark(
    "Parts per kWh is 1000 Wh divided by a machine’s mean energy per part, mean power its mean energy "
    "divided by its mean duration; their intervals are that of the energy, in the same proportion."
)


def found(sources: Sources, progress: Progress) -> Iterator[Block]:
    """The part on how numbers were found.

    Parameters
    ----------
    sources : Sources
    progress : Progress
        Told of every machine; may raise `Cancelled`.
    """
    known = [m for m in sources.comparison.machines if m.energy_wh is not None]
    if not known:
        return
    yield Heading(tr("How each number was found"))
    yield Paragraph(tr(_DERIVED))
    if len(known) > MOST_MACHINES:
        rest = tr(
            "Told of the first {told} machines; the tables hold the other {count:machine|machines}.",
            told=MOST_MACHINES,
            count=len(known) - MOST_MACHINES,
        )
        yield Paragraph(rest, "note")
    said = frozenset(sentence(finding.problem) for finding in sources.comparison.fairness)
    if len(known) > 1:
        yield from _told(_explained(sources, known[0].machine_id, RATIO, part(progress, 0.0, 0.0)), said)
    for i, machine in enumerate(known[:MOST_MACHINES]):
        here = part(progress, i / min(len(known), MOST_MACHINES), (i + 1) / min(len(known), MOST_MACHINES))
        here(0.0, tr("how the numbers of {machine} were found", machine=machine.name))
        for key in _QUANTITIES:
            yield from _told(_explained(sources, machine.machine_id, key, here), said)


def _explained(sources: Sources, machine_id: str, key: str, progress: Progress) -> Explanation | None:
    drawn = sources.drawable
    return explain(
        sources.comparison,
        sources.study,
        drawn.traces,
        machine_id,
        key,
        activities=drawn.activities,
        progress=progress,
    )


def _told(explanation: Explanation | None, said: Collection[str]) -> Iterator[Block]:
    """An explanation, without the cautions that the part on fairness has said already."""
    if explanation is None:
        return
    yield Heading(explanation.title, 3)
    yield Paragraph(explanation.value_text, "number")
    if explanation.method:
        yield Paragraph(" ".join(explanation.method))
    if explanation.formula:
        yield Bullets(explanation.formula, "formula")
    budget = tuple(
        described(line, POINT) for line in explanation.budget if line.share_of_variance >= LEAST_SHARE
    )
    if budget:
        yield Paragraph("", lead=tr("What makes it unsure, as standard uncertainties:"))
        yield Bullets(budget)
    elif explanation.without_budget:
        yield Paragraph(explanation.without_budget)
    if explanation.sensitivity:
        yield Paragraph("", lead=tr("If it had been otherwise:"))
        yield Bullets(explanation.sensitivity)
    if explanation.surer:
        yield Paragraph("", lead=tr("What would make it surer:"))
        yield Bullets(explanation.surer)
    if explanation.sources:
        yield Paragraph("; ".join(source.text for source in explanation.sources), lead=tr("Made of:"))
    yield from (Paragraph(caution, "caution") for caution in explanation.cautions if caution not in said)
