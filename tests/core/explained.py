"""Explanations asked for and read, for their tests."""

import re
from collections.abc import Iterator

import pytest

from core.found import Explanation, explain
from core.results.compare import compare, forget
from core.results.values import Comparison, MachineResult
from core.study import Study
from core.traces import Trace
from tests.core.benches import alike, bench, trace

Bench = tuple[Study, dict[str, Trace]]


def three_machines() -> Bench:
    """Three machines on meters, each with runs that are alike."""
    levels = {"Alder": 60.0, "Birch": 66.0, "Rowan": 90.0}
    return bench(
        {name: trace(alike(level_w=w, seed=i), seed=i) for i, (name, w) in enumerate(levels.items())},
        meters=True,
    )


@pytest.fixture(scope="module")
def three() -> Iterator[Bench]:
    yield three_machines()
    forget()


@pytest.fixture
def compared(three: Bench) -> Comparison:
    return compare(*three)


def of(comparison: Comparison, name: str) -> MachineResult:
    return next(m for m in comparison.machines if m.name == name)


def asked(
    three: Bench, comparison: Comparison, machine: MachineResult, key: str, run: str | None = None
) -> Explanation:
    found = explain(comparison, *three, machine.machine_id, key, run)
    assert found is not None
    return found


def line(lines: tuple[str, ...], beginning: str) -> str:
    found = [one for one in lines if one.startswith(beginning)]
    assert found, f"no line begins with {beginning!r}: {lines}"
    return found[0]


def last_number(text: str) -> float:
    return float(re.findall(r"[\d.]+", text)[-1])
