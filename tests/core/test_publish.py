"""The shelf of what can be published, its words, and the choices that the study keeps."""

import re

import pytest
from attrs import evolve

from core import edits
from core.figures.source import numbers_of
from core.figures.values import ComparisonFigure
from core.history import History
from core.line_up.choices import LineUp
from core.publish.alt_text import alt_text
from core.publish.choices import Pick, Publishing
from core.publish.ordering import in_order
from core.publish.rows import rows_of
from core.publish.shelf import AS_ARRANGED, entry_of, key_for, shelf
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.report.tables import study_table, study_tables, tables_there
from core.store.values import decode, encode
from core.study import Study
from tests.comparisons import make
from tests.core.report.demo import demo_sources


@pytest.fixture(scope="module")
def demo() -> Sources:
    return demo_sources()


def with_machines(sources: Sources, *names: str) -> Sources:
    ids = {machine.name: machine.id for machine in sources.drawable.study.machines}
    return Sources(sources.drawable, sources.year, machine_ids=tuple(ids[name] for name in names))


def test_the_shelf_holds_figures_of_every_page_and_every_table(demo: Sources) -> None:
    entries = shelf(demo)
    pages = {entry.page for entry in entries if not entry.is_table}
    assert pages >= {"Compare", "Line-up", "Bed", "Loads", "Standby and cost"}
    assert len({entry.key for entry in entries}) == len(entries)
    for entry in entries:
        assert re.fullmatch(r"[a-z0-9-]+", entry.key)
        if entry.is_table:
            table = entry.table(demo)
            assert table is not None
            assert table.shown.rows
            assert entry.figure(demo) is None
        else:
            assert entry.figure(demo) is not None
            assert entry.view


def test_tables_are_told_of_without_being_made(demo: Sources) -> None:
    made = study_tables(demo)
    assert list(tables_there(demo)) == [(t.key, t.page, t.title) for t in made]
    assert [study_table(demo, t.key) for t in made] == list(made)
    assert study_table(demo, "nothing") is None
    empty = Sources(
        Drawable(Study(id="s"), evolve(demo.comparison, machines=(), pairs=(), fairness=()), {}, {}),
        demo.year,
    )
    assert [key for key, _, _ in tables_there(empty)] == [t.key for t in study_tables(empty)]


def test_nothing_is_on_the_shelf_before_anything_was_compared() -> None:
    study, comparison = make(0)
    assert shelf(Sources(Drawable(study, comparison, {}, {}), 2026)) == ()


def test_every_figure_is_told_in_words_with_its_numbers(demo: Sources) -> None:
    for entry in shelf(demo):
        figure = entry.figure(demo)
        if figure is None:
            continue
        words = alt_text(figure)
        assert words.startswith(("Chart ", "Calendar "))
        assert words.endswith(".")
        assert "  " not in words
        assert figure.conditions.rstrip(".") in words
        assert re.search(r"\d", words)
        assert numbers_of(figure)


def test_words_of_a_comparison_name_every_machine_and_value(demo: Sources) -> None:
    figure = shelf(demo)[0].figure(demo)
    assert isinstance(figure, ComparisonFigure)
    words = alt_text(figure)
    for row, cell in zip(figure.rows, figure.measures[0].cells, strict=True):
        assert cell.mark is not None
        assert f"{row.name} {cell.mark.text} Wh" in words


def test_words_about_many_machines_tell_the_ends_and_count_the_rest() -> None:
    study, comparison = make(30)
    sources = Sources(Drawable(study, comparison, {}, {}), 2026)
    entries = {entry.key: entry for entry in shelf(sources)}
    figure = entries["comparison"].figure(sources)
    assert figure is not None
    words = alt_text(figure)
    energies = [m.energy_wh.value for m in comparison.machines if m.energy_wh]
    first = comparison.machines[energies.index(min(energies))].name
    last = comparison.machines[energies.index(max(energies))].name
    assert re.search(rf"Energy per part: from .* Wh for {first} to .* Wh for {last}", words)
    assert len(words) < 1500


def test_showing_fewer_machines_changes_sentences_but_no_test(demo: Sources) -> None:
    some = with_machines(demo, "Cedar", "Birch")
    whole = demo.comparison
    assert {m.name for m in some.comparison.machines} == {"Birch", "Cedar"}
    kept = [p for p in whole.pairs if {p.machine_id, p.other_id} == set(some.shown_ids)]
    assert list(some.comparison.pairs) == kept  # adjusted for all machines, not for two
    for entry in shelf(some):
        figure = entry.figure(some)
        if figure is None:
            continue
        assert "2 of 5 machines shown" in figure.conditions
        told = f"{figure.headline} {alt_text(figure)}"
        assert not any(name in told for name in ("Alder", "Hazel", "Rowan")), entry.key


def test_rows_stand_in_the_order_that_was_chosen(demo: Sources) -> None:
    some = with_machines(demo, "Rowan", "Alder", "Cedar", "Birch", "Hazel")
    for entry in shelf(some):
        figure = entry.figure(some)
        if isinstance(figure, ComparisonFigure) and figure.row_word == "machine":
            assert [row.name for row in figure.rows] == ["Rowan", "Alder", "Cedar", "Birch", "Hazel"]
            assert "machines shown" not in figure.conditions


