"""The Bed page's sentences, made from the results: which bed loses most, what a cooler one saves."""

from core.beds.quantities import EFFICIENCY, HELD_W, SAVED_SHARE, SAVED_WH, W_PER_DM2
from core.beds.steady import AGREE_PART, FEWEST_WINDOWS
from core.formatting import POINT, NumberLocale, duration, listed, number, with_interval, with_unit
from core.language import mark, tr
from core.results.bed_compared import BedPair, by_area, pairs_with_first, supplies
from core.results.cooler_beds import Savings
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.study import Study

NOTHING = mark("No hold test yet: nobody has measured what a bed takes to stay warm.")
HOW_TO = mark(
    "A hold test: machine cold and idle, meter logging every few seconds. Set the bed to a temperature, "
    "nothing else, and let it stand for an hour; then, if you can, 10 °C more for half an hour each. "
    "Note bed and room temperature. Drop the log here: a long stretch with the bed alone is found by itself, "
    "or mark one on the Logs page as a hold test."
)
LOOSE = mark(
    "A cooler bed can let the part come loose. How far one may go depends on material, plate and part: set "
    "your own limit, and try it on a part that may fail."
)


def headline(beds: Beds, locale: NumberLocale = POINT) -> str:
    """What the hold tests say, in one sentence with its interval."""
    if not beds.known:
        if not any(m.tests for m in beds.machines):
            return tr(NOTHING)
        if not any(m.held for m in beds.machines):
            return tr("The hold tests are too short: hold each temperature for at least half an hour.")
        if all(h.bed_c is None for m in beds.machines for h in m.held):
            return tr(
                "Hold tests were found, but nobody noted at which temperature: note that of the bed to tell "
                "what the beds take."
            )
        return tr("Hold tests were found, but what the beds took cannot be told: see the table below.")
    at = number(beds.bed_c, 0, locale)
    order = by_area(beds)
    if len(order) > 1:
        return _most_for_its_size(order, pairs_with_first(order), at, locale)
    known = sorted(beds.known, key=lambda m: -(m.reference.power_w if m.reference else 0.0))
    first = known[0]
    told = _watts(first, locale)
    if len(known) == 1:
        return tr(
            "Held at {celsius} °C, the bed of {machine} takes {watts}.",
            celsius=at,
            machine=first.name,
            watts=told,
        )
    last = known[-1]
    return tr(
        "Held at {celsius} °C, the bed of {machine} takes {watts} and that of {other} "
        "{other_watts}; with the areas of the beds they can be compared for their size.",
        celsius=at,
        machine=first.name,
        watts=told,
        other=last.name,
        other_watts=_watts(last, locale),
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
        return tr(
            "No difference shown between the beds of {machines} for their size: about {watts} "
            "held at {celsius} °C.",
            machines=others,
            watts=told,
            celsius=at,
        )
    last = shown[-1]
    percent = [100 * (r - 1) for r in (last.ratio, last.low, last.high)]
    than = tr(
        "{percents} % more than {machine} (95 % interval {low} to {high} %)",
        percents=number(percent[0], 0, locale),
        machine=names[last.other_id],
        low=number(percent[1], 0, locale),
        high=number(percent[2], 0, locale),
    )
    facts = {"machine": first.name, "watts": told, "celsius": at, "than": than}
    if like:
        return tr(
            "For its size the bed of {machine} loses {watts} held at {celsius} °C, {than}; {machines} "
            "{count:~is|are} not told apart from it.",
            machines=listed(like),
            count=len(like),
            **facts,
        )
    return tr("For its size the bed of {machine} loses most: {watts} held at {celsius} °C, {than}.", **facts)


def _tests_told(beds: Beds, tests: int, locale: NumberLocale) -> str:
    """How many hold tests there are, and at which temperatures beds were held in them."""
    held = [h.bed_c for m in beds.machines for h in m.held]
    known = dict.fromkeys(number(c, 0, locale) for c in sorted(c for c in held if c is not None))
    if not held:
        return tr("{tests:hold test|hold tests} with no temperatures", tests=tests)
    if not known:
        return tr("{tests:hold test|hold tests} at temperatures that nobody noted", tests=tests)
    facts = {"tests": tests, "celsius": listed(list(known))}
    if None in held:
        return tr("{tests:hold test|hold tests} at {celsius} °C and at temperatures nobody noted", **facts)
    return tr("{tests:hold test|hold tests} at {celsius} °C", **facts)


def conditions(beds: Beds, study: Study, locale: NumberLocale = POINT) -> str:
    """The line under it: tests, temperatures, the rule by which watts are called steady."""
    tests = sum(m.tests for m in beds.machines)
    if not tests:
        return tr(HOW_TO)
    without = [m.name for m in beds.machines if not m.tests]
    parts = [
        _tests_told(beds, tests, locale),
        tr(
            "compared at {bed} °C in a room of {room} °C",
            bed=number(beds.bed_c, 0, locale),
            room=number(beds.room_c, 1, locale),
        ),
        tr(
            "steady: the last {count} windows or more agree within {percents} % or their scatter",
            count=FEWEST_WINDOWS,
            percents=number(100 * AGREE_PART, 0, locale),
        ),
        tr("what else the machine draws is taken off"),
    ]
    if without:
        named = listed(without) if len(without) <= 4 else tr("{count} machines", count=len(without))
        parts.append(tr("no hold test: {machines}", machines=named))
    if study.invented:
        parts.append(tr("invented data"))
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
        return tr("What a cooler bed saves is known once a hold test shows this machine's bed.")
    if plan.later_c >= plan.first_c:
        return tr("The bed stays as warm as it is: nothing is saved.")
    wh = with_unit(with_interval(saving.saved_wh.value, saving.saved_wh.u95, SAVED_WH, locale), SAVED_WH)
    share = with_interval(saving.saved_share.value, saving.saved_share.u95, SAVED_SHARE, locale)
    facts = {
        "later": number(plan.later_c, 0, locale),
        "first": number(plan.first_c, 0, locale),
        "after": duration(plan.first_layers_s),
        "energy": wh,
        "length": duration(plan.print_s),
        "machine": saving.name,
        "percents": share,
    }
    if price_per_kwh is None:
        return tr(
            "{later} instead of {first} °C after {after} saves {energy} in a print of {length} on "
            "{machine}: {percents} % of what its bed takes.",
            **facts,
        )
    return tr(
        "{later} instead of {first} °C after {after} saves {energy} in a print of {length} on "
        "{machine}: {percents} % of what its bed takes, {money}.",
        money=money_text(saving.saved_price(price_per_kwh), locale, currency),
        **facts,
    )


def saving_note(savings: Savings, machine_id: str) -> str:
    """How far the saving rests on what was measured."""
    saving, plan = savings.of(machine_id), savings.plan
    notes = []
    if plan.is_held_up:
        notes.append(tr("The lower temperature is stopped at your limit."))
    if saving is not None and saving.is_scaled:
        notes.append(
            tr("Beyond the held temperatures: scaled by the law of a plate's loss, with a wider interval.")
        )
    if saving is not None and not saving.is_tau_known:
        notes.append(tr("No warm-up was seen: the time the bed cools is an ordinary one."))
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
        tr(
            "{share} on {machine}",
            share=with_unit(with_interval(v.value, v.u95, EFFICIENCY, locale), EFFICIENCY),
            machine=machine.name,
        )
        for machine, v in known
    ]
    return tr(
        "By a meter of its own, of the watts at the plug {shares} reach the bed; "
        "the rest is lost in its supply and on the way.",
        shares=listed(told),
    )


