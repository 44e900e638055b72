"""How standby power was found: the one number of the comparison and of the page on standby and cost."""

import math
from collections.abc import Iterator, Sequence

from core.costs.standby import SHORTEST_S, Standby
from core.formatting import NumberLocale, duration
from core.found import around, budgets
from core.found.question import Question
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, shown, too_high
from core.language import mark, tr
from core.quantities import STANDBY_W
from core.results.checked_logs import checked_meter
from core.results.checked_meters import calibration
from core.results.runs import Seen, seen
from core.results.standby import best_standby
from core.results.values import Measured
from core.study import Log, Meter, Study
from core.units import HOURS_PER_YEAR, SECONDS_PER_MINUTE, WH_PER_KWH

#: windows whose means are written out, the last ones
MOST_WINDOWS = 8
#: what would let it be measured at all, or better
LONGER_LOG = mark(
    "Let the meter log for half an hour before and after the runs, with the machine switched on."
)
BETTER_METER = mark("A meter of better stated accuracy at a few watts; many are made for kilowatts.")


def standby(asked: Question) -> Explanation:
    """Power of a machine that does nothing."""
    locale, value = asked.locale, asked.value(STANDBY_W)
    title = tr("{name}: standby power", name=asked.machine.name)
    logs = asked.study.logs_of(asked.machine.machine_id)
    if value is None:
        return Explanation(
            title,
            tr("not known"),
            "standby",
            method=(tr("No log of this machine shows it doing nothing."),),
            surer=(tr(LONGER_LOG),),
            sources=_sources(logs, None),
        )
    best = best_standby(_inputs(asked, logs), calibration(asked.study.meters, asked.study.checks))
    if best is None:  # the logs have not been read
        why = tr("Its logs have not been read here, so how it was found is left unsaid.")
        text = shown(value, STANDBY_W, locale)
        return Explanation(title, text, "standby", method=(why,), sources=_sources(logs, None))
    found, log = best[0], logs[best[1]]
    lines = budget(found, checked_meter(asked.study, log.meter_id), asked.study, locale)
    return Explanation(
        title=title,
        value_text=value_text(found, locale),
        topic="standby",
        method=(*method(found, locale), *budgets.by_check(log.meter_id, asked.study, locale)),
        formula=formula(found, lines, locale),
        sources=_sources(logs, log),
        budget=lines,
        without_budget=without_budget(lines),
        sensitivity=sensitivity(found, locale),
        surer=surer(found),
        cautions=around.cautions(asked),
    )


def value_text(found: Standby, locale: NumberLocale) -> str:
    """The number with its interval, or with what it is where it has none."""
    text = shown(Measured(found.power_w, found.u95_w), STANDBY_W, locale)
    return tr("{text}, the lowest level", text=text) if found.way == "lowest level" else text


def method(found: Standby, locale: NumberLocale) -> tuple[str, ...]:
    """The rule, and what it met."""
    if found.way == "lowest level":
        return (
            tr(
                "No rest in the logs lasts {shortest_s:.0f} minutes, so no mean was taken.",
                shortest_s=SHORTEST_S / SECONDS_PER_MINUTE,
            ),
            tr(
                "This is the low end of the values at which the power rests while nothing heats, "
                "learnt from the log: one in twenty of them lies below it, so the mean will be "
                "higher, and no interval is given."
            ),
        )
    told = {
        "time": duration(found.seconds),
        "low": figures(found.lowest_w, 3, locale),
        "high": figures(found.highest_w, 3, locale),
    }
    if found.is_steady:
        stretch = tr(
            "The stretch, {time} long, is steady; the means of its windows lie between {low} and {high} W.",
            **told,
        )
    else:
        stretch = tr(
            "The stretch, {time} long, never became steady, so the whole stretch is meant; the means of its "
            "windows lie between {low} and {high} W.",
            **told,
        )
    return (
        tr(
            "Mean power of the longest stretch of standby, cut into windows of five minutes; it counts from "
            "the first window on from which no window stands out and both halves agree."
        ),
        stretch,
    )


