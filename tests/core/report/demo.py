"""The demo's results, for tests of what is written of a whole study."""

from datetime import date
from functools import cache

from core.comparing import Gathered, gather
from core.demo import demo_study, with_what_is_known
from core.places import demo_folder
from core.publish.sources import Sources
from core.report.pictures import Drawable

MADE = date(2026, 11, 25)


@cache
def demo_gathered() -> Gathered:
    """The demo's logs as they are read."""
    return gather([demo_folder() / "logs"], start=demo_study())


@cache
def demo_sources() -> Sources:
    """The results of the demo study."""
    read = demo_gathered()
    study = with_what_is_known(read.study)
    return Sources(Drawable(study, read.comparison_of(study), read.traces, read.activities), MADE.year)