def _by_groups(beds: Beds, locale: NumberLocale) -> str:
    """Beds fed from the mains against the others; empty where nobody said how any is fed."""
    found = supplies(beds)
    mains, others = ([m.name for m in group] for group in (found.mains, found.low_voltage))
    if found.efficiency is None or found.low is None or found.high is None:
        if not (mains or others):
            return ""
        if others:
            return tr(
                "Mains against low voltage: one fed from the mains, with its area and a hold test, "
                "is still missing."
            )
        return tr(
            "Mains against low voltage: one with a low-voltage supply, with its area and a hold test, "
            "is still missing."
        )
    percent = [number(100 * v, 0, locale) for v in (found.efficiency, found.low, found.high)]
    return tr(
        "Mains ({mains}) against low voltage ({others}): per area {percents} % of the "
        "watts (95 % interval {low} to {high} %). If the beds were alike but for their supply, "
        "that would be the efficiency of the low-voltage supplies; "
        "{beds:bed|beds} cannot show it.",
        mains=listed(mains),
        others=listed(others),
        percents=percent[0],
        low=percent[1],
        high=percent[2],
        beds=len(mains) + len(others),
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
    count, window = len(steady.windows_w), duration(steady.window_s)
    if not steady.is_settled:
        return tr("not settled within {count} windows of {window}", count=count, window=window)
    return tr(
        "settled {after} after heating began, by {count} windows of {window}",
        after=duration(steady.start_s - held.hold.start_s),
        count=count,
        window=window,
    )


def _watts(machine: MachineBed, locale: NumberLocale) -> str:
    assert machine.reference is not None
    watts = machine.reference
    return with_unit(with_interval(watts.power_w, watts.u95_w, HELD_W, locale), HELD_W)
