"""Quantities: what was typed, what it means, and how a figure is rounded and written."""

from __future__ import annotations

import math
from dataclasses import dataclass
from decimal import ROUND_FLOOR, ROUND_HALF_EVEN, Context, Decimal
from functools import lru_cache
from inspect import unwrap

from evenwater.engine import units

# Fahrenheit 60 in Celsius, the reference temperature of an older hydrometer scale.
_SIXTY_F_C = (60.0 - 32.0) / 1.8
_GRAVITY_AT_C = {"SG 25/25 degC": 25.0, "SG 20/20 degC": 20.0, "SG 60/60 degF": _SIXTY_F_C}
_SALINITY_MOST = 60.0


@dataclass(frozen=True)
class Typed:
    """What a person typed into one field, kept as typed.

    ``text`` is the characters (a number, perhaps with its own unit), ``unit`` the unit that stood
    beside the field, ``shown`` the unit the field converts to for display; empty when it is the
    same.
    """

    text: str
    unit: str = ""
    shown: str = ""


@dataclass(frozen=True)
class Entered:
    """A quantity that was read: the text as typed, its number and the id of its unit."""

    text: str
    number: Decimal
    unit: str


@dataclass(frozen=True)
class Water:
    """The water a concentration is counted in: practical salinity and temperature [degC]."""

    salinity: float = 35.0
    temperature_c: float = 25.0


@lru_cache(maxsize=256)
def density_kg_per_l(water: Water) -> float:
    """Return the density of seawater at the surface.

    Parameters
    ----------
    water : Water
        Practical salinity and temperature.

    Returns
    -------
    float
        Density [kg/L].

    Notes
    -----
    Source: TEOS-10 through gsw, with absolute salinity taken as reference salinity, as for
    seawater of standard composition.
    """
    import gsw

    # Unwrapped of the look for masked arrays: loading those takes longer than an answer.
    conservative, rho = unwrap(gsw.CT_from_t), unwrap(gsw.rho)
    absolute = unwrap(gsw.SR_from_SP)(water.salinity)
    return float(rho(absolute, conservative(absolute, water.temperature_c, 0.0), 0.0)) / 1000.0


def specific_gravity(salinity: float, at_c: float) -> float:
    """Return the specific gravity of seawater against pure water, both at one temperature.

    Parameters
    ----------
    salinity : float
        Practical salinity [1].
    at_c : float
        Temperature of both [degC].

    Returns
    -------
    float
        Ratio of the densities [1].
    """
    return density_kg_per_l(Water(salinity, at_c)) / density_kg_per_l(Water(0.0, at_c))


@lru_cache(maxsize=1024)
def salinity_from_gravity(gravity: float, at_c: float) -> float:
    """Return the practical salinity that has this specific gravity.

    Parameters
    ----------
    gravity : float
        Specific gravity against pure water at the same temperature [1].
    at_c : float
        Temperature of both [degC].

    Returns
    -------
    float
        Practical salinity [1]; NaN outside 0 to 60.
    """
    low, high = 0.0, _SALINITY_MOST
    if not specific_gravity(low, at_c) <= gravity <= specific_gravity(high, at_c):
        return math.nan
    for _ in range(60):
        middle = (low + high) / 2.0
        if specific_gravity(middle, at_c) < gravity:
            low = middle
        else:
            high = middle
    return (low + high) / 2.0


def to_canonical(number: float, kind: str, unit: str, water: Water | None = None) -> float:
    """Return a number of some unit in the canonical unit of its kind.

    Parameters
    ----------
    number : float
        The figure [unit].
    kind : str
        Name of the closed list of units.
    unit : str
        A unit of that list.
    water : Water or None
        The water for figures per kilogram; seawater at 35 and 25 degC when not given.

    Returns
    -------
    float
        The same quantity [canonical unit of the kind]; NaN for an impossible specific gravity.

    Raises
    ------
    KeyError
        When the unit is not in the list.
    """
    if unit in _GRAVITY_AT_C and kind == "salinity":
        return salinity_from_gravity(number, _GRAVITY_AT_C[unit])
    factor, offset = units.linear(kind, unit)
    value = factor * number + offset
    if unit.startswith("mg/kg"):
        value *= density_kg_per_l(water or Water())
    return value


def from_canonical(value: float, kind: str, unit: str, water: Water | None = None) -> float:
    """Return a canonical value in some unit; the reverse of ``to_canonical``.

    Parameters
    ----------
    value : float
        The quantity [canonical unit of the kind].
    kind : str
        Name of the closed list of units.
    unit : str
        A unit of that list.
    water : Water or None
        The water for figures per kilogram; seawater at 35 and 25 degC when not given.

    Returns
    -------
    float
        The figure [unit].

    Raises
    ------
    KeyError
        When the unit is not in the list.
    """
    if unit in _GRAVITY_AT_C and kind == "salinity":
        return specific_gravity(value, _GRAVITY_AT_C[unit])
    factor, offset = units.linear(kind, unit)
    figure = (value - offset) / factor
    if unit.startswith("mg/kg"):
        figure /= density_kg_per_l(water or Water())
    return figure


def round_down(value: float, step: float) -> float:
    """Round down to a whole number of steps, the one rounding a dose ever gets.

    Parameters
    ----------
    value : float
        Computed dose [mL], zero or more.
    step : float
        Graduation of the pump or tool [mL].

    Returns
    -------
    float
        The largest multiple of the step that is not above the value [mL].

    Notes
    -----
    Decimal arithmetic, so that 0.3 in steps of 0.1 is 0.3. The value is first taken to twelve
    significant digits, which undoes binary noise and nothing else.
    """
    exact = Decimal(value).normalize(Context(prec=12, rounding=ROUND_HALF_EVEN))
    grain = Decimal(repr(step))
    return float((exact / grain).to_integral_value(rounding=ROUND_FLOOR) * grain)


def figure(value: float, decimals: int) -> str:
    """Write a number plainly: no exponent, no group separator, no trailing zero (L1, L2, L6).

    Parameters
    ----------
    value : float
        Any finite number [any unit].
    decimals : int
        Most digits after the point.

    Returns
    -------
    str
        The number with a point as decimal mark.

    Raises
    ------
    ValueError
        When the number is not finite.
    """
    if not math.isfinite(value):
        raise ValueError(f"{value} cannot be written as a figure")
    text = f"{value:.{decimals}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def significant(value: float, digits: int) -> str:
    """Write a number with so many significant digits, in the same plain style as ``figure``.

    Parameters
    ----------
    value : float
        Any finite number [any unit].
    digits : int
        Significant digits.

    Returns
    -------
    str
        The number with a point as decimal mark.
    """
    if value == 0.0 or not math.isfinite(value):
        return figure(value, 0)
    places = max(0, digits - 1 - math.floor(math.log10(abs(value))))
    return figure(value, places)
