"""Every problem has a sentence, and a sentence never fails."""

import ast
import re
import string
from pathlib import Path

import pytest

import core
from core.problems import Problem
from core.study import KINDS
from core.wording import placed, reason, sentence, sentences

CORE = Path(core.__file__).parent


def test_place_comes_first() -> None:
    problem = Problem("fair.no_run", file="a b.csv", row=12, facts={"machine": "Alder"})
    assert placed(problem) == f"a b.csv, row 12: {sentence(problem)}"
    assert placed(Problem("fair.no_run", row=3, facts={"machine": "A"})).startswith("row 3: A: no complete")
    assert placed(Problem("fair.no_run", facts={"machine": "A"})).startswith("A: no complete")


def test_one_line_whatever_the_facts_hold() -> None:
    assert "\n" not in placed(Problem("fair.no_run", file="a\nb.csv", facts={"machine": "A\nB\tC"}))


@pytest.mark.parametrize(
    ("count", "said"), [(0, "0 rows repeat"), (1, "1 row repeats"), (2, "2 rows repeat")]
)
def test_words_follow_their_number(count: int, said: str) -> None:
    text = reason("log.repeated_rows", count=count)
    assert text.startswith(said)
    assert text.endswith("was counted once." if count == 1 else "were counted once.")


@pytest.mark.parametrize("facts", [{}, {"share": "much"}, {"other": 1}])
def test_missing_or_odd_facts_never_fail(facts: dict[str, object]) -> None:
    assert reason("stretch.gaps", **facts)


def test_unknown_code_is_shown_with_its_facts() -> None:
    assert reason("made.up", b=2, a="x") == "made.up (a x, b 2)"
    assert reason("made.up") == "made.up"


def test_facts_cannot_reach_into_the_program() -> None:
    text = reason("fair.no_run", machine="{machine.__class__}")
    assert text.startswith("{machine.__class__}: no complete run")


def test_sentences_say_something() -> None:
    for code, text in sentences().items():
        assert re.fullmatch(r"[a-z_]+(\.[a-z_ -]+)+", code), code
        assert len(text.split()) >= 3 or code.startswith("stretch."), code
        list(string.Formatter().parse(text))


def _codes_used() -> dict[str, str]:
    """Every text in the program that reads like a code of a sentence, with the file it stands in."""
    families = "|".join(sorted({code.split(".")[0] for code in sentences()}))
    code = re.compile(rf"(?:{families})\.[a-z_ -]+")
    used = {}
    for package in (CORE, CORE.parent / "gui"):
        for path in package.rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if (
                    isinstance(node, ast.Constant)
                    and isinstance(node.value, str)
                    and code.fullmatch(node.value)
                ):
                    used[node.value] = path.name
    return used


def test_every_code_has_a_sentence() -> None:
    used = _codes_used()
    assert len(used) > 100
    assert {text: file for text, file in used.items() if text not in sentences()} == {}


def test_every_kind_has_a_reason_for_not_counting() -> None:
    assert {f"stretch.{kind}" for kind in KINDS if kind != "run"} <= set(sentences())
