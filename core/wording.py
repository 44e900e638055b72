"""Problems into sentences, for the screen, the command line and the report alike.

Rules: a sentence says what, where, why and what would mend it; the parts of the program that find a problem
bring the sentences for its codes, and here they are joined into one table.
"""

from collections.abc import Iterable
from functools import cache
from importlib import import_module

from core.language import mark, tr
from core.problems import Problem

#: modules that bring a table ``SENTENCES`` of code -> sentence with {facts}
_TABLES = (
    "core.results.sentences",
    "core.logs.sentences",
    "core.energy.sentences",
    "core.activity.sentences",
    "core.store.sentences",
    "core.session_sentences",
    "core.beds.sentences",
    "core.costs.sentences",
    "core.bundle.sentences",
    "core.personal.sentences",
)

#: words that studies and results keep in English, and that `tr` is given where they are shown
KEPT = (
    *(mark("run"), mark("other part"), mark("broken off"), mark("cut"), mark("heating")),
    *(mark("hold test"), mark("switch-on test"), mark("nothing"), mark("stretch")),
    *(mark("off"), mark("standby"), mark("warm-up"), mark("processing"), mark("cooling")),
    *(mark("steady rest"), mark("unsteady rest"), mark("lowest level")),
    *(mark("warm-up and processing"), mark("processing only"), mark("until cooled")),
    *(mark("note"), mark("caution"), mark("unfair"), mark("plate law"), mark("typed")),
    *(mark("bed"), mark("room"), mark("nozzle"), mark("mains"), mark("low voltage")),
    *(mark("own meter"), mark("run with the bed off"), mark("heater switching"), mark("mean")),
    *(mark("power"), mark("counter"), mark("counter with power at the edges")),
)


@cache
def sentences() -> dict[str, str]:
    """Every sentence of the program by code.

    Raises
    ------
    ValueError
        If two parts of the program use one code: a programmer's mistake.
    """
    joined: dict[str, str] = {}
    for name in _TABLES:
        table: dict[str, str] = import_module(name).SENTENCES
        twice = joined.keys() & table.keys()
        if twice:
            raise ValueError(f"codes with two sentences: {sorted(twice)}")
        joined.update(table)
    return joined


def sentence(problem: Problem) -> str:
    """The problem in words, without its place.

    Examples
    --------
    >>> sentence(Problem("fair.no_run", facts={"machine": "Alder"}))
    'Alder: no complete run of the part was found, so it is not in the comparison.'
    """
    return reason(problem.code, **dict(problem.facts))


def reason(code: str, **facts: object) -> str:
    """The sentence of a code with these facts in it.

    A fact may be missing in a study written by another version: then the bare facts are shown, because a
    message must never fail.
    """
    template = sentences().get(code)
    if template is not None:
        try:
            return tr(template, **facts)
        except (KeyError, ValueError, IndexError):
            pass
    told = ", ".join(f"{name} {value}" for name, value in sorted(facts.items()))
    return f"{code} ({told})" if told else code


def each_once(problems: Iterable[Problem]) -> list[str]:
    """What is worth knowing about files and numbers, a line each; what is said twice is told once."""
    return list(dict.fromkeys(placed(problem) for problem in problems))


def placed(problem: Problem) -> str:
    """The problem in one line: the file, the row where there is one, what is wrong, what would mend it."""
    where = problem.file or ""
    if problem.row is not None:
        where += (", " if where else "") + tr("row {row}", row=str(problem.row))
    line = f"{where}: {sentence(problem)}" if where else sentence(problem)
    return " ".join(line.split())
