"""Saved pictures: the same as shown, with real text, and saying where their numbers are from."""

from itertools import combinations
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from attrs import evolve
from PySide6.QtGui import QFontInfo, QImage
from pytestqt.qtbot import QtBot

from core.figures.compare import comparison_figure
from core.figures.energy_time import energy_time_figure
from core.figures.placing import Box
from core.figures.values import Figure
from gui.charts.framing import NO_FRAME, Frame
from gui.charts.layout import fitting_scale, frame_height, lay_out
from gui.charts.scene import Marker, Ruler, Scene, Text
from gui.charts.view import ChartView
from gui.images import SIZES, Size, clipboard_data, png_bytes, render, save, svg_bytes
from gui.look import Look, current
from tests.comparisons import make

pytestmark = pytest.mark.usefixtures("qapp")
SVG = "{http://www.w3.org/2000/svg}"
LOOKS = {"light": Look.of(dark=False), "dark": Look.of(dark=True), "large": Look.of(dark=False, text_px=19.5)}


def figures(machines: int, runs: int = 4) -> list[Figure]:
    study, comparison = make(machines, runs)
    return [comparison_figure(comparison, study), energy_time_figure(comparison, study)]


def painted(text: Text, look: Look) -> Box:
    """Where the letters are, which may be less or (if something is wrong) more than the text's box."""
    width = Ruler(look).width(text.text, text.size, text.bold)
    left = {
        "left": text.box.x,
        "center": text.box.x + (text.box.width - width) / 2,
        "right": text.box.right - width,
    }[text.align]
    return Box(left, text.box.y, width, text.box.height)


def clipped(scene: Scene, look: Look) -> list[str]:
    whole = Box(0, 0, scene.width, scene.height)
    return [t.text for t in scene.texts if not whole.holds(painted(t, look), slack=0.5)]


def nothing(run_id: str, key: str) -> tuple[str, ...]:
    return ()


@pytest.mark.parametrize("which", [0, 1])
def test_the_picture_saved_is_the_picture_shown(qtbot: QtBot, which: int) -> None:
    figure = figures(5)[which]
    view = ChartView("chart")
    qtbot.addWidget(view)
    view.show_figure(figure, nothing)
    view.resize(780, 460)
    with qtbot.waitExposed(view):
        view.show()
    view.clearFocus()
    shown = view.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    saved = render(figure, Size(780, 460), current(), ratio=shown.devicePixelRatio())
    assert saved.convertToFormat(QImage.Format.Format_RGB32) == shown


@pytest.mark.parametrize("look", LOOKS.values(), ids=LOOKS)
@pytest.mark.parametrize("machines", [1, 2, 5, 12, 30])
@pytest.mark.parametrize("size", [(760, 380), (1180, 420), (600, 900)])
def test_no_text_is_clipped_or_laid_over_another(look: Look, machines: int, size: tuple[int, int]) -> None:
    for figure in figures(machines, 1 if machines == 1 else 4):
        scene = lay_out(figure, *size, look)
        assert clipped(scene, look) == []
        texts = [(t.text, painted(t, look).grown(-0.6)) for t in scene.texts if t.text]
        assert len(texts) > 5
        for (one, box), (other, other_box) in combinations(texts, 2):
            assert not box.overlaps(other_box), (one, other)


@pytest.mark.parametrize("purpose", SIZES)
@pytest.mark.parametrize("machines", [1, 5, 30, 80])
def test_a_framed_picture_is_whole_at_every_size(purpose: str, machines: int) -> None:
    size = SIZES[purpose]
    for figure in figures(machines, 3):
        for scale in (size.scale, 1.0):
            look = Look.of(dark=False, scale=scale)
            assert clipped(lay_out(figure, size.width, size.height, look, Frame()), look) == []


def test_values_are_never_shortened_only_names_are() -> None:
    study, comparison = make(12, 4)
    figure = comparison_figure(comparison, study)
    for width in (760, 900, 1200):
        for height in (300, 520):
            scene = lay_out(figure, width, height, Look.of(dark=False))
            shortened = {t.full for t in scene.texts if t.full and t.text != t.full}
            assert shortened <= {m.name for m in comparison.machines}


def test_every_run_is_a_dot_and_a_run_left_out_is_hollow() -> None:
    study, comparison = make(5, 4)
    scene = lay_out(comparison_figure(comparison, study), 1000, 500, Look.of(dark=False))
    dots = [i for i in scene.items if isinstance(i, Marker) and i.dot]
    bed_unseen = 4  # one machine's four runs have no bed share
    assert len(dots) == 5 * 20 - bed_unseen
    assert sum(d.hollow for d in dots) == 5
    marks = [i for i in scene.items if isinstance(i, Marker) and not i.dot]
    assert len(marks) == 24


@pytest.mark.parametrize("purpose", SIZES)
@pytest.mark.parametrize("machines", [2, 5, 12, 30])
def test_text_shrinks_before_a_measure_is_left_away(purpose: str, machines: int) -> None:
    size, (figure, _) = SIZES[purpose], figures(machines)
    look = Look.of(dark=False, scale=size.scale)
    scale = fitting_scale(figure, size.width, size.height, look, Frame())
    assert 1.0 <= scale <= size.scale
    assert lay_out(figure, size.width, size.height, look.scaled(scale), Frame()).is_whole


def test_a_long_headline_is_made_smaller_not_cut() -> None:
    (figure, _) = figures(3)
    long = evolve(figure, headline="Alder makes the part for 21.4 Wh, " * 6)
    look = Look.of(dark=False, scale=1.7)
    texts = {t.text for t in lay_out(long, 1080, 1080, look, Frame()).texts}
    assert not any(t.endswith("…") for t in texts)


