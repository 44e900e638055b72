"""How a machine's energy was made that of common conditions: its own conditions, each step, the interval."""

from core.beds.like_for_like import Condition, Conditions
from core.formatting import POINT, NumberLocale, duration, number, with_interval, with_unit
from core.found import budgets
from core.found.values import Explanation, SourceLine
from core.found.writing import figures
from core.language import mark, tr
from core.quantities import ENERGY
from core.results.like_answer import step_text
from core.results.like_for_like import Adjusted, LikeForLike
from core.results.temperatures import degrees
from core.results.values import Measured
from core.uncertainty import NORMAL_95

_TOPIC = "like-for-like"
_HOW = {
    "hold test": (
        mark(
            "The watts that hold the bed at the common temperatures less those at its own, both by the "
            "machine's hold tests, over the time of processing; and the heat that the other rise takes, "
            "by the "
            "heat capacity of its warm-up."
        )
    ),
    "plate law": (
        mark(
            "The bed's energy in each run, scaled as the loss of a hot plate changes with the "
            "temperatures. No "
            "hold test from cold tells this machine's own."
        )
    ),
}
_WHY: dict[Condition, str] = {
    "bed": mark("another temperature of the bed"),
    "room": mark("another temperature of the room"),
    "start": mark("heat that was left in the bed from the run before"),
    "duration": mark("watts of processing over the time that it is longer or shorter"),
}


def like_found(found: LikeForLike, machine_id: str, locale: NumberLocale = POINT) -> Explanation | None:
    """What stands behind one machine's adjusted energy, or why it has none.

    Parameters
    ----------
    found : LikeForLike
    machine_id : str
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where the machine has no measured energy.
    """
    machine = found.of(machine_id)
    if machine is None:
        return None
    title = tr("{name}: like for like", name=machine.name)
    value = machine.adjusted_wh
    if value is None or machine.how is None:
        return Explanation(
            title,
            tr("not adjusted"),
            _TOPIC,
            method=(tr("It stays as measured: {why_not}.", why_not=machine.why_not),),
            sources=_sources(machine, locale),
            surer=_surer(machine),
        )
    budget = budgets.made(_parts(machine), locale, ENERGY.unit)
    return Explanation(
        title=title,
        value_text=_energy(value, locale),
        topic=_TOPIC,
        method=(
            tr(
                "Common conditions: {conditions}. {length}",
                conditions=_conditions(found.common, locale),
                length=_length(found.common),
            ),
            tr(_HOW[machine.how]),
            *(f"{note[0].upper()}{note[1:]}." for note in machine.notes),
        ),
        formula=(
            tr("measured: {energy}", energy=_energy(machine.measured_wh, locale)),
            *(f"{tr(_WHY[s.condition])}: {step_text(s, locale)} {ENERGY.unit}" for s in machine.steps),
            tr("together: {value} {unit}", value=figures(value.value, locale=locale), unit=ENERGY.unit),
            *budgets.combined(budget, value.u95, locale, ENERGY.unit),
        ),
        sources=_sources(machine, locale),
        budget=budget,
        surer=_surer(machine),
        cautions=(tr("A model stands between both values: believe the measured one first."),),
    )


def _parts(machine: Adjusted) -> list[tuple[str, float, str, str]]:
    """Standard uncertainties of the measured value, and of the steps added in full. [Wh]"""
    measured = (machine.measured_wh.u95 or 0.0) / NORMAL_95
    steps = sum(s.u_wh for s in machine.steps)
    told = (
        (mark("measured value"), measured, "", tr("what the runs and their meter leave open")),
        (
            mark("steps"),
            steps,
            "",
            tr("the model's: one source may move several steps, so they are added in full"),
        ),
    )
    return [part for part in told if part[1] > 0]


def _sources(machine: Adjusted, locale: NumberLocale) -> tuple[SourceLine, ...]:
    return tuple(
        SourceLine(tr("run {place}: {conditions}", place=place, conditions=_conditions(own, locale)), run_id)
        for place, (run_id, own) in enumerate(machine.own, start=1)
    )


def _conditions(at: Conditions, locale: NumberLocale) -> str:
    bed, room = degrees(at.bed_c, locale), degrees(at.room_c, locale)
    return tr(
        "bed {bed} °C, room {room} °C, begun with the bed at {start_c} °C",
        bed=bed,
        room=room,
        start_c=number(at.start_c, 0, locale),
    )


def _length(common: Conditions) -> str:
    if common.processing_s is None:
        return tr("Its own duration stays.")
    return tr(
        "Processing for {processing_s}: its watts at these temperatures over that time.",
        processing_s=duration(common.processing_s),
    )


def _surer(machine: Adjusted) -> tuple[str, ...]:
    wishes = []
    if machine.how != "hold test":
        wishes.append(tr("Hold its bed from cold, an hour at the temperature of the part."))
    wishes.append(tr("Note the temperatures of bed and room of every run, or log them."))
    if any(s.condition == "start" and s.change_wh for s in machine.steps):
        wishes.append(tr("Let the bed cool to the room before each run."))
    return tuple(wishes)


def _energy(value: Measured, locale: NumberLocale) -> str:
    return with_unit(with_interval(value.value, value.u95, ENERGY, locale), ENERGY)
