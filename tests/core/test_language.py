"""The gate for texts: facts, words for one and many, and another language."""

import pickle
import re
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from core.language import in_english, later, mark, speak, spoken, tr
from core.places import assets_folder, explanation
from core.problems import Problem
from core.wording import placed

GERMAN = {
    "{count:row|rows} in {file}": "In {file}: {count:Zeile|Zeilen}",
    "Saved": "Gespeichert",
    "{a} more": "{b} mehr",
    "row {row}": "Zeile {row}",
}


def outline(page: Path) -> tuple[int, int, int, int, list[str]]:
    """Headings, bold leads, points of lists, rows of tables, and what is code: alike in all languages."""
    text = page.read_text(encoding="utf-8")
    lines = text.splitlines()
    return (
        sum(line.startswith("#") for line in lines),
        sum(line.startswith("**") for line in lines),
        sum(bool(re.match(r"(- |\d\. )", line)) for line in lines),
        sum(line.startswith("|") for line in lines),
        sorted(re.sub(r"\s+", " ", code) for code in re.findall(r"`([^`]+)`", text)),
    )


@pytest.fixture
def german() -> Iterator[None]:
    speak(lambda text: GERMAN.get(text, text), "de")
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
def test_what_was_found_elsewhere_is_english_until_it_is_shown() -> None:
    rows = later("{count:row|rows} in {file}", count=2, file="a.csv")
    nested = later("row {row}", row=rows)
    sent = pickle.loads(pickle.dumps(nested))
    assert (rows, sent) == ("2 rows in a.csv", "row 2 rows in a.csv")
    assert tr(rows) == "In a.csv: 2 Zeilen"
    assert tr(sent) == "Zeile In a.csv: 2 Zeilen"
    with in_english():
        assert tr(sent) == sent


@pytest.mark.usefixtures("german")
def test_a_problem_is_told_in_the_language_of_the_window() -> None:
    assert placed(Problem("log.empty", file="a.csv", row=3)).startswith("a.csv, Zeile 3: ")


@pytest.mark.usefixtures("german")
def test_what_goes_to_others_is_english_and_only_there() -> None:
    with in_english(), ThreadPoolExecutor(1) as pool:
        assert (tr("Saved"), spoken()) == ("Saved", "en")
        assert pool.submit(tr, "Saved").result() == "Gespeichert"
    assert (tr("Saved"), spoken()) == ("Gespeichert", "de")


@pytest.mark.usefixtures("german")
def test_pages_come_in_the_language_where_there_are_some() -> None:
    assert explanation("energy").parent.name == "de"
    assert explanation("no such page").parent.name == "explain"
    with in_english():
        assert explanation("energy").parent.name == "explain"


def test_pages_of_a_language_are_whole() -> None:
    pages = sorted(file.name for file in (assets_folder() / "explain").glob("*.md"))
    for folder in (assets_folder() / "explain").iterdir():
        if folder.is_dir():
            assert sorted(file.name for file in folder.iterdir()) == pages
            for name in pages:
                assert outline(folder / name) == outline(folder.parent / name), f"{folder.name}/{name}"
