"""What the program may not do, read from its source: run what comes from outside, or reach the network."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from core import __file__ as core_file

ROOT = Path(core_file).parent.parent
#: reading these runs what is in them
RUNS_WHAT_IT_READS = {"pickle", "cPickle", "_pickle", "dill", "cloudpickle", "marshal", "shelve", "joblib"}
NETWORK = {
    "asyncio", "ftplib", "http", "httpx", "imaplib", "poplib", "requests", "smtplib", "socket",
    "socketserver", "ssl", "telnetlib", "urllib.request", "urllib3", "websockets", "xmlrpc",
}  # fmt: skip
NETWORK_OF_QT = {"PySide6.QtNetwork", "PySide6.QtWebSockets", "PySide6.QtWebEngineCore"}
OTHER_PROGRAMS = {"ctypes", "pty", "subprocess"}
CALLS = {"eval", "exec", "compile", "__import__"}
CALLS_OF_MODULES = {("os", "system"), ("os", "popen"), ("pandas", "read_pickle"), ("numpy", "fromregex")}
#: the one place that reaches the network, and only where the user has named it
MAY_REACH_A_CLUSTER = {"core/executors.py": {"distributed"}}


def sources(*rooms: str) -> Iterator[tuple[str, ast.Module]]:
    for room in rooms:
        for path in sorted((ROOT / room).rglob("*.py")):
            yield path.relative_to(ROOT).as_posix(), ast.parse(path.read_text("utf-8"), str(path))


def imported(tree: ast.Module) -> Iterator[str]:
    """Every module that is imported anywhere in a file, inside functions too, with the modules it is in."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names = [node.module or "", *(f"{node.module}.{alias.name}" for alias in node.names)]
        elif isinstance(node, ast.Call) and _name(node.func).split(".")[-1] in (
            "import_module",
            "__import__",
        ):
            names = [str(a.value) for a in node.args[:1] if isinstance(a, ast.Constant)]
        else:
            continue
        for name in names:
            parts = name.split(".")
            yield from (".".join(parts[: i + 1]) for i in range(len(parts)))


def _name(node: ast.expr) -> str:
    if isinstance(node, ast.Attribute):
        return f"{_name(node.value)}.{node.attr}"
    return node.id if isinstance(node, ast.Name) else ""


def calls(tree: ast.Module) -> Iterator[ast.Call]:
    return (node for node in ast.walk(tree) if isinstance(node, ast.Call))


def test_nothing_that_runs_what_it_reads_is_imported() -> None:
    found = [(file, name) for file, tree in sources("core", "gui") for name in imported(tree)]
    assert len(found) > 1000
    assert [pair for pair in found if pair[1] in RUNS_WHAT_IT_READS] == []


def test_nothing_from_outside_is_run() -> None:
    found = []
    for file, tree in sources("core", "gui"):
        for call in calls(tree):
            name = _name(call.func)
            parts = name.split(".")
            if name in CALLS or tuple(parts[-2:]) in CALLS_OF_MODULES:
                found.append((file, call.lineno, name))
            if any(k.arg == "allow_pickle" and not _is(k.value, False) for k in call.keywords):
                found.append((file, call.lineno, "allow_pickle"))
            if any(k.arg == "shell" and not _is(k.value, False) for k in call.keywords):
                found.append((file, call.lineno, "shell"))
    assert found == []


def _is(node: ast.expr, value: object) -> bool:
    return isinstance(node, ast.Constant) and node.value is value


def test_the_network_is_reached_in_one_place_only() -> None:
    found = {
        (file, name)
        for file, tree in sources("core", "gui")
        for name in imported(tree)
        if name in NETWORK | NETWORK_OF_QT | {"distributed", "dask"}
    }
    assert found == {(file, name) for file, names in MAY_REACH_A_CLUSTER.items() for name in names}


def test_core_starts_itself_only_to_open_what_may_end_it() -> None:
    found = {(f, name) for f, tree in sources("core") for name in imported(tree) if name in OTHER_PROGRAMS}
    assert found == {("core/logs/old_sheets.py", "subprocess")}


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("import http.client", {"http", "http.client"}),
        ("def f():\n    from urllib import request", {"urllib", "urllib.request"}),
        ("import_module('socket')", {"socket"}),
    ],
)
def test_the_walk_sees_every_way_to_import(text: str, names: set[str]) -> None:
    assert set(imported(ast.parse(text))) == names
