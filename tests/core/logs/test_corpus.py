"""Every shape of log that the corpus writes is read back as the truth it was written from."""

import numpy as np
import pytest

from core.logs import Reading, read_bytes
from tests.core.logs import (
    shapes_from_life,
    shapes_of_clocks,
    shapes_of_columns,
    shapes_of_columns_apart,
    shapes_of_decimal_commas,
    shapes_of_files,
    shapes_of_further_words,
    shapes_of_half_days,
    shapes_of_objects,
    shapes_of_odd_logs,
    shapes_of_odd_spelling,
    shapes_of_pairs,
    shapes_of_records,
    shapes_of_split_stamps,
    shapes_of_text,
    shapes_of_written_dates,
    shapes_once_misread,
    shapes_seldom_met,
    shapes_side_by_side,
)
from tests.core.logs.corpus import Case, Machine

CASES = [
    *shapes_of_text.cases(),
    *shapes_of_clocks.cases(),
    *shapes_of_columns.cases(),
    *shapes_of_files.cases(),
    *shapes_of_objects.cases(),
    *shapes_of_decimal_commas.cases(),
    *shapes_of_pairs.cases(),
    *shapes_of_split_stamps.cases(),
    *shapes_of_odd_logs.cases(),
    *shapes_from_life.cases(),
    *shapes_of_columns_apart.cases(),
    *shapes_side_by_side.cases(),
    *shapes_seldom_met.cases(),
    *shapes_once_misread.cases(),
    *shapes_of_records.cases(),
    *shapes_of_half_days.cases(),
    *shapes_of_written_dates.cases(),
    *shapes_of_odd_spelling.cases(),
    *shapes_of_further_words.cases(),
]


def test_the_corpus_is_large_enough():
    assert len(CASES) >= 80
    assert len({c.name for c in CASES}) == len(CASES)


def test_words_are_spelt_as_headings_are_compared_with_them():
    assert shapes_of_further_words.are_plain()


@pytest.mark.parametrize("case", CASES, ids=lambda c: c.name)
def test_log_is_read_as_it_was_written(case: Case) -> None:
    found = read_bytes(case.data, case.file)
    assert found.readings, [(p.code, dict(p.facts)) for p in found.problems]
    assert len(found.readings) == len(case.machines)
    for machine in case.machines:
        reading = next(r for r in found.readings if machine.name in (None, r.machine))
        _check(case, machine, reading)


def _check(case: Case, machine: Machine, reading: Reading) -> None:
    trace = reading.trace
    assert trace is not None
    told = reading.reasons
    assert trace.clock.kind == case.clock, told
    start = trace.clock.iso(0.0)
    assert (start if start is None else start[: len(case.start or "")]) == case.start, told
    expected = machine.load.time_s - machine.load.time_s[0]
    assert trace.time_s.shape == expected.shape, (told, reading.rows_refused, reading.problems)
    assert np.abs(trace.time_s - expected).max() <= machine.time_within, told
    assert np.abs(trace.power_w - machine.load.power_w).max() <= machine.power_within, told
    assert (trace.counter_wh is not None) == machine.has_counter
    if trace.counter_wh is not None:
        known = np.isfinite(trace.counter_wh)
        gained = trace.counter_wh[known] - trace.counter_wh[known][0]
        wanted = machine.load.counter_wh[known] - machine.load.counter_wh[known][0]
        assert known.mean() > 0.99
        assert np.abs(gained - wanted).max() <= machine.counter_within
    assert reading.rows_refused == case.refused, reading.refused
    codes = {p.code for p in reading.problems}
    assert set(case.problems) <= codes
    for name, value in case.reading.items():
        assert getattr(reading, name) == value
