"""Writes down what a document announces, in order."""

from __future__ import annotations

from evenwater.session import Change, Document, LogChange, PlansChange, RecordsChange, UndoState


class Listener:
    """A list of (signal, what it carried)."""

    def __init__(self, document: Document) -> None:
        self.all: list[tuple[str, object]] = []
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._records)
        document.undoChanged.connect(self._undo)
        document.cardsChanged.connect(self._cards)
        document.saveFailed.connect(self._failed)
        document.saveRestored.connect(self._restored)
        document.log.logChanged.connect(self._log)
        document.log.plansChanged.connect(self._plans)

    def take(self, *signals: str) -> list[object]:
        """Return what was heard from ``signals`` since the last call, and forget everything."""
        heard = [carried for signal, carried in self.all if signal in signals]
        self.all.clear()
        return heard

    def _changed(self, change: Change) -> None:
        self.all.append(("changed", change))

    def _records(self, change: RecordsChange) -> None:
        self.all.append(("records", change))

    def _undo(self, state: UndoState) -> None:
        self.all.append(("undo", state))

    def _cards(self, initiator: object) -> None:
        self.all.append(("cards", initiator))

    def _failed(self, reason: object) -> None:
        self.all.append(("failed", reason))

    def _log(self, change: LogChange) -> None:
        self.all.append(("log", change))

    def _plans(self, change: PlansChange) -> None:
        self.all.append(("plans", change))

    def _restored(self, steps: int) -> None:
        self.all.append(("restored", steps))
