"""The run sheet of a plan: what is to be done in which order, with blanks for what is read meanwhile.

Rules: the file and the printed sheet are made of the same rows. Headings and words of the file are those that
`core.run_sheet` reads back, whatever a spreadsheet has made of delimiter, decimal sign and dates since.
"""

from collections import Counter
from collections.abc import Iterable, Sequence

from attrs import frozen

from core.formatting import POINT, NumberLocale, listed, number
from core.language import mark, tr
from core.plan.cautions import CAUTIONS
from core.plan.order import Turn, at_once_of, machines_of, meetings, meters_of, order_of
from core.plan.values import Plan
from core.study import Boundary, Machine, Meter, Study
from core.tables import Cell, Column, Table, to_csv

#: words of the column that says what a row is
RUN, SAME_LOAD = "run", "same load"
#: labels of checks
_BEFORE, _AFTER = mark("check before"), mark("check after")
#: lines of the file that are no rows begin with this
REMARK = "#"
_ENDS: dict[Boundary, str] = {
    "warm-up and processing": mark("as soon as the part is finished"),
    "processing only": mark("as soon as the part is finished (the first reading is at the end of warm-up)"),
    "until cooled": mark("when the machine has cooled down and stands by again"),
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

    @property
    def shown_label(self) -> str:
        """The label as people read it; in the file it stays as it is."""
        return tr(self.label) if self.kind == SAME_LOAD else self.label


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
    rows = (*_checks(checked, _BEFORE, 0), *runs, *_checks(checked, _AFTER, last))
    return RunSheet(
        title=tr("Run sheet: {part}", part=study.part),
        conditions=tuple(_conditions(study, plan, turns, locale)),
        steps=tuple(_steps(study, plan, len(checked) > 1, locale)),
        cautions=tuple(tr(caution) for caution in CAUTIONS),
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
        return tr("After the test") if row.block else tr("Before the test")
    if row.block > repeats:
        return tr("More runs")
    return tr("Block {block} of {blocks}", block=row.block, blocks=repeats)


def _checks(meters: Sequence[str], label: str, block: int) -> list[SheetRow]:
    """A row for each meter on the same load; the first is what the others are held against."""
    named = meters if len(meters) > 1 else ()
    return [SheetRow(SAME_LOAD, label, block, 0, "", meter) for meter in named]


def _conditions(study: Study, plan: Plan, turns: Sequence[Turn], locale: NumberLocale) -> Iterable[str]:
    yield (
        tr("Part: {part}. Material: {material}.", part=study.part, material=plan.material)
        if plan.material
        else tr("Part: {part}.", part=study.part)
    )
    warm = _temperatures(plan.bed_c, plan.nozzle_c, locale)
    first = _temperatures(plan.first_layer_bed_c, plan.first_layer_nozzle_c, locale)
    if warm and first:
        yield tr("Temperatures: {warm}; first layer: {first}.", warm=warm, first=first)
    elif warm:
        yield tr("Temperatures: {warm}, the first layer too.", warm=warm)
    elif first:
        yield tr("First layer: {first}.", first=first)
    if plan.room_c is not None:
        degrees = _degrees(plan.room_c, locale)
        yield tr("Room: {degrees}, without draught or sun on a machine.", degrees=degrees)
    yield _start_words(plan, locale)
    machines, meters = machines_of(study), meters_of(study)
    yield _order_words(plan, len(machines), len(turns))
    if len(meters) > 1 and turns:
        met = meetings(turns)
        times = sorted({met[m.id, k.id] for m in machines for k in meters})
        if len(times) == 1:
            each = tr("{times} times", times=times[0])
        else:
            each = tr("{least} to {most} times", least=times[0], most=times[-1])
        yield tr(
            "{meters} meters go round: each machine is measured with each meter {often}.",
            meters=len(meters),
            often=each,
        )


def _order_words(plan: Plan, machines: int, runs: int) -> str:
    if not runs:
        return tr(
            "{blocks:block|blocks} of no machines, no runs in all, in the order of seed {seed}.",
            blocks=plan.repeats,
            seed=plan.seed,
        )
    return tr(
        "{blocks:block|blocks} of {machines:machine|machines}, {runs:run|runs} in all, in the order of seed "
        "{seed}.",
        blocks=plan.repeats,
        machines=machines,
        runs=runs,
        seed=plan.seed,
    )


def _temperatures(bed_c: float | None, nozzle_c: float | None, locale: NumberLocale) -> str:
    told = []
    if bed_c is not None:
        told.append(tr("bed {degrees}", degrees=_degrees(bed_c, locale)))
    if nozzle_c is not None:
        told.append(tr("nozzle {degrees}", degrees=_degrees(nozzle_c, locale)))
    return listed(told)


def _degrees(value_c: float, locale: NumberLocale) -> str:
    return f"{number(value_c, 0 if value_c == round(value_c) else 1, locale)} °C"


def _start_words(plan: Plan, locale: NumberLocale) -> str:
    wait = f"{number(plan.wait_min, 0, locale)} min"
    if plan.start == "warm":
        return tr(
            "Warm start: before each run hold bed and nozzle at temperature for {wait}, all machines alike.",
            wait=wait,
        )
    return tr(
        "Cold start: before each run the machine has stood switched on, heaters off, for {wait} or longer.",
        wait=wait,
    )


def _steps(study: Study, plan: Plan, has_checks: bool, locale: NumberLocale) -> Iterable[str]:
    yield tr("Keep to the order: it is shuffled so that room and time of day favour no machine.")
    if has_checks:
        yield tr(
            "Same load: let one steady load (a heater or lamp within the rating of each meter, some 100 W) "
            "run for an hour on each meter in turn, and write down what each has counted."
        )
    yield tr(
        "Write down the display just before the run is started and again {end}, every digit of it, with the "
        "time and the room's temperature.",
        end=tr(_ENDS[study.boundary]),
    )
    yield tr("Note what went wrong in the remarks, and make a failed run again at the end of its block.")


# the file


def sheet_table(sheet: RunSheet) -> Table:
    """The sheet's rows as a table with the keys of the file."""
    unit = sheet.unit.lower()
    columns = (
        Column("row", tr("What"), "left"),
        Column("run", tr("Run"), "left"),
        Column("block", tr("Block")),
        Column("round", tr("Round")),
        Column("machine", tr("Machine"), "left"),
        Column("meter", tr("Meter"), "left"),
        Column("starting_state", tr("Starting state"), "left"),
        Column("bed_c", tr("Bed [°C]")),
        Column("nozzle_c", tr("Nozzle [°C]")),
        Column("first_layer_bed_c", tr("First layer, bed [°C]")),
        Column("first_layer_nozzle_c", tr("First layer, nozzle [°C]")),
        Column("room_c", tr("Room [°C]")),
        Column("start", tr("Start"), "left"),
        Column("end", tr("End"), "left"),
        Column(f"display_start_{unit}", tr("Display at start [{unit}]", unit=sheet.unit)),
        Column(f"display_end_{unit}", tr("Display at end [{unit}]", unit=sheet.unit)),
        Column("energy_wh", tr("Energy [Wh]")),
        Column("remarks", tr("Remarks"), "left"),
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
        Column("run", tr("Run"), "left"),
        Column("block", tr("Block"), "left"),
        Column("machine", tr("Machine"), "left"),
        Column("meter", tr("Meter"), "left"),
    ]
    if sheet.has_rounds:
        columns.insert(2, Column("round", tr("At the same time"), "left"))
    rows = []
    for row in sheet.rows[:most]:
        block = "" if row.kind != RUN else _block_words(row.block, sheet.plan.repeats)
        cells = [row.shown_label, block, row.machine or tr("one steady load"), row.meter or tr("any")]
        if sheet.has_rounds:
            cells.insert(2, tr("round {round}", round=row.round) if row.round else "")
        rows.append(tuple(cells))
    return Table(tr("Order"), tuple(columns), tuple(rows))


def _block_words(block: int, repeats: int) -> str:
    return str(block) if block <= repeats else tr("after the blocks")
