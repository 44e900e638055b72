"""Edits of what the user makes of a point of fairness: it is accepted for a reason, or no longer."""

from attrs import evolve

from core.edits.edit import Edit
from core.results.values import Finding
from core.study import AcceptedFinding, Study
from core.wording import sentence


def accept_finding(study: Study, finding: Finding, why: str) -> Edit:
    """Accept a point of fairness for a reason; it stays listed, with the reason, and is not counted.

    It holds until the point changes in kind or becomes graver.

    Raises
    ------
    ValueError
        If no reason is given, or the finding has no key to know it by.
    """
    reason = " ".join(why.split())
    if not reason:
        raise ValueError("what is accepted needs a reason")
    if not finding.key:
        raise ValueError("a finding without a key cannot be known again")
    accepted = AcceptedFinding(finding.key, finding.level, sentence(finding.problem), reason)
    others = tuple(a for a in study.accepted if a.key != finding.key)
    return Edit(evolve(study, accepted=(*others, accepted)), "Accept a point of fairness")


def take_back_acceptance(study: Study, key: str) -> Edit:
    """Let an accepted point of fairness count again, or forget one that is no longer found.

    Raises
    ------
    ValueError
        If nothing was accepted under this key.
    """
    left = tuple(a for a in study.accepted if a.key != key)
    if len(left) == len(study.accepted):
        raise ValueError(f"nothing was accepted under {key!r}")
    return Edit(evolve(study, accepted=left), "Let a point of fairness count again")
