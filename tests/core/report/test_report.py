"""The report of a study: what it says, in which order, and what it never says."""

import re
from html.parser import HTMLParser

import pytest
from attrs import evolve

from core import edits
from core.publish.sources import Sources
from core.report.blocks import Block, Bullets, Heading, Paragraph, PictureBlock, Report, TableBlock
from core.report.html import to_html_file
from core.report.markdown import to_markdown_file
from core.report.pictures import Drawable, Picture
from core.report.write import leading, write_report
from core.results.compare import compare
from core.study import Study
from core.wording import sentence
from tests.comparisons import make
from tests.core.benches import alike, bench, trace
from tests.core.report.demo import MADE, demo_sources

SVG = (
    '<?xml version="1.0" encoding="UTF-8"?>\n<svg width="508mm" height="285mm" viewBox="0 0 1920 1080" '
    'xmlns="http://www.w3.org/2000/svg"><title>t</title><defs><clipPath id="c1"><path d="M0,0"/></clipPath>'
    '</defs><g clip-path="url(#c1)"><text>Alder</text></g></svg>'
)


@pytest.fixture(scope="module")
def demo() -> Report:
    pictures = [
        Picture("comparison", "Comparison", "Alder least.", SVG, page="Compare"),
        Picture("bed-watts-a1", "Watts of Alder", "A line.", SVG, page="Bed"),
        Picture("bed-watts-a2", "Watts of Birch", "A line.", SVG, page="Bed"),
        Picture("own", "Of no page", "Own.", SVG),
    ]
    return write_report(demo_sources(), pictures, MADE, ["rowan.csv: 1 gap"])


def few(runs: int, machines: int = 2) -> Sources:
    names = ("Alder", "Rowan", "Birch")[:machines]
    made = {name: trace(alike(runs, level_w=60.0 + 20 * i), seed=i) for i, name in enumerate(names)}
    study, traces = bench(made)
    return Sources(Drawable(study, compare(study, traces), traces, {}), MADE.year)


def of_study(sources: Sources, study: Study) -> Sources:
    drawn = sources.drawable
    comparison = compare(study, drawn.traces, drawn.activities)
    return Sources(evolve(drawn, study=study, comparison=comparison), sources.year)


def headings(report: Report, level: int = 2) -> list[str]:
    return [b.text for b in report.blocks if isinstance(b, Heading) and b.level == level]


def texts(blocks: tuple[Block, ...]) -> str:
    said: list[str] = []
    for block in blocks:
        if isinstance(block, Heading | Paragraph):
            said.append(f"{getattr(block, 'lead', '')} {block.text}")
        elif isinstance(block, Bullets):
            said += block.lines
        elif isinstance(block, TableBlock):
            said += [block.table.title, *block.table.notes]
    return "\n".join(said)


def test_the_answer_comes_first(demo: Report) -> None:
    first = [b for b in demo.blocks if isinstance(b, Paragraph)][:3]
    assert [p.role for p in first] == ["caution", "answer", "conditions"]
    assert "invented" in first[0].text
    assert first[1].text == demo_sources().comparison.headline
    assert isinstance(demo.blocks[0], Heading)
    assert demo.blocks[0].level == 1


def test_parts_stand_in_their_order(demo: Report) -> None:
    found = headings(demo)
    wanted = [
        "Machine against machine",
        "Like for like",
        "Line-up",
        "Beds held warm",
        "Loads",
        "Standby and cost",
        "Fairness",
        "Runs, and what was left out",
        "How each number was found",
        "Meters and logs",
        "Cautions",
        "Method",
    ]
    assert [title for title in found if title in wanted] == wanted


def test_each_picture_is_shown_once_and_only_the_first_of_every_machine(demo: Report) -> None:
    shown = [b.picture.key for b in demo.blocks if isinstance(b, PictureBlock)]
    assert shown == ["comparison", "bed-watts-a1", "own"]
    assert headings(demo)[-1] == "More pictures"


