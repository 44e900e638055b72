"""How the watts of a held bed were found, and what was made of them: per area, against the floor."""

from collections.abc import Callable, Mapping

from core.beds.model import BedModel, Watts
from core.beds.plate import CORRELATIONS_DIFFER, METHOD, Plate, loss
from core.beds.quantities import (
    EFFICIENCY,
    HALF_HOUR,
    HEAT_CAPACITY,
    HELD_W,
    TIMES_FLOOR,
    W_PER_DM2,
    WARM_UP_S,
    WARM_UP_WH,
)
from core.formatting import POINT, NumberLocale, number, percent
from core.found import budgets, hold_warm_up, hold_watts
from core.found.bed_supply import supply
from core.found.hold_asked import Asked, degrees
from core.found.hold_watts import RULE, TAKEN_OFF
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, shown, too_high
from core.language import mark, tr
from core.quantities import Quantity
from core.results.bed_answer import settled_text
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.study import Study
from core.traces import Trace

_TOPIC = "bed"
#: what is explained, by the quantity
_AT = {
    HELD_W.key: mark("{name}: watts held at {celsius} °C"),
    W_PER_DM2.key: mark("{name}: per area at {celsius} °C"),
    TIMES_FLOOR.key: mark("{name}: of the floor at {celsius} °C"),
}
_HOW = {
    "held": (
        mark(
            "The temperature asked for was held to half a kelvin: its watts are taken, brought there by "
            "a hot "
            "plate's law."
        )
    ),
    "fit": mark(
        "A weighted line through the held temperatures tells the watts at the temperature asked for."
    ),
    "scaled": (
        mark(
            "The temperature asked for was not held: the nearest known watts are scaled by a hot plate's law."
        )
    ),
}


#: what one hold of the machine tells, the hold by which it is told, and its column in the table of holds
_OF_ONE_HOLD: dict[str, tuple[Callable[[MachineBed], Held | None], str]] = {
    WARM_UP_WH.key: (lambda bed: bed.from_cold, "warm_up_wh"),
    WARM_UP_S.key: (lambda bed: bed.from_cold, "warm_up_s"),
    HALF_HOUR.key: (lambda bed: bed.first_hour, "half_hour"),
    HEAT_CAPACITY.key: (lambda bed: bed.longest_rise, "heat_capacity_j_per_k"),
}
_NAMES = {
    WARM_UP_WH.key: mark("warm-up"),
    WARM_UP_S.key: mark("warm-up time"),
    HALF_HOUR.key: mark("half hour against the full hour"),
    HEAT_CAPACITY.key: mark("heat capacity"),
}


def held_bed(
    beds: Beds,
    study: Study,
    machine_id: str,
    key: str,
    locale: NumberLocale = POINT,
    traces: Mapping[str, Trace] | None = None,
) -> Explanation | None:
    """What stands behind one number of a bed.

    Parameters
    ----------
    beds : Beds
    study : Study
    machine_id : str
    key : str
        Of a quantity of `core.beds.quantities`; of another, the watts held are explained.
    locale : NumberLocale
    traces : mapping of log id to Trace, optional
        Without that of a hold's log, what needs it is left unsaid.

    Returns
    -------
    Explanation or None
        None where there is no such machine.
    """
    bed = beds.of(machine_id)
    if bed is None:
        return None
    if key in _OF_ONE_HOLD:
        of_bed, column = _OF_ONE_HOLD[key]
        held = of_bed(bed)
        if held is not None:
            return held_found(beds, study, bed, held, column, locale, traces)
        why = tr("No hold test of this machine shows a warm-up from cold.")
        title = f"{bed.name}: {tr(_NAMES[key])}"
        sources = _sources(bed, locale)
        return Explanation(title, tr("not known"), _TOPIC, method=(why,), sources=sources)
    if key == EFFICIENCY.key:
        return supply(bed, study, locale)
    quantity = {q.key: q for q in (W_PER_DM2, TIMES_FLOOR)}.get(key, HELD_W)
    title = tr(
        _AT[quantity.key],
        name=bed.name,
        celsius=number(beds.bed_c, 0, locale),
    )
    if bed.model is None or bed.reference is None:
        return Explanation(
            title, tr("not known"), _TOPIC, method=(_lacking(bed),), sources=_sources(bed, locale)
        )
    factor, divided = _divisor(bed, quantity)
    value = Measured(bed.reference.power_w * factor, bed.reference.u95_w * factor)
    unit = quantity.unit
    lines = _budget(bed, study, bed.reference, factor * quantity.factor, unit, locale)
    u95 = (value.u95 or 0.0) * quantity.factor
    return Explanation(
        title=title,
        value_text=shown(value, quantity, locale),
        topic=_TOPIC,
        method=(
            f"{tr(RULE)} {tr(TAKEN_OFF)}",
            tr(_HOW[bed.reference.how]),
            *((divided,) if divided else ()),
            *(
                line
                for meter_id in sorted(bed.meter_ids)
                for line in budgets.by_check(meter_id, study, locale)
            ),
        ),
        formula=(*_formula(bed, beds, quantity, locale), *budgets.combined(lines, u95, locale, unit)),
        sources=_sources(bed, locale),
        budget=lines,
        sensitivity=_sensitivity(bed, beds, factor, quantity, locale),
        surer=_surer(bed),
        cautions=_cautions(bed, quantity, locale),
    )


