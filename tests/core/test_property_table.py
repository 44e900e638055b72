"""The table of properties: its columns, its cells as people write them, pasted blocks, and the edits."""

from collections.abc import Callable, Iterator

import pytest

from core import edits
from core.beds.area import BED_AREA, bed_area_dm2
from core.beds.supply import BED_SUPPLY, bed_supply
from core.formatting import NumberLocale
from core.language import speak
from core.properties.paste import paste
from core.properties.table import (
    MOST_LETTERS,
    Column,
    columns_of,
    full_name,
    read_cell,
    value_of,
    why_not_a_column,
    written,
)
from core.study import Study

COMMA = NumberLocale(",")
WORDS = {
    "Bed supply": "Speisung",
    "mains": "Netz",
    "low voltage": "Kleinspannung",
    "yes": "ja",
    "no": "nein",
}
AGE = Column("Age (years)", "number")


@pytest.fixture
def study() -> Study:
    made = edits.new_study("s").study
    for name in ("Alder", "Birch", "Cedar"):
        made = edits.add_machine(made, name).study
    made = edits.add_property_column(made, "Age (years)", "number").study
    return edits.add_property_column(made, "Enclosure", "yes/no").study


def names(study: Study) -> list[str]:
    return [c.name for c in columns_of(study)]


def cell(study: Study, machine: str, name: str) -> object:
    return value_of(next(m for m in study.machines if m.name == machine), name)


def test_area_and_supply_of_the_bed_are_columns_before_the_own_ones(study: Study) -> None:
    assert names(study) == [BED_AREA, BED_SUPPLY, "Age (years)", "Enclosure"]
    assert [c.is_own for c in columns_of(study)] == [False, False, True, True]


def test_what_the_bed_page_writes_stands_in_the_table_and_the_other_way_round(study: Study) -> None:
    study = edits.set_bed_area(study, "a1", 5.5).study
    assert cell(study, "Alder", BED_AREA) == 5.5
    study = edits.set_property(study, "a2", BED_SUPPLY, "mains").study
    study = edits.set_property(study, "a2", BED_AREA, 4.0).study
    assert (bed_area_dm2(study.machine("a2")), bed_supply(study.machine("a2"))) == (4.0, "mains")


def test_an_area_under_another_name_takes_the_place_of_the_usual_column(study: Study) -> None:
    study = edits.set_property(study, "a1", "bed area (cm²)", 552.25).study
    assert names(study)[:2] == ["bed area (cm²)", BED_SUPPLY]
    assert not columns_of(study)[0].is_own


def test_what_only_a_machine_has_is_a_column_of_the_kind_of_its_values(study: Study) -> None:
    study = edits.set_property(study, "a1", "Noise", 40).study
    study = edits.set_property(study, "a2", "Hall", "north").study
    study = edits.set_property(study, "a3", "Hall", True).study
    kinds = {c.name: c.kind for c in columns_of(study)}
    assert (kinds["Noise"], kinds["Hall"]) == ("number", "words")


@pytest.mark.parametrize(
    ("text", "value"),
    [("5.5", 5.5), ("5,5", 5.5), (" 6 ", 6.0), ("6 years", 6.0), ("−3", -3.0), ("1e3", 1000.0), ("", None)],
)
def test_numbers_are_read_as_people_write_them(text: str, value: float | None) -> None:
    read = read_cell(text, AGE, COMMA)
    assert (read.value, read.why_not) == (value, "")


@pytest.mark.parametrize("text", ["five", "1_000", "nan", "inf", "1.234,5", "٣", "0x10", "5;5"])
def test_what_is_no_number_is_refused_with_what_to_write(text: str) -> None:
    read = read_cell(text, AGE, COMMA)
    assert read.value is None
    assert text in read.why_not
    assert "write one such as 2,5" in read.why_not


@pytest.mark.parametrize(("text", "value"), [("yes", True), ("No", False), ("x", True), ("FALSE", False)])
def test_yes_and_no_are_read(text: str, value: bool) -> None:
    assert read_cell(text, Column("Enclosure", "yes/no")).value is value


