"""The user's document as one frozen value: machines, meters, logs and what each stretch of a log is.

Rules: nothing here computes a result and nothing is changed in place (`core.edits` makes new studies).
What the program decided and what the user decided are kept apart, so that the user's decision wins and can be
handed back: a field of `Run` that the user set holds a value, one that the program decides holds None.
"""

from typing import Literal

from attrs import field, frozen

from core.costs.rates import Costs, PriceList
from core.loads.names import IdleLoad, StepName
from core.plan.values import Plan
from core.publish.choices import Publishing

Kind = Literal["run", "other part", "broken off", "cut", "heating", "hold test", "switch-on test", "nothing"]
PropertyKind = Literal["number", "words", "yes/no"]
Boundary = Literal["warm-up and processing", "processing only", "until cooled"]
BOUNDARIES: tuple[Boundary, ...] = ("warm-up and processing", "processing only", "until cooled")
#: what a person may say a stretch is
KINDS: tuple[Kind, ...] = (
    "run",
    "other part",
    "broken off",
    "cut",
    "heating",
    "hold test",
    "switch-on test",
    "nothing",
)


@frozen
class Meter:
    """A plug-in energy meter. Accuracy nobody stated is taken as +-1 % of reading and +-0.3 W.

    ``gain_percent`` and ``offset_w`` are half-widths of rectangular distributions. [%], [W]
    """

    id: str
    name: str
    gain_percent: float = 1.0
    offset_w: float = 0.3
    stated: bool = False


@frozen
class LoadCheck:
    """One steady load read with two meters, at the same time or one after the other.

    Parameters
    ----------
    meter_id, other_id : str
        The two meters.
    reading, other_reading : float
        What each showed: energies, or powers. [Wh] or [W] by `unit`
    unit : {"Wh", "W"}
    step, other_step : float
        Last digit of each display. [Wh] or [W]
    seconds : float or None
        How long the load was measured; None for powers. [s]
    note : str
        What the load was.
    """

    id: str
    meter_id: str
    other_id: str
    reading: float
    other_reading: float
    unit: Literal["Wh", "W"] = "Wh"
    step: float = 0.0
    other_step: float = 0.0
    seconds: float | None = None
    note: str = ""


@frozen
class PropertyColumn:
    """A column of the table of properties that the user added; a unit stands in brackets in its name."""

    name: str
    kind: PropertyKind = "number"


@frozen
class Machine:
    """A material-extrusion machine; `slot` fixes its colour and marker and never moves.

    ``properties`` are what the user knows of it, by the name of their column.
    """

    id: str
    name: str
    slot: int
    properties: tuple[tuple[str, str | float | bool], ...] = ()


#: what to do with powers below zero: leave them, turn all signs, drop the signs, or take them as zero
Negative = Literal["keep", "turn", "size", "zero"]


@frozen
class Choices:
    """Reading choices that the user made; None leaves the decision to the program.

    ``columns`` gives (position from 0, quantity, unit) for columns whose meaning was set by hand.
    """

    encoding: str | None = None
    delimiter: str | None = None
    decimal: str | None = None
    header_row: int | None = None
    date_order: Literal["dmy", "mdy", "ymd"] | None = None
    zone: str | None = None
    sampling: Literal["sampled", "averaged", "on_change"] | None = None
    columns: tuple[tuple[int, str, str], ...] = ()
    negative: Negative | None = None


@frozen
class Source:
    """One file of a log: the SHA-256 of its bytes, its name, and which machine of it is meant."""

    digest: str
    file_name: str
    device: str | None = None
    choices: Choices = Choices()


@frozen
class Log:
    """The log of one machine: one source, or several that continue each other.

    ``of_bed`` says that its meter, or channel, measured the machine's heated bed alone.
    """

    id: str
    machine_id: str
    meter_id: str
    sources: tuple[Source, ...]
    of_bed: bool = False


@frozen
class Run:
    """A stretch of a log: a run of the part, or something else.

    Parameters
    ----------
    found_start_s, found_end_s : float or None
        Where the program found it; None for a stretch the user drew. [s]
    found_kind : Kind
        What the program takes it for.
    found_part : str
        Part label the program gives (runs of one part share it).
    set_start_s, set_end_s, set_kind, set_included : optional
        The user's decisions; None where the program decides.
    why_left_out : str
        The user's reason for leaving it out.
    found_why : str
        The program's reason when it is no run of the part, as a code of `core.wording`.
    set_bed_off : bool
        The user says that the part was made with the bed off: it tells the bed's part of the other runs, and
        is itself not compared.
    bed_c, room_c : float or None
        Temperatures of bed and room as the user noted them. [degC]
    nozzle_c, first_layer_bed_c, first_layer_nozzle_c : float or None
        Temperatures of the nozzle, and of bed and nozzle at the first layer, as the user noted them. [degC]
    """

    id: str
    log_id: str
    found_start_s: float | None = None
    found_end_s: float | None = None
    found_kind: Kind = "run"
    found_part: str = "A"
    found_why: str = ""
    set_start_s: float | None = None
    set_end_s: float | None = None
    set_kind: Kind | None = None
    set_included: bool | None = None
    why_left_out: str = ""
    name: str = ""
    set_bed_off: bool = False
    bed_c: float | None = None
    room_c: float | None = None
    nozzle_c: float | None = None
    first_layer_bed_c: float | None = None
    first_layer_nozzle_c: float | None = None

    @property
    def start_s(self) -> float:
        """Start on the log's own clock. [s]"""
        return _first(self.set_start_s, self.found_start_s)

    @property
    def end_s(self) -> float:
        """End on the log's own clock. [s]"""
        return _first(self.set_end_s, self.found_end_s)

    @property
    def kind(self) -> Kind:
        """What it is: the user's word if there is one."""
        return self.set_kind or self.found_kind

    @property
    def included(self) -> bool:
        """Whether it counts in the comparison."""
        if self.set_included is None:
            return self.kind == "run" and not self.set_bed_off
        return self.set_included

    @property
    def is_moved(self) -> bool:
        """Whether the user set an edge."""
        return self.set_start_s is not None or self.set_end_s is not None


