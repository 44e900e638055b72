"""How standby power was found."""

import math

import numpy as np

from core.formatting import percent
from core.found import around, budgets
from core.found.question import Question
from core.found.values import Explanation, SourceLine
from core.found.writing import figures, shown
from core.quantities import STANDBY_W
from core.results.runs import seen
from core.study import Log
from core.traces import Trace
from core.uncertainty import NORMAL_95
from core.units import HOURS_PER_YEAR, WH_PER_KWH

#: rows of a log that are looked at to say how much of it is standby
MOST_ROWS = 500_000


def standby(asked: Question) -> Explanation:
    """Power of a machine that does nothing."""
    locale, value = asked.locale, asked.value(STANDBY_W)
    title = f"{asked.machine.name}: standby power"
    found = _longest(asked)
    if value is None:
        return Explanation(
            title,
            "not known",
            "standby",
            method=("No log of this machine shows it doing nothing for long enough.",),
            surer=(
                "Let the meter log for half an hour before and after the runs, with the machine switched on.",
            ),
            sources=_logs(asked),
        )
    parts = []
    if found is not None:
        meter = asked.study.meter(found[0].meter_id)
        key = f"offset:{meter.id}"
        parts = [
            (
                "meter offset",
                meter.offset_w / math.sqrt(3),
                budgets.shared_with(key, asked.study),
                budgets.why("meter offset", key, asked.study),
            ),
            (
                "meter gain",
                value.value * meter.gain_percent / 100 / math.sqrt(3),
                budgets.shared_with(key, asked.study),
                budgets.why("meter gain", key, asked.study),
            ),
            ("resolution", found[1].resolution_w / math.sqrt(12), "", budgets.WHY["resolution"]),
        ]
    budget = budgets.made([part for part in parts if part[1] > 0], locale, "W")
    half_w = NORMAL_95 * math.sqrt(math.fsum(line.u**2 for line in budget))
    yearly = value.value * HOURS_PER_YEAR / WH_PER_KWH
    return Explanation(
        title=title,
        value_text=shown(value, STANDBY_W, locale),
        topic="standby",
        method=(
            "The low end of the values at which the power rests while nothing heats, learnt from the log: "
            "one in twenty of them lies below it.",
            "With several logs, that of the longest one that shows such rest.",
            *(_rest(asked, found, value.value) if found is not None else ()),
        ),
        formula=(f"by the meter alone ± {figures(half_w, 2, locale)} W (95 %)",) if half_w > 0 else (),
        sources=_logs(asked),
        budget=budget,
        sensitivity=(
            f"A year of it: {figures(yearly, 3, locale)} kWh ({figures(HOURS_PER_YEAR, 4, locale)} h)",
            f"If it were 1 W more: +{figures(HOURS_PER_YEAR / WH_PER_KWH, 3, locale)} kWh a year",
        ),
        surer=("A meter of better stated accuracy at small loads; many are made for kilowatts.",)
        if budget
        else (),
        cautions=around.cautions(asked),
    )


def _longest(asked: Question) -> tuple[Log, Trace] | None:
    """The log the value was taken from: the longest that shows standby."""
    known = [
        (trace.end_s, log, trace)
        for log in asked.study.logs_of(asked.machine.machine_id)
        for trace in [asked.traces.get(log.id)]
        if trace is not None
        and seen(trace, (asked.activities or {}).get(log.id)).activity.standby_w is not None
    ]
    if not known:
        return None
    _, log, trace = max(known, key=lambda entry: entry[0])
    return log, trace


def _rest(asked: Question, found: tuple[Log, Trace], level_w: float) -> tuple[str, ...]:
    """How much of the log lies near the level, by no more than so many rows of it."""
    trace = found[1]
    some_w = trace.power_w[:: max(1, trace.power_w.size // MOST_ROWS)]
    width_w = max(1.0, 2 * trace.resolution_w)
    part = float(np.mean(np.abs(some_w - level_w) <= width_w))
    near = f"{figures(width_w, 2, asked.locale)} W of {figures(level_w, 3, asked.locale)} W"
    return (f"{percent(part, 0, asked.locale)} of the log's rows lie within {near}.",)


def _logs(asked: Question) -> tuple[SourceLine, ...]:
    found = _longest(asked)
    return tuple(
        SourceLine(", ".join(s.file_name for s in log.sources), counts=found is not None and log is found[0])
        for log in asked.study.logs_of(asked.machine.machine_id)
    )
