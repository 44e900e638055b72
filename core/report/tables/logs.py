"""What was measured with what: the meters and their accuracy, and the logs with their digests."""

from pathlib import PurePath

from core.energy.clock_ticks import moment
from core.formatting import UNKNOWN, duration
from core.language import mark, tr
from core.publish.sources import Sources
from core.report.tables.cells import machine_column
from core.study import Log
from core.tables import Cell, Column, Table
from core.traces import Trace

#: characters of a digest that tell files apart for a reader; files have all of it
_DIGEST_SHOWN = 12
#: as files tell them
_KINDS = {"sampled": "sampled", "averaged": "averaged", "on_change": "on change"}
_ACCURACY_NOTE = mark(
    "± are half-widths of rectangular distributions. What nobody stated is taken as ±1 % of reading and "
    "±0.3 W (common practice, no source)."
)
_DIGEST_NOTE = mark("SHA-256 is that of the file as it was imported: any other file has another one.")


def meters_table(sources: Sources) -> Table:
    """One row a meter."""
    columns = (
        Column("meter", tr("Meter"), "left"),
        Column("gain_percent", tr("± of reading [%]"), decimals=2),
        Column("offset_w", tr("± at any load [W]"), decimals=2),
        Column("accuracy", tr("Accuracy"), "left"),
        Column("machines", tr("Used on"), "left"),
    )
    study = sources.study
    rows: list[tuple[Cell, ...]] = []
    for meter in study.meters:
        used = [log.machine_id for log in study.logs if log.meter_id == meter.id]
        used += [typed.machine_id for typed in study.typed if typed.meter_id == meter.id]
        names = ", ".join(m.name for m in study.machines if m.id in used)
        stated = tr("stated") if meter.stated else tr("assumed")
        rows.append((meter.name, meter.gain_percent, meter.offset_w, stated, names))
    return Table(tr("Meters"), columns, tuple(rows), (tr(_ACCURACY_NOTE),))


def logs_table(sources: Sources) -> Table:
    """One row a file, in full; a log that was not read has only its name and digest."""
    columns = (
        machine_column(),
        Column("file", tr("File"), "left"),
        Column("device", tr("Device in it"), "left"),
        Column("sha256", "SHA-256", "left"),
        Column("meter", tr("Meter"), "left"),
        Column("of_bed", tr("Bed alone"), "left"),
        Column("kind", tr("Values"), "left"),
        Column("rows", tr("Samples"), decimals=0),
        Column("median_s", tr("Step, median [s]"), decimals=2),
        Column("seconds", tr("Length [s]"), decimals=0),
        Column("start", tr("Start"), "left"),
        Column("gaps", tr("Gaps"), decimals=0),
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
    return Table(tr("Logs"), columns, tuple(rows), (tr(_DIGEST_NOTE),))


def readable_logs(sources: Sources) -> Table:
    """The same, as people read it."""
    columns = (
        machine_column(),
        Column("file", tr("File"), "left"),
        Column("values", tr("Values"), "left"),
        Column("start", tr("From"), "left"),
        Column("length", tr("Length")),
        Column("gaps", tr("Gaps")),
        Column("sha256", "SHA-256", "left"),
    )
    rows: list[tuple[Cell, ...]] = []
    for name, log, trace in _logs(sources):
        for source in log.sources:
            digest = f"{source.digest[:_DIGEST_SHOWN]}…"
            file = PurePath(source.file_name).name
            if log.of_bed:
                file = tr("{file} (bed alone)", file=file)
            if trace is None:
                rows.append((name, file, tr("not read"), "", UNKNOWN, UNKNOWN, digest))
                continue
            rows.append(
                (
                    name,
                    file,
                    _values(trace),
                    moment(trace.clock, 0.0),
                    duration(trace.end_s),
                    str(len(trace.gaps)) if trace.gaps else tr("none"),
                    digest,
                )
            )
    return Table(tr("Logs"), columns, tuple(rows), (tr(_DIGEST_NOTE),))


def _logs(sources: Sources) -> list[tuple[str, Log, Trace | None]]:
    traces = sources.drawable.traces
    return [
        (machine.name, log, traces.get(log.id))
        for machine in sources.study.machines
        for log in sources.study.logs_of(machine.id)
    ]


def _values(trace: Trace) -> str:
    if trace.kind == "on_change":
        return tr("on change")
    seconds = f"{trace.median_s:g}"
    if trace.kind == "averaged":
        return tr("averaged every {seconds} s", seconds=seconds)
    return tr("sampled every {seconds} s", seconds=seconds)
