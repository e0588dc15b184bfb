"""Systems asked for as the window asks for them: the frag bay with what is known of it and what runs in it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from evenwater.engine.correction import Answer
from evenwater.engine.quantities import Typed
from evenwater.screens.exchange_given import LOG, Given, Newest
from evenwater.screens.together import Asked, Noted, Together, evaluate
from evenwater.screens.together_view import TogetherView, view
from tests.engine.asking import NOW, answered, known, worked
from tests.engine.upkeeps import raw

Texts = Mapping[str, str]
BAY = {
    "name": "North frag bay",
    "net_volume": "340 L",
    "volume_uncertainty": "3 %",
    "salinity": "35 ppt",
    "temperature": "25 degC",
}
FRESH = timedelta(hours=1)


def typed(texts: Texts) -> dict[str, Typed]:
    """Return fields as typed, each with its unit in the text."""
    return {name: Typed(text) for name, text in texts.items()}


def read(text: str, age: timedelta = FRESH) -> Newest:
    """Return a reading of the log."""
    return Newest(Typed(text), NOW - age, LOG)


def asked(
    readings: Mapping[str, Newest] | None = None,
    uses: Texts | None = None,
    *items: dict[str, Any],
    system: Texts | None = None,
    water: Texts | None = None,
    foods: tuple[Texts, ...] = (),
    learned: Texts | None = None,
    **more: Any,
) -> Asked:
    """Return what is asked: readings, typed uses, the items of the upkeep, and whatever else runs."""
    given = Given(
        system=typed({**BAY, **(system or {})}),
        water=typed(water or {}),
        corrections={name: typed({"daily_use": use}) for name, use in (uses or {}).items()},
        readings=readings or {},
        learned=typed(learned or {}),
        foods=tuple(typed(food) for food in foods),
    )
    upkeep = raw(*items) if items else {}
    return Asked(given, upkeep, **more)


def together(*args: Any, now: datetime = NOW, **more: Any) -> Together:
    """Return everything together."""
    return evaluate(asked(*args, **more), known(), now)


def shown(*args: Any, **more: Any) -> TogetherView:
    """Return what is shown of it."""
    return view(together(*args, **more), NOW)


def correction(**changes: Any) -> Answer:
    """Return the worked example's correction of alkalinity, or another."""
    return answered(worked(system__volume_uncertainty="3 %", **changes))


def noted(stock: str, age: timedelta, **rises: float) -> Noted:
    """Return a dose of the log [canonical units]."""
    return Noted(NOW - age, stock, rises)
