"""How the warm-up of a held bed was found: its energy, its time, and the bed's heat capacity."""

import math

from attrs import evolve

from core.beds.heat import WARMING_DOUBT, heat_capacity_j_per_k
from core.beds.hold import Hold
from core.beds.quantities import HEAT_CAPACITY, WARM_UP_S, WARM_UP_WH
from core.energy.integral import by_power_wh
from core.formatting import duration, number
from core.found import budgets
from core.found.hold_asked import TOPIC, Asked
from core.found.values import Explanation
from core.found.writing import otherwise, shown, too_high
from core.language import mark, tr
from core.results.values import Measured
from core.results.warm_ups import Rise
from core.units import J_PER_WH, SECONDS_PER_HOUR

_ENDS = mark("The warm-up ends where the heater first lets go.")
_LESS = mark("Its energy is that at the plug less what else the machine drew.")
_CAPACITY = mark(
    "Heat capacity: that energy, less what the bed lost meanwhile by the plate law, over the rise of its "
    "temperature. Behind a supply it holds the supply's losses too."
)
_BETTER = mark("Log the bed's temperature every few seconds, and start from room temperature.")
_LATER_S = 30.0


def energy(asked: Asked) -> Explanation:
    """What the bed took in its warm-up."""
    held, hold, locale = asked.held, asked.held.hold, asked.locale
    title = tr("{place}: warm-up", place=asked.place)
    if held.warm_up_wh is None or hold.warm_up_wh is None or hold.base_w is None:
        return _unseen(asked, title)
    beside_wh = hold.base_w * hold.warm_up_s / SECONDS_PER_HOUR
    lines = budgets.made(
        [
            (mark("rows of the warm-up"), hold.warm_up_u_wh or 0.0, "", tr("what its readings leave open")),
            asked.gain(hold.warm_up_wh),
        ],
        locale,
        "Wh",
    )
    later = []
    if asked.trace is not None and hold.warm_end_s + _LATER_S <= asked.trace.end_s:
        more_wh = by_power_wh(asked.trace, hold.warm_end_s, hold.warm_end_s + _LATER_S)
        by = more_wh - hold.base_w * _LATER_S / SECONDS_PER_HOUR
        what = tr("If it had ended {time} later", time=duration(_LATER_S))
        later.append(otherwise(what, by, "Wh", locale))
    return Explanation(
        title=title,
        value_text=shown(held.warm_up_wh, WARM_UP_WH, locale),
        topic=TOPIC,
        method=(tr(_ENDS), tr(_LESS), *asked.checks),
        formula=(
            tr(
                "{all} Wh at the plug − {beside} W × {time} s beside the bed = {bed} Wh",
                all=asked.f(hold.warm_up_wh + beside_wh),
                beside=asked.f(hold.base_w),
                time=asked.f(hold.warm_up_s),
                bed=asked.f(hold.warm_up_wh),
            ),
            *budgets.combined(lines, held.warm_up_wh.u95, locale, "Wh"),
        ),
        sources=asked.sources,
        budget=lines,
        sensitivity=(
            *later,
            otherwise(
                tr("If the machine drew 1 W more beside the bed"),
                -hold.warm_up_s / SECONDS_PER_HOUR,
                "Wh",
                locale,
            ),
            too_high(hold.warm_up_wh, "Wh", locale),
        ),
        surer=(tr(_BETTER),),
    )


def time(asked: Asked) -> Explanation:
    """How long the warm-up took."""
    hold, locale = asked.held.hold, asked.locale
    title = tr("{place}: warm-up time", place=asked.place)
    if hold.warm_up_s <= 0:
        return _unseen(asked, title)
    row_s = 0.0 if asked.trace is None else asked.trace.median_s
    steps = [otherwise(tr("If it had ended one row of the log later"), row_s, "s", locale)] if row_s else []
    return Explanation(
        title=title,
        value_text=shown(Measured(hold.warm_up_s, None), WARM_UP_S, locale),
        topic=TOPIC,
        method=(tr(_ENDS),),
        formula=(
            tr(
                "from {start} s to {end} s of the log = {time} s",
                start=asked.f(hold.start_s),
                end=asked.f(hold.warm_end_s),
                time=asked.f(hold.warm_up_s),
            ),
        ),
        sources=asked.sources,
        without_budget=tr("It has no interval: it is told to the row at which the heater first lets go."),
        sensitivity=tuple(steps) or (tr("It moves by whole rows of the log only."),),
        surer=(tr(_BETTER),),
    )


