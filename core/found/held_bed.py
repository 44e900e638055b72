"""How the watts of a held bed were found, and what was made of them: per area, floor, heat capacity."""

from core.beds.model import Watts
from core.beds.plate import CORRELATIONS_DIFFER, METHOD, Plate, loss
from core.beds.quantities import (
    EFFICIENCY,
    HEAT_CAPACITY,
    HELD_W,
    TIMES_FLOOR,
    W_PER_DM2,
    WARM_UP_S,
    WARM_UP_WH,
)
from core.formatting import POINT, NumberLocale, number, percent
from core.found import budgets
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, shown
from core.language import mark, tr
from core.quantities import Quantity
from core.results.bed_answer import settled_text
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.study import Study
from core.uncertainty import NORMAL_95

_TOPIC = "bed"
_RULE = mark(
    "The time after the warm-up is cut into windows; the watts are steady from the first window on from "
    "which no window stands out and the halves of the rest have one mean. What is not the bed is taken off."
)
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


def held_bed(
    beds: Beds, study: Study, machine_id: str, key: str, locale: NumberLocale = POINT
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

    Returns
    -------
    Explanation or None
        None where there is no such machine.
    """
    bed = beds.of(machine_id)
    if bed is None:
        return None
    if key in (WARM_UP_WH.key, WARM_UP_S.key, HEAT_CAPACITY.key):
        return _warm_up(bed, locale)
    if key == EFFICIENCY.key:
        return _supply(bed, locale)
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
            tr(_RULE),
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
        SourceLine(f"{_degrees(h, locale)}: {settled_text(h)}", h.run_id, bed.counts(h)) for h in bed.held
    )


def _degrees(held: Held, locale: NumberLocale) -> str:
    return (
        tr("unknown temperature")
        if held.bed_c is None
        else tr("{bed_c} °C", bed_c=number(held.bed_c, 1, locale))
    )


def _budget(
    bed: MachineBed, study: Study, watts: Watts, factor: float, unit: str, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    """Each hold's scatter, the meter's gain, the plate law, the temperatures; as `BedModel` orders them."""
    assert bed.model is not None
    key = budgets.gain_key(next(iter(bed.meter_ids)), study) if len(bed.meter_ids) == 1 else None
    names = [
        (
            tr("hold at {difference_k} K", difference_k=number(p.difference_k, 0, locale)),
            "",
            tr("how its windows scatter, and what is beside the bed"),
        )
        for p in bed.model.points
    ]
    shared = budgets.shared_with(key, study).replace("run", "hold test")
    names += [
        ("meter gain", shared, budgets.why("meter gain", key, study)),
        ("meter offset", "", tr(budgets.WHY["meter offset"])),
        (
            mark("plate law"),
            "",
            tr("how far the loss of a real bed follows that of a plate beyond what was held"),
        ),
        ("temperatures", "", tr("bed and room are known to half a kelvin")),
    ]
    parts = [
        (name, abs(float(u)) * factor, with_whom, why)
        for (name, with_whom, why), u in zip(names, watts.parts.tolist(), strict=True)
    ]
    return budgets.made([part for part in parts if part[1] > 0], locale, unit)


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
    return tuple(lines)


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


def _warm_up(bed: MachineBed, locale: NumberLocale) -> Explanation:
    """Warm-up and heat capacity of the hold that began coldest."""
    title = tr("{name}: warm-up and heat capacity", name=bed.name)
    known = [h for h in bed.held if h.warm_up_wh is not None]
    if not known:
        why = tr("No hold test of this machine shows a warm-up from cold.")
        return Explanation(title, tr("not known"), _TOPIC, method=(why,), sources=_sources(bed, locale))
    lines = [
        tr(
            "to {degrees}: {shown} in {warm_up_s} s",
            degrees=_degrees(h, locale),
            shown=shown(h.warm_up_wh, WARM_UP_WH, locale),
            warm_up_s=figures(h.hold.warm_up_s, 3, locale),
        )
        + (
            f"; {tr('heat capacity {shown}', shown=shown(h.heat_capacity, HEAT_CAPACITY, locale))}"
            if h.heat_capacity
            else ""
        )
        for h in known
    ]
    value = shown(bed.heat_capacity, HEAT_CAPACITY, locale) if bed.heat_capacity else tr("not known")
    u = bed.heat_capacity.u95 / NORMAL_95 if bed.heat_capacity and bed.heat_capacity.u95 else 0.0
    return Explanation(
        title=title,
        value_text=value,
        topic=_TOPIC,
        method=(
            tr(
                "The warm-up ends where the heater first lets go. Its energy is that at the plug "
                "less what else the machine drew."
            ),
            tr(
                "Heat capacity: that energy, less what the bed lost meanwhile by the plate law, "
                "over the rise of its temperature. Behind a supply it holds the supply's losses "
                "too."
            ),
        ),
        formula=(
            *lines,
            *((tr("u of the heat capacity = {u} J/K", u=figures(u, 2, locale)),) if u > 0 else ()),
        ),
        sources=_sources(bed, locale),
        surer=(tr("Log the bed's temperature every few seconds, and start from room temperature."),),
    )


def _supply(bed: MachineBed, locale: NumberLocale) -> Explanation:
    """The bed's own meter against the plug."""
    value = bed.efficiency
    told = tr("not known") if value is None else shown(value, EFFICIENCY, locale)
    return Explanation(
        tr("{name}: what reaches the bed", name=bed.name),
        told,
        _TOPIC,
        method=(
            tr(
                "The bed's own watts over the settled part of a hold test, by a log of the bed "
                "alone, over the watts that the bed takes at the plug in the same time."
            ),
            tr("Both logs are set on their clocks. Two meters err each for itself; of one the gain cancels."),
        ),
        formula=(tr("bed by its own meter / bed at the plug = {told}", told=told),),
        sources=_sources(bed, locale),
        surer=(tr("Hold for an hour; a same-load check of both meters would tie their gains together."),),
        cautions=(
            tr(
                "Use only a meter or channel that is there already: never open a supply or a "
                "mains-heated bed to put one in. Such work belongs to a qualified electrician "
                "under local codes."
            ),
        ),
    )
