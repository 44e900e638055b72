"""The tables that are written for others."""

import csv
import io

import pytest

from core import edits
from core.results.compare import compare
from core.results.table import comparison_table, fairness_table, readable_runs, readable_table, runs_table
from core.results.values import Comparison
from core.study import Study
from core.tables import to_csv
from tests.comparisons import make
from tests.core.benches import alike, bench, trace


@pytest.fixture(scope="module")
def two() -> tuple[Study, Comparison]:
    study, traces = bench({"Alder": trace(alike(3)), "=Rowan|1": trace(alike(3, level_w=90.0), seed=1)})
    study = edits.leave_out(study, study.runs[0].id, "door was open").study
    return study, compare(study, traces)


def test_every_row_has_a_cell_a_column(two: tuple[Study, Comparison]) -> None:
    for table in (
        f(two[1]) for f in (comparison_table, readable_table, runs_table, readable_runs, fairness_table)
    ):
        assert table.rows
        assert {len(row) for row in table.rows} == {len(table.columns)}
        assert len({column.key for column in table.columns}) == len(table.columns)


def test_csv_holds_the_results_in_full(two: tuple[Study, Comparison]) -> None:
    _, comparison = two
    rows = list(csv.DictReader(io.StringIO(to_csv(comparison_table(comparison)))))
    assert [row["machine"] for row in rows] == ["Alder", "'=Rowan|1"]
    for row, machine in zip(rows, comparison.machines, strict=True):
        assert machine.energy_wh is not None
        assert machine.seconds is not None
        assert float(row["energy_wh"]) == pytest.approx(machine.energy_wh.value, rel=1e-9)
        assert float(row["energy_wh_u95"]) == pytest.approx(machine.energy_wh.u95, rel=1e-9)
        assert float(row["minutes"]) == pytest.approx(machine.seconds.value / 60, rel=1e-9)
        assert int(row["runs"]) == len(machine.included)


def test_runs_left_out_are_listed_with_the_reason(two: tuple[Study, Comparison]) -> None:
    rows = [
        dict(zip([c.key for c in readable_runs(two[1]).columns], row, strict=True))
        for row in readable_runs(two[1]).rows
    ]
    assert rows[0]["why_excluded"] == "left out by hand: door was open"
    assert rows[0]["start"] == "at 599 s"
    assert {row["why_excluded"] for row in rows[1:]} == {""}


def test_a_bound_is_told_where_no_share_is_seen() -> None:
    _, comparison = make(5)
    unseen = next(m for m in comparison.machines if m.bed_share is None)
    table = readable_table(comparison)
    at = [c.key for c in table.columns].index("bed_share")
    assert next(row for row in table.rows if row[0] == unseen.name)[at] == "at least 31"