def _first(set_s: float | None, found_s: float | None) -> float:
    value = found_s if set_s is None else set_s
    if value is None:
        raise ValueError("a run needs an edge, set or found")
    return value


@frozen
class TypedReading:
    """A run of which only readings of a display are known: energy, and its duration where noted.

    Parameters
    ----------
    step_wh : float
        Last digit of the display. [Wh]
    started : str
        When it began by the wall clock, in ISO 8601 form; empty where nobody noted it.
    starting_state : str
        ``"cold"``, ``"warm"``, or what the user wrote.
    bed_c, room_c, nozzle_c, first_layer_bed_c, first_layer_nozzle_c : float or None
        Temperatures as the user noted them. [degC]
    """

    id: str
    machine_id: str
    meter_id: str
    energy_wh: float
    seconds: float | None = None
    step_wh: float = 1.0
    note: str = ""
    included: bool = True
    why_left_out: str = ""
    started: str = ""
    starting_state: str = ""
    bed_c: float | None = None
    room_c: float | None = None
    nozzle_c: float | None = None
    first_layer_bed_c: float | None = None
    first_layer_nozzle_c: float | None = None


@frozen
class CoolerPlan:
    """A print whose bed is made cooler once the first layers hold, as the user imagines it.

    Parameters
    ----------
    first_c, later_c : float or None
        Bed temperatures; None for that of the test, and for ten kelvin less. [degC]
    first_layers_s : float
        From the end of the warm-up until the bed is made cooler. [s]
    print_s : float
        From the end of the warm-up to the end. [s]
    least_c : float
        The user's own limit: below it the part may come loose. [degC]
    """

    first_c: float | None = None
    later_c: float | None = None
    first_layers_s: float = 600.0
    print_s: float = 36_000.0
    least_c: float = 40.0


@frozen
class AcceptedFinding:
    """A point of fairness that the user has accepted.

    Parameters
    ----------
    key : str
        Of the finding: what it is, and of which runs, machines or meters.
    level : {"note", "caution", "unfair"}
        How grave it was when it was accepted; it holds no longer for a graver one.
    said : str
        What the finding said then.
    why : str
        The user's reason.
    """

    key: str
    level: Literal["note", "caution", "unfair"]
    said: str
    why: str


@frozen
class Study:
    """The whole document.

    ``bed_c`` and ``room_c`` are those of the test where a run has none of its own; ``emissivity`` is that of
    the beds' faces, for the heat they must lose.
    """

    id: str
    name: str = "Untitled study"
    part: str = "part"
    boundary: Boundary = "warm-up and processing"
    bed_c: float | None = None
    machines: tuple[Machine, ...] = ()
    meters: tuple[Meter, ...] = ()
    logs: tuple[Log, ...] = ()
    runs: tuple[Run, ...] = ()
    typed: tuple[TypedReading, ...] = ()
    invented: bool = field(default=False)
    room_c: float | None = None
    checks: tuple[LoadCheck, ...] = ()
    costs: Costs = field(factory=Costs)
    price_lists: tuple[PriceList, ...] = ()
    cooler: CoolerPlan = CoolerPlan()
    emissivity: float = 0.9
    step_names: tuple[StepName, ...] = ()
    idle_loads: tuple[IdleLoad, ...] = ()
    accepted: tuple[AcceptedFinding, ...] = ()
    plan: Plan = field(factory=Plan)
    publishing: Publishing = field(factory=Publishing)
    property_columns: tuple[PropertyColumn, ...] = ()

    def machine(self, machine_id: str) -> Machine:
        """The machine with this id."""
        return next(m for m in self.machines if m.id == machine_id)

    def meter(self, meter_id: str) -> Meter:
        """The meter with this id."""
        return next(m for m in self.meters if m.id == meter_id)

    def log(self, log_id: str) -> Log:
        """The log with this id."""
        return next(g for g in self.logs if g.id == log_id)

    def run(self, run_id: str) -> Run:
        """The run with this id."""
        return next(r for r in self.runs if r.id == run_id)

    def runs_of(self, log_id: str) -> tuple[Run, ...]:
        """The stretches of one log, by start."""
        return tuple(sorted((r for r in self.runs if r.log_id == log_id), key=lambda r: r.start_s))

    def logs_of(self, machine_id: str) -> tuple[Log, ...]:
        """The logs of one machine."""
        return tuple(g for g in self.logs if g.machine_id == machine_id)
