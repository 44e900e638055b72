"""What a chart consists of once every place is known: texts, lines, boxes and marks, in order of painting.

An item's ``slot`` is that of the machine it belongs to, None for what belongs to no machine: so a chart can
be shown machine by machine with everything in its place.
"""

from typing import Literal

from attrs import field, frozen
from PySide6.QtGui import QFont, QFontMetricsF

from core.figures.placing import Box
from core.traces import F64
from gui.look import Look, Size

Align = Literal["left", "center", "right"]
ELLIPSIS = "\u2026"
_UNITS = frozenset({"%", "Wh", "kWh", "W", "min", "h", "s", "°C", "€"})


@frozen
class Text:
    """One line of text in its box; ``full`` is the whole of it where it had to be shortened."""

    box: Box
    text: str
    size: Size = Size.TEXT
    bold: bool = False
    token: str = "ink"
    align: Align = "left"
    full: str = ""
    halo: bool = False
    slot: int | None = None


@frozen
class Line:
    """A straight line; `color` is a token or ``#RRGGBB``."""

    x1: float
    y1: float
    x2: float
    y2: float
    color: str
    width: float = 1.0
    dash: tuple[float, ...] = ()
    slot: int | None = None


@frozen
class Fill:
    """A filled rectangle with or without an outline."""

    box: Box
    color: str
    alpha: float = 1.0
    outline: str = ""
    slot: int | None = None


@frozen
class Marker:
    """A machine's marker; hollow for a run that is left out, `dot` for a run instead of a machine."""

    x: float
    y: float
    size: float
    slot: int
    hollow: bool = False
    dot: bool = False


@frozen
class Stroke:
    """A curve through many points; NaN lifts the pen.

    ``run_id`` says whose it is, where it is a run's; ``fine``: a trace as it was logged, for which a line one
    pixel wide is both the clearest and the only one that is painted fast.
    """

    xs: F64 = field(eq=False, repr=False)
    ys: F64 = field(eq=False, repr=False)
    color: str
    width: float = 1.0
    dash: tuple[float, ...] = ()
    alpha: float = 1.0
    run_id: str = ""
    machine_id: str = ""
    clip: Box | None = None
    fine: bool = False
    slot: int | None = None


@frozen
class Area:
    """What lies between two curves over the same places."""

    xs: F64 = field(eq=False, repr=False)
    tops: F64 = field(eq=False, repr=False)
    bottoms: F64 = field(eq=False, repr=False)
    color: str
    alpha: float
    clip: Box | None = None
    slot: int | None = None


Item = Text | Line | Fill | Marker | Stroke | Area


@frozen
class Target:
    """A place that can be pointed at: a run in one measure, or (``run_id`` empty) a machine's mark.

    ``lines`` are what is read out there, where the figure itself says it.
    """

    x: float
    y: float
    run_id: str
    machine_id: str
    key: str
    lines: tuple[str, ...] = ()


@frozen
class Hint:
    """What is said at more length where the pointer rests on a box."""

    box: Box
    text: str


@frozen
class ValuePlace:
    """Where a machine's value in one measure is written: pointing at it asks how it was found."""

    box: Box
    machine_id: str
    key: str


@frozen
class Plot:
    """Where a plot lies and which values its borders have: for turning pixels into values and back."""

    box: Box
    low: float
    high: float

    def x(self, value: float) -> float:
        """Where a value of the horizontal axis lies. [px]"""
        return self.box.x + self.box.width * (value - self.low) / (self.high - self.low)

    def value(self, x: float) -> float:
        """The value of the horizontal axis at a place."""
        return self.low + (self.high - self.low) * (x - self.box.x) / self.box.width


@frozen
class Scene:
    """A laid out chart.

    ``is_whole``: no row or column had to be left away for want of room; ``unnamed``: how many names of curves
    or marks found none; ``is_airy``: and what is shown can be read at ease. ``curves`` are those of the runs,
    also of runs that are not painted: what can be pointed at in a chart of curves. ``title`` are the lines of
    a saved picture's title, which are among the items.
    """

    width: float
    height: float
    items: tuple[Item, ...]
    targets: tuple[Target, ...] = ()
    hints: tuple[Hint, ...] = ()
    values: tuple[ValuePlace, ...] = ()
    plots: tuple[Plot, ...] = ()
    curves: tuple[Stroke, ...] = ()
    title: tuple[Text, ...] = ()
    is_whole: bool = True
    unnamed: int = 0
    is_airy: bool = True

    @property
    def texts(self) -> tuple[Text, ...]:
        """The texts among the items."""
        return tuple(i for i in self.items if isinstance(i, Text))


class Ruler:
    """Measures text as it will be painted."""

    def __init__(self, look: Look) -> None:
        self._look = look
        self._metrics: dict[tuple[Size, bool], QFontMetricsF] = {}
        self._widths: dict[tuple[str, Size, bool], float] = {}
        self._beyond = look.px(1)

    def metrics(self, size: Size, bold: bool) -> QFontMetricsF:
        """The metrics of one font."""
        key = (size, bold)
        if key not in self._metrics:
            self._metrics[key] = QFontMetricsF(font_of(self._look, size, bold))
        return self._metrics[key]

    def width(self, text: str, size: Size = Size.TEXT, bold: bool = False) -> float:
        """Width of a line of text, with the room that slanted or bold letters take beyond their advance."""
        key = (text, size, bold)
        width = self._widths.get(key)
        if width is None:
            width = self._widths[key] = self.metrics(size, bold).horizontalAdvance(text) + self._beyond
        return width

    def height(self, size: Size = Size.TEXT, bold: bool = False) -> float:
        """Height of a line of text."""
        return self.metrics(size, bold).height()

    def fitted(self, text: str, width: float, size: Size = Size.TEXT, bold: bool = False) -> str:
        """The text, shortened with an ellipsis if it is wider than `width`."""
        if self.width(text, size, bold) <= width:
            return text
        for end in range(len(text) - 1, 0, -1):
            shorter = text[:end].rstrip() + ELLIPSIS
            if self.width(shorter, size, bold) <= width:
                return shorter
        return ELLIPSIS

    def wrapped(
        self, text: str, width: float, lines: int, size: Size = Size.TEXT, bold: bool = False
    ) -> tuple[str, ...]:
        """The text broken between words into at most `lines` lines; the last is shortened if it must be."""
        done: list[str] = []
        words = _unbroken(text)
        while words:
            taken = len(words)
            if len(done) < lines - 1:
                while taken > 1 and self.width(" ".join(words[:taken]), size, bold) > width:
                    taken -= 1
            done.append(self.fitted(" ".join(words[:taken]), width, size, bold))
            words = words[taken:]
        return tuple(done)


def _unbroken(text: str) -> list[str]:
    """The words of a text, with a unit kept beside its number."""
    words: list[str] = []
    for word in text.split():
        if words and words[-1][-1].isdigit() and word.rstrip(".,;:)") in _UNITS:
            words[-1] += f" {word}"
        else:
            words.append(word)
    return words


def font_of(look: Look, size: Size, bold: bool = False) -> QFont:
    """The look's font without hinting, so that widths grow evenly from the screen to a large picture.

    And without ligatures: a reader of a PDF finds "difference" only if it was written letter by letter.
    """
    font = look.font(size, bold=bold)
    font.setFeature(QFont.Tag("liga"), 0)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font
