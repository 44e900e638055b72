"""Filled run sheets, as people and spreadsheets write them."""

from datetime import datetime
from pathlib import Path

import pytest

from core import edits
from core.comparing import gather
from core.edits.sheets import LoggedRun
from core.plan.sheet import run_sheet, sheet_csv
from core.run_sheet import add_sheet, is_run_sheet
from core.study import Source, Study
from core.wording import placed

EMPTY = edits.new_study("s").study


def read(tmp_path: Path, text: str | bytes, study: Study = EMPTY) -> tuple[Study, list[str]]:
    path = tmp_path / "sheet.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    after, problems = add_sheet(study, path)
    return after, [placed(p).removeprefix(f"{path}") for p in problems]


SHEET = """machine,run,start,end,energy
Alder,1,2026-06-15 09:00,2026-06-15 09:38,21.4
Alder,2,10:15,10:53,21.9
Rowan,first,23:30,00:54,33
"""


def test_a_plain_sheet(tmp_path: Path) -> None:
    study, problems = read(tmp_path, SHEET)
    assert problems == []
    assert [m.name for m in study.machines] == ["Alder", "Rowan"]
    assert [(t.energy_wh, t.seconds, t.step_wh, t.note) for t in study.typed] == [
        (21.4, 38 * 60, 0.1, "run 1"),
        (21.9, 38 * 60, 0.1, "run 2"),
        (33.0, 84 * 60, 1.0, "first"),
    ]
    # each machine may have been measured with a meter of its own
    assert len({t.meter_id for t in study.typed}) == 2


@pytest.mark.parametrize(
    ("text", "energy_wh", "step_wh"),
    [
        ("Machine;Energy [Wh]\nAlder;21,4\n", 21.4, 0.1),
        ("\ufeffmachine\tenergy_kWh\nAlder\t0.0214\n", 21.4, 0.1),
        ("energy,machine\n21.4 Wh,Alder\n", 21.4, 0.1),
        ("machine,start reading kWh,end reading kWh\nAlder,12.31,12.33\n", 20.0, 10.0),
        ("machine,display start,display end\nAlder,1231,1252\n", 21.0, 1.0),
        ("\n\nmachine,start [kWh],end [kWh]\nAlder,12.310,12.331\n", 21.0, 1.0),
    ],
)
def test_headings_units_and_decimal_signs(
    tmp_path: Path, text: str, energy_wh: float, step_wh: float
) -> None:
    study, problems = read(tmp_path, text)
    assert problems == []
    (typed,) = study.typed
    assert typed.energy_wh == pytest.approx(energy_wh)
    assert typed.step_wh == pytest.approx(step_wh)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_encodings_of_spreadsheets(tmp_path: Path, encoding: str) -> None:
    study, problems = read(tmp_path, "machine,energy\nÜberlänge,20\n".encode(encoding))
    assert problems == []
    assert study.machines[0].name == "Überlänge"


def test_a_machine_of_the_study_keeps_its_meter(tmp_path: Path) -> None:
    study = edits.add_machine(EMPTY, "Alder").study
    study = edits.add_typed(study, study.machines[0].id, 20.0).study
    after, _ = read(tmp_path, "machine,energy\nAlder,21\n", study)
    assert len(after.machines) == 1
    assert {t.meter_id for t in after.typed} == {study.typed[0].meter_id}


def test_a_run_that_a_log_holds_counts_once(tmp_path: Path) -> None:
    path = tmp_path / "sheet.csv"
    path.write_text(
        "machine,start,end,energy\n"
        "Alder,2026-06-15 09:02,2026-06-15 09:39,21.4\n"
        "Alder,2026-06-16 09:00,2026-06-16 09:38,21.5\n"
        "Alder,10:00,10:38,21.6\n"
        "Rowan,10:00,11:24,33\n"
    )
    logs = [edits.NewLog((Source("d", "alder.csv"),), "Alder", (edits.FoundRun(120.0, 2400.0, "run", "A"),))]
    logged_study = edits.import_logs(EMPTY, logs).study
    start, end = (datetime.fromisoformat(f"2026-06-15 09:{m}") for m in ("00", "38"))
    logged = {"Alder": [LoggedRun(logged_study.runs[0].id, start, end)], "Rowan": []}
    study, problems = add_sheet(logged_study, path, logged)
    assert [t.energy_wh for t in study.typed] == [21.5, 21.6, 33.0]
    assert [(p.row, p.code) for p in problems] == [(2, "sheet.logged"), (4, "sheet.beside_log")]


