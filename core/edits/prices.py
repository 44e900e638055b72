"""Edits of what the user states about cost: tariff, bands, price lists, machines, the priced print."""

from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from attrs import evolve, fields

from core.costs.rates import MINUTES_PER_DAY, Costs, MachineCosts, PriceBand, PricedBy, PriceList, Tariff
from core.edits.edit import Edit, checked_name, checked_number, found, next_number, without
from core.language import tr
from core.study import Study

#: fields of the costs that are plain numbers, with the least each may be; those not known may be None
_NUMBERS: dict[str, float] = {
    "off_after_min": 0.0,
    "print_hours": 0.01,
    "material_g": 0.0,
    "material_per_kg": 0.0,
    "failed_percent": 0.0,
    "co2_g_per_kwh": 0.0,
}
_ALWAYS_KNOWN = ("off_after_min", "print_hours")
_MACHINE_NUMBERS: dict[str, float] = {
    "printing_hours": 0.0,
    "idle_hours": 0.0,
    "price": 0.0,
    "life_hours": 1.0,
    "wear_price": 0.0,
    "wear_hours": 1.0,
}
_OF_A_YEAR = ("printing_hours", "idle_hours")
#: hours of the longest year
_LONGEST_YEAR_H = 8784.0
#: a printing that always fails has no price
_MOST_FAILED = 99.0


def set_currency(study: Study, currency: str) -> Edit:
    """Say in which currency the prices are: any symbol or code."""
    return _tariff(study, tr("Set the currency"), "currency", currency=" ".join(currency.split()))


def set_price(study: Study, price_per_kwh: float | None) -> Edit:
    """Set the price of a kilowatt hour, or that outside the bands; it may be negative. [currency/kWh]"""
    checked = None if price_per_kwh is None else checked_number(price_per_kwh, "price_per_kwh")
    return _tariff(study, tr("Set the price of a kWh"), "price", price_per_kwh=checked)


def set_standing_charge(study: Study, per_day: float | None) -> Edit:
    """Set the standing charge, which is kept apart from what machines cost. [currency/d]"""
    checked = None if per_day is None else checked_number(per_day, "per_day", 0.0)
    return _tariff(study, tr("Set the standing charge"), "standing charge", standing_per_day=checked)


def set_priced_by(study: Study, priced_by: PricedBy) -> Edit:
    """Choose between one price, bands and a list; what the others hold is kept."""
    if priced_by == "list" and not study.price_lists:
        raise ValueError("there is no price list in this study")
    chosen = study.costs.tariff.list_id
    if priced_by == "list" and chosen is None:
        chosen = study.price_lists[-1].id
    return _tariff(study, tr("Change how energy is priced"), None, priced_by=priced_by, list_id=chosen)


def set_price_zone(study: Study, zone: str | None) -> Edit:
    """Say by the clock of which zone the prices change; None for the clock of each log.

    Raises
    ------
    ValueError
        If the time-zone database has no such zone.
    """
    if zone is not None:
        try:
            ZoneInfo(zone)
        except (ZoneInfoNotFoundError, OSError) as error:
            raise ValueError(f"there is no time zone {zone!r}") from error
    return _tariff(study, tr("Set the zone of the prices"), "price zone", zone=zone)


def set_bands(study: Study, bands: tuple[PriceBand, ...]) -> Edit:
    """Put other price bands in place of those there are.

    Raises
    ------
    ValueError
        If a band has no name, no day or no length, or its times are none of a day.
    """
    checked = tuple(_checked_band(band) for band in bands)
    return _tariff(study, tr("Change the price bands"), "bands", bands=checked)


def add_price_list(study: Study, listed: PriceList) -> Edit:
    """Take a list of prices by date into the study, and price by it; its identifier is set here."""
    if not listed.prices_per_kwh or listed.step_s <= 0:
        raise ValueError("a price list needs prices")
    named = evolve(listed, id=f"p{next_number(study.price_lists, 'p')}", name=checked_name(listed.name))
    tariff = evolve(study.costs.tariff, priced_by="list", list_id=named.id)
    changed = evolve(study, price_lists=(*study.price_lists, named), costs=evolve(study.costs, tariff=tariff))
    return Edit(changed, tr("Add the prices of {name}", name=named.name))


