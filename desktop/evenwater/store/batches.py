"""Which batch is in a jug: the one that was put in use last."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import MAXYEAR, UTC, datetime, timedelta

BATCH = "batch"
IN_USE_FROM = "in_use_from"


def stock_of(batch_id: str) -> str:
    """Return the id of the stock that a batch belongs to; the id of a batch is the stock's, a colon and its own."""
    return batch_id.partition(":")[0]


def belongs(batch_id: str, stock_id: str) -> bool:
    """Say whether an id is that of a batch of this stock."""
    return batch_id.startswith(f"{stock_id}:")


def in_use(since: Iterable[tuple[str, str]]) -> str:
    """Return the batch with the latest instant, of two with the same the later one in the order.

    ``since`` holds the ids of batches in their order, each with the text of its ``in_use_from``.
    Texts that are no instants never win; the answer is empty when there is no instant at all.
    """
    found, latest = "", None
    for batch_id, text in since:
        moment = _moment(text)
        if moment is not None and (latest is None or moment >= latest):
            found, latest = batch_id, moment
    return found


def after_all(at: datetime, since: Iterable[str]) -> datetime:
    """Return ``at``, or the first instant after all of ``since`` when ``at`` does not lie after them.

    A clock that was set back, or a slip in a date, would otherwise leave the old batch in use.
    """
    latest = max((moment for text in since if (moment := _moment(text)) is not None), default=None)
    return at if latest is None or at > latest else latest + timedelta.resolution


def _moment(text: str) -> datetime | None:
    try:
        moment = datetime.fromisoformat(text)
        if moment.utcoffset() is None:
            return None
        moment = moment.astimezone(UTC)
    except (ValueError, OverflowError):
        return None
    # In the last year the calendar has, no later instant might be left for the batch after it.
    return moment if moment.year < MAXYEAR else None
