"""How the energy of a run, and the mean energy of a machine's runs, was found."""

import numpy as np

from core.energy.integral import by_power_wh
from core.formatting import duration, percent
from core.found import around, budgets, sensitivity, surer
from core.found.question import Question
from core.found.values import Explanation
from core.found.writing import figures, shown
from core.language import mark, tr
from core.quantities import ENERGY
from core.results.runs import MAKING, Measurement
from core.results.values import Energy, RunResult
from core.study import Boundary
from core.traces import Trace

#: values written out in a sum before the rest is only counted
MOST_TERMS = 8
#: energies that differ by less than this part of them are the same
UNCHANGED = 1e-9

_KIND: dict[str, tuple[str, str]] = {
    "sampled": (
        mark(
            "Each value of the log is the power at that instant; between two values a straight line is taken."
        ),
        "Σ ½ (Pᵢ + Pᵢ₊₁) (tᵢ₊₁ − tᵢ)",
    ),
    "averaged": (
        mark("Each value of the log is the mean power of the interval before it."),
        "Σ Pᵢ (tᵢ − tᵢ₋₁)",
    ),
    "on_change": (
        mark("The log holds a value only when the power changed; each holds until the next."),
        "Σ Pᵢ (tᵢ₊₁ − tᵢ)",
    ),
}
_COUNTED: dict[Boundary, str] = {
    "warm-up and processing": mark("Counted from the first heating to the end of processing."),
    "processing only": mark("Counted from the end of warm-up to the end of processing."),
    "until cooled": mark("Counted from the first heating until the machine is back at standby."),
}


def counted_from(boundary: Boundary) -> str:
    """From when to when a run is counted."""
    return tr(_COUNTED[boundary])


def of_run(asked: Question, run: RunResult) -> Explanation:
    """The energy of one run."""
    used = run.energy
    if used is None:
        return Explanation(
            tr("{who}: energy", who=asked.who), tr("not known"), "energy", cautions=around.cautions(asked)
        )
    budget = budgets.lines(used.influences, asked.study, asked.locale)
    return Explanation(
        title=tr("{who}: energy", who=asked.who),
        value_text=shown(asked.value(ENERGY), ENERGY, asked.locale),
        topic="energy",
        method=method(asked, run, used),
        formula=(
            *formula(asked, run, used),
            *budgets.combined(budget, run.energy_u95_wh, asked.locale, tr("Wh")),
        ),
        sources=around.sources(asked, ENERGY),
        budget=budget,
        sensitivity=sensitivity.lines(asked, ENERGY),
        surer=surer.lines(asked, budget, run.energy_u95_wh, tr("Wh")),
        cautions=around.cautions(asked),
    )


def _made_of(runs: int) -> str:
    if runs == 1:
        return tr("The one run of the part that counts, measured at the plug.")
    return tr("Mean of {runs:run|runs} of the part that count, each measured at the plug.", runs=runs)


def _interval_of(runs: int) -> str:
    if runs == 1:
        return tr("The interval is what the meter and its log leave open.")
    return tr(
        "The interval joins what differs from run to run with what the meter does to all runs alike, which "
        "no repeat lessens."
    )


def of_machine(asked: Question) -> Explanation:
    """The mean energy of the runs of a machine that count."""
    mean = asked.machine.energy_wh
    title = tr("{who}: energy per part", who=asked.who)
    if mean is None:
        return Explanation(
            title,
            tr("not known"),
            "energy",
            method=(tr("No run of this machine counts."),),
            sources=around.sources(asked, ENERGY),
            cautions=around.cautions(asked),
        )
    budget = budgets.lines(asked.machine.influences, asked.study, asked.locale)
    return Explanation(
        title=title,
        value_text=shown(mean, ENERGY, asked.locale),
        topic="energy",
        method=(
            _made_of(len(asked.runs)),
            counted_from(asked.comparison.boundary),
            _interval_of(len(asked.runs)),
        ),
        formula=(
            mean_formula([run.energy_wh or 0.0 for run in asked.runs], tr("Wh"), asked),
            *_spread(asked),
            *budgets.combined(budget, mean.u95, asked.locale, tr("Wh")),
        ),
        sources=around.sources(asked, ENERGY),
        budget=budget,
        sensitivity=sensitivity.lines(asked, ENERGY),
        surer=surer.lines(asked, budget, mean.u95, tr("Wh")),
        cautions=around.cautions(asked),
    )