def test_cells_of_the_beds_are_held_to_what_the_bed_page_takes(study: Study) -> None:
    area, supply = columns_of(study)[:2]
    assert "above 0" in read_cell("0", area).why_not
    assert "“mains” or “low voltage”" in read_cell("a hamster", supply).why_not
    assert read_cell("24 V, low voltage", supply).value == "24 V, low voltage"


def test_words_that_are_too_long_are_refused() -> None:
    assert "at most" in read_cell("x" * (MOST_LETTERS + 1), Column("Note", "words")).why_not


@pytest.mark.parametrize("value", [0.1, 5.5, 1200.0, -3.25, 1 / 3, True, False, "moving bed", None])
def test_what_is_written_is_read_back(value: object) -> None:
    kind = {bool: "yes/no", str: "words"}.get(type(value), "number")
    text = written(value, COMMA)  # type: ignore[arg-type]
    back = read_cell(text, Column("c", kind), COMMA).value  # type: ignore[arg-type]
    assert back == (pytest.approx(value, abs=1e-9) if isinstance(value, float) else value)


def test_names_of_columns_are_refused_with_the_reason(study: Study) -> None:
    assert "needs a name" in why_not_a_column(study, "  ")
    assert "already" in why_not_a_column(study, "age (years)")
    assert why_not_a_column(study, "AGE (years)", but="Age (years)") == ""
    assert BED_AREA in why_not_a_column(study, "Area of the bed")
    assert "letters" in why_not_a_column(study, "x" * 100)
    assert why_not_a_column(study, full_name(" Noise  at standby", " dB ")) == ""


class TestEdits:
    def test_a_renamed_column_keeps_its_cells(self, study: Study) -> None:
        study = edits.set_property(study, "a1", "Age (years)", 3).study
        after = edits.rename_property_column(study, "Age (years)", "Age (months)").study
        assert "Age (months)" in names(after)
        assert cell(after, "Alder", "Age (months)") == 3.0
        assert cell(after, "Alder", "Age (years)") is None

    def test_a_removed_column_goes_with_its_cells(self, study: Study) -> None:
        study = edits.set_property(study, "a1", "Age (years)", 3).study
        after = edits.remove_property_column(study, "Age (years)").study
        assert "Age (years)" not in names(after)
        assert after.machine("a1").properties == ()

    def test_a_column_that_only_a_machine_has_can_be_renamed_and_removed(self, study: Study) -> None:
        study = edits.set_property(study, "a1", "Noise", 40).study
        after = edits.rename_property_column(study, "Noise", "Noise (dB)").study
        assert cell(after, "Alder", "Noise (dB)") == 40.0
        assert names(edits.remove_property_column(after, "Noise (dB)").study) == names(
            edits.remove_property_column(study, "Noise").study
        )

    def test_what_makes_no_sense_is_the_callers_mistake(self, study: Study) -> None:
        wrong: tuple[Callable[[], edits.Edit], ...] = (
            lambda: edits.add_property_column(study, "Enclosure", "words"),
            lambda: edits.rename_property_column(study, "Enclosure", "Age (years)"),
            lambda: edits.rename_property_column(study, BED_AREA, "Size"),
            lambda: edits.remove_property_column(study, "nothing"),
            lambda: edits.set_property(study, "a1", "Enclosure", 3.0),
            lambda: edits.fill_properties(study, [edits.NewCell("a9", "Enclosure", True)]),
        )
        for make in wrong:
            with pytest.raises(ValueError, match=r"column|machine"):
                make()


