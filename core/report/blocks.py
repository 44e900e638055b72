"""A report as blocks: what it says, before anybody decides whether as HTML or on pages of a PDF."""

from datetime import date
from typing import Literal

from attrs import frozen

from core.report.pictures import Picture
from core.tables import Table

Role = Literal["", "answer", "conditions", "caution", "number", "formula", "note"]


@frozen
class Heading:
    """A heading: level 1 once, the title; 2 for parts, 3 within them."""

    text: str
    level: Literal[1, 2, 3] = 2


@frozen
class Paragraph:
    """Plain text; ``lead`` stands before it in bold, ``role`` says what it is for."""

    text: str
    role: Role = ""
    lead: str = ""


@frozen
class Bullets:
    """Lines under each other."""

    lines: tuple[str, ...]
    role: Role = ""


@frozen
class TableBlock:
    """A table with its title and notes."""

    table: Table


@frozen
class PictureBlock:
    """A picture with its title."""

    picture: Picture


Block = Heading | Paragraph | Bullets | TableBlock | PictureBlock


@frozen
class Report:
    """Everything that a report says.

    Parameters
    ----------
    title : str
    blocks : tuple of Block
    made : date
        Its day.
    program : str
        Program and version that made it.
    """

    title: str
    blocks: tuple[Block, ...]
    made: date
    program: str
