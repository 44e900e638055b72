"""The kind of a log is told from simulated machines and meters whose kind is known."""

from functools import lru_cache

import numpy as np
import pytest

from core.logs.sampling import judge
from core.logs.switchings import switchings
from tests.core.simulated import Control, MachineModel, MeterModel, Simulated, Task, simulate

TASKS = (
    Task("idle", 600),
    Task("part", 2400),
    Task("idle", 900),
    Task("part", 2400),
    Task("idle", 600),
)


@lru_cache(maxsize=64)
def simulated(control: Control, meter: MeterModel, seed: int) -> Simulated:
    return simulate(MachineModel(control=control), meter, TASKS, seed)


def kind_of(control: Control, meter: MeterModel, seed: int = 1) -> str:
    t = simulated(control, meter, seed).trace
    return judge(t.time_s, t.power_w, t.resolution_w, t.counter_wh).kind


@pytest.mark.parametrize("interval_s", [2.0, 5.0, 10.0, 30.0])
@pytest.mark.parametrize("control", ["thermostat", "slow pulses"])
def test_the_counter_tells_averaged_from_sampled(interval_s: float, control: Control) -> None:
    step = 0.1 if interval_s < 30 else 1.0
    averaging = MeterModel(interval_s=interval_s, averaging=True, counter_step_wh=step)
    sampling = MeterModel(interval_s=interval_s, counter_step_wh=step)
    assert kind_of(control, averaging) == "averaged"
    assert kind_of(control, sampling) == "sampled"


@pytest.mark.parametrize("interval_s", [5.0, 10.0])
def test_switchings_tell_without_a_counter(interval_s: float) -> None:
    for seed in (1, 2, 3):
        assert kind_of("thermostat", MeterModel(interval_s=interval_s, averaging=True), seed) == "averaged"
        assert kind_of("thermostat", MeterModel(interval_s=interval_s), seed) == "sampled"


@pytest.mark.parametrize("control", ["none", "thermostat", "slow pulses", "fast pulses"])
@pytest.mark.parametrize(("least_w", "heartbeat_s"), [(0.5, 30.0), (3.0, 60.0), (2.0, 300.0)])
def test_a_log_on_change_is_uneven_and_repeats_nothing(
    control: Control, least_w: float, heartbeat_s: float
) -> None:
    assert kind_of(control, MeterModel(on_change_w=least_w, heartbeat_s=heartbeat_s)) == "on_change"


@pytest.mark.parametrize("control", ["none", "thermostat", "slow pulses", "fast pulses"])
def test_a_log_on_change_without_a_sign_of_life_leaves_small_changes_out(control: Control) -> None:
    meter = MeterModel(on_change_w=1.0, heartbeat_s=1e9)
    t = simulated(control, meter, 2).trace
    assert judge(t.time_s, t.power_w, t.resolution_w).kind == "on_change"


