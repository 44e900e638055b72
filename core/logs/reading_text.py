"""How a log was read, as lines for a terminal."""

from core.formatting import count, duration, number
from core.logs import Reading
from core.traces import Trace
from core.wording import sentence

#: so many gaps are listed before they are only counted
_GAPS_TOLD = 5
_SIGNS = {",": "comma", ".": "point"}


def reading_text(reading: Reading) -> str:
    """One machine of a file: choices, columns, clock, sampling, gaps, energy, warnings."""
    lines = [f"{reading.file}: {reading.machine}"]

    def line(name: str, text: str) -> None:
        lines.append(f"  {name:<10} {text}")

    line("read as", _form(reading))
    line("rows", f"{reading.rows_read} read, {reading.rows_refused} refused")
    line(
        "columns",
        "; ".join(f"{c.name} = {c.quantity}{f' [{c.unit}]' if c.unit else ''}" for c in reading.columns),
    )
    if reading.trace is not None:
        for name, text in _trace_lines(reading.trace):
            line(name, text)
    line("energy", _energy(reading))
    for problem in reading.problems:
        line("warning", sentence(problem))
    return "\n".join(lines)


def _form(reading: Reading) -> str:
    signs = {"\t": "tab", ",": "comma", ";": "semicolon", "|": "bar", " ": "spaces"}
    parts = [reading.encoding or "no text encoding"]
    if reading.delimiter:
        parts.append(f"columns parted by {signs.get(reading.delimiter, reading.delimiter)}")
    if reading.decimal:
        parts.append(f"decimal {_SIGNS[reading.decimal]}")
        parts += [f"decimal {_SIGNS[c.decimal]} in {c.name!r}" for c in reading.columns if c.decimal]
    parts.append("no heading" if reading.header_row is None else f"heading in row {reading.header_row}")
    return ", ".join(parts)


def _trace_lines(trace: Trace) -> list[tuple[str, str]]:
    clock = trace.clock
    start, end = clock.iso(0.0), clock.iso(trace.end_s)
    span = f"{start} to {end}" if start else f"elapsed time, {duration(trace.end_s)}"
    zone = {"absolute": clock.zone or "offset stated", "local": "no zone stated", "relative": ""}[clock.kind]
    lines = [("clock", f"{span}{f' ({zone})' if zone else ''}")]
    kind = trace.kind.replace("_", " ")
    lines.append(
        (
            "sampling",
            f"{kind}, every {number(trace.median_s, 2)} s (95 %: {number(trace.p95_s, 2)} s, "
            f"longest {duration(trace.max_s)})",
        )
    )
    for gap in trace.gaps[:_GAPS_TOLD]:
        lines.append(("gap", f"{clock.iso(gap.start_s) or duration(gap.start_s)}, {duration(gap.seconds)}"))
    if len(trace.gaps) > _GAPS_TOLD:
        lines.append(("gap", f"and {count(len(trace.gaps) - _GAPS_TOLD, 'more gap')}"))
    return lines


def _energy(reading: Reading) -> str:
    def wh(value: float | None) -> str:
        return "unknown" if value is None else f"{number(value, 1)} Wh"

    return (
        f"{wh(reading.energy_used_wh)} (by power {wh(reading.energy_by_power_wh)}, "
        f"by counter {wh(reading.energy_by_counter_wh)})"
    )
