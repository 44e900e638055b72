"""The plan of a test, as the user states it; its order and its sheet follow from it and are not kept."""

from typing import Literal

from attrs import frozen

StartingState = Literal["cold", "warm"]
DisplayUnit = Literal["kWh", "Wh"]


@frozen
class ExtraRun:
    """Runs of one machine beyond those of the blocks, to be made after them."""

    machine_id: str
    runs: int = 1


@frozen
class Plan:
    """How the next test is to be run.

    Parameters
    ----------
    machine_ids, meter_ids : tuple of str or None
        Which take part; None for all of the study.
    repeats : int
        Blocks: in each of them every machine makes the part once.
    at_once : int
        Machines that work at the same time, each on a meter of its own.
    seed : int
        Of the order: one seed gives one order, everywhere.
    extra : tuple of ExtraRun
    material : str
    bed_c, room_c : float or None
        None for those of the study. [degC]
    nozzle_c, first_layer_bed_c, first_layer_nozzle_c : float or None
        None where nobody states them; a first layer then has the temperatures of the others. [degC]
    start : {"cold", "warm"}
        From room temperature, or with bed and hot end held at temperature before.
    wait_min : float
        At least so long at rest before a cold start, or held at temperature before a warm one. [min]
    has_checks : bool
        Whether the meters are held against each other on one load, before the test and after it.
    display_unit : {"kWh", "Wh"}
        What the meters' displays show.
    spread_percent : float or None
        Standard deviation from run to run that the number of repeats is found from; None for that of the runs
        so far. [%]
    difference_percent : float
        What the test is to show. [%]
    """

    machine_ids: tuple[str, ...] | None = None
    meter_ids: tuple[str, ...] | None = None
    repeats: int = 4
    at_once: int = 1
    seed: int = 1
    extra: tuple[ExtraRun, ...] = ()
    material: str = ""
    bed_c: float | None = None
    room_c: float | None = None
    nozzle_c: float | None = None
    first_layer_bed_c: float | None = None
    first_layer_nozzle_c: float | None = None
    start: StartingState = "cold"
    wait_min: float = 45.0
    has_checks: bool = True
    display_unit: DisplayUnit = "kWh"
    spread_percent: float | None = None
    difference_percent: float = 5.0
