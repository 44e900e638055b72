"""The headline and the conditions: made of the results, never claiming what is not shown."""

import pytest
from attrs import evolve

from core.results.answer import conditions, headline
from core.results.values import Comparison, MachineResult, Measured, Pair, RunResult
from core.study import Study


def run(
    machine: str, i: int, energy_wh: float | None, *, included: bool = True, by_user: bool = False
) -> RunResult:
    return RunResult(
        run_id=f"{machine}{i}", machine_id=machine, name=f"run {i}", start_s=0.0, end_s=3600.0, start=None,
        part="A", included=included, why_excluded=None if included else "left out", decided_by_user=by_user,
        left_out_by_user=by_user and not included,
        seconds=3600.0, energy_wh=energy_wh, energy_u95_wh=0.3, mean_w=energy_wh, parts_per_kwh=None,
        energy=None, bed=None,
    )  # fmt: skip


def machine(name: str, energy_wh: float | None, u95: float | None = 0.8, runs: int = 4) -> MachineResult:
    known = energy_wh is not None
    return MachineResult(
        machine_id=name.lower(), name=name, slot=0, files=(f"{name.lower()}.csv",),
        runs=tuple(run(name.lower(), i, energy_wh) for i in range(runs if known else 0)),
        energy_wh=Measured(energy_wh, u95) if energy_wh is not None else None,
        parts_per_kwh=Measured(1000 / energy_wh, 1.8) if energy_wh is not None else None,
        mean_w=None, seconds=None, bed_share=None, bed_w=None, standby_w=None,
    )  # fmt: skip


def comparison(machines: list[MachineResult], *pairs: Pair) -> Comparison:
    return Comparison(
        part="part", boundary="warm-up and processing", machines=tuple(machines), pairs=pairs, fairness=(),
        problems=(), headline="", conditions="",
    )  # fmt: skip


SHOWN = Pair("alder", "rowan", 0.65, 0.63, 0.67, 0.001, True)
ALDER, ROWAN = machine("Alder", 21.36), machine("Rowan", 33.4)
BIRCH, CEDAR = machine("Birch", 25.1), machine("Cedar", 25.4)
TIE = Pair("birch", "cedar", 0.99, 0.95, 1.03, 0.6, False, 9, 5.0)


def test_a_shown_difference_with_its_interval() -> None:
    assert headline(comparison([ALDER, ROWAN], SHOWN)) == (
        "Alder makes the part for 21.4 Wh, 35 % less than Rowan (95 % interval 33 to 37 %)."
    )


def test_no_difference_says_how_many_runs_would_show_one() -> None:
    assert headline(comparison([BIRCH, CEDAR], TIE)) == (
        "Birch and Cedar: no difference shown by 4 runs each; 9 runs each would show 5 %."
    )


def test_no_number_of_runs_helps() -> None:
    tie = evolve(TIE, runs_needed=None, needed_percent=1.0)
    assert headline(comparison([BIRCH, CEDAR], tie)).endswith(
        "; no number of runs would show 1 %, the meters allow no more."
    )


def test_runs_that_are_enough_say_what_they_would_have_shown() -> None:
    tie = evolve(TIE, runs_needed=2, needed_percent=1.0)
    assert headline(comparison([BIRCH, CEDAR], tie)).endswith(
        "no difference shown by 4 runs each; they would have shown one of 1 %."
    )


def test_unlike_numbers_of_runs() -> None:
    tie = evolve(TIE, runs_needed=None, needed_percent=None)
    pair = comparison([BIRCH, machine("Cedar", 25.4, runs=2)], tie)
    assert headline(pair) == "Birch and Cedar: no difference shown by these runs."
    assert "2 to 4 runs a machine" in conditions(pair, Study(id="s"))


def test_five_machines_alike_are_not_listed_out() -> None:
    names = ["Alder", "Birch", "Cedar", "Hazel", "Rowan"]
    alike = [machine(n, 25.0 + i / 10) for i, n in enumerate(names)]
    tie = Pair("alder", "rowan", 0.99, 0.95, 1.03, 0.6, False)
    assert (
        headline(comparison(alike, tie)) == "5 machines, Alder to Rowan: no difference shown by 4 runs each."
    )


