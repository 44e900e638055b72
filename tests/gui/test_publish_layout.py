"""Pictures of every kind for every purpose: nothing clipped, laid over another or silently missing."""

from itertools import combinations

import pytest
from attrs import evolve

from core.figures.placing import Box
from core.figures.values import ComparisonFigure
from core.publish.choices import Publishing, Purpose
from gui.charts.scene import Marker, Ruler, Text
from gui.charts.sheet import Part
from gui.look import Look, contrast
from gui.publish.looks import look_of
from gui.publish.making import frames
from gui.publish.picture import DrawnPicture, draw
from gui.publish.purposes import DISTANCES, FORMATS, sheet_size, size_of
from tests.gui.published import KINDS, LONG, figure_of, study_of

pytestmark = pytest.mark.usefixtures("qapp")
SIZED: tuple[Purpose, ...] = ("wide", "square", "tall", "article", "slide")


def painted(text: Text, look: Look) -> Box:
    """Where the letters are."""
    width = Ruler(look).width(text.text, text.size, text.bold)
    left = {
        "left": text.box.x,
        "center": text.box.x + (text.box.width - width) / 2,
        "right": text.box.right - width,
    }[text.align]
    return Box(left, text.box.y, width, text.box.height)


def faults(picture: DrawnPicture) -> list[str]:
    """Texts outside of the picture, and texts over each other."""
    whole = Box(0, 0, picture.width, picture.height)
    texts = [(t.text, painted(t, picture.look)) for t in picture.scene.texts if t.text]
    found = [f"clipped: {text}" for text, box in texts if not whole.holds(box, slack=0.5)]
    for (one, box), (other, other_box) in combinations(texts, 2):
        if _letters(box).overlaps(_letters(other_box)):
            found.append(f"{one!r} over {other!r}")
    return found


def _letters(box: Box) -> Box:
    """The part of a line's box that letters fill: a little of its height is air."""
    air = 0.08 * box.height
    return Box(box.x + 1, box.y + air, box.width - 2, box.height - 2 * air)


@pytest.mark.parametrize("machines", [1, 5, 30])
@pytest.mark.parametrize("kind", KINDS)
def test_no_text_is_clipped_or_laid_over_another(kind: str, machines: int) -> None:
    figure, study = figure_of(kind, machines), study_of(machines)[0]
    for purpose in SIZED:
        picture = draw([Part(figure)], Publishing(purpose=purpose), study)
        assert faults(picture) == [], purpose
        assert len(picture.scene.texts) > 3


@pytest.mark.parametrize("kinds", [KINDS[:2], KINDS[:3], KINDS[1:5], ("comparison", "weeks")])
@pytest.mark.parametrize("machines", [12])
def test_several_figures_on_one_picture_keep_apart(kinds: tuple[str, ...], machines: int) -> None:
    study = study_of(machines)[0]
    parts = [Part(figure_of(kind, machines), kind.capitalize()) for kind in kinds]
    purposes: tuple[Purpose, ...] = ("wide", "square", "tall")
    for purpose in purposes:
        picture = draw(parts, Publishing(purpose=purpose), study)
        assert faults(picture) == [], purpose
        shown = {t.full for t in picture.scene.texts}
        assert {part.title for part in parts} <= shown


def test_two_figures_stand_beside_each_other_when_wide_and_one_under_another_when_tall() -> None:
    study = study_of(5)[0]
    parts = [Part(figure_of(kind, 5), kind) for kind in KINDS[:2]]
    places = {}
    for purpose in ("wide", "tall"):
        picture = draw(parts, Publishing(purpose=purpose), study)
        titles = [next(t for t in picture.scene.texts if t.text == part.title) for part in parts]
        places[purpose] = [(t.box.x, t.box.y) for t in titles]
    assert places["wide"][0][1] == places["wide"][1][1]
    assert places["tall"][0][0] == places["tall"][1][0]


@pytest.mark.parametrize("purpose", SIZED)
def test_with_more_machines_than_fit_the_picture_says_how_many_are_shown(purpose: Purpose) -> None:
    figure, study = figure_of("comparison", 90), study_of(90)[0]
    assert isinstance(figure, ComparisonFigure)
    picture = draw([Part(figure)], Publishing(purpose=purpose), study)
    marks = {i.slot for i in picture.scene.items if isinstance(i, Marker) and not i.dot}
    said = [t.full for t in picture.scene.texts if "of 90 machines shown" in t.full]
    assert said
    assert all(text.startswith(f"{len(marks)} of 90") for text in said)


