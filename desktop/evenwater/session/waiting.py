"""Edits that could not be saved: kept in order, in memory, until the disk takes them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from evenwater.store import SetField, Step


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

    def first(self) -> tuple[Step, bool]:
        """Return the step to be saved next, and whether it may join the one on the disk."""
        return self._line[0].step, self._line[0].merge

    def drop_first(self) -> None:
        """Take the first step out of the line: it is saved, or can never be."""
        del self._line[0]

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
