"""Opening bundles in the window as a user does, with the logs beside where they are missing."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from core.bundle.writing import without_folders
from core.comparing import gather
from core.json_answer import compared, dumps
from tests.core.bundle.made import bundle_of, logs_in
from tests.gui.driver import Driver, opened


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return logs_in(tmp_path_factory.mktemp("logs"))


@pytest.fixture
def driver(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path / "window") as made:
        yield made


def answer(driver: Driver) -> str:
    comparison = driver.session.comparison
    assert comparison is not None
    return dumps(compared(comparison, driver.session.study, ()))


def expected(logs: Path) -> str:
    found = gather([logs])
    study = without_folders(found.study)
    return dumps(compared(found.comparison_of(study), study, ()))


def test_a_dropped_bundle_becomes_a_study_with_the_same_figures(
    driver: Driver, logs: Path, tmp_path: Path
) -> None:
    bundle = bundle_of(logs, tmp_path / "b.zip")
    before = driver.session.path
    driver.drop(bundle)
    assert driver.session.path != before
    assert driver.session.is_untitled
    assert driver.session.problems == ()
    assert answer(driver) == expected(logs)


def test_a_bundle_without_logs_says_which_are_missing(driver: Driver, logs: Path, tmp_path: Path) -> None:
    bundle = bundle_of(logs, tmp_path / "b.zip", with_logs=False)
    driver.drop(bundle)
    codes = [p.code for p in driver.session.problems]
    assert codes == ["bundle.log_missing"] * 2  # each once, though it cannot be read from the study either
    assert len(driver.session.study.machines) == 2


def test_a_bundle_without_logs_dropped_with_them(driver: Driver, logs: Path, tmp_path: Path) -> None:
    bundle = bundle_of(logs, tmp_path / "b.zip", with_logs=False)
    driver.drop(bundle, logs)
    assert driver.session.problems == ()
    assert answer(driver) == expected(logs)


def test_a_damaged_bundle_leaves_the_open_study(driver: Driver, logs: Path, tmp_path: Path) -> None:
    bundle = bundle_of(logs, tmp_path / "b.zip")
    data = bundle.read_bytes()
    at = data.index(b"values.json") + 60
    bundle.write_bytes(data[:at] + b"xxxx" + data[at + 4 :])
    before = driver.session.path
    driver.drop(bundle)
    assert driver.session.path == before
    assert [p.code for p in driver.session.problems] == ["bundle.damaged"]


def test_a_bundle_is_opened_by_the_menu_too(driver: Driver, logs: Path, tmp_path: Path) -> None:
    bundle = bundle_of(logs, tmp_path / "b.zip")
    driver.do("action_open")
    driver.choose_file(bundle)
    assert len(driver.session.study.logs) == 2


def test_opened_and_undone_is_still_the_bundle(driver: Driver, logs: Path, tmp_path: Path) -> None:
    driver.drop(bundle_of(logs, tmp_path / "b.zip"))
    driver.session.undo()
    driver.settle()
    assert len(driver.session.study.logs) == 2
