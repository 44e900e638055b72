"""The report, the shelf and the run sheet in another language: every text passes the gate, keys never do."""

import re
from collections.abc import Iterator

import pytest

from core import edits
from core.language import speak
from core.loads.names import BY_KEY, LOADS
from core.plan.repeats import repeats
from core.plan.sheet import run_sheet, sheet_csv
from core.plan.words import conditions, floor_words, headline
from core.publish.alt_text import alt_text
from core.publish.shelf import shelf
from core.publish.sources import Sources
from core.report.blocks import Heading, Report, TableBlock
from core.report.html import to_html_file
from core.report.pictures import Drawable
from core.report.write import write_report
from core.results.compare import compare
from core.tables import to_csv
from tests.core.benches import alike, bench, trace
from tests.core.report.demo import MADE

#: what stands before every text that was looked up
SIGN = "\u00a7"


@pytest.fixture
def signed() -> Iterator[None]:
    """A language that is English with a sign before every text."""
    speak(lambda text: f"{SIGN}{text}", "xx")
    yield
    speak(None)


def few() -> Sources:
    made = {
        name: trace(alike(2, level_w=60.0 + 20 * i), seed=i)
        for i, name in enumerate(("Alder", "Rowan", "Birch"))
    }
    study, traces = bench(made)
    study = edits.set_bed_c(study, 60.0).study
    return Sources(Drawable(study, compare(study, traces), traces, {}), MADE.year)


def report() -> Report:
    return write_report(few(), (), MADE, ["rowan.csv: 1 gap"])


@pytest.mark.usefixtures("signed")
def test_every_part_of_the_report_is_in_the_language() -> None:
    made = report()
    parts = [b.text for b in made.blocks if isinstance(b, Heading) and b.level == 2]
    assert len(parts) > 5
    assert [text for text in parts if not text.startswith(SIGN)] == []
    assert '<html lang="xx">' in to_html_file(made)
    assert f"<footer>{SIGN}Made with Samepart" in to_html_file(made)
    owned = re.findall(r"<li>([^<:]*), (?:Alder|Rowan|Birch): [\d.]+, \d+ %", to_html_file(made))
    assert owned, "sources of the ratio's uncertainty that belong to one machine"
    assert [name for name in owned if name.count(SIGN) < 3] == []  # line, name and source in it


@pytest.mark.usefixtures("signed")
def test_tables_tell_readers_in_the_language_and_files_by_their_keys() -> None:
    shown = [b.table for b in report().blocks if isinstance(b, TableBlock)]
    titles = {c.title for t in shown for c in t.columns if c.title not in ("p", "SHA-256")}
    assert len(titles) > 10
    assert [title for title in titles if SIGN not in title] == []
    in_files = [to_csv(table).splitlines()[0] for table in shown]
    assert [line for line in in_files if SIGN in line] == []


@pytest.mark.usefixtures("signed")
def test_figures_are_called_and_told_in_the_language() -> None:
    sources = few()
    entries = [entry for entry in shelf(sources) if not entry.is_table]
    assert len(entries) > 3
    for entry in entries:
        figure = entry.figure(sources)
        assert SIGN in entry.title
        assert SIGN not in entry.key
        assert SIGN not in entry.page
        assert figure is not None
        assert alt_text(figure).startswith(SIGN)


@pytest.mark.usefixtures("signed")
def test_the_run_sheet_is_in_the_language_and_its_file_still_read_back() -> None:
    study = few().study
    sheet = run_sheet(study)
    words = (sheet.title, *sheet.conditions, *sheet.steps, *sheet.cautions)
    assert [text for text in words if not text.startswith(SIGN)] == []
    head, *rows = (line for line in sheet_csv(sheet).splitlines() if not line.startswith('"#'))
    assert head.startswith("row,run,block,round,machine,meter,starting_state,")
    assert [row for row in rows if SIGN in row] == []


@pytest.mark.usefixtures("signed")
def test_repeats_are_told_in_the_language() -> None:
    sources = few()
    found = repeats(sources.study, sources.comparison)
    for text in (headline(found), conditions(found), floor_words(found)):
        assert text.startswith(SIGN)


@pytest.mark.usefixtures("signed")
def test_loads_have_titles_in_the_language_under_keys_of_the_study() -> None:
    assert {load.key for load in LOADS} == set(BY_KEY)
    assert [load.key for load in LOADS if load.title != f"{SIGN}{load.word}" or SIGN in load.key] == []
