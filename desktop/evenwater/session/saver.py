"""How edits get onto the disk: at once, or in a waiting line until it takes them, and what undo would do then."""

# ruff: noqa: N815  (signals have Qt's spelling)

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from PySide6.QtCore import QObject, QTimer, Signal

from evenwater.engine.reasons import Reason
from evenwater.session.acts import Act
from evenwater.session.changes import UndoState
from evenwater.session.waiting import WaitingLine
from evenwater.store import Label, Logged, Store, StoreError

_T = TypeVar("_T")
# How often [ms] a log on a server is looked at.
_NEWS_MS = 2000


class Saver(QObject):
    """The saving half of a ``Document``, for its records and its log alike. No method raises because of the disk."""

    undoChanged = Signal(object)
    """Carries an ``UndoState``."""
    saveFailed = Signal(object)
    """Carries the ``Reason``."""
    saveRestored = Signal(object)
    """Carries the number of steps that were waiting."""
    backupFaultChanged = Signal(object)
    """Carries why the newest daily copy could not be made, or None when one could."""

    def __init__(self, store: Store, parent: QObject | None, typing_ms: int) -> None:
        """Save to ``store``. Raises ``StoreError`` when it cannot be read at all."""
        super().__init__(parent)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(typing_ms)
        self._later.timeout.connect(self._save_typing)
        self._store = store
        self._waiting = WaitingLine(store.spool)
        self._failing = len(self._waiting) > 0
        self._backup_fault = store.backup_fault
        self._undo_state = self._undo_at_first()
        self._news = QTimer(self)
        self._news.setInterval(_NEWS_MS)
        self._news.timeout.connect(self._look_for_news)
        if store.server:
            # A window that nobody brings to the front must learn of the other laptops, and of the server coming back.
            self._news.start()

    def _undo_at_first(self) -> UndoState:
        try:
            return UndoState(self._store.can_undo(), self._store.can_redo())
        except StoreError as error:
            if error.reason.code != "store.unreadable":
                raise
            # Only the way back is damaged; what it led to is there.
            return UndoState(None, None)

    def commit_point(self) -> None:
        """End the typing in a field, as when the focus leaves it or Enter is pressed."""
        if self._later.isActive():
            self._save_typing()
        self._waiting.commit_point()
        self._store.commit_point()

    def unsaved(self) -> int:
        """Return how many steps are only in memory."""
        return len(self._waiting)

    def kept(self) -> bool:
        """Say whether what is unsaved lies on this computer's disk, from where it goes to the server whenever that answers."""
        return self._waiting.kept()

    def save(self) -> bool:
        """Try to save what is waiting; False, after ``saveFailed``, when something still is."""
        self._later.stop()
        tried = len(self._waiting)
        refusals, remarks = self._waiting.save_to(self._store)
        stuck = len(self._waiting) > 0
        for reason in refusals:
            self.saveFailed.emit(reason)
        self._look_at_copies()
        if len(refusals) > stuck or remarks:
            # What was refused and does not wait is lost, and must not be shown any longer.
            self.show_again()
        if stuck:
            self._failing = True
            for remark in remarks:
                self.saveFailed.emit(remark)
            return False
        if self._failing:
            self._failing = False
            self.saveRestored.emit(tried)
        for remark in remarks:
            self.saveFailed.emit(remark)
        return True

    def in_turn(self, act: Act) -> Logged:
        """Do something to the log of entries behind what is waiting, or let it wait there."""
        self.commit_point()
        self.refresh()
        ticket = self._waiting.put_act(act)
        self.save()
        return ticket.outcome

    def at_once(self, work: Callable[[], _T]) -> _T | None:
        """Do what may not wait, after everything that does; None, after ``saveFailed``, when it is not saved."""
        self.commit_point()
        if not self.save():
            fault = self._store.backup_fault
            if self._store.server and fault is not None:
                # What was typed before waits; this does not.
                self.saveFailed.emit(Reason("store.away", fault.params))
            return None
        self.refresh()
        try:
            return work()
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return None

    def refresh(self) -> None:
        """Show what other windows and programs have saved; to be called when a window is activated."""
        try:
            elsewhere = self._store.changed_elsewhere()
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return
        if elsewhere:
            self.show_again()
        self._look_at_copies()

    def show_again(self) -> None:
        """Show everything as it is on the disk, with what is waiting laid over it."""
        raise NotImplementedError

    def close(self) -> bool:
        """Save what is waiting and close the log; False when something was lost."""
        self._news.stop()
        saved = self.save() or self.kept()
        self._later.stop()
        try:
            self._store.close()
        except StoreError as error:
            self.saveFailed.emit(error.reason)
        return saved

    def backup_fault(self) -> Reason | None:
        """Return why the newest daily copy of the log could not be made, or None."""
        return self._store.backup_fault

    def undo_text(self) -> Label | None:
        """Return what undo would take back, as codes for the words on the button."""
        return self._undo_state.undo

    def redo_text(self) -> Label | None:
        """Return what redo would bring back, as codes for the words on the button."""
        return self._undo_state.redo

    def announce_undo(self) -> None:
        """Say what undo and redo would do now, when it is something else than before."""
        try:
            state = UndoState(self._store.can_undo(), self._store.can_redo())
        except StoreError as error:
            self.saveFailed.emit(error.reason)
            return
        self._show_undo(state)

    def _show_undo(self, state: UndoState) -> None:
        if state != self._undo_state:
            self._undo_state = state
            self.undoChanged.emit(state)

    def _look_at_copies(self) -> None:
        """Say it when the copy of the day has failed or been made; that of a large log ends some time after the edit."""
        fault = self._store.backup_fault
        if fault != self._backup_fault:
            self._backup_fault = fault
            self.backupFaultChanged.emit(fault)

    def _look_for_news(self) -> None:
        """Show what other laptops have saved, and send what waits once the server answers."""
        self.refresh()
        if self._waiting and not self._later.isActive() and self._store.backup_fault is None:
            self.save()

    def _save_typing(self) -> None:
        """Save what was typed; what undo would do has been announced with the key."""
        if not self.save():
            self.announce_undo()
