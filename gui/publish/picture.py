"""A picture as it is to be painted, and the words that travel in its file."""

from collections.abc import Sequence

from attrs import frozen
from PySide6.QtGui import QPainter

from core.figures.source import numbers_of, with_maker
from core.figures.values import Figure
from core.publish.alt_text import alt_text, several
from core.publish.choices import Publishing
from core.study import Study
from gui.charts.drawing import paint
from gui.charts.framing import Frame
from gui.charts.scene import Scene
from gui.charts.sheet import Part, SheetSize, lay_out_sheet
from gui.look import Look
from gui.publish.looks import look_of
from gui.publish.purposes import sheet_size


@frozen
class Words:
    """What a picture says about itself.

    ``description`` is the user's note and whose numbers they are; ``numbers`` are the values it was drawn
    from; ``alt`` says in words what it shows.
    """

    title: str
    description: str
    numbers: str
    alt: str


@frozen
class DrawnPicture:
    """A laid out picture with its look and its words; `width` and `height` before any ratio. [px]"""

    width: int
    height: int
    scene: Scene
    look: Look
    words: Words

    @property
    def text_px(self) -> float:
        """Size of its text. [px]"""
        return self.look.text_px * self.look.scale

    def paint(self, painter: QPainter, *, ground: bool = True) -> None:
        """Paint it with its top left at the painter's origin."""
        if ground and not self.look.is_clear:
            painter.fillRect(0, 0, self.width, self.height, self.look.color("card"))
        paint(painter, self.scene, self.look)


def draw(parts: Sequence[Part], publishing: Publishing, study: Study, own_title: str = "") -> DrawnPicture:
    """Lay out figures as they are to be published.

    Parameters
    ----------
    parts : sequence of Part
        One to four.
    publishing : Publishing
    study : Study
        Tells the highlighted machine's colour.
    own_title : str
        Instead of the sentence that the data say.
    """
    look = look_of(publishing, study)
    frame = Frame(publishing.has_title, publishing.has_conditions, own_title, publishing.note)
    return drawn(parts, sheet_size(publishing, look), look, frame)


def drawn(parts: Sequence[Part], size: SheetSize, look: Look, frame: Frame) -> DrawnPicture:
    """Lay out figures at a size."""
    scene, fitted = lay_out_sheet(parts, size, look, frame)
    words = words_of([part.figure for part in parts], frame)
    return DrawnPicture(round(size.width), round(size.height), scene, fitted, words)


def words_of(figures: Sequence[Figure], frame: Frame) -> Words:
    """What a picture of these figures says about itself."""
    said = [frame.note, f"{with_maker(figures[0].source)}."]
    return Words(
        title=frame.own_title or figures[0].headline,
        description=" ".join(filter(None, said)),
        numbers="; ".join(numbers_of(figure) for figure in figures),
        alt=several([alt_text(figure) for figure in figures]),
    )
