"""How the files of `core` and `gui` hang together: none in a circle, none forgotten, none too long."""

import ast
from collections.abc import Iterator, Mapping
from functools import cache
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


@cache
def drawn() -> dict[str, set[str]]:
    """The imports of the two rooms."""
    return imports({name: path.read_text("utf-8") for name, path in files().items()})


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
    graph = drawn()
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


def test_no_module_is_forgotten() -> None:
    # sentences are found by the name of their file, packages come with what is in them
    graph = drawn()
    found_by_name = {name for name, path in files().items() if "sentences" in name or path.stem == "__init__"}
    assert set(graph) - set().union(*graph.values()) - found_by_name == {"gui.command"}


def test_no_file_is_too_long_to_read_at_once() -> None:
    lines = {name: len(path.read_text("utf-8").splitlines()) for name, path in files().items()}
    assert {name: count for name, count in lines.items() if count > MOST_LINES} == {}
