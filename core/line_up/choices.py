"""How a person wants to see runs lined up, as a value."""

from typing import Literal

from attrs import frozen

Anchor = Literal["start", "end of warm-up", "end", "share of duration"]
ANCHORS: tuple[Anchor, ...] = ("start", "end of warm-up", "end", "share of duration")
Arrangement = Literal["over each other", "machine under machine", "run under run", "difference"]
ARRANGEMENTS: tuple[Arrangement, ...] = (
    "over each other",
    "machine under machine",
    "run under run",
    "difference",
)
Shown = Literal["power", "running energy", "both"]
SHOWN: tuple[Shown, ...] = ("power", "running energy", "both")
Repeats = Literal["runs and bands", "bands", "runs"]
REPEATS: tuple[Repeats, ...] = ("runs and bands", "bands", "runs")


@frozen
class LineUp:
    """What is asked for.

    Parameters
    ----------
    smooth_s : float or None
        Width of the moving mean; 0 for the power as logged, None for the width that suits the runs. [s]
    reference : str
        Run id that the others are compared with in a difference; empty for the first run shown.
    fit_processing : bool
        Give the height of the chart to what follows warm-up; the warm-up then leaves it at the top.
    view : tuple of float, optional
        From where to where of the common axis is drawn; None for all of it.
    span : tuple of float, optional
        What is marked to be read, on the common axis.
    """

    anchor: Anchor = "start"
    arrangement: Arrangement = "over each other"
    shown: Shown = "both"
    repeats: Repeats = "runs and bands"
    smooth_s: float | None = None
    reference: str = ""
    fit_processing: bool = True
    view: tuple[float, float] | None = None
    span: tuple[float, float] | None = None
