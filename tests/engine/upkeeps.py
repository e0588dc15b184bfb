"""Upkeeps as people write them: text in, a plan or the codes of all reasons out; and the figures of a hand reckoning.

Sources: atomic weights and definitions of ``reckoning``; one mole of calcium carbonate takes two equivalents.
"""

from __future__ import annotations

import copy
from collections.abc import Mapping
from datetime import datetime
from typing import Any

from evenwater.engine import upkeep_intake
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepDose, UpkeepQuestion, solve
from evenwater.engine.upkeep_balance import Drift
from tests.engine.asking import NOW, known
from tests.engine.reckoning import ATOMS, CA_PER_MEQ, DEGREE, SALTS, mass

Raw = dict[str, Any]

LITRES = 340.0
SYSTEM: Raw = {"net_volume": "340 L", "salinity": "35", "temperature": "25 degC", "ph": "8.1"}
# So fine that rounding plays no part beside what is compared.
FINE = "0.000001 mL"
PUMP: Raw = {"flow": "24 mL/min", "step": FINE}
# By what they raise mostly: a jug of a litre that surely dissolves, and an ordinary use per day.
JUGS: dict[str, tuple[str, float]] = {
    "alkalinity": ("sodium carbonate anhydrous", 106.0),
    "calcium": ("calcium chloride dihydrate", 147.0),
    "magnesium": ("magnesium chloride hexahydrate", 203.0),
    "potassium": ("potassium chloride", 20.0),
    "strontium": ("strontium chloride hexahydrate", 10.0),
    "iodide": ("potassium iodide", 0.1),
    "nitrate": ("potassium nitrate", 10.0),
    "phosphate": ("potassium dihydrogen phosphate", 0.5),
    "salinity": ("sodium chloride", 200.0),
}
USES = {
    "alkalinity": "0.9 dKH per day", "calcium": "6.4 mg/L per day", "magnesium": "1 mg/L per day",
    "potassium": "1 mg/L per day", "strontium": "0.02 mg/L per day", "iodide": "0.002 mg/L per day",
    "nitrate": "0.5 mg/L as NO3 per day", "phosphate": "0.01 mg/L as PO4 per day", "salinity": "0.1 ppt per day",
}  # fmt: skip


def jug(chemical: str, grams: float, litres: float = 1.0, **more: Any) -> Raw:
    """Return an additive of a weighed chemical."""
    return {"chemical": chemical, "dissolved": f"{grams:.5f} g", "made_up_to": f"{litres} L", **more}


def limewater(litres: float = 20.0) -> Raw:
    """Return a jug of saturated limewater."""
    return {"chemical": "calcium hydroxide", "made_up_to": f"{litres} L", "saturated": True}


def item(parameter: str, use: str | None = "", additive: Raw | None = None, **pump: Any) -> Raw:
    """Return one value to keep; ordinary where nothing else is said. ``measured`` goes to the item itself."""
    measured = pump.pop("measured", None)
    made: Raw = {"parameter": parameter, "pump": {**PUMP, **pump}, "additive": additive or jug(*JUGS[parameter])}
    if use is not None:
        made["daily_use"] = use or USES[parameter]
    if measured is not None:
        made["measured"] = measured
    return made


def raw(*items: Raw, **tables: Any) -> Raw:
    """Return a question of some items; further tables beside, fields of the system as ``system={...}``."""
    system = {**SYSTEM, **tables.pop("system", {})}
    return copy.deepcopy({
        "system": {name: value for name, value in system.items() if value is not None}, "item": list(items), **tables,
    })  # fmt: skip


def read(question: Mapping[str, Any], now: datetime = NOW) -> UpkeepQuestion:
    """Return the question; the test fails when the text cannot be read."""
    found = upkeep_intake.upkeep(question, known(), now)
    assert isinstance(found, UpkeepQuestion), [(r.code, r.path) for r in found.reasons]
    return found


def ask(question: Mapping[str, Any] | UpkeepQuestion) -> UpkeepAnswer | tuple[str, ...]:
    """Return the plan, or the codes of all reasons against one."""
    found = question if isinstance(question, UpkeepQuestion) else upkeep_intake.upkeep(question, known(), NOW)
    if isinstance(found, Unread):
        return tuple(r.code for r in found.reasons)
    result = solve(found)
    return tuple(r.code for r in result.reasons) if isinstance(result, Refused) else result


def answered(question: Mapping[str, Any] | UpkeepQuestion) -> UpkeepAnswer:
    """Return the plan; the test fails when there is none."""
    result = ask(question)
    assert isinstance(result, UpkeepAnswer), result
    return result


def refused(question: Mapping[str, Any] | UpkeepQuestion) -> Refused:
    """Return the refusal; the test fails when there is a plan."""
    result = solve(question if isinstance(question, UpkeepQuestion) else read(question))
    assert isinstance(result, Refused), [reason.code for reason in result.remarks]
    return result


def dose_of(answer: UpkeepAnswer, parameter: str) -> UpkeepDose:
    """Return what is set on the pump that keeps a parameter."""
    return next(dose for dose in answer.doses if dose.item.parameter.name == parameter)


def drift_of(answer: UpkeepAnswer, name: str) -> Drift:
    """Return what becomes of a value; nothing where it does not move."""
    return next(
        (d for d in answer.drifts if d.name == name), Drift(name, "mg/L", 0.0, (0.0,) * 3, None, None, None, None)
    )


def remarks_of(answer: UpkeepAnswer) -> list[str]:
    """Return the codes of all remarks."""
    return [reason.code for reason in answer.remarks]


def per_ml(chemical: str, grams: float, parameter: str, litres: float = LITRES) -> float:
    """Return what a millilitre of so many grams in a litre raises so much water by, from atomic weights [canonical unit]."""
    salt = SALTS[chemical]
    both = {**salt.raises, **salt.along}
    return float(grams / salt.molar * both[parameter] / 1000) / litres if parameter in both else 0.0


MEQ_PER_DKH, CALCIUM_PER_MEQ = float(DEGREE), float(CA_PER_MEQ)
COMMON_SALT, BICARBONATE = float(mass(Na=1, Cl=1)), float(mass(H=1, C=1, O=3))
POTASSIUM, NITRATE = float(ATOMS["K"]), float(mass(N=1, O=3))
SULFATE_PER_MAGNESIUM = float(mass(S=1, O=4) / ATOMS["Mg"])
