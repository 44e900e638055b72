"""What is worth saying about a log as it was read: rows, sampling, gaps, counter against power."""

from attrs import frozen

from core.energy.clock_ticks import moment
from core.formatting import count, duration, number
from core.logs.reading import Reading
from core.problems import Severity
from core.wording import sentence

#: refused rows that are written out
_ROWS_SHOWN = 12
#: longest text of a refused row that is shown
_TEXT_SHOWN = 60
#: gaps that are written out
_GAPS_SHOWN = 4

_COMPARED = ("Rows", "Start", "End", "Energy", "Most", "Gaps")


@frozen
class Fact:
    """One line; ``role`` is ``"caution"`` where it is worth a second look, else empty."""

    name: str
    text: str
    role: str = ""


def facts(reading: Reading) -> tuple[Fact, ...]:
    """The facts of one machine's part of a file."""
    told = [Fact("Rows", _rows(reading), "caution" if reading.rows_refused else "")]
    trace = reading.trace
    if trace is not None and trace.time_s.size:
        start, end = moment(trace.clock, 0.0), moment(trace.clock, trace.end_s)
        told.append(Fact("From", f"{start} to {end}, {duration(trace.end_s)}"))
        told.append(
            Fact(
                "Step", f"{number(trace.median_s, 1)} s between rows (95 % under {number(trace.p95_s, 1)} s)"
            )
        )
        gaps = [
            f"{duration(g.seconds)} from {moment(trace.clock, g.start_s)}" for g in trace.gaps[:_GAPS_SHOWN]
        ]
        if len(trace.gaps) > _GAPS_SHOWN:
            gaps.append(f"and {len(trace.gaps) - _GAPS_SHOWN} more")
        told.append(Fact("Gaps", "; ".join(gaps) or "none", "caution" if gaps else ""))
        told += _energy(reading)
    told += [
        Fact(
            "Note" if p.severity is Severity.NOTE else "Caution",
            sentence(p),
            "" if p.severity is Severity.NOTE else "caution",
        )
        for p in reading.problems
    ]
    return tuple(told)


def changes(before: Reading, after: Reading) -> tuple[Fact, ...]:
    """What is read otherwise than before, as ``from -> to``; empty when no figure is."""
    told = []
    for name, one, other in zip(_COMPARED, _figures(before), _figures(after), strict=True):
        if one != other:
            told.append(Fact(name, f"{one} \N{RIGHTWARDS ARROW} {other}"))
    return tuple(told)


def _figures(reading: Reading) -> tuple[str, ...]:
    """What a choice may change, in words, in the order of `_COMPARED`."""
    trace = reading.trace
    used = reading.energy_used_wh
    energy = "unknown" if used is None else f"{number(used, 2)} Wh"
    if trace is None or not trace.time_s.size:
        return (_rows(reading), "unknown", "unknown", energy, "unknown", "unknown")
    return (
        _rows(reading),
        moment(trace.clock, 0.0),
        moment(trace.clock, trace.end_s),
        energy,
        f"{number(float(trace.power_w.max()), 1)} W",
        str(len(trace.gaps)),
    )


def refused_lines(reading: Reading) -> str:
    """Refused rows as text, one a line: number, text, reason; empty when there are none."""
    lines = []
    for refused in reading.refused[:_ROWS_SHOWN]:
        text = refused.text if len(refused.text) <= _TEXT_SHOWN else refused.text[: _TEXT_SHOWN - 1] + "…"
        lines.append(f"row {refused.row}: {text!r} - {sentence(refused.why)}")
    rest = reading.rows_refused - len(lines)
    if lines and rest > 0:
        lines.append(f"and {count(rest, 'more row')}")
    return "\n".join(lines)


def _rows(reading: Reading) -> str:
    text = f"{reading.rows_read:,} read".replace(",", " ")
    return f"{text}, {reading.rows_refused} refused" if reading.rows_refused else text


def _energy(reading: Reading) -> list[Fact]:
    power_wh, counter_wh = reading.energy_by_power_wh, reading.energy_by_counter_wh
    if power_wh is None or counter_wh is None:
        return []
    text = f"{number(counter_wh, 1)} Wh by the counter, {number(power_wh, 1)} Wh by the power column"
    if counter_wh > 0:
        apart = 100.0 * (power_wh / counter_wh - 1.0)
        text += f" ({'+' if apart >= 0 else ''}{number(apart, 2)} %)"
    return [Fact("Energy", text)]
