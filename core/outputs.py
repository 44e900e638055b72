"""The files of a comparison: tables for people, spreadsheets and programs."""

from collections.abc import Sequence
from pathlib import Path

from attrs import evolve

from core.results.fairness_answer import line
from core.results.table import comparison_table, fairness_table, readable_runs, readable_table, runs_table
from core.results.values import Comparison
from core.spreadsheet import write_spreadsheet
from core.study import Study
from core.tables import to_csv, to_markdown


def write_tables(
    comparison: Comparison, study: Study, folder: Path, warnings: Sequence[str] = ()
) -> list[Path]:
    """Write ``comparison.csv``, ``comparison.xlsx`` and ``comparison.md``, and return their paths.

    Raises
    ------
    OSError
        If the folder cannot be made or a file cannot be written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    paths = [folder / f"comparison.{kind}" for kind in ("csv", "xlsx", "md")]
    machines = comparison_table(comparison)
    paths[0].write_text(to_csv(machines), encoding="utf-8", newline="")
    write_spreadsheet(paths[1], [machines, runs_table(comparison), fairness_table(comparison)])
    paths[2].write_text(report(comparison, study, warnings), encoding="utf-8", newline="\n")
    return paths


def report(comparison: Comparison, study: Study, warnings: Sequence[str] = ()) -> str:
    """The comparison as Markdown: the answer first, then the tables and what is not alike."""
    invented = ["", "All numbers are invented: this is a demonstration."] if study.invented else []
    heading = f"# {study.name}" if study.name else "# Comparison"
    lines = [heading, "", f"**{comparison.headline}**", "", comparison.conditions, *invented, ""]
    lines.append(to_markdown(evolve(readable_table(comparison), notes=())))
    lines.append(to_markdown(readable_runs(comparison)))
    if comparison.fairness:
        lines += ["## Fairness", ""]
        lines += [f"- {line(finding)}" for finding in comparison.fairness]
        lines.append("")
    if warnings:
        lines += ["## Warnings", "", *(f"- {text}" for text in warnings), ""]
    lines += [
        "Values are means of the runs that count, with the half-widths of their 95 % intervals "
        "(JCGM 100:2008, repeats by Student's t). Parts per kWh is 1000 Wh over the mean energy.",
    ]
    return "\n".join(lines) + "\n"
