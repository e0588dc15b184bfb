"""The keys of a room: F6 from region to region, Ctrl and K for the finder, which is loaded when it is first wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence

from evenwater.ui.reading_order import step_region

if TYPE_CHECKING:
    from evenwater.ui.find_actions import FindActions
    from evenwater.ui.room import Room
    from evenwater.ui.sheet_maker import Sheet

_NEXT, _BEFORE, _FIND = "F6", "Shift+F6", "Ctrl+K"


class RoomKeys(QObject):
    """Adds the keys to a room, and serves the button of each sheet's head that does the same."""

    def __init__(self, room: Room) -> None:
        """Serve ``room``."""
        super().__init__(room)
        self._room = room
        self._finding: FindActions | None = None
        for key, slot in ((_NEXT, self._next_region), (_BEFORE, self._region_before), (_FIND, self.find)):
            action = QAction(self)
            action.setShortcut(QKeySequence(key))
            action.triggered.connect(slot)
            room.addAction(action)
        room.sheetMade.connect(self._take_sheet)

    @property
    def finding(self) -> FindActions:
        """The finder of the room."""
        if self._finding is None:
            from evenwater.ui.find_actions import FindActions

            self._finding = FindActions(self._room)
        return self._finding

    def find(self) -> None:
        """Open the finder."""
        self.finding.open()

    def _take_sheet(self, sheet: Sheet) -> None:
        sheet.header.findWanted.connect(self.find)

    def _next_region(self) -> None:
        step_region(self._room, forward=True)

    def _region_before(self) -> None:
        step_region(self._room, forward=False)
