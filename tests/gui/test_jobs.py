"""Jobs: results arrive in the GUI thread, the newest wins, everything can be cancelled, no fault is lost."""

import threading

import pytest
from PySide6.QtCore import QCoreApplication, QThread

from core.progress import Cancelled
from gui.jobs import Jobs


@pytest.fixture
def jobs(qtbot):
    made = Jobs()
    yield made
    made.close()


def test_a_result_arrives_in_the_gui_thread(jobs, qtbot):
    seen = []
    jobs.start(
        "a",
        lambda progress: threading.current_thread().name,
        lambda name: seen.append((name, QThread.currentThread())),
    )
    qtbot.waitUntil(lambda: bool(seen))
    name, thread = seen[0]
    assert name.startswith("samepart")
    assert thread is QCoreApplication.instance().thread()


def test_only_the_newest_job_of_a_key_is_heard(jobs, qtbot):
    seen, hold = [], threading.Event()

    def slow(progress):
        hold.wait(5)
        return "old"

    jobs.start("a", slow, seen.append)
    jobs.start("a", lambda progress: "new", seen.append)
    hold.set()
    qtbot.waitUntil(lambda: not jobs.running)
    jobs.close()
    QCoreApplication.processEvents()
    assert seen == ["new"]


def test_cancelling_stops_at_the_next_report(jobs, qtbot):
    begun, ended, cancelled = threading.Event(), [], []

    def work(progress):
        begun.set()
        while True:
            progress(0.5, "working")

    jobs.start("a", work, ended.append, lambda: cancelled.append(True))
    assert begun.wait(5)
    jobs.cancel("a")
    qtbot.waitUntil(lambda: bool(cancelled))
    assert ended == []
    assert not jobs.is_running("a")


def test_a_fault_is_always_told_even_if_nobody_waits_for_the_result(jobs, qtbot):
    failures, hold = [], threading.Event()
    jobs.failed.connect(failures.append)

    def fail(progress):
        hold.wait(5)
        raise ValueError("made to fail")

    jobs.start("a", fail, print)
    jobs.start("a", lambda progress: None, lambda result: None)
    hold.set()
    qtbot.waitUntil(lambda: bool(failures))
    assert failures[0].summary == "ValueError: made to fail"
    assert "in fail" in failures[0].details


def test_reports_are_thinned_and_the_first_one_comes_through(jobs, qtbot):
    reports = []
    jobs.progressed.connect(reports.append)
    release = threading.Event()

    def work(progress):
        for i in range(5000):
            progress(i / 5000, "counting")
        release.wait(5)

    jobs.start("a", work, lambda result: None)
    qtbot.waitUntil(lambda: bool(reports))
    release.set()
    qtbot.waitUntil(lambda: not jobs.running)
    assert 1 <= len(reports) < 100


def test_closing_cancels_and_lets_nothing_through(qtbot):
    jobs, seen = Jobs(), []
    begun = threading.Event()

    def work(progress):
        begun.set()
        while True:
            progress(0.1, "working")

    jobs.start("a", work, seen.append)
    jobs.start("b", lambda progress: 1, seen.append)
    assert begun.wait(5)
    jobs.close()
    QCoreApplication.processEvents()
    assert seen == []
    jobs.start("c", lambda progress: 1, seen.append)
    assert jobs.running == ()


def test_a_cancelled_job_is_no_fault(jobs, qtbot):
    failures = []
    jobs.failed.connect(failures.append)

    def stop(progress):
        raise Cancelled

    jobs.start("a", stop, print)
    qtbot.waitUntil(lambda: not jobs.running)
    assert failures == []
