"""Dates by weeks and by days of a year agree with the calendar of the standard library (ISO 8601)."""

from datetime import date, timedelta

import numpy as np
import pytest

from core.logs.stamps import midnight_of_day, midnight_of_week


@pytest.mark.parametrize("year", [1999, 2000, 2020, 2021, 2026, 2027])
def test_every_day_of_a_year(year: int) -> None:
    days = [
        date(year, 1, 1) + timedelta(days=k) for k in range((date(year + 1, 1, 1) - date(year, 1, 1)).days)
    ]
    wanted = np.array([(d - date(1970, 1, 1)).days for d in days]) * 86400.0
    weeks = np.array([tuple(d.isocalendar()) for d in days])
    np.testing.assert_array_equal(midnight_of_week(weeks[:, 0], weeks[:, 1], weeks[:, 2]), wanted)
    ordinals = np.arange(1, len(days) + 1)
    np.testing.assert_array_equal(midnight_of_day(np.full(len(days), year), ordinals), wanted)


def test_a_day_that_no_year_or_week_has_is_none() -> None:
    year = np.array([2025])
    assert np.isnan(midnight_of_day(year, np.array([366]))).all()
    assert np.isnan(midnight_of_day(year, np.array([0]))).all()
    assert np.isnan(midnight_of_week(year, np.array([54]), np.array([1]))).all()
    assert np.isnan(midnight_of_week(year, np.array([1]), np.array([8]))).all()
