"""A log that has grown since its last copy."""

from __future__ import annotations

from pathlib import Path

from evenwater.store import Store, copies
from tests.store.logged import dose, later, note, reading
from tests.store.writing import Times, added, card_for, typed

DAY = 24 * 3600.0


def grow(store: Store, times: Times) -> None:
    """Write a reading and two cards, let a day pass, so that there is a copy of that, and go on."""
    store.fill(added("a", name="North frag bay"))
    store.log([reading("kept", 6.8)])
    store.add_card(card_for("HANGS", ""))
    store.add_card(card_for("GOES", "", parameter="calcium"))
    times.pass_by(DAY)
    store.apply(typed("a", "ph", "8.1"))
    store.set_card_state("GOES", "void")
    store.log([reading("later", 7.1, later(10)), dose("given", 12.0, later(20)), dose("more", 1.0, later(30))])
    store.log([note("said", at=later(40))])
    store.add_card(card_for("NEW", "", parameter="magnesium"))


def newest_daily(file: Path) -> Path:
    return next(copy.file for copy in copies(file) if copy.kind == "daily")
