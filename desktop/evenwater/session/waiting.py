"""Edits that could not be saved: kept in order, in memory, until the disk takes them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from evenwater.engine.reasons import Reason
from evenwater.store import SetField, Step, Store, StoreError

# The file is well, but this step no longer fits it: another window was quicker. Trying it again
# would fail for ever and keep everything behind it from the disk.
_NEVER_FITS = ("store.record_gone", "store.record_exists")


@dataclass(frozen=True)
class _Waiting:
    step: Step
    merge: bool


class WaitingLine:
    """The steps on their way to the disk, oldest first. Normally it holds one, for a moment."""

    def __init__(self) -> None:
        self._line: list[_Waiting] = []
        self._typing = False

    def __len__(self) -> int:
        return len(self._line)

    def put(self, step: Step, merge: bool) -> None:
        """Add ``step`` at the end; typing that goes on in one field lengthens the step before."""
        if merge and self._typing and self._line and _same_field(self._line[-1].step, step):
            self._line[-1] = replace(self._line[-1], step=_lengthened(self._line[-1].step, step))
        else:
            # Behind others it cannot join what is on the disk.
            self._line.append(_Waiting(step, merge and not self._line))
        self._typing = True

    def commit_point(self) -> None:
        """End the typing in a field."""
        self._typing = False

    def save_to(self, store: Store) -> list[Reason]:
        """Save the steps in their order and return why any could not be.

        A step that can never be saved is dropped; at any other refusal it stays, with all behind it.
        """
        refusals: list[Reason] = []
        while self._line:
            try:
                store.apply(self._line[0].step, self._line[0].merge)
            except StoreError as error:
                refusals.append(error.reason)
                if error.reason.code not in _NEVER_FITS:
                    break
            del self._line[0]
        return refusals

    def steps(self) -> list[Step]:
        """Return all steps in the line."""
        return [waiting.step for waiting in self._line]


def _same_field(before: Step, after: Step) -> bool:
    last = before.edits[-1]
    if len(after.edits) != 1 or not isinstance(last, SetField) or not isinstance(after.edits[0], SetField):
        return False
    return (last.record_id, last.field) == (after.edits[0].record_id, after.edits[0].field)


def _lengthened(before: Step, after: Step) -> Step:
    return replace(before, edits=(*before.edits[:-1], after.edits[-1]))
