"""The study file: one SQLite database with the history of a study and the raw logs it was made from.

Rules: one edit is one transaction; nothing that was there is changed before a file has been read whole; bad
files and full disks are answered as `Problem`, and only a programmer's mistake is raised.
"""

import os
import sqlite3
import uuid
from collections.abc import Collection
from contextlib import closing
from pathlib import Path
from types import TracebackType

from core import edits
from core.history import History
from core.problems import Problem, Severity
from core.progress import Progress, silent
from core.store import blobs
from core.store.checking import (
    check_tables,
    problem_before_opening,
    problem_of,
    problem_of_os,
    problem_of_version,
)
from core.store.connecting import FAILURES, briefly, connect, transaction
from core.store.copying import copy_database, put_in_place, unfinished_path
from core.store.locking import Lock, acquire, acquire_or_say
from core.store.migrations import migrate
from core.store.schema import APPLICATION_ID, CURRENT, Schema
from core.store.steps import Steps
from core.store.values import UnknownField, Unreadable
from core.study import Study


class StudyFile:
    """A study file that is open; made by `create` and `open`, not by hand.

    All methods belong to the thread that opened it, except `add_blob`, `grow_blob` and `blob`, which any
    thread may call.

    Attributes
    ----------
    path : Path
    read_only : bool
        Whether the file can only be looked at; `problem` then says why.
    problem : Problem or None
        What there is to say about how it was opened.
    history : History
        The history as it was last handed to `write`, or as it was read.
    """

    def __init__(
        self,
        path: Path,
        connection: sqlite3.Connection,
        steps: Steps,
        history: History,
        lock: Lock | None,
        problem: Problem | None,
    ) -> None:
        self.path = path
        self.read_only = lock is None
        self.problem = problem
        self.history = history
        self._stored = history
        self._connection = connection
        self._steps = steps
        self._lock = lock

    @classmethod
    def create(cls, path: Path, history: History | None = None) -> "StudyFile | Problem":
        """Make a new file, which appears under its name only when it is complete.

        Parameters
        ----------
        path : Path
            A name that is free.
        history : History, optional
            What to put into it; an empty untitled study if None.

        Returns
        -------
        StudyFile or Problem
        """
        path = Path(os.path.realpath(path))
        if history is None:
            history = History.start(edits.new_study(uuid.uuid4().hex))
        try:
            lock = acquire(path)
        except OSError as error:
            return problem_of_os(error, path)
        if lock is None or path.exists():
            if lock is not None:
                lock.release()
            return Problem("store.exists", Severity.ERROR, str(path))
        try:
            _build(path, history)
            connection = connect(path)
            steps = Steps(connection)
            return cls(path, connection, steps, steps.read(), lock, None)
        except (*FAILURES, OSError) as error:
            lock.release()
            return _problem(error, path)
        except BaseException:
            lock.release()
            raise

    @classmethod
    def open(cls, path: Path, schema: Schema = CURRENT) -> "StudyFile | Problem":
        """Open a file, bringing an older one up to date and sweeping out logs that no step refers to.

        Opened for reading only, with a `problem`, where another has it open or nothing can be written.

        Parameters
        ----------
        path : Path
        schema : Schema
            What this version of the program knows.

        Returns
        -------
        StudyFile or Problem
            A problem for what is no study, is damaged or newer; such a file is left exactly as it is.
        """
        path = Path(os.path.realpath(path))
        refused = problem_before_opening(path, schema)
        if refused is not None:
            return refused
        lock, problem = acquire_or_say(path)
        connection: sqlite3.Connection | None = None
        opened: StudyFile | Problem | None = None
        try:
            connection = connect(path, read_only=lock is None)
            opened = cls._read(path, connection, lock, problem, schema)
        except (*FAILURES, OSError, Unreadable) as error:
            opened = _problem(error, path)
        finally:
            if not isinstance(opened, StudyFile):
                if connection is not None:
                    connection.close()
                if lock is not None:
                    lock.release()
        return opened

    @classmethod
    def _read(
        cls,
        path: Path,
        connection: sqlite3.Connection,
        lock: Lock | None,
        problem: Problem | None,
        schema: Schema,
    ) -> "StudyFile | Problem":
        # Asked again here: a journal that a killed process left has been played back by now.
        version = _number(connection, "user_version")
        refused = problem_of_version(path, _number(connection, "application_id"), version, schema)
        if refused is not None:
            return refused
        if version < schema.version:
            if lock is None:
                return Problem("store.old_read_only", Severity.ERROR, str(path), facts={"version": version})
            backup = migrate(connection, path, schema.version, schema.migrations)
            facts = {"version": version, "backup": backup.name}
            problem = Problem("store.migrated", Severity.NOTE, str(path), facts=facts)
        check_tables(connection, schema)
        steps = Steps(connection)
        history = steps.read()
        if lock is not None:
            _sweep(connection, steps.used, history)
        return cls(path, connection, steps, history, lock, problem)

    def write(self, old: History, new: History) -> Problem | None:
        """Save the way from one history to the next, in one transaction.

        Parameters
        ----------
        old : History
            The `history` of this file: a guard against saving what belongs to another file.
        new : History
            Every log it refers to has been added with `add_blob`.

        Returns
        -------
        Problem or None
            What went wrong; the file then still holds what it held, and the next `write` saves this step too.

        Raises
        ------
        ValueError
            If `old` is not the history of this file, or the file is read-only.
        """
        if old is not self.history:
            raise ValueError("this is not the history of this file")
        if self.read_only:
            raise ValueError(f"{self.path.name} is open for reading only")
        self.history = new
        if _has_same_steps(self._stored, new):
            self._stored = new
            return None
        try:
            with transaction(self._connection):
                first = self._steps.write(self._stored, new)
        except FAILURES as error:
            self._steps.forget()
            return problem_of(error, self.path)
        except BaseException:
            self._steps.forget()
            self.history = old
            raise
        self._steps.settle(first, new)
        self._stored = new
        return None

    @property
    def is_saved(self) -> bool:
        """Whether the file holds `history`, with nothing still to be written."""
        return self._stored is self.history

    def add_blob(self, data: bytes | memoryview, progress: Progress = silent) -> str | Problem:
        """Keep the bytes of a log in the file; from any thread.

        Parameters
        ----------
        data : bytes or memoryview
        progress : Progress
            May raise `Cancelled`; what is in the file by then is swept out when it is next opened.

        Returns
        -------
        str or Problem
            SHA-256 of the bytes in hexadecimal, or why they cannot be kept.

        Raises
        ------
        ValueError
            If the file is read-only.
        """
        if self.read_only:
            raise ValueError(f"{self.path.name} is open for reading only")
        try:
            with briefly(self.path) as connection:
                return blobs.add(connection, data, progress)
        except FAILURES as error:
            return problem_of(error, self.path)

    def grow_blob(self, before: str, fresh: bytes, digest: str) -> str | Problem:
        """Keep the bytes of a log that has grown, and what it was before only once; from any thread.

        Parameters
        ----------
        before : str
            SHA-256 of what it was before, in hexadecimal; must be in the file.
        fresh : bytes
            What was added.
        digest : str
            SHA-256 of all of it.

        Returns
        -------
        str or Problem
            `digest`, or why the bytes cannot be kept.

        Raises
        ------
        ValueError
            If the file is read-only.
        """
        if self.read_only:
            raise ValueError(f"{self.path.name} is open for reading only")
        facts = {"digest": before[:12]}
        try:
            with briefly(self.path) as connection:
                is_there = blobs.extend(connection, before, fresh, digest)
        except blobs.Damaged:
            return Problem("store.blob_damaged", Severity.ERROR, str(self.path), facts=facts)
        except FAILURES as error:
            return problem_of(error, self.path)
        return (
            digest if is_there else Problem("store.blob_missing", Severity.ERROR, str(self.path), facts=facts)
        )

    def blob(self, digest: str) -> bytes | Problem:
        """The bytes of a log by their SHA-256, or why they cannot be had; from any thread."""
        facts = {"digest": digest[:12]}
        try:
            with briefly(self.path, read_only=True) as connection:
                data = blobs.get(connection, digest)
        except blobs.Damaged:
            return Problem("store.blob_damaged", Severity.ERROR, str(self.path), facts=facts)
        except FAILURES as error:
            return problem_of(error, self.path)
        if data is None:
            return Problem("store.blob_missing", Severity.ERROR, str(self.path), facts=facts)
        return data

    def save_copy(self, path: Path, progress: Progress = silent) -> Problem | None:
        """Write a copy with all logs and all steps under another name, replacing what is there.

        Parameters
        ----------
        path : Path
        progress : Progress
            May raise `Cancelled`; what was at `path` is then still there.

        Returns
        -------
        Problem or None
        """
        path = Path(os.path.realpath(path))
        if path == self.path:
            return Problem("store.same_file", Severity.ERROR, str(path))
        try:
            lock = acquire(path)
        except OSError as error:
            return problem_of_os(error, path)
        if lock is None:
            return Problem("store.busy", Severity.ERROR, str(path))
        try:
            copy_database(self._connection, path, progress)
        except (*FAILURES, OSError) as error:
            return _problem(error, path)
        finally:
            lock.release()
        return None

    def close(self) -> None:
        """Close the file and let others write it. Closing twice does nothing."""
        self._connection.close()
        if self._lock is not None:
            self._lock.release()

    def __enter__(self) -> "StudyFile":
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()


