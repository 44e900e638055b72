"""How the files of `core` and `gui` hang together: no two import each other, and none grows past reading."""

import ast
from collections.abc import Iterator, Mapping
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

from core import __file__ as core_file

ROOT = Path(core_file).parent.parent
MOST_LINES = 400


def files() -> dict[str, Path]:
    """Every module of the two rooms by its name, as an import writes it."""
    found = (path for room in ("core", "gui") for path in sorted((ROOT / room).rglob("*.py")))
    return {".".join(p.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__"): p for p in found}


def statements(tree: ast.AST) -> Iterator[ast.AST]:
    """Every statement of a tree, however deep; not what they are made of, which takes longer."""
    for child in ast.iter_child_nodes(tree):
        if not isinstance(child, ast.expr):
            yield child
            yield from statements(child)


def imported(text: str, modules: Mapping[str, object]) -> Iterator[str]:
    """Which of `modules` a text imports: at its top, in functions, and for types alone."""
    for node in statements(ast.parse(text)):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, "an import that names its own room is not seen here"
            whole = [f"{node.module}.{alias.name}" for alias in node.names]
            names = [name if name in modules else str(node.module) for name in whole]
        else:
            continue
        yield from (name for name in names if name in modules)


def imports(texts: Mapping[str, str]) -> dict[str, set[str]]:
    """What every module imports of the others."""
    return {name: set(imported(text, texts)) for name, text in texts.items()}


def circle(graph: Mapping[str, set[str]]) -> list[str]:
    """The modules of a circle, each importing the one before it; empty where there is none."""
    try:
        TopologicalSorter(graph).prepare()
    except CycleError as error:
        return list(error.args[1])
    return []


def test_no_modules_import_each_other() -> None:
    graph = imports({name: path.read_text("utf-8") for name, path in files().items()})
    assert sum(map(len, graph.values())) > 1000
    assert circle(graph) == []


@pytest.mark.parametrize(
    "back",
    [
        "import gui.far",
        "from gui import far",
        "from gui.far import Far",
        "def late():\n    from gui.far import Far",
        "from typing import TYPE_CHECKING\nif TYPE_CHECKING:\n    from gui.far import Far",
    ],
)
def test_a_circle_is_found_however_it_is_closed(back: str) -> None:
    texts = {
        "gui": "",
        "gui.near": "from gui.middle import f",
        "gui.middle": back,
        "gui.far": "import gui.near",
    }
    assert set(circle(imports(texts))) == {"gui.near", "gui.middle", "gui.far"}
    assert circle(imports({**texts, "gui.middle": ""})) == []


def test_no_file_is_too_long_to_read_at_once() -> None:
    lines = {name: len(path.read_text("utf-8").splitlines()) for name, path in files().items()}
    assert {name: count for name, count in lines.items() if count > MOST_LINES} == {}
