"""The Bed page's sentences, made from the results: which bed loses most, what a cooler one saves."""

from core.beds.quantities import EFFICIENCY, HELD_W, SAVED_SHARE, SAVED_WH, W_PER_DM2
from core.beds.steady import AGREE_PART, FEWEST_WINDOWS
from core.formatting import POINT, NumberLocale, count, duration, listed, number, with_interval, with_unit
from core.results.bed_compared import BedPair, by_area, pairs_with_first, supplies
from core.results.cooler_beds import Savings
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.study import Study

NOTHING = "No hold test yet: nobody has measured what a bed takes to stay warm"
HOW_TO = (
    "A hold test: machine cold and idle, meter logging every few seconds. Set the bed to a temperature, "
    "nothing else, and let it stand for an hour; then, if you can, 10 °C more for half an hour each. "
    "Note bed and room temperature. Drop the log here: a long stretch with the bed alone is found by itself, "
    "or mark one on the Logs page as a hold test."
)
LOOSE = (
    "A cooler bed can let the part come loose. How far one may go depends on material, plate and part: set "
    "your own limit, and try it on a part that may fail."
)


def headline(beds: Beds, locale: NumberLocale = POINT) -> str:
    """What the hold tests say, in one sentence with its interval."""
    if not beds.known:
        if not any(m.tests for m in beds.machines):
            return f"{NOTHING}."
        if not any(m.held for m in beds.machines):
            return "The hold tests are too short: hold each temperature for at least half an hour."
        return "Hold tests were found, but what the beds took cannot be told: see the table below."
    at = f"held at {number(beds.bed_c, 0, locale)} °C"
    order = by_area(beds)
    if len(order) > 1:
        return _most_for_its_size(order, pairs_with_first(order), at, locale)
    known = sorted(beds.known, key=lambda m: -(m.reference.power_w if m.reference else 0.0))
    first = known[0]
    told = _watts(first, locale)
    if len(known) == 1:
        return f"{at[0].upper()}{at[1:]}, the bed of {first.name} takes {told}."
    last = known[-1]
    return (
        f"{at[0].upper()}{at[1:]}, the bed of {first.name} takes {told} and that of {last.name} "
        f"{_watts(last, locale)}; with the areas of the beds they can be compared for their size."
    )


def _most_for_its_size(
    order: tuple[MachineBed, ...], pairs: tuple[BedPair, ...], at: str, locale: NumberLocale
) -> str:
    """The first bed, and how far the others are; those not told apart from it share its place."""
    first, names = order[0], {m.machine_id: m.name for m in order}
    value = first.w_per_dm2
    assert value is not None
    told = with_unit(with_interval(value.value, value.u95, W_PER_DM2, locale), W_PER_DM2)
    like = [names[p.other_id] for p in pairs if not p.is_shown]
    shown = [p for p in pairs if p.is_shown]
    if not shown:
        others = listed([first.name, *like])
        return f"No difference shown between the beds of {others} for their size: about {told} {at}."
    last = shown[-1]
    percent = [100 * (r - 1) for r in (last.ratio, last.low, last.high)]
    than = (
        f"{number(percent[0], 0, locale)} % more than {names[last.other_id]} "
        f"(95 % interval {number(percent[1], 0, locale)} to {number(percent[2], 0, locale)} %)"
    )
    if like:
        return (
            f"For its size the bed of {first.name} loses {told} {at}, {than}; {listed(like)} "
            f"{'is' if len(like) == 1 else 'are'} not told apart from it."
        )
    return f"For its size the bed of {first.name} loses most: {told} {at}, {than}."


def conditions(beds: Beds, study: Study, locale: NumberLocale = POINT) -> str:
    """The line under it: tests, temperatures, the rule by which watts are called steady."""
    tests = sum(m.tests for m in beds.machines)
    if not tests:
        return HOW_TO
    held = sum(len(m.held) for m in beds.machines)
    without = [m.name for m in beds.machines if not m.tests]
    parts = [
        f"{count(tests, 'hold test')} with {count(held, 'temperature')}",
        f"compared at {number(beds.bed_c, 0, locale)} °C in a room of {number(beds.room_c, 1, locale)} °C",
        f"steady: the last {FEWEST_WINDOWS} windows or more agree within "
        f"{number(100 * AGREE_PART, 0, locale)} % or their scatter",
        "what else the machine draws is taken off",
    ]
    if without:
        named = listed(without) if len(without) <= 4 else f"{len(without)} machines"
        parts.append(f"no hold test: {named}")
    if study.invented:
        parts.append("invented data")
    return "; ".join(parts) + "."


