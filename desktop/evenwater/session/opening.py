"""Opens the log as a document, a file's or a server's, or says why it cannot be opened."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, QSettings

from evenwater.engine.reasons import Reason
from evenwater.session.document import Document
from evenwater.session.paths import Paths
from evenwater.store import Store, StoreError
from evenwater.store.address import Address, keep_password

# How long typing may wait for the disk [ms]: longer than a repaint, shorter than a keeper notices.
TYPING_MS = 60
_CHOSEN = "log on a server"


def open_log(file: Path, parent: QObject | None = None) -> Document | Reason:
    """Open the log at a place, making it when there is none; the reason when it cannot be opened."""
    try:
        return Document(Store.open(file), parent, TYPING_MS)
    except StoreError as error:
        return error.reason


@dataclass(frozen=True)
class Reached:
    """A log on a server that was opened once, so that its copy on this computer is fresh; ``away`` when only the copy was."""

    address: Address
    password: str
    away: bool


def reach(text: str, password: str = "", keep: bool = False) -> Reached | Reason:
    """Look whether a log on a server can be opened, and fetch what is new in it; the reason when it cannot be.

    ``text`` is its address; ``password`` is empty to take it from the environment or the system's keyring, into which it goes
    with ``keep`` once it was right. May take seconds: to be called beside the window.
    """
    try:
        address = Address.read(text)
        store = Store.open_server(address, Paths.of_server(address.key), password=password)
    except StoreError as error:
        return error.reason
    away = store.backup_fault is not None
    try:
        store.close()
    except StoreError as error:
        return error.reason
    if keep and password and not away:
        keep_password(address, password)
    return Reached(address, password, away)


def open_reached(reached: Reached, parent: QObject | None = None) -> Document | Reason:
    """Open a log that was reached; from its copy at once when the server was away."""
    folder = Paths.of_server(reached.address.key)
    try:
        store = Store.open_server(reached.address, folder, password=reached.password, wait=not reached.away)
        return Document(store, parent, TYPING_MS)
    except StoreError as error:
        return error.reason


def chosen_server() -> str:
    """Return the address of the log that was chosen on this computer, or an empty text for the one in its own file."""
    return str(QSettings().value(_CHOSEN, ""))


def choose_server(address: str) -> None:
    """Open this log from now on; an empty text for the one in this computer's own file. No password is ever in it."""
    QSettings().setValue(_CHOSEN, address)
