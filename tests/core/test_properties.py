"""A measure against a property: who counts, what is claimed and what is not, and the figure of it."""

import pytest
from attrs import evolve

from core import edits
from core.beds.supply import BED_SUPPLY
from core.demo import COLUMNS, KNOWN, demo_study, with_properties
from core.figures.curve_values import NamedScale
from core.figures.properties import properties_figure
from core.figures.source import numbers_of
from core.formatting import NO_BREAK, NumberLocale, p_text
from core.properties.table import Column, Value, columns_of
from core.quantities import BED_SHARE, DURATION, ENERGY, STANDBY_W
from core.results.like_for_like import Given, given
from core.results.properties import BED_W, LIKE_WH, MEASURES, against, fullest_column, measures_known
from core.results.property_answer import (
    CAUTION,
    against_table,
    conditions,
    headline,
    point_readout,
)
from core.study import Machine, Study
from tests.comparisons import make

SIZE, MOTION = Column("Size (dm²)", "number"), Column("Motion", "words")


def given_with(values: dict[str, list[Value | None]], machines: int = 5, runs: int = 4) -> Given:
    """Invented machines whose energy and duration rise from each to the next, with these properties."""
    study, comparison = make(machines, runs)
    study = evolve(
        study,
        machines=tuple(
            Machine(m.machine_id, m.name, m.slot, _properties(values, i))
            for i, m in enumerate(comparison.machines)
        ),
        logs=(),
        runs=(),
    )
    return given(study, comparison, {})


def _properties(values: dict[str, list[Value | None]], place: int) -> tuple[tuple[str, Value], ...]:
    return tuple((name, v) for name, column in values.items() for v in [column[place]] if v is not None)


def test_a_perfect_order_of_five_is_a_link_that_shows() -> None:
    found = against(given_with({SIZE.name: [1.0, 2.0, 4.0, 5.5, 9.0]}), ENERGY, SIZE)
    assert found.rank is not None
    assert [found.rank.rho, found.rank.p] == pytest.approx([1.0, 2 / 120])
    assert found.is_shown
    said = headline(found).replace(NO_BREAK, " ")
    assert said == "Energy per part rises with size (rank correlation +1.00, p = 0.017, 5 machines)."


def test_no_order_is_no_link() -> None:
    found = against(given_with({SIZE.name: [3.0, 1.0, 5.0, 2.0, 4.0]}), ENERGY, SIZE)
    assert not found.is_shown
    assert headline(found).startswith(
        "No link shown between energy per part and size (rank correlation +0.30"
    )


def test_four_machines_can_show_nothing_and_it_says_so() -> None:
    found = against(given_with({SIZE.name: [1.0, 2.0, 3.0, 4.0]}, machines=4), ENERGY, SIZE)
    assert not found.is_shown
    assert headline(found).endswith("even in perfect order p would be 0.08.")


def test_of_three_machines_nothing_is_claimed() -> None:
    found = against(given_with({SIZE.name: [1.0, 2.0, 3.0]}, machines=3), ENERGY, SIZE)
    assert (found.p, found.is_shown) == (None, False)
    assert headline(found) == "3 machines have both energy per part and size: too few to show a link."
    assert "all orders" not in conditions(found, Study("s"))


def test_who_lacks_the_property_or_the_value_is_named() -> None:
    from_ = given_with({SIZE.name: [1.0, None, 3.0, 4.0, 5.0]})
    found = against(from_, BED_SHARE, SIZE)  # the fourth's share cannot be seen
    assert found.no_property == ("Birch",)
    assert found.no_value == ("Hazel",)
    told = conditions(found, from_.study)
    assert "Size not noted: Birch." in told
    assert "No value of bed share: Hazel." in told
    assert CAUTION in told


def test_one_size_for_all_cannot_tell_why_they_differ() -> None:
    found = against(given_with({SIZE.name: [2.0] * 5}), ENERGY, SIZE)
    assert headline(found) == "All 5 machines have the same size: it cannot tell why they differ."


def test_words_make_groups_whichever_way_they_are_written() -> None:
    words: list[Value | None] = [
        "moving bed",
        "Moving bed",
        "crossed belts",
        "crossed belts",
        "crossed belts",
    ]
    found = against(given_with({MOTION.name: words}), ENERGY, MOTION)
    assert [(g.title, len(g.points)) for g in found.groups] == [("moving bed", 2), ("crossed belts", 3)]
    assert found.contrast is not None
    assert found.contrast.least_p == pytest.approx(0.1)
    assert "no difference could be shown (p is 0.10 at best)" in headline(found)


def test_groups_large_enough_show_a_difference() -> None:
    answers: list[Value | None] = [*[True] * 4, *[False] * 4]
    column = Column("Enclosure", "yes/no")
    found = against(given_with({column.name: answers}, machines=8), ENERGY, column)
    assert found.contrast is not None
    assert found.contrast.p == pytest.approx(2 / 70)
    assert headline(found).startswith("Energy per part is lower with enclosure yes than with no:")


