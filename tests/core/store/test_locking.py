"""The lock: only one at a time, whatever the order of opening and closing."""

import threading
from pathlib import Path

from core.store.locking import acquire, lock_path


def test_only_one_has_it(tmp_path: Path):
    path = tmp_path / "a.samepart"
    first = acquire(path)
    assert first is not None
    assert acquire(path) is None
    first.release()
    first.release()
    second = acquire(path)
    assert second is not None
    first.release()
    assert acquire(path) is None
    second.release()
    assert not lock_path(path).exists()


def test_many_at_once_never_have_it_together(tmp_path: Path):
    path = tmp_path / "a.samepart"
    holders: list[int] = []
    most: list[int] = []

    def take(number: int) -> None:
        for _ in range(300):
            lock = acquire(path)
            if lock is not None:
                holders.append(number)
                most.append(len(holders))
                holders.remove(number)
                lock.release()

    threads = [threading.Thread(target=take, args=(number,)) for number in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert most
    assert max(most) == 1
