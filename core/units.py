"""The only unit conversions of the program: everything inside is s, W, Wh, degC."""

from typing import Final

SECONDS_PER_HOUR: Final = 3600.0
SECONDS_PER_MINUTE: Final = 60.0
SECONDS_PER_DAY: Final = 86400.0
HOURS_PER_YEAR: Final = 8760.0
WH_PER_KWH: Final = 1000.0
J_PER_WH: Final = 3600.0

#: factor that turns a written unit of power into watts
POWER_IN_W: Final = {
    "W": 1.0,
    "kW": 1000.0,
    "mW": 0.001,
    "0.1 W": 0.1,
    "0.01 W": 0.01,
    "10 W": 10.0,
    "MW": 1e6,
}
#: factor that turns a written unit of energy into watt hours
ENERGY_IN_WH: Final = {
    "Wh": 1.0,
    "kWh": WH_PER_KWH,
    "mWh": 0.001,
    "MWh": 1e6,
    "Wmin": 1 / 60,
    "J": 1 / J_PER_WH,
    "kJ": 1e3 / J_PER_WH,
    "MJ": 1e6 / J_PER_WH,
    "0.1 Wh": 0.1,
    "10 Wh": 10.0,
    "0.1 kWh": 100.0,
    "0.01 kWh": 10.0,
    "0.001 kWh": 1.0,
}


def parts_per_kwh(energy_wh: float) -> float:
    """Parts that one kilowatt hour makes, at `energy_wh` a part. [1/kWh]"""
    return WH_PER_KWH / energy_wh


def mean_w(energy_wh: float, seconds: float) -> float:
    """Mean power over `seconds`. [W]"""
    return energy_wh * SECONDS_PER_HOUR / seconds
