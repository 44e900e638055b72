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
    title : str
        What it is in a few words, to go on in a sentence.
    model : str
        The model, or the bound, that tells how much it could matter; empty where nothing does.
    action : Action
        The one thing that can best be done about it, beside accepting it.
    most : {"note", "caution", "unfair"}
    """

    title: str
    model: str
    action: Action
    most: Level = "unfair"


_MEAN = "the machine's mean with this run against the mean of its other runs"
_PLATE = "the bed's energy scaled as a heated plate loses heat"
_HELD = "in the intervals already"
_FIRST = "for no longer than the first ten minutes"

POINTS: dict[str, Point] = {
    "fair.no_run": Point("no run to compare", "", "repeat"),
    "fair.one_run": Point("one run only", "the spread of the other machines' runs", "repeat", "caution"),
    "fair.few_runs": Point("two runs only", "the half-width of the mean's interval", "repeat", "note"),
    "fair.warm_start": Point("a warm start", _MEAN, "leave out"),
    "fair.soak": Point("a soak of the bed", _MEAN, "processing only"),
    "fair.unlike_starts": Point("starts unlike each other", _MEAN, "processing only"),
    "fair.long": Point("a longer run", _MEAN, "leave out"),
    "fair.short": Point("a shorter run", _MEAN, "leave out"),
    "fair.outlier": Point("an outlier", f"{_MEAN}; told by Grubbs' test", "leave out"),
    "fair.gaps": Point("gaps in the log", f"what the gaps leave open, {_HELD}", "leave out", "caution"),
    "fair.meters": Point(
        "several meters", f"a bound: the meters' stated accuracy, {_HELD}", "check meters", "note"
    ),
    "fair.meters_checked": Point("several meters, checked", "", "accept", "note"),
    "fair.meter_beyond": Point(
        "a meter beyond its accuracy",
        "the error that the checks on one load show, which is corrected",
        "check meters",
        "caution",
    ),
    "fair.accuracy": Point("accuracy not stated", "", "check meters", "note"),
    "fair.sampling": Point("unlike sampling", f"what the samples leave open, {_HELD}", "repeat", "note"),
    "fair.resolution": Point(
        "coarse steps of power",
        "a bound: half a step of the display throughout the run",
        "accept",
        "note",
    ),
    "fair.hand": Point(
        "edges set by hand", "the mean watts over the time by which edges were moved", "hand back"
    ),
    "fair.left_out": Point(
        "left out without a reason", "the machine's mean with these runs against the mean without", "accept"
    ),
    "fair.typed": Point("read off a display", f"a bound: one step of the display, {_HELD}", "accept", "note"),
    "fair.bed_temperature": Point("another bed temperature", _PLATE, "like for like"),
    "fair.room_temperature": Point("another room temperature", _PLATE, "like for like"),
    "fair.start_temperature": Point(
        "a warmer or cooler start",
        "the energy of the warm-up over the degrees that the bed rose",
        "like for like",
    ),
    "fair.nozzle_temperature": Point(
        "another nozzle temperature",
        "a bound: all energy that is not the bed's, over the nozzle's distance from the room",
        "repeat",
        "caution",
    ),
    "fair.first_layer_bed": Point("another bed at the first layer", f"{_PLATE}, {_FIRST}", "repeat"),
    "fair.first_layer_nozzle": Point(
        "another nozzle at the first layer",
        f"a bound: all energy that is not the bed's, over the nozzle's distance from the room, {_FIRST}",
        "repeat",
        "caution",
    ),
    "fair.run_temperature": Point("a run at another temperature", _MEAN, "leave out"),
    "fair.not_noted": Point("a temperature not noted", "", "accept", "note"),
    "fair.drift": Point("a drift", "a line through the runs in their order: half its rise", "repeat"),
    "fair.common_drift": Point(
        "a drift of all machines",
        "one line through the runs of all machines in their order: half its rise",
        "repeat",
        "caution",
    ),
    "fair.rests": Point(
        "unlike rests between runs",
        "a bound: the heat a bed keeps over the rest, if it cools to a third in twenty minutes",
        "repeat",
        "caution",
    ),
    "fair.far_apart": Point("tests far apart in time", "", "repeat", "note"),
    "plausible.mean_w": Point("unusual mean watts", "", "accept", "note"),
    "plausible.bed_share": Point("an unusual bed share", "", "accept", "note"),
    "plausible.standby_w": Point("unusual standby watts", "", "accept", "note"),
    "plausible.hold_w": Point("unusual watts of a held bed", "", "accept", "note"),
}


def point_of(finding: Finding) -> Point:
    """The kind of a finding; one that another version of the program made can only be accepted."""
    return POINTS.get(finding.problem.code, Point(finding.problem.code, "", "accept"))


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
