"""At which temperatures a stretch was made, and who says so."""

import numpy as np
import pytest
from attrs import evolve

from core.formatting import NumberLocale
from core.results.runs import seen
from core.results.temperatures import Temperature, temperatures
from core.study import Log, Machine, Meter, Run, Source, Study
from core.traces import Trace

RUN = Run("r1", "g1", found_start_s=600.0, found_end_s=4200.0)


def study(run: Run = RUN, **more: object) -> Study:
    log = Log("g1", "a1", "m1", (Source("0", "a.csv"),))
    return Study(
        "s", machines=(Machine("a1", "Alder", 0),), meters=(Meter("m1", "Meter"),), logs=(log,), runs=(run,),
        **more,  # type: ignore[arg-type]  # fields of Study
    )  # fmt: skip


def trace(bed_c: float | None, room_c: float | None = None) -> Trace:
    time_s = np.arange(0.0, 4800.0, 10.0)
    logged = {
        place: np.where(time_s < 900, 25.0, value)
        for place, value in (("bed", bed_c), ("room", room_c))
        if value is not None
    }
    power = np.where((time_s >= 600) & (time_s < 4200), 120.0, 5.0)
    return Trace.of(time_s, power, key=f"{bed_c} {room_c}", temperatures_c=logged)


def test_nobody_knows() -> None:
    bed, room = temperatures(study(), RUN, None, None)
    assert bed == room == Temperature(None)
    assert bed.found_words() == "not known"


def test_the_log_goes_before_the_test() -> None:
    bed, room = temperatures(study(bed_c=70.0, room_c=21.5), RUN, seen(trace(60.0)), None)
    assert bed == Temperature(None, (60.0,), "log")
    assert room == Temperature(None, (21.5,), "test")
    assert room.found_words(NumberLocale(",")) == "21,5 of the test"


def test_what_was_noted_stands_beside_what_was_found() -> None:
    run = evolve(RUN, bed_c=61.0)
    bed, _ = temperatures(study(run), run, seen(trace(60.0)), None)
    assert (bed.noted_c, bed.found_c, bed.can_be_noted) == (61.0, (60.0,), True)


def test_a_hold_test_in_steps_is_told_by_its_log() -> None:
    time_s = np.arange(0.0, 12_000.0, 5.0)
    bed_c = np.where(time_s < 6000, 50.0, 80.0)
    power = np.where(time_s < 6000, 40.0, 90.0) + np.where(np.arange(time_s.size) % 12 < 4, 30.0, 0.0)
    log = seen(Trace.of(time_s, power, key="steps", temperatures_c={"bed": bed_c}))
    run = Run("r1", "g1", found_start_s=0.0, found_end_s=12_000.0, found_kind="hold test", bed_c=65.0)
    bed, _ = temperatures(study(run), run, log, None)
    assert not bed.can_be_noted
    assert bed.noted_c is None
    assert bed.found_c == pytest.approx((50.0, 80.0))
    assert bed.found_words() == "50 and 80 by the log"
