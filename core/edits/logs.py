"""Edits of logs: importing, reading again, moving between machines, removing."""

from collections.abc import Sequence

from attrs import evolve, frozen

from core.edits.edit import Edit, checked_name, found, next_number, replaced, without
from core.edits.machines import with_machine, with_meter
from core.edits.matching import FoundRun, matched
from core.language import tr
from core.study import Choices, Log, Machine, Run, Source, Study


@frozen
class NewLog:
    """A log to import: where its bytes are, which machine it is of, and what was found in it.

    Parameters
    ----------
    sources : tuple of Source
        At least one; several continue each other.
    machine_name : str
        The log goes to the machine of this name; if there is none, one is made.
    runs : tuple of FoundRun
    machine_id : str or None
        An existing machine, whatever it is called.
    """

    sources: tuple[Source, ...]
    machine_name: str
    runs: tuple[FoundRun, ...] = ()
    machine_id: str | None = None


def is_imported(study: Study, sources: Sequence[Source]) -> bool:
    """Whether the same bytes of the same machine are in the study already, for every source."""
    known = {(source.digest, source.device) for log in study.logs for source in log.sources}
    return all((source.digest, source.device) in known for source in sources)


def import_logs(study: Study, logs: Sequence[NewLog]) -> Edit:
    """Add logs, making machines and a meter where they are missing.

    A log that `is_imported` is passed over, so that dropping a file twice does no harm.

    Parameters
    ----------
    study : Study
    logs : sequence of NewLog
        In the order in which machines are to get their slots.

    Raises
    ------
    ValueError
        If a log has no source, or names a machine that is not there.
    """
    before = len(study.logs)
    for new in logs:
        if not new.sources:
            raise ValueError("a log needs at least one source")
        if not is_imported(study, new.sources):
            study = _with_log(study, new)
    return Edit(study, import_label(len(study.logs) - before))


def import_label(logs: int) -> str:
    """What an edit is called that adds this many logs."""
    return tr("Import a log") if logs == 1 else tr("Import {logs} logs", logs=logs)


def read_again(
    study: Study,
    log_id: str,
    sources: Sequence[Source],
    runs: Sequence[FoundRun],
    shift_s: float = 0.0,
) -> Edit:
    """Replace what a log was read from and what was found in it, keeping the user's decisions.

    For a log that has grown, another file that continues it, or corrected reading choices. Decisions go
    to the stretch that overlaps most with the one they were made for (see `core.edits.matching`).

    Parameters
    ----------
    study : Study
    log_id : str
    sources : sequence of Source
    runs : sequence of FoundRun
        Everything found in the log as it is read now.
    shift_s : float
        What to add to times of before, when the log now starts earlier. [s]
    """
    log = found(study.logs, log_id, "log")
    if not sources:
        raise ValueError("a log needs at least one source")
    changed = evolve(study, logs=replaced(study.logs, evolve(log, sources=tuple(sources))))
    label = tr("Read the log of {name} again", name=study.machine(log.machine_id).name)
    return Edit(_with_found(changed, log_id, runs, shift_s), label)


def find_again(study: Study, log_id: str, runs: Sequence[FoundRun]) -> Edit:
    """Replace what was found in a log, keeping the user's decisions."""
    log = found(study.logs, log_id, "log")
    return Edit(
        _with_found(study, log_id, runs, 0.0),
        tr("Find the runs of {name} again", name=study.machine(log.machine_id).name),
    )