@pytest.mark.parametrize(
    ("row", "message"),
    [
        (",1,,,20", ", row 2: The row names no machine; it was not used."),
        ("Alder,1,,,about 20", ", row 2: 'about 20' is no energy; write a number, such as 21.4."),
        ("Alder,1,,,-3", ", row 2: '-3' is no energy; write a number, such as 21.4."),
        (
            "Alder,1,,,",
            ", row 2: The row has no energy; fill it in, in Wh or as two readings of the display.",
        ),
        ("Alder", ", row 2: The row has no energy; fill it in, in Wh or as two readings of the display."),
    ],
)
def test_a_row_that_cannot_be_used_leaves_the_others_alone(tmp_path: Path, row: str, message: str) -> None:
    study, problems = read(tmp_path, f"machine,run,start,end,energy\n{row}\nRowan,1,,,30\n")
    assert problems == [message]
    assert [t.energy_wh for t in study.typed] == [30.0]


@pytest.mark.parametrize(
    ("start", "end", "words"),
    [
        ("soon", "10:00", "'soon' is no time"),
        ("2026-06-15 10:00", "2026-06-15 09:00", "ends before it starts"),
        ("2026-06-15T10:00:00+02:00", "2026-06-15 11:00", "is no time"),
    ],
)
def test_a_bad_time_loses_the_duration_only(tmp_path: Path, start: str, end: str, words: str) -> None:
    study, problems = read(tmp_path, f"machine,run,start,end,energy\nAlder,1,{start},{end},20\n")
    assert len(problems) == 1
    assert words in problems[0]
    assert [(t.energy_wh, t.seconds) for t in study.typed] == [(20.0, None)]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "it is without text"),
        ("\n\n", "it is without text"),
        ("run,start,end\n1,2,3\n", "no column named machine and energy"),
        ("machine,run\nAlder,1\n", "no column named energy"),
        ("\0\0\0", "it is without text"),
    ],
)
def test_what_is_no_run_sheet(tmp_path: Path, text: str, words: str) -> None:
    study, problems = read(tmp_path, text)
    assert study == EMPTY
    assert len(problems) == 1
    assert words in problems[0]


def test_no_such_file_a_folder_and_something_huge(tmp_path: Path) -> None:
    huge = tmp_path / "huge.csv"
    with huge.open("wb") as file:
        file.truncate(2_000_000_000)
    for path, words in (
        (tmp_path / "none.csv", "there is no such file"),
        (tmp_path, "it is no file"),
        (huge, "far larger"),
    ):
        study, (problem,) = add_sheet(EMPTY, path)
        assert study == EMPTY
        assert words in placed(problem)


def test_a_workbook_is_asked_for_as_text(tmp_path: Path) -> None:
    from core.spreadsheet import write_spreadsheet
    from core.tables import Column, Table

    path = tmp_path / "sheet.xlsx"
    columns = (Column("machine", "machine", "left"), Column("energy_wh", "energy_wh"))
    write_spreadsheet(path, [Table("sheet", columns, (("Alder", 21.0),))])
    study, (problem,) = add_sheet(EMPTY, path)
    assert study == EMPTY
    assert placed(problem).endswith(
        "It could not be read as a run sheet: it is a packed file, such as a workbook; save it as CSV text."
    )


def test_any_bytes_at_all(tmp_path: Path) -> None:
    for seed in range(64):
        data = bytes((seed * 37 + i * i * 11) % 256 for i in range(200))
        read(tmp_path, data)
        read(tmp_path, b"machine,energy\n" + data)


def saved_sheet() -> str:
    study = edits.add_machine(EMPTY, "Alder").study
    return sheet_csv(run_sheet(edits.add_meter(study, "Meter 1").study))


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16"])
@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_a_sheet_is_known_from_a_log_however_it_was_saved(
    tmp_path: Path, encoding: str, delimiter: str
) -> None:
    path = tmp_path / "sheet.csv"
    path.write_bytes(saved_sheet().replace(",", delimiter).encode(encoding))
    assert is_run_sheet(path)


@pytest.mark.parametrize(
    "text", ["", "time,power\n2026-03-02T08:00:00Z,4\n", "machine,run,energy,start,end\n"]
)
def test_a_log_is_no_sheet(tmp_path: Path, text: str) -> None:
    path = tmp_path / "log.csv"
    path.write_text(text)
    assert not is_run_sheet(path)
    assert not is_run_sheet(tmp_path)
    assert not is_run_sheet(tmp_path / "gone.csv")


def test_a_sheet_named_beside_logs_is_taken_in_as_one(tmp_path: Path) -> None:
    path = tmp_path / "sheet.csv"
    path.write_text(
        "row,run,block,machine,meter,starting_state,start,end,energy_wh,remarks\n"
        "run,1,1,Alder,Meter 1,cold,2026-06-15 09:00,2026-06-15 09:38,21.4,\n"
    )
    for named in (path, tmp_path):  # or as one that lies in a folder of logs
        gathered = gather([named])
        assert [t.energy_wh for t in gathered.study.typed] == [21.4]
        assert gathered.study.logs == ()
        assert gathered.problems == ()
