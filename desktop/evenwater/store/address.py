"""Where a log on a server is: an address without a password, and where the password comes from instead."""

from __future__ import annotations

import hashlib
import importlib
import os
import re
from dataclasses import dataclass
from typing import Any

from evenwater.store.errors import refused

SCHEMES = ("postgresql://", "postgres://")
# Under which name the system's keyring has the passwords, and the variable that goes before it.
KEYRING = "evenwater"
VARIABLE = "EVENWATER_LOG_PASSWORD"
# With these libpq finds a password by itself (https://www.postgresql.org/docs/current/libpq-envars.html).
_OF_LIBPQ = ("PGPASSWORD", "PGPASSFILE")
_PORT = 5432
_SHAPE = re.compile(
    r"(?:(?P<user>[^@:/?]+)@)?(?P<host>\[[0-9A-Fa-f:.%]+\]|[^@:/?\[\]]*)(?::(?P<port>\d{1,5}))?/(?P<name>[^@/?]+)"
    r"(?:\?(?P<options>.*))?",
)
_HOST = re.compile(r"[A-Za-z0-9._-]+")
_OPTIONS = ("host", "sslmode", "sslrootcert")
_SECRETS = re.compile(r"[?&]\s*(ssl)?pass", re.IGNORECASE)
_QUOTED = re.compile(r"(?:%[0-9A-Fa-f]{2})+")


@dataclass(frozen=True)
class Address:
    """A database on a server. ``host`` may be the folder of a local socket; ``options`` are some of libpq's."""

    host: str
    port: int
    database: str
    user: str = ""
    options: tuple[tuple[str, str], ...] = ()

    @classmethod
    def read(cls, text: str) -> Address:
        """Read ``postgresql://USER@HOST:PORT/DATABASE``, with ``?sslmode=…`` and its like behind it.

        Raises
        ------
        StoreError
            ``"store.address_password"`` when there is a password in it, which would stay in a history of commands or
            a settings file, ``"store.address"`` when it is no such address. Neither repeats what was given.
        """
        scheme = next((scheme for scheme in SCHEMES if text.strip().startswith(scheme)), None)
        if scheme is None:
            raise refused("store.address")
        rest = text.strip().removeprefix(scheme)
        if ":" in rest.rpartition("@")[0] or _SECRETS.search(rest):
            raise refused("store.address_password")
        found = _SHAPE.fullmatch(rest)
        pairs = [part.partition("=") for part in (found["options"] or "").split("&") if part] if found else []
        if found is None or any(name not in _OPTIONS or not value for name, _, value in pairs):
            raise refused("store.address")
        options = {name: _plain(value) for name, _, value in pairs}
        host = options.pop("host", "") or _plain(found["host"]).strip("[]") or "localhost"
        port = int(found["port"] or _PORT)
        if not 0 < port < 2**16:
            raise refused("store.address")
        return cls(host, port, _plain(found["name"]), _plain(found["user"] or ""), tuple(sorted(options.items())))

    @property
    def shown(self) -> str:
        """Who opens what where, as it is shown and as the keyring calls it."""
        return f"{self.user}@{self.host}:{self.port}/{self.database}".lstrip("@")

    @property
    def text(self) -> str:
        """The address as ``read`` takes it."""
        user = f"{_quoted(self.user)}@" if self.user else ""
        host = self.host if _HOST.fullmatch(self.host) else f"[{self.host}]" if ":" in self.host else ""
        options = [*self.options, *([] if host else [("host", self.host)])]
        behind = "&".join(f"{name}={_quoted(value)}" for name, value in options)
        return f"{SCHEMES[0]}{user}{host}:{self.port}/{_quoted(self.database)}" + (f"?{behind}" if behind else "")

    @property
    def key(self) -> str:
        """A name for files that belong to this log on this computer."""
        return hashlib.sha256(self.shown.encode()).hexdigest()[:16]


def is_address(text: str) -> bool:
    """Say whether somebody means a log on a server, and not a file."""
    return text.strip().startswith(SCHEMES)


def password_of(address: Address) -> str:
    """Return the password from the environment or the system's keyring; empty where libpq is to look for one."""
    given = os.environ.get(VARIABLE, "")
    if given or any(os.environ.get(name) for name in _OF_LIBPQ):
        return given
    keyring = _keyring()
    try:
        return (keyring.get_password(KEYRING, address.shown) or "") if keyring is not None else ""
    except Exception:  # noqa: BLE001  (a keyring that is locked or broken is one without the password)
        return ""


def keep_password(address: Address, password: str) -> bool:
    """Put a password into the system's keyring; False where there is none that takes it."""
    keyring = _keyring()
    try:
        if keyring is not None:
            keyring.set_password(KEYRING, address.shown, password)
    except Exception:  # noqa: BLE001  (as above; the password is asked for again next time)
        return False
    return keyring is not None


def _keyring() -> Any:
    """Return the library, which comes with the extra ``facility``, or None."""
    try:
        return importlib.import_module("keyring")
    except ImportError:
        return None


def _quoted(text: str) -> str:
    """Write what could be taken for a part of an address with percent signs."""
    return "".join(c if c.isalnum() or c in "._-" else "".join(f"%{byte:02X}" for byte in c.encode()) for c in text)


def _plain(text: str) -> str:
    """Undo the percent signs of an address."""
    return _QUOTED.sub(lambda found: bytes.fromhex(found[0].replace("%", "")).decode(errors="replace"), text)
