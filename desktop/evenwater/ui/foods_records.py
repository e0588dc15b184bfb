"""The records behind the Foods sheet: the foods of a system, its water, and the newest readings of nitrate and phosphate."""

from __future__ import annotations

import uuid
from collections.abc import Iterator, Mapping

from evenwater.engine.quantities import Typed
from evenwater.screens import exchange_given
from evenwater.screens.exchange_given import LOG, Newest
from evenwater.screens.foods_given import LIQUID, PER_ML
from evenwater.screens.foods_sheet import FOLLOWED, FoodsRoom
from evenwater.screens.names import shown_name
from evenwater.session import Document
from evenwater.wording import say

_KIND = "food"


class FoodsRecords:
    """Reads the foods of one system, and saves what the keeper does to the chosen one."""

    def __init__(self, document: Document) -> None:
        """Start without a system."""
        self._document = document
        self.system = ""
        self._chosen = ""
        # What was read of the log, which a key pressed here does not change.
        self._read: dict[str, Newest] | None = None

    def forget(self) -> None:
        """Ask the disk for the readings anew when they are wanted next."""
        self._read = None

    def foods(self) -> tuple[str, ...]:
        """Return the ids of the system's foods in their order."""
        return self._document.owned(_KIND, self.system) if self.system else ()

    @property
    def food(self) -> str:
        """Id of the food that is shown: the chosen one, else the first; empty where there is none."""
        found = self.foods()
        return self._chosen if self._chosen in found else next(iter(found), "")

    def choose(self, record: str) -> None:
        """Show another food."""
        self._chosen = record

    def room(self) -> FoodsRoom:
        """Return everything that is reckoned with."""
        document = self._document
        if self._read is None:
            self._read = dict(self._readings())
        return FoodsRoom(
            document.values(self.system),
            document.values(f"{self.system}:water"),
            tuple((food, document.values(food)) for food in self.foods()),
            {pump: document.values(pump) for pump in document.records("pump")},
            self._read,
        )

    def _readings(self) -> Iterator[tuple[str, Newest]]:
        logged = self._document.log.latest_by_subject(self.system, "reading")
        for name in FOLLOWED:
            entry = logged.get(name)
            typed = None if entry is None else entry.fields.get("value")
            from_log = None if entry is None or typed is None else Newest(typed, entry.at, LOG)
            found = exchange_given.newest(self._document.values(f"{self.system}:{name}"), from_log)
            if found is not None:
                yield name, found

    def pumps(self) -> tuple[tuple[str, str], ...]:
        """Return all pumps as (id, name)."""
        return tuple(
            (pump, shown_name(self._document.values(pump), say("Unnamed pump")))
            for pump in self._document.records("pump")
        )

    def by_path(self) -> dict[str, Typed]:
        """Return the fields of the food that is shown by the path of their field."""
        values: Mapping[str, Typed] = self._document.values(self.food) if self.food else {}
        return {f"food.{name}": typed for name, typed in values.items()}

    # Editing

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit of the food that is shown."""
        if self.food:
            self._document.edit(self.food, path.partition(".")[2], typed, initiator, merge=True)

    def add(self, initiator: object) -> None:
        """Add a food to the system and show it."""
        record = f"{self.system}:{uuid.uuid4().hex[:8]}"
        self._chosen = record
        self._document.add_record(_KIND, {"sort": Typed(LIQUID), "says": Typed(PER_ML)}, initiator, record)

    def remove(self, initiator: object) -> None:
        """Take the food that is shown off the list and show the one after it; undo brings it back."""
        before, gone = self.foods(), self.food
        if gone:
            place = before.index(gone)
            self._chosen = (*before[place + 1 :], *before[:place][::-1], "")[0]
            self._document.remove_record(gone, initiator)