def test_text_is_larger_where_it_is_looked_at_from_farther_away() -> None:
    figure, study = figure_of("comparison", 3), study_of(3)[0]
    sizes = [
        draw([Part(figure)], Publishing(purpose="free", place=place), study).text_px for place in DISTANCES
    ]
    assert sizes == sorted(sizes)
    assert len(set(sizes)) == len(sizes)


@pytest.mark.parametrize("purpose", SIZED)
def test_wished_text_is_seen_under_as_many_minutes_as_advised(purpose: Purpose) -> None:
    # ISO 9241-303 advises 20 to 22 minutes of arc for capital letters, at least 16 (from memory)
    publishing, look = Publishing(purpose=purpose), Look.of(dark=False)
    size = sheet_size(publishing, look)
    distance_px = DISTANCES[FORMATS[purpose].place] * min(size_of(publishing))
    minutes = 0.7 * size.wished * look.text_px / distance_px * 180 * 60 / 3.14159
    assert 20 <= minutes <= 26


def test_one_machine_stands_out_and_the_others_stay_legible() -> None:
    study = study_of(6)[0]
    for theme, ground in (("light", "#FFFFFF"), ("dark", "#1D2025"), ("print", "#FFFFFF")):
        look = look_of(Publishing(theme=theme, highlighted="m2"), study)  # type: ignore[arg-type]
        styles = [look.machine(slot) for slot in range(6)]
        faded = [style for slot, style in enumerate(styles) if slot != 2]
        assert len({style.line for style in faded}) == 1
        assert styles[2].fill not in {style.fill for style in faded}
        assert contrast(faded[0].line, ground) >= 3.0  # WCAG 2.2, 1.4.11


def test_in_print_machines_differ_without_colour() -> None:
    look = Look.of_print()
    styles = [look.machine(slot) for slot in range(24)]
    assert len({(s.fill, s.marker) for s in styles}) == 24
    assert len({(s.line, s.dash) for s in styles[:6]}) == 6
    for color in {s.line for s in styles} | {look.tokens.ink, look.tokens.muted}:
        red, green, blue = look.color(color).red(), look.color(color).green(), look.color(color).blue()
        assert red == green == blue
        assert contrast(color, "#FFFFFF") >= 3.0


@pytest.mark.parametrize("kind", [k for k in KINDS if k != "steps"])
def test_a_chart_is_built_up_machine_by_machine_with_everything_in_its_place(kind: str) -> None:
    figure, study = figure_of(kind, 5), study_of(5)[0]
    picture = draw([Part(figure)], Publishing(), study)
    slots = [machine.slot for machine in study.machines]
    made = list(frames(picture, slots, own_title=False))
    shown = [slot for slot in slots if slot in {i.slot for i in picture.scene.items}]
    assert len(made) == len(shown) + 1
    assert made[-1] is picture
    before: set[int] = set()
    for many, frame in enumerate(made[:-1]):
        items = {id(item) for item in frame.scene.items}
        assert items <= {id(item) for item in picture.scene.items}  # nothing is drawn anew, so nothing jumps
        assert before <= items
        assert {i.slot for i in frame.scene.items if i.slot is not None} == set(shown[:many])
        assert not set(frame.scene.title) & set(frame.scene.texts)
        before = items
    own = next(frames(picture, slots, own_title=True))
    assert set(picture.scene.title) <= set(own.scene.texts)


def test_long_names_are_shortened_and_told_whole_elsewhere() -> None:
    figure, study = figure_of("comparison", 5), study_of(5)[0]
    picture = draw([Part(figure)], Publishing(purpose="square"), study)
    cut = {t.full for t in picture.scene.texts if t.full and t.text != t.full}
    assert cut
    assert all(text.startswith(LONG) for text in cut)
    assert all(name in picture.words.alt for name in cut)


def test_a_title_of_ones_own_and_a_note_take_their_places() -> None:
    figure, study = figure_of("comparison", 3), study_of(3)[0]
    publishing = Publishing(note="Made on one afternoon.")
    picture = draw([Part(figure)], publishing, study, "Which one needs least?")
    texts = [t.text for t in picture.scene.texts]
    assert "Which one needs least?" in texts
    assert "Made on one afternoon." in texts
    assert figure.headline not in " ".join(texts)
    bare = draw([Part(figure)], evolve(publishing, has_title=False, has_conditions=False, note=""), study)
    assert not any("Samepart" in t.text for t in bare.scene.texts)
