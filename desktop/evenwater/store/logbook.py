"""Writing in the log: entries, plans with their cards, each act in one transaction and one undo step."""

from __future__ import annotations

import time
from collections.abc import Callable, Collection, Iterable, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import datetime
from itertools import islice
from pathlib import Path

from evenwater.store.backups import DailyCopies
from evenwater.store.cards import Card, Cards
from evenwater.store.database import Database
from evenwater.store.entries import Entry, Logged, Looked, micros
from evenwater.store.entry_reading import LogReader
from evenwater.store.entry_writing import EntryWriter, Moves
from evenwater.store.errors import refused
from evenwater.store.journal import StepJournal
from evenwater.store.place import Place
from evenwater.store.plans import Plan, Plans, out_of_force
from evenwater.store.steps import PlanState, Step, utc_now

# So many entries are imported between two looks at whether the keeper wants to stop.
IMPORT_CHUNK = 2000


@dataclass(frozen=True)
class Clock:
    """Where the time comes from: ``now`` for the calendar, ``seconds`` for intervals."""

    now: Callable[[], datetime] = utc_now
    seconds: Callable[[], float] = time.monotonic


class _StoppedError(Exception):
    """The keeper stopped an import; what it had done is rolled back."""


class LogBook(LogReader):
    """Entries and plans of an open log. Every method raises ``StoreError`` when the disk or the file refuses."""

    def __init__(self, database: Database, file: Path | None, clock: Clock) -> None:
        """Take over an open database; ``file`` is None for one in memory."""
        super().__init__(database)
        self._clock = clock
        self._journal = StepJournal(database)
        self._cards = Cards(database)
        self._entries = EntryWriter(database)
        self._plans = Plans(database)
        self._copies = DailyCopies(database, file)
        self._place = Place(file)
        self.delivery = ""
        """Under what name a server is to keep that the next writing was delivered; empty when nobody will ask."""
        self._copies.keep_up(clock.now())

    def log(self, entries: Sequence[Entry], looked: Looked | None = None) -> Logged:
        """Save entries as one step; those that are there already are there once, and no step when all are.

        The same entries may be given again whenever it is not certain that they were saved. One that
        was removed in the meantime is there again afterwards. ``looked`` is what was seen when the keeper
        was asked: looking again and saving are one transaction, in which nobody else can save.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` when a system is not there; ``"store.entry_taken"`` when an id is
            in force for an entry that never said this; ``"store.dose_beside"`` when there is a dose that
            was not seen. Nothing is saved then.
        """

        def add(now_us: int) -> Moves:
            moves = Moves()
            self._entries.add(entries, now_us, moves)
            dose = self.unseen(looked, entries) if moves and looked is not None else None
            if dose is not None:
                raise refused("store.dose_beside", entry=dose.id, who=dose.who, at=dose.at)
            return moves

        return Logged.NEW if self._carry_out("log", add) else Logged.ALREADY

    def unseen(self, looked: Looked, entries: Sequence[Entry]) -> Entry | None:
        """Return a dose that is neither one of ``entries`` nor was seen before the keeper was asked about them, or None."""
        known = looked.seen | {entry.id for entry in entries}
        doses = self.entries(looked.system_id, ("dose",), since=looked.since, until=looked.until)
        return next((dose for dose in doses if dose.id not in known), None)

    def change_entry(self, entry: Entry, by: str = "", seen: Entry | None = None) -> bool:
        """Let the entry with this id say this; False when it does so already. What it said stays in its history.

        ``by`` is who changes it; ``seen`` is what it said when they began, so that the change of
        another window is not written over.

        Raises
        ------
        StoreError
            As ``EntryWriter.change`` says.
        """
        return bool(self._carry_out("change_entry", lambda now_us: self._entries.change(entry, now_us, by, seen)))

    def remove_entries(self, ids: Collection[str], by: str = "") -> bool:
        """Take entries out as one step; False when all are out already. Undo, or logging them again, brings them back.

        Raises
        ------
        StoreError
            ``"store.entry_gone"`` when there never was one of them; nothing is removed then.
        """
        return bool(self._carry_out("remove_entries", lambda now_us: self._entries.remove(ids, now_us, by)))

    def import_entries(self, entries: Iterable[Entry], progress: Callable[[int], bool]) -> int | None:
        """Save many entries as one step and return how many are new, or None when it was stopped.

        Ids that are in force are passed over; they should come from ``content_id``, so that the same
        file adds nothing twice. ``progress`` is called after each ``IMPORT_CHUNK`` with the number
        of entries read so far; once it returns False nothing is saved. What it writes through this
        log is refused with ``"store.locked"`` until the import has ended.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` when a system is not there; nothing is saved then.
        """

        def add(now_us: int) -> Moves:
            moves, left, read = Moves(), iter(entries), 0
            while chunk := list(islice(left, IMPORT_CHUNK)):
                self._entries.add(chunk, now_us, moves, known_is_enough=True)
                read += len(chunk)
                if not progress(read):
                    raise _StoppedError
            return moves

        try:
            return len(self._carry_out("import", add).ids)
        except _StoppedError:
            return None

    # Plans

    def plans(self, system_id: str = "", live: bool = True) -> list[Plan]:
        """Return the plans of a system, or of all present ones, oldest first; with ``live`` those that have not ended."""
        return self._plans.all(system_id, live)

    def start_plan(self, plan: Plan, card: Card, note: Entry) -> list[Card]:
        """Start a plan, register its card and log a note of it: all or nothing, and one step.

        The live plan for the same purpose ends with ``REPLACED``. Returns the older cards for it,
        now void. Undo ends what was started and declares its card void; it brings the plan before
        back but not its card. Starting the same plan twice does nothing the second time.

        Raises
        ------
        StoreError
            As ``Plans.start``, ``Cards.add`` and ``log`` say; nothing is saved then.
        ValueError
            When the card is not for this plan.
        """
        if (card.plan_id, card.system_id, card.parameter) != (plan.plan_id, plan.system_id, plan.parameter):
            raise ValueError("the card is for another plan")
        gone: list[Card] = []

        def start(now_us: int) -> Moves:
            moves = Moves(plans=self._plans.start(plan))
            gone.extend(self._cards.add(card))
            self._entries.add((note,), now_us, moves)
            return moves

        self._carry_out("start_plan", start)
        return gone

    def end_plan(self, plan_id: str, ended: datetime, reason: str, note: Entry) -> list[Card]:
        """End a live plan, declare its card void and log a note of it: all or nothing, and one step.

        Returns the card when it was in use. Undo makes the plan live again, but brings no card back.
        A plan that has ended already stays as it is, and nothing is logged.

        Raises
        ------
        StoreError
            ``"store.plan_unknown"`` when there is no such plan, and as ``log`` says; nothing is
            saved then.
        ValueError
            When ``ended`` has no zone.
        """
        gone: list[Card] = []

        def end(now_us: int) -> Moves:
            moves = Moves(plans=self._plans.end(plan_id, ended, reason))
            if moves.plans:
                gone.extend(self._cards.void_known([plan_id]))
                self._entries.add((note,), now_us, moves)
            return moves

        self._carry_out("end_plan", end)
        return gone

    def _writing(self) -> AbstractContextManager[None]:
        self._place.check()
        return self._database.writing(self.delivery)

    def _carry_out(self, code: str, change: Callable[[int], Moves]) -> Moves:
        """Change entries and plans in one transaction, and write the step of it unless nothing moves."""
        self._copies.keep_up(self._clock.now())
        with self._writing():
            now = self._clock.now()
            moves = change(micros(now))
            if moves:
                step = Step(code, (), touched=tuple(moves.scopes), plans=tuple(moves.plans))
                self._journal.append(step, now, moves.ids)
        return moves

    def _put_plans(self, states: Sequence[tuple[str, PlanState]]) -> None:
        """Bring plans into another state; what is not live then has no card in use."""
        for plan_id, state in states:
            self._plans.put(plan_id, state)
        self._cards.void_known(out_of_force(states))
