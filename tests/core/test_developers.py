"""What the guide for developers names is there: files, folders, modules, names, commands."""

import re
from functools import cache
from importlib import import_module
from importlib.util import find_spec
from itertools import product
from pathlib import Path

from core import __file__ as core_file

ROOT = Path(core_file).parent.parent
GUIDE = (ROOT / "DEVELOPERS.md").read_text("utf-8")
ROOMS = ("core", "gui", "tests")
ENDINGS = (".py", ".md", ".ts", ".toml")
#: what belongs to Python, Qt or the finder of mutants
OF_OTHERS = {
    "MUTANT_UNDER_TEST", "QT_LOGGING_RULES", "also_copy", "mutants", "only_mutate", "pytest_add_cli_args",
    "pytest_add_cli_args_test_selection", "source_paths",
}  # fmt: skip


def spans(text: str) -> list[str]:
    """What stands in backticks, each once."""
    return sorted({" ".join(found.split()) for found in re.findall(r"`([^`]+)`", text)})


def commands(text: str) -> list[str]:
    """What can be typed: indented lines, and spans that begin like them."""
    lines = [line.strip() for line in re.findall(r"^    (\S.*)$", text, re.MULTILINE)]
    starts = re.compile(r"(\S*python|\S*pytest|\S*samepart|bash|\.ci/\S+)( |$)")
    return [words for words in (*lines, *spans(text)) if starts.match(words)]


def is_path(span: str) -> bool:
    """Whether a span names a file or a folder."""
    return " " not in span and not span.startswith("[") and ("/" in span or span.endswith(ENDINGS))


def patterns(span: str) -> list[str]:
    """The patterns of a path: one for each of `{a,b}`, and a star for what a reader puts in."""
    span = re.sub(r"…|<\w+>|NAME|CODE|FOLDER", "*", span)
    parts = [part.split(",") if i % 2 else [part] for i, part in enumerate(re.split(r"[{}]", span))]
    return ["".join(choice).rstrip("/") for choice in product(*parts)]


def is_there(pattern: str) -> bool:
    """Whether a path is there from the top, or a bare name of a file anywhere in the rooms."""
    if "/" in pattern or (ROOT / pattern).exists():
        return any(ROOT.glob(pattern))
    return any(path for room in ROOMS for path in (ROOT / room).rglob(pattern))


@cache
def words() -> frozenset[str]:
    """Every name in the source, and of every file."""
    files = [path for room in ROOMS for path in (ROOT / room).rglob("*.py") if path != Path(__file__)]
    text = "\n".join(path.read_text("utf-8") for path in files)
    return frozenset(re.findall(r"[A-Za-z_]\w*", text)) | {path.stem for path in files}


def is_name_known(span: str) -> bool:
    """Whether a name, a call or a setting is of this program; True for what is none of these."""
    match = re.fullmatch(r"(\w+)(\*|\(.*\)|=.*)?", span)
    if match is None or match[1][:1].isdigit():
        return True
    name, rest = match.groups()
    if rest == "*":
        return any(word.startswith(name) for word in words())
    return name in words() | OF_OTHERS


def is_dotted_known(name: str) -> bool:
    """Whether `core.a.b` is a module, or something in one."""
    if find_spec(name.rpartition(".")[0]) is None:
        return False
    parent = import_module(name.rpartition(".")[0])
    return hasattr(parent, name.rpartition(".")[2]) or find_spec(name) is not None


def test_every_file_and_folder_is_there() -> None:
    paths = [span for span in spans(GUIDE) if is_path(span)]
    assert len(paths) > 90
    assert [p for path in paths for p in patterns(path) if not is_there(p)] == []


def test_every_name_is_of_this_program() -> None:
    assert [span for span in spans(GUIDE) if not is_path(span) and not is_name_known(span)] == []
    dotted = [span for span in spans(GUIDE) if re.fullmatch(r"(core|gui|tests)(\.\w+)+", span)]
    assert len(dotted) > 8
    assert [name for name in dotted if not is_dotted_known(name)] == []


def test_every_command_can_be_given() -> None:
    typed = commands(GUIDE)
    assert len(typed) > 10
    modules = {name for line in typed for name in re.findall(r"python(?: -X \S+)? -m ([\w.]+)", line)}
    assert {"tests.screens", "tests.screens.pictures", "tests.fuzz", "tests.languages"} <= modules
    mutants = {"mutmut"}  # is installed by whoever wants it
    assert {name for name in modules - mutants if find_spec(name) is None} == set()
    files = {
        word for line in typed for word in line.split() if word.startswith((".ci/", "tests/", "demo_data/"))
    }
    assert len(files) > 4
    assert {file for file in files if not (ROOT / file).exists()} == set()


def test_what_is_gone_is_found() -> None:
    assert not any(map(is_there, patterns("gui/widgets/{page_scroll,no_such}.py")[1:]))
    assert is_there("core/logs/sentences.py")
    assert not is_there("no_such_file.py")
    assert not is_name_known("no_such_name(x)")
    assert not is_dotted_known("core.logs.no_such")
    assert not is_dotted_known("core.no_such.f")
