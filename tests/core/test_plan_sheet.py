"""The run sheet of a plan goes round: written, filled in, rewritten by a spreadsheet, read back, compared."""

import csv
import io
from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from core import edits
from core.edits.sheets import LoggedRun
from core.plan.filled import sheet_of
from core.plan.sheet import order_table, run_sheet, sheet_csv, sheet_table
from core.problems import Problem
from core.results.compare import compare
from core.run_sheet import add_sheet
from core.study import Source, Study
from core.wording import placed

NAMES = ("Alder", "=Birch", "Cedar; the +small", "'Rowan")
#: what a clip takes on each, in watt hours, and how long, in minutes
TRUE_WH = {"Alder": 21.0, "=Birch": 24.0, "Cedar; the +small": 24.4, "'Rowan": 33.0}
BEGUN = datetime(2026, 6, 15, 8, 30)  # noqa: DTZ001  # a sheet is filled in by the wall clock


def planned() -> Study:
    study = edits.new_study("s", name="Clips").study
    for name in NAMES:
        study = edits.add_machine(study, name).study
    for name in ("Meter 1", "Meter 2"):
        study = edits.add_meter(study, name).study
    study = edits.set_bed_c(study, 60.0).study
    study = edits.set_plan_temperature(study, "nozzle_c", 210.0).study
    study = edits.set_plan_temperature(study, "first_layer_bed_c", 65.0).study
    return edits.plan_repeats(study, 3).study


Rows = list[dict[str, str]]


def rows_of(text: str) -> Rows:
    return [row for row in csv.DictReader(io.StringIO(text)) if not (row["row"] or "").startswith("#")]


def filled(study: Study) -> Rows:
    """The sheet as somebody fills it in: machines differ, repeats and the counting display as they do."""
    rows = rows_of(sheet_csv(run_sheet(study)))
    display_kwh = {"Meter 1": 12.34, "Meter 2": 907.115}
    at = BEGUN
    for i, row in enumerate(rows):
        name = row["machine"].removeprefix("'") if row["machine"] != "'Rowan" else "'Rowan"
        name = name.replace(";'", ";").replace("; '+", "; +")
        energy_wh = 100.0 if row["row"] == "same load" else TRUE_WH[name] + 0.2 * (i % 3)
        before = display_kwh[row["meter"]]
        after = before + round(energy_wh) / 1000
        display_kwh[row["meter"]] = after
        row |= {
            "start": f"{at:%Y-%m-%d %H:%M}",
            "end": f"{at + timedelta(minutes=40):%Y-%m-%d %H:%M}",
            "display_start_kwh": f"{before:.3f}",
            "display_end_kwh": f"{after:.3f}",
            "room_c": f"{20.5 + 0.5 * (i % 4):g}",
            "remarks": "the door was open, briefly" if i == 5 else "",
        }
        at += timedelta(minutes=75)
    return rows


def written(rows: Rows) -> bytes:
    out = io.StringIO()
    writer = csv.DictWriter(out, list(rows[0]))
    writer.writeheader()
    writer.writerows(rows)
    return out.getvalue().encode()


def by_spreadsheet(rows: Rows) -> bytes:
    """Semicolons, decimal commas, a mark at the start, dates of the country, as a spreadsheet saves them."""

    def local(row: dict[str, str]) -> dict[str, str]:
        changed = dict(row)
        for key in ("display_start_kwh", "display_end_kwh", "room_c", "bed_c"):
            changed[key] = row[key].replace(".", ",")
        for key in ("start", "end"):
            changed[key] = f"{datetime.fromisoformat(row[key]):%d.%m.%Y %H:%M}"
        return changed

    out = io.StringIO()
    writer = csv.DictWriter(out, list(rows[0]), delimiter=";", lineterminator="\r\n")
    writer.writeheader()
    writer.writerows(local(row) for row in rows)
    return "\ufeff".encode() + out.getvalue().encode()


def american(rows: Rows) -> bytes:
    def local(row: dict[str, str]) -> dict[str, str]:
        moved = dict(row)
        for key in ("start", "end"):
            at = datetime.fromisoformat(row[key])
            moved[key] = f"{at.month}/{at.day}/{at.year} {at:%I:%M %p}"
        return moved

    return written([local(row) for row in rows])


def wide(rows: Rows) -> bytes:
    return written(rows).decode().replace(",", "\t").encode("utf-16")


def read(study: Study, data: bytes) -> tuple[Study, tuple[Problem, ...]]:
    edit, problems = edits.take_in_sheet(study, sheet_of(data, "sheet.csv"))
    return edit.study, problems


