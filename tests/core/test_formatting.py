import pytest

from core.formatting import (
    NumberLocale,
    count,
    duration,
    listed,
    number,
    percent,
    rounded,
    value_alone,
    with_interval,
    with_unit,
)
from core.quantities import BED_SHARE, DURATION, ENERGY, PARTS_PER_KWH, QUANTITIES, quantity

COMMA = NumberLocale(",", ".")


@pytest.mark.parametrize(
    ("value", "u95", "text"),
    [
        (21.3456, None, "21.3"),
        (21.3456, 0.0, "21.3"),
        (21.3456, 0.35, "21.35 ± 0.35"),
        (21.3456, 0.36, "21.3 ± 0.4"),
        (21.3456, 0.94, "21.3 ± 0.9"),
        (21.3456, 0.96, "21.3 ± 1.0"),
        (21.3456, 0.9996, "21.3 ± 1.0"),
        (21.3456, 1.04, "21.3 ± 1.0"),
        (21.3456, 2.5, "21.3 ± 2.5"),
        (21.3456, 8.2, "21 ± 8"),
        (1234.5, 41.0, "1230 ± 40"),
        (1234.5, 12.0, "1234 ± 12"),
        (0.00321, 0.00014, "0.00321 ± 0.00014"),
        (5.0, 1e-12, "5.000000 ± 0.000000"),
        (None, 1.0, "–"),
        (float("nan"), 1.0, "–"),
        (float("inf"), None, "–"),
        (20.0, float("inf"), "20.0"),
    ],
)
def test_uncertainty_decides_the_digits(value: float | None, u95: float | None, text: str) -> None:
    assert with_interval(value, u95, ENERGY) == text


@pytest.mark.parametrize("exponent", range(-4, 5))
@pytest.mark.parametrize("leading", [1.0, 1.9, 3.54, 3.56, 5.0, 9.49, 9.51, 9.99, 9.996])
def test_never_more_than_two_digits_of_uncertainty(leading: float, exponent: int) -> None:
    u95 = leading * 10.0**exponent
    shown = rounded(123.456, u95, 1)
    assert shown.u95 is not None
    assert abs(shown.u95 - u95) <= 0.15 * u95
    digits = f"{shown.u95:.9f}".replace(".", "").strip("0")
    assert len(digits) <= 2


def test_units_are_converted_for_reading_only() -> None:
    assert with_interval(2274.0, 24.0, DURATION) == "37.9 ± 0.4"
    assert with_interval(0.459, 0.013, BED_SHARE) == "45.9 ± 1.3"
    assert value_alone(0.459, None, BED_SHARE) == "46"
    assert with_unit("46", BED_SHARE) == "46 %"
    assert with_unit("46.8", PARTS_PER_KWH) == "46.8"
    assert with_unit("–", ENERGY) == "–"


def test_locale_is_a_parameter() -> None:
    assert number(1234567.891, 2, COMMA) == "1.234.567,89"
    assert with_interval(21.3456, 0.81, ENERGY, COMMA) == "21,3 ± 0,8"
    assert percent(-0.352, 1, COMMA) == "−35,2 %"


def test_no_negative_nothing() -> None:
    assert number(-0.04, 1) == "0.0"
    assert number(-0.06, 1) == "−0.1"


def test_words_agree_with_numbers() -> None:
    assert [count(n, "run") for n in (0, 1, 2)] == ["no runs", "1 run", "2 runs"]
    assert count(2, "study", "studies") == "2 studies"
    assert listed([]) == ""
    assert listed(("Alder", "Birch", "Rowan")) == "Alder, Birch and Rowan"


@pytest.mark.parametrize(
    ("seconds", "text"),
    [(0, "0 s"), (59.6, "1 min"), (3600, "1 h"), (3661, "1 h 1 min"), (86399.9, "1 d"), (90000, "1 d 1 h")],
)
def test_lengths_of_time(seconds: float, text: str) -> None:
    assert duration(seconds) == text


def test_every_quantity_is_found_by_its_key() -> None:
    assert [quantity(q.key) for q in QUANTITIES] == list(QUANTITIES)
    with pytest.raises(KeyError):
        quantity("weight")