class TestPaste:
    def test_a_block_goes_right_and_down_from_where_it_is_pasted(self, study: Study) -> None:
        found = paste(study, "3,5\tyes\r\n4\tno\r\n", 0, 2, COMMA)
        assert found.edit is not None
        after = found.edit.study
        assert [cell(after, m, "Age (years)") for m in ("Alder", "Birch", "Cedar")] == [3.5, 4.0, None]
        assert cell(after, "Birch", "Enclosure") is False

    def test_an_empty_cell_empties_the_cell(self, study: Study) -> None:
        study = edits.set_property(study, "a2", "Age (years)", 4).study
        found = paste(study, "3\n\n", 0, 2)
        assert found.edit is not None
        assert cell(found.edit.study, "Birch", "Age (years)") == 4.0
        found = paste(study, "3\tyes\n\tno\n", 0, 2)
        assert found.edit is not None
        assert cell(found.edit.study, "Birch", "Age (years)") is None

    def test_one_bad_cell_keeps_all_out_and_is_named(self, study: Study) -> None:
        found = paste(study, "3\n4\nold\n", 0, 2)
        assert found.edit is None
        assert found.why_not.startswith("Cedar, Age (years): “old” is no number")
        assert found.why_not.endswith("Nothing was pasted.")

    def test_a_block_that_is_too_large_says_how_much_room_there_is(self, study: Study) -> None:
        found = paste(study, "1\n2\n3\n", 1, 2)
        assert found.edit is None
        assert "3 × 1 cells" in found.why_not
        assert "2 × 2" in found.why_not

    def test_a_table_with_names_goes_by_them_and_brings_new_columns(self, study: Study) -> None:
        text = (
            "Machine\tage (years)\tMotion\tNoise (dB)\n"
            "cedar\t3\tcrossed belts\t41.5\n"
            "Alder\t\tmoving bed\t39\n"
        )
        found = paste(study, text, 2, 3)
        assert found.edit is not None
        after = found.edit.study
        assert names(after)[-2:] == ["Motion", "Noise (dB)"]
        assert {c.name: c.kind for c in after.property_columns}["Noise (dB)"] == "number"
        assert cell(after, "Cedar", "Age (years)") == 3.0
        assert cell(after, "Alder", "Motion") == "moving bed"
        assert cell(after, "Birch", "Motion") is None

    @pytest.mark.parametrize(
        ("text", "says"),
        [
            ("", "no cells"),
            ("Machine\tAge (years)\nAlder\t3\nOak\t4\n", "“Oak”: no machine"),
            ("Machine\tMotion\tmotion\nAlder\ta\tb\n", "twice"),
            ("Machine\t\nAlder\t3\n", "needs a name"),
            ("x" * 1_000_001, "too much"),
        ],
    )
    def test_what_cannot_be_taken_is_told(self, study: Study, text: str, says: str) -> None:
        found = paste(study, text, 0, 0)
        assert found.edit is None
        assert says in found.why_not


class TestInAnotherLanguage:
    @pytest.fixture(autouse=True)
    def spoken(self) -> Iterator[None]:
        speak(lambda text: WORDS.get(text, text), "xx")
        try:
            yield
        finally:
            speak(None)

    def test_columns_of_the_beds_are_shown_in_it_and_kept_in_english(self, study: Study) -> None:
        supply = next(c for c in columns_of(study) if c.name == BED_SUPPLY)
        assert (supply.heading, supply.title) == ("Speisung", "Speisung")
        assert supply.offered == ("Netz", "Kleinspannung")
        cell = read_cell("kleinspannung", supply)
        assert (cell.value, written(cell.value)) == ("low voltage", "Kleinspannung")
        assert "“Netz” or “Kleinspannung”" in read_cell("Wind", supply).why_not
        own = next(c for c in columns_of(study) if c.is_own)
        assert own.heading == own.name

    def test_a_block_finds_its_columns_by_what_is_shown(self, study: Study) -> None:
        pasted = paste(study, "Maschine\tSpeisung\tEnclosure\nBirch\tNetz\tja\n", 0, 0)
        assert pasted.edit is not None
        machine = pasted.edit.study.machines[1]
        assert bed_supply(machine) == "mains"
        assert value_of(machine, "Enclosure") is True
        assert names(pasted.edit.study) == names(study)
