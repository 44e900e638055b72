"""A measure against a property, to be published as a person chose it on the Compare page.

Rules: there are as many of these charts as measures times properties, so none is offered by itself; one is
published that somebody looked at. Its test stays that of all machines, however few of them are shown.
"""

import re
from typing import Final

from attrs import evolve

from core.figures.curve_values import CurvesFigure
from core.figures.properties import properties_figure
from core.figures.values import Figure
from core.language import tr
from core.properties.table import Column, columns_of
from core.publish.sources import Sources
from core.quantities import Quantity
from core.results.like_for_like import Given, given
from core.results.properties import MEASURES, against

#: keys of these charts begin so
AGAINST: Final = "against-"
#: name of the chart on the Compare page
VIEW: Final = "against_property"


def key_of(quantity: Quantity, column: Column) -> str:
    """The key of a chart: small letters, digits and hyphens.

    Examples
    --------
    >>> from core.quantities import ENERGY
    >>> key_of(ENERGY, Column("Speed set (mm/s)", "number"))
    'against-energy-wh-speed-set-mm-s'
    """
    return f"{_start(quantity)}{_plain(column.name)}"


def title_of(key: str) -> str:
    """What a chart of this key is, in a few words."""
    measure = next((q.name for q in MEASURES if key.startswith(_start(q))), None)
    if measure is None:
        return tr("A measure against a property")
    return tr("{measure} against a property", measure=measure)


def key_for_figure(figure: Figure, sources: Sources) -> str | None:
    """The key of the chart that is shown; None where the study gives no such chart."""
    from_ = _given(sources)
    for column in columns_of(from_.study):
        for quantity in MEASURES:
            if _made(from_, quantity, column, sources) == figure:
                return key_of(quantity, column)
    return None


def figure_for(sources: Sources, key: str) -> Figure | None:
    """The chart of a key with the machines shown; None where its property or its values are gone."""
    from_ = _given(sources)
    found = (
        _made(from_, quantity, column, sources)
        for column in columns_of(from_.study)
        for quantity in MEASURES
        if key_of(quantity, column) == key
    )
    figure = next(found, None)
    if figure is None or not sources.is_chosen:
        return figure
    spots = tuple(s for s in figure.spots if s.machine_id in sources.shown_ids)
    told = {m.id: m.name for m in from_.study.machines}
    gone = tuple(f"{name}: " for machine_id, name in told.items() if machine_id not in sources.shown_ids)
    facts = tuple(fact for fact in figure.facts if not fact.startswith(gone))
    return evolve(figure, spots=spots, facts=facts) if spots else None


def _given(sources: Sources) -> Given:
    whole = sources.drawable
    return given(whole.study, whole.comparison, whole.traces)


def _made(from_: Given, quantity: Quantity, column: Column, sources: Sources) -> CurvesFigure | None:
    return properties_figure(against(from_, quantity, column), from_.study, sources.locale)


def _start(quantity: Quantity) -> str:
    return f"{AGAINST}{_plain(quantity.key)}-"


def _plain(text: str) -> str:
    return re.sub(r"[^a-z0-9]+", "-", text.casefold().replace("²", "2")).strip("-") or "x"
