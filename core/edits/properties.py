"""Edits of what the user knows of the machines: cells of the table of properties, and its columns."""

from collections.abc import Sequence

from attrs import evolve, frozen

from core.edits.edit import Edit, checked_name, checked_number, found
from core.language import tr
from core.properties.table import Value, columns_of, is_of_bed, kind_of
from core.study import Machine, PropertyColumn, PropertyKind, Study


@frozen
class NewCell:
    """What a cell is to hold; None empties it."""

    machine_id: str
    name: str
    value: Value | None


def set_property(study: Study, machine_id: str, key: str, value: Value | None) -> Edit:
    """Note a property of a machine, such as its bed's area; None takes it away.

    Parameters
    ----------
    study : Study
    machine_id : str
    key : str
        Name of the property, the user's own.
    value : str, float, bool or None
        A whole number is kept as a float.

    Raises
    ------
    ValueError
        If there is no such machine, or the value is of another kind than the column the user added for it.
    """
    machine = found(study.machines, machine_id, "machine")
    key = checked_name(key)
    changed = _with(machine, key, value, study)
    label = tr("Set {key} of {name}", key=key, name=machine.name)
    return Edit(
        _with_machines(study, {machine_id: changed}),
        label,
        f"property {machine_id} {key}",
    )


def fill_properties(study: Study, cells: Sequence[NewCell], new: Sequence[PropertyColumn] = ()) -> Edit:
    """Fill many cells at once, as when a table is pasted, with columns that are new.

    Raises
    ------
    ValueError
        If a machine is not there, a new column is there already, or a value is of another kind.
    """
    for column in new:
        study = add_property_column(study, column.name, column.kind).study
    machines = {m.id: m for m in study.machines}
    for cell in cells:
        machine = found(machines.values(), cell.machine_id, "machine")
        machines[machine.id] = _with(machine, checked_name(cell.name), cell.value, study)
    return Edit(
        _with_machines(study, machines), tr("Fill {cells:cell|cells} of the properties", cells=len(cells))
    )


def add_property_column(study: Study, name: str, kind: PropertyKind) -> Edit:
    """Add a column to the table of properties.

    Raises
    ------
    ValueError
        If there is a column of this name.
    """
    name = checked_name(name)
    _check_free(study, name)
    columns = (*study.property_columns, PropertyColumn(name, kind))
    return Edit(evolve(study, property_columns=columns), tr("Add the column {name}", name=name))


def rename_property_column(study: Study, name: str, to: str) -> Edit:
    """Give a column another name; what stands in it stays.

    Raises
    ------
    ValueError
        If there is no such column of the user's own, or one that has the new name.
    """
    to = checked_name(to)
    _own(study, name)
    if to != name:
        _check_free(study, to)
    columns = tuple(evolve(c, name=to) if c.name == name else c for c in study.property_columns)
    machines = tuple(
        evolve(m, properties=tuple((to if key == name else key, value) for key, value in m.properties))
        for m in study.machines
    )
    renamed = evolve(study, property_columns=columns, machines=machines)
    return Edit(renamed, tr("Rename the column {name}", name=name))


def remove_property_column(study: Study, name: str) -> Edit:
    """Take a column away with everything that stands in it.

    Raises
    ------
    ValueError
        If there is no such column of the user's own.
    """
    _own(study, name)
    columns = tuple(c for c in study.property_columns if c.name != name)
    machines = tuple(
        evolve(m, properties=tuple((key, value) for key, value in m.properties if key != name))
        for m in study.machines
    )
    return Edit(
        evolve(study, property_columns=columns, machines=machines), tr("Remove the column {name}", name=name)
    )


def _with(machine: Machine, key: str, value: Value | None, study: Study) -> Machine:
    if isinstance(value, int | float) and not isinstance(value, bool):
        value = checked_number(value, key)
    column = next((c for c in study.property_columns if c.name == key), None)
    if value is not None and column is not None and column.kind != kind_of(value):
        raise ValueError(f"the column {key!r} holds {column.kind}, and {value!r} is none")
    properties = {name: known for name, known in machine.properties if value is not None or name != key}
    if value is not None:
        properties[key] = value
    return evolve(machine, properties=tuple(properties.items()))


def _with_machines(study: Study, changed: dict[str, Machine]) -> Study:
    return evolve(study, machines=tuple(changed.get(m.id, m) for m in study.machines))


def _own(study: Study, name: str) -> None:
    if is_of_bed(name) or name not in {c.name for c in columns_of(study)}:
        raise ValueError(f"there is no column {name!r} of the user's own")


def _check_free(study: Study, name: str) -> None:
    if name in {c.name for c in columns_of(study)}:
        raise ValueError(f"there is a column {name!r} already")
