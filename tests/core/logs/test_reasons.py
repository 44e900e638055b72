"""Why a log was read as it was: English where it is kept, in the language of the window where it is shown."""

import pickle
from collections.abc import Iterator

import pytest

from core.language import speak, tr
from core.logs import read_bytes
from core.logs.reading_options import OPTIONS
from core.logs.reading_text import reading_text
from core.wording import sentence
from tests.core.logs.test_corpus import CASES

SHOWN = frozenset(option.name for option in OPTIONS)


@pytest.fixture
def another_language() -> Iterator[None]:
    speak(lambda text: f"«{text}»", "xx")
    yield
    speak(None)


@pytest.mark.usefixtures("another_language")
@pytest.mark.parametrize("case", CASES, ids=lambda c: c.name)
def test_reasons_are_kept_in_english_and_put_into_words_when_shown(case) -> None:
    for reading in pickle.loads(pickle.dumps(read_bytes(case.data, case.file).readings)):
        for choice, why in reading.reasons:
            assert "«" not in why
            if choice in SHOWN:
                assert tr(why).startswith("«")
                assert tr(why).replace("«", "").replace("»", "") == why
        for problem in reading.problems:
            assert not any("«" in str(fact) for _, fact in problem.facts)


@pytest.mark.parametrize("name", ["comma in the power, point in the counter", "two decimal signs in quotes"])
def test_a_column_with_the_other_decimal_sign_is_named(name: str) -> None:
    case = next(c for c in CASES if c.name == name)
    reading = read_bytes(case.data, case.file).readings[0]
    (other,) = (c for c in reading.columns if c.decimal)
    assert other.decimal != reading.decimal
    word = {",": "comma", ".": "point"}
    assert f"decimal {word[other.decimal or '']} in {other.name!r}" in reading_text(reading)
    shown = next(o for o in OPTIONS if o.name == "decimal").found(reading)
    of_log, of_column = (word[sign or ""] for sign in (reading.decimal, other.decimal))
    assert shown is not None
    assert shown.startswith(of_log)
    assert f"but {of_column}" in shown
    assert other.name in shown


def test_one_decimal_sign_is_said_once() -> None:
    reading = read_bytes(CASES[0].data, CASES[0].file).readings[0]
    assert not any(c.decimal for c in reading.columns)
    assert reading_text(reading).count("decimal") == 1


def _shown(text: bytes) -> list[str]:
    return [sentence(p) for p in read_bytes(text, "log.csv").readings[0].problems]


@pytest.mark.usefixtures("another_language")
def test_words_within_a_sentence_are_in_its_language() -> None:
    rows = b"".join(b"0%d/0%d/2026 10:00:0%d,36.5\n" % (d, d, s) for d in (1, 2) for s in range(8))
    told = next(text for text in _shown(b"Time,Power (W)\n" + rows) if "could be either" in text)
    assert "taken as «day first»: «the usual order" in told


@pytest.mark.usefixtures("another_language")
def test_what_is_no_log_is_named_in_the_language_of_the_window() -> None:
    (problem,) = read_bytes(b"%PDF-1.7 " + b"x" * 100, "log.csv").problems
    assert sentence(problem).startswith("«This is «a PDF document», not a table")
