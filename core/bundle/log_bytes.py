"""The raw bytes of logs, from the places where they were read."""

import hashlib
from pathlib import Path

from core.logs.files import load
from core.problems import Problem, Severity


def of_file(path: Path, digest: str) -> bytes | Problem:
    """The bytes of a file, if they are still those with this SHA-256."""
    data = load(path, str(path))
    if isinstance(data, bytes) and hashlib.sha256(data).hexdigest() != digest:
        return Problem("session.changed_meanwhile", Severity.ERROR, str(path))
    return data


def of_study_file(path: Path, digest: str) -> bytes | Problem:
    """The bytes that a study file keeps under this SHA-256."""
    from core.store import blobs
    from core.store.connecting import FAILURES, briefly

    facts = {"digest": digest[:12]}
    try:
        with briefly(path, read_only=True) as connection:
            data = blobs.get(connection, digest)
    except (*FAILURES, blobs.Damaged):
        return Problem("store.blob_damaged", Severity.ERROR, str(path), facts=facts)
    return Problem("store.blob_missing", Severity.ERROR, str(path), facts=facts) if data is None else data
