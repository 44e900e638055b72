"""Edits of switch-on tests: what was turned on at a step, and what runs while a machine is idle."""

from attrs import evolve

from core.edits.edit import Edit, checked_number, found
from core.language import tr
from core.loads.names import BY_KEY, NEAR_S, IdleLoad, StepName
from core.study import Study


def name_step(study: Study, log_id: str, at_s: float, load: str | None) -> Edit:
    """Say which load was turned on or off at a step.

    Parameters
    ----------
    study : Study
    log_id : str
    at_s : float
        When the step is. [s]
    load : str or None
        Key of a load; empty for none of them; None hands the step back to the program.

    Raises
    ------
    ValueError
        If there is no such log or load.
    """
    found(study.logs, log_id, "log")
    at_s = checked_number(at_s, "at_s")
    if load and load not in BY_KEY:
        raise ValueError(f"there is no load {load!r}")
    kept = tuple(n for n in study.step_names if n.log_id != log_id or abs(n.at_s - at_s) > NEAR_S)
    if load is not None:
        kept = (*kept, StepName(log_id, at_s, load))
    label = tr("Call a step {load}", load=BY_KEY[load].title) if load else tr("Take the name of a step away")
    return Edit(evolve(study, step_names=kept), label)


def set_load_idle(study: Study, machine_id: str, load: str, is_idle: bool | None) -> Edit:
    """Say whether a load runs while the machine is idle; None leaves it to what the test shows.

    Raises
    ------
    ValueError
        If there is no such machine or load.
    """
    machine = found(study.machines, machine_id, "machine")
    if load not in BY_KEY:
        raise ValueError(f"there is no load {load!r}")
    kept = tuple(i for i in study.idle_loads if (i.machine_id, i.load) != (machine_id, load))
    if is_idle is not None:
        kept = (*kept, IdleLoad(machine_id, load, is_idle))
    label = tr(
        "Say whether the {load} of {machine} runs while idle",
        load=BY_KEY[load].title,
        machine=machine.name,
    )
    return Edit(evolve(study, idle_loads=kept), label)
