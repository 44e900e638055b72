"""What was measured with what: the meters and their accuracy, and the logs with their digests."""

from pathlib import PurePath

from core.energy.clock_ticks import moment
from core.formatting import UNKNOWN, duration
from core.publish.sources import Sources
from core.report.tables.cells import MACHINE
from core.study import Log
from core.tables import Cell, Column, Table
from core.traces import Trace

#: characters of a digest that tell files apart for a reader; files have all of it
_DIGEST_SHOWN = 12
_KINDS = {"sampled": "sampled", "averaged": "averaged", "on_change": "on change"}
_ACCURACY_NOTE = (
    "± are half-widths of rectangular distributions. What nobody stated is taken as ±1 % of reading and "
    "±0.3 W (common practice, no source)."
)
_DIGEST_NOTE = "SHA-256 is that of the file as it was imported: any other file has another one."


def meters_table(sources: Sources) -> Table:
    """One row a meter."""
    columns = (
        Column("meter", "Meter", "left"),
        Column("gain_percent", "± of reading [%]", decimals=2),
        Column("offset_w", "± at any load [W]", decimals=2),
        Column("accuracy", "Accuracy", "left"),
        Column("machines", "Used on", "left"),
    )
    study = sources.study
    rows: list[tuple[Cell, ...]] = []
    for meter in study.meters:
        used = [log.machine_id for log in study.logs if log.meter_id == meter.id]
        used += [typed.machine_id for typed in study.typed if typed.meter_id == meter.id]
        names = ", ".join(m.name for m in study.machines if m.id in used)
        stated = "stated" if meter.stated else "assumed"
        rows.append((meter.name, meter.gain_percent, meter.offset_w, stated, names))
    return Table("Meters", columns, tuple(rows), (_ACCURACY_NOTE,))


def logs_table(sources: Sources) -> Table:
    """One row a file, in full; a log that was not read has only its name and digest."""
    columns = (
        MACHINE,
        Column("file", "File", "left"),
        Column("device", "Device in it", "left"),
        Column("sha256", "SHA-256", "left"),
        Column("meter", "Meter", "left"),
        Column("of_bed", "Bed alone", "left"),
        Column("kind", "Values", "left"),
        Column("rows", "Samples", decimals=0),
        Column("median_s", "Step, median [s]", decimals=2),
        Column("seconds", "Length [s]", decimals=0),
        Column("start", "Start", "left"),
        Column("gaps", "Gaps", decimals=0),
    )
    rows: list[tuple[Cell, ...]] = []
    for name, log, trace in _logs(sources):
        for source in log.sources:
            file = PurePath(source.file_name).name
            said = (name, file, source.device or "", source.digest, sources.study.meter(log.meter_id).name)
            if trace is None:
                rows.append((*said, log.of_bed, "", None, None, None, "", None))
                continue
            rows.append(
                (
                    *said,
                    log.of_bed,
                    _KINDS[trace.kind],
                    trace.time_s.size,
                    trace.median_s,
                    trace.end_s,
                    trace.clock.iso(0.0) or "",
                    len(trace.gaps),
                )
            )
    return Table("Logs", columns, tuple(rows), (_DIGEST_NOTE,))


def readable_logs(sources: Sources) -> Table:
    """The same, as people read it."""
    columns = (
        MACHINE,
        Column("file", "File", "left"),
        Column("values", "Values", "left"),
        Column("start", "From", "left"),
        Column("length", "Length"),
        Column("gaps", "Gaps"),
        Column("sha256", "SHA-256", "left"),
    )
    rows: list[tuple[Cell, ...]] = []
    for name, log, trace in _logs(sources):
        for source in log.sources:
            digest = f"{source.digest[:_DIGEST_SHOWN]}…"
            file = PurePath(source.file_name).name + (" (bed alone)" if log.of_bed else "")
            if trace is None:
                rows.append((name, file, "not read", "", UNKNOWN, UNKNOWN, digest))
                continue
            rows.append(
                (
                    name,
                    file,
                    _values(trace),
                    moment(trace.clock, 0.0),
                    duration(trace.end_s),
                    str(len(trace.gaps)) if trace.gaps else "none",
                    digest,
                )
            )
    return Table("Logs", columns, tuple(rows), (_DIGEST_NOTE,))


def _logs(sources: Sources) -> list[tuple[str, Log, Trace | None]]:
    traces = sources.drawable.traces
    return [
        (machine.name, log, traces.get(log.id))
        for machine in sources.study.machines
        for log in sources.study.logs_of(machine.id)
    ]


def _values(trace: Trace) -> str:
    if trace.kind == "on_change":
        return "on change"
    return f"{_KINDS[trace.kind]} every {trace.median_s:g} s"
