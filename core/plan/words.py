"""How many repeats a plan needs, in words made of the results."""

from core.formatting import POINT, NumberLocale, listed, number
from core.language import tr
from core.plan.power import spread_interval
from core.plan.repeats import MANY_RUNS, PairRepeats, Repeats


def headline(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What it takes to show the difference that is looked for, in one sentence."""
    if not found.machines:
        return tr("No machine is planned yet: add the machines of the test below.")
    if found.pair is None:
        return tr(
            "{machine} alone can be compared with nothing: add another machine below.",
            machine=found.machines[0].name,
        )
    pair, wanted = found.pair, share(found.difference, locale)
    names = listed([pair.first.name, pair.other.name])
    if pair.more is None:
        return _never(found, pair, locale)
    if pair.more == 0:
        enough = tr(
            "The runs so far are enough to show a difference of {wanted} between {machines}",
            wanted=wanted,
            machines=names,
        )
        return _among(enough, found)
    is_new = not pair.first.runs and not pair.other.runs
    more = (
        tr("{count:run|runs}", count=pair.more)
        if is_new
        else tr("{count:more run|more runs}", count=pair.more)
    )
    would = tr(
        "{runs} on each of {machines} would show a difference of {wanted} between them",
        runs=more,
        machines=names,
        wanted=wanted,
    )
    return _among(would, found)


def _among(told: str, found: Repeats) -> str:
    """The sentence closed, with how many machines there are where these two are not all."""
    if len(found.machines) > 2:
        return tr("{told} among {count} machines.", told=told, count=len(found.machines))
    return f"{told}."


def _never(found: Repeats, pair: PairRepeats, locale: NumberLocale) -> str:
    wanted, names = share(found.difference, locale), listed([pair.first.name, pair.other.name])
    if found.difference > pair.floor:
        return tr(
            "More than {runs} runs on each of {machines} would be needed to show a difference of {wanted}.",
            runs=MANY_RUNS,
            machines=names,
            wanted=wanted,
        )
    told = tr(
        "No number of runs would show a difference of {wanted} between {machines}: what their meters leave "
        "open hides {hidden}",
        wanted=wanted,
        machines=names,
        hidden=share(pair.floor, locale),
    )
    if pair.floor_together < found.difference:
        return tr("{told}; with one meter for both it would not.", told=told)
    return f"{told}."


def conditions(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What the sentence rests on."""
    if not found.machines:
        return ""
    parts = [_spread_words(found, locale)]
    if found.pair is not None:
        parts.append(tr("Shown means at the 95 % level, in four tests of five."))
        if found.pair.planned is not None:
            planned = share(found.pair.planned, locale)
            parts.append(
                tr("The runs of this plan with those so far would show {difference}.", difference=planned)
                if found.pair.first.runs or found.pair.other.runs
                else tr("The runs of this plan would show {difference}.", difference=planned)
            )
        if found.for_any is not None:
            parts.append(
                tr(
                    "That not all {machines} are alike takes {count:run|runs} of each.",
                    machines=len(found.machines),
                    count=found.for_any,
                )
            )
    return " ".join(parts)


def _spread_words(found: Repeats, locale: NumberLocale) -> str:
    told = share(found.spread, locale)
    if found.is_stated:
        return tr("Runs are taken to scatter by {spread}, as you have stated.", spread=told)
    if found.is_assumed:
        return tr(
            "No run has been repeated yet, so a scatter of {spread} is assumed: state what you expect.",
            spread=told,
        )
    low, high = (share(end, locale) for end in spread_interval(found.spread, found.spread_df))
    runs = found.spread_df + sum(1 for m in found.machines if m.spread is not None)
    return tr(
        "Runs scatter by {spread} (95 % interval {low} to {high}; {count:run|runs} so far).",
        spread=told,
        low=low.removesuffix(" %"),
        high=high,
        count=runs,
    )


def floor_words(found: Repeats, locale: NumberLocale = POINT) -> str:
    """What the meters hide, however many runs are made."""
    pair = found.pair
    if pair is None:
        return ""
    together, apart, planned = (
        share(value, locale) for value in (pair.floor_together, pair.floor_apart, pair.floor)
    )
    names = listed([pair.first.name, pair.other.name])
    return tr(
        "Repeats do not average a meter's error. However many runs are made, the meters hide {apart} "
        "between {machines} with a meter for each, {together} with one meter for both, and {planned} as "
        "planned here.",
        apart=apart,
        machines=names,
        together=together,
        planned=planned,
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
