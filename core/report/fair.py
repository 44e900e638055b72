"""What was not alike, how much it could matter, and what was accepted with which reason."""

from collections.abc import Iterator, Sequence

from core.formatting import number
from core.language import mark, tr
from core.report.blocks import Block, Bullets, Heading, Paragraph, PictureBlock
from core.report.pictures import Picture
from core.results import fairness_answer
from core.results.values import Comparison, Finding, Level
from core.wording import sentence

_LEVELS: tuple[tuple[Level, str], ...] = (
    ("unfair", mark("Unfair: it could matter more than the difference it is held against")),
    ("caution", mark("To be cautious about")),
    ("note", mark("To be noted")),
)
#: what could matter less than this is not put into figures [Wh]
_LEAST_WH = 0.005
_UNSEEN = mark(
    "What no log and no note shows was not looked at: draughts, another roll of material, other settings."
)


def fair(comparison: Comparison, pictures: Sequence[Picture] = ()) -> Iterator[Block]:
    """The part on fairness."""
    yield Heading(tr("Fairness"))
    found = comparison.open_findings
    accepted = comparison.accepted_findings
    yield Paragraph(fairness_answer.headline(comparison), "answer")
    yield from (PictureBlock(picture) for picture in pictures)
    for level, title in _LEVELS:
        lines = _lines([f for f in found if f.level == level])
        if lines:
            yield Heading(tr(title), 3)
            yield Bullets(lines)
    if accepted:
        yield Heading(tr("Accepted, with the reason"), 3)
        yield Bullets(
            tuple(
                tr("{finding} Accepted: {reason}", finding=sentence(f.problem), reason=_ended(f.accepted))
                for f in accepted
            )
        )
    if comparison.accepted_before:
        yield Heading(tr("Accepted earlier, and no longer found"), 3)
        yield Bullets(
            tuple(
                tr("{finding} Accepted then: {reason}", finding=a.said, reason=_ended(a.why))
                for a in comparison.accepted_before
            )
        )
    yield Paragraph(tr(_UNSEEN), "note")


def _lines(findings: Sequence[Finding]) -> tuple[str, ...]:
    lines = []
    for finding in findings:
        said = [sentence(finding.problem)]
        if finding.matters_wh is not None and finding.matters_wh >= _LEAST_WH:
            said.append(tr("It could matter {energy} Wh a part.", energy=number(finding.matters_wh, 2)))
        if finding.lapsed:
            said.append(
                tr(
                    "It was accepted when it was less grave ({reason}); that holds no longer.",
                    reason=finding.lapsed,
                )
            )
        lines.append(" ".join(said))
    return tuple(lines)


def _ended(text: str) -> str:
    """A person's words, closed by a full stop."""
    return text if text.endswith((".", "!", "?")) else f"{text}."
