"""A line-up laid out: nothing is clipped, no text lies over another, and pixels and values agree."""

from itertools import combinations, pairwise

import numpy as np
import pytest
from attrs import evolve
from PySide6.QtGui import QColor

from core.figures.line_up import line_up_figure
from core.figures.line_up_values import LineUpFigure
from core.figures.placing import Box
from core.line_up.answer import answer
from core.line_up.choices import ARRANGEMENTS, LineUp
from core.line_up.strands import ANCHORS, Strand
from core.results.values import Comparison
from core.study import Study
from gui.charts.framing import NO_FRAME, Frame
from gui.charts.layout import fitting_scale, lay_out, room_for
from gui.charts.margin_names import spread
from gui.charts.scene import Scene, Stroke
from gui.images import SIZES, Size, render
from gui.look import Look
from tests.comparisons import NAMES
from tests.core.lined_up import STANDBY_S, repeats, strand

pytestmark = pytest.mark.usefixtures("qapp")
LOOKS = {"light": Look.of(dark=False), "large": Look.of(dark=False, text_px=19.5)}
COMPARISON = Comparison("part", "warm-up and processing", (), (), (), (), "", "")
PAGE = Size(620, 420)


def bench(machines: int, runs: int = 3, *, alike: bool = False) -> tuple[Strand, ...]:
    return tuple(
        run
        for i in range(machines)
        for run in repeats(i, runs, NAMES[i], i, after_s=900 if alike else 700 + 60 * i, base_w=20 + 3 * i)
    )


def figure(runs: tuple[Strand, ...], choices: LineUp) -> LineUpFigure:
    return line_up_figure(runs, choices, answer(runs, COMPARISON, choices), Study("s", name="A bench"))


def texts_apart(scene: Scene) -> None:
    texts = [t for t in scene.texts if t.text]
    whole = Box(0, 0, scene.width, scene.height)
    for text in texts:
        assert whole.holds(text.box, slack=1.0), text.text
    for one, other in combinations(texts, 2):
        apart = Box(one.box.x + 1, one.box.y + 2, one.box.width - 2, one.box.height - 4)
        assert not apart.overlaps(other.box), (one.text, other.text)


@pytest.mark.parametrize("look", LOOKS)
@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
@pytest.mark.parametrize("machines", [1, 2, 5, 12])
def test_texts_are_whole_and_apart_on_the_page(machines: int, arrangement: str, look: str) -> None:
    made = figure(bench(machines), LineUp(arrangement=arrangement))  # type: ignore[arg-type]
    room = room_for(made, LOOKS[look])
    width, height = max(PAGE.width, room.least[0]), max(PAGE.height, room.least[1])
    scene = lay_out(made, width, height, LOOKS[look], NO_FRAME)
    assert scene.is_whole
    texts_apart(scene)


@pytest.mark.parametrize("anchor", ANCHORS)
def test_texts_are_apart_where_all_curves_end_at_one_border(anchor: str) -> None:
    made = figure(bench(12, 2, alike=True), LineUp(anchor=anchor))  # type: ignore[arg-type]
    scene = lay_out(made, 900, max(600, room_for(made, LOOKS["light"]).least[1]), LOOKS["light"], NO_FRAME)
    texts_apart(scene)
    if anchor in ("end", "share of duration"):
        named = {t.full for t in scene.texts}
        assert set(NAMES[:12]) <= named


@pytest.mark.parametrize("purpose", SIZES)
@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_a_saved_picture_shows_all_rows_that_can_be_read(purpose: str, arrangement: str) -> None:
    made = figure(bench(5), LineUp(arrangement=arrangement))  # type: ignore[arg-type]
    size = SIZES[purpose]
    look = LOOKS["light"].scaled(size.scale)
    scale = fitting_scale(made, size.width, size.height, look, Frame())
    scene = lay_out(made, size.width, size.height, look.scaled(scale), Frame())
    assert scene.is_whole
    texts_apart(scene)
    assert made.headline.split()[0] in scene.texts[-1].text + "".join(t.text for t in scene.texts)


