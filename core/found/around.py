"""What stands around every number: the runs it was made of, and what to know before relying on it."""

from core.figures.compare import shown_runs
from core.found.question import Question, value_of
from core.found.values import SourceLine
from core.found.writing import shown, when
from core.language import tr
from core.quantities import DURATION, Quantity
from core.results.values import RunResult
from core.wording import sentence

#: more findings of fairness than this are counted only
MOST_FINDINGS = 3


def sources(asked: Question, quantity: Quantity) -> tuple[SourceLine, ...]:
    """The runs behind the number, with their own values; of a machine also those that were left out."""
    if asked.run is not None:
        return (_source(asked, asked.run, quantity), *_files(asked))
    runs = [run for run in shown_runs(asked.machine) if run in asked.machine.runs]
    said = [_source(asked, run, quantity) for run in runs]
    others = len(asked.machine.runs) - len(runs)
    if others:
        told = tr(
            "{count:other stretch|other stretches} of the logs found to be no run of the part", count=others
        )
        said.append(SourceLine(told, counts=False))
    return tuple(said)


def _source(asked: Question, run: RunResult, quantity: Quantity) -> SourceLine:
    told = [f"{run.name}: {shown(value_of(run, quantity), quantity, asked.locale)}"]
    moment = when(run, lasted=quantity is not DURATION)
    if moment:
        told.append(moment)
    if run.decided_by_user:
        told.append(tr("by your decision"))
    if not run.included:
        told.append(tr("not counted: {why}", why=run.why_excluded))
    return SourceLine(", ".join(told), run.run_id, run.included)


def _files(asked: Question) -> list[SourceLine]:
    log = None if asked.run is None else asked.log_of(asked.run)
    if asked.run is None or log is None:
        return []
    names = ", ".join(source.file_name for source in log.sources)
    meter = asked.meter_of(asked.run)
    return [
        SourceLine(
            tr("{names}, measured with {name}", names=names, name=meter.name) if meter is not None else names
        )
    ]


def cautions(asked: Question) -> tuple[str, ...]:
    """Problems of the runs, and what the fairness list says of this machine."""
    said = []
    if asked.run is not None and not asked.run.included:
        said.append(tr("It does not count in the comparison: {why}.", why=asked.run.why_excluded))
    for run in asked.runs:
        name = "" if asked.run is not None else f"{run.name}: "
        said += [f"{name}{sentence(problem)}" for problem in run.problems]
    if asked.run is None and len(asked.runs) == 1:
        said.append(
            tr(
                "One run only: the interval holds what the meter leaves open, not what differs "
                "from run to run."
            )
        )
    findings = [
        sentence(finding.problem)
        for finding in asked.comparison.open_findings
        if asked.machine.machine_id in finding.machine_ids and finding.level != "note"
    ]
    said += findings[:MOST_FINDINGS]
    if len(findings) > MOST_FINDINGS:
        said.append(
            tr(
                "{findings:more point|more points} in the list of fairness.",
                findings=len(findings) - MOST_FINDINGS,
            )
        )
    return tuple(dict.fromkeys(said))
