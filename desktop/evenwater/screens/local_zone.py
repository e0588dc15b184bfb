"""The zone of this machine with its changes of clock, which ``datetime.astimezone()`` freezes."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, tzinfo


def present() -> datetime:
    """Return the present in the zone of this machine."""
    return datetime.now(UTC).astimezone(LocalZone())


class LocalZone(tzinfo):
    """Local time as the operating system keeps it, on every day its own offset.

    ``datetime.now().astimezone()`` carries one fixed offset, so that a plan made in October would
    show November's doses an hour late. This one asks the system anew for each instant.
    """

    def utcoffset(self, dt: datetime | None) -> timedelta | None:
        """Return the offset from UTC at a local time; of a time that comes twice, the one of its fold."""
        return None if dt is None else dt.replace(tzinfo=None).astimezone().utcoffset()

    def dst(self, dt: datetime | None) -> timedelta | None:
        """Return nothing: only the whole offset is known."""

    def tzname(self, dt: datetime | None) -> str | None:
        """Return the system's name for the zone at a local time."""
        return None if dt is None else dt.replace(tzinfo=None).astimezone().tzname()

    def fromutc(self, dt: datetime) -> datetime:
        """Return an instant, given in UTC but labelled with this zone, as local time."""
        local = dt.replace(tzinfo=UTC).astimezone()
        naive = local.replace(tzinfo=None)
        # The later of two equal clock times is the one the first fold does not lead back to.
        again = naive.astimezone() != local
        return naive.replace(tzinfo=self, fold=int(again))
