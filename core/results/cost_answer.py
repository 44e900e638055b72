"""What standby and prints cost, in words: one sentence of what the data say, one line of the conditions.

Rules: a sentence is made from the results alone; what no log shows and no person stated is not claimed.
"""

from core.costs.limits import Limit
from core.costs.money import money, price_per_kwh
from core.formatting import (
    POINT,
    NumberLocale,
    day,
    duration,
    in_words,
    listed,
    number,
    percent,
    with_interval,
)
from core.language import mark, tr
from core.quantities import STANDBY_KWH
from core.results.cost_values import TELLING, MachineCost, StandbyCost
from core.units import SECONDS_PER_DAY

#: shares of the time with no price above this are told
_UNPRICED = 0.001
#: rests that span less than this say little about a year [s]
_SHORT_S = 7 * SECONDS_PER_DAY
_MOST_NAMED = 4

NOTHING = mark("Nothing to price yet: add the meter logs of one machine or more.")
HOT = mark(
    "Cutting the power at the plug while the hot end is hot also stops its cooling fan, and plastic may set "
    "in it: let it cool first."
)
ESTIMATE = mark("Savings are estimates from the rests in these logs; prices are your own.")
MAINS = mark(
    "Use a switch or timer approved for the load of the machine; never work on mains wiring yourself."
)


