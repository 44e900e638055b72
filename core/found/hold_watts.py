"""How the watts of one held temperature were found, and what is made of them: per area, floor, first hour."""

import math

from attrs import evolve

from core.beds.from_holds import DIFFERENCE_U_K
from core.beds.hold_fit import Point
from core.beds.model import BedModel
from core.beds.plate import METHOD, Plate, loss
from core.beds.quantities import HALF_HOUR, HELD_W, TIMES_FLOOR, W_PER_DM2
from core.energy.integral import mean_w
from core.energy.total import between
from core.formatting import duration, number, percent
from core.found import budgets
from core.found.hold_asked import TOPIC, Asked
from core.found.values import BudgetLine, Explanation
from core.found.writing import figures, otherwise, shown, too_high
from core.language import mark, tr
from core.line_up.spans import as_power
from core.quantities import Quantity
from core.results.bed_answer import settled_text
from core.results.values import Measured
from core.units import SECONDS_PER_HOUR, SECONDS_PER_MINUTE

RULE = mark(
    "The time after the warm-up is cut into windows; the watts are steady from the first window on from "
    "which no window stands out and the halves of the rest have one mean."
)
TAKEN_OFF = mark("What is not the bed is taken off.")
_ONE_WATT_BESIDE = mark("If the machine drew 1 W more beside the bed")
_FROM_START = mark(
    "Mean power at the plug from the start of heating on, warm-up and all that the machine draws."
)
_LATER_S = 30.0
_FIRST = {"half_hour_w": SECONDS_PER_HOUR / 2, "full_hour_w": SECONDS_PER_HOUR}
_KNOWN = {
    "noted": mark("It was noted by you for this test."),
    "logged": mark("It is the median of what the log itself says over the settled part."),
    "other log": mark("It is told by another log of this machine over the same time."),
    "of the test": mark("It is the temperature that you stated for the whole test."),
    "ordinary": mark("Nobody noted it: an ordinary room is taken."),
}


def watts(asked: Asked, key: str) -> Explanation:
    """Watts of the bed alone in one hold, for its size, or against what its plate must lose."""
    held, hold, locale = asked.held, asked.held.hold, asked.locale
    quantity = {"w_per_dm2": W_PER_DM2, "of_floor_percent": TIMES_FLOOR}.get(key, HELD_W)
    title = f"{asked.place}: {quantity.name}"
    factor, divided, floor = _divisor(asked, quantity)
    if hold.bed_w is None or hold.base_w is None or held.bed_w is None or factor is None:
        return Explanation(title, tr("not known"), TOPIC, method=(tr(RULE),), sources=asked.sources)
    times, unit = factor * quantity.factor, quantity.unit
    u95 = None if held.bed_w.u95 is None else held.bed_w.u95 * factor
    lines = budgets.made(
        [
            (mark("steady watts"), hold.steady.u_w * times, "", tr("how its windows scatter")),
            (
                "baseline of the hold",
                (hold.base_u_w or 0.0) * times,
                "",
                tr(budgets.WHY["baseline of the hold"]),
            ),
            asked.gain(hold.bed_w * times),
        ],
        locale,
        unit,
    )
    less = evolve(hold, base_w=hold.base_w + 1.0).bed_w
    assert less is not None
    return Explanation(
        title=title,
        value_text=shown(Measured(hold.bed_w * factor, u95), quantity, locale),
        topic=TOPIC,
        method=(tr(RULE), tr(TAKEN_OFF), *((divided,) if divided else ()), *asked.checks),
        formula=(
            tr(
                "at {celsius} °C: {all} W − {beside} W beside the bed = {bed} W",
                celsius=asked.f(held.bed_c or 0.0),
                all=asked.f(hold.steady.mean_w),
                beside=asked.f(hold.base_w),
                bed=asked.f(hold.bed_w),
            ),
            *_divided(asked, quantity, hold.bed_w, factor),
            *budgets.combined(lines, None if u95 is None else u95 * quantity.factor, locale, unit),
        ),
        sources=asked.sources,
        budget=lines,
        sensitivity=(
            otherwise(tr(_ONE_WATT_BESIDE), (less - hold.bed_w) * times, unit, locale),
            too_high(hold.bed_w * times, unit, locale),
            *floor,
        ),
        surer=(tr("Hold each temperature for an hour; log the bed's and the room's temperature with it."),),
    )


