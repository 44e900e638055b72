"""The window as a user meets it: empty, fed with logs, undone, closed and opened again."""

from pathlib import Path
from random import Random

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLineEdit, QPushButton, QTextBrowser, QTreeWidget

from core import edits
from gui.jobs import Report
from gui.widgets.progress_strip import ProgressStrip
from gui.widgets.welcome import Welcome
from tests.gui.driver import Driver, opened, write_log
from tests.random_edits import random_edit


@pytest.fixture
def user(qtbot, tmp_path):
    with opened(qtbot, tmp_path) as driver:
        yield driver


def test_an_empty_window_says_what_to_drop(user: Driver):
    assert user.window.page is None
    user.widget(Welcome, "welcome")
    assert user.text("study_facts") == "No machines, no runs"


def test_dropping_logs_of_two_machines_lands_on_the_comparison(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", processing_w=80, seed=2))
    assert [m.name for m in user.study.machines] == ["Alder", "Birch"]
    assert sum(run.kind == "run" for run in user.study.runs) == 6
    assert user.window.page is not None
    assert user.window.page.title == "Compare"
    assert user.text("sentence").startswith("Alder makes the part for")


def test_dropping_one_machine_lands_on_the_logs(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    assert user.window.page is not None
    assert user.window.page.title == "Logs"
    assert user.text("sentence") == "3 runs of the part found in 1 log."


def test_a_folder_is_read_and_what_cannot_be_read_is_listed(user: Driver, tmp_path: Path):
    folder = tmp_path / "logs"
    folder.mkdir()
    write_log(folder / "alder.csv")
    (folder / "empty.csv").write_text("")
    (folder / "picture.csv").write_bytes(bytes(range(256)) * 20)
    user.drop(folder)
    assert len(user.study.logs) == 1
    listed = user.widget(QTreeWidget, "problems")
    texts = [listed.topLevelItem(i).text(1) for i in range(listed.topLevelItemCount())]
    assert sum("empty.csv" in text for text in texts) == 1
    assert sum("picture.csv" in text for text in texts) == 1
    assert all(listed.topLevelItem(i).text(3) for i in range(listed.topLevelItemCount()))


def test_dropping_the_same_log_twice_changes_nothing(user: Driver, tmp_path: Path):
    log = write_log(tmp_path / "alder.csv")
    user.drop(log)
    before = user.study
    user.drop(log)
    assert user.study == before
    assert user.text("problem_summary") == (
        "1 remark: alder.csv: This log is in the study already, so it was not added again."
    )


def test_import_is_undone_and_done_again_with_its_label(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    user.press(Qt.Key.Key_Z, user.window, Qt.KeyboardModifier.ControlModifier)
    assert user.study.logs == ()
    assert user.window.page is None
    user.press(
        Qt.Key.Key_Z, user.window, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    )
    assert len(user.study.logs) == 1
    assert user.session.traces


def test_a_study_with_a_name_is_opened_again_and_saving_it_leaves_the_page(qtbot, tmp_path: Path):
    path = tmp_path / "clips.samepart"
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "alder.csv"))
        user.window.show_page("Publish")
        user.session.save_as(path)
        user.settle()
        assert user.window.page is not None
        assert user.window.page.title == "Publish"
    with opened(qtbot, tmp_path) as again:
        assert again.session.path == path
        assert set(again.session.traces) == {again.study.logs[0].id}
        again.do("action_new")
        assert again.session.is_untitled
    with opened(qtbot, tmp_path) as after:
        assert after.session.is_untitled
        after.session.open(path)
        after.settle()
    path.unlink()
    with opened(qtbot, tmp_path) as gone:
        assert gone.session.is_untitled


def test_a_named_study_that_another_window_has_is_left_to_it(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as first:
        first.session.save_as(tmp_path / "clips.samepart")
        first.settle()
        with opened(qtbot, tmp_path) as second:
            assert second.session.is_untitled
            assert not second.session.is_read_only
            assert second.session.problems == ()


def test_an_untitled_study_comes_back_with_its_history(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "alder.csv"))
        user.write("study_name", "Clip test")
        user.write("part_name", "clip")
        assert user.study.part == "clip"
        user.do("action_undo")
        assert user.window.windowTitle().startswith("Clip test")
    with opened(qtbot, tmp_path) as user:
        assert user.study.name == "Clip test"
        assert set(user.session.traces) == {user.study.logs[0].id}
        user.do("action_undo")
        assert user.widget(QLineEdit, "study_name").text() == "Untitled study"


def test_a_study_saved_as_a_file_goes_on_there_and_is_recent(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    untitled = user.session.path
    user.session.save_as(tmp_path / "clips.samepart")
    user.settle()
    assert user.session.path == tmp_path / "clips.samepart"
    assert untitled is not None
    assert not untitled.exists()
    assert user.settings.recent == (tmp_path / "clips.samepart",)
    assert user.session.traces


def test_logs_dropped_while_others_are_being_read_are_read_too(user: Driver, tmp_path: Path):
    user.session.add_logs([write_log(tmp_path / "alder.csv")])
    user.session.add_logs([write_log(tmp_path / "birch.csv", seed=2)])
    user.wait_until(lambda: len(user.study.logs) == 2)
    user.settle()
    assert [m.name for m in user.study.machines] == ["Alder", "Birch"]


def test_a_study_that_another_window_has_open_can_only_be_looked_at(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path / "one") as first:
        first.drop(write_log(tmp_path / "alder.csv"))
        first.session.save_as(tmp_path / "shared.samepart")
        first.settle()
        with opened(qtbot, tmp_path / "two") as second:
            second.drop(tmp_path / "shared.samepart")
            assert "Open for reading only" in second.text("study_facts")
            before = second.study
            second.session.select(before.runs[0].id)
            second.do("stretch_action_split")
            assert second.study is before
            listed = second.widget(QTreeWidget, "problems")
            assert any(
                "reading only" in listed.topLevelItem(i).text(3) for i in range(listed.topLevelItemCount())
            )


def test_cancelling_a_read_leaves_the_study_as_it_was(user: Driver, tmp_path: Path):
    before = user.study
    user.session.add_logs([write_log(tmp_path / f"m{i}.csv", seed=i) for i in range(20)])
    user.jobs.cancel("read files")
    user.settle()
    assert user.study is before


def test_a_file_that_is_no_study_is_refused_and_the_open_one_stays(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    before = user.study
    bad = tmp_path / "bad.samepart"
    bad.write_text("this is no study")
    user.drop(bad)
    assert user.study is before
    assert user.widget(QTreeWidget, "problems").topLevelItem(0).text(3)


def test_theme_and_text_size_can_be_fixed(user: Driver):
    light = user.window.palette().window().color()
    user.appearance.set_theme("dark")
    assert user.window.palette().window().color().lightness() < light.lightness()
    height = user.window.fontMetrics().height()
    user.do("action_larger")
    assert user.window.fontMetrics().height() > height
    user.do("action_normal")
    assert user.window.fontMetrics().height() == height
    user.appearance.set_theme("light")


def test_a_fault_in_the_pool_is_shown(user: Driver):
    def fail(progress: object) -> None:
        raise RuntimeError("made to fail")

    user.jobs.start("a test", fail, print)
    user.wait_until(lambda: bool(_notes(user)))
    user.jobs.start("a test", fail, print)
    user.settle()
    (note,) = _notes(user)
    assert "made to fail" in note.toPlainText()
    note.window().close()


def _notes(user: Driver):
    return [b for b in user.window.findChildren(QTextBrowser, "failure") if b.isVisible()]


def test_a_study_is_saved_and_opened_through_file_dialogs(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    user.do("action_save_copy")
    user.choose_file(tmp_path / "copy.samepart")
    assert (tmp_path / "copy.samepart").is_file()
    assert user.session.is_untitled
    user.do("action_new")
    assert user.study.logs == ()
    user.do("action_open")
    user.choose_file(tmp_path / "copy.samepart")
    assert [m.name for m in user.study.machines] == ["Alder"]
    assert user.session.path == tmp_path / "copy.samepart"


def test_a_folder_in_which_saving_failed_is_not_offered_again(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    good = tmp_path / "good"
    good.mkdir()
    for folder in (good, tmp_path / "gone"):
        user.do("action_save_copy")
        user.choose_file(folder / "copy.samepart")
    assert (good / "copy.samepart").is_file()
    user.do("action_save_copy")
    dialog = next(d for d in user.window.findChildren(QFileDialog, "file_dialog") if d.isVisible())
    assert Path(dialog.directory().path()) == good
    dialog.close()


def test_keys_cautions_and_about_open_and_close(user: Driver):
    for name, word in (("keys", "undo"), ("cautions", "plug-in meters"), ("about", "Samepart")):
        user.do(f"action_{name}")
        note = next(b for b in user.window.findChildren(QTextBrowser, "note") if b.isVisible())
        assert word in note.toPlainText()
        assert "{version}" not in note.toPlainText()
        note.window().close()


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_forty_edits_are_undone_and_done_again_under_either_page(qtbot, tmp_path: Path, seed: int):
    """The bytes of these logs are not in the study: the window has to live with that as well."""
    random = Random(seed)
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "alder.csv"))
        start = user.study
        for i in range(40):
            user.session.apply(random_edit(user.study, random))
            user.session.seal()
            if i % 10 == 0:
                user.window.show_page(random.choice(["Logs", "Compare"]))
                user.settle()
        user.settle()
        end = user.study
        while user.study != start:
            user.session.undo()
        user.settle()
        assert user.study == start
        assert user.lane().content is not None
        for _ in range(40):
            user.session.redo()
        user.settle()
        assert user.study == end
    with opened(qtbot, tmp_path) as user:
        assert user.study == end


def test_the_demo_opens_with_its_part_its_bed_and_its_two_meters(user: Driver):
    user.do("action_demo")
    assert user.study.invented
    assert (user.study.part, user.study.bed_c) == ("hose clip", 60.0)
    assert sorted(m.name for m in user.study.machines) == ["Alder", "Birch", "Cedar", "Hazel", "Rowan"]
    meters = {user.study.meter(log.meter_id).name for log in user.study.logs}
    assert meters == {"Meter 1", "Meter 2"}
    assert all(meter.stated for meter in user.study.meters)
    assert user.window.page is not None
    assert user.window.page.title == "Compare"
    user.do("action_new")
    user.do("action_demo")
    assert user.window.page.title == "Compare"


def test_a_selected_typed_reading_stays_selected_after_an_edit(user: Driver):
    study = edits.add_machine(user.study, "Alder").study
    user.session.apply(edits.add_typed(study, study.machines[0].id, 20.0))
    typed = user.study.typed[0].id
    user.session.select(typed)
    user.session.apply(edits.rename_part(user.study, "clip"))
    assert user.session.selected == typed
    user.session.apply(edits.remove_typed(user.study, typed))
    assert user.session.selected is None


def test_logs_dropped_one_after_another_give_the_answer_of_both_at_once(qtbot, tmp_path: Path):
    first, second = write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", runs=1, seed=2)
    kinds = []
    for place, drops in enumerate((((first,), (second,)), ((first, second),))):
        with opened(qtbot, tmp_path / str(place)) as user:
            for paths in drops:
                user.drop(*paths)
            kinds.append([(run.found_kind, run.found_part, run.found_why) for run in user.study.runs])
    assert kinds[0] == kinds[1]


def test_while_the_first_logs_are_read_the_window_says_so(user: Driver, tmp_path: Path):
    logs = [write_log(tmp_path / f"m{i}.csv", seed=i) for i in range(6)]
    user.window.add_paths(logs)
    user.wait_until(lambda: user.text("welcome_title").startswith("Reading"))
    assert not user.window.findChild(QPushButton, "welcome_demo").isVisible()
    user.jobs.cancel("read files")
    user.wait_until(lambda: user.text("welcome_title").startswith("Drop"))
    assert user.window.findChild(QPushButton, "welcome_demo").isVisible()
    assert user.study.logs == ()


def test_what_runs_without_a_word_is_not_shown(user: Driver):
    strip = user.window.findChild(ProgressStrip)
    strip.tell(Report("a", 0.5, ""))
    strip.tell(Report("b", 0.5, "reading"))
    strip.show()
    strip.end("a")
    assert strip.isVisible()
    strip.end("b")
    assert not strip.isVisible()
