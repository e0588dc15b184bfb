"""Loads peewee by itself: it would load every driver of a server that it finds, and that takes longer than all of it."""

from __future__ import annotations

import sys

_DRIVERS = ("psycopg", "psycopg2", "psycopg2cffi")

# What stands as None among the modules is not found. Whoever opens a log on a server loads the driver, and hands peewee a connection.
_hidden = [name for name in _DRIVERS if name not in sys.modules]
for _name in _hidden:
    sys.modules[_name] = None  # type: ignore[assignment]
try:
    import peewee
finally:
    for _name in _hidden:
        del sys.modules[_name]

__all__ = ["peewee"]
