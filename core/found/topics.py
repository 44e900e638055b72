"""The pages of ``assets/explain`` that tell more about a number, and which lead on to which."""

from attrs import frozen

from core.language import mark
from core.places import explanation


@frozen
class Topic:
    """A page: its title in a list, and the pages that belong beside it."""

    title: str
    related: tuple[str, ...] = ()


TOPICS: dict[str, Topic] = {
    "energy": Topic(mark("Energy per part"), ("interval", "runs", "gaps")),
    "parts-per-kwh": Topic(mark("Parts per kWh"), ("energy", "interval")),
    "mean-watts": Topic(mark("Mean power"), ("energy", "bed-share", "loads", "interval")),
    "duration": Topic(mark("Duration"), ("runs", "interval")),
    "bed-share": Topic(mark("Bed share"), ("energy", "bed", "interval")),
    "bed": Topic(mark("Held beds"), ("bed-share", "interval")),
    "like-for-like": Topic(mark("Like for like"), ("bed", "energy", "interval", "properties")),
    "loads": Topic(mark("Loads"), ("mean-watts", "standby", "interval")),
    "properties": Topic(mark("Properties"), ("like-for-like", "interval", "bed")),
    "standby": Topic(mark("Standby power"), ("interval", "standby-cost")),
    "standby-cost": Topic(mark("Standby and cost"), ("standby", "interval")),
    "interval": Topic(mark("Intervals and differences"), ("energy", "fairness")),
    "runs": Topic(mark("How runs are found"), ("energy", "gaps")),
    "gaps": Topic(mark("Gaps and slow logs"), ("energy", "runs")),
    "fairness": Topic(mark("Fairness"), ("interval", "like-for-like", "bundle")),
    "bundle": Topic(mark("Bundle"), ("fairness", "runs")),
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
