"""What the user chooses is followed, and every choice comes with its reason."""

import pickle
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
import pytest

from core.logs import FileReading, read_bytes, read_path
from core.study import Choices
from tests.core.logs.corpus import Writer, load, moment, plain, table

TRUTH = load()


def reading(text: str | bytes, **chosen: object) -> FileReading:
    data = text if isinstance(text, bytes) else text.encode()
    return read_bytes(data, "log.csv", Choices(**chosen))  # type: ignore[arg-type]


def start(found: FileReading) -> str | None:
    trace = found.readings[0].trace
    assert trace is not None
    return trace.clock.iso(0.0)


def test_order_of_day_and_month() -> None:
    text = plain(TRUTH, form="%d/%m/%Y %H:%M:%S").replace("23/06/2025", "05/06/2025")
    doubtful = reading(text)
    assert start(doubtful) == "2025-06-05T09:36:00"
    assert "log.date_order_doubtful" in {p.code for p in doubtful.readings[0].problems}
    chosen = reading(text, date_order="mdy")
    assert start(chosen) == "2025-05-06T09:36:00"
    assert "log.date_order_doubtful" not in {p.code for p in chosen.readings[0].problems}


def test_even_steps_decide_between_day_and_month() -> None:
    w = Writer(load(rows=300, step_s=3600.0), form="%m/%d/%Y %H:%M:%S")
    lines = table(w.truth, ("time", "W"), (w.time, w.watts)).replace("06/", "01/").replace("07/", "02/")
    first_days = "\n".join(x for x in lines.splitlines() if x.startswith(("time", "01/0", "02/0")))
    assert (start(reading(first_days)) or "").startswith("2025-0")


def test_zone_makes_a_wall_clock_absolute() -> None:
    found = reading(plain(TRUTH), zone="America/New_York")
    assert start(found) == "2025-06-23T09:36:00-04:00"
    wrong = reading(plain(TRUTH), zone="Moon/Base")
    assert "log.zone_unknown" in {p.code for p in wrong.readings[0].problems}


def test_zone_through_the_hour_that_happens_twice() -> None:
    rows = ["time,W"]
    for hour in ("00", "01", "02", "02", "03"):
        rows += [f"2025-10-26 {hour}:{m:02d}:00,{5 + m % 3}" for m in range(60)]
    trace = reading("\n".join(rows), zone="Europe/Berlin").readings[0].trace
    assert trace is not None
    np.testing.assert_allclose(np.diff(trace.time_s), 60.0)


@pytest.mark.parametrize(
    ("begin", "edge", "put_s"),
    [
        (moment(2025, 3, 30, 0, 30), moment(2025, 3, 30, 2), 3600),
        (moment(2025, 10, 26, 1, 30), moment(2025, 10, 26, 3), -3600),
    ],
)
def test_a_log_on_change_runs_on_through_summer_time(begin: datetime, edge: datetime, put_s: int) -> None:
    steps = np.random.default_rng(4).choice([1, 1, 2, 3, 7, 60], 900)
    time_s = np.cumsum(steps)
    rows = ["Zeit;W"]
    for i, t in enumerate(time_s.tolist()):
        at = begin + timedelta(seconds=t)
        at = at + timedelta(seconds=put_s) if at >= edge else at
        rows.append(f"{at:%d.%m.%Y %H:%M:%S};{5 + i % 9},0")
    trace = reading("\n".join(rows)).readings[0].trace
    assert trace is not None
    np.testing.assert_allclose(trace.time_s, time_s - time_s[0])
    assert [by for _, by in trace.clock.shifts] == [put_s]


def test_sampling() -> None:
    found = reading(plain(TRUTH), sampling="averaged")
    assert found.readings[0].trace is not None
    assert found.readings[0].trace.kind == "averaged"
    assert ("sampling", "chosen by hand") in found.readings[0].reasons