def test_the_sheet_has_a_row_a_run_and_a_check_of_the_meters_before_and_after() -> None:
    rows = rows_of(sheet_csv(run_sheet(planned())))
    assert [r["row"] for r in rows] == ["same load"] * 2 + ["run"] * 12 + ["same load"] * 2
    assert [r["run"] for r in rows[2:14]] == [str(n) for n in range(1, 13)]
    assert {r["bed_c"] for r in rows[2:14]} == {"60"}
    assert {r["first_layer_bed_c"] for r in rows[2:14]} == {"65"}
    assert {r["starting_state"] for r in rows[2:14]} == {"cold"}
    blanks = ("start", "end", "display_start_kwh", "display_end_kwh", "energy_wh", "room_c", "remarks")
    assert {row[name] for row in rows for name in blanks} == {""}


def test_no_cell_of_the_sheet_is_a_formula() -> None:
    study = edits.rename_part(planned(), "=cmd|' /C calc'!A0").study
    study = edits.set_plan_material(study, "@SUM(A1)").study
    for line in csv.reader(io.StringIO(sheet_csv(run_sheet(study)))):
        assert not any(cell.lstrip().startswith(("=", "+", "-", "@")) for cell in line)


@pytest.mark.parametrize("form", [written, by_spreadsheet, american, wide])
def test_a_filled_sheet_goes_round(form: Callable[[Rows], bytes]) -> None:
    study = planned()
    if form is wide:  # a cell with a comma would be torn at it
        rows = [row | {"remarks": row["remarks"].replace(",", "")} for row in filled(study)]
    else:
        rows = filled(study)
    after, problems = read(study, form(rows))
    assert problems == ()
    assert after.machines == study.machines
    assert after.meters == study.meters
    assert len(after.typed) == 12
    runs = [row for row in rows if row["row"] == "run"]
    for typed, row in zip(after.typed, runs, strict=True):
        counted = 1000 * (float(row["display_end_kwh"]) - float(row["display_start_kwh"]))
        assert typed.energy_wh == pytest.approx(counted, abs=1e-6)
        assert typed.step_wh == pytest.approx(1.0)
        assert typed.seconds == 2400.0
        assert typed.started == row["start"].replace(" ", "T")
        assert (typed.bed_c, typed.nozzle_c, typed.first_layer_bed_c) == (60.0, 210.0, 65.0)
        assert typed.room_c == float(row["room_c"])
        assert typed.starting_state == "cold"
        assert after.meter(typed.meter_id).name == row["meter"]
    assert {t.machine_id for t in after.typed} == {m.id for m in after.machines}
    assert next(t.note for t in after.typed if "door" in t.note).startswith("run 4: the door was open")
    # both checks: one hour each would do; here forty minutes of 100 Wh
    for check in after.checks:
        assert [check.reading, check.other_reading] == pytest.approx([100.0, 100.0])
        assert check.seconds == 2400.0
    assert len(after.checks) == 2


def test_what_was_read_back_is_compared() -> None:
    study = planned()
    after, _ = read(study, by_spreadsheet(filled(study)))
    comparison = compare(after, {})
    assert [m.name for m in comparison.machines] == ["Alder", "=Birch", "Cedar; the +small", "'Rowan"]
    for machine in comparison.machines:
        assert machine.energy_wh is not None
        assert machine.energy_wh.value == pytest.approx(TRUE_WH[machine.name], abs=0.7)
        assert len(machine.included) == 3
    first, last = comparison.machines[0], comparison.machines[-1]
    assert any(
        p.shown and {p.machine_id, p.other_id} == {first.machine_id, last.machine_id}
        for p in comparison.pairs
    )


def test_reading_a_sheet_again_adds_only_what_is_new() -> None:
    study = planned()
    rows = filled(study)
    half = [
        row
        if i < 8
        else row | dict.fromkeys(("start", "end", "display_start_kwh", "display_end_kwh", "room_c"), "")
        for i, row in enumerate(rows)
    ]
    once, problems = read(study, written(half))
    assert [placed(p) for p in problems] == [
        "sheet.csv, row 10: The rows 10 to 15 have no energy yet; fill them in, in Wh or as two readings of "
        "the display."
    ]
    assert len(once.typed) == 6
    both, problems = read(once, written(rows))
    assert len(both.typed) == 12
    assert len(both.checks) == 2
    assert {p.code for p in problems} == {"sheet.known"}
    again, _ = read(both, by_spreadsheet(rows))
    assert again == both


def test_a_row_left_out_by_the_user_is_not_read_again() -> None:
    study = planned()
    rows = filled(study)
    once, _ = read(study, written(rows))
    once = edits.leave_out_typed(once, once.typed[0].id, "jammed").study
    assert read(once, written(rows))[0] == once


