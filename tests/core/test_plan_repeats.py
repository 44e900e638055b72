"""How many repeats a plan needs, from the runs so far and the meters of the plan, and how it is said."""

import math

import pytest

from core import edits
from core.figures.plan import repeats_figure
from core.figures.source import numbers_of
from core.plan.known import UNNAMED, known_machines, meters_left_open
from core.plan.order import order_of
from core.plan.power import Spread, floor, power, smallest_shown
from core.plan.repeats import ASSUMED_SPREAD, MOST_SHOWN, Repeats, nearest_pair, repeats
from core.plan.words import conditions, floor_words, headline, share
from core.results.compare import compare
from core.stats import POWER
from core.study import Study

GAIN_U = 0.01 / math.sqrt(3)


def bench(machines: int = 2, meters: int = 1, energies: tuple[float, ...] = ()) -> Study:
    """Machines in turn on the meters, each with the same energies but 0.2 % more than the one before."""
    study = edits.new_study("s").study
    for number in range(meters):
        study = edits.add_meter(study, f"Meter {number + 1}").study
    names = ("Alder", "Birch", "Cedar", "Hazel", "Rowan")[:machines]
    for place, name in enumerate(names):
        study = edits.add_machine(study, name).study
        meter = study.meters[place % meters].id if meters else None
        for energy_wh in energies:
            study = edits.add_typed(
                study,
                study.machines[-1].id,
                energy_wh * (1 + 0.002 * place),
                seconds=3600.0,
                step_wh=0.01,
                meter_id=meter,
            ).study
    return study


RUNS = (50.0, 51.0, 49.5, 50.5)


def found(study: Study, pair: tuple[str, str] | None = None) -> Repeats:
    return repeats(study, compare(study, {}), pair)


def test_nothing_measured_and_nobody_states_a_scatter() -> None:
    result = repeats(bench(), None)
    assert result.is_assumed
    assert result.spread == ASSUMED_SPREAD
    assert result.pair is not None
    assert result.pair.now is None
    assert result.pair.low == ()
    assert "is assumed: state what you expect" in conditions(result)


def test_the_scatter_is_that_of_the_runs() -> None:
    result = found(bench(3, energies=RUNS))
    spread = 0.645497 / 50.25  # standard deviation of the four over their mean; the same for all
    assert result.spread == pytest.approx(spread, rel=1e-4)
    assert result.spread_df == 9
    assert "Runs scatter by 1.3 % (95 % interval 0.88 to 2.3 %; 12 runs so far)." in conditions(result)


def test_what_the_user_states_goes_first() -> None:
    study = edits.set_plan_goal(bench(energies=RUNS), spread_percent=4.0).study
    result = found(study)
    assert (result.spread, result.spread_df, result.is_stated) == (0.04, 0, True)
    assert result.pair is not None
    assert result.pair.low == ()
    assert "taken to scatter by 4 %, as you have stated" in conditions(result)


def test_the_number_of_runs_is_enough_and_one_less_is_not() -> None:
    study = edits.set_plan_goal(bench(3, energies=RUNS), difference_percent=2.0).study
    result = found(study)
    pair = result.pair
    assert pair is not None
    assert pair.more is not None
    assert pair.more > 1
    spread = pair.first.spread
    assert spread is not None
    # one meter for all: nothing is shared but a part of its offset
    offset_u = 0.3 / math.sqrt(3) * abs(1 / (pair.first.mean_w or 1) - 1 / (pair.other.mean_w or 1))
    known = Spread(spread, pair.other.spread or 0.0, offset_u, 3, 3)
    runs = 4 + pair.more
    assert power(0.02, known, runs, runs) >= POWER
    assert power(0.02, known, runs - 1, runs - 1) < POWER
    assert headline(result) == (
        f"{pair.more} more runs on each of {pair.first.name} and {pair.other.name} would show a difference "
        "of 2 % between them among 3 machines."
    )


