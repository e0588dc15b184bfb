"""Sentences about a log on a server: why it cannot be opened, and what becomes of what is typed while it is away."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from evenwater.screens.local_zone import present
from evenwater.screens.shown import date_time
from evenwater.wording import say

FROM_COPY = "store.from_copy"


def _clock(at: object, now: datetime | None = None) -> str:
    """Return when the server was last heard of; empty where it never was."""
    if not isinstance(at, datetime):
        return ""
    local = now or present()
    seen = at.astimezone(local.tzinfo)
    return f"{seen:%H:%M}" if seen.date() == local.date() else date_time(seen)


def copy_shown(at: object, now: datetime | None = None) -> str:
    """Return what stands on every sheet while the server is away.

    Parameters
    ----------
    at : datetime or None
        The instant of the server's last word, with a zone.
    now : datetime or None
        The present in the keeper's zone; taken from the clock when not given.
    """
    when = _clock(at, now)
    if not when:
        return say("The server with the log does not answer.")
    return say(
        "Read from this computer's copy of {when}; the server does not answer. What others logged since is not in it.",
        when=when,
    )


def _away(p: Mapping[str, Any]) -> str:
    if not _clock(p.get("at")):
        return say(
            "The server with the log does not answer. Look whether it runs and whether this computer is in its network."
        )
    return say("The server does not answer, so that was not done. Try again when it does.")


def _waits(p: Mapping[str, Any]) -> str:
    return say(
        "Kept on this computer, and sent when the server answers. Read from the copy of {when}.",
        when=_clock(p.get("at")),
    )


def _doubted(p: Mapping[str, Any]) -> str:
    at, who = p.get("at"), str(p.get("who", ""))
    when = date_time(at.astimezone(present().tzinfo)) if isinstance(at, datetime) else ""
    by = say("{when} by {who}", when=when, who=who) if who else when
    return say(
        "A dose that waited for the server was logged beside one that somebody else logged ({which}). If both are the same dose, "
        "remove one of them.", which=by,
    )  # fmt: skip


SERVER_SENTENCES: dict[str, Callable[[Mapping[str, Any]], str]] = {
    "store.away": _away,
    "store.waits": _waits,
    FROM_COPY: lambda p: copy_shown(p.get("at")),
    "store.dose_doubted": _doubted,
    "store.dose_beside": lambda p: say("Somebody logged a dose at this moment. Look at it before you log yours."),
    "store.text_refused": lambda p: say(
        "The server cannot keep a character in it, so it was not saved. Type it again."
    ),
    "store.address": lambda p: say(
        "That is no address of a log. It looks like postgresql://keeper@fishroom-server/fishroom"
    ),
    "store.address_password": lambda p: say(
        "An address has no password in it, since it would stay where others can read it. Type it in the field for it, keep it in "
        "the system's keyring, or set EVENWATER_LOG_PASSWORD."
    ),
    "store.password": lambda p: say(
        "The server does not let you in with this name and password. The password is taken from the field, from "
        "EVENWATER_LOG_PASSWORD or from the system's keyring."
    ),
    "store.no_database": lambda p: say("The server answers, but has no database of that name."),
    "store.copy_differs": lambda p: say("What was written is not what was read, so nothing was kept of it. Try again."),
    "store.no_right": lambda p: say(
        "The server does not let this name make or change the log. Ask who looks after it."
    ),
    "store.no_driver": lambda p: say(
        "This Evenwater was installed without what a log on a server needs. Install it with [facility]."
    ),
}
