"""How everything looks: colours, type sizes, spacing, and the colour, marker and dash of each machine.

The only file with colours and pixel constants. A widget asks `current()` when it is made and again on
`PaletteChange` or `FontChange`; a saved image makes its own `Look` with another theme or scale.
"""

import math
from enum import Enum
from typing import Final

from attrs import evolve, field, frozen
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPainterPath, QPalette, QPen, QPolygonF

from core.language import mark

#: spacing, in steps of 4 [px at scale 1]
S4, S8, S12, S16, S24, S32 = 4, 8, 12, 16, 24, 32
CORNER: Final = 4
#: width of the line that marks what has the focus
FOCUS_EDGE: Final = 2


class Size(Enum):
    """The four type sizes, as shares of the system font. `SMALL` is for saved images only."""

    SMALL = 0.9
    TEXT = 1.0
    LARGE = 1.2
    TITLE = 1.6


@frozen
class Tokens:
    """The colours of one theme, as ``#RRGGBB``."""

    paper: str
    card: str
    side: str
    ink: str
    muted: str
    rule: str
    selection: str
    link: str
    caution: str
    problem: str


LIGHT: Final = Tokens(
    paper="#FBFAF7",
    card="#FFFFFF",
    side="#F1EEE6",
    ink="#20242B",
    muted="#5F6772",
    rule="#E3DFD5",
    selection="#E2DDCF",
    link="#0B5FA5",
    caution="#8A5200",
    problem="#A3262A",
)
DARK: Final = Tokens(
    paper="#16181C",
    card="#1D2025",
    side="#121417",
    ink="#E9E7E1",
    muted="#A2A9B3",
    rule="#2C3036",
    selection="#2B2F36",
    link="#7DB8F2",
    caution="#E3A94B",
    problem="#F08A84",
)

#: black on white, for paper and for printers without colours
PRINT: Final = Tokens(
    paper="#FFFFFF",
    card="#FFFFFF",
    side="#FFFFFF",
    ink="#000000",
    muted="#3D3D3D",
    rule="#C4C4C4",
    selection="#E2E2E2",
    link="#000000",
    caution="#000000",
    problem="#000000",
)

#: The qualitative set published by M. Okabe and K. Ito, "Color Universal Design" (2008), for people with
#: colour-vision deficiency, without its yellow (too faint on paper) and black (it is the ink).
FILLS: Final = ("#0072B2", "#E69F00", "#009E73", "#CC79A7", "#D55E00", "#56B4E9")
#: companions for thin lines on light paper: orange, pink and sky are too faint there
LINES_ON_LIGHT: Final = ("#0072B2", "#B87D00", "#008561", "#B0558A", "#C65700", "#2A8FC4")
#: and on dark paper: the blue is too dark there
LINES_ON_DARK: Final = ("#3E9BD6", "#E69F00", "#1FB88A", "#DB93BA", "#EE7A22", "#56B4E9")
MARKERS: Final = (
    mark("circle"),
    mark("square"),
    mark("triangle down"),
    mark("diamond"),
    mark("hexagon"),
    mark("triangle up"),
    mark("cross"),
    mark("star"),
)
#: dashes in pen widths; () is a solid line
DASHES: Final[tuple[tuple[float, ...], ...]] = ((), (6.0, 3.0), (2.0, 2.0), (8.0, 3.0, 2.0, 3.0))
#: without colours greys, markers and dashes must tell machines apart
PRINT_LINES: Final = ("#000000", "#787878")
PRINT_FILLS: Final = ("#2B2B2B", "#B4B4B4", "#6F6F6F", "#E0E0E0", "#8E8E8E", "#4A4A4A")
PRINT_DASHES: Final[tuple[tuple[float, ...], ...]] = (
    (),
    (9.0, 2.5),
    (1.5, 1.5),
    (9.0, 2.5, 1.5, 2.5),
    (4.0, 2.0),
    (9.0, 2.5, 1.5, 2.0, 1.5, 2.5),
)
#: machines beside one that stands out: still 3:1 on their ground, the least for graphics (WCAG 2.2, 1.4.11)
FADED_ON_LIGHT, FADED_ON_DARK = "#8A9099", "#7A818B"


