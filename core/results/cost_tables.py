"""Hours in operating states, and what a print is made of, as tables to read."""

from core.costs.money import money
from core.costs.standby import STATES
from core.formatting import (
    POINT,
    UNKNOWN,
    NumberLocale,
    capitalised,
    duration,
    listed,
    number,
    percent,
    with_interval,
)
from core.language import mark, tr
from core.quantities import PRINT_CO2, PRINT_KWH
from core.results.cost_values import MachineCost, StandbyCost
from core.tables import Cell, Column, Table
from core.units import WH_PER_KWH

#: a state in which no machine was for so long needs no column [h]
_LEAST_HOURS = 0.05


def hours_table(result: StandbyCost, locale: NumberLocale = POINT) -> Table:
    """Hours that each machine's logs spent in each operating state, and their rests."""
    states = [s for s in STATES if any(dict(m.hours)[s] >= _LEAST_HOURS for m in result.machines)]
    columns = (
        Column("machine", tr("Machine"), align="left"),
        Column("hours", tr("Log [h]")),
        *(Column(state, f"{capitalised(tr(state))} [h]") for state in states),
        Column("longest", tr("Longest rest")),
        Column("windows", tr("Standby by window [W]")),
        Column("steady", tr("Steady for")),
    )
    rows = tuple(
        (
            m.name,
            number(m.logged_hours, 1, locale),
            *(number(dict(m.hours)[state], 1, locale) for state in states),
            duration(m.rests.longest_s) if m.rests.count else UNKNOWN,
            _windows(m, locale),
            _steady(m),
        )
        for m in result.machines
    )
    return Table(tr("Hours in each operating state"), columns, rows)


def print_table(result: StandbyCost, locale: NumberLocale = POINT) -> Table:
    """The print taken apart: warm-up and processing, electricity, and the rest of its price where stated."""
    parts = [
        (Column("machine", tr("Machine"), align="left"), [m.name for m in result.machines]),
        (Column("warm_up_wh", tr("Warm-up [Wh]")), [_warm_up(m, locale) for m in result.machines]),
        (Column("processing_w", tr("Processing [W]")), [_processing(m, locale) for m in result.machines]),
        (Column("print_kwh", tr("Energy [kWh]")), [_energy(m, locale) for m in result.machines]),
    ]
    sign = f" [{result.currency}]" if result.currency else ""
    amounts = (
        ("electricity", tr("Electricity"), [m.price.electricity for m in result.machines]),
        ("material", tr("Material"), [m.price.material for m in result.machines]),
        ("wear", tr("Wear"), [m.price.wear for m in result.machines]),
        ("purchase", tr("Purchase"), [m.price.purchase for m in result.machines]),
        ("failed", tr("Failed prints"), [m.price.failed for m in result.machines]),
        ("price", tr("Price"), [m.price.total if m.price.has_more else None for m in result.machines]),
    )
    for key, title, values in amounts:
        if any(value is not None for value in values):
            parts.append((Column(key, f"{title}{sign}"), [money(v, "", locale) for v in values]))
    if any(m.printing_kwh is not None for m in result.machines):
        kwh = [None if m.printing_kwh is None else m.printing_kwh.value for m in result.machines]
        texts = [number(v, 0, locale) for v in kwh]
        parts.append((Column("printing_kwh", tr("Year of prints [kWh]")), texts))
    if any(m.printing_cost is not None for m in result.machines):
        paid = [None if m.printing_cost is None else m.printing_cost.value for m in result.machines]
        texts = [money(v, "", locale) for v in paid]
        parts.append((Column("printing_cost", tr("Year of prints") + sign), texts))
    if any(m.co2_g is not None for m in result.machines):
        parts.append((Column(PRINT_CO2.key, tr("CO₂ [g]")), [_grams(m, locale) for m in result.machines]))
    rows: tuple[tuple[Cell, ...], ...] = tuple(zip(*(values for _, values in parts), strict=True))
    return Table(tr("A print taken apart"), tuple(column for column, _ in parts), rows)


def print_note(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What the columns mean, and where the factor for carbon dioxide is from."""
    said = [tr("Warm-up once, then processing for the rest of the print; ± is half the 95 % interval.")]
    if result.costs.tariff.priced_by != "single" and result.mean_per_kwh is not None:
        said.append(tr("Electricity at the mean price of all times."))
    said += _unlike_told(result)
    unpriced = [m.name for m in result.machines if m.unpriced_share > 0 and m.part_wh is not None]
    if result.mean_per_kwh is not None and unpriced:
        share = max(m.unpriced_share for m in result.machines)
        said.append(
            tr(
                "Up to {share} of the parts' energy was used when no price is known.",
                share=percent(share, 0, locale),
            )
        )
    if result.costs.co2_g_per_kwh is not None:
        source = result.costs.co2_source or tr("its source was not named")
        said.append(
            tr(
                "CO₂ at {grams} g/kWh ({source}).",
                grams=number(result.costs.co2_g_per_kwh, 0, locale),
                source=source,
            )
        )
    return " ".join(said)


def _unlike_told(result: StandbyCost) -> list[str]:
    """Parts of the price that were stated of some machines only: their prices are not of one kind."""
    parts = (
        (mark("Purchase is in the price of {machines} alone."), [m.price.purchase for m in result.machines]),
        (mark("Wear is in the price of {machines} alone."), [m.price.wear for m in result.machines]),
    )
    told = []
    for text, values in parts:
        stated = [m.name for m, v in zip(result.machines, values, strict=True) if v is not None]
        if 0 < len(stated) < len(values):
            told.append(tr(text, machines=listed(stated)))
    return told


def _windows(machine: MachineCost, locale: NumberLocale) -> str:
    found = machine.standby
    if found is None or not found.windows_w:
        return UNKNOWN
    return tr(
        "{low} to {high}", low=number(found.lowest_w, 2, locale), high=number(found.highest_w, 2, locale)
    )


def _steady(machine: MachineCost) -> str:
    if machine.standby is None:
        return UNKNOWN
    if machine.standby.way == "lowest level":
        return tr("no long rest")
    return duration(machine.standby.seconds) if machine.standby.is_steady else tr("not steady")


def _warm_up(machine: MachineCost, locale: NumberLocale) -> str:
    if machine.printed is None or machine.printed.warm_up_s <= 0:
        return UNKNOWN
    return number(machine.printed.warm_up_wh, 1, locale)


def _processing(machine: MachineCost, locale: NumberLocale) -> str:
    return UNKNOWN if machine.printed is None else number(machine.printed.processing_w, 1, locale)


def _energy(machine: MachineCost, locale: NumberLocale) -> str:
    if machine.printed is None:
        return UNKNOWN
    energy = machine.printed.energy
    u95 = None if energy.u95 is None else energy.u95 / WH_PER_KWH
    return with_interval(energy.value / WH_PER_KWH, u95, PRINT_KWH, locale)


def _grams(machine: MachineCost, locale: NumberLocale) -> str:
    return number(machine.co2_g, PRINT_CO2.decimals, locale)
