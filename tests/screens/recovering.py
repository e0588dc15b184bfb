"""Records of a recovery as the sheet hands them to its view model."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from evenwater.engine.quantities import Typed
from evenwater.screens.recovery_sheet import Records, Recovered, Tested, evaluate
from tests.engine.asking import NOW, known

SYSTEM = {
    "name": Typed("North frag bay"), "net_volume": Typed("340", "L"), "volume_uncertainty": Typed("0", "%"), "salinity": Typed("35", "ppt"),
    "temperature": Typed("25", "degC"), "ph": Typed("8.1"),
}  # fmt: skip
JUG = {"chemical": Typed("sodium carbonate anhydrous"), "dissolved": Typed("106", "g"), "made_up_to": Typed("1", "L")}
WATER = {
    "alkalinity": Typed("7", "dKH"),
    "calcium": Typed("410", "mg/L"),
    "salinity": Typed("35", "ppt"),
    "temperature": Typed("25", "degC"),
}
USES = {"alkalinity": Typed("0.9", "dKH per day"), "calcium": Typed("6.4", "mg/L per day")}


def reading(parameter: str, text: str, unit: str) -> Tested:
    """Return a reading as the log has it."""
    p = known().parameters[parameter]
    return Tested(Typed(text, unit), p.canonical(float(text)))


BEFORE = {"alkalinity": reading("alkalinity", "8", "dKH"), "calcium": reading("calcium", "420", "mg/L")}
JUG_RAN_IN = Records(SYSTEM, WATER, {"ran_in": Typed("1", "L"), "stock": Typed("jug")}, JUG, BEFORE, USES)


def said(records: Records = JUG_RAN_IN, **recovery: str) -> Records:
    """Return the records with fields of the recovery changed."""
    changed: Mapping[str, Any] = {name: Typed(text) for name, text in recovery.items()}
    return replace(records, recovery={**records.recovery, **changed})


def shown(records: Records = JUG_RAN_IN, **recovery: str) -> Recovered:
    """Return what the sheet shows of it."""
    return evaluate(said(records, **recovery), known(), NOW)