def test_delimiter_decimal_and_headings() -> None:
    text = plain(TRUTH, delimiter=";", decimal=",", form="%d.%m.%Y %H:%M:%S")
    found = reading("a;b;c\n" + text, delimiter=";", decimal=",", header_row=2).readings[0]
    assert found.header_row == 2
    assert found.trace is not None
    np.testing.assert_allclose(found.trace.power_w, TRUTH.power_w)


def test_meaning_of_a_column() -> None:
    w = Writer(TRUTH)
    text = table(TRUTH, ("time", "a", "b"), (w.time, lambda i: f"{i % 7}", w.kilowatts))
    found = reading(text, columns=((2, "power", "kW"), (1, "other", ""))).readings[0]
    assert found.trace is not None
    np.testing.assert_allclose(found.trace.power_w, TRUTH.power_w, atol=0.06)
    assert [c.quantity for c in found.columns] == ["time", "other", "power"]


def test_a_second_time_column_can_be_set_aside() -> None:
    rows = "".join(f"{i * 10},{i % 7},{i * 9 + 4000},{i % 5}\n" for i in range(60))
    text = "time A s,power A W,time B s,power B W\n" + rows
    assert [r.device for r in reading(text).readings] == ["A", "B"]
    as_one_table = reading(text, columns=((2, "other", ""),)).readings
    assert len(as_one_table) == 2
    for one in as_one_table:
        assert one.trace is not None
        assert one.trace.end_s == 590.0


def test_a_power_of_a_log_at_the_side_can_be_chosen() -> None:
    rows = "".join(f"{i * 10},{i % 7},{i * 9 + 4000},{i % 5},{i % 3}\n" for i in range(60))
    text = "time A s,power A W,time B s,power B W,extra\n" + rows
    second = reading(text, columns=((3, "other", ""), (4, "power", "kW"))).readings[1]
    assert second.trace is not None
    np.testing.assert_allclose(second.trace.power_w, 1000.0 * (np.arange(60) % 3))
    assert [c.quantity for c in second.columns] == ["other", "other", "time", "other", "power"]


def test_encoding() -> None:
    data = plain(TRUTH, head=("Zeit", "Leistung [W]", "Zählerstand [kWh]")).encode("cp1252")
    found = reading(data, encoding="cp850").readings[0]
    assert found.encoding == "cp850"


@pytest.mark.parametrize(
    "choice", ["encoding", "delimiter", "decimal", "headings", "time", "clock", "layout", "sampling"]
)
def test_every_choice_has_a_reason(choice: str) -> None:
    reasons = dict(reading(plain(TRUTH)).readings[0].reasons)
    assert reasons[choice]
    if choice == "delimiter":
        assert reasons[choice] == "comma: 100 % of rows have the same count of 3 cells"


def test_key_tells_choices_and_devices_apart() -> None:
    keys = {
        reading(plain(TRUTH), **chosen).readings[0].trace.key  # type: ignore[union-attr]
        for chosen in ({}, {"sampling": "averaged"}, {"zone": "UTC"})
    }
    assert len(keys) == 3


def test_a_reading_can_be_sent_between_processes(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text(plain(TRUTH))
    found = read_path(path, shown_name="bench/log.csv")
    again = pickle.loads(pickle.dumps(found))
    assert again == found
    assert again.readings[0].file == "bench/log.csv"
    np.testing.assert_array_equal(again.readings[0].trace.power_w, TRUTH.power_w)


def test_columns_say_the_unit_that_was_inferred() -> None:
    w = Writer(TRUTH)
    text = table(TRUTH, ("time", "power", "energy"), (w.time, w.milliwatts, w.kwh))
    columns = {c.name: (c.quantity, c.unit) for c in reading(text).readings[0].columns}
    assert columns == {"time": ("time", ""), "power": ("power", "mW"), "energy": ("energy", "kWh")}


def test_two_digit_years_are_rather_recent() -> None:
    assert (
        start(reading(plain(TRUTH, form="%y-%m-%d %H:%M:%S").replace("25-06-23", "25-06-03")))
        == "2025-06-03T09:36:00"
    )
