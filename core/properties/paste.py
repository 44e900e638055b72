"""A block of cells from a spreadsheet, taken into the table of properties whole or not at all.

Rules: a block whose first column holds names of machines goes by those names and by its heading row, and may
bring new columns; any other block goes cell by cell to the right and down from where it is pasted. One cell
that cannot be used keeps all of them out, and is named.
"""

import csv
import io
from collections.abc import Sequence

from attrs import frozen

from core.edits.edit import Edit
from core.edits.properties import NewCell, fill_properties
from core.formatting import POINT, NumberLocale
from core.language import mark, tr
from core.properties.table import Column, columns_of, read_cell, why_not_a_column
from core.study import PropertyColumn, PropertyKind, Study

#: more text than this is no table of machines
MOST_LETTERS = 1_000_000


@frozen
class Pasted:
    """The edit that takes the cells in; None with the reason where they cannot be taken."""

    edit: Edit | None
    why_not: str = ""


def paste(study: Study, text: str, row: int, column: int, locale: NumberLocale = POINT) -> Pasted:
    """Take cells in, parted by tabs and ends of lines as spreadsheets copy them.

    Parameters
    ----------
    study : Study
    text : str
    row, column : int
        Cell of the table (machines down, `columns_of` across) where a block without names begins.
    locale : NumberLocale

    Returns
    -------
    Pasted
    """
    if len(text) > MOST_LETTERS:
        return Pasted(None, tr("This is too much text for a table of machines: nothing was pasted."))
    try:
        rows = [
            line for line in csv.reader(io.StringIO(text), delimiter="\t") if any(c.strip() for c in line)
        ]
    except csv.Error as error:
        return Pasted(None, tr("This is no block of cells ({why}): nothing was pasted.", why=error))
    if not rows:
        return Pasted(None, tr("There are no cells to paste: copy some in a spreadsheet first."))
    if _goes_by_names(study, rows):
        return _by_names(study, rows, locale)
    return _from(study, rows, row, column, locale)


def _goes_by_names(study: Study, rows: Sequence[Sequence[str]]) -> bool:
    names = {m.name.casefold() for m in study.machines}
    return len(rows) > 1 and len(rows[0]) > 1 and any(_plain(line[0]) in names for line in rows[1:])


def _by_names(study: Study, rows: Sequence[Sequence[str]], locale: NumberLocale) -> Pasted:
    ids: dict[str, list[str]] = {}
    for machine in study.machines:
        ids.setdefault(machine.name.casefold(), []).append(machine.id)
    lines: list[tuple[str, Sequence[str]]] = []
    for line in rows[1:]:
        found = ids.get(_plain(line[0]), [])
        if len(found) != 1:
            why = (
                mark("“{name}”: two machines are called so, so nothing was pasted.")
                if found
                else mark("“{name}”: no machine is called so, so nothing was pasted.")
            )
            return Pasted(None, tr(why, name=line[0].strip()))
        lines.append((found[0], line))
    known = {said.casefold(): c for c in columns_of(study) for said in (c.name, c.heading)}
    columns: list[Column] = []
    new: list[PropertyColumn] = []
    for place, heading in enumerate(rows[0][1:], start=1):
        name = " ".join(heading.split())
        column = known.get(name.casefold())
        if column is None:
            kind = _kind([line[place] for _, line in lines if place < len(line)], name, locale)
            why_not = why_not_a_column(study, name)
            if why_not or name.casefold() in {c.name.casefold() for c in new}:
                why = why_not or tr("“{name}” is there twice.", name=name)
                return Pasted(None, tr("{why} Nothing was pasted.", why=why))
            column = Column(name, kind)
            new.append(PropertyColumn(name, kind))
        columns.append(column)
    cells = [
        (machine_id, c, text)
        for machine_id, line in lines
        for c, text in zip(columns, line[1:], strict=False)
    ]
    return _taken(study, cells, tuple(new), locale)


def _from(study: Study, rows: Sequence[Sequence[str]], row: int, column: int, locale: NumberLocale) -> Pasted:
    columns, machines = columns_of(study)[column:], study.machines[row:]
    widest = max(len(line) for line in rows)
    if len(rows) > len(machines) or widest > len(columns):
        return Pasted(
            None,
            tr(
                "The block has {rows} × {columns} cells, and from here on the table has "
                "{free_rows} × {free_columns}: begin further up or left, or copy names and headings too.",
                rows=len(rows),
                columns=widest,
                free_rows=len(machines),
                free_columns=len(columns),
            ),
        )
    cells = [
        (machine.id, c, text)
        for machine, line in zip(machines, rows, strict=False)
        for c, text in zip(columns, line, strict=False)
    ]
    return _taken(study, cells, (), locale)


def _taken(
    study: Study,
    cells: Sequence[tuple[str, Column, str]],
    new: tuple[PropertyColumn, ...],
    locale: NumberLocale,
) -> Pasted:
    made: list[NewCell] = []
    for machine_id, column, text in cells:
        read = read_cell(text, column, locale)
        if read.why_not:
            name = study.machine(machine_id).name
            return Pasted(
                None,
                tr(
                    "{machine}, {column}: {why} Nothing was pasted.",
                    machine=name,
                    column=column.heading,
                    why=read.why_not,
                ),
            )
        made.append(NewCell(machine_id, column.name, read.value))
    return Pasted(fill_properties(study, made, new))


def _kind(texts: Sequence[str], name: str, locale: NumberLocale) -> PropertyKind:
    """The narrowest kind that holds every cell of a new column."""
    filled = [text for text in texts if text.strip()]
    kinds: tuple[PropertyKind, ...] = ("yes/no", "number")
    for kind in kinds:
        if filled and not any(read_cell(text, Column(name, kind), locale).why_not for text in filled):
            return kind
    return "words"


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()
