"""A bundle's figures held against those that come out here, digit by digit."""

import json
from collections.abc import Iterator

from core import __version__
from core.bundle.manifest import Manifest
from core.json_answer import compared, dumps
from core.language import tr
from core.problems import Problem, Severity
from core.results.values import Comparison
from core.study import Study

#: what is said of files and of the program is no figure
_NO_FIGURES = ("warnings",)


def held_against(
    manifest: Manifest, claimed: str, comparison: Comparison, study: Study, missing: int = 0
) -> Problem | None:
    """Say whether every figure is what the bundle's maker has.

    Parameters
    ----------
    manifest : Manifest
    claimed : str
        The JSON text of the bundle.
    comparison : Comparison
        What came out here.
    study : Study
    missing : int
        Logs of the bundle that were not to be had: what depends on them cannot come out, which is no fault
        of the bundle.

    Returns
    -------
    Problem or None
        A note where all agree, a caution that names the first figure that does not, or says how many could
        not be checked; None where the bundle claims nothing that can be read.
    """
    try:
        there = dict(_figures(json.loads(claimed)))
    except (ValueError, RecursionError):
        return None
    here = dict(_figures(json.loads(dumps(compared(comparison, study, ())))))
    apart = [place for place in {**there, **here} if there.get(place) != here.get(place)]
    if not apart:
        return Problem("bundle.figures_same", Severity.NOTE, facts={"count": len(here)})
    if missing:
        # of what the bundle claims: what comes out here besides was never to be checked
        unchecked = {"count": len(there.keys() & set(apart)), "of": len(there), "logs": missing}
        return Problem("bundle.figures_unchecked", Severity.CAUTION, facts=unchecked)
    facts = {
        "count": len(apart),
        "where": apart[0],
        "here": here.get(apart[0], tr("nothing")),
        "there": there.get(apart[0], tr("nothing")),
        "program": manifest.program,
        "this": f"Samepart {__version__}",
    }
    return Problem("bundle.figures_differ", Severity.CAUTION, facts=facts)


def _figures(value: object, place: str = "") -> Iterator[tuple[str, float | None]]:
    """Every number of a JSON value, and every null where one could be, by its place."""
    if isinstance(value, dict):
        for key, item in value.items():
            if key not in _NO_FIGURES:
                yield from _figures(item, f"{place}.{key}" if place else key)
    elif isinstance(value, list):
        for i, item in enumerate(value):
            yield from _figures(item, f"{place}[{i}]")
    elif value is None or (isinstance(value, int | float) and not isinstance(value, bool)):
        yield place, value