@frozen
class MachineStyle:
    """What tells one machine from another: never the colour alone."""

    fill: str
    line: str
    marker: str
    dash: tuple[float, ...]


@frozen
class Look:
    """One theme at one scale.

    `scale` multiplies every length and type size: 1 on screen, more in a saved image. `standing_out` are
    slots of machines that keep their colours while the others fade; None for all. `is_clear`: what lies under
    a saved image is not known, so nothing is painted behind its texts.
    """

    is_dark: bool = False
    scale: float = 1.0
    family: str = "Sans Serif"
    text_px: float = 13.0
    tokens: Tokens = field(default=LIGHT)
    standing_out: frozenset[int] | None = None
    is_clear: bool = False

    @classmethod
    def of(
        cls, *, dark: bool, scale: float = 1.0, family: str = "Sans Serif", text_px: float = 13.0
    ) -> "Look":
        """The light or the dark look."""
        return cls(dark, scale, family, text_px, DARK if dark else LIGHT)

    @classmethod
    def of_print(cls, *, family: str = "Sans Serif") -> "Look":
        """Black on white."""
        return cls(family=family, tokens=PRINT)

    def scaled(self, scale: float) -> "Look":
        """The same look, larger or smaller."""
        return evolve(self, scale=scale)

    def px(self, length: float) -> float:
        """A length given at scale 1, in pixels."""
        return length * self.scale

    def font(self, size: Size = Size.TEXT, *, bold: bool = False) -> QFont:
        """The interface font at one of the four sizes, with figures of equal width."""
        font = QFont(self.family)
        font.setPixelSize(max(1, round(self.text_px * size.value * self.scale)))
        font.setBold(bold)
        font.setFeature(QFont.Tag("tnum"), 1)
        return font

    def color(self, token: str, alpha: float = 1.0) -> QColor:
        """A token by name, or any ``#RRGGBB``."""
        color = QColor(token if token.startswith("#") else getattr(self.tokens, token))
        color.setAlphaF(alpha)
        return color

    def blend(self, token: str, ground: str, share: float) -> QColor:
        """What `share` of one colour over another looks like, as an opaque colour."""
        over, under = self.color(token), self.color(ground)
        pairs = ((over.red(), under.red()), (over.green(), under.green()), (over.blue(), under.blue()))
        return QColor(*(round(share * a + (1 - share) * b) for a, b in pairs))

    def pen(self, token: str, width: float = 1.0, dash: tuple[float, ...] = ()) -> QPen:
        """A pen of a token or colour; `width` at scale 1, 0 for the thinnest line there is."""
        pen = QPen(self.color(token), self.px(width))
        pen.setCosmetic(width == 0)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if dash:
            pen.setDashPattern(list(dash))
        return pen

    def machine(self, slot: int) -> MachineStyle:
        """Colour, marker and dash of a slot; below 0, of no machine.

        The first 24 slots differ in colour or in marker.
        """
        if slot < 0:
            return MachineStyle(self.tokens.muted, self.tokens.muted, "square", ())
        hue, marker = slot % len(FILLS), MARKERS[slot % len(MARKERS)]
        dash = DASHES[(slot // len(FILLS)) % len(DASHES)]
        if self.tokens is PRINT:
            # greys are few: neighbours differ in dash at once
            dash = PRINT_DASHES[slot % len(PRINT_DASHES)]
            fill, line = PRINT_FILLS[hue], PRINT_LINES[slot % len(PRINT_LINES)]
        else:
            fill, line = FILLS[hue], (LINES_ON_DARK if self.is_dark else LINES_ON_LIGHT)[hue]
        if self.is_faded(slot):
            fill = line = FADED_ON_DARK if self.is_dark else FADED_ON_LIGHT
        return MachineStyle(fill, line, marker, dash)

    def is_faded(self, slot: int | None) -> bool:
        """Whether a machine steps back behind others."""
        return self.standing_out is not None and slot is not None and slot not in self.standing_out

    def palette(self) -> QPalette:
        """The palette of Qt's own widgets."""
        t = self.tokens
        palette = QPalette()
        role = QPalette.ColorRole
        for which, color in (
            (role.Window, t.paper),
            (role.WindowText, t.ink),
            (role.Base, t.card),
            (role.AlternateBase, t.paper),
            (role.Text, t.ink),
            (role.Button, t.card),
            (role.ButtonText, t.ink),
            (role.BrightText, t.problem),
            (role.ToolTipBase, t.card),
            (role.ToolTipText, t.ink),
            (role.PlaceholderText, t.muted),
            (role.Highlight, t.selection),
            (role.HighlightedText, t.ink),
            (role.Link, t.link),
            (role.LinkVisited, t.link),
            (role.Accent, t.link),
            (role.Light, t.card),
            (role.Midlight, t.rule),
            (role.Mid, t.rule),
            (role.Dark, t.muted),
            (role.Shadow, t.rule),
        ):
            palette.setColor(which, QColor(color))
        for which in (role.WindowText, role.Text, role.ButtonText):
            palette.setColor(QPalette.ColorGroup.Disabled, which, self.color("muted", 0.6))
        return palette


def current() -> Look:
    """The look of the running application, read from its palette and font."""
    app = QGuiApplication.instance()
    if not isinstance(app, QGuiApplication):
        return Look.of(dark=False)
    font = QGuiApplication.font()
    screen = QGuiApplication.primaryScreen()
    dpi = screen.logicalDotsPerInch() if screen is not None else 96.0
    text_px = float(font.pixelSize()) if font.pixelSize() > 0 else font.pointSizeF() * dpi / 72.0
    dark = QGuiApplication.palette().color(QPalette.ColorRole.Window).lightness() < 128
    return Look.of(dark=dark, family=font.family(), text_px=text_px)


def marker_path(marker: str, size: float) -> QPainterPath:
    """The outline of a machine's marker about (0, 0); the shapes have about the same area.

    Parameters
    ----------
    marker : str
        One of `MARKERS`.
    size : float
        Diameter of the circle. [px]
    """
    path = QPainterPath()
    r = size / 2.0
    if marker == "circle":
        path.addEllipse(QPointF(0, 0), r, r)
    elif marker == "square":
        half = 0.89 * r
        path.addRect(-half, -half, 2 * half, 2 * half)
    elif marker == "cross":
        path.addPolygon(_polygon(_cross(1.12 * r, 0.40 * r)))
    elif marker == "star":
        path.addPolygon(_polygon(_star(1.35 * r, 0.62 * r)))
    else:
        corners, turn, reach = {
            "triangle down": (3, 90.0, 1.35),
            "triangle up": (3, -90.0, 1.35),
            "diamond": (4, 0.0, 1.22),
            "hexagon": (6, 0.0, 1.10),
        }[marker]
        angles = [math.radians(turn + 360.0 * i / corners) for i in range(corners)]
        path.addPolygon(_polygon([(reach * r * math.cos(a), reach * r * math.sin(a)) for a in angles]))
    path.closeSubpath()
    return path


def _polygon(points: list[tuple[float, float]]) -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in points])


def _cross(reach: float, half: float) -> list[tuple[float, float]]:
    arm = [(half, -half), (reach, -half), (reach, half)]
    points = []
    for _ in range(4):
        points += arm
        arm = [(-y, x) for x, y in arm]
    return points


def _star(reach: float, inner: float) -> list[tuple[float, float]]:
    return [
        ((reach if i % 2 == 0 else inner) * math.cos(a), (reach if i % 2 == 0 else inner) * math.sin(a))
        for i in range(10)
        for a in [math.radians(-90.0 + 36.0 * i)]
    ]


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours after WCAG 2.2 (W3C Recommendation, 2023), "contrast ratio"."""
    lighter, darker = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(color: str) -> float:
    q = QColor(color)
    linear = [
        v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in (q.redF(), q.greenF(), q.blueF())
    ]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