def counted(asked: Question, run: RunResult) -> str:
    """What of a stretch is counted."""
    stretch = asked.stretch_of(run)
    if stretch is not None and stretch.kind not in MAKING:
        return tr(
            "It is no run of a part ({kind}), and is measured with the edges of one.", kind=stretch.kind
        )
    return counted_from(asked.comparison.boundary)


def method(asked: Question, run: RunResult, used: Energy) -> tuple[str, ...]:
    """How the energy of a run was found, in words."""
    trace = asked.trace_of(run)
    said = []
    if used.method == "typed":
        return (tr("Read from the meter's display before and after the run, and typed in."),)
    said.append(tr("The power column of the log was added up over the time of the run."))
    if trace is not None:
        said.append(tr(_KIND[trace.kind][0]))
    if used.by_counter_wh is not None:
        said.append(
            tr(
                "The meter's own energy counter was read over the same time; the power column ties its steps "
                "to the run's edges."
            )
        )
    measured = asked.measured(run)
    said += _joined(used if measured is None else measured.energy)
    said.append(counted(asked, run))
    stretch = asked.stretch_of(run)
    if stretch is not None:
        said.append(
            tr("You set its edges.") if stretch.is_moved else tr("The program found its edges in the log.")
        )
    return tuple(said)


def _joined(used: Energy) -> list[str]:
    """What became of the two ways, where there are two; `used` as it was measured."""
    if used.by_counter_wh is None or used.by_power_wh is None:
        return []
    if used.energy_wh == used.by_counter_wh:
        return [tr("The counter alone was taken, as the surer of the two.")]
    if used.energy_wh == used.by_power_wh:
        return [tr("The power alone was taken, as the surer of the two.")]
    return [tr("The two were joined, each weighted by how sure it is (generalized least squares).")]


def formula(asked: Question, run: RunResult, used: Energy) -> tuple[str, ...]:
    """The arithmetic of a run's energy with its values."""
    trace, measured = asked.trace_of(run), asked.measured(run)
    if used.method == "typed":
        typed = next((t for t in asked.study.typed if t.id == run.run_id), None)
        raw_wh = used.energy_wh if typed is None else typed.energy_wh
        return (
            tr("E = {raw_wh} Wh", raw_wh=figures(raw_wh, locale=asked.locale)),
            *_corrected(asked, run, raw_wh, used),
        )
    if trace is None or measured is None:
        return (tr("E = {energy_wh} Wh", energy_wh=figures(used.energy_wh, locale=asked.locale)),)
    said = _by_power(asked, trace, measured, used)
    said += _by_counter(asked, trace, measured, used)
    said += _corrected(asked, run, measured.energy.energy_wh, used)
    spans = [span for span in run.states if span.end_s > measured.start_s and span.start_s < measured.end_s]
    parts = []
    for span in spans:
        a_s, b_s = max(span.start_s, measured.start_s), min(span.end_s, measured.end_s)
        part_wh = figures(by_power_wh(trace, a_s, b_s), 3, asked.locale)
        parts.append(
            tr("{state} {part_wh} Wh in {b_s}", state=span.state, part_wh=part_wh, b_s=duration(b_s - a_s))
        )
    if len(parts) > 1:
        said.append(tr("of it by the power: {parts}", parts=", ".join(parts)))
    return tuple(said)


