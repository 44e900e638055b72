"""What each point of fairness is called, what tells how much it could matter, and what can be done about it.

Rules: one action a point. ``most`` is the highest level that a point can reach: what the intervals hold
already stays a note, and a mere bound never makes a comparison unfair.
"""

from collections.abc import Mapping
from typing import Literal

from attrs import frozen

from core.problems import Problem, Severity
from core.results.values import Finding, Level

Action = Literal[
    "like for like", "processing only", "hand back", "check meters", "leave out", "repeat", "accept"
]


@frozen
class Point:
    """A kind of finding.

    Parameters
    ----------
    name : str
        What it is called in a list.
    phrase : str
        The same within a sentence.
    model : str
        The model, or the bound, that tells how much it could matter; empty where nothing does.
    action : Action
        The one thing that can best be done about it, beside accepting it.
    most : {"note", "caution", "unfair"}
    """

    name: str
    phrase: str
    model: str
    action: Action
    most: Level = "unfair"


_MEAN = "the machine's mean with this run against the mean of its other runs"
_PLATE = "the bed's energy scaled as a heated plate loses heat"
_HELD = "in the intervals already"
_FIRST = "for no longer than the first ten minutes"

POINTS: dict[str, Point] = {
    "fair.no_run": Point("No run", "no run to compare", "", "repeat"),
    "fair.one_run": Point(
        "One run only", "one run only", "the spread of the other machines' runs", "repeat", "caution"
    ),
    "fair.few_runs": Point(
        "Two runs only", "two runs only", "the half-width of the mean's interval", "repeat", "note"
    ),
    "fair.warm_start": Point("Warm start", "a warm start", _MEAN, "leave out"),
    "fair.soak": Point("Soak of the bed", "a soak of the bed", _MEAN, "processing only"),
    "fair.unlike_starts": Point("Unlike starts", "starts unlike each other", _MEAN, "processing only"),
    "fair.long": Point("Longer run", "a longer run", _MEAN, "leave out"),
    "fair.short": Point("Shorter run", "a shorter run", _MEAN, "leave out"),
    "fair.durations": Point(
        "Spread of duration",
        "runs of unlike duration",
        f"the mean watts over the half-width of the mean duration, {_HELD}",
        "accept",
        "note",
    ),
    "fair.outlier": Point("Outlier", "an outlier", f"{_MEAN}; told by Grubbs' test", "leave out"),
    "fair.gaps": Point(
        "Gaps", "gaps in the log", f"what the gaps leave open, {_HELD}", "leave out", "caution"
    ),
    "fair.meters": Point(
        "Several meters",
        "several meters",
        f"a bound: the meters' stated accuracy, {_HELD}",
        "check meters",
        "note",
    ),
    "fair.meters_checked": Point("Meters checked", "several meters, checked", "", "accept", "note"),
    "fair.meter_beyond": Point(
        "Meter reads off",
        "a meter beyond its accuracy",
        "the error that the checks on one load show, which is corrected",
        "check meters",
        "caution",
    ),
    "fair.meters_differ": Point(
        "Meters differ",
        "two meters that differ on one machine",
        "the machine's mean by one meter against that by the other",
        "check meters",
    ),
    "fair.accuracy": Point("Accuracy not stated", "accuracy not stated", "", "check meters", "note"),
    "fair.sampling": Point(
        "Unlike sampling", "unlike sampling", f"what the samples leave open, {_HELD}", "repeat", "note"
    ),
    "fair.resolution": Point(
        "Coarse steps",
        "coarse steps of power",
        "a bound: half a step of the display throughout the run",
        "accept",
        "note",
    ),
    "fair.hand": Point(
        "Edges by hand",
        "edges set by hand",
        "the mean watts over the time by which edges were moved",
        "hand back",
    ),
    "fair.left_out": Point(
        "Left out",
        "runs left out without a reason",
        "the machine's mean with these runs against the mean without",
        "accept",
    ),
    "fair.typed": Point(
        "Read off a display",
        "runs read off a display",
        f"a bound: one step of the display, {_HELD}",
        "accept",
        "note",
    ),
    "fair.bed_temperature": Point("Bed temperature", "another bed temperature", _PLATE, "like for like"),
    "fair.room_temperature": Point("Room temperature", "another room temperature", _PLATE, "like for like"),
    "fair.start_temperature": Point(
        "Bed at the start",
        "a warmer or cooler bed at the start",
        "the energy of the warm-up over the degrees that the bed rose",
        "like for like",
    ),
    "fair.nozzle_temperature": Point(
        "Nozzle temperature",
        "another nozzle temperature",
        "a bound: all energy that is not the bed's, over the nozzle's distance from the room",
        "repeat",
        "caution",
    ),
    "fair.first_layer_bed": Point(
        "First layer, bed", "another bed at the first layer", f"{_PLATE}, {_FIRST}", "repeat"
    ),
    "fair.first_layer_nozzle": Point(
        "First layer, nozzle",
        "another nozzle at the first layer",
        f"a bound: all energy that is not the bed's, over the nozzle's distance from the room, {_FIRST}",
        "repeat",
        "caution",
    ),
    "fair.run_temperature": Point("Run's temperature", "a run at another temperature", _MEAN, "leave out"),
    "fair.starting_state": Point("Starting state", "another starting state", "", "repeat"),
    "fair.not_noted": Point("Not noted", "a temperature not noted", "", "accept", "note"),
    "fair.drift": Point(
        "Drift", "a drift from run to run", "a line through the runs in their order: half its rise", "repeat"
    ),
    "fair.common_drift": Point(
        "Common drift",
        "a drift of all machines",
        "one line through the runs of all machines in their order: half its rise",
        "repeat",
        "caution",
    ),
    "fair.rests": Point(
        "Unlike rests",
        "unlike rests between runs",
        "a bound: the heat a bed keeps over the rest, if it cools to a third in twenty minutes",
        "repeat",
        "caution",
    ),
    "fair.far_apart": Point("Far apart", "tests far apart in time", "", "repeat", "note"),
    "plausible.mean_w": Point("Mean watts", "unusual mean watts", "", "accept", "note"),
    "plausible.bed_share": Point("Bed share", "an unusual bed share", "", "accept", "note"),
    "plausible.standby_w": Point("Standby watts", "unusual standby watts", "", "accept", "note"),
    "plausible.hold_w": Point("Held bed", "unusual watts of a held bed", "", "accept", "note"),
}


