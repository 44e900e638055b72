"""Report, tables and bundle of the whole study, made in the pool from what the window has read."""

from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Literal

from attrs import frozen

from core.bundle.manifest import BUNDLE_SUFFIX
from core.bundle.writing import Contents, LogBytes, write_bundle
from core.language import tr
from core.logs.reading import Reading
from core.outputs import write_files
from core.personal.pseudonyms import pseudonyms
from core.personal.replacing import Replaced, as_it_is, replace
from core.personal.search import Personal, personal_data
from core.progress import Progress, part
from core.publish.sources import Sources
from core.report.blocks import Report
from core.report.html import to_html_file
from core.report.pictures import Drawable, Picture, Style
from core.report.tables import method_table, study_tables
from core.report.write import write_report
from core.spreadsheet import write_spreadsheet
from core.wording import placed
from gui.publish.files import Saved, not_saved
from gui.publish.report_pictures import report_pictures

Wanted = Literal["html", "pdf", "tables", "bundle", "everything"]
#: name and ending of each; everything goes into a folder
FILES: dict[Wanted, tuple[str, str]] = {
    "html": ("report", ".html"),
    "pdf": ("report", ".pdf"),
    "tables": ("tables", ".xlsx"),
    "bundle": ("bundle", BUNDLE_SUFFIX),
    "everything": ("", ""),
}


@frozen(eq=False)
class WholeStudy:
    """A study with everything that was read of it.

    Parameters
    ----------
    drawable : Drawable
        Its study names files without their folders.
    readings : mapping of log id to sequence of Reading
    log_bytes : callable
    made : date
    warnings : tuple of str
        What was wrong with files, in words.
    """

    drawable: Drawable
    readings: Mapping[str, Sequence[Reading]]
    log_bytes: LogBytes
    made: date
    warnings: tuple[str, ...] = ()


@frozen
class Giving:
    """What of it is given to others: the raw logs or only their SHA-256, personal data or names for them."""

    with_logs: bool = True
    replaces_personal: bool = False


class PoolPainter:
    """Draws for the core in a thread of the pool; the application runs already."""

    def __init__(self, progress: Progress) -> None:
        self._progress = progress

    def pictures(self, drawable: Drawable, style: Style, year: int) -> tuple[Picture, ...]:
        """The pictures of all pages."""
        made = []
        for picture in report_pictures(drawable, style, year):
            self._progress(0.3, tr("drawing {name}", name=picture.title))
            made.append(picture)
        return tuple(made)

    def pdf(self, report: Report) -> bytes:
        """The report on pages."""
        from gui.report_pdf import report_pdf

        return report_pdf(report)


def personal_of(whole: WholeStudy, progress: Progress) -> tuple[Personal, ...]:
    """The personal data in the logs and the words of a study."""
    return personal_data(whole.drawable.study, whole.log_bytes, progress)


def save_whole(whole: WholeStudy, wanted: Wanted, path: Path, giving: Giving, progress: Progress) -> Saved:
    """Write the report, the tables or the bundle to a file, or everything into a folder."""
    suffix = FILES[wanted][1]
    last = f".{suffix.rpartition('.')[2]}"
    if suffix and path.suffix.lower() != last:
        path = path.with_name(f"{path.name}{suffix}")
    progress(0.0, tr("saving {name}", name=path.name))
    given = _given(whole, giving, part(progress, 0.0, 0.2))
    sources = Sources(given.drawable, whole.made.year)
    warnings = [given.change(text) for text in whole.warnings]
    try:
        told = _write(sources, given, whole.made, wanted, path, giving, warnings, part(progress, 0.2, 1.0))
    except OSError as error:
        return not_saved(path, error)
    return Saved(" ".join([tr("Saved {name}.", name=path.name), *told]), (path,))


def _given(whole: WholeStudy, giving: Giving, progress: Progress) -> Replaced:
    if giving.replaces_personal:
        found = personal_data(whole.drawable.study, whole.log_bytes, part(progress, 0.0, 0.5))
        if found:
            names = pseudonyms(found)
            rest = part(progress, 0.5, 1.0)
            return replace(whole.drawable, whole.readings, whole.log_bytes, names, rest)
    return as_it_is(whole.drawable, whole.readings, whole.log_bytes)


def _write(
    sources: Sources,
    given: Replaced,
    made: date,
    wanted: Wanted,
    path: Path,
    giving: Giving,
    warnings: Sequence[str],
    progress: Progress,
) -> list[str]:
    """Write it; what a person must know of it in words."""
    told = [placed(problem) for problem in given.problems]
    if wanted == "tables":
        tables = [table.data for table in study_tables(sources)]
        write_spreadsheet(path, [*tables, method_table(sources, made)])
        return told
    painter = PoolPainter(progress)
    contents = Contents(
        sources,
        made,
        given.log_bytes,
        with_logs=giving.with_logs,
        readings=given.readings,
        replaced=given.digests,
        notes=given.notes,
    )
    if wanted == "everything":
        written = write_files(sources, path, made, painter, "light", warnings, contents, progress)
        return [*told, *written.told, *(placed(problem) for problem in written.problems)]
    pictures = painter.pictures(sources.drawable, "light", sources.year)
    report = write_report(sources, pictures, made, warnings, part(progress, 0.5, 0.9))
    if wanted == "pdf":
        path.write_bytes(painter.pdf(report))
        return told
    html = to_html_file(report)
    if wanted == "html":
        path.write_text(html, encoding="utf-8", newline="\n")
        return told
    problems = write_bundle(path, contents.with_report(html), part(progress, 0.9, 1.0))
    return [*told, *(placed(problem) for problem in problems)]