def test_the_curves_are_those_of_the_power() -> None:
    result = found(bench(energies=RUNS))
    pair = result.pair
    assert pair is not None
    place = pair.runs.index(6)
    spread = Spread(pair.first.spread or 0.0, pair.other.spread or 0.0, 0.0)
    # with one meter only a little of its offset is left
    assert pair.alone[place] == pytest.approx(smallest_shown(spread, 6, 6), rel=1e-3)
    assert pair.alone == pair.among_all
    assert list(pair.among_all) == sorted(pair.among_all, reverse=True)
    assert all(
        low < middle < high for low, middle, high in zip(pair.low, pair.among_all, pair.high, strict=True)
    )
    assert pair.now == pytest.approx(pair.among_all[pair.runs.index(4)])
    assert pair.planned == pytest.approx(pair.among_all[pair.runs.index(8)])


def test_among_more_machines_more_is_asked_for() -> None:
    two, five = found(bench(2, energies=RUNS)), found(bench(5, energies=RUNS))
    assert two.pair is not None
    assert five.pair is not None
    assert five.pair.among_all[2] > 1.2 * two.pair.among_all[2]
    assert five.pair.alone[2] == pytest.approx(two.pair.alone[2], rel=0.02)
    assert two.for_any is None
    assert five.for_any is not None


def test_a_meter_for_each_hides_what_meters_that_go_round_do_not() -> None:
    study = edits.plan_repeats(bench(2, 2), 4).study
    result = repeats(study, None)
    assert result.pair is not None
    assert result.pair.floor_apart == pytest.approx(floor(Spread(0, 0, GAIN_U * math.sqrt(2))))
    assert result.pair.floor == pytest.approx(0.0, abs=1e-12)
    # three blocks on two meters do not come out even: a third of the gains is left
    odd = repeats(edits.plan_repeats(study, 3).study, None)
    assert odd.pair is not None
    shares = [dict(m.planned) for m in odd.machines]
    apart = [shares[0].get(m.id, 0) - shares[1].get(m.id, 0) for m in study.meters]
    assert odd.pair.floor == pytest.approx(floor(Spread(0, 0, GAIN_U * math.hypot(*apart) / 3)))


def test_no_number_of_runs_shows_what_the_meters_hide() -> None:
    # measured apart, and the plan takes one meter for each in its single block
    study = edits.plan_repeats(bench(2, 2, RUNS), 1).study
    study = edits.plan_at_once(study, 2).study
    study = edits.set_plan_goal(study, difference_percent=1.0).study
    result = found(study)
    assert result.pair is not None
    assert result.pair.more is None
    said = headline(result)
    assert said.startswith("No number of runs would show a difference of 1 % between Alder and Birch: ")
    assert said.endswith("what their meters leave open hides 2.7 %; with one meter for both it would not.")


def test_a_same_load_check_lowers_the_floor() -> None:
    study = bench(2, 2, RUNS)
    a, b = (m.id for m in study.meters)
    checked = edits.add_load_check(
        study, a, b, 1000.0, 1004.0, step=0.1, other_step=0.1, seconds=36_000.0
    ).study
    before, after = found(study).pair, found(checked).pair
    assert before is not None
    assert after is not None
    assert after.floor_apart < 0.6 * before.floor_apart


def test_runs_so_far_and_those_of_the_plan_share_the_meters() -> None:
    study = edits.plan_repeats(bench(2, 2, RUNS), 2).study
    results = {m.machine_id: m for m in compare(study, {}).machines}
    alder = next(m for m in known_machines(study, results, order_of(study)) if m.name == "Alder")
    a, b = (m.id for m in study.meters)
    assert alder.on_meters == ((a, 4),)
    assert dict(alder.planned) == {a: 1, b: 1}
    assert alder.shares(4) == pytest.approx({a: 1.0, b: 0.0})
    assert alder.shares(6) == pytest.approx({a: 5 / 6, b: 1 / 6})
    assert alder.shares(math.inf) == {a: 0.5, b: 0.5}


def test_an_offset_matters_to_machines_of_unlike_power() -> None:
    study = bench(2, 1, RUNS)
    study = edits.add_typed(study, study.machines[1].id, 50.0, seconds=36_000.0).study
    results = {m.machine_id: m for m in compare(study, {}).machines}
    first, other = known_machines(study, results, order_of(study))
    meter = study.meters[0].id
    shares = {meter: 1.0}
    u = meters_left_open(study).shared_u(first, other, (shares, shares))
    assert u == pytest.approx(0.3 / math.sqrt(3) * abs(1 / (first.mean_w or 1) - 1 / (other.mean_w or 1)))
    assert u > 0


