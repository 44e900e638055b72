"""How the bed's share was found, what bounds it, or why it cannot be seen."""

import math

from core.beds.bound import bound_words
from core.beds.heater import levels
from core.formatting import number, percent
from core.found import around, bed_budget, budgets, energy, sensitivity
from core.found.question import Question
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, shown
from core.language import mark, tr
from core.quantities import BED_SHARE
from core.results.values import BedShare, Measured, RunResult
from core.units import SECONDS_PER_HOUR
from core.wording import sentence

#: the ways, each in words; keys are methods of `core.results.values.BedShare`
_METHOD: dict[str, str] = {
    "own meter": mark("A second meter measured the bed alone."),
    "run with the bed off": (
        mark("The same part was made once with the bed off; what it took less is the bed's.")
    ),
    "hold test": (
        mark(
            "A hold test of this machine says what the bed draws at its temperature; that times the "
            "duration, "
            "and the warm-up, is the bed's."
        )
    ),
    "heater switching": (
        mark(
            "The bed's heater switches on and off. What was drawn between its pulses is not the bed; "
            "that level, followed through the run, is taken from the run's energy, and the rest is the bed's."
        )
    ),
}
#: what one watt more stands for in each way, and which way it moves the share
_ONE_WATT: dict[str, tuple[str, int]] = {
    "run with the bed off": (mark("If the run with the bed off had drawn 1 W more"), -1),
    "hold test": (mark("If the bed had held with 1 W more"), 1),
    "heater switching": (mark("If what is not the bed drew 1 W more"), -1),
}
#: reasons for refusing that a faster log may lift
_TOO_SLOW = {"bed.few_rows", "bed.averaged", "bed.too_fast", "bed.mixed", "bed.in_step"}
#: what would let the bed be seen, or seen better, by the way that it makes possible
_SURER: dict[str, str] = {
    "hold test": (
        mark(
            "A hold test: keep the bed at its temperature for an hour with nothing else running, and log it."
        )
    ),
    "run with the bed off": (
        mark(
            "A run of the same part with the bed off, where the part allows it: the difference is the bed's."
        )
    ),
}


def share(asked: Question) -> Explanation:
    """The bed's share of a run, or of a machine's runs."""
    value = asked.value(BED_SHARE)
    title = tr("{who}: bed share", who=asked.who)
    if value is None:
        return _unseen(asked, title)
    method, formula, budget = _of_run(asked, asked.run) if asked.run is not None else _of_machine(asked)
    return Explanation(
        title=title,
        value_text=shown(value, BED_SHARE, asked.locale),
        topic="bed-share",
        method=method,
        formula=formula,
        sources=_sources(asked),
        budget=budget,
        sensitivity=(*sensitivity.lines(asked, BED_SHARE), *_one_watt(asked)),
        surer=tuple(tr(words) for way, words in _SURER.items() if way not in _ways(asked)),
        cautions=around.cautions(asked),
    )


def _ways(asked: Question) -> set[str]:
    """The ways that gave the runs a share, those beside the best one too."""
    beds = [run.bed for run in asked.runs if run.bed is not None]
    return {way.method for bed in beds for way in (bed, *bed.others) if way.share is not None}


def _of_run(
    asked: Question, run: RunResult
) -> tuple[tuple[str, ...], tuple[str, ...], tuple[BudgetLine, ...]]:
    bed, used_wh = run.bed, run.energy_wh
    assert bed is not None
    method = (tr(_METHOD[bed.method]), energy.counted_from(asked.comparison.boundary))
    if bed.energy_wh is None or used_wh is None or bed.share is None:
        return method, (), ()
    locale = asked.locale
    rest_wh = used_wh - bed.energy_wh
    formula = [
        _put_together(asked, run, bed)
        or tr(
            "bed = {used_wh} Wh − {rest_wh} Wh of all else = {energy_wh} Wh",
            used_wh=figures(used_wh, locale=locale),
            rest_wh=figures(rest_wh, locale=locale),
            energy_wh=figures(bed.energy_wh, locale=locale),
        ),
        tr(
            "share = {energy_wh} Wh ÷ {used_wh} Wh = {share}",
            energy_wh=figures(bed.energy_wh, locale=locale),
            used_wh=figures(used_wh, locale=locale),
            share=percent(bed.share, 1, locale),
        ),
    ]
    if run.seconds:
        rest_w = rest_wh * SECONDS_PER_HOUR / run.seconds
        formula.append(
            tr("what is not the bed draws {rest_w} W on average", rest_w=figures(rest_w, 3, locale))
        )
    if bed.method == "heater switching":
        formula += _pulses(asked, run)
    if bed.others:
        ways = (f"{tr(way.method)} {shown(_measured(way), BED_SHARE, locale)}" for way in bed.others)
        formula.append(tr("other ways: {ways}", ways=", ".join(ways)))
    lines = bed_budget.of_run(bed, used_wh, asked.study, locale)
    u95 = None if bed.share_u95 is None else bed_budget.PERCENT * bed.share_u95
    return method, (*formula, *budgets.combined(lines, u95, locale, "%")), lines


