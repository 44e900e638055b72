"""What is known of the machines of a plan before its test: their runs, their scatter, their meters."""

import math
from collections import Counter
from collections.abc import Mapping, Sequence

from attrs import frozen

from core.plan.order import Turn, machines_of
from core.plan.scatter import scatter
from core.results.checked_meters import calibration
from core.results.values import MachineResult
from core.study import Meter, Study

#: a meter that nobody has named yet
UNNAMED = Meter("", "a meter")


@frozen
class Known:
    """A machine of the plan.

    Parameters
    ----------
    machine_id, name : str
    slot : int
    runs : int
        That count.
    spread : float or None
        Relative standard deviation between its runs; None with fewer than two.
    mean_w : float or None
        Mean power of its runs. [W]
    on_meters, planned : tuple of (str, int)
        By meter id: the runs so far, and those that the plan adds.
    """

    machine_id: str
    name: str
    slot: int
    runs: int
    spread: float | None
    mean_w: float | None
    on_meters: tuple[tuple[str, int], ...]
    planned: tuple[tuple[str, int], ...]

    @property
    def planned_runs(self) -> int:
        """Runs that the plan adds."""
        return sum(n for _, n in self.planned)

    def shares(self, runs: float) -> dict[str, float]:
        """Share of each meter in so many runs in all, those so far among them and the rest as planned."""
        more = max(runs - self.runs, 0.0)
        counts = {meter_id: float(n) for meter_id, n in self.on_meters}
        if not self.planned_runs:
            return _normed(counts)
        if math.isinf(more):
            return _normed({meter_id: float(n) for meter_id, n in self.planned})
        for meter_id, n in self.planned:
            counts[meter_id] = counts.get(meter_id, 0.0) + more * n / self.planned_runs
        return _normed(counts)


def _normed(counts: Mapping[str, float]) -> dict[str, float]:
    total = sum(counts.values())
    return {key: n / total for key, n in counts.items()} if total else {}


def known_machines(
    study: Study, results: Mapping[str, MachineResult], turns: Sequence[Turn]
) -> tuple[Known, ...]:
    """The machines of the study's plan, those of least energy first and those never measured last."""
    planned: dict[str, Counter[str]] = {m.id: Counter() for m in machines_of(study)}
    for turn in turns:
        planned[turn.machine_id][turn.meter_id] += 1
    used = _meters_used(study)
    found = []
    for machine in machines_of(study):
        result = results.get(machine.id)
        counted = result.included if result is not None else ()
        energies = [run.energy for run in counted if run.energy is not None]
        on_meters = Counter(used[run.run_id] for run in counted if run.run_id in used)
        mean_w = result.mean_w.value if result is not None and result.mean_w is not None else None
        found.append(
            Known(
                machine.id,
                machine.name,
                machine.slot,
                len(energies),
                scatter(energies),
                mean_w,
                tuple(sorted(on_meters.items())),
                tuple(sorted(planned[machine.id].items())),
            )
        )
    order = {machine_id: place for place, machine_id in enumerate(results)}
    return tuple(sorted(found, key=lambda m: (not m.runs, order.get(m.machine_id, len(order)))))


def _meters_used(study: Study) -> dict[str, str]:
    """Meter of each run and each reading."""
    of_log = {log.id: log.meter_id for log in study.logs}
    used = {run.id: of_log[run.log_id] for run in study.runs}
    return used | {typed.id: typed.meter_id for typed in study.typed}


@frozen(eq=False)
class Meters:
    """What the meters of a study leave open.

    Parameters
    ----------
    gains : mapping of str to tuple of (str, float)
        By meter id: relative standard uncertainties by the name of what causes each; same-load checks make
        meters share some.
    offsets_w : mapping of str to float
        Standard uncertainties. [W]
    """

    gains: Mapping[str, tuple[tuple[str, float], ...]]
    offsets_w: Mapping[str, float]

    def shared_u(
        self, first: Known, other: Known, shares: tuple[Mapping[str, float], Mapping[str, float]]
    ) -> float:
        """Relative standard uncertainty of the ratio of two machines that no repeat lessens.

        Parameters
        ----------
        first, other : Known
        shares : tuple of mapping
            Share of each meter in the runs of each machine.
        """
        by_cause: dict[str, float] = {}
        offsets = 0.0
        for meter_id in shares[0].keys() | shares[1].keys():
            one, two = (share.get(meter_id, 0.0) for share in shares)
            for cause, u in self.gains[meter_id]:
                by_cause[cause] = by_cause.get(cause, 0.0) + (one - two) * u
            if first.mean_w and other.mean_w:
                offsets += (self.offsets_w[meter_id] * (one / first.mean_w - two / other.mean_w)) ** 2
        return math.sqrt(math.fsum(u**2 for u in by_cause.values()) + offsets)


def meters_left_open(study: Study) -> Meters:
    """What stated accuracies and same-load checks leave open of each meter of a study."""
    known = calibration(study.meters, study.checks)
    meters = (*study.meters, UNNAMED)
    stated = {m.id: ((f"gain:{m.id}", m.gain_percent / 100 / math.sqrt(3)),) for m in meters}
    gains = stated if known is None else {**stated, **known.doubts}
    return Meters(gains, {m.id: m.offset_w / math.sqrt(3) for m in meters})