def formula(found: Standby, lines: Sequence[BudgetLine], locale: NumberLocale) -> tuple[str, ...]:
    """The means of the windows, and how the interval was made."""
    power = figures(found.power_w, locale=locale)
    if found.way == "lowest level" or not found.windows_w:
        return (tr("learnt level = {power} W", power=power),)
    kept = [figures(w, 3, locale) for w in found.windows_w[-MOST_WINDOWS:]]
    more = "… " if len(found.windows_w) > MOST_WINDOWS else ""
    return (
        tr("means of the windows: {windows} W", windows=more + "  ".join(kept)),
        tr("mean of what counts of them = {power} W", power=power),
        *budgets.combined(lines, found.u95_w, locale, "W"),
    )


def sensitivity(found: Standby, locale: NumberLocale) -> tuple[str, ...]:
    """What other windows, another meter or another watt would make of it."""
    told = []
    if len(found.windows_w) > 1:
        mean_w = math.fsum(found.windows_w) / len(found.windows_w)
        farthest = max(found.windows_w, key=lambda w: abs(w - mean_w))
        rest = (math.fsum(found.windows_w) - farthest) / (len(found.windows_w) - 1)
        told.append(
            otherwise(tr("By all windows, the settled and the others"), mean_w - found.power_w, "W", locale)
        )
        told.append(
            otherwise(tr("By all but the one that lies farthest off"), rest - found.power_w, "W", locale)
        )
    yearly = found.power_w * HOURS_PER_YEAR / WH_PER_KWH
    return (
        *told,
        too_high(found.power_w, "W", locale),
        tr(
            "A year of it: {yearly} kWh ({hours_per_year} h)",
            yearly=figures(yearly, 3, locale),
            hours_per_year=figures(HOURS_PER_YEAR, 4, locale),
        ),
        tr(
            "If it were 1 W more: +{hours_per_year} kWh a year",
            hours_per_year=figures(HOURS_PER_YEAR / WH_PER_KWH, 3, locale),
        ),
    )


def without_budget(lines: Sequence[BudgetLine]) -> str:
    """Why a level has no budget; empty where there is one."""
    return "" if lines else tr("A learnt level has no interval: it is the low end of what was drawn at rest.")


def budget(
    found: Standby,
    meter: Meter,
    study: Study,
    locale: NumberLocale,
    factor: float = 1.0,
    unit: str = "W",
) -> tuple[BudgetLine, ...]:
    """What makes the mean of a rest unsure, times `factor` in `unit`; nothing of a level."""
    if found.u95_w is None:
        return ()
    gain_w = found.power_w * meter.gain_percent / 100 / math.sqrt(3)
    parts = [("repeats", found.own_w, "", tr("how far the means of the windows scatter"))]
    keys = {"meter gain": budgets.gain_key(meter.id, study), "meter offset": f"offset:{meter.id}"}
    for name, u in (("meter gain", gain_w), ("meter offset", meter.offset_w / math.sqrt(3))):
        key = keys[name]
        parts.append((name, u, budgets.shared_with(key, study), budgets.why(name, key, study)))
    made = [(name, u * factor, shared, why) for name, u, shared, why in parts if u * factor > 0]
    return budgets.made(made, locale, unit)


def surer(found: Standby) -> tuple[str, ...]:
    """What would make it surer."""
    return (tr(BETTER_METER),) if found.is_steady else (tr(LONGER_LOG), tr(BETTER_METER))


def _inputs(asked: Question, logs: Sequence[Log]) -> Iterator[tuple[Seen | None, Meter]]:
    for log in logs:
        trace = asked.traces.get(log.id)
        known = None if trace is None else seen(trace, (asked.activities or {}).get(log.id))
        yield known, asked.study.meter(log.meter_id)


def _sources(logs: Sequence[Log], counted: Log | None) -> tuple[SourceLine, ...]:
    return tuple(
        SourceLine(", ".join(s.file_name for s in log.sources), counts=log is counted) for log in logs
    )
