"""One pass over columns finds what a pass for each of them finds."""

import numpy as np
import pytest

from core.logs import survey as surveying
from core.logs.survey import survey


def columns(rows: int) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    rng = np.random.default_rng(rows)
    seconds = 1.7e9 + np.cumsum(rng.uniform(0.5, 2.0, rows))
    return seconds, rng.uniform(-5.0, 300.0, rows), np.cumsum(rng.uniform(0.0, 0.1, rows))


@pytest.mark.parametrize("rows", [2, 3, 64, 65, 129, 1000])
@pytest.mark.parametrize("threads", [1, 3])
def test_stretches_and_threads_make_no_difference(
    rows: int, threads: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(surveying, "STRETCH", 64)
    monkeypatch.setattr(surveying, "PARSERS", threads)
    monkeypatch.setattr(surveying, "_SHARED_ROWS", 1)
    seconds, values, counter = columns(rows)
    found = survey(seconds, values, counter)
    steps, gains = np.diff(seconds), np.diff(counter)
    assert (found.shortest_s, found.longest_s) == (steps.min(), steps.max())
    assert (found.lowest, found.highest) == (values.min(), values.max())
    assert (found.least_gain, found.most_gain) == (gains.min(), gains.max())
    assert found.by_first == pytest.approx(float(values[:-1] @ steps), rel=1e-12)
    assert found.by_last == pytest.approx(float(values[1:] @ steps), rel=1e-12)
    assert found.is_whole
    assert found.largest == np.abs(values).max()


@pytest.mark.parametrize("bad", [np.nan, np.inf, -np.inf])
@pytest.mark.parametrize("at", [0, 63, 64, 99])
def test_what_is_missing_is_never_lost_among_the_stretches(
    bad: float, at: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(surveying, "STRETCH", 64)
    for column in range(2):
        both = list(columns(100))
        both[column][at] = bad
        assert not survey(*both).is_whole
    seconds, values, counter = columns(100)
    counter[at] = bad
    found = survey(seconds, values, counter)
    assert not np.isfinite((found.least_gain, found.most_gain)).all()


def test_no_rows_and_one_row_are_surveyed_too() -> None:
    empty = np.zeros(0)
    assert not survey(empty, empty).is_whole
    one = survey(np.array([5.0]), np.array([7.0]), np.array([1.0]))
    assert (one.lowest, one.highest, one.by_first) == (7.0, 7.0, 0.0)
