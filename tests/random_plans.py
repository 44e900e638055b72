"""Random edits of plans, of prices, and of filled run sheets, as a user could make them."""

from collections.abc import Callable
from random import Random

from core import edits
from core.costs.rates import PriceBand, PriceList
from core.edits import Edit
from core.plan.filled import sheet_of
from core.study import Study


def planned(study: Study, random: Random) -> Edit:
    """A change of the plan of the next test."""
    makers: list[Callable[[], Edit]] = [
        lambda: edits.plan_repeats(study, random.randint(1, 9)),
        lambda: edits.plan_at_once(study, random.randint(1, 3)),
        lambda: edits.shuffle_plan(study),
        lambda: edits.set_plan_material(study, random.choice(["", "PLA", "a  grey\tone"])),
        lambda: edits.set_plan_start(study, random.choice(["cold", "warm"]), random.choice([None, 20])),
        lambda: edits.set_plan_temperature(study, "nozzle_c", random.choice([None, 210, 215.5])),
        lambda: edits.set_plan_temperature(study, "first_layer_bed_c", random.choice([None, 65.0])),
        lambda: edits.set_plan_checks(study, random.random() < 0.5),
        lambda: edits.set_plan_display(study, random.choice(["kWh", "Wh"])),
        lambda: edits.set_plan_goal(study, difference_percent=random.choice([2, 5.0, 10])),
        lambda: edits.set_plan_goal(study, spread_percent=random.choice([0.5, 2.0])),
        lambda: edits.take_measured_spread(study),
    ]
    if study.machines:
        machine_id = random.choice(study.machines).id
        makers += [
            lambda: edits.plan_machine(study, machine_id, random.random() < 0.5),
            lambda: edits.plan_extra(study, machine_id, random.randint(0, 3)),
        ]
    if study.meters:
        makers.append(lambda: edits.plan_meter(study, random.choice(study.meters).id, random.random() < 0.5))
    return random.choice(makers)()


def filled(study: Study, random: Random) -> Edit:
    """A filled run sheet of a few machines, some of them new."""
    names = ("Alder", "Birch", "Elm")
    rows = [
        f"{random.choice(names)},{n},{random.uniform(10, 100):.1f},{random.choice(('', '21'))}"
        for n in range(1, random.randint(3, 6))
    ]
    text = "machine,run,energy_wh,room_c\n" + "\n".join(rows)
    return edits.take_in_sheet(study, sheet_of(text.encode(), "sheet.csv"))[0]


def priced(study: Study, random: Random) -> Edit:
    """A change of what the user states about cost."""
    bands = (PriceBand("night", 0.1, 0, 420), PriceBand("evening", 0.4, 960, 1140, (0, 1, 2, 3, 4)))
    listed = PriceList("", "prices", 1.6e9, 1800.0, (0.2, 0.3, 0.25))
    makers: list[Callable[[], Edit]] = [
        lambda: edits.set_currency(study, random.choice(["", "€", "kr"])),
        lambda: edits.set_price(study, random.choice([None, 0.3])),
        lambda: edits.set_standing_charge(study, random.choice([None, 0.5])),
        lambda: edits.set_bands(study, random.choice([(), bands[:1], bands])),
        lambda: edits.set_price_zone(study, random.choice([None, "Europe/London"])),
        lambda: edits.set_priced_by(study, random.choice(["single", "bands"])),
        lambda: edits.add_price_list(study, listed),
        lambda: edits.set_cost(study, "print_hours", random.choice([1.0, 10.0])),
        lambda: edits.set_cost(study, "off_after_min", random.choice([5.0, 30.0])),
        lambda: edits.set_co2_source(study, random.choice(["", "the supplier's own figure"])),
    ]
    if study.price_lists:
        list_id = random.choice(study.price_lists).id
        makers += [
            lambda: edits.choose_price_list(study, list_id),
            lambda: edits.remove_price_list(study, list_id),
        ]
    if study.machines:
        machine_id = random.choice(study.machines).id
        makers.append(
            lambda: edits.set_machine_cost(study, machine_id, "idle_hours", random.choice([None, 900.0]))
        )
    return random.choice(makers)()
