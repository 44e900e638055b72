"""Edits of what is done about a point of fairness: accepted for a reason, handed back, or planned again."""

from attrs import evolve

from core.edits.edit import Edit
from core.edits.plan import plan_extra
from core.edits.runs import hand_back
from core.language import tr
from core.results.values import Finding
from core.study import AcceptedFinding, Study
from core.wording import sentence

#: runs that make up for too few of them
_MISSING = {"fair.no_run": 3, "fair.one_run": 2, "fair.few_runs": 1}


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
    return Edit(evolve(study, accepted=(*others, accepted)), tr("Accept a point of fairness"))


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
    return Edit(evolve(study, accepted=left), tr("Let a point of fairness count again"))


def plan_again(study: Study, finding: Finding) -> Edit:
    """Plan the runs that a point of fairness asks for: those that are missing, or all of a machine again.

    Where it touches every machine the plan's own blocks hold its runs already, and nothing is added.
    """
    planned = {extra.machine_id: extra.runs for extra in study.plan.extra}
    changed = study
    if len(finding.machine_ids) < max(len(study.machines), 2):
        for machine_id in finding.machine_ids:
            runs = _MISSING.get(finding.problem.code, _runs_of(study, machine_id))
            changed = plan_extra(changed, machine_id, max(runs, planned.get(machine_id, 0))).study
    return Edit(changed, tr("Plan runs to be made again"))


def hand_back_runs(study: Study, run_ids: tuple[str, ...]) -> Edit:
    """Hand several runs back to the program: their edges, their kinds, and whether they count."""
    changed = study
    for run_id in run_ids:
        changed = hand_back(changed, run_id).study
    return Edit(changed, tr("Hand runs back to the program"))


def _runs_of(study: Study, machine_id: str) -> int:
    logs = {log.id for log in study.logs_of(machine_id)}
    logged = sum(run.log_id in logs and run.included for run in study.runs)
    typed = sum(t.machine_id == machine_id and t.included for t in study.typed)
    return max(logged + typed, 1)
