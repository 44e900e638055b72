"""The demo's bundle: every table of every page comes out of it again, to the last bit."""

from pathlib import Path

import pytest

from core.bundle.writing import Contents, without_folders, write_bundle
from core.comparing import gather
from core.personal.pseudonyms import pseudonyms
from core.personal.replacing import replace
from core.personal.search import personal_data
from core.places import demo_folder
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.report.tables import StudyTable, study_tables
from tests.core.report.demo import MADE, demo_gathered, demo_sources


def tables(sources: Sources) -> dict[str, StudyTable]:
    return {table.key: table for table in study_tables(sources)}


@pytest.fixture(scope="module")
def nearby() -> Sources:
    """The demo's results with files called by their names alone, as a bundle has them."""
    drawn = demo_sources().drawable
    study = without_folders(drawn.study)
    comparison = demo_gathered().comparison_of(study)
    return Sources(Drawable(study, comparison, drawn.traces, drawn.activities), MADE.year)


@pytest.mark.parametrize("with_logs", [True, False])
def test_every_table_is_equal_to_the_last_bit(nearby: Sources, tmp_path: Path, with_logs: bool) -> None:
    read = demo_gathered()
    path = tmp_path / "demo.zip"
    contents = Contents(nearby, MADE, read.log_bytes, with_logs=with_logs, readings=read.readings)
    assert write_bundle(path, contents) == ()
    again = gather([path] if with_logs else [path, demo_folder() / "logs"])
    assert [p for p in again.problems if p.code.startswith("bundle.")] == []
    drawn = Drawable(again.study, again.comparison(), again.traces, again.activities)
    found, wanted = tables(Sources(drawn, MADE.year)), tables(nearby)
    assert found.keys() == wanted.keys()
    assert len(found) > 10
    for key, table in wanted.items():
        assert found[key].data.rows == table.data.rows, key
        assert found[key].shown == table.shown, key


def test_the_demo_holds_no_personal_data_and_stays_itself(nearby: Sources) -> None:
    read = demo_gathered()
    found = personal_data(nearby.study, read.log_bytes)
    assert [p for p in found if p.kind != "device name"] == []
    made = replace(nearby.drawable, read.readings, read.log_bytes, pseudonyms(found))
    assert made.problems == ()
    wanted = tables(nearby)["comparison"].data.rows
    rows = tables(Sources(made.drawable, MADE.year))["comparison"].data.rows
    assert [row[1:] for row in rows] == [row[1:] for row in wanted]
