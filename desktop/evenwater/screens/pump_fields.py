"""The fields of the Pumps sheet that take a quantity, by their path: ``pump.flow``, ``calibration.run_1_reads``."""

from __future__ import annotations

from dataclasses import replace

from evenwater.engine import fields
from evenwater.engine.pump_wear import LIFE_HOURS
from evenwater.engine.reader import Field
from evenwater.screens.pump_words import MOST_RUNS, SCALE

__all__ = ["CALIBRATION_FIELDS", "LIFE_HOURS", "LONGEST_S", "OUTLET", "PUMP_FIELDS", "reads"]

# An outlet that hangs in the water stands below nothing [cm].
OUTLET = Field("pump.outlet_height", "length", "cm", -200.0, 500.0)
LONGEST_S = 7_200.0
_SECONDS = Field("seconds", "time", "s", 0.0, LONGEST_S, above_low=True, bare=True)
# As the reader of a calibration has it: so much comes out where nobody knows the flow, else so many times what is expected.
_VOLUME = Field("reads", "volume", "mL", 0.0, 5_000.0)
_MASS = Field("reads", "mass", "g", 0.0, 5_000.0)
_ADMITTED = 20.0

PUMP_FIELDS: dict[str, Field] = {
    spec.path: spec
    for spec in (
        fields.FLOW,
        fields.DOSES_PER_DAY,
        fields.SMALLEST_DOSE,
        fields.STEP,
        fields.LARGEST_SHARE,
        replace(fields.HEAD_HOURS, path="pump.head_hours"),
        replace(fields.HEAD_LIFE, path="pump.head_life"),
        replace(fields.LINE_BORE, path="pump.line_bore"),
        replace(fields.LINE_LENGTH, path="pump.line_length"),
        OUTLET,
    )
}
CALIBRATION_FIELDS: dict[str, Field] = {
    spec.path: spec
    for spec in (
        replace(fields.HEAD_HOURS, path="calibration.hours"),
        replace(fields.GRADUATION, path="calibration.graduation"),
        replace(fields.READABILITY, path="calibration.readability"),
        replace(fields.RUN_WATER, path="calibration.water_temperature"),
        replace(fields.AIR_PRESSURE, path="calibration.air_pressure"),
        Field("calibration.doses", "number", "", 1.0, 10_000.0, bare=True, whole=True),
        *(replace(_SECONDS, path=f"calibration.run_{n}_seconds") for n in range(1, MOST_RUNS + 1)),
    )
}


def reads(number: int, method: str, expected_ml: float | None) -> Field:
    """Return the field for what a run gave.

    Parameters
    ----------
    number : int
        Which run, from 1.
    method : str
        ``"scale"`` where it is weighed, else it is read on a cylinder.
    expected_ml : float or None
        What should come out at the flow in use [mL]; None where that is not known.

    Returns
    -------
    Field
        With bounds that keep a point from being one of thousands.
    """
    spec = replace(_MASS if method == SCALE else _VOLUME, path=f"calibration.run_{number}_reads")
    return spec if not expected_ml else replace(spec, high=_ADMITTED * expected_ml)
