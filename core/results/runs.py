"""What one run used: its energy, its bed's part, its states, and whether it counts.

Theory of operation: `measure` depends only on a trace, two moments, the boundary and the meter, and is
remembered by exactly those, so that renaming a run or leaving one out computes nothing again. Everything
else here is assembling.
"""

from functools import lru_cache
from typing import TYPE_CHECKING

from attrs import evolve, field, frozen

from core.activity import Activity, find
from core.faults import facts_of
from core.formatting import percent
from core.problems import Problem, Severity
from core.results.values import BedShare, Energy, RunResult, StateSpan
from core.study import Boundary, Kind, Meter, Run
from core.traces import Trace
from core.units import mean_w, parts_per_kwh
from core.wording import reason, sentence

if TYPE_CHECKING:
    from core.loads.same_load import Calibration

#: more of a run's time than this in gaps that no counter bridges: it is left out
GAPS_TOO_LONG = 0.05
#: kinds that have made a part, and those that have at least tried to
WHOLE: tuple[Kind, ...] = ("run", "other part")
MAKING: tuple[Kind, ...] = ("run", "other part", "broken off", "cut")


def called_by_kind(kind: Kind) -> str:
    """What a stretch of this kind is called: whatever made a part, or tried to, is a run."""
    return "run" if kind in MAKING else "stretch" if kind == "nothing" else kind


@frozen
class Measurement:
    """What an interval of a trace used within the boundary. [s]"""

    start_s: float
    end_s: float
    energy: Energy
    bed: BedShare | None
    states: tuple[StateSpan, ...]
    u95_wh: float | None


@frozen
class Seen:
    """A trace with what was found in it; the trace alone is the identity."""

    trace: Trace
    activity: Activity = field(eq=False, repr=False)


@lru_cache(maxsize=4096)
def _found(trace: Trace) -> Activity:
    return find(trace)


def seen(trace: Trace, activity: Activity | None = None) -> Seen:
    """The trace with its activity, found now if nobody has done so yet."""
    return Seen(trace, _found(trace) if activity is None else activity)


@lru_cache(maxsize=32_768)
def measure(log: Seen, start_s: float, end_s: float, boundary: Boundary, meter: Meter) -> Measurement | None:
    """Measure a stretch of a log.

    Parameters
    ----------
    log : Seen
    start_s, end_s : float
        Edges of the stretch on the log's clock. [s]
    boundary : Boundary
    meter : Meter

    Returns
    -------
    Measurement or None
        None when the edges leave nothing of the log between them.
    """
    from core import states
    from core.energy.total import between
    from core.uncertainty import u95_of

    trace, activity = log.trace, log.activity
    start_s, end_s = max(0.0, start_s), min(trace.end_s, end_s)
    if not end_s > start_s:
        return None
    from_s, to_s = states.bounds(trace, activity, start_s, end_s, boundary)
    if not to_s > from_s:
        return None
    used = between(trace, from_s, to_s, meter)
    spans = states.states(trace, activity, start_s, end_s)
    warm_end_s = next((s.end_s for s in spans if s.state == "warm-up"), start_s)
    warm_end_s = min(max(warm_end_s, from_s), end_s)
    return Measurement(
        start_s=from_s,
        end_s=to_s,
        energy=used,
        bed=_bed_share(log, used, from_s, warm_end_s, end_s, to_s, meter),
        states=spans,
        u95_wh=u95_of(used),
    )


def _bed_share(
    log: Seen, used: Energy, from_s: float, warm_end_s: float, end_s: float, to_s: float, meter: Meter
) -> BedShare:
    """The bed's part of `used`: found up to the end of processing, because afterwards its heater is off."""
    from core.beds.share import share
    from core.energy.total import between

    making = used if to_s <= end_s else between(log.trace, from_s, end_s, meter)
    found = share(log.trace, from_s, warm_end_s, end_s, making, log.activity.standby_w)
    if making is used or used.energy_wh <= 0:
        return found
    part = making.energy_wh / used.energy_wh

    def of_whole(share: float | None) -> float | None:
        return None if share is None else share * part

    return evolve(
        found,
        share=of_whole(found.share),
        share_u95=of_whole(found.share_u95),
        at_least=of_whole(found.at_least),
        at_most=of_whole(found.at_most),
    )


