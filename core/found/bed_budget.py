"""Budgets of a bed's share, line by line: of one run by its way, and of the mean of a machine's runs."""

import math
from collections import defaultdict
from collections.abc import Sequence

from core.formatting import NumberLocale
from core.found import budgets
from core.found.values import BudgetLine
from core.language import mark, tr
from core.results.values import BedShare, RunResult
from core.study import Study

#: the share is shown in percent
PERCENT = 100.0
ALL_RUNS = mark("all runs of this machine")


def of_run(bed: BedShare, used_wh: float, study: Study, locale: NumberLocale) -> tuple[BudgetLine, ...]:
    """What makes the share of one run unsure, in percentage points.

    Parameters
    ----------
    bed : BedShare
    used_wh : float
        Energy of the run. [Wh]
    study : Study
    locale : NumberLocale
    """
    return budgets.lines(bed.influences, study, locale, factor=PERCENT / used_wh, unit="%")


def of_runs(runs: Sequence[RunResult], study: Study, locale: NumberLocale) -> tuple[BudgetLine, ...]:
    """What makes the mean share of a machine's runs unsure, in percentage points.

    Rules. What a run's own share is unsure by is much the same in all runs, so their mean is kept whole; each
    cause has the part of it that it has of the runs' variances on average. Repeats come beside it.

    Parameters
    ----------
    runs : sequence of RunResult
        Those whose share is seen.
    study : Study
    locale : NumberLocale
    """
    told = [
        of_run(run.bed, run.energy_wh, study, locale)
        for run in runs
        if run.bed is not None and run.energy_wh and run.bed.influences
    ]
    shares = [PERCENT * run.bed.share for run in runs if run.bed is not None and run.bed.share is not None]
    parts: list[tuple[str, float, str, str]] = []
    if told:
        own = math.fsum(math.hypot(*(line.u for line in lines)) for lines in told) / len(told)
        variances: dict[tuple[str, str], float] = defaultdict(float)
        for line in (line for lines in told for line in lines):
            variances[line.name, line.why] += line.share_of_variance / len(told)
        parts += [
            (name, own * math.sqrt(share), tr(ALL_RUNS), why) for (name, why), share in variances.items()
        ]
    if len(shares) > 1:
        mean = math.fsum(shares) / len(shares)
        squares = math.fsum((share - mean) ** 2 for share in shares)
        u = math.sqrt(squares / (len(shares) - 1) / len(shares))
        parts.append(("repeats", u, "", tr("the runs differ from one another")))
    return budgets.made([part for part in parts if part[1] > 0], locale, "%")
