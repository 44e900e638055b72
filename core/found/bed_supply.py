"""How it was found what reaches a bed through its supply, and how beds compare for their size."""

import math

from attrs import evolve

from core.beds.quantities import EFFICIENCY, W_PER_DM2
from core.formatting import POINT, NumberLocale, number, p_text, percent
from core.found import budgets
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, shown
from core.language import mark, tr
from core.results.bed_answer import settled_text
from core.results.bed_compared import by_area, mean_per_area, pairs_with_first, supplies
from core.results.holds import Beds, MachineBed
from core.results.own_supply import OwnSupply
from core.study import Study

_TOPIC = "bed"
_SCATTER = mark("how the ratio scatters over eighths of the settled part")
_DANGER = mark(
    "Use only a meter or channel that is there already: never open a supply or a "
    "mains-heated bed to put one in. Such work belongs to a qualified electrician "
    "under local codes."
)


def supply(bed: MachineBed, study: Study, locale: NumberLocale = POINT) -> Explanation:
    """The bed's own meter against the plug."""
    found = bed.own_meter
    told = tr("not known") if found is None else shown(found.value, EFFICIENCY, locale)
    lines = () if found is None else _budget(found, study, locale)
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
        formula=() if found is None else _formula(found, lines, locale),
        sources=() if found is None else _logs(found, study),
        budget=lines,
        sensitivity=() if found is None else _sensitivity(found, study, locale),
        surer=(tr("Hold for an hour; a same-load check of both meters would tie their gains together."),),
        cautions=(tr(_DANGER),),
    )


def _formula(found: OwnSupply, lines: tuple[BudgetLine, ...], locale: NumberLocale) -> tuple[str, ...]:
    u95 = None if found.value.u95 is None else 100 * found.value.u95
    ratio = tr(
        "{own} W by its own meter ÷ ({plug} W at the plug − {beside} W beside the bed) = {share}",
        own=figures(found.own_w, locale=locale),
        plug=figures(found.bed_w + found.base_w, locale=locale),
        beside=figures(found.base_w, locale=locale),
        share=percent(found.value.value, 1, locale),
    )
    return (ratio, *budgets.combined(lines, u95, locale, "%"))


def _budget(found: OwnSupply, study: Study, locale: NumberLocale) -> tuple[BudgetLine, ...]:
    parts = []
    for name, relative in found.parts:
        u = 100 * relative * found.value.value
        if name.startswith("gain:"):
            meter = budgets.meter_name(name, study)
            parts.append((f"{tr('meter gain')}, {meter}", u, "", budgets.why("meter gain", name, study)))
        else:
            why = tr(_SCATTER) if name == "scatter" else tr(budgets.WHY.get(name, ""))
            parts.append((mark("scatter") if name == "scatter" else name, u, "", why))
    return budgets.made([part for part in parts if part[1] > 0], locale, "%")


def _logs(found: OwnSupply, study: Study) -> tuple[SourceLine, ...]:
    return tuple(
        SourceLine(
            tr(
                "{names}, measured with {name}",
                names=", ".join(s.file_name for s in study.log(log_id).sources),
                name=study.meter(study.log(log_id).meter_id).name,
            )
        )
        for log_id in found.log_ids
    )


def _sensitivity(found: OwnSupply, study: Study, locale: NumberLocale) -> tuple[str, ...]:
    """The ratio with another power beside the bed, and with either meter a little off."""
    value = found.value.value
    one_watt = 100 * (found.own_w / (found.bed_w - 1.0) - value) if found.bed_w > 1.0 else 0.0
    lines = [otherwise(tr("If the machine drew 1 W more beside the bed"), one_watt, "%", locale)]
    plug, own = (study.meter(study.log(log_id).meter_id) for log_id in found.log_ids)
    if plug.id == own.id:
        return (*lines, tr("If its one meter read 1 % too high: no change"))
    for meter, factor in ((plug, 1.01), (own, 1 / 1.01)):
        what = tr("If {meter} read 1 % too high", meter=meter.name)
        lines.append(otherwise(what, 100 * value * (factor - 1), "%", locale))
    return tuple(lines)


def for_their_size(beds: Beds, study: Study, locale: NumberLocale = POINT) -> Explanation | None:
    """The bed that loses most for its size against the last that is told apart from it, as the page says.

    Returns
    -------
    Explanation or None
        None with fewer than two beds whose area and watts are known.
    """
    order = by_area(beds)
    if len(order) < 2:
        return None
    pairs = pairs_with_first(order)
    pair = ([p for p in pairs if p.is_shown] or list(pairs))[-1]
    one, other = order[0], next(m for m in order if m.machine_id == pair.other_id)
    assert one.reference is not None
    assert other.reference is not None
    shares = one.meter_ids == other.meter_ids and len(one.meter_ids) == 1
    parts = []
    for bed in (one, other):
        watts = bed.reference
        assert watts is not None
        relative = (watts.u_own_w if shares else watts.u_w) / watts.power_w
        name = tr("watts held, {machine}", machine=bed.name)
        parts.append((name, 100 * pair.ratio * relative, "", tr("what its holds and its meter leave open")))
    lines = budgets.made(parts, locale, "%")
    a, b = (m.w_per_dm2.value if m.w_per_dm2 else 0.0 for m in (one, other))
    percents = [number(100 * v, 0, locale) for v in (pair.ratio, pair.low, pair.high)]
    return Explanation(
        title=tr("{name} against {name_2}: watts per area of the bed", name=one.name, name_2=other.name),
        value_text=tr(
            "{percents} % (95 % interval {low} to {high} %)",
            percents=percents[0],
            low=percents[1],
            high=percents[2],
        ),
        topic=_TOPIC,
        method=(
            tr("Watts held at one temperature and in one room, over the area of one face of the bed."),
            tr("Of two beds on one meter its gain drops out.")
            if shares
            else tr("Each bed has a meter of its own: both gains count."),
            tr(
                "Whether a difference is shown is told by the ratio and its interval, adjusted for "
                "{pairs:pair|pairs} by Holm's way: {p}.",
                pairs=len(pairs),
                p=p_text(pair.p, locale),
            ),
        ),
        formula=(
            f"{figures(a, locale=locale)} W/dm² ÷ {figures(b, locale=locale)} W/dm² = "
            f"{percent(pair.ratio, 1, locale)}",
        ),
        sources=tuple(
            SourceLine(f"{m.name}: {shown(m.w_per_dm2, W_PER_DM2, locale)}; {settled_text(h)}", h.run_id)
            for m in (one, other)
            for h in m.held
            if m.counts(h)
        ),
        budget=lines,
        sensitivity=_other_rooms(beds, one, other, pair.ratio, locale),
        surer=(tr("Hold each temperature for an hour; log the bed's and the room's temperature with it."),),
    )


