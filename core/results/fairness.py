"""Was the test fair: what differs between the compared runs, how much each could matter, what to do about it.

Theory of operation: each rule looks at one machine (`fairness_runs`, `fairness_measuring`), or at the
compared machines together (`fairness_meters`, `fairness_conditions`, `fairness_order`), and says in Wh what
it found could matter where a model or a bound tells that; `fairness_weight` holds this against the
differences that the comparison shows and so finds the level; `fairness_accepted` puts back what the user has
accepted.
"""

from collections.abc import Sequence
from functools import lru_cache

from core.results import fairness_temperatures
from core.results.fairness_conditions import conditions_between, conditions_within
from core.results.fairness_measuring import counted_logs, of_measuring, unrepeated
from core.results.fairness_meters import meters_between
from core.results.fairness_order import order_between
from core.results.fairness_points import found
from core.results.fairness_runs import OUTLIER_RUNS, of_runs
from core.results.fairness_temperatures import StatedConditions
from core.results.fairness_weight import weighed
from core.results.machine import MachineInput, machine_result
from core.results.plausible import implausible
from core.results.values import Finding, MachineResult, Pair

#: so many samples the end of a warm-up may be off: nothing is made of less
EDGE_SAMPLES = 6.0


def findings(
    inputs: Sequence[MachineInput],
    order: Sequence[MachineResult],
    pairs: Sequence[Pair] = (),
    test: StatedConditions | None = None,
) -> tuple[Finding, ...]:
    """Everything worth knowing before the comparison is believed, gravest first.

    Parameters
    ----------
    inputs : sequence of MachineInput
    order : sequence of MachineResult
        In the order in which machines are told.
    pairs : sequence of Pair
        Of these machines: what could matter is held against them.
    test : StatedConditions, optional
        Temperatures of the test where a run has none of its own.
    """
    by_id = {given.machine.id: given for given in inputs}
    known = StatedConditions() if test is None else test
    compared = [by_id[m.machine_id] for m in order if m.energy_wh is not None]
    tests = sum(len(m.included) >= OUTLIER_RUNS for m in order)
    told = [f for m in order for f in _of_machine(by_id[m.machine_id], tests)]
    # a run that is odd by itself makes no drift
    odd = frozenset(run_id for f in told if f.level != "note" for run_id in f.run_ids)
    told += unrepeated(compared)
    told += meters_between(compared)
    told += conditions_between(compared, known)
    told += order_between(compared, known, odd)
    return weighed(told, order, pairs)


def forget() -> None:
    """Let go of everything remembered."""
    _of_machine.cache_clear()
    fairness_temperatures.forget()


@lru_cache(maxsize=4096)
def _of_machine(given: MachineInput, tests: int) -> tuple[Finding, ...]:
    """What can be said of one machine by itself; outliers are looked for among `tests` machines."""
    result = machine_result(given)
    if not result.included:
        made_or_typed = bool(given.typed) or any(log.seen is not None for log in given.logs)
        ids = (result.machine_id,)
        return (
            (found("caution", "fair.no_run", ids, facts={"machine": result.name}),) if made_or_typed else ()
        )
    traces = [log.seen.trace for log in counted_logs(given) if log.seen is not None]
    edge_s = EDGE_SAMPLES * max((trace.median_s for trace in traces), default=0.0)
    return (
        *of_runs(result, edge_s, tests),
        *of_measuring(given, result),
        *conditions_within(given),
        *implausible(given, result),
    )
