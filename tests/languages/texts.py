"""Every text that passes the gate, gathered from the source."""

import ast
import string
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from core.wording import sentences

ROOT: Final = Path(__file__).parents[2]
_GATES: Final = ("tr", "mark")


def texts() -> tuple[str, ...]:
    """English texts of core and gui, sorted, each once.

    Raises
    ------
    ValueError
        If a call of `mark`, or one of `tr` with facts, holds no plain text: a translator could not see it.
    """
    found = set(sentences().values())
    for room in ("core", "gui"):
        for file in sorted((ROOT / room).rglob("*.py")):
            found.update(_texts_of(file))
    return tuple(sorted(found))


def placeholders(text: str) -> tuple[str, ...]:
    """Names in braces, sorted, with a letter for those followed by words for one and many.

    Examples
    --------
    >>> placeholders("{count:row|rows} of {file}")
    ('count|', 'file')
    """
    found = []
    for _, name, spec, _ in string.Formatter().parse(text):
        if name is not None:
            found.append(f"{name}|" if "|" in (spec or "") else name)
    return tuple(sorted(found))


def _texts_of(file: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in _GATES):
            continue
        given = node.args[0] if node.args else None
        if isinstance(given, ast.Constant) and isinstance(given.value, str):
            yield given.value
        elif node.func.id == "mark" or isinstance(given, ast.JoinedStr):
            raise ValueError(f"{file.relative_to(ROOT)}, line {node.lineno}: this text cannot be translated")
