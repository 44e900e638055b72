"""Heat that a hot horizontal plate in still air must lose: the physical floor under the watts of a held bed.

Rules: both faces lose heat by natural convection and by radiation, nothing else; the plate has one
temperature. A real bed loses more (its edges, its mount, moving air) or, insulated below, less. Published
correlations for the convection disagree, so a floor is shown with two digits and the name of its method.

References
----------
.. [1] F. P. Incropera, D. P. DeWitt, *Fundamentals of Heat and Mass Transfer*, and Y. A. Cengel, *Heat
   Transfer*, chapter 9 of both: McAdams' correlations for horizontal plates.
.. [2] E. W. Lemmon, R. T. Jacobsen, "Viscosity and thermal conductivity equations for nitrogen, oxygen,
   argon, and air", *International Journal of Thermophysics* 25 (2004): their dilute-gas terms (from memory;
   checked against tables).
"""

import math
from typing import Final

from attrs import frozen

from core.language import later, mark

#: absolute zero [degC]
ZERO_C: Final = -273.15
#: standard gravity [m/s2]
GRAVITY: Final = 9.80665
#: Stefan-Boltzmann constant, CODATA 2018 [W/(m2 K4)]
STEFAN_BOLTZMANN: Final = 5.670374419e-8
#: standard atmosphere [Pa]
PRESSURE_PA: Final = 101_325.0
#: of dry air: molar mass [g/mol] and gas constant [J/(mol K)], specific heat near 325 K [J/(kg K)]
_MOLAR_G: Final = 28.9586
_GAS_CONSTANT: Final = 8.314462618
_HEAT_J_PER_KG_K: Final = 1006.5
#: painted, oxidised or coated surfaces of a bed; common practice, no source
EMISSIVITY: Final = 0.9
#: where McAdams' correlation for the upper face changes to that of turbulent flow
TURBULENT_FROM: Final = 1e7
M2_PER_DM2: Final = 0.01
#: published correlations differ from the one used here by up to this part of the loss of both faces
CORRELATIONS_DIFFER: Final = 0.13
#: name of the method, shown with every floor
METHOD: Final = later(mark("natural convection after McAdams and radiation, both faces, still air"))


@frozen
class Air:
    """Properties of air at one temperature.

    Parameters
    ----------
    conductivity : float
        Thermal conductivity. [W/(m K)]
    viscosity : float
        Kinematic viscosity. [m2/s]
    prandtl : float
    expansion_per_k : float
        Thermal expansion by volume. [1/K]
    """

    conductivity: float
    viscosity: float
    prandtl: float
    expansion_per_k: float


@frozen
class Plate:
    """A flat rectangular plate. [m]"""

    width_m: float
    depth_m: float

    @classmethod
    def square(cls, area_dm2: float) -> "Plate":
        """The square plate of an area, where no more is known of a bed. [dm2]"""
        side_m = math.sqrt(area_dm2 * M2_PER_DM2)
        return cls(side_m, side_m)

    @property
    def area_m2(self) -> float:
        """Of one face. [m2]"""
        return self.width_m * self.depth_m

    @property
    def area_dm2(self) -> float:
        """Of one face. [dm2]"""
        return self.area_m2 / M2_PER_DM2

    @property
    def length_m(self) -> float:
        """Characteristic length of convection: area over perimeter. [m]"""
        return self.area_m2 / (2 * (self.width_m + self.depth_m))


@frozen
class Loss:
    """What a plate loses, by way. ``radiation_w`` is that of one face. [W]"""

    rayleigh: float
    up_w: float
    down_w: float
    radiation_w: float
    area_dm2: float

    @property
    def total_w(self) -> float:
        """Both faces together. [W]"""
        return self.up_w + self.down_w + 2 * self.radiation_w

    @property
    def w_per_dm2(self) -> float:
        """Total over the area of one face. [W/dm2]"""
        return self.total_w / self.area_dm2


def air_at(temperature_c: float) -> Air:
    """Properties of dry air at one atmosphere, to 0.3 % between 0 and 150 degC.

    Parameters
    ----------
    temperature_c : float
        Film temperature: the mean of plate and room. [degC]

    Returns
    -------
    Air

    Notes
    -----
    Dilute-gas terms of Lemmon and Jacobsen [2]_, the gas taken as ideal.

    Examples
    --------
    >>> round(air_at(26.85).conductivity, 4)
    0.0264
    """
    kelvin = temperature_c - ZERO_C
    log_t = math.log(kelvin / 103.3)
    collision = math.exp(
        0.431 - 0.4623 * log_t + 0.08406 * log_t**2 + 0.005341 * log_t**3 - 0.00331 * log_t**4
    )
    micropascal_s = 0.0266958 * math.sqrt(_MOLAR_G * kelvin) / (0.36**2 * collision)
    tau = 132.6312 / kelvin
    conductivity = 1e-3 * (1.308 * micropascal_s + 1.405 * tau**-1.1 - 1.036 * tau**-0.3)
    density = PRESSURE_PA * _MOLAR_G * 1e-3 / (_GAS_CONSTANT * kelvin)
    dynamic = 1e-6 * micropascal_s
    return Air(conductivity, dynamic / density, dynamic * _HEAT_J_PER_KG_K / conductivity, 1 / kelvin)