def set_choices(
    study: Study,
    log_id: str,
    index: int,
    choices: Choices,
    runs: Sequence[FoundRun] | None = None,
) -> Edit:
    """Correct how a file is read, together with what is then found in the log.

    Parameters
    ----------
    study : Study
    log_id : str
    index : int
        Which source of the log, from 0.
    choices : Choices
        All of the user's choices for this file, not only the changed one.
    runs : sequence of FoundRun, optional
        What is found in the log as it is read now; None leaves the stretches alone.
    """
    log = found(study.logs, log_id, "log")
    if not 0 <= index < len(log.sources):
        raise ValueError(f"this log has no source {index}")
    sources = tuple(evolve(s, choices=choices) if i == index else s for i, s in enumerate(log.sources))
    changed = evolve(study, logs=replaced(study.logs, evolve(log, sources=sources)))
    if runs is not None:
        changed = _with_found(changed, log_id, runs, 0.0)
    return Edit(changed, tr("Change how {file_name} is read", file_name=log.sources[index].file_name))


def move_log(study: Study, log_id: str, machine_id: str) -> Edit:
    """Say that a log is of another machine; a machine left with nothing goes."""
    log = found(study.logs, log_id, "log")
    machine = found(study.machines, machine_id, "machine")
    moved = evolve(study, logs=replaced(study.logs, evolve(log, machine_id=machine_id)))
    return Edit(_without_empty(moved, log.machine_id), tr("Move a log to {name}", name=machine.name))


def move_log_to_new_machine(study: Study, log_id: str, name: str) -> Edit:
    """Say that a log is of a machine that is not in the study yet."""
    log = found(study.logs, log_id, "log")
    study, machine = with_machine(study, checked_name(name))
    moved = evolve(study, logs=replaced(study.logs, evolve(log, machine_id=machine.id)))
    return Edit(_without_empty(moved, log.machine_id), tr("Move a log to {name}", name=machine.name))


def remove_log(study: Study, log_id: str) -> Edit:
    """Take a log away with its stretches; a machine left with nothing goes too."""
    log = found(study.logs, log_id, "log")
    rest = evolve(
        study,
        logs=without(study.logs, [log_id]),
        runs=tuple(run for run in study.runs if run.log_id != log_id),
        step_names=tuple(name for name in study.step_names if name.log_id != log_id),
    )
    return Edit(
        _without_empty(rest, log.machine_id),
        tr("Remove a log of {name}", name=study.machine(log.machine_id).name),
    )


def _with_log(study: Study, new: NewLog) -> Study:
    study, machine = _machine_for(study, new)
    study, meter = with_meter(study)
    log = Log(f"g{next_number(study.logs, 'g')}", machine.id, meter.id, new.sources)
    return _with_found(evolve(study, logs=(*study.logs, log)), log.id, new.runs, 0.0)


def _machine_for(study: Study, new: NewLog) -> tuple[Study, Machine]:
    if new.machine_id is not None:
        return study, found(study.machines, new.machine_id, "machine")
    name = checked_name(new.machine_name)
    known = next((machine for machine in study.machines if machine.name == name), None)
    return with_machine(study, name) if known is None else (study, known)


def _with_found(study: Study, log_id: str, runs: Sequence[FoundRun], shift_s: float) -> Study:
    old = tuple(run for run in study.runs if run.log_id == log_id)
    kept, fresh = matched(old, runs, shift_s)
    by_id = {run.id: run for run in kept}
    number = next_number(study.runs, "r") if fresh else 0
    added = tuple(
        Run(
            id=f"r{number + i}",
            log_id=log_id,
            found_start_s=float(run.start_s),
            found_end_s=float(run.end_s),
            found_kind=run.kind,
            found_part=run.part,
            found_why=run.why,
        )
        for i, run in enumerate(fresh)
    )
    stayed = tuple(by_id.get(run.id, run) for run in study.runs if run.log_id != log_id or run.id in by_id)
    return evolve(study, runs=stayed + added)


def _without_empty(study: Study, machine_id: str) -> Study:
    in_use = {log.machine_id for log in study.logs} | {reading.machine_id for reading in study.typed}
    if machine_id in in_use:
        return study
    idle_loads = tuple(i for i in study.idle_loads if i.machine_id != machine_id)
    return evolve(study, machines=without(study.machines, [machine_id]), idle_loads=idle_loads)
