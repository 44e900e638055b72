"""Words that a standard gives a meaning, and claims that no measurement of this program may make."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import get_args

from core.report.method import STEPS
from core.results.values import State

ROOT = Path(__file__).parents[2]
#: what would call a machine tested or judged by a standard or a law
CLAIMS = re.compile(
    r"according to|in accordance|compliance|compl(y|ies|iant)\b|conform|certif(y|ied)|IEC 6", re.IGNORECASE
)
#: a standard by its number
STANDARD = re.compile(r"ISO[ /]\S*")


def _texts() -> Iterator[tuple[str, str]]:
    """What a user can read: texts in the code, without docstrings, and the pages that explain."""
    for folder in ("core", "gui"):
        for path in sorted((ROOT / folder).rglob("*.py")):
            tree = ast.parse(path.read_text("utf-8"))
            told = {
                id(node.value)
                for node in ast.walk(tree)
                if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
            }
            for node in ast.walk(tree):
                if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in told:
                    yield f"{path.name}:{node.lineno}", node.value
    for path in sorted((ROOT / "assets" / "explain").glob("*.md")):
        yield path.name, path.read_text("utf-8")
    yield "README.md", (ROOT / "README.md").read_text("utf-8")


def test_no_text_claims_a_test_by_a_standard() -> None:
    # Regulation (EU) 2023/826, Annex II, read: machines of this kind are not named; IEC 62301 asks for a
    # laboratory's supply and accuracy (summary read). So nothing is said to comply or to fail
    found = {f"{place}: {text}" for place, text in _texts() if CLAIMS.search(text)}
    assert found == set()


def test_standards_are_named_in_the_sense_of_only() -> None:
    # ISO 14955-1:2017 is for machine tools and, by its scope (read), not meant for comparing machines; the
    # words for operating states from memory, cooling is our own
    assert get_args(State) == ("off", "standby", "warm-up", "processing", "cooling")
    (runs,) = [text for title, text in STEPS if title == "Runs."]
    assert "off, standby, warm-up, processing and cooling, in the sense of ISO 14955-1" in runs
    named = [(place, text) for place, text in _texts() for _ in STANDARD.findall(text) if "14955" in text]
    assert named
    assert all("in the sense of" in " ".join(text.split()) for _, text in named)
