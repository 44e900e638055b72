"""Simulated hold tests of a bed whose loss is known: a thermostat or fast pulses, gusts, a meter's noise."""

import numpy as np
from attrs import frozen

from core.traces import F64, Trace

STEP_S = 1.0
BEFORE_S = 600
GUST_S = 20.0


@frozen
class Bed:
    """Loss ``intercept + slope d`` [W], heat capacity [J/K], heater [W], what else the machine draws [W]."""

    intercept_w: float = -4.0
    slope_w_per_k: float = 1.35
    capacity_j_per_k: float = 420.0
    heater_w: float = 220.0
    base_w: float = 6.0
    band_k: float = 0.4
    fast: bool = False

    def loss_w(self, difference_k: F64) -> F64:
        """Straight above 15 K, and to nothing in proportion below."""
        at_15 = self.intercept_w + 15 * self.slope_w_per_k
        straight = self.intercept_w + self.slope_w_per_k * difference_k
        return np.where(difference_k > 15, straight, at_15 * difference_k / 15)


def simulated(
    bed: Bed, differences_k: F64, seconds: int, seed: int, every: int = 2, gust: float = 0.06
) -> tuple[list[Trace], F64, F64]:
    """Hold tests from cold, one for each difference from the room.

    Returns
    -------
    traces, mean differences of the last half [K], energies of the warm-ups [Wh]
    """
    rng = np.random.default_rng(seed)
    count = differences_k.size
    now_k, breeze, on = np.zeros(count), np.zeros(count), np.ones(count, dtype=bool)
    phase = rng.uniform(0, 1, count)
    power = np.full((BEFORE_S + seconds, count), bed.base_w)
    temperature = np.zeros((seconds, count))
    warm_wh, reached = np.zeros(count), np.zeros(count, dtype=bool)
    band = bed.band_k * rng.uniform(0.85, 1.15, count)
    for i in range(seconds):
        if bed.fast:
            duty = bed.loss_w(differences_k) / bed.heater_w + 0.5 * (differences_k - now_k)
            heat = bed.heater_w * np.clip(duty, 0, 1)
        else:
            on = np.where(
                now_k < differences_k - band, True, np.where(now_k > differences_k + band, False, on)
            )
            heat = bed.heater_w * on
        breeze += -breeze / GUST_S + gust * np.sqrt(2 / GUST_S) * rng.normal(size=count)
        now_k = now_k + (heat - bed.loss_w(now_k) * (1 + breeze)) * STEP_S / bed.capacity_j_per_k
        warm_wh += np.where(reached, 0.0, heat) * STEP_S / 3600
        reached |= now_k >= differences_k + (0 if bed.fast else band)
        power[BEFORE_S + i] += heat
        temperature[i] = now_k
    power += rng.normal(0, 0.15, power.shape)
    starts = (phase * every).astype(int)
    traces = []
    for j in range(count):
        rows = np.arange(starts[j], power.shape[0], every)
        key = f"{bed} {differences_k[j]} {seed} {j} {every}"
        traces.append(Trace.of(rows * STEP_S, np.round(power[rows, j], 1), key=key))
    return traces, temperature[seconds // 2 :].mean(axis=0), warm_wh