def nusselt(rayleigh: float, *, up: bool) -> float:
    """Nusselt number of one face of a hot horizontal plate, on area over perimeter (McAdams [1]_).

    Parameters
    ----------
    rayleigh : float
        1e4 (upper face) or 1e5 (lower face) to 1e10.
    up : bool
        True for the upper face, from which the warm air rises freely.

    Examples
    --------
    >>> round(nusselt(411_500, up=True), 2), round(nusselt(411_500, up=False), 2)
    (13.68, 6.84)
    """
    if not up:
        return 0.27 * math.sqrt(math.sqrt(rayleigh))
    return 0.54 * math.sqrt(math.sqrt(rayleigh)) if rayleigh <= TURBULENT_FROM else 0.15 * math.cbrt(rayleigh)


def rayleigh(plate: Plate, plate_c: float, air_c: float, air: Air | None = None) -> float:
    """Rayleigh number of a plate in air, properties at the film temperature unless given."""
    air = air or air_at((plate_c + air_c) / 2)
    buoyancy = GRAVITY * air.expansion_per_k * (plate_c - air_c) * plate.length_m**3
    return buoyancy / air.viscosity**2 * air.prandtl


def loss(
    plate: Plate,
    plate_c: float,
    air_c: float,
    *,
    surroundings_c: float | None = None,
    emissivity: float = EMISSIVITY,
    air: Air | None = None,
) -> Loss:
    """Heat that a plate hotter than the air loses from both faces.

    Parameters
    ----------
    plate : Plate
    plate_c, air_c : float
        ``plate_c >= air_c``. [degC]
    surroundings_c : float, optional
        What the plate radiates to; the air's temperature unless given. [degC]
    emissivity : float
        Between 0 and 1.
    air : Air, optional
        At the film temperature unless given.

    Returns
    -------
    Loss

    Raises
    ------
    ValueError
        If the plate is colder than the air: then the faces change their parts.

    Examples
    --------
    >>> round(loss(Plate(0.235, 0.235), 60, 20).total_w, 1)
    51.2
    """
    if plate_c < air_c:
        raise ValueError(f"a plate at {plate_c} degC loses nothing to air at {air_c} degC")
    air = air or air_at((plate_c + air_c) / 2)
    number = rayleigh(plate, plate_c, air_c, air)
    around_c = air_c if surroundings_c is None else surroundings_c
    area_k = plate.area_m2 * (plate_c - air_c) * air.conductivity / plate.length_m
    radiation = STEFAN_BOLTZMANN * ((plate_c - ZERO_C) ** 4 - (around_c - ZERO_C) ** 4)
    return Loss(
        rayleigh=number,
        up_w=nusselt(number, up=True) * area_k,
        down_w=nusselt(number, up=False) * area_k,
        radiation_w=emissivity * plate.area_m2 * radiation,
        area_dm2=plate.area_dm2,
    )


#: a bed of ordinary size: the ratio of losses hardly depends on it
_ORDINARY: Final = Plate(0.235, 0.235)


def loss_ratio(from_c: float, to_c: float, air_c: float, plate: Plate = _ORDINARY) -> float:
    """Loss at `to_c` over that at `from_c`, in the same air: the plate law by which held watts are scaled.

    Raises
    ------
    ValueError
        If `from_c` is not above `air_c`, or `to_c` below it.

    Examples
    --------
    >>> round(loss_ratio(60, 50, 20), 2)
    0.71
    """
    if from_c <= air_c:
        raise ValueError("nothing is lost without a difference of temperature")
    return loss(plate, to_c, air_c).total_w / loss(plate, from_c, air_c).total_w


def exponent(low_c: float, high_c: float, air_c: float, plate: Plate = _ORDINARY) -> float:
    """Exponent n of loss ~ (T - T_air)^n between two temperatures: about 1.23, above 1.

    Examples
    --------
    >>> round(exponent(40, 110, 20), 2)
    1.23
    """
    steeper = loss_ratio(low_c, high_c, air_c, plate)
    return math.log(steeper) / math.log((high_c - air_c) / (low_c - air_c))
