"""What is read out at a held temperature: whose, its watts, when it was steady, its warm-up."""

from core.beds.quantities import HEAT_CAPACITY, HELD_W, W_PER_DM2, WARM_UP_WH
from core.formatting import POINT, NumberLocale, duration, number, percent, with_interval, with_unit
from core.language import tr
from core.quantities import Quantity
from core.results.bed_answer import settled_text
from core.results.holds import Beds
from core.results.values import Measured


def hold_readout(
    beds: Beds, run_id: str, number_text: str = "", locale: NumberLocale = POINT
) -> tuple[str, ...]:
    """A held temperature as lines; all of a test in short where `number_text` names none of them.

    Parameters
    ----------
    beds : Beds
    run_id : str
        The hold test.
    number_text : str
        Place of the temperature in the test.
    locale : NumberLocale

    Returns
    -------
    tuple of str
        Empty where there is no such test.
    """
    found = [(m, h) for m in beds.machines for h in m.held if h.run_id == run_id]
    if not found:
        return ()
    machine = found[0][0]
    chosen = next((h for _, h in found if str(h.number) == number_text), None)
    if chosen is None and len(found) > 1:
        each = (f"{_degrees(h.bed_c, locale)}: {_value(h.bed_w, HELD_W, locale)}" for _, h in found)
        return (tr("{machine}, hold test", machine=machine.name), *each)
    held = found[0][1] if chosen is None else chosen
    lines = [
        tr(
            "{machine}, {bed} in a room of {room}",
            machine=machine.name,
            bed=_degrees(held.bed_c, locale),
            room=_degrees(held.room_c, locale),
        )
    ]
    if held.bed_w is None:
        lines.append(tr("what else the machine draws is not in the log"))
    else:
        lines.append(tr("bed: {watts}", watts=_value(held.bed_w, HELD_W, locale)))
    if held.w_per_dm2 is not None:
        lines.append(tr("per area: {watts}", watts=_value(held.w_per_dm2, W_PER_DM2, locale)))
    if held.times_floor is not None:
        lines.append(
            tr("{share} of what a plate of its size must lose", share=percent(held.times_floor, 0, locale))
        )
    lines.append(settled_text(held))
    if held.warm_up_wh is not None:
        warm = _value(held.warm_up_wh, WARM_UP_WH, locale)
        lines.append(tr("warm-up: {energy} in {length}", energy=warm, length=duration(held.hold.warm_up_s)))
    if held.heat_capacity is not None:
        lines.append(
            tr("heat capacity: {capacity}", capacity=_value(held.heat_capacity, HEAT_CAPACITY, locale))
        )
    return tuple(lines)


def _degrees(celsius: float | None, locale: NumberLocale) -> str:
    return tr("unknown temperature") if celsius is None else f"{number(celsius, 1, locale)} °C"


def _value(measured: Measured | None, quantity: Quantity, locale: NumberLocale) -> str:
    if measured is None:
        return tr("not known")
    return with_unit(with_interval(measured.value, measured.u95, quantity, locale), quantity)
