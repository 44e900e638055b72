"""Sizes by purpose, and of the text by the place from which a picture is looked at.

Text is laid out anew for each: a picture for a telephone is not the one for a page made smaller. Letters are
seen under an angle; 20 to 22 minutes of arc are advised for reading at ease and 16 at the least
(ISO 9241-303, from memory). A capital letter is about 0.7 of the text's size high, so text of 1 % of a
picture's shorter side is seen under 24 minutes from as far away as that side is long, and in proportion from
elsewhere.
"""

import math
from typing import Final

from attrs import frozen

from core.language import mark
from core.publish.choices import Place, Publishing, Purpose
from gui.charts.sheet import SheetSize
from gui.look import Look


@frozen
class Format:
    """What a purpose asks of a picture: its size, and from where it is looked at. [px]"""

    title: str
    width: int
    height: int
    place: Place


FORMATS: Final[dict[Purpose, Format]] = {
    "wide": Format(mark("Wide, 1920 × 1080"), 1920, 1080, "phone"),
    "square": Format(mark("Square, 1080 × 1080"), 1080, 1080, "desk"),
    "tall": Format(mark("Tall, 1080 × 1920"), 1080, 1920, "phone"),
    "article": Format(mark("Article, 1600 × 900"), 1600, 900, "page"),
    "slide": Format(mark("Slide, 1920 × 1080"), 1920, 1080, "room"),
    "free": Format(mark("Free size"), 1600, 900, "desk"),
}
#: how far away a picture is, in lengths of its shorter side (common practice, no source)
DISTANCES: Final[dict[Place, float]] = {"page": 2.2, "desk": 2.6, "phone": 3.2, "room": 4.0}
PLACE_NAMES: Final[dict[Place, str]] = {
    "page": mark("on a page"),
    "desk": mark("at a desk"),
    "phone": mark("on a phone"),
    "room": mark("across a room"),
}
#: text size in parts of the shorter side for each length of distance
_SHARE: Final = 0.01
#: with many machines text shrinks to this part of the size wished for, rather than leave machines away
_LEAST: Final = 0.5
#: below this part it is smaller than advised: 16 of 24 minutes of arc
_ADVISED: Final = 16 / 24


def size_of(publishing: Publishing) -> tuple[int, int]:
    """Width and height of the pictures. [px]"""
    if publishing.purpose == "free":
        return publishing.width_px, publishing.height_px
    chosen = FORMATS[publishing.purpose]
    return chosen.width, chosen.height


def place_of(publishing: Publishing) -> Place:
    """From where the pictures are looked at."""
    return publishing.place or FORMATS[publishing.purpose].place


def sheet_size(publishing: Publishing, look: Look) -> SheetSize:
    """Size of the pictures and of their text, as scales of `look`."""
    width, height = size_of(publishing)
    text_px = _SHARE * DISTANCES[place_of(publishing)] * min(width, height)
    wished = max(text_px / look.text_px, 0.5)
    return SheetSize(width, height, wished, _LEAST * wished)


def advised_px(publishing: Publishing) -> int:
    """Below this size text is smaller than advised for where the picture is looked at. [px]"""
    side = min(size_of(publishing))
    return math.floor(_ADVISED * _SHARE * DISTANCES[place_of(publishing)] * side)
