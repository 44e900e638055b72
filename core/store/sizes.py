"""How long the logs are that a study file keeps, without unpacking them."""

from pathlib import Path

from core.store.connecting import FAILURES, briefly


def kept_sizes(path: Path) -> dict[str, int]:
    """Lengths of the kept logs by the SHA-256 of their bytes; from any thread. [bytes]

    Nothing is told of a file that cannot be read: whoever then wants the bytes hears why.
    """
    try:
        with briefly(path, read_only=True) as connection:
            rows = connection.execute("SELECT digest, size FROM blobs").fetchall()
    except FAILURES:
        return {}
    return {str(digest): size for digest, size in rows if type(size) is int}
