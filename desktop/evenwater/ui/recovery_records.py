"""The records behind the Recovery sheet: what ran in, what was tested, what the animals use, and the note of it all in the log."""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from datetime import UTC, datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import jug_levels, recovery_sheet, shelf
from evenwater.screens.local_zone import present
from evenwater.screens.recovery_sheet import Records, Tested
from evenwater.screens.shown import about, date_words
from evenwater.screens.when import instant_of
from evenwater.session import Document, Entry
from evenwater.ui.learning import Learning
from evenwater.ui.records_pane import JUGS, name_of
from evenwater.wording import say, say_all

_LONG_AGO = datetime(1970, 1, 1, tzinfo=UTC)
# The field of the record that each path of a question belongs to.
FIELD_OF = {
    "overdose.volume": "ran_in", "additive": "stock", "change.parameter": "parameter", "change.measured": "measured",
    "change.target": "target", "exchange.most_per_day": "most_per_day", "signs.cloudy": "cloudy", "signs.white_film": "white_film",
}  # fmt: skip


class RecoveryRecords:
    """Reads and saves the recovery of one system; it is born with its first field."""

    def __init__(self, document: Document, catalogue: Catalogue, learning: Learning) -> None:
        """Start without a system."""
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self.system = ""

    @property
    def record(self) -> str:
        """Id of the recovery."""
        return f"{self.system}:recovery"

    def values(self) -> Mapping[str, Typed]:
        """Return the fields of the recovery."""
        return self._document.values(self.record) if self.system else {}

    def text(self, field: str) -> str:
        """Return a field as plain text."""
        return self.values().get(field, Typed("")).text.strip()

    @property
    def stock(self) -> str:
        """Id of the jug that ran in, or empty."""
        found = self.text("stock")
        return found if found in self._document.records("stock") else ""

    def jugs(self) -> tuple[tuple[str, str], ...]:
        """Return ids and names of all jugs, those that the system uses first."""
        used = [self._document.value(f"{self.system}:{name}", "stock").text for name in self._catalogue.parameters]
        stocks = self._document.records("stock")
        order = dict.fromkeys((*(stock for stock in used if stock in stocks), *stocks))
        return tuple((stock, name_of(self._document, stock, say_all(JUGS))) for stock in order)

    def by_path(self) -> dict[str, Typed]:
        """Return all values by the path of their field."""
        values = self.values()
        out = {path: values.get(field, Typed("")) for path, field in FIELD_OF.items()}
        out |= {f"hold.{name}": values.get(f"hold_{name}", Typed("")) for name in self._catalogue.parameters}
        out["additive"] = Typed(self.stock)
        return out

    def read(self) -> Records:
        """Return what the records hold of the recovery that is shown."""
        document, system = self._document, self._document.values(self.system)
        batch = document.batch_in_use(self.stock) if self.stock else ""
        return Records(
            system=system,
            water=document.values(f"{self.system}:water"),
            recovery=self.values(),
            batch=document.values(batch) if batch else {},
            tested=self._tested(system),
            uses=self._uses(),
        )

    def _tested(self, system: Mapping[str, Typed]) -> dict[str, Tested]:
        """Return the newest test of each parameter: of the log, or of its correction where that is newer."""
        found = {}
        logged = self._document.log.latest_by_subject(self.system, "reading")
        for name, parameter in self._catalogue.parameters.items():
            correction = self._document.values(f"{self.system}:{name}")
            typed = correction.get("measured", Typed(""))
            at = instant_of(correction.get("measured_at", Typed("")).text) or _LONG_AGO
            entry = logged.get(name)
            # A reading without a time that led here from the Correct sheet is the one that is too high.
            led_here = name == self.text("parameter") and at == _LONG_AGO
            if entry is not None and (not typed.text.strip() or (entry.at >= at and not led_here)):
                found[name] = Tested(entry.fields.get("value", Typed("")), entry.value)
            elif typed.text.strip():
                found[name] = Tested(typed, recovery_sheet.value_of(typed, parameter, system))
        return found

    def _uses(self) -> dict[str, Typed]:
        """Return what the animals use in a day: what was typed, else what the log shows."""
        found = {}
        for name in self._catalogue.parameters:
            typed = self._document.value(f"{self.system}:{name}", "daily_use")
            learned = self._learning.known(self.system, name)
            use = typed if typed.text.strip() else None if learned is None else learned.use
            if use is not None:
                found[name] = use
        return found

    def whole_jug(self) -> tuple[Typed | None, str]:
        """Return what ran in if all of the jug did, and what that rests on; None with the reason where nobody knows."""
        stock, document = self.stock, self._document
        if not stock:
            return None, say("Choose the jug that ran in first.")
        batch = document.values(document.batch_in_use(stock)) if document.batch_in_use(stock) else {}
        levels = [jug_levels.level_of(record, document.values(record)) for record in document.owned("level", stock)]
        begin = jug_levels.begin(batch, filter(None, levels), present())
        if begin is None:
            return None, say("Nobody wrote down what is in this jug. Type in how much ran in.")
        given = 0.0
        for system in document.records("system"):
            _, ml = document.log.columns(system, stock, "dose", begin.at)
            given += float(ml.sum())
        left = max(begin.ml - given, 0.0)
        what = say("its level as last read") if begin.read else say("what was made up")
        said = say(
            "{left} is {what}, less the doses logged since. Doses nobody logged are not taken off.",
            left=about(left),
            what=what,
        )
        return Typed(f"{left:.6g}", "mL"), said

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit."""
        if self.system:
            head, _, name = path.partition(".")
            field = f"hold_{name}" if head == "hold" else FIELD_OF.get(path, path)
            self._document.edit(self.record, field, typed, initiator, merge=True)

    def begin(self, parameter: str, initiator: object) -> None:
        """Say what is too high, where that was not said before or is another, as one step; nothing of another one stays."""
        if self.system and self.text("parameter") != parameter:
            fields = {"parameter": Typed(parameter)}
            fields |= {
                name: Typed("") for name in ("measured", "target", "stock", "ran_in", "chosen") if self.text(name)
            }
            self._document.edit_fields(self.record, fields, initiator)

    # The note in the log

    def note(self, said: str, now: datetime) -> Entry:
        """Return the note of the emergency; its id is that of its figures on this day, so that noting it twice is noting it once."""
        stock = self.stock
        batch = self._document.values(self._document.batch_in_use(stock)) if stock else {}
        ran_in = self.values().get("ran_in", Typed(""))
        contents = shelf.contents_of(batch)
        what = ""
        if stock and ran_in.text.strip():
            amount = f"{ran_in.text.strip()} {ran_in.unit}".strip()
            what = say(
                "{amount} ran in from {document}{contents}. ",
                amount=amount,
                document=name_of(self._document, stock, say_all(JUGS)),
                contents=f" ({contents})" if contents else "",
            )
        text = say("Emergency, found {date_words}. {what}{said}", date_words=date_words(now), what=what, said=said)
        # Of what was typed, not of the words: those are in the language of the moment.
        figures = [sorted(each.items()) for each in (self.values(), self._document.values(self.system), batch)]
        made = uuid.uuid5(uuid.NAMESPACE_OID, f"{self.system} {now.date()} {stock} {figures!r}").hex
        return Entry(id=made, system_id=self.system, kind="note", subject="", at=now, fields={"text": Typed(text)})
