"""Every figure of a study for the report, the bundle and the files of the command line."""

from collections.abc import Iterator
from typing import Final

from core.publish.choices import Publishing
from core.publish.shelf import shelf
from core.publish.sources import Sources
from core.report.pictures import Drawable, Picture, Style
from core.report.write import leading_keys
from gui.charts.sheet import Part
from gui.publish.encode import image_of, png_bytes, svg_bytes
from gui.publish.picture import draw

#: of more machines than these, pictures that each has of its own are drawn of the first only
MOST_WITH_OWN: Final = 12


def report_pictures(
    drawable: Drawable, style: Style, year: int, *, has_pixels: bool = True
) -> Iterator[Picture]:
    """Draw every figure of a study as for an article, one after another, so that a caller may stop.

    Of many machines, a picture that each has of its own is drawn of the first only.

    Needs a running QGuiApplication (without a screen: on the offscreen platform); works in any thread.

    Parameters
    ----------
    drawable : Drawable
    style : {"light", "dark"}
    year : int
        Calendar year whose prices are meant.
    has_pixels : bool
        Whether to encode PNG files too, which takes far longer than everything else.
    """
    sources = Sources(drawable, year)
    publishing = Publishing(purpose="wide", theme=style, place="desk")
    entries = shelf(sources)
    wanted = [entry.key for entry in entries]
    if len(sources.study.machines) > MOST_WITH_OWN:
        wanted = list(leading_keys(wanted, sources.study))
    for entry in entries:
        figure = entry.figure(sources) if entry.key in wanted else None
        if figure is None:
            continue
        picture = draw([Part(figure)], publishing, sources.study)
        png = png_bytes(image_of(picture)) if has_pixels else b""
        yield Picture(entry.key, entry.title, picture.words.alt, svg_bytes(picture).decode(), png, entry.page)
