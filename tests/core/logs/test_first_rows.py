"""The first rows of a file, for a person to see what was cut where."""

import gzip
import json

from core.logs import read_bytes
from core.logs.reading import CELL_KEPT, ROWS_KEPT

ROWS = [f"13.10.2026 09:{i:02d}:00;{i},5" for i in range(20)]
TEXT = "Zeit;Leistung (W);Notiz\n" + "".join(f"{row};{'x' * 60}\n" for row in ROWS)


def test_first_rows_are_the_file_s_own_words_cut_into_cells():
    (reading,) = read_bytes(TEXT.encode(), "log.csv").readings
    assert len(reading.first_rows) == ROWS_KEPT
    assert reading.first_rows[0] == (*ROWS[0].split(";"), "x" * CELL_KEPT)
    assert all(len(row) == len(reading.columns) for row in reading.first_rows)


def test_a_packed_file_shows_the_rows_inside():
    (packed,) = read_bytes(gzip.compress(TEXT.encode()), "log.csv.gz").readings
    (plain,) = read_bytes(TEXT.encode(), "log.csv").readings
    assert packed.first_rows == plain.first_rows


def test_a_table_of_another_program_shows_its_rows_too():
    rows = [{"time": f"2026-10-13T09:{i:02d}:00Z", "power_w": i} for i in range(20)]
    (reading,) = read_bytes(json.dumps(rows).encode(), "log.json").readings
    assert reading.first_rows[1][0] == "2026-10-13T09:01:00Z"
    assert float(reading.first_rows[1][1]) == 1.0
