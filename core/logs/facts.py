"""What is worth saying about a log as it was read: rows, sampling, gaps, counter against power."""

from attrs import frozen

from core.energy.clock_ticks import moment
from core.formatting import duration, number
from core.language import mark, tr
from core.logs.reading import Reading
from core.problems import Severity
from core.wording import sentence

#: refused rows that are written out
_ROWS_SHOWN = 12
#: longest text of a refused row that is shown
_TEXT_SHOWN = 60
#: gaps that are written out
_GAPS_SHOWN = 4

_COMPARED = (mark("Rows"), mark("Start"), mark("End"), mark("Energy"), mark("Most"), mark("Gaps"))


@frozen
class Fact:
    """One line; ``role`` is ``"caution"`` where it is worth a second look, else empty."""

    name: str
    text: str
    role: str = ""


def facts(reading: Reading) -> tuple[Fact, ...]:
    """The facts of one machine's part of a file."""
    told = [Fact(tr("Rows"), _rows(reading), "caution" if reading.rows_refused else "")]
    trace = reading.trace
    if trace is not None and trace.time_s.size:
        start, end = moment(trace.clock, 0.0), moment(trace.clock, trace.end_s)
        told.append(
            Fact(
                tr("From"),
                tr("{start} to {end}, {length}", start=start, end=end, length=duration(trace.end_s)),
            )
        )
        told.append(
            Fact(
                tr("Step"),
                tr(
                    "{seconds} s between rows (95 % under {most} s)",
                    seconds=number(trace.median_s, 1),
                    most=number(trace.p95_s, 1),
                ),
            )
        )
        gaps = [
            tr("{length} from {start}", length=duration(g.seconds), start=moment(trace.clock, g.start_s))
            for g in trace.gaps[:_GAPS_SHOWN]
        ]
        if len(trace.gaps) > _GAPS_SHOWN:
            gaps.append(tr("and {count} more", count=len(trace.gaps) - _GAPS_SHOWN))
        told.append(Fact(tr("Gaps"), "; ".join(gaps) or tr("none"), "caution" if gaps else ""))
        told += _energy(reading)
    told += [
        Fact(
            tr("Note") if p.severity is Severity.NOTE else tr("Caution"),
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
            told.append(Fact(tr(name), f"{one} \N{RIGHTWARDS ARROW} {other}"))
    return tuple(told)


def _figures(reading: Reading) -> tuple[str, ...]:
    """What a choice may change, in words, in the order of `_COMPARED`."""
    trace = reading.trace
    used = reading.energy_used_wh
    energy = tr("unknown") if used is None else f"{number(used, 2)} Wh"
    if trace is None or not trace.time_s.size:
        unknown = tr("unknown")
        return (_rows(reading), unknown, unknown, energy, unknown, unknown)
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
        lines.append(
            tr("row {row}: {text!r} - {why}", row=str(refused.row), text=text, why=sentence(refused.why))
        )
    rest = reading.rows_refused - len(lines)
    if lines and rest > 0:
        lines.append(tr("and {count:more row|more rows}", count=rest))
    return "\n".join(lines)


def _rows(reading: Reading) -> str:
    rows = f"{reading.rows_read:,}".replace(",", " ")
    if reading.rows_refused:
        return tr("{rows} read, {count} refused", rows=rows, count=reading.rows_refused)
    return tr("{rows} read", rows=rows)


def _energy(reading: Reading) -> list[Fact]:
    power_wh, counter_wh = reading.energy_by_power_wh, reading.energy_by_counter_wh
    if power_wh is None or counter_wh is None:
        return []
    text = tr(
        "{counter} Wh by the counter, {power} Wh by the power column",
        counter=number(counter_wh, 1),
        power=number(power_wh, 1),
    )
    if counter_wh > 0:
        apart = 100.0 * (power_wh / counter_wh - 1.0)
        text += f" ({'+' if apart >= 0 else ''}{number(apart, 2)} %)"
    return [Fact(tr("Energy"), text)]
