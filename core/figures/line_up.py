"""Runs lined up as a figure: over each other, one under another, or as differences from one of them."""

from collections.abc import Sequence

import numpy as np
from attrs import evolve, field, frozen

from core.figures.compare import source_of
from core.figures.envelope import envelope
from core.figures.line_up_values import (
    Curve,
    Excursion,
    LineUpFigure,
    Panel,
    Ribbon,
    Scale,
    StateRow,
)
from core.figures.ticks import axis_end
from core.formatting import POINT, NumberLocale
from core.language import mark, tr
from core.line_up.answer import Answer, leave_told, more_told
from core.line_up.bands import Band, energy_band, power_band
from core.line_up.choices import LineUp, Shown
from core.line_up.common_axis import Bins, difference, power, running_energy, usual_width_s
from core.line_up.strands import Anchor, Strand, by_machine
from core.results.values import State
from core.study import Study
from core.traces import F64

#: points along the axis, and in all curves together: enough for any screen, few enough to paint at once
_COLUMNS = 900
_MOST_POINTS = 20_000
_LEAST_COLUMNS = 160
#: a band is smooth: fewer points show it, and filling it takes far longer than a line
_BAND_COLUMNS = 200
#: with more runs over each other than this the states are drawn once a machine
_MOST_STATE_ROWS = 8
#: of more machines over each other only the bands and the odd runs are drawn; one under another they have
#: room for one strip of states each
_MOST_MACHINES = 6
#: longest view in seconds, in minutes [s]
_IN_SECONDS, _IN_MINUTES = 240.0, 5 * 3600.0
#: a moving mean still holds some of the warm-up for so long [s]
_SETTLED_S = 60.0
#: what is less is left over from sums of floating-point numbers
_NOTHING = 1e-9
#: room above the processing where the height is given to it
_AIR = 1.25
_TITLES = {
    "start": mark("Time from the start"),
    "end of warm-up": mark("Time from the end of warm-up"),
    "end": mark("Time to the end"),
    "share of duration": mark("Share of the run's duration"),
}


def line_up_figure(
    given: Sequence[Strand], choices: LineUp, answer: Answer, study: Study, locale: NumberLocale = POINT
) -> LineUpFigure:
    """The figure of runs lined up.

    Parameters
    ----------
    given : sequence of Strand
        The runs that are shown.
    choices : LineUp
    answer : Answer
        Of these runs and choices: words, smoothing, and which runs leave their bands.
    study : Study
        Names the source of the numbers.
    locale : NumberLocale

    Returns
    -------
    LineUpFigure
        x in s, min, h or %, whichever suits what is drawn; y in W or Wh. Without panels if nothing is given.
    """
    low, high = whole_view(given, choices.anchor)
    if choices.view is not None:
        low, high = max(low, choices.view[0]), min(high, choices.view[1])
    unit, factor = _unit(choices.anchor, high - low)
    x = Scale(tr(_TITLES[choices.anchor]), unit, low * factor, high * factor, locale)
    rows = _Maker(tuple(given), choices, answer, low, high, factor, locale).rows() if given else ()
    span = choices.span
    return LineUpFigure(
        headline=answer.headline,
        conditions=answer.conditions,
        source=source_of(study),
        x=x,
        factor=factor,
        rows=rows,
        span=None if span is None else (span[0] * factor, span[1] * factor),
        facts=answer.facts,
        strands=tuple(given),
        choices=choices,
        is_as_logged=answer.smooth_s <= 0 and choices.arrangement != "difference",
    )


def whole_view(given: Sequence[Strand], anchor: Anchor) -> tuple[float, float]:
    """From where to where the runs reach together on the common axis."""
    reaches = [s.reach(anchor) for s in given]
    if not reaches:
        return 0.0, 1.0
    return min(low for low, _ in reaches), max(high for _, high in reaches)


def _unit(anchor: Anchor, length: float) -> tuple[str, float]:
    if anchor == "share of duration":
        return "%", 100.0
    if length <= _IN_SECONDS:
        return "s", 1.0
    return ("min", 1 / 60) if length <= _IN_MINUTES else ("h", 1 / 3600)


