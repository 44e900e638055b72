"""Steps of a switch-on test with their names: the user's, and those that follow from them.

Rules: the user's word wins. A fall after a heater heated up is that heater letting go; another fall is the
one load that is on and agrees with it. Where several agree, or all of them together, none is chosen: the step
says which it could be, and the user decides.
"""

import math
from typing import Final

from attrs import evolve, frozen

from core.loads.names import BY_KEY, HEATING_OF, NEAR_S
from core.study import Study

#: watts agree when they are this many standard uncertainties apart, or this part
AGREE_U: Final = 2.6
AGREE_PART: Final = 0.03


@frozen
class LoadStep:
    """A step of a test; ``is_named`` says that its name is the user's. ``watts`` up is above 0. [W]

    ``could_be`` are loads that a fall agrees with as well as with each other; ``is_all`` says that it agrees
    with everything that was turned on before it, going off together.
    """

    run_id: str
    log_id: str
    number: int
    at_s: float
    watts: float
    u_w: float
    df: float
    u95_w: float
    load: str = ""
    is_named: bool = False
    could_be: tuple[str, ...] = ()
    is_all: bool = False


On = dict[str, tuple[float, float]]  # load -> watts and their standard uncertainty


def named_steps(steps: list[LoadStep], study: Study, before: int) -> list[LoadStep]:
    """Steps with the user's names, and those that follow from them.

    Parameters
    ----------
    steps : list of LoadStep
        Of one test, by time, without names.
    study : Study
        Holds the user's names.
    before : int
        Steps of the machine's earlier tests: numbers go on from there.

    Returns
    -------
    list of LoadStep
    """
    named: list[LoadStep] = []
    on: On = {}
    for step in steps:
        step = evolve(step, number=before + step.number)
        own = next(
            (n for n in study.step_names if n.log_id == step.log_id and abs(n.at_s - step.at_s) <= NEAR_S),
            None,
        )
        if own is not None:
            step = evolve(step, load=own.load, is_named=True)
        elif step.watts < 0:
            step = _with_fall(step, named, on)
        if step.load:
            switch(on, step)
        elif step.is_all:
            on.clear()
        named.append(step)
    return named


def _lets_go(named: list[LoadStep], step: LoadStep) -> str:
    """The load that a heater has become that heated up in the step before; empty for none."""
    last = named[-1] if named else None
    if last is None or not last.load or last.watts <= 0:
        return ""
    rest_w = last.watts + step.watts
    is_some = rest_w > AGREE_U * math.hypot(last.u_w, step.u_w)
    return BY_KEY[last.load].held_by if is_some else ""


def _with_fall(step: LoadStep, named: list[LoadStep], on: On) -> LoadStep:
    """A fall with its name, or with what it could be."""
    lets_go = _lets_go(named, step)
    if lets_go:
        return evolve(step, load=lets_go)
    like = tuple(load for load, (watts, u_w) in on.items() if _agrees(step, watts, u_w))
    if len(like) == 1:
        return evolve(step, load=like[0])
    all_w, all_u_w = sum(w for w, _ in on.values()), math.hypot(*(u for _, u in on.values()))
    is_all = not like and len(on) > 1 and _agrees(step, all_w, all_u_w)
    return evolve(step, could_be=like, is_all=is_all)


def _agrees(step: LoadStep, watts: float, u_w: float) -> bool:
    return abs(watts + step.watts) <= max(AGREE_U * math.hypot(u_w, step.u_w), AGREE_PART * watts)


def switch(on: On, step: LoadStep) -> None:
    """Turn what a step is called on or off in `on`."""
    heating = HEATING_OF.get(step.load)
    if step.watts > 0:
        watts, u_w = on.get(step.load, (0.0, 0.0))
        on[step.load] = (watts + step.watts, math.hypot(u_w, step.u_w))
    elif heating in on:
        watts, u_w = on.pop(heating)
        on[step.load] = (watts + step.watts, math.hypot(u_w, step.u_w))
    else:
        on.pop(step.load, None)
