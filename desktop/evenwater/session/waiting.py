"""Edits that could not be saved: kept in order, in memory, until the disk takes them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from evenwater.engine.reasons import Reason
from evenwater.session.acts import Act
from evenwater.store import Logged, SetField, Step, Store, StoreError

# The file is well, but this step no longer fits it: another window was quicker. Trying it again
# would fail for ever and keep everything behind it from the disk.
_NEVER_FITS = (
    "store.record_gone",
    "store.record_exists",
    "store.entry_gone",
    "store.entry_taken",
    "store.entry_changed",
)


@dataclass(frozen=True)
class _Waiting:
    step: Step
    merge: bool

    def save(self, store: Store) -> None:
        store.apply(self.step, self.merge)


@dataclass
class Ticket:
    """An act on the log in the line; ``outcome`` says what became of it."""

    act: Act
    outcome: Logged = Logged.WAITING

    def save(self, store: Store) -> None:
        """Carry the act out; raises ``StoreError``."""
        try:
            self.outcome = self.act.save(store)
        except StoreError as error:
            if error.reason.code in _NEVER_FITS:
                self.outcome = Logged.REFUSED
            raise


class WaitingLine:
    """The edits and acts on their way to the disk, oldest first. Normally it holds one, for a moment."""

    def __init__(self) -> None:
        self._line: list[_Waiting | Ticket] = []
        self._typing = False

    def __len__(self) -> int:
        return len(self._line)

    def put(self, step: Step, merge: bool) -> None:
        """Add ``step`` at the end; typing that goes on in one field lengthens the step before."""
        last = self._line[-1] if self._line else None
        if merge and self._typing and isinstance(last, _Waiting) and _same_field(last.step, step):
            self._line[-1] = replace(last, step=_lengthened(last.step, step))
        else:
            # Behind others it cannot join what is on the disk.
            self._line.append(_Waiting(step, merge and not self._line))
        self._typing = True

    def put_act(self, act: Act) -> Ticket:
        """Add something that is done to the log of entries at the end."""
        ticket = Ticket(act)
        self._line.append(ticket)
        return ticket

    def commit_point(self) -> None:
        """End the typing in a field."""
        self._typing = False

    def save_to(self, store: Store) -> list[Reason]:
        """Save what waits in its order and return why any of it could not be.

        What can never be saved is dropped; at any other refusal it stays, with all behind it.
        """
        refusals: list[Reason] = []
        while self._line:
            try:
                self._line[0].save(store)
            except StoreError as error:
                refusals.append(error.reason)
                if error.reason.code not in _NEVER_FITS:
                    break
            del self._line[0]
        return refusals

    def steps(self) -> list[Step]:
        """Return all steps in the line."""
        return [waiting.step for waiting in self._line if isinstance(waiting, _Waiting)]

    def acts(self) -> list[Act]:
        """Return all acts on the log of entries in the line."""
        return [waiting.act for waiting in self._line if isinstance(waiting, Ticket)]


def _same_field(before: Step, after: Step) -> bool:
    last = before.edits[-1]
    if len(after.edits) != 1 or not isinstance(last, SetField) or not isinstance(after.edits[0], SetField):
        return False
    return (last.record_id, last.field) == (after.edits[0].record_id, after.edits[0].field)


def _lengthened(before: Step, after: Step) -> Step:
    return replace(before, edits=(*before.edits[:-1], after.edits[-1]))