def test_the_mean_of_a_group_has_an_interval_from_two_machines_on() -> None:
    words: list[Value | None] = ["a", "b", "b", "b", "b"]
    found = against(given_with({MOTION.name: words}), ENERGY, MOTION)
    intervals = {g.title: g.u95 for g in found.groups}
    assert intervals["a"] is None
    values = [p.measured.value for g in found.groups if g.title == "b" for p in g.points]
    mean = sum(values) / 4
    deviation = (sum((v - mean) ** 2 for v in values) / 3) ** 0.5
    assert intervals["b"] == pytest.approx(3.182446 * deviation / 2, rel=1e-5)  # t of 3 degrees of freedom


def test_one_machine_a_word_makes_no_groups() -> None:
    words: list[Value | None] = ["a", "b", "c", "d", "e"]
    found = against(given_with({MOTION.name: words}), ENERGY, MOTION)
    assert "groups need two machines" in headline(found)


def test_numbers_become_points_with_their_names_and_intervals() -> None:
    from_ = given_with({SIZE.name: [1.0, 2.0, 4.0, 5.5, 9.0]})
    found = against(from_, DURATION, SIZE)
    figure = properties_figure(found, from_.study)
    assert figure is not None
    assert [(s.x, s.name) for s in figure.spots][:2] == [(1.0, "Alder"), (2.0, "Birch")]
    durations = [m.seconds.value / 60 for m in from_.comparison.machines if m.seconds]
    assert [s.y for s in figure.spots] == pytest.approx(durations)
    assert (figure.x.title, figure.x.unit, figure.y.unit) == ("Size", "dm²", "min")
    assert figure.y.low == 0
    assert all(figure.x.low < s.x < figure.x.high and s.y < figure.y.high for s in figure.spots)
    assert numbers_of(figure).startswith("Alder: Size 1 dm², ")


def test_groups_stand_at_named_places_and_hide_no_machine() -> None:
    from_ = given_with({MOTION.name: ["a", "b", "b", "b", "a"]})
    figure = properties_figure(against(from_, ENERGY, MOTION), from_.study)
    assert figure is not None
    assert isinstance(figure.x, NamedScale)
    assert set(figure.x.names) == {"a", "b"}
    assert len({s.x for s in figure.spots}) == 5
    assert [t.name[:5] for t in figure.trends if t.name] == ["mean ", "mean "]


def test_what_nobody_has_is_no_figure() -> None:
    from_ = given_with({})
    found = against(from_, ENERGY, SIZE)
    assert properties_figure(found, from_.study) is None
    assert headline(found) == "No machine has both a value of energy per part and of size."
    assert CAUTION not in conditions(found, from_.study)


def test_the_readout_names_machine_value_property_and_ranks() -> None:
    from_ = given_with({SIZE.name: [1.0, 2.0, 4.0, 5.5, 9.0]})
    found = against(from_, ENERGY, SIZE)
    lines = point_readout(found, found.points[1].run_id, NumberLocale(","))
    assert lines[0] == "Birch"
    assert lines[2:] == ("Size: 2 dm²", "rank 2 across, 2 up, of 5")
    assert point_readout(found, "none") == ()


def test_the_table_names_everybody() -> None:
    from_ = given_with({SIZE.name: [1.0, None, 4.0, 5.5, 9.0]})
    rows = against_table(against(from_, ENERGY, SIZE)).rows
    assert [row[0] for row in rows] == ["Alder", "Cedar", "Hazel", "Rowan", "Birch"]
    assert rows[-1][1:] == ("–", "–")


def test_the_measures_offered_are_those_that_somebody_has() -> None:
    from_ = given_with({SIZE.name: [1.0] * 5})
    known = measures_known(from_)
    assert ENERGY in known
    assert LIKE_WH in known
    assert BED_W not in known  # no bed was held
    assert set(known) <= set(MEASURES)
    assert fullest_column(from_).name == SIZE.name


def test_many_machines_are_tested_by_t_and_it_says_so() -> None:
    from_ = given_with({SIZE.name: [float(i) for i in range(12)]}, machines=12)
    found = against(from_, STANDBY_W, SIZE)
    assert found.rank is None or "Student's t with 10" in conditions(found, from_.study)
    found = against(from_, ENERGY, SIZE)
    assert "Student's t with 10 degrees of freedom" in conditions(found, from_.study)
    assert "p < 0.001" in headline(found).replace(NO_BREAK, " ")


def test_a_p_is_never_written_as_nothing() -> None:
    told = [p_text(p).replace(NO_BREAK, " ") for p in (0.0, 0.0004, 0.0166, 1.0)]
    assert told == ["p < 0.001", "p < 0.001", "p = 0.017", "p = 1.00"]


def test_the_demo_has_a_column_of_each_kind_filled_for_all_its_machines() -> None:
    study = demo_study()
    for name in KNOWN:
        study = edits.add_machine(study, name).study
    known = with_properties(study)
    assert {kind for _, kind in COLUMNS} == {"number", "words", "yes/no"}
    own = [c for c in columns_of(known) if c.is_own]
    assert [(c.name, c.kind) for c in own] == list(COLUMNS)
    assert all(len(m.properties) == len(COLUMNS) for m in known.machines)
    assert BED_SUPPLY in [c.name for c in columns_of(known)]


def test_among_a_farm_s_machines_points_carry_no_names() -> None:
    from_ = given_with({SIZE.name: [float(i) for i in range(70)]}, machines=70, runs=1)
    figure = properties_figure(against(from_, ENERGY, SIZE), from_.study)
    assert figure is not None
    assert len(figure.spots) == 70
    assert not any(s.name for s in figure.spots)
