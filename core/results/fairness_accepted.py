"""Points of fairness that the user has accepted, put back on those that are found.

Rules: an acceptance is known by the key of its finding. It holds as long as the finding is no graver than it
was; of a graver one, or one that is no longer found, it is told that it holds no longer.
"""

from collections.abc import Sequence

from attrs import evolve

from core.results.values import Finding, Level
from core.study import AcceptedFinding

_LEVELS: tuple[Level, ...] = ("note", "caution", "unfair")


def with_acceptances(
    findings: Sequence[Finding], accepted: Sequence[AcceptedFinding]
) -> tuple[tuple[Finding, ...], tuple[AcceptedFinding, ...]]:
    """The findings with what was accepted of them, and what was accepted and is found no more.

    Parameters
    ----------
    findings : sequence of Finding
    accepted : sequence of AcceptedFinding

    Returns
    -------
    findings, gone : tuples
    """
    by_key = {each.key: each for each in accepted}
    told = []
    for finding in findings:
        known = by_key.pop(finding.key, None)
        if known is None:
            told.append(finding)
        elif _LEVELS.index(finding.level) <= _LEVELS.index(known.level):
            told.append(evolve(finding, accepted=known.why))
        else:
            told.append(evolve(finding, lapsed=known.why))
    return tuple(told), tuple(by_key.values())
