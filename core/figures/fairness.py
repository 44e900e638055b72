"""What each point of fairness could matter, as bars against the smallest difference shown."""

from core.figures.compare import source_of
from core.figures.ticks import axis_end
from core.figures.values import NO_MACHINE, Axis, Cell, ComparisonFigure, Mark, Measure, RefLine, Row
from core.formatting import POINT, NumberLocale, listed, number
from core.language import tr
from core.results.fairness_answer import conditions, headline, matters_text, of_whom
from core.results.fairness_points import point_of
from core.results.fairness_weight import differences, smallest_shown
from core.results.values import Comparison, Finding
from core.study import Study

#: key of the only column
MATTERS = "matters_wh"
#: more bars than this nobody compares
MOST_BARS = 12


def fairness_figure(
    comparison: Comparison, study: Study, locale: NumberLocale = POINT
) -> ComparisonFigure | None:
    """A bar for each open finding that could matter so many Wh, in the order of the list.

    Parameters
    ----------
    comparison : Comparison
    study : Study
    locale : NumberLocale

    Returns
    -------
    ComparisonFigure or None
        Rows are findings, by their keys; None where nothing is told in Wh.
    """
    known = [f for f in comparison.open_findings if f.matters_wh is not None]
    if not known:
        return None
    shown = known[:MOST_BARS]
    names = {m.machine_id: m.name for m in comparison.machines}
    slots = {m.machine_id: m.slot for m in comparison.machines}
    smallest = smallest_shown(differences(comparison.machines, comparison.pairs))
    lines = []
    if smallest is not None:
        who = listed([names[smallest.machine_id], names[smallest.other_id]])
        words = tr(
            "Smallest difference shown: {energy} Wh, {machines}",
            energy=number(smallest.wh, 1, locale),
            machines=who,
        )
        lines.append(RefLine(smallest.wh, words))
    ends = [max(f.matters_wh or 0.0, f.against_wh or 0.0) for f in shown] + [line.value for line in lines]
    legend = tr("short dashes: what it is held against")
    if lines:
        legend = f"{tr('dashed: the smallest difference shown between machines')}; {legend}"
    more = len(known) - len(shown)
    return ComparisonFigure(
        headline=headline(comparison, locale),
        conditions=conditions(comparison, locale)
        + (f" {tr('{count:more point|more points} {count:~is|are} not drawn.', count=more)}" if more else ""),
        source=source_of(study),
        rows=tuple(
            Row(f.key, point_of(f).name, _slot(f, slots), f"{tr(f.level)}: {of_whom(f, comparison)}")
            for f in shown
        ),
        measures=(
            Measure(
                MATTERS,
                Axis(tr("Could matter, each part"), "Wh", axis_end(tuple(ends)), locale),
                tuple(
                    Cell(
                        mark=Mark(f.matters_wh or 0.0, None, matters_text(f.matters_wh, locale), f.key),
                        against=f.against_wh,
                    )
                    for f in shown
                ),
                bars=True,
                legend=legend,
                legend_short=tr("dashed: smallest difference") if lines else "",
                lines=tuple(lines),
            ),
        ),
        row_word="point",
    )


def _slot(finding: Finding, slots: dict[str, int]) -> int:
    """That of its machine; a finding of several belongs to none."""
    return slots[finding.machine_ids[0]] if len(finding.machine_ids) == 1 else NO_MACHINE