def _put_together(asked: Question, run: RunResult, bed: BedShare) -> str:
    """What a hold test, or runs with the bed off, make of the bed's energy; empty for other ways."""
    terms = dict(bed.terms)
    if bed.energy_wh is None:
        return ""
    if "without_wh" in terms and run.energy_wh is not None:
        used, rest, bed_wh = (
            tr("{wh} Wh", wh=figures(wh, locale=asked.locale))
            for wh in (run.energy_wh, run.energy_wh - bed.energy_wh, bed.energy_wh)
        )
        return tr(
            "bed = {used} − {rest} with the bed off, brought to the length of this run = {bed_wh}",
            used=used,
            rest=rest,
            bed_wh=bed_wh,
        )
    if "held_w" not in terms:
        return ""
    hours = terms["processing_s"] / SECONDS_PER_HOUR
    return tr(
        "bed = {held_w} W held × {hours} h of processing + {warm_up_wh} Wh of warm-up = {energy_wh} Wh",
        held_w=figures(terms["held_w"], 3, asked.locale),
        hours=figures(hours, 3, asked.locale),
        warm_up_wh=figures(terms["warm_up_wh"], 3, asked.locale),
        energy_wh=figures(bed.energy_wh, locale=asked.locale),
    )


def _measured(bed: BedShare) -> Measured | None:
    return None if bed.share is None else Measured(bed.share, bed.share_u95)


def _pulses(asked: Question, run: RunResult) -> list[str]:
    """What the log shows of the heater's pulses."""
    trace, measured = asked.trace_of(run), asked.measured(run)
    if trace is None or measured is None or run.end_s is None:
        return []
    warm_s = next((span.end_s for span in measured.states if span.state == "warm-up"), measured.start_s)
    found = levels(trace, measured.start_s, max(warm_s, measured.start_s), min(run.end_s, trace.end_s))
    if found is None:
        return []
    locale = asked.locale
    said = [
        tr(
            "between the heater's pulses: {off_w} W, in {off_share} of the rows of processing",
            off_w=figures(found.off_w, 3, locale),
            off_share=percent(found.off_share, 0, locale),
        ),
        tr(
            "its pulses: {step_w} W more; {changes} changes between the two",
            step_w=figures(found.step_w, 3, locale),
            changes=found.changes,
        ),
    ]
    if found.plateau_w is not None:
        said.append(
            tr(
                "end of the warm-up's first plateau: {plateau_w} W",
                plateau_w=figures(found.plateau_w, 3, locale),
            )
        )
    return said


def _of_machine(asked: Question) -> tuple[tuple[str, ...], tuple[str, ...], tuple[BudgetLine, ...]]:
    locale = asked.locale
    beds = [run.bed for run in asked.runs if run.bed is not None and run.bed.share is not None]
    shares = [100 * bed.share for bed in beds if bed.share is not None]
    unseen = len(asked.runs) - len(beds)
    ways = dict.fromkeys(tr(_METHOD[bed.method]) for bed in beds)
    method = [
        tr("Mean of the runs whose bed share is seen."),
        *ways,
        energy.counted_from(asked.comparison.boundary),
    ]
    if unseen:
        method.append(
            tr("In {unseen} of the runs it cannot be seen; they are not in this mean.", unseen=unseen)
        )
    formula = [energy.mean_formula(shares, "%", asked)]
    own = [100 * bed.share_u95 for bed in beds if bed.share_u95 is not None]
    if own:
        method.append(
            tr("What each run's own share is unsure by is much the same in all; repeats do not lessen it.")
        )
    if own and len(shares) > 1:
        from core.stats import t_interval

        halves = math.fsum(own) / len(own), t_interval(shares).half_width
        whole = figures(math.hypot(*halves), 2, locale)
        formula.append(
            tr(
                "± √({own}² + {spread}²) = ± {whole} % (halves of 95 % intervals: each "
                "run's own, and Student's t of the spread)",
                own=figures(halves[0], 2, locale),
                spread=figures(halves[1], 2, locale),
                whole=whole,
            )
        )
    seen = [run for run in asked.runs if run.bed is not None and run.bed.share is not None]
    budget = bed_budget.of_runs(seen, asked.study, locale)
    return tuple(method), tuple(formula), budget


def _sources(asked: Question) -> tuple[SourceLine, ...]:
    """The runs, and what else the ways were told by."""
    runs = around.sources(asked, BED_SHARE)
    named = {line.run_id for line in runs if line.run_id}
    return (*runs, *(line for line in _told_by(asked) if line.run_id not in named))


