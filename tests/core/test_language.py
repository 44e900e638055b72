"""The gate for texts: facts, words for one and many, and another language."""

from collections.abc import Iterator

import pytest

from core.language import mark, speak, tr
from core.problems import Problem
from core.wording import placed

GERMAN = {
    "{count:row|rows} in {file}": "In {file}: {count:Zeile|Zeilen}",
    "Saved": "Gespeichert",
    "{a} more": "{b} mehr",
    "row {row}": "Zeile {row}",
}


@pytest.fixture
def german() -> Iterator[None]:
    speak(lambda text: GERMAN.get(text, text))
    yield
    speak(None)


def test_english_is_what_was_written() -> None:
    assert tr("Saved") == "Saved"
    assert tr("{count:row|rows} in {file}", count=1, file="a.csv") == "1 row in a.csv"
    assert tr("{count:~was|were}", count=3) == "were"


def test_a_text_with_no_facts_may_hold_braces() -> None:
    assert tr("a set {1, 2}") == "a set {1, 2}"


def test_a_yes_or_no_is_not_counted() -> None:
    assert tr("it is {so}", so=True) == "it is True"


@pytest.mark.usefixtures("german")
def test_another_language_orders_the_facts_its_own_way() -> None:
    assert tr("{count:row|rows} in {file}", count=2, file="a.csv") == "In a.csv: 2 Zeilen"
    assert tr("Saved") == "Gespeichert"
    assert tr("not known to the translator") == "not known to the translator"


@pytest.mark.usefixtures("german")
def test_a_wrong_translation_is_passed_over() -> None:
    assert tr("{a} more", a=2) == "2 more"


def test_a_wrong_text_is_told_to_its_author() -> None:
    with pytest.raises(KeyError):
        tr("{a} more", b=2)


@pytest.mark.usefixtures("german")
def test_a_mark_changes_nothing_until_it_is_shown() -> None:
    word = mark("Saved")
    assert word == "Saved"
    assert tr(word) == "Gespeichert"


@pytest.mark.usefixtures("german")
def test_a_problem_is_told_in_the_language_of_the_window() -> None:
    assert placed(Problem("log.empty", file="a.csv", row=3)).startswith("a.csv, Zeile 3: ")
