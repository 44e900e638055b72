"""Like for like in words: which machines change places, at which conditions, and as a table."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from core.beds.like_for_like import Condition, Step
from core.formatting import (
    POINT,
    UNKNOWN,
    NumberLocale,
    capitalised,
    duration,
    listed,
    number,
    rounded,
    with_interval,
    with_unit,
)
from core.language import mark, tr
from core.quantities import ENERGY
from core.results.like_for_like import Adjusted, LikeForLike
from core.results.temperatures import degrees
from core.tables import Cell, Column, Table
from core.uncertainty import NORMAL_95

STEP_NAMES: Final[Mapping[Condition, str]] = MappingProxyType(
    {"bed": mark("Bed"), "room": mark("Room"), "start": mark("Warm start"), "duration": mark("Duration")}
)
#: of so many pairs that change places the names are given, the others counted
_MOST_NAMED = 2
#: where more do, the new order of so few machines tells more
_MOST_ORDERED = 6
#: and so many machines that are left as measured
_MOST_LEFT = 4


def headline(found: LikeForLike, locale: NumberLocale = POINT) -> str:
    """The sentence on top: which machines change places when made like for like, if any."""
    if not found.machines:
        return tr("Nothing to make like for like yet.")
    if not found.known:
        return tr("No machine can be adjusted yet: the note under the table says what would help.")
    if len(found.known) == 1:
        return tr(
            "Only {machine} can be adjusted: there is nothing to hold it against.",
            machine=found.known[0].name,
        )
    if not found.swaps:
        return _who_stays(found) + _where_they_would(found, locale)
    is_sure = any(s.is_sure for s in found.swaps)
    if len(found.swaps) > _MOST_NAMED and len(found.known) <= _MOST_ORDERED:
        order = listed([m.name for m in found.known])
        if is_sure:
            return tr(
                "Made like for like, from the least energy up it is {machines}: {count} pairs of machines "
                "change places.",
                machines=order,
                count=len(found.swaps),
            )
        return tr(
            "Made like for like, from the least energy up it is {machines}: {count} pairs of machines "
            "change places, though within what their intervals leave open.",
            machines=order,
            count=len(found.swaps),
        )
    named = [
        tr("{machine} and {other}", machine=s.first_name, other=s.then_name)
        for s in found.swaps[:_MOST_NAMED]
    ]
    more = len(found.swaps) - _MOST_NAMED
    if more > 0:
        named.append(tr("{count:more pair|more pairs}", count=more))
    pairs = tr(", and ").join(named)
    told = (
        tr("Made like for like, {pairs} change places", pairs=pairs)
        if is_sure
        else tr(
            "Made like for like, {pairs} change places, though within what their intervals leave open",
            pairs=pairs,
        )
    )
    if len(found.swaps) > 1:
        return f"{told}."
    first = found.swaps[0]
    values = {m.name: _value(m, locale) for m in found.known}
    return (
        f"{told}: {first.then_name} {values[first.then_name]}, {first.first_name} {values[first.first_name]}."
    )


def _value(machine: Adjusted, locale: NumberLocale) -> str:
    value = machine.adjusted_wh
    assert value is not None
    return with_unit(with_interval(value.value, value.u95, ENERGY, locale), ENERGY)


def _who_stays(found: LikeForLike) -> str:
    """That no two change places, and among how many where some cannot be adjusted."""
    if len(found.known) < len(found.machines):
        return tr(
            "Made like for like, no two of the {count} machines that can be adjusted change places.",
            count=len(found.known),
        )
    return tr("Made like for like, no two machines change places.")


def _where_they_would(found: LikeForLike, locale: NumberLocale) -> str:
    if found.change_c is None or found.changing is None:
        return ""
    facts = {
        "celsius": degrees(found.change_c, locale),
        "machine": found.changing.first_name,
        "other": found.changing.then_name,
    }
    if found.changing.is_sure:
        return tr(" With beds at {celsius} °C {machine} and {other} would.", **facts)
    return tr(
        " With beds at {celsius} °C {machine} and {other} would, within what their intervals leave open.",
        **facts,
    )


def conditions(found: LikeForLike, locale: NumberLocale = POINT) -> str:
    """The line under it: the common conditions, and what could not be adjusted."""
    at = found.common
    bed, room = degrees(at.bed_c, locale), degrees(at.room_c, locale)
    left = [m.name for m in found.machines if m.adjusted_wh is None]
    few = listed(left) if len(left) <= _MOST_LEFT else tr("{count} machines", count=len(left))
    said = (
        tr(
            "Bed {bed} °C, room {room} °C, each run begun with a bed at room temperature, "
            "each machine at its own duration.",
            bed=bed,
            room=room,
        )
        if at.processing_s is None
        else tr(
            "Bed {bed} °C, room {room} °C, each run begun with a bed at room temperature, "
            "processing for {length} each.",
            bed=bed,
            room=room,
            length=duration(at.processing_s),
        )
    )
    return " ".join((said, tr("Left as measured: {machines}.", machines=few))) if left else said


def like_table(found: LikeForLike, locale: NumberLocale = POINT) -> Table:
    """One row a machine: measured, each step, adjusted, and what told it or why it could not be."""
    shown = [key for key in STEP_NAMES if key != "duration" or found.common.processing_s is not None]
    columns = (
        Column("machine", tr("Machine"), "left"),
        Column("measured_wh", tr("Measured [Wh]")),
        *(Column(f"{key}_wh", f"{tr(STEP_NAMES[key])} [Wh]") for key in shown),
        Column("adjusted_wh", tr("Like for like [Wh]")),
        Column("how", tr("By"), "left"),
    )
    rows: list[tuple[Cell, ...]] = []
    for machine in (*found.known, *(m for m in found.machines if m.adjusted_wh is None)):
        steps = {s.condition: s for s in machine.steps}
        value = machine.adjusted_wh
        rows.append(
            (
                machine.name,
                with_interval(machine.measured_wh.value, machine.measured_wh.u95, ENERGY, locale),
                *(_step(steps.get(key), locale) for key in shown),
                UNKNOWN if value is None else with_interval(value.value, value.u95, ENERGY, locale),
                tr(machine.how) if machine.how else tr("not adjusted"),
            )
        )
    return Table(
        tr("Like for like"), columns, tuple(rows), (headline(found, locale), conditions(found, locale))
    )


def like_note(found: LikeForLike) -> str:
    """What was taken for granted, and what would help the machines that are left as measured."""
    reasons = dict.fromkeys(m.why_not for m in found.machines if m.adjusted_wh is None)
    lacking = [f"{listed([m.name for m in found.machines if m.why_not == r])}: {r}." for r in reasons]
    taken = dict.fromkeys(note for m in found.machines for note in m.notes)
    said = [tr("± is half the 95 % interval; the steps' own is added to that of the measured value.")]
    for note in taken:
        names = [m.name for m in found.machines if note in m.notes]
        said.append(f"{capitalised(note)} ({listed(names)}).")
    return " ".join((*said, *lacking))


def _step(step: Step | None, locale: NumberLocale) -> str:
    return UNKNOWN if step is None else step_text(step, locale)


def step_text(step: Step, locale: NumberLocale = POINT) -> str:
    """A change with its sign and its interval, in Wh.

    Examples
    --------
    >>> step_text(Step("bed", 1.26, 0.2))
    '+1.3 ± 0.4'
    >>> step_text(Step("room", 0.0, 0.0))
    '0'
    """
    if step.change_wh == 0:
        return "0"
    shown = rounded(step.change_wh, NORMAL_95 * step.u_wh, ENERGY.decimals)
    sign = "+" if shown.value > 0 else ""
    text = sign + number(shown.value, shown.decimals, locale)
    return text if shown.u95 is None else f"{text} ± {number(shown.u95, shown.decimals, locale)}"
