"""How large the columns of an Arrow file are, said before any of them is unpacked.

A compressed buffer of zeros takes a ten-thousandth of its room, and Arrow unpacks a whole batch at once.
Each buffer begins with its unpacked length, and the message before it (a FlatBuffers table) says where it
lies. Source: Apache Arrow columnar format 1.5, "Serialization and Interprocess Communication", files
Message.fbs and Schema.fbs.
"""

import struct
from typing import Any

_DICTIONARY, _ROWS = 2, 3


def unpacked_bytes(data: bytes, limit: int) -> int:
    """Bytes of all buffers of a stream or file, once unpacked; counting stops above the limit.

    Parameters
    ----------
    data : of the file
    limit : [bytes]

    Returns
    -------
    int

    Raises
    ------
    pyarrow.ArrowException, OSError, ValueError
        Where the file is damaged.
    """
    import pyarrow as pa
    from pyarrow import ipc

    source = pa.py_buffer(data)
    if data.startswith(b"ARROW1"):  # a file is a stream between two marks
        source = source.slice(8)
    size = 0
    for message in ipc.MessageReader.open_stream(pa.BufferReader(source)):
        size += _of_message(message.metadata, message.body)
        if size > limit:
            break
    return size


def _of_message(metadata: Any, body: Any) -> int:
    try:
        return _Message(memoryview(metadata)).unpacked(memoryview(body) if body is not None else b"")
    except struct.error as error:
        raise ValueError(f"a message of it is cut ({error})") from error


class _Message:
    """The few fields of a message that tell sizes."""

    def __init__(self, table: memoryview) -> None:
        self.table = table

    def unpacked(self, body: "memoryview | bytes") -> int:
        root = self._follow(0)
        kind_at, header_at = self._field(root, 1), self._field(root, 2)
        kind = self.table[kind_at] if kind_at else 0
        if kind not in (_DICTIONARY, _ROWS) or not header_at:
            return 0
        rows = self._follow(header_at)
        if kind == _DICTIONARY:
            inner = self._field(rows, 1)
            if not inner:
                return 0
            rows = self._follow(inner)
        buffers, packed = self._field(rows, 2), self._field(rows, 3)
        if not buffers:
            return 0
        vector = self._follow(buffers)
        (count,) = struct.unpack_from("<I", self.table, vector)
        size = 0
        for i in range(count):
            at, length = struct.unpack_from("<qq", self.table, vector + 4 + 16 * i)
            whole = struct.unpack_from("<q", body, at)[0] if packed and length >= 8 else -1
            size += max(whole, length)
        return size

    def _follow(self, at: int) -> int:
        (by,) = struct.unpack_from("<I", self.table, at)
        return at + int(by)

    def _field(self, table: int, number: int) -> int:
        """Where a field of a table lies; 0 where it is left out."""
        (back,) = struct.unpack_from("<i", self.table, table)
        fields = table - int(back)
        (length,) = struct.unpack_from("<H", self.table, fields)
        at = 4 + 2 * number
        (offset,) = struct.unpack_from("<H", self.table, fields + at) if at + 2 <= length else (0,)
        return table + int(offset) if offset else 0
