"""Looks at the whole fish room for the Rounds sheet, a few systems at a time, and keeps what it saw until that changes.

What is in the log is looked at first; what every jug loses in a day is planned after it, which takes longest.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, time
from time import perf_counter

from PySide6.QtCore import QObject, QTimer, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import jug_levels, logbook, rounds, rounds_jugs, rounds_rates, rounds_tests, shelf
from evenwater.screens.local_zone import present
from evenwater.session import Card, Change, Document, Entry, LogChange, PlansChange
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.records_pane import JUGS, SYSTEMS, name_of
from evenwater.ui.upkeep_records import UpkeepRecords
from evenwater.ui.void_cards import jug_of, of_pump
from evenwater.wording import say, say_all

# How long [s] the window is held at a time: a key pressed meanwhile is still answered at once.
_SLICE_S = 0.012


@dataclass
class _Seen:
    """What was seen of one system: readings, what is corrected; foods; by jug, doses logged [mL] with the last, and a day's [mL]."""

    readings: tuple[rounds.LastReading, ...] = ()
    corrected: tuple[tuple[str, str], ...] = ()
    foods: tuple[rounds.KeptFood, ...] = ()
    logged: Mapping[str, tuple[float, datetime]] = field(default_factory=dict)
    taken: Mapping[str, float] = field(default_factory=dict)


