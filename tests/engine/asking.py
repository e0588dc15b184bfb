"""Puts questions as people write them to the product: text in, a plan or reasons out."""

from __future__ import annotations

import copy
from collections.abc import Mapping
from datetime import UTC, datetime
from functools import lru_cache
from typing import Any

from evenwater.assets import resources
from evenwater.engine import correction, intake
from evenwater.engine.catalogue import Catalogue, load
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.question import CorrectionQuestion

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
Raw = dict[str, Any]

# The worked example: soda ash, 340 L, 6.8 to 8.4 dKH.
WORKED: Mapping[str, Mapping[str, Any]] = {
    "system": {"net_volume": "340 L"},
    "change": {
        "parameter": "alkalinity",
        "measured": "6.8 dKH",
        "target": "8.4 dKH",
        "daily_use": "0.9 dKH per day",
        "fastest_rise": "1.0 dKH per day",
    },
    "additive": {"chemical": "sodium carbonate anhydrous", "dissolved": "106 g", "made_up_to": "1 L"},
    "pump": {"flow": "24 mL/min"},
}


@lru_cache(maxsize=1)
def known() -> Catalogue:
    """Return the parameters and chemicals that ship with the product."""
    return load(resources())


def worked(**changes: Any) -> Raw:
    """Return the worked example with some fields changed; ``table__field=None`` leaves a field out."""
    raw = {table: dict(copy.deepcopy(fields)) for table, fields in WORKED.items()}
    for name, value in changes.items():
        table, _, field = name.partition("__")
        if value is None:
            raw[table].pop(field, None)
        else:
            raw[table][field] = value
    return raw


def read(raw: Mapping[str, Any], now: datetime = NOW) -> CorrectionQuestion:
    """Return the question; the test fails when the text cannot be read."""
    question = intake.correction(raw, known(), now)
    assert isinstance(question, CorrectionQuestion), [(r.code, r.path) for r in question.reasons]
    return question


def ask(raw: Mapping[str, Any], now: datetime = NOW) -> Answer | tuple[str, ...]:
    """Return the plan, or the codes of all reasons against one."""
    question = intake.correction(raw, known(), now)
    if isinstance(question, intake.Unread):
        return tuple(r.code for r in question.reasons)
    result = correction.solve(question)
    return tuple(r.code for r in result.reasons) if isinstance(result, Refused) else result


def answered(raw: Mapping[str, Any], now: datetime = NOW) -> Answer:
    """Return the plan; the test fails when there is none."""
    result = ask(raw, now)
    assert isinstance(result, Answer), result
    return result