def _divisor(asked: Asked, quantity: Quantity) -> tuple[float | None, str, tuple[str, ...]]:
    """What the watts are multiplied with, what that means, and what would come of another divisor."""
    held, machine, locale = asked.held, asked.machine, asked.locale
    bed_w = held.hold.bed_w or 0.0
    if quantity is W_PER_DM2:
        if not machine.area_dm2:
            return None, "", ()
        by = bed_w / (machine.area_dm2 + 1.0) - bed_w / machine.area_dm2
        told = otherwise(tr("If the area were 1 dm² larger"), by, quantity.unit, locale)
        words = tr("The area of one face is the one you typed; it is taken as exact.")
        return 1 / machine.area_dm2, words, (told,)
    if quantity is TIMES_FLOOR:
        if not held.floor_w or machine.area_dm2 is None or held.bed_c is None:
            return None, "", ()
        room_c = held.bed_c - (held.difference_k or 0.0)
        duller = max(asked.beds.emissivity - 0.1, 0.05)
        plate = Plate.square(machine.area_dm2)
        then_w = loss(plate, held.bed_c, room_c, emissivity=duller).total_w
        by = 100 * (bed_w / then_w - bed_w / held.floor_w)
        told = otherwise(
            tr("If the emissivity were {emissivity}", emissivity=number(duller, 2, locale)), by, "%", locale
        )
        words = tr("Held against what a square plate of its area must lose: {method}.", method=METHOD)
        return 1 / held.floor_w, words, (told,)
    return 1.0, "", ()


def _divided(asked: Asked, quantity: Quantity, bed_w: float, factor: float) -> tuple[str, ...]:
    if quantity is W_PER_DM2 and asked.machine.area_dm2:
        return (
            f"{asked.f(bed_w)} W / {asked.f(asked.machine.area_dm2)} dm² = {asked.f(bed_w * factor)} W/dm²",
        )
    if quantity is TIMES_FLOOR and asked.held.floor_w:
        return (f"{asked.f(bed_w)} W / {asked.f(asked.held.floor_w)} W = {asked.f(100 * bed_w * factor)} %",)
    return ()


def settled(asked: Asked) -> Explanation:
    """Watts at the plug once they are steady, with all that the machine draws."""
    steady, locale = asked.held.hold.steady, asked.locale
    lines = budgets.made(
        [
            (mark("steady watts"), steady.u_w, "", tr("how its windows scatter")),
            asked.gain(steady.mean_w),
            asked.offset(),
        ],
        locale,
        "W",
    )
    first = round((steady.start_s - asked.held.hold.warm_end_s) / steady.window_s)
    kept = steady.windows_w[max(first, 0) :] or steady.windows_w
    without = []
    if len(kept) > 1:
        farthest = max(kept, key=lambda w: abs(w - steady.mean_w))
        by = (math.fsum(kept) - farthest) / (len(kept) - 1) - math.fsum(kept) / len(kept)
        what = tr("Without its window that lies farthest off")
        without.append(otherwise(what, by, "W", locale))
    windows = " ".join(figures(w, locale=locale) for w in kept[:8])
    more = " …" if len(kept) > 8 else ""
    return Explanation(
        title=tr("{place}: steady, with all that the machine draws", place=asked.place),
        value_text=shown(Measured(steady.mean_w, None), HELD_W, locale),
        topic=TOPIC,
        method=(tr(RULE), settled_text(asked.held) + ".", *asked.checks),
        formula=(
            tr(
                "mean power of the settled part, by windows of {window}: {windows} W",
                window=duration(steady.window_s),
                windows=windows + more,
            ),
        ),
        sources=asked.sources,
        budget=lines,
        sensitivity=(*without, too_high(steady.mean_w, "W", locale)),
        surer=(tr("Hold each temperature for an hour; log the bed's and the room's temperature with it."),),
    )


def first_time(asked: Asked, key: str) -> Explanation:
    """Mean power of the first half hour or hour from the start of heating on."""
    hold, locale = asked.held.hold, asked.locale
    seconds = _FIRST[key]
    value = hold.half_hour_w if key == "half_hour_w" else hold.full_hour_w
    title = tr("{place}: first {time}", place=asked.place, time=duration(seconds))
    if value is None:
        why = tr("The temperature was not held for so long.")
        return Explanation(title, tr("not known"), TOPIC, method=(why,), sources=asked.sources)
    trace, start_s = asked.trace, hold.start_s
    lines: tuple[BudgetLine, ...] = ()
    later = []
    if trace is not None:
        used = as_power(between(trace, start_s, start_s + seconds, asked.meter), seconds)
        lines = budgets.lines(used.influences, asked.study, locale, unit="W")
        if start_s + _LATER_S + seconds <= trace.end_s:
            by = mean_w(trace, start_s + _LATER_S, start_s + _LATER_S + seconds) - value
            what = tr("If it were counted from {time} later on", time=duration(_LATER_S))
            later.append(otherwise(what, by, "W", locale))
    energy_wh = value * seconds / SECONDS_PER_HOUR
    return Explanation(
        title=title,
        value_text=shown(Measured(value, None), HELD_W, locale),
        topic=TOPIC,
        method=(
            tr(
                "Mean power at the plug from the start of heating on, warm-up and all that the machine draws."
            ),
            *asked.checks,
        ),
        formula=(
            tr(
                "{energy} Wh in {time} = {watts} W",
                energy=asked.f(energy_wh),
                time=duration(seconds),
                watts=asked.f(value),
            ),
        ),
        sources=asked.sources,
        budget=lines,
        without_budget="" if lines else tr("Its log has not been read, so what makes it unsure is not told."),
        sensitivity=(*later, too_high(value, "W", locale)),
    )


