"""The bytes of logs inside the study file."""

import hashlib
import os
import threading
import tracemalloc
import zlib
from contextlib import closing
from pathlib import Path
from random import Random

import pytest
from attrs import evolve

from core import edits
from core.problems import Problem
from core.progress import Cancelled
from core.store import blobs
from core.store.connecting import connect
from core.store.file import StudyFile
from tests.core.store.files import add_logs, dump, is_sound, opened
from tests.random_edits import raw_log


class TestBlobs:
    def test_bytes_come_back_under_their_digest(self, file: StudyFile):
        for data in (b"", b"x", raw_log(1), os.urandom(100_000)):
            digest = file.add_blob(data)
            assert isinstance(digest, str)
            assert len(digest) == 64
            assert file.blob(digest) == data

    def test_long_logs_are_kept_in_parts_with_progress(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 1000)
        seen: list[float] = []
        digest = file.add_blob(b"0123456789" * 450, lambda fraction, text: seen.append(fraction))
        assert len(dump(path)["blob_parts"]) == 5
        assert seen == [0.2, 0.4, 0.6, 0.8, 1.0]
        assert file.blob(str(digest)) == b"0123456789" * 450

    def test_the_same_bytes_are_kept_once(self, path: Path, file: StudyFile):
        assert file.add_blob(raw_log(2)) == file.add_blob(raw_log(2))
        assert len(dump(path)["blobs"]) == 1

    def test_cancelled_log_is_not_there_and_is_swept_out(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 100)

        def cancel(fraction: float, text: str) -> None:
            if fraction > 0.5:
                raise Cancelled

        with pytest.raises(Cancelled):
            file.add_blob(raw_log(3), cancel)
        assert dump(path)["blobs"] == []
        assert dump(path)["blob_parts"] != []
        file.close()
        with opened(path):
            assert dump(path)["blob_parts"] == []

    def test_only_logs_that_no_step_refers_to_are_swept_out(self, path: Path, file: StudyFile):
        add_logs(file, Random(1), [1])
        file.write(file.history, file.history.undo())
        orphan = file.add_blob(b"an orphan")
        kept = {row[0] for row in dump(path)["blobs"]} - {orphan}
        file.close()
        with opened(path) as again:
            assert {row[0] for row in dump(path)["blobs"]} == kept
            again.write(again.history, again.history.redo())
            (log,) = again.history.study.logs
            assert again.blob(log.sources[0].digest) == raw_log(1)

    def test_a_log_that_grows_is_kept_once(self, path: Path, file: StudyFile, monkeypatch):
        monkeypatch.setattr(blobs, "PART_BYTES", 4000)
        random = Random(3)
        whole = random.randbytes(1000)
        digest = str(file.add_blob(whole))
        for _ in range(200):
            fresh = random.randbytes(random.choice((20, 60, 100)))
            whole += fresh
            before, digest = digest, hashlib.sha256(whole).hexdigest()
            assert file.grow_blob(before, fresh, digest) == digest
            assert file.grow_blob(before, fresh, digest) == digest
        assert file.blob(digest) == whole
        packed = sum(len(row[2]) for row in dump(path)["blob_parts"])
        assert packed < 8 * len(whole)
        assert {row[0]: row[2] for row in dump(path)["blobs"]}[digest] <= 12

    def test_what_a_grown_log_shares_outlives_what_it_was_before(self, path: Path, file: StudyFile):
        whole, fresh = raw_log(1), b"more of it\n"
        add_logs(file, Random(1), [1])
        (log,) = file.history.study.logs
        before = log.sources[0].digest
        now = hashlib.sha256(whole + fresh).hexdigest()
        assert file.grow_blob(before, fresh, now) == now
        sources = (evolve(log.sources[0], digest=now),)
        study = evolve(file.history.study, logs=(evolve(log, sources=sources),))
        grown = file.history.apply(edits.Edit(study, "Read on"))
        only = evolve(grown, past=(), future=())
        assert file.write(file.history, only) is None
        file.close()
        with opened(path) as again:
            assert {row[0] for row in dump(path)["blobs"]} == {now}
            assert again.blob(now) == whole + fresh
            assert is_sound(path)

    def test_a_log_grows_only_from_what_is_there(self, file: StudyFile):
        problem = file.grow_blob("0" * 64, b"more", "1" * 64)
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_missing"

    def test_missing_log_is_a_problem(self, file: StudyFile):
        problem = file.blob("0" * 64)
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_missing"

    @pytest.mark.parametrize(
        "damage",
        [
            "UPDATE blob_parts SET packed = x'00'",
            "UPDATE blob_parts SET packed = 'text'",
            "UPDATE blob_parts SET packed = substr(packed, 1, length(packed) - 9)",
            "UPDATE blobs SET parts = 2",
            "UPDATE blobs SET parts = 0",
            "UPDATE blobs SET parts = 'many'",
            "DELETE FROM blob_parts",
        ],
    )
    def test_damaged_log_is_a_problem(self, path: Path, file: StudyFile, damage: str):
        digest = file.add_blob(raw_log(4))
        with closing(connect(path)) as connection:
            connection.execute(damage)
        problem = file.blob(str(digest))
        assert isinstance(problem, Problem)
        assert problem.code == "store.blob_damaged"

    def test_a_part_that_unpacks_to_far_too_much_is_refused(self, path: Path, file: StudyFile):
        digest = str(file.add_blob(raw_log(4)))
        with closing(connect(path)) as connection:
            bomb = zlib.compress(bytes(20 * blobs.PART_BYTES))
            connection.execute("UPDATE blob_parts SET packed = ?", (bomb,))
        tracemalloc.start()
        problem = file.blob(digest)
        peak = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
        assert isinstance(problem, Problem)
        assert peak < 3 * blobs.PART_BYTES

    def test_any_thread_may_keep_and_fetch_logs(self, file: StudyFile):
        answers: dict[int, object] = {}

        def work(number: int) -> None:
            answers[number] = file.blob(str(file.add_blob(raw_log(number))))

        threads = [threading.Thread(target=work, args=(number,)) for number in range(4)]
        for thread in threads:
            thread.start()
        for number in range(20):
            edit = edits.rename_part(file.history.study, f"part {number}")
            assert file.write(file.history, file.history.apply(edit)) is None
        for thread in threads:
            thread.join()
        assert answers == {number: raw_log(number) for number in range(4)}
