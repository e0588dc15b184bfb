"""The fields of a question: which unit list each has and what each admits.

The same table serves the window's form and the question file, so that both read alike.
"""

from __future__ import annotations

from dataclasses import replace

from evenwater.engine.catalogue import Parameter
from evenwater.engine.reader import Field
from evenwater.engine.units import KINDS

# A field admits more than is plausible: what is typed is kept, and judged with a reason. The
# factor keeps "6.800" in dKH a decimal while "1,250" in mg/L is asked about, and lets an ordinary
# reading in ppm as CaCO3 typed as dKH reach the judge, who offers the right unit.
_ADMITTED = 20.0

NET_VOLUME = Field("system.net_volume", "volume", "L", 0.0, 5_000_000.0, above_low=True)
VOLUME_UNCERTAINTY = Field("system.volume_uncertainty", "share", "%", 0.0, 50.0)
SALINITY = Field("system.salinity", "salinity", "ppt", 5.0, 45.0, bare=True)
TEMPERATURE = Field("system.temperature", "temperature", "degC", 5.0, 40.0)
PH = Field("system.ph", "number", "", 6.0, 10.0, bare=True)
# Twice what is plausible in a tank: the constants of seawater know nothing beyond.
ALKALINITY = Field("system.alkalinity", "alkalinity", "dKH", 0.0, 30.0, above_low=True)
EVAPORATION = Field("system.evaporation", "volume per day", "L per day", 0.0, 100_000.0, above_low=True)
PCO2 = Field("system.pco2", "pressure", "uatm", 10.0, 20_000.0)
AMOUNT = Field("addition.amount", "mass", "g", 0.0, 1_000_000.0, above_low=True)
DISSOLVED = Field("additive.dissolved", "mass", "g", 0.0, 1_000_000.0, above_low=True)
MADE_UP_TO = Field("additive.made_up_to", "volume", "L", 0.0, 1_000.0, above_low=True)
PURITY = Field("additive.purity", "share", "%", 0.0, 100.0, above_low=True)
# The rows of solubility run from freezing to 30 degC.
STOCK_TEMPERATURE = Field("temperature", "temperature", "degC", 0.0, 30.0)
BATCH_TEMPERATURE = Field("additive.temperature", "temperature", "degC", 0.0, 30.0)
LABEL_DOSE = Field("additive.label.dose", "volume", "mL", 0.0, 1_000_000.0, above_low=True)
LABEL_WATER = Field("additive.label.water", "volume", "L", 0.0, 5_000_000.0, above_low=True)
FLOW = Field("pump.flow", "flow", "mL/min", 0.0, 100_000.0, above_low=True)
SMALLEST_DOSE = Field("pump.smallest_dose", "dose", "mL", 0.0, 10_000.0)
STEP = Field("pump.step", "dose", "mL", 0.0, 10_000.0, above_low=True)
LARGEST_SHARE = Field("pump.largest_share", "share", "%", 0.0, 100.0, above_low=True)
DOSES_PER_DAY = Field("pump.doses_per_day", "number", "", 1.0, 1440.0, bare=True, whole=True)
# What calibrating a pump takes.
FLOW_WANTED = Field("wanted", "share", "%", 0.01, 50.0)
PUMP_SETTING = Field("pump.setting", "flow", "mL/min", 0.0, 100_000.0, above_low=True)
PUMP_DOSE = Field("pump.dose", "volume", "mL", 0.0, 10_000.0, above_low=True)
HEAD_HOURS = Field("pump.hours", "time", "h", 0.0, 200_000.0, bare=True)
HEAD_LIFE = Field("pump.life", "time", "h", 0.0, 200_000.0, above_low=True, bare=True)
HOURS_PER_DAY = Field("pump.hours_per_day", "time", "h", 0.0, 24.0, above_low=True, bare=True)
LINE_BORE = Field("line.bore", "length", "mm", 0.0, 100.0, above_low=True)
LINE_LENGTH = Field("line.length", "length", "m", 0.0, 1_000.0, above_low=True)
GRADUATION = Field("cylinder.graduation", "volume", "mL", 0.0, 1_000.0, above_low=True)
CYLINDER_TOLERANCE = Field("cylinder.tolerance", "volume", "mL", 0.0, 1_000.0)
READABILITY = Field("scale.readability", "mass", "g", 0.0, 1_000.0, above_low=True)
SCALE_TOLERANCE = Field("scale.tolerance", "mass", "g", 0.0, 1_000.0)
RUN_WATER = Field("conditions.water_temperature", "temperature", "degC", 0.0, 40.0)
RUN_SALINITY = Field("conditions.salinity", "salinity", "ppt", 0.0, 45.0, bare=True)
AIR_TEMPERATURE = Field("conditions.air_temperature", "temperature", "degC", 0.0, 45.0)
AIR_PRESSURE = Field("conditions.air_pressure", "air pressure", "hPa", 500.0, 1_100.0)
HUMIDITY = Field("conditions.humidity", "share", "%", 0.0, 100.0)
WEIGHTS = Field("conditions.weights", "density", "g/mL", 1.0, 25.0)
TIMING = Field("conditions.timing", "time", "s", 0.0, 600.0, above_low=True)
RECORD_EVERY = Field("record.every", "time", "s", 0.0, 3_600.0, above_low=True)
RUN_SECONDS = Field("seconds", "time", "s", 0.0, 7_200.0, above_low=True, bare=True)
RUN_DOSES = Field("doses", "number", "", 1.0, 10_000.0, bare=True, whole=True)
# So much comes out of a run whose pump's flow nobody knows.
RUN_VOLUME = Field("volume", "volume", "mL", 0.0, 5_000.0)
RUN_MASS = Field("mass", "mass", "g", 0.0, 5_000.0)


