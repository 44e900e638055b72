"""Results as frozen values: what the pages, the command line and the tables show. No computing here."""

from typing import Literal

from attrs import frozen

from core.problems import Problem
from core.study import AcceptedFinding, Boundary

State = Literal["off", "standby", "warm-up", "processing", "cooling"]
#: how standby power was had: mean of a rest that is steady, or of one that is not, or low end of all rests
StandbyWay = Literal["steady rest", "unsteady rest", "lowest level"]


@frozen
class StateSpan:
    """A stretch in one operating state, on the log's clock. [s]"""

    state: State
    start_s: float
    end_s: float


@frozen
class Influence:
    """One line of an uncertainty budget.

    Parameters
    ----------
    name : str
        Such as ``"meter gain"``, ``"sampling"``, ``"counter step"``, ``"gaps"``, ``"boundary"``.
    u_wh : float
        Standard uncertainty it gives the energy; signed sensitivity times u for shared influences. [Wh]
    shared : str or None
        Runs whose influence carries the same text here err together (same meter); None: this run alone.
    df : float
        Degrees of freedom; infinite unless estimated from few values.
    """

    name: str
    u_wh: float
    shared: str | None = None
    df: float = float("inf")


@frozen(cache_hash=True)
class Energy:
    """Energy of an interval of a trace, with what makes it unsure.

    ``method`` is one of ``"power"``, ``"counter"``, ``"counter with power at the edges"``, ``"typed"``.
    ``gap_share`` is the part of the time that lies in gaps, ``untold_gap_share`` in those of them of which no
    counter tells what was used.
    """

    energy_wh: float
    influences: tuple[Influence, ...]
    method: str
    gap_share: float = 0.0
    untold_gap_share: float = 0.0
    by_power_wh: float | None = None
    by_counter_wh: float | None = None
    problems: tuple[Problem, ...] = ()


@frozen
class BedShare:
    """The bed's part of a run's energy, or an honest bound, or why it cannot be seen.

    ``share`` is None when refused; then ``why_not`` holds a problem, and ``at_least``/``at_most`` a bound if
    there is one. ``method`` names the way: ``"own meter"``, ``"run with the bed off"``, ``"hold test"``,
    ``"heater switching"``. ``others`` are the other ways that gave this run a share; ``terms`` the values
    that a way put together, by name; ``influences`` what makes the share unsure, each as what it moves the
    bed's energy by when the run's stays as it is.
    """

    share: float | None
    share_u95: float | None
    energy_wh: float | None
    method: str
    why_not: Problem | None = None
    at_least: float | None = None
    at_most: float | None = None
    others: tuple["BedShare", ...] = ()
    terms: tuple[tuple[str, float], ...] = ()
    influences: tuple[Influence, ...] = ()


@frozen
class RunResult:
    """What one run used. Unknown is None, never 0; ``u95`` is the half-width of the 95 % interval.

    ``left_out_by_user``: somebody decided that what may be a run of the part does not count. A stretch that
    somebody called the test it is, where the program saw no run either, is not left out.
    """

    run_id: str
    machine_id: str
    name: str
    start_s: float | None
    end_s: float | None
    start: str | None
    part: str
    included: bool
    why_excluded: str | None
    decided_by_user: bool
    seconds: float | None
    energy_wh: float | None
    energy_u95_wh: float | None
    mean_w: float | None
    parts_per_kwh: float | None
    energy: Energy | None
    bed: BedShare | None
    states: tuple[StateSpan, ...] = ()
    problems: tuple[Problem, ...] = ()
    left_out_by_user: bool = False


@frozen
class Measured:
    """A value with the half-width of its 95 % interval; ``u95`` None when only one value was measured."""

    value: float
    u95: float | None


