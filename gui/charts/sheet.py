"""One to four figures on one picture: a title above, what they share below, each in a part of its own."""

from collections.abc import Sequence

from attrs import evolve, frozen

from core.figures.placing import Box
from core.figures.values import Figure
from gui.charts.banded import lay_out_banded, most_bands
from gui.charts.framing import MARGIN, Frame, footer, heading
from gui.charts.layout import largest_scale
from gui.charts.scene import Ruler, Scene, Text
from gui.look import Look, Size

#: room between two figures [px at scale 1]
_APART = 20.0
#: how many figures may stand beside each other in each row, by the number of figures
_GRIDS: dict[int, tuple[tuple[int, ...], ...]] = {
    1: ((1,),),
    2: ((2,), (1, 1)),
    3: ((3,), (1, 1, 1), (2, 1), (1, 2)),
    4: ((2, 2), (4,), (1, 1, 1, 1)),
}


@frozen
class Part:
    """A figure of a picture; its title stands above it where there are several."""

    figure: Figure
    title: str = ""


@frozen
class SheetSize:
    """Size of a picture [px], and of its text: the scale wished for, and the least to which it may shrink."""

    width: float
    height: float
    wished: float
    least: float


def lay_out_sheet(parts: Sequence[Part], size: SheetSize, look: Look, frame: Frame) -> tuple[Scene, Look]:
    """Place figures on a picture, in the grid and with the text that show most of them.

    Parameters
    ----------
    parts : sequence of Part
        One to four.
    size : SheetSize
    look : Look
        Its own scale is not used.
    frame : Frame
        The title is that of the first figure where the frame has none of its own.

    Returns
    -------
    Scene
    Look
        Of the scale that was found.

    Raises
    ------
    ValueError
        If there are no parts or too many: the caller's mistake.
    """
    if len(parts) not in _GRIDS:
        raise ValueError(f"a picture holds one to {max(_GRIDS)} figures, not {len(parts)}")
    most = max(most_bands(part.figure) for part in parts)
    laid_out = _LaidOut()
    best: tuple[tuple[float, ...], Scene, Look] | None = None
    for grid in _GRIDS[len(parts)]:
        for bands in range(1, most + 1):
            scale, scene = _fitted(parts, _Plan(grid, bands), size, look, frame, laid_out)
            worth = (scene.is_whole, -scene.unnamed, scene.is_airy, scale, -bands, -_skew(grid, size))
            if best is None or worth > best[0]:
                best = worth, scene, look.scaled(scale)
            if scene.is_airy and scale == size.wished:
                break  # nothing is won by more bands
    assert best is not None
    return best[1], best[2]


@frozen
class _Plan:
    """How many figures stand beside each other in each row, and into how many bands columns are cut."""

    grid: tuple[int, ...]
    bands: int


class _LaidOut:
    """Figures laid out for one picture, each once for a place: plans differ in some of their figures only."""

    def __init__(self) -> None:
        self._scenes: dict[tuple[int, Box, float, int], Scene] = {}

    def scene(self, part: Part, box: Box, look: Look, bands: int) -> Scene:
        key = (id(part), box, look.scale, min(bands, most_bands(part.figure)))
        if key not in self._scenes:
            self._scenes[key] = lay_out_banded(part.figure, box, look, key[-1])
        return self._scenes[key]


def _fitted(
    parts: Sequence[Part], plan: _Plan, size: SheetSize, look: Look, frame: Frame, laid_out: _LaidOut
) -> tuple[float, Scene]:
    """The largest scale at which a plan shows everything, and the picture at it."""
    scenes: dict[float, Scene] = {}

    def made(scale: float) -> Scene:
        if scale not in scenes:
            scenes[scale] = _placed(parts, plan, size, look.scaled(scale), frame, laid_out)
        return scenes[scale]

    scale = largest_scale(made, size.wished, size.least)
    return scale, made(scale)


def _skew(grid: tuple[int, ...], size: SheetSize) -> float:
    """How far the parts are from being half as wide again as they are high."""
    ratio = (size.width / max(grid)) / (size.height / len(grid)) / 1.5
    return max(ratio, 1 / ratio)


def _placed(
    parts: Sequence[Part], plan: _Plan, size: SheetSize, look: Look, frame: Frame, laid_out: _LaidOut
) -> Scene:
    margin = look.px(MARGIN)
    inner = Box(margin, margin, max(size.width - 2 * margin, 1.0), max(size.height - 2 * margin, 1.0))
    head = heading(parts[0].figure, inner, look, frame)
    foot = footer([part.figure for part in parts], inner, look, frame)
    top = max((t.box.bottom for t in head), default=inner.y - margin) + margin
    bottom = min((t.box.y for t in foot), default=inner.bottom + margin) - margin
    area = Box(inner.x, top, inner.width, max(bottom - top, 1.0))
    scenes: list[Scene] = []
    titles: list[Text] = []
    for part, box in zip(parts, _boxes(plan.grid, area, look.px(_APART)), strict=True):
        title = _title(part, box, look) if len(parts) > 1 else None
        if title is not None:
            titles.append(title)
            used = title.box.height + look.px(6)
            box = Box(box.x, box.y + used, box.width, max(box.height - used, 1.0))
        scenes.append(laid_out.scene(part, box, look, plan.bands))
    return Scene(
        size.width,
        size.height,
        items=(*(item for scene in scenes for item in scene.items), *titles, *head, *foot),
        title=head,
        is_whole=all(scene.is_whole for scene in scenes),
        unnamed=sum(scene.unnamed for scene in scenes),
        is_airy=all(scene.is_airy for scene in scenes),
    )


def _boxes(grid: tuple[int, ...], area: Box, apart: float) -> list[Box]:
    """The parts of the picture row by row; those of a row share its width."""
    height = (area.height - apart * (len(grid) - 1)) / len(grid)
    boxes = []
    for row, many in enumerate(grid):
        width = (area.width - apart * (many - 1)) / many
        y = area.y + row * (height + apart)
        boxes += [
            Box(area.x + i * (width + apart), y, max(width, 1.0), max(height, 1.0)) for i in range(many)
        ]
    return boxes


def _title(part: Part, box: Box, look: Look) -> Text | None:
    if not part.title:
        return None
    ruler = Ruler(look)
    shown = ruler.fitted(part.title, box.width, Size.LARGE, bold=True)
    height = ruler.height(Size.LARGE, bold=True)
    at = Box(box.x, box.y, box.width, height)
    return Text(at, shown, Size.LARGE, bold=True, full=part.title)


def built_up(scene: Scene, slots: Sequence[int], *, has_title: bool) -> Scene:
    """The scene with only these machines in it, with or without its title, everything else where it was."""
    there = frozenset(slots)
    gone = () if has_title else scene.title
    items = (item for item in scene.items if item.slot is None or item.slot < 0 or item.slot in there)
    return evolve(scene, items=tuple(item for item in items if not (gone and item in gone)))
