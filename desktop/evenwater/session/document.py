"""The one document: every window reads it, every edit goes through it, every change is announced."""

# ruff: noqa: N815  (signals have Qt's spelling)

from __future__ import annotations

import uuid
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime

from PySide6.QtCore import QObject, Signal

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import edits
from evenwater.session.backups import Backups
from evenwater.session.changes import Change, RecordsChange, UndoState
from evenwater.session.edits import NewRecord
from evenwater.session.entry_log import EntryLog
from evenwater.session.mirror import Mirror
from evenwater.session.saver import Saver
from evenwater.store import Card, Entry, SetField, State, Step, Store, StoreError, label_of


class Document(Saver):
    """The open document on top of a ``Store``.

    An edit is saved before it is announced, except that typing within one field may wait for
    ``typing_ms`` [ms], so that the answer is painted before the disk is asked; whatever ends the
    typing saves it at once. When an edit cannot be saved it is kept in memory, shown all
    the same, announced with ``saveFailed``, and tried again with the next edit; ``saveRestored``
    says that nothing is waiting any more. No method raises because of the disk.
    """

    changed = Signal(object)
    """Carries a ``Change``."""
    recordsChanged = Signal(object)
    """Carries a ``RecordsChange``; comes before the ``changed`` of the same edit."""
    cardsChanged = Signal(object)
    """Carries the initiator: the list of issued cards, or the state of one, is another."""

    def __init__(self, store: Store, parent: QObject | None = None, typing_ms: int = 0) -> None:
        """Show what ``store`` holds. Raises ``StoreError`` when it cannot be read at all."""
        super().__init__(store, parent, typing_ms)
        self._mirror = self._as_it_looks()
        self.log = EntryLog(self, store, self._waiting)
        """The entries and plans."""
        self.backups = Backups(self, store)
        """The copies beside it."""

    # Reading

    def records(self, kind: str) -> tuple[str, ...]:
        """Return the ids of the records of ``kind`` in their order."""
        return self._mirror.ids(kind)

    def kind(self, record_id: str) -> str:
        """Return the kind of a record, or an empty text when there is no such record."""
        return self._mirror.kind(record_id)

    def value(self, record_id: str, field: str) -> Typed:
        """Return a field as it was typed; ``Typed("")`` when nothing was."""
        return self._mirror.value(record_id, field)

    def values(self, record_id: str) -> Mapping[str, Typed]:
        """Return the filled-in fields of a record."""
        return self._mirror.values(record_id)

    def owned(self, kind: str, owner: str) -> tuple[str, ...]:
        """Return the ids of the records of ``kind`` that belong to another record, in their order."""
        return self._mirror.owned(kind, owner)

    def batches(self, stock_id: str) -> tuple[str, ...]:
        """Return the ids of the batches of a stock in their order, whether in use, used up or being written."""
        return edits.batches(self._mirror, stock_id)

    def batch_in_use(self, stock_id: str) -> str:
        """Return the batch that is in the jug: the one with the latest ``in_use_from``; empty when there is none.

        Of two with the same instant it is the later one in the order. Texts that are no instants
        with a zone never win.
        """
        return edits.batch_in_use(self._mirror, stock_id)

    # Editing

    def edit(self, record_id: str, field: str, typed: Typed, initiator: object = None, merge: bool = False) -> None:
        """Set one field. What is there already is neither saved nor announced again.

        ``merge`` joins further keystrokes in the field to one undo step. A correction, whose id is
        the system's id, a colon and the parameter, comes into being with its first field; so do the records of which a
        system has one each (``edits.OF_A_SYSTEM``).
        """
        self.refresh()
        if self._mirror.value(record_id, field) == typed:
            return
        birth = edits.birth(self._mirror, record_id)
        self._do(Step("edit", (*birth, SetField(record_id, field, typed))), initiator, merge)

    def edit_fields(self, record_id: str, fields: Mapping[str, Typed], initiator: object = None) -> None:
        """Set several fields of a record as one step that is undone as a whole; those that stay are left out."""
        self.refresh()
        changed = {name: typed for name, typed in fields.items() if self._mirror.value(record_id, name) != typed}
        if changed:
            sets = tuple(SetField(record_id, name, typed) for name, typed in changed.items())
            self._do(Step("edit", (*edits.birth(self._mirror, record_id), *sets)), initiator)

    def edit_records(self, records: Mapping[str, Mapping[str, Typed]], initiator: object = None) -> None:
        """Set fields of several records, given by their ids, as one step that is undone as a whole.

        Fields that stay are left out. The step is named after the field that is given last.
        """
        self.refresh()
        sets = tuple(
            SetField(record_id, name, typed)
            for record_id, fields in records.items()
            for name, typed in fields.items()
            if self._mirror.value(record_id, name) != typed
        )
        if sets:
            self._do(Step("edit", sets), initiator)

    def add_record(self, kind: str, fields: Mapping[str, Typed], initiator: object = None, record_id: str = "") -> str:
        """Add a record at the end of its list and return its id."""
        new = NewRecord(kind, fields, record_id or uuid.uuid4().hex)
        self.refresh()
        self._do(Step("add", edits.making(new)), initiator)
        return new.record_id

    def add_batch(self, stock_id: str, fields: Mapping[str, Typed], initiator: object = None) -> str:
        """Add a batch to a stock and return its id; ``fields`` may be a copy of another batch's.

        It is only being written: ``in_use_from`` stays empty, whatever ``fields`` say, until
        ``put_in_use``. Returns an empty text, after ``saveFailed``, when there is no such stock.
        """
        self.refresh()
        if self._mirror.kind(stock_id) != "stock":
            self.saveFailed.emit(Reason("store.record_gone", {"record": stock_id}))
            return ""
        new = edits.new_batch(stock_id, fields)
        self._do(Step("add", edits.making(new)), initiator)
        return new.record_id

    def remove_record(self, record_id: str, initiator: object = None) -> None:
        """Take a record out, with a system its corrections, with a stock its batches; everything else stays."""
        self.refresh()
        gone = edits.removal(self._mirror, record_id)
        if gone:
            self._do(Step("remove", gone), initiator)

    def fill(self, records: Sequence[NewRecord], initiator: object = None, entries: Sequence[Entry] = ()) -> bool:
        """Fill a log that has never held anything; this is its beginning and cannot be undone.

        Returns False, after ``saveFailed``, when the log is not new or cannot be written.
        """
        making = tuple(edit for record in records for edit in edits.making(record))
        try:
            self._store.fill(Step("add", making), entries)
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return False
        self._reload(initiator)
        if entries:
            self.log.announce_any()
        return True

    def undo(self, initiator: object = None) -> bool:
        """Take the last step back; False when there is none or the disk refuses."""
        return self._travel(self._store.undo, initiator)

    def redo(self, initiator: object = None) -> bool:
        """Bring the step undone last back; False when there is none or the disk refuses."""
        return self._travel(self._store.redo, initiator)

    def show_again(self) -> None:
        """Read the log again, lay what is waiting over it, announce what is different, or may be."""
        self._reload(None)
        self.log.announce_any()
        self.cardsChanged.emit(None)

    # Cards

    def add_card(self, card: Card, initiator: object = None) -> bool:
        """Register a card before it is printed; the older ones for its purpose become void.

        Returns False, after ``saveFailed``, when it is not on the disk: it must not be printed then.
        """
        try:
            if self.save():
                self._store.add_card(card)
                self.cardsChanged.emit(initiator)
                return True
        except StoreError as error:
            self.saveFailed.emit(error.reason)
        return False

    def cards(self, state: State | None = None) -> list[Card]:
        """Return the issued cards in ``state``, or all, oldest first."""
        try:
            return self._store.cards(state)
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return []

    def set_card_state(self, plan_id: str, state: State, initiator: object = None) -> bool:
        """Say that a card became void or was taken down; False, after ``saveFailed``, when not saved."""
        try:
            self._store.set_card_state(plan_id, state)
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return False
        self.cardsChanged.emit(initiator)
        return True

    def void_cards_of(self, stock_id: str, keep: Sequence[str], initiator: object = None) -> list[Card]:
        """Declare the cards in use for any batch of a stock void, but for the plan ids in ``keep``; return them.

        All or none, in one transaction; none, after ``saveFailed``, when that cannot be saved.
        """
        try:
            gone = self._store.void_cards_of(stock_id, keep)
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return []
        if gone:
            self.cardsChanged.emit(initiator)
        return gone

    def put_in_use(self, batch_id: str, at: datetime, void: Sequence[str], initiator: object = None) -> bool:
        """Put a batch into its jug at an instant with a zone, and declare the cards with these plan ids void.

        Both are saved in one transaction, or neither: no crash leaves a jug with new contents and an
        old card in force. Undo takes the batch out again, but brings no card back. Where another
        batch of the jug claims a later instant, the first one after that is noted.
        Returns False, after ``saveFailed``, when it is not on the disk, or an edit before it is not.
        """
        done = self.at_once(lambda: self._store.put_in_use(batch_id, at, void))
        if done is None:
            return False
        step, gone = done
        if step is not None:
            self._mirror.apply(step.edits)
            self._announce(*edits.touched(self._mirror, step.edits), initiator)
        if gone:
            self.cardsChanged.emit(initiator)
        return True

    # Inside

    def _do(self, step: Step, initiator: object, merge: bool = False) -> None:
        """Save a step if it can be saved, show it in any case, announce it."""
        self._waiting.put(step, merge)
        self._mirror.apply(step.edits)
        if merge and self._later.interval() > 0:
            if not self._later.isActive():
                self._later.start()
            # What undo would take back is known before it is on the disk.
            self._show_undo(UndoState(label_of(step), None))
        else:
            self.save()
        self._announce(*edits.touched(self._mirror, step.edits), initiator)

    def _travel(self, move: Callable[[], Step | None], initiator: object) -> bool:
        """Undo or redo in the log, then show what it led to."""
        self.commit_point()
        if not self.save():
            return False
        try:
            step = move()
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return False
        if step is None:
            return False
        self._reload(initiator)
        self.log.announce(step, initiator)
        if step.plans:
            self.cardsChanged.emit(initiator)
        return True

    def _reload(self, initiator: object) -> None:
        """Read the log again, lay what is waiting over it, announce what is different."""
        try:
            fresh = self._as_it_looks()
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return
        kinds, fields = self._mirror.difference(fresh)
        self._mirror = fresh
        self._announce(kinds, fields, initiator)

    def _as_it_looks(self) -> Mirror:
        """Read the records and lay what waits over them; raises ``StoreError``."""
        mirror = Mirror(self._store.snapshot())
        for step in self._waiting.steps():
            mirror.apply(step.edits)
        return mirror

    def _announce(self, kinds: frozenset[str], fields: Mapping[str, frozenset[str]], initiator: object) -> None:
        if kinds:
            self.recordsChanged.emit(RecordsChange(kinds, initiator))
        for record_id, names in fields.items():
            self.changed.emit(Change(record_id, names, initiator))
        if not self._later.isActive():
            self.announce_undo()
