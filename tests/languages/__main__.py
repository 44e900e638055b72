"""Bring the files for translators up to date with the source and compile them: `python -m tests.languages`.

A text that is new is unfinished in every `.ts` file until a translator has filled it in; one that is gone is
dropped. `python -m tests.languages CODE` begins the file of another language. Qt's own tools do the work.
"""

import subprocess
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path

from tests.languages.texts import ROOT, texts

_FOLDER = ROOT / "gui" / "languages"


def main(codes: Sequence[str]) -> None:
    """Update and compile every language, and those of these ISO 639-1 codes that there were not before."""
    for file in sorted({*_FOLDER.glob("*.ts"), *(_FOLDER / f"{code}.ts" for code in codes)}):
        update(file)
        release(file, file.with_suffix(".qm"))


def update(file: Path) -> None:
    """Bring one file for translators up to date with the source."""
    with tempfile.TemporaryDirectory() as folder:
        # Qt's reader of Python misses tables, so it gets a list that leaves no doubt.
        gathered = Path(folder) / "texts.py"
        gathered.write_text("".join(f"tr({_plain(text)})\n" for text in texts()), encoding="utf-8")
        languages = ("-source-language", "en", "-target-language", file.stem)
        _run("pyside6-lupdate", gathered, "-locations", "none", "-no-obsolete", *languages, "-ts", file)


def release(file: Path, compiled: Path) -> None:
    """Compile one file for translators; unfinished texts stay English."""
    _run("pyside6-lrelease", "-silent", "-nounfinished", file, "-qm", compiled)


def _plain(text: str) -> str:
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
    return f'"{escaped}"'


def _run(tool: str, *words: object) -> None:
    subprocess.run(
        [Path(sys.executable).with_name(tool), *map(str, words)], check=True, stdout=subprocess.PIPE
    )


if __name__ == "__main__":
    main(sys.argv[1:])
