"""Whoever waits for a long log sees a sign of life, in their own thread, and can cancel."""

import threading
import time
from pathlib import Path

import numpy as np
import pytest

from core.logs import read_path
from core.logs.beside import BEAT_S, reporting
from core.progress import Cancelled, Progress
from tests.core.logs.corpus import load, plain


def test_a_step_that_reports_nothing_is_reported_for() -> None:
    calls: list[float] = []
    threads: set[int] = set()
    enough = threading.Event()

    def watch(fraction: float, text: str) -> None:
        calls.append(time.monotonic())
        threads.add(threading.get_ident())
        if len(calls) >= 8:
            enough.set()

    def work(told: Progress) -> str:
        told(0.5, "sorting")
        assert enough.wait(10)
        return "sorted"

    assert reporting(work, watch, "opening") == "sorted"
    assert threads == {threading.get_ident()}
    assert float(np.median(np.diff(calls))) < 2 * BEAT_S


def test_cancelling_does_not_wait_for_the_step_and_ends_the_work() -> None:
    go_on, ended = threading.Event(), threading.Event()
    reached: list[str] = []

    def work(told: Progress) -> None:
        try:
            go_on.wait(10)
            told(0.6, "summing")
            reached.append("after the report")
        finally:
            ended.set()

    def stop(fraction: float, text: str) -> None:
        raise Cancelled

    started = time.monotonic()
    with pytest.raises(Cancelled):
        reporting(work, stop, "opening")
    assert time.monotonic() - started < 0.5
    go_on.set()
    assert ended.wait(10)
    assert not reached
    for thread in threading.enumerate():
        if thread.name == "reading":
            thread.join()


def test_what_goes_wrong_in_the_work_is_raised_to_the_caller() -> None:
    def work(told: Progress) -> None:
        raise ValueError("odd")

    with pytest.raises(ValueError, match="odd"):
        reporting(work, lambda fraction, text: None, "opening")


@pytest.mark.parametrize("name", ["log.csv", "log.csv.gz"])
def test_reading_reports_in_the_thread_of_the_caller(name: str, tmp_path: Path) -> None:
    import gzip

    path = tmp_path / name
    text = plain(load(rows=20_000, step_s=1.0)).encode()
    path.write_bytes(gzip.compress(text, 0) if name.endswith("gz") else text)
    seen: list[tuple[float, int]] = []
    found = read_path(path, progress=lambda fraction, text: seen.append((fraction, threading.get_ident())))
    assert found.readings
    assert {thread for _, thread in seen} == {threading.get_ident()}
    assert [f for f, _ in seen] == sorted(f for f, _ in seen)
    assert seen[-1][0] == 1.0