def headline(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What the logs say, in one sentence.

    Parameters
    ----------
    result : StandbyCost
        Its own headline is not read.
    locale : NumberLocale
    """
    if not any(m.files for m in result.machines):
        return tr(NOTHING)
    known = [m for m in result.machines if m.year_kwh is not None]
    if not known or result.total_kwh is None:
        return tr("No log shows a machine doing nothing for a quarter of an hour, so standby is not known.")
    kwh = with_interval(result.total_kwh.value, result.total_kwh.u95, STANDBY_KWH, locale)
    return tr(
        "{used}; {saving}.",
        used=_used(known, result, f"{kwh} kWh{_cost(result, locale)}"),
        saving=_saving(known, result, locale),
    )


def _used(known: list[MachineCost], result: StandbyCost, energy: str) -> str:
    """What is used, by whom, in which hours."""
    machines = sum(m.count for m in known)
    alone = machines == 1
    facts = {"machine": known[0].name, "machines": in_words(machines), "energy": energy}
    if all(m.idle_hours == result.year_hours for m in known):
        return (
            tr("Left on all year and doing nothing, {machine} uses {energy}", **facts)
            if alone
            else tr("Left on all year and doing nothing, the {machines} machines use {energy}", **facts)
        )
    if all(result.costs.of(m.machine_id).idle_hours is None for m in known):
        return (
            tr("Left on all year between prints, doing nothing {machine} uses {energy}", **facts)
            if alone
            else tr(
                "Left on all year between prints, doing nothing the {machines} machines use {energy}", **facts
            )
        )
    return (
        tr("Doing nothing for the hours you stated, {machine} uses {energy}", **facts)
        if alone
        else tr("Doing nothing for the hours you stated, the {machines} machines use {energy}", **facts)
    )


def _cost(result: StandbyCost, locale: NumberLocale) -> str:
    if result.total_cost is None:
        return ""
    price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
    cost = money(result.total_cost.value, result.currency, locale, result.total_cost.u95)
    if result.costs.tariff.priced_by != "single":
        return tr(": {cost} at {price} on average", cost=cost, price=price)
    return tr(": {cost} at {price}", cost=cost, price=price)


def _saving(known: list[MachineCost], result: StandbyCost, locale: NumberLocale) -> str:
    minutes = result.costs.off_after_min
    telling = [m for m in known if m.tells_saving_after(minutes)]
    if not telling or result.saved_share is None:
        return tr(
            "no rest in the logs lasts {length}, so switching off cannot be judged",
            length=_telling_min(minutes, locale),
        )
    of_all = len(telling) == len(known)
    facts = {
        "minutes": number(minutes, 0, locale),
        "machines": _named([m.name for m in telling]),
        "share": percent(result.saved_share, 0, locale),
    }
    if result.saved_share <= 0:
        return (
            tr(
                "switching off after {minutes} min idle would save nothing of it, "
                "because warming up again takes as much",
                **facts,
            )
            if of_all
            else tr(
                "switching off after {minutes} min idle would save nothing of what {machines} would use, "
                "because warming up again takes as much",
                **facts,
            )
        )
    return (
        tr("switching off after {minutes} min idle saves {share} of it", **facts)
        if of_all
        else tr("switching off after {minutes} min idle saves {share} of what {machines} would use", **facts)
    )


def saving_sentence(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What switching off would save in a year, for the machines whose rests tell it."""
    minutes = result.costs.off_after_min
    said = []
    for m in result.machines:
        share = m.rests.share_after(minutes)
        if share is None or m.year_kwh is None or not m.tells_saving_after(minutes):
            continue
        saved = tr(
            "{machine} {saved} of {energy} kWh",
            machine=m.name,
            saved=number(share * m.year_kwh.value, 0, locale),
            energy=number(m.year_kwh.value, 0, locale),
        )
        if m.year_cost is not None:
            saved += f" ({money(share * m.year_cost.value, result.currency, locale)})"
        said.append(saved)
    if not said:
        return ""
    if len(said) > _MOST_NAMED:
        said = [*said[:_MOST_NAMED], tr("{count} more", count=len(said) - _MOST_NAMED)]
    return tr(
        "Saved in a year, switched off after {minutes} min idle: {savings}.",
        minutes=number(minutes, 0, locale),
        savings=listed(said),
    )


def conditions(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """The conditions in one line: year, rests, hours, what has no price, what is not steady."""
    if not any(m.files for m in result.machines):
        return ""
    known = [m for m in result.machines if m.standby is not None]
    lines = [f"{result.year}: {number(result.year_hours, 0, locale)} h."]
    unsteady = [m.name for m in known if m.standby is not None and m.standby.way == "unsteady rest"]
    if unsteady:
        lines.append(tr("Not steady: {machines}.", machines=_named(unsteady)))
    short = [m.name for m in known if m.standby is not None and m.standby.way == "lowest level"]
    if short:
        lines.append(
            tr("No rest of a quarter of an hour, so no year of it: {machines}.", machines=_named(short))
        )
    unknown = [m.name for m in result.machines if m.standby is None]
    if unknown and known:
        lines.append(tr("Standby not known: {machines}.", machines=_named(unknown)))
    rests = sum(m.rests.count for m in known)
    seconds = sum(m.rests.seconds for m in known)
    telling = sum(m.tells_saving_after(result.costs.off_after_min) for m in known)
    if 0 < telling < len(known):
        lines.append(
            tr(
                "{count} of {all} machines show no rest of {length} to judge switching off by.",
                count=len(known) - telling,
                all=len(known),
                length=_telling_min(result.costs.off_after_min, locale),
            )
        )
    if rests:
        length = duration(seconds)
        lines.append(
            tr(
                "{rests:rest|rests} in {length} of idle log, too little to speak for a year.",
                rests=rests,
                length=length,
            )
            if seconds < _SHORT_S
            else tr("{rests:rest|rests} in {length} of idle log.", rests=rests, length=length)
        )
    if result.mean_per_kwh is None:
        lines.append(tr("No price is set."))
    elif result.priced_share < 1 - _UNPRICED:
        lines.append(
            tr("{share} of the time has no price.", share=percent(1 - result.priced_share, 0, locale))
        )
    if result.standing_year is not None:
        charge = money(result.standing_year, result.currency, locale)
        lines.append(tr("Standing charge apart: {charge} a year.", charge=charge))
    return " ".join(lines)


def _telling_min(minutes: float, locale: NumberLocale) -> str:
    return f"{number(TELLING * minutes, 0, locale)} min"


def _named(names: list[str]) -> str:
    if len(names) > _MOST_NAMED:
        names = [*names[:_MOST_NAMED], tr("{count} more", count=len(names) - _MOST_NAMED)]
    return listed(names)


def limit_words(limits: tuple[Limit, ...], locale: NumberLocale = POINT) -> str:
    """What the reference lines are; never whether a machine is under or over one."""
    if not limits:
        return ""
    lines = ", ".join(f"{number(limit.power_w, 2, locale)} W {tr(limit.mode)}" for limit in limits)
    document, since = limits[0].document, limits[0].applies_from
    return tr(
        "Dashed, for reference: {limits} ({document}, from {date}); a material-extrusion "
        "machine is not named there, and this is no test after it.",
        limits=lines,
        document=document,
        date=day(since),
    )
