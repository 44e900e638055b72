"""What is around a log: compressed files, archives, spreadsheets, column stores, JSON, a database.

Rules: nothing in a file is ever run or fetched; what is unpacked is limited in size and in ratio, so
that a small file cannot fill the memory.
"""

from attrs import evolve

from core.language import later, mark
from core.logs import (
    archives,
    json_logs,
    listed,
    objects_in_lines,
    pairs,
    sections,
    sheets,
    stores,
    turned,
    web_tables,
    xml_logs,
)
from core.logs.unpacked import Item
from core.problems import Problem

#: how texts that are no tables are known by their first lines
_OTHER_TEXTS = (objects_in_lines.are_objects_in_lines, listed.is_listed, pairs.is_made_of_pairs)


def open_container(
    data: bytes, name: str, depth: int = 0, encoding: str | None = None
) -> list[Item] | Problem:
    """The logs inside a file; a problem when it is packed in a way that cannot be used.

    Parameters
    ----------
    data : bytes
    name : str
        The file, for problems.
    depth : int
        Archives around it.
    encoding : str or None
        Of a text, where the user has chosen one.
    """
    if data.startswith(b"\x1f\x8b"):
        return archives.open_gzip(data, name, depth, open_container)
    if data.startswith((b"BZh", b"\xfd7zXZ")):
        return archives.open_packed(data, name, depth, open_container)
    if data.startswith(b"PK\x03\x04"):
        return (
            sheets.open_sheet(data, name)
            if sheets.is_zipped_sheet(data)
            else archives.open_zip(data, name, depth, open_container)
        )
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        return sheets.open_sheet(data, name)
    if data.startswith((b"PAR1", b"ARROW1")) or stores.is_arrow_stream(data):
        return stores.open_columns(data, name)
    if data.startswith(b"SQLite format 3\x00"):
        return stores.open_database(data, name)
    if web_tables.are_web_tables(data, name) and (tables := web_tables.open_web_tables(data, name)):
        return tables
    if xml_logs.is_xml(data) and (rows := xml_logs.open_xml(data, name)):
        return rows
    head = data[:4096].lstrip(b"\xef\xbb\xbf \t\r\n")
    if head.startswith((b"{", b"[{", b"[ {", b"[\n", b"[\r", b"[[")) or (
        head.startswith(b"[") and b"{" in head
    ):
        return json_logs.open_json(data, name)
    if objects_in_lines.are_objects_in_lines(data):
        return objects_in_lines.open_objects(data, name, encoding)
    if listed.is_listed(data):
        return listed.open_listed(data, name, encoding)
    if pairs.is_made_of_pairs(data):
        return pairs.open_pairs(data, name, encoding)
    lying = _lying(data, name, encoding)
    if lying is not None:
        return [lying]
    parts = sections.of_text(data)
    return [
        Item(p.content, p.title, reasons=(sections.REASON,), lines_before=p.lines_before) for p in parts
    ] or [Item(data)]


def _lying(data: bytes, name: str, encoding: str | None) -> Item | None:
    """The table of a text with a row for each quantity; None where it is none."""
    found = turned.rows_of_lying(data, name, encoding)
    item = None if found is None else sheets.item_of(found[0], "", "a row for each quantity")
    if found is None or item is None:
        return None
    told_by = later(mark("{encoding}: {why}"), encoding=found[1].encoding, why=found[1].reason)
    return evolve(
        item, encoding=found[1].encoding, header_row=None, problems=found[1].problems,
        reasons=(("encoding", told_by), *item.reasons),
    )  # fmt: skip


def is_text(head: bytes) -> bool:
    """Whether a file with this beginning is a text log with a cell for each column, and no container."""
    magic = (
        b"\x1f\x8b",
        b"BZh",
        b"\xfd7zXZ",
        b"PK\x03\x04",
        b"\xd0\xcf\x11\xe0",
        b"PAR1",
        b"ARROW1",
        b"\xff\xff\xff\xff",
        b"SQLite format 3",
    )
    is_bare = not head.startswith(magic) and head.lstrip()[:1] not in (b"{", b"[", b"<")
    return is_bare and not any(is_other(head) for is_other in _OTHER_TEXTS)
