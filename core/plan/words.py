"""How many repeats a plan needs, in words made of the results."""

from core.formatting import POINT, NumberLocale, count, listed, number
from core.plan.power import spread_interval
from core.plan.repeats import MANY_RUNS, PairRepeats, Repeats


def headline(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What it takes to show the difference that is looked for, in one sentence."""
    if not found.machines:
        return "No machine is planned yet: add the machines of the test below."
    if found.pair is None:
        return f"{found.machines[0].name} alone can be compared with nothing: add another machine below."
    pair, wanted = found.pair, share(found.difference, locale)
    names = f"{pair.first.name} and {pair.other.name}"
    among = f" among {len(found.machines)} machines" if len(found.machines) > 2 else ""
    if pair.more is None:
        return _never(found, pair, locale)
    if pair.more == 0:
        return f"The runs so far are enough to show a difference of {wanted} between {names}{among}."
    is_new = not pair.first.runs and not pair.other.runs
    more = count(pair.more, "run" if is_new else "more run")
    return f"{more} on each of {names} would show a difference of {wanted} between them{among}."


def _never(found: Repeats, pair: PairRepeats, locale: NumberLocale) -> str:
    wanted, names = share(found.difference, locale), f"{pair.first.name} and {pair.other.name}"
    if found.difference > pair.floor:
        return (
            f"More than {MANY_RUNS} runs on each of {names} would be needed to show a difference of {wanted}."
        )
    told = (
        f"No number of runs would show a difference of {wanted} between {names}: "
        f"what their meters leave open hides {share(pair.floor, locale)}"
    )
    if pair.floor_together < found.difference:
        return f"{told}; with one meter for both it would not."
    return f"{told}."


def conditions(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What the sentence rests on."""
    if not found.machines:
        return ""
    parts = [_spread_words(found, locale)]
    if found.pair is not None:
        parts.append("Shown means at the 95 % level, in four tests of five.")
        if found.pair.planned is not None:
            so_far = " with those so far" if found.pair.first.runs or found.pair.other.runs else ""
            planned = share(found.pair.planned, locale)
            parts.append(f"The runs of this plan{so_far} would show {planned}.")
        if found.for_any is not None:
            parts.append(
                f"That not all {len(found.machines)} are alike takes {count(found.for_any, 'run')} of each."
            )
    return " ".join(parts)


def _spread_words(found: Repeats, locale: NumberLocale) -> str:
    told = share(found.spread, locale)
    if found.is_stated:
        return f"Runs are taken to scatter by {told}, as you have stated."
    if found.is_assumed:
        return f"No run has been repeated yet, so a scatter of {told} is assumed: state what you expect."
    low, high = (share(end, locale) for end in spread_interval(found.spread, found.spread_df))
    runs = found.spread_df + sum(1 for m in found.machines if m.spread is not None)
    interval = f"95 % interval {low.removesuffix(' %')} to {high}"
    return f"Runs scatter by {told} ({interval}; {count(runs, 'run')} so far)."


def floor_words(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What the meters hide, however many runs are made."""
    pair = found.pair
    if pair is None:
        return ""
    together, apart, planned = (
        share(value, locale) for value in (pair.floor_together, pair.floor_apart, pair.floor)
    )
    names = listed([pair.first.name, pair.other.name])
    return (
        "Repeats do not average a meter's error. However many runs are made, the meters hide "
        f"{apart} between {names} with a meter for each, {together} with one meter for both, "
        f"and {planned} as planned here."
    )


def share(value: float, locale: NumberLocale = POINT) -> str:
    """A share as a percentage with two digits that count, or none after the mark from ten on.

    Examples
    --------
    >>> share(0.0123), share(0.05), share(0.123), share(1.84)
    ('1.2 %', '5 %', '12 %', '184 %')
    """
    percent = 100 * value
    digits = 0 if percent >= 9.95 or abs(percent - round(percent)) < 0.005 else 1 if percent >= 0.995 else 2
    return f"{number(percent, digits, locale)} %"