def _other_rooms(
    beds: Beds, one: MachineBed, other: MachineBed, ratio: float, locale: NumberLocale
) -> tuple[str, ...]:
    """The ratio at other temperatures, and with another area of either bed."""
    told = []
    assert one.area_dm2
    assert other.area_dm2
    for text, change_k in (
        (tr("If the room had been 1 K warmer"), -1.0),
        (tr("If the bed were held 10 K warmer"), 10.0),
    ):
        at_k = beds.bed_c - beds.room_c + change_k
        if at_k > 0 and one.model is not None and other.model is not None:
            a, b = one.model.at(at_k).power_w / one.area_dm2, other.model.at(at_k).power_w / other.area_dm2
            told.append(otherwise(text, 100 * (a / b - ratio), "%", locale))
    for bed, then in (
        (one, ratio * one.area_dm2 / (one.area_dm2 + 1)),
        (other, ratio * (other.area_dm2 + 1) / other.area_dm2),
    ):
        what = tr("If the area of {machine} were 1 dm² larger", machine=bed.name)
        told.append(otherwise(what, 100 * (then - ratio), "%", locale))
    return tuple(told)


def groups(beds: Beds, locale: NumberLocale = POINT) -> Explanation | None:
    """Beds fed from the mains against those behind a supply of low voltage; None where either is missing."""
    found = supplies(beds)
    if found.efficiency is None or found.low is None or found.high is None:
        return None
    means, members = [], []
    for name, group in ((tr("mains"), found.mains), (tr("low voltage"), found.low_voltage)):
        values = [m.w_per_dm2.value for m in group if m.w_per_dm2 is not None]
        means.append(math.fsum(values) / len(values))
        terms = " + ".join(figures(v, locale=locale) for v in values)
        mean = f"{figures(means[-1], locale=locale)} W/dm²"
        members.append(f"{name}: ({terms}) ÷ {len(values)} = {mean}" if values[1:] else f"{name}: {mean}")
    u95 = 100 * (found.high - found.low) / 2
    lines = _of_groups(found.mains, found.low_voltage, found.efficiency, locale)
    texts = [number(100 * v, 0, locale) for v in (found.efficiency, found.low, found.high)]
    return Explanation(
        title=tr("Mains against low voltage: watts per area"),
        value_text=tr(
            "{percents} % (95 % interval {low} to {high} %)", percents=texts[0], low=texts[1], high=texts[2]
        ),
        topic=_TOPIC,
        method=(
            tr("Mean watts per area of the beds fed from the mains, over that of the others."),
            tr(
                "Within a group the spread between beds counts where it is more than what the measurements "
                "leave open: beds are not alike."
            ),
        ),
        formula=(
            *members,
            f"{figures(means[0], locale=locale)} ÷ {figures(means[1], locale=locale)} = "
            f"{percent(found.efficiency, 1, locale)}",
            *budgets.combined(lines, u95, locale, "%"),
        ),
        sources=tuple(
            SourceLine(f"{bed.name}: {shown(bed.w_per_dm2, W_PER_DM2, locale)}", bed.held[0].run_id)
            for bed in (*found.mains, *found.low_voltage)
        ),
        budget=lines,
        sensitivity=_other_beds(beds, found.efficiency, locale),
        surer=(tr("More beds of each kind, alike but for their supply."),),
    )


def _of_groups(
    mains: tuple[MachineBed, ...], others: tuple[MachineBed, ...], ratio: float, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    parts = []
    for name, group in ((tr("mean of the mains group"), mains), (tr("mean of the other group"), others)):
        mean, u, _ = mean_per_area(group)
        why = tr("what the measurements leave open, or how beds of one kind differ, whichever is more")
        parts.append((name, 100 * ratio * u / mean, "", why))
    return budgets.made(parts, locale, "%")


def _other_beds(beds: Beds, ratio: float, locale: NumberLocale) -> tuple[str, ...]:
    """The apparent efficiency without each of the beds, and with a larger area of each."""
    told = []
    for bed in by_area(beds):
        if bed.supply is None:
            continue
        rest = tuple(m for m in beds.machines if m is not bed)
        larger = tuple(
            evolve(m, area_dm2=(m.area_dm2 or 0.0) + 1.0) if m is bed else m for m in beds.machines
        )
        for what, machines in (
            (tr("Without {name}", name=bed.name), rest),
            (tr("If the area of {machine} were 1 dm² larger", machine=bed.name), larger),
        ):
            then = supplies(evolve(beds, machines=machines)).efficiency
            if then is not None:
                told.append(otherwise(what, 100 * (then - ratio), "%", locale))
    return tuple(told)
