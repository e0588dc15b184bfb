"""What can be done in a room at this moment, for the finder, and doing it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QAbstractButton, QPushButton, QToolButton, QWidget

from evenwater.screens import finder
from evenwater.screens.finder import Doing
from evenwater.screens.terms import term
from evenwater.ui.finder_panel import FinderPanel
from evenwater.ui.main_window import MainWindow
from evenwater.ui.reading_order import go_to
from evenwater.ui.sheet_list import CORRECT, JUGS, PUMPS, SHEETS, key_of
from evenwater.ui.time_field import TimeField
from evenwater.wording import say

if TYPE_CHECKING:
    from evenwater.ui.help import Help
    from evenwater.ui.room import Room

_HELP = ("explain", "glossary", "guide")


class FindActions(QObject):
    """Opens the finder over a room, and does what is chosen in it."""

    def __init__(self, room: Room) -> None:
        """Serve ``room``."""
        super().__init__(room)
        self._room = room
        self._buttons: dict[str, QAbstractButton] = {}
        self.panel = FinderPanel(room)
        self.panel.wanted.connect(self._do)

    def open(self) -> None:
        """Open the finder below the button of the sheet that is shown."""
        room = self._room
        self._buttons = {}
        self.panel.open(tuple(self._doings()), room.by_name(room.shown()).header.finder)

    # What there is

    def _doings(self) -> Iterator[Doing]:
        yield from self._shown_buttons()
        yield from finder.sheets(SHEETS, tuple(key_of(number) for number in range(len(SHEETS))))
        yield from self._elsewhere()
        room = self._room
        for name in room.catalogue.parameters:
            yield Doing(finder.VALUE, name, say("Correct {parameter}", parameter=term(name)))
        for kind, pane in ((finder.SYSTEM, room.systems), (finder.JUG, room.jugs), (finder.PUMP, room.pumps_pane)):
            for record, name in pane.named():
                yield Doing(kind, record, name)
        yield from self._helps()

    def _shown_buttons(self) -> Iterator[Doing]:
        """Yield what can be pressed now: what is read of the button is what it is called here."""
        room = self._room
        for button in room.findChildren(QAbstractButton):
            if not button.isVisible() or not isinstance(button, QPushButton | QToolButton) or not _worth(button):
                continue
            key = f"button {len(self._buttons)}"
            self._buttons[key] = button
            yield Doing(finder.ACTION, key, called(button), _keys(button), self._why_not(button))

    def _elsewhere(self) -> Iterator[Doing]:
        """Yield what stands on the other sheets; choosing it leads there."""
        shown = self._room.shown()
        for sheet, names in finder.SHEET_ACTIONS.items():
            if sheet != shown:
                for name in names:
                    place = say("on the {sheet} sheet", sheet=say(sheet))
                    yield Doing(finder.ACTION, f"{sheet}/{name}", say(name), besides=say(sheet), place=place)

    def _helps(self) -> Iterator[Doing]:
        shower = self._help()
        if shower is None:
            return
        called = (say("Explain the field with the focus"), say("Show the glossary"), say("Show the guide"))
        for key, words in zip(_HELP, called, strict=True):
            yield Doing(finder.ACTION, key, words, "F1" if key == _HELP[0] else "")
        for each in shower.terms().terms:
            yield finder.term(each.key, each.name)

    def _help(self) -> Help | None:
        """Return the help of the window that the room stands in; a room alone has none."""
        window = self._room.window()
        if not isinstance(window, MainWindow):
            return None
        # They come some time after the first paint; who asks for the finder before wants them now.
        window.add_keys()
        return None if window.keys is None else window.keys.help

    def _why_not(self, button: QAbstractButton) -> str:
        """Return why a button cannot be pressed; where the sheet is about nothing, its head says that."""
        if button.isEnabled():
            return ""
        room = self._room
        nothing = "" if room.of_what().current() else room.by_name(room.shown()).header.name.text()
        return button.accessibleDescription() or nothing or say("Not possible now.")

    # Doing it

    def _do(self, doing: Doing) -> None:
        room, key = self._room, doing.key
        if doing.kind == finder.SHEET:
            room.sheets.choose(SHEETS.index(key))
        elif doing.kind == finder.VALUE:
            room.parameterWanted.emit(key)
        elif doing.kind == finder.SYSTEM:
            if room.of_what() is not room.systems:
                room.sheets.choose(SHEETS.index(CORRECT))
            room.systems.choose(key)
        elif doing.kind in (finder.JUG, finder.PUMP):
            pane, sheet = (room.jugs, JUGS) if doing.kind == finder.JUG else (room.pumps_pane, PUMPS)
            if room.of_what() is not pane:
                room.sheets.choose(SHEETS.index(sheet))
            pane.choose(key)
        elif doing.kind == finder.WORD or key in _HELP:
            self._show_help(doing)
        elif key in self._buttons:
            self._press(self._buttons[key])
        else:
            self._lead(*key.split("/", 1))

    def _show_help(self, doing: Doing) -> None:
        shower = self._help()
        if shower is None:
            return
        if doing.kind == finder.WORD:
            shower.show_glossary(doing.key)
        else:
            {"explain": shower.explain, "glossary": shower.show_glossary, "guide": shower.show_guide}[doing.key]()

    @staticmethod
    def _press(button: QAbstractButton) -> None:
        if button.isVisible() and button.isEnabled():
            go_to(button)
            button.click()

    def _lead(self, sheet: str, name: str) -> None:
        """Open the sheet and stand on the button: what is pressed is seen first."""
        room = self._room
        room.sheets.choose(SHEETS.index(sheet))
        for button in room.findChildren(QPushButton):
            if button.isVisible() and called(button) == say(name):
                go_to(button)
                if not button.isEnabled():
                    room.by_name(sheet).header.tell(self._why_not(button))
                return


def _worth(button: QAbstractButton) -> bool:
    """Return whether a button is an action of its own: not the one that opened the finder, nor a part of a field."""
    above: QWidget | None = button
    while above is not None and not above.isWindow():
        if isinstance(above, FinderPanel | TimeField):
            return False
        above = above.parentWidget()
    return button.property("finds") is None and bool(called(button))


def called(button: QAbstractButton) -> str:
    """Return what is read of a button."""
    plain = button.text().replace("&&", "\0").replace("&", "").replace("\0", "&")
    return button.accessibleName() or plain


def _keys(button: QAbstractButton) -> str:
    shortcut = button.shortcut()
    return "" if shortcut.isEmpty() else shortcut.toString(QKeySequence.SequenceFormat.NativeText)