def _told_by(asked: Question) -> tuple[SourceLine, ...]:
    """The stretches and logs, besides the runs themselves, that the ways were told by."""
    ways = _ways(asked)
    locale = asked.locale
    said = []
    for run in asked.machine.runs:
        stretch = asked.stretch_of(run)
        if stretch is None or run.energy_wh is None or not run.seconds:
            continue
        if stretch.kind == "hold test" and "hold test" in ways:
            watts = figures(run.energy_wh * SECONDS_PER_HOUR / run.seconds, 3, locale)
            said.append(
                SourceLine(
                    tr("{name}: {watts} W on average at the plug", name=run.name, watts=watts),
                    run.run_id,
                    False,
                )
            )
        if stretch.set_bed_off and "run with the bed off" in ways:
            used = figures(run.energy_wh, locale=locale)
            said.append(
                SourceLine(
                    tr("{name}: {used} Wh with the bed off", name=run.name, used=used), run.run_id, False
                )
            )
    if "own meter" in ways:
        logs = (log for log in asked.study.logs_of(asked.machine.machine_id) if log.of_bed)
        said += [
            SourceLine(tr("{file_name}, of the bed alone", file_name=source.file_name), counts=False)
            for log in logs
            for source in log.sources
        ]
    return tuple(said)


def _one_watt(asked: Question) -> tuple[str, ...]:
    """What one watt more, of what the way was told, would do to the share."""
    beds = [(run, run.bed) for run in asked.runs if run.bed is not None and run.bed.share is not None]
    said = []
    for method, (words, sign) in _ONE_WATT.items():
        per_watt = [
            sign * dict(bed.terms).get("processing_s", run.seconds) / SECONDS_PER_HOUR / run.energy_wh
            for run, bed in beds
            if bed.method == method and run.seconds and run.energy_wh
        ]
        if per_watt:
            points = 100 * sum(per_watt) / len(per_watt)
            plus = "+" if points > 0 else ""
            said.append(
                tr(
                    "{words}: {points} percentage points",
                    words=tr(words),
                    points=plus + number(points, 2, asked.locale),
                )
            )
    return tuple(said)


def _unseen(asked: Question, title: str) -> Explanation:
    """No share: the bound where there is one, and the reasons."""
    beds = [run.bed for run in asked.runs if run.bed is not None]
    reasons = _reasons(asked, beds)
    if not asked.runs:
        reasons = [tr("No run of this machine counts.")]
    elif not beds:
        reasons = [tr("It cannot be seen here because readings of a display tell nothing of the heater.")]
    bound, bound_words = _bound(asked, beds)
    return Explanation(
        title=title,
        value_text=bound or tr("cannot be seen here"),
        topic="bed-share",
        method=(*reasons, *bound_words),
        formula=_facts(asked, beds) or ((bound,) if bound else ()),
        sources=around.sources(asked, BED_SHARE),
        without_budget=tr("A bound has no interval: it is wide enough by itself.") if bound else "",
        sensitivity=(tr("Nothing that is known moves it by a little: it is a bound, not a value."),)
        if bound
        else (),
        surer=(*_faster(beds), *(tr(words) for words in _SURER.values())),
        cautions=around.cautions(asked),
    )


def _reasons(asked: Question, beds: list[BedShare]) -> list[str]:
    """Why it cannot be seen, one sentence a kind of reason, with in how many runs where not in all."""
    kinds: dict[str, list[str]] = {}
    for bed in beds:
        if bed.why_not is not None:
            kinds.setdefault(bed.why_not.code, []).append(sentence(bed.why_not))
    runs = len(asked.runs)
    return [
        told[0]
        if len(told) == runs
        else tr("In {count_told} of {runs:run|runs}: {told}", count_told=len(told), runs=runs, told=told[0])
        for told in kinds.values()
    ]


def _faster(beds: list[BedShare]) -> tuple[str, ...]:
    """Whether shorter intervals would show the heater."""
    codes = {bed.why_not.code for bed in beds if bed.why_not is not None}
    is_slow = not codes.isdisjoint(_TOO_SLOW)
    return (tr("A log with shorter intervals, so that each pulse of the heater is seen."),) if is_slow else ()


def _bound(asked: Question, beds: list[BedShare]) -> tuple[str, tuple[str, ...]]:
    """The bound in a few words, and what it is; nothing where there is none."""
    lows = [bed.at_least for bed in beds if bed.at_least is not None]
    highs = [bed.at_most for bed in beds if bed.at_most is not None]
    if not lows or len(lows) < len(beds):
        return "", ()
    text = bound_words(min(lows), max(highs) if len(highs) == len(beds) else None, asked.locale)
    if not text:
        return "", ()
    return text, (
        tr(
            "What can be said is a bound: the least that was drawn for a while is at least "
            "what is not the bed, and standby power never is the bed's."
        ),
    )


def _facts(asked: Question, beds: list[BedShare]) -> tuple[str, ...]:
    """What the log of a run shows of the heater, where the reason for refusing holds it."""
    why = next((bed.why_not for bed in beds if bed.why_not is not None), None)
    if why is None or asked.run is None:
        return ()
    names = (
        ("interval_s", tr("interval of the log"), "s"),
        ("off_w", tr("lowest level during processing"), "W"),
        ("step_w", tr("step up from it"), "W"),
        ("plateau_w", tr("highest power of the warm-up"), "W"),
        ("changes", tr("changes between the two levels"), ""),
    )
    said = []
    for name, words, unit in names:
        fact = why.fact(name)
        if isinstance(fact, (int, float)) and math.isfinite(fact) and fact > 0:
            said.append(f"{words}: {figures(float(fact), 3, asked.locale)} {unit}".rstrip())
    return tuple(said)
