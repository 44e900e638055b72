"""A bundle is English whatever the window speaks, and is held against its figures in any language."""

import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from core.bundle.writing import Contents, without_folders, write_bundle
from core.comparing import gather
from core.language import speak
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.results.compare import forget
from tests.core.bundle.made import MADE, bundle_of, logs_in


@pytest.fixture
def another_language() -> Iterator[None]:
    forget()  # results are remembered with their sentences: a program speaks one language from its start on
    speak(lambda text: f"«{text}»", "xx")
    yield
    speak(None)
    forget()


@pytest.fixture(scope="module")
def english(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("english")
    return bundle_of(logs_in(folder / "logs"), folder / "b.zip")


@pytest.mark.usefixtures("another_language")
def test_a_bundle_made_in_another_language_has_the_same_files(english: Path, tmp_path: Path) -> None:
    made = bundle_of(english.parent / "logs", tmp_path / "b.zip")
    with zipfile.ZipFile(english) as one, zipfile.ZipFile(made) as other:
        assert one.namelist() == other.namelist()
        signed = [name for name in other.namelist() if "«".encode() in other.read(name)]
        assert signed == []
        assert [name for name in one.namelist() if one.read(name) != other.read(name)] == []


@pytest.mark.usefixtures("another_language")
def test_what_was_remembered_in_another_language_stays_out(english: Path, tmp_path: Path) -> None:
    gathered = gather([english.parent / "logs"])
    study = without_folders(gathered.study)
    comparison = gathered.comparison_of(study)
    assert "«" in comparison.headline
    drawn = Drawable(study, comparison, gathered.traces, gathered.activities)
    contents = Contents(Sources(drawn, MADE.year), MADE, gathered.log_bytes, readings=gathered.readings)
    assert write_bundle(tmp_path / "b.zip", contents) == ()
    with zipfile.ZipFile(tmp_path / "b.zip") as made:
        assert [name for name in made.namelist() if "«".encode() in made.read(name)] == []


@pytest.mark.usefixtures("another_language")
def test_it_is_checked_in_another_language_too(english: Path) -> None:
    again = gather([english])
    checked = again.held_against_bundle(again.comparison())
    assert checked is not None
    assert checked.code == "bundle.figures_same"