def test_a_run_that_a_log_holds_gets_the_conditions_of_its_row() -> None:
    study = planned()
    log = edits.NewLog((Source("d", "alder.csv"),), "Alder", (edits.FoundRun(0.0, 2400.0, "run", "A"),))
    study = edits.import_logs(study, [log]).study
    rows = [r for r in filled(study) if r["row"] == "run"]
    row = next(r for r in rows if r["machine"] == "Alder")
    row |= {"meter": "Meter 2", "remarks": "window open", "display_start_kwh": "", "display_end_kwh": ""}
    start = datetime.fromisoformat(row["start"])
    logged = {"Alder": [LoggedRun(study.runs[0].id, start, start + timedelta(minutes=41))]}
    sheet = sheet_of(written([row]), "sheet.csv")
    edit, problems = edits.take_in_sheet(study, sheet, logged)
    run = edit.study.runs[0]
    assert [p.code for p in problems] == ["sheet.logged"]
    assert edit.study.typed == ()
    assert (run.bed_c, run.room_c) == (60.0, float(row["room_c"]))
    assert (run.nozzle_c, run.first_layer_bed_c) == (210.0, 65.0)
    assert run.name.endswith(": window open")
    assert edit.study.meter(edit.study.logs[0].meter_id).name == "Meter 2"


@pytest.mark.parametrize(
    ("minutes", "is_logged"), [(-10, True), (0, True), (39, True), (-20, False), (50, False)]
)
def test_a_start_without_an_end_finds_its_run(minutes: int, is_logged: bool) -> None:
    study = planned()
    log = edits.NewLog((Source("d", "alder.csv"),), "Alder", (edits.FoundRun(0.0, 2400.0, "run", "A"),))
    study = edits.import_logs(study, [log]).study
    logged = {"Alder": [LoggedRun(study.runs[0].id, BEGUN, BEGUN + timedelta(minutes=40))]}
    start = f"{BEGUN + timedelta(minutes=minutes):%Y-%m-%d %H:%M}"
    row = {"machine": "Alder", "run": "1", "start": start, "room_c": "19.5", "energy_wh": "21"}
    edit, problems = edits.take_in_sheet(study, sheet_of(written([row]), "sheet.csv"), logged)
    assert [p.code for p in problems] == (["sheet.logged"] if is_logged else [])
    assert edit.study.runs[0].room_c == (19.5 if is_logged else None)
    assert len(edit.study.typed) == (0 if is_logged else 1)


def check_rows(**changed: str) -> bytes:
    first = {"row": "same load", "run": "check", "machine": "", "meter": "Meter 1", "energy_wh": "100.0"}
    first |= {"start": "9:00", "end": "10:00"}
    other = first | {"meter": "Meter 2", "energy_wh": "51.0", "start": "10:05", "end": "10:35"} | changed
    return written([first, other])


def test_a_check_of_unlike_lengths_is_brought_to_one() -> None:
    after, problems = read(planned(), check_rows())
    assert problems == ()
    (check,) = after.checks
    assert [check.reading, check.seconds, check.step] == pytest.approx([100.0, 3600.0, 0.1])
    # half an hour of a steady load counts half of it
    assert [check.other_reading, check.other_step] == pytest.approx([102.0, 0.2])


def test_a_load_on_three_meters_holds_two_against_the_first() -> None:
    study = edits.add_meter(planned(), "Meter 3").study
    before = [row for row in rows_of(sheet_csv(run_sheet(study))) if row["run"] == "check before"]
    assert [row["meter"] for row in before] == ["Meter 1", "Meter 2", "Meter 3"]
    for row, energy in zip(before, ("100", "101", "99"), strict=True):
        row |= {"start": "9:00", "end": "10:00", "energy_wh": energy}
    after, problems = read(study, written(before))
    assert problems == ()
    names = {m.id: m.name for m in after.meters}
    assert [(names[c.meter_id], names[c.other_id], c.other_reading) for c in after.checks] == [
        ("Meter 1", "Meter 2", 101.0),
        ("Meter 1", "Meter 3", 99.0),
    ]


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"energy_wh": ""}, "takes two filled rows"),
        ({"meter": "Meter 1"}, "takes two filled rows"),
        ({"end": ""}, "needs its start and end"),
        ({"energy_wh": "9"}, "too far apart for one load"),
        ({"energy_wh": "some"}, "is no energy"),
    ],
)
def test_a_check_that_cannot_be_used_says_why(changed: dict[str, str], words: str) -> None:
    after, problems = read(planned(), check_rows(**changed))
    assert after.checks == ()
    assert words in " ".join(placed(p) for p in problems)


