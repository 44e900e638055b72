"""How grave a finding is: what it could matter, held against the differences that the comparison shows.

Rules: a finding is held against the smallest of the differences shown between a machine it touches and
another, and, for pairs of which none is shown, of the half-widths of what the runs leave open; with one
machine alone, against the half-width of its mean. A caution that could matter more is unfair, and a note a
caution, as far as the kind of finding goes.
"""

from collections.abc import Mapping, Sequence

from attrs import evolve, frozen

from core.results.fairness_points import point_of
from core.results.values import Finding, Level, MachineResult, Pair

_LEVELS: tuple[Level, ...] = ("note", "caution", "unfair")


@frozen
class Difference:
    """Two machines and how far apart their energies are. [Wh]"""

    machine_id: str
    other_id: str
    wh: float
    is_shown: bool


def differences(machines: Sequence[MachineResult], pairs: Sequence[Pair]) -> tuple[Difference, ...]:
    """What the comparison can tell: differences that are shown, and for the others what is left open.

    Parameters
    ----------
    machines : sequence of MachineResult
    pairs : sequence of Pair
        Of these machines; one that nothing can be said of is passed over.
    """
    energies = {m.machine_id: m.energy_wh.value for m in machines if m.energy_wh is not None}
    told = []
    for pair in pairs:
        if pair.shown is None or pair.ratio_low is None or pair.ratio_high is None:
            continue
        one_wh, other_wh = energies[pair.machine_id], energies[pair.other_id]
        if pair.shown:
            told.append(Difference(pair.machine_id, pair.other_id, abs(one_wh - other_wh), True))
        else:
            half_wh = (pair.ratio_high - pair.ratio_low) / 2 * other_wh
            told.append(Difference(pair.machine_id, pair.other_id, half_wh, False))
    return tuple(told)


def smallest_shown(found: Sequence[Difference]) -> Difference | None:
    """The smallest difference shown between any two machines."""
    return min((d for d in found if d.is_shown), key=lambda d: d.wh, default=None)


def weighed(
    findings: Sequence[Finding], machines: Sequence[MachineResult], pairs: Sequence[Pair]
) -> tuple[Finding, ...]:
    """The findings with what they are held against, at the level that follows, gravest first.

    Parameters
    ----------
    findings : sequence of Finding
    machines : sequence of MachineResult
    pairs : sequence of Pair
    """
    nearest: dict[str, float] = {}
    for told in differences(machines, pairs):
        for machine_id in (told.machine_id, told.other_id):
            nearest[machine_id] = min(told.wh, nearest.get(machine_id, told.wh))
    for m in machines:
        if m.energy_wh is not None and m.energy_wh.u95 is not None:
            nearest.setdefault(m.machine_id, m.energy_wh.u95)
    done = [_weighed(finding, nearest) for finding in findings]
    return tuple(sorted(done, key=lambda f: (-_LEVELS.index(f.level), -(f.matters_wh or 0.0))))


def _weighed(finding: Finding, nearest: Mapping[str, float]) -> Finding:
    against = min((nearest[i] for i in finding.machine_ids if i in nearest), default=None)
    level = finding.level
    if finding.matters_wh is not None and against is not None and finding.matters_wh > against:
        raised = min(_LEVELS.index(level) + 1, _LEVELS.index(point_of(finding).most))
        level = _LEVELS[max(raised, _LEVELS.index(level))]
    return evolve(finding, level=level, against_wh=against)