def capacity(asked: Asked) -> Explanation:
    """Heat that the bed takes a kelvin, as drawn at the plug."""
    held, locale = asked.held, asked.locale
    title = tr("{place}: heat capacity", place=asked.place)
    hold, rise, value = held.hold, held.rise, held.heat_capacity
    if value is None or rise is None or hold.warm_up_wh is None or hold.bed_w is None:
        return _unseen(asked, title)
    lost_j = hold.bed_w * hold.warm_up_s
    lines = budgets.made(
        [
            (
                mark("loss while it warms"),
                WARMING_DOUBT / math.sqrt(3) * lost_j / rise.kelvin,
                "",
                tr("how the loss grows from nothing to the held watts is told by the plate law alone"),
            ),
            (
                mark("rows of the warm-up"),
                (hold.warm_up_u_wh or 0.0) * J_PER_WH / rise.kelvin,
                "",
                tr("what its readings leave open"),
            ),
            (
                mark("rise of temperature"),
                rise.u_k / rise.kelvin * value.value,
                "",
                tr("both ends of the rise were logged")
                if rise.is_logged
                else tr("the rise is taken from the room's to the held temperature"),
            ),
            asked.gain(value.value),
        ],
        locale,
        "J/K",
    )
    return Explanation(
        title=title,
        value_text=shown(value, HEAT_CAPACITY, locale),
        topic=TOPIC,
        method=(tr(_ENDS), tr(_LESS), tr(_CAPACITY), *asked.checks),
        formula=(
            tr(
                "({energy} Wh × 3600 − {lost} J lost meanwhile) ÷ ({to} °C − {from_} °C) = {value} J/K",
                energy=asked.f(hold.warm_up_wh),
                lost=asked.f(hold.warm_up_wh * J_PER_WH - value.value * rise.kelvin),
                to=number(rise.to_c, 1, locale),
                from_=number(rise.from_c, 1, locale),
                value=asked.f(value.value),
            ),
            *budgets.combined(lines, value.u95, locale, "J/K"),
        ),
        sources=asked.sources,
        budget=lines,
        sensitivity=_moved(asked, hold, rise, value.value),
        surer=(tr(_BETTER),),
    )


def _moved(asked: Asked, hold: Hold, rise: Rise, value: float) -> tuple[str, ...]:
    """The heat capacity worked out again with one thing otherwise."""
    assert hold.warm_up_wh is not None
    beside_wh = hold.warm_up_s / SECONDS_PER_HOUR
    tried = (
        (
            tr("If the machine drew 1 W more beside the bed"),
            evolve(hold, warm_up_wh=hold.warm_up_wh - beside_wh, base_w=(hold.base_w or 0.0) + 1.0),
            rise,
        ),
        (tr("If the bed had begun 1 K warmer"), hold, evolve(rise, from_c=rise.from_c + 1.0)),
        (tr("If the bed had become 1 K warmer"), hold, evolve(rise, to_c=rise.to_c + 1.0)),
    )
    told = []
    for what, then, risen in tried:
        found = heat_capacity_j_per_k(evolve(then, bed_c=risen.to_c), risen.from_c, risen.room_c)
        if found is not None:
            told.append(otherwise(what, found[0] - value, "J/K", asked.locale))
    return (*told, too_high(value, "J/K", asked.locale))


def _unseen(asked: Asked, title: str) -> Explanation:
    why = tr("No hold test of this machine shows a warm-up from cold.")
    return Explanation(title, tr("not known"), TOPIC, method=(why,), sources=asked.sources)
