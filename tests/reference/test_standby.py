"""Limits of standby power and energies of a year; the source stands beside each check."""

from datetime import date

import pytest

from core.costs.limits import STANDBY_LIMITS, limits_on, yearly_kwh


def _watts(day: date) -> dict[str, float]:
    return {limit.mode: limit.power_w for limit in limits_on(day)}


def test_regulation_2023_826() -> None:
    # Regulation (EU) 2023/826, Annex III, point 1, read (CELEX 32023R0826): applies from 9 May 2025
    display = "standby with information or status display"
    assert _watts(date(2025, 5, 9)) == {
        "off mode": 0.50,
        "standby": 0.50,
        display: 0.80,
        "networked standby": 2.00,
    }
    assert _watts(date(2027, 5, 8))["off mode"] == 0.50
    assert _watts(date(2027, 5, 9))["off mode"] == 0.30


def test_regulation_1275_2008() -> None:
    # Regulation (EC) 1275/2008, Annex II, read (CELEX 32008R1275); days of the first two steps from memory
    display = "standby with information or status display"
    assert _watts(date(2010, 1, 7)) == {"off mode": 1.00, "standby": 1.00, display: 2.00}
    assert _watts(date(2013, 1, 7)) == {"off mode": 0.50, "standby": 0.50, display: 1.00}
    assert [_watts(date(year, 1, 1))["networked standby"] for year in (2015, 2017, 2019)] == [6, 3, 2]
    # repealed with effect from 9 May 2025
    assert {limit.document for limit in limits_on(date(2025, 5, 8))}.isdisjoint(
        {limit.document for limit in limits_on(date(2025, 5, 9))}
    )


def test_no_limit_before_the_first() -> None:
    assert limits_on(date(2009, 12, 31)) == ()


def test_one_limit_a_mode_on_any_day() -> None:
    days = {limit.applies_from for limit in STANDBY_LIMITS}
    for day in days:
        modes = [limit.mode for limit in limits_on(day)]
        assert len(modes) == len(set(modes))


def test_a_line_says_its_number_and_date_and_judges_nothing() -> None:
    for limit in STANDBY_LIMITS:
        assert str(limit.applies_from.year) in limit.words
        assert "compl" not in limit.words.lower()
        assert "fail" not in limit.words.lower()


@pytest.mark.parametrize(
    ("power_w", "kwh"), [(0.3, 2.628), (0.5, 4.38), (0.8, 7.008), (2, 17.52), (7, 61.32), (1, 8.76)]
)
def test_energy_of_a_year(power_w: float, kwh: float) -> None:
    # by definition: watts times 8760 h
    assert yearly_kwh(power_w) == pytest.approx(kwh, abs=1e-9)


def test_energy_of_a_leap_year() -> None:
    # by definition: 8784 h
    assert yearly_kwh(1, 8784) == pytest.approx(8.784, abs=1e-9)