@pytest.mark.parametrize("noise_w", [0.02, 0.3, 3.0])
@pytest.mark.parametrize("resolution_w", [0.001, 0.1])
def test_noise_has_no_floor_however_fine_the_display(noise_w: float, resolution_w: float) -> None:
    rng = np.random.default_rng(4)
    kept = np.flatnonzero(rng.random(3000) > 0.05)
    level = np.where(np.arange(3000) // 30 % 3 == 0, 300.0, 60.0)
    power_w = np.round((level + rng.normal(0, noise_w, 3000)) / resolution_w) * resolution_w
    assert judge(kept * 2.0, power_w[kept], resolution_w).kind == "sampled"


@pytest.mark.parametrize("share", [0.01, 0.05])
def test_lost_rows_do_not_make_a_log_on_change(share: float) -> None:
    t = simulated("thermostat", MeterModel(interval_s=2.0), 1).trace
    kept = np.random.default_rng(7).random(t.time_s.size) >= share
    assert judge(t.time_s[kept], t.power_w[kept], t.resolution_w).kind == "sampled"


def _unlike(seed: int) -> tuple[MachineModel, MeterModel]:
    """A machine and a meter unlike all others."""
    rng = np.random.default_rng(seed)
    controls: tuple[Control, ...] = ("thermostat", "slow pulses", "fast pulses", "none")
    machine = MachineModel(
        control=controls[seed % 4],
        bed_w=float(rng.uniform(120, 700)),
        hot_end_pulses=bool(rng.random() < 0.4),
        hysteresis_k=float(rng.uniform(0.2, 1.5)),
        pulse_s=float(rng.choice([4.0, 6.0, 10.0, 20.0])),
    )
    meter = MeterModel(
        interval_s=float(rng.choice([3.0, 5.0, 10.0, 20.0, 60.0])),
        averaging=seed % 8 < 4,
        resolution_w=float(rng.choice([0.1, 1.0])),
        noise_w=float(rng.uniform(0.03, 0.8)),
        counter_step_wh=float(rng.choice([0.0, 1.0, 10.0])),
    )
    return machine, meter


def test_logs_of_unlike_machines_are_told_right_or_said_to_be_doubtful() -> None:
    sure = wrong = 0
    for seed in range(300, 348):
        machine, meter = _unlike(seed)
        t = simulate(machine, meter, TASKS, seed).trace
        judged = judge(t.time_s, t.power_w, t.resolution_w, t.counter_wh)
        is_right = judged.kind == ("averaged" if meter.averaging else "sampled")
        sure += judged.is_sure
        wrong += judged.is_sure and not is_right
        if not judged.is_sure and judged.kind == "sampled":
            assert "hardly any" in judged.reason or "less certain" in judged.reason
    assert sure >= 24
    assert wrong <= 0.1 * sure


def test_a_log_at_rest_is_taken_as_sampled_and_says_that_it_cannot_tell() -> None:
    time_s = np.arange(500) * 10.0
    judged = judge(time_s, np.full(500, 6.0), 0.1)
    assert judged.kind == "sampled"
    assert not judged.is_sure


def test_switchings_are_counted_by_what_lies_between() -> None:
    clean = np.tile([5.0, 5.0, 5.0, 100.0, 100.0, 100.0], 20)
    mixed = np.tile([5.0, 5.0, 5.0, 40.0, 100.0, 100.0, 100.0, 70.0], 20)
    assert switchings(clean, 0.1).lone_mixed == 0
    assert switchings(clean, 0.1).lone == 39
    assert switchings(mixed, 0.1).lone_mixed == switchings(mixed, 0.1).lone >= 30


def in_step(kind: str, pulse_s: float, seed: int = 4) -> np.ndarray:
    """Values each 10 s of a heater whose pulses nearly keep step with them, between rests of 15 minutes."""
    rng = np.random.default_rng(seed)
    time_s = np.arange(0, 4 * 3600.0, 0.25)
    in_run = (time_s % 3000.0 > 900.0 + 3.0 * (time_s // 3000.0)) & (time_s < 12_000.0)
    motion_w = 3 * np.sin(time_s / 0.7) * np.sin(time_s / 5.3)
    heater_w = 300.0 * ((time_s % pulse_s) < 0.4 * pulse_s)
    power_w = np.where(in_run, 60 + motion_w + heater_w, 7.0)
    total_ws = np.r_[0.0, np.cumsum(power_w) * 0.25]
    at = np.arange(11.3, time_s[-1], 10.0)
    window_s = 1.0 if kind == "sampled" else 10.0

    def until(moment_s: np.ndarray) -> np.ndarray:
        return np.interp(moment_s, np.arange(total_ws.size) * 0.25, total_ws)

    mean_w = (until(at) - until(at - window_s)) / window_s
    return np.round(mean_w + 0.1 * rng.normal(size=at.size), 1)


@pytest.mark.parametrize("pulse_s", [9.85, 10.12, 20.3])
def test_pulses_in_step_with_the_rows_do_not_look_like_means(pulse_s: float) -> None:
    power_w = in_step("sampled", pulse_s)
    assert judge(np.arange(power_w.size) * 10.0, power_w, 0.1).kind == "sampled"


@pytest.mark.parametrize("kind", ["averaged", "sampled"])
def test_edges_of_rests_tell_means_where_the_load_has_no_levels(kind: str) -> None:
    power_w = in_step(kind, 1.0)
    told = judge(np.arange(power_w.size) * 10.0, power_w, 0.1)
    assert told.kind == kind
    assert "after a rest" in str(told.reason)
