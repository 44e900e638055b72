"""Laws of the numbers in explanations: digits, signs, and text that stays text."""

import math
import re

from hypothesis import given
from hypothesis import strategies as st

from core.found.markdown import escaped
from core.found.writing import change, figures
from core.quantities import QUANTITIES, Quantity

values = st.floats(1e-5, 1e7).flatmap(lambda v: st.sampled_from((v, -v)))


def read(text: str) -> float:
    return float(text.replace("\u2212", "-"))


@given(values, st.integers(1, 6))
def test_a_number_keeps_its_digits(value: float, digits: int) -> None:
    unit = 10.0 ** (math.floor(math.log10(abs(value))) - digits + 1)
    allowed = max(unit, 1e-6) if unit < 1 else 1.0
    assert abs(read(figures(value, digits)) - value) <= 0.5 * allowed * (1 + 1e-9)


@given(values, st.sampled_from(QUANTITIES))
def test_a_change_has_its_sign_or_is_none(by: float, quantity: Quantity) -> None:
    told = change(by, quantity)
    shown = by * quantity.factor
    if told == "no change":
        assert abs(shown) <= 10.0**-quantity.decimals
        return
    number = read(told.split(" ")[0])
    assert math.copysign(1, number) == math.copysign(1, shown)
    assert told.startswith("+" if shown > 0 else "\u2212")
    assert abs(number - shown) <= 0.5 * 10.0**-quantity.decimals * (1 + 1e-9)


@given(st.text(max_size=60))
def test_no_name_becomes_markup(text: str) -> None:
    line = escaped(text)
    assert "\n" not in line
    assert not re.search(r"(?<!\\)(?:\\\\)*[`*_<>|\[\]]", line)
    assert re.sub(r"\\(.)", r"\1", line) == " ".join(text.split())
