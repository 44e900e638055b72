"""A meter that reads 3 % high, held against a good one: all watts made of its logs come out right."""

from collections.abc import Mapping

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.beds.quantities import HELD_W
from core.found.held_bed import held_bed
from core.found.loads import load_found
from core.loads.same_load import Calibration
from core.results.checked_logs import checked_log, checked_logs, checked_meter
from core.results.checked_meters import calibration
from core.results.compare import compare
from core.results.holds import beds
from core.results.loads import loads
from core.results.runs import seen
from core.results.standby import best_standby
from core.study import LoadCheck, Meter, Study
from core.traces import Trace
from tests.core.held_beds import Bed
from tests.core.hold_studies import held_study
from tests.core.stairs import staircase, study_with

HIGH = 1.03


def high(traces: Mapping[str, Trace]) -> dict[str, Trace]:
    """The traces as a meter writes them that reads 3 % high."""
    return {
        key: evolve(
            trace,
            key=f"{trace.key} high",
            power_w=trace.power_w * HIGH,
            counter_wh=None if trace.counter_wh is None else trace.counter_wh * HIGH,
        )
        for key, trace in traces.items()
    }


def checked(study: Study) -> Study:
    """The study whose meter, stated to 3 %, was held against one that is good to 0.1 %."""
    meter = evolve(study.meters[0], gain_percent=3.0, offset_w=0.1, stated=True)
    good = Meter("good", "good meter", 0.1, 0.0)
    check = LoadCheck("c", meter.id, "good", 1000.0 * HIGH, 1000.0, "W", 0.1, 0.1)
    return evolve(study, meters=(meter, good, *study.meters[1:]), checks=(check,))


def stated(study: Study) -> Study:
    """The same with no check made."""
    return evolve(checked(study), checks=())


def test_standby_is_corrected_and_narrowed() -> None:
    rng = np.random.default_rng(2)
    power_w = np.round((20 + 0.1 * rng.standard_normal(1440)) * HIGH, 2)
    rest = Trace.of(np.arange(1440) * 5.0, power_w, resolution_w=0.01)
    meter, good = Meter("m", "meter", 3.0, 0.0), Meter("good", "good meter", 0.1, 0.0)
    check = LoadCheck("c", "m", "good", 1000.0 * HIGH, 1000.0, "W", 0.1, 0.1)
    known = calibration((meter, good), (check,))
    plain, better = best_standby([(seen(rest), meter)]), best_standby([(seen(rest), meter)], known)
    assert plain is not None
    assert better is not None
    assert plain[0].power_w == pytest.approx(20 * HIGH, rel=0.002)
    assert better[0].power_w == pytest.approx(20, rel=0.002)
    assert better[0].u95_w is not None
    assert plain[0].u95_w is not None
    assert abs(better[0].power_w - 20) <= better[0].u95_w < plain[0].u95_w / 2


def test_a_held_bed_is_corrected_and_narrowed_and_says_so() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))])
    (true,) = beds(stated(study), traces).machines
    told = high(traces)
    (plain,) = beds(stated(study), told).machines
    (better,) = (found := beds(checked(study), told)).machines
    assert true.reference is not None
    assert plain.reference is not None
    assert better.reference is not None
    assert plain.reference.power_w == pytest.approx(true.reference.power_w * HIGH, rel=0.002)
    assert better.reference.power_w == pytest.approx(true.reference.power_w, rel=0.002)
    assert better.reference.u95_w < plain.reference.u95_w
    how = held_bed(found, checked(study), better.machine_id, HELD_W.key)
    assert how is not None
    assert any("same-load check" in line for line in how.method)


def test_loads_are_corrected_and_narrowed_and_say_so() -> None:
    study, traces = study_with(staircase([40.0, -40.0]))
    told = high(traces)
    steps = loads(study, told).machines[0].steps
    study = edits.name_step(study, steps[0].log_id, steps[0].at_s, "lamp").study
    (plain,), (better,) = loads(stated(study), told).machines, (found := loads(checked(study), told)).machines
    before, after = plain.of("lamp"), better.of("lamp")
    assert before is not None
    assert after is not None
    assert before.watts == pytest.approx(40 * HIGH, abs=0.05)
    assert after.watts == pytest.approx(40, abs=0.05)
    assert after.u95_w < before.u95_w / 2
    how = load_found(found, checked(study), better.machine_id, "lamp")
    assert how is not None
    assert any("same-load check" in line for line in how.method)
    assert how.budget
    assert sum(line.share_of_variance for line in how.budget) == pytest.approx(1)


def test_the_comparison_shows_the_corrected_standby() -> None:
    time = np.arange(1440) * 5.0
    study, _ = study_with(staircase([40.0, -40.0]))
    log_id = study.logs[0].id
    traces = {log_id: Trace.of(time, np.full(1440, 5.0) * HIGH, resolution_w=0.01)}
    standby_w = compare(checked(study), traces).machines[0].standby_w
    assert standby_w is not None
    assert standby_w.value == pytest.approx(5.0, rel=0.001)


def test_nothing_is_touched_without_a_check() -> None:
    study, traces = study_with(staircase([4.0, -4.0]))
    assert checked_logs(study, traces) == (study, traces)
    assert checked_logs(study, traces)[0] is study
    meter, log = study.meters[0], seen(next(iter(traces.values())))
    assert checked_log(log, meter, None) == (log, meter)
    assert checked_log(log, meter, Calibration()) == (log, meter)
    assert checked_meter(study, meter.id) is meter


def test_a_meter_in_no_check_keeps_its_log() -> None:
    study, traces = study_with(staircase([4.0, -4.0]))
    other = Meter("far", "another meter")
    with_other = checked(evolve(study, meters=(other, *study.meters)))
    seen_by, _ = checked_logs(with_other, traces)
    assert seen_by.meter(study.logs[0].meter_id) == study.meters[0]


def test_the_log_as_read_stays_as_it_was() -> None:
    study, traces = study_with(staircase([4.0, -4.0]))
    before = {key: trace.power_w.copy() for key, trace in traces.items()}
    _, corrected = checked_logs(checked(study), traces)
    for key, trace in traces.items():
        assert np.array_equal(trace.power_w, before[key])
        assert corrected[key].key != trace.key
        assert corrected[key].power_w == pytest.approx(trace.power_w / HIGH, rel=1e-3)
