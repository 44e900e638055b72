"""What the run finder says of a trace, as frozen values."""

from attrs import frozen

from core.study import Kind


@frozen
class Stretch:
    """A stretch of a trace in which the machine heated, and what it is taken for.

    Parameters
    ----------
    start_s, end_s : float
        Edges on the log's clock. [s]
    kind : Kind
        What it is taken for.
    why : str
        Reason as a code of the sentences table; empty for a run with nothing to remark.
    part : str
        ``"A"`` for runs of the main part, ``"B"`` and on for others; empty where no part was made.
    sure : bool
        False where the trace alone does not settle `kind`; `why` says what is open.
    energy_wh : float
        Energy for grouping only: not a result. [Wh]
    energy_apart : float
        Relative standard deviation that the sampling of switching heaters gives `energy_wh`.
    warm_up_end_s : float
        When warm-up ends, equal to `start_s` where none is seen. [s]
    processing_wh : float
        Energy from there to the end without pauses, as `energy_wh`. [Wh]
    paused_s : float
        Time from there to the end in which nothing moves. [s]
    base_w : float
        Level with the bed's heater off: the lower mode of the stretch. [W]
    levels_w : tuple of float
        Levels of its later part, from low to high at even parts of the time. [W]
    rows : int
        Rows that they were read from.
    motion : float
        Movement of neighbouring base rows over the same at rest; near 1 where nothing moves. NaN where too
        few rows show it.
    """

    start_s: float
    end_s: float
    kind: Kind = "run"
    why: str = ""
    part: str = "A"
    sure: bool = True
    energy_wh: float = 0.0
    energy_apart: float = 0.0
    warm_up_end_s: float = float("-inf")
    processing_wh: float = 0.0
    paused_s: float = 0.0
    base_w: float = 0.0
    levels_w: tuple[float, ...] = ()
    rows: int = 0
    motion: float = float("nan")

    @property
    def seconds(self) -> float:
        """Length. [s]"""
        return self.end_s - self.start_s

    @property
    def processing_s(self) -> float:
        """Length without the warm-up. [s]"""
        return self.end_s - max(self.start_s, self.warm_up_end_s)

    @property
    def working_s(self) -> float:
        """Length without the warm-up and pauses: what the part itself takes. [s]"""
        return self.processing_s - self.paused_s


@frozen
class Activity:
    """The levels learnt from a trace and the stretches found with them.

    Parameters
    ----------
    standby_w : float or None
        Lowest idle level; 0 for a machine that draws nothing measurable; None where no idle is seen. [W]
    idle_w : float or None
        Highest idle level (held motors, fans); None where the log shows no idle. [W]
    threshold_w : float
        Power above which the machine heats. [W]
    processing_floor_w : float
        Level that processing hardly ever falls below. [W]
    quiet_w : float
        Mean step between neighbouring rows at rest: what the meter's own noise amounts to. [W]
    stretches : tuple of Stretch
        By start, not overlapping.
    """

    standby_w: float | None
    idle_w: float | None
    threshold_w: float
    processing_floor_w: float
    quiet_w: float
    stretches: tuple[Stretch, ...] = ()

    @property
    def runs(self) -> tuple[Stretch, ...]:
        """The runs of the main part."""
        return tuple(s for s in self.stretches if s.kind == "run")