def test_one_run_each_is_not_judged() -> None:
    single = [machine("Alder", 21.36, runs=1), machine("Rowan", 33.4, runs=1)]
    pair = Pair("alder", "rowan", 0.65, None, None, None, None)
    assert headline(comparison(single, pair)) == (
        "Alder makes the part for 21.4 Wh, Rowan for 33.4 Wh; "
        "whether they differ cannot be judged with one run of Alder and Rowan."
    )


def test_where_two_machines_have_repeats_they_are_told() -> None:
    lone = machine("Hazel", 12.0, runs=1)
    mixed = comparison(
        [lone, ALDER, ROWAN], Pair("hazel", "alder", 0.5, 0.4, 0.6, None, None),
        Pair("hazel", "rowan", 0.4, 0.3, 0.5, None, None), SHOWN,
    )  # fmt: skip
    assert headline(mixed).startswith("Alder makes the part for 21.4 Wh, 35 % less than Rowan")
    assert "Hazel: one run only." in conditions(mixed, Study(id="s"))


def test_one_machine() -> None:
    assert headline(comparison([ALDER])) == (
        "Alder makes the part for 21.4 ± 0.8 Wh, 46.8 parts per kWh (4 runs)."
    )
    assert "(one run only)" in headline(comparison([machine("Alder", 21.36, runs=1)]))


@pytest.mark.parametrize(
    ("machines", "text"),
    [
        ([], "Nothing to compare yet: add the meter logs of two or more machines."),
        ([machine("Alder", None)], "No complete run of the part was found in 1 log."),
        (
            [machine("Alder", None), machine("Rowan", None)],
            "No complete run of the part was found in 2 logs.",
        ),
    ],
)
def test_nothing_to_say(machines: list[MachineResult], text: str) -> None:
    assert headline(comparison(machines)) == text


@pytest.mark.parametrize(
    ("low", "high", "ratio", "text"),
    [
        (0.952, 0.956, 0.954, "4.6 % less than Rowan (95 % interval 4.4 to 4.8 %)"),
        (0.60, 0.70, 0.65, "35 % less than Rowan (95 % interval 30 to 40 %)"),
        (0.9501, 0.9503, 0.9502, "4.98 % less than Rowan (95 % interval 4.97 to 4.99 %)"),
    ],
)
def test_interval_keeps_its_ends_apart(low: float, high: float, ratio: float, text: str) -> None:
    assert text in headline(
        comparison([ALDER, ROWAN], evolve(SHOWN, ratio=ratio, ratio_low=low, ratio_high=high))
    )


def test_conditions_name_boundary_bed_runs_and_ties() -> None:
    all_four = comparison([ALDER, BIRCH, CEDAR, ROWAN], SHOWN, TIE)
    assert conditions(all_four, Study(id="s", bed_c=60.0, room_c=21.4)) == (
        "Warm-up and processing, bed at 60 °C, room at 21 °C, 4 runs a machine. "
        "Birch and Cedar: no difference shown; 9 runs each would show 5 %."
    )


def test_conditions_do_not_repeat_the_headline() -> None:
    assert "no difference" not in conditions(comparison([BIRCH, CEDAR], TIE), Study(id="s"))


def test_nothing_is_left_out_silently() -> None:
    hand = evolve(ALDER, runs=(*ALDER.runs, run("alder", 8, 20.0, included=False, by_user=True)))
    both = evolve(
        hand, runs=(*hand.runs, run("alder", 9, 5.0, included=False), run("alder", 10, 5.0, included=False))
    )
    assert "1 run left out by hand." in conditions(comparison([hand, ROWAN], SHOWN), Study(id="s"))
    text = conditions(comparison([both, machine("Hazel", None)], SHOWN), Study(id="s"))
    assert "1 run left out by hand, 2 other stretches found and not counted." in text
    assert "Hazel: no complete run." in text


def test_nothing_has_no_conditions() -> None:
    assert conditions(comparison([]), Study(id="s")) == ""
