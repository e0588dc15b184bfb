"""Where a facility's log on a server is chosen: its address, a password where one is asked for, and why it cannot be opened."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.reasons import Reason
from evenwater.screens import room_words
from evenwater.session import Done, LatestOnly, Reached, reach
from evenwater.ui.flow import FlowRow
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say

_WHAT = marked(
    "Several laptops work on one log that lies on a server of your own (PostgreSQL). Nothing goes anywhere else. While the server does "
    "not answer, the last state is shown, and what you log is kept on this computer and sent later."
)
_LOOK = marked("postgresql://name@server/database")


class ServerPage(QWidget):
    """``reached`` carries a ``Reached``; ``own_wanted`` says that the log in this computer's own file is to be opened instead."""

    reached = Signal(object)
    own_wanted = Signal()

    def __init__(self, address: str = "", parent: QWidget | None = None) -> None:
        """Begin with an address, or an empty field."""
        super().__init__(parent)
        set_role(self, "page")
        self._work = LatestOnly(self)
        heading, self.what = QLabel(say("One log for the whole facility"), self), self._words("", say(_WHAT))
        set_role(heading, "heading")
        self.address, self.password = QLineEdit(address, self), QLineEdit(self)
        self.address.setPlaceholderText(say(_LOOK))
        self.password.setEchoMode(QLineEdit.EchoMode.Password)
        self.address_wrong, self.password_wrong = self._words("stop", ""), self._words("stop", "")
        self.keep = QCheckBox(say("&Keep the password in this computer's keyring"), self)
        self.open = QPushButton(say("&Open this log"), self)
        set_role(self.open, "main")
        self.own = QPushButton(say("Use the log on &this computer"), self)
        self.told = self._words("muted", "")
        self._lay_out(heading)
        self.open.clicked.connect(self.ask)
        self.address.returnPressed.connect(self.ask)
        self.password.returnPressed.connect(self.ask)
        self.own.clicked.connect(self.own_wanted)
        self._work.done.connect(self._answered)

    def _words(self, role: str, text: str) -> QLabel:
        label = QLabel(text, self)
        if role:
            set_role(label, role)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setMaximumWidth(90 * GRID)
        return label

    def _lay_out(self, heading: QLabel) -> None:
        form = QGridLayout()
        form.setSpacing(GRID)
        rows = (
            (say("&Address"), self.address, self.address_wrong),
            (say("&Password"), self.password, self.password_wrong),
        )
        for row, (name, line, wrong) in enumerate(rows):
            label = QLabel(name, self)
            label.setBuddy(line)
            line.setAccessibleName(name.replace("&", ""))
            line.setMinimumWidth(48 * GRID)
            form.addWidget(label, 2 * row, 0)
            form.addWidget(line, 2 * row, 1)
            form.addWidget(wrong, 2 * row + 1, 1)
            wrong.hide()
        form.addWidget(self.keep, 4, 1)
        form.setColumnStretch(2, 1)
        buttons = FlowRow(2 * GRID)
        for button in (self.open, self.own):
            button.setAutoDefault(False)
            buttons.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8 * GRID, 8 * GRID, 8 * GRID, 8 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(heading)
        layout.addWidget(self.what)
        layout.addLayout(form)
        layout.addLayout(buttons)
        layout.addWidget(self.told)
        layout.addStretch(1)

    def ask(self) -> None:
        """Look beside the window whether the log can be opened: a server that is away lets one wait for seconds."""
        if self._work.busy():
            return
        for label in (self.address_wrong, self.password_wrong):
            label.hide()
        self.open.setEnabled(False)
        self.told.setText(say("Asking the server"))
        task = partial(reach, self.address.text(), self.password.text(), self.keep.isChecked())
        self._work.submit(task, None)

    def refuse(self, reason: Reason) -> None:
        """Say beside the field why the log cannot be opened."""
        wrong = self.password_wrong if reason.code == "store.password" else self.address_wrong
        wrong.setText(f"\u25b2 {room_words.sentence(reason)}")
        wrong.show()
        if reason.code == "store.address_password":
            # It must not stand on the screen either.
            self.address.clear()
        (self.password if wrong is self.password_wrong else self.address).setFocus()

    def settle(self) -> None:
        """Wait for the question that is under way."""
        self._work.close(10_000)

    def _answered(self, done: Done) -> None:
        self.open.setEnabled(True)
        self.told.clear()
        if isinstance(done.result, Reached):
            self.reached.emit(done.result)
        elif isinstance(done.result, Reason):
            self.refuse(done.result)