def held_found(
    beds: Beds,
    study: Study,
    machine: MachineBed,
    held: Held,
    column: str,
    locale: NumberLocale = POINT,
    traces: Mapping[str, Trace] | None = None,
) -> Explanation:
    """What stands behind one number of one held temperature.

    Parameters
    ----------
    beds : Beds
    study : Study
    machine : MachineBed
    held : Held
        One of the machine's.
    column : str
        Key of a column of the table of holds, or ``"warm_up_s"`` or ``"half_hour"``; of another, the watts of
        the bed are explained.
    locale : NumberLocale
    traces : mapping of log id to Trace, optional
    """
    asked = Asked(beds, study, machine, held, locale, traces or {})
    if column in ("bed_c", "room_c"):
        return hold_watts.temperature(asked, column)
    if column in ("half_hour_w", "full_hour_w"):
        return hold_watts.first_time(asked, column)
    alone = {
        "settled_w": hold_watts.settled,
        "steady_after_min": hold_watts.steady_after,
        "half_hour": hold_watts.half_hour,
        "warm_up_wh": hold_warm_up.energy,
        "warm_up_s": hold_warm_up.time,
        "heat_capacity_j_per_k": hold_warm_up.capacity,
    }.get(column)
    return hold_watts.watts(asked, column) if alone is None else alone(asked)


def _divisor(bed: MachineBed, quantity: Quantity) -> tuple[float, str]:
    """What the watts are multiplied with, and what that means."""
    if quantity is W_PER_DM2 and bed.area_dm2:
        return 1 / bed.area_dm2, tr("The area of one face is the one you typed; it is taken as exact.")
    if quantity is TIMES_FLOOR and bed.floor_w:
        return 1 / bed.floor_w, tr(
            "Held against what a square plate of its area must lose: {method}.", method=METHOD
        )
    return 1.0, ""


def _lacking(bed: MachineBed) -> str:
    if not bed.tests:
        return tr("No hold test of this machine was found or marked.")
    return tr(
        "Its hold tests lack the bed's temperature, or the log does not show what else the machine draws."
    )


def _formula(bed: MachineBed, beds: Beds, quantity: Quantity, locale: NumberLocale) -> tuple[str, ...]:
    def f(value: float) -> str:
        return figures(value, locale=locale)

    lines = [
        tr(
            "at {celsius} °C: {all} W − {beside} W beside the bed = {bed} W",
            celsius=f(h.bed_c or 0.0),
            all=f(h.hold.steady.mean_w),
            beside=f(h.hold.base_w),
            bed=f(h.hold.bed_w or 0.0),
        )
        for h in bed.held
        if h.hold.base_w is not None and bed.counts(h)
    ]
    reference = bed.reference
    assert reference is not None
    assert bed.model is not None
    difference_k = beds.bed_c - beds.room_c
    if bed.model.fit is not None:
        terms = [
            f"{f(c)} d{'²' if i == 2 else ''}" if i else f(c)
            for i, c in enumerate(bed.model.fit.coefficients)
        ]
        lines.append(tr("P = {terms}, d in K above the room", terms=" + ".join(terms)))
    lines.append(
        tr(
            "at {bed} °C in {room} °C, d = {kelvin} K: {watts} W",
            bed=f(beds.bed_c),
            room=f(beds.room_c),
            kelvin=f(difference_k),
            watts=f(reference.power_w),
        )
    )
    if quantity is W_PER_DM2 and bed.area_dm2:
        lines.append(
            f"{f(reference.power_w)} W / {f(bed.area_dm2)} dm² = {f(reference.power_w / bed.area_dm2)} W/dm²"
        )
    if quantity in (W_PER_DM2, TIMES_FLOOR) and bed.floor_w and bed.area_dm2:
        least = loss(Plate.square(bed.area_dm2), beds.bed_c, beds.room_c, emissivity=beds.emissivity)
        lines.append(
            tr(
                "floor = {up} W up + {down} W down + 2 × {radiation} W radiation = {floor} W",
                up=f(least.up_w),
                down=f(least.down_w),
                radiation=f(least.radiation_w),
                floor=f(bed.floor_w),
            )
        )
    if quantity is TIMES_FLOOR and bed.floor_w:
        percent = f(100 * reference.power_w / bed.floor_w)
        lines.append(f"{f(reference.power_w)} W / {f(bed.floor_w)} W = {percent} %")
    return tuple(lines)


