"""What the Logs page shows, as values: a lane for each log with its stretches, and the sentence on top."""

from collections.abc import Mapping

from attrs import frozen

from core.edits import is_decided
from core.formatting import capitalised
from core.language import tr
from core.results.values import RunResult, StateSpan
from core.study import Kind, Log, Run, Study
from core.tables import harmless
from core.traces import Clock


@frozen
class Block:
    """A stretch as it lies on its lane. [s]"""

    run_id: str
    start_s: float
    end_s: float
    kind: Kind
    label: str
    is_included: bool
    is_decided: bool
    states: tuple[StateSpan, ...] = ()


@frozen
class LaneContent:
    """One log: whose it is, what it was read from, and its stretches by start; none of a bed alone."""

    log_id: str
    machine_id: str
    machine: str
    slot: int
    files: tuple[str, ...]
    blocks: tuple[Block, ...]
    of_bed: bool = False

    @property
    def summary(self) -> str:
        """How many runs and other stretches, in words."""
        if self.of_bed:
            return tr("the bed alone")
        runs = sum(b.kind == "run" for b in self.blocks)
        others = len(self.blocks) - runs
        if others:
            return tr(
                "{runs}, {others:other|others}",
                runs=tr("{count:run|runs}", count=runs) if runs else tr("no runs"),
                others=others,
            )
        return tr("{count:run|runs}", count=runs) if runs else tr("no runs")

    def block(self, run_id: str | None) -> Block | None:
        """The block of a stretch, if it lies on this lane."""
        return next((b for b in self.blocks if b.run_id == run_id), None)


def lanes(study: Study, results: Mapping[str, RunResult]) -> tuple[LaneContent, ...]:
    """The lanes of a study: machines in their order, the logs of each in theirs.

    Parameters
    ----------
    study : Study
    results : mapping of run id to RunResult
        Of the runs that have been computed; the others have no operating states yet.
    """
    by_log: dict[str, list[Run]] = {}
    for run in sorted(study.runs, key=lambda r: r.start_s):
        by_log.setdefault(run.log_id, []).append(run)
    by_machine: dict[str, list[Log]] = {}
    for log in study.logs:
        by_machine.setdefault(log.machine_id, []).append(log)
    return tuple(
        LaneContent(
            log_id=log.id,
            machine_id=machine.id,
            machine=machine.name,
            slot=machine.slot,
            files=tuple(source.file_name for source in log.sources),
            blocks=tuple(
                _block(run, place, results.get(run.id))
                for place, run in enumerate(by_log.get(log.id, []), start=1)
                if not log.of_bed and (run.kind != "nothing" or is_decided(run))
            ),
            of_bed=log.of_bed,
        )
        for machine in study.machines
        for log in by_machine.get(machine.id, [])
    )


def stretch_rows(
    content: LaneContent, clock: Clock, results: Mapping[str, RunResult]
) -> tuple[tuple[str, ...], ...]:
    """The stretches of a lane as text for another program: header, then a row each, with the point as mark.

    Parameters
    ----------
    content : LaneContent
    clock : Clock
        Of the lane's trace.
    results : mapping of run id to RunResult
    """
    header = ("machine", "stretch", "kind", "counted", "start", "start_s", "end_s", "seconds", "energy_wh")
    rows = [header]
    for block in content.blocks:
        result = results.get(block.run_id)
        energy_wh = result.energy_wh if result is not None else None
        rows.append(
            (
                harmless(content.machine),
                harmless(block.label),
                block.kind,
                "yes" if block.is_included else "no",
                clock.iso(block.start_s) or "",
                f"{block.start_s:.3f}",
                f"{block.end_s:.3f}",
                f"{block.end_s - block.start_s:.3f}",
                "" if energy_wh is None else f"{energy_wh:.6g}",
            )
        )
    return tuple(rows)


def headline(study: Study) -> str:
    """What was found in the logs, in one sentence.

    Examples
    --------
    >>> headline(Study("s"))
    'No logs yet.'
    """
    if not study.logs and not study.typed:
        return tr("No logs yet.")
    beds = {log.id for log in study.logs if log.of_bed}
    stretches = [run for run in study.runs if run.log_id not in beds]
    runs = [run for run in stretches if run.kind == "run"]
    out = sum(not run.included for run in runs)
    others = sum(run.kind not in ("run", "nothing") for run in stretches)
    if not study.logs:
        text = tr("{count:run|runs} of the {part} typed in", count=len(study.typed), part=study.part)
    else:
        facts = {
            "runs": tr("{count:run|runs}", count=len(runs)) if runs else tr("no runs"),
            "part": study.part,
            "logs": tr("{count:log|logs}", count=len(study.logs)),
        }
        text = (
            tr("{runs} of the {part} found in {logs}, {count} typed in", count=len(study.typed), **facts)
            if study.typed
            else tr("{runs} of the {part} found in {logs}", **facts)
        )
    said = []
    if out:
        said.append(tr("{count} of them left out", count=out))
    if beds:
        said.append(tr("{count:log is|logs are} of a bed alone", count=len(beds)))
    if others:
        said.append(tr("{count:stretch is|stretches are} something else", count=others))
    return capitalised("; ".join([text, *said])) + "."


def _block(run: Run, place: int, result: RunResult | None) -> Block:
    if run.name:
        label = run.name
    else:
        label = tr("run {place}", place=str(place)) if run.kind == "run" else tr(run.kind)
    return Block(
        run_id=run.id,
        start_s=run.start_s,
        end_s=run.end_s,
        kind=run.kind,
        label=label,
        is_included=run.included if result is None else result.included,
        is_decided=is_decided(run),
        states=() if result is None else result.states,
    )
