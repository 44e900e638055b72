"""One number of one held temperature that is asked for, with everything that is known."""

import math
from collections.abc import Mapping

from attrs import frozen

from core.formatting import POINT, NumberLocale, number
from core.found import budgets
from core.found.values import SourceLine
from core.found.writing import figures
from core.language import tr
from core.results.bed_answer import settled_text
from core.results.checked_logs import checked_logs
from core.results.holds import Beds, Held, MachineBed, gain_u
from core.study import Log, Meter, Study
from core.traces import Trace

TOPIC = "bed"


@frozen(eq=False)
class Asked:
    """One number of one held temperature, with everything that is known."""

    beds: Beds
    study: Study
    machine: MachineBed
    held: Held
    locale: NumberLocale = POINT
    traces: Mapping[str, Trace] = {}

    @property
    def log(self) -> Log:
        """The log that the test lies in."""
        return self.study.log(self.study.run(self.held.run_id).log_id)

    @property
    def meter(self) -> Meter:
        """Its meter, as same-load checks narrow it."""
        return checked_logs(self.study, {})[0].meter(self.log.meter_id)

    @property
    def trace(self) -> Trace | None:
        """Its trace as same-load checks correct it; None where it has not been read."""
        return checked_logs(self.study, self.traces)[1].get(self.log.id)

    @property
    def place(self) -> str:
        """Machine and temperature by name."""
        return f"{self.machine.name}, {degrees(self.held, self.locale)}"

    @property
    def sources(self) -> tuple[SourceLine, ...]:
        """The hold and its log."""
        files = ", ".join(source.file_name for source in self.log.sources)
        words = f"{degrees(self.held, self.locale)}: {settled_text(self.held)}"
        told = tr("{names}, measured with {name}", names=files, name=self.meter.name)
        return (SourceLine(words, self.held.run_id, self.machine.counts(self.held)), SourceLine(told))

    @property
    def checks(self) -> tuple[str, ...]:
        """What same-load checks made of the meter's readings."""
        return budgets.by_check(self.log.meter_id, self.study, self.locale)

    def f(self, value: float) -> str:
        """A number of a formula."""
        return figures(value, locale=self.locale)

    def gain(self, value: float) -> tuple[str, float, str, str]:
        """The line of the meter's gain in a budget, for a number in proportion to its readings."""
        key = budgets.gain_key(self.log.meter_id, self.study)
        return (
            "meter gain",
            gain_u(self.meter) * abs(value),
            budgets.shared_with(key, self.study).replace("run", "hold test"),
            budgets.why("meter gain", key, self.study),
        )

    def offset(self) -> tuple[str, float, str, str]:
        """The line of the meter's offset, for watts from which nothing is taken off. [W]"""
        key = f"offset:{self.log.meter_id}"
        return (
            "meter offset",
            self.meter.offset_w / math.sqrt(3),
            "",
            budgets.why("meter offset", key, self.study),
        )


def degrees(held: Held, locale: NumberLocale) -> str:
    """The temperature of a hold."""
    if held.bed_c is None:
        return tr("unknown temperature")
    return tr("{bed_c} °C", bed_c=number(held.bed_c, 1, locale))
