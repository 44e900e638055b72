"""A plan begun from an empty window, for its tests."""

from gui.pages.fairness import FairnessPage
from gui.widgets.plan_view import PlanView
from tests.gui.driver import Driver


def begin(bench: Driver) -> PlanView:
    """From an empty window to a plan of two machines on two meters."""
    bench.click("welcome_plan")
    view = plan_of(bench)
    for field, names in (
        ("plan_new_machine", ("Alder", "Birch")),
        ("plan_new_meter", ("Meter 1", "Meter 2")),
    ):
        for name in names:
            bench.write(field, name)
    return view


def plan_of(bench: Driver) -> PlanView:
    page = bench.window.findChild(FairnessPage)
    assert page is not None
    assert page.plan.isVisible()
    return page.plan
