"""Pumps and calibrations as they are typed, for tests of the Pumps sheet."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.screens import pump_sheet
from evenwater.screens.pump_sheet import Measured

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
Fields = Mapping[str, Typed]
PUMP: Fields = {
    "name": Typed("Left head"),
    "flow": Typed("24", "mL/min"),
    "smallest_dose": Typed("0.5", "mL"),
    "step": Typed("0.1", "mL"),
    "doses_per_day": Typed("24"),
}


def pump(**changes: Typed) -> dict[str, Typed]:
    """Return a pump with fields changed."""
    return {**PUMP, **changes}


def calibration(
    reads: Sequence[str], seconds: str = "75", days_ago: float = 0.0, hours: str = "", **more: Typed
) -> dict[str, Typed]:
    """Return a calibration on a cylinder of 0.5 mL, the first run with its time and the others like it."""
    made = {
        "at": Typed((NOW - timedelta(days=days_ago)).isoformat()),
        "method": Typed("cylinder"),
        "graduation": Typed("0.5", "mL"),
        "run_1_seconds": Typed(seconds, "s"),
        **{f"run_{n}_reads": Typed(text, "mL") for n, text in enumerate(reads, start=1) if text},
        **({"hours": Typed(hours, "h")} if hours else {}),
    }
    return {**made, **more}


def weighed(reads: Sequence[str], seconds: str = "60", **more: Typed) -> dict[str, Typed]:
    """Return a calibration on a scale of 0.01 g, with water of 22 degrees."""
    made = {
        "at": Typed(NOW.isoformat()),
        "method": Typed("scale"),
        "readability": Typed("0.01", "g"),
        "water_temperature": Typed("22", "degC"),
        "run_1_seconds": Typed(seconds, "s"),
        **{f"run_{n}_reads": Typed(text, "g") for n, text in enumerate(reads, start=1)},
    }
    return {**made, **more}


def read(made: Fields, of: Fields = PUMP, dose_ml: float | None = None, record: str = "p:1") -> Measured:
    """Return a calibration, read."""
    return pump_sheet.measured(record, of, made, dose_ml, NOW)


def flowing(ml_per_min: float, days_ago: float, hours: float, record: str, of: Fields = PUMP) -> Measured:
    """Return a calibration whose runs give exactly one flow."""
    amount = f"{ml_per_min * 2.0:.4f}"
    made = calibration([amount] * 3, "120", days_ago, f"{hours:.2f}", graduation=Typed("0.1", "mL"))
    return read(made, of, record=record)