def _build(path: Path, history: History) -> None:
    unfinished = unfinished_path(path)
    try:
        with closing(sqlite3.connect(unfinished, isolation_level=None)) as connection:
            # Must come before the first table: room that swept logs leave is given back to the disk.
            connection.execute("PRAGMA auto_vacuum = INCREMENTAL")
            with transaction(connection):
                connection.execute(f"PRAGMA application_id = {APPLICATION_ID:d}")
                connection.execute(f"PRAGMA user_version = {CURRENT.version:d}")
                for statement in CURRENT.tables.values():
                    connection.execute(statement)
                Steps(connection).write(None, history)
        put_in_place(unfinished, path)
    finally:
        unfinished.unlink(missing_ok=True)


def _sweep(connection: sqlite3.Connection, used: Collection[int], history: History) -> None:
    digests = {s.digest for study in _studies(history) for log in study.logs for s in log.sources}
    with transaction(connection):
        pieces = {row[0] for row in connection.execute("SELECT id FROM pieces")}
        gone = [(piece,) for piece in pieces.difference(used)]
        connection.executemany("DELETE FROM pieces WHERE id = ?", gone)
        freed = blobs.sweep(connection, digests)
    if freed:
        connection.execute("PRAGMA incremental_vacuum").fetchall()


def _has_same_steps(a: History, b: History) -> bool:
    return (
        len(a.past) == len(b.past)
        and len(a.future) == len(b.future)
        and all(one is other for one, other in zip(a.steps, b.steps, strict=True))
    )


def _studies(history: History) -> list[Study]:
    return [step.study for step in history.steps]


def _number(connection: sqlite3.Connection, pragma: str) -> int:
    return int(connection.execute(f"PRAGMA {pragma}").fetchone()[0])


def _problem(error: Exception, path: Path) -> Problem:
    if isinstance(error, FAILURES):
        return problem_of(error, path)
    if isinstance(error, OSError):
        return problem_of_os(error, path)
    code = "store.newer_field" if isinstance(error, UnknownField) else "store.damaged"
    return Problem(code, Severity.ERROR, str(path), facts={"what": str(error)})
