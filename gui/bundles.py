"""What the pool does when a bundle is opened: a study file of its own is made of it. No Qt."""

from collections.abc import Sequence
from pathlib import Path

from attrs import frozen

from core.bundle.beside import files_of
from core.bundle.reading import open_bundle
from core.edits import Edit
from core.history import History
from core.language import tr
from core.problems import Problem
from core.progress import Progress, part
from core.store.file import StudyFile


@frozen
class Unpacked:
    """The study file made of a bundle; None where none could be. ``problems`` says what is missing."""

    path: Path | None
    problems: tuple[Problem, ...]


def unpack(bundle_path: Path, beside: Sequence[Path], target: Path, progress: Progress) -> Unpacked:
    """Make a study file of a bundle.

    Parameters
    ----------
    bundle_path : Path
    beside : sequence of Path
        Logs, or folders with them, of which the bundle holds only the SHA-256.
    target : Path
        A name that is free, for the study file.
    progress : Progress
        May raise `Cancelled`; no study file is left then.
    """
    progress(0.0, tr("opening {name}", name=bundle_path.name))
    bundle = open_bundle(bundle_path)
    if isinstance(bundle, Problem):
        return Unpacked(None, (bundle,))
    made = StudyFile.create(
        target, History.start(Edit(bundle.study, tr("Open {name}", name=bundle_path.name)))
    )
    if isinstance(made, Problem):
        return Unpacked(None, (made,))
    problems = list(bundle.problems)
    done = False
    try:
        with made:
            digests = dict.fromkeys(s.digest for log in bundle.study.logs for s in log.sources)
            logs = files_of(bundle, beside, part(progress, 0.0, 0.2))
            problems += logs.problems
            for i, digest in enumerate(digests):
                here = part(progress, 0.2 + 0.8 * i / len(digests), 0.2 + 0.8 * (i + 1) / len(digests))
                here(0.0, tr("keeping the logs of the bundle"))
                data = logs.bytes_of(digest)
                kept = made.add_blob(data, here) if isinstance(data, bytes) else data
                if isinstance(kept, Problem):
                    problems.append(kept)
        done = True
    finally:
        if not done:
            target.unlink(missing_ok=True)
    return Unpacked(target, tuple(dict.fromkeys(problems)))