def test_a_machine_with_one_run_scatters_like_the_others() -> None:
    study = bench(2, energies=RUNS)
    study = edits.add_machine(study, "Cedar").study
    cedar = study.machines[-1].id
    study = edits.add_typed(study, cedar, 48.0, seconds=3600.0, meter_id=study.meters[0].id).study
    result = found(study, (study.machines[0].id, cedar))
    assert result.pair is not None
    assert result.pair.other.spread is None
    assert result.pair.now is None
    assert result.pair.more is not None
    assert result.pair.more >= 1


def test_the_pair_that_is_looked_at() -> None:
    study = bench(3, energies=RUNS)
    ids = [m.id for m in study.machines]
    asked = found(study, (ids[2], ids[0]))
    assert asked.pair is not None
    assert (asked.pair.first.name, asked.pair.other.name) == ("Cedar", "Alder")
    for nonsense in (("x", "y"), (ids[0], ids[0])):
        usual = found(study, nonsense)
        assert usual.pair is not None
        # none is told apart; the ends are the nearest to it
        assert {usual.pair.first.name, usual.pair.other.name} == {"Alder", "Cedar"}


def test_the_nearest_pair_of_some_machines_is_of_those() -> None:
    study = bench(4, energies=RUNS)
    a, b, c, d = (m.id for m in study.machines)
    comparison = compare(study, {})
    assert set(nearest_pair((a, b, c, d), comparison) or ()) == {a, d}
    assert set(nearest_pair((b, c), comparison) or ()) == {b, c}
    assert nearest_pair((a, b, c), None) == (a, b)
    assert nearest_pair((a,), comparison) is None


def test_fewer_than_two_machines() -> None:
    empty, one = repeats(edits.new_study("s").study, None), repeats(bench(1), None)
    assert (empty.pair, one.pair) == (None, None)
    assert headline(empty).startswith("No machine is planned yet")
    assert headline(one) == "Alder alone can be compared with nothing: add another machine below."
    assert conditions(empty) == ""
    assert floor_words(one) == ""
    assert repeats_figure(one, bench(1)) is None


def test_without_a_meter_one_of_unstated_accuracy_is_taken() -> None:
    result = repeats(bench(2, 0), None)
    assert result.pair is not None
    assert result.pair.floor == pytest.approx(0.0, abs=1e-12)
    assert result.pair.floor_apart == pytest.approx(floor(Spread(0, 0, GAIN_U * math.sqrt(2))))
    assert UNNAMED.gain_percent == 1.0


def test_the_figure_shows_the_numbers_and_reads_them_out() -> None:
    study = bench(3, 2, RUNS)
    result = found(study)
    figure = repeats_figure(result, study)
    assert figure is not None
    assert result.pair is not None
    assert [t.name.split(",")[0] for t in figure.trends] == [
        "these two alone",
        "among 3 machines",
        f"two meters hide {share(result.pair.floor_apart)}",
        "looked for",
    ]
    curve = dict(zip(figure.trends[1].x, figure.trends[1].y, strict=True))
    assert [curve[float(n)] for n in result.pair.runs] == pytest.approx(
        [100 * v for v in result.pair.among_all]
    )
    assert [r.x for r in figure.readings] == [float(n) for n in result.pair.runs]
    four = figure.readings[2].lines
    assert four[0].startswith("4 runs of each of ")
    assert four[1] == f"among 3 machines: {share(result.pair.among_all[2])} is shown"
    assert four[-1] == "as many as there are"
    assert f"4 runs of each: {share(result.pair.among_all[2])}" in numbers_of(figure)
    assert f"hidden by a meter for each: {share(result.pair.floor_apart)}" in numbers_of(figure)


def test_the_chart_stays_within_what_anybody_makes() -> None:
    study = edits.set_plan_goal(bench(), difference_percent=0.3).study
    result = repeats(study, None)
    assert result.pair is not None
    assert result.pair.runs[-1] == MOST_SHOWN
    assert result.pair.more is None
    assert headline(result).startswith("More than 100 runs on each of Alder and Birch would be needed")


def test_enough_runs_are_called_enough() -> None:
    study = edits.set_plan_goal(bench(energies=RUNS * 3), difference_percent=10.0).study
    assert headline(found(study)) == (
        "The runs so far are enough to show a difference of 10 % between Alder and Birch."
    )
