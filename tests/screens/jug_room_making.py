"""Jugs as the room knows them: a litre of soda ash that one pump doses from, with whatever a test changes of it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.screens.jug_levels import Level, begin, below_ml
from evenwater.screens.jug_room import Drawer, Jug
from evenwater.screens.rounds_jugs import Drawn, filled
from evenwater.screens.rounds_room import Contents

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
DAY = timedelta(days=1)
PER_DAY = 48.0
ASH: Mapping[str, Typed] = {
    "chemical": Typed("sodium carbonate anhydrous"),
    "dissolved": Typed("106", "g"),
    "made_up_to": Typed("1", "L"),
    "in_use_from": Typed((NOW - 10 * DAY).isoformat()),
}
TANK: Mapping[str, Typed] = {
    "name": Typed("North frag bay"),
    "net_volume": Typed("340", "L"),
    "salinity": Typed("35", "ppt"),
}
PUMP: Mapping[str, Typed] = {
    "name": Typed("Head 1"),
    "flow": Typed("24", "mL/min"),
    "doses_per_day": Typed("24"),
    "line_bore": Typed("4", "mm"),
    "line_length": Typed("2", "m"),
}


def level(
    days_ago: float, ml: float, *, before: float | None = None, primed: bool = False, rate: float | None = None
) -> Level:
    """Return a level read so many days ago; a refill when it says what was in the jug before."""
    name = f"ash:{round(days_ago * 1000):08x}"
    return Level(name, NOW - days_ago * DAY, ml, before is not None, before, primed, "K. L.", rate)


def drawer(per_day: float = PER_DAY, **changes: object) -> Drawer:
    """Return the system that takes from the jug."""
    fields: dict[str, object] = {
        "system_id": "north", "name": "North frag bay", "system": TANK, "per_day_ml": per_day, "parameters": ("alkalinity",),
        "pumps": {"head": PUMP}, "tested": {"alkalinity": 2.8},
    }  # fmt: skip
    return Drawer(**(fields | changes))  # type: ignore[arg-type]


def jug(
    *levels: Level,
    batch: Mapping[str, Typed] = ASH,
    stock: Mapping[str, Typed] | None = None,
    drawers: tuple[Drawer, ...] | None = None,
    stock_id: str = "ash",
    name: str = "Soda ash, white jug",
) -> Jug:
    """Return a jug with what is left in it, reckoned as the rounds reckon it."""
    drawers, stock = (drawer(),) if drawers is None else drawers, stock or {}
    contents = Contents(stock_id, name, None)
    start = begin(batch, levels, NOW)
    if start is not None:
        drawn = [
            Drawn(
                each.per_day_ml,
                sum(ml for at, ml in each.logged if at > start.at.timestamp()),
                max(
                    (datetime.fromtimestamp(at, UTC) for at, _ in each.logged if at > start.at.timestamp()),
                    default=None,
                ),
            )
            for each in drawers
        ]
        read_at = start.at if start.read else None
        contents = filled(
            Contents(stock_id, name, None, read_at=read_at), start.ml, start.at, drawn, NOW, below_ml(stock)
        )
    return Jug(contents, stock, f"{stock_id}:5e1f00d2" if batch else "", batch, levels, drawers)
