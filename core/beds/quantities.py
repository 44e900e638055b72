"""Quantities of held beds: how each is called and in which unit it is shown."""

from core.quantities import Quantity

HELD_W = Quantity("held_w", "Watts held", "W", decimals=1, higher_is_better=False)
W_PER_DM2 = Quantity("w_per_dm2", "Per area", "W/dm²", decimals=1, higher_is_better=False)
TIMES_FLOOR = Quantity("times_floor", "Of the floor", "%", factor=100.0, decimals=0)
WARM_UP_WH = Quantity("warm_up_wh", "Warm-up", "Wh", decimals=1, higher_is_better=False)
WARM_UP_S = Quantity("warm_up_s", "Warm-up time", "min", factor=1 / 60, decimals=1, higher_is_better=False)
HEAT_CAPACITY = Quantity("heat_capacity", "Heat capacity", "J/K", decimals=0)
HALF_HOUR = Quantity("half_hour", "Half / full hour", "%", factor=100.0, decimals=0)
SAVED_WH = Quantity("saved_wh", "Saving", "Wh", decimals=1, higher_is_better=True)
SAVED_SHARE = Quantity("saved_share", "Of the bed", "%", factor=100.0, decimals=0, higher_is_better=True)
SLOPE = Quantity("slope_w_per_k", "Watts a kelvin", "W/K", decimals=2)
EFFICIENCY = Quantity("efficiency", "Its supply", "%", factor=100.0, decimals=0)
