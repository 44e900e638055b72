"""What may be asked on the Bed page: functions of beds, study, how numbers are written, traces."""

from collections.abc import Callable, Mapping

from core.beds.quantities import HEAT_CAPACITY, HELD_W, TIMES_FLOOR, W_PER_DM2
from core.formatting import NumberLocale
from core.found.bed_line import line_found
from core.found.bed_supply import for_their_size, groups, supply
from core.found.cooler import cooler_found
from core.found.held_bed import held_bed, held_found
from core.found.values import Explanation
from core.results.cooler_beds import Plan
from core.results.holds import Beds
from core.study import Study
from core.traces import Trace

Traces = Mapping[str, Trace]
Asked = Callable[[Beds, Study, NumberLocale, Traces], Explanation | None]
#: columns of the table of holds by the measures whose single holds the chart shows
COLUMNS = {TIMES_FLOOR.key: "of_floor_percent", HEAT_CAPACITY.key: "heat_capacity_j_per_k"}


def headline_found(beds: Beds, study: Study, locale: NumberLocale, traces: Traces) -> Explanation | None:
    """What the sentence on top says: beds for their size, or the watts of the one that takes most."""
    told = for_their_size(beds, study, locale)
    if told is not None or not beds.known:
        return told
    most = max(beds.known, key=lambda m: m.reference.power_w if m.reference else 0.0)
    key = W_PER_DM2.key if most.area_dm2 else HELD_W.key
    return held_bed(beds, study, most.machine_id, key, locale, traces)


def supplies_found(beds: Beds, study: Study, locale: NumberLocale, traces: Traces) -> Explanation | None:
    """What supplies lose: by beds with a meter of their own, else by their kinds."""
    own = next((m for m in beds.machines if m.own_meter is not None), None)
    return groups(beds, locale) if own is None else supply(own, study, locale)


def line_of(
    beds: Beds, study: Study, locale: NumberLocale, traces: Traces, *, machine_id: str
) -> Explanation | None:
    """The line of a machine, else its watts where one temperature alone was held."""
    told = line_found(beds, study, machine_id, locale)
    return held_bed(beds, study, machine_id, HELD_W.key, locale, traces) if told is None else told


def of_machine(
    beds: Beds, study: Study, locale: NumberLocale, traces: Traces, *, machine_id: str, key: str
) -> Explanation | None:
    """A number of a machine's bed."""
    return held_bed(beds, study, machine_id, key, locale, traces)


def of_hold(
    beds: Beds,
    study: Study,
    locale: NumberLocale,
    traces: Traces,
    *,
    machine_id: str,
    run_id: str,
    place: str,
    column: str,
) -> Explanation | None:
    """A number of one held temperature; `place` is its number in the test, or anything for its first."""
    bed = beds.of(machine_id)
    held = () if bed is None else tuple(h for h in bed.held if h.run_id == run_id)
    if bed is None or not held:
        return None
    one = next((h for h in held if str(h.number) == place), held[0])
    return held_found(beds, study, bed, one, column, locale, traces)


def of_saving(
    beds: Beds,
    study: Study,
    locale: NumberLocale,
    traces: Traces,
    *,
    plan: Plan | None,
    machine_id: str,
    key: str,
) -> Explanation | None:
    """What a cooler bed saves; an empty id asks for one print on each machine."""
    return None if plan is None else cooler_found(beds, plan, study, machine_id, key, locale)