class RoundWatch(QObject):
    """Owns what is known of the room; ``looked`` says that there is more, or something else, than before."""

    looked = Signal()

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QObject
    ) -> None:
        """Watch ``document``; nothing is looked at before ``look``."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self._plans = plans
        self._upkeep = UpkeepRecords(document, catalogue, learning, plans)
        self._seen: dict[str, _Seen] = {}
        self._rates: dict[str, tuple[str, dict[str, float]]] = {}
        self._outdated: dict[tuple[str, str], str] = {}
        self._cards: dict[str, list[Card]] | None = None
        self._levels: dict[str, tuple[jug_levels.Level, ...]] | None = None
        # Systems to look at, in their order: the log of each first, then what is dosed.
        self._unread = dict.fromkeys(document.records("system"))
        self._unplanned = dict(self._unread)
        self._slice = QTimer(self)
        self._slice.setSingleShot(True)
        self._slice.setInterval(0)
        self._slice.timeout.connect(self.look)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._all)
        document.cardsChanged.connect(self._cards_changed)
        document.log.logChanged.connect(self._log_changed)
        document.log.plansChanged.connect(self._plans_changed)

    def look(self) -> bool:
        """Look at what has changed, for a moment now and then between the window's own work; true when it was told."""
        ends = perf_counter() + _SLICE_S
        unread = bool(self._unread)
        work = bool(self._unread or self._unplanned)
        while (self._unread or self._unplanned) and perf_counter() < ends:
            if self._unread:
                self._read(self._next(self._unread))
            else:
                self._plan(self._next(self._unplanned))
        if self.waiting():
            self._slice.start()
        told = work and ((unread and not self._unread) or not self.waiting())
        if told:
            self.looked.emit()
        return told

    def waiting(self) -> bool:
        """Say whether there is still something to look at."""
        return bool(self._unread or self._unplanned)

    def left(self) -> tuple[int, int]:
        """Return of how many systems the log is still to be read, and of how many what is dosed is to be planned."""
        return len(self._unread), len(self._unplanned)

    def room(self) -> rounds.Room:
        """Return the room as far as it was looked at; without the plans that are followed."""
        document = self._document
        systems = {s: name_of(document, s, say_all(SYSTEMS)) for s in document.records("system")}
        seen = [self._seen[s] for s in systems if s in self._seen]
        # With what one system takes still unknown, each jug would seem to last longer than it does.
        known = all(system in self._rates for system in systems)
        return rounds.Room(
            systems,
            tuple(reading for each in seen for reading in each.readings),
            tuple(pair for each in seen for pair in each.corrected),
            tuple(self._hanging()),
            tuple(self._jug(stock, seen, known) for stock in document.records("stock")),
            foods=tuple(food for each in seen for food in each.foods),
        )

    # What changes

    def _all(self, *_: object) -> None:
        self._unread = dict.fromkeys(self._document.records("system"))
        self._unplanned = dict(self._unread)
        self._cards = self._levels = None

    def _changed(self, change: Change) -> None:
        owner = change.record_id.partition(":")[0]
        if owner in self._document.records("system"):
            self._unread[owner] = self._unplanned[owner] = None
        elif "in_use_from" in change.fields or self._document.kind(change.record_id) == "level":
            self._all()
        else:
            self._unplanned = dict.fromkeys(self._document.records("system"))

    def _log_changed(self, change: LogChange) -> None:
        self._unread |= dict.fromkeys(change.system_ids or self._document.records("system"))

    def _plans_changed(self, change: PlansChange) -> None:
        self._unplanned |= dict.fromkeys(change.system_ids or self._document.records("system"))

    def _cards_changed(self, *_: object) -> None:
        self._cards = None

    @staticmethod
    def _next(waiting: dict[str, None]) -> str:
        system = next(iter(waiting))
        del waiting[system]
        return system

    # Looking

    def _read(self, system: str) -> None:
        if system not in self._document.records("system"):
            self._seen.pop(system, None)
            return
        document, log = self._document, self._document.log
        corrected = tuple(
            (system, name) for name in self._catalogue.parameters if document.value(f"{system}:{name}", "measured").text
        )
        found = [self._reading(system, name) for name in log.latest_by_subject(system, "reading")]
        # A reading that stands in a correction is a reading, whether it was logged or not.
        found += [
            rounds.LastReading(system, name, at)
            for _, name in corrected
            if (at := instant(document.value(f"{system}:{name}", "measured_at").text)) is not None
        ]
        newest: dict[str, rounds.LastReading] = {}
        for reading in found:
            if reading.parameter not in newest or newest[reading.parameter].at < reading.at:
                newest[reading.parameter] = reading
        logged = {}
        for stock, last in log.latest_by_subject(system, "dose").items():
            begin = self._begin(stock, self._batch(stock))
            if begin is not None and last.at >= begin.at:
                logged[stock] = float(log.columns(system, stock, "dose", begin.at)[1].sum()), last.at
        kept = self._seen.setdefault(system, _Seen())
        kept.readings, kept.corrected, kept.logged = tuple(newest.values()), corrected, logged
        kept.foods = tuple(rounds.kept_food(food, document.values(food)) for food in document.owned("food", system))
        for card in self._cards_of(system):
            self._why_not(card)

    def _reading(self, system: str, parameter: str) -> rounds.LastReading:
        entries = self._document.log.entries(
            system, ("reading",), parameter, newest_first=True, limit=rounds_tests.FLAT
        )
        same = rounds_tests.alike([entry.fields for entry in entries])
        typed = self._typed(entries[0]) if same >= rounds_tests.FLAT else ""
        return rounds.LastReading(system, parameter, entries[0].at, same, typed)

    def _typed(self, entry: Entry) -> str:
        taken = logbook.Taken(entry.kind, entry.subject, entry.at, "", entry.fields, entry.value)
        return logbook.row(entry.id, taken, self._catalogue, {}).amount

    def _plan(self, system: str) -> None:
        kept = self._seen.get(system)
        if kept is None:
            return
        document, now = self._document, present()
        self._upkeep.system = system
        raw = self._upkeep.raw()
        text = repr(raw)
        if self._rates.get(system, ("",))[0] != text:
            self._rates[system] = (text, rounds_rates.upkeep_rates(raw, self._catalogue, now))
        rates = dict(self._rates[system][1])
        taken: dict[str, float] = {}
        for plan in self._plans.live():
            if plan.system_id != system:
                continue
            # A plan's doses hold what is used in the meantime: it stands in the place of the upkeep.
            rates.pop(plan.parameter, None)
            takes = rounds_rates.plan_takes(plan.body, self._catalogue, now)
            if takes is not None:
                _add(taken, takes[0].partition(":")[0], takes[1])
        for parameter, rate in rates.items():
            _add(taken, document.value(f"{system}:{parameter}", "stock").text, rate)
        kept.taken = taken

    def _hanging(self) -> list[rounds.Hanging]:
        found = []
        self._cards_of("")
        for card in (card for each in (self._cards or {}).values() for card in each):
            why = self._why_not(card)
            void = card.state == "void" or bool(why)
            found.append(rounds.Hanging(card.plan_id, card.system_id, card.parameter, card.valid_until, void, why))
        return found

    def _cards_of(self, system: str) -> list[Card]:
        """Return the cards of a system that were not taken down yet."""
        if self._cards is None:
            self._cards = {}
            for card in self._document.cards():
                if card.state != "removed":
                    self._cards.setdefault(card.system_id, []).append(card)
        return self._cards.get(system, [])

    def _why_not(self, card: Card) -> str:
        """Return why a card must not be followed with what is in its jug now."""
        stock = jug_of(self._document, card)
        batch = self._document.batch_in_use(stock)
        if not batch:
            return say("Its jug is empty or gone.") if stock else of_pump(self._document, card)
        values = self._document.values(batch)
        key = card.plan_id, repr(values)
        if key not in self._outdated:
            self._outdated[key] = shelf.card_outdated(card.body, card.parameter, values, self._catalogue)
        return self._outdated[key] or of_pump(self._document, card)

    def takes(self, stock: str) -> tuple[tuple[str, float], ...] | None:
        """Return which systems take from a jug, with what each takes in a day [mL]; None while that is not known of all."""
        systems = self._document.records("system")
        if not all(system in self._rates for system in systems):
            return None
        seen = ((system, self._seen[system]) for system in systems if system in self._seen)
        return tuple(
            (system, each.taken.get(stock, 0.0)) for system, each in seen if stock in each.taken or stock in each.logged
        )

    def _begin(self, stock: str, batch: Mapping[str, Typed]) -> jug_levels.Begin | None:
        """Return from what on the contents of a jug are reckoned, with this batch in it."""
        return jug_levels.begin(batch, self.levels(stock), present())

    def levels(self, stock: str) -> tuple[jug_levels.Level, ...]:
        """Return the levels that were read of a jug, in the order in which they were noted; what cannot be read is left out."""
        if self._levels is None:
            found: dict[str, list[jug_levels.Level]] = {}
            for record in self._document.records("level"):
                level = jug_levels.level_of(record, self._document.values(record))
                if level is not None:
                    found.setdefault(record.partition(":")[0], []).append(level)
            self._levels = {jug: tuple(each) for jug, each in found.items()}
        return self._levels.get(stock, ())

    def _batch(self, stock: str) -> Mapping[str, Typed]:
        in_use = self._document.batch_in_use(stock)
        return self._document.values(in_use) if in_use else {}

    def _jug(self, stock: str, seen: list[_Seen], known: bool) -> rounds.Contents:
        batch = self._batch(stock)
        begin = self._begin(stock, batch)
        jug = rounds.Contents(stock, name_of(self._document, stock, say_all(JUGS)), instant(_text(batch, "use_by")))
        if not known or begin is None:
            return jug
        return rounds_jugs.filled(
            replace(jug, read_at=begin.at if begin.read else None),
            begin.ml,
            begin.at,
            [
                rounds_jugs.Drawn(each.taken.get(stock, 0.0), *each.logged.get(stock, (0.0, None)))
                for each in seen
                if stock in each.taken or stock in each.logged
            ],
            present(),
            jug_levels.below_ml(self._document.values(stock)),
        )


def _add(taken: dict[str, float], stock: str, rate: float) -> None:
    if stock and rate > 0.0:
        taken[stock] = taken.get(stock, 0.0) + rate


def _text(batch: Mapping[str, Typed], name: str) -> str:
    return batch.get(name, Typed("")).text


def instant(text: str) -> datetime | None:
    """Return an instant from ISO text; a bare date ends with its day."""
    try:
        when = datetime.fromisoformat(text)
    except ValueError:
        return None
    if when.tzinfo is None:
        when = datetime.combine(when.date(), time(23, 59), present().tzinfo)
    return when
