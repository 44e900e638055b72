"""Keys that people read too: noted here for translators, kept in English, shown by ``tr(key)``."""

from typing import Final

from core.language import mark

#: what is counted of a run
BOUNDARIES: Final = (mark("warm-up and processing"), mark("processing only"), mark("until cooled"))
#: what a stretch of a log is
KINDS: Final = (
    mark("run"),
    mark("other part"),
    mark("broken off"),
    mark("cut"),
    mark("heating"),
    mark("hold test"),
    mark("switch-on test"),
    mark("nothing"),
)
#: what a machine does
STATES: Final = (mark("off"), mark("standby"), mark("warm-up"), mark("processing"), mark("cooling"))
#: how the standby power was had
STANDBY_WAYS: Final = (mark("steady rest"), mark("unsteady rest"), mark("lowest level"))
#: how grave a point of fairness is
LEVELS: Final = (mark("note"), mark("caution"), mark("unfair"))
#: how an energy was had
ENERGY_METHODS: Final = (
    mark("power"),
    mark("counter"),
    mark("counter with power at the edges"),
    mark("typed"),
)
#: how the bed's share was had
BED_METHODS: Final = (
    mark("own meter"),
    mark("run with the bed off"),
    mark("hold test"),
    mark("heater switching"),
)
