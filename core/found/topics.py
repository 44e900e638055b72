"""The pages of ``assets/explain`` that tell more about a number, and which lead on to which."""

from attrs import frozen

from core.places import explanation


@frozen
class Topic:
    """A page: its title in a list, and the pages that belong beside it."""

    title: str
    related: tuple[str, ...] = ()


TOPICS: dict[str, Topic] = {
    "energy": Topic("Energy per part", ("interval", "runs", "gaps")),
    "parts-per-kwh": Topic("Parts per kWh", ("energy", "interval")),
    "mean-watts": Topic("Mean power", ("energy", "bed-share", "loads", "interval")),
    "duration": Topic("Duration", ("runs", "interval")),
    "bed-share": Topic("Bed share", ("energy", "bed", "interval")),
    "bed": Topic("Held beds", ("bed-share", "interval")),
    "like-for-like": Topic("Like for like", ("bed", "energy", "interval", "properties")),
    "loads": Topic("Loads", ("mean-watts", "standby", "interval")),
    "properties": Topic("Properties", ("like-for-like", "interval", "bed")),
    "standby": Topic("Standby power", ("interval", "standby-cost")),
    "standby-cost": Topic("Standby and cost", ("standby", "interval")),
    "interval": Topic("Intervals and differences", ("energy", "fairness")),
    "runs": Topic("How runs are found", ("energy", "gaps")),
    "gaps": Topic("Gaps and slow logs", ("energy", "runs")),
    "fairness": Topic("Fairness", ("interval", "like-for-like", "bundle")),
    "bundle": Topic("Bundle", ("fairness", "runs")),
}


def text_of(topic: str) -> str:
    """The page as Markdown.

    Raises
    ------
    KeyError
        If there is no such topic: the caller's mistake.
    """
    if topic not in TOPICS:
        raise KeyError(topic)
    return explanation(topic).read_text(encoding="utf-8")