def test_leading_keeps_pictures_that_only_look_alike() -> None:
    study = demo_sources().study
    keys = ["standby", "a1", "bed-watts-a2", "bed-watts-a1", "cooler-bed-a1"]
    pictures = [Picture(key, "", "", SVG) for key in keys]
    assert [p.key for p in leading(pictures, study)] == ["standby", "a1", "bed-watts-a2", "cooler-bed-a1"]


def test_numbers_are_traced_with_their_budgets(demo: Report) -> None:
    said = texts(demo.blocks)
    machines = demo_sources().comparison.machines
    for machine in machines:
        assert f"{machine.name}: energy per part" in said
        assert f"{machine.name}: bed share" in said
    assert "meter offset: " in said
    assert "of the variance" in said
    assert "Alder against Rowan: energy per part" in said


def test_left_out_and_wrong_files_are_named(demo: Report) -> None:
    said = texts(demo.blocks)
    assert "Cedar, run 3: broken off, or another part" in said
    assert "rowan.csv: 1 gap" in said
    assert "other stretches of the logs are not compared" in said


def test_what_was_left_out_by_hand_stands_with_its_reason() -> None:
    sources = few(3)
    study = edits.leave_out(sources.study, sources.study.runs[0].id, "the door was open").study
    said = texts(write_report(of_study(sources, study), (), MADE).blocks)
    assert "the door was open" in said
    assert "5 runs count; 1 other stretch of the logs is not compared." in said


@pytest.mark.parametrize(("runs", "machines"), [(1, 1), (1, 2), (2, 3)])
def test_few_runs_make_whole_sentences(runs: int, machines: int) -> None:
    report = write_report(few(runs, machines), (), MADE)
    said = texts(report.blocks)
    counted = runs * machines
    assert (f"{counted} runs count" if counted > 1 else "1 run counts") in said
    assert "None" not in said
    assert not re.search(r"\b1 (?:runs|machines|points|logs|stretches)\b", said)
    assert not re.search(r"\bnan\b|\binf\b", said.lower())


def test_no_difference_is_said_as_such() -> None:
    study, traces = bench(
        {"Alder": trace(alike(3, seed=1), seed=1), "Rowan": trace(alike(3, seed=2), seed=2)}
    )
    sources = Sources(Drawable(study, compare(study, traces), traces, {}), MADE.year)
    report = write_report(sources, (), MADE)
    assert "no difference shown" in report.blocks[1].text  # type: ignore[union-attr]
    (pairs,) = [b.table for b in report.blocks if isinstance(b, TableBlock) and b.table.title == "Every pair"]
    assert str(pairs.rows[0][-1]).startswith("none shown")


def test_an_empty_study_has_a_report_without_numbers() -> None:
    study = edits.new_study("empty", name="Nothing yet").study
    sources = Sources(Drawable(study, compare(study, {}), {}, {}), MADE.year)
    report = write_report(sources, (), MADE)
    assert "Cautions" in headings(report)
    assert "How each number was found" not in headings(report)
    assert to_html_file(report)


def test_many_machines_are_told_of_the_first_twelve() -> None:
    study, comparison = make(14)
    sources = Sources(Drawable(study, comparison, {}, {}), MADE.year)
    said = texts(write_report(sources, (), MADE).blocks)
    assert "Told of the first 12 machines; the tables hold the other 2 machines." in said