def _by_power(asked: Question, trace: Trace, measured: Measurement, used: Energy) -> list[str]:
    inside = _rows_inside(trace, measured)
    if used.by_power_wh is None or inside is None:
        return []
    first, last = inside
    sum_wh = by_power_wh(trace, float(trace.time_s[first]), float(trace.time_s[last]))
    rest_wh = used.by_power_wh - sum_wh
    told = {"rest": figures(rest_wh, 2, asked.locale), "whole": figures(used.by_power_wh, 5, asked.locale)}
    if used.gap_share > 0:
        with_edges = tr(
            "with what lies between these rows and the run's edges and gaps ({rest} Wh): {whole} Wh", **told
        )
    else:
        with_edges = tr(
            "with what lies between these rows and the run's edges ({rest} Wh): {whole} Wh", **told
        )
    said = [
        tr(
            "{sum} ÷ 3600 over {count} rows inside the run = {energy} Wh",
            sum=_KIND[trace.kind][1],
            count=last - first + 1,
            energy=figures(sum_wh, 5, asked.locale),
        ),
        with_edges,
    ]
    if used.gap_share > 0:
        said.append(tr("gaps: {gap_share} of the time", gap_share=percent(used.gap_share, 2, asked.locale)))
    return said


def _by_counter(asked: Question, trace: Trace, measured: Measurement, used: Energy) -> list[str]:
    inside = _rows_inside(trace, measured)
    if trace.counter_wh is None or used.by_counter_wh is None or inside is None:
        return []
    first, last = inside
    seen = np.flatnonzero(np.isfinite(trace.counter_wh[first : last + 1])) + first
    if seen.size < 2:
        return []
    start_wh, end_wh = float(trace.counter_wh[seen[0]]), float(trace.counter_wh[seen[-1]])
    rise_wh = end_wh - start_wh
    locale = asked.locale
    return [
        tr(
            "counter from the first to the last row inside the run: rises by {rise_wh} Wh",
            rise_wh=figures(rise_wh, 5, locale),
        ),
        tr(
            "tied to the run's edges by the power ({by_counter_wh} Wh): {by_counter_wh_2} Wh",
            by_counter_wh=figures(used.by_counter_wh - rise_wh, 2, locale),
            by_counter_wh_2=figures(used.by_counter_wh, 5, locale),
        ),
        tr(
            "power and counter together: {energy_wh} Wh",
            energy_wh=figures(measured.energy.energy_wh, 5, locale),
        ),
    ]


def _corrected(asked: Question, run: RunResult, raw_wh: float, used: Energy) -> list[str]:
    """What a same-load check of the meter made of the energy."""
    if raw_wh <= 0 or abs(used.energy_wh - raw_wh) <= UNCHANGED * raw_wh:
        return []
    meter = asked.meter_of(run)
    whose = tr("its meter") if meter is None else meter.name
    return [
        tr(
            "corrected by the same-load check of {whose}: × {energy_wh} = {energy_wh_2} Wh",
            whose=whose,
            energy_wh=figures(used.energy_wh / raw_wh, 5, asked.locale),
            energy_wh_2=figures(used.energy_wh, 5, asked.locale),
        )
    ]


def _rows_inside(trace: Trace, measured: Measurement) -> tuple[int, int] | None:
    """First and last row of the trace inside a measurement; None with fewer than two."""
    first = int(np.searchsorted(trace.time_s, measured.start_s, side="left"))
    last = int(np.searchsorted(trace.time_s, measured.end_s, side="right")) - 1
    return (first, last) if last > first else None


def mean_formula(values: list[float], unit: str, asked: Question) -> str:
    """A mean written out with its terms."""
    terms = [figures(value, locale=asked.locale) for value in values[:MOST_TERMS]]
    if len(values) > MOST_TERMS:
        terms.append(tr("… {values} more", values=len(values) - MOST_TERMS))
    mean = f"{figures(sum(values) / len(values), 5, asked.locale)} {unit}"
    return mean if len(values) == 1 else f"({' + '.join(terms)}) ÷ {len(values)} = {mean}"


def _spread(asked: Question) -> tuple[str, ...]:
    values = [run.energy_wh for run in asked.runs if run.energy_wh is not None]
    if len(values) < 2:
        return ()
    spread_wh = float(np.std(values, ddof=1))
    error_wh = spread_wh / len(values) ** 0.5
    return (
        tr(
            "spread between the runs s = {spread_wh} Wh, of their mean s ÷ √{count_values} = {error_wh} Wh",
            spread_wh=figures(spread_wh, 3, asked.locale),
            count_values=len(values),
            error_wh=figures(error_wh, 3, asked.locale),
        ),
    )
