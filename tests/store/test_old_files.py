"""Files of every past version open with all that was in them."""

import shutil
from pathlib import Path

import pytest

from core.store.schema import VERSION
from core.study import Choices, Log, Machine, Meter, Run, Source, Study, TypedReading
from tests.core.store.files import dump, opened
from tests.store.old import make_version_1, make_version_2

OLD = Path(make_version_1.__file__).parent


@pytest.fixture
def version_1(tmp_path: Path) -> Path:
    return Path(shutil.copy(OLD / "version_1.samepart", tmp_path))


def test_there_is_a_file_of_every_version():
    assert {path.name for path in OLD.glob("*.samepart")} == {
        f"version_{n}.samepart" for n in range(1, VERSION + 1)
    }


def test_version_1_opens_with_study_steps_and_log(version_1: Path):
    machine = Machine("a1", "Alder", 0, (("bed area", 5.5), ("closed", True), ("supply", "mains")))
    choices = Choices(delimiter=",", sampling="sampled", columns=((0, "time", "s"), (1, "power", "W")))
    run = Run("r1", "g1", 5.0, 25.0, set_end_s=27.5, set_included=False, why_left_out="door open")
    expected = Study(
        id="7d9f",
        bed_c=60.0,
        machines=(machine,),
        meters=(Meter("m1", "Meter"),),
        logs=(Log("g1", "a1", "m1", (Source(make_version_1.DIGEST, "alder.csv", choices=choices),)),),
        runs=(run,),
        typed=(TypedReading("t1", "a1", "m1", 21.0, 1800.0, note="from the display"),),
    )
    with opened(version_1) as file:
        assert file.history.study == expected
        assert file.history.redo().study.part == "hose clip"
        assert file.history.undo().study.runs == (Run("r1", "g1", 5.0, 25.0),)
        assert file.history.undo().undo().study == Study(id="7d9f", bed_c=60.0)
        assert [step.label for step in file.history.past] == ["New study", "Import a log"]
        assert file.history.undo_label == "Leave out Alder, run 1"
        assert file.blob(make_version_1.DIGEST) == make_version_1.LOG
        assert file.write(file.history, file.history.redo()) is None


def test_version_2_opens_with_a_log_that_shares_a_part(tmp_path: Path):
    with opened(Path(shutil.copy(OLD / "version_2.samepart", tmp_path))) as file:
        (log,) = file.history.study.logs
        assert log.sources[0].digest == make_version_2.GROWN
        assert file.blob(make_version_2.GROWN) == make_version_1.LOG + make_version_2.MORE


def test_version_2_file_is_what_its_script_makes(tmp_path: Path):
    made = tmp_path / "made.samepart"
    make_version_2.build(made)
    assert dump(made) == dump(OLD / "version_2.samepart")


def test_version_1_file_is_what_its_script_makes(version_1: Path, tmp_path: Path):
    made = tmp_path / "made.samepart"
    make_version_1.build(made)
    assert dump(made) == dump(version_1)
