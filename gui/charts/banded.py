"""A comparison whose columns stand in several bands one under another: for pictures higher than wide."""

from attrs import evolve

from core.figures.placing import Box
from core.figures.values import ComparisonFigure, Figure
from gui.charts.layout import lay_out_inside
from gui.charts.scene import Scene
from gui.look import Look

#: room between two bands [px at scale 1]
_APART = 14.0
#: more bands than this would say every machine's name too often
_MOST = 4


def most_bands(figure: Figure) -> int:
    """Into how many bands a figure may be cut; 1 for what has no columns."""
    return min(len(figure.measures), _MOST) if isinstance(figure, ComparisonFigure) else 1


def lay_out_banded(figure: Figure, area: Box, look: Look, bands: int) -> Scene:
    """Place a figure inside `area`, its columns in so many bands of about equally many."""
    if bands == 1 or not isinstance(figure, ComparisonFigure):
        return lay_out_inside(figure, area, look)
    height = (area.height - (bands - 1) * look.px(_APART)) / bands
    scenes = []
    many = len(figure.measures)
    for band in range(bands):
        first, end = round(band * many / bands), round((band + 1) * many / bands)
        part = evolve(
            figure,
            measures=figure.measures[first:end],
            ties=figure.ties if band == 0 else (),  # the brackets speak of the first column
        )
        y = area.y + band * (height + look.px(_APART))
        scenes.append(lay_out_inside(part, Box(area.x, y, area.width, max(height, 1.0)), look))
    return Scene(
        area.right,
        area.bottom,
        items=tuple(item for scene in scenes for item in scene.items),
        is_whole=all(scene.is_whole for scene in scenes),
        unnamed=sum(scene.unnamed for scene in scenes),
        is_airy=all(scene.is_airy for scene in scenes),
    )
