"""Same-load checks of meters: they correct what differs and narrow it, and know what they do not tell."""

import math

import numpy as np
import pytest

from core.loads.same_load import SameLoad, calibrate, corrected, reading_u_relative
from core.results.values import Energy, Influence
from core.study import Meter
from core.uncertainty import mean_of, ratio, u95_of

GAIN = 0.01 / math.sqrt(3)
A, B, C = Meter("a", "meter a"), Meter("b", "meter b"), Meter("c", "meter c")


def run(value_wh: float, meter: Meter) -> Energy:
    gain = Influence("meter gain", value_wh * GAIN, f"gain:{meter.id}")
    return Energy(value_wh, (gain, Influence("sampling", 0.1)), "power")


def test_without_a_check_nothing_changes() -> None:
    calibration = calibrate([A, B], [])
    assert corrected(run(100.0, A), A, calibration) == run(100.0, A)
    assert calibration.u_relative("a") == pytest.approx(GAIN)


def test_a_check_brings_two_meters_together() -> None:
    # b reads 1.2 % more than a of one load: two machines that use the same must come out the same
    calibration = calibrate([A, B], [SameLoad("a", "b", 1000.0, 1012.0, 1e-4)])
    plain = ratio(mean_of([run(100.0, A)]), mean_of([run(101.2, B)]))
    a, b = corrected(run(100.0, A), A, calibration), corrected(run(101.2, B), B, calibration)
    told = ratio(mean_of([a]), mean_of([b]))
    assert told.value == pytest.approx(1.0, abs=5e-4)
    assert told.u < 0.25 * plain.u
    assert told.u_shared == pytest.approx(1e-4, rel=0.1)


def test_a_check_tells_little_of_what_both_are_off_by() -> None:
    calibration = calibrate([A, B], [SameLoad("a", "b", 1000.0, 1000.0, 1e-4)])
    # half of the variance of a gain is the meters' common part, of which the check knows nothing
    assert calibration.u_relative("a") == pytest.approx(GAIN / math.sqrt(2), rel=1e-3)
    assert u95_of(corrected(run(100.0, A), A, calibration)) > 0.6 * u95_of(run(100.0, A))


def test_a_meter_in_no_check_keeps_its_accuracy() -> None:
    calibration = calibrate([A, B, C], [SameLoad("a", "b", 1000.0, 1005.0, 1e-4)])
    assert corrected(run(100.0, C), C, calibration) == run(100.0, C)


def test_checks_chain() -> None:
    checks = [SameLoad("a", "b", 1000.0, 1004.0, 1e-4), SameLoad("b", "c", 1004.0, 1008.0, 1e-4)]
    calibration = calibrate([A, B, C], checks)
    a, c = corrected(run(100.0, A), A, calibration), corrected(run(100.8, C), C, calibration)
    told = ratio(mean_of([a]), mean_of([c]))
    assert told.value == pytest.approx(1.0, abs=5e-4)
    assert told.u_shared == pytest.approx(1e-4 * math.sqrt(2), rel=0.1)


def test_a_poor_check_tells_nothing() -> None:
    calibration = calibrate([A, B], [SameLoad("a", "b", 10.0, 10.5, 0.5)])
    assert abs(calibration.errors["a"]) < 1e-4
    assert calibration.u_relative("a") == pytest.approx(GAIN, rel=1e-3)


def test_it_covers() -> None:
    rng = np.random.default_rng(14)
    hits = 0
    for _ in range(300):
        gains = 1 + rng.uniform(-0.01, 0.01, 2)
        u = reading_u_relative(2000.0, 2000.0, 1.0, 1.0)
        check = SameLoad("a", "b", 2000 * gains[0] * (1 + rng.normal(0, u)), 2000 * gains[1], u)
        calibration = calibrate([A, B], [check])
        a = corrected(run(100.0 * gains[0], A), A, calibration)
        b = corrected(run(80.0 * gains[1], B), B, calibration)
        told = ratio(mean_of([a]), mean_of([b]))
        hits += told.low <= 1.25 <= told.high
    assert hits / 300 >= 0.93


def test_readings_must_be_positive() -> None:
    with pytest.raises(ValueError, match="two positive readings"):
        calibrate([A, B], [SameLoad("a", "b", 0.0, 1.0, 0.01)])
