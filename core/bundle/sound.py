"""Whether a study that came from outside holds together: what refers to something must find it."""

from collections.abc import Iterable, Sequence

from core.language import mark, tr
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
    for said, ids in (
        (tr("two machines have one identifier"), [m.id for m in study.machines]),
        (tr("two meters have one identifier"), [m.id for m in study.meters]),
        (tr("two logs have one identifier"), [g.id for g in study.logs]),
        (tr("two runs have one identifier"), [r.id for r in study.runs] + [t.id for t in study.typed]),
    ):
        if len(set(ids)) < len(ids):
            yield said
    machines, meters = {m.id for m in study.machines}, {m.id for m in study.meters}
    logs = {g.id for g in study.logs}
    for said, wanted, known in (
        (mark("a log's machine is missing ({name})"), [g.machine_id for g in study.logs], machines),
        (mark("a log's meter is missing ({name})"), [g.meter_id for g in study.logs], meters),
        (mark("a run's log is missing ({name})"), [r.log_id for r in study.runs], logs),
        (mark("a reading's machine is missing ({name})"), [t.machine_id for t in study.typed], machines),
        (mark("a reading's meter is missing ({name})"), [t.meter_id for t in study.typed], meters),
    ):
        yield from _missing(said, wanted, known)
    for log in study.logs:
        if not log.sources:
            yield tr("log {log} has no file", log=log.id)
    for run in study.runs:
        start_s = run.found_start_s if run.set_start_s is None else run.set_start_s
        end_s = run.found_end_s if run.set_end_s is None else run.set_end_s
        if start_s is None or end_s is None or not start_s < end_s:
            yield tr("run {run} has no length", run=run.id)


def _missing(said: str, wanted: Sequence[str], known: set[str]) -> Iterable[str]:
    return (tr(said, name=name) for name in wanted if name not in known)
