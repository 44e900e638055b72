"""At which temperatures a stretch is taken to have been made, and who says so.

Rules: what a person noted with the stretch goes before what its log says, and that before the temperatures of
the whole test. A hold test whose log shows several bed temperatures is told by its log alone.
"""

import statistics
from typing import Final, Literal

from attrs import frozen

from core.beds.hold import logged_c
from core.formatting import POINT, NumberLocale, listed, number
from core.language import mark, tr
from core.results.bed_shares import Conditions, held_in
from core.results.runs import Seen
from core.results.values import RunResult
from core.study import Run, Study

Teller = Literal["noted", "log", "test", "nobody"]
_AFTER: Final[dict[Teller, str]] = {
    "log": mark("{degrees} by the log"),
    "test": mark("{degrees} of the test"),
}


@frozen
class Temperature:
    """A temperature of a stretch.

    Parameters
    ----------
    noted_c : float or None
        What a person noted with the stretch. [degC]
    found_c : tuple of float
        What counts where nobody noted any; several of a hold test in steps. [degC]
    by : {"log", "test", "nobody"}
        Who says `found_c`.
    can_be_noted : bool
        False where a note would not be used.
    """

    noted_c: float | None
    found_c: tuple[float, ...] = ()
    by: Teller = "nobody"
    can_be_noted: bool = True

    def found_words(self, locale: NumberLocale = POINT) -> str:
        """What counts where nobody noted any, and who says so.

        Examples
        --------
        >>> Temperature(None, (60.0,), "log").found_words()
        '60 by the log'
        >>> Temperature(None).found_words()
        'not known'
        """
        if not self.found_c:
            return tr("not known")
        told = listed([degrees(c, locale) for c in self.found_c])
        return tr(_AFTER[self.by], degrees=told) if self.by in _AFTER else told


def degrees(value_c: float, locale: NumberLocale = POINT) -> str:
    """A temperature with a digit after the mark only where it has one.

    Examples
    --------
    >>> degrees(60.0), degrees(21.5)
    ('60', '21.5')
    """
    whole = round(value_c, 1)
    return number(whole, 0 if whole == round(whole) else 1, locale)


def temperatures(
    study: Study, run: Run, seen: Seen | None, result: RunResult | None
) -> tuple[Temperature, Temperature]:
    """Temperatures of bed and room during a stretch.

    Parameters
    ----------
    study : Study
    run : Run
    seen : Seen or None
        Its log; None while it has not been read.
    result : RunResult or None
        Its result, which says when the machine was at work; None while there is none.

    Returns
    -------
    tuple of Temperature
        Of the bed, and of the room.
    """
    beds_c, room_c = _logged(study, run, seen, result)
    several = len(beds_c) > 1
    return (
        _temperature(None if several else run.bed_c, beds_c, study.bed_c, can_be_noted=not several),
        _temperature(run.room_c, () if room_c is None else (room_c,), study.room_c),
    )


def nozzle_temperature(run: Run, seen: Seen | None, result: RunResult | None) -> Temperature:
    """Temperature of the nozzle during a stretch: as noted, else as logged.

    Parameters
    ----------
    run : Run
    seen : Seen or None
        Its log; None while it has not been read.
    result : RunResult or None
        Its result; None while there is none.
    """
    logged = None if seen is None else logged_c(seen.trace, "hot end", *_span(run, result))
    return _temperature(run.nozzle_c, () if logged is None else (logged,), None)


def _span(run: Run, result: RunResult | None) -> tuple[float, float]:
    """When the machine was at work in a stretch: processing where that is known, else all of it. [s]"""
    spans = () if result is None else result.states
    return next(((s.start_s, s.end_s) for s in spans if s.state == "processing"), (run.start_s, run.end_s))


def _temperature(
    noted_c: float | None, logged: tuple[float, ...], test_c: float | None, *, can_be_noted: bool = True
) -> Temperature:
    if logged:
        return Temperature(noted_c, logged, "log", can_be_noted)
    if test_c is not None:
        return Temperature(noted_c, (test_c,), "test", can_be_noted)
    return Temperature(noted_c)


def _logged(
    study: Study, run: Run, seen: Seen | None, result: RunResult | None
) -> tuple[tuple[float, ...], float | None]:
    """Logged temperatures of the bed, and that of the room. [degC]"""
    if seen is None or not seen.trace.temperatures_c:
        return (), None
    if run.kind == "hold test":
        return _held(study, run, seen)
    span = _span(run, result)
    bed_c = logged_c(seen.trace, "bed", *span)
    return (() if bed_c is None else (bed_c,)), logged_c(seen.trace, "room", *span)


def _held(study: Study, run: Run, seen: Seen) -> tuple[tuple[float, ...], float | None]:
    meter = study.meter(study.log(run.log_id).meter_id)
    holds = [h.hold for h in held_in(run, seen, meter, Conditions(study.boundary, study.bed_c, study.room_c))]
    beds_c = tuple(hold.bed_c for hold in holds if hold.bed_c is not None)
    rooms_c = [hold.room_c for hold in holds if hold.room_c is not None]
    return beds_c, statistics.median(rooms_c) if rooms_c else None
