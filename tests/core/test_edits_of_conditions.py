import pytest
from attrs import evolve

from core import edits
from core.store.values import decode, encode
from core.study import Kind, Source, Study


@pytest.fixture
def study() -> Study:
    """One machine with a log of one run, and two meters."""
    runs = (edits.FoundRun(100.0, 3000.0),)
    made = edits.import_logs(
        edits.new_study("s").study, [edits.NewLog((Source("d", "a.csv"),), "Alder", runs)]
    )
    return edits.add_meter(made.study, "Second meter").study


def test_a_run_with_the_bed_off_is_not_compared_until_the_user_says_so(study: Study) -> None:
    edit = edits.mark_bed_off(study, "r1")
    assert edit.label == "Say that the bed was off in Alder, run 1"
    run = edit.study.run("r1")
    assert run.kind == "run"
    assert not run.included
    assert edits.is_decided(run)
    assert edits.include(edit.study, "r1").study.run("r1").included
    assert edits.mark_bed_off(edit.study, "r1", False).study == study
    assert edits.hand_back(edit.study, "r1").study == study


@pytest.mark.parametrize("kind", ["other part", "hold test"])
def test_what_was_taken_for_something_else_becomes_a_run_with_the_bed_off(study: Study, kind: Kind) -> None:
    taken = evolve(study, runs=(evolve(study.runs[0], found_kind=kind),))
    marked = edits.mark_bed_off(taken, "r1").study
    assert marked.run("r1").kind == "run"
    assert marked.run("r1").set_bed_off
    assert edits.mark_bed_off(marked, "r1", False).study == taken
    assert edits.hand_back(marked, "r1").study == taken


def test_temperatures_are_notes_that_stay(study: Study) -> None:
    edit = edits.note_temperatures(study, "r1", 60, 21)
    run = edit.study.run("r1")
    assert (run.bed_c, run.room_c) == (60.0, 21.0)
    assert edit.merge_key is not None
    assert edits.hand_back(edit.study, "r1").study.run("r1").bed_c == 60.0
    # also when the stretch is found no more
    again = edits.find_again(edit.study, study.logs[0].id, ()).study
    assert again.run("r1").bed_c == 60.0
    assert edits.find_again(study, study.logs[0].id, ()).study.runs == ()
    with pytest.raises(ValueError, match="bed_c"):
        edits.note_temperatures(study, "r1", -300, None)


def test_room_temperature(study: Study) -> None:
    edit = edits.set_room_c(study, 21)
    assert edit.study.room_c == 21.0
    assert edits.set_room_c(edit.study, None).study == study
    with pytest.raises(ValueError, match="room_c"):
        edits.set_room_c(study, float("nan"))


def test_a_log_of_the_bed(study: Study) -> None:
    edit = edits.mark_log_of_bed(study, study.logs[0].id)
    assert edit.study.logs[0].of_bed
    assert edit.label == "Say that a log is of the bed of Alder"
    assert edits.mark_log_of_bed(edit.study, study.logs[0].id, False).study == study


def test_a_load_check(study: Study) -> None:
    one, other = study.meters
    edit = edits.add_load_check(
        study, one.id, other.id, 100, 101.5, seconds=3600, step=0.1, note=" two  lamps "
    )
    (check,) = edit.study.checks
    assert edit.label == f"Add a check of {one.name} and Second meter"
    assert (check.id, check.reading, check.note) == ("c1", 100.0, "two lamps")
    changed = edits.set_load_check(edit.study, evolve(check, reading=100.2)).study
    assert changed.checks[0].reading == 100.2
    assert edits.remove_load_check(changed, "c1").study == study
    # a meter that goes takes its checks with it
    assert edits.remove_meter(edit.study, other.id).study.checks == ()
    powers = edits.add_load_check(study, one.id, other.id, 60, 61, unit="W", seconds=3600).study
    assert powers.checks[0].seconds is None


@pytest.mark.parametrize(
    ("change", "match"),
    [
        ({"other_id": "m1"}, "two meters"),
        ({"other_id": "none"}, "no meter"),
        ({"reading": 0.0}, "needs a load"),
        ({"reading": float("inf")}, "finite"),
        ({"reading": 0.1}, "one load"),
        ({"seconds": None}, "the time"),
        ({"step": -1.0}, "step"),
    ],
)
def test_a_check_that_says_nothing(study: Study, change: dict[str, object], match: str) -> None:
    one, other = study.meters
    values: dict[str, object] = {
        "meter_id": one.id,
        "other_id": other.id,
        "reading": 100.0,
        "other_reading": 101.0,
        "seconds": 3600.0,
        **change,
    }
    with pytest.raises(ValueError, match=match):
        edits.add_load_check(study, **values)  # type: ignore[arg-type]  # wrong on purpose


def test_a_study_saved_before_these_notes_existed_opens_with_none_of_them(study: Study) -> None:
    one, other = study.meters
    noted = edits.note_temperatures(edits.mark_bed_off(study, "r1").study, "r1", 60, 21).study
    noted = edits.set_room_c(edits.mark_log_of_bed(noted, noted.logs[0].id).study, 21).study
    noted = edits.add_load_check(noted, one.id, other.id, 60, 61, unit="W").study
    data = encode(noted, Study)
    assert decode(data, Study) == noted
    for name in ("room_c", "checks"):
        del data[name]
    for run in data["runs"]:
        for name in ("set_bed_off", "bed_c", "room_c"):
            del run[name]
    for log in data["logs"]:
        del log["of_bed"]
    assert decode(data, Study) == study
