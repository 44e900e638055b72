"""Runs of which only readings of a meter's display are known."""

from typing import TYPE_CHECKING

from core.language import tr
from core.problems import Problem, Severity
from core.results.runs import as_checked
from core.results.values import Energy, Influence, RunResult
from core.study import Meter, TypedReading
from core.units import SECONDS_PER_HOUR, mean_w, parts_per_kwh
from core.wording import reason

if TYPE_CHECKING:
    from core.loads.same_load import Calibration


def typed_result(
    typed: TypedReading, number: int, meter: Meter, checked: "Calibration | None" = None
) -> RunResult:
    """The result of readings of a display: wider than that of a log, and with no bed's part.

    Parameters
    ----------
    typed : TypedReading
    number : int
        Its place among the machine's readings, from 1, for one without a note.
    meter : Meter
    checked : Calibration, optional
        What same-load checks tell of the meter.
    """
    from core.uncertainty import u95_of

    used = as_checked(typed_energy(typed, meter), meter, checked)
    seconds = typed.seconds
    has_energy = used.energy_wh > 0
    left_out = reason("stretch.left_out", reason=typed.why_left_out) if typed.why_left_out else None
    return RunResult(
        run_id=typed.id,
        machine_id=typed.machine_id,
        name=typed.note or tr("reading {place}", place=str(number)),
        start_s=None,
        end_s=None,
        start=typed.started or None,
        part="A",
        included=typed.included and has_energy,
        why_excluded=None
        if typed.included and has_energy
        else left_out or reason("stretch.left_out_no_reason" if has_energy else "stretch.no_energy"),
        decided_by_user=True,
        left_out_by_user=not typed.included,
        seconds=seconds,
        energy_wh=used.energy_wh,
        energy_u95_wh=u95_of(used),
        mean_w=mean_w(used.energy_wh, seconds) if seconds else None,
        parts_per_kwh=parts_per_kwh(used.energy_wh) if has_energy else None,
        energy=used,
        bed=None,
    )


def typed_energy(typed: TypedReading, meter: Meter) -> Energy:
    """Energy between two readings of a display, with what makes it unsure.

    Each reading may be off by half a step of the display: together a triangular distribution of half-width
    one step, so u = step / sqrt(6) (JCGM 100:2008, 4.3.9). An unknown duration is taken as an hour in the
    meter's offset, with the remark that it was not noted.
    """
    hours = (typed.seconds or SECONDS_PER_HOUR) / SECONDS_PER_HOUR
    unknown = () if typed.seconds else (Problem("typed.no_duration", Severity.NOTE),)
    influences = (
        Influence("meter gain", typed.energy_wh * meter.gain_percent / 100 / 3**0.5, f"gain:{meter.id}"),
        Influence("meter offset", meter.offset_w / 3**0.5 * hours, f"offset:{meter.id}"),
        Influence("display step", typed.step_wh / 6**0.5),
    )
    return Energy(
        energy_wh=typed.energy_wh,
        influences=tuple(i for i in influences if i.u_wh > 0),
        method="typed",
        problems=unknown,
    )
