"""The demo study: what is known of it besides its logs."""

from pathlib import PurePath
from typing import Final

from core import edits
from core.beds.supply import Supply
from core.costs.rates import PriceBand
from core.properties.table import Value
from core.study import PropertyKind, Study

STUDY_ID: Final = "demo"
PART: Final = "hose clip"
BED_C: Final = 60.0
#: the two invented meters and the machines they were lent out with
METERS: Final = {"Meter 1": ("Alder", "Birch", "Cedar"), "Meter 2": ("Hazel", "Rowan")}
#: what both are stated to be good for: half-widths of a rectangular distribution [%], [W]
STATED_PERCENT: Final = 1.0
STATED_W: Final = 0.3
#: what is known of the beds: area of one face [dm2], and what feeds it
BEDS: Final[dict[str, tuple[float, Supply]]] = {
    "Alder": (1.0, "low voltage"),
    "Birch": (0.92, "low voltage"),
    "Cedar": (0.62, "low voltage"),
    "Hazel": (1.15, "mains"),
    "Rowan": (1.05, "low voltage"),
}

#: what else is known of the machines, all of it invented: columns of their properties, and the cells
COLUMNS: Final[tuple[tuple[str, PropertyKind], ...]] = (
    ("Speed set (mm/s)", "number"),
    ("Age (years)", "number"),
    ("Noise at standby (dB)", "number"),
    ("Motion system", "words"),
    ("Enclosure", "yes/no"),
)
KNOWN: Final[dict[str, tuple[Value, ...]]] = {
    "Alder": (120.0, 1.5, 34.0, "crossed belts", True),
    "Birch": (80.0, 3.0, 38.0, "moving bed", False),
    "Cedar": (75.0, 4.0, 36.0, "moving bed", False),
    "Hazel": (70.0, 2.5, 31.0, "crossed belts", False),
    "Rowan": (55.0, 6.0, 41.0, "moving bed", True),
}

#: an invented tariff: a price of the day and one of the night
CURRENCY: Final = "€"
PRICE_PER_KWH: Final = 0.34
NIGHT: Final = PriceBand("night", 0.24, 22 * 60, 6 * 60)
#: what is stated of the print that is priced, by the fields of the costs
PRINT: Final = {"print_hours": 10.0, "material_g": 160.0, "material_per_kg": 21.0, "failed_percent": 4.0}

#: what was turned on in the switch-on test, as whoever made it noted it: when [s], and which load
SWITCH_ON_LOG: Final = "Hazel switch-on test.tsv"
SWITCHED_ON: Final = (
    (300.0, "fans"),
    (540.0, "part fan"),
    (780.0, "motors holding"),
    (1020.0, "hot end heating"),
    (1500.0, "bed heating"),
)


def demo_study(study_id: str = STUDY_ID) -> Study:
    """An empty study with the demo's name, part and bed temperature, marked as invented."""
    study = edits.new_study(study_id, name="Hose clip study", invented=True).study
    study = edits.rename_part(study, PART).study
    return with_prices(edits.set_bed_c(study, BED_C).study)


def with_prices(study: Study) -> Study:
    """The demo study with a tariff and a print to price, all of it invented."""
    study = edits.set_currency(study, CURRENCY).study
    study = edits.set_price(study, PRICE_PER_KWH).study
    study = edits.set_bands(study, (NIGHT,)).study
    study = edits.set_priced_by(study, "bands").study
    for name, value in PRINT.items():
        study = edits.set_cost(study, name, value).study
    return study


def with_stated_meters(study: Study) -> Study:
    """The demo study with its logs at the two meters that wrote them, and no other meter."""
    for name, machines in METERS.items():
        owners = [machine.id for machine in study.machines if machine.name in machines]
        logs = [log for log in study.logs if log.machine_id in owners]
        if not logs:
            continue
        study = edits.add_meter(study, name).study
        meter_id = study.meters[-1].id
        stated = edits.set_meter(study, meter_id, gain_percent=STATED_PERCENT, offset_w=STATED_W)
        study = stated.study
        for log in logs:
            study = edits.assign_meter(study, log.id, meter_id).study
    used = {log.meter_id for log in study.logs} | {typed.meter_id for typed in study.typed}
    for meter in study.meters:
        if meter.id not in used:
            study = edits.remove_meter(study, meter.id).study
    return study


def with_known_beds(study: Study) -> Study:
    """The demo study with the areas of its beds, and what feeds them."""
    for machine in study.machines:
        if machine.name in BEDS:
            area_dm2, supply = BEDS[machine.name]
            study = edits.set_bed_area(study, machine.id, area_dm2).study
            study = edits.set_bed_supply(study, machine.id, supply).study
    return study


def with_properties(study: Study) -> Study:
    """The demo study with columns of properties beside those of the beds, filled for its machines."""
    for name, kind in COLUMNS:
        study = edits.add_property_column(study, name, kind).study
    cells = [
        edits.NewCell(machine.id, name, value)
        for machine in study.machines
        for (name, _), value in zip(COLUMNS, KNOWN.get(machine.name, ()), strict=False)
    ]
    return edits.fill_properties(study, cells).study


def with_named_loads(study: Study) -> Study:
    """The demo study with the steps of its switch-on test named; the fan is known to run on."""
    for log in study.logs:
        if any(PurePath(source.file_name).name == SWITCH_ON_LOG for source in log.sources):
            for at_s, load in SWITCHED_ON:
                study = edits.name_step(study, log.id, at_s, load).study
            study = edits.set_load_idle(study, log.machine_id, "fans", True).study
    return study


def with_what_is_known(study: Study) -> Study:
    """The demo study with everything that its logs do not say: meters, beds, loads, properties."""
    return with_named_loads(with_properties(with_known_beds(with_stated_meters(study))))