def test_a_unit_stays_on_the_line_of_its_number() -> None:
    ruler = Ruler(LOOKS["light"])
    text = "Alder makes the part for 21.4 Wh, 35 % less (95 % interval 33 to 37 %)."
    for width in range(60, 600, 7):
        for line in ruler.wrapped(text, width, 20):
            assert not line.startswith(("%", "Wh"))


def test_machines_without_room_are_counted_not_squeezed() -> None:
    (figure, _) = figures(30)
    scene = lay_out(figure, 900, 250, Look.of(dark=False))
    rows = sum(t.full in {row.name for row in figure.rows} for t in scene.texts)
    notes = [t.full for t in scene.texts if "of 30 machines shown" in t.full]
    assert len(notes) == 1
    assert 0 < rows < 30
    assert notes[0].startswith(f"{rows} of 30 machines shown")


def test_a_frame_leaves_the_chart_its_size() -> None:
    (figure, _) = figures(5)
    look = Look.of(dark=False)
    around = frame_height(figure, 800, look, Frame())
    bare = lay_out(figure, 800, 400, look)
    framed = lay_out(figure, 800, 400 + around, look, Frame())
    shift = framed.targets[0].y - bare.targets[0].y
    assert shift > 20
    assert [(t.x, t.y) for t in framed.targets] == [
        (t.x, pytest.approx(t.y + shift, abs=0.01)) for t in bare.targets
    ]


def test_a_png_says_where_its_numbers_are_from(tmp_path: Path) -> None:
    (figure, _) = figures(5)
    path = tmp_path / "a.png"
    save(path, figure, Size(800, 500), LOOKS["light"], Frame())
    image = QImage(str(path))
    assert image.text("Title") == figure.headline
    assert "invented data" in image.text("Description")
    assert "Alder (4 runs): Energy per part" in image.text("Source")


def test_an_svg_has_real_text_and_says_where_its_numbers_are_from(tmp_path: Path) -> None:
    (figure, _) = figures(5)
    path = tmp_path / "a.svg"
    save(path, figure, Size(1000, 600), LOOKS["light"], Frame())
    root = ET.parse(path).getroot()
    texts = ["".join(t.itertext()) for t in root.iter(f"{SVG}text")]
    assert {"Alder", "Rowan", "Energy per part", "at least 31 %"} <= set(texts)
    assert figure.headline.split()[0] in " ".join(texts)
    assert root.findtext(f"{SVG}title") == figure.headline
    assert "Alder (4 runs)" in (root.findtext(f"{SVG}desc") or "")
    assert root.get("viewBox") == "0 0 1000 600"
    assert (root.get("width"), root.get("height")) == ("1000", "600")
    families = {t.get("font-family") for t in root.iter(f"{SVG}text")}
    assert families == {f"{QFontInfo(LOOKS['light'].font()).family()}, sans-serif"}


def test_png_and_svg_of_one_size_show_the_same_texts() -> None:
    (figure, _) = figures(3)
    svg = svg_bytes(figure, SIZES["square"], LOOKS["light"], Frame()).decode()
    assert svg.count("<text") > 20
    image = render(figure, SIZES["square"], LOOKS["light"], Frame())
    assert (image.width(), image.height()) == (1080, 1080)
    assert png_bytes(image).startswith(b"\x89PNG")


def test_twice_the_pixels_are_the_same_picture() -> None:
    (figure, _) = figures(3)
    image = render(figure, Size(400, 300), LOOKS["light"], NO_FRAME, ratio=2.0)
    assert (image.width(), image.height()) == (800, 600)


def test_an_unknown_ending_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match=r"\.bmp"):
        save(tmp_path / "a.bmp", figures(1, 1)[0], Size(10, 10), LOOKS["light"], NO_FRAME)


def test_the_clipboard_gets_picture_text_and_table() -> None:
    image = QImage(10, 10, QImage.Format.Format_RGB32)
    data = clipboard_data(image, [["Machine", "Wh <a>"], ["Alder", "21.4"]])
    assert data.hasImage()
    assert data.text() == "Machine\tWh <a>\nAlder\t21.4"
    assert "<th>Wh &lt;a&gt;</th>" in data.html()
    assert "<td>Alder</td>" in data.html()


def test_signs_and_missing_columns_are_told_under_the_rows_where_columns_have_no_room() -> None:
    look = LOOKS["light"]
    study, comparison = make(5, 4)
    figure = evolve(comparison_figure(comparison, study), ties=((1, 2),))
    first, *others = figure.measures
    words = {"legend": "bracket: no difference shown", "legend_short": "] not told apart"}
    figure = evolve(figure, measures=(evolve(first, **words), *others))

    def told(width: float) -> tuple[str, str]:
        """What stands over the columns, and under the rows."""
        scene = lay_out(figure, width, 460, look)
        assert clipped(scene, look) == []
        under = max(t.box.y for t in scene.texts if t.text[:1].isdigit())
        head = min(t.box.y for t in scene.texts) + 2 * Ruler(look).height()
        lines = sorted(scene.texts, key=lambda t: t.box.y)
        return (
            " ".join(t.text for t in lines if t.box.y < head),
            " ".join(t.text for t in lines if t.box.y > under),
        )

    only_under = 0
    for width in range(260, 1400, 20):
        over, under = told(width)
        is_over = "bracket: no difference shown" in over or "] not told apart" in over
        assert is_over != ("no difference shown" in under)
        only_under += not is_over and "room here" not in under
        assert "…" not in under
    assert only_under > 0
    assert told(1400)[1] == ""
    assert told(260)[1].startswith("No room here for: ")
