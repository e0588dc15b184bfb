"""Loaded by every Python process that a test starts (it stands on their PYTHONPATH): none may reach a network.

An audit hook sees what happens below all libraries, and needs nothing to be imported; ending the process cannot be caught
as an exception can.
"""

from __future__ import annotations

import os
import sys

EXIT_STATUS = 97
_LOOK_UPS = ("socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr", "socket.getnameinfo")
_SENDING = ("socket.connect", "socket.sendto", "socket.sendmsg")
_LOCAL = 1  # AF_UNIX, such as a display's


def _refuse(event: str, given: tuple[object, ...]) -> None:
    if event in _LOOK_UPS or (event in _SENDING and getattr(given[0], "family", 0) != _LOCAL):
        os.write(2, f"a process of the tests tried to reach a network: {event} {given[1:]}\n".encode())
        os._exit(EXIT_STATUS)


sys.addaudithook(_refuse)
