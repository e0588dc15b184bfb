"""The closed unit lists and the factors between them, reckoned and checked by pint.

pint never sees what a person typed (it reads ``2,9 meq/L`` as 29): the strict reader in
``reader.py`` finds the unit in a closed list, and pint only supplies the factor between two known
units. It was asked beforehand (``library_figures.py``), since importing it costs more than a first paint may.

Sources: legal definitions of pound and gallons in ``units.txt``; 1 degree of carbonate hardness =
10 mg CaO per litre (definition of the German degree), so its size in milliequivalents follows from
the molar mass of CaO; atomic weights from periodictable (CIAAW).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from evenwater.engine.formula import by_periodictable
from evenwater.engine.library_figures import LINEAR


@dataclass(frozen=True)
class Unit:
    """One unit of a closed list.

    ``id`` is its name in question files, ``shown`` its form on screen and paper (no slash, so that
    a slash is never read as a one), ``spellings`` the further forms the reader accepts, and
    ``definition`` its expression in the registry.
    """

    id: str
    shown: str
    definition: str
    spellings: tuple[str, ...] = ()


@dataclass(frozen=True)
class Kind:
    """A closed list of units for one kind of quantity; the first is the canonical unit."""

    name: str
    units: tuple[Unit, ...]

    @property
    def canonical(self) -> Unit:
        """The unit in which the engine calculates."""
        return self.units[0]

    def unit(self, unit_id: str) -> Unit:
        """Return the unit called ``unit_id``.

        Parameters
        ----------
        unit_id : str
            Id of a unit.

        Returns
        -------
        Unit
            The unit.

        Raises
        ------
        KeyError
            When the list has no such unit.
        """
        for unit in self.units:
            if unit.id == unit_id:
                return unit
        raise KeyError(unit_id)


_VOLUME = (
    Unit("L", "L", "liter", ("litre", "litres", "liter", "liters")),
    Unit("mL", "mL", "milliliter", ("millilitre", "millilitres", "milliliter", "milliliters")),
    Unit("US gal", "US gal", "us_gallon", ("US gallon", "US gallons")),
    Unit("imperial gal", "imperial gal", "imperial_gallon", ("imperial gallon", "imperial gallons")),
)
_MASS = (
    Unit("g", "g", "gram", ("gram", "grams")),
    Unit("mg", "mg", "milligram", ("milligram", "milligrams")),
    Unit("kg", "kg", "kilogram", ("kilogram", "kilograms")),
    Unit("oz", "oz", "ounce", ("ounce", "ounces")),
    Unit("lb", "lb", "pound", ("pound", "pounds")),
)
_ALKALINITY = (
    Unit("meq/L", "meq per L", "milliequivalent / liter", ("meq per L",)),
    Unit("dKH", "dKH", "degree_KH", ("°dKH", "degree KH", "degrees KH")),
    Unit("mmol/L", "mmol per L", "millimole_alkalinity / liter", ("mmol per L",)),
    Unit("ppm as CaCO3", "ppm as CaCO3", "milligram_CaCO3 / liter", ("mg/L as CaCO3",)),
)
_ION = (
    Unit("mg/L", "mg per L", "milligram / liter", ("mg per L",)),
    Unit("mg/kg", "mg per kg", "milligram / liter", ("mg per kg",)),
)
_NITRATE = (
    Unit("mg/L as NO3", "mg per L as NO3", "milligram_NO3 / liter", ("mg per L as NO3",)),
    Unit("mg/L as N", "mg per L as N", "milligram_N / liter", ("mg per L as N",)),
)
_PHOSPHATE = (
    Unit("mg/L as PO4", "mg per L as PO4", "milligram_PO4 / liter", ("mg per L as PO4",)),
    Unit("mg/L as P", "mg per L as P", "milligram_P / liter", ("mg per L as P",)),
)
_SALINITY = (
    Unit("ppt", "ppt", "practical_salinity", ("g/kg", "g per kg", "practical salinity")),
    Unit("SG 25/25 degC", "SG 25/25 °C", "practical_salinity", ("SG 25/25 °C",)),
    Unit("SG 20/20 degC", "SG 20/20 °C", "practical_salinity", ("SG 20/20 °C",)),
    Unit("SG 60/60 degF", "SG 60/60 °F", "practical_salinity", ("SG 60/60 °F",)),
)
_TIME = (
    Unit("s", "s", "second", ("sec", "second", "seconds")),
    Unit("min", "min", "minute", ("minute", "minutes")),
    Unit("h", "h", "hour", ("hour", "hours")),
)
_LENGTH = (
    Unit("mm", "mm", "millimeter", ("millimetre", "millimetres", "millimeter", "millimeters")),
    Unit("cm", "cm", "centimeter", ("centimetre", "centimetres", "centimeter", "centimeters")),
    Unit("m", "m", "meter", ("metre", "metres", "meter", "meters")),
    Unit("in", "in", "inch", ("inch", "inches")),
    Unit("ft", "ft", "foot", ("foot", "feet")),
)
_AIR_PRESSURE = (
    Unit("hPa", "hPa", "hectopascal", ("mbar", "millibar")),
    Unit("kPa", "kPa", "kilopascal"),
    Unit("mmHg", "mm Hg", "millimeter_mercury", ("torr",)),
    Unit("inHg", "in Hg", "inch_mercury"),
)
_DENSITY = (
    Unit("g/mL", "g per mL", "gram / milliliter", ("g per mL", "g/cm3")),
    Unit("kg/L", "kg per L", "kilogram / liter", ("kg per L",)),
    Unit("kg/m3", "kg per m3", "gram / liter", ("kg per m3", "g/L")),
)
_CARRIED = (
    Unit("mg/mL", "mg per mL", "milligram / milliliter", ("mg per mL",)),
    Unit("g/L", "g per L", "gram / liter", ("g per L",)),
    Unit("g/100 mL", "g per 100 mL", "gram / hundred_milliliters", ("g per 100 mL",)),
)
_TEMPERATURE = (
    Unit("degC", "°C", "degree_Celsius", ("°C",)),
    Unit("degF", "°F", "degree_Fahrenheit", ("°F",)),
)


def _per_day(units: tuple[Unit, ...]) -> tuple[Unit, ...]:
    """Return the same units per day; only one time base exists, so none can be mixed up (H2)."""
    return tuple(
        Unit(
            f"{u.id} per day",
            f"{u.shown} per day",
            f"({u.definition}) / day",
            tuple(
                f"{name}{tail}"
                for name in (u.id, *u.spellings)
                for tail in (" per day", "/day", " a day")
                if f"{name}{tail}" != f"{u.id} per day"
            ),
        )
        for u in units
    )


_CONCENTRATIONS = {
    "alkalinity": _ALKALINITY,
    "ion": _ION,
    "nitrate": _NITRATE,
    "phosphate": _PHOSPHATE,
    "salinity": _SALINITY,
}

KINDS: dict[str, Kind] = {
    "volume": Kind("volume", _VOLUME),
    "volume per day": Kind("volume per day", _per_day(_VOLUME)),
    "dose": Kind("dose", (_VOLUME[1],)),
    "mass": Kind("mass", _MASS),
    "temperature": Kind("temperature", _TEMPERATURE),
    "flow": Kind("flow", (Unit("mL/min", "mL per min", "milliliter / minute", ("mL per min",)),)),
    "share": Kind("share", (Unit("%", "%", "percent", ("percent",)),)),
    "pressure": Kind("pressure", (Unit("uatm", "uatm", "microatmosphere", ("microatm", "µatm", "μatm")),)),
    "time": Kind("time", _TIME),
    "length": Kind("length", _LENGTH),
    # Of a jug: a square centimetre holds a millilitre for each centimetre of its height.
    "area": Kind("area", (Unit("mL/cm", "mL per cm", "milliliter / centimeter", ("mL per cm", "cm2")),)),
    "air pressure": Kind("air pressure", _AIR_PRESSURE),
    "density": Kind("density", _DENSITY),
    # What a liquid carries of something else.
    "mass per volume": Kind("mass per volume", _CARRIED),
    "number": Kind("number", (Unit("", "", "percent"),)),
    **{name: Kind(name, units) for name, units in _CONCENTRATIONS.items()},
    **{f"{name} per day": Kind(f"{name} per day", _per_day(units)) for name, units in _CONCENTRATIONS.items()},
}
# Specific gravity is not proportional to salinity, so a rise in it has no single size: rises and
# uses of salinity are entered in ppt only.
KINDS["salinity per day"] = Kind("salinity per day", KINDS["salinity per day"].units[:1])


@lru_cache(maxsize=1)
def registry() -> Any:
    """Return the one pint registry, with the units that follow from computed molar masses.

    Returns
    -------
    Any
        Made when it is first asked for.
    """
    from importlib import resources  # noqa: PLC0415  (with pint, which is slow to load itself)

    import pint

    text = resources.files("evenwater.engine").joinpath("units.txt").read_text(encoding="utf-8")
    made: Any = pint.UnitRegistry(None, cache_folder=None, on_redefinition="raise")
    made.load_definitions(text.splitlines())
    made.define(f"gram_CaO = {2 / by_periodictable('CaO')!r} * equivalent")
    made.define("degree_KH = 10 * milligram_CaO / liter")
    made.define(f"gram_CaCO3 = {2 / by_periodictable('CaCO3')!r} * equivalent")
    made.define("mole_alkalinity = equivalent")
    made.define(f"gram_N = {by_periodictable('NO3') / by_periodictable('N')!r} * gram_NO3")
    made.define(f"gram_P = {by_periodictable('PO4') / by_periodictable('P')!r} * gram_PO4")
    return made


@cache
def linear(kind: str, unit_id: str) -> tuple[float, float]:
    """Return ``(factor, offset)`` with canonical value = factor * value + offset.

    Parameters
    ----------
    kind : str
        Name of the closed list.
    unit_id : str
        Unit of that list.

    Returns
    -------
    tuple of float
        Factor [canonical unit per unit] and offset [canonical unit]; the offset is zero for all
        but temperatures. Density and specific gravity are not handled here but in
        ``quantities.py``, since they need the water.

    Raises
    ------
    KeyError
        When the kind or the unit is not in the closed lists.
    """
    if unit_id == KINDS[kind].canonical.id:
        return 1.0, 0.0
    known = LINEAR.get((kind, unit_id))
    return by_pint(kind, unit_id) if known is None else known


def by_pint(kind: str, unit_id: str) -> tuple[float, float]:
    """Return factor and offset as pint gives them.

    Parameters
    ----------
    kind : str
        Name of the closed list.
    unit_id : str
        Unit of that list.

    Returns
    -------
    tuple of float
        Factor [canonical unit per unit] and offset [canonical unit], as in ``linear``.

    Raises
    ------
    KeyError
        When the kind or the unit is not in the closed lists.
    """
    units, made = KINDS[kind], registry()
    target = made.Unit(units.canonical.definition)
    source = made.Unit(units.unit(unit_id).definition)
    zero = float(made.Quantity(0.0, source).to(target).magnitude)
    one = float(made.Quantity(1.0, source).to(target).magnitude)
    return one - zero, zero
