"""The files of an answer of the command line: what is written, and what is said of it."""

from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path

from attrs import evolve, frozen

from core.bundle.writing import Contents, without_folders
from core.comparing import Gathered
from core.formatting import count
from core.outputs import BundleKind, write_files
from core.personal.pseudonyms import pseudonyms
from core.personal.replacing import as_it_is, replace
from core.personal.search import Personal, personal_data
from core.problems import Problem
from core.publish.sources import Sources
from core.report.painter import Painter
from core.report.pictures import Drawable, Style
from core.study import Study
from core.wording import each_once, placed

#: of personal data so many are told one by one
_MOST_TOLD = 30


@frozen
class Wish:
    """How the files are wanted.

    Parameters
    ----------
    style : Style
        Of the pictures.
    bundle : BundleKind or None
        None for no bundle.
    replace_personal : bool
        Whether personal data are replaced in everything that is written.
    """

    style: Style = "light"
    bundle: BundleKind | None = None
    replace_personal: bool = False


def write(
    gathered: Gathered,
    study: Study,
    folder: Path,
    painter: Painter,
    wish: Wish,
    say: Callable[[str], None],
) -> tuple[Path, ...]:
    """Write all files, and say which; nothing when the folder cannot be written.

    Parameters
    ----------
    gathered : Gathered
        What was read.
    study : Study
        The study to be written: that which was gathered, or an edited one.
    folder : Path
    painter : Painter
    wish : Wish
    say : callable
        Takes one line.
    """
    made = datetime.now().astimezone().date()
    # what is given to others does not say in which folders files lay
    study = without_folders(study)
    drawable = Drawable(study, gathered.comparison_of(study), gathered.traces, gathered.activities)
    given = as_it_is(drawable, gathered.readings, gathered.log_bytes)
    if wish.bundle is not None or wish.replace_personal:
        found = personal_data(study, gathered.log_bytes)
        _tell_personal(found, wish, say)
        if found and wish.replace_personal:
            given = replace(drawable, gathered.readings, gathered.log_bytes, pseudonyms(found))
    sources = Sources(given.drawable, made.year)
    contents = None
    if wish.bundle is not None:
        contents = Contents(
            sources,
            made,
            given.log_bytes,
            with_logs=wish.bundle == "with-logs",
            readings=given.readings,
            replaced=given.digests,
            notes=given.notes,
        )
    warnings = [given.change(text) for text in _warnings(sources, gathered.problems)]
    try:
        written = write_files(sources, folder, made, painter, wish.style, warnings, contents)
    except OSError as error:
        say(f"{folder}: cannot be written ({error.strerror or error}); name another folder with --out")
        return ()
    for text in (*written.told, *(placed(p) for p in (*given.problems, *written.problems))):
        say(text)
    say(f"{folder}: {written.summary} written")
    return written.paths


def _warnings(sources: Sources, problems: Sequence[Problem]) -> list[str]:
    """What was wrong with files, which are named without their folders."""
    nearby = [p if p.file is None else evolve(p, file=Path(p.file).name) for p in problems]
    return each_once((*nearby, *sources.comparison.problems))


def _tell_personal(found: Sequence[Personal], wish: Wish, say: Callable[[str], None]) -> None:
    if not found:
        return
    things = count(len(found), "personal thing")
    if wish.replace_personal:
        say(f"{things} in the logs and the study replaced by names that say nothing:")
    else:
        say(
            f"{things} in the logs and the study; --replace-personal replaces them by names that say nothing:"
        )
    for personal in found[:_MOST_TOLD]:
        places = ", ".join(f"{place} ({n} times)" if n > 1 else place for place, n in personal.places)
        say(f"  {personal.kind}: {personal.text} in {places or 'the names of devices'}")
    if len(found) > _MOST_TOLD:
        say(f"  and {len(found) - _MOST_TOLD} more")
