"""A number with its unit: kept as typed, read strictly, converted only for show.

The wheel is dead, Enter commits and presses nothing, Escape takes back, nothing is clamped or
repaired. The unit list converts; "Relabel" is a separate action that says before and after.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QLabel, QMenu, QWidget

from evenwater.engine.quantities import Typed, Water
from evenwater.screens import entry
from evenwater.screens.entry import Field, Words
from evenwater.screens.views import Message, Offer
from evenwater.screens.words import sentence
from evenwater.ui.choice import Combo
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.line_entry import LineEntry
from evenwater.ui.theme import set_role
from evenwater.wording import marked, say

_QUIET_MS = 900
_NOT_CONVERTED = marked("Not converted: correct the number first, or relabel it.")


class QuantityField(FieldShell):
    """Takes one quantity.

    ``edited`` carries a ``Typed`` on each change by the keeper; ``committed`` says that the change
    is complete. ``set_typed`` shows a value from outside and says nothing.
    """

    edited = Signal(object)
    committed = Signal()

    def __init__(self, label: str, field: Field, words: Words = sentence, parent: QWidget | None = None) -> None:
        self.line: LineEntry | None = None
        super().__init__(label, parent)
        self._name = label
        self._words = words
        self._water: Water | None = None
        self._field = field
        self._typed = self._before = Typed("")
        self._changed = False
        self._derived = ""
        self.line = LineEntry(self.frame)
        self.units = Combo(self.frame, framed=False)
        self._unit_label = QLabel(self.frame)
        set_role(self._unit_label, "muted")
        self.frame.row.addWidget(self.line, 1)
        self.frame.row.addWidget(self._unit_label)
        self.frame.row.addWidget(self.units)
        self.label.setBuddy(self.line)
        self.setFocusProxy(self.line)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.setInterval(_QUIET_MS)
        self._quiet.timeout.connect(self._judge)
        self.line.textEdited.connect(self._text_edited)
        self.line.entered.connect(self._enter)
        self.line.escaped.connect(self._take_back)
        self.line.arrived.connect(self._arrive)
        self.line.left.connect(self._leave)
        self.line.menuWanted.connect(self._open_menu)
        self.line.listWanted.connect(self._open_units)
        self.units.picked.connect(self._unit_picked)
        self.offerTaken.connect(self._take_offer)
        self._show_units()
        self._judge()

    # From outside

    def set_field(self, field: Field) -> None:
        """Take another kind of quantity, or other bounds; what is typed stays and is judged again."""
        if field != self._field:
            self._field = field
            self._show_units()
            self._show_text()
            self._judge()

    def set_water(self, water: Water | None) -> None:
        """Set the water that figures per kilogram are counted in."""
        if water != self._water:
            self._water = water
            if not self._changed:
                self._show_text()

    def set_typed(self, typed: Typed) -> None:
        """Show a value. The one that is already there changes nothing, not even the cursor."""
        if typed == self._typed:
            return
        self._typed = typed
        self._changed = False
        self._show_units()
        self._show_text()
        self._judge()

    def typed(self) -> Typed:
        """Return what was typed, as it was typed."""
        return self._typed

    def set_derived(self, text: str, source: str = "") -> None:
        """Show, while the field is empty, the value that is used instead and where it comes from."""
        self._derived = text
        assert self.line is not None
        self.line.setPlaceholderText(text)
        if source:
            self.set_help(source)
        self._judge()

    def set_spoken_name(self, name: str) -> None:
        """Be read by another name than the label's, where several fields on a sheet have the same label."""
        self._name = name
        self._show_units()

    def spoken_for(self) -> QWidget:
        """Return the line of text: it carries name and description."""
        return self.line or self

    # From the keeper

    def _text_edited(self, text: str) -> None:
        self._typed = Typed(text, self._unit())
        self._changed = True
        self._told = None
        self._say("typing", None)
        self._quiet.start()
        self.edited.emit(self._typed)

    def _arrive(self) -> None:
        self._before = self._typed

    def _leave(self) -> None:
        if self._changed:
            self._commit()

    def _enter(self) -> None:
        self._commit()

    def _commit(self) -> None:
        if self._changed:
            self._changed = False
            followed = entry.with_unit_followed(self._typed, self._field, self._water)
            if followed != self._typed:
                self._typed = followed
                self._show_units()
                self.edited.emit(followed)
            self._show_text()
        self._judge()
        self._before = self._typed
        self.committed.emit()

    def _take_back(self) -> None:
        """Go back to what stood here when the focus came."""
        if self._typed != self._before:
            self._put(self._before)
            self.edited.emit(self._typed)

    def _unit_picked(self, unit: str) -> None:
        if self._changed:
            self._commit()
        offers = entry.relabels(self._typed, self._field)
        fitting = tuple(offer for offer in offers if offer.unit == unit)
        converted = entry.converted(self._typed, self._field, unit, self._water)
        if converted is None:
            self._show_units()
            self._tell(Message(say(_NOT_CONVERTED), offers=fitting))
            return
        if converted == self._typed:
            return
        self._put(converted)
        self.edited.emit(converted)
        self.committed.emit()
        told = entry.conversion_words(converted, self._field, self._water)
        self._tell(Message(told, offers=fitting) if told else None)

    def _take_offer(self, offer: Offer) -> None:
        """Enter an offered reading or a relabelled number."""
        self._put(Typed(offer.text, offer.unit))
        self._tell(None)
        self.edited.emit(self._typed)
        self.committed.emit()
        assert self.line is not None
        self.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _open_units(self) -> None:
        """Open the list of units from the number, as a list opens itself."""
        if self.units.isVisible() and self.units.isEnabled():
            self.units.showPopup()

    def _open_menu(self, place: QPoint) -> None:
        assert self.line is not None
        menu = self.line.createStandardContextMenu()
        menu.setParent(self, menu.windowFlags())
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.add_relabels(menu)
        menu.triggered.connect(self._menu_chosen)
        menu.popup(place)

    def add_relabels(self, menu: QMenu) -> None:
        """Add the actions that keep the number and change its unit, each with before and after."""
        offers = entry.relabels(self._typed, self._field)
        if offers:
            menu.addSeparator()
        for offer in offers:
            action = menu.addAction(offer.words)
            action.setData(offer)

    def _menu_chosen(self, action: QAction) -> None:
        offer = action.data()
        if isinstance(offer, Offer):
            self._take_offer(offer)

    # Showing

    def _put(self, typed: Typed) -> None:
        self._typed = typed
        self._changed = False
        self._show_units()
        self._show_text()
        self._judge()

    def _unit(self) -> str:
        """Return the id of the unit that stands beside the number."""
        choices = entry.unit_choices(self._field)
        return entry.beside(self._typed, self._field) if choices else ""

    def _show_units(self) -> None:
        assert self.line is not None
        choices = entry.unit_choices(self._field)
        several = len(choices) > 1
        unit = self._unit()
        self.units.setVisible(several)
        self._unit_label.setVisible(not several)
        shown = dict(choices).get(unit, "")
        if several:
            self.units.set_options(choices)
            self.units.set_current(unit)
            self.units.set_spoken(say("Unit of {quantity}", quantity=self._name))
        else:
            self._unit_label.setText(f"{shown} " if shown else "")
        self.line.setAccessibleName(f"{self._name}, {shown}" if shown else self._name)

    def _show_text(self) -> None:
        """Write the text out; it is never read back from there."""
        assert self.line is not None
        text = entry.display(self._typed, self._field, self._water)
        if text != self.line.text():
            self.line.setText(text)

    def _judge(self) -> None:
        self._quiet.stop()
        judged = entry.judge(self._typed, self._field, self._words, self._water)
        message = Message(judged.message, offers=judged.offers) if judged.message else None
        state = "derived" if judged.state == "empty" and self._derived else judged.state
        self._say(state, message)
