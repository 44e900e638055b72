"""Names that nobody gave: in the language spoken, and English in what others check."""

from collections.abc import Iterator

import pytest

from core import edits
from core.given_names import called_in_english
from core.language import speak


@pytest.fixture
def another_language() -> Iterator[None]:
    texts = {"Untitled study": "Ohne Namen", "part": "Teil", "Meter of {machine}": "{machine}s Zähler"}
    speak(lambda text: texts.get(text, text), "xx")
    yield
    speak(None)


@pytest.mark.usefixtures("another_language")
def test_what_nobody_named_is_called_in_the_language_spoken_and_in_english_for_others() -> None:
    study = edits.type_reading(edits.new_study("s1").study, "Alder", 20.0).study
    study = edits.add_meter(study, "Blue one").study
    assert (study.name, study.part, study.meters[0].name) == ("Ohne Namen", "Teil", "Alders Zähler")
    told = called_in_english(study)
    assert (told.name, told.part) == ("Untitled study", "part")
    assert [meter.name for meter in told.meters] == ["Meter of Alder", "Blue one"]


@pytest.mark.usefixtures("another_language")
def test_what_a_person_named_stays() -> None:
    study = edits.rename_part(edits.new_study("s1", name="Clips").study, "clip").study
    assert called_in_english(study) == study


def test_nothing_changes_in_english() -> None:
    study = edits.type_reading(edits.new_study("s1").study, "Alder", 20.0).study
    assert called_in_english(study) is study
    assert study.meters[0].name == "Meter of Alder"
