"""Every topic has its page, every page is used, and the pages say what the program does."""

import re
from pathlib import Path

import pytest

from core import __file__ as core_file
from core.energy.total import GAP_CAUTION, GAP_LIMIT
from core.found.topics import TOPICS, text_of
from core.places import assets_folder
from core.study import Meter
from core.traces import GAP_INTERVALS, GAP_SECONDS

PAGES = assets_folder() / "explain"
GUI = Path(core_file).parent.parent / "gui"


def notes() -> set[str]:
    """The pages that the window opens by name."""
    calls = (
        re.findall(r'show_note\(.*?, "([\w-]+)"\)', path.read_text("utf-8")) for path in GUI.rglob("*.py")
    )
    return {topic for call in calls for topic in call}


def purposes() -> set[str]:
    """The pages that tell what a page of the window is for, by its title."""
    titles = (
        re.search(r'^    title = mark\("(.+)"\)$', path.read_text("utf-8"), re.M)
        for path in (GUI / "pages").glob("*.py")
    )
    return {title[1].lower().replace(" and ", " ").replace(" ", "-") for title in titles if title}


def test_every_page_of_the_window_has_a_text_that_tells_its_purpose_and_cautions() -> None:
    assert len(purposes()) >= 8
    for purpose in purposes():
        text = (PAGES / f"{purpose}.md").read_text("utf-8")
        assert text.split("\n\n")[-1].startswith(("**Keep in mind.**", "**A picture can mislead**")), purpose
        assert 60 < len(text.split()) < 500, purpose


def test_every_topic_has_a_page_and_every_page_is_used() -> None:
    assert {path.stem for path in PAGES.glob("*.md")} == set(TOPICS) | notes() | purposes()
    assert notes().isdisjoint(TOPICS)
    assert {"keys", "about"} <= notes()


@pytest.mark.parametrize("topic", TOPICS)
def test_a_page_begins_with_its_title_and_is_short(topic: str) -> None:
    text = text_of(topic)
    assert text.splitlines()[0] == f"# {TOPICS[topic].title}"
    assert 60 < len(text.split()) < 400
    assert "**Keep in mind.**" in text or topic in ("interval", "runs", "gaps")
    # one page is shown with a version in it; these must not hold anything to be filled in
    assert "{" not in text


@pytest.mark.parametrize("topic", TOPICS)
def test_a_page_leads_on_to_others_that_exist(topic: str) -> None:
    assert TOPICS[topic].related
    assert set(TOPICS[topic].related) <= set(TOPICS) - {topic}


def test_every_page_can_be_come_to() -> None:
    led_to = {other for topic in TOPICS.values() for other in topic.related}
    of_numbers = {"energy", "parts-per-kwh", "mean-watts", "duration", "bed-share", "standby", "interval"}
    assert led_to | of_numbers == set(TOPICS)


def test_pages_say_the_limits_that_are_used() -> None:
    gaps = " ".join(text_of("gaps").split())
    assert (GAP_INTERVALS, GAP_SECONDS) == (5.0, 30.0)
    assert "five usual intervals and longer than 30 s" in gaps
    assert f"more than {100 * GAP_CAUTION:g} % of a run's time" in gaps
    assert f"more than {100 * GAP_LIMIT:g} % and no counter" in gaps
    meter = Meter("m", "a meter")
    said = f"good to {meter.gain_percent:g} % of its reading and {meter.offset_w:g} W"
    assert said in " ".join(text_of("energy").split())


def test_an_unknown_topic_is_the_caller_s_mistake() -> None:
    with pytest.raises(KeyError):
        text_of("no such topic")