def saving_sentence(
    savings: Savings,
    machine_id: str,
    locale: NumberLocale = POINT,
    price_per_kwh: float | None = None,
    currency: str = "",
) -> str:
    """What the cooler bed saves on one machine, in one sentence with its interval."""
    plan, saving = savings.plan, savings.of(machine_id)
    if saving is None:
        return "What a cooler bed saves is known once a hold test shows this machine's bed."
    if plan.later_c >= plan.first_c:
        return "The bed stays as warm as it is: nothing is saved."
    wh = with_unit(with_interval(saving.saved_wh.value, saving.saved_wh.u95, SAVED_WH, locale), SAVED_WH)
    share = with_interval(saving.saved_share.value, saving.saved_share.u95, SAVED_SHARE, locale)
    money = ""
    if price_per_kwh is not None:
        money = f", {money_text(saving.saved_price(price_per_kwh), locale, currency)}"
    return (
        f"{number(plan.later_c, 0, locale)} instead of {number(plan.first_c, 0, locale)} °C after "
        f"{duration(plan.first_layers_s)} saves {wh} in a print of {duration(plan.print_s)} on "
        f"{saving.name}: {share} % of what its bed takes{money}."
    )


def saving_note(savings: Savings, machine_id: str) -> str:
    """How far the saving rests on what was measured."""
    saving, plan = savings.of(machine_id), savings.plan
    notes = []
    if plan.is_held_up:
        notes.append("The lower temperature is stopped at your limit.")
    if saving is not None and saving.is_scaled:
        notes.append(
            "Beyond the held temperatures: scaled by the law of a plate's loss, with a wider interval."
        )
    if saving is not None and not saving.is_tau_known:
        notes.append("No warm-up was seen: the time the bed cools is an ordinary one.")
    return " ".join(notes)


def supply_sentence(beds: Beds, locale: NumberLocale = POINT) -> str:
    """What supplies lose: by beds with a meter of their own, and mains against the others; may be empty."""
    return " ".join(said for said in (_by_own_meters(beds, locale), _by_groups(beds, locale)) if said)


def _by_own_meters(beds: Beds, locale: NumberLocale) -> str:
    """Beds that were measured by themselves beside the plug."""
    known = [(m, m.efficiency) for m in beds.machines if m.efficiency is not None]
    if not known:
        return ""
    told = [
        f"{with_unit(with_interval(v.value, v.u95, EFFICIENCY, locale), EFFICIENCY)} on {machine.name}"
        for machine, v in known
    ]
    return (
        f"By a meter of its own, of the watts at the plug {listed(told)} reach the bed; "
        "the rest is lost in its supply and on the way."
    )


def _by_groups(beds: Beds, locale: NumberLocale) -> str:
    """Beds fed from the mains against the others; empty where nobody said how any is fed."""
    found = supplies(beds)
    mains, others = ([m.name for m in group] for group in (found.mains, found.low_voltage))
    if found.efficiency is None or found.low is None or found.high is None:
        if not (mains or others):
            return ""
        lacking = "one fed from the mains" if others else "one with a low-voltage supply"
        return f"Mains against low voltage: {lacking}, with its area and a hold test, is still missing."
    percent = [number(100 * v, 0, locale) for v in (found.efficiency, found.low, found.high)]
    return (
        f"Mains ({listed(mains)}) against low voltage ({listed(others)}): per area {percent[0]} % of the "
        f"watts (95 % interval {percent[1]} to {percent[2]} %). If the beds were alike but for their supply, "
        "that would be the efficiency of the low-voltage supplies; "
        f"{count(len(mains) + len(others), 'bed')} cannot show it."
    )


def money_text(amount: Measured, locale: NumberLocale = POINT, currency: str = "") -> str:
    """An amount with its interval in the user's currency, with the digits that its size needs."""
    from core.formatting import PLUS_MINUS, rounded

    shown = rounded(amount.value, amount.u95, 2)
    text = number(shown.value, shown.decimals, locale)
    if shown.u95 is not None:
        text += f" {PLUS_MINUS} {number(shown.u95, shown.decimals, locale)}"
    return f"{text}\N{NO-BREAK SPACE}{currency}" if currency else text


def settled_text(held: Held) -> str:
    """When a hold was settled, or that it was not, by the rule that says so."""
    steady = held.hold.steady
    windows = f"{len(steady.windows_w)} windows of {duration(steady.window_s)}"
    if not steady.is_settled:
        return f"not settled within {windows}"
    return f"settled {duration(steady.start_s - held.hold.start_s)} after heating began, by {windows}"


def _watts(machine: MachineBed, locale: NumberLocale) -> str:
    assert machine.reference is not None
    watts = machine.reference
    return with_unit(with_interval(watts.power_w, watts.u95_w, HELD_W, locale), HELD_W)