def _sources(bed: MachineBed, locale: NumberLocale) -> tuple[SourceLine, ...]:
    return tuple(
        SourceLine(f"{degrees(h, locale)}: {settled_text(h)}", h.run_id, bed.counts(h)) for h in bed.held
    )


def _budget(
    bed: MachineBed, study: Study, watts: Watts, factor: float, unit: str, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    """Each hold's scatter, the meter's gain, the plate law, the temperatures; as `BedModel` orders them."""
    parts = [
        (name, abs(float(u)) * factor, with_whom, why)
        for (name, with_whom, why), u in zip(
            sources_of_watts(bed, study, locale), watts.parts.tolist(), strict=True
        )
    ]
    return budgets.made([part for part in parts if part[1] > 0], locale, unit)


def sources_of_watts(
    bed: MachineBed, study: Study, locale: NumberLocale = POINT
) -> tuple[tuple[str, str, str], ...]:
    """What makes the watts of a bed unsure, in the order of the parts of `core.beds.model.Watts`.

    Returns
    -------
    tuple of (name, what it is shared with, why)
    """
    assert bed.model is not None
    key = budgets.gain_key(next(iter(bed.meter_ids)), study) if len(bed.meter_ids) == 1 else None
    shared = budgets.shared_with(key, study).replace("run", "hold test")
    return (
        *(
            (
                tr("hold at {difference_k} K", difference_k=number(p.difference_k, 0, locale)),
                "",
                tr("how its windows scatter, and what is beside the bed"),
            )
            for p in bed.model.points
        ),
        ("meter gain", shared, budgets.why("meter gain", key, study)),
        ("meter offset", "", tr(budgets.WHY["meter offset"])),
        (
            mark("plate law"),
            "",
            tr("how far the loss of a real bed follows that of a plate beyond what was held"),
        ),
        ("temperatures", "", tr("bed and room are known to half a kelvin")),
    )


def _sensitivity(
    bed: MachineBed, beds: Beds, factor: float, quantity: Quantity, locale: NumberLocale
) -> tuple[str, ...]:
    """What would come out if bed or room had been a kelvin or ten off."""
    assert bed.model is not None
    now_w = bed.model.at(beds.bed_c - beds.room_c).power_w
    lines = []
    for text, change_k in (
        (tr("If the room had been 1 K warmer"), -1.0),
        (tr("If the bed were held 10 K warmer"), 10.0),
    ):
        difference_k = beds.bed_c - beds.room_c + change_k
        if difference_k > 0:
            by = (bed.model.at(difference_k).power_w - now_w) * factor * quantity.factor
            sign = "+" if by > 0 else ""
            lines.append(f"{text}: {sign}{figures(by, 2, locale)} {quantity.unit}")
    at_k = beds.bed_c - beds.room_c
    for point in bed.model.points:
        rest = tuple(p for p in bed.model.points if p is not point)
        if rest:
            by = (BedModel.of(rest, bed.model.gain_u).at(at_k).power_w - now_w) * factor * quantity.factor
            what = tr("Without the hold at {kelvin} K", kelvin=number(point.difference_k, 0, locale))
            lines.append(otherwise(what, by, quantity.unit, locale))
    return (*lines, too_high(now_w * factor * quantity.factor, quantity.unit, locale))


def _surer(bed: MachineBed) -> tuple[str, ...]:
    wishes = []
    if bed.reference is not None and bed.reference.how == "scaled":
        wishes.append(tr("Hold the bed at the temperature asked for."))
    if bed.model is not None and bed.model.fit is None:
        wishes.append(tr("Hold a second temperature at least 5 K away: then a line tells what lies between."))
    wishes.append(tr("Hold each temperature for an hour; log the bed's and the room's temperature with it."))
    return tuple(wishes)


def _cautions(bed: MachineBed, quantity: Quantity, locale: NumberLocale) -> tuple[str, ...]:
    notes = []
    if any(not bed.counts(h) for h in bed.held):
        notes.append(tr("Holds that never became steady are shown hollow and not counted."))
    if quantity is TIMES_FLOOR:
        differ = percent(CORRELATIONS_DIFFER, locale=locale)
        notes.append(tr("Published correlations for the floor differ by up to {differ}.", differ=differ))
        if bed.reference is not None and bed.floor_w and bed.reference.power_w < bed.floor_w:
            notes.append(
                tr("Less than the floor: the bed is insulated below, or its area is smaller than typed.")
            )
    return tuple(notes)
