"""The run sheet of a plan: what is to be done in which order, with blanks for what is read meanwhile.

Rules: the file and the printed sheet are made of the same rows. Headings and words of the file are those that
`core.run_sheet` reads back, whatever a spreadsheet has made of delimiter, decimal sign and dates since.
"""

from collections import Counter
from collections.abc import Iterable, Sequence

from attrs import frozen

from core.formatting import POINT, NumberLocale, count, listed, number
from core.plan.cautions import CAUTIONS
from core.plan.order import Turn, at_once_of, machines_of, meetings, meters_of, order_of
from core.plan.values import Plan
from core.study import Boundary, Machine, Meter, Study
from core.tables import Cell, Column, Table, to_csv

#: words of the column that says what a row is
RUN, SAME_LOAD = "run", "same load"
#: lines of the file that are no rows begin with this
REMARK = "#"
_ENDS: dict[Boundary, str] = {
    "warm-up and processing": "as soon as the part is finished",
    "processing only": "as soon as the part is finished (the first reading is at the end of warm-up)",
    "until cooled": "when the machine has cooled down and stands by again",
}


@frozen
class SheetRow:
    """A row of the sheet.

    Parameters
    ----------
    kind : {"run", "same load"}
    label : str
        Number of the run, or name of the check.
    block : int
        0 for a check before the blocks.
    round : int
        0 for a check.
    machine, meter : str
        As the sheet calls them; a check has no machine.
    """

    kind: str
    label: str
    block: int
    round: int
    machine: str
    meter: str


@frozen
class RunSheet:
    """Everything that stands on a run sheet.

    Parameters
    ----------
    title : str
    conditions : tuple of str
        What is alike for all runs.
    steps : tuple of str
        What to do, in order.
    cautions : tuple of str
    rows : tuple of SheetRow
    unit : str
        Of the displays.
    seed : int
    plan : Plan
        With the study's temperatures where it has none of its own.
    has_rounds : bool
        Whether several machines work at once.
    """

    title: str
    conditions: tuple[str, ...]
    steps: tuple[str, ...]
    cautions: tuple[str, ...]
    rows: tuple[SheetRow, ...]
    unit: str
    seed: int
    plan: Plan
    has_rounds: bool


def labels_of(items: Iterable[Machine] | Iterable[Meter]) -> dict[str, str]:
    """What a sheet calls machines or meters, by id: their names, with the id where two have one name."""
    known = [(item.id, " ".join(item.name.split())) for item in items]
    names = Counter(name.casefold() for _, name in known)
    return {id_: name if names[name.casefold()] == 1 else f"{name} [{id_}]" for id_, name in known}


def run_sheet(study: Study, locale: NumberLocale = POINT) -> RunSheet:
    """The run sheet of the study's plan; with no machine it has no rows."""
    plan = stated(study)
    turns = order_of(study)
    machines, meters = labels_of(study.machines), labels_of(study.meters)
    runs = tuple(
        SheetRow(RUN, str(t.number), t.block, t.round, machines[t.machine_id], meters.get(t.meter_id, ""))
        for t in turns
    )
    last = max((t.block for t in turns), default=0) + 1
    checked = [meters[m.id] for m in meters_of(study)] if plan.has_checks and runs else []
    rows = (*_checks(checked, "before", 0), *runs, *_checks(checked, "after", last))
    return RunSheet(
        title=f"Run sheet: {study.part}",
        conditions=tuple(_conditions(study, plan, turns, locale)),
        steps=tuple(_steps(study, plan, len(checked) > 1, locale)),
        cautions=CAUTIONS,
        rows=rows,
        unit=plan.display_unit,
        seed=plan.seed,
        plan=plan,
        has_rounds=at_once_of(study) > 1,
    )


def stated(study: Study) -> Plan:
    """The plan with the temperatures of the study where it states none of its own."""
    from attrs import evolve

    plan = study.plan
    return evolve(
        plan,
        bed_c=study.bed_c if plan.bed_c is None else plan.bed_c,
        room_c=study.room_c if plan.room_c is None else plan.room_c,
    )


def section_of(row: SheetRow, repeats: int) -> str:
    """What stands above the rows that go together with this one."""
    if row.kind == SAME_LOAD:
        return "After the test" if row.block else "Before the test"
    return f"Block {row.block} of {repeats}" if row.block <= repeats else "More runs"


def _checks(meters: Sequence[str], when: str, block: int) -> list[SheetRow]:
    """A row for each meter on the same load; the first is what the others are held against."""
    named = meters if len(meters) > 1 else ()
    return [SheetRow(SAME_LOAD, f"check {when}", block, 0, "", meter) for meter in named]


