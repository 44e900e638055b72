"""The files of a study: tables, pictures, report, bundle, all in one folder."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import Literal

from attrs import frozen

from core.bundle.manifest import BUNDLE_SUFFIX
from core.bundle.writing import Contents, write_bundle
from core.formatting import listed
from core.language import tr
from core.problems import Problem
from core.progress import Progress, part, silent
from core.publish.sources import Sources
from core.report.html import to_html_file
from core.report.markdown import to_markdown_file
from core.report.painter import Painter
from core.report.pictures import Picture, Style
from core.report.tables import method_table, study_tables
from core.report.write import write_report
from core.spreadsheet import write_spreadsheet
from core.tables import to_csv

#: what of a bundle is wanted
BundleKind = Literal["with-logs", "hashes-only"]
_BUNDLE = f"bundle{BUNDLE_SUFFIX}"
_MAIN = "comparison"
_TABLES = "tables"
_PICTURES = (".png", ".svg")


@frozen
class Written:
    """Files that were written, what could not be drawn in words, and what was wrong with a bundle."""

    paths: tuple[Path, ...]
    told: tuple[str, ...] = ()
    problems: tuple[Problem, ...] = ()

    @property
    def summary(self) -> str:
        """The files in a few words: those that one opens first by name, the others counted."""
        pictures = [p for p in self.paths if p.suffix in _PICTURES]
        tables = [p for p in self.paths if p.parent.name == _TABLES]
        named = [p.name for p in self.paths if p not in pictures and p not in tables]
        rest = [tr("{count:table|tables}", count=len(tables))] if tables else []
        rest += [tr("{count:picture|pictures}", count=len(pictures))] if pictures else []
        return listed([*named, *rest])


def write_files(
    sources: Sources,
    folder: Path,
    made: date,
    painter: Painter,
    style: Style = "light",
    warnings: Sequence[str] = (),
    bundle: Contents | None = None,
    progress: Progress = silent,
) -> Written:
    """Write everything that a study tells into a folder.

    Parameters
    ----------
    sources : Sources
    folder : Path
        Made if it is not there. Files of the same names are replaced.
    made : date
    painter : Painter
    style : Style
        Of the pictures; those of the report are light, as paper is.
    warnings : sequence of str
        What was wrong with files, in words.
    bundle : Contents, optional
        What goes into a bundle; none is written without. The report is put into it here.
    progress : Progress
        May raise `Cancelled`.

    Raises
    ------
    OSError
        If the folder cannot be made or a file cannot be written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    told: list[str] = []
    progress(0.0, tr("writing tables"))
    paths = write_tables(sources, folder, made)
    progress(0.2, tr("drawing pictures"))
    drawn = painter.pictures(sources.drawable, style, sources.year)
    pictures: Sequence[Picture] = ()
    if isinstance(drawn, str):
        told.append(drawn)
    else:
        pictures = drawn
        paths += _write_pictures(drawn, folder)
    if style != "light" and pictures:
        light = painter.pictures(sources.drawable, "light", sources.year)
        pictures = () if isinstance(light, str) else light
    report = write_report(sources, pictures, made, warnings, part(progress, 0.5, 0.8))
    html = to_html_file(report)
    paths += _write_text(folder / f"{_MAIN}.md", to_markdown_file(report))
    paths += _write_text(folder / "report.html", html)
    pages = painter.pdf(report) if pictures else ""
    if isinstance(pages, bytes):
        (folder / "report.pdf").write_bytes(pages)
        paths.append(folder / "report.pdf")
    problems: tuple[Problem, ...] = ()
    if bundle is not None:
        problems = write_bundle(folder / _BUNDLE, bundle.with_report(html), part(progress, 0.8, 1.0))
        paths += [folder / _BUNDLE] if (folder / _BUNDLE).exists() else []
    return Written(tuple(paths), tuple(told), problems)


def write_tables(sources: Sources, folder: Path, made: date) -> list[Path]:
    """Write the comparison as CSV, all tables as one workbook, and each of the others as CSV in a folder.

    Raises
    ------
    OSError
        If a file cannot be written.
    """
    tables = study_tables(sources)
    others = folder / _TABLES
    others.mkdir(parents=True, exist_ok=True)
    workbook = folder / f"{_MAIN}.xlsx"
    write_spreadsheet(workbook, [*(table.data for table in tables), method_table(sources, made)])
    paths = [workbook]
    for table in tables:
        path = folder / f"{_MAIN}.csv" if table.key == _MAIN else others / f"{table.key}.csv"
        paths += _write_text(path, to_csv(table.data), newline="")
    return paths


def _write_pictures(pictures: Sequence[Picture], folder: Path) -> list[Path]:
    paths = []
    for picture in pictures:
        if picture.png:
            paths.append(folder / f"{picture.key}.png")
            paths[-1].write_bytes(picture.png)
        paths += _write_text(folder / f"{picture.key}.svg", picture.svg)
    return paths


def _write_text(path: Path, text: str, newline: str = "\n") -> list[Path]:
    path.write_text(text, encoding="utf-8", newline=newline)
    return [path]