@frozen
class _Maker:
    strands: tuple[Strand, ...]
    choices: LineUp
    answer: Answer
    low: float
    high: float
    factor: float
    locale: NumberLocale
    _bands_made: dict[tuple[str, Shown], Band] = field(factory=dict)

    @property
    def columns(self) -> int:
        return max(_LEAST_COLUMNS, min(_COLUMNS, _MOST_POINTS // len(self.strands)))

    @property
    def step(self) -> float:
        return (self.high - self.low) / self.columns

    @property
    def quantities(self) -> tuple[Shown, ...]:
        return ("power", "running energy") if self.choices.shown == "both" else (self.choices.shown,)

    def rows(self) -> tuple[tuple[Panel, ...], ...]:
        if self.choices.arrangement == "machine under machine":
            groups = [(m, m[0].machine, m[0].slot) for m in by_machine(self.strands).values()]
            groups = [
                (m, tr("{machine}: {count:run|runs}", machine=name, count=len(m)), slot)
                for m, name, slot in groups
            ]
            rows = [[self._panel(m, q, title, slot) for q in self.quantities] for m, title, slot in groups]
        elif self.choices.arrangement == "run under run":
            rows = [[self._panel((s,), q, s.label, s.slot) for q in self.quantities] for s in self.strands]
        else:
            rows = [[self._panel(self.strands, q, "", None)] for q in self.quantities]
        return self._on_common_scales(rows)

    def _panel(self, shown: tuple[Strand, ...], quantity: Shown, title: str, slot: int | None) -> Panel:
        is_difference = self.choices.arrangement == "difference"
        # over each other the energy stands under the power of the same runs: once is enough
        is_second = not title and quantity != self.quantities[0]
        bands = () if is_difference else self._bands(shown, quantity)
        drawn = shown
        is_crowded = not title and len({s.machine_id for s in shown}) > _MOST_MACHINES
        if (self.choices.repeats == "bands" or (is_crowded and bands)) and len(shown) > 1:
            with_band = {b.machine_id for b in bands}
            odd = {leave.run_id for leave in self.answer.leaves}
            drawn = tuple(s for s in shown if s.machine_id not in with_band or s.run_id in odd)
        reference = self._reference() if is_difference else None
        curves = [self._curve(s, quantity, reference) for s in drawn if s is not reference]
        medians = [] if len(shown) == 1 else [self._median(b) for b in bands]
        unit = "W" if quantity == "power" else "Wh"
        name = tr("Power") if quantity == "power" else tr("Energy used")
        if reference is not None:
            name = tr("{quantity}, more than {run}", quantity=name, run=reference.label)
        return Panel(
            title=title,
            slot=slot,
            y=Scale(name, unit, 0.0, 1.0, self.locale),
            curves=(*curves, *medians),
            ribbons=tuple(self._ribbon(b) for b in bands),
            state_rows=() if is_second else self._state_rows(shown),
            hidden=tuple(self._curve(s, quantity, reference) for s in shown if s not in drawn),
            excursions=self._excursions(drawn) if quantity == "power" and not is_difference else (),
        )

    def _on_common_scales(self, rows: list[list[Panel]]) -> tuple[tuple[Panel, ...], ...]:
        """Panels of one quantity get one scale, so that heights can be compared."""
        ends: dict[str, tuple[float, float]] = {}
        beyond: dict[str, float] = {}
        for unit in {panel.y.unit for row in rows for panel in row}:
            panels = [panel for row in rows for panel in row if panel.y.unit == unit]
            values = [v for panel in panels for v in _extremes(panel, self._x_ends())]
            top, bottom = max(values, default=1.0), min(values, default=0.0)
            if self.choices.arrangement == "difference":
                margin = 0.06 * max(top - bottom, 1e-9)
                ends[unit] = (min(bottom - margin, -margin), max(top + margin, margin))
                continue
            calm = self._calm_top(panels) if unit == "W" and self.choices.fit_processing else None
            ends[unit] = (0.0, axis_end((_shown_top(top, calm),)))
            if top > ends[unit][1]:
                beyond[unit] = top
        return tuple(
            tuple(
                evolve(
                    panel,
                    y=evolve(panel.y, low=ends[panel.y.unit][0], high=ends[panel.y.unit][1]),
                    beyond=beyond.get(panel.y.unit),
                )
                for panel in row
            )
            for row in rows
        )

    def _calm_top(self, panels: Sequence[Panel]) -> float | None:
        """The greatest power that is drawn once no moving mean holds any warm-up. [W]

        None where warm-up fills most of what is drawn: then it is what one wants to see.
        """
        by_id = {s.run_id: s for s in self.strands}
        settling_s = max(self.answer.smooth_s, _SETTLED_S)
        top, calm, drawn = 0.0, 0, 0
        for curve in (c for panel in panels for c in (*panel.curves, *panel.hidden) if c.run_id):
            strand = by_id[curve.run_id]
            known = np.isfinite(curve.y)
            warm = float(strand.place(np.array(strand.warm_s + settling_s), self.choices.anchor))
            values = curve.y[known & (curve.x > warm * self.factor)]
            drawn += int(known.sum())
            calm += values.size
            top = max(top, float(values.max(initial=0.0)))
        return _AIR * top if 2 * calm > drawn else None

    def _x_ends(self) -> tuple[float, float]:
        return self.low * self.factor, self.high * self.factor

    def _reference(self) -> Strand:
        wanted = self.choices.reference
        return next((s for s in self.strands if s.run_id == wanted), self.strands[0])

    # curves

    def _curve(self, strand: Strand, quantity: Shown, reference: Strand | None) -> Curve:
        anchor = self.choices.anchor
        if quantity == "running energy":
            bins = running_energy(strand, anchor, self.step)
            if reference is not None:
                bins = difference(bins, running_energy(reference, anchor, self.step))
            return self._of(strand, *self._inside(bins))
        if reference is None and self.answer.smooth_s <= 0:
            return self._of(strand, *self._as_logged(strand))
        bins = self._power(strand)
        if reference is not None:
            bins = difference(bins, self._power(reference))
        return self._of(strand, *self._inside(bins))

    def _of(self, strand: Strand, x: F64, y: F64) -> Curve:
        return Curve(strand.run_id, strand.machine_id, strand.label, strand.slot, x, y, strand.included)

    def _power(self, strand: Strand) -> Bins:
        bins = power(strand, self.choices.anchor, self.step, self.answer.smooth_s)
        moments = strand.moment_s(bins.places, self.choices.anchor)
        for gap in strand.gaps:  # nothing was seen there, so nothing is drawn
            bins.values[(moments > gap.start_s) & (moments < gap.end_s)] = np.nan
        return bins

    def _inside(self, bins: Bins) -> tuple[F64, F64]:
        """The bins that are drawn, with one beyond either border."""
        places = bins.places
        kept = (places >= self.low - bins.step) & (places <= self.high + bins.step)
        return places[kept] * self.factor, bins.values[kept]

    def _as_logged(self, strand: Strand) -> tuple[F64, F64]:
        """The power as it was logged, as its least and greatest value a column."""
        anchor = self.choices.anchor
        moments = strand.moment_s(np.array([self.low, self.high]), anchor)
        from_s, to_s = max(strand.start_s, float(moments[0])), min(strand.end_s, float(moments[1]))
        if not to_s > from_s:
            return np.empty(0), np.empty(0)
        share = (to_s - from_s) / (float(moments[1]) - float(moments[0]))
        drawn = envelope(strand.trace, from_s, to_s, max(1, round(self.columns * share)))
        kept = np.isnan(drawn.time_s) | ((drawn.time_s >= from_s) & (drawn.time_s <= to_s))
        return strand.place(drawn.time_s[kept], anchor) * self.factor, drawn.power_w[kept]

    # what repeats have in common

    def _bands(self, shown: tuple[Strand, ...], quantity: Shown) -> tuple[Band, ...]:
        """A band a machine; behind a single run that of all of its machine's runs that are shown."""
        if self.choices.repeats == "runs":
            return ()
        wanted = {s.machine_id for s in shown}
        return tuple(
            self._band(machine_id, counted, quantity)
            for machine_id, members in by_machine(self.strands).items()
            for counted in [[s for s in members if s.included]]
            if machine_id in wanted and len(counted) > 1
        )

    def _band(self, machine_id: str, counted: Sequence[Strand], quantity: Shown) -> Band:
        """The band of one machine, made once for all panels."""
        key = (machine_id, quantity)
        if key not in self._bands_made:
            anchor, step = self.choices.anchor, self.step * max(1.0, self.columns / _BAND_COLUMNS)
            if quantity == "power":
                band = power_band(counted, anchor, step, self._band_width_s(counted))
            else:
                band = energy_band(counted, anchor, step)
            self._bands_made[key] = band
        return self._bands_made[key]

    def _band_width_s(self, members: Sequence[Strand]) -> float:
        """A band of the power as logged would only show when heaters switch: it is always smoothed."""
        return self.answer.smooth_s or usual_width_s(members)

    def _median(self, band: Band) -> Curve:
        name = next(s.machine for s in self.strands if s.machine_id == band.machine_id)
        kept = self._band_inside(band)
        return Curve("", band.machine_id, name, band.slot, band.places[kept] * self.factor, band.median[kept])

    def _ribbon(self, band: Band) -> Ribbon:
        kept = self._band_inside(band)
        low = np.maximum(band.low[kept], 0.0)
        return Ribbon(band.machine_id, band.slot, band.places[kept] * self.factor, low, band.high[kept])

    def _band_inside(self, band: Band) -> F64:
        margin = (self.high - self.low) / 50
        inside = (band.places >= self.low - margin) & (band.places <= self.high + margin)
        return np.asarray(inside & np.isfinite(band.median))

    def _excursions(self, drawn: tuple[Strand, ...]) -> tuple[Excursion, ...]:
        by_id = {s.run_id: s for s in drawn}
        return tuple(
            Excursion(
                leave.run_id,
                strand.slot,
                leave.start * self.factor,
                leave.end * self.factor,
                strand.label,
                more_told(leave, self.locale),
                leave_told(leave, strand, self.choices.anchor, self.locale),
            )
            for leave in self.answer.leaves
            for strand in [by_id.get(leave.run_id)]
            if strand is not None and leave.end > self.low and leave.start < self.high
        )

    # operating states

    def _state_rows(self, shown: tuple[Strand, ...]) -> tuple[StateRow, ...]:
        machines = len({s.machine_id for s in self.strands})
        is_tall = self.choices.arrangement == "machine under machine" and machines > _MOST_MACHINES
        if len(shown) <= _MOST_STATE_ROWS and not is_tall:
            return tuple(self._states((s,), s.label) for s in shown)
        return tuple(self._states(m, m[0].machine) for m in by_machine(shown).values())

    def _states(self, members: tuple[Strand, ...], name: str) -> StateRow:
        """The states of the runs, their edges in the mean."""
        anchor = self.choices.anchor
        spans: list[tuple[State, float, float]] = []
        states: tuple[State, ...] = ("warm-up", "processing", "cooling")
        for state in states:
            edges = [
                s.place(np.clip([span.start_s, span.end_s], s.start_s, s.end_s), anchor)
                for s in members
                for span in s.states
                if span.state == state
            ]
            if edges:
                low, high = np.mean(edges, axis=0)
                low, high = max(float(low), self.low), min(float(high), self.high)
                if high - low > _NOTHING * (self.high - self.low):
                    spans.append((state, low * self.factor, high * self.factor))
        return StateRow(name, members[0].slot, tuple(spans))


def _shown_top(top: float, calm: float | None) -> float:
    """What the axis must reach: all of it, or what is calm; rounding errors of nothing count as nothing."""
    reached = top if calm is None else min(top, calm)
    return reached if reached > _NOTHING else 0.0


def _extremes(panel: Panel, ends: tuple[float, float]) -> list[float]:
    """Least and greatest values that are drawn in a panel."""
    found = []
    for x, y in (*((c.x, c.y) for c in panel.curves), *((r.x, r.high) for r in panel.ribbons)):
        seen = y[(x >= ends[0]) & (x <= ends[1]) & np.isfinite(y)]
        if seen.size:
            found += [float(seen.min()), float(seen.max())]
    return found
