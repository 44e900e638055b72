"""What runs used within a span of the common axis: mean watts, energy, and its share of each run."""

from collections.abc import Sequence
from functools import lru_cache

import numpy as np
from attrs import evolve, field, frozen

from core.line_up.strands import Anchor, Strand, by_machine
from core.results.values import Energy, Measured
from core.study import Meter
from core.traces import Trace
from core.units import SECONDS_PER_HOUR

#: a span that covers less of a run than this is not read [s]
_SHORTEST_S = 1e-3


@frozen
class SpanReading:
    """One run, or with an empty `run_id` the mean of a machine's runs, within a span.

    Parameters
    ----------
    seconds : float
        How much of the run lies within the span; 0 where none does. [s]
    power_w, energy_wh : Measured or None
        With their 95 % intervals; None where the run is not there.
    share : float or None
        Of the energy that counts of the run, from 0 to 1.
    """

    run_id: str
    machine_id: str
    machine: str
    name: str
    seconds: float
    power_w: Measured | None = None
    energy_wh: Measured | None = None
    share: float | None = None
    runs: int = field(default=1)


@lru_cache(maxsize=4096)
def energy_within(trace: Trace, start_s: float, end_s: float, meter: Meter) -> Energy:
    """Energy between two moments that are known exactly, with what makes it unsure. Remembered."""
    from core.energy.total import between

    return between(trace, start_s, end_s, meter, rising_edges=False)


def forget() -> None:
    """Let go of what is remembered, and of the traces with it."""
    energy_within.cache_clear()


def read_span(given: Sequence[Strand], anchor: Anchor, low: float, high: float) -> tuple[SpanReading, ...]:
    """Read every run within a span, and the mean of each machine that has several.

    Parameters
    ----------
    given : sequence of Strand
    anchor : Anchor
    low, high : float
        On the common axis.

    Returns
    -------
    tuple of SpanReading
        Means of machines first, then the runs, both in the order given.
    """
    low, high = min(low, high), max(low, high)
    parts = {s.run_id: _part(s, anchor, low, high) for s in given}
    means = [
        _mean_of(members, [parts[s.run_id] for s in members])
        for members in by_machine(given).values()
        if len(members) > 1
    ]
    return (*means, *(_reading(s, parts[s.run_id]) for s in given))


@frozen
class _Part:
    """What of a run lies within the span."""

    seconds: float
    energy: Energy | None


def _part(strand: Strand, anchor: Anchor, low: float, high: float) -> _Part:
    from_s, to_s = (float(v) for v in strand.moment_s(np.array([low, high]), anchor))
    from_s, to_s = max(from_s, strand.start_s), min(to_s, strand.end_s)
    if to_s - from_s < _SHORTEST_S:
        return _Part(0.0, None)
    return _Part(to_s - from_s, energy_within(strand.trace, from_s, to_s, strand.meter))


def _reading(strand: Strand, part: _Part) -> SpanReading:
    from core.uncertainty import u95_of

    reading = SpanReading(strand.run_id, strand.machine_id, strand.machine, strand.name, part.seconds)
    if part.energy is None:
        return reading
    power = as_power(part.energy, part.seconds)
    return evolve(
        reading,
        power_w=Measured(power.energy_wh, u95_of(power)),
        energy_wh=Measured(part.energy.energy_wh, u95_of(part.energy)),
        share=part.energy.energy_wh / strand.energy_wh if strand.energy_wh > 0 else None,
    )


def _mean_of(members: Sequence[Strand], parts: Sequence[_Part]) -> SpanReading:
    """The mean of the runs that reach into the span."""
    machine = members[0]
    there = [(s, p, p.energy) for s, p in zip(members, parts, strict=True) if p.energy is not None]
    reading = SpanReading("", machine.machine_id, machine.machine, "", 0.0, runs=len(there))
    if not there:
        return reading
    whole_wh = sum(s.energy_wh for s, _, _ in there)
    used_wh = sum(e.energy_wh for _, _, e in there)
    return evolve(
        reading,
        seconds=sum(p.seconds for _, p, _ in there) / len(there),
        power_w=mean_measured([as_power(e, p.seconds) for _, p, e in there]),
        energy_wh=mean_measured([e for _, _, e in there]),
        share=used_wh / whole_wh if whole_wh > 0 else None,
    )


def mean_measured(energies: Sequence[Energy]) -> Measured:
    """Mean of repeats with its interval; of one value its own."""
    from core.uncertainty import mean_of

    return mean_of(energies).energy_wh


def as_power(energy: Energy, seconds: float) -> Energy:
    """The mean power over a length known exactly, with the influences of its energy: W stand for Wh."""
    factor = SECONDS_PER_HOUR / seconds
    return evolve(
        energy,
        energy_wh=energy.energy_wh * factor,
        influences=tuple(evolve(i, u_wh=i.u_wh * factor) for i in energy.influences),
        problems=(),
    )
