"""Whether a study that came from outside holds together: what refers to something must find it."""

from collections.abc import Iterable, Sequence

from core.store.values import encode
from core.study import Study


def what_is_wrong(study: Study) -> str:
    """By what a study could not have been made by this program; empty where nothing is wrong."""
    return next(iter(_found(study)), "")


def _found(study: Study) -> Iterable[str]:
    try:
        encode(study, Study)
    except (TypeError, ValueError) as error:
        yield str(error)
    for what, ids in (
        ("machines", [m.id for m in study.machines]),
        ("meters", [m.id for m in study.meters]),
        ("logs", [g.id for g in study.logs]),
        ("runs", [r.id for r in study.runs] + [t.id for t in study.typed]),
    ):
        if len(set(ids)) < len(ids):
            yield f"two {what} have one identifier"
    machines, meters = {m.id for m in study.machines}, {m.id for m in study.meters}
    logs = {g.id for g in study.logs}
    for what, wanted, known in (
        ("a log's machine", [g.machine_id for g in study.logs], machines),
        ("a log's meter", [g.meter_id for g in study.logs], meters),
        ("a run's log", [r.log_id for r in study.runs], logs),
        ("a reading's machine", [t.machine_id for t in study.typed], machines),
        ("a reading's meter", [t.meter_id for t in study.typed], meters),
    ):
        yield from _missing(what, wanted, known)
    for log in study.logs:
        if not log.sources:
            yield f"log {log.id} has no file"
    for run in study.runs:
        start_s = run.found_start_s if run.set_start_s is None else run.set_start_s
        end_s = run.found_end_s if run.set_end_s is None else run.set_end_s
        if start_s is None or end_s is None or not start_s < end_s:
            yield f"run {run.id} has no length"


def _missing(what: str, wanted: Sequence[str], known: set[str]) -> Iterable[str]:
    return (f"{what} is missing ({name})" for name in wanted if name not in known)
