"""Personal data of a study, listed with every place in which they stand."""

from collections import Counter
from collections.abc import Iterator
from pathlib import PurePath

from attrs import frozen

from core.bundle.writing import LogBytes, without_folders
from core.language import mark, tr
from core.personal.columns import positions_in
from core.personal.kinds import KINDS, Kind, found_in
from core.personal.own_words import words_of
from core.personal.texts import CannotReplace, changed, whole
from core.progress import Progress, silent
from core.study import Study

#: place of what stands in the study's own words
THE_STUDY = mark("the study")


@frozen
class Personal:
    """One thing that says whose or where.

    Parameters
    ----------
    kind : Kind
    text : str
        As it stands there.
    places : tuple of (str, int)
        File or ``"the study"``, and how often it stands there.
    """

    kind: Kind
    text: str
    places: tuple[tuple[str, int], ...]


def personal_data(study: Study, log_bytes: LogBytes, progress: Progress = silent) -> tuple[Personal, ...]:
    """Find personal data in the logs of a study and in its own words.

    Parameters
    ----------
    study : Study
    log_bytes : callable
        The raw bytes of a log; one that cannot be had is passed over, for it cannot be given to others.
    progress : Progress
        Told of every log; may raise `Cancelled`.

    Returns
    -------
    tuple of Personal
        By kind, then in the order in which they were met.
    """
    met: dict[tuple[Kind, str], Counter[str]] = {}

    def add(kind: Kind, text: str, place: str) -> None:
        met.setdefault((kind, text), Counter())[place] += 1

    devices = {s.device for log in study.logs for s in log.sources if s.device}
    for kind, text in _in_words(study, devices):
        add(kind, text, THE_STUDY)
    wanted = {s.digest: s.file_name for log in without_folders(study).logs for s in log.sources}
    for i, (digest, name) in enumerate(wanted.items()):
        progress(i / len(wanted), tr("looking for personal data in {name}", name=name))
        data = log_bytes(digest)
        if isinstance(data, bytes):
            for kind, text in [*_in_log(data, devices), *found_in(PurePath(name).stem)]:
                add(kind, text, name)
    for device in sorted(devices):
        met.setdefault(("device name", device), Counter())
    order = {kind: i for i, kind in enumerate(KINDS)}
    found = sorted(met.items(), key=lambda item: order[item[0][0]])
    named = {text for kind, text in met if kind == "device name"}
    return tuple(
        Personal(kind, text, tuple(places.items()))
        for (kind, text), places in found
        if kind == "device name" or text not in named
    )


def _in_words(study: Study, devices: set[str]) -> Iterator[tuple[Kind, str]]:
    for text in words_of(study):
        yield from found_in(text)
        yield from _devices_in(text, devices)


def _in_log(data: bytes, devices: set[str]) -> list[tuple[Kind, str]]:
    found: list[tuple[Kind, str]] = []

    def look(text: str) -> str:
        found.extend(found_in(text))
        found.extend(("position", place) for place in positions_in(text))
        found.extend(_devices_in(text, devices))
        return text

    try:
        changed(data, look)
    except CannotReplace:
        look(data.decode("latin-1"))
    return found


def _devices_in(text: str, devices: set[str]) -> list[tuple[Kind, str]]:
    present = [device for device in devices if device in text]
    return [("device name", device) for device in whole(present).findall(text)] if present else []