def test_energies_that_disagree_are_told() -> None:
    row = {"machine": "Alder", "run": "1", "display_start_kwh": "1.000", "display_end_kwh": "1.021"}
    agreed, none = read(planned(), written([row | {"energy_wh": "21"}]))
    assert none == ()
    after, problems = read(planned(), written([row | {"energy_wh": "24"}]))
    assert [p.code for p in problems] == ["sheet.energies_differ"]
    assert [t.energy_wh for t in (*agreed.typed, *after.typed)] == [21.0, 24.0]


@pytest.mark.parametrize(
    ("start", "end", "seconds"),
    [
        ("2026-06-15 09:00", "09:40", 2400.0),
        ("2026-06-15 23:50", "00:30", 2400.0),
        ("15/06/2026 9:00", "15/06/2026 9:40", 2400.0),
        ("6/15/26 9:00 AM", "6/15/26 9:40 AM", 2400.0),
        ("2:00 pm", "2:40 PM", 2400.0),
        ("14.00", "14.40", 2400.0),
        ("15. Juni 2026 09:00", "15. Juni 2026 09:40", 2400.0),
        ("25 Oct 2026 01:30", "25 Oct 2026 02:10", 2400.0),
    ],
)
def test_times_as_people_and_spreadsheets_write_them(start: str, end: str, seconds: float) -> None:
    row = {"machine": "Alder", "run": "1", "energy_wh": "21", "start": start, "end": end}
    after, problems = read(planned(), written([row]))
    assert problems == ()
    assert after.typed[0].seconds == seconds


def test_day_and_month_are_told_from_all_rows() -> None:
    rows = [
        {"machine": "Alder", "energy_wh": "21", "start": f"{d}/06/2026 9:00", "end": f"{d}/06/2026 9:40"}
        for d in ("05", "06", "13")
    ]
    after, problems = read(planned(), written(rows))
    assert problems == ()
    assert [t.started[:10] for t in after.typed] == ["2026-06-05", "2026-06-06", "2026-06-13"]


def test_a_temperature_that_is_none_is_told_and_left_out() -> None:
    row = {"machine": "Alder", "energy_wh": "21", "room_c": "warm", "bed_c": "60 °C", "nozzle_c": "2100"}
    after, problems = read(planned(), written([row]))
    assert [placed(p).split(": ", 1)[1].split(" is")[0] for p in problems] == ["'warm'", "'2100'"]
    assert (after.typed[0].bed_c, after.typed[0].room_c, after.typed[0].nozzle_c) == (60.0, None, None)


def test_two_machines_of_one_name_are_told_apart() -> None:
    study = edits.add_machine(planned(), "Alder").study
    rows = filled_names(study)
    assert {"Alder [a1]", "Alder [a5]"} <= rows
    row = {"machine": "Alder [a5]", "run": "1", "energy_wh": "21"}
    after, _ = read(study, written([row]))
    assert after.typed[0].machine_id == "a5"
    assert len(after.machines) == 5


def filled_names(study: Study) -> set[str]:
    return {str(row["machine"]) for row in rows_of(sheet_csv(run_sheet(study)))}


def test_the_order_on_screen_is_that_of_the_file() -> None:
    study = edits.plan_at_once(planned(), 2).study
    sheet = run_sheet(study)
    shown, kept = order_table(sheet), sheet_table(sheet)
    assert [r[0] for r in shown.rows] == [r[1] for r in kept.rows]
    assert [c.title for c in shown.columns][2] == "At the same time"
    assert [r[3] for r in shown.rows[2:-2]] == [r[4] for r in kept.rows[2:-2]]


def test_without_machines_there_is_no_row() -> None:
    sheet = run_sheet(edits.new_study("s").study)
    assert sheet.rows == ()
    assert rows_of(sheet_csv(sheet)) == []


def test_the_sheet_says_what_is_alike_and_what_can_hurt() -> None:
    words = " ".join(run_sheet(planned()).conditions)
    assert "bed 60 °C and nozzle 210 °C; first layer: bed 65 °C" in words
    assert "3 blocks of 4 machines, 12 runs in all, in the order of seed 1" in words
    assert "2 meters go round: each machine is measured with each meter 1 to 2 times" in words
    cautions = " ".join(run_sheet(planned()).cautions)
    for hazard in ("Mains", "qualified electrician", "Hot parts", "Unattended", "fan"):
        assert hazard in cautions


def test_the_command_line_reads_the_file_that_was_written(tmp_path: Path) -> None:
    study = planned()
    path = tmp_path / "sheet.csv"
    path.write_bytes(by_spreadsheet(filled(study)))
    after, problems = add_sheet(edits.new_study("s").study, path)
    assert problems == ()
    assert {m.name for m in after.machines} == set(NAMES)
    assert {m.name for m in after.meters} == {"Meter 1", "Meter 2"}
    assert len(after.typed) == 12