class _Seen(HTMLParser):
    """Everything of a page that a browser would load, run, or show."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.open: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs
        if tag not in ("meta", "br", "img"):
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag


def test_the_page_loads_and_runs_nothing(demo: Report) -> None:
    page = to_html_file(demo)
    seen = _Seen()
    seen.feed(page)
    assert seen.open == []
    assert not {"script", "iframe", "link", "object", "embed", "form"} & set(seen.tags)
    assert not [name for name, _ in seen.attributes if name.startswith("on")]
    addresses = [value for name, value in seen.attributes if name in ("src", "href", "xlink:href")]
    assert addresses
    assert all(a is not None and a.startswith(("#", "data:")) for a in addresses)
    assert "default-src 'none'" in page
    ids = [value for name, value in seen.attributes if name == "id"]
    assert len(set(ids)) == len(ids)


def test_pictures_stand_inside_with_words_for_those_who_cannot_see_them(demo: Report) -> None:
    page = to_html_file(demo)
    assert page.count("<svg ") == 3
    assert page.count('role="img" aria-label="') == 3
    assert 'width="508mm"' not in page
    # one picture's clip must not become that of another
    names = set(re.findall(r'<clipPath id="([^"]+)"', page))
    assert len(names) == 3
    assert set(re.findall(r"url\(#([^)]+)\)", page)) == names


@pytest.mark.parametrize(
    "inside",
    ["<script>alert(1)</script>", '<image href="http://x/y"/>', '<g onload="x()"/>', "<foreignObject/>"],
)
def test_a_picture_that_could_do_something_becomes_an_image_that_cannot(inside: str) -> None:
    svg = SVG.replace("<g ", f"{inside}<g ", 1)
    report = write_report(few(2), [Picture("p", "P", 'a "b" <c>', svg)], MADE)
    page = to_html_file(report)
    assert inside not in page
    assert 'alt="a &quot;b&quot; &lt;c&gt;" src="data:image/svg+xml;base64,' in page


def test_names_cannot_become_markup() -> None:
    sources = few(2)
    name = "<img src=x onerror=alert(1)>*_[x](y)"
    study = edits.rename_machine(sources.study, sources.study.machines[0].id, name).study
    report = write_report(of_study(sources, study), (), MADE, ["<b>bad</b>.csv"])
    page = to_html_file(report)
    assert "<img" not in page
    assert "<b>bad" not in page
    text = to_markdown_file(report)
    assert "<img" not in text.replace("\\<", "")
    assert "[x](y)" not in text.replace("\\[", "")


def test_markdown_links_pictures_and_says_the_answer_in_bold(demo: Report) -> None:
    text = to_markdown_file(demo)
    assert text.startswith("# Hose clip study\n")
    assert "![Comparison](comparison.png)" in text
    assert f"**{demo_sources().comparison.headline}**" in text
    assert "#### Runs" in text


def test_what_fairness_says_is_not_said_again_of_every_number(demo: Report) -> None:
    said = texts(demo.blocks)
    for finding in demo_sources().comparison.fairness:
        assert said.count(sentence(finding.problem)) == 1


def test_long_tables_are_cut_and_say_so() -> None:
    study, comparison = make(20, 8)
    sources = Sources(Drawable(study, comparison, {}, {}), MADE.year)
    report = write_report(sources, (), MADE)
    (runs,) = [b.table for b in report.blocks if isinstance(b, TableBlock) and b.table.title == "Runs"]
    assert len(runs.rows) == 120
    assert any(note.startswith("The first 120 of 160 rows;") for note in runs.notes)


def test_an_accepted_point_stands_with_its_reason_and_counts_no_more() -> None:
    sources = demo_sources()
    finding = next(f for f in sources.comparison.open_findings if f.level == "caution")
    study = edits.accept_finding(sources.study, finding, "the room was cold").study
    report = write_report(of_study(sources, study), (), MADE)
    assert "Accepted, with the reason" in headings(report, 3)
    said = texts(report.blocks)
    assert f"{sentence(finding.problem)} Accepted: the room was cold." in said
    assert said.count(sentence(finding.problem)) == 1


def test_the_list_of_contents_comes_behind_the_answer_and_leads_to_every_part(demo: Report) -> None:
    page = to_html_file(demo)
    contents, answer = page.index("<nav"), page.index('class="answer"')
    assert answer < contents < page.index("<h2")
    targets = re.findall(r'<li><a href="#(part-\d+)">', page)
    assert len(targets) == len(headings(demo))
    assert all(f'<h2 id="{target}">' in page for target in targets)


def test_one_run_is_no_mean() -> None:
    said = texts(write_report(few(1, 1), (), MADE).blocks)
    assert "The one run of the part that counts, measured at the plug." in said
    assert "Mean of 1" not in said
    assert "The machine\n" in said
    assert "Mean of 3 runs of the part that count" in texts(write_report(few(3, 1), (), MADE).blocks)
