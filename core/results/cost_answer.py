"""What standby and prints cost, in words: one sentence of what the data say, one line of the conditions.

Rules: a sentence is made from the results alone; what no log shows and no person stated is not claimed.
"""

from core.costs.limits import Limit
from core.costs.money import money, price_per_kwh
from core.formatting import POINT, NumberLocale, count, duration, listed, number, percent, with_interval
from core.quantities import STANDBY_KWH
from core.results.cost_values import TELLING, MachineCost, StandbyCost
from core.units import SECONDS_PER_DAY

_WORDS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
#: shares of the time with no price above this are told
_UNPRICED = 0.001
#: rests that span less than this say little about a year [s]
_SHORT_S = 7 * SECONDS_PER_DAY
_MOST_NAMED = 4

NOTHING = "Nothing to price yet: add the meter logs of one machine or more."
HOT = (
    "Cutting the power at the plug while the hot end is hot also stops its cooling fan, and plastic may set "
    "in it: let it cool first."
)
ESTIMATE = "Savings are estimates from the rests in these logs; prices are your own."
MAINS = "Use a switch or timer approved for the load of the machine; never work on mains wiring yourself."


def headline(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What the logs say, in one sentence.

    Parameters
    ----------
    result : StandbyCost
        Its own headline is not read.
    locale : NumberLocale
    """
    if not any(m.files for m in result.machines):
        return NOTHING
    known = [m for m in result.machines if m.year_kwh is not None]
    if not known or result.total_kwh is None:
        return "No log shows a machine doing nothing for a quarter of an hour, so standby is not known."
    kwh = with_interval(result.total_kwh.value, result.total_kwh.u95, STANDBY_KWH, locale)
    said = f"{_left_on(known, result)} {_who(known)} {kwh} kWh{_cost(result, locale)}"
    return f"{said}{_saving(known, result, locale)}."


def _left_on(known: list[MachineCost], result: StandbyCost) -> str:
    if all(m.idle_hours == result.year_hours for m in known):
        return "Left on all year and doing nothing,"
    if all(result.costs.of(m.machine_id).idle_hours is None for m in known):
        return "Left on all year between prints, doing nothing"
    return "Doing nothing for the hours you stated,"


def _who(known: list[MachineCost]) -> str:
    machines = sum(m.count for m in known)
    if machines == 1:
        return f"{known[0].name} uses"
    word = _WORDS[machines] if machines < len(_WORDS) else str(machines)
    return f"the {word} machines use"


def _cost(result: StandbyCost, locale: NumberLocale) -> str:
    if result.total_cost is None:
        return ""
    mean = " on average" if result.costs.tariff.priced_by != "single" else ""
    price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
    cost = money(result.total_cost.value, result.currency, locale, result.total_cost.u95)
    return f": {cost} at {price}{mean}"


def _saving(known: list[MachineCost], result: StandbyCost, locale: NumberLocale) -> str:
    minutes = result.costs.off_after_min
    after = f"switching off after {number(minutes, 0, locale)} min idle"
    telling = [m for m in known if m.tells_saving_after(minutes)]
    if not telling or result.saved_share is None:
        return (
            f"; no rest in the logs lasts {_telling_min(minutes, locale)}, so switching off cannot be judged"
        )
    whose = "it" if len(telling) == len(known) else f"what {_named([m.name for m in telling])} would use"
    if result.saved_share <= 0:
        return f"; {after} would save nothing of {whose}, because warming up again takes as much"
    return f"; {after} saves {percent(result.saved_share, 0, locale)} of {whose}"


def saving_sentence(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What switching off would save in a year, for the machines whose rests tell it."""
    minutes = result.costs.off_after_min
    said = []
    for m in result.machines:
        share = m.rests.share_after(minutes)
        if share is None or m.year_kwh is None or not m.tells_saving_after(minutes):
            continue
        saved = f"{number(share * m.year_kwh.value, 0, locale)} of {number(m.year_kwh.value, 0, locale)} kWh"
        if m.year_cost is not None:
            saved += f" ({money(share * m.year_cost.value, result.currency, locale)})"
        said.append(f"{m.name} {saved}")
    if not said:
        return ""
    if len(said) > _MOST_NAMED:
        said = [*said[:_MOST_NAMED], f"{len(said) - _MOST_NAMED} more"]
    return f"Saved in a year, switched off after {number(minutes, 0, locale)} min idle: {listed(said)}."


def conditions(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """The conditions in one line: year, rests, hours, what has no price, what is not steady."""
    if not any(m.files for m in result.machines):
        return ""
    known = [m for m in result.machines if m.standby is not None]
    lines = [f"{result.year}: {number(result.year_hours, 0, locale)} h."]
    unsteady = [m.name for m in known if m.standby is not None and m.standby.way == "unsteady rest"]
    if unsteady:
        lines.append(f"Not steady: {_named(unsteady)}.")
    short = [m.name for m in known if m.standby is not None and m.standby.way == "lowest level"]
    if short:
        lines.append(f"No rest of a quarter of an hour, so no year of it: {_named(short)}.")
    unknown = [m.name for m in result.machines if m.standby is None]
    if unknown and known:
        lines.append(f"Standby not known: {_named(unknown)}.")
    rests = sum(m.rests.count for m in known)
    seconds = sum(m.rests.seconds for m in known)
    telling = sum(m.tells_saving_after(result.costs.off_after_min) for m in known)
    if 0 < telling < len(known):
        lines.append(
            f"{len(known) - telling} of {len(known)} machines show no rest of "
            f"{_telling_min(result.costs.off_after_min, locale)} to judge switching off by."
        )
    if rests:
        said = f"{count(rests, 'rest')} in {duration(seconds)} of idle log"
        few = ", too little to speak for a year" if seconds < _SHORT_S else ""
        lines.append(f"{said}{few}.")
    if result.mean_per_kwh is None:
        lines.append("No price is set.")
    elif result.priced_share < 1 - _UNPRICED:
        lines.append(f"{percent(1 - result.priced_share, 0, locale)} of the time has no price.")
    if result.standing_year is not None:
        charge = money(result.standing_year, result.currency, locale)
        lines.append(f"Standing charge apart: {charge} a year.")
    return " ".join(lines)


def _telling_min(minutes: float, locale: NumberLocale) -> str:
    return f"{number(TELLING * minutes, 0, locale)} min"


def _named(names: list[str]) -> str:
    if len(names) > _MOST_NAMED:
        names = [*names[:_MOST_NAMED], f"{len(names) - _MOST_NAMED} more"]
    return listed(names)


def limit_words(limits: tuple[Limit, ...], locale: NumberLocale = POINT) -> str:
    """What the reference lines are; never whether a machine is under or over one."""
    if not limits:
        return ""
    lines = ", ".join(f"{number(limit.power_w, 2, locale)} W {limit.mode}" for limit in limits)
    document, since = limits[0].document, limits[0].applies_from
    return (
        f"Dashed, for reference: {lines} ({document}, from {since.day} {since:%B %Y}); a material-extrusion "
        "machine is not named there, and this is no test after it."
    )
