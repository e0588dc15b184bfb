"""What can go wrong with the log on disk, as one exception that carries a reason and no prose."""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import wraps
from typing import ParamSpec, TypeVar

import peewee

from evenwater.engine.reasons import Reason

# Primary result codes of SQLite (https://www.sqlite.org/rescode.html) and the reason each one means
# for a keeper. Whatever is not listed is "store.failed", with SQLite's own words as a parameter.
_BY_RESULT = {
    sqlite3.SQLITE_PERM: "store.read_only",
    sqlite3.SQLITE_BUSY: "store.locked",
    sqlite3.SQLITE_LOCKED: "store.locked",
    sqlite3.SQLITE_READONLY: "store.read_only",
    sqlite3.SQLITE_IOERR: "store.io",
    sqlite3.SQLITE_CORRUPT: "store.damaged",
    sqlite3.SQLITE_FULL: "store.full",
    sqlite3.SQLITE_CANTOPEN: "store.cannot_open",
    sqlite3.SQLITE_NOTADB: "store.foreign",
}
_Given = ParamSpec("_Given")
_Made = TypeVar("_Made")
_BY_ERRNO = {errno.ENOSPC: "store.full", errno.EDQUOT: "store.full", errno.EROFS: "store.read_only"}


class StoreError(Exception):
    """The log could not do what was asked; ``reason`` says why."""

    def __init__(self, reason: Reason) -> None:
        super().__init__(reason.code)
        self.reason = reason


def refused(code: str, **params: object) -> StoreError:
    """Return a ``StoreError`` whose reason has ``code`` and ``params``."""
    return StoreError(Reason(code, params))


def _result_code(error: BaseException) -> int:
    """Return SQLite's primary result code of ``error``, or 0 when it has none.

    peewee wraps the driver's exception and passes it on as the first argument.
    """
    for candidate in (error, *error.args, error.__cause__, error.__context__):
        code = getattr(candidate, "sqlite_errorcode", None)
        if isinstance(code, int):
            return code & 0xFF
    return 0


@contextmanager
def translated(file: str) -> Iterator[None]:
    """Turn the database's and the disk's exceptions inside the block into ``StoreError``.

    ``file`` is the path that the reason names.
    """
    try:
        yield
    except (peewee.PeeweeException, sqlite3.Error) as error:
        code = _BY_RESULT.get(_result_code(error), "store.failed")
        raise refused(code, file=file, detail=str(error)) from error
    except UnicodeDecodeError as error:
        # Even SQLite's own words may quote the rubbish.
        raise refused("store.damaged", file=file, backup="", detail=str(error)) from error
    except OSError as error:
        code = _BY_ERRNO.get(error.errno or 0, "store.cannot_open")
        raise refused(code, file=file, detail=str(error)) from error


def of_row(made: Callable[_Given, _Made]) -> Callable[_Given, _Made]:
    """Let a function that makes something of what stands in the log raise ``"store.unreadable"`` where it cannot.

    SQLite keeps no check sums, so that what was rubbed out inside of a text is found only by whoever reads it.
    """

    @wraps(made)
    def guarded(*given: _Given.args, **named: _Given.kwargs) -> _Made:
        try:
            return made(*given, **named)
        except (ValueError, TypeError, LookupError, AttributeError, OverflowError) as error:
            raise refused("store.unreadable", detail=str(error)) from error

    return guarded
