"""The records of an invented system, for tests of its exchange."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import timedelta

from evenwater.engine.quantities import Typed
from evenwater.screens import exchange_given, exchange_sheet, upkeep
from evenwater.screens.exchange_given import LOG, Given, Newest
from evenwater.screens.exchange_parts import ValueRow
from evenwater.screens.exchange_sheet import Exchanged, ExchangeView
from tests.engine.asking import NOW, known

NBSP = "\u00a0"
DKH = 1.0 / 2.8038595
SYSTEM = {
    "net_volume": Typed("340", "L"), "volume_uncertainty": Typed("3", "%"), "salinity": Typed("35", "ppt"),
    "temperature": Typed("25", "degC"), "evaporation": Typed("4", "L per day"), "exchanged": Typed("10", "L per day"),
}  # fmt: skip
SODA = {"chemical": Typed("sodium carbonate anhydrous"), "dissolved": Typed("106", "g"), "made_up_to": Typed("1", "L")}
CALCIUM = {
    "chemical": Typed("calcium chloride dihydrate"),
    "dissolved": Typed("147", "g"),
    "made_up_to": Typed("1", "L"),
}
PUMP = {"flow": Typed("24", "mL/min"), "step": Typed("0.1", "mL"), "doses_per_day": Typed("24")}
KEPT = {
    "alkalinity": {"measured": Typed("9", "dKH"), "daily_use": Typed("0.9", "dKH per day")},
    "calcium": {"measured": Typed("400", "mg/L"), "daily_use": Typed("6.4", "mg/L per day")},
}
BATCHES = {"alkalinity": SODA, "calcium": CALCIUM}
NEW = {"alkalinity": Typed("7", "dKH"), "calcium": Typed("430", "mg/L"), "salinity": Typed("35", "ppt")}


def hours_ago(hours: float) -> Typed:
    """Return when something was measured, as the record keeps it."""
    return Typed((NOW - timedelta(hours=hours)).isoformat())


def logged(text: str, unit: str, days: float) -> Newest:
    """Return a reading of the log, so many days old."""
    return Newest(Typed(text, unit), NOW - timedelta(days=days), LOG)


def given(**changes: object) -> Given:
    """Return two values that are kept and a new water that was tested, with some of it replaced."""
    corrections: Mapping[str, Mapping[str, Typed]] = {
        name: {**fields, "measured_at": hours_ago(5)} for name, fields in KEPT.items()
    }
    usual: dict[str, object] = {"system": SYSTEM, "water": NEW, "corrections": corrections, "batches": BATCHES}
    return Given(**{**usual, **changes})  # type: ignore[arg-type]


def kept_up() -> upkeep.UpkeepAnswer:
    """Return the plan of the Upkeep sheet for the two values."""
    items = [
        {"parameter": name, **KEPT[name], "additive": BATCHES[name], "pump": PUMP} for name in ("alkalinity", "calcium")
    ]
    found = upkeep.evaluate({"system": SYSTEM, "item": items}, known(), NOW).answer
    assert found is not None
    return found


def shown(asked: Given | None = None, **tables: object) -> Exchanged:
    """Return what the sheet shows of a system; ``tables`` replace what the records say."""
    raw = exchange_given.raw_question(given() if asked is None else asked, known())
    return exchange_sheet.evaluate({**raw, **tables}, known(), NOW)


def plain(text: str) -> str:
    """Return a text with ordinary spaces."""
    return text.replace(NBSP, " ")


def answered(**changes: object) -> ExchangeView:
    """Return the view of a system with some of its records replaced; the test fails when it is no answer."""
    found = shown(given(**changes)).view
    assert found.state == "answered", found.messages
    return found


def rows(view: ExchangeView) -> dict[str, ValueRow]:
    """Return the rows of the values by the name of the parameter."""
    return {row.parameter: row for row in view.values}
