"""A measure against a property is published as it was shown, with the test of all machines."""

import re

import pytest

from core.figures.curve_values import CurvesFigure
from core.figures.properties import properties_figure
from core.properties.table import Column, columns_of
from core.publish.against import VIEW, key_for_figure, key_of
from core.publish.alt_text import alt_text
from core.publish.choices import Pick
from core.publish.rows import rows_of
from core.publish.shelf import entry_of, key_for, shelf
from core.publish.sources import Sources
from core.quantities import DURATION, ENERGY, Quantity
from core.results.like_for_like import given
from core.results.properties import MEASURES, against
from tests.core.report.demo import demo_sources


@pytest.fixture(scope="module")
def demo() -> Sources:
    return demo_sources()


def shown(sources: Sources, name: str, quantity: Quantity = DURATION) -> CurvesFigure:
    """The chart as the Compare page shows it."""
    whole = sources.drawable
    column = next(c for c in columns_of(whole.study) if c.name == name)
    found = against(given(whole.study, whole.comparison, whole.traces), quantity, column)
    figure = properties_figure(found, whole.study, sources.locale)
    assert figure is not None
    return figure


def test_the_chart_that_is_shown_is_the_one_that_is_published(demo: Sources) -> None:
    figure = shown(demo, "Speed set (mm/s)")
    key = key_for(VIEW, figure, shelf(demo), demo)
    assert key == "against-seconds-speed-set-mm-s"
    entry = entry_of(Pick(key), shelf(demo))
    assert entry is not None
    assert entry.title == "Duration against a property"
    assert entry.figure(demo) == figure
    assert alt_text(figure)
    assert rows_of(figure)


def test_showing_fewer_machines_leaves_the_test_alone(demo: Sources) -> None:
    figure = shown(demo, "Speed set (mm/s)")
    ids = {m.name: m.id for m in demo.drawable.study.machines}
    some = Sources(demo.drawable, demo.year, machine_ids=(ids["Birch"], ids["Alder"]))
    entry = entry_of(Pick("against-seconds-speed-set-mm-s"), shelf(some))
    assert entry is not None
    fewer = entry.figure(some)
    assert isinstance(fewer, CurvesFigure)
    assert fewer.headline == figure.headline
    assert "2 of 5 machines shown" in fewer.conditions
    assert {s.name for s in fewer.spots} == {"Alder", "Birch"}
    assert len(fewer.facts) == 2


def test_every_key_is_fit_for_a_file_and_its_own() -> None:
    columns = [
        Column("Speed set (mm/s)", "number"),
        Column("Bed area (dm²)", "number"),
        Column("樺", "words"),
    ]
    keys = [key_of(q, c) for q in MEASURES for c in columns]
    assert len(set(keys)) == len(keys)
    assert all(re.fullmatch(r"[a-z0-9-]+", key) for key in keys)


def test_a_property_that_is_gone_has_no_chart(demo: Sources) -> None:
    entry = entry_of(Pick("against-energy-wh-colour"), shelf(demo))
    assert entry is not None
    assert entry.figure(demo) is None
    assert key_for_figure(shown(demo, "Age (years)", ENERGY), demo) == "against-energy-wh-age-years"
