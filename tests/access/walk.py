"""Goes through what a screen reader is told of a window, and says where it would be told too little.

What an interface says is read through ``QAccessible``, as a screen reader does, not from our own widgets' properties.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import QAbstractItemView, QComboBox, QScrollArea, QScrollBar, QWidget

_TEXT, _ROLE = QAccessible.Text, QAccessible.Role
# What can be pressed, typed into or chosen from.
CONTROLS = (
    _ROLE.Button,
    _ROLE.CheckBox,
    _ROLE.RadioButton,
    _ROLE.EditableText,
    _ROLE.ComboBox,
    _ROLE.List,
    _ROLE.Table,
)
_ROWS_READ = 40
# A tag, or one of the escapes that our tool tips use.
_MARKUP = re.compile(r"</?\w+[^<>]*>|&(amp|lt|gt|quot|#\w+);")
# Undo and redo say themselves what they do; on the others a verb needs what it is done to.
_ONE_WORD = ("Undo", "Redo")


@dataclass(frozen=True)
class Told:
    """One visible thing as it is told, with the widget behind it."""

    widget: QWidget
    role: QAccessible.Role
    name: str
    value: str
    description: str
    focusable: bool
    disabled: bool
    labels: tuple[str, ...]
    rows: tuple[str, ...]

    @property
    def control(self) -> bool:
        """Whether somebody can do something with it."""
        # Text that can be marked takes the focus as well, but nothing can be done with it.
        return self.role in CONTROLS or (self.focusable and self.role != _ROLE.StaticText)

    @property
    def spoken(self) -> str:
        """The name that is read: of a list to choose from it is its label's or its description on Linux, where Qt names it by its entry."""
        if self.role == _ROLE.ComboBox:
            return " ".join(self.labels) or self.widget.accessibleName()
        return self.name

    def __str__(self) -> str:
        """Return one line about it."""
        role = str(self.role).rpartition(".")[2]
        state = " ".join(word for word, holds in (("focusable", self.focusable), ("disabled", self.disabled)) if holds)
        return f"{type(self.widget).__name__} {role} [{state}] {self.spoken!r} = {self.value!r}: {self.description!r}"


def told(root: QWidget) -> list[Told]:
    """Return everything visible below ``root`` that is a widget, in the order of the tree."""
    return list(_walk(QAccessible.queryAccessibleInterface(root)))


def _walk(interface: QAccessibleInterface) -> Iterator[Told]:
    state = interface.state()
    if state.invisible:
        return
    widget = interface.object()
    if isinstance(widget, QWidget) and not isinstance(widget, QScrollBar):
        yield Told(
            widget,
            interface.role(),
            interface.text(_TEXT.Name),
            interface.text(_TEXT.Value),
            interface.text(_TEXT.Description),
            bool(state.focusable),
            bool(state.disabled),
            tuple(
                one.text(_TEXT.Name) for one, kind in interface.relations() if kind == QAccessible.RelationFlag.Label
            ),
            _rows(widget, interface),
        )
    if not isinstance(widget, QAbstractItemView | QComboBox | QScrollBar):
        for number in range(interface.childCount()):
            child = interface.child(number)
            if child is not None:
                yield from _walk(child)


def _rows(widget: QWidget, interface: QAccessibleInterface) -> tuple[str, ...]:
    """Return what the first rows of a list say."""
    if not isinstance(widget, QAbstractItemView) or widget.model() is None:
        return ()
    if interface.tableCellInterface() is None and interface.role() == _ROLE.List:
        children = (interface.child(n) for n in range(min(interface.childCount(), _ROWS_READ)))
        return tuple(child.text(_TEXT.Name) for child in children if child is not None)
    model = widget.model()
    return tuple(
        " ".join(_cell(model.index(row, column)) for column in range(model.columnCount()))
        for row in range(min(model.rowCount(), _ROWS_READ))
    )


def _cell(index: object) -> str:
    for role in (Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.DisplayRole):
        words = index.data(role)  # type: ignore[attr-defined]
        if words:
            return str(words)
    return ""


def faults(everything: list[Told]) -> list[str]:
    """Return what a keeper who cannot see the window would miss, one line for each."""
    found: list[str] = []
    names: dict[tuple[QAccessible.Role, str], Told] = {}
    for one in everything:
        if _MARKUP.search(one.name) or _MARKUP.search(one.description):
            found.append(f"markup is read aloud: {one}")
        if not one.control:
            continue
        found += [f"{fault}: {one}" for fault in _control_faults(one)]
        twin = names.setdefault((one.role, one.spoken), one)
        if twin is not one:
            found.append(f"two of one name: {one}")
    return found


def _control_faults(one: Told) -> Iterator[str]:
    if not one.spoken.strip():
        yield "no name"
    if one.role == _ROLE.ComboBox and not one.labels and one.widget.accessibleName() not in one.description:
        yield "on Linux nothing says what is chosen here"
    if one.role == _ROLE.Button and one.name not in _ONE_WORD and len(one.name.split()) < 2:
        yield "a verb without its object"
    if one.disabled and one.description in ("", one.name):
        yield "nothing says why it cannot be used"
    # What an answer says is put together when the focus comes to it.
    if (
        one.role == _ROLE.Client
        and not isinstance(one.widget, QScrollArea)
        and not re.search(r"\d|no |not |nothing|yet|appear", one.description.lower())
    ):
        yield "something painted without words"
    if any(not row.strip() for row in one.rows):
        yield "a row without words"
