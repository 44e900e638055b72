"""How a machine's energy was made that of common conditions: its own conditions, each step, the interval."""

from core.beds.like_for_like import Condition, Conditions
from core.formatting import POINT, NumberLocale, duration, number, with_interval, with_unit
from core.found import budgets
from core.found.values import Explanation, SourceLine
from core.found.writing import figures, otherwise
from core.language import mark, tr
from core.quantities import ENERGY
from core.results.like_answer import headline, step_text
from core.results.like_for_like import Adjusted, Given, LikeForLike, like_for_like
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


def like_found(
    found: LikeForLike, machine_id: str, locale: NumberLocale = POINT, from_: Given | None = None
) -> Explanation | None:
    """What stands behind one machine's adjusted energy, or why it has none.

    Parameters
    ----------
    found : LikeForLike
    machine_id : str
    locale : NumberLocale
    from_ : Given, optional
        What it was made from; without it, what other conditions would give is left unsaid.

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
        sensitivity=() if from_ is None else _otherwise(found.common, machine, from_, locale),
        surer=_surer(machine),
        cautions=(tr("A model stands between both values: believe the measured one first."),),
    )


def _otherwise(common: Conditions, machine: Adjusted, from_: Given, locale: NumberLocale) -> tuple[str, ...]:
    """The adjusted energy worked out again under other common conditions."""
    assert machine.adjusted_wh is not None
    told = []
    for what, bed_c, room_c, processing_s in _tried(common):
        then = like_for_like(from_, bed_c, room_c, processing_s).of(machine.machine_id)
        if then is not None and then.adjusted_wh is not None:
            by = then.adjusted_wh.value - machine.adjusted_wh.value
            told.append(otherwise(what, by, ENERGY.unit, locale))
    return tuple(told)


def _tried(common: Conditions) -> list[tuple[str, float, float, float | None]]:
    """Other common conditions: what is otherwise, bed, room, and length of processing."""
    bed_c, room_c, seconds = common.bed_c, common.room_c, common.processing_s
    tried = [
        (tr("If the common bed were 5 K warmer"), bed_c + 5.0, room_c, seconds),
        (tr("If the common bed were 5 K cooler"), bed_c - 5.0, room_c, seconds),
        (tr("If the common room were 1 K warmer"), bed_c, room_c + 1.0, seconds),
    ]
    if seconds is not None:
        tried.append((tr("If processing took 10 min longer"), bed_c, room_c, seconds + 600.0))
    return tried


def answer_found(found: LikeForLike, from_: Given, locale: NumberLocale = POINT) -> Explanation:
    """What stands behind the sentence on top: all machines, measured and adjusted, and who changes places.

    Parameters
    ----------
    found : LikeForLike
    from_ : Given
        What it was made from.
    locale : NumberLocale
    """
    lines = []
    for m in found.known:
        steps = " ".join(f"{'+' if s.change_wh > 0 else ''}{number(s.change_wh, 2, locale)}" for s in m.steps)
        if m.adjusted_wh is not None:
            adjusted, measured = _energy(m.adjusted_wh, locale), figures(m.measured_wh.value, locale=locale)
            lines.append(f"{m.name}: {measured} {steps} = {adjusted}")
    told = []
    for what, bed_c, room_c, seconds in _tried(found.common):
        then = like_for_like(from_, bed_c, room_c, seconds)
        names = ", ".join(f"{s.first_name} ↔ {s.then_name}" for s in then.swaps)
        told.append(f"{what}: {names or tr('no two change places')}")
    return Explanation(
        title=tr("Like for like: who changes places"),
        value_text=tr("{count:pair|pairs} of machines", count=len(found.swaps)),
        topic=_TOPIC,
        method=(
            headline(found, locale),
            tr(
                "Common conditions: {conditions}. {length}",
                conditions=_conditions(found.common, locale),
                length=_length(found.common),
            ),
            tr("Two machines change places where the one that needed less as measured needs more adjusted."),
        ),
        formula=tuple(lines) or (tr("No machine can be adjusted."),),
        sources=tuple(
            SourceLine(f"{m.name}: {_energy(m.measured_wh, locale)}", m.run_id) for m in found.machines
        ),
        without_budget=tr("It is a count of pairs; each machine's own interval is told by its own number."),
        sensitivity=tuple(told),
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
