"""The log shapes of the demo: rows in, text out. Clocks, delimiters, marks and units differ on purpose."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta, timezone

from demo_data.meter import Logged

Writer = Callable[[Logged, datetime], str]
INVENTED = "Invented data: made by a generator, measured on no real machine"


def iso_comma(logged: Logged, start: datetime) -> str:
    """ISO 8601 with offset, commas, decimal points, power and a counter in Wh."""
    lines = [f"# {INVENTED}", "time,power_W,energy_Wh"]
    lines += [f"{_at(start, t).isoformat()},{p:.1f},{c:.1f}" for t, p, c in _rows(logged)]
    return _text(lines)


def german_semicolon(logged: Logged, start: datetime) -> str:
    """Day-first local clock, semicolons, decimal commas, German header, counter in kWh."""
    lines = ["# Erfundene Daten: von einem Programm erzeugt, an keiner wirklichen Maschine gemessen"]
    lines.append("Zeitpunkt;Leistung (W);Energie (kWh)")
    for t, p, c in _rows(logged):
        stamp = _at(start, t).strftime("%d.%m.%Y %H:%M:%S")
        lines.append(f"{stamp};{_comma(p, 1)};{_comma(c / 1000.0, 4)}")
    return _text(lines, "\r\n")


def epoch_milliwatts(logged: Logged, start: datetime) -> str:
    """Unix time in ms, power in mW, counter in mWh, one row a change; no room for remarks."""
    base_ms = int(start.timestamp()) * 1000
    lines = ["timestamp_ms,power_mW,energy_mWh"]
    lines += [f"{base_ms + round(t * 1000)},{round(p * 1000)},{round(c * 1000)}" for t, p, c in _rows(logged)]
    return _text(lines)


def quoted_twelve_hours(logged: Logged, start: datetime) -> str:
    """Quoted cells, month-first local clock of twelve hours, counter in kWh."""
    lines = [f'"{INVENTED}"', '"Time","Power (W)","Total energy (kWh)"']
    for t, p, c in _rows(logged):
        at = _at(start, t)
        stamp = f"{at:%m/%d/%Y} {(at.hour + 11) % 12 + 1}:{at:%M:%S} {'AM' if at.hour < 12 else 'PM'}"
        lines.append(f'"{stamp}","{p:.1f}","{c / 1000.0:.4f}"')
    return _text(lines, "\r\n")


def long_table(device: str) -> Writer:
    """A long table: one row a device, quantity and time, as a small data server writes it."""

    def write(logged: Logged, start: datetime) -> str:
        lines = [f"# {INVENTED}", "time,device,quantity,value,unit"]
        for t, p, c in _rows(logged):
            stamp = _at(start, t).astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
            lines.append(f"{stamp},{device},power,{p:.2f},W")
            lines.append(f"{stamp},{device},energy,{c / 1000.0:.4f},kWh")
        return _text(lines)

    return write


def device_table(device: str, delimiter: str, bed_c: list[float] | None, room_c: float) -> Writer:
    """A table with a device column; with temperatures of bed and room where `bed_c` (one a step) is given."""

    def write(logged: Logged, start: datetime) -> str:
        head = ["time", "device", "power_W", "energy_Wh"]
        head += [] if bed_c is None else ["bed_C", "room_C"]
        lines = [f"# {INVENTED}", delimiter.join(head)]
        for (t, p, c), step in zip(_rows(logged), logged.step.tolist(), strict=True):
            cells = [_at(start, t).isoformat(), device, f"{p:.1f}", f"{c:.1f}"]
            cells += [] if bed_c is None else [f"{bed_c[step - 1]:.1f}", f"{room_c:.1f}"]
            lines.append(delimiter.join(cells))
        return _text(lines)

    return write


def summer_time(year: int, month: int, day: int, hour: int, minute: int) -> datetime:
    """A clock time one hour ahead of UTC: where the invented tool library is, in October."""
    return datetime(year, month, day, hour, minute, tzinfo=timezone(timedelta(hours=1)))


def _rows(logged: Logged) -> list[tuple[float, float, float]]:
    columns = (logged.time_s.tolist(), logged.power_w.tolist(), logged.counter_wh.tolist())
    return list(zip(*columns, strict=True))


def _at(start: datetime, seconds: float) -> datetime:
    return start + timedelta(seconds=seconds)


def _comma(value: float, digits: int) -> str:
    return f"{value:.{digits}f}".replace(".", ",")


def _text(lines: list[str], end: str = "\n") -> str:
    return end.join(lines) + end
