"""How what is made of an energy was found: parts per kWh and mean power."""

from attrs import evolve

from core.formatting import number
from core.found import around, budgets, energy, sensitivity, surer
from core.found.question import Question
from core.found.values import Explanation
from core.found.writing import figures, shown, term, unit_of
from core.language import tr
from core.quantities import DURATION, MEAN_W, PARTS_PER_KWH, Quantity
from core.results.values import Influence, Measured
from core.units import SECONDS_PER_HOUR


def parts(asked: Question) -> Explanation:
    """Parts that one kilowatt hour makes."""
    locale = asked.locale
    value = asked.value(PARTS_PER_KWH)
    used_wh = _energy_wh(asked)
    if value is None or used_wh is None:
        return unknown(asked, PARTS_PER_KWH, "parts-per-kwh")
    made = tr(
        "1000 Wh ÷ {used_wh} Wh = {term}",
        used_wh=figures(used_wh, locale=locale),
        term=term(value.value, PARTS_PER_KWH, locale),
    )
    factor = value.value / used_wh
    budget = budgets.lines(
        _influences(asked), asked.study, locale, factor=factor, unit=unit_of(PARTS_PER_KWH)
    )
    return Explanation(
        title=tr("{who}: parts per kWh", who=asked.who),
        value_text=shown(value, PARTS_PER_KWH, locale),
        topic="parts-per-kwh",
        method=(
            tr("One kilowatt hour divided by the energy of the run.")
            if asked.run is not None
            else tr(
                "One kilowatt hour divided by the mean energy; it is not the mean of the runs' own values."
            ),
            tr("Its interval is that of the energy, in the same proportion."),
            *_how_the_energy(asked),
        ),
        formula=(made, *budgets.combined(budget, value.u95, locale, unit_of(PARTS_PER_KWH))),
        sources=around.sources(asked, PARTS_PER_KWH),
        budget=budget,
        sensitivity=sensitivity.lines(asked, PARTS_PER_KWH),
        surer=surer.lines(asked, budget, value.u95, unit_of(PARTS_PER_KWH), factor=factor),
        cautions=around.cautions(asked),
    )


def power(asked: Question) -> Explanation:
    """Mean power over the time that counts."""
    locale = asked.locale
    value = asked.value(MEAN_W)
    if value is None:
        return unknown(asked, MEAN_W, "mean-watts")
    influences = _power_influences(asked)
    budget = budgets.lines(influences, asked.study, locale, unit="W")
    used_wh, seconds = _energy_wh(asked), asked.value(DURATION)
    factor = value.value / used_wh if used_wh else 0.0
    return Explanation(
        title=tr("{who}: mean power", who=asked.who),
        value_text=shown(value, MEAN_W, locale),
        topic="mean-watts",
        method=(
            tr("Energy divided by duration.")
            if asked.run is not None
            else tr("Mean energy divided by mean duration, so that energy, duration and power agree."),
            tr("Its interval comes from the energy; how long the run took is known far better."),
            *_how_the_energy(asked),
        ),
        formula=(
            *_power_formula(asked, value, used_wh, seconds),
            *_bed_watts(asked),
            *budgets.combined(budget, value.u95, locale, "W"),
        ),
        sources=around.sources(asked, MEAN_W),
        budget=budget,
        sensitivity=sensitivity.lines(asked, MEAN_W),
        surer=surer.lines(asked, budget, value.u95, "W", factor=factor),
        cautions=around.cautions(asked),
    )


def unknown(asked: Question, quantity: Quantity, topic: str) -> Explanation:
    """A number that is not there, and why."""
    why = tr("No run of this machine counts.")
    if asked.runs:
        why = tr("It made no whole part.") if quantity is PARTS_PER_KWH else tr("Nothing was measured of it.")
    if quantity in (MEAN_W, DURATION) and any(run.energy_wh is not None for run in asked.runs):
        why = tr("The duration was not noted with the readings of the display.")
    return Explanation(
        f"{asked.who}: {_called(quantity)}",
        tr("not known"),
        topic,
        method=(why,),
        sources=around.sources(asked, quantity),
        cautions=around.cautions(asked),
    )


def _energy_wh(asked: Question) -> float | None:
    if asked.run is not None:
        return asked.run.energy_wh
    return None if asked.machine.energy_wh is None else asked.machine.energy_wh.value


def _influences(asked: Question) -> tuple[Influence, ...]:
    if asked.run is None:
        return asked.machine.influences
    return () if asked.run.energy is None else asked.run.energy.influences


def _power_influences(asked: Question) -> tuple[Influence, ...]:
    """What makes a mean power unsure: the influences of each run's energy over its own duration. [W]"""
    from core.uncertainty import mean_of

    powers = []
    for run in asked.runs:
        if run.energy is not None and run.seconds:
            per_hour = SECONDS_PER_HOUR / run.seconds
            scaled = tuple(evolve(i, u_wh=i.u_wh * per_hour) for i in run.energy.influences)
            powers.append(
                evolve(run.energy, energy_wh=run.energy.energy_wh * per_hour, influences=scaled, problems=())
            )
    if asked.run is not None:
        return powers[0].influences if powers else ()
    return mean_of(powers).influences if powers else ()


def _power_formula(
    asked: Question, value: Measured, used_wh: float | None, seconds: Measured | None
) -> tuple[str, ...]:
    locale = asked.locale
    untimed = [run.name for run in asked.runs if not run.seconds]
    if used_wh is None or seconds is None or untimed:
        return (
            tr("mean of the runs whose duration is known = {term}", term=term(value.value, MEAN_W, locale)),
        )
    return (
        tr(
            "{used_wh} Wh × 3600 s/h ÷ {seconds} s = {term}",
            used_wh=figures(used_wh, locale=locale),
            seconds=figures(seconds.value, locale=locale),
            term=term(value.value, MEAN_W, locale),
        ),
    )


def _bed_watts(asked: Question) -> tuple[str, ...]:
    """The bed's part of a mean power, as the chart fills it in."""
    if asked.run is None:
        share = None if asked.machine.bed_share is None else asked.machine.bed_share.value
        bed_w = asked.machine.bed_w
    else:
        share = None if asked.run.bed is None else asked.run.bed.share
        bed_w = None if share is None or asked.run.mean_w is None else share * asked.run.mean_w
    if share is None or bed_w is None:
        return ()
    locale = asked.locale
    part = number(100 * share, 1, locale)
    return (tr("of it the bed: {part} % = {term}", part=part, term=term(bed_w, MEAN_W, locale)),)


def _how_the_energy(asked: Question) -> tuple[str, ...]:
    if asked.run is None or asked.run.energy is None:
        return (energy.counted_from(asked.comparison.boundary),)
    return energy.method(asked, asked.run, asked.run.energy)


def _called(quantity: Quantity) -> str:
    return {
        PARTS_PER_KWH.key: tr("parts per kWh"),
        MEAN_W.key: tr("mean power"),
        DURATION.key: tr("duration"),
    }[quantity.key]
