"""What a cooler bed saves on machines whose beds are simulated: against the truth, and what it depends on."""

import math

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.beds.hold import holds
from core.beds.hold_fit import Point
from core.beds.model import BedModel
from core.beds.plate import Plate, loss
from core.results.cooler_beds import Plan, course, plan_of, savings
from core.results.holds import Beds, MachineBed, beds, gain_u
from core.results.values import Measured
from core.study import CoolerPlan, Meter
from tests.core.held_beds import BEFORE_S, Bed, simulated
from tests.core.hold_studies import held_study

PLAN = CoolerPlan(60.0, 50.0, 600.0, 36_000.0, least_c=40.0)


def _beds(*models: BedModel, meters: tuple[str, ...] = (), capacity: float | None = 420.0) -> Beds:
    known = None if capacity is None else Measured(capacity, 20.0)
    machines = tuple(
        MachineBed(
            machine_id=f"a{i}",
            name=f"Machine {i}",
            slot=i,
            area_dm2=5.0,
            supply=None,
            tests=1,
            held=(),
            model=model,
            reference=model.at(40.0),
            meter_ids=frozenset({meters[i] if meters else f"m{i}"}),
            heat_capacity=known,
            floor_w=None,
        )
        for i, model in enumerate(models)
    )
    return Beds(machines, 60.0, 20.0, 0.9)


def _one(power_w: float = 50.0, u_w: float = 0.3) -> BedModel:
    return BedModel.of([Point(40.0, power_w, u_w, 10.0)], 0.0058)


def test_against_a_bed_simulated_step_by_step() -> None:
    """Watts and heat capacity measured by hold tests; the print itself run in steps of a second."""
    bed = Bed()
    study, traces = held_study([("Alder", bed, (45.0, 60.0))])
    found = beds(study, traces)
    saving = savings(found, plan_of(PLAN, found)).machines[0]

    def used_wh(later_k: float) -> float:
        now_k, used_j = 40.0, 0.0
        for second in range(36_000):
            target_k = 40.0 if second < 600 else later_k
            lost_w = float(bed.loss_w(np.array(now_k)))
            heat_w = lost_w if now_k <= target_k else 0.0
            used_j += heat_w
            now_k = max(now_k + (heat_w - lost_w) / bed.capacity_j_per_k, min(target_k, now_k))
        return used_j / 3600

    truth_wh = used_wh(40.0) - used_wh(30.0)
    assert saving.saved_wh.u95 is not None
    assert abs(saving.saved_wh.value - truth_wh) < saving.saved_wh.u95
    # the doubt that a print is unlike a hold is 11 % alone
    assert 0.11 < saving.saved_wh.u95 / saving.saved_wh.value < 0.25
    assert saving.saved_share.value == pytest.approx(truth_wh / used_wh(40.0), abs=0.02)


def test_the_share_is_surer_than_the_energy() -> None:
    saving = savings(_beds(_one()), plan_of(PLAN, _beds(_one()))).machines[0]
    assert saving.saved_wh.u95 is not None
    assert saving.saved_share.u95 is not None
    relative_wh = saving.saved_wh.u95 / saving.saved_wh.value
    assert saving.saved_share.u95 / saving.saved_share.value < relative_wh
    assert saving.is_scaled


def test_by_the_plate_law_where_one_temperature_was_held() -> None:
    """A floor at 50 degC is 0.708 of that at 60 (plate of 235 mm in 20 degC): the saving of a long print."""
    plate = Plate(0.235, 0.235)
    left = loss(plate, 50, 20).total_w / loss(plate, 60, 20).total_w
    assert left == pytest.approx(0.708, abs=0.002)
    long = evolve(PLAN, first_layers_s=0.0, print_s=3.6e6)
    found = savings(_beds(_one()), plan_of(long, _beds(_one()))).machines[0]
    assert found.saved_share.value == pytest.approx(1 - left, abs=2e-3)


def test_nothing_cooler_nothing_saved() -> None:
    same = evolve(PLAN, later_c=60.0)
    found = savings(_beds(_one()), plan_of(same, _beds(_one()))).machines[0]
    assert found.saved_wh.value == 0.0
    assert found.bed.cooling_s == 0.0


def test_saves_more_the_cooler_the_longer_and_the_sooner() -> None:
    def saved(**changes: float) -> float:
        known = _beds(_one())
        return savings(known, plan_of(evolve(PLAN, **changes), known)).machines[0].saved_wh.value

    assert saved(later_c=45.0) > saved(later_c=50.0) > saved(later_c=55.0)
    assert saved(print_s=72_000.0) > saved()
    assert saved(first_layers_s=60.0) > saved() > saved(first_layers_s=18_000.0)


def test_the_sum_of_machines_on_one_meter_is_less_sure() -> None:
    models = [BedModel.of([Point(40.0, 50.0, 0.01, 50.0)], 0.05) for _ in range(3)]
    shared, apart = (_beds(*models, meters=m) for m in (("m", "m", "m"), ("a", "b", "c")))
    totals = [savings(b, plan_of(PLAN, b)).total_wh for b in (shared, apart)]
    one, other = (t for t in totals if t is not None)
    assert one.value == pytest.approx(other.value)
    assert one.u95 is not None
    assert other.u95 is not None
    assert one.u95 > 1.1 * other.u95
    singles = savings(apart, plan_of(PLAN, apart)).machines
    assert other.u95 == pytest.approx(math.hypot(*(s.saved_wh.u95 or 0.0 for s in singles)), rel=1e-6)


