"""What stands around the charts of a saved picture: the title above, conditions and source below."""

from collections.abc import Sequence
from typing import Final

from attrs import frozen

from core.figures.placing import Box
from core.figures.source import with_maker
from core.figures.values import Figure
from gui.charts.scene import Ruler, Text
from gui.look import Look, Size

MARGIN: Final = 12.0
#: sizes of the title, each with the most lines it may take
_TITLES = ((Size.TITLE, 2), (Size.LARGE, 3), (Size.TEXT, 6))
#: conditions take no more lines than this, and a note no more than that
_MOST_CONDITIONS, _MOST_NOTE = 4, 3
#: between conditions and source in one line [px at scale 1]
_APART = 24.0


@frozen
class Frame:
    """What a saved picture carries around its charts.

    Parameters
    ----------
    title : bool
        The title above.
    conditions : bool
        Conditions, source and what the picture was made with, small, below.
    own_title : str
        Instead of the sentence that the data say.
    note : str
        A line of the user's own, under the charts.
    """

    title: bool = True
    conditions: bool = True
    own_title: str = ""
    note: str = ""


NO_FRAME: Final = Frame(title=False, conditions=False)


def heading(figure: Figure, inner: Box, look: Look, frame: Frame) -> tuple[Text, ...]:
    """The title in the largest size in which it takes few lines; none where the frame has none."""
    title = frame.own_title or figure.headline
    if not frame.title or not title:
        return ()
    ruler = Ruler(look)
    size, most = next(
        (
            (size, most)
            for size, most in _TITLES
            if len(ruler.wrapped(title, inner.width, most + 1, size, bold=True)) <= most
        ),
        _TITLES[-1],
    )
    lines = ruler.wrapped(title, inner.width, most, size, bold=True)
    height = ruler.height(size, bold=True)
    return tuple(
        Text(Box(inner.x, inner.y + i * height, inner.width, height), line, size, bold=True, full=line)
        for i, line in enumerate(lines)
    )


def footer(figures: Sequence[Figure], inner: Box, look: Look, frame: Frame) -> tuple[Text, ...]:
    """The note, then conditions with the source at the right, or under them where they do not fit beside."""
    ruler = Ruler(look)
    lines: list[tuple[str, Size, str]] = []
    if frame.note:
        lines += [(line, Size.TEXT, "ink") for line in ruler.wrapped(frame.note, inner.width, _MOST_NOTE)]
    beside: Text | None = None
    if frame.conditions:
        small = Size.SMALL
        conditions = " ".join(dict.fromkeys(f.conditions for f in figures if f.conditions))
        source = with_maker(figures[0].source)
        source = ruler.fitted(source, inner.width, small)
        width = ruler.width(source, small)
        if ruler.width(conditions, small) <= inner.width - width - look.px(_APART):
            height = ruler.height(small)
            at = Box(inner.right - width, inner.bottom - height, width, height)
            beside = Text(at, source, small, token="muted", full=source)
            lines += [(conditions, small, "muted")] if conditions else []
        else:
            wrapped = ruler.wrapped(conditions, inner.width, _MOST_CONDITIONS, small)
            lines += [(line, small, "muted") for line in wrapped]
            lines.append((source, small, "muted"))
    placed: list[Text] = [] if beside is None else [beside]
    y = inner.bottom
    if beside is not None and not (lines and lines[-1][1] is Size.SMALL):
        y = beside.box.y  # the source alone: what is above it stands above it
    for text, size, token in reversed(lines):
        height = ruler.height(size)
        y -= height
        room = inner.width
        if beside is not None and y + height > beside.box.y:
            room = beside.box.x - look.px(_APART) - inner.x
        placed.append(Text(Box(inner.x, y, room, height), text, size, token=token, full=text))
    return tuple(reversed(placed))