def _conditions(study: Study, plan: Plan, turns: Sequence[Turn], locale: NumberLocale) -> Iterable[str]:
    yield f"Part: {study.part}." + (f" Material: {plan.material}." if plan.material else "")
    warm = _temperatures(("bed", plan.bed_c), ("nozzle", plan.nozzle_c), locale=locale)
    first = _temperatures(
        ("bed", plan.first_layer_bed_c), ("nozzle", plan.first_layer_nozzle_c), locale=locale
    )
    if warm:
        yield f"Temperatures: {warm}{f'; first layer: {first}' if first else ', the first layer too'}."
    elif first:
        yield f"First layer: {first}."
    if plan.room_c is not None:
        yield f"Room: {_degrees(plan.room_c, locale)}, without draught or sun on a machine."
    yield _start_words(plan, locale)
    machines, meters = machines_of(study), meters_of(study)
    blocks, runs = count(plan.repeats, "block"), count(len(turns), "run")
    yield f"{blocks} of {count(len(machines), 'machine')}, {runs} in all, in the order of seed {plan.seed}."
    if len(meters) > 1 and turns:
        met = meetings(turns)
        times = sorted({met[m.id, k.id] for m in machines for k in meters})
        each = f"{times[0]} times" if len(times) == 1 else f"{times[0]} to {times[-1]} times"
        yield f"{len(meters)} meters go round: each machine is measured with each meter {each}."


def _temperatures(*told: tuple[str, float | None], locale: NumberLocale) -> str:
    return listed([f"{name} {_degrees(value, locale)}" for name, value in told if value is not None])


def _degrees(value_c: float, locale: NumberLocale) -> str:
    return f"{number(value_c, 0 if value_c == round(value_c) else 1, locale)} °C"


def _start_words(plan: Plan, locale: NumberLocale) -> str:
    wait = f"{number(plan.wait_min, 0, locale)} min"
    if plan.start == "warm":
        return (
            f"Warm start: before each run hold bed and nozzle at temperature for {wait}, all machines alike."
        )
    return (
        f"Cold start: before each run the machine has stood switched on, heaters off, for {wait} or longer."
    )


def _steps(study: Study, plan: Plan, has_checks: bool, locale: NumberLocale) -> Iterable[str]:
    yield "Keep to the order: it is shuffled so that room and time of day favour no machine."
    if has_checks:
        yield (
            "Same load: let one steady load (a heater or lamp within the rating of each meter, some 100 W) "
            "run for an hour on each meter in turn, and write down what each has counted."
        )
    yield (
        "Write down the display just before the run is started and again "
        f"{_ENDS[study.boundary]}, every digit of it, with the time and the room's temperature."
    )
    yield "Note what went wrong in the remarks, and make a failed run again at the end of its block."


# the file


def sheet_table(sheet: RunSheet) -> Table:
    """The sheet's rows as a table with the keys of the file."""
    unit = sheet.unit.lower()
    columns = (
        Column("row", "What", "left"),
        Column("run", "Run", "left"),
        Column("block", "Block"),
        Column("round", "Round"),
        Column("machine", "Machine", "left"),
        Column("meter", "Meter", "left"),
        Column("starting_state", "Starting state", "left"),
        Column("bed_c", "Bed [°C]"),
        Column("nozzle_c", "Nozzle [°C]"),
        Column("first_layer_bed_c", "First layer, bed [°C]"),
        Column("first_layer_nozzle_c", "First layer, nozzle [°C]"),
        Column("room_c", "Room [°C]"),
        Column("start", "Start", "left"),
        Column("end", "End", "left"),
        Column(f"display_start_{unit}", f"Display at start [{sheet.unit}]"),
        Column(f"display_end_{unit}", f"Display at end [{sheet.unit}]"),
        Column("energy_wh", "Energy [Wh]"),
        Column("remarks", "Remarks", "left"),
    )
    return Table(sheet.title, columns, tuple(_cells(row, sheet) for row in sheet.rows))


def _cells(row: SheetRow, sheet: RunSheet) -> tuple[Cell, ...]:
    plan, is_run = sheet.plan, row.kind == RUN
    head = (row.kind, row.label, row.block or None, row.round or None, row.machine, row.meter)
    alike = (
        plan.start,
        plan.bed_c,
        plan.nozzle_c,
        plan.first_layer_bed_c,
        plan.first_layer_nozzle_c,
    )
    return (*head, *(alike if is_run else (None,) * len(alike)), *(None,) * 7)


def sheet_csv(sheet: RunSheet) -> str:
    """The sheet as RFC 4180 text, its words beneath the rows as remarks."""
    words = (sheet.title, *sheet.conditions, *sheet.steps, *sheet.cautions)
    lines = (f'"{REMARK} {text.replace(chr(34), chr(34) * 2)}"\r\n' for text in words)
    return to_csv(sheet_table(sheet)) + "".join(lines)


# the table of the order, on screen


def order_table(sheet: RunSheet, most: int | None = None) -> Table:
    """The order for reading: a row a run, the first `most` of them."""
    columns = [
        Column("run", "Run", "left"),
        Column("block", "Block", "left"),
        Column("machine", "Machine", "left"),
        Column("meter", "Meter", "left"),
    ]
    if sheet.has_rounds:
        columns.insert(2, Column("round", "At the same time", "left"))
    rows = []
    for row in sheet.rows[:most]:
        block = "" if row.kind != RUN else _block_words(row.block, sheet.plan.repeats)
        cells = [row.label, block, row.machine or "one steady load", row.meter or "any"]
        if sheet.has_rounds:
            cells.insert(2, f"round {row.round}" if row.round else "")
        rows.append(tuple(cells))
    return Table("Order", tuple(columns), tuple(rows))


def _block_words(block: int, repeats: int) -> str:
    return str(block) if block <= repeats else "after the blocks"
