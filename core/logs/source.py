"""The bytes of a log: all in memory, or on disk and read piece by piece.

Rules: a file is never mapped into memory: one that is cut while it is read would then end the program.
"""

import hashlib
import os
from collections import deque
from collections.abc import Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from io import FileIO
from pathlib import Path
from typing import Protocol

#: bytes that are read and worked on at a time: a block, its columns and their room fit into its own memory
BLOCK = 1 << 21
#: blocks that may be worked on at once
PARSERS = min(8, os.cpu_count() or 1)
#: blocks that may be on their way, so that nobody waits while the digest is behind; all of them fit into the
#: processor's outer memory
AHEAD = 4 * PARSERS
#: bytes whose digest takes about as long as finding out what the columns of a log are
_FIRST = 4 * BLOCK


class Source(Protocol):
    """Bytes that can be read anywhere and in order."""

    @property
    def size(self) -> int:
        """Number of bytes."""

    def piece(self, start: int, count: int) -> bytes:
        """`count` bytes from `start`, fewer at the end."""

    def blocks(self, start: int) -> Iterator[bytes | memoryview]:
        """Everything from `start` on, in blocks that end at a line end.

        A block stays as it is until `AHEAD` + 1 more have been asked for.
        """


class InMemory:
    """A source whose bytes are all there."""

    def __init__(self, data: bytes) -> None:
        self._data = data

    @property
    def size(self) -> int:
        """Number of bytes."""
        return len(self._data)

    def piece(self, start: int, count: int) -> bytes:
        """`count` bytes from `start`, fewer at the end."""
        return self._data[start : start + count]

    def blocks(self, start: int) -> Iterator[bytes | memoryview]:
        """Everything from `start` on, in blocks that end at a line end."""
        data, view = self._data, memoryview(self._data)
        while start < len(data):
            stop = len(data)
            if start + BLOCK < stop:
                cut = data.rfind(b"\n", start, start + BLOCK)
                if cut < 0:
                    cut = data.find(b"\n", start + BLOCK)
                stop = len(data) if cut < 0 else cut + 1
            yield view[start:stop]
            start = stop


class OnDisk:
    """A source that is a file; its digest is taken on the way, in a thread beside the reading.

    Raises `OSError` when the file can no longer be read. With `size` it ends there, whatever is behind it.
    """

    def __init__(self, path: Path, size: int | None = None) -> None:
        self.path = path
        self._size = path.stat().st_size if size is None else size
        self._hash = hashlib.sha256()
        self._pool = ThreadPoolExecutor(1, "digest")
        self._hashed = 0
        self._last: Future[None] | None = None
        self._first = memoryview(b"")
        self._begun: Future[None] | None = None

    def begin(self) -> None:
        """Take in the first bytes beside, while the form of the text is being found out."""
        self._begun = self._pool.submit(self._take_first)

    def _take_first(self) -> None:
        first = self.piece(0, min(_FIRST, self._size))
        self._hash.update(first)
        self._hashed, self._first = len(first), memoryview(first)

    @property
    def size(self) -> int:
        """Number of bytes when it was opened."""
        return self._size

    def piece(self, start: int, count: int) -> bytes:
        """`count` bytes from `start`, fewer at the end."""
        with self.path.open("rb") as stream:
            stream.seek(start)
            return stream.read(max(0, min(count, self._size - start)))

    def blocks(self, start: int) -> Iterator[memoryview]:
        """As above, in a ring of buffers."""
        self._wait_for_first()
        with self.path.open("rb", buffering=0) as stream:
            if start > self._hashed:
                self._hash_beside(memoryview(stream.read(start)), 0)
            stream.seek(start)
            length = min(BLOCK, max(1, self._size - start))
            ring: deque[tuple[bytearray, Future[None] | None]] = deque()
            at, tail, buffer = start, b"", bytearray()
            while at < self._size:
                if not buffer and len(ring) > AHEAD + 1:
                    buffer, hashing = ring.popleft()
                    if hashing is not None:
                        hashing.result()
                if len(buffer) < max(length, 2 * len(tail)):  # twice: a line may be longer than any buffer
                    buffer = bytearray(max(length, 2 * len(tail)))
                view, kept = memoryview(buffer), len(tail)
                view[:kept] = tail
                count = self._read_into(view[kept : kept + self._size - at], stream, at)
                if not count:
                    break
                hashing = self._hash_beside(view[kept : kept + count], at)
                at += count
                filled = kept + count
                cut = filled if at >= self._size else buffer.rfind(b"\n", 0, filled) + 1
                tail = bytes(view[cut:filled])
                if cut:
                    ring.append((buffer, hashing))
                    buffer = bytearray()
                    yield view[:cut]
                elif hashing is not None:  # the same buffer again: the others may still be in use
                    hashing.result()
            if tail:
                yield memoryview(tail)

    def _wait_for_first(self) -> None:
        if self._begun is not None:
            self._begun.result()

    def _read_into(self, room: memoryview, stream: FileIO, at: int) -> int:
        """Fill the room with bytes from `at`, which is where the stream stands; how many they are."""
        first = self._first[at : at + len(room)]
        if not first:
            return stream.readinto(room)
        room[: len(first)] = first
        stream.seek(len(first), os.SEEK_CUR)
        return len(first)

    def _hash_beside(self, data: memoryview, at: int) -> Future[None] | None:
        """Take the digest of what has not been taken yet, in the other thread; None where it has been."""
        if at != self._hashed:
            return None
        self._hashed += len(data)
        self._last = self._pool.submit(self._hash.update, data)
        return self._last

    def digest(self) -> str:
        """SHA-256 of the bytes that were read, in hexadecimal; reads on to the end if need be."""
        self._wait_for_first()
        if self._hashed < self._size:
            for _ in self.blocks(self._hashed):
                pass
        if self._last is not None:
            self._last.result()
        return self._hash.hexdigest()

    def close(self) -> None:
        """Let the thread go."""
        self._pool.shutdown(wait=True, cancel_futures=True)

    def is_unchanged(self) -> bool:
        """Whether the file is as long as when it was opened."""
        try:
            return self.path.stat().st_size == self._size
        except OSError:
            return False


def lines_at(source: Source, wanted: Sequence[int]) -> dict[int, str]:
    """The text (cut) of lines by number from 1, in one pass."""
    out: dict[int, str] = {}
    line = 1
    left = sorted(set(wanted))
    for block in source.blocks(0):
        if not left:
            break
        data = bytes(block)
        count = data.count(b"\n")
        if left[0] > line + count:
            line += count
            continue
        at = 0
        first = line
        while left and left[0] <= first + count:
            while line < left[0]:
                at = data.find(b"\n", at) + 1
                line += 1
            end = data.find(b"\n", at)
            text = data[at : len(data) if end < 0 else end][:300]
            out[left.pop(0)] = text.decode("utf-8", "replace").rstrip("\r")
        line = first + count
    return out
