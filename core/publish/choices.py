"""What a person chose to publish, as a value that the study keeps."""

from typing import Final, Literal

from attrs import frozen

from core.line_up.choices import LineUp

Purpose = Literal["wide", "square", "tall", "article", "slide", "free"]
Theme = Literal["light", "dark", "print"]
THEMES: Final[tuple[Theme, ...]] = ("light", "dark", "print")
#: from where a picture is looked at
Place = Literal["page", "desk", "phone", "room"]
PLACES: Final[tuple[Place, ...]] = ("page", "desk", "phone", "room")
#: smallest and largest side of a picture of free size [px]
SIDE_PX: Final = (320, 8000)
#: pictures hold at most so many figures
MOST_ON_ONE: Final = 4


@frozen
class Pick:
    """A figure or table that is to be published.

    Parameters
    ----------
    key : str
        Key of its entry on the shelf.
    title : str
        The user's own title; empty for the one that the data give.
    line_up : LineUp or None
        How runs are lined up, where the pick is a line-up as a person arranged it.
    run_ids : tuple of str
        The runs that were shown in it.
    """

    key: str
    title: str = ""
    line_up: LineUp | None = None
    run_ids: tuple[str, ...] = ()


@frozen
class Publishing:
    """Picks, and how their pictures are to look.

    Parameters
    ----------
    picks : tuple of Pick
        In the order in which they are published.
    purpose : Purpose
    width_px, height_px : int
        Of a picture of free size. [px]
    theme : Theme
    is_clear : bool
        Whether the ground is transparent.
    place : Place or None
        From where the pictures are looked at; None for the usual place of the purpose.
    is_together : bool
        Whether the first figures, four at most, share one picture.
    has_title, has_conditions : bool
        What stands around the charts: the title above, conditions and source below.
    note : str
        A line of the user's own under the charts.
    machine_ids : tuple of str
        Machines shown, in their order; empty for all.
    highlighted : str
        Machine id that stands out; empty for none.
    """

    picks: tuple[Pick, ...] = ()
    purpose: Purpose = "wide"
    width_px: int = 1600
    height_px: int = 900
    theme: Theme = "light"
    is_clear: bool = False
    place: Place | None = None
    is_together: bool = False
    has_title: bool = True
    has_conditions: bool = True
    note: str = ""
    machine_ids: tuple[str, ...] = ()
    highlighted: str = ""

    @property
    def keys(self) -> tuple[str, ...]:
        """Keys of the picks."""
        return tuple(pick.key for pick in self.picks)

    def pick(self, key: str) -> Pick | None:
        """The pick of an entry of the shelf; None where it is not picked."""
        return next((pick for pick in self.picks if pick.key == key), None)
