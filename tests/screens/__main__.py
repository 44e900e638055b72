"""Command line: ``python -m tests.screens FOLDER [STUDY...]`` writes every page as a PNG."""

import os
import sys
from pathlib import Path


def main(arguments: list[str]) -> int:
    """Render into a folder; with names of studies, only those."""
    if not arguments or arguments[0].startswith("-"):
        sys.stderr.write("usage: python -m tests.screens FOLDER [demo|empty|one-run|twelve ...]\n")
        return 2
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtWidgets import QApplication

    from tests.screens.render import render
    from tests.screens.studies import DESKS

    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    folder = Path(arguments[0])
    folder.mkdir(parents=True, exist_ok=True)
    for desk in DESKS:
        if len(arguments) == 1 or desk.name in arguments[1:]:
            for path in render(app, folder, desk):
                sys.stdout.write(f"{path}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
