"""Edits that could not be saved: kept in order until the disk, or the server, takes them."""

from __future__ import annotations

import uuid
from dataclasses import dataclass, field, replace

from evenwater.engine.reasons import Reason
from evenwater.session.acts import Act, LogEntries
from evenwater.session.waiting_text import text_of_act, text_of_step, waiting_from
from evenwater.store import Logged, SetField, Step, Store, StoreError
from evenwater.store.spool import Spool

# The file is well, but this step no longer fits it: another window was quicker. Trying it again
# would fail for ever and keep everything behind it from the disk.
_NEVER_FITS = (
    "store.record_gone",
    "store.record_exists",
    "store.entry_gone",
    "store.entry_taken",
    "store.entry_changed",
    "store.dose_beside",
    "store.text_refused",
)
# The server has it from an earlier try, the answer to which was lost.
_DELIVERED = "store.delivered"
_BESIDE = "store.dose_beside"
_AWAY = "store.away"


def _new_token() -> str:
    return uuid.uuid4().hex


@dataclass(frozen=True)
class _Waiting:
    step: Step
    merge: bool
    token: str = field(default_factory=_new_token)
    tried: bool = False

    def save(self, store: Store) -> Reason | None:
        """Save it; raises ``StoreError``."""
        try:
            store.apply(self.step, self.merge)
        except StoreError as error:
            if error.reason.code != _DELIVERED:
                raise
        return None

    def text(self) -> str:
        """Write it for the disk."""
        return text_of_step(self.step, self.merge)


@dataclass
class Ticket:
    """An act on the log in the line; ``outcome`` says what became of it."""

    act: Act
    outcome: Logged = Logged.WAITING
    token: str = field(default_factory=_new_token)
    tried: bool = False

    def save(self, store: Store) -> Reason | None:
        """Carry the act out and return what is to be said of it, if anything; raises ``StoreError``.

        A dose that has waited was given, and nobody is there to be asked: it is saved beside the other one, and that is said,
        also by whoever finds out only by the next try that it was delivered.
        """
        act = self.act
        late = act if self.tried and isinstance(act, LogEntries) else None
        try:
            self.outcome = (replace(late, looked=None) if late else act).save(store)
        except StoreError as error:
            code = error.reason.code
            if code != _DELIVERED:
                if code in _NEVER_FITS:
                    self.outcome = Logged.ASK if code == _BESIDE else Logged.REFUSED
                raise
            self.outcome = Logged.ALREADY
        return late.beside(store) if late else None

    def text(self) -> str:
        """Write it for the disk."""
        return text_of_act(self.act)


class WaitingLine:
    """The edits and acts on their way to the disk, oldest first. Normally it holds one, for a moment.

    For a log on a server what stays in it lies in a ``Spool`` as well, and begins with what was left there.
    """

    def __init__(self, spool: Spool | None = None) -> None:
        """Begin with what waits in ``spool``; raises ``StoreError`` when that cannot be read."""
        self._line: list[_Waiting | Ticket] = []
        self._typing = False
        self._spool = spool
        if spool is not None:
            for token, text in spool.waiting():
                found = waiting_from(text)
                left = (
                    _Waiting(*found, token, True)
                    if isinstance(found, tuple)
                    else Ticket(found, token=token, tried=True)
                )
                self._line.append(left)

    def __len__(self) -> int:
        return len(self._line)

    def kept(self) -> bool:
        """Say whether all that waits is on this computer's disk, so that the program may end."""
        return self._spool is not None and self._spool.waiting() == self._texts()

    def put(self, step: Step, merge: bool) -> None:
        """Add ``step`` at the end; typing that goes on in one field lengthens the step before."""
        last = self._line[-1] if self._line else None
        if merge and self._typing and isinstance(last, _Waiting) and self._open(last) and _same_field(last.step, step):
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

    def save_to(self, store: Store) -> tuple[list[Reason], list[Reason]]:
        """Save what waits in its order; return why any of it could not be, and what is to be said of what was.

        What can never be saved is dropped; at any other refusal it stays, with all behind it.
        """
        refusals: list[Reason] = []
        remarks: list[Reason] = []
        while self._line:
            first = self._line[0]
            try:
                store.delivery = first.token if self._spool is not None else ""
                remark = first.save(store)
                remarks += [remark] if remark is not None else []
            except StoreError as error:
                away = error.reason.code == _AWAY and self._spool is not None
                refusals.append(Reason("store.waits", error.reason.params) if away else error.reason)
                if error.reason.code not in _NEVER_FITS:
                    self._note_tried()
                    break
            finally:
                store.delivery = ""
            del self._line[0]
        if self._spool is not None:
            try:
                self._spool.keep(self._texts())
            except StoreError as error:
                refusals.append(error.reason)
        return refusals, remarks

    def _open(self, waiting: _Waiting) -> bool:
        """Say whether a step may still become another: what a server may have got already is what it was."""
        return self._spool is None or not waiting.tried

    def _note_tried(self) -> None:
        """Note of all that waits that whoever did it was told so, and has gone on."""
        for place, waiting in enumerate(self._line):
            if isinstance(waiting, Ticket):
                waiting.tried = True
            elif not waiting.tried:
                self._line[place] = replace(waiting, tried=True)

    def _texts(self) -> list[tuple[str, str]]:
        return [(waiting.token, waiting.text()) for waiting in self._line]

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
