"""How it was found what lies in the logs: how many runs of the part, and the energy of a whole log."""

from collections.abc import Mapping, Sequence

from attrs import evolve

from core.energy.integral import by_power_wh
from core.energy.total import between
from core.formatting import POINT, NumberLocale, duration, number
from core.found import budgets
from core.found.values import Explanation, SourceLine
from core.found.writing import figures, otherwise, too_high
from core.language import mark, tr
from core.logs.facts import facts
from core.logs.reading import Reading
from core.study import Log, Run, Study
from core.traces import Sampling, Trace

_COUNT = mark("It is a count of stretches, so it has no interval.")
_KINDS: Mapping[Sampling, str] = {
    "sampled": mark("instants"),
    "averaged": mark("means of intervals"),
    "on_change": mark("changes only"),
}


def runs_found(study: Study, locale: NumberLocale = POINT) -> Explanation | None:
    """What stands behind the sentence on top of the logs: stretches by machine and kind.

    Parameters
    ----------
    study : Study
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None without a log and a typed reading.
    """
    if not study.logs and not study.typed:
        return None
    beds = {log.id for log in study.logs if log.of_bed}
    counted, lines, sources = 0, [], []
    for machine in study.machines:
        logs = [log for log in study.logs_of(machine.id) if log.id not in beds]
        stretches = [r for log in logs for r in study.runs_of(log.id) if r.kind != "nothing"]
        runs = [r for r in stretches if r.kind == "run"]
        counted += len(runs)
        if logs:
            lines.append(_of_machine(machine.name, len(logs), stretches))
        sources += [
            SourceLine(f"{machine.name}: {_named(run, place)}", run.id, run.included)
            for place, run in enumerate(stretches, start=1)
        ]
    typed = len(study.typed)
    if typed:
        lines.append(tr("{count:run|runs} of the {part} typed in", count=typed, part=study.part))
    others = [r for r in study.runs if r.log_id not in beds and r.kind not in ("run", "nothing")]
    out = [r for r in study.runs if r.log_id not in beds and r.kind == "run" and not r.included]
    kinds = ", ".join(dict.fromkeys(tr(r.kind) for r in others))
    return Explanation(
        title=tr("Runs of the {part} in the logs", part=study.part),
        value_text=tr("{count:run|runs}", count=counted + typed),
        topic="runs",
        method=(
            tr(
                "Levels are learnt from each log; a stretch begins where heating lifts the power out of "
                "standby and ends where processing ends."
            ),
            tr(
                "Stretches whose duration and energy agree belong to one part; the others are something else."
            ),
        ),
        formula=tuple(lines),
        sources=tuple(sources),
        without_budget=tr(_COUNT),
        sensitivity=(
            tr("It is a count: no reading moves it by a little."),
            tr("{count:stretch is|stretches are} something else: {kinds}", count=len(others), kinds=kinds)
            if others
            else tr("Nothing else was found in the logs."),
            *((tr("{count} of them left out", count=len(out)),) if out else ()),
        ),
    )


def _of_machine(name: str, logs: int, stretches: Sequence[Run]) -> str:
    kinds: dict[str, int] = {}
    for run in stretches:
        kinds[run.kind] = kinds.get(run.kind, 0) + 1
    told = ", ".join(f"{count} × {tr(kind)}" for kind, count in kinds.items()) or tr("nothing")
    return tr("{name}: {told} in {logs:log|logs}", name=name, told=told, logs=logs)


def _named(run: Run, place: int) -> str:
    name = run.name or tr("stretch {place}", place=place)
    return tr("{name}, {kind}, {time}", name=name, kind=tr(run.kind), time=duration(run.end_s - run.start_s))


def log_found(
    study: Study, log: Log, reading: Reading, trace: Trace | None, locale: NumberLocale = POINT
) -> Explanation | None:
    """What stands behind the facts of a log as it was read: above all its energy, by power and counter.

    Parameters
    ----------
    study : Study
    log : Log
    reading : Reading
        Of one of its files.
    trace : Trace or None
        Of the whole log; else that of the reading is taken.
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where the log has no rows.
    """
    whole = reading.trace if trace is None else trace
    if whole is None or whole.time_s.size < 2:
        return None
    meter = study.meter(log.meter_id)
    used = between(whole, 0.0, whole.end_s, meter)
    lines = budgets.lines(used.influences, study, locale)
    from core.uncertainty import u95_of

    u95 = u95_of(used)
    power_wh = by_power_wh(whole, 0.0, whole.end_s)
    other: Sampling = "averaged" if whole.kind == "sampled" else "sampled"
    read = evolve(whole, kind=other, key=f"{whole.key} as {other}")
    half = whole.end_s / 2
    return Explanation(
        title=tr("{name}: the whole log", name=study.machine(log.machine_id).name),
        value_text=f"{figures(used.energy_wh, locale=locale)} ± {figures(u95 or 0.0, 2, locale)} Wh",
        topic="energy",
        method=(
            tr("The power column was added up from the first row to the last, gaps bridged."),
            *(
                (tr("Its energy counter was run on over resets; both are joined, each by how sure it is."),)
                if used.by_counter_wh is not None
                else ()
            ),
        ),
        formula=(
            *(f"{fact.name}: {fact.text}" for fact in facts(reading)[:5]),
            tr("by the power column: {energy} Wh", energy=figures(power_wh, 5, locale)),
            *(
                (tr("by the counter: {energy} Wh", energy=figures(used.by_counter_wh, 5, locale)),)
                if used.by_counter_wh is not None
                else ()
            ),
            *budgets.combined(lines, u95, locale, "Wh"),
        ),
        sources=tuple(
            SourceLine(tr("{names}, measured with {name}", names=source.file_name, name=meter.name))
            for source in log.sources
        ),
        budget=lines,
        without_budget="" if lines else tr("Nothing is known of what makes its energy unsure."),
        sensitivity=(
            otherwise(
                tr("If the log held {held}", held=tr(_KINDS[other])),
                between(read, 0.0, whole.end_s, meter).energy_wh - used.energy_wh,
                "Wh",
                locale,
            ),
            tr("its first half alone: {energy} Wh", energy=number(by_power_wh(whole, 0.0, half), 2, locale)),
            too_high(used.energy_wh, "Wh", locale),
        ),
    )
