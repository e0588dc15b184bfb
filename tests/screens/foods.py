"""Foods of the frag bay as records have them."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime

from evenwater.engine.quantities import Typed
from evenwater.screens.exchange_given import LOG, Newest
from evenwater.screens.foods_sheet import FoodsRoom

Values = Mapping[str, Typed]
NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
TODAY = NOW.date()
BAY: Values = {"name": Typed("North frag bay"), "net_volume": Typed("340", "L"), "volume_uncertainty": Typed("0", "%")}
WATER: Values = {
    "as_much_as": Typed("20", "%"), "way": Typed(""), "nitrate_loss": Typed("3", "%"), "phosphate_loss": Typed("5", "%"),
}  # fmt: skip
MASH: Values = {
    "name": Typed("Mash"), "sort": Typed("liquid food"), "per_day": Typed("10", "mL per day"), "feedings": Typed("4"),
    "says": Typed("percent"), "protein": Typed("3.125", "%"), "phosphorus_share": Typed("0.02", "%"), "cold": Typed("yes"),
    "opened_on": Typed("2026-11-20"), "keeps_days": Typed("14"), "jug_volume": Typed("250", "mL"),
    "line_bore": Typed("3", "mm"), "line_length": Typed("2", "m"),
}  # fmt: skip
AMINO: Values = {
    "name": Typed("Amino acids"), "sort": Typed("amino acids"), "per_day": Typed("1", "mL per day"),
    "says": Typed("per_ml"), "nitrogen": Typed("9", "mg/mL"), "phosphorus": Typed("0", "mg/mL"),
}  # fmt: skip
TRACE: Values = {
    "name": Typed("Trace mix"), "sort": Typed("trace mix"), "per_day": Typed("2", "mL per day"), "says": Typed("label"),
    "label_parameter": Typed("iodide"), "label_dose": Typed("2", "mL"), "label_water": Typed("100", "L"),
    "label_raises": Typed("0.01", "mg/L"),
}  # fmt: skip
READINGS = {
    "nitrate": Newest(Typed("5", "mg/L as NO3"), NOW, LOG),
    "phosphate": Newest(Typed("0.05", "mg/L as PO4"), NOW, LOG),
}


def changed(values: Values, **fields: Typed | None) -> Values:
    """Return a record with some fields replaced, or taken out where None."""
    return {name: typed for name, typed in {**values, **fields}.items() if typed is not None}


def room(*foods: Values, system: Values = BAY, water: Values = WATER, **others: object) -> FoodsRoom:
    """Return the frag bay with 10 L exchanged in a day and these foods, whose ids are their numbers."""
    exchanged = changed(system, exchanged=Typed("10", "L per day"))
    made = tuple((f"bay:{number}", values) for number, values in enumerate(foods, start=1))
    return FoodsRoom(exchanged, water, made, **{"readings": READINGS, **others})  # type: ignore[arg-type]
