"""Which machine of a study a new log is of.

Rules: files are named after all kinds of things, so two files of one name may be of two machines; only a log
that names its device says of which machine it is. What is taken for two machines by mistake is plain to see
and is put together with one choice; what is taken for one by mistake would spoil its mean unseen.
"""

from collections.abc import Mapping
from functools import lru_cache

from core.logs.words import plain
from core.study import Log, Study
from core.traces import Trace


def owner(
    study: Study, name: str, device: str | None, trace: Trace, traces: Mapping[str, Trace]
) -> str | None:
    """The machine of the study that a log is of, or None if it is of a new one.

    Parameters
    ----------
    study : Study
    name : str
        Name that a new machine would get.
    device : str or None
        The device as the log names it.
    trace : Trace
    traces : mapping of log id to Trace
        Those of the study's logs that are known.

    Returns
    -------
    str or None
        Id of the machine. Names are compared as people do, without regard to capitals and accents.

    Notes
    -----
    Two logs that both name the device are of one machine. Of a log that does and one that does not, the
    clocks have the last word: one machine has no two logs of one hour.
    """
    same = _plain(name)
    for machine in study.machines:
        if _plain(machine.name) != same:
            continue
        logs = study.logs_of(machine.id)
        names_device = [log for log in logs if _names_device(log)]
        if device is not None and names_device:
            return machine.id
        others = [traces[log.id] for log in logs if log.id in traces]
        if device is None and not names_device and logs:
            continue
        if not any(_overlap(trace, other) for other in others):
            return machine.id
    return None


def free_name(study: Study, name: str) -> str:
    """`name`, with a number behind it if a machine of the study has it already."""
    taken = {_plain(machine.name) for machine in study.machines}
    number, free = 2, name
    while _plain(free) in taken:
        free, number = f"{name} {number}", number + 1
    return free


@lru_cache(maxsize=8192)
def _plain(name: str) -> str:
    """A name as people compare names; remembered, since every new log is held against all machines."""
    return plain(name)


def _names_device(log: Log) -> bool:
    return any(source.device is not None for source in log.sources)


def _overlap(a: Trace, b: Trace) -> bool:
    """Whether two logs are known to be of one time."""
    if a.clock.kind != b.clock.kind or a.clock.start_s is None or b.clock.start_s is None:
        return False
    return a.clock.start_s < b.clock.start_s + b.end_s and b.clock.start_s < a.clock.start_s + a.end_s