@frozen
class MachineResult:
    """What one machine needs for the part: the mean of its included runs.

    ``parts_per_kwh`` is 1000 / mean energy. Values are None with no included run. ``standby_w`` has no
    interval where it is the lowest level of logs with no rest long enough, as ``standby_way`` tells.
    """

    machine_id: str
    name: str
    slot: int
    files: tuple[str, ...]
    runs: tuple[RunResult, ...]
    energy_wh: Measured | None
    parts_per_kwh: Measured | None
    mean_w: Measured | None
    seconds: Measured | None
    bed_share: Measured | None
    bed_w: float | None
    standby_w: Measured | None
    standby_way: StandbyWay | None = None
    influences: tuple[Influence, ...] = ()
    problems: tuple[Problem, ...] = ()

    @property
    def included(self) -> tuple[RunResult, ...]:
        """The runs that count."""
        return tuple(r for r in self.runs if r.included and r.energy_wh is not None)


@frozen
class Pair:
    """Two machines against each other: ``ratio`` = energy of `machine_id` over that of `other_id`.

    ``ratio_low``/``ratio_high`` bound the 95 % interval; ``p`` is the larger of ``repeats_p``, of
    the repeats alone (Welch's test, or Games and Howell's where ``tested`` machines are more than two), and
    ``ratio_p``, of the ratio with what the meters leave open (adjusted for all pairs, Holm); ``shown`` says
    whether a difference is shown; ``runs_needed`` how many runs each would show
    ``needed_percent`` (None: no number of runs would, the meters' shared part is larger).
    """

    machine_id: str
    other_id: str
    ratio: float
    ratio_low: float | None
    ratio_high: float | None
    p: float | None
    shown: bool | None
    runs_needed: int | None = None
    needed_percent: float | None = None
    ratio_p: float | None = None
    repeats_p: float | None = None
    tested: int = 0


Level = Literal["note", "caution", "unfair"]


@frozen
class Finding:
    """An entry of the fairness list.

    Parameters
    ----------
    level : {"note", "caution", "unfair"}
        Unfair: it could matter more than what it is held against.
    problem : Problem
    machine_ids : tuple of str
        Machines it touches.
    matters_wh : float or None
        What it could make of a part's energy, by the model that `core.results.fairness_points` names. [Wh]
    run_ids : tuple of str
        Runs it touches; empty where it touches all of its machines.
    against_wh : float or None
        The smallest difference shown between one of its machines and another, or what the runs leave open
        where none is shown. [Wh]
    working : tuple of str
        The arithmetic behind `matters_wh`.
    accepted : str
        The user's reason to accept it; empty while it is open.
    lapsed : str
        The reason for which it was accepted when it was less grave: that holds no longer.
    key : str
        What it is and of what; the same however often it is found.
    """

    level: Level
    problem: Problem
    machine_ids: tuple[str, ...]
    matters_wh: float | None = None
    run_ids: tuple[str, ...] = ()
    against_wh: float | None = None
    working: tuple[str, ...] = ()
    accepted: str = ""
    lapsed: str = ""
    key: str = ""

    @property
    def is_open(self) -> bool:
        """Whether it counts against the comparison: the user has not accepted it."""
        return not self.accepted


@frozen
class Comparison:
    """The answer: machines in order of energy per part (those without a value last), pairs, findings.

    ``fairness`` holds accepted points too; ``accepted_before`` are those accepted and no longer found;
    ``unseen`` the temperatures of which nothing is known of any machine, by their place.
    """

    part: str
    boundary: Boundary
    machines: tuple[MachineResult, ...]
    pairs: tuple[Pair, ...]
    fairness: tuple[Finding, ...]
    problems: tuple[Problem, ...]
    headline: str
    conditions: str
    accepted_before: tuple[AcceptedFinding, ...] = ()
    unseen: tuple[str, ...] = ()

    @property
    def open_findings(self) -> tuple[Finding, ...]:
        """Points of fairness that count."""
        return tuple(f for f in self.fairness if f.is_open)

    @property
    def accepted_findings(self) -> tuple[Finding, ...]:
        """Points of fairness that the user has accepted."""
        return tuple(f for f in self.fairness if not f.is_open)