def rise_unit(parameter: Parameter) -> str:
    """Return the unit in which rises of a parameter are shown at first.

    Parameters
    ----------
    parameter : Parameter
        The parameter.

    Returns
    -------
    str
        Id of a unit.
    """
    return f"{parameter.display_unit} per day"


def concentration(path: str, parameter: Parameter) -> Field:
    """Return the field for a reading or a target of a parameter.

    Parameters
    ----------
    path : str
        Path of the field.
    parameter : Parameter
        The parameter, whose display unit the bounds are in.

    Returns
    -------
    Field
        From zero to twenty times the highest plausible value; a salinity has bounds of its own.
    """
    high = SALINITY.high if parameter.kind == "salinity" else _ADMITTED * parameter.plausible[1]
    return Field(path, parameter.kind, parameter.display_unit, 0.0, high, bare=parameter.kind == "salinity")


def calcium_now(parameter: Parameter) -> Field:
    """Return the field for the calcium of a tank when something else is asked about.

    Parameters
    ----------
    parameter : Parameter
        Calcium, whose display unit the bounds are in.

    Returns
    -------
    Field
        More than nothing: no seawater is without calcium [mg/L].
    """
    return replace(concentration("system.calcium", parameter), above_low=True)


def rise(path: str, parameter: Parameter) -> Field:
    """Return the field for a rise or a use per day of a parameter.

    Parameters
    ----------
    path : str
        Path of the field.
    parameter : Parameter
        The parameter, whose display unit the bounds are in.

    Returns
    -------
    Field
        From zero to ten times the hard rise: more than any tank uses, and little enough that "1.250"
        is read as a decimal.
    """
    return Field(path, f"{parameter.kind} per day", rise_unit(parameter), 0.0, 10.0 * parameter.rise_hard)


def difference(path: str, parameter: Parameter) -> Field:
    """Return the field for a rise of a parameter, without its time.

    Parameters
    ----------
    path : str
        Path of the field.
    parameter : Parameter
        The parameter, whose display unit the bounds are in.

    Returns
    -------
    Field
        From zero to ten times the hard rise of a day, as for a rise per day.
    """
    return Field(path, parameter.kind, parameter.display_unit, 0.0, 10.0 * parameter.rise_hard)


def label_raises(parameter: Parameter) -> Field:
    """Return the field for "raises y L of water by ..." on a bottle's label.

    Parameters
    ----------
    parameter : Parameter
        What the bottle raises, whose display unit the bounds are in.

    Returns
    -------
    Field
        More than nothing, as a reading of it.
    """
    high = SALINITY.high if parameter.kind == "salinity" else _ADMITTED * parameter.plausible[1]
    return Field("additive.label.raises", parameter.kind, parameter.display_unit, 0.0, high, above_low=True)


def stock_strength(parameter: Parameter) -> Field:
    """Return the field for the strength a stock is wanted to have per litre.

    Parameters
    ----------
    parameter : Parameter
        The parameter the strength is counted in.

    Returns
    -------
    Field
        Up to a million of the canonical unit, which no stock reaches.
    """
    canonical = KINDS[parameter.kind].canonical.id
    return Field("wanted.strength", parameter.kind, canonical, 0.0, 1_000_000.0, above_low=True)
