"""The log: one open file with its records, its entries, its undo journal, its cards and its plans."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.store.batches import BATCH, IN_USE_FROM, after_all, belongs, stock_of
from evenwater.store.cards import Card, State
from evenwater.store.database import Database
from evenwater.store.entries import Entry, micros
from evenwater.store.entry_writing import Moves
from evenwater.store.errors import refused
from evenwater.store.logbook import Clock, LogBook
from evenwater.store.migrations import MIGRATIONS, Migration
from evenwater.store.opening import open_file, open_in_memory
from evenwater.store.records import Records, Snapshot
from evenwater.store.restore import put_back
from evenwater.store.steps import NOTHING, Label, SetField, Step, instant_text, label_of

if TYPE_CHECKING:
    from evenwater.store.address import Address
    from evenwater.store.spool import Spool

# Two keystrokes further apart than this [s] are two steps.
MERGE_SECONDS = 3.0
# How long [s] a save waits for another window before it is refused; the window stands still so long.
BUSY_SECONDS = 0.25


@dataclass(frozen=True)
class _Typing:
    """The step that further keystrokes in the same field may join."""

    number: int
    record_id: str
    field: str
    seconds: float


class Store(LogBook):
    """One open log. Every method raises ``StoreError`` when the disk or the file refuses.

    A method that returned has its work on the disk. The file is for one thread; several windows
    and programs may have it open at once.
    """

    def __init__(self, database: Database, file: Path | None, clock: Clock) -> None:
        """Take over an open database; ``file`` is None for one in memory. Use ``open``."""
        super().__init__(database, file, clock)
        self._file = file
        self._records = Records(database)
        self._typing: _Typing | None = None
        self.spool: Spool | None = None
        """Where what waits for a server is kept on this computer; None where the log is here itself."""
        self._seen = database.changes()
        self._copies.keep_up(clock.now())

    @classmethod
    def open(
        cls,
        file: Path,
        clock: Clock | None = None,
        migrations: Sequence[Migration] = MIGRATIONS,
        busy_seconds: float = BUSY_SECONDS,
    ) -> Self:
        """Open the log ``file``, making it and its folder when there is none.

        Raises
        ------
        StoreError
            As ``opening.open_file`` says; the file is then untouched.
        """
        times = clock or Clock()
        return cls(open_file(file, migrations, times.now(), busy_seconds), file, times)

    @classmethod
    def open_server(
        cls, address: Address, folder: Path, clock: Clock | None = None, password: str = "", wait: bool = True
    ) -> Self:
        """Open the log at ``address`` on a server; ``folder`` is this computer's own place for it.

        Raises
        ------
        StoreError
            As ``facility.open_on_server`` says.
        """
        # With it comes what nobody needs whose log is a file.
        from evenwater.store.facility import open_on_server
        from evenwater.store.spool import Spool

        times = clock or Clock()
        database = open_on_server(address, folder, times.now, password, wait)
        try:
            store = cls(database, None, times)
            store.spool = Spool(folder)
        except BaseException:
            database.close()
            raise
        return store

    @classmethod
    def open_memory(cls, clock: Clock | None = None) -> Self:
        """Open a log that ends with the program and leaves nothing behind."""
        return cls(open_in_memory(MIGRATIONS), None, clock or Clock())

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    @property
    def file(self) -> Path | None:
        """The file on disk, or None for a log in memory."""
        return self._file

    @property
    def backup_fault(self) -> Reason | None:
        """Why the newest daily copy could not be made, or what is read may be old, or None; the log itself goes on."""
        return self._database.fault() or self._copies.fault

    @property
    def server(self) -> str:
        """The server that has the log, as it is shown; empty for one in a file or in memory."""
        return self._database.address

    def close(self) -> None:
        """Close the log; nothing waits to be saved, so nothing can fail to be. A copy being made is waited for."""
        self._copies.close()
        self._database.close()
        if self.spool is not None:
            self.spool.close()

    # Reading

    def records(self, kind: str) -> tuple[str, ...]:
        """Return the ids of the records of ``kind`` in their order."""
        return self._records.ids(kind)

    def values(self, record_id: str) -> dict[str, Typed]:
        """Return the filled-in fields of a record as they were typed."""
        return self._records.values(record_id)

    def snapshot(self) -> Snapshot:
        """Return all records and values as they are at one moment."""
        with self._database.reading():
            self._seen = self._database.changes()
            return self._records.snapshot()

    def changed_elsewhere(self) -> bool:
        """Say whether another window or program has saved since the last ``snapshot``."""
        return self._database.changes() != self._seen

    # Editing

    def apply(self, step: Step, merge: bool = False) -> Step | None:
        """Save one step in one transaction and return it as recorded, or None when it changes nothing.

        With ``merge`` it joins the step before, when both are typing in one field, no commit point
        lies between them and no more than ``MERGE_SECONDS`` have passed; it is saved all the same.

        Raises
        ------
        StoreError
            Nothing of the step is saved then.
        """
        self._copies.keep_up(self._clock.now())
        typing, self._typing = self._typing, None
        with self._writing():
            edits = self._records.complete(step.edits)
            if not edits:
                self._typing = typing
                return None
            at, seconds = self._clock.now(), self._clock.seconds()
            last = edits[-1]
            if merge and isinstance(last, SetField) and len(edits) == 1 and self._joins(typing, last, seconds):
                number = self._journal.last_done()
                self._journal.lengthen(number, last.after, at)
            else:
                number = self._journal.append(Step(step.code, tuple(edits)), at)
        if step.code == "edit" and isinstance(last, SetField):
            self._typing = _Typing(number, last.record_id, last.field, seconds)
        return Step(step.code, tuple(edits), number, at)

    def commit_point(self) -> None:
        """End the typing in a field: what comes next is a step of its own."""
        self._typing = None

    def undo(self) -> Step | None:
        """Take the last step back and return it, or None when there is none here; no card comes back into use.

        On a server there is none while the last step was done on another laptop.
        """
        self.commit_point()
        with self._writing():
            step = self._journal.step(self._mine(self._journal.last_done()))
            if step is not None:
                for edit in reversed(step.edits):
                    self._records.undo(edit)
                if step.touched:
                    self._entries.undo(step.number, micros(self._clock.now()))
                self._put_plans([(change.plan_id, change.before) for change in reversed(step.plans)])
                self._journal.mark(step.number, undone=True)
        return step

    def redo(self) -> Step | None:
        """Bring the step undone last back and return it, or None when there is none; no card comes back into use."""
        self.commit_point()
        with self._writing():
            step = self._journal.step(self._mine(self._journal.first_undone()))
            if step is not None:
                for edit in step.edits:
                    self._records.redo(edit)
                if step.touched:
                    self._entries.redo(step.number, micros(self._clock.now()))
                self._put_plans([(change.plan_id, change.after) for change in step.plans])
                self._journal.mark(step.number, undone=False)
        return step

    def can_undo(self) -> Label | None:
        """Return what ``undo`` would take back, or None."""
        step = self._journal.step(self._mine(self._journal.last_done()))
        return label_of(step) if step else None

    def can_redo(self) -> Label | None:
        """Return what ``redo`` would bring back, or None."""
        step = self._journal.step(self._mine(self._journal.first_undone()))
        return label_of(step) if step else None

    def fill(self, step: Step, entries: Sequence[Entry] = ()) -> None:
        """Save ``step`` and ``entries`` as the beginning of an empty log: there is nothing before it to go back to.

        Raises
        ------
        StoreError
            ``"store.not_empty"`` when the log has ever held a record.
        """
        with self._writing():
            if not self._records.untouched():
                raise refused("store.not_empty", file=self._database.name)
            self._records.begin(step.edits)
            self._entries.add(entries, micros(self._clock.now()), Moves())

    def restore(self, copy: Path) -> Path:
        """Let the log hold what a copy of it holds, and return the copy of it as it was before; undo is then the copy's.

        Raises
        ------
        StoreError
            As ``restore.put_back`` says; nothing has changed then.
        ValueError
            For a log in memory, which has no copies.
        """
        if self._file is None:
            raise ValueError("a log in memory has no copies")
        self.commit_point()
        self._copies.close()
        return put_back(self._file, copy, self._clock.now(), BUSY_SECONDS)

    # Cards

    def add_card(self, card: Card) -> list[Card]:
        """Register an issued card; return the older ones for the same purpose, now void."""
        with self._writing():
            return self._cards.add(card)

    def cards(self, state: State | None = None) -> list[Card]:
        """Return the cards in ``state``, or all, in the order in which they were issued."""
        return [card for card in self._cards.all() if state in (None, card.state)]

    def set_card_state(self, plan_id: str, state: State) -> None:
        """Say that a card became void or was taken down from its stand."""
        with self._writing():
            self._cards.set_state(plan_id, state)

    def void_cards_of(self, stock_id: str, keep: Collection[str]) -> list[Card]:
        """Declare the cards in use for any batch of a stock void, but for the plans ``keep``; return them."""
        with self._writing():
            return self._cards.void_of(stock_id, keep)

    def put_in_use(self, batch_id: str, at: datetime, void: Collection[str]) -> tuple[Step | None, list[Card]]:
        """Put a batch into its jug and declare the cards of these plans void, both or neither.

        ``at`` is an instant with a zone. Where another batch of the jug claims to have been put in
        later, the first instant after that is taken, so that the jug holds this batch in any case.
        Returns the step as recorded, or None when the batch had that instant already, and the cards
        that became void; those which were out of use before stay as they are.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` when there is no such batch, ``"store.card_unknown"`` when there
            is no such card; nothing is saved then.
        ValueError
            When ``at`` has no zone.
        """
        instant_text(at)  # refuses a wall time before anything is done
        self._copies.keep_up(self._clock.now())
        self.commit_point()
        with self._writing():
            batches = self._records.ids(BATCH)
            if batch_id not in batches:
                raise refused("store.record_gone", record=batch_id)
            others = [b for b in batches if b != batch_id and belongs(b, stock_of(batch_id))]
            moment = after_all(at, [self._records.values(b).get(IN_USE_FROM, NOTHING).text for b in others])
            edits = self._records.complete((SetField(batch_id, IN_USE_FROM, Typed(instant_text(moment))),))
            now = self._clock.now()
            number = self._journal.append(Step("edit", tuple(edits)), now) if edits else 0
            gone = self._cards.void(void)
        return (Step("edit", tuple(edits), number, now) if edits else None), gone

    def _mine(self, number: int) -> int:
        """Return the number of a step that may be taken back here, else 0."""
        return number if self._database.mine(number) else 0

    def _joins(self, typing: _Typing | None, edit: SetField, seconds: float) -> bool:
        """Say whether ``edit`` goes on with the step that was typed last and is still the last one."""
        return (
            typing is not None
            and (typing.record_id, typing.field) == (edit.record_id, edit.field)
            and seconds - typing.seconds <= MERGE_SECONDS
            and self._journal.last_done() == typing.number
            and self._journal.first_undone() == 0
        )