def test_a_bed_that_nobody_measured_is_named() -> None:
    known = _beds(_one())
    rest = evolve(known.machines[0], machine_id="b", name="Rowan", model=None, reference=None)
    found = savings(evolve(known, machines=(*known.machines, rest)), plan_of(PLAN, known))
    assert found.missing == ("Rowan",)
    assert found.of("b") is None


def test_a_warm_up_nobody_saw_makes_the_saving_less_sure() -> None:
    short = evolve(PLAN, print_s=3600.0)
    known, unknown = _beds(_one()), _beds(_one(), capacity=None)
    one, other = (savings(b, plan_of(short, b)).machines[0] for b in (known, unknown))
    assert (one.is_tau_known, other.is_tau_known) == (True, False)
    assert (other.saved_share.u95 or 0) > (one.saved_share.u95 or 0)


def test_money_goes_with_the_energy() -> None:
    saving = savings(_beds(_one()), plan_of(PLAN, _beds(_one()))).machines[0]
    money = saving.saved_price(0.30)
    assert money.value == pytest.approx(saving.saved_wh.value * 0.30 / 1000)
    assert money.u95 == pytest.approx((saving.saved_wh.u95 or 0) * 0.30 / 1000)


@pytest.mark.parametrize(
    ("wished", "first_c", "later_c", "is_held_up"),
    [
        (CoolerPlan(), 60.0, 50.0, False),
        (CoolerPlan(later_c=30.0), 60.0, 40.0, True),
        (CoolerPlan(later_c=30.0, least_c=0.0), 60.0, 30.0, False),
        (CoolerPlan(later_c=10.0, least_c=0.0), 60.0, 22.0, True),
        (CoolerPlan(later_c=80.0), 60.0, 60.0, False),
        (CoolerPlan(first_c=35.0), 35.0, 35.0, True),
        (CoolerPlan(first_c=5.0, least_c=0.0), 22.0, 22.0, True),
    ],
)
def test_what_cannot_be_is_brought_within_reach(
    wished: CoolerPlan, first_c: float, later_c: float, is_held_up: bool
) -> None:
    plan = plan_of(wished, _beds(_one()))
    assert (plan.first_c, plan.later_c, plan.is_held_up) == (first_c, later_c, is_held_up)
    assert savings(_beds(_one()), plan).machines[0].saved_wh.value >= 0


def test_the_course_holds_the_energy() -> None:
    plan = Plan(60.0, 50.0, 40.0, 20.0, 600.0, 7200.0, False)
    times_s, watts = course(70.0, 50.0, plan, 900.0)
    assert times_s[3] - times_s[1] == pytest.approx(900 * math.log(40 / 30))
    assert list(times_s) == sorted(times_s)
    assert np.trapezoid(watts, times_s) / 3600 == pytest.approx((70 * 600 + 50 * (7200 - times_s[3])) / 3600)
    short_s, _ = course(70.0, 50.0, evolve(plan, print_s=700.0), 900.0)
    assert short_s[-1] == short_s[3] == 700.0


def test_a_plan_of_the_study_reaches_its_beds() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))], seconds=2400)
    study = edits.set_cooler_plan(study, evolve(PLAN, later_c=45.0)).study
    found = beds(study, traces)
    plan = plan_of(study.cooler, found)
    assert (plan.later_c, plan.room_c) == (45.0, 20.0)


def test_intervals_hold_the_truth_as_often_as_they_say() -> None:
    """Beds held at three temperatures, read by meters wrong within 1 %, temperatures by half a kelvin."""
    bed, meter, rng = Bed(), Meter("m", "m"), np.random.default_rng(5)
    count = 80
    logs = {d: simulated(bed, np.full(count, d), 2400, int(d))[0] for d in (30.0, 40.0, 50.0)}
    hits = {"slope": 0, "watts": 0}
    widths = []
    for i in range(count):
        gain = 1 + rng.uniform(-0.01, 0.01)
        points = []
        for difference_k, traces in logs.items():
            trace = evolve(traces[i], power_w=traces[i].power_w * gain, key=f"{traces[i].key} {gain}")
            hold = holds(trace, float(BEFORE_S), trace.end_s, meter)[0]
            assert hold.bed_w is not None
            read_k = difference_k + rng.normal(0, 0.5)
            points.append(Point(read_k, hold.bed_w, hold.bed_u_w, hold.steady.df, 0.5))
        model = BedModel.of(points, gain_u(meter))
        assert model.fit is not None
        watts = model.at(40.0)
        hits["slope"] += abs(model.fit.coefficients[1] - bed.slope_w_per_k) <= model.fit.u95(1)
        hits["watts"] += abs(watts.power_w - (bed.intercept_w + 40 * bed.slope_w_per_k)) <= watts.u95_w
        widths.append(watts.u95_w / watts.power_w)
    # of 80 tries at 95 %, 71 or fewer come up once in 54 times (binomial distribution)
    assert min(hits.values()) >= 72
    assert np.median(widths) < 0.05