def point_of(finding: Finding) -> Point:
    """The kind of a finding; one that another version of the program made can only be accepted."""
    return POINTS.get(finding.problem.code, Point(finding.problem.code, finding.problem.code, "", "accept"))


def found(
    level: Level,
    code: str,
    machine_ids: tuple[str, ...],
    matters_wh: float | None = None,
    *,
    run_ids: tuple[str, ...] = (),
    about: tuple[str, ...] = (),
    working: tuple[str, ...] = (),
    facts: Mapping[str, object] | None = None,
) -> Finding:
    """A finding with the key by which it is known again.

    Parameters
    ----------
    level : {"note", "caution", "unfair"}
    code : str
        Of `POINTS`, with a sentence in `core.results.sentences`.
    machine_ids : tuple of str
    matters_wh : float, optional
        [Wh]
    run_ids : tuple of str
    about : tuple of str
        What it is of, where that is more than its runs or its machines say.
    working : tuple of str
        The arithmetic behind `matters_wh`.
    facts : mapping
        For the sentence.
    """
    severity = Severity.NOTE if level == "note" else Severity.CAUTION
    subject = about or tuple(sorted(run_ids or machine_ids))
    return Finding(
        level,
        Problem(code, severity, facts=facts or {}),
        machine_ids,
        matters_wh,
        run_ids=run_ids,
        working=working,
        key=" ".join((code, *subject)),
    )
