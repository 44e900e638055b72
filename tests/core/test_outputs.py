"""The tables that are written for others."""

import csv
import io
import math
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

import pytest

from core import edits
from core.outputs import write_files
from core.publish.sources import Sources
from core.report.blocks import Report
from core.report.pictures import Drawable, Picture, Style
from core.report.tables import method_table, study_tables
from core.results.compare import compare
from core.results.table import comparison_table, fairness_table, readable_runs, readable_table, runs_table
from core.results.values import Comparison
from core.study import Study
from core.tables import to_csv
from tests.comparisons import make
from tests.core.benches import alike, bench, trace
from tests.core.report.demo import MADE, demo_sources


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


class OnePicture:
    """Draws one picture and one page, whatever it is asked for."""

    def __init__(self) -> None:
        self.styles: list[Style] = []

    def pictures(self, drawable: Drawable, style: Style, year: int) -> Sequence[Picture]:
        self.styles.append(style)
        svg = f'<svg viewBox="0 0 1 1"><desc>{style}</desc></svg>'
        return (Picture("comparison", "Comparison", "Alder least.", svg, b"\x89PNG", "Compare"),)

    def pdf(self, report: Report) -> bytes:
        return f"%PDF {len(report.blocks)}".encode()


def results(two: tuple[Study, Comparison]) -> Sources:
    return Sources(Drawable(two[0], two[1], {}, {}), MADE.year)


def test_everything_is_written_into_one_folder(two: tuple[Study, Comparison], tmp_path: Path) -> None:
    painter = OnePicture()
    written = write_files(results(two), tmp_path / "out", MADE, painter, "dark", ["rowan.csv: 1 gap"])
    names = {str(path.relative_to(tmp_path / "out")) for path in written.paths}
    assert {"comparison.csv", "comparison.xlsx", "comparison.md", "report.html", "report.pdf"} <= names
    assert {"comparison.png", "comparison.svg", "tables/runs.csv", "tables/pairs.csv"} <= names
    assert all(path.is_file() for path in written.paths)
    # pictures as asked for, those of the report as paper is
    assert painter.styles == ["dark", "light"]
    assert "dark" in (tmp_path / "out" / "comparison.svg").read_text()
    assert "rowan.csv: 1 gap" in (tmp_path / "out" / "report.html").read_text()
    assert written.summary.endswith("tables and 2 pictures")


def test_files_can_be_written_again_over_themselves(two: tuple[Study, Comparison], tmp_path: Path) -> None:
    first = write_files(results(two), tmp_path, MADE, OnePicture())
    before = {path: path.read_bytes() for path in first.paths}
    again = write_files(results(two), tmp_path, MADE, OnePicture())
    assert first.paths == again.paths
    assert {path: path.read_bytes() for path in again.paths} == before


def test_no_table_in_any_file_holds_a_formula(two: tuple[Study, Comparison], tmp_path: Path) -> None:
    openpyxl = pytest.importorskip("openpyxl")
    written = write_files(results(two), tmp_path, MADE, OnePicture())
    for path in written.paths:
        if path.suffix == ".csv":
            cells = [cell for row in csv.reader(io.StringIO(path.read_text("utf-8"))) for cell in row]
            assert cells
            for cell in cells:
                assert not cell.startswith(("=", "+", "@")), (path, cell)
    book = openpyxl.load_workbook(tmp_path / "comparison.xlsx")
    filled = [cell for sheet in book for row in sheet.iter_rows() for cell in row if cell.value is not None]
    assert {cell.data_type for cell in filled} <= {"s", "n"}
    quoted = {cell.value for cell in filled if cell.data_type == "s" and cell.quotePrefix}
    assert quoted == {"=Rowan|1", "=rowan|1.csv"}
    assert book.sheetnames[0] == "Comparison"
    assert book.sheetnames[-1] == "Method"
    book.close()


def test_the_method_sheet_says_boundary_meters_program_and_day(two: tuple[Study, Comparison]) -> None:
    rows = {str(what): str(how) for what, how in method_table(results(two), MADE).rows}
    assert "first heating" in rows["Boundary"]
    assert any(what.startswith("Meter: ") and "% of reading" in how for what, how in rows.items())
    assert rows["Program"].startswith("Samepart ")
    assert rows["Made on"] == MADE.isoformat()
    for quantity in ("Energy per part [Wh]", "Parts per kWh", "Mean power [W]", "Bed share [%]"):
        assert rows[quantity]


def test_every_table_of_the_demo_has_a_cell_a_column_and_both_forms() -> None:
    tables = study_tables(demo_sources())
    keys = [table.key for table in tables]
    assert len(set(keys)) == len(keys)
    wanted = {"comparison", "runs", "pairs", "budgets", "like-for-like", "line-up", "held-beds", "cooler-bed"}
    assert wanted | {"loads", "standby", "hours", "print", "meters", "logs", "fairness"} <= set(keys)
    for table in tables:
        for form in (table.data, table.shown):
            assert form.rows
            assert {len(row) for row in form.rows} == {len(form.columns)}, table.key
            assert len({column.key for column in form.columns}) == len(form.columns), table.key
        numbers = [cell for row in table.data.rows for cell in row if isinstance(cell, float)]
        assert all(math.isfinite(number) for number in numbers), table.key


def test_times_in_files_are_iso() -> None:
    (runs,) = [table.data for table in study_tables(demo_sources()) if table.key == "runs"]
    at = [column.key for column in runs.columns].index("start")
    starts = [str(row[at]) for row in runs.rows]
    assert all(datetime.fromisoformat(start) for start in starts)
    assert all("T" in start for start in starts)
