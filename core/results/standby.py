"""The one standby power of a machine, which the comparison and the costs both show."""

from collections.abc import Iterable
from functools import lru_cache

from core.costs.standby import Standby, standby, surest
from core.loads.same_load import Calibration
from core.results.checked_logs import checked_log
from core.results.runs import Seen
from core.study import Meter


def best_standby(
    logs: Iterable[tuple[Seen | None, Meter]], checked: Calibration | None = None
) -> tuple[Standby, int] | None:
    """Standby power of a machine by the log that shows it best, and which of the logs that is.

    Parameters
    ----------
    logs : iterable of (Seen or None, Meter)
        Of the machine, each with the meter that wrote it; None for a log that was not read.
    checked : Calibration, optional
        What same-load checks tell of the meters: watts come out corrected and narrowed by it.

    Returns
    -------
    tuple of (Standby, int) or None
        None where no log shows the machine at rest.
    """
    found = {
        i: known
        for i, (log, meter) in enumerate(logs)
        if log is not None and (known := _of_log(*checked_log(log, meter, checked))) is not None
    }
    chosen = surest(found.values())
    return None if chosen is None else next((known, i) for i, known in found.items() if known is chosen)


def forget() -> None:
    """Let go of everything remembered, and of the traces with it."""
    _of_log.cache_clear()


@lru_cache(maxsize=4096)
def _of_log(log: Seen, meter: Meter) -> Standby | None:
    return standby(log.trace, log.activity, meter)