def half_hour(asked: Asked) -> Explanation:
    """The first half hour over the first hour."""
    hold, locale = asked.held.hold, asked.locale
    ratio, half_w, full_w = asked.held.half_over_full, hold.half_hour_w, hold.full_hour_w
    title = tr("{place}: half hour against the full hour", place=asked.place)
    if ratio is None or half_w is None or full_w is None:
        why = tr("The temperature was not held for so long.")
        return Explanation(title, tr("not known"), TOPIC, method=(why,), sources=asked.sources)
    by = 100 * ((half_w + 1) / (full_w + 1) - ratio)
    return Explanation(
        title=title,
        value_text=shown(Measured(ratio, None), HALF_HOUR, locale),
        topic=TOPIC,
        method=(
            tr(
                "Mean power at the plug from the start of heating on, warm-up and all that the machine draws."
            ),
            tr("Far from 100 % the warm-up matters, and a test of half an hour tells too much."),
        ),
        formula=(f"{asked.f(half_w)} W / {asked.f(full_w)} W = {percent(ratio, 1, locale)}",),
        sources=asked.sources,
        without_budget=tr("It has no interval: both come from one log, so the meter's gain drops out."),
        sensitivity=(otherwise(tr("If the machine drew 1 W more all the time"), by, "%", locale),),
    )


def steady_after(asked: Asked) -> Explanation:
    """When the watts were steady, counted from the start of heating."""
    hold, locale = asked.held.hold, asked.locale
    steady = hold.steady
    title = tr("{place}: steady after", place=asked.place)
    if not steady.is_settled:
        return Explanation(title, tr("never"), TOPIC, method=(tr(RULE),), sources=asked.sources)
    minutes = [
        number(s / SECONDS_PER_MINUTE, 1, locale)
        for s in (hold.warm_up_s, steady.start_s - hold.warm_end_s, steady.start_s - hold.start_s)
    ]
    window = duration(steady.window_s)
    return Explanation(
        title=title,
        value_text=tr("{minutes} min", minutes=minutes[2]),
        topic=TOPIC,
        method=(tr(RULE), settled_text(asked.held) + "."),
        formula=(
            tr(
                "{warm_up} min of warm-up + {windows} min of windows passed over = {whole} min",
                warm_up=minutes[0],
                windows=minutes[1],
                whole=minutes[2],
            ),
        ),
        sources=asked.sources,
        without_budget=tr("It has no interval: it is told to a window of {window}.", window=window),
        sensitivity=(tr("It moves by whole windows of {window} only.", window=window),),
    )


def temperature(asked: Asked, key: str) -> Explanation:
    """The temperature of the bed or of the room during a hold."""
    held, locale = asked.held, asked.locale
    is_bed = key == "bed_c"
    value, known = (held.bed_c, held.bed_known) if is_bed else (held.room_c, held.room_known)
    title = (
        tr("{name}: temperature of the held bed", name=asked.machine.name)
        if is_bed
        else tr("{name}: temperature of the room", name=asked.machine.name)
    )
    if value is None:
        return Explanation(
            title, tr("not known"), TOPIC, method=(tr("Nobody noted it."),), sources=asked.sources
        )
    text = tr("{bed_c} °C", bed_c=number(value, 1, locale))
    return Explanation(
        title=title,
        value_text=text,
        topic=TOPIC,
        method=(tr(_KNOWN.get(known, _KNOWN["ordinary"])),),
        formula=(text,),
        sources=asked.sources,
        without_budget=tr(
            "It is taken as it was told; for what bed and room leave open together, {kelvin} K is taken as a "
            "standard uncertainty in the watts at a temperature.",
            kelvin=number(DIFFERENCE_U_K, 1, locale),
        ),
        sensitivity=_one_kelvin(asked, 1.0 if is_bed else -1.0),
        surer=(tr("Hold each temperature for an hour; log the bed's and the room's temperature with it."),),
    )


def _one_kelvin(asked: Asked, sign: float) -> tuple[str, ...]:
    """What the watts compared would be, had this hold's bed or room been a kelvin warmer."""
    machine, held = asked.machine, asked.held
    at_k = asked.beds.bed_c - asked.beds.room_c
    nothing = tr("It changes no number of this page: this hold has no part in the watts that are compared.")
    if machine.model is None or machine.reference is None or held.difference_k is None or at_k <= 0:
        return (nothing,)

    def moved(point: Point) -> Point:
        is_this = point.difference_k == held.difference_k and point.power_w == held.hold.bed_w
        return evolve(point, difference_k=point.difference_k + sign) if is_this else point

    points = tuple(moved(p) for p in machine.model.points)
    if points == machine.model.points or any(p.difference_k <= 0 for p in points):
        return (nothing,)
    by = BedModel.of(points, machine.model.gain_u).at(at_k).power_w - machine.reference.power_w
    what = tr(
        "If it had been 1 K warmer, the bed would be told at {celsius} °C with",
        celsius=number(asked.beds.bed_c, 0, asked.locale),
    )
    return (otherwise(what, by, "W", asked.locale),)