def test_a_bracket_stays_where_its_machines_still_stand_together(demo: Sources) -> None:
    figure = shelf(demo)[0].figure(demo)
    assert isinstance(figure, ComparisonFigure)
    tied = evolve(figure, ties=((0, 2), (2, 3)))
    ids = [row.machine_id for row in figure.rows]
    reversed_ = in_order(tied, ids[::-1])
    assert isinstance(reversed_, ComparisonFigure)
    assert reversed_.ties == ((1, 2), (2, 4))
    apart = in_order(tied, [ids[0], ids[3], ids[1], ids[4], ids[2]])
    assert isinstance(apart, ComparisonFigure)
    assert apart.ties == ()
    assert all(
        c == figure.measures[0].cells[figure.rows.index(r)]
        for r, c in zip(apart.rows, apart.measures[0].cells, strict=True)
    )


def test_a_chart_of_one_machine_is_found_by_what_it_shows(demo: Sources) -> None:
    entries = shelf(demo)
    watts = [entry for entry in entries if entry.view == "bed_watts"]
    assert len(watts) > 1
    for entry in watts:
        figure = entry.figure(demo)
        assert figure is not None
        assert key_for("bed_watts", figure, entries, demo) == entry.key
    assert key_for("no such chart", figure, entries, demo) is None


def test_a_line_up_is_published_as_it_was_arranged(demo: Sources) -> None:
    chosen = tuple(s.run_id for s in demo.strands[:3])
    pick = Pick(f"{AS_ARRANGED}-1", line_up=LineUp(arrangement="run under run"), run_ids=chosen)
    entry = entry_of(pick, shelf(demo))
    assert entry is not None
    figure = entry.figure(demo)
    assert figure is not None
    assert getattr(figure, "run_ids", ()) == chosen
    assert entry_of(Pick("gone"), shelf(demo)) is None


def test_values_of_a_figure_are_rows_of_one_length(demo: Sources) -> None:
    for entry in shelf(demo):
        figure = entry.figure(demo)
        if figure is not None:
            rows = rows_of(figure)
            assert len(rows) > 0
            assert len({len(row) for row in rows}) == 1


# what the study keeps


def study_of(*machines: str) -> Study:
    study = edits.new_study("s").study
    for name in machines:
        study = edits.add_machine(study, name).study
    return study


def test_what_is_published_is_kept_and_undone() -> None:
    study = study_of("Alder", "Birch")
    history = History.start(edits.new_study("s")).apply(edits.set_publishing(study, Publishing()))
    history = history.apply(edits.add_pick(history.study, Pick("comparison")))
    history = history.apply(edits.add_pick(history.study, Pick("beds")))
    assert history.study.publishing.keys == ("comparison", "beds")
    history = history.apply(edits.remove_pick(history.study, "comparison"))
    assert history.study.publishing.keys == ("beds",)
    assert history.undo().study.publishing.keys == ("comparison", "beds")


def test_a_title_typed_letter_by_letter_is_one_step() -> None:
    history = History.start(edits.new_study("s"))
    history = history.apply(edits.add_pick(history.study, Pick("comparison"))).sealed()
    for title in ("W", "Wh", "Which one?"):
        picks = (Pick("comparison", title=title),)
        history = history.apply(edits.set_publishing(history.study, Publishing(picks=picks), "title"))
    assert history.undo().study.publishing.picks[0].title == ""


def test_machines_that_are_gone_are_dropped_and_texts_put_on_a_line() -> None:
    study = study_of("Alder", "Birch")
    first, second = (machine.id for machine in study.machines)
    wanted = Publishing(
        picks=(Pick("comparison", title="  Which\none? "),),
        machine_ids=(second, "gone", first),
        highlighted="gone",
        note="a\n\nnote",
    )
    kept = edits.set_publishing(study, wanted).study.publishing
    assert kept.machine_ids == (second, first)
    assert kept.highlighted == ""
    assert (kept.picks[0].title, kept.note) == ("Which one?", "a note")


@pytest.mark.parametrize(
    "wrong",
    [
        Publishing(picks=(Pick("a"), Pick("a"))),
        Publishing(machine_ids=("a", "a")),
        Publishing(width_px=10),
        Publishing(height_px=100_000),
    ],
)
def test_what_makes_no_sense_is_refused(wrong: Publishing) -> None:
    with pytest.raises(ValueError, match=r"twice|lie between"):
        edits.set_publishing(study_of("Alder"), wrong)


def test_letting_go_of_what_is_not_picked_is_refused() -> None:
    with pytest.raises(ValueError, match="not picked"):
        edits.remove_pick(study_of("Alder"), "comparison")


def test_choices_go_to_the_study_file_and_back() -> None:
    pick = Pick("line-up-arranged-1", "Own", LineUp(view=(0.0, 60.0), span=(1.0, 2.0)), ("r1", "r2"))
    publishing = Publishing((pick,), "tall", theme="print", is_clear=True, place="room", machine_ids=("a",))
    assert decode(encode(publishing, Publishing), Publishing) == publishing