def choose_price_list(study: Study, list_id: str) -> Edit:
    """Price by another of the study's lists."""
    listed = found(study.price_lists, list_id, "price list")
    return _tariff(study, tr("Price by {name}", name=listed.name), None, priced_by="list", list_id=list_id)


def remove_price_list(study: Study, list_id: str) -> Edit:
    """Take a price list away; a study priced by it goes back to its single price."""
    gone = found(study.price_lists, list_id, "price list")
    tariff = study.costs.tariff
    if tariff.list_id == list_id:
        tariff = evolve(
            tariff, list_id=None, priced_by="single" if tariff.priced_by == "list" else tariff.priced_by
        )
    rest = evolve(
        study, price_lists=without(study.price_lists, [list_id]), costs=evolve(study.costs, tariff=tariff)
    )
    return Edit(rest, tr("Remove the prices of {name}", name=gone.name))


def set_cost(study: Study, name: str, value: float | None) -> Edit:
    """Set one of the numbers of `core.costs.rates.Costs`, by the name of its field; None: not known.

    Raises
    ------
    ValueError
        If there is no such number, or it is out of range.
    """
    if name not in _NUMBERS or (value is None and name in _ALWAYS_KNOWN):
        raise ValueError(f"{name} cannot be {value}")
    checked = None if value is None else checked_number(value, name, _NUMBERS[name])
    if name == "failed_percent" and checked is not None and checked > _MOST_FAILED:
        raise ValueError(f"failed_percent is {value}; it can be {_MOST_FAILED} at most")
    return _costs(study, tr("Change the costs"), f"cost {name}", **{name: checked})


def set_co2_source(study: Study, source: str) -> Edit:
    """Say where the factor for carbon dioxide is from."""
    return _costs(
        study, tr("Name the source of the CO2 factor"), "co2 source", co2_source=" ".join(source.split())
    )


def set_machine_cost(study: Study, machine_id: str, name: str, value: float | None) -> Edit:
    """Set one of the numbers of `core.costs.rates.MachineCosts` for a machine, by the name of its field.

    Raises
    ------
    ValueError
        If there is no such machine or number, or it is out of range.
    """
    machine = found(study.machines, machine_id, "machine")
    known = study.costs.of(machine_id)
    if name == "count":
        if value is None or value != int(value) or value < 1:
            raise ValueError(f"count is {value}; there is at least one machine")
        changed = evolve(known, count=int(value))
    elif name in _MACHINE_NUMBERS:
        checked: Any = None if value is None else checked_number(value, name, _MACHINE_NUMBERS[name])
        if name in _OF_A_YEAR and checked is not None and checked > _LONGEST_YEAR_H:
            raise ValueError(f"{name} is {value}; a year has no more than {_LONGEST_YEAR_H}")
        changed = evolve(known, **{name: checked})
    else:
        raise ValueError(f"a machine has no {name}")
    kept = tuple(m for m in study.costs.machines if m.machine_id != machine_id)
    ids = [m.id for m in study.machines]
    machines = sorted(
        (m for m in (*kept, changed) if m != MachineCosts(m.machine_id) and m.machine_id in ids),
        key=lambda m: ids.index(m.machine_id),
    )
    label = tr("Change the costs of {name}", name=machine.name)
    return _costs(
        study,
        label,
        f"cost {machine_id} {name}",
        machines=tuple(machines),
    )


def _checked_band(band: PriceBand) -> PriceBand:
    times = (band.start_min, band.end_min)
    if (
        not all(0 <= t <= MINUTES_PER_DAY for t in times)
        or times[0] == times[1]
        or times[0] == MINUTES_PER_DAY
    ):
        raise ValueError("a price band lasts from one time of day to another")
    days = tuple(sorted(set(band.weekdays)))
    if not days or not set(days) <= set(range(7)):
        raise ValueError("a price band holds on some days of the week")
    price = checked_number(band.price_per_kwh, "price_per_kwh")
    return evolve(band, name=checked_name(band.name), price_per_kwh=price, weekdays=days)


def _tariff(study: Study, label: str, merge_key: str | None, **changes: Any) -> Edit:
    tariff: Tariff = evolve(study.costs.tariff, **changes)
    return _costs(study, label, merge_key, tariff=tariff)


def _costs(study: Study, label: str, merge_key: str | None, **changes: Any) -> Edit:
    assert set(changes) <= {f.name for f in fields(Costs)}
    return Edit(evolve(study, costs=evolve(study.costs, **changes)), label, merge_key)
