"""What ``samepart demo`` and ``samepart FILE...`` answer when there is no screen."""

import tempfile
from collections.abc import Sequence
from pathlib import Path

from core.command_line.command import UNREADABLE, comparison_text, message, run, say
from core.demo import demo_study, with_what_is_known
from core.places import demo_folder
from core.report.painter import Painter

NO_SCREEN = "No screen was found, so the comparison is printed here."
DEMO_FOLDER = "samepart-demo"


def show_demo(painter: Painter) -> int:
    """Print the demo's comparison, and write its tables and images into a folder that is named."""
    from core.command_line.answer_files import Wish, write
    from core.comparing import gather

    gathered = gather([demo_folder() / "logs"], start=demo_study())
    study = with_what_is_known(gathered.study)
    comparison = gathered.comparison_of(study)
    say(NO_SCREEN)
    say("All numbers of this demonstration are invented.\n")
    say(comparison_text(comparison))
    folder = _writable_folder()
    written = write(gathered, study, folder, painter, Wish(), say=message)
    if written:
        say(f"\nTables and images are in {folder.resolve()}")
    return 0 if written else UNREADABLE


def show_files(files: Sequence[str], painter: Painter) -> int:
    """Answer as ``samepart compare`` does."""
    say(NO_SCREEN + "\n")
    return run(["compare", "--", *files], painter)


def _writable_folder() -> Path:
    """A folder here if it can be made, else among the temporary files."""
    here = Path.cwd() / DEMO_FOLDER
    try:
        here.mkdir(exist_ok=True)
        with tempfile.TemporaryFile(dir=here):
            return here
    except OSError:
        return Path(tempfile.mkdtemp(prefix=f"{DEMO_FOLDER}-"))
