"""Powers below zero: a meter the wrong way round, noise around nothing, or power that really flows back.

Theory. A machine draws power and gives none back, so a column whose energy is nearly all negative comes of a
meter (or its clamp) that is the wrong way round: its sign is turned. Noise of a meter at rest is small and
lies on both sides of zero; cutting it off would raise the mean, so it is kept. Anything else could be true,
and only a counter can tell: what it gains is held against the power with its signs, and without them.

Rules: every change is told aloud, and the user's choice wins.
"""

from typing import TypeGuard

import numpy as np
from attrs import frozen

from core.language import later, mark
from core.logs.magnitudes import gained, worked
from core.logs.reading import CHOSEN
from core.problems import Problem, Severity
from core.study import Negative
from core.traces import F64
from core.units import ENERGY_IN_WH, POWER_IN_W

#: less than this below zero is never spoken of [W]
_SILENT_W = 0.2
#: noise reaches no further below zero than this, or than this share of the highest power
_NOISE_W, _NOISE_SHARE = 2.0, 0.01
#: share of the energy, signs aside, that is negative in a column of the wrong sign
_REVERSED = 0.95
#: a counter agrees with a power when they are no further apart than this share, and disagrees from this on
_AGREES, _DISAGREES = 0.05, 0.12
#: part of a counter's steps that go down in one that runs backwards
_BACKWARDS = 0.8


@frozen
class Signed:
    """A power and a counter after the signs were settled; None for `power` where nothing was changed.

    ``is_counter_used`` is false where the counter counted nothing of what the power shows.
    """

    power: F64 | None = None
    counter: F64 | None = None
    is_counter_used: bool = True
    reason: str = ""
    problems: tuple[Problem, ...] = ()


def settle_signs(
    time_s: F64,
    power: F64,
    power_unit: str,
    counter: F64 | None,
    counter_unit: str,
    file: str,
    choice: Negative | None = None,
) -> Signed:
    """Decide what powers below zero are.

    Parameters
    ----------
    time_s : ndarray, shape (n,)
        Strictly increasing. [s]
    power : ndarray, shape (n,)
        As written, with at least one value below zero.
    power_unit, counter_unit : str
        As stated, ``""`` where not; then watts are assumed for the power.
    counter : ndarray, shape (n,), or None
        As written.
    file : str
        Name for problems.
    choice : {"keep", "turn", "size", "zero"}, optional
        What the user decided.
    """
    power_w = power * POWER_IN_W.get(power_unit, 1.0)
    lowest_w = float(power_w.min())
    below = power_w < 0
    facts: dict[str, object] = {"count": int(below.sum()), "lowest_w": float(f"{lowest_w:.3g}")}
    if choice is not None:
        return _as_chosen(power, counter, choice, facts, file)
    if lowest_w >= -_SILENT_W:
        return Signed()
    drawn, back = worked(time_s, np.maximum(power_w, 0.0)), worked(time_s, np.minimum(power_w, 0.0))
    share = -back / (drawn - back)
    if share >= _REVERSED and lowest_w < -_NOISE_W:
        return _turned(power, counter, share, file)
    if lowest_w >= -max(_NOISE_W, _NOISE_SHARE * float(power_w.max())):
        why = later(
            mark("as written: {count} rows are at most {watts} W below zero, which is noise"),
            count=facts["count"],
            watts=f"{-lowest_w:.3g}",
        )
        return Signed(reason=why, problems=(Problem("log.negative_noise", Severity.NOTE, file, facts=facts),))
    counted_wh = None
    if counter is not None and counter_unit in ENERGY_IN_WH and power_unit in POWER_IN_W:
        counted_wh = gained(counter) * ENERGY_IN_WH[counter_unit]
    if _tells_of(counted_wh, drawn - back, drawn):
        added = {"counter_wh": float(f"{counted_wh:.4g}"), "signed_wh": float(f"{drawn + back:.4g}")}
        told = Problem("log.power_sizes", Severity.CAUTION, file, facts={**facts, **added})
        why = later(
            mark("taken without their signs: so they add up to the {energy} Wh that the counter gained"),
            energy=f"{counted_wh:.4g}",
        )
        return Signed(np.abs(power), reason=why, problems=(told,))
    facts["back_wh"] = float(f"{-back:.3g}")
    code = "log.negative_power"
    why = later(mark("as written: nothing tells what the {energy} Wh below zero are"), energy=f"{-back:.3g}")
    if _tells_of(counted_wh, drawn, drawn + back):
        code = "log.power_back"
        why = later(
            mark("as written: the counter counts only the {energy} Wh above zero"), energy=f"{drawn:.4g}"
        )
    return Signed(reason=why, problems=(Problem(code, Severity.CAUTION, file, facts=facts),))


def _turned(power: F64, counter: F64 | None, share: float, file: str) -> Signed:
    """All with the opposite sign, and the counter as well if it runs backwards."""
    told, turned, is_used = "", None, True
    if counter is not None:
        if not np.diff(counter[np.isfinite(counter)]).any():
            told = later(mark(", and the counter, which stood still meanwhile, is left out"))
            is_used = False
        elif _runs_backwards(counter):
            told = later(mark(", and so is the counter, which runs backwards"))
            turned = -counter
    facts: dict[str, object] = {"percent": f"{100 * share:.4g}", "counter": told}
    why = later(
        mark(
            "turned round: {percent} % of the energy is below zero, and no machine gives power back{counter}"
        ),
        **facts,
    )
    problem = Problem("log.power_turned", Severity.CAUTION, file, facts=facts)
    return Signed(-power, turned, is_used, why, (problem,))


def _as_chosen(
    power: F64, counter: F64 | None, choice: Negative, facts: dict[str, object], file: str
) -> Signed:
    if choice == "keep":
        return Signed(reason=CHOSEN)
    values = {"turn": -power, "size": np.abs(power), "zero": np.maximum(power, 0.0)}[choice]
    is_backwards = counter is not None and choice == "turn" and _runs_backwards(counter)
    turned = -counter if counter is not None and is_backwards else None
    told = Problem("log.negative_chosen", Severity.NOTE, file, facts=facts)
    return Signed(values, turned, reason=CHOSEN, problems=(told,))


def _runs_backwards(counter: F64) -> bool:
    steps = np.diff(counter[np.isfinite(counter)])
    moving = int(np.count_nonzero(steps))
    return int(np.count_nonzero(steps < 0)) > _BACKWARDS * max(moving, 1)


def _tells_of(counted_wh: float | None, one_wh: float, other_wh: float) -> TypeGuard[float]:
    """Whether the counter gained the one energy and clearly not the other."""
    if counted_wh is None:
        return False
    return _apart(counted_wh, one_wh) <= _AGREES and _apart(counted_wh, other_wh) > _DISAGREES


def _apart(one: float, other: float) -> float:
    return abs(one - other) / max(abs(one), abs(other), 1e-9)
