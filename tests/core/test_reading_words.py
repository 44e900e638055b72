"""What the Reading panel says and offers, as values."""

import numpy as np
import pytest

from core.logs.facts import changes, facts, refused_lines
from core.logs.reading import Column, Reading, Refused
from core.logs.reading_options import OPTIONS, chosen, with_choice
from core.problems import Problem
from core.study import Choices
from core.traces import Clock, Trace


def reading(**changes):
    time_s = np.concatenate((np.arange(0.0, 100.0, 2.0), np.arange(400.0, 500.0, 2.0)))
    trace = Trace.of(time_s, np.full(time_s.size, 36.0), clock=Clock("local", 1_772_438_400.0))
    given = {
        "file": "alder.csv",
        "machine": "alder",
        "device": None,
        "encoding": "utf-8",
        "delimiter": ";",
        "decimal": ",",
        "header_row": 1,
        "rows_read": 12345,
        "rows_refused": 0,
        "columns": (Column("Zeit", "time", ""), Column("Leistung", "power", "W")),
        "trace": trace,
    }
    return Reading(**{**given, **changes})


def said(read):
    return {fact.name: fact for fact in facts(read)}


def test_rows_span_step_and_gaps_are_told():
    told = said(reading())
    assert told["Rows"].text == "12 345 read"
    assert told["From"].text == "2 Mar 2026 08:00:00 to 2 Mar 2026 08:08:18, 8 min 18 s"
    assert told["Step"].text == "2.0 s between rows (95 % under 2.0 s)"
    assert told["Gaps"].text == "5 min 2 s from 2 Mar 2026 08:01:38"
    assert told["Gaps"].role == "caution"


def test_the_counter_is_held_against_the_power():
    told = said(reading(energy_by_power_wh=101.0, energy_by_counter_wh=100.0))
    assert told["Energy"].text == "100.0 Wh by the counter, 101.0 Wh by the power column (+1.00 %)"
    assert "Energy" not in said(reading(energy_by_power_wh=101.0))


def test_refused_rows_are_written_with_number_text_and_reason_and_the_rest_is_counted():
    refused = tuple(Refused(i, "x" * 200, Problem("made.up")) for i in range(3, 30))
    lines = refused_lines(reading(refused=refused, rows_refused=500)).splitlines()
    assert lines[0].startswith("row 3: 'xxx")
    assert len(lines[0]) < 120
    assert lines[-1] == "and 488 more rows"
    assert said(reading(rows_refused=500))["Rows"].role == "caution"
    assert refused_lines(reading()) == ""


def test_every_option_says_what_was_found_and_takes_every_choice_it_offers():
    found = {option.name: option.found(reading()) for option in OPTIONS}
    assert found["decimal"] == "comma, as in 12,5"
    assert found["delimiter"] == "semicolon"
    assert found["zone"] == "local, no zone stated"
    assert found["sampling"] == "the instant"
    for option in OPTIONS:
        for _, value in option.entries:
            choices = with_choice(Choices(), option.name, value)
            assert chosen(choices, option.name) == value
            assert with_choice(choices, option.name, None) == Choices()


@pytest.mark.parametrize(
    ("offset_s", "words"), [(3600.0, "UTC+01:00"), (-12600.0, "UTC-03:30"), (0.0, "UTC+00:00")]
)
def test_an_offset_is_written_as_in_a_stamp(offset_s, words):
    clock = Clock("absolute", 0.0, offset_s=offset_s)
    zone = next(option for option in OPTIONS if option.name == "zone")
    assert zone.found(reading(trace=Trace.of([0, 1], [1, 1], clock=clock))) == words


def test_a_choice_that_is_none_is_the_callers_mistake():
    with pytest.raises(ValueError, match="colour"):
        with_choice(Choices(), "colour", "red")


def test_what_a_choice_changes_is_told_from_and_to():
    before = reading(energy_used_wh=91.81)
    assert changes(before, before) == ()
    after = reading(energy_used_wh=91.82, rows_read=12346)
    assert [(c.name, c.text) for c in changes(before, after)] == [
        ("Rows", "12 345 read → 12 346 read"),
        ("Energy", "91.81 Wh → 91.82 Wh"),
    ]
    assert {c.name for c in changes(before, reading(trace=None))} == {
        "Start",
        "End",
        "Energy",
        "Most",
        "Gaps",
    }