def forget() -> None:
    """Let go of everything remembered, and of the traces with it: when a study is closed."""
    from core.energy import total

    total.forget()
    _found.cache_clear()
    measure.cache_clear()


def run_result(
    run: Run,
    machine_id: str,
    called: str,
    log: Seen | None,
    boundary: Boundary,
    meter: Meter,
    checked: "Calibration | None" = None,
) -> RunResult:
    """The result of one stretch of a log.

    Parameters
    ----------
    run : Run
    machine_id : str
    called : str
        What to call a stretch that was given no name, such as ``"run 2"``.
    log : Seen or None
        None when the log has not been read: then nothing is known of it.
    boundary : Boundary
    meter : Meter
    checked : Calibration, optional
        What same-load checks tell of the meter.
    """
    from core.uncertainty import u95_of

    fault: Problem | None = None
    measured: Measurement | None = None
    if log is not None:
        try:
            measured = measure(log, run.start_s, run.end_s, boundary, meter)
        except Exception as error:  # noqa: BLE001  # a fault of ours in one run must not cost the others
            fault = Problem("stretch.fault", Severity.ERROR, facts=facts_of(error))
    why = sentence(fault) if fault is not None else _why_excluded(run, log, measured)
    result = RunResult(
        run_id=run.id,
        machine_id=machine_id,
        name=run.name or called,
        start_s=run.start_s,
        end_s=run.end_s,
        start=None if log is None else log.trace.clock.iso(run.start_s),
        part=run.found_part or "none",
        included=why is None,
        why_excluded=why,
        decided_by_user=run.is_moved or run.set_kind is not None or run.set_included is not None,
        left_out_by_user=why is not None and _is_left_out_by_user(run),
        seconds=None,
        energy_wh=None,
        energy_u95_wh=None,
        mean_w=None,
        parts_per_kwh=None,
        energy=None,
        bed=None,
    )
    if measured is None:
        return result
    seconds = measured.end_s - measured.start_s
    used, u95_wh = as_checked(measured.energy, meter, checked), measured.u95_wh
    used_wh = used.energy_wh
    is_part = run.kind in MAKING
    bed = measured.bed if is_part else None
    if used is not measured.energy:
        u95_wh = u95_of(used)
        scale = used_wh / measured.energy.energy_wh if measured.energy.energy_wh else 1.0
        if bed is not None and bed.energy_wh is not None:
            bed = evolve(bed, energy_wh=bed.energy_wh * scale)
    return evolve(
        result,
        seconds=seconds,
        energy_wh=used_wh,
        energy_u95_wh=u95_wh,
        mean_w=mean_w(used_wh, seconds),
        parts_per_kwh=parts_per_kwh(used_wh) if run.kind in WHOLE and used_wh > 0 else None,
        energy=used,
        bed=bed,
        states=measured.states if is_part else (),
        problems=used.problems,
    )


def _is_left_out_by_user(run: Run) -> bool:
    """Whether it is the user who keeps it out, and of something that the program may take for a run."""
    if run.set_included is False:
        return True
    seen_as_run = run.found_start_s is not None and run.found_kind in WHOLE
    return run.set_kind is not None and (seen_as_run or run.kind in MAKING)


def as_checked(energy: Energy, meter: Meter, checked: "Calibration | None") -> Energy:
    """The energy as same-load checks correct and narrow it; itself where there are none."""
    if checked is None:
        return energy
    from core.loads.same_load import corrected

    return corrected(energy, meter, checked)


def _why_excluded(run: Run, log: Seen | None, measured: Measurement | None) -> str | None:
    """Why a stretch does not count; None when it does. The user's word wins where there is an energy."""
    if log is None:
        return reason("stretch.no_trace")
    if measured is None:
        return reason("stretch.too_short")
    if run.set_included is False:
        if run.why_left_out:
            return reason("stretch.left_out", reason=run.why_left_out)
        return reason("stretch.left_out_no_reason")
    if run.set_bed_off and run.set_included is None:
        return reason("stretch.bed_off")
    if not run.included:
        told = run.found_why if run.set_kind is None else ""
        return reason(told or f"stretch.{run.kind}")
    used = measured.energy
    if run.set_included is None and used.untold_gap_share > GAPS_TOO_LONG:
        return reason("stretch.gaps", share=percent(used.untold_gap_share, 1))
    return None
