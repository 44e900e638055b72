"""Quantities of held beds: how each is called and in which unit it is shown."""

from core.language import mark
from core.quantities import Quantity

HELD_W = Quantity("held_w", mark("Watts held"), "W", decimals=1, higher_is_better=False)
W_PER_DM2 = Quantity("w_per_dm2", mark("Per area"), "W/dm²", decimals=1, higher_is_better=False)
TIMES_FLOOR = Quantity("times_floor", mark("Of the floor"), "%", factor=100.0, decimals=0)
WARM_UP_WH = Quantity("warm_up_wh", mark("Warm-up"), "Wh", decimals=1, higher_is_better=False)
WARM_UP_S = Quantity(
    "warm_up_s", mark("Warm-up time"), "min", factor=1 / 60, decimals=1, higher_is_better=False
)
HEAT_CAPACITY = Quantity("heat_capacity", mark("Heat capacity"), "J/K", decimals=0)
HALF_HOUR = Quantity("half_hour", mark("Half / full hour"), "%", factor=100.0, decimals=0)
SAVED_WH = Quantity("saved_wh", mark("Saving"), "Wh", decimals=1, higher_is_better=True)
SAVED_SHARE = Quantity(
    "saved_share", mark("Of the bed"), "%", factor=100.0, decimals=0, higher_is_better=True
)
SLOPE = Quantity("slope_w_per_k", mark("Watts a kelvin"), "W/K", decimals=2)
EFFICIENCY = Quantity("efficiency", mark("Its supply"), "%", factor=100.0, decimals=0)
