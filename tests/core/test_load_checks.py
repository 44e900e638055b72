import math

import numpy as np
import pytest

from core.load_checks import corrected, corrections, doubtful
from core.results.values import Energy, Influence
from core.study import LoadCheck, Meter
from core.uncertainty import mean_of, ratio, u95_of

ONE, OTHER, THIRD = (Meter(name, name, offset_w=0.0) for name in "abc")


def check(one: str, other: str, reading: float, other_reading: float, step: float = 0.0) -> LoadCheck:
    return LoadCheck("c", one, other, reading, other_reading, "W", step, step)


def used(energy_wh: float, meter: Meter) -> Energy:
    gain = Influence("meter gain", energy_wh * meter.gain_percent / 100 / math.sqrt(3), f"gain:{meter.id}")
    return Energy(energy_wh, (gain, Influence("sampling", 0.1)), "power")


def test_two_alike_meters_meet_in_the_middle() -> None:
    found = corrections((ONE, OTHER), (check("a", "b", 101, 100),))
    assert found["a"].factor * 101 == pytest.approx(found["b"].factor * 100)
    assert found["a"].factor == pytest.approx(math.sqrt(100 / 101))
    # neither is known better than the mean of two such meters
    assert found["a"].u == pytest.approx(0.01 / math.sqrt(3) / math.sqrt(2))


def test_a_better_meter_moves_less() -> None:
    good = Meter("a", "a", gain_percent=0.1, offset_w=0.0)
    found = corrections((good, OTHER), (check("a", "b", 101, 100),))
    assert abs(found["a"].factor - 1) < abs(found["b"].factor - 1) / 50
    assert found["b"].u == pytest.approx(0.001 / math.sqrt(3), rel=0.01)


def test_ratio_of_two_machines_is_corrected_and_narrowed() -> None:
    one, other = used(84.0, ONE), used(70.0, OTHER)
    bare = ratio(mean_of([one]), mean_of([other]))
    found = corrections((ONE, OTHER), (check("a", "b", 50.5, 50.0),))
    checked = ratio(mean_of([corrected(one, "a", found["a"])]), mean_of([corrected(other, "b", found["b"])]))
    assert checked.value == pytest.approx(bare.value / 1.01)
    # all that is left is the sampling: as on one meter
    assert checked.u == pytest.approx(checked.value * math.hypot(0.1 / 84, 0.1 / 70), rel=1e-2)
    assert checked.u < bare.u / 4


def test_a_coarse_check_narrows_little_and_never_widens() -> None:
    one, other = used(84.0, ONE), used(70.0, OTHER)
    bare = ratio(mean_of([one]), mean_of([other]))
    for step in (0.0, 0.5, 5.0, 50.0):
        found = corrections((ONE, OTHER), (check("a", "b", 51.0, 50.0, step),))
        checked = ratio(
            mean_of([corrected(one, "a", found["a"])]), mean_of([corrected(other, "b", found["b"])])
        )
        assert checked.u <= bare.u * 1.02
        assert u95_of(corrected(one, "a", found["a"])) <= u95_of(one) * 1.02
    # a check that says nothing corrects nothing
    assert checked.value == pytest.approx(bare.value, rel=1e-3)


def test_offsets_are_not_settled_by_one_load() -> None:
    meters = Meter("a", "a", 1.0, 0.3), Meter("b", "b", 1.0, 0.3)
    low = corrections(meters, (check("a", "b", 5.0, 5.0),))
    high = corrections(meters, (check("a", "b", 500.0, 500.0),))
    assert high["a"].u < low["a"].u
    wh = LoadCheck("c", "a", "b", 1000.0, 1000.0, "Wh", seconds=7200.0)
    assert corrections(meters, (wh,))["a"].u == pytest.approx(high["a"].u)


def test_a_chain_over_a_third_meter() -> None:
    checks = (check("a", "b", 102, 100), check("b", "c", 102, 100))
    found = corrections((ONE, OTHER, THIRD), checks)
    assert found["c"].factor / found["a"].factor == pytest.approx(1.02**2)
    outer = ratio(
        mean_of([corrected(used(84, ONE), "a", found["a"])]),
        mean_of([corrected(used(70, THIRD), "c", found["c"])]),
    )
    assert outer.value == pytest.approx(1.2 / 1.02**2)
    assert outer.u_shared == pytest.approx(0, abs=1e-9)


def test_the_interval_of_a_checked_ratio_holds_the_truth() -> None:
    """Meters drawn from their accuracy, a load read to a step: 95 of 100."""
    rng = np.random.default_rng(7)
    count, held = 1500, 0
    for _ in range(count):
        gains = 1 + rng.uniform(-0.01, 0.01, 2)
        load = 60.0
        readings = np.round(load * gains / 0.5) * 0.5
        found = corrections((ONE, OTHER), (check("a", "b", *readings.tolist(), 0.5),))
        energies = [84.0 * gains[0] + rng.normal(0, 0.1), 70.0 * gains[1] + rng.normal(0, 0.1)]
        both = ratio(
            mean_of([corrected(used(energies[0], ONE), "a", found["a"])]),
            mean_of([corrected(used(energies[1], OTHER), "b", found["b"])]),
        )
        held += both.low <= 1.2 <= both.high
    assert 0.935 <= held / count <= 0.975


def test_meters_that_differ_by_more_than_they_may() -> None:
    assert doubtful((ONE, OTHER), (check("a", "b", 101, 100),)) == ()
    (found,) = doubtful((ONE, OTHER), (check("a", "b", 105, 100),))
    assert found.difference == pytest.approx(math.log(1.05))
    assert found.limit < found.difference


def test_nothing_to_correct() -> None:
    assert corrections((ONE, OTHER), ()) == {}
    assert corrections((ONE,), (check("a", "gone", 1, 1),)) == {}
    assert doubtful((ONE,), (check("a", "gone", 1, 2),)) == ()
    exact = Meter("a", "a", 0.0, 0.0), Meter("b", "b", 0.0, 0.0)
    assert corrections(exact, (check("a", "b", 101, 100),))["a"].factor == 1