def test_rows_without_room_are_counted() -> None:
    made = figure(bench(12), LineUp(arrangement="run under run"))
    scene = lay_out(made, 900, 400, LOOKS["light"], NO_FRAME)
    assert not scene.is_whole
    assert any("no room for" in t.text for t in scene.texts)
    texts_apart(scene)


def test_plots_turn_pixels_into_values_and_back() -> None:
    made = figure(bench(2), LineUp(arrangement="machine under machine"))
    scene = lay_out(made, 900, 600, LOOKS["light"], NO_FRAME)
    assert len(scene.plots) == 4
    for plot in scene.plots:
        assert (plot.low, plot.high) == (made.x.low, made.x.high)
        assert plot.x(plot.low) == pytest.approx(plot.box.x)
        assert plot.value(plot.box.right) == pytest.approx(plot.high)
        assert plot.value(plot.x(3.0)) == pytest.approx(3.0)


def test_curves_stay_inside_their_plots_and_belong_to_runs() -> None:
    made = figure(bench(3), LineUp(fit_processing=False))
    scene = lay_out(made, 900, 600, LOOKS["light"], NO_FRAME)
    assert {c.run_id for c in scene.curves} == set(made.run_ids)
    for curve in scene.curves:
        assert curve.clip is not None
        known = np.isfinite(curve.ys)
        assert (curve.ys[known] >= curve.clip.y - 1).all()
        assert (curve.ys[known] <= curve.clip.bottom + 1).all()
        assert (curve.xs >= curve.clip.x - 1).all()


def test_a_run_that_leaves_is_drawn_in_another_way_and_named() -> None:
    runs = list(bench(1, 4))
    watts = runs[1].trace.power_w.copy()
    watts[int(STANDBY_S) + 300 : int(STANDBY_S) + 600] += 40.0
    runs[1] = strand(watts, runs[1].warm_s - runs[1].start_s, "run 2")
    for arrangement, said in (("over each other", "Alder, run 2: "), ("run under run", "leaves its band ")):
        made = figure(tuple(runs), LineUp(arrangement=arrangement))  # type: ignore[arg-type]
        scene = lay_out(
            made, 1000, max(600, room_for(made, LOOKS["light"]).least[1]), LOOKS["light"], NO_FRAME
        )
        assert any(isinstance(i, Stroke) and i.color == "caution" and i.dash for i in scene.items)
        assert any(t.text.startswith(said) and t.token == "caution" for t in scene.texts)


def test_a_marked_span_is_part_of_the_picture() -> None:
    runs = bench(1, 2)
    plain, marked = (figure(runs, LineUp(span=span)) for span in (None, (300.0, 600.0)))
    pictures = [render(f, Size(600, 400), LOOKS["light"]) for f in (plain, marked)]
    scene = lay_out(marked, 600, 400, LOOKS["light"], NO_FRAME)
    plot = scene.plots[0]
    x, y = round(plot.x(450 / 60)), round(plot.box.y + 0.3 * plot.box.height)
    before, after = (QColor(p.pixel(x, y)) for p in pictures)
    assert before != after


def test_a_gap_lifts_the_pen_in_the_picture() -> None:
    run = bench(1, 1)[0]
    made = figure((run,), LineUp(shown="power"))
    curve = made.rows[0][0].curves[0]
    y = curve.y.copy()
    y[100:140] = np.nan
    broken = evolve(made, rows=((evolve(made.rows[0][0], curves=(evolve(curve, y=y),)),),))
    whole, open_ = (render(f, Size(600, 400), LOOKS["light"]) for f in (made, broken))
    assert whole != open_


@pytest.mark.parametrize("places", [[5.0, 5.0, 5.0], [1.0, 9.0, 9.5], [0.0, 0.1, 9.9]])
def test_names_are_spread_without_crossing(places: list[float]) -> None:
    found = spread(places, 2.0, 0.0, 10.0)
    assert all(b - a >= 2.0 - 1e-9 for a, b in pairwise(found))
    assert found[0] >= 0.0
    assert found[-1] <= 10.0
