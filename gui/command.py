"""The entry point ``samepart``. Light: help and version import neither NumPy nor Qt.

``inspect`` and ``compare`` are answered by the core alone, and Qt is asked only when an image is wanted;
everything else opens the window, or says in words what the window would have shown when there is no screen.
"""

import os
import sys
from collections.abc import Sequence

from core.command_line.arguments import OVERVIEW, version
from core.faults import facts_of
from gui.painting import UnseenPainter, library_message
from gui.system_libraries import missing_packages

#: platforms of Qt that show nothing
_UNSEEN = ("offscreen", "minimal")
_INTERRUPTED = 130
_FAULT = 1


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line and return its exit status."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    try:
        return _dispatch(arguments)
    except KeyboardInterrupt:
        return _INTERRUPTED
    except BrokenPipeError:  # whoever read the answer has had enough; the rest of it goes nowhere
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except Exception as error:  # noqa: BLE001  # the last net: one line that can be reported, never a traceback
        return _report_fault(error)


def _dispatch(arguments: list[str]) -> int:
    first = arguments[0] if arguments else ""
    if first in ("-h", "--help"):
        print(OVERVIEW, end="")
        return 0
    if first == "--version":
        print(version())
        return 0
    if first in ("inspect", "compare"):
        from core.command_line.command import run

        return run(arguments, UnseenPainter())
    if first.startswith("-"):
        print(f'samepart: there is no option {first}; "samepart --help" lists what there is', file=sys.stderr)
        return 2
    if first == "demo" and len(arguments) > 1:
        print('samepart: "samepart demo" takes no files; "samepart FILE..." opens logs', file=sys.stderr)
        return 2
    return _window(arguments, demo=first == "demo")


def _window(files: list[str], *, demo: bool) -> int:
    if not has_screen():
        from core.command_line.command import WRONG_ARGUMENTS
        from core.command_line.without_screen import show_demo, show_files

        if demo:
            return show_demo(UnseenPainter())
        if files:
            return show_files(files, UnseenPainter())
        print(
            'samepart: no screen was found; "samepart compare FILE..." and "samepart demo" answer in text',
            file=sys.stderr,
        )
        return WRONG_ARGUMENTS
    missing = missing_packages()
    if missing:
        print(f"samepart: the window cannot open without the system packages {missing}", file=sys.stderr)
        return _FAULT
    try:
        from gui.app import run
    except ImportError as error:
        return _missing_library(error)
    return run([] if demo else files, demo)


def has_screen() -> bool:
    """Whether a window could be seen: on Linux a display is named, or Qt told another way."""
    platform = os.environ.get("QT_QPA_PLATFORM", "").split(":")[0]
    if platform:
        return platform not in _UNSEEN
    system: str = sys.platform
    if system.startswith("linux"):
        return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))
    return True


def _missing_library(error: ImportError) -> int:
    if error.name is not None and error.name.split(".")[0] in ("core", "gui"):
        raise error  # a fault of ours, not of the system
    print(" ".join(library_message(error, "the window cannot open").split()), file=sys.stderr)
    return _FAULT


def _report_fault(error: Exception) -> int:
    told = "samepart: the program itself failed ({what}, at {where}); please report this"
    print(told.format(**facts_of(error)), file=sys.stderr)
    return _FAULT
