"""Same-load checks in words."""

import pytest

from core import edits
from core.formatting import NumberLocale
from core.results import check_words
from core.study import LoadCheck, Meter, Study

METERS = (Meter("m1", "Shelf"), Meter("m2", "Bench"))


def checked(
    reading: float, other: float, step: float = 0.01, seconds: float | None = None, note: str = ""
) -> tuple[Study, LoadCheck]:
    """A check of energies where it took a time, else of powers."""
    study = edits.add_load_check(
        Study("s", meters=METERS),
        "m1",
        "m2",
        reading,
        other,
        unit="W" if seconds is None else "Wh",
        step=step,
        other_step=step,
        seconds=seconds,
        note=note,
    ).study
    return study, study.checks[0]


def test_a_reading_keeps_the_digits_of_its_display() -> None:
    assert check_words.as_read(60.0, 0.1) == "60.0"
    assert check_words.as_read(412.0, 1.0) == "412"
    assert check_words.as_read(1.5, 0.001, NumberLocale(",", ".")) == "1,500"
    assert check_words.as_read(59.25, 0.0) == "59.25"
    assert check_words.as_read(100.0, 0.0) == "100"


def test_what_was_read_is_said_with_how_long_and_of_what() -> None:
    study, check = checked(400.0, 396.0, 0.1, seconds=7200.0, note="two old lamps")
    assert check_words.read(study, check) == ("Shelf 400.0 Wh", "Bench 396.0 Wh", "in 2 h, two old lamps")
    study, check = checked(60.2, 60.1, 0.1)
    assert check_words.read(study, check) == ("Shelf 60.2 W", "Bench 60.1 W")


def test_a_difference_is_told_with_its_interval_and_what_it_corrects() -> None:
    study, check = checked(1010.0, 1000.0, 0.1, seconds=3600.0)
    apart, corrects, left = check_words.told(study, check)
    assert apart.startswith("On one load Shelf reads 1.00 ± 0.0")
    assert apart.endswith("% more than Bench.")
    # equal accuracies share what differs: half of one percent each
    assert corrects.startswith("Shelf's energies are taken 0.50 % lower and Bench's energies are taken 0.50")
    # 1.96 x sqrt(2) x 1 % / sqrt(3) without a check
    assert left.endswith("without a check it would be ± 1.60 %.")
    assert float(left.split("bring ± ")[1].split(" %")[0]) < 0.1


def test_no_difference_is_not_made_one() -> None:
    study, check = checked(60.1, 60.0, 0.1)
    apart, *_ = check_words.told(study, check)
    # offsets of 0.3 W and steps of 0.1 W at 60 W: 1.96 x sqrt(2 x (0.3^2 / 3 + 0.1^2 / 12)) / 60 = 0.81 %
    assert apart == "On one load no difference is shown: Shelf reads 0.2 ± 0.8 % more than Bench."


def test_a_poor_check_leaves_the_stated_accuracy() -> None:
    study, check = checked(10.0, 9.0, 5.0)
    *_, left = check_words.told(study, check)
    assert float(left.split("bring ± ")[1].split(" %")[0]) == pytest.approx(1.60, abs=0.03)


def test_less_is_said_as_less() -> None:
    study, check = checked(1000.0, 1010.0, 0.1, seconds=3600.0)
    assert "Shelf reads 0.99 ± 0.0" in check_words.told(study, check)[0]
    assert check_words.told(study, check)[0].endswith("% less than Bench.")
