"""What each point of fairness is called, what tells how much it could matter, and what can be done about it.

Rules: one action a point. ``most`` is the highest level that a point can reach: what the intervals hold
already stays a note, and a mere bound never makes a comparison unfair.
"""

from collections.abc import Mapping
from typing import Literal

from attrs import frozen

from core.language import mark, tr
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

    _name: str
    _phrase: str
    _model: str
    action: Action
    most: Level = "unfair"

    @property
    def name(self) -> str:
        """What it is called in a list, in the language of the window."""
        return tr(self._name)

    @property
    def phrase(self) -> str:
        """The same within a sentence."""
        return tr(self._phrase)

    @property
    def model(self) -> str:
        """What tells how much it could matter."""
        return tr(self._model)


_MEAN = mark("the machine's mean with this run against the mean of its other runs")
_PLATE = mark("the bed's energy scaled as a heated plate loses heat")

POINTS: dict[str, Point] = {
    "fair.no_run": Point(mark("No run"), mark("no run to compare"), "", "repeat"),
    "fair.one_run": Point(
        mark("One run only"),
        mark("one run only"),
        mark("the spread of the other machines' runs"),
        "repeat",
        "caution",
    ),
    "fair.few_runs": Point(
        mark("Two runs only"),
        mark("two runs only"),
        mark("the half-width of the mean's interval"),
        "repeat",
        "note",
    ),
    "fair.warm_start": Point(mark("Warm start"), mark("a warm start"), _MEAN, "leave out"),
    "fair.soak": Point(mark("Soak of the bed"), mark("a soak of the bed"), _MEAN, "processing only"),
    "fair.unlike_starts": Point(
        mark("Unlike starts"), mark("starts unlike each other"), _MEAN, "processing only"
    ),
    "fair.long": Point(mark("Longer run"), mark("a longer run"), _MEAN, "leave out"),
    "fair.short": Point(mark("Shorter run"), mark("a shorter run"), _MEAN, "leave out"),
    "fair.durations": Point(
        mark("Spread of duration"),
        mark("runs of unlike duration"),
        mark("the mean watts over the half-width of the mean duration, in the intervals already"),
        "accept",
        "note",
    ),
    "fair.outlier": Point(
        mark("Outlier"),
        mark("an outlier"),
        mark("the machine's mean with this run against the mean of its other runs; told by Grubbs' test"),
        "leave out",
    ),
    "fair.gaps": Point(
        mark("Gaps"),
        mark("gaps in the log"),
        mark("what the gaps leave open, in the intervals already"),
        "leave out",
        "caution",
    ),
    "fair.meters": Point(
        mark("Several meters"),
        mark("several meters"),
        mark("a bound: the meters' stated accuracy, in the intervals already"),
        "check meters",
        "note",
    ),
    "fair.meters_checked": Point(
        mark("Meters checked"), mark("several meters, checked"), "", "accept", "note"
    ),
    "fair.meter_beyond": Point(
        mark("Meter reads off"),
        mark("a meter beyond its accuracy"),
        mark("the error that the checks on one load show, which is corrected"),
        "check meters",
        "caution",
    ),
    "fair.meters_differ": Point(
        mark("Meters differ"),
        mark("two meters that differ on one machine"),
        mark("the machine's mean by one meter against that by the other"),
        "check meters",
    ),
    "fair.accuracy": Point(
        mark("Accuracy not stated"), mark("accuracy not stated"), "", "check meters", "note"
    ),
    "fair.sampling": Point(
        mark("Unlike sampling"),
        mark("unlike sampling"),
        mark("what the samples leave open, in the intervals already"),
        "repeat",
        "note",
    ),
    "fair.resolution": Point(
        mark("Coarse steps"),
        mark("coarse steps of power"),
        mark("a bound: half a step of the display throughout the run"),
        "accept",
        "note",
    ),
    "fair.hand": Point(
        mark("Edges by hand"),
        mark("edges set by hand"),
        mark("the mean watts over the time by which edges were moved"),
        "hand back",
    ),
    "fair.left_out": Point(
        mark("Left out"),
        mark("runs left out without a reason"),
        mark("the machine's mean with these runs against the mean without"),
        "accept",
    ),
    "fair.typed": Point(
        mark("Read off a display"),
        mark("runs read off a display"),
        mark("a bound: one step of the display, in the intervals already"),
        "accept",
        "note",
    ),
    "fair.bed_temperature": Point(
        mark("Bed temperature"), mark("another bed temperature"), _PLATE, "like for like"
    ),
    "fair.room_temperature": Point(
        mark("Room temperature"), mark("another room temperature"), _PLATE, "like for like"
    ),
    "fair.start_temperature": Point(
        mark("Bed at the start"),
        mark("a warmer or cooler bed at the start"),
        mark("the energy of the warm-up over the degrees that the bed rose"),
        "like for like",
    ),
    "fair.nozzle_temperature": Point(
        mark("Nozzle temperature"),
        mark("another nozzle temperature"),
        mark("a bound: all energy that is not the bed's, over the nozzle's distance from the room"),
        "repeat",
        "caution",
    ),
    "fair.first_layer_bed": Point(
        mark("First layer, bed"),
        mark("another bed at the first layer"),
        mark(
            "the bed's energy scaled as a heated plate loses heat, for no longer than the first ten minutes"
        ),
        "repeat",
    ),
    "fair.first_layer_nozzle": Point(
        mark("First layer, nozzle"),
        mark("another nozzle at the first layer"),
        mark(
            "a bound: all energy that is not the bed's, over the nozzle's distance from the room, for no "
            "longer than the first ten minutes"
        ),
        "repeat",
        "caution",
    ),
    "fair.run_temperature": Point(
        mark("Run's temperature"), mark("a run at another temperature"), _MEAN, "leave out"
    ),
    "fair.starting_state": Point(mark("Starting state"), mark("another starting state"), "", "repeat"),
    "fair.not_noted": Point(mark("Not noted"), mark("a temperature not noted"), "", "accept", "note"),
    "fair.drift": Point(
        mark("Drift"),
        mark("a drift from run to run"),
        mark("a line through the runs in their order: half its rise"),
        "repeat",
    ),
    "fair.common_drift": Point(
        mark("Common drift"),
        mark("a drift of all machines"),
        mark("one line through the runs of all machines in their order: half its rise"),
        "repeat",
        "caution",
    ),
    "fair.rests": Point(
        mark("Unlike rests"),
        mark("unlike rests between runs"),
        mark("a bound: the heat a bed keeps over the rest, if it cools to a third in twenty minutes"),
        "repeat",
        "caution",
    ),
    "fair.far_apart": Point(mark("Far apart"), mark("tests far apart in time"), "", "repeat", "note"),
    "plausible.mean_w": Point(mark("Mean watts"), mark("unusual mean watts"), "", "accept", "note"),
    "plausible.bed_share": Point(mark("Bed share"), mark("an unusual bed share"), "", "accept", "note"),
    "plausible.standby_w": Point(mark("Standby watts"), mark("unusual standby watts"), "", "accept", "note"),
    "plausible.hold_w": Point(mark("Held bed"), mark("unusual watts of a held bed"), "", "accept", "note"),
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
