"""The answers of the command line as JSON values: names and meanings are a contract, keys are only added."""

import json
import math
from collections.abc import Mapping, Sequence

from core.logs import Reading
from core.results.values import BedShare, Comparison, MachineResult, Measured, RunResult
from core.study import Study
from core.wording import sentence

Json = Mapping[str, object] | Sequence[object] | str | float | int | bool | None

#: digits after the mark: a millionth of a watt hour, a microsecond
_DECIMALS = 6


def dumps(value: object) -> str:
    """JSON text; NaN and infinity never appear, unknown is null."""
    return json.dumps(_clean(value), indent=1, allow_nan=False)


def _clean(value: object) -> object:
    if isinstance(value, Mapping):
        return {str(key): _clean(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [_clean(item) for item in value]
    if isinstance(value, (str, bool, int)) or value is None:
        return value
    number = float(value)  # type: ignore[arg-type]  # NumPy's numbers are no float to the type checker
    return round(number, _DECIMALS) if math.isfinite(number) else None


def inspected(reading: Reading) -> dict[str, object]:
    """How one machine of a file was read."""
    trace = reading.trace
    clock = trace.clock if trace is not None else None
    return {
        "file": reading.file,
        "machine": reading.machine,
        "encoding": reading.encoding,
        "delimiter": reading.delimiter,
        "decimal": reading.decimal,
        "header_row": reading.header_row,
        "rows_read": reading.rows_read,
        "rows_refused": reading.rows_refused,
        "columns": [{"name": c.name, "quantity": c.quantity, "unit": c.unit} for c in reading.columns],
        "clock": {
            "kind": clock.kind if clock else None,
            "zone": clock.zone if clock else None,
            "start": clock.iso(0.0) if clock else None,
            "end": clock.iso(trace.end_s) if clock and trace is not None else None,
        },
        "sampling": {
            "kind": trace.kind if trace is not None else None,
            "median_s": trace.median_s if trace is not None else None,
            "p95_s": trace.p95_s if trace is not None else None,
            "max_s": trace.max_s if trace is not None else None,
        },
        "gaps": [
            {"start": clock.iso(gap.start_s), "start_s": gap.start_s, "seconds": gap.seconds}
            for gap in (trace.gaps if trace is not None else ())
            if clock is not None
        ],
        "energy_wh": {
            "by_power": reading.energy_by_power_wh,
            "by_counter": reading.energy_by_counter_wh,
            "used": reading.energy_used_wh,
        },
        "reasons": dict(reading.reasons),
        "refused": [{"row": r.row, "text": r.text, "why": sentence(r.why)} for r in reading.refused],
        "warnings": [sentence(p) for p in reading.problems],
    }


def compared(comparison: Comparison, study: Study, warnings: Sequence[str]) -> dict[str, object]:
    """The comparison: machines by energy per part."""
    names = {m.machine_id: m.name for m in comparison.machines}
    return {
        "part": comparison.part,
        "boundary": comparison.boundary,
        "headline": comparison.headline,
        "conditions": comparison.conditions,
        "machines": [_machine(machine, study) for machine in comparison.machines],
        "pairs": [
            {
                "machine": names[pair.machine_id],
                "other": names[pair.other_id],
                "ratio": pair.ratio,
                "ratio_low": pair.ratio_low,
                "ratio_high": pair.ratio_high,
                "p": pair.p,
                "shown": pair.shown,
                "runs_needed": pair.runs_needed,
                "needed_percent": pair.needed_percent,
            }
            for pair in comparison.pairs
        ],
        "fairness": [
            {
                "level": finding.level,
                "text": sentence(finding.problem),
                "machines": [names[m] for m in finding.machine_ids],
                "matters_wh": finding.matters_wh,
                "against_wh": finding.against_wh,
                "accepted": finding.accepted or None,
            }
            for finding in comparison.fairness
        ],
        "warnings": list(warnings),
    }


def _machine(machine: MachineResult, study: Study) -> dict[str, object]:
    files = machine.files
    of_run = {run.id: run.log_id for run in study.runs}
    names = {log.id: _one_or_list([s.file_name for s in log.sources]) for log in study.logs}
    return {
        "machine": machine.name,
        "file": _one_or_list(files),
        "runs": [_run(run, names.get(of_run.get(run.run_id, ""))) for run in machine.runs],
        "mean": {
            "energy_wh": _value(machine.energy_wh),
            "energy_u95_wh": _u95(machine.energy_wh),
            "seconds": _value(machine.seconds),
            "seconds_u95": _u95(machine.seconds),
            "mean_w": _value(machine.mean_w),
            "mean_w_u95": _u95(machine.mean_w),
            "parts_per_kwh": _value(machine.parts_per_kwh),
            "parts_per_kwh_u95": _u95(machine.parts_per_kwh),
            "bed_share": _value(machine.bed_share),
            "bed_share_u95": _u95(machine.bed_share),
            "runs": len(machine.included),
        },
        "standby_w": _value(machine.standby_w),
        "standby_w_u95": _u95(machine.standby_w),
        "standby_way": machine.standby_way,
    }


def _run(run: RunResult, file: object) -> dict[str, object]:
    return {
        "name": run.name,
        "file": file,
        "start_s": run.start_s,
        "end_s": run.end_s,
        "start": run.start,
        "part": run.part,
        "included": run.included,
        "why_excluded": run.why_excluded,
        "seconds": run.seconds,
        "energy_wh": run.energy_wh,
        "energy_u95_wh": run.energy_u95_wh,
        "energy_method": run.energy.method if run.energy is not None else None,
        "mean_w": run.mean_w,
        "parts_per_kwh": run.parts_per_kwh,
        "bed": _bed(run.bed),
        "states": [{"state": s.state, "start_s": s.start_s, "end_s": s.end_s} for s in run.states],
        "warnings": [sentence(p) for p in run.problems],
    }


def _bed(bed: BedShare | None) -> dict[str, object] | None:
    """The bed's part; with a null share where it cannot be seen, its bound and the reason beside it."""
    if bed is None or (bed.share is None and bed.at_least is None and bed.why_not is None):
        return None
    return {
        "share": bed.share,
        "share_u95": bed.share_u95,
        "energy_wh": bed.energy_wh,
        "method": bed.method,
        "at_least": bed.at_least,
        "at_most": bed.at_most,
        "why_not": sentence(bed.why_not) if bed.why_not is not None else None,
        "other_ways": [
            {"method": way.method, "share": way.share, "share_u95": way.share_u95} for way in bed.others
        ],
    }


def _value(measured: Measured | None) -> float | None:
    return None if measured is None else measured.value


def _u95(measured: Measured | None) -> float | None:
    return None if measured is None else measured.u95


def _one_or_list(names: Sequence[str]) -> object:
    if not names:
        return None
    return names[0] if len(names) == 1 else list(names)
